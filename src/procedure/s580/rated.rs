//! The line through the used intervals, and the single figure read from it.

use super::intervals::Interval;
use super::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use super::uncertainty::{RatingUncertainty, evaluate};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::Budget;
use crate::procedure::uncertainty::budget::Origin;
use crate::stats::line::{Bounds, Line, fit_line};

/// What there is wherever a line can be fitted: the line, the single figure, and how sure it is.
#[derive(Debug, Clone)]
pub struct Rated {
    /// Ps on Td over the used intervals.
    pub line: Line,
    pub rating: Rating,
    pub uncertainty: RatingUncertainty,
}

/// The single figure, W.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// Ps(50): the line read at a temperature difference of 50 K.
    pub ps50_w: f64,
    /// Standard error of the line there, from the regression alone.
    pub standard_error_w: f64,
    pub confidence_w: Bounds,
    pub prediction_w: Bounds,
    /// 50 K lies outside the temperature differences that were observed.
    pub is_extrapolated: bool,
}

/// Fits the line and reads it; `None` with fewer than three intervals on it, or no spread in
/// Td.
///
/// # Source
/// ASAE S580, the clause on the single measure of performance.
pub fn rate_line(tested: &Tested, intervals: &[Interval]) -> Option<Rated> {
    let on_line = intervals.iter().filter(|interval| interval.is_on_line());
    let (difference_k, power_w): (Vec<f64>, Vec<f64>) = on_line.filter_map(Interval::point).unzip();
    let line = fit_line(&difference_k, &power_w)?;
    let uncertainty = evaluate(tested, intervals, &line)?;
    let at_k = RATING_DIFFERENCE_K;
    let rating = Rating {
        ps50_w: uncertainty.budget.value,
        standard_error_w: line.standard_error(at_k),
        confidence_w: line.confidence(at_k),
        prediction_w: line.prediction(at_k),
        is_extrapolated: !line.spans(at_k),
    };
    Some(Rated {
        line,
        rating,
        uncertainty,
    })
}

/// What the water took up at 50 K in the sun of the test.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TookUp {
    /// Mean irradiance of the used intervals as measured, W/m².
    pub irradiance_w_m2: f64,
    pub power_w: f64,
    /// Half-width of its 95 % interval, W.
    pub half_width_w: f64,
}

impl Rated {
    /// The line at 50 K at a mean irradiance, where normalising is undone: what the sensor is
    /// off by was in both, and is in neither, so it does not count.
    pub fn took_up(&self, irradiance_w_m2: f64) -> TookUp {
        let share = irradiance_w_m2 / STANDARD_IRRADIANCE_W_M2;
        let budget = &self.uncertainty.budget;
        let others = budget
            .contributions
            .iter()
            .filter_map(|part| match &part.origin {
                Origin::Common(error) if !error.source.is_irradiance() => {
                    Some((error.clone(), part.effect))
                }
                _ => None,
            });
        let scatter = (Origin::Scatter, budget.statistical);
        let without = Budget::new(budget.value, scatter, budget.statistical_freedom, others);
        TookUp {
            irradiance_w_m2,
            power_w: share * self.rating.ps50_w,
            half_width_w: share * without.expanded,
        }
    }
}
