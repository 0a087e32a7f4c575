//! One run: its log trimmed to what counts, and its excluded spans placed in time.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::intervals::{Hole, Interval};
use super::screen::ExcludedSpan;
use crate::campaign::Campaign;
use crate::campaign::model::RunPlan;
use crate::campaign::moment::Moment;
use crate::error::Problem;
use crate::logs::{Log, Readings};
use crate::notice::Notice;
use crate::units::{local_clock, spoken_date, zoned};

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
    pub holes: Vec<Hole>,
    /// Wind stayed over the gust limit for too long: the whole run is set aside.
    pub has_long_gust: bool,
    /// SHA-256 of the log.
    pub sha256: String,
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
    log: Log,
    notices: &mut Vec<Notice>,
) -> Result<(Run, Vec<ExcludedSpan>), Problem> {
    let zone = &campaign.site.time_zone;
    let mut readings = log.readings;
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
    let mut excluded = Vec::new();
    for exclusion in &plan.exclusions {
        let (from_us, to_us) = (resolve(&exclusion.from)?, resolve(&exclusion.to)?);
        if to_us <= from_us {
            let what = format!("the excluded span {exclusion} ends before it begins");
            return Err(problem(campaign, &plan, &what, "exchange from and to"));
        }
        excluded.push(ExcludedSpan { from_us, to_us });
    }
    let date = first_date(&readings, zone);
    notices.extend(trim_notices(&plan, date, before - readings.time_us.len()));
    let run = Run {
        date,
        load_kg_m2: plan.water_kg / campaign.cooker.intercept_area_m2,
        plan,
        readings,
        intervals: 0,
        used: 0,
        holes: Vec::new(),
        has_long_gust: false,
        sha256: log.sha256,
    };
    Ok((run, excluded))
}

fn first_date(readings: &Readings, zone: &TimeZone) -> Date {
    let first_us = readings.time_us.first().copied().unwrap_or_default();
    zoned(first_us, zone).date()
}

fn problem(campaign: &Campaign, plan: &RunPlan, what: &str, hint: &str) -> Problem {
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
            log: plan.log.clone(),
            readings: trimmed,
        });
    }
    if let Some(stated) = plan.date
        && stated != date
    {
        notices.push(Notice::DateDiffers {
            log: plan.log.clone(),
            stated: spoken_date(stated),
            found: spoken_date(date),
        });
    }
    notices
}

/// What a reader should know about a run after its intervals have been formed.
pub fn run_notices(
    run: &Run,
    intervals: &[Interval],
    excluded: &[ExcludedSpan],
    zone: &TimeZone,
) -> Vec<Notice> {
    let log = || run.plan.log.clone();
    let mut notices = Vec::new();
    if intervals.is_empty() {
        notices.push(Notice::NoIntervals { log: log() });
    }
    for span in excluded {
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
