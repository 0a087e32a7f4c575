//! The line, its scatter, and what contributes to the uncertainty.

use serde::Serialize;

use super::headline::equation;
use super::report::{Figure, Row};
use super::tested::spoken_uncertainty;
use crate::procedure::Assessment;
use crate::procedure::budget::Budget;
use crate::units::{counted, counted_plural, decimals_for, fixed, listed, range};

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
    pub budget: Vec<BudgetRow>,
    pub budget_total: BudgetRow,
    pub budget_notes: Vec<String>,
}

/// One line of the budget.
#[derive(Debug, Clone, Serialize)]
pub struct BudgetRow {
    pub source: String,
    pub of_source: String,
    pub evaluation: String,
    pub of_rating: String,
}

/// Puts section 5 into words.
pub fn regression(assessment: &Assessment) -> RegressionPart {
    RegressionPart {
        line: line_part(assessment),
        absence: "No line can be fitted: that takes at least three used intervals with irradiance, at different temperature differences.".to_owned(),
    }
}

fn line_part(assessment: &Assessment) -> Option<LinePart> {
    let (line, rating, budget) = (
        assessment.line?,
        assessment.rating?,
        assessment.budget.as_ref()?,
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
            "95 % confidence interval of the line at 50 K",
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
            caption: "Residuals of the used intervals; dashed: twice their standard deviation.".to_owned(),
            alt: format!(
                "Residuals about the line in watts against temperature difference in kelvin; standard deviation {} watts; {outside} of {} points {} further than twice that from the line.",
                fixed(line.residual_sd, 1),
                line.points,
                if outside == 1 { "lies" } else { "lie" }
            ),
        },
        budget: budget_rows(budget),
        budget_total: BudgetRow {
            source: "combined".to_owned(),
            of_source: "root of the sum of squares".to_owned(),
            evaluation: String::new(),
            of_rating: format!("{} W", fixed(budget.combined_w, 2)),
        },
        budget_notes: budget_notes(budget),
    })
}

/// Degrees of freedom, as far as the number means anything.
fn spoken_freedom(degrees: f64) -> String {
    if degrees < 1000.0 {
        fixed(degrees.floor(), 0)
    } else {
        "over 1000".to_owned()
    }
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

fn budget_rows(budget: &Budget) -> Vec<BudgetRow> {
    let row = |part: &crate::procedure::budget::Contribution| BudgetRow {
        source: part.source.to_owned(),
        of_source: part
            .of_source
            .map_or_else(|| "from the regression".to_owned(), spoken_uncertainty),
        evaluation: part.evaluation.to_string(),
        of_rating: format!("{} W", fixed(part.of_rating_w, 2)),
    };
    budget.contributions.iter().map(row).collect()
}

fn budget_notes(budget: &Budget) -> Vec<String> {
    let mut notes = vec![
        format!(
            "Expanded uncertainty of Ps(50) for 95 %: ± {} W (k = {}, {} effective degrees of freedom).",
            fixed(budget.expanded_w(), 1),
            fixed(budget.coverage_factor, 2),
            spoken_freedom(budget.effective_degrees_of_freedom)
        ),
        "Instrument errors are taken as common to all intervals: those of irradiance and mass scale the whole line and never show in the scatter; those of temperature cancel in the rise of the water and shift Td. Differences between days beyond the scatter are not separated.".to_owned(),
    ];
    if !budget.not_stated.is_empty() {
        notes.push(format!(
            "No uncertainty is stated for {}; the true uncertainty is larger by what these add.",
            listed(&budget.not_stated)
        ));
    }
    notes
}
