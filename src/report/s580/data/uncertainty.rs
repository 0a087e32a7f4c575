//! The uncertainty of the rating as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::campaign::classes::Spread;
use crate::campaign::standard_uncertainty::Uncertainty;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::procedure::s580::uncertainty::outlook::Outlook;
use crate::procedure::sources::{Basis, CommonError};
use crate::procedure::uncertainty::budget::{Contribution, Origin};
use crate::procedure::uncertainty::trials::{MonteCarlo, SEED};
use crate::units::rfc3339;

/// How sure Ps(50) is, instruments and days included, by JCGM 100.
#[derive(Debug, Serialize, JsonSchema)]
pub struct UncertaintyEntry {
    /// Combined standard uncertainty (k = 1), W.
    ps50_combined_standard_uncertainty_w: f64,
    /// Expanded uncertainty for 95 %: coverage factor times combined uncertainty, W.
    ps50_expanded_uncertainty_w: f64,
    /// Ps(50) less and plus the expanded uncertainty, W.
    ps50_interval_95_w: [f64; 2],
    /// What the report prints, W: the interval above, and where the draws disagree with it the
    /// wider end of both.
    printed_interval_95_w: [f64; 2],
    /// Those for which Student's t is the coverage factor.
    effective_degrees_of_freedom: f64,
    /// Expanded over combined uncertainty.
    coverage_factor: f64,
    /// Of scatter and days (k = 1), W.
    independent_standard_uncertainty_w: f64,
    /// Of scatter and days.
    independent_degrees_of_freedom: f64,
    /// Of what all intervals share (k = 1), W.
    common_standard_uncertainty_w: f64,
    /// The budget, a line a source.
    contributions: Vec<ContributionEntry>,
    /// What the thermometer's resolution adds to the scatter of one interval, W; it is part
    /// of the scatter already. Null where the resolution is not stated.
    reading_resolution_w: Option<f64>,
    /// What the moment of reading adds to the scatter of one interval, W; likewise.
    reading_moment_w: f64,
    /// Instruments whose uncertainty the campaign file does not state.
    not_stated: Vec<String>,
    days: DaysEntry,
    /// The check by drawing; null where it was not made.
    monte_carlo: Option<MonteCarloEntry>,
    /// Intervals that move the rating most.
    influential: Vec<InfluentialEntry>,
    /// Null where the campaign aims at no uncertainty.
    target: Option<TargetEntry>,
}

/// One line of the budget.
#[derive(Debug, Serialize, JsonSchema)]
struct ContributionEntry {
    /// In words.
    source: String,
    /// `A` by statistics, `B` by other means.
    evaluation: char,
    /// `independent` from interval to interval or day to day, or `common` to all.
    part: &'static str,
    /// `stated`, `class`, `assumed`, `known` or `statistics`.
    origin: &'static str,
    /// Class of the instrument by the campaign file's word.
    class: Option<&'static str>,
    /// `normal`, `rectangular` or `t`.
    distribution: &'static str,
    /// Standard uncertainty of the reading as a fraction.
    relative_uncertainty: Option<f64>,
    /// Standard uncertainty of the reading, K.
    uncertainty_k: Option<f64>,
    /// W per unit of a fraction, or W/K, of a reading too high.
    sensitivity: Option<f64>,
    /// Standard uncertainty of Ps(50) from it, W.
    ps50_standard_uncertainty_w: f64,
    /// Part of the variance, 0 to 1.
    share_of_variance: f64,
}

/// Whether days differ by more than intervals scatter. Null where there are too few.
#[derive(Debug, Serialize, JsonSchema)]
struct DaysEntry {
    /// Number of days with used intervals.
    days: usize,
    /// F statistic of the days.
    f: Option<f64>,
    /// Of the numerator and of the denominator.
    degrees_of_freedom: Option<[usize; 2]>,
    /// Probability of so large an F where days do not differ.
    p: Option<f64>,
    /// Standard deviation within a day, W.
    within_day_sd_w: Option<f64>,
    /// Standard deviation from day to day, W.
    between_day_sd_w: Option<f64>,
    /// Statistic of neighbours that are alike.
    durbin_watson: Option<f64>,
    /// Probability of so small a statistic where neighbours are not alike.
    durbin_watson_p: Option<f64>,
    /// Probability of a statistic so far from 2, to either side, where neighbours have nothing
    /// to do with each other.
    durbin_watson_two_sided_p: Option<f64>,
    /// What is taken as independent: `intervals` or `days`.
    independent: &'static str,
}

/// The budget's interval held against draws of every error, by JCGM 101.
#[derive(Debug, Serialize, JsonSchema)]
struct MonteCarloEntry {
    /// Of the random numbers.
    seed: u64,
    /// Number of draws.
    trials: usize,
    /// Both ends of the interval are known as closely as was asked for.
    stable: bool,
    /// Of the draws of Ps(50), W; null where they have no standard deviation.
    mean_w: Option<f64>,
    /// Of the draws, W; null where Student's t has none.
    standard_deviation_w: Option<f64>,
    /// Ends of the interval that holds 95 % of the draws, W.
    interval_95_w: [f64; 2],
    /// Largest difference of the ends of both intervals that is none, W.
    tolerance_w: f64,
    /// Larger of the differences of the lower and of the upper ends, W.
    apart_w: f64,
    /// Whether the budget's interval is that of the draws.
    agrees: bool,
}

/// An interval that moves the rating more than others.
#[derive(Debug, Serialize, JsonSchema)]
struct InfluentialEntry {
    /// The run's name, as in `runs[].name`.
    run: String,
    /// Local time of the interval's start with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    start: String,
    /// Cook's distance: how far the line moves without it, over how sure the line is.
    cooks_distance: f64,
    /// Ps(50) without the interval, W.
    ps50_without_w: f64,
}

/// How far it is to the uncertainty that the campaign aims at.
#[derive(Debug, Serialize, JsonSchema)]
struct TargetEntry {
    /// Expanded uncertainty aimed at, W.
    expanded_uncertainty_w: f64,
    /// `reached`, `more`, `out-of-reach` or `too-far`.
    outlook: &'static str,
    /// Used intervals still needed.
    more_intervals: Option<usize>,
    /// Days still needed.
    more_days: Option<usize>,
    /// Least expanded uncertainty that the instruments leave, W.
    instruments_leave_w: Option<f64>,
}

/// The uncertainty of a campaign's rating.
pub fn uncertainty_entry(assessment: &Assessment) -> Option<UncertaintyEntry> {
    let uncertainty = assessment.s580.uncertainty()?;
    let budget = &uncertainty.budget;
    let expanded_w = budget.expanded;
    Some(UncertaintyEntry {
        ps50_combined_standard_uncertainty_w: budget.combined,
        ps50_expanded_uncertainty_w: expanded_w,
        ps50_interval_95_w: [budget.value - expanded_w, budget.value + expanded_w],
        printed_interval_95_w: [uncertainty.interval_w.lower, uncertainty.interval_w.upper],
        effective_degrees_of_freedom: budget.effective_freedom(),
        coverage_factor: budget.coverage_factor(),
        independent_standard_uncertainty_w: budget.statistical,
        independent_degrees_of_freedom: budget.statistical_freedom,
        common_standard_uncertainty_w: budget.common,
        contributions: budget
            .contributions
            .iter()
            .map(|part| contribution_entry(uncertainty, part))
            .collect(),
        reading_resolution_w: uncertainty.of_line.reading.resolution_w,
        reading_moment_w: uncertainty.of_line.reading.clock_w,
        not_stated: uncertainty
            .not_stated()
            .into_iter()
            .map(|source| source.quantity().to_string())
            .collect(),
        days: days_entry(uncertainty),
        monte_carlo: uncertainty.monte_carlo.as_ref().map(monte_carlo_entry),
        influential: influential_entries(assessment, uncertainty),
        target: uncertainty.target.map(target_entry),
    })
}

fn contribution_entry(uncertainty: &RatingUncertainty, part: &Contribution) -> ContributionEntry {
    match &part.origin {
        Origin::Scatter => independent_entry(part, "scatter about the line", "statistics", "t"),
        Origin::ReadingNoise => {
            let source = "reading of the water temperature";
            independent_entry(part, source, "known", "normal")
        }
        Origin::Days => independent_entry(part, "intervals and days", "statistics", "t"),
        Origin::Common(error) => common_entry(uncertainty, part, error),
    }
}

fn independent_entry(
    part: &Contribution,
    source: &str,
    origin: &'static str,
    distribution: &'static str,
) -> ContributionEntry {
    ContributionEntry {
        source: source.to_owned(),
        evaluation: part.evaluation(),
        part: "independent",
        origin,
        class: None,
        distribution,
        relative_uncertainty: None,
        uncertainty_k: None,
        sensitivity: None,
        ps50_standard_uncertainty_w: part.effect.abs(),
        share_of_variance: part.share_of_variance,
    }
}

fn common_entry(
    uncertainty: &RatingUncertainty,
    part: &Contribution,
    error: &CommonError,
) -> ContributionEntry {
    let (origin, class) = match error.basis {
        Basis::Stated => ("stated", None),
        Basis::Class(class) => ("class", Some(class.word)),
        Basis::Assumed(class) => ("assumed", Some(class.word)),
        Basis::Known(_) => ("known", None),
    };
    let (relative_uncertainty, uncertainty_k) = match error.standard {
        Uncertainty::Relative(fraction) => (Some(fraction), None),
        Uncertainty::Kelvin(kelvin) => (None, Some(kelvin)),
        Uncertainty::MetresPerSecond(_) | Uncertainty::Seconds(_) => (None, None),
    };
    ContributionEntry {
        source: error.source.name().to_string(),
        evaluation: part.evaluation(),
        part: "common",
        origin,
        class,
        distribution: match error.spread {
            Spread::Normal => "normal",
            Spread::Rectangular => "rectangular",
        },
        relative_uncertainty,
        uncertainty_k,
        sensitivity: uncertainty.sensitivity_w(error),
        ps50_standard_uncertainty_w: part.effect.abs(),
        share_of_variance: part.share_of_variance,
    }
}

fn days_entry(uncertainty: &RatingUncertainty) -> DaysEntry {
    let days = &uncertainty.of_line.days;
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
        durbin_watson_two_sided_p: days.neighbours.map(|found| found.two_sided_p()),
        independent: match uncertainty.counts_days() {
            true => "days",
            false => "intervals",
        },
    }
}

fn monte_carlo_entry(drawn: &MonteCarlo) -> MonteCarloEntry {
    MonteCarloEntry {
        seed: SEED,
        trials: drawn.outcome.trials,
        stable: drawn.outcome.is_stable,
        mean_w: drawn.sd.map(|_| drawn.outcome.mean),
        standard_deviation_w: drawn.sd,
        interval_95_w: [drawn.outcome.lower, drawn.outcome.upper],
        tolerance_w: drawn.tolerance,
        apart_w: drawn.apart,
        agrees: drawn.agrees(),
    }
}

fn influential_entries(
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
) -> Vec<InfluentialEntry> {
    let entries = uncertainty.influential.iter().map(|influential| {
        let interval = &assessment.s580.intervals[influential.interval];
        InfluentialEntry {
            run: assessment.tested.runs[interval.run].plan.label.clone(),
            start: rfc3339(
                interval.measured.span.from_us,
                &assessment.tested.campaign.site.time_zone,
            ),
            cooks_distance: influential.cooks_distance,
            ps50_without_w: influential.ps50_without_w,
        }
    });
    entries.collect()
}

fn target_entry((target_w, outlook): (f64, Outlook)) -> TargetEntry {
    let (more_intervals, more_days) = match outlook {
        Outlook::More { intervals, days } => (Some(intervals), Some(days)),
        Outlook::Reached | Outlook::OutOfReach { .. } | Outlook::TooFar => (None, None),
    };
    let (word, instruments_leave_w) = match outlook {
        Outlook::Reached => ("reached", None),
        Outlook::More { .. } => ("more", None),
        Outlook::OutOfReach { least_w } => ("out-of-reach", Some(least_w)),
        Outlook::TooFar => ("too-far", None),
    };
    TargetEntry {
        expanded_uncertainty_w: target_w,
        outlook: word,
        more_intervals,
        more_days,
        instruments_leave_w,
    }
}
