//! `compare`: several campaigns, and which cooker is better.

use std::path::{Path, PathBuf};

use super::args::CompareOptions;
use super::compare_lines::describe;
use super::issue::{open_folder, time_of_issue};
use super::lines::Lines;
use super::report_table::{Noticed, notes};
use super::screen::Screen;
use super::speech::words_for;
use super::terminal::{line, print, print_lines, print_note_in, quoted};
use crate::batch::jobs::{Jobs, memory_of, side_by_side};
use crate::comparison::{Comparison, compare, gather};
use crate::error::{Error, Problem, Result};
use crate::procedure::Assessment;
use crate::report::Edition;
use crate::report::comparison::outputs::{NAME, outputs};
use crate::report::files::write_all;
use crate::verify::{Evidence, Pdf, Subject, assess_again, verify};

/// Rates the campaigns, compares them and writes the comparison.
///
/// # Errors
/// [`crate::error::Error::Usage`] for campaigns that cannot be compared and for an output folder that
/// cannot be used; else what is wrong with a campaign or its logs.
pub fn run(options: &CompareOptions) -> Result<u8> {
    let paths = gather::campaigns(&options.paths)?;
    let baseline = options
        .baseline
        .as_ref()
        .map(|named| gather::baseline(&paths, named))
        .transpose()?;
    let issued = time_of_issue()?;
    open_folder(&options.out, options.quiet)?;
    // What reports carry is taken out, and stays until the comparison carries it.
    let (campaigns, _evidence): (Vec<_>, Vec<_>) = open_all(&paths, options)?.into_iter().unzip();
    let comparison = compare(campaigns, baseline, options.allow_mixed)?;
    let wishes = &comparison.campaigns[0].tested.campaign.report;
    let edition = Edition {
        formats: options.formats(),
        ..Edition::wished(wishes, issued).in_language(options.language)
    };
    let edition = edition.carrying(options.carried.carried());
    write_all(&options.out, NAME, &outputs(&comparison, &edition)?)?;
    if !options.quiet {
        tell(&comparison, options, edition)?;
    }
    Ok(0)
}

/// Prints what it comes to, where it is, and then what is to be noted of single campaigns.
fn tell(comparison: &Comparison, options: &CompareOptions, edition: Edition) -> Result<()> {
    let campaigns = || comparison.campaigns.iter();
    let wished = campaigns().map(|one| {
        let wishes = &one.tested.campaign.report;
        (wishes.language, wishes.units)
    });
    let edition = Edition {
        words: words_for(options.language, wished),
        ..edition
    };
    let mut lines = Lines::new(Screen::out());
    describe(&mut lines, comparison, &edition);
    print_lines(&lines)?;
    let endings = edition.formats.iter().filter_map(|format| format.ending());
    let files = endings.map(|ending| options.out.join(format!("{NAME}.{ending}")));
    let files: String = files
        .map(|file| line(&file.display().to_string()))
        .collect();
    print(&format!("\n{files}"))?;
    let noticed = campaigns().map(|one| Noticed::of(one, one.tested.campaign.name.clone()));
    let notes = notes(&noticed.collect::<Vec<_>>(), &edition.words);
    notes
        .iter()
        .for_each(|note| print_note_in(&edition.words, note));
    Ok(())
}

/// A campaign, and what a report on it carries.
type Opened = (Assessment, Option<Evidence>);

/// Opens all campaigns, several at a time.
///
/// # Errors
/// As [`open`], of the first that has one.
fn open_all(paths: &[PathBuf], options: &CompareOptions) -> Result<Vec<Opened>> {
    let mut opened = Vec::new();
    let work = |path: &PathBuf| open(path, options);
    side_by_side(
        Jobs::wanted(None),
        paths,
        |path: &PathBuf| memory_of(path),
        work,
        |_, outcome| opened.push(outcome),
    );
    opened.into_iter().collect()
}

/// A campaign of a folder or of a report, assessed; of a report, with what it carries.
///
/// # Errors
/// What is wrong with it; [`Error::Usage`] for a PDF that is no report on one campaign, or does
/// not agree with its data.
fn open(path: &Path, options: &CompareOptions) -> Result<Opened> {
    if !gather::is_report(path) {
        return Ok((crate::assess_reaching(path, options.files.reach())?, None));
    }
    let refused =
        |what: &str, hint: String| Error::Usage(Problem::at(path, what).hint(hint).into());
    let evidence = Evidence::take_out(Pdf::read(path)?, options.beside.beside(path))?;
    let Subject::Report { campaign } = &evidence.stated.subject else {
        let hint = "name reports, or the folders of campaigns".to_owned();
        return Err(refused("is no report on a campaign", hint));
    };
    if !verify(&evidence)?.agrees() {
        let hint = format!("see what differs with: simmerline verify {}", quoted(path));
        return Err(refused(
            "does not agree with the data that it carries",
            hint,
        ));
    }
    Ok((assess_again(&evidence, campaign)?, Some(evidence)))
}
