//! The line, its scatter, and what contributes to the uncertainty.

use serde::Serialize;

use super::line::{equation, spoken_r_squared};
use super::uncertainty::{UncertaintyPart, uncertainty_part};
use crate::language::{Phrase, Words, fixed, joined, range};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::rated::{Rated, Rating};
use crate::report::rows::{Figure, Row};
use crate::stats::line::{Bounds, Line};
use crate::units::decimals_for;

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
        line,
        rating,
        uncertainty,
    } = assessment.s580.rated.as_ref()?;
    let alt = message!(
        "residuals-alt",
        deviation = fixed(line.residual_sd, 1),
        outside = assessment.s580.outside_twice(),
        points = line.points
    );
    let mut rows = line_rows(line, assessment.s580.dates.len(), words);
    rows.extend(rating_rows(rating, words));
    Some(LinePart {
        method: words.say(message!("regression-method")),
        rows,
        figure: Figure {
            file: "residuals.svg".to_owned(),
            caption: words.say(message!("residuals-caption")),
            alt: words.say(alt),
        },
        uncertainty: uncertainty_part(assessment, uncertainty, words),
    })
}

fn in_watts(number: Phrase) -> Phrase {
    joined([number, "W".into()], " ")
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
    let residual = in_watts(fixed(line.residual_sd, 2));
    vec![
        Row::said(words, message!("regression-line"), equation(line)),
        Row::said(words, message!("regression-intercept"), intercept),
        Row::said(words, message!("regression-slope"), slope),
        Row::said(words, "R²", spoken_r_squared(line, 4)),
        Row::said(words, message!("regression-residual"), residual),
        Row::said(words, message!("regression-points"), points),
    ]
}

/// What there is to know of the line at 50 K.
fn rating_rows(rating: &Rating, words: &Words) -> Vec<Row> {
    let interval = |interval: Bounds| {
        let decimals = decimals_for(interval.half_width());
        in_watts(range(interval.lower, interval.upper, decimals))
    };
    let ps50 = message!(
        "regression-watts",
        value = fixed(rating.ps50_w, 2),
        error = fixed(rating.standard_error_w, 2)
    );
    let confidence = interval(rating.confidence_w);
    let prediction = interval(rating.prediction_w);
    vec![
        Row::said(words, "Ps(50)", ps50),
        Row::said(words, message!("regression-confidence"), confidence),
        Row::said(words, message!("regression-prediction"), prediction),
    ]
}
