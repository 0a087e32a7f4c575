//! The uncertainty of the rating as data, for `rating.json`.

use serde::Serialize;

use crate::campaign::classes::Shape;
use crate::campaign::model::Uncertainty;
use crate::procedure::Assessment;
use crate::procedure::uncertainty::budget::{Contribution, Origin};
use crate::procedure::uncertainty::days::DayEffect;
use crate::procedure::uncertainty::outlook::Outlook;
use crate::procedure::uncertainty::trials::{MonteCarlo, SEED};
use crate::procedure::uncertainty::{RatingUncertainty, sources};
use crate::units::rfc3339;

#[derive(Debug, Serialize)]
pub struct UncertaintyEntry {
    ps50_combined_standard_uncertainty_w: f64,
    ps50_expanded_uncertainty_w: f64,
    /// Ps(50) less and plus the expanded uncertainty.
    ps50_interval_95_w: [f64; 2],
    effective_degrees_of_freedom: f64,
    coverage_factor: f64,
    /// Of scatter and days, with their degrees of freedom.
    independent_standard_uncertainty_w: f64,
    independent_degrees_of_freedom: f64,
    /// Of what all intervals share.
    common_standard_uncertainty_w: f64,
    contributions: Vec<ContributionEntry>,
    /// Part of the scatter already: of one interval.
    reading_resolution_w: Option<f64>,
    reading_moment_w: f64,
    /// Instruments whose uncertainty the campaign file does not state.
    not_stated: Vec<String>,
    days: DaysEntry,
    monte_carlo: Option<MonteCarloEntry>,
    influential: Vec<InfluentialEntry>,
    target: Option<TargetEntry>,
}

#[derive(Debug, Serialize)]
struct ContributionEntry {
    source: String,
    evaluation: char,
    /// `independent` from interval to interval or day to day, or `common` to all.
    part: &'static str,
    /// `stated`, `class`, `assumed`, `known` or `statistics`.
    origin: &'static str,
    class: Option<&'static str>,
    distribution: &'static str,
    relative_uncertainty: Option<f64>,
    uncertainty_k: Option<f64>,
    /// W per unit of a fraction, or W/K, of a reading too high.
    sensitivity: Option<f64>,
    ps50_standard_uncertainty_w: f64,
    share_of_variance: f64,
}

#[derive(Debug, Serialize)]
struct DaysEntry {
    days: usize,
    f: Option<f64>,
    degrees_of_freedom: Option<[usize; 2]>,
    p: Option<f64>,
    within_day_sd_w: Option<f64>,
    between_day_sd_w: Option<f64>,
    durbin_watson: Option<f64>,
    durbin_watson_p: Option<f64>,
    /// What is taken as independent: `intervals` or `days`.
    independent: &'static str,
}

#[derive(Debug, Serialize)]
struct MonteCarloEntry {
    seed: u64,
    trials: usize,
    stable: bool,
    mean_w: Option<f64>,
    standard_deviation_w: Option<f64>,
    interval_95_w: [f64; 2],
    tolerance_w: f64,
    apart_w: f64,
    agrees: bool,
}

#[derive(Debug, Serialize)]
struct InfluentialEntry {
    run: String,
    start: String,
    cooks_distance: f64,
    ps50_without_w: f64,
}

#[derive(Debug, Serialize)]
struct TargetEntry {
    expanded_uncertainty_w: f64,
    /// `reached`, `more`, `out-of-reach` or `too-far`.
    outlook: &'static str,
    more_intervals: Option<usize>,
    more_days: Option<usize>,
    instruments_leave_w: Option<f64>,
}

/// The uncertainty of a campaign's rating.
pub fn uncertainty_entry(assessment: &Assessment) -> Option<UncertaintyEntry> {
    let sure = assessment.uncertainty.as_ref()?;
    let budget = &sure.budget;
    let expanded_w = budget.expanded_w();
    Some(UncertaintyEntry {
        ps50_combined_standard_uncertainty_w: budget.combined_w,
        ps50_expanded_uncertainty_w: expanded_w,
        ps50_interval_95_w: [budget.power_w - expanded_w, budget.power_w + expanded_w],
        effective_degrees_of_freedom: budget.effective_freedom,
        coverage_factor: budget.coverage_factor,
        independent_standard_uncertainty_w: budget.statistical_w,
        independent_degrees_of_freedom: budget.statistical_freedom,
        common_standard_uncertainty_w: budget.common_w,
        contributions: budget
            .contributions
            .iter()
            .map(|part| contribution_entry(sure, part))
            .collect(),
        reading_resolution_w: sure.of_line.reading.resolution_w,
        reading_moment_w: sure.of_line.reading.clock_w,
        not_stated: sure
            .not_stated()
            .into_iter()
            .map(|source| source.name().to_string())
            .collect(),
        days: days_entry(&sure.of_line.days),
        monte_carlo: sure.monte_carlo.as_ref().map(monte_carlo_entry),
        influential: influential_entries(assessment, sure),
        target: sure.target.map(target_entry),
    })
}

fn contribution_entry(sure: &RatingUncertainty, part: &Contribution) -> ContributionEntry {
    let entry = ContributionEntry {
        source: String::new(),
        evaluation: part.evaluation(),
        part: "independent",
        origin: "statistics",
        class: None,
        distribution: "t",
        relative_uncertainty: None,
        uncertainty_k: None,
        sensitivity: None,
        ps50_standard_uncertainty_w: part.effect_w.abs(),
        share_of_variance: part.share,
    };
    match &part.origin {
        Origin::Scatter => ContributionEntry {
            source: "scatter about the line".to_owned(),
            ..entry
        },
        Origin::ReadingNoise => ContributionEntry {
            source: "reading of the water temperature".to_owned(),
            origin: "known",
            distribution: "normal",
            ..entry
        },
        Origin::Days => ContributionEntry {
            source: "day-to-day spread".to_owned(),
            ..entry
        },
        Origin::Common(error) => {
            let (origin, class) = match error.origin {
                sources::Origin::Stated => ("stated", None),
                sources::Origin::Class(class) => ("class", Some(class.word)),
                sources::Origin::Assumed(class) => ("assumed", Some(class.word)),
                sources::Origin::Known(_) => ("known", None),
            };
            let (relative_uncertainty, uncertainty_k) = match error.standard {
                Uncertainty::Relative(fraction) => (Some(fraction), None),
                Uncertainty::Kelvin(kelvin) => (None, Some(kelvin)),
                Uncertainty::MetresPerSecond(_) | Uncertainty::Seconds(_) => (None, None),
            };
            ContributionEntry {
                source: error.source.name().to_string(),
                part: "common",
                origin,
                class,
                distribution: match error.shape {
                    Shape::Normal => "normal",
                    Shape::Rectangular => "rectangular",
                },
                relative_uncertainty,
                uncertainty_k,
                sensitivity: Some(error.sensitivity_w(&sure.of_line.line, sure.budget.at_k)),
                ..entry
            }
        }
    }
}

fn days_entry(days: &DayEffect) -> DaysEntry {
    DaysEntry {
        days: days.days.len(),
        f: days.test.map(|test| test.statistic),
        degrees_of_freedom: days
            .test
            .map(|test| [test.numerator_freedom, test.denominator_freedom]),
        p: days.test.map(|test| test.p),
        within_day_sd_w: days.within_sd_w,
        between_day_sd_w: days.between_sd_w,
        durbin_watson: days.neighbours.map(|neighbours| neighbours.statistic),
        durbin_watson_p: days.neighbours.map(|neighbours| neighbours.p),
        independent: if days.is_honoured() {
            "days"
        } else {
            "intervals"
        },
    }
}

fn monte_carlo_entry(drawn: &MonteCarlo) -> MonteCarloEntry {
    MonteCarloEntry {
        seed: SEED,
        trials: drawn.outcome.trials,
        stable: drawn.outcome.is_stable,
        mean_w: drawn.sd_w.map(|_| drawn.outcome.mean),
        standard_deviation_w: drawn.sd_w,
        interval_95_w: [drawn.outcome.lower, drawn.outcome.upper],
        tolerance_w: drawn.tolerance_w,
        apart_w: drawn.apart_w,
        agrees: drawn.agrees(),
    }
}

fn influential_entries(assessment: &Assessment, sure: &RatingUncertainty) -> Vec<InfluentialEntry> {
    let entries = sure.influential.iter().map(|influential| {
        let interval = &assessment.intervals[influential.interval];
        InfluentialEntry {
            run: assessment.runs[interval.run].plan.label.clone(),
            start: rfc3339(interval.start_us, &assessment.campaign.site.time_zone),
            cooks_distance: influential.cooks_distance,
            ps50_without_w: influential.ps50_without_w,
        }
    });
    entries.collect()
}

fn target_entry((target_w, outlook): (f64, Outlook)) -> TargetEntry {
    let entry = TargetEntry {
        expanded_uncertainty_w: target_w,
        outlook: "reached",
        more_intervals: None,
        more_days: None,
        instruments_leave_w: None,
    };
    match outlook {
        Outlook::Reached => entry,
        Outlook::More { intervals, days } => TargetEntry {
            outlook: "more",
            more_intervals: Some(intervals),
            more_days: Some(days),
            ..entry
        },
        Outlook::OutOfReach { least_w } => TargetEntry {
            outlook: "out-of-reach",
            instruments_leave_w: Some(least_w),
            ..entry
        },
        Outlook::TooFar => TargetEntry {
            outlook: "too-far",
            ..entry
        },
    }
}
