//! What a pair comes to: how large the difference is, how sure, and from what that follows.

use serde::Serialize;
use simmerline_math::squared;

use super::calls::Calls;
use super::spoken::{oriented, spoken, spoken_ends};
use super::told::{Told, told};
use crate::comparison::Comparison;
use crate::comparison::pair::{Difference, Pair, compared};
use crate::comparison::weigh::{Method, Weighed};
use crate::language::{Message, Phrase, Words, fixed, joined, probability, short};
use crate::message;
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::report::rows::Row;
use crate::units::{decimals_for, is_zero};

/// Smallest part of an uncertainty that is not printed as nothing, W.
const LEAST_PRINTED_W: f64 = 0.05;

/// The section on the difference of two.
#[derive(Debug, Clone, Serialize)]
pub struct DifferencePart {
    pub rows: Vec<Row>,
    pub budget: PairBudget,
}

/// Where the uncertainty of a difference comes from.
#[derive(Debug, Clone, Serialize)]
pub struct PairBudget {
    pub title: String,
    pub rows: Vec<[String; 3]>,
}

/// Puts the difference of two into words; `None` where it is not of two.
pub fn difference(comparison: &Comparison, words: &Words) -> Option<DifferencePart> {
    let [pair] = comparison.pairs.as_slice() else {
        return None;
    };
    let told = comparison.told(pair.difference.first, pair.difference.second);
    let of_ratings = figure_rows(pair, &pair.difference.ratings, told.sign);
    let common = pair.difference.common_conditions.as_ref();
    let common = common.filter(|_| pair.difference.conditions_differ);
    let of_common = common.map(|weighed| figure_rows(pair, weighed, told.sign));
    let rows = of_ratings
        .into_iter()
        .chain(of_common.into_iter().flatten());
    Some(DifferencePart {
        rows: rows
            .map(|(label, text)| Row::said(words, label, text))
            .collect(),
        budget: budget(pair, words),
    })
}

fn watts(number: impl Into<Phrase>) -> Phrase {
    joined([number.into(), "W".into()], " ")
}

/// A difference and its interval; where it decides, how sure it is, too.
fn figure_rows(pair: &Pair, weighed: &Weighed, sign: f64) -> Vec<(Message, Phrase)> {
    let (value, interval) = spoken(weighed, sign);
    let figure = figure_of(&pair.difference, weighed);
    let said = match weighed.knows_days() {
        true => message!("difference-with-interval"),
        false => message!("difference-with-interval-one-day"),
    };
    let said = said
        .with("difference", watts(value))
        .with("interval", watts(interval));
    let why_not = match pair.difference.planes_differ {
        true => message!("difference-planes"),
        false => message!("difference-scaled"),
    };
    let is_decisive = pair
        .difference
        .decisive()
        .is_some_and(|one| std::ptr::eq(one, weighed));
    let said: Phrase = match is_decisive {
        true => said.into(),
        false => joined([said, why_not], "; "),
    };
    let mut rows = vec![(figure, said)];
    if is_decisive {
        let verdict = match pair.is_shown() {
            true => message!("difference-real"),
            false => message!("difference-not-shown"),
        };
        rows.push((message!("difference-verdict"), verdict.into()));
        rows.push((message!("difference-p"), probability(weighed.p)));
        rows.push((message!("difference-method"), spoken_method(weighed).into()));
    }
    rows
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

/// The sentences on a pair that a builder reads first.
pub fn pair_sentence(comparison: &Comparison, pair: &Pair, calls: &Calls) -> Phrase {
    let difference = &pair.difference;
    if difference.planes_differ {
        return of_planes(comparison, difference, calls).into();
    }
    let about_suns = difference
        .conditions_differ
        .then(|| about_suns(comparison, difference, calls));
    let of_pair = match difference.decisive() {
        Some(weighed) => decided(comparison, pair, weighed, calls),
        None => message!("verdict-untold").into(),
    };
    let about_suns = about_suns.into_iter().flatten().map(Phrase::from);
    joined(about_suns.chain([of_pair]), " ")
}

/// What the ratings' difference is, where irradiance is in another plane: no more is told.
fn of_planes(comparison: &Comparison, difference: &Difference, calls: &Calls) -> Message {
    let told = comparison.told(difference.first, difference.second);
    let (value, interval) = spoken(&difference.ratings, told.sign);
    message!(
        "verdict-planes",
        second = calls.name(told.minuend),
        first = calls.name(told.subtrahend),
        difference = value,
        interval = interval
    )
}

/// What the ratings' difference is, where irradiance differed, and what is said instead.
fn about_suns(comparison: &Comparison, difference: &Difference, calls: &Calls) -> Vec<Message> {
    let told = comparison.told(difference.first, difference.second);
    let sun = |place: usize| -> Phrase {
        let mean_w_m2 = comparison.campaigns[place].s580.mean_irradiance_w_m2();
        mean_w_m2.map_or_else(|| "–".into(), |mean_w_m2| fixed(mean_w_m2, 0))
    };
    let (spoken_difference, interval) = spoken(&difference.ratings, told.sign);
    let scaled = message!(
        "verdict-suns",
        second = calls.name(told.minuend),
        first = calls.name(told.subtrahend),
        difference = spoken_difference,
        interval = interval,
        second_sun = sun(told.minuend),
        first_sun = sun(told.subtrahend)
    );
    let common = difference.common_conditions.as_ref();
    let common = common.map(|_| message!("verdict-common"));
    [scaled].into_iter().chain(common).collect()
}

/// What is said of the difference that decides.
fn decided(comparison: &Comparison, pair: &Pair, weighed: &Weighed, calls: &Calls) -> Phrase {
    let told = comparison.told(pair.difference.first, pair.difference.second);
    let (value, _) = oriented(weighed, told.sign);
    let is_more = value >= 0.0;
    let decimals = decimals_for(weighed.expanded());
    let is_even = is_zero(value, decimals);
    // Of what is said to be more or less: never a negative size. What is neither is told as the
    // lead tells it.
    let is_turned = !is_more && !is_even;
    let (_, ends) = oriented(weighed, if is_turned { -told.sign } else { told.sign });
    let of_names = |said: Message| {
        said.with("second", calls.name(told.minuend))
            .with("first", calls.name(told.subtrahend))
            .with("interval", spoken_ends(ends, decimals))
    };
    let of_pair = |said: Message| of_names(said).with("difference", fixed(value.abs(), decimals));
    if pair.is_shown() {
        let share = share_percent(comparison, pair, told.subtrahend);
        let share = share.map(|percent| fixed(percent, 0));
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
        let pairs = compared(&comparison.pairs);
        let by_chance = match is_more {
            true => message!("verdict-by-chance-more", pairs = pairs),
            false => message!("verdict-by-chance-less", pairs = pairs),
        };
        return of_pair(by_chance).into();
    }
    let with_need = |said: Message| joined([said].into_iter().chain(needed(pair)), " ");
    // "0 W more" is no more.
    if is_even {
        return with_need(of_names(message!("verdict-not-shown-even")));
    }
    with_need(of_pair(match is_more {
        true => message!("verdict-not-shown-more"),
        false => message!("verdict-not-shown-less"),
    }))
}

/// The difference as a part of the power that it is told from, %; `None` where that is near
/// zero, of which a part would say nothing.
fn share_percent(comparison: &Comparison, pair: &Pair, of: usize) -> Option<f64> {
    let campaign = &comparison.campaigns[of];
    let (power_w, half_width_w) = if pair.difference.conditions_differ {
        let power = &campaign.water_balance.as_ref()?.power_700_50_w;
        (power.value, power.half_width())
    } else {
        let budget = &campaign.s580.uncertainty()?.budget;
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
    let needed = pair.needed?;
    let sought = short(needed.sought_w);
    Some(match needed.days_each {
        Some(0) => message!("needed-none", sought = sought),
        Some(days) => message!("needed-days", days = days, sought = sought),
        None => message!("needed-no-number", sought = sought),
    })
}

/// Of many: what would tell the first from the next that it is not told apart from.
pub fn leaders_needed(comparison: &Comparison, calls: &Calls) -> Option<Phrase> {
    let ranked = &comparison.ranking.ranked;
    let mut others = 1..ranked.len();
    let next = others.find(|rank| told(comparison, 0, *rank) == Told::Alike)?;
    let (pair, _) = comparison.between(0, next)?;
    let pair_said = message!(
        "needed-of",
        first = calls.name(ranked[0]),
        second = calls.name(ranked[next])
    );
    Some(joined([pair_said, needed(pair)?], " "))
}

/// Where the uncertainty of the difference that decides comes from; of the ratings' where
/// none does.
fn budget(pair: &Pair, words: &Words) -> PairBudget {
    let difference = &pair.difference;
    let weighed = difference.decisive().unwrap_or(&difference.ratings);
    let said = |number_w: f64| match number_w {
        0.0 => words.say(watts(fixed(0.0, 0))),
        small if small < LEAST_PRINTED_W => {
            format!("< {}", words.say(watts(fixed(LEAST_PRINTED_W, 2))))
        }
        _ => words.say(watts(fixed(number_w, 1))),
    };
    let mut parts: Vec<_> = weighed.parts.iter().collect();
    parts.sort_by(|one, two| two.of_difference.total_cmp(&one.of_difference));
    let of_parts = parts.iter().map(|part| {
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
    let of_expanded = match weighed.knows_days() {
        true => message!("pair-budget-expanded"),
        false => message!("pair-budget-expanded-one-day"),
    };
    let expanded = [
        words.say(of_expanded.with("factor", factor)),
        said(weighed.expanded()),
        String::new(),
    ];
    PairBudget {
        title: words.say(message!(
            "pair-budget-title",
            figure = figure_of(difference, weighed)
        )),
        rows: of_parts.chain([combined, expanded]).collect(),
    }
}
