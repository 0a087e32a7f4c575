//! `verify`: PDFs against the data that they carry.

use std::path::Path;

use serde::Serialize;

use super::args::{VerifyFormat, VerifyOptions};
use super::terminal::{line, print, print_error, print_json};
use crate::error::{Error, Problem, Result};
use crate::report::files::not_together;
use crate::verify::{
    Evidence, Outcome, Pdf, THIS_VERSION, Verdict, Verification, verification_of, verify,
};

/// Name and version of the schema of what is printed as data. Keys are only added within it.
const SCHEMA: &str = "simmerline.verification/1";

/// Verifies each file, and writes out what is attached to it if that is asked for. The exit
/// code is that of the gravest.
///
/// # Errors
/// [`Error::Usage`] if attachments cannot be written, or those of several files are asked for.
pub fn run(options: &VerifyOptions) -> Result<u8> {
    if options.extract.is_some() && options.reports.len() > 1 {
        let problem = Problem::at(Path::new("--extract"), "takes the attachments of one file");
        return Err(Error::Usage(problem.hint("name one file").into()));
    }
    let outcomes: Vec<_> = options
        .reports
        .iter()
        .map(|report| hold(report, options))
        .collect();
    match options.format {
        VerifyFormat::Text => {
            for (report, outcome) in options.reports.iter().zip(&outcomes) {
                match outcome {
                    Ok(held) => print(&lines(report, held))?,
                    Err(error) => print_error(error),
                }
            }
        }
        VerifyFormat::Json => {
            let reports = options.reports.iter().zip(&outcomes);
            let reports = reports.map(|(report, outcome)| entry(report, outcome));
            let all = Entries {
                schema: SCHEMA,
                tool_version: THIS_VERSION,
                reports: reports.collect(),
            };
            let text = serde_json::to_string_pretty(&all);
            let text = text.map_err(|error| Error::Internal(error.to_string()))?;
            print_json(&text)?;
        }
    }
    let mut codes = Vec::new();
    for outcome in &outcomes {
        match outcome {
            Ok(held) => {
                codes.push(held.verification.verdict.exit_code());
                if let Some(Err(error)) = &held.extracted {
                    print_error(error);
                    codes.push(error.exit_code());
                }
            }
            Err(error) => codes.push(error.exit_code()),
        }
    }
    Ok(codes
        .into_iter()
        .max_by_key(|code| gravity(*code))
        .unwrap_or(0))
}

/// How grave an exit code is among several: a fault of ours, one that differs, one that cannot
/// be read, one of another version, one that was saved again.
fn gravity(code: u8) -> u8 {
    const FROM_THE_LEAST: [u8; 8] = [0, 7, 8, 2, 4, 3, 6, 1];
    let place = FROM_THE_LEAST.iter().position(|known| *known == code);
    place.map_or(u8::MAX, |place| place as u8)
}

/// What came of one file.
struct Held {
    verification: Verification,
    sha256: Option<String>,
    made_by: Option<String>,
    /// Files beside it that are of another edition.
    apart: Vec<String>,
    /// What was written where, or why nothing was.
    extracted: Option<Result<String>>,
}

fn hold(report: &Path, options: &VerifyOptions) -> Result<Held> {
    let pdf = match Pdf::read(report) {
        Ok(pdf) => pdf,
        Err(error) => {
            return Ok(Held {
                verification: verification_of(error)?,
                sha256: None,
                made_by: None,
                apart: Vec::new(),
                extracted: options
                    .extract
                    .as_ref()
                    .map(|_| Ok("Nothing was taken out of it.".to_owned())),
            });
        }
    };
    let evidence = Evidence::take_out(pdf)?;
    let verification = verify(&evidence)?;
    let extracted = options.extract.as_ref().map(|folder| {
        let count = evidence.extract(folder)?;
        let left_out = evidence.attachments.len() - count;
        let left_out = match left_out {
            0 => String::new(),
            _ => format!("; {left_out} that do not belong to it were left out"),
        };
        Ok(format!(
            "{count} attachments written into {}{left_out}",
            folder.display()
        ))
    });
    let beside = report.parent().unwrap_or(Path::new(""));
    let apart = match evidence.results_beside()? {
        Some((campaign, carried)) => not_together(beside, campaign, &carried),
        None => Vec::new(),
    };
    Ok(Held {
        verification,
        apart: apart.iter().map(ToString::to_string).collect(),
        sha256: Some(evidence.pdf.sha256().to_owned()),
        made_by: Some(evidence.made_by.clone()),
        extracted,
    })
}

fn lines(report: &Path, held: &Held) -> String {
    let verification = &held.verification;
    let issued = match &verification.issued {
        Some(issued) => format!(": issued {issued}"),
        None => String::new(),
    };
    let mut text = line(&format!("{}{issued}", report.display()));
    for check in &verification.checks {
        let mark = match check.outcome {
            Outcome::Agrees => "agrees",
            Outcome::Differs => "DIFFERS",
            Outcome::NotCompared => "–",
        };
        text += &line(&format!("  {mark:<8} {:<12} {}", check.subject, check.text));
        for difference in check.told() {
            text += &line(&format!("             {difference}"));
        }
    }
    text += &line(&verification.sentence());
    for apart in &held.apart {
        text += &line(&format!("note: {apart}"));
    }
    if let Some(Ok(extracted)) = &held.extracted {
        text += &line(extracted);
    }
    text
}

/// What is printed as data.
#[derive(Serialize)]
struct Entries {
    schema: &'static str,
    tool_version: &'static str,
    reports: Vec<Entry>,
}

#[derive(Serialize)]
struct Entry {
    file: String,
    /// Of the file, where it could be read.
    sha256: Option<String>,
    /// `issued`, `same-content`, `other-version`, `differs`, or `not-read`.
    verdict: &'static str,
    exit_code: u8,
    sentence: String,
    issued: Option<String>,
    made_by: Option<String>,
    saved_by: Option<String>,
    checks: Vec<CheckEntry>,
    /// Files beside it that are of another edition.
    notes: Vec<String>,
}

#[derive(Serialize)]
struct CheckEntry {
    subject: &'static str,
    /// `agrees`, `differs` or `not-compared`.
    outcome: &'static str,
    text: String,
    differences: Vec<String>,
}

fn entry(report: &Path, outcome: &Result<Held>) -> Entry {
    let file = report.display().to_string();
    let held = match outcome {
        Ok(held) => held,
        Err(error) => {
            return Entry {
                file,
                sha256: None,
                verdict: "not-read",
                exit_code: error.exit_code(),
                sentence: error.to_string(),
                issued: None,
                made_by: None,
                saved_by: None,
                checks: Vec::new(),
                notes: Vec::new(),
            };
        }
    };
    let verification = &held.verification;
    let checks = verification.checks.iter().map(|check| CheckEntry {
        subject: check.subject,
        outcome: match check.outcome {
            Outcome::Agrees => "agrees",
            Outcome::Differs => "differs",
            Outcome::NotCompared => "not-compared",
        },
        text: check.text.clone(),
        differences: check.differences.clone(),
    });
    Entry {
        file,
        sha256: held.sha256.clone(),
        verdict: verification.verdict.code(),
        exit_code: verification.verdict.exit_code(),
        sentence: verification.sentence(),
        issued: verification.issued.clone(),
        made_by: held.made_by.clone(),
        saved_by: match verification.verdict {
            Verdict::Issued => None,
            _ => verification.saved_by.clone(),
        },
        checks: checks.collect(),
        notes: held.apart.clone(),
    }
}
