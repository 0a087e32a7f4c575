//! How a time column is to be read, once that is settled.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use crate::campaign::model::DateOrder;
use crate::measure::Unit;
use crate::units::spoken_date;

/// How a time column is to be read.
#[derive(Debug, Clone)]
pub struct TimeRules {
    pub form: Form,
    /// Of dates whose order their digits do not tell.
    pub order: Option<DateOrder>,
    /// Why that order.
    pub order_from: &'static str,
    pub zone: TimeZone,
    /// Dates are of three numbers in an order, and not written otherwise.
    pub is_open: bool,
    /// Who says so.
    pub zone_from: &'static str,
    /// Rows state their offset from UTC.
    pub has_offsets: bool,
    /// The newest row stands first.
    pub is_backward: bool,
    /// The first time of the column.
    pub example: String,
}

/// What its cells hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Form {
    /// Date and clock time.
    Written,
    /// Clock time only; the date of the first row.
    ClockOnly(Date),
    /// A number.
    Count(Count),
    /// A clock that was set to zero at this instant, µs.
    Stopwatch(i64),
}

/// A number of units since some origin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Count {
    pub unit: Unit,
    pub origin: Origin,
}

/// From where a number counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Origin {
    /// 1970-01-01, UTC.
    Epoch,
    /// 1899-12-30, local time.
    Serial,
    /// The run's start, µs.
    Start(i64),
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

    /// Whether the times count from the run's start.
    pub fn counts_from_start(&self) -> bool {
        let is_start = |count: &Count| matches!(count.origin, Origin::Start(_));
        match &self.form {
            Form::Count(count) => is_start(count),
            Form::Stopwatch(_) => true,
            _ => false,
        }
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

/// A date with the month in words: 3 April 2026.
pub fn long_date(date: Date) -> String {
    date.strftime("%-d %B %Y").to_string()
}

/// An order as `date_order` writes it.
pub fn order_word(order: DateOrder) -> &'static str {
    match order {
        DateOrder::YearMonthDay => "year-month-day",
        DateOrder::DayMonthYear => "day-month-year",
        DateOrder::MonthDayYear => "month-day-year",
    }
}
