//! The line, its scatter, and what contributes to the uncertainty.

use serde::Serialize;

use super::headline::equation;
use super::report::{Figure, Row};
use super::uncertainty::{UncertaintyPart, uncertainty};
use crate::language::Words;
use crate::procedure::Assessment;
use crate::units::{counted, counted_plural, decimals_for, fixed, range};

/// Section 5.
#[derive(Debug, Clone, Serialize)]
pub struct RegressionPart {
    /// `None`: no line.
    pub line: Option<LinePart>,
    /// Said where there is no line.
    pub absence: String,
}

/// The line.
#[derive(Debug, Clone, Serialize)]
pub struct LinePart {
    pub method: String,
    pub rows: Vec<Row>,
    pub figure: Figure,
    pub uncertainty: UncertaintyPart,
}

/// Puts section 5 into words.
pub fn regression(assessment: &Assessment, words: &Words) -> RegressionPart {
    RegressionPart {
        line: line_part(assessment),
        absence: "No line can be fitted: that takes at least three used intervals with irradiance, at different temperature differences.".to_owned(),
    }
}

fn line_part(assessment: &Assessment) -> Option<LinePart> {
    let (line, rating, sure) = (
        assessment.line?,
        assessment.rating?,
        assessment.uncertainty.as_ref()?,
    );
    let power = |value: f64, error: f64| fixed(value, decimals_for(error));
    let interval = |interval: crate::stats::line::Interval| {
        let decimals = decimals_for(interval.half_width());
        format!("{} W", range(interval.lower, interval.upper, decimals))
    };
    let slope_decimals = decimals_for(line.slope_standard_error).max(2) + 1;
    let rows = vec![
        Row::new("line", equation(&line)),
        Row::new(
            "intercept a",
            format!(
                "{} W, standard error {} W",
                power(line.intercept, line.intercept_standard_error),
                power(line.intercept_standard_error, line.intercept_standard_error)
            ),
        ),
        Row::new(
            "slope b",
            format!(
                "{} W/K, standard error {} W/K",
                fixed(line.slope, slope_decimals),
                fixed(line.slope_standard_error, slope_decimals)
            ),
        ),
        Row::new(
            "R²",
            line.r_squared
                .map_or("undefined".to_owned(), |r| fixed(r, 4)),
        ),
        Row::new(
            "residual standard deviation",
            format!("{} W", fixed(line.residual_sd, 2)),
        ),
        Row::new(
            "points",
            format!(
                "{} on {}, {}",
                counted(line.points, "interval"),
                counted(assessment.used_dates().len(), "day"),
                counted_plural(line.points - 2, "degree of freedom", "degrees of freedom")
            ),
        ),
        Row::new(
            "Ps(50)",
            format!(
                "{} W, standard error {} W",
                fixed(rating.ps50_w, 2),
                fixed(rating.standard_error_w, 2)
            ),
        ),
        Row::new(
            "95 % confidence interval of the line at 50 K, from its scatter alone",
            interval(rating.confidence_w),
        ),
        Row::new(
            "95 % prediction interval of one interval at 50 K",
            interval(rating.prediction_w),
        ),
    ];
    let outside = outside_twice(assessment);
    Some(LinePart {
        method: "Ordinary least squares of Ps on Td over the used intervals of all runs, each with equal weight; intervals with Student's t. P = m·c·(T2 − T1)/Δt with c = 4186 J/(kg K) and the time that really passed; Ps = P·700/G with the mean irradiance G of the interval; Td = mean water minus mean ambient temperature. Means are weighted by time.".to_owned(),
        rows,
        figure: Figure {
            file: "residuals.svg".to_owned(),
            caption: "Residuals of the used intervals, by day; dashed: twice their standard deviation.".to_owned(),
            alt: format!(
                "Residuals about the line in watts, against temperature difference in kelvin and against local clock time, with a mark for each day; standard deviation {} watts; {outside} of {} points {} further than twice that from the line.",
                fixed(line.residual_sd, 1),
                line.points,
                if outside == 1 { "lies" } else { "lie" }
            ),
        },
        uncertainty: uncertainty(assessment, sure),
    })
}

fn outside_twice(assessment: &Assessment) -> usize {
    let Some(line) = assessment.line else {
        return 0;
    };
    let points = assessment
        .used()
        .filter_map(crate::procedure::intervals::Interval::point);
    points
        .filter(|(k, power_w)| (power_w - line.predict(*k)).abs() > 2.0 * line.residual_sd)
        .count()
}
