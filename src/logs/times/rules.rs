//! How a time column is to be read, once that is settled.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use crate::campaign::model::DateOrder;
use crate::language::{Message, Phrase, date};
use crate::measure::Unit;
use crate::message;

/// How a time column is to be read.
#[derive(Debug, Clone)]
pub struct TimeRules {
    pub form: Form,
    /// Of dates whose order their digits do not tell.
    pub order: Option<DateOrder>,
    /// Why that order.
    pub order_from: Message,
    pub zone: TimeZone,
    /// Dates are of three numbers in an order, and not written otherwise.
    pub is_open: bool,
    /// Who says so.
    pub zone_from: Message,
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
    pub fn describe(&self) -> Message {
        let form = match (self.form, self.order) {
            (Form::Written, None) => message!("time-date-and-time"),
            (Form::Written, Some(order)) => message!(
                "time-ordered",
                order = order_word(order),
                from = &self.order_from
            ),
            (Form::ClockOnly(first), _) => message!("time-clock-only", date = date(first)),
            (Form::Stopwatch(_), _) => message!("time-stopwatch"),
            (Form::Count(count), _) => match count.origin {
                Origin::Epoch => message!("time-since-1970", unit = count.unit.symbol()),
                Origin::Serial => message!("time-serial"),
                Origin::Start(_) => message!("time-elapsed", unit = count.unit.symbol()),
            },
        };
        if self.is_backward {
            message!("time-newest-first", form = form)
        } else {
            form
        }
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
    pub fn describe_zone(&self) -> Message {
        match self.form {
            Form::Count(Count {
                origin: Origin::Epoch,
                ..
            }) => message!("zone-epoch"),
            Form::Count(Count {
                origin: Origin::Start(_),
                ..
            })
            | Form::Stopwatch(_) => message!("zone-start"),
            _ if self.has_offsets => message!("zone-offsets"),
            _ => message!(
                "zone-named",
                zone = zone_name(&self.zone),
                from = &self.zone_from
            ),
        }
    }
}

fn zone_name(zone: &TimeZone) -> Phrase {
    match zone.iana_name() {
        Some(name) => name.into(),
        None => zone.to_fixed_offset().map_or_else(
            |_| message!("zone-local").into(),
            |offset| format!("UTC{offset}").into(),
        ),
    }
}

/// A date with the month in words: 3 April 2026.
pub fn long_date(date: Date) -> String {
    date.strftime("%-d %B %Y").to_string()
}

/// An order as `date_order` writes it.
pub fn order_word(order: DateOrder) -> Message {
    match order {
        DateOrder::YearMonthDay => message!("order-year-month-day"),
        DateOrder::DayMonthYear => message!("order-day-month-year"),
        DateOrder::MonthDayYear => message!("order-month-day-year"),
    }
}
