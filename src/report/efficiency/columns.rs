//! Energy and exergy, in the table of campaigns.

use crate::procedure::Assessment;
use crate::procedure::efficiency::Efficiency;
use crate::procedure::uncertainty::{Derived, Figure};
use crate::report::data::tables::columns::{Cell, Column, Heading, OfCampaign, column};

/// Energy and exergy, in the table of campaigns. Null where there is none.
pub const OF_EFFICIENCY: &[Column<OfCampaign>] = &[
    column(
        Heading::number("energy_efficiency", "", "Energy efficiency, a fraction").or_null(),
        |one| of(one, |found| Some(&found.energy), |figure| figure.value),
    ),
    column(
        Heading::number(
            "energy_efficiency_lower_95",
            "",
            "Lower end of the 95 % interval of energy efficiency, a fraction",
        )
        .or_null(),
        |one| {
            of(
                one,
                |found| Some(&found.energy),
                |figure| figure.interval.lower,
            )
        },
    ),
    column(
        Heading::number(
            "energy_efficiency_upper_95",
            "",
            "Upper end of the 95 % interval of energy efficiency, a fraction",
        )
        .or_null(),
        |one| {
            of(
                one,
                |found| Some(&found.energy),
                |figure| figure.interval.upper,
            )
        },
    ),
    column(
        Heading::number("exergy_efficiency", "", "Exergy efficiency, a fraction").or_null(),
        |one| of(one, |found| Some(&found.exergy), |figure| figure.value),
    ),
    column(
        Heading::number(
            "exergy_efficiency_lower_95",
            "",
            "Lower end of the 95 % interval of exergy efficiency, a fraction",
        )
        .or_null(),
        |one| {
            of(
                one,
                |found| Some(&found.exergy),
                |figure| figure.interval.lower,
            )
        },
    ),
    column(
        Heading::number(
            "exergy_efficiency_upper_95",
            "",
            "Upper end of the 95 % interval of exergy efficiency, a fraction",
        )
        .or_null(),
        |one| {
            of(
                one,
                |found| Some(&found.exergy),
                |figure| figure.interval.upper,
            )
        },
    ),
    column(
        Heading::number("peak_exergy_w", "W", "Peak exergy, in the sun of the test").or_null(),
        |one| {
            of(
                one,
                |found| found.peak.as_ref().ok().map(|peak| &peak.exergy_w),
                |figure| figure.value,
            )
        },
    ),
    column(
        Heading::number(
            "peak_exergy_lower_95_w",
            "W",
            "Lower end of the 95 % interval of peak exergy, in the sun of the test",
        )
        .or_null(),
        |one| {
            of(
                one,
                |found| found.peak.as_ref().ok().map(|peak| &peak.exergy_w),
                |figure| figure.interval.lower,
            )
        },
    ),
    column(
        Heading::number(
            "peak_exergy_upper_95_w",
            "W",
            "Upper end of the 95 % interval of peak exergy, in the sun of the test",
        )
        .or_null(),
        |one| {
            of(
                one,
                |found| found.peak.as_ref().ok().map(|peak| &peak.exergy_w),
                |figure| figure.interval.upper,
            )
        },
    ),
    column(
        Heading::number(
            "quality_factor",
            "",
            "Peak exergy over the exergy of the heat lost there",
        )
        .or_null(),
        |one| {
            let found = one.efficiency.as_ref();
            let peak = found.and_then(|found| found.peak.as_ref().ok());
            peak.and_then(|peak| peak.quality_factor)
                .map(|one| one.value)
                .into()
        },
    ),
];

fn of(
    one: &Assessment,
    which: fn(&Efficiency) -> Option<&Derived>,
    part: fn(&Figure) -> f64,
) -> Cell {
    let found = one.efficiency.as_ref().and_then(which);
    found.map(|derived| part(&derived.figure)).into()
}
