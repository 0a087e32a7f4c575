//! Everything a person needs to know before a test day.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::aim::aiming_times;
use super::day::{SunDay, sun_day};
use super::expect::{Expected, expect};
use super::pace::{step_min, sun_needs};
use crate::believable::YEARS;
use crate::campaign::Campaign;
use crate::campaign::kinds::RunKind;
use crate::error::{Error, Problem, Result};
use crate::hash::HashedFile;
use crate::language::Message;
use crate::procedure::Assessment;
use crate::procedure::acceptance::HalfAngle;
use crate::procedure::s580::Limits;
use crate::procedure::s580::shortfall::Shortfall;
use crate::procedure::site::local_boiling_point_c;
use crate::procedure::sky::LocalSky;
use crate::procedure::spans::TimeSpan;
use crate::procedure::tested::inputs;
use crate::units::{MICROSECONDS_PER_SECOND, zoned};

const US: i64 = MICROSECONDS_PER_SECOND as i64;
const DAY_US: i64 = 86_400 * US;
const MINUTE_US: i64 = 60 * US;

/// How far the sun may stand off the axis, in a plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlannedHalfAngle {
    /// Degrees.
    pub half_angle_deg: f64,
    /// What the runs so far show, of which it is the lower end; `None` where the campaign file
    /// states it.
    pub shown: Option<HalfAngle>,
}

/// The half angle of a plan: what the campaign file states, else the lower end of what the runs
/// show, which is the cautious one.
fn planned_half_angle(campaign: &Campaign, rated: Option<&Assessment>) -> Option<PlannedHalfAngle> {
    let stated = campaign.cooker.acceptance_half_angle_deg;
    let stated = stated.map(|half_angle_deg| PlannedHalfAngle {
        half_angle_deg,
        shown: None,
    });
    let acceptance = rated.and_then(|rated| rated.acceptance.as_ref());
    let shown = acceptance.and_then(|acceptance| acceptance.half_angle);
    stated.or_else(|| {
        shown.map(|shown| PlannedHalfAngle {
            half_angle_deg: shown.range_deg.lower,
            shown: Some(shown),
        })
    })
}

/// The plan of one day.
#[derive(Debug, Clone)]
pub struct Plan {
    pub campaign: Campaign,
    pub date: Date,
    /// What is tested. What follows of load, intervals and expectation is of water alone.
    pub kind: RunKind,
    pub limits: Limits,
    pub day: SunDay,
    /// Water that the practice asks for, kg.
    pub load_kg: f64,
    pub boiling_point_c: f64,
    /// Times of the field sheet, by the clock, µs: of water an interval apart in the solar window;
    /// none of a run that cools, whose times count from its start.
    pub times_us: Vec<i64>,
    /// How far the sun may stand off the axis; `None` where it is neither stated nor shown.
    pub half_angle: Option<PlannedHalfAngle>,
    /// When to aim, µs; `None` without a half angle.
    pub aimings_us: Option<Vec<i64>>,
    /// Intervals and days still missing, in words; `None`: enough.
    pub missing: Option<Message>,
    /// Intervals that fit into the usable part of the day.
    pub most_intervals: usize,
    /// Every file that it follows from, with its SHA-256.
    pub inputs: Vec<HashedFile>,
    /// Whether the logs so far were assessed.
    pub is_rated: bool,
    /// Of a cooker that is rated already.
    pub expected: Option<Expected>,
    /// Rated so far: Ps(50) and its expanded uncertainty, W.
    pub rated_w: Option<(f64, f64)>,
    /// Whether it rests on one day, so that its ± says nothing of other days.
    pub is_of_one_day: bool,
}

/// The kind of run to plan where nobody says: that of all runs so far, else water.
pub fn usual_kind(campaign: &Campaign) -> RunKind {
    let mut kinds = campaign.runs.iter().map(|run| run.kind);
    let first = kinds.next().unwrap_or_default();
    match kinds.all(|kind| kind == first) {
        true => first,
        false => RunKind::default(),
    }
}

/// Plans a day for a kind of run; `rated` is what the campaign's logs say so far.
///
/// # Errors
/// [`Error::Usage`] for a date outside the years 1900 to 2200 or one that the clocks of the
/// site skipped; [`Error::Campaign`] for own limits between which nothing lies.
pub fn plan(
    campaign: Campaign,
    rated: Option<&Assessment>,
    date: Date,
    kind: RunKind,
) -> Result<Plan> {
    let refuse = |what: &str, hint: &str| {
        let problem = Problem::at(&campaign.file, format!("{date} {what}"));
        Error::Usage(problem.hint(hint).into())
    };
    if !YEARS.contains(&date.year()) {
        return Err(refuse(
            "is outside the years 1900 to 2200",
            "write the date as 2026-03-21",
        ));
    }
    let limits =
        Limits::of_campaign(&campaign).map_err(|problem| Error::Campaign(problem.into()))?;
    let needs = sun_needs(kind, &limits);
    let day = sun_day(&campaign.site, needs, date).ok_or_else(|| {
        refuse(
            "does not exist in the site's time zone",
            "choose another date",
        )
    })?;
    let zone = &campaign.site.time_zone;
    let interval_us = limits.interval().aim_us();
    let step_us = i64::from(step_min(kind, &limits)) * MINUTE_US;
    let usable = day.usable.as_ref().filter(|_| kind != RunKind::Cooling);
    let times_us = usable.map_or_else(Vec::new, |span| sheet_times(span, zone, step_us));
    let sky = LocalSky::over(&campaign.site);
    let half_angle = planned_half_angle(&campaign, rated);
    let aimings_us = half_angle
        .zip(usable)
        .map(|(half_angle, usable)| aiming_times(&sky, usable, half_angle.half_angle_deg));
    let load_kg = limits.load().value * campaign.cooker.intercept_area_m2;
    let start_k = limits.water_start_above_ambient_k();
    // Where the start is fixed, the expectation begins with water as warm as the air.
    let start_k = start_k.unwrap_or(0.0);
    let missing = match rated {
        Some(rated) => rated.s580.conformity.missing.clone(),
        None => Shortfall::new(&limits, 0, 0).describe(),
    };
    let of_water = rated.filter(|_| kind == RunKind::Water);
    let uncertainty = of_water.and_then(|rated| rated.s580.uncertainty());
    Ok(Plan {
        inputs: rated.map_or_else(|| inputs(&campaign, &[]), |rated| rated.tested.inputs()),
        is_rated: rated.is_some(),
        boiling_point_c: local_boiling_point_c(&campaign.site),
        most_intervals: day.usable.as_ref().map_or(0, |span| {
            ((span.to_us - span.from_us) / interval_us) as usize
        }),
        expected: of_water.and_then(|rated| expect(rated, load_kg, start_k, &times_us)),
        rated_w: uncertainty
            .map(|uncertainty| (uncertainty.budget.value, uncertainty.half_width_w())),
        is_of_one_day: uncertainty.is_some_and(|uncertainty| uncertainty.is_of_one_day()),
        date,
        kind,
        limits,
        day,
        load_kg,
        times_us,
        half_angle,
        aimings_us,
        missing,
        campaign,
    })
}

/// Times of the local clock within a span that steps from midnight of a length (µs) come to.
fn sheet_times(span: &TimeSpan, zone: &TimeZone, step_us: i64) -> Vec<i64> {
    let offset_us = zoned(span.from_us, zone).offset().seconds() as i64 * US;
    let (from_us, to_us) = (span.from_us + offset_us, span.to_us + offset_us);
    let midnight_us = from_us - from_us.rem_euclid(DAY_US);
    let first = -(midnight_us - from_us).div_euclid(step_us);
    let last = (to_us - midnight_us).div_euclid(step_us);
    let steps = first..=last;
    let at = |step: i64| midnight_us + step * step_us - offset_us;
    steps.map(at).collect()
}

impl Plan {
    /// Intervals that one heating of the load gives, as far as it is known.
    pub fn intervals_a_heating(&self) -> Option<usize> {
        let stop_c = self.stop_c();
        let moments = &self.expected.as_ref()?.moments;
        let within = moments.iter().take_while(|moment| moment.water_c <= stop_c);
        Some(within.count().saturating_sub(1))
    }

    /// Whether there is a field sheet: some time of the day will do.
    pub fn has_sheet(&self) -> bool {
        self.kind == RunKind::Cooling || !self.times_us.is_empty()
    }

    /// Water temperature at which a run ends, °C.
    pub fn stop_c(&self) -> f64 {
        self.limits.water_stop_c(self.boiling_point_c)
    }

    /// Water temperature, °C, from which a run counts, with air of a temperature, °C.
    pub fn start_c(&self, ambient_c: f64) -> f64 {
        self.limits.water_start_c(ambient_c)
    }
}
