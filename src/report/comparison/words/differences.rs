//! Pair by pair: how large the difference is, how sure, and what it may come from.

use serde::Serialize;

use crate::comparison::Comparison;
use crate::comparison::needed::Needed;
use crate::comparison::pair::Pair;
use crate::comparison::shape::Shape;
use crate::comparison::weigh::Method;
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
pub fn differences(comparison: &Comparison, words: &Words) -> DifferencesPart {
    let pairs = &comparison.pairs;
    let shape = |pair: &Pair| Row::new(&between(pair), words.say(shape_message(pair)));
    let shown = pairs.iter().take(SHOWN_BUDGETS);
    let others = pairs.len().saturating_sub(SHOWN_BUDGETS);
    DifferencesPart {
        rows: pairs.iter().map(|pair| row(pair, words)).collect(),
        shapes: pairs.iter().map(shape).collect(),
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

/// `6 to 30`, as fine as the half-width deserves.
fn spoken_interval(pair: &Pair, (lower_w, upper_w): (f64, f64)) -> Message {
    let decimals = decimals_for(pair.difference.ratings.expanded());
    message!(
        "comparison-span",
        from = fixed(lower_w, decimals),
        to = fixed(upper_w, decimals)
    )
}

fn watts(number: impl Into<Phrase>) -> Phrase {
    joined([number.into(), "W".into()], " ")
}

fn row(pair: &Pair, words: &Words) -> DifferenceRow {
    let difference = signed(
        pair.difference.ratings.value,
        decimals_for(pair.difference.ratings.expanded()),
    );
    let method = match pair.difference.ratings.method {
        Method::Apart => message!("difference-apart"),
        Method::PairedByDay { days } => message!("difference-paired", days = days),
    };
    let verdict = if pair.is_shown() {
        message!("difference-real")
    } else {
        message!("difference-not-shown")
    };
    let cells = [
        between(pair).into(),
        watts(difference),
        watts(spoken_interval(pair, pair.difference.ratings.interval())),
        probability(pair.difference.p()),
        probability(pair.p_corrected),
        method.into(),
        verdict.into(),
    ];
    DifferenceRow {
        cells: cells.map(|cell| words.say(cell)).to_vec(),
        is_shown: pair.is_shown(),
    }
}

/// A number with its sign, whichever it is.
fn signed(value: f64, decimals: usize) -> Phrase {
    let sign = if value > 0.0 { "+" } else { "" };
    joined([sign.into(), fixed(value, decimals)], "")
}

/// The sentence on a pair that a builder reads first.
pub fn verdict(comparison: &Comparison, pair: &Pair, names: &[String]) -> Phrase {
    let call = |place: usize| {
        if names.len() <= NAMED {
            format!("{} ({})", letter(place), names[place])
        } else {
            letter(place).to_string()
        }
    };
    let is_more = pair.difference.ratings.value >= 0.0;
    let (lower_w, upper_w) = pair.difference.ratings.interval();
    let interval_w = if is_more {
        (lower_w, upper_w)
    } else {
        (-upper_w, -lower_w)
    };
    let size = fixed(
        pair.difference.ratings.value.abs(),
        decimals_for(pair.difference.ratings.expanded()),
    );
    let of_pair = |said: Message| {
        said.with("second", call(pair.difference.second))
            .with("first", call(pair.difference.first))
            .with("difference", &size)
            .with("interval", spoken_interval(pair, interval_w))
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
    if !pair.difference.knows_days && pair.p_corrected < SHOWN_P {
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

/// The difference as a part of the rating of the first, %; `None` where that is near zero,
/// of which a part would say nothing.
fn share_percent(comparison: &Comparison, pair: &Pair) -> Option<f64> {
    let first = &comparison.campaigns[pair.difference.first];
    let budget = &first.s580.uncertainty()?.budget;
    (budget.value > budget.expanded())
        .then(|| pair.difference.ratings.value.abs() / budget.value * 100.0)
}

/// What would show a difference, where the spread of days can be told and is the
/// campaigns' own.
fn needed(pair: &Pair) -> Option<Message> {
    if !pair.difference.knows_days {
        return Some(message!("needed-other-days"));
    }
    if pair.difference.ratings.method != Method::Apart {
        return None;
    }
    let needed: &Needed = &pair.difference.needed;
    let sought = short(needed.sought_w);
    Some(match needed.intervals_each {
        Some(0) => message!("needed-none", sought = sought),
        Some(more) => message!("needed-more", more = more, sought = sought),
        None => message!("needed-no-number", sought = sought),
    })
}

/// What the slopes and intercepts of a pair say, with their numbers.
pub fn shape_message(pair: &Pair) -> Message {
    let Some(shape) = &pair.difference.shape else {
        return message!("shape-unknown");
    };
    let numbers = if shape.by_days {
        message!("shape-numbers-by-days")
    } else {
        message!("shape-numbers")
    };
    let numbers = numbers
        .with("slope", signed(shape.slope_difference_w_per_k, 2))
        .with("slope_p", probability(shape.slopes.p))
        .with("intercept", signed(shape.intercept_difference_w, 0))
        .with("intercept_p", probability(shape.intercepts_p));
    if !pair.is_shown() {
        return message!("shape-no-cause", numbers = numbers);
    }
    meaning(shape, pair, numbers)
}

/// What a change of slope or intercept comes from.
fn meaning(shape: &Shape, pair: &Pair, numbers: Message) -> Message {
    let less_loss = shape.slope_difference_w_per_k > 0.0;
    let more_sun = shape.intercept_difference_w > 0.0;
    let said = match (shape.slopes_differ(), shape.intercepts_differ()) {
        (true, true) => match (less_loss, more_sun) {
            (true, true) => message!("shape-both-less-loss-more-sun"),
            (true, false) => message!("shape-both-less-loss-less-sun"),
            (false, true) => message!("shape-both-more-loss-more-sun"),
            (false, false) => message!("shape-both-more-loss-less-sun"),
        },
        (true, false) if less_loss => message!("shape-slopes-less-loss"),
        (true, false) => message!("shape-slopes-more-loss"),
        (false, true) if more_sun => message!("shape-levels-more-sun"),
        (false, true) => message!("shape-levels-less-sun"),
        (false, false) => return message!("shape-alike", numbers = numbers),
    };
    said.with("first", letter(pair.difference.first).to_string())
        .with("second", letter(pair.difference.second).to_string())
        .with("numbers", numbers)
}

fn budget(pair: &Pair, words: &Words) -> PairBudget {
    let said = |number_w: f64| words.say(watts(fixed(number_w, 2)));
    let of_parts = pair.difference.parts.iter().map(|part| {
        [
            words.say(part.name()),
            said(part.of_difference_w),
            said(part.apart_w),
        ]
    });
    let apart_w = pair
        .difference
        .parts
        .iter()
        .map(|part| part.apart_w.powi(2));
    let combined = [
        words.say(message!("pair-budget-combined")),
        said(pair.difference.ratings.combined),
        said(apart_w.sum::<f64>().sqrt()),
    ];
    let factor = fixed(pair.difference.ratings.coverage_factor, 2);
    let expanded = [
        words.say(message!("pair-budget-expanded", factor = factor)),
        said(pair.difference.ratings.expanded()),
        String::new(),
    ];
    PairBudget {
        title: words.say(message!("pair-budget-title", pair = between(pair))),
        rows: of_parts.chain([combined, expanded]).collect(),
    }
}
