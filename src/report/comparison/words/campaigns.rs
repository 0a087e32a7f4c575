//! The campaigns of a comparison: what was tested, where, and what came of it.

use serde::Serialize;

use super::calls::Calls;
use crate::comparison::Comparison;
use crate::language::{
    Message, Phrase, Words, celsius, clauses, fixed, joined, kilograms, metres, metres_per_second,
    short, square_metres,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::spans::Summary;
use crate::procedure::uncertainty::Figure;
use crate::report::number::report_number;
use crate::report::words::instruments::instrument_rows;
use crate::report::words::tested::test_dates;
use crate::stats::line::Line;
use crate::units::decimals_for;

/// Campaigns up to which each is told with its instruments and its numbers.
const IN_FULL: usize = 24;

/// One campaign.
#[derive(Debug, Clone, Serialize)]
pub struct CampaignPart {
    pub number: String,
    pub name: String,
    /// Each a line or more of running text.
    pub lines: Vec<String>,
}

/// Puts the campaigns into words, in the order of their numbers.
pub fn campaigns(comparison: &Comparison, calls: &Calls, words: &Words) -> Vec<CampaignPart> {
    let is_short = comparison.campaigns.len() > IN_FULL;
    let part = |place: &usize| {
        let one = &comparison.campaigns[*place];
        let mut lines = vec![cooker(one), test(one)];
        if !is_short {
            lines.extend(line(one));
            lines.extend(balance(one));
            lines.extend(around(one));
            lines.push(instruments(one, words));
        }
        lines.push(message!("campaign-report", number = report_number(one)).into());
        CampaignPart {
            number: calls.number(*place).to_string(),
            name: calls.name(*place).to_owned(),
            lines: lines.into_iter().map(|line| words.say(line)).collect(),
        }
    };
    calls.order().iter().map(part).collect()
}

/// What was tested.
fn cooker(one: &Assessment) -> Phrase {
    let cooker = &one.tested.campaign.cooker;
    let area = message!(
        "campaign-cooker",
        name = &cooker.name,
        kind = cooker.kind.describe(),
        area = square_metres(fixed(cooker.intercept_area_m2, 3))
    );
    let mass = cooker.mass_kg.map(|mass_kg| kilograms(short(mass_kg)));
    let cost = cooker.cost.map(|cost| match &cooker.currency {
        Some(currency) => joined([short(cost), currency.into()], " "),
        None => message!("campaign-cost", cost = short(cost)).into(),
    });
    joined(
        [Phrase::from(area)].into_iter().chain(mass).chain(cost),
        ", ",
    )
}

/// Where, when and by whom.
fn test(one: &Assessment) -> Phrase {
    let site = &one.tested.campaign.site;
    let tester: Phrase = match &one.tested.campaign.tester {
        Some(tester) => tester.into(),
        None => message!("comparison-not-stated").into(),
    };
    message!(
        "comparison-test-text",
        dates = test_dates(one),
        runs = one.tested.all_runs().count(),
        site = &site.name,
        elevation = metres(fixed(site.elevation_m, 0)),
        tester = tester
    )
    .into()
}

fn line(one: &Assessment) -> Option<Phrase> {
    let Line {
        intercept,
        slope,
        intercept_standard_error,
        slope_standard_error,
        points,
        x_range,
        ..
    } = one.s580.line()?;
    Some(
        message!(
            "campaign-line",
            intercept = fixed(*intercept, decimals_for(*intercept_standard_error)),
            slope = fixed(-*slope, decimals_for(*slope_standard_error).max(2)),
            intervals = *points,
            lowest = fixed(x_range.0, 0),
            highest = fixed(x_range.1, 0)
        )
        .into(),
    )
}

/// Gain, loss, and the power at 700 W/m² and 50 K.
fn balance(one: &Assessment) -> Option<Phrase> {
    if one.s580.is_not_valid() {
        return None;
    }
    let balance = one.water_balance.as_ref()?;
    let figure = |figure: &Figure| {
        let half_width = figure.half_width();
        let decimals = decimals_for(half_width);
        joined(
            [fixed(figure.value, decimals), fixed(half_width, decimals)],
            " ± ",
        )
    };
    Some(
        message!(
            "campaign-balance",
            gain = figure(&balance.gain_m2),
            loss = figure(&balance.loss_w_per_k),
            power = figure(&balance.power_700_50_w)
        )
        .into(),
    )
}

/// Means of what was around the used intervals.
fn around(one: &Assessment) -> Option<Phrase> {
    let around = one.s580.environment();
    let mean = |of: Option<Summary>, decimals: usize| of.map(|of| fixed(of.mean, decimals));
    let irradiance = mean(around.irradiance, 0).map(|w_m2| message!("campaign-sun", mean = w_m2));
    let air = mean(around.ambient, 1).map(|c| message!("campaign-air", mean = celsius(c)));
    let wind =
        mean(around.wind, 1).map(|m_s| message!("campaign-wind", mean = metres_per_second(m_s)));
    let parts: Vec<Message> = [irradiance, air, wind].into_iter().flatten().collect();
    let said = message!("campaign-around", parts = joined(parts.clone(), ", "));
    (!parts.is_empty()).then(|| said.into())
}

fn instruments(one: &Assessment, words: &Words) -> Phrase {
    let budget_in = message!("budget-in-own-report");
    let rows = instrument_rows(one, &budget_in, words).into_iter();
    let instruments = rows.map(|row| {
        message!(
            "comparison-instrument",
            quantity = row.quantity,
            instrument = row.instrument,
            uncertainty = row.uncertainty
        )
    });
    clauses(instruments)
}
