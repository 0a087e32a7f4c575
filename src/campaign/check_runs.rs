//! The `[[run]]` tables: logs, loads, times and exclusions.

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;

use super::check_load::{Load, check_water};
use super::check_logs::check_rules;
use super::kinds::RunKind;
use super::locate::Checker;
use super::model::{Exclusion, LogRules, RunPlan, Span, WeatherPlan};
use super::moment::{Moment, WrittenMoment};
use super::named_files::{NamedFiles, NotRead};
use super::patterns::{WrittenRun, WrittenRuns};
use super::schema::{CloudlessTable, ExcludeTable, RunTable};
use super::wording::words;
use crate::believable::{CLOCK_OFFSET_S, LONGEST_TRACKING_MIN};
use crate::bounds::{REMARK, RUNS, SPANS};
use crate::units::MICROSECONDS_PER_SECOND;

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

/// Whether some run needs water: one that is no dry run, or, where there is none yet, the runs
/// to come.
pub fn need_water(written: &[RunTable], has_stagnation: bool) -> bool {
    let is_dry = |table: &RunTable| table.kind.as_deref() == Some(RunKind::Dry.word());
    if written.is_empty() {
        !has_stagnation
    } else {
        !written.iter().all(is_dry)
    }
}

/// The runs, each with a log that is there.
pub fn check_runs(
    checker: &mut Checker<'_>,
    base: &RunBase<'_>,
    WrittenRuns {
        tables,
        all: mut written,
    }: WrittenRuns,
) -> Vec<RunPlan> {
    if base.purpose == Purpose::Planning {
        let files = base.files;
        written.retain(|run| {
            let log = &run.table.log;
            files.forbids(log) || files.find(log).is_ok()
        });
    } else if tables == 0 && !base.has_stagnation {
        checker.problem(
            "run",
            "there is no run",
            "add a [[run]] table with log = \"…\" for each log",
        );
    }
    let hint = "make several campaigns of them, such as one a year, and compare those";
    let spans = written.iter();
    let spans = spans.map(|run| run.table.exclude.len() + run.table.cloudless.len());
    if !checker.bound("run", written.len(), &RUNS, hint)
        || !checker.bound(
            "run",
            spans.sum(),
            &SPANS,
            "join spans that touch each other",
        )
    {
        return Vec::new();
    }
    let parts: Vec<LogPart> = written
        .iter()
        .map(|run| LogPart::of(&run.table, base))
        .collect();
    let mut shares: BTreeMap<&LogName, Share> = BTreeMap::new();
    for (index, part) in parts.iter().enumerate() {
        let share = shares.entry(&part.log).or_insert(Share {
            first: index,
            bounded: 0,
        });
        share.bounded += usize::from(part.is_bounded);
    }
    let mut runs = Vec::new();
    let numbers: Vec<usize> = written.iter().map(|run| run.number).collect();
    for (index, run) in written.into_iter().enumerate() {
        let (key, part) = (format!("run.{}", run.number), &parts[index]);
        let share = &shares[&part.log];
        let shares_log = part.is_bounded && share.bounded > 1;
        runs.push(check_run(checker, &key, run, base, shares_log));
        let are_told_apart = part.is_bounded && parts[share.first].is_bounded;
        if share.first < index && !are_told_apart {
            checker.problem(
                &format!("{key}.log"),
                format!("names the same log as [[run]] {}", numbers[share.first]),
                "delete one of the two; or give each a date, or start and end with their dates; or write one run with split = \"daily\"",
            );
        }
    }
    runs
}

/// A log's path without links, or its name where it is not there; and its sheet.
type LogName = (PathBuf, Option<String>);

/// The runs of one log.
struct Share {
    /// Index of the first of them.
    first: usize,
    /// How many say which part of it they are.
    bounded: usize,
}

/// Which part of which log a run is.
struct LogPart {
    log: LogName,
    /// The run says which part of its log it is.
    is_bounded: bool,
}

impl LogPart {
    fn of(table: &RunTable, base: &RunBase<'_>) -> Self {
        let path = match base.files.find(&table.log) {
            Ok(path) => fs::canonicalize(&path).unwrap_or(path),
            // One that is not there is told apart by its name.
            Err(_) => PathBuf::from(&table.log),
        };
        let own_sheet = table.sheet.as_ref().or(table.format.sheet.as_ref());
        let has_date = |written: &Option<WrittenMoment>| {
            let moment = written.as_ref().map(WrittenMoment::to_string);
            let moment = moment.and_then(|text| Moment::parse(&text));
            matches!(moment, Some(Moment::Local(_) | Moment::Instant(_)))
        };
        let date = table.date.as_ref().and_then(WrittenMoment::date);
        let sheet = own_sheet.or(base.rules.format.sheet.as_ref()).cloned();
        LogPart {
            log: (path, sheet),
            is_bounded: date.is_some() || (has_date(&table.start) && has_date(&table.end)),
        }
    }
}

fn log_path(checker: &mut Checker<'_>, key: &str, files: NamedFiles<'_>, name: &str) -> PathBuf {
    files.find(name).unwrap_or_else(|NotRead { what, hint }| {
        checker.problem(key, format!("the log \"{name}\" {what}"), hint);
        PathBuf::new()
    })
}

fn check_run(
    checker: &mut Checker<'_>,
    key: &str,
    run: WrittenRun,
    base: &RunBase<'_>,
    shares_log: bool,
) -> RunPlan {
    let mut table = run.table;
    let path = log_path(checker, &format!("{key}.log"), base.files, &table.log);
    let kind = check_kind(checker, key, table.kind.as_deref());
    let (water_kg, vessel_water_kg) = run_load(checker, key, &table, kind, base.load);
    let weather = check_weather_log(checker, key, &table, base);
    let mut format = std::mem::take(&mut table.format);
    format.sheet = table.sheet.take().or(format.sheet);
    let columns = std::mem::take(&mut table.columns);
    let prefix = format!("{key}.");
    let rules = check_rules(checker, &prefix, &base.rules, columns, &table.units, format);
    let is_split = check_split(checker, key, kind, table.split.as_deref());
    if let Some(minutes) = table.tracking_interval_min {
        let key = format!("{key}.tracking_interval_min");
        checker.positive(&key, minutes, LONGEST_TRACKING_MIN, "min");
    }
    checker.length(&format!("{key}.notes"), table.notes.as_deref(), &REMARK);
    let date = table.date.as_ref();
    let date = date.and_then(|written| checker.date(&format!("{key}.date"), written));
    let mut time_of = |name: &str, written: Option<&WrittenMoment>| {
        check_moment(checker, &format!("{key}.{name}"), written?)
    };
    let (start, end) = (
        time_of("start", table.start.as_ref()),
        time_of("end", table.end.as_ref()),
    );
    RunPlan {
        number: run.number,
        is_matched: run.is_matched,
        line: checker.line_of(key),
        kind,
        label: match (date, &start) {
            (Some(date), _) if shares_log => format!("{} {date}", table.log),
            (None, Some(start)) if shares_log => format!("{} from {start}", table.log),
            _ => table.log.clone(),
        },
        log: table.log,
        path,
        rules,
        weather,
        is_split,
        shares_log,
        water_kg,
        vessel_water_kg,
        tracking_interval_min: table.tracking_interval_min,
        date,
        start,
        end,
        notes: table.notes,
        exclusions: check_exclusions(checker, key, table.exclude),
        cloudless: check_cloudless_spans(checker, key, &table.cloudless),
    }
}

/// The kind of a run: one that heats water, where it does not say.
fn check_kind(checker: &mut Checker<'_>, key: &str, written: Option<&str>) -> RunKind {
    let Some(word) = written else {
        return RunKind::default();
    };
    RunKind::of_word(word).unwrap_or_else(|| {
        let known = words(RunKind::ALL.map(RunKind::word));
        checker.problem(
            &format!("{key}.kind"),
            format!("found \"{word}\", expected one of {known}"),
            "\"water\" heats a load in the sun, \"cooling\" lets a hot load cool in the shade, \"dry\" is an empty vessel in the sun",
        );
        RunKind::default()
    })
}

/// Whether each local date of the log is a run.
fn check_split(checker: &mut Checker<'_>, key: &str, kind: RunKind, written: Option<&str>) -> bool {
    match written {
        None => false,
        Some(SPLIT_DAILY) if kind != RunKind::Water => {
            checker.problem(
                &format!("{key}.split"),
                format!("a log of {} runs is not split", kind.word()),
                "only heatings of water are found in a log of many days; write a [[run]] for each test, with date, or start and end with their dates",
            );
            false
        }
        Some(SPLIT_DAILY) => true,
        Some(other) => {
            checker.problem(
                &format!("{key}.split"),
                format!("found \"{other}\", expected \"{SPLIT_DAILY}\""),
                "\"daily\" makes each local date of the log a run; leave the key out for a log of one run",
            );
            false
        }
    }
}

/// A time of a run.
fn check_moment(checker: &mut Checker<'_>, key: &str, written: &WrittenMoment) -> Option<Moment> {
    let moment = Moment::parse(&written.to_string());
    if moment.is_none() {
        checker.problem(
            key,
            format!("found \"{written}\", expected a time"),
            "write local clock time as \"10:05\", or \"2026-03-14 10:05\"",
        );
    }
    moment
}

fn check_span(
    checker: &mut Checker<'_>,
    key: &str,
    from: &WrittenMoment,
    to: &WrittenMoment,
) -> Option<Span> {
    let from = check_moment(checker, &format!("{key}.from"), from);
    let to = check_moment(checker, &format!("{key}.to"), to);
    Some(Span {
        from: from?,
        to: to?,
    })
}

fn check_exclusions(
    checker: &mut Checker<'_>,
    key: &str,
    written: Vec<ExcludeTable>,
) -> Vec<Exclusion> {
    let mut exclusions = Vec::new();
    for (index, ExcludeTable { from, to, reason }) in written.into_iter().enumerate() {
        let key = format!("{key}.exclude.{}", index + 1);
        let span = check_span(checker, &key, &from, &to);
        checker.length(&format!("{key}.reason"), reason.as_deref(), &REMARK);
        exclusions.extend(span.map(|span| Exclusion { span, reason }));
    }
    exclusions
}

fn check_cloudless_spans(
    checker: &mut Checker<'_>,
    key: &str,
    written: &[CloudlessTable],
) -> Vec<Span> {
    let mut spans = Vec::new();
    for (index, CloudlessTable { from, to }) in written.iter().enumerate() {
        let key = format!("{key}.cloudless.{}", index + 1);
        spans.extend(check_span(checker, &key, from, to));
    }
    spans
}

/// Water of a run, kg, and of each of its vessels. A run that weighs the whole only has
/// its water spread over the vessels as the campaign's is.
fn run_load(
    checker: &mut Checker<'_>,
    key: &str,
    table: &RunTable,
    kind: RunKind,
    campaign: &Load,
) -> (f64, Vec<f64>) {
    if !kind.has_water() {
        let named = [
            ("water_kg", table.water_kg.is_some()),
            ("vessel_water_kg", table.vessel_water_kg.is_some()),
        ];
        for (name, _) in named.into_iter().filter(|(_, is_there)| *is_there) {
            checker.problem(
                &format!("{key}.{name}"),
                "a dry run has no water",
                "delete the key; or, if the vessel held water, write kind = \"water\"",
            );
        }
        return (0.0, Vec::new());
    }
    // Where it is stated nowhere, that has been said.
    let stated_kg = campaign.water_kg.unwrap_or(f64::NAN);
    let each = table.vessel_water_kg.clone().unwrap_or_default();
    let water_kg = check_water(checker, key, table.water_kg, &each);
    match water_kg {
        None => (stated_kg, campaign.vessel_water_kg.clone()),
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
