//! The document set again from what it carries, through the whole computation.

use std::path::MAIN_SEPARATOR;

use jiff::Timestamp;

use super::evidence::Evidence;
use super::stated::Subject;
use crate::campaign::wishes::{Paper, ReportWishes};
use crate::campaign::{Campaign, read_attached_campaign, read_attached_campaign_to_plan};
use crate::comparison::compare;
use crate::error::{Error, Result};
use crate::language::{Language, Words};
use crate::logs::read_logs;
use crate::planning::{Plan, plan};
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::{Assessment, assess};
use crate::report::Edition;
use crate::report::comparison::outputs::outputs as comparison_outputs;
use crate::report::files::Output;
use crate::report::outputs;
use crate::report::plan::data::plan_text;
use crate::report::plan::outputs::field_sheet;

/// A document set again.
pub struct Again {
    pub pdf: Vec<u8>,
    /// Its results, as text.
    pub results: String,
    /// Those that are a table.
    pub table: String,
    /// Of a report on a campaign.
    pub assessment: Option<Assessment>,
    pub edition: Edition,
}

/// Sets a document again; `Err` says in words why that cannot be done.
pub fn set_again(evidence: &Evidence) -> std::result::Result<Again, String> {
    let again = match &evidence.stated.subject {
        Subject::Report { campaign } => report_again(evidence, campaign),
        Subject::Comparison {
            campaigns,
            baseline,
            is_mixed,
        } => comparison_again(evidence, campaigns, *baseline, *is_mixed),
        Subject::FieldSheet {
            campaign,
            date,
            kind,
            is_rated,
        } => sheet_again(evidence, campaign, *is_rated, |campaign, rated| {
            plan(campaign, rated, *date, *kind)
        }),
    };
    // Whoever reads this knows the attachments, and not our folder.
    let place = format!("{}{MAIN_SEPARATOR}", evidence.folder.path().display());
    again.map_err(|error| error.to_string().replace(&place, ""))
}

fn report_again(evidence: &Evidence, campaign: &str) -> Result<Again> {
    let assessment = assess_again(evidence, campaign)?;
    let edition = edition(evidence, &assessment.tested.campaign.report)?;
    let mut made = outputs(&assessment, &edition)?;
    Ok(Again {
        pdf: take(&mut made, ".pdf"),
        results: text(take(&mut made, ".json")),
        table: text(take(&mut made, ".csv")),
        assessment: Some(assessment),
        edition,
    })
}

fn comparison_again(
    evidence: &Evidence,
    campaigns: &[String],
    baseline: Option<usize>,
    is_mixed: bool,
) -> Result<Again> {
    let campaigns = campaigns
        .iter()
        .map(|campaign| assess_again(evidence, campaign));
    let comparison = compare(campaigns.collect::<Result<Vec<_>>>()?, baseline, is_mixed)?;
    let edition = edition(evidence, &comparison.campaigns[0].tested.campaign.report)?;
    let mut made = comparison_outputs(&comparison, &edition)?;
    Ok(Again {
        pdf: take(&mut made, ".pdf"),
        results: text(take(&mut made, ".json")),
        table: text(take(&mut made, ".csv")),
        assessment: None,
        edition,
    })
}

fn sheet_again(
    evidence: &Evidence,
    campaign: &str,
    is_rated: bool,
    plan: impl Fn(Campaign, Option<&Assessment>) -> Result<Plan>,
) -> Result<Again> {
    let (file, files) = evidence.files(campaign);
    let campaign = read_attached_campaign_to_plan(&file, campaign, &files, check_own_limits)?;
    let rated = match is_rated {
        true => Some(assess(campaign.clone(), read_logs(&campaign)?)?),
        false => None,
    };
    let plan = plan(campaign, rated.as_ref())?;
    let edition = edition(evidence, &plan.campaign.report)?;
    let sheet = field_sheet(&plan, &edition)?;
    let sheet = sheet.ok_or_else(|| refused("there is no field sheet for that day"))?;
    Ok(Again {
        pdf: sheet.bytes,
        results: plan_text(&plan)?,
        table: String::new(),
        assessment: None,
        edition,
    })
}

/// The attached data of a campaign assessed again.
///
/// # Errors
/// As for a campaign in a folder.
pub fn assess_again(evidence: &Evidence, name: &str) -> Result<Assessment> {
    let (file, files) = evidence.files(name);
    let campaign = read_attached_campaign(&file, name, &files, check_own_limits)?;
    let logs = read_logs(&campaign)?;
    assess(campaign, logs)
}

/// The edition that the document is.
fn edition(evidence: &Evidence, wishes: &ReportWishes) -> Result<Edition> {
    let imprint = &evidence.imprint;
    let language = Language::of_code(&imprint.language).ok_or_else(|| {
        let code = imprint.language.escape_debug();
        refused(&format!("this version knows no language \"{code}\""))
    })?;
    Ok(Edition {
        words: Words::new(language, wishes.units),
        paper: imprint.paper.unwrap_or(Paper::A4),
        largest_log: evidence.largest_log,
        ..Edition::plain(imprint.issued.unwrap_or(Timestamp::UNIX_EPOCH))
    })
}

fn refused(what: &str) -> Error {
    Error::Input(crate::error::Problem::at(std::path::Path::new("the PDF"), what).into())
}

fn take(made: &mut Vec<Output>, ending: &str) -> Vec<u8> {
    let place = made.iter().position(|output| output.name.ends_with(ending));
    place.map_or_else(Vec::new, |place| made.swap_remove(place).bytes)
}

fn text(bytes: Vec<u8>) -> String {
    String::from_utf8_lossy(&bytes).into_owned()
}
