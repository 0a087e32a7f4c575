//! The logs of each run put together: each quantity keeps the readings of one log.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::rc::Rc;

use jiff::civil::Date;

use super::account::Account;
use super::notice::LogNotice;
use super::quantity::{Quantity, Role};
use super::quote::quoted;
use super::read::{FileLog, read_bytes, read_file, read_start};
use super::readings::Readings;
use super::request::Request;
use super::search::is_header_of;
use crate::campaign::Campaign;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{Calibration, Instruments, LogRules, RunPlan, Site};
use crate::campaign::moment::Moment;
use crate::error::{Error, Problem, Problems, Result};
use crate::hash::HashedFile;
use crate::local_time::midnight_us;
use crate::units::zoned;

/// A weather log that begins later or ends earlier than the cooker's by more than this
/// covers a part of the run, µs.
const PARTLY_US: i64 = 600_000_000;

/// What the logs of a run hold.
#[derive(Debug, Clone, Default)]
pub struct Log {
    /// Each file.
    pub inputs: Vec<HashedFile>,
    /// Valid readings in order of time.
    pub readings: Readings,
    /// How each file was read.
    pub accounts: Vec<Account>,
    /// What a reader should know.
    pub notices: Vec<LogNotice>,
}

/// What is read of a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Part {
    /// All of it.
    Whole,
    /// So many bytes from its start: of a log that grows, up to its last whole line.
    Start(u64),
    /// These bytes in place of it: of a long log that grows, its head and what is new.
    Bytes(Vec<u8>),
}

/// Reads the logs of all runs, in the order of the campaign file; one that several runs
/// name is read once.
///
/// # Errors
/// [`Error::Input`] with the problems of all logs together; [`Error::Campaign`] for a
/// calibration of a column that no log has.
pub fn read_logs(campaign: &Campaign) -> Result<Vec<Log>> {
    let whole = |_: &Path| Part::Whole;
    let mut shelf = Shelf::new(campaign, &whole);
    let mut logs = Vec::new();
    let mut problems = Problems::default();
    for run in &campaign.runs {
        match shelf.read_run(run) {
            Ok(log) => logs.push(log),
            Err(Error::Input(of_run)) => problems.extend(of_run),
            Err(other) => return Err(other),
        }
    }
    if !problems.is_empty() {
        return Err(Error::Input(problems));
    }
    shelf.check_calibrations(campaign.file_of("calibration"))?;
    Ok(logs)
}

/// Reads the logs of all runs while some of them may not be there yet: of each run its log or
/// why it cannot be read, in the order of the campaign file. `part` says what is read of a file.
///
/// # Errors
/// As [`read_logs`] for a calibration of a column that no log has, where all of them were read.
pub fn read_each_log(
    campaign: &Campaign,
    part: &dyn Fn(&Path) -> Part,
) -> Result<Vec<Result<Log>>> {
    let mut shelf = Shelf::new(campaign, part);
    let runs = campaign.runs.iter();
    let logs: Vec<Result<Log>> = runs.map(|run| shelf.read_run(run)).collect();
    if logs.iter().all(Result::is_ok) {
        shelf.check_calibrations(campaign.file_of("calibration"))?;
    }
    Ok(logs)
}

/// Reads the logs of one run of a campaign, one of `campaign.runs`.
///
/// # Errors
/// [`Error::Input`] for what cannot be read.
pub fn read_log_of(
    campaign: &Campaign,
    run: &RunPlan,
    part: &dyn Fn(&Path) -> Part,
) -> Result<Log> {
    Shelf::new(campaign, part).read_run(run)
}

/// Logs that have been read, for the runs that name them again.
struct Shelf<'c> {
    part: &'c dyn Fn(&Path) -> Part,
    runs: &'c [RunPlan],
    site: &'c Site,
    instruments: &'c Instruments,
    calibrations: &'c [Calibration],
    read: Vec<Shelved>,
    /// Columns that a calibration was used for, in lower case.
    calibrated: BTreeSet<String>,
    /// Columns of numbers that were read.
    columns: BTreeSet<String>,
}

struct Shelved {
    path: PathBuf,
    role: Role,
    rules: LogRules,
    clock_offset_us: i64,
    kind: RunKind,
    vessel_water_kg: Vec<f64>,
    /// Date and start of the run that was the first to name it.
    anchor: (Option<Date>, Option<Moment>),
    log: Rc<FileLog>,
}

impl<'c> Shelf<'c> {
    fn new(campaign: &'c Campaign, part: &'c dyn Fn(&Path) -> Part) -> Self {
        Shelf {
            part,
            runs: &campaign.runs,
            site: &campaign.site,
            instruments: &campaign.instruments,
            calibrations: &campaign.calibrations,
            read: Vec::new(),
            calibrated: BTreeSet::new(),
            columns: BTreeSet::new(),
        }
    }

    fn read_run(&mut self, run: &RunPlan) -> Result<Log> {
        let role = match run.weather {
            None => Role::Whole,
            Some(_) => Role::Cooker,
        };
        let file = File {
            path: &run.path,
            name: &run.log,
            role,
            rules: &run.rules,
            clock_offset_us: 0,
            kind: run.kind,
            vessel_water_kg: &run.vessel_water_kg,
            is_shared: run.shares_log,
        };
        let cooker = self.read(file, run);
        let weather = run.weather.as_ref().map(|weather| {
            let file = File {
                path: &weather.path,
                name: &weather.log,
                role: Role::Weather,
                rules: &weather.rules,
                clock_offset_us: weather.clock_offset_us,
                kind: run.kind,
                vessel_water_kg: &[],
                is_shared: self.is_named_twice(&weather.path),
            };
            self.read(file, run)
        });
        match (cooker, weather.transpose()) {
            (Ok(cooker), Ok(None)) => Ok(alone(cooker, run, self.site)),
            (Ok(cooker), Ok(Some(weather))) => together(&cooker, &weather, run, self.site),
            (Err(Error::Input(mut problems)), Err(Error::Input(more))) => {
                problems.extend(more);
                Err(Error::Input(problems))
            }
            (Err(error), _) | (_, Err(error)) => Err(error),
        }
    }

    fn is_named_twice(&self, path: &Path) -> bool {
        let weather = self.runs.iter().filter_map(|run| run.weather.as_ref());
        weather.filter(|weather| weather.path == path).count() > 1
    }

    /// Reads a log, or takes it from the shelf. A log of several runs is read without
    /// the date of any of them; where that cannot be, date and start of the first count.
    fn read(&mut self, file: File<'_>, run: &RunPlan) -> Result<Rc<FileLog>> {
        let is_it = |shelved: &&Shelved| {
            shelved.path == file.path
                && shelved.role == file.role
                && shelved.rules == *file.rules
                && shelved.clock_offset_us == file.clock_offset_us
                && shelved.kind == file.kind
                && shelved.vessel_water_kg == file.vessel_water_kg
        };
        if let Some(shelved) = self.read.iter().find(is_it) {
            return Ok(Rc::clone(&shelved.log));
        }
        let undated = file.is_shared.then(|| self.read_file(file, None, None));
        let first = self.read.iter().find(|shelved| shelved.path == file.path);
        let anchor = first.map_or((run.date, run.start), |first| first.anchor);
        let log = match undated {
            Some(Ok(log)) => log,
            _ => self.read_file(file, anchor.0, anchor.1)?,
        };
        let log = Rc::new(log);
        if file.is_shared {
            self.read.push(Shelved {
                path: file.path.to_path_buf(),
                role: file.role,
                rules: file.rules.clone(),
                clock_offset_us: file.clock_offset_us,
                kind: file.kind,
                vessel_water_kg: file.vessel_water_kg.to_vec(),
                anchor,
                log: Rc::clone(&log),
            });
        }
        let columns = log.account.columns.iter();
        self.columns
            .extend(columns.map(|column| column.header.clone()));
        self.calibrated
            .extend(log.calibrated.iter().map(|header| header.to_lowercase()));
        Ok(log)
    }

    fn read_file(
        &self,
        file: File<'_>,
        date: Option<Date>,
        start: Option<Moment>,
    ) -> Result<FileLog> {
        let request = Request {
            role: file.role,
            kind: file.kind,
            rules: file.rules,
            zone: &self.site.time_zone,
            date,
            start,
            clock_offset_us: file.clock_offset_us,
            calibrations: self.calibrations,
            sensitivity: self.instruments.sensitivity,
            plane: self.instruments.irradiance_plane,
            vessel_water_kg: file.vessel_water_kg,
        };
        match (self.part)(file.path) {
            Part::Whole => read_file(file.path, file.name, &request),
            Part::Start(length) => read_start(file.path, file.name, length, &request),
            Part::Bytes(bytes) => read_bytes(file.path, file.name, &bytes, &request),
        }
    }

    fn check_calibrations(&self, file: &Path) -> Result<()> {
        let mut problems = Problems::default();
        for (index, calibration) in self.calibrations.iter().enumerate() {
            let is_used = |header: &String| is_header_of(header, &calibration.column);
            if !self.calibrated.iter().any(is_used) {
                let columns: Vec<String> = self.columns.iter().cloned().collect();
                let what = format!(
                    "no log has a column \"{}\" that is read; there are: {}",
                    calibration.column,
                    quoted(&columns)
                );
                let item = format!("[[calibration]] {}, column", index + 1);
                problems.push(Problem::at(file, what).item(item).hint(
                    "write the header of the sensor's column as it stands in the log, unit included",
                ));
            }
        }
        if problems.is_empty() {
            Ok(())
        } else {
            Err(Error::Campaign(problems))
        }
    }
}

#[derive(Clone, Copy)]
struct File<'f> {
    path: &'f Path,
    name: &'f str,
    role: Role,
    rules: &'f LogRules,
    clock_offset_us: i64,
    kind: RunKind,
    vessel_water_kg: &'f [f64],
    is_shared: bool,
}

/// The days of a log that are the run's, if it shares the log with others; `None` for all of
/// it.
fn own_part(readings: &Readings, run: &RunPlan, site: &Site) -> Option<Readings> {
    let midnight = |date: Date| midnight_us(date, &site.time_zone);
    let (first, last) = own_days(run, site)?;
    let next = last.tomorrow().ok()?;
    Some(readings.part(midnight(first)?, midnight(next)? - 1))
}

/// First and last day of a run that shares its log.
fn own_days(run: &RunPlan, site: &Site) -> Option<(Date, Date)> {
    let date_of = |moment: Moment| match moment {
        Moment::Clock(_) => None,
        Moment::Local(local) => Some(local.date()),
        Moment::Instant(instant) => Some(zoned(instant.as_microsecond(), &site.time_zone).date()),
    };
    let (first, last) = match run.date {
        Some(date) => (date, date),
        None => (date_of(run.start?)?, date_of(run.end?)?),
    };
    (run.shares_log && first <= last).then_some((first, last))
}

/// A run with a single log.
fn alone(file: Rc<FileLog>, run: &RunPlan, site: &Site) -> Log {
    let name = &file.account.log;
    let not_read = &file.account.not_read;
    let lacking = Role::Whole
        .sought(run.kind)
        .iter()
        .copied()
        .filter(|quantity| *quantity != Quantity::Irradiance || run.kind != RunKind::Cooling)
        .filter(|quantity| !file.quantities.contains(quantity) && !not_read.is_empty());
    let not_found = lacking.map(|quantity| LogNotice::ColumnNotFound {
        log: name.clone(),
        quantity,
        ignored: not_read.clone(),
    });
    Log {
        inputs: vec![file.file.clone()],
        notices: file.notices.iter().cloned().chain(not_found).collect(),
        accounts: vec![file.account.clone()],
        readings: own_part(&file.readings, run, site)
            .unwrap_or_else(|| Rc::unwrap_or_clone(file).readings),
    }
}

/// A run with a log beside the cooker and one of the weather: what the first does not
/// hold is taken from the second, as far as the first reaches. Nothing is interpolated,
/// so no value is invented where either has a hole.
fn together(cooker: &FileLog, weather: &FileLog, run: &RunPlan, site: &Site) -> Result<Log> {
    let weather_name = &weather.account.log;
    let own = own_part(&cooker.readings, run, site).unwrap_or_else(|| cooker.readings.clone());
    let (first, last) = match (own.time_us.first(), own.time_us.last()) {
        (Some(first), Some(last)) => (*first, *last),
        _ => (i64::MAX, i64::MIN),
    };
    let around = weather.readings.part(first, last);
    if around.time_us.is_empty() && !own.time_us.is_empty() {
        let what = "has no reading while the cooker's log runs";
        let problem = Problem::at(&run.path.with_file_name(weather_name), what);
        let hint = "check the dates, the time zone (time_zone under [weather.format]) and weather_clock_offset_s";
        return Err(Error::Input(problem.hint(hint).into()));
    }
    let mut notices = cooker.notices.clone();
    let covered = (weather.account.first_us, weather.account.last_us);
    if covered.0 - first > PARTLY_US || last - covered.1 > PARTLY_US {
        notices.push(LogNotice::WeatherInPart {
            log: run.log.clone(),
            weather: weather_name.clone(),
        });
    }
    notices.extend(weather.notices.iter().cloned());
    notices.extend(quantity_notices(cooker, weather, &own, run));
    let readings = Readings {
        time_us: own.time_us,
        water_c: own.water_c,
        vessel_c: own.vessel_c,
        ambient_c: own.ambient_c.or(around.ambient_c),
        irradiance_w_m2: own.irradiance_w_m2.or(around.irradiance_w_m2),
        wind_m_s: own.wind_m_s.or(around.wind_m_s),
        aimed_us: own.aimed_us,
    };
    check_together(cooker, weather, &readings, run)?;
    Ok(Log {
        inputs: vec![
            HashedFile {
                name: run.log.clone(),
                ..cooker.file.clone()
            },
            weather.file.clone(),
        ],
        readings,
        accounts: vec![cooker.account.clone(), weather.account.clone()],
        notices,
    })
}

/// Quantities of the weather that both logs hold, and those that neither does.
fn quantity_notices(
    cooker: &FileLog,
    weather: &FileLog,
    own: &Readings,
    run: &RunPlan,
) -> Vec<LogNotice> {
    let mut notices = Vec::new();
    for &quantity in Role::Weather.sought(run.kind) {
        let has = |log: &FileLog| log.quantities.contains(&quantity);
        if own.measures(quantity) && has(weather) {
            notices.push(LogNotice::QuantityInBoth {
                log: run.log.clone(),
                weather: weather.account.log.clone(),
                quantity,
            });
        }
        if !has(cooker) && !has(weather) {
            notices.push(LogNotice::ColumnNotFound {
                log: run.log.clone(),
                quantity,
                ignored: [&cooker.account.not_read[..], &weather.account.not_read[..]].concat(),
            });
        }
    }
    notices
}

/// What neither log holds.
fn check_together(
    cooker: &FileLog,
    weather: &FileLog,
    readings: &Readings,
    run: &RunPlan,
) -> Result<()> {
    let mut problems = Problems::default();
    let both = || format!("{} and {}", run.log, weather.account.log);
    for (key, name) in &cooker.absent {
        if weather.absent.contains(&(*key, name.clone())) {
            let what = format!("neither of {} has a column \"{name}\"", both());
            let hint = format!("correct it under [columns] {key} in campaign.toml");
            problems.push(Problem::at(&run.path, what).hint(hint));
        }
    }
    if readings.ambient_c.is_none() && problems.is_empty() {
        let columns = [&cooker.account.not_read[..], &weather.account.not_read[..]].concat();
        let what = format!(
            "neither of {} has an ambient temperature; not read: {}",
            both(),
            quoted(&columns)
        );
        let hint = "name its column under [columns] ambient_temperature in campaign.toml";
        problems.push(Problem::at(&run.path, what).hint(hint));
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(Error::Input(problems))
    }
}
