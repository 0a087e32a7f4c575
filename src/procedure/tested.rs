//! What was tested: the campaign, its logs, and the runs in them.

use super::conflicts::find_conflict;
use super::problem::run_problem;
use super::run::{FromLog, Run, prepare_run};
use super::run_notice::RunNotice;
use super::site::local_boiling_point_c;
use super::split::{Piece, split};
use crate::bounds::RUNS;
use crate::campaign::Campaign;
use crate::campaign::find::CAMPAIGN_FILE;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{IrradianceEstimate, Plane, RunPlan};
use crate::error::{Error, Problem, Problems, Result};
use crate::hash::{HashedFile, sha256_hex};
use crate::logs::account::Account;
use crate::logs::quantity::Quantity;
use crate::logs::{Log, LogNotice, Readings};

/// A campaign with the runs of its logs, before any procedure is applied.
#[derive(Debug, Clone)]
pub struct Tested {
    pub campaign: Campaign,
    /// Every log, as it lies.
    pub logs: Vec<HashedFile>,
    /// How every log was read.
    pub accounts: Vec<Account>,
    /// Those that heat water, in the order of the campaign file.
    pub runs: Vec<Run>,
    /// Those in which a hot load cools.
    pub cooling_runs: Vec<Run>,
    /// Those of the dry vessel.
    pub dry_runs: Vec<Run>,
    /// Local boiling point of water, °C.
    pub boiling_point_c: f64,
}

/// Takes the runs out of the logs; `logs` are those of `campaign.runs`, in the same order.
///
/// # Errors
/// [`Error::Campaign`] for a start, end or exclusion that leaves nothing or does not exist in
/// the site's zone, for a log to be split that holds no heating, and for runs that cannot both
/// be true.
pub fn gather(campaign: Campaign, logs: Vec<Log>) -> Result<Tested> {
    let boiling_point_c = local_boiling_point_c(&campaign.site);
    let mut problems = Problems::default();
    let mut runs = Vec::new();
    let (mut inputs, mut accounts, mut told) = (Vec::new(), Vec::new(), Vec::new());
    for (plan, log) in campaign.runs.iter().zip(logs) {
        let found = take_runs(&campaign, plan, &log.accounts, log.readings)
            .map_err(|problem| Error::Campaign(problem.into()))?;
        let said = log.notices.into_iter();
        let said = said.filter(|notice| !is_expected(&campaign, notice));
        let said = add_new(&mut told, said.collect());
        let mut notices: Vec<RunNotice> = said.into_iter().map(RunNotice::Log).collect();
        notices.extend(found.notice);
        let estimates_wind = log.accounts.iter().any(Account::estimates_wind);
        add_new(&mut inputs, log.inputs);
        add_new(&mut accounts, log.accounts);
        if let Some(what) = RUNS.exceeded_by(runs.len() + found.pieces.len()) {
            let hint = "make several campaigns of them, such as one a year, and compare those";
            return Err(Error::Campaign(
                run_problem(&campaign.file, plan, &what, hint).into(),
            ));
        }
        for piece in found.pieces {
            let from_log = FromLog {
                estimates_wind,
                notices: std::mem::take(&mut notices),
            };
            match prepare_run(&campaign, piece, from_log, boiling_point_c) {
                Ok(run) => runs.push(run),
                Err(problem) => problems.push(problem),
            }
        }
    }
    if let Some(problem) = find_conflict(&campaign.file, &runs) {
        problems.push(problem);
    }
    if !problems.is_empty() {
        return Err(Error::Campaign(problems));
    }
    let (runs, others): (Vec<Run>, Vec<Run>) = runs
        .into_iter()
        .partition(|run| run.plan.kind == RunKind::Water);
    let (cooling_runs, dry_runs) = others
        .into_iter()
        .partition(|run| run.plan.kind == RunKind::Cooling);
    Ok(Tested {
        campaign,
        logs: inputs,
        accounts,
        runs,
        cooling_runs,
        dry_runs,
        boiling_point_c,
    })
}

/// A log without irradiance, where it is to come from the clear-sky model.
fn is_expected(campaign: &Campaign, notice: &LogNotice) -> bool {
    let way = campaign.instruments.irradiance_estimate;
    way == Some(IrradianceEstimate::ClearSky)
        && matches!(notice, LogNotice::ColumnNotFound { quantity, .. } if *quantity == Quantity::Irradiance)
}

/// Adds what is not there yet, since a log of several runs says everything once; returns what
/// was added.
fn add_new<T: PartialEq + Clone>(all: &mut Vec<T>, new: Vec<T>) -> Vec<T> {
    let mut added = Vec::new();
    for item in new {
        if !all.contains(&item) {
            all.push(item.clone());
            added.push(item);
        }
    }
    added
}

/// The runs in a log.
struct Found {
    pieces: Vec<Piece>,
    /// How the log was split, if it was.
    notice: Option<RunNotice>,
}

/// The runs in a log: one, or as many as it is split into.
fn take_runs(
    campaign: &Campaign,
    plan: &RunPlan,
    accounts: &[Account],
    readings: Readings,
) -> std::result::Result<Found, Problem> {
    let mut plan = plan.clone();
    if !plan.is_split {
        return Ok(Found {
            pieces: vec![Piece { plan, readings }],
            notice: None,
        });
    }
    if accounts.iter().any(|account| account.is_elapsed) {
        // It says when the stopwatch was started, not when each day's heating begins.
        plan.start = None;
    }
    let (pieces, notice) = split(&plan, readings, &campaign.site.time_zone);
    if pieces.is_empty() {
        let what = "no heating was found in the log that is split";
        let hint = "check start and end, or that the water rises in it";
        return Err(run_problem(&campaign.file, &plan, what, hint));
    }
    Ok(Found {
        pieces,
        notice: Some(notice),
    })
}

impl Tested {
    /// Whether irradiance is estimated.
    pub fn estimates_irradiance(&self) -> bool {
        self.campaign.instruments.irradiance_estimate.is_some()
    }

    /// Whether irradiance is that of a sensor that lies flat, not turned to the sun.
    pub fn lies_flat(&self) -> bool {
        let plane = self.campaign.instruments.irradiance_plane;
        plane == Some(Plane::Horizontal) && !self.estimates_irradiance()
    }

    /// Whether a log gave irradiance, measured or as the base of an estimate.
    pub fn has_irradiance(&self) -> bool {
        let mut runs = self.runs.iter();
        runs.any(|run| run.readings.irradiance_w_m2.is_some())
    }

    /// Whether there are runs, and none of them heats water: then there is nothing to rate.
    pub fn heats_no_water(&self) -> bool {
        self.runs.is_empty() && self.all_runs().next().is_some()
    }

    /// Every run, of whatever kind: those of water first, each kind in the order of the file.
    pub fn all_runs(&self) -> impl Iterator<Item = &Run> + Clone {
        self.runs
            .iter()
            .chain(&self.cooling_runs)
            .chain(&self.dry_runs)
    }

    /// Every file the report rests on: campaign file, what it shares with others, logs, and the
    /// photo as it stands in the report.
    pub fn inputs(&self) -> Vec<HashedFile> {
        inputs(&self.campaign, &self.logs)
    }
}

/// A campaign's file, what it shares with others, its logs and its photo.
pub fn inputs(campaign: &Campaign, logs: &[HashedFile]) -> Vec<HashedFile> {
    let photo = campaign.cooker.photo.iter();
    let photo = photo.map(|photo| HashedFile {
        name: photo.name.clone(),
        sha256: sha256_hex(&photo.bytes),
        bytes: photo.bytes.len() as u64,
    });
    let own = HashedFile {
        name: CAMPAIGN_FILE.to_owned(),
        sha256: campaign.sha256.clone(),
        bytes: campaign.bytes,
    };
    let shared = campaign.shared.iter().map(|one| HashedFile {
        name: one.name.clone(),
        sha256: one.sha256.clone(),
        bytes: one.bytes,
    });
    std::iter::once(own)
        .chain(shared)
        .chain(logs.iter().cloned())
        .chain(photo)
        .collect()
}
