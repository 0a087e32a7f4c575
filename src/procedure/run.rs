//! One run: its log trimmed to what counts, its spans placed in time, its irradiance.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::estimate::estimate_irradiance;
use super::problem::run_problem;
use super::run_notice::RunNotice;
use super::spans::TimeSpan;
use super::split::Piece;
use crate::believable::ABOVE_BOILING_K;
use crate::campaign::Campaign;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{IrradianceEstimate, RunPlan, Span};
use crate::campaign::moment::Moment;
use crate::error::Problem;
use crate::logs::Readings;
use crate::units::{seconds_between, zoned};

/// Seconds in a day.
const SECONDS_PER_DAY: f64 = 86_400.0;

/// One heating or cooling of one load, or one test of the dry vessel, on one day.
#[derive(Debug, Clone)]
pub struct Run {
    pub plan: RunPlan,
    /// Local date of the first reading that counts.
    pub date: Date,
    /// Water over intercept area, kg/m²; none in a dry vessel.
    pub load_kg_m2: f64,
    /// Those that count, with the irradiance that is estimated in place of a sensor's.
    pub readings: Readings,
    /// In the order of the plan's exclusions.
    pub excluded: Vec<TimeSpan>,
    /// Spans that the tester states to have been cloudless, in the plan's order; `None`
    /// where irradiance does not depend on it.
    pub cloudless: Option<Vec<TimeSpan>>,
    /// There is wind, and it is an estimate by eye.
    pub estimates_wind: bool,
    /// Of its log, where it is the first in it, and of how it was trimmed.
    pub notices: Vec<RunNotice>,
    /// Of its readings.
    pub reading_notices: Vec<RunNotice>,
}

/// What is known of a run's log before the run is taken out of it.
pub struct FromLog {
    /// Its wind is an estimate by eye.
    pub estimates_wind: bool,
    /// What the reader should know of it.
    pub notices: Vec<RunNotice>,
}

/// Makes a run of its part of a log: trims it to start and end, places the excluded and the
/// cloudless spans in time, and estimates irradiance where the campaign asks for that.
///
/// Clock times without a date are those of the run's `date`, else of the log's
/// first reading.
///
/// # Errors
/// A [`Problem`] with the campaign file for a time that does not exist, a start and end that
/// leave nothing, or an estimate of irradiance that the log contradicts.
pub fn prepare_run(
    campaign: &Campaign,
    piece: Piece,
    from_log: FromLog,
    boiling_point_c: f64,
) -> Result<Run, Problem> {
    let Trimmed {
        plan,
        date,
        readings,
        excluded,
        cloudless,
        left_out,
    } = trim(campaign, piece)?;
    let readings = if plan.kind == RunKind::Cooling {
        // In the shade there is no sun to estimate.
        readings
    } else {
        estimate_irradiance(campaign, &plan, readings, cloudless.as_deref())?
    };
    let mut notices = from_log.notices;
    notices.extend(about_trimming(&plan, date, left_out));
    // A column of a field sheet that nobody filled in estimates nothing.
    let estimates_wind = from_log.estimates_wind && readings.wind_m_s.is_some();
    Ok(Run {
        reading_notices: about_readings(&plan, &readings, boiling_point_c),
        load_kg_m2: plan.water_kg / campaign.cooker.intercept_area_m2,
        plan,
        date,
        readings,
        excluded,
        cloudless,
        estimates_wind,
        notices,
    })
}

/// A log trimmed to a run's start and end.
struct Trimmed {
    plan: RunPlan,
    date: Date,
    readings: Readings,
    excluded: Vec<TimeSpan>,
    cloudless: Option<Vec<TimeSpan>>,
    /// Readings before the start and after the end.
    left_out: usize,
}

fn trim(campaign: &Campaign, piece: Piece) -> Result<Trimmed, Problem> {
    let Piece { plan, mut readings } = piece;
    let zone = &campaign.site.time_zone;
    let problem = |what: &str, hint: &str| run_problem(&campaign.file, &plan, what, hint);
    let clock_date = plan.date.unwrap_or_else(|| first_date(&readings, zone));
    let resolve = |moment: &Moment| {
        moment.resolve_us(clock_date, zone).ok_or_else(|| {
            let what =
                format!("{moment} does not exist in the site's time zone: the clocks skipped it");
            problem(&what, "correct the date or the time")
        })
    };
    let start_us = plan.start.as_ref().map(resolve).transpose()?;
    let end_us = plan.end.as_ref().map(resolve).transpose()?;
    if let (Some(start_us), Some(end_us)) = (start_us, end_us)
        && start_us >= end_us
    {
        let (start, end) = (&plan.start, &plan.end);
        let shown =
            |moment: &Option<Moment>| moment.as_ref().map_or_else(String::new, Moment::to_string);
        let what = format!("ends at {}, and starts at {}", shown(end), shown(start));
        let hint = "exchange or correct start and end; clock times are by 24 hours (13:30 for half past one), and those without a date are of one day";
        return Err(problem(&what, hint));
    }
    let before = readings.time_us.len();
    readings.keep(start_us.unwrap_or(i64::MIN), end_us.unwrap_or(i64::MAX));
    let is_empty = plan.kind.has_water() && readings.water_c.value.is_empty();
    if readings.time_us.is_empty() || is_empty {
        let what = if plan.kind.has_water() {
            "no reading with a water temperature lies between its start and end"
        } else {
            "no reading lies between its start and end"
        };
        return Err(problem(
            what,
            "correct start and end; without a date they are clock times on the run's date, else on that of the first reading",
        ));
    }
    if readings.ambient_c.is_none() {
        return Err(problem(
            "no reading with an ambient temperature lies between its start and end",
            "correct start and end, or check the sensor",
        ));
    }
    let place = |span: &Span, kind: &str| {
        let (from_us, to_us) = (resolve(&span.from)?, resolve(&span.to)?);
        if to_us <= from_us {
            let what = format!("the {kind} span {span} does not end after it begins");
            return Err(problem(&what, "correct from and to"));
        }
        Ok(TimeSpan { from_us, to_us })
    };
    let exclusions = plan.exclusions.iter().map(|exclusion| &exclusion.span);
    let excluded = exclusions
        .map(|span| place(span, "excluded"))
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
    Ok(Trimmed {
        date: first_date(&readings, zone),
        left_out: before - readings.time_us.len(),
        plan,
        readings,
        excluded,
        cloudless,
    })
}

fn first_date(readings: &Readings, zone: &TimeZone) -> Date {
    let first_us = readings.time_us.first().copied().unwrap_or_default();
    zoned(first_us, zone).date()
}

fn about_trimming(plan: &RunPlan, date: Date, left_out: usize) -> Vec<RunNotice> {
    let log = || plan.label.clone();
    let trimmed = (left_out > 0).then(|| RunNotice::ReadingsTrimmed {
        log: log(),
        readings: left_out,
    });
    let stated = plan.date.filter(|stated| *stated != date);
    let differs = stated.map(|stated| RunNotice::DateDiffers {
        log: log(),
        stated,
        found: date,
    });
    trimmed.into_iter().chain(differs).collect()
}

fn about_readings(plan: &RunPlan, readings: &Readings, boiling_point_c: f64) -> Vec<RunNotice> {
    let label = plan.label.as_str();
    let mut notices = Vec::new();
    if let (Some(first), Some(last)) = (readings.time_us.first(), readings.time_us.last()) {
        let days = seconds_between(*first, *last) / SECONDS_PER_DAY;
        if days > 1.0 {
            let log = label.to_owned();
            let can_be_split = plan.kind == RunKind::Water;
            notices.push(RunNotice::LongRun {
                log,
                days,
                can_be_split,
            });
        }
    }
    let water_c = readings.water_c.value.iter().copied();
    let highest_c = water_c.fold(f64::NEG_INFINITY, f64::max);
    if highest_c > boiling_point_c + ABOVE_BOILING_K {
        notices.push(RunNotice::WaterAboveBoiling {
            log: label.to_owned(),
            highest_c,
            boiling_point_c,
        });
    }
    notices
}
