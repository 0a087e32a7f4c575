//! A campaign and its logs as they lie, assessed as `check` does.

use std::collections::BTreeMap;
use std::fs::Metadata;
use std::path::{Path, PathBuf};

use super::trouble::{Trouble, first_line};
use super::whole_lines::{WholeLines, whole_lines};
use crate::campaign::kinds::RunKind;
use crate::campaign::model::RunPlan;
use crate::campaign::{Campaign, Reach, read_campaign_to_plan};
use crate::error::{Error, Result};
use crate::logs::{Log, Part, read_each_log};
use crate::procedure::s580::Limits;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::{Assessment, assess};
use crate::units::zoned;

/// So long after its last change a log may still be written to, s: a day. An older one counts to
/// its last byte, as it does for every other command.
const MAY_GROW_S: u64 = 86_400;

/// The run whose log has the latest reading.
#[derive(Debug, Clone)]
pub struct Followed {
    pub plan: RunPlan,
    /// As it was read.
    pub log: Log,
}

/// What is known of a campaign.
#[derive(Debug)]
pub struct Known {
    /// With the runs whose logs can be read.
    pub campaign: Campaign,
    pub limits: Limits,
    /// `None` where no run can be assessed.
    pub assessment: Option<Assessment>,
    /// `None` where no log has a reading.
    pub followed: Option<Followed>,
    /// How far each log was read that something may still write to.
    pub ends: BTreeMap<PathBuf, u64>,
    /// Logs with a line behind their whole ones that is not ended.
    pub rests: Vec<PathBuf>,
    /// Files and folders on which all this rests.
    pub files: Vec<PathBuf>,
    pub troubles: Vec<Trouble>,
    /// The first error of a log that is there, or of a run.
    pub error: Option<Error>,
}

/// Reads a campaign and its logs up to their last whole lines, and assesses the runs whose logs
/// can be read.
///
/// # Errors
/// As [`read_campaign_to_plan`], and for own limits between which nothing lies.
pub fn read_known(folder: &Path, reach: Reach) -> Result<Known> {
    let mut campaign = read_campaign_to_plan(folder, reach, check_own_limits)?;
    let limits =
        Limits::of_campaign(&campaign).map_err(|problem| Error::Campaign(problem.into()))?;
    let mut files = files_of(&campaign, folder);
    let mut troubles = Vec::new();
    for log in missing_logs(&campaign) {
        files.push(folder.join(&log));
        troubles.push(Trouble::LogMissing {
            log,
            was_there: false,
        });
    }
    let lines = lines_of(&campaign);
    let rests = lines.iter().filter(|(_, lines)| lines.has_rest);
    let rests = rests.map(|(path, _)| path.clone()).collect();
    let part = |path: &Path| match lines.get(path) {
        // What is appended from now on is met at the next look.
        Some(lines) => Part::Start(lines.end),
        None => Part::Whole,
    };
    let mut first_error = None;
    let (mut runs, mut logs) = (Vec::new(), Vec::new());
    for (run, log) in campaign.runs.iter().zip(read_each_log(&campaign, &part)?) {
        match log {
            Ok(log) => {
                runs.push(run.clone());
                logs.push(log);
            }
            Err(error) => {
                troubles.push(Trouble::NotRead {
                    what: first_line(&error),
                });
                first_error.get_or_insert(error);
            }
        }
    }
    campaign.runs = runs;
    let followed = followed(&campaign, &logs);
    let assessed = match campaign.runs.is_empty() {
        true => None,
        false => Some(assess(campaign.clone(), logs)),
    };
    let assessment = match assessed.transpose() {
        Ok(assessment) => assessment,
        Err(error) => {
            troubles.push(Trouble::NotRead {
                what: first_line(&error),
            });
            first_error.get_or_insert(error);
            None
        }
    };
    Ok(Known {
        campaign,
        limits,
        assessment,
        followed,
        ends: lines
            .into_iter()
            .map(|(path, lines)| (path, lines.end))
            .collect(),
        rests,
        files,
        troubles,
        error: first_error,
    })
}

/// The campaign file, the folder, what is shared, and the logs with their folders, where new
/// ones may come.
fn files_of(campaign: &Campaign, folder: &Path) -> Vec<PathBuf> {
    let mut files = vec![campaign.file.clone(), folder.to_owned()];
    files.extend(campaign.shared.iter().map(|one| one.path.clone()));
    for log in log_paths(campaign) {
        files.extend(log.parent().map(Path::to_owned));
        files.push(log.to_owned());
    }
    files.sort();
    files.dedup();
    files
}

/// Logs of the runs, and of the weather.
fn log_paths(campaign: &Campaign) -> impl Iterator<Item = &Path> {
    let runs = campaign.runs.iter();
    runs.flat_map(|run| {
        let weather = run.weather.as_ref().map(|weather| weather.path.as_path());
        std::iter::once(run.path.as_path()).chain(weather)
    })
}

/// How far each log can be read that something may still write to. One that cannot be looked at
/// is left out: reading it says why.
fn lines_of(campaign: &Campaign) -> BTreeMap<PathBuf, WholeLines> {
    let paths = log_paths(campaign).filter(|path| may_grow(path));
    let lines = paths.filter_map(|path| Some((path.to_owned(), whole_lines(path).ok()??)));
    lines.collect()
}

fn may_grow(path: &Path) -> bool {
    // To open a pipe would be to wait for whoever writes to it; reading it says that it is no log.
    let metadata = std::fs::metadata(path).ok().filter(Metadata::is_file);
    let modified = metadata.and_then(|metadata| metadata.modified().ok());
    let age = modified.map(|modified| modified.elapsed());
    // A time to come is that of a clock that was set since.
    age.is_some_and(|age| age.map_or(true, |age| age.as_secs() < MAY_GROW_S))
}

/// Logs that the campaign file names and that are not there; patterns name none.
fn missing_logs(campaign: &Campaign) -> Vec<String> {
    let table: Option<toml::Table> = campaign.text.parse().ok();
    let runs = table
        .as_ref()
        .and_then(|table| table.get("run")?.as_array());
    let names = runs
        .into_iter()
        .flatten()
        .filter_map(|run| run.get("log")?.as_str());
    let is_missing = |name: &&str| {
        let is_there = campaign.runs.iter().any(|run| run.log == *name);
        !is_there && !name.contains(['*', '?'])
    };
    let mut missing: Vec<String> = names.filter(is_missing).map(str::to_owned).collect();
    missing.sort();
    missing.dedup();
    missing
}

/// A path as the campaign file has it.
pub fn name_of(path: &Path, folder: &Path) -> String {
    path.strip_prefix(folder)
        .unwrap_or(path)
        .display()
        .to_string()
}

/// The run whose log has the latest reading; of several with one log, that of its last date.
fn followed(campaign: &Campaign, logs: &[Log]) -> Option<Followed> {
    let runs = campaign.runs.iter().zip(logs);
    let last = |(_, log): &(&RunPlan, &Log)| log.readings.time_us.last().copied();
    let (plan, log) = runs.filter(|run| last(run).is_some()).max_by_key(last)?;
    Some(Followed {
        plan: plan.clone(),
        log: log.clone(),
    })
}

impl Known {
    /// Files of the run that is followed, which grow.
    pub fn followed_files(&self) -> impl Iterator<Item = &Path> {
        self.followed.iter().flat_map(|followed| {
            let weather = followed.plan.weather.as_ref();
            let weather = weather.map(|weather| weather.path.as_path());
            std::iter::once(followed.plan.path.as_path()).chain(weather)
        })
    }

    /// What kind of run is followed.
    pub fn kind(&self) -> RunKind {
        self.followed
            .as_ref()
            .map_or_else(RunKind::default, |followed| followed.plan.kind)
    }

    /// Used and all intervals of a local date.
    pub fn intervals_on(&self, date: jiff::civil::Date) -> (usize, usize) {
        let zone = &self.campaign.site.time_zone;
        let all = self
            .assessment
            .iter()
            .flat_map(|found| &found.s580.intervals);
        let of_date = all.filter(|one| zoned(one.measured.span.from_us, zone).date() == date);
        of_date.fold((0, 0), |(used, all), one| {
            (used + usize::from(one.is_on_line()), all + 1)
        })
    }
}
