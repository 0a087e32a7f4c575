//! Why a file is not read.

/// Why, in words; where in the file, bytes from its beginning.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unreadable {
    /// It breaks off, or is no PDF.
    Damaged {
        what: String,
        at: Option<usize>,
    },
    /// Readers would find different things in it.
    TwoReadings {
        what: String,
    },
    Encrypted,
}

impl Unreadable {
    pub fn damaged(what: impl Into<String>, at: usize) -> Self {
        Unreadable::Damaged {
            what: what.into(),
            at: Some(at),
        }
    }

    pub fn two_readings(what: impl Into<String>) -> Self {
        Unreadable::TwoReadings { what: what.into() }
    }
}
