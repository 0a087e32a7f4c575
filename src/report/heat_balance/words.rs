//! The heat balance in words.

use serde::Serialize;

use crate::language::{Message, Phrase, Words, fixed, joined, range};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::heat_balance::fit::is_sound;
use crate::procedure::uncertainty::Figure;
use crate::report::heat_balance::acceptance_words;
use crate::report::heat_balance::figures::power_per_irradiance::{FILE, view};
use crate::report::procedure_part;
use crate::report::rows::{self, FindingText, Row};
use crate::stats::line::Bounds;
use crate::units::decimals_for;

/// The section on the heat balance.
#[derive(Debug, Clone, Serialize)]
pub struct BalancePart {
    /// `None`: it cannot be fitted.
    pub fitted: Option<FittedPart>,
    /// Why it cannot be fitted; empty where it is.
    pub absence: String,
}

/// Gain and loss, and what they rest on.
#[derive(Debug, Clone, Serialize)]
pub struct FittedPart {
    pub what: String,
    /// Above the values: what their ± is.
    pub spread: String,
    pub rows: Vec<Row>,
    pub rests_on: String,
    /// That the vessels count; empty where they do not.
    pub vessels: String,
    /// Empty without a rating.
    pub scaling: String,
    /// Of the acceptance half angle; empty where there is none.
    pub acceptance: String,
    pub figure: rows::Figure,
    pub findings: Vec<FindingText>,
    pub source: String,
}

/// Puts the heat balance into words.
pub fn heat_balance(assessment: &Assessment, words: &Words) -> BalancePart {
    match &assessment.heat_balance {
        Some(found) => BalancePart {
            fitted: Some(fitted(assessment, found, words)),
            absence: String::new(),
        },
        None => BalancePart {
            fitted: None,
            absence: words.say(absence(assessment)),
        },
    }
}

fn fitted(assessment: &Assessment, found: &HeatBalance, words: &Words) -> FittedPart {
    let spread = if found.is_of_one_day() {
        message!("balance-spread-one-day")
    } else {
        message!("balance-spread")
    };
    let findings = found.findings.iter();
    let findings = findings.map(|one| FindingText::said(words, one.code.code(), one));
    let acceptance = assessment.acceptance.as_ref();
    let of_acceptance = acceptance.map(|one| acceptance_words::findings(one, words));
    let mut rows = rows(found, words);
    rows.extend(acceptance.map(|one| acceptance_words::row(one, words)));
    FittedPart {
        what: words.say(message!("balance-what")),
        spread: words.say(spread),
        rows,
        rests_on: words.say(rests_on(found)),
        vessels: vessels(assessment, found).map_or_else(String::new, |said| words.say(said)),
        scaling: scaling(assessment, found).map_or_else(String::new, |said| words.say(said)),
        acceptance: acceptance
            .and_then(acceptance_words::rests_on)
            .map_or_else(String::new, |said| words.say(said)),
        figure: figure(assessment, found, words),
        findings: findings.chain(of_acceptance.unwrap_or_default()).collect(),
        source: words.say(message!("balance-source")),
    }
}

/// Why there is none.
fn absence(assessment: &Assessment) -> Message {
    let sound = assessment.s580.intervals.iter();
    let sound = sound.filter(|interval| is_sound(interval)).count();
    if !assessment.tested.has_irradiance() {
        message!("balance-none-irradiance")
    } else if sound < 3 {
        message!("balance-none-few", intervals = sound)
    } else {
        message!("balance-none-alike")
    }
}

fn rows(found: &HeatBalance, words: &Words) -> Vec<Row> {
    let ratio = match &found.opto_thermal_ratio {
        Some(ratio) => message!("balance-ratio-text", value = spoken(ratio)),
        None => message!("balance-ratio-none"),
    };
    let gain = message!("balance-gain-text", value = spoken(&found.gain_m2));
    let loss = message!("balance-loss-text", value = spoken(&found.loss_w_per_k));
    let power = message!("balance-power-text", value = spoken(&found.power_700_50_w));
    vec![
        Row::said(words, message!("balance-gain"), gain),
        Row::said(words, message!("balance-loss"), loss),
        Row::said(words, message!("balance-power"), power),
        Row::said(words, message!("balance-ratio"), ratio),
    ]
}

/// Its power at 700 W/m² and 50 K, `55 ± 12 W`, marked where all of it is of one day.
pub fn power_of(found: &HeatBalance) -> Phrase {
    let power = &found.power_700_50_w;
    let value = procedure_part::spoken(power, 1.0);
    let said = message!("balance-power-text", value = value);
    match found.is_of_one_day() {
        true => joined([said, message!("summary-one-day")], " "),
        false => said.into(),
    }
}

/// `0.331 ± 0.022`, without its unit.
fn spoken(figure: &Figure) -> Message {
    let decimals = decimals_for(figure.half_width());
    message!(
        "balance-value",
        value = fixed(figure.value, decimals),
        half_width = fixed(figure.half_width(), decimals)
    )
}

/// That the vessels' heat counts, and how much of it there is.
fn vessels(assessment: &Assessment, found: &HeatBalance) -> Option<Message> {
    let heat = assessment.tested.campaign.vessel_heat.as_ref()?;
    found.counts_vessels.then(|| {
        message!(
            "balance-counts-vessels",
            heat = fixed(heat.j_per_k(), 0),
            basis = heat.basis()
        )
    })
}

fn rests_on(found: &HeatBalance) -> Message {
    let Bounds { lower, upper } = found.irradiance_w_m2;
    let said = match &found.far_apart {
        Some(_) => message!("balance-rests-on-steps", steps = found.intervals),
        None => message!("balance-rests-on", intervals = found.intervals),
    };
    said.with("days", found.dates.len())
        .with("mean", fixed(found.mean_irradiance_w_m2, 0))
        .with("range", range(lower, upper, 0))
}

/// What scaling in proportion to irradiance does to the rating; `None` without one.
fn scaling(assessment: &Assessment, found: &HeatBalance) -> Option<Message> {
    let of_water = assessment.water_balance.as_ref()?;
    let power_w = of_water.scaling_in_ps50_w(&assessment.s580)?;
    let mean_w_m2 = assessment.s580.mean_irradiance_w_m2()?;
    let said = if power_w < 0.0 {
        message!("balance-scaling-takes")
    } else {
        message!("balance-scaling-adds")
    };
    let decimals = decimals_for(found.power_700_50_w.half_width());
    Some(
        said.with("mean", fixed(mean_w_m2, 0))
            .with("power", fixed(power_w.abs(), decimals)),
    )
}

fn figure(assessment: &Assessment, found: &HeatBalance, words: &Words) -> rows::Figure {
    let view = view(assessment, found);
    let caption = if found.is_of_one_day() {
        message!("balance-caption-one-day")
    } else {
        message!("balance-caption")
    };
    let [gain_m2, loss_w_per_k] = found.fitted.parameters;
    let alt = message!(
        "balance-alt",
        intervals = view.of_line.len(),
        others = view.others.len(),
        lowest = fixed(view.k_m2_per_w.0, 3),
        highest = fixed(view.k_m2_per_w.1, 3),
        gain = fixed(gain_m2, 3),
        loss = fixed(loss_w_per_k, 2)
    );
    let mut caption = words.say(caption);
    if view.beyond > 0 {
        caption += " ";
        caption += &words.say(message!("balance-beyond", count = view.beyond));
    }
    rows::Figure {
        file: FILE.to_owned(),
        caption,
        alt: words.say(alt),
    }
}
