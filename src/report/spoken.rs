//! What several parts of a report say alike.

use crate::campaign::Campaign;
use crate::campaign::standard_uncertainty::Uncertainty;
use crate::language::{Phrase, kelvins, metres_per_second, short};
use crate::message;

/// What a report says where the campaign file says nothing.
pub fn not_stated() -> Phrase {
    message!("not-stated").into()
}

/// Who made a document, in its properties: the tester, else the laboratory, else this program.
pub fn author(campaign: &Campaign) -> &str {
    let stated = campaign.tester.as_ref();
    let stated = stated.or(campaign.report.laboratory.as_ref());
    stated.map_or("simmerline", String::as_str)
}

/// A standard uncertainty with its unit.
pub fn spoken_uncertainty(uncertainty: Uncertainty) -> Phrase {
    match uncertainty {
        Uncertainty::Relative(fraction) => {
            // Percent with at most four decimals.
            let percent = (fraction * 1e6).round() / 1e4;
            message!("uncertainty-percent", percent = short(percent)).into()
        }
        Uncertainty::Kelvin(kelvin) => kelvins(short(kelvin)),
        Uncertainty::MetresPerSecond(speed) => metres_per_second(short(speed)),
        Uncertainty::Seconds(seconds) => {
            message!("uncertainty-seconds", seconds = short(seconds)).into()
        }
    }
}
