//! A date or time as it is written, taken apart.

use jiff::civil::Date;

use crate::campaign::model::DateOrder;

/// Microseconds in a second, an hour and a day.
pub const SECOND_US: i64 = 1_000_000;
/// See [`SECOND_US`].
pub const HOUR_US: i64 = 3600 * SECOND_US;
/// See [`SECOND_US`].
pub const DAY_US: i64 = 24 * HOUR_US;

/// Two-digit years from here on belong to the last century (POSIX `strptime`, %y).
const LAST_CENTURY: i16 = 69;

/// A number in the place of a day that may as well be a recent year of two digits.
const FIRST_SHORT_YEAR: i16 = 24;

/// A time as written.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Written {
    pub date: Option<WrittenDate>,
    /// Time of day, µs since midnight; 24:00 is the end of the day.
    pub clock_us: Option<i64>,
    /// Offset from UTC, s, where one is written.
    pub offset_s: Option<i32>,
    /// The clock time has hours and minutes only.
    pub is_short: bool,
}

/// The clock time of a time as written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WrittenClock {
    /// See [`Written::clock_us`].
    pub clock_us: i64,
    /// See [`Written::offset_s`].
    pub offset_s: Option<i32>,
    /// It has hours and minutes only.
    pub is_short: bool,
}

/// A date as written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WrittenDate {
    Known(Date),
    Open(ThreeNumbers),
}

/// A date of three numbers, the first of which is no four-digit year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ThreeNumbers {
    pub numbers: [i16; 3],
    pub has_long_year: bool,
    /// What stands between them; a space where nothing else does.
    pub separator: char,
}

impl ThreeNumbers {
    /// The date in one order, if there is such a day.
    pub fn read(self, order: DateOrder) -> Option<Date> {
        let [first, second, third] = self.numbers;
        let (year, month, day) = match order {
            DateOrder::YearMonthDay => (first, second, third),
            DateOrder::DayMonthYear => (third, second, first),
            DateOrder::MonthDayYear => (third, first, second),
        };
        let year_is_last = order != DateOrder::YearMonthDay;
        let year = match (self.has_long_year, year_is_last) {
            (true, true) => year,
            (true, false) => return None,
            (false, _) => full_year(year),
        };
        Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
    }

    /// Every order in which people write such a date and in which it is a day.
    ///
    /// Points stand between day, month and year only (DIN 1355-1, withdrawn, from
    /// memory), and a two-digit year comes first between hyphens, or where it can be a
    /// recent one: common practice, no published source.
    pub fn readings(self) -> Vec<(DateOrder, Date)> {
        let usual: &[DateOrder] = match (self.separator, self.has_long_year) {
            ('.', _) => &[DateOrder::DayMonthYear],
            (separator, false) if separator == '-' || self.numbers[0] >= FIRST_SHORT_YEAR => &[
                DateOrder::YearMonthDay,
                DateOrder::DayMonthYear,
                DateOrder::MonthDayYear,
            ],
            _ => &[DateOrder::DayMonthYear, DateOrder::MonthDayYear],
        };
        let read = |orders: &[DateOrder]| -> Vec<(DateOrder, Date)> {
            let dates = orders
                .iter()
                .filter_map(|&order| Some((order, self.read(order)?)));
            dates.collect()
        };
        let readings = read(usual);
        if readings.is_empty() {
            return read(&[DateOrder::YearMonthDay, DateOrder::MonthDayYear]);
        }
        readings
    }
}

/// A year of two digits with its century; any other as it is.
pub fn full_year(year: i16) -> i16 {
    match year {
        0..LAST_CENTURY => year + 2000,
        LAST_CENTURY..=99 => year + 1900,
        _ => year,
    }
}
