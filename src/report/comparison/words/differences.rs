//! Pair by pair: how large the difference is, how sure, and what it may come from.

use serde::Serialize;
use simmerline_math::squared;

use super::causes::cause;
use super::spoken::{spoken, spoken_interval};
use crate::comparison::Comparison;
use crate::comparison::pair::{Difference, Pair};
use crate::comparison::weigh::{Method, Weighed};
use crate::language::{Message, Phrase, Words, fixed, joined, probability, short};
use crate::message;
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::report::comparison::names::letter;
use crate::report::rows::Row;
use crate::units::decimals_for;

/// Pairs whose uncertainty is shown source by source.
const SHOWN_BUDGETS: usize = 3;
/// Campaigns that sentences call by name, too.
const NAMED: usize = 3;

/// Section 1.
#[derive(Debug, Clone, Serialize)]
pub struct DifferencesPart {
    pub rows: Vec<DifferenceRow>,
    /// What gain and loss say, pair by pair.
    pub causes: Vec<Row>,
    pub budgets: Vec<PairBudget>,
    pub budgets_note: String,
}

/// A difference of one pair.
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
pub fn differences(comparison: &Comparison, words: &Words) -> DifferencesPart {
    let pairs = &comparison.pairs;
    let cause = |pair: &Pair| Row::new(&between(pair), words.say(cause(pair)));
    let shown = pairs.iter().take(SHOWN_BUDGETS);
    let others = pairs.len().saturating_sub(SHOWN_BUDGETS);
    DifferencesPart {
        rows: pairs.iter().flat_map(|pair| rows(pair, words)).collect(),
        causes: pairs.iter().map(cause).collect(),
        budgets: shown.map(|pair| budget(pair, words)).collect(),
        budgets_note: if others > 0 {
            words.say(message!("pair-budget-others", count = others))
        } else {
            String::new()
        },
    }
}

/// `B − A`.
fn between(pair: &Pair) -> String {
    format!(
        "{} − {}",
        letter(pair.difference.second),
        letter(pair.difference.first)
    )
}

fn watts(number: impl Into<Phrase>) -> Phrase {
    joined([number.into(), "W".into()], " ")
}

/// A row of the ratings, and where they do not decide, one of what does.
fn rows(pair: &Pair, words: &Words) -> Vec<DifferenceRow> {
    let difference = &pair.difference;
    if !difference.conditions_differ {
        return vec![decisive_row(pair, &difference.ratings, words)];
    }
    let nothing = || "–".into();
    let of_ratings = [
        probability_free(pair, &difference.ratings),
        [nothing(), nothing()].into(),
        [
            spoken_method(&difference.ratings).into(),
            message!("difference-scaled").into(),
        ]
        .into(),
    ];
    let of_ratings = DifferenceRow {
        cells: said(of_ratings.into_iter().flatten(), words),
        is_shown: false,
    };
    let common = difference.common_conditions.as_ref();
    let common = common.map(|common| decisive_row(pair, common, words));
    [of_ratings].into_iter().chain(common).collect()
}

fn said(cells: impl Iterator<Item = Phrase>, words: &Words) -> Vec<String> {
    cells.map(|cell| words.say(cell)).collect()
}

/// Cells of a difference and its interval.
fn probability_free(pair: &Pair, weighed: &Weighed) -> Vec<Phrase> {
    let (difference, interval) = spoken(weighed);
    vec![
        between(pair).into(),
        figure_of(&pair.difference, weighed).into(),
        watts(difference),
        watts(interval),
    ]
}

/// Which figure a difference is of.
fn figure_of(difference: &Difference, weighed: &Weighed) -> Message {
    if std::ptr::eq(weighed, &difference.ratings) {
        message!("difference-of-ratings")
    } else {
        message!("difference-of-common")
    }
}

fn spoken_method(weighed: &Weighed) -> Message {
    match weighed.method {
        Method::Apart => message!("difference-apart"),
        Method::PairedByDay { days } => message!("difference-paired", days = days),
    }
}

fn decisive_row(pair: &Pair, weighed: &Weighed, words: &Words) -> DifferenceRow {
    let verdict = if pair.is_shown() {
        message!("difference-real")
    } else {
        message!("difference-not-shown")
    };
    let rest = [
        probability(weighed.p),
        probability(pair.p_corrected),
        spoken_method(weighed).into(),
        verdict.into(),
    ];
    let cells = probability_free(pair, weighed).into_iter().chain(rest);
    DifferenceRow {
        cells: said(cells, words),
        is_shown: pair.is_shown(),
    }
}

/// The sentences on a pair that a builder reads first.
pub fn verdict(comparison: &Comparison, pair: &Pair, names: &[String]) -> Phrase {
    let difference = &pair.difference;
    let about_suns = difference
        .conditions_differ
        .then(|| about_suns(comparison, difference));
    let of_pair = match difference.decisive() {
        Some(weighed) => decided(comparison, pair, weighed, names),
        None => message!("verdict-untold").into(),
    };
    joined(
        about_suns
            .into_iter()
            .flatten()
            .map(Phrase::from)
            .chain([of_pair]),
        " ",
    )
}

/// What the ratings' difference is, where irradiance differed, and what is said instead.
fn about_suns(comparison: &Comparison, difference: &Difference) -> Vec<Message> {
    let sun = |place: usize| -> Phrase {
        let mean_w_m2 = comparison.campaigns[place].s580.mean_irradiance_w_m2();
        mean_w_m2.map_or_else(|| "–".into(), |mean_w_m2| fixed(mean_w_m2, 0))
    };
    let (spoken_difference, interval) = spoken(&difference.ratings);
    let scaled = message!(
        "verdict-suns",
        second = letter(difference.second).to_string(),
        first = letter(difference.first).to_string(),
        difference = spoken_difference,
        interval = interval,
        second_sun = sun(difference.second),
        first_sun = sun(difference.first)
    );
    let common = difference.common_conditions.as_ref();
    let common = common.map(|_| message!("verdict-common"));
    [scaled].into_iter().chain(common).collect()
}

/// What is said of the difference that decides.
fn decided(comparison: &Comparison, pair: &Pair, weighed: &Weighed, names: &[String]) -> Phrase {
    let call = |place: usize| {
        if names.len() <= NAMED {
            format!("{} ({})", letter(place), names[place])
        } else {
            letter(place).to_string()
        }
    };
    let is_more = weighed.value >= 0.0;
    let (lower_w, upper_w) = weighed.interval();
    let interval_w = if is_more {
        (lower_w, upper_w)
    } else {
        (-upper_w, -lower_w)
    };
    let size = fixed(weighed.value.abs(), decimals_for(weighed.expanded()));
    let of_pair = |said: Message| {
        said.with("second", call(pair.difference.second))
            .with("first", call(pair.difference.first))
            .with("difference", &size)
            .with("interval", spoken_interval(interval_w))
    };
    if pair.is_shown() {
        let share = share_percent(comparison, pair).map(|percent| fixed(percent, 0));
        let shown = match (share, is_more) {
            (Some(share), true) => message!("verdict-shown-more-share", share = share),
            (Some(share), false) => message!("verdict-shown-less-share", share = share),
            (None, true) => message!("verdict-shown-more"),
            (None, false) => message!("verdict-shown-less"),
        };
        return of_pair(shown).into();
    }
    if !pair.difference.knows_days() && pair.p_corrected < SHOWN_P {
        let of_one_day = match is_more {
            true => message!("verdict-one-day-more"),
            false => message!("verdict-one-day-less"),
        };
        return of_pair(of_one_day).into();
    }
    if pair.difference.is_shown_alone() {
        let pairs = comparison.pairs.len();
        let by_chance = match is_more {
            true => message!("verdict-by-chance-more", pairs = pairs),
            false => message!("verdict-by-chance-less", pairs = pairs),
        };
        return of_pair(by_chance).into();
    }
    let not_shown = match is_more {
        true => message!("verdict-not-shown-more"),
        false => message!("verdict-not-shown-less"),
    };
    joined([of_pair(not_shown)].into_iter().chain(needed(pair)), " ")
}

/// The difference as a part of the first one's power, %; `None` where that is near zero, of
/// which a part would say nothing.
fn share_percent(comparison: &Comparison, pair: &Pair) -> Option<f64> {
    let first = &comparison.campaigns[pair.difference.first];
    let (power_w, half_width_w) = if pair.difference.conditions_differ {
        let power = &first.water_balance.as_ref()?.power_700_50_w;
        (power.value, power.half_width())
    } else {
        let budget = &first.s580.uncertainty()?.budget;
        (budget.value, budget.expanded)
    };
    let difference_w = pair.difference.decisive()?.value;
    (power_w > half_width_w).then(|| difference_w.abs() / power_w * 100.0)
}

/// What would show a difference.
fn needed(pair: &Pair) -> Option<Message> {
    if !pair.difference.knows_days() {
        return Some(message!("needed-other-days"));
    }
    let needed = pair.difference.needed?;
    let sought = short(needed.sought_w);
    Some(match needed.days_each {
        Some(0) => message!("needed-none", sought = sought),
        Some(days) => message!("needed-days", days = days, sought = sought),
        None => message!("needed-no-number", sought = sought),
    })
}

/// Where the uncertainty of the difference that decides comes from; of the ratings' where
/// none does.
fn budget(pair: &Pair, words: &Words) -> PairBudget {
    let difference = &pair.difference;
    let weighed = difference.decisive().unwrap_or(&difference.ratings);
    let said = |number_w: f64| words.say(watts(fixed(number_w, 2)));
    let of_parts = weighed.parts.iter().map(|part| {
        [
            words.say(part.name()),
            said(part.of_difference),
            said(part.apart),
        ]
    });
    let apart_w = weighed.parts.iter().map(|part| squared(part.apart));
    let combined = [
        words.say(message!("pair-budget-combined")),
        said(weighed.combined),
        said(apart_w.sum::<f64>().sqrt()),
    ];
    let factor = fixed(weighed.coverage_factor, 2);
    let expanded = [
        words.say(message!("pair-budget-expanded", factor = factor)),
        said(weighed.expanded()),
        String::new(),
    ];
    PairBudget {
        title: words.say(message!(
            "pair-budget-title",
            pair = between(pair),
            figure = figure_of(difference, weighed)
        )),
        rows: of_parts.chain([combined, expanded]).collect(),
    }
}
