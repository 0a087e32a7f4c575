//! Rating and line as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::stats::line::Bounds;

/// The single figure, from the regression alone.
#[derive(Debug, Serialize, JsonSchema)]
pub struct RatingEntry {
    /// Ps(50): standardised cooking power at a temperature difference of 50 K, W.
    ps50_w: f64,
    /// Standard error of the line there, W.
    ps50_standard_error_w: f64,
    /// Ends of the 95 % confidence interval of the line there, W.
    ps50_confidence_95_w: [f64; 2],
    /// Ends of the 95 % interval for one more interval there, W.
    ps50_prediction_95_w: [f64; 2],
    /// 50 K lies outside the temperature differences that were observed.
    extrapolated: bool,
}

/// The line Ps = a + b·Td through the used intervals, by least squares.
#[derive(Debug, Serialize, JsonSchema)]
pub struct RegressionEntry {
    /// a, W.
    intercept_w: f64,
    /// b, W/K.
    slope_w_per_k: f64,
    /// Of a, W.
    intercept_standard_error_w: f64,
    /// Of b, W/K.
    slope_standard_error_w_per_k: f64,
    /// Of a and b, W²/K.
    covariance_w2_per_k: f64,
    /// R²; null where Ps does not vary.
    r_squared: Option<f64>,
    /// Standard deviation of the residuals, W.
    residual_sd_w: f64,
    /// Number of points of the line.
    intervals: usize,
    /// Number of local dates with a point.
    days: usize,
}

/// The rating; `None` without a line.
pub fn rating_entry(assessment: &Assessment) -> Option<RatingEntry> {
    let rating = assessment.s580.rating()?;
    Some(RatingEntry {
        ps50_w: rating.ps50_w,
        ps50_standard_error_w: rating.standard_error_w,
        ps50_confidence_95_w: pair(rating.confidence_w),
        ps50_prediction_95_w: pair(rating.prediction_w),
        extrapolated: rating.is_extrapolated,
    })
}

/// The line; `None` where none can be drawn.
pub fn regression_entry(assessment: &Assessment) -> Option<RegressionEntry> {
    let line = assessment.s580.line()?;
    Some(RegressionEntry {
        intercept_w: line.intercept,
        slope_w_per_k: line.slope,
        intercept_standard_error_w: line.intercept_standard_error,
        slope_standard_error_w_per_k: line.slope_standard_error,
        covariance_w2_per_k: line.covariance,
        r_squared: line.r_squared,
        residual_sd_w: line.residual_sd,
        intervals: line.points,
        days: assessment.s580.dates.len(),
    })
}

fn pair(interval: Bounds) -> [f64; 2] {
    [interval.lower, interval.upper]
}
