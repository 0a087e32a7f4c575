//! Figures of a box cooker, in the table of campaigns.

use crate::procedure::Assessment;
use crate::procedure::box_cooker::BoxFigures;
use crate::procedure::uncertainty::{Derived, Figure};
use crate::report::data::tables::columns::{Cell, Column, Heading, OfCampaign, column};

/// Figures of a box cooker, in the table of campaigns. Null where there is none.
pub const OF_BOX: &[Column<OfCampaign>] = &[
    column(
        Heading::number("f1_k_m2_per_w", "K m²/W", "F1, first figure of merit of a box cooker").or_null(),
        |one| of(one, |found| found.f1.as_ref(), |figure| figure.value),
    ),
    column(
        Heading::number("f1_lower_95_k_m2_per_w", "K m²/W", "Lower end of the 95 % interval of F1, first figure of merit of a box cooker").or_null(),
        |one| of(one, |found| found.f1.as_ref(), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("f1_upper_95_k_m2_per_w", "K m²/W", "Upper end of the 95 % interval of F1, first figure of merit of a box cooker").or_null(),
        |one| of(one, |found| found.f1.as_ref(), |figure| figure.interval.upper),
    ),
    column(
        Heading::number("f2", "", "F2, second figure of merit of a box cooker").or_null(),
        |one| of(one, |found| found.f2.as_ref(), |figure| figure.value),
    ),
    column(
        Heading::number("f2_lower_95", "", "Lower end of the 95 % interval of F2, second figure of merit of a box cooker").or_null(),
        |one| of(one, |found| found.f2.as_ref(), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("f2_upper_95", "", "Upper end of the 95 % interval of F2, second figure of merit of a box cooker").or_null(),
        |one| of(one, |found| found.f2.as_ref(), |figure| figure.interval.upper),
    ),
    column(
        Heading::number("box_boiling_time_s", "s", "Time to boil from ambient by F1 and F2, in the sun of the test").or_null(),
        |one| of(one, |found| found.boiling.as_ref().map(|boiling| &boiling.time_s), |figure| figure.value),
    ),
    column(
        Heading::number("box_boiling_time_lower_95_s", "s", "Lower end of the 95 % interval of time to boil from ambient by F1 and F2, in the sun of the test").or_null(),
        |one| of(one, |found| found.boiling.as_ref().map(|boiling| &boiling.time_s), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("box_boiling_time_upper_95_s", "s", "Upper end of the 95 % interval of time to boil from ambient by F1 and F2, in the sun of the test").or_null(),
        |one| of(one, |found| found.boiling.as_ref().map(|boiling| &boiling.time_s), |figure| figure.interval.upper),
    ),
];

fn of(
    one: &Assessment,
    which: fn(&BoxFigures) -> Option<&Derived>,
    part: fn(&Figure) -> f64,
) -> Cell {
    let found = one.box_figures.as_ref().and_then(which);
    found.map(|derived| part(&derived.figure)).into()
}
