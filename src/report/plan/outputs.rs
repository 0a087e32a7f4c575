//! The files of a plan: the field sheet.

use super::data::plan_text;
use super::words::sheet::build;
use crate::campaign::kinds::RunKind;
use crate::error::Result;
use crate::planning::Plan;
use crate::report::Edition;
use crate::report::attached_names::is_plain;
use crate::report::attachments::{Enclosed, Enclosure, Origin, Part, enclose};
use crate::report::document::{self, FIELD_SHEET};
use crate::report::files::Output;
use crate::report::outputs::refuse_missing_characters;
use crate::report::web_page;

/// How the name of the attached plan ends.
pub const PLAN_ENDING: &str = ".plan.json";

/// A form of the field sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub enum SheetFormat {
    /// One page for a pencil, as PDF
    Pdf,
    /// A web page to read from a phone, in the sun and without a network
    Html,
}

/// The field sheet of a plan as a PDF of one page; `None` where no time can be used.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for a character that the fonts lack,
/// [`crate::error::Error::Input`] for a log that has changed since it was read, and
/// [`crate::error::Error::Internal`] if it cannot be set.
pub fn field_sheet(plan: &Plan, edition: &Edition) -> Result<Option<Output>> {
    field_sheet_in(SheetFormat::Pdf, plan, edition)
}

/// The field sheet in one of its forms; a web page carries no evidence.
///
/// # Errors
/// As [`field_sheet`].
pub fn field_sheet_in(
    format: SheetFormat,
    plan: &Plan,
    edition: &Edition,
) -> Result<Option<Output>> {
    if !plan.has_sheet() {
        return Ok(None);
    }
    let sheet = build(plan, edition);
    // A page of the web has no other words than the paper.
    refuse_missing_characters(&[&plan.campaign], &sheet)?;
    let (ending, bytes) = match format {
        SheetFormat::Pdf => {
            let enclosed = enclosed(plan, edition)?;
            let (assets, attachments) = (enclosed.assets, enclosed.attachments);
            let issued = edition.issued;
            let pdf = document::typeset(FIELD_SHEET, &sheet, assets, &attachments, issued)?;
            ("pdf", pdf)
        }
        SheetFormat::Html => {
            let page = web_page::compose(web_page::FIELD_SHEET, &sheet, &[])?;
            ("html", page.into_bytes())
        }
    };
    // So that the sheets of one day lie beside each other.
    let kind = match plan.kind {
        RunKind::Water => String::new(),
        kind => format!(".{}", kind.word()),
    };
    Ok(Some(Output {
        name: format!(
            "{}.{}{kind}.field-sheet.{ending}",
            plan.campaign.name, plan.date
        ),
        bytes,
    }))
}

/// The evidence: what the plan was made from.
fn enclosed(plan: &Plan, edition: &Edition) -> Result<Enclosed> {
    let origin = Origin {
        campaign: &plan.campaign,
        inputs: plan.inputs.clone(),
        folder: None,
    };
    let text = plan_text(plan)?;
    let own = format!("{}.{}{PLAN_ENDING}", plan.campaign.name, plan.date);
    let name = match is_plain(&own) && !own.contains('/') {
        true => own,
        false => format!("campaign{PLAN_ENDING}"),
    };
    let result = Enclosure {
        part: Part::Plan,
        name: &name,
        text: &text,
    };
    enclose(&[origin], &[result], edition)
}
