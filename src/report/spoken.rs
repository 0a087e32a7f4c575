//! What several parts of a report say alike.

use crate::campaign::standard_uncertainty::Uncertainty;
use crate::language::{Message, Phrase, short};
use crate::message;

/// What a report says where the campaign file says nothing.
pub fn not_stated() -> Phrase {
    message!("not-stated").into()
}

/// A standard uncertainty with its unit.
pub fn spoken_uncertainty(uncertainty: Uncertainty) -> Message {
    match uncertainty {
        Uncertainty::Relative(fraction) => {
            // Percent with at most four decimals.
            let percent = (fraction * 1e6).round() / 1e4;
            message!("uncertainty-percent", percent = short(percent))
        }
        Uncertainty::Kelvin(kelvin) => message!("uncertainty-kelvin", kelvin = short(kelvin)),
        Uncertainty::MetresPerSecond(speed) => message!("uncertainty-speed", speed = short(speed)),
        Uncertainty::Seconds(seconds) => {
            message!("uncertainty-seconds", seconds = short(seconds))
        }
    }
}
