//! Rates solar cookers from water-heating test logs and writes the report.
//!
//! The modules in the order in which a number travels:
//! [`campaign`] reads what was tested and where, [`logs`] turns bytes into valid
//! readings, [`physics`] and [`stats`] hold the formulas, [`procedure`] applies the
//! published practice (intervals, screening, rating, conformity), [`comparison`] holds
//! ratings against each other, and [`report`] puts the result on paper and into files.
//! Before all that, [`setup`] begins a campaign by question and answer, [`planning`] looks ahead to
//! a test day, and [`entry`] makes a log of a field sheet that is typed in; while a test runs,
//! [`mod@watch`] follows its logs; long after it, [`mod@verify`] holds a report against the data
//! that it carries.
//! [`batch`] does all this for many campaigns. [`cli`] is the command line. Shared by all: [`error`], [`shown`], [`language`],
//! [`units`], [`local_time`], [`believable`], [`bounds`] and [`hash`].

#![forbid(unsafe_code)]

pub mod campaign;
pub mod comparison;
pub mod entry;
pub mod logs;
pub mod physics;
pub mod planning;
pub mod procedure;
pub mod report;
pub mod setup;
pub mod stats;
pub mod verify;
pub mod watch;

pub mod batch;

pub mod cli;

pub mod believable;
pub mod bounds;
pub mod error;
pub mod hash;
pub mod language;
pub mod local_time;
pub mod measure;
pub mod shown;
pub mod units;

use std::path::Path;

use campaign::Reach;
use error::Result;
use procedure::s580::own_limits::check_own_limits;

/// The pipeline up to the result: reads a campaign folder and its logs, and rates. No file
/// outside the folder is read.
///
/// # Errors
/// [`error::Error::Campaign`] for the campaign file, [`error::Error::Input`] for the logs, with
/// the problems of all logs together, and [`error::Error::Usage`] for the folder's name.
pub fn assess_folder(folder: &Path) -> Result<procedure::Assessment> {
    assess_reaching(folder, Reach::Inside)
}

/// The same, with files read as far as `reach` allows.
///
/// # Errors
/// As [`assess_folder`].
pub fn assess_reaching(folder: &Path, reach: Reach) -> Result<procedure::Assessment> {
    let campaign = campaign::read_campaign(folder, reach, check_own_limits)?;
    let logs = logs::read_logs(&campaign)?;
    procedure::assess(campaign, logs)
}
