//! The cautions that go with every report. Where sources differ, the cautious value.

use serde::Serialize;

use crate::language::{Message, Words};
use crate::message;

/// The section of cautions.
#[derive(Debug, Clone, Serialize)]
pub struct CautionPart {
    /// Before all others.
    pub first: String,
    pub cautions: Vec<Caution>,
    /// Which language governs; empty in English.
    pub governs: String,
}

/// One hazard.
#[derive(Debug, Clone, Serialize)]
pub struct Caution {
    pub title: String,
    pub text: String,
    /// Where its numbers come from, or that it is common practice.
    pub source: String,
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

/// The cautions.
pub fn cautions(words: &Words) -> CautionPart {
    let caution = |hazard: &str| {
        let say = |part: &str| words.say(Message::new(format!("caution-{hazard}-{part}")));
        Caution {
            title: say("title"),
            text: say("text"),
            source: say("source"),
        }
    };
    CautionPart {
        first: words.say(message!("caution-first")),
        cautions: HAZARDS.map(caution).into(),
        governs: words.say(message!("caution-governs")),
    }
}
