//! `verify`: PDFs against the data that they carry.

use std::path::Path;

use super::args::{DataFormat, VerifyOptions};
use super::data::{
    self,
    verification_file::{ReportEntry, VerificationFile},
};
use super::lines::{Lines, Mark};
use super::screen::Screen;
use super::terminal::{print_error, print_json, print_lines, print_note};
use crate::error::{Error, Problem, Result};
use crate::report::files::not_together;
use crate::verify::{Evidence, Outcome, Pdf, Verdict, Verification, verification_of, verify};

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
        DataFormat::Text => {
            for (index, (report, outcome)) in options.reports.iter().zip(&outcomes).enumerate() {
                match outcome {
                    Ok(held) => print_lines(&lines(report, held, index == 0))?,
                    Err(error) => print_error(error),
                }
            }
        }
        DataFormat::Json => {
            let reports = options.reports.iter().zip(&outcomes);
            let reports = reports.map(|(report, outcome)| entry(report, outcome));
            print_json(&VerificationFile::new(reports.collect()).to_text()?)?;
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
    let evidence = Evidence::take_out(pdf, options.beside.beside(report))?;
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
    let verification = verify(&evidence).inspect_err(|_| {
        // What was asked for besides is done all the same.
        match &extracted {
            Some(Ok(said)) => print_note(said),
            Some(Err(error)) => print_error(error),
            None => {}
        }
    })?;
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

/// The verdict, then what it rests on.
fn lines(report: &Path, held: &Held, is_first: bool) -> Lines {
    let verification = &held.verification;
    let mut lines = Lines::new(Screen::out());
    if !is_first {
        lines.blank();
    }
    let (mark, word) = match verification.verdict {
        Verdict::Issued => (Mark::Good, "AGREES"),
        Verdict::SameContent => (Mark::Reserved, "AGREES IN CONTENT"),
        Verdict::OtherVersion(_) => (Mark::Reserved, "AGREES IN PART"),
        Verdict::Differs => (Mark::Bad, "DIFFERS"),
    };
    lines.verdict(mark, &format!("{word}: {}", report.display()));
    lines.hanging("  ", &verification.sentence());
    if let Some(issued) = &verification.issued {
        lines.hanging("  ", &format!("It says that it was issued {issued}."));
    }
    for apart in &held.apart {
        lines.hanging("  ", &format!("note: {apart}"));
    }
    if let Some(Ok(extracted)) = &held.extracted {
        lines.hanging("  ", extracted);
    }
    if !verification.checks.is_empty() {
        lines.blank();
    }
    for check in &verification.checks {
        let (mark, outcome) = match check.outcome {
            Outcome::Agrees => (Mark::Good, "agrees"),
            Outcome::Differs => (Mark::Bad, "DIFFERS"),
            Outcome::NotCompared => (Mark::Reserved, "not compared"),
        };
        let lead = format!("{outcome:<7}  {:<11}  ", check.subject);
        lines.item("  ", mark, &lead, &check.text);
        for difference in check.told() {
            lines.hanging(&" ".repeat(4 + lead.len()), &difference);
        }
    }
    lines
}

fn entry(report: &Path, outcome: &Result<Held>) -> ReportEntry {
    let file = report.display().to_string();
    match outcome {
        Ok(held) => {
            let held = data::verification_file::Held {
                verification: &held.verification,
                sha256: held.sha256.as_deref(),
                made_by: held.made_by.as_deref(),
                apart: &held.apart,
            };
            ReportEntry::held(file, &held)
        }
        Err(error) => ReportEntry::not_read(file, error),
    }
}
