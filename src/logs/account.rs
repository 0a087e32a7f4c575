//! How a log was read: for the person who wonders, and for the report.

use std::collections::BTreeMap;

use jiff::tz::TimeZone;

use super::quantity::Quantity;
use super::sensor::Sensor;
use crate::campaign::model::Curve;
use crate::units::{counted, short, zoned};

/// At most so many lines are listed for one reason; the rest are counted.
const LISTED_LINES: usize = 12;

/// Why a row is no reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Skip {
    BeforeHeader,
    UnitsRow,
    BetweenHeaderAndReadings,
    Remark,
    Blank,
    HeaderAgain,
    BeforeHeaderAgain,
    Footer,
    CutOff,
}

impl Skip {
    /// In words.
    pub fn describe(self) -> &'static str {
        match self {
            Skip::BeforeHeader => "before the header",
            Skip::UnitsRow => "units under the header",
            Skip::BetweenHeaderAndReadings => "between header and readings",
            Skip::Remark => "remark",
            Skip::Blank => "blank",
            Skip::HeaderAgain => "header again",
            Skip::BeforeHeaderAgain => "before a repeated header",
            Skip::Footer => "after the last reading",
            Skip::CutOff => "cut off at the end of the file",
        }
    }
}

/// Rows that are no readings, by reason.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Skipped {
    by_reason: BTreeMap<Skip, (Vec<u64>, usize)>,
}

impl Skipped {
    /// Counts a row.
    pub fn add(&mut self, reason: Skip, line: u64) {
        let (lines, count) = self.by_reason.entry(reason).or_default();
        *count += 1;
        if lines.len() < LISTED_LINES {
            lines.push(line);
        }
    }

    /// How many rows were left out for a reason.
    pub fn count(&self, reason: Skip) -> usize {
        self.by_reason.get(&reason).map_or(0, |(_, count)| *count)
    }

    /// Lines left out for a reason, as `3, 7–9`, with how many more.
    pub fn lines(&self, reason: Skip) -> String {
        let Some((lines, count)) = self.by_reason.get(&reason) else {
            return String::new();
        };
        let mut runs: Vec<(u64, u64)> = Vec::new();
        for &line in lines {
            match runs.last_mut() {
                Some((_, last)) if *last + 1 == line => *last = line,
                _ => runs.push((line, line)),
            }
        }
        let shown: Vec<String> = runs
            .into_iter()
            .map(|(first, last)| match last - first {
                0 => first.to_string(),
                _ => format!("{first}–{last}"),
            })
            .collect();
        let more = match count - lines.len() {
            0 => String::new(),
            more => format!(" and {more} more"),
        };
        format!("{}{more}", shown.join(", "))
    }

    /// Each reason with its lines in words: `line 3: units under the header`.
    pub fn describe(&self) -> Vec<String> {
        self.by_reason
            .iter()
            .map(|(reason, (_, count))| {
                let noun = if *count == 1 { "line" } else { "lines" };
                format!(
                    "{noun} {} left out: {}",
                    self.lines(*reason),
                    reason.describe()
                )
            })
            .collect()
    }
}

/// How a log was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Account {
    /// The log's name as the campaign file gives it.
    pub log: String,
    /// Encoding and delimiter, or the sheet.
    pub written_in: String,
    pub decimal_mark: String,
    pub header_line: u64,
    /// Header of the time, how times are written, and their zone.
    pub time_header: String,
    pub time_format: String,
    /// A time of it.
    pub time_example: String,
    pub time_zone: String,
    /// Times count from the run's start.
    pub is_elapsed: bool,
    /// Added to the times, s.
    pub clock_offset_s: f64,
    pub columns: Vec<ColumnAccount>,
    /// Headers of columns that are not read.
    pub not_read: Vec<String>,
    pub readings: usize,
    /// First and last reading, µs since 1970, UTC.
    pub first_us: i64,
    pub last_us: i64,
    /// Median time from one reading to the next, s; `None` with a single one.
    pub step_s: Option<f64>,
    pub skipped: Skipped,
}

impl Account {
    /// Whether its wind is an estimate by eye.
    pub fn estimates_wind(&self) -> bool {
        self.columns.iter().any(|column| column.is_estimate)
    }

    /// How the log is written, a fact a row: what it is, and how it was understood.
    pub fn form(&self) -> Vec<(String, String)> {
        let mut rows = vec![
            (
                "form".to_owned(),
                format!(
                    "{}; header on line {}; decimal {}",
                    self.written_in, self.header_line, self.decimal_mark
                ),
            ),
            (
                quoted(&self.time_header),
                format!(
                    "time: {}, as in \"{}\"; zone {}",
                    self.time_format, self.time_example, self.time_zone
                ),
            ),
        ];
        if self.clock_offset_s != 0.0 {
            let offset = format!("{} s added to all times", short(self.clock_offset_s));
            rows.push(("clock".to_owned(), offset));
        }
        let columns = self.columns.iter();
        rows.extend(columns.map(|column| (quoted(&column.header), column.describe())));
        if !self.not_read.is_empty() {
            let headers: Vec<String> = self.not_read.iter().map(|header| quoted(header)).collect();
            rows.push(("not read".to_owned(), headers.join(", ")));
        }
        rows
    }

    /// The readings: how many, from when to when, how often.
    pub fn readings(&self, zone: &TimeZone) -> String {
        let from = zoned(self.first_us, zone);
        let to = zoned(self.last_us, zone);
        let last = if from.date() == to.date() {
            "%H:%M:%S"
        } else {
            "%Y-%m-%d %H:%M:%S"
        };
        let step = match self.step_s {
            Some(step_s) => format!(", mostly one every {} s", short(step_s)),
            None => String::new(),
        };
        format!(
            "{} from {} to {}{step}",
            counted(self.readings, "reading"),
            from.strftime("%Y-%m-%d %H:%M:%S"),
            to.strftime(last),
        )
    }

    /// Whether another log is written in the same way.
    fn is_like(&self, other: &Account) -> bool {
        let written_alike = Account {
            time_example: self.time_example.clone(),
            ..other.clone()
        };
        self.form() == written_alike.form()
    }
}

fn quoted(header: &str) -> String {
    format!("\"{header}\"")
}

/// The logs, those that are written in one way together.
pub fn alike(accounts: &[Account]) -> Vec<Vec<&Account>> {
    let mut groups: Vec<Vec<&Account>> = Vec::new();
    for account in accounts {
        match groups.iter_mut().find(|group| group[0].is_like(account)) {
            Some(group) => group.push(account),
            None => groups.push(vec![account]),
        }
    }
    groups
}

/// How one column was understood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ColumnAccount {
    pub header: String,
    pub quantity: &'static str,
    pub found_by: &'static str,
    pub unit: &'static str,
    pub unit_from: &'static str,
    /// Its unit is one of estimates by eye.
    pub is_estimate: bool,
    /// Vessel, calibration and sensitivity, in words; empty if there is none.
    pub correction: String,
}

impl ColumnAccount {
    /// Of a sensor, with the water of each vessel, kg, where they are told apart.
    pub fn new(sensor: &Sensor, vessel_water_kg: &[f64]) -> Self {
        let mut corrections = Vec::new();
        if let (Quantity::Water, Some(kg)) = (sensor.quantity, vessel_water_kg.get(sensor.vessel)) {
            corrections.push(format!("vessel {}, {} kg", sensor.vessel + 1, short(*kg)));
        }
        if sensor.per_w_m2 != 1.0 {
            let base = crate::measure::Unit::base(sensor.unit.kind()).symbol();
            corrections.push(format!("sensitivity {} {base} per W/m²", sensor.per_w_m2));
        }
        if let Some(curve) = &sensor.calibration {
            corrections.push(describe_curve(curve, sensor.quantity.unit()));
        }
        ColumnAccount {
            header: sensor.header.clone(),
            quantity: sensor.quantity.name(),
            found_by: sensor.found_by.describe(),
            unit: sensor.unit.symbol(),
            unit_from: sensor.unit_from.describe(),
            is_estimate: sensor.unit.is_estimate(),
            correction: corrections.join("; "),
        }
    }

    /// In one line.
    pub fn describe(&self) -> String {
        let correction = match self.correction.as_str() {
            "" => String::new(),
            correction => format!("; {correction}"),
        };
        format!(
            "{} ({}), {} ({}){correction}",
            self.quantity, self.found_by, self.unit, self.unit_from
        )
    }
}

fn describe_curve(curve: &Curve, unit: &str) -> String {
    match curve {
        Curve::Line { gain, offset } => {
            let sign = if *offset < 0.0 { '−' } else { '+' };
            format!(
                "calibrated: reading × {gain} {sign} {} {unit}",
                offset.abs()
            )
        }
        Curve::Points(points) => {
            let points: Vec<String> = points
                .iter()
                .map(|[read, real]| format!("{read} → {real}"))
                .collect();
            format!("calibrated by points, {unit}: {}", points.join(", "))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_in_a_row_are_written_as_a_range() {
        let mut skipped = Skipped::default();
        for line in [1, 2, 3, 7] {
            skipped.add(Skip::BeforeHeader, line);
        }
        assert_eq!(
            skipped.describe(),
            ["lines 1–3, 7 left out: before the header"]
        );
        for line in 0..40 {
            skipped.add(Skip::Remark, 10 + 2 * line);
        }
        assert!(skipped.lines(Skip::Remark).ends_with("and 28 more"));
    }
}
