//! What came of verifying, as data.

/// This version of simmerline.
pub const THIS_VERSION: &str = env!("CARGO_PKG_VERSION");
/// So many differences of one check are told on a terminal; the rest are counted.
const TOLD: usize = 40;

/// What came of one check.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    Agrees,
    Differs,
    /// It could not be compared; the text says why.
    NotCompared,
}

/// One check.
#[derive(Debug)]
pub struct Check {
    /// What was compared, in one word.
    pub subject: &'static str,
    pub outcome: Outcome,
    /// What was found, in one line.
    pub text: String,
    /// What differs, a line each.
    pub differences: Vec<String>,
}

impl Check {
    /// It agrees unless something differs.
    pub fn new(subject: &'static str, text: impl Into<String>, differences: Vec<String>) -> Self {
        Check {
            subject,
            outcome: match differences.is_empty() {
                true => Outcome::Agrees,
                false => Outcome::Differs,
            },
            text: text.into(),
            differences,
        }
    }

    /// It was not compared.
    pub fn skipped(subject: &'static str, why: impl Into<String>) -> Self {
        Check {
            subject,
            outcome: Outcome::NotCompared,
            text: why.into(),
            differences: Vec::new(),
        }
    }

    /// What differs, a line each, no more than can be read.
    pub fn told(&self) -> Vec<String> {
        let mut told: Vec<String> = self.differences.iter().take(TOLD).cloned().collect();
        let untold = self.differences.len() - told.len();
        if untold > 0 {
            told.push(format!("and {untold} more"));
        }
        told
    }
}

/// What it all comes to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Verdict {
    /// Byte for byte what this version makes of the data inside.
    Issued,
    /// The same content, in a file that another program wrote.
    SameContent,
    /// Made by another version, which alone can hold its pages; its numbers agree.
    OtherVersion(String),
    Differs,
}

impl Verdict {
    /// The words of all verdicts in data.
    pub const CODES: [&'static str; 4] = ["issued", "same-content", "other-version", "differs"];

    /// Its word in data.
    pub fn code(&self) -> &'static str {
        let [issued, same_content, other_version, differs] = Verdict::CODES;
        match self {
            Verdict::Issued => issued,
            Verdict::SameContent => same_content,
            Verdict::OtherVersion(_) => other_version,
            Verdict::Differs => differs,
        }
    }

    /// The process's exit code.
    pub fn exit_code(&self) -> u8 {
        match self {
            Verdict::Issued => 0,
            Verdict::Differs => 6,
            Verdict::SameContent => 7,
            Verdict::OtherVersion(_) => 8,
        }
    }
}

/// What came of verifying a file.
#[derive(Debug)]
pub struct Verification {
    /// What the file is: a report, a comparison, a field sheet.
    pub kind: &'static str,
    /// Time of issue, in words; `None` where it does not say.
    pub issued: Option<String>,
    /// The program that says it saved the file last, where it is not the one that was issued.
    pub saved_by: Option<String>,
    pub checks: Vec<Check>,
    pub verdict: Verdict,
}

impl Verification {
    /// Whether nothing that could be compared differs.
    pub fn agrees(&self) -> bool {
        self.verdict != Verdict::Differs
    }

    /// The subjects of the checks with an outcome.
    pub fn of(&self, outcome: Outcome) -> Vec<&'static str> {
        let checks = self.checks.iter().filter(|check| check.outcome == outcome);
        checks.map(|check| check.subject).collect()
    }

    /// The verdict in words.
    pub fn sentence(&self) -> String {
        let Verification { kind, .. } = self;
        match &self.verdict {
            Verdict::Issued => format!(
                "The {kind} is the file that was issued: byte for byte what simmerline {THIS_VERSION} makes of the data inside it."
            ),
            Verdict::SameContent => {
                let by = self.saved_by.as_ref();
                let by = by.map_or_else(String::new, |by| {
                    format!(" (it says \"{}\")", by.escape_debug())
                });
                format!(
                    "Saved again by another program{by}: the content agrees with the data inside, the file is not the one that was issued."
                )
            }
            Verdict::OtherVersion(version) => format!(
                "Rating, line and intervals agree with the data inside; the rest, its ± and its pages among it, can be held by the version alone that the {kind} names: verify it with simmerline {version}."
            ),
            Verdict::Differs => format!(
                "The {kind} DOES NOT AGREE with the data attached to it: {}.",
                self.of(Outcome::Differs).join(", ")
            ),
        }
    }
}
