//! The cautions that go with every report. Where sources differ, the cautious value.

use serde::Serialize;

use crate::language::{Message, Words, fixed, metres};
use crate::message;

/// The section of cautions.
#[derive(Debug, Clone, Serialize)]
pub struct CautionPart {
    /// Before all others.
    pub first: String,
    pub cautions: Vec<Caution>,
    /// Where their numbers come from; what is not named is common practice.
    pub sources: String,
}

/// One hazard.
#[derive(Debug, Clone, Serialize)]
pub struct Caution {
    pub title: String,
    pub text: String,
}

/// The hazards, in the order in which they are printed.
const HAZARDS: [&str; 9] = [
    "burns",
    "light",
    "fire",
    "unattended",
    "children",
    "wind",
    "materials",
    "food",
    "water",
];

/// Elevation above which water is to boil for longer, m: that of the caution on drinking water.
const BOIL_LONGER_ABOVE_M: f64 = 1500.0;

/// The cautions.
pub fn cautions(words: &Words) -> CautionPart {
    let caution = |hazard: &str| Caution {
        title: words.say(Message::new(format!("caution-{hazard}-title"))),
        text: words.say(match hazard {
            "water" => message!(
                "caution-water-text",
                elevation = metres(fixed(BOIL_LONGER_ABOVE_M, 0))
            ),
            _ => Message::new(format!("caution-{hazard}-text")),
        }),
    };
    CautionPart {
        first: words.say(message!("caution-first")),
        cautions: HAZARDS.map(caution).into(),
        sources: words.say(message!("caution-sources")),
    }
}
