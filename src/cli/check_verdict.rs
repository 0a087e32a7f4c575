//! What `check` says first: the verdict, and what to do next.

use std::path::Path;

use super::lines::Mark;
use super::terminal::quoted;
use crate::language::{Message, Phrase, clauses};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::caveat::Caveat;
use crate::procedure::finding::Level;
use crate::procedure::notice::Notice;
use crate::procedure::s580::finding::FindingCode;
use crate::report::heat_balance::words::power_of;
use crate::report::s580::words::uncertainty::{outlook, with_uncertainty};

/// The verdict on a campaign.
pub struct Verdict {
    pub mark: Mark,
    pub sentence: Message,
    /// What to do next.
    pub next: Phrase,
    /// The number so far; `None` where no run heats water.
    pub so_far: Option<Message>,
    /// How far the expanded uncertainty aimed at is, where one is.
    pub outlook: Option<Message>,
}

/// Of a campaign in a folder.
pub fn verdict(assessment: &Assessment, folder: &Path) -> Verdict {
    let level = assessment.s580.conformity.level;
    Verdict {
        mark: Mark::of(level),
        sentence: sentence(assessment, level),
        next: first_step(assessment, folder),
        so_far: so_far(assessment),
        outlook: towards_target(assessment),
    }
}

fn sentence(assessment: &Assessment, level: Level) -> Message {
    let campaign = &assessment.tested.campaign;
    let title: Phrase = match campaign.demonstration {
        true => message!("terminal-invented", title = &campaign.title).into(),
        false => (&campaign.title).into(),
    };
    let caveats = Caveat::of(assessment).into_iter();
    let caveats: Vec<Message> = caveats.map(Caveat::describe).collect();
    match caveats.is_empty() {
        true => message!("check-verdict", level = level.describe(), title = title),
        false => message!(
            "check-verdict-with",
            level = level.describe(),
            caveats = clauses(caveats),
            title = title
        ),
    }
}

/// The same of one campaign of several; `report`: to report them, where nothing else is to be
/// done.
pub fn step_of_several(assessment: &Assessment, report: Message) -> Phrase {
    step_with_notes(assessment, step_or(assessment, report))
}

/// What to do next: where a notice doubts the place or a clock, to look at it comes first, since
/// what else is found may come of nothing else.
fn first_step(assessment: &Assessment, folder: &Path) -> Phrase {
    step_with_notes(assessment, next_step(assessment, folder))
}

fn step_with_notes(assessment: &Assessment, then: Phrase) -> Phrase {
    let is_doubted = assessment.notices.iter().any(Notice::doubts_place_or_time);
    match is_doubted {
        true => {
            let look = message!("check-next-note");
            message!("check-next-then", remedy = look, missing = then).into()
        }
        false => then,
    }
}

/// The one thing to do next: what makes the number impossible is mended first, then how it is
/// measured, then what is missing is measured, then the gravest finding is remedied. Where
/// irradiance is estimated it says that none of it makes the rating conform.
pub fn next_step(assessment: &Assessment, folder: &Path) -> Phrase {
    let command = format!("simmerline report {}", quoted(folder));
    step_or(assessment, message!("check-next-report", command = command))
}

fn step_or(assessment: &Assessment, report: Message) -> Phrase {
    let conformity = &assessment.s580.conformity;
    let findings = &conformity.findings;
    let gravest = || conformity.gravest_first().into_iter().next();
    match (conformity.level, &conformity.missing) {
        (Level::Indicative | Level::NoRating, Some(missing)) => {
            let first = if assessment.is_read_too_seldom() {
                Some(message!("balance-readings-far-apart-remedy"))
            } else {
                let has_irradiance = assessment.tested.has_irradiance();
                findings
                    .iter()
                    .filter(|found| is_of_setup(found.code, has_irradiance))
                    .min_by_key(|found| found.code.place())
                    .map(|found| found.remedy.clone())
            };
            let next = match first {
                Some(remedy) => message!("check-next-then", remedy = remedy, missing = missing),
                None => missing.clone(),
            };
            match assessment.tested.estimates_irradiance() {
                true => message!("check-next-still", next = next).into(),
                false => next.into(),
            }
        }
        (Level::Indicative | Level::NotValid | Level::NoRating, _) => {
            gravest().map_or_else(|| report.into(), |found| (&found.remedy).into())
        }
        (Level::Conforms | Level::ConformsWithNotes, _) => report.into(),
    }
}

/// Whether what was found holds for every further interval too, unless something is set up
/// otherwise before.
fn is_of_setup(code: FindingCode, has_irradiance: bool) -> bool {
    match code {
        FindingCode::NoRating => !has_irradiance,
        FindingCode::ImpossibleGain
        | FindingCode::ImpossibleRating
        | FindingCode::LineNotFalling
        | FindingCode::NoUsefulHeat
        | FindingCode::IrradianceNotNormal
        | FindingCode::IrradiancePlaneNotStated
        | FindingCode::LoadOff
        | FindingCode::WindNotMeasured => true,
        _ => false,
    }
}

fn so_far(assessment: &Assessment) -> Option<Message> {
    let s580 = &assessment.s580;
    let (used, intervals) = (s580.used().count(), s580.intervals.len());
    if assessment.tested.heats_no_water() {
        return None;
    }
    if s580.is_not_valid() {
        return Some(message!("check-not-valid"));
    }
    let said = match (&s580.rated, used) {
        (Some(rated), _) => message!(
            "check-rating",
            rating = with_uncertainty(&rated.uncertainty),
            used = used,
            days = s580.dates.len()
        ),
        (None, 0) => message!("check-none-used"),
        (None, _) => message!("check-no-number", used = used),
    };
    let said = said.with("intervals", intervals);
    let balance = assessment.heat_balance.as_ref();
    Some(match balance.filter(|_| s580.rated.is_none()) {
        None => said,
        Some(balance) => message!(
            "check-so-far-balance",
            none = said,
            power = power_of(balance)
        ),
    })
}

fn towards_target(assessment: &Assessment) -> Option<Message> {
    let uncertainty = assessment.s580.uncertainty();
    let aim = uncertainty.filter(|uncertainty| uncertainty.target.is_some());
    aim.and_then(outlook)
}
