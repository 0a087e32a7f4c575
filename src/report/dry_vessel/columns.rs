//! How hot the dry vessel gets, in the table of campaigns.

use crate::procedure::Assessment;
use crate::procedure::dry_vessel::DryRuns;
use crate::procedure::uncertainty::{Derived, Figure};
use crate::report::data::tables::columns::{Cell, Column, Heading, OfCampaign, column};

/// How hot the dry vessel gets, in the table of campaigns. Null where there is none.
pub const DRY: &[Column<OfCampaign>] = &[
    column(
        Heading::number("dry_difference_k_m2_per_w", "K m²/W", "Dry vessel above ambient for each W/m², mean of the plateaus").or_null(),
        |one| of(one, |found| found.difference.as_ref(), |figure| figure.value),
    ),
    column(
        Heading::number("dry_difference_lower_95_k_m2_per_w", "K m²/W", "Lower end of the 95 % interval of dry vessel above ambient for each W/m², mean of the plateaus").or_null(),
        |one| of(one, |found| found.difference.as_ref(), |figure| figure.interval.lower),
    ),
    column(
        Heading::number("dry_difference_upper_95_k_m2_per_w", "K m²/W", "Upper end of the 95 % interval of dry vessel above ambient for each W/m², mean of the plateaus").or_null(),
        |one| of(one, |found| found.difference.as_ref(), |figure| figure.interval.upper),
    ),
];

fn of(one: &Assessment, which: fn(&DryRuns) -> Option<&Derived>, part: fn(&Figure) -> f64) -> Cell {
    let found = which(&one.dry_runs);
    found.map(|derived| part(&derived.figure)).into()
}
