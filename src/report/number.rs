//! The number of a report: the same inputs have the same.

use crate::hash::sha256_hex;
use crate::procedure::Assessment;

/// Digits of the number given to a report that has none.
const NUMBER_DIGITS: usize = 10;

/// The campaign's own number, else one made from the inputs' hashes and our version.
pub fn report_number(assessment: &Assessment) -> String {
    assessment
        .tested
        .campaign
        .report_number
        .clone()
        .unwrap_or_else(|| {
            let inputs = assessment.tested.inputs().into_iter();
            short_number(&inputs.map(|input| input.sha256).collect::<Vec<_>>())
        })
}

/// A number made of hashes and our version.
pub fn short_number(hashes: &[String]) -> String {
    let version = env!("CARGO_PKG_VERSION");
    let text = hashes.join("\n") + "\n" + version;
    let hash = sha256_hex(text.as_bytes()).to_uppercase();
    hash[..NUMBER_DIGITS].to_owned()
}
