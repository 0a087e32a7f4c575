//! The lines of one run, and the log that they are.

use std::path::Path;

use jiff::civil::{DateTime, Time};

use super::form::{Column, Form};
use super::line::{Cells, Sky};
use super::value::Refusal;
use crate::campaign::kinds::RunKind;
use crate::error::{Error, Problem, Problems, Result};
use crate::measure::{Kind, Unit};
use crate::shown::{in_cell, out_of_cell};
use crate::units::fixed;

/// First line of a log whose data are invented.
const INVENTED: &str = "# Invented sample data";
/// Rise of the water in so many minutes that is odd, K.
const ODD_RISE_K: f64 = 25.0;
const ODD_CHANGE_MIN: f64 = 10.0;
/// Fall of the water since the line before that is odd, K.
const ODD_FALL_K: f64 = 10.0;
/// The same of a dry vessel, which stores little.
const ODD_DRY_RISE_K: f64 = 200.0;
const ODD_DRY_FALL_K: f64 = 60.0;
/// Rise of cooling water that is odd: there is sun on it.
const ODD_COOLING_RISE_K: f64 = 2.0;
/// Fall of cooling water in ten minutes that is odd, K.
const ODD_COOLING_FALL_K: f64 = 30.0;
/// What begins colder than this is odd where it is typed in another unit than °C, °C.
const ODD_COLD_C: f64 = 4.0;

/// What was read, and when.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    pub time: Time,
    pub cells: Cells,
}

/// Lines in the order of their times.
#[derive(Debug, Clone)]
pub struct Sheet {
    pub form: Form,
    lines: Vec<Line>,
}

/// A span in which no cloud was near the sun.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ClearSpan {
    pub from: Time,
    pub to: Time,
}

impl Sheet {
    /// A sheet with no line yet.
    pub fn new(form: Form) -> Self {
        Sheet {
            form,
            lines: Vec::new(),
        }
    }

    pub fn lines(&self) -> &[Line] {
        &self.lines
    }

    /// Adds a line; what is odd about it, if anything is.
    ///
    /// # Errors
    /// If its time is not after that of the last line.
    pub fn add(&mut self, line: Line) -> std::result::Result<Option<String>, Refusal> {
        let last = self.lines.last().map(|last| last.time);
        if let Some(last) = last.filter(|last| line.time <= *last) {
            return Err(Refusal::new(
                format!(
                    "found {}, expected a time after {}, that of the last line",
                    spoken(line.time),
                    spoken(last)
                ),
                "lines follow each other in time; correct the time, or take the last line back",
            ));
        }
        let odd = self.odd(&line);
        self.lines.push(line);
        Ok(odd)
    }

    /// Takes the last line back.
    pub fn take_back(&mut self) -> Option<Line> {
        self.lines.pop()
    }

    /// What is odd about a line that is to follow, but possible.
    fn odd(&self, line: &Line) -> Option<String> {
        let unit = self.form.tested_unit;
        let tested = line.cells.tested.as_ref()?;
        let tested_c = unit.to_base(tested.value);
        let before = self.lines.iter().rev();
        let mut before = before.filter_map(|line| Some((line.time, line.cells.tested.as_ref()?)));
        let Some((time, last)) = before.next() else {
            let is_odd = unit.symbol() != "°C" && tested_c < ODD_COLD_C;
            return is_odd.then(|| {
                let celsius = fixed(tested_c, 1);
                format!("{} {} are {celsius} °C", tested.text, unit.symbol())
            });
        };
        let rise_k = tested_c - unit.to_base(last.value);
        let steps = f64::from(minutes(line.time) - minutes(time)) / ODD_CHANGE_MIN;
        let steps = steps.max(1.0);
        let (odd_rise_k, odd_fall_k) = match self.form.kind {
            RunKind::Water => (ODD_RISE_K * steps, ODD_FALL_K),
            RunKind::Dry => (ODD_DRY_RISE_K * steps, ODD_DRY_FALL_K),
            RunKind::Cooling => (ODD_COOLING_RISE_K, ODD_COOLING_FALL_K * steps),
        };
        let change = match rise_k {
            _ if rise_k > odd_rise_k => "rose",
            _ if rise_k < -odd_fall_k => "fell",
            _ => return None,
        };
        Some(format!(
            "the {} {change} by {} K since {}",
            self.form.tested_name(),
            fixed(rise_k.abs(), 1),
            spoken(time)
        ))
    }

    /// Spans that follow from the lines marked clear: each from the line before it.
    pub fn clear_spans(&self) -> Vec<ClearSpan> {
        let mut spans: Vec<ClearSpan> = Vec::new();
        for pair in self.lines.windows(2) {
            let (from, to) = (pair[0].time, pair[1].time);
            if pair[1].cells.sky != Some(Sky::Clear) {
                continue;
            }
            match spans.last_mut().filter(|last| last.to == from) {
                Some(last) => last.to = to,
                None => spans.push(ClearSpan { from, to }),
            }
        }
        spans
    }

    /// The log's header.
    pub fn header(&self) -> Vec<String> {
        header(&self.form)
    }

    /// The log as text.
    ///
    /// # Errors
    /// [`Error::Internal`] if the text cannot be made.
    pub fn to_csv(&self) -> Result<String> {
        let mut writer = csv::Writer::from_writer(Vec::new());
        let failed = |error: csv::Error| Error::Internal(error.to_string());
        writer.write_record(self.header()).map_err(failed)?;
        for Line { time, cells } in &self.lines {
            let at = self.form.date.to_datetime(*time);
            let row = self.form.columns().map(|column| match column {
                Column::Time => at.strftime("%Y-%m-%d %H:%M").to_string(),
                Column::Notes => in_cell(cells.text(column)),
                _ => cells.text(column).to_owned(),
            });
            writer
                .write_record(row.collect::<Vec<_>>())
                .map_err(failed)?;
        }
        let bytes = writer.into_inner().map_err(|error| error.to_string());
        let text = bytes.and_then(|bytes| String::from_utf8(bytes).map_err(|e| e.to_string()));
        let text = text.map_err(Error::Internal)?;
        Ok(match self.form.is_demonstration {
            true => format!("{INVENTED}\n{text}"),
            false => text,
        })
    }

    /// A log that was typed before, to go on with.
    ///
    /// # Errors
    /// [`Error::Usage`] if it is another log; [`Error::Input`] with every row that
    /// cannot be read.
    pub fn from_csv(form: Form, path: &Path, text: &str) -> Result<Sheet> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let table = text.strip_prefix(INVENTED).unwrap_or(text);
        // The remark's line end is still there, and counts as a line.
        let mut reader = csv::ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            .from_reader(table.as_bytes());
        let mut sheet = Sheet::new(form);
        let mut problems = Problems::default();
        let mut rows = reader.records();
        let first = rows.next().and_then(std::result::Result::ok);
        sheet.refuse_other_header(path, first.as_ref())?;
        for row in rows {
            let row = row.map_err(|error| {
                Error::Input(Problem::at(path, format!("cannot be read ({error})")).into())
            })?;
            let line = row.position().map_or(0, csv::Position::line);
            let taken = sheet.read_row(&row).and_then(|line| sheet.add(line));
            if let Err(Refusal { what, .. }) = taken {
                let hint = "correct the row, or move the log away and type it anew";
                problems.push(Problem::at(path, what).line(line).hint(hint));
            }
        }
        match problems.is_empty() {
            true => Ok(sheet),
            false => Err(Error::Input(problems)),
        }
    }

    /// Whether a text is a sheet that was typed in, of this form or of another.
    pub fn is_one(form: &Form, text: &str) -> bool {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let table = text.strip_prefix(INVENTED).unwrap_or(text);
        let first = table
            .lines()
            .find(|line| !line.is_empty())
            .unwrap_or_default();
        let is = |form: &Form| header(form).join(",") == first;
        is(form) || other_forms(form).any(|other| is(&other))
    }

    fn refuse_other_header(&self, path: &Path, first: Option<&csv::StringRecord>) -> Result<()> {
        let is = |form: &Form| first.is_some_and(|first| first.iter().eq(header(form)));
        if is(&self.form) {
            return Ok(());
        }
        let problem = match other_forms(&self.form).find(is) {
            Some(other) if other.kind != self.form.kind => Problem::at(
                path,
                format!(
                    "was typed as a run of the kind \"{}\", not \"{}\"",
                    other.kind.word(),
                    self.form.kind.word()
                ),
            )
            .hint(format!(
                "say --kind {} to go on with it, or choose another name with --log NAME.csv; if nothing is in it yet, delete it",
                other.kind.word()
            )),
            Some(_) => Problem::at(
                path,
                "was typed in other units, or with other instruments, than the campaign file has now",
            )
            .hint("set [units] and estimate in campaign.toml back to what they were"),
            None => Problem::at(path, "is there already, and is no sheet that was typed in")
                .hint("it stays as it is; choose another name with --log NAME.csv"),
        };
        Err(Error::Usage(problem.into()))
    }

    fn read_row(&self, row: &csv::StringRecord) -> std::result::Result<Line, Refusal> {
        let form = &self.form;
        let expected = form.columns().count();
        if row.len() != expected {
            let what = format!("found {} cells, expected {expected}", row.len());
            return Err(Refusal::new(what, ""));
        }
        let at = row.get(0).unwrap_or_default();
        let time = DateTime::strptime("%Y-%m-%d %H:%M", at).ok();
        let Some(time) = time.filter(|at| at.date() == form.date) else {
            let what = format!("found \"{at}\", expected a time on {}", form.date);
            return Err(Refusal::new(what, ""));
        };
        let mut cells = Cells::default();
        for (column, text) in form.columns().zip(row) {
            let text = match column {
                Column::Notes => out_of_cell(text),
                _ => text,
            };
            form.read_cell(&mut cells, column, text)?;
        }
        Ok(Line {
            time: time.time(),
            cells,
        })
    }
}

fn header(form: &Form) -> Vec<String> {
    form.columns().map(|column| form.header(column)).collect()
}

/// Every form in which a log of that day may have been typed, those of the same kind first.
fn other_forms(form: &Form) -> impl Iterator<Item = Form> {
    let units = ["°C", "°F", "K"].map(|unit| Unit::parse(unit, &[Kind::Temperature]));
    let units: Vec<Unit> = units.into_iter().flatten().collect();
    let others = RunKind::ALL.into_iter().filter(|kind| *kind != form.kind);
    let mut forms = Vec::new();
    for kind in std::iter::once(form.kind).chain(others) {
        for &tested_unit in &units {
            for &air_unit in &units {
                for has_irradiance in [true, false] {
                    forms.push(Form {
                        kind,
                        tested_unit,
                        air_unit,
                        has_irradiance,
                        ..form.clone()
                    });
                }
            }
        }
    }
    forms.into_iter()
}

/// Minutes since midnight.
pub fn minutes(time: Time) -> i32 {
    i32::from(time.hour()) * 60 + i32::from(time.minute())
}

/// A time as `10:20`.
pub fn spoken(time: Time) -> String {
    time.strftime("%H:%M").to_string()
}

#[cfg(test)]
pub mod tests {
    use super::*;
    use crate::entry::form::tests::{form, form_of};

    /// A sheet of typed lines, each with its time.
    pub fn sheet(unit: &str, lines: &[&str]) -> Sheet {
        sheet_of(form(unit), lines)
    }

    /// The same of a form.
    pub fn sheet_of(form: Form, lines: &[&str]) -> Sheet {
        let mut sheet = Sheet::new(form);
        for text in lines {
            let typed = sheet.form.read_line(text).unwrap();
            let (time, cells) = (typed.time.unwrap(), typed.cells);
            sheet.add(Line { time, cells }).unwrap();
        }
        sheet
    }

    fn read(text: &str) -> Result<Sheet> {
        Sheet::from_csv(form("°C"), Path::new("2026-11-03.csv"), text)
    }

    #[test]
    fn a_sheet_is_the_same_after_writing_and_reading() {
        let lines = [
            "10:20 31.50 24 1 clear",
            "10:30 - - - - lid \"off\", 2 min",
            "10:42 36 - 2 x",
        ];
        let sheet = sheet("°C", &lines);
        let text = sheet.to_csv().unwrap();
        assert_eq!(
            text,
            "# Invented sample data\n\
             time,water (°C),air (°C),wind (Bft),sky,notes\n\
             2026-11-03 10:20,31.50,24,1,clear,\n\
             2026-11-03 10:30,,,,,\"lid \"\"off\"\", 2 min\"\n\
             2026-11-03 10:42,36,,2,cloud,\n"
        );
        assert_eq!(read(&text).unwrap().lines(), sheet.lines());
        let by_spreadsheet = format!("\u{feff}{}", text.replace('\n', "\r\n"));
        assert_eq!(read(&by_spreadsheet).unwrap().lines(), sheet.lines());
    }

    #[test]
    fn another_log_or_other_units_are_refused() {
        for text in ["", "time,water_c\n", "time,water (°C),air (°C)\n"] {
            let error = read(text).unwrap_err();
            assert!(matches!(error, Error::Usage(_)));
            assert!(error.to_string().contains("no sheet"), "{error}");
        }
        let fahrenheit = sheet("°F", &["10:20 88"]).to_csv().unwrap();
        let error = read(&fahrenheit).unwrap_err().to_string();
        assert!(error.contains("other units"), "{error}");
    }

    #[test]
    fn every_spoilt_row_is_named_with_its_line() {
        let header = sheet("°C", &[]).to_csv().unwrap();
        let rows = "2026-11-03 10:20,31,,,,\n2026-11-04 10:30,32,,,,\n# a remark\n\
                    2026-11-03 10:10,33,,,,\n2026-11-03 10:40,x,,,,\n";
        let Err(Error::Input(problems)) = read(&(header + rows)) else {
            panic!("was read");
        };
        let lines: Vec<_> = problems.listed().iter().map(|p| p.place.line).collect();
        assert_eq!(lines, [Some(4), Some(5), Some(6), Some(7)]);
    }

    #[test]
    fn odd_lines_are_kept_and_told() {
        let mut sheet = sheet("°C", &["10:20 30"]);
        let mut add = |text: &str| {
            let typed = sheet.form.read_line(text).unwrap();
            let (time, cells) = (typed.time.unwrap(), typed.cells);
            sheet.add(Line { time, cells }).unwrap()
        };
        assert_eq!(add("10:30 55"), None);
        let odd = add("10:40 80.1").unwrap();
        assert_eq!(odd, "the water rose by 25.1 K since 10:30");
        assert_eq!(add("10:50 70.1"), None);
        assert_eq!(add("11:00 - 24"), None);
        let odd = add("11:10 60").unwrap();
        assert_eq!(odd, "the water fell by 10.1 K since 10:50");
        assert_eq!(add("11:50 99"), None, "39 K in forty minutes");
    }

    #[test]
    fn a_sheet_of_each_kind_comes_back_and_names_itself_to_another() {
        let lines = |kind: RunKind| match kind {
            RunKind::Dry => ["12:20 75 70 1 c 880", "12:40 365 71 2 x 840 haze"],
            RunKind::Water => ["12:20 75 70 1 c 880", "12:30 95 71 2 x 840 haze"],
            RunKind::Cooling => ["12:20 200 70 1", "12:25 197.5 71 2 =lid"],
        };
        for kind in RunKind::ALL {
            let sheet = sheet_of(form_of(kind, "°F"), &lines(kind));
            let text = sheet.to_csv().unwrap();
            let path = Path::new("2026-11-03.csv");
            let again = Sheet::from_csv(form_of(kind, "°F"), path, &text).unwrap();
            assert_eq!(again.lines(), sheet.lines());
            for other in RunKind::ALL.into_iter().filter(|other| *other != kind) {
                let refused = Sheet::from_csv(form_of(other, "°C"), path, &text).unwrap_err();
                let refused = refused.to_string();
                assert!(
                    refused.contains(&format!("--kind {}", kind.word())),
                    "{refused}"
                );
            }
        }
    }

    #[test]
    fn what_is_odd_depends_on_the_kind() {
        let odd = |kind: RunKind, first: &str, second: &str| {
            let mut sheet = sheet_of(form_of(kind, "°C"), &[first]);
            let typed = sheet.form.read_line(second).unwrap();
            let (time, cells) = (typed.time.unwrap(), typed.cells);
            sheet.add(Line { time, cells }).unwrap()
        };
        assert_eq!(odd(RunKind::Dry, "12:20 25", "12:30 180"), None);
        let fell = odd(RunKind::Dry, "12:20 180", "12:30 110").unwrap();
        assert_eq!(fell, "the vessel fell by 70.0 K since 12:20");
        assert_eq!(odd(RunKind::Cooling, "13:00 95", "13:05 81"), None);
        let rose = odd(RunKind::Cooling, "13:00 90", "13:05 93").unwrap();
        assert_eq!(rose, "the water rose by 3.0 K since 13:00");
    }

    #[test]
    fn a_clear_line_covers_the_time_since_the_line_before() {
        let spans = |lines: &[&str]| {
            let spans = sheet("°C", lines).clear_spans();
            let span = |span: &ClearSpan| format!("{}-{}", spoken(span.from), spoken(span.to));
            spans.iter().map(span).collect::<Vec<_>>()
        };
        assert_eq!(
            spans(&[
                "10:20 30 - - c",
                "10:30 31 - - c",
                "10:40 32 - - c",
                "10:50 33 - - x",
                "11:00 34",
                "11:20 35 - - c"
            ]),
            ["10:20-10:40", "11:00-11:20"]
        );
        assert!(spans(&["10:20 30 - - c"]).is_empty());
        assert!(spans(&["10:20 30", "10:30 31"]).is_empty());
    }
}
