//! What a difference comes from, as far as gain and loss show it.

use super::spoken::spoken;
use crate::comparison::pair::{Causes, Difference, Pair};
use crate::comparison::weigh::Weighed;
use crate::language::{Message, Phrase, joined};
use crate::message;
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::report::comparison::names::letter;

/// What a pair's difference comes from, with the differences of gain and loss.
pub fn cause(pair: &Pair) -> Phrase {
    let Some(causes) = &pair.difference.causes else {
        return message!("cause-untold").into();
    };
    let named = if pair.is_shown() {
        named(pair, causes)
    } else {
        vec![message!("cause-no-difference")]
    };
    let sentences = named.into_iter().chain([numbers(pair, causes)]);
    joined(sentences, " ")
}

/// What is shown of gain and loss; that nothing is, where none of it explains the difference.
fn named(pair: &Pair, causes: &Causes) -> Vec<Message> {
    let is_shown = |weighed: &Weighed| weighed.knows_days() && weighed.p < SHOWN_P;
    let is_more = pair
        .difference
        .decisive()
        .is_some_and(|weighed| weighed.value > 0.0);
    let (gain, loss) = (&causes.gain_m2, &causes.loss_w_per_k);
    let (more_gain, more_loss) = (gain.value > 0.0, loss.value > 0.0);
    let by_gain = is_shown(gain) && more_gain == is_more;
    let by_loss = is_shown(loss) && more_loss != is_more;
    if !(by_gain || by_loss) {
        return vec![message!("cause-not-shown")];
    }
    let [first, second] = letters(pair);
    let of_gain = match more_gain {
        true => message!("cause-more-gain"),
        false => message!("cause-less-gain"),
    };
    let of_gain = of_gain.with("first", &first).with("second", &second);
    let of_loss = match more_loss {
        true => message!("cause-more-loss"),
        false => message!("cause-less-loss"),
    };
    let of_loss = of_loss.with("first", &first).with("second", &second);
    let sentences = [(gain, of_gain), (loss, of_loss)].into_iter();
    let shown = sentences.filter(|(weighed, _)| is_shown(weighed));
    shown.map(|(_, sentence)| sentence).collect()
}

/// Letters of the first and of the second.
fn letters(pair: &Pair) -> [String; 2] {
    let Difference { first, second, .. } = pair.difference;
    [first, second].map(|place| letter(place).to_string())
}

fn numbers(pair: &Pair, causes: &Causes) -> Message {
    let [first, second] = letters(pair);
    let (gain, gain_interval) = spoken(&causes.gain_m2);
    let (loss, loss_interval) = spoken(&causes.loss_w_per_k);
    message!(
        "cause-numbers",
        first = first,
        second = second,
        gain = gain,
        gain_interval = gain_interval,
        loss = loss,
        loss_interval = loss_interval
    )
}
