//! What a procedure finds about its own result, and how far the result conforms.

use serde::{Deserialize, Serialize};

use crate::language::Message;

/// How far a result conforms, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    Conforms,
    ConformsWithNotes,
    Indicative,
    /// There is no number.
    NoRating,
    /// The readings contradict physics, whether there is a number or not.
    NotValid,
}

impl Level {
    /// Every level, best first.
    pub const ALL: &[Level] = &[
        Level::Conforms,
        Level::ConformsWithNotes,
        Level::Indicative,
        Level::NoRating,
        Level::NotValid,
    ];

    /// The code in files.
    pub const fn code(self) -> &'static str {
        match self {
            Level::Conforms => "conforms",
            Level::ConformsWithNotes => "conforms-with-notes",
            Level::Indicative => "indicative",
            Level::NotValid => "not-valid",
            Level::NoRating => "no-rating",
        }
    }

    /// The code in `rating.json`, where a campaign without a rating is `indicative`: its rating
    /// there is `null`.
    pub const fn code_in_files(self) -> &'static str {
        match self {
            Level::NoRating => Level::Indicative.code(),
            level => level.code(),
        }
    }

    /// Whether the result is worse than one that conforms, with notes or without.
    pub fn falls_short(self) -> bool {
        self >= Level::Indicative
    }

    /// The level in words.
    pub fn describe(self) -> Message {
        Message::new(format!("level-{}", self.code()))
    }
}

/// Something that lowers the level; `C` is the procedure's closed list of codes.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding<C> {
    pub code: C,
    /// The best level it allows.
    pub level: Level,
    /// What was found.
    pub text: Message,
    /// What would mend it.
    pub remedy: Message,
}

impl<C> Finding<C> {
    /// A finding that allows a level at best.
    pub fn of(level: Level, code: C, text: Message, remedy: Message) -> Self {
        Finding {
            code,
            level,
            text,
            remedy,
        }
    }

    /// A finding that leaves the result indicative.
    pub fn indicative(code: C, text: Message, remedy: Message) -> Self {
        Finding::of(Level::Indicative, code, text, remedy)
    }

    /// A finding that a conforming result is to carry as a note.
    pub fn note(code: C, text: Message, remedy: Message) -> Self {
        Finding::of(Level::ConformsWithNotes, code, text, remedy)
    }
}

/// The level that all findings together allow.
pub fn level_of<C>(findings: &[Finding<C>]) -> Level {
    let levels = findings.iter().map(|finding| finding.level);
    levels.max().unwrap_or(Level::Conforms)
}
