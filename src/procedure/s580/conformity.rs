//! Whether the rating conforms to the practice, and what would mend it.

use std::cmp::Reverse;

use super::finding::{FindingCode, S580Finding};
use super::in_force::Limits;
use super::intervals::{Interval, Measured};
use super::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use super::own_limits::own_limit_findings;
use super::rated::{Rated, Rating};
use super::reason::Reason;
use super::screen::Screening;
use super::shortfall::Shortfall;
use crate::campaign::model::Plane;
use crate::language::{
    Message, fixed, kelvins, kilograms, kilograms_per_square_metre, listed, short, within_brackets,
};
use crate::message;
use crate::procedure::finding::{Level, level_of};
use crate::procedure::limit::{SLACK, percent};
use crate::procedure::run::Run;
use crate::procedure::sources::{common_errors, irradiance_fraction};
use crate::procedure::tested::Tested;
use crate::units::told_below;

/// Scatter of a line, as a fraction of its rating, under which a low R² is that of a flat line
/// and not of scattered points. Common practice, no published source.
const FLAT_LINE_SCATTER: f64 = 0.05;

/// The level with all that led to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Conformity {
    pub level: Level,
    pub findings: Vec<S580Finding>,
    /// Intervals and days still missing: "9 more intervals and 1 more day".
    pub missing: Option<Message>,
}

impl Conformity {
    /// The findings by what they allow, the gravest first.
    pub fn gravest_first(&self) -> Vec<&S580Finding> {
        let mut sorted: Vec<&S580Finding> = self.findings.iter().collect();
        sorted.sort_by_key(|finding| (Reverse(finding.level), finding.code.place()));
        sorted
    }
}

/// Weighs a campaign against the practice; `screenings` are those of its runs, and `days` its
/// local dates with intervals on the line.
pub fn judge(
    tested: &Tested,
    limits: &Limits,
    intervals: &[Interval],
    screenings: &[Screening],
    days: usize,
    rated: Option<&Rated>,
) -> Conformity {
    if tested.heats_no_water() {
        return without_water();
    }
    let on_line = screenings.iter().map(|screening| screening.on_line).sum();
    let short_of = Shortfall::new(limits, on_line, days);
    let mut findings = short_of.findings();
    let lacks = match (tested.has_irradiance(), intervals.is_empty()) {
        (false, _) => Lacks::Irradiance,
        (true, true) => Lacks::Intervals,
        (true, false) => Lacks::UsedIntervals,
    };
    findings.extend(line_findings(limits, rated, lacks));
    findings.extend(load_finding(limits, &tested.runs, screenings));
    findings.extend(measurement_findings(tested, screenings));
    let gain = gain_finding(tested, intervals);
    // Heat that no interval can have taken up says the same, and from the readings themselves.
    let is_told = gain
        .as_ref()
        .is_some_and(|found| found.level == Level::NotValid);
    findings.extend(gain);
    if !is_told {
        findings.extend(rated.and_then(|rated| beyond_sunlight(tested, &rated.rating)));
    }
    findings.extend(own_limit_findings(
        limits,
        intervals,
        tested.boiling_point_c,
    ));
    findings.extend(exclusion_finding(intervals));
    Conformity {
        level: level_of(&findings),
        findings,
        missing: short_of.describe(),
    }
}

/// A campaign whose runs heat no water: there is nothing to weigh.
fn without_water() -> Conformity {
    Conformity {
        level: Level::NoRating,
        findings: vec![S580Finding::of(
            Level::NoRating,
            FindingCode::NoRating,
            message!("finding-no-water"),
            message!("finding-no-water-remedy"),
        )],
        missing: None,
    }
}

/// What a line lacks that cannot be drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Lacks {
    Irradiance,
    /// The readings make none.
    Intervals,
    UsedIntervals,
}

fn line_findings(limits: &Limits, rated: Option<&Rated>, lacks: Lacks) -> Vec<S580Finding> {
    let Some(rated @ Rated { line, rating, .. }) = rated else {
        return vec![S580Finding::of(
            Level::NoRating,
            FindingCode::NoRating,
            message!("finding-no-rating"),
            match lacks {
                Lacks::Irradiance => message!("finding-no-rating-remedy-irradiance"),
                Lacks::UsedIntervals => message!("finding-no-rating-remedy"),
                Lacks::Intervals => {
                    let (shortest_min, longest_min) = limits.interval().ends_min();
                    message!(
                        "finding-no-rating-remedy-intervals",
                        shortest = short(shortest_min),
                        longest = short(longest_min)
                    )
                }
            },
        )];
    };
    let mut findings = Vec::new();
    findings.extend(r_squared_finding(limits, rated));
    if line.slope >= 0.0 {
        findings.push(S580Finding::indicative(
            FindingCode::LineNotFalling,
            message!("finding-line-not-falling"),
            message!("finding-line-not-falling-remedy"),
        ));
    }
    let rating_k = || kelvins(short(RATING_DIFFERENCE_K));
    if rating.ps50_w <= 0.0 {
        findings.push(S580Finding::indicative(
            FindingCode::NoUsefulHeat,
            message!(
                "finding-no-useful-heat",
                power = fixed(rating.ps50_w, 0),
                difference = rating_k()
            ),
            message!("finding-no-useful-heat-remedy"),
        ));
    }
    if rating.is_extrapolated {
        let (lowest_k, highest_k) = line.x_range;
        let observed = message!(
            "ends-of-range",
            low = fixed(lowest_k, 1),
            high = fixed(highest_k, 1)
        );
        findings.push(S580Finding::note(
            FindingCode::Extrapolated,
            message!(
                "finding-extrapolated",
                difference = rating_k(),
                observed = kelvins(observed.into())
            ),
            message!("finding-extrapolated-remedy", difference = rating_k()),
        ));
    }
    findings
}

/// Lowest R² of the practice, below which a well fitted line is a flat one.
const PRACTICE_R_SQUARED: f64 = 0.75;

fn r_squared_finding(limits: &Limits, rated: &Rated) -> Option<S580Finding> {
    let Rated {
        line,
        rating,
        uncertainty,
    } = rated;
    let least = limits.r_squared();
    if line.r_squared.is_some_and(|found| least.allows(found)) {
        return None;
    }
    let found = line.r_squared.map(|found| {
        let (found, decimals) = told_below(found, least.value, 2);
        fixed(found, decimals)
    });
    // R² that the practice would do with is low for another reason: the limit is the tester's.
    let is_low = line
        .r_squared
        .is_none_or(|found| found < PRACTICE_R_SQUARED);
    let is_flat =
        is_low && line.slope < 0.0 && line.residual_sd < FLAT_LINE_SCATTER * rating.ps50_w;
    let said = if least.changed {
        message!("finding-r-squared-low-own")
    } else {
        message!("finding-r-squared-low")
    };
    let found = found.unwrap_or_else(|| message!("undefined").into());
    Some(S580Finding::indicative(
        FindingCode::RSquaredLow,
        said.with("r_squared", found)
            .with("least", short(least.value)),
        if is_flat {
            message!("finding-r-squared-low-remedy-flat")
        } else if uncertainty.step_is_most_of_intervals() {
            message!("finding-r-squared-low-remedy-resolution")
        } else {
            message!("finding-r-squared-low-remedy")
        },
    ))
}

fn load_finding(limits: &Limits, runs: &[Run], screenings: &[Screening]) -> Option<S580Finding> {
    let load = limits.load();
    let contributing = runs.iter().zip(screenings);
    let contributing = contributing.filter(|(_, screening)| screening.on_line > 0);
    let off: Vec<Message> = contributing
        .filter(|(run, _)| {
            let band = limits.guard_band(load.key, run.load_kg_m2);
            !load.allows_all_of(run.load_kg_m2, band)
        })
        .map(|(run, _)| {
            message!(
                "finding-load-off-run",
                run = &run.plan.label,
                load = within_brackets(kilograms_per_square_metre(fixed(run.load_kg_m2, 2)))
            )
        })
        .collect();
    (!off.is_empty()).then(|| {
        S580Finding::indicative(
            FindingCode::LoadOff,
            message!(
                "finding-load-off",
                tolerance = percent(limits.load_tolerance()),
                load = kilograms_per_square_metre(short(load.value)),
                runs = listed(off)
            ),
            message!(
                "finding-load-off-remedy",
                load = kilograms(short(load.value))
            ),
        )
    })
}

/// Runs that count for what was measured: those with intervals that break no limit, else all.
fn contributing<'r>(runs: &'r [Run], screenings: &[Screening]) -> Vec<&'r Run> {
    let within = runs.iter().zip(screenings);
    let within = within.filter(|(_, screening)| screening.on_line + screening.not_normalised > 0);
    let within: Vec<&Run> = within.map(|(run, _)| run).collect();
    if within.is_empty() {
        runs.iter().collect()
    } else {
        within
    }
}

fn measurement_findings(tested: &Tested, screenings: &[Screening]) -> Vec<S580Finding> {
    let instruments = &tested.campaign.instruments;
    let runs = contributing(&tested.runs, screenings);
    let without = |lacks: fn(&Run) -> bool| -> Vec<String> {
        let lacking = runs.iter().filter(|run| lacks(run));
        lacking.map(|run| run.plan.label.clone()).collect()
    };
    let mut findings = Vec::new();
    let windless = without(|run| run.readings.wind_m_s.is_none());
    if !windless.is_empty() {
        findings.push(S580Finding::indicative(
            FindingCode::WindNotMeasured,
            message!("finding-wind-not-measured", runs = listed(windless)),
            message!("finding-wind-not-measured-remedy"),
        ));
    }
    let by_eye = without(|run| run.estimates_wind);
    if !by_eye.is_empty() {
        findings.push(S580Finding::indicative(
            FindingCode::WindEstimated,
            message!("finding-wind-estimated", runs = listed(by_eye)),
            message!("finding-wind-not-measured-remedy"),
        ));
    }
    if let Some(way) = instruments.irradiance_estimate {
        findings.push(S580Finding::indicative(
            FindingCode::IrradianceEstimated,
            message!("finding-irradiance-estimated", way = way.describe()),
            message!("finding-irradiance-estimated-remedy"),
        ));
        return findings;
    }
    let sunless = without(|run| run.readings.irradiance_w_m2.is_none());
    if !sunless.is_empty() {
        findings.push(S580Finding::indicative(
            FindingCode::IrradianceNotNormal,
            message!("finding-irradiance-missing", runs = listed(sunless)),
            message!("finding-irradiance-missing-remedy"),
        ));
    } else if instruments.irradiance_plane == Some(Plane::Horizontal) {
        findings.push(S580Finding::indicative(
            FindingCode::IrradianceNotNormal,
            message!("finding-irradiance-horizontal"),
            message!("finding-irradiance-horizontal-remedy"),
        ));
    }
    if instruments.irradiance_plane.is_none() && tested.has_irradiance() {
        findings.push(S580Finding::indicative(
            FindingCode::IrradiancePlaneNotStated,
            message!("finding-irradiance-plane-not-stated"),
            message!("finding-irradiance-plane-not-stated-remedy"),
        ));
    }
    findings
}

/// How many times its standard uncertainty an estimate of irradiance may be off.
///
/// # Source
/// JCGM 100:2008, G.6.6: k = 2 for about 95 %.
const ESTIMATE_COVERAGE: f64 = 2.0;

/// How much more than all sunlight a cooker may seem to take up.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Allowance {
    /// Nothing: the sensor faced the sun.
    Measured,
    /// This fraction, by which an estimate in the plane normal to the beam may be off.
    Estimated(f64),
    /// Any: irradiance is in another plane, or nobody states in which.
    Open,
}

impl Allowance {
    fn of(tested: &Tested) -> Self {
        let campaign = &tested.campaign;
        let plane = campaign.instruments.irradiance_plane;
        // A sensor that lies flat is turned to the sun where irradiance is estimated.
        match campaign.instruments.irradiance_estimate {
            None if plane == Some(Plane::Normal) => Allowance::Measured,
            None => Allowance::Open,
            Some(_) => {
                let errors = common_errors(&campaign.instruments, &campaign.name);
                Allowance::Estimated(ESTIMATE_COVERAGE * irradiance_fraction(&errors))
            }
        }
    }

    /// Whether a share of the sunlight is more than can be.
    fn is_exceeded_by(self, share: f64) -> bool {
        match self {
            Allowance::Measured => share > 1.0,
            Allowance::Estimated(off) => share > 1.0 + off,
            Allowance::Open => false,
        }
    }
}

/// More power than the sunlight that the irradiance accounts for. It is impossible where the
/// sensor faced the sun and the colder half of the used intervals, which lose least, gained more
/// on average, so that one reading is not to blame; and where irradiance in that plane is
/// estimated and they gained more than the estimate may be off. Else something is amiss that may
/// lie in the irradiance.
fn gain_finding(tested: &Tested, intervals: &[Interval]) -> Option<S580Finding> {
    let area_m2 = tested.campaign.cooker.intercept_area_m2;
    let intercepted_w = |interval: &Measured| Some(area_m2 * interval.irradiance?.mean);
    let used: Vec<&Measured> = intervals
        .iter()
        .filter(|interval| interval.is_on_line())
        .map(|interval| &interval.measured)
        .collect();
    let beyond: Vec<&Measured> = used
        .iter()
        .copied()
        .filter(|interval| {
            intercepted_w(interval).is_some_and(|sun_w| interval.cooking_power_w > sun_w + SLACK)
        })
        .collect();
    let first = beyond.first()?;
    let (power, sunlight) = (
        fixed(first.cooking_power_w, 0),
        fixed(intercepted_w(first)?, 0),
    );
    let share = share_of_colder_half(used, |interval| {
        Some(interval.cooking_power_w / intercepted_w(interval)?)
    })?;
    let allowance = Allowance::of(tested);
    let is_impossible = allowance.is_exceeded_by(share);
    let said = match allowance {
        Allowance::Estimated(off) if is_impossible => {
            message!(
                "finding-impossible-gain-estimated",
                percent = fixed(100.0 * off, 0)
            )
        }
        _ if is_impossible => message!("finding-impossible-gain"),
        _ => message!("finding-gain-beyond"),
    };
    let level = if is_impossible {
        Level::NotValid
    } else {
        Level::Indicative
    };
    // Whoever measured facing the sun is not told to, nor whom a sensor would not have helped.
    let remedy = if is_impossible || allowance == Allowance::Measured {
        message!("finding-impossible-gain-remedy")
    } else {
        message!("finding-gain-beyond-remedy")
    };
    let said = said
        .with("intervals", beyond.len())
        .with("power", power)
        .with("sunlight", sunlight);
    Some(S580Finding::of(
        level,
        FindingCode::ImpossibleGain,
        said,
        remedy,
    ))
}

/// A rating above the sunlight that falls on the intercept area at the irradiance for which it is
/// stated, by more than an estimate of irradiance may be off. No single interval need be
/// impossible: a line that is read far beyond its points gives such a number, and so does a slip
/// that makes hot water look cold.
fn beyond_sunlight(tested: &Tested, rating: &Rating) -> Option<S580Finding> {
    let sunlight_w = tested.campaign.cooker.intercept_area_m2 * STANDARD_IRRADIANCE_W_M2;
    let allowance = Allowance::of(tested);
    if !allowance.is_exceeded_by(rating.ps50_w / sunlight_w) {
        return None;
    }
    let said = match allowance {
        Allowance::Estimated(off) => message!(
            "finding-impossible-rating-estimated",
            percent = fixed(100.0 * off, 0)
        ),
        Allowance::Measured | Allowance::Open => message!("finding-impossible-rating"),
    };
    Some(S580Finding::of(
        Level::NotValid,
        FindingCode::ImpossibleRating,
        said.with("power", fixed(rating.ps50_w, 0))
            .with("sunlight", fixed(sunlight_w, 0))
            .with("irradiance", short(STANDARD_IRRADIANCE_W_M2)),
        message!("finding-impossible-rating-remedy"),
    ))
}

/// Mean of a share over the half of intervals that is coldest above the air.
fn share_of_colder_half(
    mut intervals: Vec<&Measured>,
    share: impl Fn(&Measured) -> Option<f64>,
) -> Option<f64> {
    let warmth_k = |interval: &Measured| interval.difference_k.unwrap_or(f64::INFINITY);
    intervals.sort_by(|one, other| warmth_k(one).total_cmp(&warmth_k(other)));
    intervals.truncate(intervals.len().div_ceil(2));
    let shares: Vec<f64> = intervals.into_iter().filter_map(share).collect();
    (!shares.is_empty()).then(|| shares.iter().sum::<f64>() / shares.len() as f64)
}

fn exclusion_finding(intervals: &[Interval]) -> Option<S580Finding> {
    let excluded = intervals
        .iter()
        .filter(|interval| interval.reasons().contains(&Reason::ExcludedByTester))
        .count();
    (excluded > 0).then(|| {
        S580Finding::note(
            FindingCode::ExcludedByTester,
            message!("finding-excluded-by-tester", intervals = excluded),
            message!("finding-excluded-by-tester-remedy"),
        )
    })
}
