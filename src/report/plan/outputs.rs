//! The files of a plan: the field sheet.

use super::words::sheet::build;
use crate::error::Result;
use crate::planning::Plan;
use crate::report::Edition;
use crate::report::document::{self, FIELD_SHEET};
use crate::report::files::Output;
use crate::report::outputs::refuse_missing_characters;

/// The field sheet of a plan as a PDF of one page; `None` where no time can be used.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for a character that the fonts lack,
/// [`crate::error::Error::Internal`] if it cannot be set.
pub fn field_sheet(plan: &Plan, edition: &Edition) -> Result<Option<Output>> {
    if plan.times_us.is_empty() {
        return Ok(None);
    }
    let sheet = build(plan, edition);
    refuse_missing_characters(&[&plan.campaign], &sheet)?;
    Ok(Some(Output {
        name: format!("{}.{}.field-sheet.pdf", plan.campaign.name, plan.date),
        bytes: document::typeset(FIELD_SHEET, &sheet, Vec::new(), &[], edition.issued)?,
    }))
}
