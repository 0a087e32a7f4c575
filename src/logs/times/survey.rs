//! Settles how a time column is to be read, from as many rows as that takes.

use jiff::civil::Date;
use jiff::tz::{Offset, TimeZone};

use super::cells::{SERIAL_DAYS, TimeCell, local_us, read_cells};
use super::rules::{Count, Form, Origin, TimeRules, long_date, order_word};
use super::written::{Written, WrittenDate};
use crate::campaign::model::DateOrder;
use crate::campaign::moment::Moment;
use crate::language::Message;
use crate::logs::request::Request;
use crate::logs::table::Row;
use crate::logs::time_columns::TimeColumns;
use crate::measure::{Kind, Unit};
use crate::message;
use crate::units::spoken_date;

/// Rows after which a column of numbers is judged.
const COUNTED_ROWS: usize = 200;
/// Seconds since 1970 of readings that anybody may still have: 1980 to 2100.
const EPOCH_S: std::ops::Range<f64> = 3.1e8..4.1e9;

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
    first: Option<FirstTime>,
    /// The next time that differs from the first.
    second: Option<TimeCell>,
    numbers: Option<(f64, f64)>,
    has_offsets: bool,
    open: Option<OpenDates>,
}

/// The first time of a column.
struct FirstTime {
    line: u64,
    text: String,
    cell: TimeCell,
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
    /// Every date so far is the same day in each order: 05/05/2026.
    is_one_way: bool,
    /// Points stand between the numbers of the first.
    has_points: bool,
    orders: [OrderEvidence; 3],
}

#[derive(Clone, Copy, Default)]
struct OrderEvidence {
    /// A row that nobody writes in this order, or that is no day in it.
    is_out: bool,
    /// A row that is no day in it.
    has_no_day: bool,
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
            TimeCell::Number(number) => {
                let (least, most) = self.numbers.unwrap_or((number, number));
                self.numbers = Some((least.min(number), most.max(number)));
            }
            TimeCell::Written(written) => {
                self.has_offsets |= written.offset_s.is_some();
                if let Some(WrittenDate::Open(open)) = written.date {
                    let first = self.open.get_or_insert_with(|| OpenDates {
                        line: row.line,
                        text: self.columns.text(row),
                        readings: open.readings(),
                        is_one_way: true,
                        has_points: open.separator == '.',
                        orders: [OrderEvidence::default(); 3],
                    });
                    let readings = open.readings();
                    first.is_one_way &= readings.windows(2).all(|pair| pair[0].1 == pair[1].1);
                    for (order, evidence) in ORDERS.iter().zip(&mut first.orders) {
                        let date = readings.iter().find(|(of, _)| of == order);
                        evidence.see(date.map(|(_, date)| *date), run_date);
                        evidence.has_no_day |= open.read(*order).is_none();
                    }
                }
            }
        }
        match &self.first {
            None => {
                self.first = Some(FirstTime {
                    line: row.line,
                    text: self.columns.text(row),
                    cell,
                });
            }
            Some(first) if self.second.is_none() && first.cell != cell => self.second = Some(cell),
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
        let (zone, zone_from) = self.zone(request);
        let Some(first) = &self.first else {
            // No time is readable: every row will say so.
            return Ok(TimeRules {
                form: Form::Written,
                order: request.rules.format.date_order,
                order_from: message!("order-first-row"),
                zone,
                zone_from,
                has_offsets: false,
                is_open: false,
                is_backward: false,
                example: String::new(),
            });
        };
        let (order, order_from) = self.order(request)?;
        let form = self.form(first, request, &zone)?;
        let local = |cell: &TimeCell| local_us(cell, order);
        let is_backward = form == Form::Written
            && matches!(
                (local(&first.cell), self.second.as_ref().and_then(local)),
                (Some(first), Some(second)) if second < first
            );
        Ok(TimeRules {
            form,
            order,
            order_from,
            zone,
            zone_from,
            has_offsets: self.has_offsets,
            is_open: matches!(
                first.cell,
                TimeCell::Written(Written {
                    date: Some(WrittenDate::Open(_)),
                    ..
                })
            ),
            is_backward,
            example: first.text.clone(),
        })
    }

    /// The zone of the times, and who says so.
    fn zone(&self, request: &Request<'_>) -> (TimeZone, Message) {
        match (&request.rules.format.time_zone, self.columns.offset_s) {
            (Some(zone), _) => (zone.clone(), message!("from-campaign-file")),
            (None, Some(offset_s)) => {
                let offset = Offset::from_seconds(offset_s).unwrap_or(Offset::UTC);
                (TimeZone::fixed(offset), self.columns.offset_from.clone())
            }
            (None, None) => (request.zone.clone(), message!("from-site")),
        }
    }

    /// What the cells hold, by the first of them.
    fn form(
        &self,
        first: &FirstTime,
        request: &Request<'_>,
        zone: &TimeZone,
    ) -> Result<Form, ColumnFault> {
        let example = &first.text;
        let fault = |(what, hint): (String, String)| ColumnFault {
            line: first.line,
            what,
            hint,
        };
        match first.cell {
            TimeCell::Number(_) => Ok(Form::Count(self.count(request, zone).map_err(fault)?)),
            TimeCell::Written(written) if written.date.is_some() => Ok(Form::Written),
            TimeCell::Written(written) if self.columns.is_elapsed && written.is_short => {
                let what = format!(
                    "found \"{example}\", which is hours and minutes or minutes and seconds"
                );
                let hint = "write time = \"h\" or time = \"min\" under [units] in campaign.toml, for what stands before the colon";
                Err(fault((what, hint.to_owned())))
            }
            TimeCell::Written(_) if self.columns.is_elapsed => {
                Ok(Form::Stopwatch(start_us(request, zone).map_err(fault)?))
            }
            TimeCell::Written(_) => match request.date {
                Some(date) => Ok(Form::ClockOnly(date)),
                None => {
                    let what = format!("found \"{example}\", a clock time without a date");
                    let hint = "write the day of the first reading as date = 2026-03-14 under this [[run]]";
                    Err(fault((what, hint.to_owned())))
                }
            },
        }
    }

    /// Order of the dates: as declared, else the only one possible, else the one in which
    /// day follows on day, else the one that has the run's date in it.
    fn order(&self, request: &Request<'_>) -> Result<(Option<DateOrder>, Message), ColumnFault> {
        if let Some(order) = request.rules.format.date_order {
            return Ok((Some(order), message!("from-campaign-file")));
        }
        let Some(open) = &self.open else {
            return Ok((None, message!("order-first-row")));
        };
        let of = |keep: &dyn Fn(&OrderEvidence) -> bool| -> Vec<DateOrder> {
            let possible = open.possible().filter(|(_, evidence)| keep(evidence));
            possible.map(|(order, _)| order).collect()
        };
        let possible = of(&|_| true);
        match possible.as_slice() {
            [only] => return Ok((Some(*only), open.why_only(*only))),
            [] => {
                // Row by row: each says what is wrong with it.
                return Ok((
                    open.readings.first().map(|(order, _)| *order),
                    message!("order-first-row"),
                ));
            }
            _ => {}
        }
        if open.is_one_way {
            return Ok((Some(possible[0]), message!("order-same-day")));
        }
        if let [only] = of(&|evidence| evidence.longest_step_days <= 1).as_slice() {
            return Ok((Some(*only), message!("order-only-following")));
        }
        if let [only] = of(&|evidence| evidence.meets_run_date).as_slice() {
            return Ok((Some(*only), message!("order-run-date")));
        }
        let readings = open
            .readings
            .iter()
            .filter(|(order, _)| possible.contains(order));
        let spoken: Vec<String> = readings.map(|(_, date)| long_date(*date)).collect();
        let (first, second) = (open.readings[0], open.readings[open.readings.len() - 1]);
        let stated = match request.date {
            Some(date) if of(&|evidence| evidence.meets_run_date).is_empty() => {
                format!("; the run's date, {}, is none of them", spoken_date(date))
            }
            Some(date) => format!("; the run's date, {}, is among both", spoken_date(date)),
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
    /// Why an order is the only one left: what is written is no day in the others, or nobody
    /// writes a day in them so.
    fn why_only(&self, only: DateOrder) -> Message {
        let mut others = ORDERS.iter().zip(&self.orders);
        if others.all(|(order, evidence)| *order == only || evidence.has_no_day) {
            message!("order-only-days")
        } else if self.has_points {
            message!("order-points")
        } else {
            message!("order-only-usual")
        }
    }

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
