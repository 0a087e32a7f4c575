//! The acceptance half angle in words.

use crate::language::{Message, Words, fixed};
use crate::message;
use crate::procedure::acceptance::{Acceptance, HalfAngle};
use crate::report::rows::{FindingText, Row};

/// Its row: the angle with its range, or that it does not show.
pub fn row(acceptance: &Acceptance, words: &Words) -> Row {
    let text = match &acceptance.half_angle {
        Some(found) => angle(found),
        None => message!("acceptance-none"),
    };
    Row::said(words, message!("acceptance"), text)
}

/// The angle with its range.
pub fn angle(found: &HalfAngle) -> Message {
    message!(
        "acceptance-text",
        value = fixed(found.value_deg, 1),
        lower = fixed(found.range_deg.lower, 1),
        upper = fixed(found.range_deg.upper, 1)
    )
}

/// What it is and rests on; `None` where there is none.
pub fn rests_on(acceptance: &Acceptance) -> Option<Message> {
    acceptance.half_angle.map(|_| {
        message!(
            "acceptance-rests-on",
            stretches = acceptance.teeth,
            angle = fixed(acceptance.largest_deg, 1)
        )
    })
}

/// Why there is none.
pub fn findings(acceptance: &Acceptance, words: &Words) -> Vec<FindingText> {
    let findings = acceptance.findings.iter();
    findings
        .map(|one| FindingText::said(words, one.code.code(), one))
        .collect()
}
