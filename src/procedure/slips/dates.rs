//! Dates that cannot be, or that are far from those of the runs beside them.

use jiff::Timestamp;
use jiff::civil::Date;

use crate::language::{Message, date};
use crate::message;
use crate::procedure::Tested;
use crate::procedure::run::Run;
use crate::procedure::run_notice::RunNotice;
use crate::units::zoned;

/// Days from which clocks of loggers and spreadsheets count, where nobody set them.
const EPOCHS: &[(i16, i8)] = &[
    (1899, 12),
    (1900, 1),
    (1904, 1),
    (1970, 1),
    (1980, 1),
    (2000, 1),
];
/// Runs that belong together lie within so many days.
const TOGETHER_DAYS: i64 = 31;
/// The same where day and month are exchanged, which chance looks like more often.
const CLOSE_DAYS: i64 = 14;
/// A date that was mended lies so near to the others, in days.
const MENDED_DAYS: i64 = 7;
/// The same where day and month are exchanged.
const MENDED_ORDER_DAYS: i64 = 3;
/// So far is another year from the others, in days.
const YEAR_AWAY_DAYS: i64 = 300;
/// So far is another month.
const MONTH_AWAY_DAYS: i64 = 20;
/// So far no test is put off from the others while it is listed at its place in time, in days.
/// Common practice, no published source: whoever misses a clear day waits weeks for one.
const SEASON_AWAY_DAYS: i64 = 60;
/// So many other runs tell that one is alone, where it is listed at its place in time.
const OTHERS_IN_ORDER: usize = 3;
/// The same where it is listed out of order.
const OTHERS: usize = 2;
/// A clock of the logger that is ahead, or of another zone, is no future, s.
const AHEAD_S: i64 = 86_400;

/// A date that looks like a slip.
#[derive(Debug, Clone, PartialEq)]
pub enum DateSlip {
    /// One run far from all others, and not far with a part of its date replaced.
    Odd {
        log: String,
        found: Date,
        meant: Date,
        /// Of the others.
        first: Date,
        last: Date,
        part: DatePart,
    },
    /// The name of a log has another date than its readings, by a slip in either.
    OfName {
        log: String,
        named: Date,
        found: Date,
    },
    /// The clock of a logger that was never set.
    ClockNotSet { log: String, found: Date },
    /// Readings after the time of issue.
    InFuture {
        /// The run that is furthest ahead, and its date.
        log: String,
        found: Date,
        issued: Date,
        /// In the future, that one counted.
        runs: usize,
    },
}

/// The part of a date that is typed wrongly.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DatePart {
    Year,
    Month,
    /// Day and month are exchanged.
    Order,
}

/// The slips in the dates of a campaign, in the order of its file.
///
/// Honest campaigns go on for months, come back after a year and repeat a day's test. So a date
/// is doubted only where it is alone, the others lie together, and one part of it replaced would
/// put it among them; where only its month is odd, it has to be listed out of its order too, and
/// where day and month are exchanged, out of its order or a season away.
pub fn date_slips(tested: &Tested) -> Vec<DateSlip> {
    let mut runs: Vec<&Run> = tested.all_runs().collect();
    runs.sort_by_key(|run| run.plan.number);
    let dates: Vec<Date> = runs.iter().map(|run| run.date).collect();
    let slips = runs.iter().enumerate().filter_map(|(index, run)| {
        let log = || run.plan.label.clone();
        let found = run.date;
        if is_unset(found) {
            return Some(DateSlip::ClockNotSet { log: log(), found });
        }
        if let Some(named) = other_date_of_name(run) {
            return Some(DateSlip::OfName {
                log: log(),
                named,
                found,
            });
        }
        if spans_days(run) {
            // That is told of its readings.
            return None;
        }
        let odd = odd_date(&dates, index)?;
        Some(DateSlip::Odd {
            log: log(),
            found,
            meant: odd.meant,
            first: odd.first,
            last: odd.last,
            part: odd.part,
        })
    });
    slips.collect()
}

/// That runs have readings a day or more after the time of issue.
pub fn in_future(tested: &Tested, issued: Timestamp) -> Option<DateSlip> {
    let issued_us = issued.as_microsecond();
    let zone = &tested.campaign.site.time_zone;
    let ahead = |run: &&Run| {
        let last_us = run.readings.time_us.last();
        last_us.is_some_and(|last| *last > issued_us.saturating_add(AHEAD_S * 1_000_000))
    };
    let runs = tested.all_runs().filter(ahead);
    let furthest = runs.clone().max_by_key(|run| run.date)?;
    Some(DateSlip::InFuture {
        log: furthest.plan.label.clone(),
        found: furthest.date,
        issued: zoned(issued_us, zone).date(),
        runs: runs.count(),
    })
}

/// Whether the readings of a run go on for more than a day.
fn spans_days(run: &Run) -> bool {
    let is_long = |notice: &RunNotice| matches!(notice, RunNotice::LongRun { .. });
    run.reading_notices.iter().any(is_long)
}

/// Whether a date lies in the month from which a clock that was never set counts.
fn is_unset(found: Date) -> bool {
    EPOCHS.contains(&(found.year(), found.month()))
}

/// The date in the name of a run's log, where the readings have the same day and month of another
/// year, or day and month exchanged. Any other difference may be the date of the export.
fn other_date_of_name(run: &Run) -> Option<Date> {
    let plan = &run.plan;
    if plan.is_split || plan.shares_log || plan.date.is_some() {
        return None;
    }
    let named = date_in(&plan.log)?;
    let found = run.date;
    let is_other_year = named.year() != found.year()
        && (named.month(), named.day()) == (found.month(), found.day());
    let is_exchanged = named != found && exchanged(found) == Some(named);
    (is_other_year || is_exchanged).then_some(named)
}

/// The one date, as 2026-03-14, that a name holds.
fn date_in(name: &str) -> Option<Date> {
    const LENGTH: usize = "2026-03-14".len();
    let starts = name.char_indices().map(|(start, _)| start);
    let mut dates = starts.filter_map(|start| {
        let text = name.get(start..start + LENGTH)?;
        let before = name[..start].chars().next_back();
        let after = name[start + LENGTH..].chars().next();
        let is_alone = !before
            .into_iter()
            .chain(after)
            .any(|one| one.is_ascii_digit());
        let is_written = text.bytes().enumerate().all(|(at, byte)| match at {
            4 | 7 => byte == b'-',
            _ => byte.is_ascii_digit(),
        });
        text.parse().ok().filter(|_: &Date| is_alone && is_written)
    });
    let only = dates.next();
    only.filter(|_| dates.next().is_none())
}

/// The same year with day and month exchanged, where that is a date.
fn exchanged(found: Date) -> Option<Date> {
    Date::new(found.year(), found.day(), found.month()).ok()
}

/// What an odd date was meant to be.
struct Odd {
    meant: Date,
    first: Date,
    last: Date,
    part: DatePart,
}

/// What one date among those of the runs, in the order of the file, was meant to be; `None` where
/// it is not odd.
fn odd_date(dates: &[Date], index: usize) -> Option<Odd> {
    let found = dates[index];
    let others: Vec<Date> = dates[..index]
        .iter()
        .chain(&dates[index + 1..])
        .copied()
        .collect();
    let (first, last) = (*others.iter().min()?, *others.iter().max()?);
    let spread = days_between(first, last);
    let away = away_days(found, first, last);
    if others.len() < OTHERS || spread > TOGETHER_DAYS || away <= MONTH_AWAY_DAYS {
        return None;
    }
    let before = index.checked_sub(1).map(|before| dates[before]);
    let after = dates.get(index + 1).copied();
    let fits = |date: Date| {
        before.is_none_or(|before| before <= date) && after.is_none_or(|after| date <= after)
    };
    let are_in_order = others.is_sorted();
    let odd = |meant: Date, part: DatePart| Odd {
        meant,
        first,
        last,
        part,
    };
    let is_out_of_order = are_in_order && !fits(found);
    let is_alone = others.len() >= OTHERS_IN_ORDER || is_out_of_order;
    let near = |date: &Date, days: i64| away_days(*date, first, last) <= days;
    if away > YEAR_AWAY_DAYS {
        let years = first.year() - 1..=last.year() + 1;
        let of_year = |year: i16| Date::new(year, found.month(), found.day()).ok();
        let meant = years
            .filter_map(of_year)
            .find(|date| near(date, MENDED_DAYS));
        return meant
            .filter(|_| is_alone)
            .map(|meant| odd(meant, DatePart::Year));
    }
    let of_order = exchanged(found).filter(|date| near(date, MENDED_ORDER_DAYS));
    let is_at_its_place = !is_out_of_order && away <= SEASON_AWAY_DAYS;
    if let Some(meant) = of_order.filter(|_| spread <= CLOSE_DAYS && is_alone && !is_at_its_place) {
        return Some(odd(meant, DatePart::Order));
    }
    let months = [first, last].map(|other| {
        let meant = Date::new(found.year(), other.month(), found.day()).ok();
        meant.filter(|date| near(date, MENDED_DAYS) && fits(*date))
    });
    let meant = months.into_iter().flatten().next();
    let meant = meant.filter(|_| is_out_of_order);
    meant.map(|meant| odd(meant, DatePart::Month))
}

/// Days from the nearest of two dates, 0 between them.
fn away_days(date: Date, first: Date, last: Date) -> i64 {
    let nearest = date.clamp(first, last);
    days_between(date.min(nearest), date.max(nearest))
}

/// Days from one date to a later one.
fn days_between(from: Date, to: Date) -> i64 {
    i64::from((to - from).get_days())
}

impl DateSlip {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            DateSlip::Odd {
                log,
                found,
                meant,
                first,
                last,
                part,
            } => {
                let said = match part {
                    DatePart::Year => message!("notice-odd-year"),
                    DatePart::Month => message!("notice-odd-month"),
                    DatePart::Order => message!("notice-odd-day-and-month"),
                };
                said.with("log", log)
                    .with("found", date(*found))
                    .with("meant", date(*meant))
                    .with("first", date(*first))
                    .with("last", date(*last))
            }
            DateSlip::OfName { log, named, found } => message!(
                "notice-date-of-name",
                log = log,
                named = date(*named),
                found = date(*found)
            ),
            DateSlip::ClockNotSet { log, found } => {
                message!("notice-clock-not-set", log = log, found = date(*found))
            }
            DateSlip::InFuture {
                log,
                found,
                issued,
                runs,
            } => message!(
                "notice-in-future",
                log = log,
                found = date(*found),
                issued = date(*issued),
                runs = *runs
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn meant(dates: &[&str]) -> Vec<Option<(String, DatePart)>> {
        let dates: Vec<Date> = dates.iter().map(|date| date.parse().unwrap()).collect();
        let all = (0..dates.len()).map(|index| odd_date(&dates, index));
        all.map(|odd| odd.map(|odd| (odd.meant.to_string(), odd.part)))
            .collect()
    }

    /// The only slip of a list: where it is, what it is.
    fn only(dates: &[&str]) -> Option<(usize, String, DatePart)> {
        let found: Vec<_> = meant(dates).into_iter().enumerate().collect();
        let mut slips = found
            .into_iter()
            .filter_map(|(index, slip)| slip.map(|(meant, part)| (index, meant, part)));
        let only = slips.next();
        assert_eq!(slips.next(), None, "{dates:?}");
        only
    }

    #[test]
    fn one_part_of_a_date_that_is_alone_is_found() {
        let year = ["2026-03-14", "2026-03-15", "2025-03-16"];
        let slip = |index, meant: &str, part| Some((index, meant.to_owned(), part));
        assert_eq!(only(&year), slip(2, "2026-03-16", DatePart::Year));
        let new_year = ["2025-12-30", "2025-12-31", "2025-01-02"];
        assert_eq!(only(&new_year), slip(2, "2026-01-02", DatePart::Year));
        let first = ["2025-03-14", "2026-03-15", "2026-03-16", "2026-03-17"];
        assert_eq!(only(&first), slip(0, "2026-03-14", DatePart::Year));
        let month = ["2026-03-14", "2026-02-15", "2026-03-16"];
        assert_eq!(only(&month), slip(1, "2026-03-15", DatePart::Month));
        let order = ["2026-03-04", "2026-05-03", "2026-03-06"];
        assert_eq!(only(&order), slip(1, "2026-03-05", DatePart::Order));
        let last = ["2026-03-04", "2026-03-05", "2026-03-06", "2026-08-03"];
        assert_eq!(only(&last), slip(3, "2026-03-08", DatePart::Order));
    }

    #[test]
    fn honest_dates_are_not_doubted() {
        for dates in [
            &["2025-03-14", "2026-03-14", "2027-03-14"][..],
            &["2025-03-14", "2025-03-15", "2026-03-14", "2026-03-16"],
            &["2025-06-10", "2025-06-12", "2026-06-11"],
            &["2026-03-14", "2026-04-15", "2026-05-20"],
            &["2026-03-14", "2026-03-15", "2026-04-16"],
            &["2026-02-14", "2026-03-15", "2026-03-16"],
            &["2026-03-14", "2025-03-14"],
            &["2026-12-30", "2026-12-31", "2027-01-02"],
            // Listed in order, a month apart, and with day and month exchanged 8 September.
            &["2026-08-09", "2026-09-07", "2026-09-09"],
            &["2026-08-09", "2026-09-07", "2026-09-08", "2026-09-09"],
            &["2026-03-04", "2026-03-06", "2026-08-03"],
            &["2026-03-14"],
        ] {
            assert_eq!(only(dates), None, "{dates:?}");
        }
    }

    #[test]
    fn a_name_holds_one_date_or_none() {
        assert_eq!(date_in("logs/2026-03-14-a.csv"), "2026-03-14".parse().ok());
        for name in [
            "day-1.csv",
            "2026-03-14_2026-03-15.csv",
            "12026-03-14.csv",
            "2026-13-14",
        ] {
            assert_eq!(date_in(name), None, "{name}");
        }
    }
}
