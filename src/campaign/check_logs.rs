//! How logs are to be read: `[columns]`, `[units]`, `[format]`, `[weather]` and
//! `[[calibration]]`, and what a run overrides of them.

use std::collections::BTreeSet;

use super::locate::Checker;
use super::model::{Calibration, Columns, Curve, DateOrder, Delimiter, Format, LogRules, Units};
use super::schema::{
    CalibrationTable, ColumnTable, FormatTable, OneOrMore, UnitTable, WeatherTable,
};
use super::wording::words;
use super::zone::parse_zone;
use crate::believable::{CALIBRATION_OFFSET, LARGEST_GAIN};
use crate::bounds::{CALIBRATION_POINTS, CALIBRATIONS, HEADER_LINE, LOG_COLUMNS};
use crate::measure::{Kind, Unit};

/// Kinds of unit in which irradiance can be logged.
pub const IRRADIANCE_KINDS: [Kind; 3] = [Kind::Irradiance, Kind::Voltage, Kind::Current];

/// The three tables under a prefix such as `run.2.`, on top of those that hold already.
pub fn check_rules(
    checker: &mut Checker<'_>,
    prefix: &str,
    base: &LogRules,
    columns: ColumnTable,
    units: &UnitTable,
    format: FormatTable,
) -> LogRules {
    LogRules {
        columns: check_columns(checker, &format!("{prefix}columns"), &base.columns, columns),
        units: check_units(checker, &format!("{prefix}units"), &base.units, units),
        units_come_first: prefix.starts_with("run.") && *units != UnitTable::default(),
        format: check_format(checker, &format!("{prefix}format"), &base.format, format),
    }
}

/// The rules of weather logs, on top of those of the other logs.
pub fn check_weather(
    checker: &mut Checker<'_>,
    base: &LogRules,
    written: WeatherTable,
) -> LogRules {
    let WeatherTable {
        columns,
        units,
        format,
    } = written;
    // A header line and a sheet are those of one file.
    let mut base = base.clone();
    base.format.header_line = None;
    base.format.sheet = None;
    check_rules(checker, "weather.", &base, columns, &units, format)
}

fn check_columns(
    checker: &mut Checker<'_>,
    table: &str,
    base: &Columns,
    written: ColumnTable,
) -> Columns {
    let over = |written: Option<String>, base: &Option<String>| written.or_else(|| base.clone());
    let columns = Columns {
        time: match written.time {
            Some(time) => time.into_vec(),
            None => base.time.clone(),
        },
        water_temperature: match written.water_temperature {
            Some(vessels) => {
                let vessels = vessels.into_vec().into_iter();
                let vessels: Vec<Vec<String>> = vessels.map(OneOrMore::into_vec).collect();
                let sensors = vessels.iter().map(Vec::len).sum();
                let hint = "name the columns of the sensors that count";
                checker.bound(table, sensors, &LOG_COLUMNS, hint);
                vessels
            }
            None => base.water_temperature.clone(),
        },
        vessel_temperature: over(written.vessel_temperature, &base.vessel_temperature),
        ambient_temperature: over(written.ambient_temperature, &base.ambient_temperature),
        irradiance: over(written.irradiance, &base.irradiance),
        wind_speed: over(written.wind_speed, &base.wind_speed),
    };
    if columns.time.len() > 2 {
        checker.problem(
            &format!("{table}.time"),
            format!("found {} headers, expected one or two", columns.time.len()),
            "write one header, or that of the date and that of the clock time: [\"Date\", \"Time\"]",
        );
    }
    let single = [
        &columns.vessel_temperature,
        &columns.ambient_temperature,
        &columns.irradiance,
        &columns.wind_speed,
    ];
    let all = single
        .into_iter()
        .flatten()
        .chain(&columns.time)
        .chain(columns.water_temperature.iter().flatten());
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    for header in all {
        if !seen.insert(header.trim()) {
            checker.problem(
                table,
                format!("the column \"{header}\" is named twice"),
                "give each quantity a column of its own",
            );
        }
    }
    columns
}

fn check_units(checker: &mut Checker<'_>, table: &str, base: &Units, written: &UnitTable) -> Units {
    let mut unit = |key: &str, written: &Option<String>, kinds: &[Kind], base: Option<Unit>| {
        let Some(text) = written else { return base };
        let unit = Unit::parse(text, kinds);
        if unit.is_none() {
            checker.problem(
                &format!("{table}.{key}"),
                format!("found \"{text}\", expected a unit"),
                format!("known here: {}", Unit::known(kinds)),
            );
        }
        unit
    };
    Units {
        time: unit("time", &written.time, &[Kind::Time], base.time),
        water_temperature: unit(
            "water_temperature",
            &written.water_temperature,
            &[Kind::Temperature],
            base.water_temperature,
        ),
        vessel_temperature: unit(
            "vessel_temperature",
            &written.vessel_temperature,
            &[Kind::Temperature],
            base.vessel_temperature,
        ),
        ambient_temperature: unit(
            "ambient_temperature",
            &written.ambient_temperature,
            &[Kind::Temperature],
            base.ambient_temperature,
        ),
        irradiance: unit(
            "irradiance",
            &written.irradiance,
            &IRRADIANCE_KINDS,
            base.irradiance,
        ),
        wind_speed: unit(
            "wind_speed",
            &written.wind_speed,
            &[Kind::Speed],
            base.wind_speed,
        ),
    }
}

fn check_format(
    checker: &mut Checker<'_>,
    table: &str,
    base: &Format,
    written: FormatTable,
) -> Format {
    let encoding = check_encoding(checker, table, written.encoding);
    let delimiter = one_of(checker, table, "delimiter", written.delimiter, &DELIMITERS);
    let decimal_mark = one_of(
        checker,
        table,
        "decimal_mark",
        written.decimal_mark,
        &DECIMAL_MARKS,
    );
    let thousands_mark = one_of(
        checker,
        table,
        "thousands_mark",
        written.thousands_mark,
        &THOUSANDS_MARKS,
    );
    let date_order = one_of(
        checker,
        table,
        "date_order",
        written.date_order,
        &DATE_ORDERS,
    );
    let time_zone = written.time_zone.and_then(|name| {
        let zone = parse_zone(&name);
        if zone.is_none() {
            checker.problem(
                &format!("{table}.time_zone"),
                format!("found \"{name}\", expected an IANA zone or a fixed offset"),
                "write a name such as \"Africa/Nairobi\", \"UTC\", or an offset such as \"-05:00\"",
            );
        }
        zone
    });
    let decimal_mark = decimal_mark.or(base.decimal_mark);
    let thousands_mark = thousands_mark.or(base.thousands_mark);
    if decimal_mark.is_some() && decimal_mark == thousands_mark {
        checker.problem(
            &format!("{table}.thousands_mark"),
            "is the same as decimal_mark",
            "the two differ: with a decimal comma the thousands mark is a point, a space or an apostrophe",
        );
    }
    if written.header_line == Some(0) {
        checker.problem(
            &format!("{table}.header_line"),
            "found 0, expected 1 or more",
            "count the lines of the log from 1",
        );
    }
    let header_line = written.header_line.unwrap_or(0) as usize;
    let hint = "delete the lines above the header from the log";
    checker.bound(
        &format!("{table}.header_line"),
        header_line,
        &HEADER_LINE,
        hint,
    );
    Format {
        encoding: encoding.or_else(|| base.encoding.clone()),
        delimiter: delimiter.or(base.delimiter),
        decimal_mark,
        thousands_mark,
        header_line: written.header_line.or(base.header_line),
        date_order: date_order.or(base.date_order),
        time_zone: time_zone.or_else(|| base.time_zone.clone()),
        sheet: written.sheet.or_else(|| base.sheet.clone()),
    }
}

fn check_encoding(
    checker: &mut Checker<'_>,
    table: &str,
    written: Option<String>,
) -> Option<String> {
    let label = written?;
    if encoding_rs::Encoding::for_label(label.as_bytes()).is_none() {
        checker.problem(
            &format!("{table}.encoding"),
            format!("found \"{label}\", expected the name of an encoding"),
            "write for example \"utf-8\", \"utf-16le\", \"windows-1252\" or \"windows-1251\"",
        );
    }
    Some(label)
}

const DELIMITERS: [(&str, Delimiter); 5] = [
    (",", Delimiter::Comma),
    (";", Delimiter::Semicolon),
    ("tab", Delimiter::Tab),
    ("|", Delimiter::Pipe),
    ("space", Delimiter::Space),
];
const DECIMAL_MARKS: [(&str, char); 2] = [(".", '.'), (",", ',')];
const THOUSANDS_MARKS: [(&str, char); 4] = [(".", '.'), (",", ','), ("'", '\''), (" ", ' ')];
const DATE_ORDERS: [(&str, DateOrder); 3] = [
    ("year-month-day", DateOrder::YearMonthDay),
    ("day-month-year", DateOrder::DayMonthYear),
    ("month-day-year", DateOrder::MonthDayYear),
];

fn one_of<T: Copy, const N: usize>(
    checker: &mut Checker<'_>,
    table: &str,
    key: &str,
    written: Option<String>,
    choices: &[(&str, T); N],
) -> Option<T> {
    let written = written?;
    let chosen = choices.iter().find(|(name, _)| *name == written);
    if chosen.is_none() {
        checker.problem(
            &format!("{table}.{key}"),
            format!("found \"{written}\", expected another word"),
            format!(
                "write one of {}",
                words(choices.each_ref().map(|(name, _)| *name))
            ),
        );
    }
    chosen.map(|(_, value)| *value)
}

/// The calibrations, one a column.
pub fn check_calibrations(
    checker: &mut Checker<'_>,
    written: Vec<CalibrationTable>,
) -> Vec<Calibration> {
    let hint = "keep those of the sensors that the logs have";
    if !checker.bound("calibration", written.len(), &CALIBRATIONS, hint) {
        return Vec::new();
    }
    let mut calibrations: Vec<Calibration> = Vec::new();
    let mut columns = BTreeSet::new();
    for (index, table) in written.into_iter().enumerate() {
        let key = format!("calibration.{}", index + 1);
        let column = table.column.trim().to_owned();
        if !columns.insert(column.to_lowercase()) {
            checker.problem(
                &format!("{key}.column"),
                format!("the column \"{column}\" has a calibration already"),
                "write one [[calibration]] for each sensor",
            );
        }
        let curve = match (table.gain, table.offset, table.points) {
            (None, None, Some(points)) => {
                check_points(checker, &key, &points);
                Curve::Points(points)
            }
            (None, None, None) | (_, _, Some(_)) => {
                checker.problem(
                    &key,
                    "expected gain and offset, or points",
                    "true value = gain × reading + offset, or points = [[reading, true], …]",
                );
                continue;
            }
            (gain, offset, None) => Curve::Line {
                gain: gain.unwrap_or(1.0),
                offset: offset.unwrap_or(0.0),
            },
        };
        if let Curve::Line { gain, offset } = curve {
            checker.positive(&format!("{key}.gain"), gain, LARGEST_GAIN, "");
            checker.in_range(&format!("{key}.offset"), offset, &CALIBRATION_OFFSET, "");
        }
        calibrations.push(Calibration { column, curve });
    }
    calibrations
}

fn check_points(checker: &mut Checker<'_>, key: &str, points: &[[f64; 2]]) {
    let hint = "keep those between which the curve bends: it is straight from one to the next";
    checker.bound(
        &format!("{key}.points"),
        points.len(),
        &CALIBRATION_POINTS,
        hint,
    );
    let rises = |index: usize| {
        points
            .windows(2)
            .all(|pair| pair[0][index] < pair[1][index])
    };
    let is_finite = points.iter().flatten().all(|value| value.is_finite());
    if points.len() < 2 || !rises(0) || !rises(1) || !is_finite {
        checker.problem(
            &format!("{key}.points"),
            "expected at least two points, both readings and true values rising",
            "write points = [[reading, true], [reading, true], …] from the lowest up",
        );
    }
}
