//! How a log was read: for the person who wonders, and for the report.

use std::collections::BTreeMap;

use jiff::tz::TimeZone;

use super::quantity::Quantity;
use super::quote::{in_quotes, quoted};
use super::sensor::Sensor;
use crate::campaign::model::Curve;
use crate::language::{Message, Phrase, clauses, joined, kilograms, short};
use crate::message;
use crate::units::zoned;

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
    pub fn describe(self) -> Message {
        match self {
            Skip::BeforeHeader => message!("skip-before-header"),
            Skip::UnitsRow => message!("skip-units-row"),
            Skip::BetweenHeaderAndReadings => message!("skip-between"),
            Skip::Remark => message!("skip-remark"),
            Skip::Blank => message!("skip-blank"),
            Skip::HeaderAgain => message!("skip-header-again"),
            Skip::BeforeHeaderAgain => message!("skip-before-header-again"),
            Skip::Footer => message!("skip-footer"),
            Skip::CutOff => message!("skip-cut-off"),
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
    pub fn lines(&self, reason: Skip) -> Phrase {
        let Some((lines, count)) = self.by_reason.get(&reason) else {
            return "".into();
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
        let lines_shown = shown.join(", ");
        match count - lines.len() {
            0 => lines_shown.into(),
            more => message!("skipped-more", lines = lines_shown, more = more).into(),
        }
    }

    /// Each reason with its lines in words: `line 3: units under the header`.
    pub fn describe(&self) -> Vec<Message> {
        self.by_reason
            .iter()
            .map(|(reason, (_, count))| {
                message!(
                    "skipped-lines",
                    count = *count,
                    lines = self.lines(*reason),
                    reason = reason.describe()
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
    pub written_in: Message,
    pub decimal_mark: Message,
    pub header_line: u64,
    /// Header of the time, how times are written, and their zone.
    pub time_header: String,
    pub time_format: Message,
    /// A time of it.
    pub time_example: String,
    pub time_zone: Message,
    /// Times count from the run's start.
    pub is_elapsed: bool,
    /// Added to the times, s.
    pub clock_offset_s: f64,
    pub columns: Vec<ColumnAccount>,
    /// Header of the column of notes, of which those are read that say that the cooker was
    /// turned to the sun.
    pub notes: Option<String>,
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
    pub fn form(&self) -> Vec<(Phrase, Phrase)> {
        self.form_with(&self.time_example)
    }

    fn form_with(&self, time_example: &str) -> Vec<(Phrase, Phrase)> {
        let mut rows: Vec<(Phrase, Phrase)> = vec![
            (
                message!("log-form").into(),
                message!(
                    "log-form-text",
                    written_in = &self.written_in,
                    line = self.header_line.to_string(),
                    mark = &self.decimal_mark
                )
                .into(),
            ),
            (
                in_quotes(&self.time_header).into(),
                message!(
                    "log-time-text",
                    format = &self.time_format,
                    example = time_example,
                    zone = &self.time_zone
                )
                .into(),
            ),
        ];
        if self.clock_offset_s != 0.0 {
            let offset = message!("log-clock-text", seconds = short(self.clock_offset_s));
            rows.push((message!("log-clock").into(), offset.into()));
        }
        let columns = self.columns.iter();
        rows.extend(
            columns.map(|column| (in_quotes(&column.header).into(), column.describe().into())),
        );
        if let Some(header) = &self.notes {
            rows.push((in_quotes(header).into(), message!("log-notes").into()));
        }
        if !self.not_read.is_empty() {
            let headers = quoted(&self.not_read);
            rows.push((message!("log-not-read").into(), headers.into()));
        }
        rows
    }

    /// The readings: how many, from when to when, how often.
    pub fn readings(&self, zone: &TimeZone) -> Message {
        self.readings_every(self.step_s, zone)
    }

    /// The same without how often, where that is said once for several logs.
    pub fn readings_without_step(&self, zone: &TimeZone) -> Message {
        self.readings_every(None, zone)
    }

    fn readings_every(&self, step_s: Option<f64>, zone: &TimeZone) -> Message {
        let from = zoned(self.first_us, zone);
        let to = zoned(self.last_us, zone);
        let last = if from.date() == to.date() {
            "%H:%M:%S"
        } else {
            "%Y-%m-%d %H:%M:%S"
        };
        let said = match step_s {
            Some(step_s) => message!("log-readings-every", step = short(step_s)),
            None => message!("log-readings"),
        };
        said.with("readings", self.readings)
            .with("from", from.strftime("%Y-%m-%d %H:%M:%S").to_string())
            .with("to", to.strftime(last).to_string())
    }

    /// Whether another log is written in the same way.
    fn is_like(&self, other: &Account) -> bool {
        self.form() == other.form_with(&self.time_example)
    }
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
#[derive(Debug, Clone, PartialEq)]
pub struct ColumnAccount {
    pub header: String,
    pub quantity: Quantity,
    pub found_by: Message,
    pub unit: &'static str,
    pub unit_from: Message,
    /// Its unit is one of estimates by eye.
    pub is_estimate: bool,
    /// Vessel, calibration and sensitivity; empty if there is none.
    pub corrections: Vec<Message>,
}

impl ColumnAccount {
    /// Of a sensor, with the water of each vessel, kg, where they are told apart.
    pub fn new(sensor: &Sensor, vessel_water_kg: &[f64]) -> Self {
        let mut corrections = Vec::new();
        if let (Quantity::Water, Some(kg)) = (sensor.quantity, vessel_water_kg.get(sensor.vessel)) {
            corrections.push(message!(
                "corrected-vessel",
                vessel = (sensor.vessel + 1).to_string(),
                load = kilograms(short(*kg))
            ));
        }
        if sensor.per_w_m2 != 1.0 {
            let base = crate::measure::Unit::base(sensor.unit.kind()).symbol();
            corrections.push(message!(
                "corrected-sensitivity",
                sensitivity = short(sensor.per_w_m2),
                unit = base
            ));
        }
        if let Some(curve) = &sensor.calibration {
            corrections.push(describe_curve(curve, sensor.quantity.unit()));
        }
        ColumnAccount {
            header: sensor.header.clone(),
            quantity: sensor.quantity,
            found_by: sensor.found_by.describe(),
            unit: sensor.unit.symbol(),
            unit_from: sensor.unit_from.describe(),
            is_estimate: sensor.unit.is_estimate(),
            corrections,
        }
    }

    /// Its corrections, one after the other.
    pub fn correction(&self) -> Phrase {
        clauses(&self.corrections)
    }

    /// In one line.
    pub fn describe(&self) -> Message {
        let is_of_one_source = self.found_by == self.unit_from;
        let said = match (is_of_one_source, self.corrections.is_empty()) {
            (true, true) => message!("log-column-one-source", unit = self.unit),
            (true, false) => message!(
                "log-column-one-source-corrected",
                unit = self.unit,
                corrections = self.correction()
            ),
            (false, true) => message!("log-column", unit = self.unit, unit_from = &self.unit_from),
            (false, false) => message!(
                "log-column-corrected",
                unit = self.unit,
                unit_from = &self.unit_from,
                corrections = self.correction()
            ),
        };
        said.with("quantity", self.quantity.name())
            .with("found_by", &self.found_by)
    }
}

fn describe_curve(curve: &Curve, unit: &str) -> Message {
    match curve {
        Curve::Line { gain, offset } => {
            let said = if *offset < 0.0 {
                message!("corrected-line-minus")
            } else {
                message!("corrected-line-plus")
            };
            said.with("gain", short(*gain))
                .with("offset", short(offset.abs()))
                .with("unit", unit)
        }
        Curve::Points(points) => {
            let points = points.iter();
            let points = points.map(|[read, real]| joined([short(*read), short(*real)], " → "));
            message!(
                "corrected-points",
                unit = unit,
                points = joined(points, ", ")
            )
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
            skipped.describe()[0].to_string(),
            "lines 1–3, 7 skipped (before the header)"
        );
        for line in 0..40 {
            skipped.add(Skip::Remark, 10 + 2 * line);
        }
        let lines = skipped.lines(Skip::Remark).to_string();
        assert!(lines.ends_with("and 28 more"), "{lines}");
    }
}
