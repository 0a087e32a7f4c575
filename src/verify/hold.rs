//! One document against its own evidence.

use std::path::Path;
use std::thread;

use super::again::{Again, set_again};
use super::check::{Check, Outcome, THIS_VERSION, Verdict, Verification};
use super::evidence::Evidence;
use super::pages::{check_document, check_hashes, check_headline, check_pages, check_printed};
use super::pdf::{Page, Pdf};
use super::results::check_results;
use crate::error::{Error, Result};
use crate::report::words::build;

/// Holds a document against what it carries: it is set again, and has to be the same file.
/// Where it is not, what differs is looked for.
///
/// # Errors
/// [`Error::Input`] for a log that it names by its hash alone and that was not found, and
/// [`Error::Internal`] if what we set again cannot be read. Whatever is wrong with the evidence
/// is a check that differs.
pub fn verify(evidence: &Evidence) -> Result<Verification> {
    if !evidence.missing.is_empty() {
        return Err(Error::Input(evidence.missing.clone()));
    }
    let is_same = evidence.stated.tool_version == THIS_VERSION && evidence.made_by == THIS_VERSION;
    // The pages are read while the document is set again, which takes longer.
    let (pages, again) = thread::scope(|scope| {
        let pages = scope.spawn(|| evidence.pdf.pages().map_err(|error| error.to_string()));
        let again = set_again(evidence);
        (pages.join(), again)
    });
    let pages = pages.map_err(|_| Error::Internal("reading the pages failed".to_owned()))?;
    let mut checks = vec![check_version(evidence), check_attachments(evidence)];
    checks.push(match &pages {
        Ok(pages) => check_hashes(evidence, pages),
        Err(why) => Check::new("hashes", "the pages cannot be read", lines(why)),
    });
    match &again {
        Ok(again) => checks.extend(check_results(evidence, again, is_same)),
        Err(why) => {
            let what = "the attached data do not give them";
            checks.push(Check::new("results", what, lines(why)));
        }
    }
    let is_issued = is_same && matches!(&again, Ok(again) if evidence.pdf.is(&again.pdf));
    match (&pages, &again) {
        (Ok(pages), Ok(again)) if is_same => {
            checks.extend(hold_headline(pages, again));
            // The very bytes need not be read twice.
            checks.extend(match is_issued {
                true => [check_pages(pages, pages), check_document(pages, pages, &[])],
                false => hold_pages(evidence, pages, again)?,
            });
        }
        (Ok(pages), Ok(again)) => checks.extend(of_other_version(evidence, pages, again)),
        (Err(why), _) => checks.push(Check::new("pages", "they cannot be read", lines(why))),
        (_, Err(_)) => {
            let why = "without results there is nothing to hold them against";
            checks.push(Check::skipped("pages", why));
        }
    }
    Ok(verification(evidence, checks, is_issued))
}

fn verification(evidence: &Evidence, checks: Vec<Check>, is_issued: bool) -> Verification {
    let verdict = verdict(&checks, is_issued, &evidence.stated.tool_version);
    let issued = evidence.imprint.issued;
    Verification {
        kind: evidence.stated.subject.kind(),
        issued: issued.map(|issued| issued.strftime("%Y-%m-%d %H:%M UTC").to_string()),
        saved_by: evidence.pdf.saved_by(),
        checks,
        verdict,
    }
}

/// What all checks come to: one that differs is never said to agree, not even where the file is
/// byte for byte what this version makes.
fn verdict(checks: &[Check], is_issued: bool, stated_version: &str) -> Verdict {
    let differs = checks.iter().any(|check| check.outcome == Outcome::Differs);
    match (differs, is_issued) {
        (true, _) => Verdict::Differs,
        (false, true) => Verdict::Issued,
        (false, false) if stated_version != THIS_VERSION => {
            Verdict::OtherVersion(stated_version.to_owned())
        }
        (false, false) => Verdict::SameContent,
    }
}

/// What there is to say of a file in which readers find different things.
///
/// # Errors
/// The error itself, if it is another one.
pub fn verification_of(error: Error) -> Result<Verification> {
    match error {
        Error::TwoReadings(problems) => Ok(Verification {
            kind: "file",
            issued: None,
            saved_by: None,
            checks: vec![Check::new(
                "file",
                "readers show different things of it, so nothing can be said of its content",
                problems
                    .listed()
                    .iter()
                    .map(|problem| problem.what.clone())
                    .collect(),
            )],
            verdict: Verdict::Differs,
        }),
        other => Err(other),
    }
}

/// The PDF and the results name one version, and it is one.
fn check_version(evidence: &Evidence) -> Check {
    let stated = &evidence.stated.tool_version;
    let mut differences = Vec::new();
    if *stated != evidence.made_by {
        differences.push(format!(
            "the PDF is by simmerline {}, {} states {}",
            evidence.made_by.escape_debug(),
            evidence.results.name,
            stated.escape_debug()
        ));
    }
    if !is_version(stated) {
        differences.push(format!("\"{}\" is no version", stated.escape_debug()));
    }
    let text = match stated == THIS_VERSION {
        true => format!("made by simmerline {THIS_VERSION}, as this one is"),
        false => format!("made by simmerline {}", stated.escape_debug()),
    };
    Check::new("version", text, differences)
}

/// Whether a text is a version of a program: three numbers, and what may follow them.
///
/// # Source
/// Semantic Versioning 2.0.0, item 2 and item 9.
fn is_version(text: &str) -> bool {
    let is_word = |word: &str| {
        !word.is_empty()
            && word
                .bytes()
                .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-')
    };
    let (numbers, label) = text
        .split_once('-')
        .map_or((text, None), |(numbers, label)| (numbers, Some(label)));
    let numbers: Vec<&str> = numbers.split('.').collect();
    let is_number = |word: &&str| {
        let is_short = (1..10).contains(&word.len()) && (word.len() == 1 || !word.starts_with('0'));
        is_short && word.bytes().all(|byte| byte.is_ascii_digit())
    };
    numbers.len() == 3
        && numbers.iter().all(is_number)
        && label.is_none_or(|label| label.len() < 40 && label.split('.').all(is_word))
}

/// Everything that belongs to the document is attached, and nothing else.
fn check_attachments(evidence: &Evidence) -> Check {
    let expected = evidence.expected();
    let is_there = |name: &&String| evidence.attachments.contains_key(name.as_str());
    let found = expected.iter().filter(is_there).count();
    let missing = expected.iter().filter(|name| !is_there(name));
    let mut differences: Vec<String> = missing
        .map(|name| format!("{name}: is not attached"))
        .collect();
    let strange = evidence
        .attachments
        .keys()
        .filter(|name| expected.binary_search(name).is_err());
    differences.extend(strange.map(|name| format!("{name}: does not belong to it")));
    let beside: Vec<String> = evidence.beside.keys().cloned().collect();
    let beside = match beside.is_empty() {
        true => String::new(),
        false => format!("; beside it: {}", listed(&beside)),
    };
    let text = format!(
        "{found} of {}: {}{beside}",
        expected.len(),
        listed(&expected)
    );
    Check::new("attachments", text, differences)
}

/// Names in a line, no more than can be read.
fn listed(names: &[String]) -> String {
    const SHOWN: usize = 6;
    let shown: Vec<&str> = names.iter().take(SHOWN).map(String::as_str).collect();
    let dots = if names.len() > SHOWN { ", …" } else { "" };
    shown.join(", ") + dots
}

/// An error as differences, one a line.
fn lines(why: &str) -> Vec<String> {
    why.lines().map(str::to_owned).collect()
}

/// Of a report, the number with which it begins.
fn hold_headline(pages: &[Page], again: &Again) -> Option<Check> {
    let headline = build(again.assessment.as_ref()?, &again.edition).headline;
    Some(check_headline(&headline, &again.edition.words, pages))
}

/// Everything that a reader shows, against the document set again.
fn hold_pages(evidence: &Evidence, pages: &[Page], again: &Again) -> Result<[Check; 2]> {
    let fault =
        |error: Error| Error::Internal(format!("what was set again cannot be read: {error}"));
    let fresh = Pdf::parse(Path::new("the document set again"), &again.pdf).map_err(fault)?;
    let expected = fresh.pages().map_err(fault)?;
    let differences = evidence.pdf.differences(&fresh);
    Ok([
        check_pages(pages, &expected),
        check_document(pages, &expected, &differences),
    ])
}

/// What can be held of the pages of another version: the number that they begin with.
fn of_other_version(evidence: &Evidence, pages: &[Page], again: &Again) -> Vec<Check> {
    let printed = again.assessment.as_ref().map(|_| {
        check_printed(
            &evidence.results.text,
            &again.results,
            &again.edition.words,
            pages,
        )
    });
    let why = format!("made by another version than {THIS_VERSION}: not compared");
    printed
        .into_iter()
        .chain([Check::skipped("pages", why)])
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_check_that_differs_decides_whatever_else_agrees() {
        let agrees = || Check::new("pages", "1 of 1", Vec::new());
        let differs = || Check::new("hashes", "0 of 1", vec!["log.csv".to_owned()]);
        for is_issued in [true, false] {
            for version in [THIS_VERSION, "0.0.1"] {
                let found = verdict(&[agrees(), differs(), agrees()], is_issued, version);
                assert_eq!(found, Verdict::Differs, "{is_issued} {version}");
            }
        }
        let found = |is_issued, version| verdict(&[agrees(), agrees()], is_issued, version);
        assert_eq!(found(true, THIS_VERSION), Verdict::Issued);
        assert_eq!(found(false, THIS_VERSION), Verdict::SameContent);
        let other = Verdict::OtherVersion("0.0.1".to_owned());
        assert_eq!(found(false, "0.0.1"), other);
    }
}
