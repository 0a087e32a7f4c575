//! What came of verifying, as data.

/// So many differences of one check are told; the rest are counted.
const TOLD: usize = 8;

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

/// What came of verifying a report.
#[derive(Debug)]
pub struct Verification {
    /// Time of issue, in words; `None` where it does not say.
    pub issued: Option<String>,
    pub checks: Vec<Check>,
}

impl Verification {
    /// Whether nothing differs.
    pub fn agrees(&self) -> bool {
        self.of(Outcome::Differs).is_empty()
    }

    /// The subjects of the checks with an outcome.
    pub fn of(&self, outcome: Outcome) -> Vec<&'static str> {
        let checks = self.checks.iter().filter(|check| check.outcome == outcome);
        checks.map(|check| check.subject).collect()
    }
}
