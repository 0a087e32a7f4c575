//! The time cells of one row.

use jiff::civil::Date;
use simmerline_math::power_of_ten;

use super::clock::midnight_us;
use super::dates::read_written;
use super::written::{DAY_US, SECOND_US, Written, WrittenDate};
use crate::campaign::model::DateOrder;
use crate::logs::table::Row;
use crate::logs::time_columns::TimeColumns;
use crate::measure::Unit;

/// Days since the end of 1899, as spreadsheets count them, of the years 1980 to 2100.
pub const SERIAL_DAYS: std::ops::Range<f64> = 29_221.0..73_051.0;
/// Day 0 of a spreadsheet.
pub const SERIAL_ZERO: Date = jiff::civil::date(1899, 12, 30);
/// Times this near to a whole second are meant to be on it: what is left of a fraction
/// of a day in binary.
const ROUNDING_US: f64 = 50.0;

/// What stands where the time should be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TimeCell {
    Number(f64),
    Written(Written),
}

impl TimeColumns {
    /// The time of a row as it is shown to people.
    pub fn text(&self, row: &Row) -> String {
        let columns = std::iter::once(self.first)
            .chain(self.clock)
            .chain(self.half);
        let cells: Vec<&str> = columns.map(|column| row.cell(column)).collect();
        cells.join(" ")
    }

    /// Whether nothing stands where the time should be.
    pub fn is_blank(&self, row: &Row) -> bool {
        let clock = self.clock.map(|clock| row.cell(clock));
        row.cell(self.first).is_empty() || clock.is_some_and(str::is_empty)
    }
}

/// The time of a row; `None` if there is none.
pub fn read_cells(columns: &TimeColumns, row: &Row) -> Option<TimeCell> {
    let text = row.cell(columns.first);
    let half = columns.half.map_or("", |half| row.cell(half));
    let Some(clock) = columns.clock else {
        let whole;
        let text = if half.is_empty() {
            text
        } else {
            whole = format!("{text} {half}");
            &whole
        };
        if columns.is_elapsed
            && let Some(elapsed) = elapsed(text, columns.unit)
        {
            return Some(TimeCell::Written(elapsed));
        }
        // A count may look like a date: 20260314 ms.
        let is_count = columns.is_elapsed || columns.unit.is_some();
        let count = number(text).map(TimeCell::Number);
        let written = || read_written(text).map(TimeCell::Written);
        return if is_count {
            count.or_else(written)
        } else {
            written().or(count)
        };
    };
    let clock_text = row.cell(clock);
    // "11.30" is a clock time here: the date stands beside it.
    let dotted = clock_text.matches('.').count();
    let with_colons = if dotted > 0 && !clock_text.contains(':') && !clock_text.starts_with("0.") {
        clock_text.replace('.', ":")
    } else {
        clock_text.to_owned()
    };
    let written = format!("{with_colons} {half}");
    let clock_of_day = match read_written(&written).or_else(|| read_written(clock_text)) {
        Some(Written {
            clock_us: Some(clock_us),
            offset_s,
            ..
        }) => (clock_us, offset_s),
        _ => {
            // A fraction of a day, as a spreadsheet saves it.
            let fraction = number(clock_text).filter(|fraction| (0.0..1.0).contains(fraction))?;
            (to_us(clock_text, fraction, DAY_US as f64), None)
        }
    };
    let date = match read_written(text) {
        // A spreadsheet's date may bring midnight along.
        Some(Written {
            date: Some(date),
            clock_us: None | Some(0),
            ..
        }) => date,
        Some(_) => return None,
        None => {
            let days = number(text).filter(|days| SERIAL_DAYS.contains(days))?;
            WrittenDate::Known(serial_date(days)?)
        }
    };
    Some(TimeCell::Written(Written {
        date: Some(date),
        clock_us: Some(clock_of_day.0),
        offset_s: clock_of_day.1,
        is_short: false,
    }))
}

/// Time on a stopwatch: `h:mm:ss`, or two parts of which the unit names the first.
fn elapsed(text: &str, unit: Option<Unit>) -> Option<Written> {
    let parts: Vec<f64> = text
        .split(':')
        .map(|part| part.parse().ok())
        .collect::<Option<_>>()?;
    let is_in_minutes = unit.is_some_and(|unit| unit.symbol() == "min");
    let seconds = match parts.as_slice() {
        [hours, minutes, seconds] => hours * 3600.0 + minutes * 60.0 + seconds,
        [minutes, seconds] if is_in_minutes => minutes * 60.0 + seconds,
        [hours, minutes] => hours * 3600.0 + minutes * 60.0,
        _ => return None,
    };
    let is_time = parts[1..].iter().all(|part| (0.0..60.0).contains(part)) && seconds >= 0.0;
    is_time.then(|| Written {
        clock_us: Some((seconds * SECOND_US as f64).round() as i64),
        is_short: parts.len() == 2 && unit.is_none(),
        ..Written::default()
    })
}

fn serial_date(days: f64) -> Option<Date> {
    let since = jiff::Span::new().try_days(days.floor() as i64).ok()?;
    SERIAL_ZERO.checked_add(since).ok()
}

/// A number with a point or a comma.
fn number(text: &str) -> Option<f64> {
    let is_digit_or_mark =
        |b: u8| b.is_ascii_digit() || matches!(b, b'.' | b',' | b'-' | b'e' | b'E' | b'+');
    if text.is_empty() || !text.bytes().all(is_digit_or_mark) {
        return None;
    }
    text.replace(',', ".")
        .parse()
        .ok()
        .filter(|value: &f64| value.is_finite())
}

/// A number of units in µs, on the whole second where its digits allow that.
pub fn to_us(text: &str, value: f64, us_per_unit: f64) -> i64 {
    let digits = text
        .find(['.', ','])
        .map_or(0, |mark| text.len() - mark - 1);
    let resolution_us = us_per_unit * power_of_ten(-(digits as i32)) / 2.0;
    let us = value * us_per_unit;
    let second = SECOND_US as f64;
    let whole = (us / second).round() * second;
    if (us - whole).abs() <= resolution_us.max(ROUNDING_US) {
        whole as i64
    } else {
        us.round() as i64
    }
}

/// Local time, µs since 1970 by the local clock, as far as a cell tells it.
pub fn local_us(cell: &TimeCell, order: Option<DateOrder>) -> Option<i64> {
    let TimeCell::Written(written) = cell else {
        return None;
    };
    let date = match written.date? {
        WrittenDate::Known(date) => date,
        WrittenDate::Open(open) => open.read(order?)?,
    };
    Some(midnight_us(date) + written.clock_us?)
}
