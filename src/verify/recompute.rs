//! The attached data through the whole computation again.

use std::path::MAIN_SEPARATOR;

use jiff::Timestamp;

use super::evidence::Evidence;
use crate::campaign::find::CAMPAIGN_FILE;
use crate::campaign::read_attached_campaign;
use crate::campaign::wishes::Paper;
use crate::error::Result;
use crate::language::{Language, Words};
use crate::logs::read_logs;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::{Assessment, assess};
use crate::report::Edition;

/// The attached data assessed again; `Err` says in words why they cannot be.
pub fn assess_again(evidence: &Evidence) -> std::result::Result<Assessment, String> {
    let folder = evidence.folder.path();
    let file = folder.join(CAMPAIGN_FILE);
    let again = || -> Result<Assessment> {
        let campaign = read_attached_campaign(
            &file,
            &evidence.campaign,
            &evidence.files(),
            check_own_limits,
        )?;
        let logs = read_logs(&campaign)?;
        assess(campaign, logs)
    };
    // Whoever reads this knows the attachments, and not our folder.
    let place = format!("{}{MAIN_SEPARATOR}", folder.display());
    again().map_err(|error| error.to_string().replace(&place, ""))
}

/// The edition that the report is; `Err` says in words what of it is not known.
pub fn edition(
    evidence: &Evidence,
    assessment: &Assessment,
) -> std::result::Result<Edition, String> {
    let imprint = &evidence.imprint;
    let language = Language::of_code(&imprint.language).ok_or_else(|| {
        let code = imprint.language.escape_debug();
        format!("this version knows no language \"{code}\"")
    })?;
    Ok(Edition {
        words: Words::new(language, assessment.tested.campaign.report.units),
        paper: imprint.paper.unwrap_or(Paper::A4),
        ..Edition::plain(imprint.issued.unwrap_or(Timestamp::UNIX_EPOCH))
    })
}
