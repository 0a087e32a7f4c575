//! The rating in the table of campaigns.

use crate::procedure::Assessment;
use crate::procedure::uncertainty::budget::Budget;
use crate::report::data::tables::columns::{Cell, Column, Heading, Kind, OfCampaign, column};

/// The rating, its uncertainty and the line; null where no line can be drawn.
pub const RATED: &[Column<OfCampaign>] = &[
    column(
        Heading::number(
            "ps50_w",
            "W",
            "Ps(50): standardised cooking power at a temperature difference of 50 K",
        )
        .or_null(),
        |one| one.s580.rating().map(|rating| rating.ps50_w).into(),
    ),
    column(
        Heading::number(
            "ps50_expanded_uncertainty_w",
            "W",
            "Expanded uncertainty of Ps(50) for 95 %: scatter, days and instruments",
        )
        .or_null(),
        |one| of_budget(one, |budget| budget.expanded),
    ),
    column(
        Heading::number(
            "ps50_lower_95_w",
            "W",
            "Ps(50) less its expanded uncertainty",
        )
        .or_null(),
        |one| of_budget(one, |budget| budget.value - budget.expanded),
    ),
    column(
        Heading::number(
            "ps50_upper_95_w",
            "W",
            "Ps(50) plus its expanded uncertainty",
        )
        .or_null(),
        |one| of_budget(one, |budget| budget.value + budget.expanded),
    ),
    column(
        Heading::number(
            "ps50_combined_standard_uncertainty_w",
            "W",
            "Combined standard uncertainty of Ps(50) (k = 1)",
        )
        .or_null(),
        |one| of_budget(one, |budget| budget.combined),
    ),
    column(
        Heading::number("coverage_factor", "", "Expanded over combined uncertainty").or_null(),
        |one| of_budget(one, |budget| budget.coverage_factor()),
    ),
    column(
        Heading::number(
            "effective_degrees_of_freedom",
            "",
            "Those for which Student's t is the coverage factor",
        )
        .or_null(),
        |one| of_budget(one, |budget| budget.effective_freedom()),
    ),
    column(
        Heading::number(
            "ps50_standard_error_w",
            "W",
            "Standard error of Ps(50) from the regression alone",
        )
        .or_null(),
        |one| {
            one.s580
                .rating()
                .map(|rating| rating.standard_error_w)
                .into()
        },
    ),
    column(
        Heading::number(
            "ps50_confidence_lower_95_w",
            "W",
            "Lower end of the confidence interval of the line at 50 K, from the regression alone",
        )
        .or_null(),
        |one| {
            one.s580
                .rating()
                .map(|rating| rating.confidence_w.lower)
                .into()
        },
    ),
    column(
        Heading::number(
            "ps50_confidence_upper_95_w",
            "W",
            "Upper end of the confidence interval of the line at 50 K, from the regression alone",
        )
        .or_null(),
        |one| {
            one.s580
                .rating()
                .map(|rating| rating.confidence_w.upper)
                .into()
        },
    ),
    column(
        Heading::number(
            "ps50_prediction_lower_95_w",
            "W",
            "Lower end of the prediction interval for one more interval at 50 K",
        )
        .or_null(),
        |one| {
            one.s580
                .rating()
                .map(|rating| rating.prediction_w.lower)
                .into()
        },
    ),
    column(
        Heading::number(
            "ps50_prediction_upper_95_w",
            "W",
            "Upper end of the prediction interval for one more interval at 50 K",
        )
        .or_null(),
        |one| {
            one.s580
                .rating()
                .map(|rating| rating.prediction_w.upper)
                .into()
        },
    ),
    column(
        Heading::new(
            "extrapolated",
            Kind::Truth,
            "50 K lies outside the temperature differences that were observed",
        )
        .or_null(),
        |one| {
            one.s580
                .rating()
                .map(|rating| rating.is_extrapolated)
                .into()
        },
    ),
    column(
        Heading::number("intercept_w", "W", "a of the line Ps = a + b Td").or_null(),
        |one| one.s580.line().map(|line| line.intercept).into(),
    ),
    column(
        Heading::number("slope_w_per_k", "W/K", "b of the line Ps = a + b Td").or_null(),
        |one| one.s580.line().map(|line| line.slope).into(),
    ),
    column(
        Heading::number("intercept_standard_error_w", "W", "Standard error of a").or_null(),
        |one| {
            one.s580
                .line()
                .map(|line| line.intercept_standard_error)
                .into()
        },
    ),
    column(
        Heading::number("slope_standard_error_w_per_k", "W/K", "Standard error of b").or_null(),
        |one| one.s580.line().map(|line| line.slope_standard_error).into(),
    ),
    column(
        Heading::number("covariance_w2_per_k", "W²/K", "Covariance of a and b").or_null(),
        |one| one.s580.line().map(|line| line.covariance).into(),
    ),
    column(
        Heading::number(
            "r_squared",
            "",
            "R² of the line; null too where Ps does not vary",
        )
        .or_null(),
        |one| one.s580.line().and_then(|line| line.r_squared).into(),
    ),
    column(
        Heading::number("residual_sd_w", "W", "Standard deviation of the residuals").or_null(),
        |one| one.s580.line().map(|line| line.residual_sd).into(),
    ),
    column(
        Heading::new(
            "on_line",
            Kind::Count,
            "Number of intervals that the line is drawn through",
        ),
        |one| one.s580.used().count().into(),
    ),
];

fn of_budget(one: &Assessment, number: fn(&Budget) -> f64) -> Cell {
    one.s580
        .uncertainty()
        .as_ref()
        .map(|uncertainty| number(&uncertainty.budget))
        .into()
}
