//! What a difference comes from, as far as gain and loss show it.

use super::calls::Calls;
use super::spoken::spoken;
use crate::comparison::Comparison;
use crate::comparison::pair::{Causes, Pair};
use crate::comparison::weigh::Weighed;
use crate::language::{Message, Phrase, joined};
use crate::message;
use crate::procedure::s580::uncertainty::days::SHOWN_P;

/// What is shown of gain and loss in the direction of a difference.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cause {
    Gain,
    Loss,
    Both,
    /// None of it explains the difference.
    NotShown,
    /// Without a heat balance of both, or in different planes.
    Untold,
}

/// What a shown difference comes from; `None` where none is shown.
pub fn cause_of(pair: &Pair) -> Option<Cause> {
    let Some(causes) = &pair.difference.causes else {
        return Some(Cause::Untold);
    };
    if !pair.is_shown() {
        return None;
    }
    let [by_gain, by_loss] = explain(pair, causes);
    Some(match (by_gain, by_loss) {
        (true, true) => Cause::Both,
        (true, false) => Cause::Gain,
        (false, true) => Cause::Loss,
        (false, false) => Cause::NotShown,
    })
}

fn is_shown(weighed: &Weighed) -> bool {
    weighed.knows_days() && weighed.p < SHOWN_P
}

/// Whether gain and loss are shown to differ in the direction of the difference.
fn explain(pair: &Pair, causes: &Causes) -> [bool; 2] {
    let decisive = pair.difference.decisive();
    let is_more = decisive.is_some_and(|weighed| weighed.value > 0.0);
    let (gain, loss) = (&causes.gain_m2, &causes.loss_w_per_k);
    [
        is_shown(gain) && (gain.value > 0.0) == is_more,
        is_shown(loss) && (loss.value > 0.0) != is_more,
    ]
}

/// What a pair's difference comes from, with the differences of gain and loss.
pub fn cause(comparison: &Comparison, pair: &Pair, calls: &Calls) -> Phrase {
    let Some(causes) = &pair.difference.causes else {
        return match pair.difference.planes_differ {
            true => message!("cause-untold-planes").into(),
            false => message!("cause-untold").into(),
        };
    };
    let told = comparison.told(pair.difference.first, pair.difference.second);
    let [first, second] = [told.subtrahend, told.minuend].map(|place| calls.name(place));
    let named = match cause_of(pair) {
        None => vec![message!("cause-no-difference")],
        Some(Cause::NotShown | Cause::Untold) => vec![message!("cause-not-shown")],
        Some(_) => named(causes, told.sign, [first, second]),
    };
    let (gain, gain_interval) = spoken(&causes.gain_m2, told.sign);
    let (loss, loss_interval) = spoken(&causes.loss_w_per_k, told.sign);
    let numbers = message!(
        "cause-numbers",
        first = first,
        second = second,
        gain = gain,
        gain_interval = gain_interval,
        loss = loss,
        loss_interval = loss_interval
    );
    joined(named.into_iter().chain([numbers]), " ")
}

/// What is shown of gain and of loss.
fn named(causes: &Causes, sign: f64, [first, second]: [&str; 2]) -> Vec<Message> {
    let (gain, loss) = (&causes.gain_m2, &causes.loss_w_per_k);
    let of_gain = match gain.value * sign > 0.0 {
        true => message!("cause-more-gain"),
        false => message!("cause-less-gain"),
    };
    let of_gain = of_gain.with("first", first).with("second", second);
    let of_loss = match loss.value * sign > 0.0 {
        true => message!("cause-more-loss"),
        false => message!("cause-less-loss"),
    };
    let of_loss = of_loss.with("first", first).with("second", second);
    let sentences = [(gain, of_gain), (loss, of_loss)].into_iter();
    let shown = sentences.filter(|(weighed, _)| is_shown(weighed));
    shown.map(|(_, sentence)| sentence).collect()
}
