//! What `verify --format json` prints.

use schemars::{JsonSchema, Schema};
use serde::Serialize;

use super::problem::{ProblemEntry, problem_entries};
use super::{schema_of, text_of};
use crate::error::{Error, Result};
use crate::verify::{Outcome, THIS_VERSION, Verdict, Verification};

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.verification/1";

/// Its name as a URI, in its JSON Schema.
pub const SCHEMA_ID: &str = "urn:simmerline:verification:1";

/// Of a file that could not be read.
const NOT_READ: &str = "not-read";

/// Codes of the verdicts.
const VERDICTS: [&str; 5] = {
    let [issued, same_content, other_version, differs] = Verdict::CODES;
    [issued, same_content, other_version, differs, NOT_READ]
};

const AGREES: &str = "agrees";
const DIFFERS: &str = "differs";
const NOT_COMPARED: &str = "not-compared";

/// Files, each held against the data that it carries. Sentences are English, what is not there
/// is null. Within a version of the schema keys are added, never taken away or changed.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(title = "Verification of reports", extend("$id" = SCHEMA_ID))]
pub struct VerificationFile {
    /// Name and version of this schema.
    #[schemars(extend("const" = SCHEMA))]
    schema: &'static str,
    /// Version of simmerline.
    tool_version: &'static str,
    /// In the order of the command line.
    reports: Vec<ReportEntry>,
}

/// A file.
#[derive(Debug, Serialize, JsonSchema)]
pub struct ReportEntry {
    /// As it was named.
    file: String,
    /// SHA-256 of its bytes, 64 lower-case hex digits; null where it could not be read.
    sha256: Option<String>,
    /// What came of it.
    #[schemars(extend("enum" = VERDICTS))]
    verdict: &'static str,
    /// The exit code of its verdict.
    exit_code: u8,
    /// The verdict in words.
    sentence: String,
    /// When it was issued, as it says.
    issued: Option<String>,
    /// The version that it says it was made by.
    made_by: Option<String>,
    /// The program that saved it again, as it says.
    saved_by: Option<String>,
    /// What was held against the data.
    checks: Vec<CheckEntry>,
    /// Files beside it that are of another edition.
    notes: Vec<String>,
    /// Why it could not be read; empty where it was.
    problems: Vec<ProblemEntry>,
}

/// Something that was held against the data.
#[derive(Debug, Serialize, JsonSchema)]
struct CheckEntry {
    /// What was compared.
    subject: &'static str,
    /// What came of it.
    #[schemars(extend("enum" = [AGREES, DIFFERS, NOT_COMPARED]))]
    outcome: &'static str,
    /// In words.
    text: String,
    /// What differs, each in words.
    differences: Vec<String>,
}

/// What came of a file that could be read.
pub struct Held<'a> {
    pub verification: &'a Verification,
    pub sha256: Option<&'a str>,
    pub made_by: Option<&'a str>,
    /// Files beside it that are of another edition.
    pub apart: &'a [String],
}

impl VerificationFile {
    /// Of files.
    pub fn new(reports: Vec<ReportEntry>) -> Self {
        VerificationFile {
            schema: SCHEMA,
            tool_version: THIS_VERSION,
            reports,
        }
    }

    /// The JSON Schema that what is printed meets; the repository has it as
    /// `templates/schemas/verification-1.schema.json`.
    pub fn schema() -> Schema {
        schema_of::<Self>()
    }

    /// As text.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn to_text(&self) -> Result<String> {
        text_of(self)
    }
}

impl ReportEntry {
    /// Of a file that could not be read.
    pub fn not_read(file: String, error: &Error) -> Self {
        ReportEntry {
            file,
            sha256: None,
            verdict: NOT_READ,
            exit_code: error.exit_code(),
            sentence: error.to_string(),
            issued: None,
            made_by: None,
            saved_by: None,
            checks: Vec::new(),
            notes: Vec::new(),
            problems: problem_entries(error),
        }
    }

    /// Of a file that was held against its data.
    pub fn held(file: String, held: &Held) -> Self {
        let verification = held.verification;
        let checks = verification.checks.iter().map(|check| CheckEntry {
            subject: check.subject,
            outcome: match check.outcome {
                Outcome::Agrees => AGREES,
                Outcome::Differs => DIFFERS,
                Outcome::NotCompared => NOT_COMPARED,
            },
            text: check.text.clone(),
            differences: check.differences.clone(),
        });
        ReportEntry {
            file,
            sha256: held.sha256.map(str::to_owned),
            verdict: verification.verdict.code(),
            exit_code: verification.verdict.exit_code(),
            sentence: verification.sentence(),
            issued: verification.issued.clone(),
            made_by: held.made_by.map(str::to_owned),
            saved_by: match verification.verdict {
                Verdict::Issued => None,
                _ => verification.saved_by.clone(),
            },
            checks: checks.collect(),
            notes: held.apart.to_vec(),
            problems: Vec::new(),
        }
    }
}
