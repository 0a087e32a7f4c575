//! A difference in words, with its interval.

use crate::comparison::weigh::Weighed;
use crate::language::{Message, Phrase, fixed, joined};
use crate::message;
use crate::units::{decimals_for, is_zero};

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

/// A number with its sign, whichever it is; what rounds to zero has none.
pub fn signed(value: f64, decimals: usize) -> Phrase {
    let sign = match value > 0.0 && !is_zero(value, decimals) {
        true => "+",
        false => "",
    };
    joined([sign.into(), fixed(value, decimals)], "")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_rounds_to_zero_has_no_sign() {
        let said = |value, decimals| signed(value, decimals).to_string();
        assert_eq!(said(0.4, 0), "0");
        assert_eq!(said(-0.4, 0), "0");
        assert_eq!(said(0.6, 0), "+1");
        assert_eq!(said(-0.04, 1), "0.0");
        assert_eq!(said(-0.06, 1), "−0.1");
    }
}
