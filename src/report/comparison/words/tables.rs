//! The campaigns of a comparison, row by row.

use serde::Serialize;

use crate::comparison::{Comparison, HEATED_KG};
use crate::language::{
    Message, Phrase, Words, celsius, clauses, duration, fixed, joined, kilograms, range, short,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::cooking::pots::{START_C, TimeRange};
use crate::procedure::finding::Level;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::procedure::spans::Summary;
use crate::procedure::uncertainty::Figure;
use crate::report::comparison::names::letter;
use crate::report::number::report_number;
use crate::report::rows::Row;
use crate::report::words::instruments::instrument_rows;
use crate::report::words::tested::test_dates;
use crate::units::{decimals_for, sentence_case};

/// A table with its header.
#[derive(Debug, Clone, Serialize)]
pub struct FigureTable {
    pub header: Vec<String>,
    pub rows: Vec<Vec<String>>,
    pub note: String,
}

/// One campaign of section 2.
#[derive(Debug, Clone, Serialize)]
pub struct CampaignPart {
    pub title: String,
    pub rows: Vec<Row>,
}

/// What stands where there is nothing to say.
const NOTHING: &str = "–";

/// A value with its half-width, as fine as that deserves.
fn with_half_width(value: f64, half_width: f64) -> Phrase {
    let decimals = decimals_for(half_width);
    joined([fixed(value, decimals), fixed(half_width, decimals)], " ± ")
}

/// The rating with its ±; of one day it says so, since the column's 95 % are not its.
fn rating_cell(uncertainty: &RatingUncertainty) -> Phrase {
    let rating = with_half_width(uncertainty.budget.value, uncertainty.half_width_w());
    if uncertainty.is_of_one_day() {
        message!("ratings-of-one-day", rating = rating).into()
    } else {
        rating
    }
}

/// Rating, line, what was around the used intervals, and conformity.
pub fn rating_table(comparison: &Comparison, names: &[String], words: &Words) -> FigureTable {
    let row = |(place, one): (usize, &Assessment)| {
        let (line, uncertainty) = (one.s580.line()?, one.s580.uncertainty()?);
        let name: Phrase = if comparison.baseline == Some(place) {
            message!("ratings-baseline", name = &names[place]).into()
        } else {
            (&names[place]).into()
        };
        let around = one.s580.environment();
        let mean = |around: Option<Summary>, decimals: usize| {
            around.map_or(NOTHING.into(), |around| fixed(around.mean, decimals))
        };
        let cells = [
            letter(place).to_string().into(),
            name,
            rating_cell(uncertainty),
            fixed(line.intercept, decimals_for(line.intercept_standard_error)),
            fixed(line.slope, decimals_for(line.slope_standard_error).max(2)),
            line.r_squared.map_or(NOTHING.into(), |r| fixed(r, 2)),
            line.points.into(),
            one.s580.dates.len().into(),
            mean(around.irradiance, 0),
            mean(around.ambient, 1),
            mean(around.wind, 1),
            spoken_level(one.s580.conformity.level).into(),
        ];
        Some(cells.map(|cell| words.say(cell)).to_vec())
    };
    let header = [
        message!("ratings-cooker"),
        message!("ratings-rating"),
        message!("ratings-intercept"),
        message!("ratings-slope"),
        message!("ratings-r-squared"),
        message!("ratings-intervals"),
        message!("ratings-days"),
        message!("ratings-sun"),
        message!("ratings-air"),
        message!("ratings-wind"),
        message!("ratings-conformity"),
    ];
    FigureTable {
        header: with_letters(header, words),
        rows: comparison
            .campaigns
            .iter()
            .enumerate()
            .filter_map(row)
            .collect(),
        note: String::new(),
    }
}

/// A header whose first column, that of the letters, has no name.
fn with_letters<const N: usize>(names: [Message; N], words: &Words) -> Vec<String> {
    let names = names.into_iter().map(|name| words.say(name));
    [String::new()].into_iter().chain(names).collect()
}

/// A level in the middle of a line.
fn spoken_level(level: Level) -> Message {
    match level {
        Level::Conforms => message!("ratings-conforms"),
        Level::ConformsWithNotes => message!("ratings-conforms-with-notes"),
        Level::Indicative => message!("ratings-indicative"),
        Level::NotValid => message!("ratings-not-valid"),
        Level::NoRating => message!("ratings-no-rating"),
    }
}

/// The rating by what a cooker is and costs, and what it means for a pot.
pub fn per_unit_table(comparison: &Comparison, words: &Words) -> FigureTable {
    let row = |(place, one): (usize, &Assessment)| {
        let uncertainty = one.s580.uncertainty()?;
        let (power_w, half_width_w) = (uncertainty.budget.value, uncertainty.half_width_w());
        let cooker = &one.tested.campaign.cooker;
        let per = |quantity: Option<f64>| {
            quantity.map(|quantity| with_half_width(power_w / quantity, half_width_w / quantity))
        };
        let of_cost = |rating: Phrase| -> Phrase {
            let currency: Phrase = match &cooker.currency {
                Some(currency) => currency.into(),
                None => message!("per-unit-no-currency").into(),
            };
            message!("per-unit-of-cost", rating = rating, currency = currency).into()
        };
        let cells = [
            letter(place).to_string().into(),
            per(Some(cooker.intercept_area_m2)).unwrap_or_else(|| NOTHING.into()),
            per(cooker.mass_kg).unwrap_or_else(|| NOTHING.into()),
            per(cooker.cost).map_or_else(|| NOTHING.into(), of_cost),
            match one.water_balance {
                Some(_) => spoken_heating(comparison.heating[place]).into(),
                None => NOTHING.into(),
            },
        ];
        Some(cells.map(|cell| words.say(cell)).to_vec())
    };
    let header = [
        message!("per-unit-area"),
        message!("per-unit-mass"),
        message!("per-unit-cost"),
        heated(comparison),
    ];
    let ambient = comparison.ambient_c;
    let ambient = celsius(ambient.map_or_else(|| NOTHING.into(), |c| fixed(c, 1)));
    FigureTable {
        header: with_letters(header, words),
        rows: comparison
            .campaigns
            .iter()
            .enumerate()
            .filter_map(row)
            .collect(),
        note: words.say(message!("per-unit-note", ambient = ambient)),
    }
}

/// `2 kg from 20 to 95 °C`.
fn heated(comparison: &Comparison) -> Message {
    let target_c = comparison.target_c;
    let is_whole = (target_c - target_c.round()).abs() < 0.05;
    let degrees = message!(
        "comparison-span",
        from = fixed(START_C, 0),
        to = fixed(target_c, usize::from(!is_whole))
    );
    message!(
        "per-unit-heating",
        load = kilograms(short(HEATED_KG)),
        degrees = celsius(degrees.into())
    )
}

fn spoken_heating(time: Option<TimeRange>) -> Message {
    let Some(time) = time else {
        return message!("heating-never");
    };
    let (best, shortest) = (duration(time.best_s), duration(time.shortest_s));
    match time.longest_s {
        Some(longest_s) => message!(
            "heating-time",
            best = best,
            shortest = shortest,
            longest = duration(longest_s)
        ),
        None => message!("heating-time-or-never", best = best, shortest = shortest),
    }
}

/// Puts section 2 into words.
pub fn campaigns(comparison: &Comparison, names: &[String], words: &Words) -> Vec<CampaignPart> {
    let title = |place: usize| {
        message!(
            "comparison-campaign-title",
            campaign = letter(place).to_string(),
            name = &names[place]
        )
    };
    let campaigns = comparison.campaigns.iter().enumerate();
    let part = |(place, one): (usize, &Assessment)| CampaignPart {
        title: words.say(title(place)),
        rows: campaign_rows(one, words),
    };
    campaigns.map(part).collect()
}

fn campaign_rows(one: &Assessment, words: &Words) -> Vec<Row> {
    let campaign = &one.tested.campaign;
    let row = |label: Message, text: Phrase| Row::new(&words.say(label), words.say(text));
    let title = message!(
        "comparison-campaign-text",
        title = &campaign.title,
        folder = &campaign.name
    );
    let mut rows = vec![
        row(message!("comparison-campaign"), title.into()),
        row(message!("comparison-report"), report_number(one).into()),
        row(message!("comparison-cooker"), spoken_cooker(one).into()),
        row(message!("comparison-test"), spoken_test(one).into()),
    ];
    if one.s580.rated.is_some() {
        rows.push(row(message!("comparison-line"), spoken_line(one).into()));
    }
    if !one.tested.heats_no_water() {
        rows.push(row(message!("comparison-balance"), spoken_balance(one)));
    }
    rows.push(row(
        message!("comparison-instruments"),
        spoken_instruments(one, words),
    ));
    if !one.tested.heats_no_water() {
        rows.push(row(
            message!("comparison-conformity"),
            spoken_conformity(one, words),
        ));
    }
    if let Some(mass_kg) = campaign.cooker.mass_kg {
        rows.push(row(message!("comparison-mass"), kilograms(short(mass_kg))));
    }
    rows
}

fn spoken_cooker(one: &Assessment) -> Message {
    let cooker = &one.tested.campaign.cooker;
    let said = match &cooker.description {
        Some(words) => message!("comparison-cooker-described", description = words),
        None => message!("comparison-cooker-text"),
    };
    said.with("cooker", cooker.kind.describe())
        .with("area", fixed(cooker.intercept_area_m2, 3))
}

fn spoken_test(one: &Assessment) -> Message {
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
        elevation = fixed(site.elevation_m, 0),
        tester = tester
    )
}

fn spoken_line(one: &Assessment) -> Message {
    let used_k = one
        .s580
        .used()
        .filter_map(|interval| interval.measured.difference_k);
    let (low_k, high_k) = used_k.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), k| {
        (low.min(k), high.max(k))
    });
    message!(
        "comparison-line-text",
        intervals = one.s580.used().count(),
        range = range(low_k, high_k, 1)
    )
}

/// Gain, loss, and the power at 700 W/m² and 50 K.
fn spoken_balance(one: &Assessment) -> Phrase {
    let Some(balance) = &one.water_balance else {
        return message!("comparison-no-balance").into();
    };
    let figure = |figure: &Figure| with_half_width(figure.value, figure.half_width());
    message!(
        "comparison-balance-text",
        gain = figure(&balance.gain_m2),
        loss = figure(&balance.loss_w_per_k),
        power = figure(&balance.power_700_50_w)
    )
    .into()
}

fn spoken_instruments(one: &Assessment, words: &Words) -> Phrase {
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

/// The level, and a sentence for each finding.
fn spoken_conformity(one: &Assessment, words: &Words) -> Phrase {
    let level = words.say(one.s580.conformity.level.describe());
    let findings = one.s580.conformity.findings.iter();
    let findings = findings.map(|finding| sentence_case(&words.say(&finding.text)));
    joined([level].into_iter().chain(findings), ". ")
}
