//! A difference in words, with its interval.

use crate::comparison::weigh::Weighed;
use crate::language::{Message, Phrase, fixed, joined};
use crate::message;
use crate::units::decimals_for;

/// `6 to 30`, as fine as the half-width deserves.
pub fn spoken_interval((lower, upper): (f64, f64)) -> Message {
    let decimals = decimals_for((upper - lower) / 2.0);
    spoken_ends((lower, upper), decimals)
}

/// `6 to 30`, with so many decimals.
pub fn spoken_ends((lower, upper): (f64, f64), decimals: usize) -> Message {
    message!(
        "comparison-span",
        from = fixed(lower, decimals),
        to = fixed(upper, decimals)
    )
}

/// `+18`, and `6 to 30`.
pub fn spoken(weighed: &Weighed) -> (Phrase, Message) {
    (
        signed(weighed.value, decimals_for(weighed.expanded())),
        spoken_interval(weighed.interval()),
    )
}

/// A number with its sign, whichever it is.
pub fn signed(value: f64, decimals: usize) -> Phrase {
    let sign = if value > 0.0 { "+" } else { "" };
    joined([sign.into(), fixed(value, decimals)], "")
}
