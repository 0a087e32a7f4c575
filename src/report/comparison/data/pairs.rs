//! Pairs of campaigns as data: part of `comparison.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::comparison::Comparison;
use crate::comparison::figures::{FigurePair, PairFigures, Told};
use crate::comparison::pair::{Difference, Pair};
use crate::comparison::shape::Shape;
use crate::comparison::weigh::{Method, Weighed};
use crate::language::Words;
use crate::procedure::s580::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};

/// Two campaigns; what is of ratings is `null` unless both have one.
#[derive(Debug, Serialize, JsonSchema)]
pub struct PairEntry {
    /// Name of the first campaign's folder.
    first: String,
    /// Name of the second's.
    second: String,
    /// Ps(50) of the second less that of the first.
    difference_w: Option<f64>,
    /// Its standard uncertainty.
    difference_standard_uncertainty_w: Option<f64>,
    /// Its 95 % interval.
    difference_95_w: Option<[f64; 2]>,
    /// Of `difference_w`; null where they are without end.
    effective_degrees_of_freedom: Option<f64>,
    /// Of `difference_95_w`.
    coverage_factor: Option<f64>,
    /// `apart` or `paired-by-day`.
    #[schemars(extend("enum" = ["apart", "paired-by-day", null]))]
    method: Option<&'static str>,
    /// Days left out of both at once; null unless paired.
    paired_days: Option<usize>,
    /// Of the difference of which `real` is said: of the ratings, and where `conditions_differ`
    /// that of `common_conditions`.
    p: Option<f64>,
    /// The same, corrected by Holm's method for the number of pairs that have a `p`.
    p_corrected: Option<f64>,
    /// The difference is shown, however many pairs were looked at; never of single days.
    real: bool,
    /// To the uncertainty of `difference_w`.
    contributions: Vec<PartEntry>,
    /// Null where slopes cannot be told apart from scatter.
    shape: Option<ShapeEntry>,
    /// A difference, W, that more days are asked to show: a tenth of the larger power.
    sought_difference_w: Option<f64>,
    /// Of the campaign that had more of them a day, on `more_days_each`.
    more_intervals_each: Option<usize>,
    /// Days that would show it with a chance of four in five; null where no number would, or days
    /// cannot be told.
    more_days_each: Option<usize>,
    /// Mean irradiance differs by so much, or its plane, that ratings do not tell cookers apart.
    conditions_differ: Option<bool>,
    /// Null unless both have a heat balance, with irradiance in one plane.
    common_conditions: Option<CommonEntry>,
    /// Difference of the heat balances' gain, m²; null without both, and in different planes.
    gain_difference_m2: Option<FigureEntry>,
    /// Difference of their loss, W/K; null without both, and in different planes.
    loss_difference_w_per_k: Option<FigureEntry>,
    /// The figures beside the rating that both state; gain and loss where the two above are null.
    figures: Vec<BesideEntry>,
}

/// One figure of two campaigns, in its `unit`.
#[derive(Debug, Serialize, JsonSchema)]
struct BesideEntry {
    /// Its code.
    figure: &'static str,
    /// Its unit; 1 for a number without.
    unit: &'static str,
    /// Of the first campaign.
    first: f64,
    /// Of the second.
    second: f64,
    /// Second less first; `null` where it is not compared.
    difference: Option<f64>,
    /// Of the difference.
    standard_uncertainty: Option<f64>,
    /// Of the difference.
    interval_95: Option<[f64; 2]>,
    /// Probability of so large a difference if there is none.
    p: Option<f64>,
    /// By Holm, for the pairs in which this figure is compared.
    p_corrected: Option<f64>,
    /// Never of a single day.
    told_apart: bool,
    /// Why it is not compared.
    not_compared: Option<&'static str>,
    /// What another day would do is missing in either.
    one_day: bool,
    /// The conditions of either were not those of its procedure.
    indicative: bool,
    /// It is of the vessels too, and not enough is stated to know them alike.
    vessels_not_stated: bool,
}

/// Difference of the powers by the heat balances.
#[derive(Debug, Serialize, JsonSchema)]
struct CommonEntry {
    /// For which both powers are.
    irradiance_w_m2: f64,
    /// Water above ambient, for which both are.
    difference_k: f64,
    /// Power of the second less that of the first.
    difference_w: f64,
    /// Of that.
    standard_uncertainty_w: f64,
    /// Of that, W.
    interval_95: [f64; 2],
}

/// Difference of gain or of loss, in the unit of its key.
#[derive(Debug, Serialize, JsonSchema)]
struct FigureEntry {
    /// Second less first.
    value: f64,
    /// Of that.
    standard_uncertainty: f64,
    /// Of that.
    interval_95: [f64; 2],
    /// Probability of so large a difference if there is none; not corrected.
    p: f64,
}

/// What one source gives the uncertainty of a difference.
#[derive(Debug, Serialize, JsonSchema)]
struct PartEntry {
    /// In words.
    source: String,
    /// What it gives the difference.
    standard_uncertainty_w: f64,
    /// What it would give if the campaigns had no instrument in common.
    if_nothing_were_shared_w: f64,
}

/// Analysis of covariance of two lines. It names no cause: losses are scaled with the sun in them.
#[derive(Debug, Serialize, JsonSchema)]
struct ShapeEntry {
    /// Slope of the second less that of the first.
    slope_difference_w_per_k: f64,
    /// Intercept of the second less that of the first; of parallel lines where slopes do not differ.
    intercept_difference_w: f64,
    /// F of the slopes.
    slopes_f: f64,
    /// Its degrees of freedom, of the numerator and of the denominator.
    slopes_degrees_of_freedom: [usize; 2],
    /// Probability of slopes so far apart if they are one.
    slopes_p: f64,
    /// Probability of intercepts so far apart if they are one.
    intercepts_p: f64,
    /// What is taken as independent: `intervals` or `days`.
    independent: &'static str,
}

/// Two campaigns, with their figures.
pub fn pair_entry(comparison: &Comparison, figures: &PairFigures) -> PairEntry {
    let pair = comparison.pair_of(figures.first, figures.second);
    let difference = pair.map(|pair| &pair.difference);
    let ratings = difference.map(|difference| &difference.ratings);
    let name = |place: usize| comparison.campaigns[place].tested.campaign.name.clone();
    let (method, paired_days) = match ratings.map(|ratings| ratings.method) {
        None => (None, None),
        Some(Method::Apart) => (Some("apart"), None),
        Some(Method::PairedByDay { days }) => (Some("paired-by-day"), Some(days)),
    };
    let parts = ratings.into_iter().flat_map(|ratings| &ratings.parts);
    let contributions = parts.map(|part| PartEntry {
        source: Words::english().say(part.name()),
        standard_uncertainty_w: part.of_difference,
        if_nothing_were_shared_w: part.apart,
    });
    let decisive = difference.and_then(Difference::decisive);
    let needed = pair.and_then(|pair| pair.needed);
    let more_days_each = needed.and_then(|needed| needed.days_each);
    let causes = difference.and_then(|difference| difference.causes.as_ref());
    let freedom = ratings.map(|ratings| ratings.effective_freedom);
    let of_common = difference.and_then(|difference| difference.common_conditions.as_ref());
    let shape = difference.and_then(|difference| difference.shape.as_ref());
    PairEntry {
        first: name(figures.first),
        second: name(figures.second),
        difference_w: ratings.map(|ratings| ratings.value),
        difference_standard_uncertainty_w: ratings.map(|ratings| ratings.combined),
        difference_95_w: ratings.map(|ratings| ratings.interval().into()),
        effective_degrees_of_freedom: freedom.filter(|f| f.is_finite()),
        coverage_factor: ratings.map(|ratings| ratings.coverage_factor),
        method,
        paired_days,
        p: decisive.map(|weighed| weighed.p),
        p_corrected: decisive.and(pair).map(|pair| pair.p_corrected),
        real: pair.is_some_and(Pair::is_shown),
        contributions: contributions.collect(),
        shape: shape.map(shape_entry),
        sought_difference_w: needed.map(|needed| needed.sought_w),
        more_intervals_each: pair
            .zip(more_days_each)
            .map(|(pair, days)| days * intervals_a_day(comparison, pair)),
        more_days_each,
        conditions_differ: difference.map(|difference| difference.conditions_differ),
        common_conditions: of_common.map(common_entry),
        gain_difference_m2: causes.map(|causes| figure_entry(&causes.gain_m2)),
        loss_difference_w_per_k: causes.map(|causes| figure_entry(&causes.loss_w_per_k)),
        figures: figures.figures.iter().map(beside_entry).collect(),
    }
}

fn beside_entry(figure: &FigurePair) -> BesideEntry {
    let told = figure.told.as_ref().ok();
    BesideEntry {
        figure: figure.key.code(),
        unit: figure.key.result_unit(),
        first: figure.first.value,
        second: figure.second.value,
        difference: told.map(|told| told.held.value),
        standard_uncertainty: told.map(|told| told.held.standard_uncertainty),
        interval_95: told.map(Told::interval),
        p: told.map(|told| told.held.p),
        p_corrected: told.map(|told| told.p_corrected),
        told_apart: figure.is_told_apart(),
        not_compared: figure.told.as_ref().err().map(|why| why.code()),
        one_day: figure.is_of_one_day(),
        indicative: figure.is_indicative(),
        vessels_not_stated: figure.has_unknown_vessels,
    }
}

/// Used intervals a day, rounded up, of the campaign that had more of them.
fn intervals_a_day(comparison: &Comparison, pair: &Pair) -> usize {
    let of = |place: usize| {
        let s580 = &comparison.campaigns[place].s580;
        s580.used().count().div_ceil(s580.dates.len().max(1))
    };
    of(pair.difference.first).max(of(pair.difference.second))
}

fn common_entry(weighed: &Weighed) -> CommonEntry {
    CommonEntry {
        irradiance_w_m2: STANDARD_IRRADIANCE_W_M2,
        difference_k: RATING_DIFFERENCE_K,
        difference_w: weighed.value,
        standard_uncertainty_w: weighed.combined,
        interval_95: weighed.interval().into(),
    }
}

fn figure_entry(weighed: &Weighed) -> FigureEntry {
    FigureEntry {
        value: weighed.value,
        standard_uncertainty: weighed.combined,
        interval_95: weighed.interval().into(),
        p: weighed.p,
    }
}

fn shape_entry(shape: &Shape) -> ShapeEntry {
    ShapeEntry {
        slope_difference_w_per_k: shape.slope_difference_w_per_k,
        intercept_difference_w: shape.intercept_difference_w,
        slopes_f: shape.slopes.statistic,
        slopes_degrees_of_freedom: [
            shape.slopes.numerator_freedom,
            shape.slopes.denominator_freedom,
        ],
        slopes_p: shape.slopes.p,
        intercepts_p: shape.intercepts_p,
        independent: if shape.by_days { "days" } else { "intervals" },
    }
}
