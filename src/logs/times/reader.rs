//! Reads a settled time column row by row.

use jiff::civil::Date;

use super::cells::{SERIAL_ZERO, TimeCell, read_cells, to_us};
use super::clock::{Clock, ClockFault, midnight_us};
use super::rules::{Count, Form, Origin, TimeRules, long_date, order_word};
use super::written::{DAY_US, HOUR_US, SECOND_US, Written, WrittenDate};
use crate::language::Message;
use crate::logs::table::Row;
use crate::logs::time_columns::TimeColumns;

/// A clock time that goes back further than this is after midnight.
const MIDNIGHT_STEP_US: i64 = DAY_US / 2;

/// Why a time cannot be read.
#[derive(Debug, Clone, PartialEq)]
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
    /// A date that is written in another way than the first.
    TwoNotations,
    /// A date that is none in the order of the others, in words.
    NotInOrder(Message),
    /// A clock time without a date goes back.
    GoesBack,
    /// A time is earlier than the one above, as on a clock of twelve hours after noon.
    TwelveHours,
}

/// Reads a settled time column from top to bottom.
pub struct TimeReader<'r> {
    rules: &'r TimeRules,
    columns: &'r TimeColumns,
    clock: Clock<'r>,
    /// Midnight of the last date read in the canonical form.
    last_date: ([u8; 10], i64),
    /// Whether all times so far could be of a 12-hour clock, and the last of them.
    could_be_twelve_hours: bool,
    last_local_us: i64,
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
            could_be_twelve_hours: !rules.is_backward,
            last_local_us: i64::MIN,
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
            && self.columns.half.is_none()
            && let Some(local_us) = self.canonical_us(row.cell(self.columns.first).as_bytes())
        {
            return self.instant(local_us);
        }
        if self.columns.is_blank(row) {
            return Err(TimeFault::Blank);
        }
        let cell = read_cells(self.columns, row).ok_or(TimeFault::Unreadable)?;
        match (self.rules.form, cell) {
            (Form::Count(count), TimeCell::Number(value)) => {
                self.counted(count, row.cell(self.columns.first), value)
            }
            (
                Form::Stopwatch(start_us),
                TimeCell::Written(Written {
                    date: None,
                    clock_us: Some(clock_us),
                    ..
                }),
            ) => self.elapsed(start_us.saturating_add(clock_us)),
            (
                Form::ClockOnly(_),
                TimeCell::Written(Written {
                    date: None,
                    clock_us: Some(clock_us),
                    ..
                }),
            ) => self.clock_only(clock_us),
            (_, TimeCell::Written(written)) => self.written(written),
            (_, TimeCell::Number(_)) => Err(TimeFault::Unreadable),
        }
    }

    fn written(&mut self, written: Written) -> Result<i64, TimeFault> {
        let date = match written.date.ok_or(TimeFault::Unreadable)? {
            WrittenDate::Known(_) if self.rules.is_open => return Err(TimeFault::TwoNotations),
            WrittenDate::Open(_) if !self.rules.is_open => return Err(TimeFault::TwoNotations),
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
            Origin::Start(start_us) => self.elapsed(start_us.saturating_add(us)),
            Origin::Serial => self.instant(midnight_us(SERIAL_ZERO).saturating_add(us)),
        }
    }

    /// A stopwatch that goes back was begun anew.
    fn elapsed(&mut self, time_us: i64) -> Result<i64, TimeFault> {
        if time_us < self.last_local_us {
            return Err(TimeFault::GoesBack);
        }
        self.last_local_us = time_us;
        self.note(time_us)
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

    /// # Errors
    /// [`TimeFault::TwelveHours`] for 1:00 after 12:50 on the same date, where no time
    /// says that it is of a 24-hour clock.
    fn instant(&mut self, local_us: i64) -> Result<i64, TimeFault> {
        let since_midnight_us = local_us.rem_euclid(DAY_US);
        self.could_be_twelve_hours &= since_midnight_us < 13 * HOUR_US;
        let back_us = self.last_local_us.saturating_sub(local_us);
        let is_noon_passed = (11 * HOUR_US + 1..=12 * HOUR_US).contains(&back_us);
        if self.could_be_twelve_hours && is_noon_passed && since_midnight_us >= HOUR_US {
            return Err(TimeFault::TwelveHours);
        }
        self.last_local_us = local_us;
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
