//! Figures of a concentrating cooker, in the table of campaigns.

use crate::procedure::Assessment;
use crate::procedure::dish::DishFigures;
use crate::procedure::uncertainty::{Derived, Figure};
use crate::report::data::tables::columns::{Cell, Column, Heading, OfCampaign, column};

/// Figures of a concentrating cooker, in the table of campaigns. Null where there is none.
pub const OF_DISH: &[Column<OfCampaign>] = &[
    column(
        Heading::number("time_constant_s", "s", "Time constant of cooling").or_null(),
        |one| of(one, |found| found.time_constant_s.as_ref(), |figure| figure.value),
    ),
    column(
        Heading::number("time_constant_lower_95_s", "s", "Lower end of the 95 % interval of time constant of cooling").or_null(),
        |one| of(one, |found| found.time_constant_s.as_ref(), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("time_constant_upper_95_s", "s", "Upper end of the 95 % interval of time constant of cooling").or_null(),
        |one| of(one, |found| found.time_constant_s.as_ref(), |figure| figure.interval.upper),
    ),
    column(
        Heading::number("loss_factor_w_per_m2_k", "W/(m² K)", "F′UL, loss for each m² of the vessels").or_null(),
        |one| of(one, |found| found.loss_factor.as_ref(), |figure| figure.value),
    ),
    column(
        Heading::number("loss_factor_lower_95_w_per_m2_k", "W/(m² K)", "Lower end of the 95 % interval of F′UL, loss for each m² of the vessels").or_null(),
        |one| of(one, |found| found.loss_factor.as_ref(), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("loss_factor_upper_95_w_per_m2_k", "W/(m² K)", "Upper end of the 95 % interval of F′UL, loss for each m² of the vessels").or_null(),
        |one| of(one, |found| found.loss_factor.as_ref(), |figure| figure.interval.upper),
    ),
    column(
        Heading::number("optical_factor", "", "F′η0, share of the light on the intercept area").or_null(),
        |one| of(one, |found| found.optical_factor.as_ref(), |figure| figure.value),
    ),
    column(
        Heading::number("optical_factor_lower_95", "", "Lower end of the 95 % interval of F′η0, share of the light on the intercept area").or_null(),
        |one| of(one, |found| found.optical_factor.as_ref(), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("optical_factor_upper_95", "", "Upper end of the 95 % interval of F′η0, share of the light on the intercept area").or_null(),
        |one| of(one, |found| found.optical_factor.as_ref(), |figure| figure.interval.upper),
    ),
    column(
        Heading::number("dish_boiling_time_s", "s", "Time to boil from ambient by cooling and heating test, in the sun of the test").or_null(),
        |one| of(one, |found| found.boiling.as_ref().map(|boiling| &boiling.time_s), |figure| figure.value),
    ),
    column(
        Heading::number("dish_boiling_time_lower_95_s", "s", "Lower end of the 95 % interval of time to boil from ambient by cooling and heating test, in the sun of the test").or_null(),
        |one| of(one, |found| found.boiling.as_ref().map(|boiling| &boiling.time_s), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("dish_boiling_time_upper_95_s", "s", "Upper end of the 95 % interval of time to boil from ambient by cooling and heating test, in the sun of the test").or_null(),
        |one| of(one, |found| found.boiling.as_ref().map(|boiling| &boiling.time_s), |figure| figure.interval.upper),
    ),
];

fn of(
    one: &Assessment,
    which: fn(&DishFigures) -> Option<&Derived>,
    part: fn(&Figure) -> f64,
) -> Cell {
    let found = one.dish_figures.as_ref().and_then(which);
    found.map(|derived| part(&derived.figure)).into()
}
