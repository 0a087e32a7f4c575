//! `verify`: a report against the data that it carries.

use std::path::Path;

use super::args::VerifyOptions;
use super::terminal::{line, print};
use crate::error::Result;
use crate::verify::{Evidence, Outcome, Pdf, Verification, verdict, verify};

/// Exit code of a report that does not agree with its data.
const DIFFERS: u8 = 6;

/// Verifies a report, and writes out what is attached to it if that is asked for.
///
/// # Errors
/// [`crate::error::Error::Input`] for a file that is no report with evidence, and
/// [`crate::error::Error::Usage`] if attachments cannot be written.
pub fn run(options: &VerifyOptions) -> Result<u8> {
    let evidence = Evidence::take_out(Pdf::read(&options.report)?)?;
    if let Some(folder) = &options.extract {
        evidence.extract(folder)?;
    }
    let verification = verify(&evidence)?;
    let mut text = lines(&options.report, &verification);
    if let Some(folder) = &options.extract {
        let count = evidence.attachments.len();
        let written = format!("{count} attachments written into {}", folder.display());
        text += &line(&written);
    }
    print(&text)?;
    Ok(if verification.agrees() { 0 } else { DIFFERS })
}

fn lines(report: &Path, verification: &Verification) -> String {
    let issued = verification
        .issued
        .as_deref()
        .unwrap_or("at no time it states");
    let mut text = line(&format!("{}: issued {issued}", report.display()));
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
    text + &line(&verdict(verification))
}
