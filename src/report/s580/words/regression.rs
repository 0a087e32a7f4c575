//! The line, its scatter, and what contributes to the uncertainty.

use serde::Serialize;

use super::line::{equation, spoken_r_squared};
use super::uncertainty::{UncertaintyPart, uncertainty_part};
use crate::language::{Words, fixed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::rated::Rated;
use crate::report::rows::{Figure, Row};
use crate::stats::line::Line;
use crate::units::{decimals_for, digits_after_point};

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
        line: line_part(assessment, words),
        absence: words.say(message!("regression-none")),
    }
}

fn line_part(assessment: &Assessment, words: &Words) -> Option<LinePart> {
    let Rated {
        line, uncertainty, ..
    } = assessment.s580.rated.as_ref()?;
    let alt = message!(
        "residuals-alt",
        deviation = fixed(line.residual_sd, 1),
        outside = assessment.s580.outside_twice(),
        points = line.points
    );
    Some(LinePart {
        method: words.say(message!("regression-method")),
        rows: line_rows(line, assessment.s580.dates.len(), words),
        figure: Figure {
            file: "residuals.svg".to_owned(),
            caption: words.say(message!("residuals-caption")),
            alt: words.say(alt),
        },
        uncertainty: uncertainty_part(assessment, uncertainty, words),
    })
}

/// What there is to know of the line.
fn line_rows(line: &Line, days: usize, words: &Words) -> Vec<Row> {
    let power = |value: f64| fixed(value, decimals_for(line.intercept_standard_error));
    let slope_decimals = decimals_for(line.slope_standard_error).max(2) + 1;
    let intercept = message!(
        "regression-watts",
        value = power(line.intercept),
        error = power(line.intercept_standard_error)
    );
    let slope = message!(
        "regression-watts-per-kelvin",
        value = fixed(line.slope, slope_decimals),
        error = fixed(line.slope_standard_error, slope_decimals)
    );
    let points = message!(
        "regression-points-text",
        intervals = line.points,
        days = days,
        freedom = line.points - 2
    );
    let residual_decimals = digits_after_point(line.residual_sd, 2);
    let residual = message!(
        "regression-residual-text",
        deviation = fixed(line.residual_sd, residual_decimals)
    );
    // In two columns, one below the other.
    vec![
        Row::said(words, message!("regression-line"), equation(line)),
        Row::said(words, message!("regression-intercept"), intercept),
        Row::said(words, message!("regression-slope"), slope),
        Row::said(words, message!("regression-points"), points),
        Row::said(words, message!("regression-residual"), residual),
        Row::said(words, "R²", spoken_r_squared(line, 3)),
    ]
}
