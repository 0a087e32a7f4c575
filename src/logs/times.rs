//! A log's time column: how it is written, settled once for the whole column, and then
//! read row by row.

use jiff::civil::Date;
use jiff::tz::{Offset, TimeZone};

use super::clock::{Clock, ClockFault, midnight_us};
use super::columns::TimeColumns;
use super::dates::{DAY_US, SECOND_US, Written, WrittenDate, read_written};
use super::read::Request;
use super::table::Row;
use crate::campaign::model::DateOrder;
use crate::campaign::moment::Moment;
use crate::measure::{Kind, Unit};
use crate::units::spoken_date;

/// Rows after which a column of numbers is judged.
const COUNTED_ROWS: usize = 200;
/// Seconds since 1970 of readings that anybody may still have: 1980 to 2100.
const EPOCH_S: std::ops::Range<f64> = 3.1e8..4.1e9;
/// Days since the end of 1899 of the same years, as spreadsheets count them.
const SERIAL_DAYS: std::ops::Range<f64> = 29_221.0..73_051.0;
/// A clock time that goes back further than this is after midnight.
const MIDNIGHT_STEP_US: i64 = DAY_US / 2;
/// Times this near to a whole second are meant to be on it: what is left of a fraction
/// of a day in binary.
const ROUNDING_US: f64 = 50.0;

/// How a time column is to be read.
#[derive(Debug, Clone)]
pub struct TimeRules {
    form: Form,
    /// Of dates whose order their digits do not tell.
    pub order: Option<DateOrder>,
    /// Why that order.
    order_from: &'static str,
    zone: TimeZone,
    zone_from: &'static str,
    has_offsets: bool,
    is_backward: bool,
    example: String,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Form {
    /// Date and clock time.
    Written,
    /// Clock time only; the date of the first row.
    ClockOnly(Date),
    /// A number.
    Count(Count),
    /// A clock that was set to zero at this instant, µs.
    Stopwatch(i64),
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Count {
    unit: Unit,
    origin: Origin,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Origin {
    /// 1970-01-01, UTC.
    Epoch,
    /// 1899-12-30, local time.
    Serial,
    /// The run's start, µs.
    Start(i64),
}

/// Why a time cannot be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum TimeFault {
    /// The cell is blank.
    Blank,
    /// No time.
    Unreadable,
    /// A date without a clock time.
    NoClock,
    /// The clocks skipped it.
    Skipped,
    /// A date with two readings, in words.
    TwoWays([String; 2]),
    /// A date that is none in the order of the others, in words.
    NotInOrder(&'static str),
    /// A clock time without a date goes back.
    GoesBack,
}

/// What is wrong with a time column as a whole: what was found, and the remedy.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ColumnFault {
    pub line: u64,
    pub what: String,
    pub hint: String,
}

/// Looks at the rows of a time column until it is settled how to read them.
pub struct TimeSurvey<'c> {
    columns: &'c TimeColumns,
    rows: usize,
    first: Option<(u64, String, Cell)>,
    /// First and second time that differ, as local time under each order.
    second: Option<Cell>,
    numbers: Option<(f64, f64)>,
    has_offsets: bool,
    open: Option<OpenDates>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Cell {
    Number(f64),
    Written(Written),
}

const ORDERS: [DateOrder; 3] = [
    DateOrder::YearMonthDay,
    DateOrder::DayMonthYear,
    DateOrder::MonthDayYear,
];

/// Dates that can be read in several orders, and what is known of each order.
struct OpenDates {
    line: u64,
    text: String,
    readings: Vec<(DateOrder, Date)>,
    orders: [OrderEvidence; 3],
}

#[derive(Clone, Copy, Default)]
struct OrderEvidence {
    /// A row that is no day in this order.
    is_out: bool,
    last: Option<Date>,
    longest_step_days: i32,
    meets_run_date: bool,
}

impl<'c> TimeSurvey<'c> {
    /// A survey that has seen nothing.
    pub fn new(columns: &'c TimeColumns) -> Self {
        TimeSurvey {
            columns,
            rows: 0,
            first: None,
            second: None,
            numbers: None,
            has_offsets: false,
            open: None,
        }
    }

    /// Takes a row into account; rows without a readable time say nothing.
    pub fn see(&mut self, row: &Row, run_date: Option<Date>) {
        let Some(cell) = read_cells(self.columns, row) else {
            return;
        };
        self.rows += 1;
        match cell {
            Cell::Number(number) => {
                let (least, most) = self.numbers.unwrap_or((number, number));
                self.numbers = Some((least.min(number), most.max(number)));
            }
            Cell::Written(written) => {
                self.has_offsets |= written.offset_s.is_some();
                if let Some(WrittenDate::Open(open)) = written.date {
                    let first = self.open.get_or_insert_with(|| OpenDates {
                        line: row.line,
                        text: self.columns.text(row),
                        readings: open.readings(),
                        orders: [OrderEvidence::default(); 3],
                    });
                    let readings = open.readings();
                    for (order, evidence) in ORDERS.iter().zip(&mut first.orders) {
                        let date = readings.iter().find(|(of, _)| of == order);
                        evidence.see(date.map(|(_, date)| *date), run_date);
                    }
                }
            }
        }
        match &self.first {
            None => self.first = Some((row.line, self.columns.text(row), cell)),
            Some((.., first)) if self.second.is_none() && *first != cell => {
                self.second = Some(cell)
            }
            Some(_) => {}
        }
    }

    /// Whether further rows would not change the verdict.
    pub fn is_settled(&self) -> bool {
        match (&self.open, self.numbers) {
            (_, Some(_)) => self.rows >= COUNTED_ROWS,
            (Some(open), None) => open.possible().count() <= 1 && self.second.is_some(),
            (None, None) => self.second.is_some(),
        }
    }

    /// How to read the column.
    ///
    /// # Errors
    /// A [`ColumnFault`] where that cannot be told, with the key that settles it.
    pub fn finish(self, request: &Request<'_>) -> Result<TimeRules, ColumnFault> {
        let format = &request.rules.format;
        let (zone, zone_from) = match (&format.time_zone, self.columns.offset_s) {
            (Some(zone), _) => (zone.clone(), "campaign file"),
            (None, Some(offset_s)) => {
                let offset = Offset::from_seconds(offset_s).unwrap_or(Offset::UTC);
                (TimeZone::fixed(offset), "header")
            }
            (None, None) => (request.zone.clone(), "site"),
        };
        let Some((line, example, first)) = self.first.clone() else {
            // No time is readable: every row will say so.
            return Ok(TimeRules {
                form: Form::Written,
                order: format.date_order,
                order_from: "",
                zone,
                zone_from,
                has_offsets: false,
                is_backward: false,
                example: String::new(),
            });
        };
        let (order, order_from) = self.order(request)?;
        let fault = |(what, hint): (String, String)| ColumnFault { line, what, hint };
        let form = match first {
            Cell::Number(_) => Form::Count(self.count(request, &zone).map_err(fault)?),
            Cell::Written(written) if written.date.is_some() => Form::Written,
            Cell::Written(_) if self.columns.is_elapsed => {
                Form::Stopwatch(start_us(request, &zone).map_err(fault)?)
            }
            Cell::Written(_) => match request.date {
                Some(date) => Form::ClockOnly(date),
                None => {
                    let what = format!("found \"{example}\", a clock time without a date");
                    let hint = "write the day of the first reading as date = 2026-03-14 under this [[run]]";
                    return Err(fault((what, hint.to_owned())));
                }
            },
        };
        let local = |cell: &Cell| local_us(cell, order);
        let is_backward = form == Form::Written
            && matches!(
                (local(&first), self.second.as_ref().and_then(local)),
                (Some(first), Some(second)) if second < first
            );
        Ok(TimeRules {
            form,
            order,
            order_from,
            zone,
            zone_from,
            has_offsets: self.has_offsets,
            is_backward,
            example,
        })
    }

    /// Order of the dates: as declared, else the only one possible, else the one in which
    /// day follows on day, else the one that has the run's date in it.
    fn order(
        &self,
        request: &Request<'_>,
    ) -> Result<(Option<DateOrder>, &'static str), ColumnFault> {
        if let Some(order) = request.rules.format.date_order {
            return Ok((Some(order), "campaign file"));
        }
        let Some(open) = &self.open else {
            return Ok((None, ""));
        };
        let of = |keep: &dyn Fn(&OrderEvidence) -> bool| -> Vec<DateOrder> {
            let possible = open.possible().filter(|(_, evidence)| keep(evidence));
            possible.map(|(order, _)| order).collect()
        };
        let possible = of(&|_| true);
        match possible.as_slice() {
            [only] => return Ok((Some(*only), "the only order in which every row is a day")),
            [] => {
                // Row by row: each says what is wrong with it.
                return Ok((
                    open.readings.first().map(|(order, _)| *order),
                    "the first row",
                ));
            }
            _ => {}
        }
        if let [only] = of(&|evidence| evidence.longest_step_days <= 1).as_slice() {
            return Ok((Some(*only), "the only order in which day follows on day"));
        }
        if let [only] = of(&|evidence| evidence.meets_run_date).as_slice() {
            return Ok((Some(*only), "the run's date"));
        }
        let readings = open
            .readings
            .iter()
            .filter(|(order, _)| possible.contains(order));
        let spoken: Vec<String> = readings.map(|(_, date)| long_date(*date)).collect();
        let (first, second) = (open.readings[0], open.readings[open.readings.len() - 1]);
        let stated = match request.date {
            Some(date) => format!("; the run's date, {}, is none of them", spoken_date(date)),
            None => String::new(),
        };
        Err(ColumnFault {
            line: open.line,
            what: format!(
                "found \"{}\", which is {}{stated}",
                open.text,
                spoken.join(" or ")
            ),
            hint: format!(
                "write date_order = \"{}\" or \"{}\" under [format] in campaign.toml, or date = {} or {} under this [[run]]",
                order_word(first.0),
                order_word(second.0),
                first.1,
                second.1
            ),
        })
    }

    /// What a column of numbers counts.
    fn count(&self, request: &Request<'_>, zone: &TimeZone) -> Result<Count, (String, String)> {
        let (least, most) = self.numbers.unwrap_or_default();
        let stated = self.columns.unit;
        let spans = |per_unit_s: f64, range: &std::ops::Range<f64>| {
            range.contains(&(least * per_unit_s)) && range.contains(&(most * per_unit_s))
        };
        let unit =
            |symbol: &str| Unit::parse(symbol, &[Kind::Time]).expect("measure.toml holds it");
        let epoch_units = match stated {
            Some(unit) => vec![unit],
            None => vec![unit("s"), unit("ms")],
        };
        for unit in epoch_units {
            if spans(unit.to_base(1.0), &EPOCH_S) {
                let origin = Origin::Epoch;
                return Ok(Count { unit, origin });
            }
        }
        let is_in_days = stated.is_none_or(|unit| unit.symbol() == "d");
        if is_in_days && !self.columns.is_elapsed && spans(1.0, &SERIAL_DAYS) {
            let (unit, origin) = (unit("d"), Origin::Serial);
            return Ok(Count { unit, origin });
        }
        let Some(unit) = stated else {
            return Err((
                format!("found numbers from {least} to {most}, and no unit says what they count"),
                "for elapsed time write time = \"s\", \"min\" or \"h\" under [units] in campaign.toml, and start under this [[run]]".to_owned(),
            ));
        };
        let origin = Origin::Start(start_us(request, zone)?);
        Ok(Count { unit, origin })
    }
}

/// The instant from which elapsed time counts.
fn start_us(request: &Request<'_>, zone: &TimeZone) -> Result<i64, (String, String)> {
    let hint =
        "write when the clock was set to zero, as start = \"2026-03-14 10:05\" under this [[run]]";
    let Some(start) = &request.start else {
        let what = "found elapsed time, and no start from which it counts";
        return Err((what.to_owned(), hint.to_owned()));
    };
    let date = match (start, request.date) {
        (Moment::Clock(_), None) => {
            let what = format!("found elapsed time that counts from {start}, and no date");
            let hint = "write the day as date = 2026-03-14 under this [[run]], or in start";
            return Err((what, hint.to_owned()));
        }
        (_, date) => date.unwrap_or(jiff::civil::date(1970, 1, 1)),
    };
    let is_local = matches!(start, Moment::Clock(_) | Moment::Local(_));
    let zone = if is_local { request.zone } else { zone };
    start.resolve_us(date, zone).ok_or_else(|| {
        let what =
            format!("found elapsed time from {start}, which the clocks of the site's zone skipped");
        (what, hint.to_owned())
    })
}

impl OpenDates {
    fn possible(&self) -> impl Iterator<Item = (DateOrder, &OrderEvidence)> {
        let orders = ORDERS.iter().copied().zip(&self.orders);
        orders.filter(|(_, evidence)| !evidence.is_out)
    }
}

impl OrderEvidence {
    fn see(&mut self, date: Option<Date>, run_date: Option<Date>) {
        let Some(date) = date else {
            self.is_out = true;
            return;
        };
        if self.last == Some(date) {
            return;
        }
        if let Some(last) = self.last {
            let step = (date - last).get_days().abs();
            self.longest_step_days = self.longest_step_days.max(step);
        }
        self.last = Some(date);
        self.meets_run_date |= run_date == Some(date);
    }
}

impl TimeColumns {
    /// The time of a row as it is shown to people.
    pub fn text(&self, row: &Row) -> String {
        match self.clock {
            None => row.cell(self.first).to_owned(),
            Some(clock) => format!("{} {}", row.cell(self.first), row.cell(clock)),
        }
    }

    /// Whether nothing stands where the time should be.
    pub fn is_blank(&self, row: &Row) -> bool {
        let clock = self.clock.map(|clock| row.cell(clock));
        row.cell(self.first).is_empty() || clock.is_some_and(str::is_empty)
    }
}

/// The time of a row; `None` if there is none.
fn read_cells(columns: &TimeColumns, row: &Row) -> Option<Cell> {
    let text = row.cell(columns.first);
    let Some(clock) = columns.clock else {
        return match read_written(text) {
            Some(written) => Some(Cell::Written(written)),
            None => number(text).map(Cell::Number),
        };
    };
    let clock = row.cell(clock);
    let clock_of_day = match read_written(clock) {
        Some(Written {
            clock_us: Some(clock_us),
            offset_s,
            ..
        }) => (clock_us, offset_s),
        _ => {
            // A fraction of a day, as a spreadsheet saves it.
            let fraction = number(clock).filter(|fraction| (0.0..1.0).contains(fraction))?;
            (to_us(clock, fraction, DAY_US as f64), None)
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
    Some(Cell::Written(Written {
        date: Some(date),
        clock_us: Some(clock_of_day.0),
        offset_s: clock_of_day.1,
    }))
}

fn serial_date(days: f64) -> Option<Date> {
    let since = jiff::Span::new().try_days(days.floor() as i64).ok()?;
    SERIAL_ZERO.checked_add(since).ok()
}

const SERIAL_ZERO: Date = jiff::civil::date(1899, 12, 30);

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
fn to_us(text: &str, value: f64, us_per_unit: f64) -> i64 {
    let digits = text
        .find(['.', ','])
        .map_or(0, |mark| text.len() - mark - 1);
    let resolution_us = us_per_unit * 0.1_f64.powi(digits as i32) / 2.0;
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
fn local_us(cell: &Cell, order: Option<DateOrder>) -> Option<i64> {
    let Cell::Written(written) = cell else {
        return None;
    };
    let date = match written.date? {
        WrittenDate::Known(date) => date,
        WrittenDate::Open(open) => open.read(order?)?,
    };
    Some(midnight_us(date) + written.clock_us?)
}

/// Reads a settled time column from top to bottom.
pub struct TimeReader<'r> {
    rules: &'r TimeRules,
    columns: &'r TimeColumns,
    clock: Clock<'r>,
    /// Midnight of the last date read in the canonical form.
    last_date: ([u8; 10], i64),
    /// Of clock times without a date: midnight of the day, and the last time of day.
    day_us: i64,
    last_clock_us: i64,
}

impl<'r> TimeReader<'r> {
    /// A reader at the first row.
    pub fn new(rules: &'r TimeRules, columns: &'r TimeColumns) -> Self {
        let day_us = match rules.form {
            Form::ClockOnly(date) => midnight_us(date),
            _ => 0,
        };
        TimeReader {
            rules,
            columns,
            clock: Clock::new(&rules.zone, rules.is_backward),
            last_date: ([0; 10], 0),
            day_us,
            last_clock_us: 0,
        }
    }

    /// Instant of a row, µs since 1970, UTC.
    ///
    /// # Errors
    /// A [`TimeFault`] for a row that holds no time, or one that does not exist.
    pub fn read_us(&mut self, row: &Row) -> Result<i64, TimeFault> {
        if self.columns.clock.is_none()
            && let Some(local_us) = self.canonical_us(row.cell(self.columns.first).as_bytes())
        {
            return self.instant(local_us);
        }
        if self.columns.is_blank(row) {
            return Err(TimeFault::Blank);
        }
        let cell = read_cells(self.columns, row).ok_or(TimeFault::Unreadable)?;
        match (self.rules.form, cell) {
            (Form::Count(count), Cell::Number(value)) => {
                self.counted(count, row.cell(self.columns.first), value)
            }
            (
                Form::Stopwatch(start_us),
                Cell::Written(Written {
                    date: None,
                    clock_us: Some(clock_us),
                    ..
                }),
            ) => self.note(start_us + clock_us),
            (
                Form::ClockOnly(_),
                Cell::Written(Written {
                    date: None,
                    clock_us: Some(clock_us),
                    ..
                }),
            ) => self.clock_only(clock_us),
            (_, Cell::Written(written)) => self.written(written),
            (_, Cell::Number(_)) => Err(TimeFault::Unreadable),
        }
    }

    fn written(&mut self, written: Written) -> Result<i64, TimeFault> {
        let date = match written.date.ok_or(TimeFault::Unreadable)? {
            WrittenDate::Known(date) => date,
            WrittenDate::Open(open) => match self.rules.order {
                Some(order) => open
                    .read(order)
                    .ok_or(TimeFault::NotInOrder(order_word(order)))?,
                None => match open.readings().as_slice() {
                    [(_, only)] => *only,
                    [(_, first), .., (_, last)] => {
                        return Err(TimeFault::TwoWays([long_date(*first), long_date(*last)]));
                    }
                    [] => return Err(TimeFault::Unreadable),
                },
            },
        };
        let local_us = midnight_us(date) + written.clock_us.ok_or(TimeFault::NoClock)?;
        match written.offset_s {
            Some(offset_s) => self.note(local_us - i64::from(offset_s) * SECOND_US),
            None => self.instant(local_us),
        }
    }

    fn counted(&mut self, count: Count, text: &str, value: f64) -> Result<i64, TimeFault> {
        let us_per_unit = count.unit.to_base(1.0) * SECOND_US as f64;
        let us = to_us(text, value, us_per_unit);
        match count.origin {
            Origin::Epoch => self.note(us),
            Origin::Start(start_us) => self.note(start_us.saturating_add(us)),
            Origin::Serial => self.instant(midnight_us(SERIAL_ZERO).saturating_add(us)),
        }
    }

    fn clock_only(&mut self, clock_us: i64) -> Result<i64, TimeFault> {
        if clock_us + MIDNIGHT_STEP_US < self.last_clock_us {
            self.day_us += DAY_US;
        } else if clock_us < self.last_clock_us && !self.clock.is_repeated(self.day_us + clock_us) {
            return Err(TimeFault::GoesBack);
        }
        self.last_clock_us = clock_us;
        self.instant(self.day_us + clock_us)
    }

    fn instant(&mut self, local_us: i64) -> Result<i64, TimeFault> {
        self.clock.instant_us(local_us).map_err(TimeFault::from)
    }

    fn note(&mut self, time_us: i64) -> Result<i64, TimeFault> {
        self.clock.note(time_us).map_err(TimeFault::from)
    }

    /// `2026-03-14 10:20:00`, as nearly every row of a large log has it; `None` for
    /// anything else.
    fn canonical_us(&mut self, text: &[u8]) -> Option<i64> {
        let digit = |at: usize| -> Option<i64> {
            let digit = text[at].wrapping_sub(b'0');
            (digit < 10).then_some(i64::from(digit))
        };
        let pair = |at: usize| Some(digit(at)? * 10 + digit(at + 1)?);
        let is_form = text.len() == 19
            && text[4] == b'-'
            && text[7] == b'-'
            && matches!(text[10], b' ' | b'T')
            && text[13] == b':'
            && text[16] == b':';
        if !is_form {
            return None;
        }
        let date_text: [u8; 10] = text[..10].try_into().ok()?;
        if self.last_date.0 != date_text {
            let year = i16::try_from(pair(0)? * 100 + pair(2)?).ok()?;
            let (month, day) = (i8::try_from(pair(5)?).ok()?, i8::try_from(pair(8)?).ok()?);
            let date = Date::new(year, month, day).ok()?;
            self.last_date = (date_text, midnight_us(date));
        }
        let (hour, minute, second) = (pair(11)?, pair(14)?, pair(17)?);
        let is_time = hour < 24 && minute < 60 && second < 60;
        let clock_s = hour * 3600 + minute * 60 + second;
        is_time.then_some(self.last_date.1 + clock_s * SECOND_US)
    }
}

impl From<ClockFault> for TimeFault {
    fn from(fault: ClockFault) -> Self {
        match fault {
            ClockFault::Skipped => TimeFault::Skipped,
            ClockFault::Unbelievable => TimeFault::Unreadable,
        }
    }
}

impl TimeRules {
    /// How the times are written.
    pub fn describe(&self) -> String {
        let form = match (self.form, self.order) {
            (Form::Written, None) => "date and time".to_owned(),
            (Form::Written, Some(order)) => {
                format!("{} ({})", order_word(order), self.order_from)
            }
            (Form::ClockOnly(date), _) => format!("clock time, the first on {}", spoken_date(date)),
            (Form::Stopwatch(_), _) => "elapsed time from the run's start".to_owned(),
            (Form::Count(count), _) => match count.origin {
                Origin::Epoch => format!("{} since 1970", count.unit.symbol()),
                Origin::Serial => "spreadsheet days since 1899-12-30".to_owned(),
                Origin::Start(_) => format!("elapsed {} from the run's start", count.unit.symbol()),
            },
        };
        let order = if self.is_backward {
            ", newest first"
        } else {
            ""
        };
        format!("{form}{order}")
    }

    /// The first time of the column.
    pub fn example(&self) -> &str {
        &self.example
    }

    /// What a time of this column should look like.
    pub fn expected(&self) -> String {
        match self.form {
            _ if self.example.is_empty() => "a date and time".to_owned(),
            Form::Count(_) => format!("a number as \"{}\" above", self.example),
            _ => format!("a time as \"{}\" above", self.example),
        }
    }

    /// The zone the times are in, and who says so.
    pub fn describe_zone(&self) -> String {
        match self.form {
            Form::Count(Count {
                origin: Origin::Epoch,
                ..
            }) => "UTC (since 1970)".to_owned(),
            Form::Count(Count {
                origin: Origin::Start(_),
                ..
            })
            | Form::Stopwatch(_) => "that of the run's start".to_owned(),
            _ if self.has_offsets => "offset in each row".to_owned(),
            _ => format!("{} ({})", zone_name(&self.zone), self.zone_from),
        }
    }
}

fn zone_name(zone: &TimeZone) -> String {
    match zone.iana_name() {
        Some(name) => name.to_owned(),
        None => zone
            .to_fixed_offset()
            .map_or_else(|_| "local".to_owned(), |offset| format!("UTC{offset}")),
    }
}

fn long_date(date: Date) -> String {
    date.strftime("%-d %B %Y").to_string()
}

fn order_word(order: DateOrder) -> &'static str {
    match order {
        DateOrder::YearMonthDay => "year-month-day",
        DateOrder::DayMonthYear => "day-month-year",
        DateOrder::MonthDayYear => "month-day-year",
    }
}
