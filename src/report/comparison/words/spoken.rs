//! A difference in words, with its interval.

use crate::comparison::weigh::Weighed;
use crate::language::{Message, Phrase, fixed, joined};
use crate::message;
use crate::units::decimals_for;

/// `6 to 30`, with so many decimals.
pub fn spoken_ends((lower, upper): (f64, f64), decimals: usize) -> Message {
    message!(
        "comparison-span",
        from = fixed(lower, decimals),
        to = fixed(upper, decimals)
    )
}

/// A difference and its interval, turned round where the sign is −1.
pub fn oriented(weighed: &Weighed, sign: f64) -> (f64, (f64, f64)) {
    let (lower, upper) = weighed.interval();
    match sign < 0.0 {
        true => (-weighed.value, (-upper, -lower)),
        false => (weighed.value, (lower, upper)),
    }
}

/// `+18`, and `6 to 30`.
pub fn spoken(weighed: &Weighed, sign: f64) -> (Phrase, Message) {
    let (value, ends) = oriented(weighed, sign);
    let decimals = decimals_for(weighed.expanded());
    (signed(value, decimals), spoken_ends(ends, decimals))
}

/// A number with its sign, whichever it is.
pub fn signed(value: f64, decimals: usize) -> Phrase {
    let sign = if value > 0.0 { "+" } else { "" };
    joined([sign.into(), fixed(value, decimals)], "")
}
