//! The `[[run]]` tables: logs, loads, times and exclusions.

use std::fs;
use std::path::{Path, PathBuf};

use super::check_logs::check_rules;
use super::locate::Checker;
use super::model::{Exclusion, LogRules, RunPlan, Span, WeatherPlan};
use super::moment::{Moment, WrittenMoment};
use super::named_files::NamedFiles;
use super::schema::{LoadTable, RunTable};
use crate::believable::{CLOCK_OFFSET_S, LONGEST_TRACKING_MIN, MOST_WATER_KG};
use crate::units::{MICROSECONDS_PER_SECOND, short};

/// The word that makes each date of a log a run.
const SPLIT_DAILY: &str = "daily";

/// What a campaign file is read for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// Its logs must be there.
    Rating,
    /// Those that are not there yet do not matter.
    Planning,
}

/// What holds for a run where it does not say otherwise.
pub struct RunBase<'b> {
    pub files: NamedFiles<'b>,
    pub rules: LogRules,
    /// Rules of weather logs.
    pub weather: LogRules,
    pub load: &'b Load,
    pub purpose: Purpose,
    /// A dry vessel was tested, which takes no run.
    pub has_stagnation: bool,
}

/// The water in the vessels.
pub struct Load {
    pub water_kg: f64,
    /// In each vessel, kg; empty where they are not told apart.
    pub vessel_water_kg: Vec<f64>,
    pub vessels: u32,
}

/// How far the vessels may add up to something else than the load: rounding.
const LOAD_ROUNDING: f64 = 2e-3;

/// The load of the campaign.
pub fn check_load(checker: &mut Checker<'_>, written: &LoadTable) -> Load {
    let each = written.vessel_water_kg.clone().unwrap_or_default();
    let vessels = written.vessels.unwrap_or(each.len().max(1) as u32);
    if vessels == 0 || (!each.is_empty() && vessels as usize != each.len()) {
        let what = match each.len() {
            0 => format!("found {vessels}, expected at least 1"),
            each => format!("found {vessels}, and vessel_water_kg has {each}"),
        };
        checker.problem("load.vessels", what, "count the vessels");
    }
    if written.water_kg.is_none() && each.is_empty() {
        checker.problem(
            "load.water_kg",
            "the key \"water_kg\" is missing",
            "weigh the water; simmerline new FOLDER writes a file that shows every key",
        );
    }
    Load {
        water_kg: check_water(checker, "load", written.water_kg, &each).unwrap_or(f64::NAN),
        vessel_water_kg: each,
        vessels,
    }
}

/// Water of a table, kg: the one number, or the sum over the vessels.
fn check_water(
    checker: &mut Checker<'_>,
    table: &str,
    water_kg: Option<f64>,
    each: &[f64],
) -> Option<f64> {
    for &kg in each {
        checker.positive(&format!("{table}.vessel_water_kg"), kg, MOST_WATER_KG, "kg");
    }
    let sum: f64 = each.iter().sum();
    let Some(water_kg) = water_kg else {
        return (!each.is_empty()).then_some(sum);
    };
    let is_right = checker.positive(&format!("{table}.water_kg"), water_kg, MOST_WATER_KG, "kg");
    if is_right && !each.is_empty() && (sum - water_kg).abs() > LOAD_ROUNDING * water_kg {
        checker.problem(
            &format!("{table}.vessel_water_kg"),
            format!(
                "adds up to {} kg, and water_kg is {water_kg} kg",
                short(sum)
            ),
            "correct one of the two, or delete water_kg",
        );
    }
    Some(water_kg)
}

/// The runs, each with a log that is there.
pub fn check_runs(
    checker: &mut Checker<'_>,
    base: &RunBase<'_>,
    mut written: Vec<RunTable>,
) -> Vec<RunPlan> {
    if base.purpose == Purpose::Planning {
        written.retain(|table| base.files.path(&table.log).exists());
    } else if written.is_empty() && !base.has_stagnation {
        checker.problem(
            "run",
            "there is no run",
            "add a [[run]] table with log = \"…\" for each log",
        );
    }
    let mut runs: Vec<RunPlan> = Vec::new();
    for (index, table) in written.into_iter().enumerate() {
        let key = format!("run.{}", index + 1);
        let path = log_path(checker, &format!("{key}.log"), base.files, &table.log);
        let mut run = check_run(checker, &key, table, path, base);
        let twin = runs.iter_mut().enumerate();
        let mut twin = twin.filter(|(_, other)| {
            same_file(&other.path, &run.path) && other.rules.format.sheet == run.rules.format.sheet
        });
        if let Some((number, other)) = twin.next() {
            if other.is_bounded() && run.is_bounded() {
                other.shares_log = true;
                run.shares_log = true;
            } else {
                checker.problem(
                    &format!("{key}.log"),
                    format!("names the same log as [[run]] {}", number + 1),
                    "delete one of the two; or give each a date, or start and end with their dates; or write one run with split = \"daily\"",
                );
            }
        }
        runs.push(run);
    }
    for run in runs.iter_mut().filter(|run| run.shares_log) {
        run.label = match (run.date, &run.start) {
            (Some(date), _) => format!("{} {date}", run.log),
            (None, Some(start)) => format!("{} from {start}", run.log),
            (None, None) => run.label.clone(),
        };
    }
    runs
}

impl RunPlan {
    /// Whether it says which part of its log it is.
    fn is_bounded(&self) -> bool {
        let has_date =
            |moment: &Option<Moment>| matches!(moment, Some(Moment::Local(_) | Moment::Instant(_)));
        self.date.is_some() || (has_date(&self.start) && has_date(&self.end))
    }
}

fn log_path(checker: &mut Checker<'_>, key: &str, files: NamedFiles<'_>, name: &str) -> PathBuf {
    let path = files.path(name);
    if !path.exists() {
        checker.problem(
            key,
            format!("the log \"{name}\" is not there"),
            files.remedy(),
        );
    }
    path
}

fn same_file(left: &Path, right: &Path) -> bool {
    match (fs::canonicalize(left), fs::canonicalize(right)) {
        (Ok(left), Ok(right)) => left == right,
        _ => left == right,
    }
}

fn check_run(
    checker: &mut Checker<'_>,
    key: &str,
    table: RunTable,
    path: PathBuf,
    base: &RunBase<'_>,
) -> RunPlan {
    let (water_kg, vessel_water_kg) = run_load(checker, key, &table, base.load);
    let weather = check_weather_log(checker, key, &table, base);
    let mut format = table.format;
    format.sheet = table.sheet.or(format.sheet);
    let prefix = format!("{key}.");
    let (columns, units) = (table.columns, &table.units);
    let rules = check_rules(checker, &prefix, &base.rules, columns, units, format);
    let is_split = match table.split.as_deref() {
        None => false,
        Some(SPLIT_DAILY) => true,
        Some(other) => {
            checker.problem(
                &format!("{key}.split"),
                format!("found \"{other}\", expected \"{SPLIT_DAILY}\""),
                "\"daily\" makes each local date of the log a run; leave the key out for a log of one run",
            );
            false
        }
    };
    if let Some(minutes) = table.tracking_interval_min {
        checker.positive(
            &format!("{key}.tracking_interval_min"),
            minutes,
            LONGEST_TRACKING_MIN,
            "min",
        );
    }
    let date = table.date.and_then(|written| {
        let date = written.to_string().parse().ok();
        if date.is_none() {
            checker.problem(
                &format!("{key}.date"),
                format!("found \"{written}\", expected a date"),
                "write the date as 2026-03-14",
            );
        }
        date
    });
    let mut moment = |name: &str, written: &WrittenMoment| {
        let moment = Moment::parse(&written.to_string());
        if moment.is_none() {
            checker.problem(
                &format!("{key}.{name}"),
                format!("found \"{written}\", expected a time"),
                "write local clock time as \"10:05\", or \"2026-03-14 10:05\"",
            );
        }
        moment
    };
    let start = table
        .start
        .as_ref()
        .and_then(|written| moment("start", written));
    let end = table
        .end
        .as_ref()
        .and_then(|written| moment("end", written));
    let mut span = |list: &str, index: usize, from: &WrittenMoment, to: &WrittenMoment| {
        let name = |end: &str| format!("{list}.{}.{end}", index + 1);
        let (from, to) = (moment(&name("from"), from), moment(&name("to"), to));
        Some(Span {
            from: from?,
            to: to?,
        })
    };
    let mut exclusions = Vec::new();
    for (index, written) in table.exclude.into_iter().enumerate() {
        let reason = written.reason;
        let span = span("exclude", index, &written.from, &written.to);
        exclusions.extend(span.map(|span| Exclusion { span, reason }));
    }
    let written = table.cloudless.iter().enumerate();
    let cloudless = written
        .filter_map(|(index, written)| span("cloudless", index, &written.from, &written.to))
        .collect();
    RunPlan {
        line: checker.line_of(key),
        label: table.log.clone(),
        log: table.log,
        path,
        rules,
        weather,
        is_split,
        shares_log: false,
        water_kg,
        vessel_water_kg,
        tracking_interval_min: table.tracking_interval_min,
        date,
        start,
        end,
        notes: table.notes,
        exclusions,
        cloudless,
    }
}

/// Water of a run, kg, and of each of its vessels. A run that weighs the whole only has
/// its water spread over the vessels as the campaign's is.
fn run_load(
    checker: &mut Checker<'_>,
    key: &str,
    table: &RunTable,
    campaign: &Load,
) -> (f64, Vec<f64>) {
    let each = table.vessel_water_kg.clone().unwrap_or_default();
    let water_kg = check_water(checker, key, table.water_kg, &each);
    match water_kg {
        None => (campaign.water_kg, campaign.vessel_water_kg.clone()),
        Some(water_kg) if each.is_empty() => (water_kg, campaign.vessel_water_kg.clone()),
        Some(water_kg) => (water_kg, each),
    }
}

fn check_weather_log(
    checker: &mut Checker<'_>,
    key: &str,
    table: &RunTable,
    base: &RunBase<'_>,
) -> Option<WeatherPlan> {
    let offset_key = format!("{key}.weather_clock_offset_s");
    let offset_s = table.weather_clock_offset_s.unwrap_or(0.0);
    checker.in_range(&offset_key, offset_s, &CLOCK_OFFSET_S, "s");
    let Some(log) = &table.weather else {
        if table.weather_clock_offset_s.is_some() {
            checker.problem(
                &offset_key,
                "there is no weather log whose clock it could correct",
                "name the log as weather = \"…\", or delete the key",
            );
        }
        return None;
    };
    Some(WeatherPlan {
        path: log_path(checker, &format!("{key}.weather"), base.files, log),
        log: log.clone(),
        clock_offset_us: (offset_s * MICROSECONDS_PER_SECOND).round() as i64,
        rules: base.weather.clone(),
    })
}
