//! `compare`: several campaigns, and which cooker is better.

use std::path::Path;

use super::args::CompareOptions;
use super::report::{open_folder, time_of_issue};
use super::table::{Align, table};
use super::terminal::{line, print, print_note, quoted};
use crate::campaign::Reach;
use crate::comparison::{Comparison, compare, gather};
use crate::error::{Error, Problem, Result};
use crate::language::Words;
use crate::procedure::Assessment;
use crate::report::Edition;
use crate::report::comparison::names::names;
use crate::report::comparison::outputs::{NAME, outputs};
use crate::report::comparison::words::beside::{figures_verdict, lines};
use crate::report::comparison::words::differences::verdict;
use crate::report::comparison::words::tables::rating_table;
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
    let opened = paths.iter().map(|path| open(path, options.files.reach()));
    let opened = opened.collect::<Result<Vec<_>>>()?;
    // What reports carry is taken out, and stays until the comparison carries it.
    let (campaigns, _evidence): (Vec<_>, Vec<_>) = opened.into_iter().unzip();
    let comparison = compare(campaigns, baseline, options.allow_mixed)?;
    let wishes = &comparison.campaigns[0].tested.campaign.report;
    let edition = Edition {
        has_attachments: !options.no_attachments,
        ..Edition::wished(wishes, issued).in_language(options.language)
    };
    write_all(&options.out, NAME, &outputs(&comparison, &edition)?)?;
    if !options.quiet {
        for one in &comparison.campaigns {
            let notices = one.notices.iter();
            notices
                .for_each(|notice| print_note(&format!("{}: {notice}", one.tested.campaign.name)));
        }
        print(&describe(&comparison))?;
        let file = options.out.join(format!("{NAME}.pdf"));
        print(&format!("\n{}", line(&file.display().to_string())))?;
    }
    Ok(0)
}

/// A campaign of a folder or of a report, assessed; of a report, with what it carries.
///
/// # Errors
/// What is wrong with it; [`Error::Usage`] for a PDF that is no report on one campaign, or does
/// not agree with its data.
fn open(path: &Path, reach: Reach) -> Result<(Assessment, Option<Evidence>)> {
    if !gather::is_report(path) {
        return Ok((crate::assess_reaching(path, reach)?, None));
    }
    let refused =
        |what: &str, hint: String| Error::Usage(Problem::at(path, what).hint(hint).into());
    let evidence = Evidence::take_out(Pdf::read(path)?)?;
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

const HEADER: [(&str, Align); 12] = [
    ("", Align::Left),
    ("cooker", Align::Left),
    ("Ps(50), W (95 %)", Align::Left),
    ("a, W", Align::Right),
    ("b, W/K", Align::Right),
    ("R²", Align::Right),
    ("used", Align::Right),
    ("days", Align::Right),
    ("W/m²", Align::Right),
    ("°C", Align::Right),
    ("m/s", Align::Right),
    ("conformity", Align::Left),
];

fn describe(comparison: &Comparison) -> String {
    let mut names = names(&comparison.campaigns);
    for (name, one) in names.iter_mut().zip(&comparison.campaigns) {
        if one.tested.campaign.demonstration {
            *name += " (invented)";
        }
    }
    let words = Words::english();
    let rows: Vec<[String; 12]> = rating_table(comparison, &names, words)
        .rows
        .into_iter()
        .filter_map(|row| row.try_into().ok())
        .collect();
    let mut text = String::new();
    if !rows.is_empty() {
        text += &table(HEADER, &rows);
        text.push('\n');
    }
    for figures in &comparison.figures {
        let said = match comparison.pair_of(figures.first, figures.second) {
            Some(pair) => verdict(comparison, pair, &names),
            None => figures_verdict(comparison, figures, &names),
        };
        text += &line(&words.say(said));
        for figure in lines(comparison, figures, words) {
            text += &line(&figure);
        }
    }
    text
}
