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

/// The cautions.
pub fn cautions(words: &Words) -> CautionPart {
    let caution = |hazard: &str| {
        let say = |part: &str| words.say(Message::new(format!("caution-{hazard}-{part}")));
        Caution {
            title: say("title"),
            text: say("text"),
        }
    };
    CautionPart {
        first: words.say(message!("caution-first")),
        cautions: HAZARDS.map(caution).into(),
        sources: words.say(message!("caution-sources")),
    }
}
