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

/// How the name of the attached plan ends.
pub const PLAN_ENDING: &str = ".plan.json";

/// The field sheet of a plan as a PDF of one page; `None` where no time can be used.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for a character that the fonts lack,
/// [`crate::error::Error::Input`] for a log that has changed since it was read, and
/// [`crate::error::Error::Internal`] if it cannot be set.
pub fn field_sheet(plan: &Plan, edition: &Edition) -> Result<Option<Output>> {
    if !plan.has_sheet() {
        return Ok(None);
    }
    let sheet = build(plan, edition);
    refuse_missing_characters(&[&plan.campaign], &sheet)?;
    let Enclosed {
        attachments,
        assets,
        ..
    } = enclosed(plan, edition)?;
    let issued = edition.issued;
    // So that the sheets of one day lie beside each other.
    let kind = match plan.kind {
        RunKind::Water => String::new(),
        kind => format!(".{}", kind.word()),
    };
    Ok(Some(Output {
        name: format!("{}.{}{kind}.field-sheet.pdf", plan.campaign.name, plan.date),
        bytes: document::typeset(FIELD_SHEET, &sheet, assets, &attachments, issued)?,
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
    enclose(&[origin], &[result], &edition.words)
}
