//! One run: its log trimmed to what counts, and its excluded spans placed in time.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::intervals::{Hole, Interval};
use super::screen::TimeSpan;
use crate::campaign::Campaign;
use crate::campaign::model::{IrradianceEstimate, RunPlan, Span};
use crate::campaign::moment::Moment;
use crate::error::Problem;
use crate::logs::Readings;
use crate::notice::Notice;
use crate::units::{local_clock, local_hours, seconds_between, zoned};

/// Seconds in a day.
const SECONDS_PER_DAY: f64 = 86_400.0;
/// Solar noon further from 12:00 by the clock than in any time zone in use, h.
const FURTHEST_NOON_H: f64 = 3.5;
/// How far a good sensor may read above the boiling point, K.
/// Common practice, no published source.
const BOILING_SLACK_K: f64 = 2.0;

/// One run as rated.
#[derive(Debug, Clone)]
pub struct Run {
    pub plan: RunPlan,
    /// Local date of the first reading that counts.
    pub date: Date,
    /// Water over intercept area, kg/m².
    pub load_kg_m2: f64,
    pub readings: Readings,
    /// Number of intervals, and of those that are used.
    pub intervals: usize,
    pub used: usize,
    /// Number of those that the line is drawn through.
    pub on_line: usize,
    pub holes: Vec<Hole>,
    /// In the order of the plan's exclusions.
    pub excluded: Vec<TimeSpan>,
    /// Spans that the tester states to have been cloudless, in the plan's order; `None`
    /// where irradiance does not depend on it.
    pub cloudless: Option<Vec<TimeSpan>>,
    /// The wind is an estimate by eye.
    pub estimates_wind: bool,
    /// Longest time that the wind stayed over the gust limit, s.
    pub longest_gust_s: f64,
}

/// Trims a log to the run's start and end, and places the excluded spans in time.
///
/// Clock times without a date are those of the run's `date`, else of the log's
/// first reading.
///
/// # Errors
/// A [`Problem`] with the campaign file for a time that does not exist, or a start
/// and end that leave nothing.
pub fn prepare_run(
    campaign: &Campaign,
    plan: RunPlan,
    mut readings: Readings,
    notices: &mut Vec<Notice>,
) -> Result<Run, Problem> {
    let zone = &campaign.site.time_zone;
    let clock_date = plan.date.unwrap_or_else(|| first_date(&readings, zone));
    let resolve = |moment: &Moment| {
        moment.resolve_us(clock_date, zone).ok_or_else(|| {
            let what =
                format!("{moment} does not exist in the site's time zone: the clocks skipped it");
            problem(campaign, &plan, &what, "correct the date or the time")
        })
    };
    let start_us = plan.start.as_ref().map(resolve).transpose()?;
    let end_us = plan.end.as_ref().map(resolve).transpose()?;
    let before = readings.time_us.len();
    readings.keep(start_us.unwrap_or(i64::MIN), end_us.unwrap_or(i64::MAX));
    if readings.time_us.is_empty() || readings.water_c.value.is_empty() {
        let what = "no reading with a water temperature lies between its start and end";
        let hint = "correct start and end; without a date they are clock times on the run's date, else on that of the first reading";
        return Err(problem(campaign, &plan, what, hint));
    }
    if readings.ambient_c.is_none() {
        let what = "no reading with an ambient temperature lies between its start and end";
        return Err(problem(
            campaign,
            &plan,
            what,
            "correct start and end, or check the sensor",
        ));
    }
    let place = |span: &Span, kind: &str| {
        let (from_us, to_us) = (resolve(&span.from)?, resolve(&span.to)?);
        if to_us <= from_us {
            let what = format!("the {kind} span {span} does not end after it begins");
            return Err(problem(campaign, &plan, &what, "correct from and to"));
        }
        Ok(TimeSpan { from_us, to_us })
    };
    let excluded = plan.exclusions.iter();
    let excluded = excluded
        .map(|exclusion| place(&exclusion.span, "excluded"))
        .collect::<Result<Vec<_>, _>>()?;
    let needs_clear_sky =
        campaign.instruments.irradiance_estimate == Some(IrradianceEstimate::ClearSky);
    let cloudless = needs_clear_sky.then(|| {
        let spans = plan.cloudless.iter();
        spans
            .map(|span| place(span, "cloudless"))
            .collect::<Result<Vec<_>, _>>()
    });
    let cloudless = cloudless.transpose()?;
    let date = first_date(&readings, zone);
    notices.extend(trim_notices(&plan, date, before - readings.time_us.len()));
    let run = Run {
        date,
        load_kg_m2: plan.water_kg / campaign.cooker.intercept_area_m2,
        plan,
        readings,
        intervals: 0,
        used: 0,
        on_line: 0,
        holes: Vec::new(),
        excluded,
        cloudless,
        estimates_wind: false,
        longest_gust_s: 0.0,
    };
    Ok(run)
}

fn first_date(readings: &Readings, zone: &TimeZone) -> Date {
    let first_us = readings.time_us.first().copied().unwrap_or_default();
    zoned(first_us, zone).date()
}

/// A problem with a run in the campaign file.
pub fn problem(campaign: &Campaign, plan: &RunPlan, what: &str, hint: &str) -> Problem {
    let problem = Problem::at(&campaign.file, what)
        .item(format!("[[run]] with log \"{}\"", plan.log))
        .hint(hint);
    match plan.line {
        Some(line) => problem.line(line),
        None => problem,
    }
}

fn trim_notices(plan: &RunPlan, date: Date, trimmed: usize) -> Vec<Notice> {
    let mut notices = Vec::new();
    if trimmed > 0 {
        notices.push(Notice::ReadingsTrimmed {
            log: plan.label.clone(),
            readings: trimmed,
        });
    }
    if let Some(stated) = plan.date
        && stated != date
    {
        notices.push(Notice::DateDiffers {
            log: plan.label.clone(),
            stated,
            found: date,
        });
    }
    notices
}

/// What a reader should know about a run after its intervals have been formed.
pub fn run_notices(
    run: &Run,
    intervals: &[Interval],
    zone: &TimeZone,
    boiling_point_c: f64,
) -> Vec<Notice> {
    let log = || run.plan.label.clone();
    let mut notices = Vec::new();
    match intervals.first() {
        None => notices.push(Notice::NoIntervals { log: log() }),
        Some(first) => {
            let noon_h = 12.0 + clock_ahead_of_sun_h(first, zone);
            if (noon_h - 12.0).abs() > FURTHEST_NOON_H {
                notices.push(Notice::OddSolarNoon { log: log(), noon_h });
            }
        }
    }
    if let (Some(first), Some(last)) = (run.readings.time_us.first(), run.readings.time_us.last()) {
        let days = seconds_between(*first, *last) / SECONDS_PER_DAY;
        if days > 1.0 {
            notices.push(Notice::LongRun { log: log(), days });
        }
    }
    let highest_c = run
        .readings
        .water_c
        .value
        .iter()
        .copied()
        .fold(f64::NEG_INFINITY, f64::max);
    if highest_c > boiling_point_c + BOILING_SLACK_K {
        notices.push(Notice::WaterAboveBoiling {
            log: log(),
            highest_c,
            boiling_point_c,
        });
    }
    for span in &run.excluded {
        if !intervals.iter().any(|interval| span.overlaps(interval)) {
            notices.push(Notice::IdleExclusion {
                log: log(),
                from: local_clock(span.from_us, zone),
                to: local_clock(span.to_us, zone),
            });
        }
    }
    notices
}

/// How far the local clock is ahead of the sun at the start of an interval, h,
/// between −12 and 12.
pub fn clock_ahead_of_sun_h(interval: &Interval, zone: &TimeZone) -> f64 {
    let clock_h = local_hours(interval.start_us, zone);
    (clock_h - interval.solar_start_h + 12.0).rem_euclid(24.0) - 12.0
}
