//! Pair by pair: how large the difference is, how sure, and what it may come from.

use serde::Serialize;

use super::words::letter;
use crate::comparison::Comparison;
use crate::comparison::needed::Needed;
use crate::comparison::pair::{Method, Pair};
use crate::comparison::shape::Shape;
use crate::procedure::uncertainty::days::SHOWN_P;
use crate::report::model::report::Row;
use crate::units::{counted, decimals_for, fixed, probability, short};

/// Pairs whose uncertainty is shown source by source.
const SHOWN_BUDGETS: usize = 3;
/// Campaigns that sentences call by name, too.
const NAMED: usize = 3;

/// Section 1.
#[derive(Debug, Clone, Serialize)]
pub struct DifferencesPart {
    pub rows: Vec<DifferenceRow>,
    /// What slopes and intercepts say, pair by pair.
    pub shapes: Vec<Row>,
    pub budgets: Vec<PairBudget>,
    pub budgets_note: String,
}

/// One pair.
#[derive(Debug, Clone, Serialize)]
pub struct DifferenceRow {
    /// In the order of the template's header.
    pub cells: Vec<String>,
    pub is_shown: bool,
}

/// Where the uncertainty of one difference comes from.
#[derive(Debug, Clone, Serialize)]
pub struct PairBudget {
    pub title: String,
    pub rows: Vec<[String; 3]>,
}

/// Puts section 1 into words.
pub fn differences(comparison: &Comparison) -> DifferencesPart {
    let pairs = &comparison.pairs;
    DifferencesPart {
        rows: pairs.iter().map(row).collect(),
        shapes: pairs
            .iter()
            .map(|pair| Row::new(&between(pair), shape_words(pair)))
            .collect(),
        budgets: pairs.iter().take(SHOWN_BUDGETS).map(budget).collect(),
        budgets_note: if pairs.len() > SHOWN_BUDGETS {
            format!(
                "The other {} are in the data file.",
                pairs.len() - SHOWN_BUDGETS
            )
        } else {
            String::new()
        },
    }
}

/// `B − A`.
fn between(pair: &Pair) -> String {
    format!("{} − {}", letter(pair.second), letter(pair.first))
}

/// `6 to 30 W`, as fine as the half-width deserves.
fn spoken_interval(pair: &Pair) -> String {
    let (lower_w, upper_w) = pair.interval_w();
    let decimals = decimals_for(pair.expanded_w());
    format!(
        "{} to {} W",
        fixed(lower_w, decimals),
        fixed(upper_w, decimals)
    )
}

fn row(pair: &Pair) -> DifferenceRow {
    let decimals = decimals_for(pair.expanded_w());
    let method = match pair.method {
        Method::Apart => "each by its own days".to_owned(),
        Method::PairedByDay { days } => format!("paired by day, {}", counted(days, "day")),
    };
    DifferenceRow {
        cells: vec![
            between(pair),
            format!("{} W", signed(pair.difference_w, decimals)),
            spoken_interval(pair),
            probability(pair.p),
            probability(pair.p_corrected),
            method,
            if pair.is_shown() { "real" } else { "not shown" }.to_owned(),
        ],
        is_shown: pair.is_shown(),
    }
}

fn signed(value: f64, decimals: usize) -> String {
    let text = fixed(value, decimals);
    if value > 0.0 {
        format!("+{text}")
    } else {
        text
    }
}

/// The sentence on a pair that a builder reads first.
pub fn verdict(comparison: &Comparison, pair: &Pair, names: &[String]) -> String {
    let call = |place: usize| {
        if names.len() <= NAMED {
            format!("{} ({})", letter(place), names[place])
        } else {
            letter(place).to_string()
        }
    };
    let decimals = decimals_for(pair.expanded_w());
    let is_more = pair.difference_w >= 0.0;
    let (lower_w, upper_w) = pair.interval_w();
    let (lower_w, upper_w) = if is_more {
        (lower_w, upper_w)
    } else {
        (-upper_w, -lower_w)
    };
    let interval = format!(
        "{} to {} W",
        fixed(lower_w, decimals),
        fixed(upper_w, decimals)
    );
    let size = format!(
        "{} W {}",
        fixed(pair.difference_w.abs(), decimals),
        if is_more { "more" } else { "less" }
    );
    let (second, first) = (call(pair.second), call(pair.first));
    if pair.is_shown() {
        // A share of a rating near zero would say nothing.
        let sure = comparison.campaigns[pair.first].uncertainty.as_ref();
        let budget = sure.map(|sure| &sure.budget);
        let share = budget
            .filter(|budget| budget.power_w > budget.expanded_w())
            .map_or(String::new(), |budget| {
                format!(
                    ", {} %",
                    fixed(pair.difference_w.abs() / budget.power_w * 100.0, 0)
                )
            });
        return format!(
            "{second} gives {size} than {first} ({interval}){share}: a real difference."
        );
    }
    if !pair.knows_days && pair.p_corrected < SHOWN_P {
        return format!(
            "{second} gave {size} than {first} ({interval}) when tested, but not on several days each, so the days alone may explain it: test both again on other days."
        );
    }
    if pair.is_shown_alone() {
        return format!(
            "{second} gives {size} than {first} ({interval}), but among {} so large a difference also comes by chance: it is not shown.",
            counted(comparison.pairs.len(), "pair")
        );
    }
    format!(
        "No difference between {second} and {first} could be shown: {size}, and anything from {interval} fits the data.{}",
        spoken_needed(pair)
    )
}

/// What would show a difference, where the spread of days can be told and is the
/// campaigns' own.
fn spoken_needed(pair: &Pair) -> String {
    if !pair.knows_days {
        return " Test both again on other days.".to_owned();
    }
    if pair.method != Method::Apart {
        return String::new();
    }
    let needed: &Needed = &pair.needed;
    let sought = format!("{} W", short(needed.sought_w));
    match needed.intervals_each {
        Some(0) => format!(" One of {sought} would most likely have been seen."),
        Some(more) => format!(
            " {} of each would most likely show one of {sought}.",
            counted(more, "more used interval")
        ),
        None => format!(
            " More intervals alone would hardly show one of {sought}: days, or instruments that are not the same by id, differ by too much."
        ),
    }
}

/// What the slopes and intercepts of a pair say, with their numbers.
pub fn shape_words(pair: &Pair) -> String {
    let Some(shape) = &pair.shape else {
        return "Too few intervals, or none that scatter, to compare slopes.".to_owned();
    };
    let (one, two) = (letter(pair.first), letter(pair.second));
    let numbers = format!(
        "slope {} W/K, p = {}; intercept {} W, p = {}{}",
        signed(shape.slope_difference_w_per_k, 2),
        probability(shape.slopes.p),
        signed(shape.intercept_difference_w, 0),
        probability(shape.intercepts_p),
        if shape.by_days { "; by days" } else { "" }
    );
    if pair.is_shown() {
        format!("{} ({numbers}).", meaning(shape, one, two))
    } else {
        // Instruments and single days are not in these tests.
        format!("As no difference of Ps(50) is shown, no cause of one is named: {numbers}.")
    }
}

/// What a change of slope or intercept comes from.
fn meaning(shape: &Shape, one: char, two: char) -> String {
    let losses = if shape.slope_difference_w_per_k > 0.0 {
        format!("{two} loses less heat for each kelvin than {one}, as with better insulation")
    } else {
        format!("{two} loses more heat for each kelvin than {one}, as with poorer insulation")
    };
    let takes = if shape.intercept_difference_w > 0.0 {
        "more"
    } else {
        "less"
    };
    let optics = format!("{two} takes in {takes} sunlight than {one}, as after a change of optics");
    match (shape.slopes_differ(), shape.intercepts_differ()) {
        (true, true) => format!("Both differ: {losses}; and {optics}"),
        (true, false) => {
            format!("The slopes differ and the intercepts do not: {losses}; optics look alike")
        }
        (false, true) => {
            format!("The lines run alike but not at one height: {optics}; losses look alike")
        }
        (false, false) => {
            "Neither slopes nor intercepts differ by more than scatter and days explain".to_owned()
        }
    }
}

fn budget(pair: &Pair) -> PairBudget {
    let mut rows: Vec<[String; 3]> = pair
        .parts
        .iter()
        .map(|part| {
            [
                part.name.to_owned(),
                format!("{} W", fixed(part.of_difference_w, 2)),
                format!("{} W", fixed(part.apart_w, 2)),
            ]
        })
        .collect();
    let apart_w = pair.parts.iter().map(|part| part.apart_w.powi(2));
    rows.push([
        "combined".to_owned(),
        format!("{} W", fixed(pair.combined_w, 2)),
        format!("{} W", fixed(apart_w.sum::<f64>().sqrt(), 2)),
    ]);
    rows.push([
        format!("expanded, 95 %, k = {}", fixed(pair.coverage_factor, 2)),
        format!("{} W", fixed(pair.expanded_w(), 2)),
        String::new(),
    ]);
    PairBudget {
        title: format!("Uncertainty of {}", between(pair)),
        rows,
    }
}
