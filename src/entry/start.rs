//! When the times of a sheet begin, and how they go on.

use jiff::Timestamp;
use jiff::civil::{Date, Time};
use jiff::tz::TimeZone;

use super::line::clock;
use super::sheet::{Line, minutes, spoken};
use crate::believable::YEARS;
use crate::campaign::Campaign;
use crate::campaign::kinds::RunKind;
use crate::error::{Error, Problem, Result};
use crate::local_time::unix_seconds;
use crate::physics::sun::next_noon_s;
use crate::planning::pace::{solar_hours, step_min};
use crate::procedure::s580::Limits;
use crate::units::SECONDS_PER_HOUR;

/// Solar time at noon, h.
const NOON_H: f64 = 12.0;
const MINUTES_PER_DAY: i32 = 1440;

/// The date of a run.
///
/// # Errors
/// [`Error::Usage`] if it is none, or not in the years 1900 to 2200.
pub fn read_date(text: &str) -> Result<Date> {
    let found: Option<Date> = text.trim().parse().ok();
    let has_form = text.trim().len() == "2026-11-03".len();
    match found.filter(|_| has_form) {
        Some(date) if YEARS.contains(&date.year()) => Ok(date),
        Some(date) => Err(usage(
            "--date",
            &format!("found the year {}, expected 1900 to 2200", date.year()),
            "correct the date",
        )),
        None => Err(usage(
            "--date",
            &format!("found \"{text}\", expected a date"),
            "write it as 2026-11-03",
        )),
    }
}

/// The first time, as somebody chose it.
///
/// # Errors
/// [`Error::Usage`] if it is none, or not after the last line that is there already.
pub fn read_start(text: &str, last: Option<&Line>) -> Result<Time> {
    let Some(start) = clock(text.trim()) else {
        return Err(usage(
            "--start",
            &format!("found \"{text}\", expected a time of the day"),
            "write hours and minutes, as in 10:20",
        ));
    };
    match last {
        Some(last) if start <= last.time => Err(usage(
            "--start",
            &format!(
                "found {}, and the sheet goes to {} already",
                spoken(start),
                spoken(last.time)
            ),
            "leave --start out: typing goes on after the last line",
        )),
        _ => Ok(start),
    }
}

/// Start of the hours in which runs of a kind are read on a date, by the clock at the site,
/// rounded up to the next whole step.
///
/// # Errors
/// [`Error::Usage`] if it is on another date by that clock, or the kind has no such hours.
pub fn window_start(
    campaign: &Campaign,
    limits: &Limits,
    kind: RunKind,
    date: Date,
) -> Result<Time> {
    let zone = &campaign.site.time_zone;
    let Some((start_h, _)) = solar_hours(kind, limits) else {
        return Err(usage(
            "--start",
            "a cooling run may begin at any time of the day",
            "say when the first line was read, as --start 13:20",
        ));
    };
    let midnight_s = unix_seconds(date.to_datetime(Time::midnight()), zone);
    let noon_s = midnight_s.and_then(|from_s| next_noon_s(from_s, campaign.site.longitude_deg));
    let start = noon_s.and_then(|noon_s| {
        let start_s = noon_s - (NOON_H - start_h) * SECONDS_PER_HOUR;
        rounded_up(start_s, zone, step_min(kind, limits)).filter(|(day, _)| *day == date)
    });
    start.map(|(_, time)| time).ok_or_else(|| {
        usage(
            "--start",
            &format!("the solar window does not begin on {date} by the site's clock"),
            "say when the first line was read, as --start 10:20",
        )
    })
}

/// Date and clock time at or after an instant (seconds since 1970, UTC) to which steps of so
/// many minutes from midnight come.
fn rounded_up(unix_s: f64, zone: &TimeZone, step_min: i32) -> Option<(Date, Time)> {
    let at = Timestamp::from_second(unix_s.ceil() as i64).ok()?;
    let local = at.to_zoned_datetime(zone.clone()).datetime();
    let seconds = minutes(local.time()) * 60 + i32::from(local.time().second());
    let step_s = step_min * 60;
    let rounded_s = (seconds + step_s - 1) / step_s * step_s;
    Some((local.date(), time_of(rounded_s / 60)?))
}

/// First time after another whose minutes differ from `start`'s by whole steps; `None`
/// when the day is over.
pub fn next_time(after: Time, start: Time, step_min: i32) -> Option<Time> {
    let ahead = (minutes(after) - minutes(start)).rem_euclid(step_min);
    time_of(minutes(after) + step_min - ahead)
}

/// Where the times of a sheet that is gone on with stand: the minute that most of its
/// lines have in common.
pub fn common_start(lines: &[Line], step_min: i32) -> Option<Time> {
    let minute = |line: &Line| minutes(line.time) % step_min;
    let count = |of: i32| lines.iter().filter(|line| minute(line) == of).count();
    // The first of equals: max_by_key would give the last.
    let most = lines.iter().rev().max_by_key(|line| count(minute(line)));
    most.map(|line| line.time)
}

fn time_of(minutes: i32) -> Option<Time> {
    let is_today = (0..MINUTES_PER_DAY).contains(&minutes);
    let time = is_today.then(|| Time::new((minutes / 60) as i8, (minutes % 60) as i8, 0, 0));
    time?.ok()
}

fn usage(option: &str, what: &str, hint: &str) -> Error {
    let problem = Problem::at(std::path::Path::new(option), what);
    Error::Usage(problem.hint(hint).into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::sheet::tests::sheet;

    fn at(text: &str) -> Time {
        clock(text).unwrap()
    }

    #[test]
    fn times_go_on_by_the_grid_of_the_first() {
        assert_eq!(next_time(at("10:20"), at("10:20"), 10), Some(at("10:30")));
        assert_eq!(next_time(at("10:22"), at("10:20"), 10), Some(at("10:30")));
        assert_eq!(next_time(at("10:22"), at("10:05"), 10), Some(at("10:25")));
        assert_eq!(next_time(at("23:50"), at("10:20"), 10), None);
        assert_eq!(next_time(at("10:20"), at("10:05"), 15), Some(at("10:35")));
    }

    #[test]
    fn a_sheet_goes_on_by_the_minute_of_most_lines() {
        let lines = ["10:07 30", "10:15 31", "10:25 32"];
        assert_eq!(
            common_start(sheet("°C", &lines).lines(), 10),
            Some(at("10:15"))
        );
        let lines = ["10:05 30", "10:12 31"];
        assert_eq!(
            common_start(sheet("°C", &lines).lines(), 10),
            Some(at("10:05"))
        );
        assert_eq!(common_start(&[], 10), None);
    }

    #[test]
    fn an_instant_is_rounded_up_to_ten_minutes_of_the_clock() {
        let zone = TimeZone::get("Asia/Kolkata").unwrap();
        // 04:30:01 UTC is 10:00:01 there.
        let (_, time) = rounded_up(16_201.0, &zone, 10).unwrap();
        assert_eq!(time, at("10:10"));
        let (_, time) = rounded_up(16_200.0, &zone, 10).unwrap();
        assert_eq!(time, at("10:00"));
    }

    #[test]
    fn dates_far_away_or_misspelt_are_refused() {
        assert!(read_date("2026-11-03").is_ok());
        for text in [
            "1899-12-31",
            "2201-01-01",
            "03.11.2026",
            "2026-02-30",
            "20261103",
            "2026-11-03T10:00",
        ] {
            let error = read_date(text).unwrap_err();
            assert!(error.to_string().contains("--date: found"), "{error}");
        }
    }
}
