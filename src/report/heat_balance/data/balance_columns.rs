//! The heat balance in the table of campaigns, and in that of intervals.

use crate::procedure::Assessment;
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::heat_balance::fit::is_sound;
use crate::procedure::uncertainty::Figure;
use crate::report::data::tables::columns::{
    Cell, Column, Heading, Kind, OfCampaign, OfInterval, column,
};

/// Gain, loss and power at 700 W/m² and 50 K; null where they cannot be fitted.
pub const BALANCED: &[Column<OfCampaign>] = &[
    column(
        Heading::number("gain_m2", "m²", "g of the heat balance P = g G − u Td: W of gain for each W/m²").or_null(),
        |one| of(one, |found| &found.gain_m2, |figure| figure.value),
    ),
    column(
        Heading::number("gain_standard_uncertainty_m2", "m²", "Combined standard uncertainty of g (k = 1)").or_null(),
        |one| of(one, |found| &found.gain_m2, |figure| figure.standard_uncertainty),
    ),
    column(
        Heading::number("gain_lower_95_m2", "m²", "Lower end of the 95 % interval of g: scatter, days and instruments").or_null(),
        |one| of(one, |found| &found.gain_m2, |figure| figure.interval.lower),
    ),
    column(
        Heading::number("gain_upper_95_m2", "m²", "Upper end of the 95 % interval of g: scatter, days and instruments").or_null(),
        |one| of(one, |found| &found.gain_m2, |figure| figure.interval.upper),
    ),
    column(
        Heading::number("loss_w_per_k", "W/K", "u of the heat balance P = g G − u Td").or_null(),
        |one| of(one, |found| &found.loss_w_per_k, |figure| figure.value),
    ),
    column(
        Heading::number("loss_standard_uncertainty_w_per_k", "W/K", "Combined standard uncertainty of u (k = 1)").or_null(),
        |one| of(one, |found| &found.loss_w_per_k, |figure| figure.standard_uncertainty),
    ),
    column(
        Heading::number("loss_lower_95_w_per_k", "W/K", "Lower end of the 95 % interval of u: scatter, days and instruments").or_null(),
        |one| of(one, |found| &found.loss_w_per_k, |figure| figure.interval.lower),
    ),
    column(
        Heading::number("loss_upper_95_w_per_k", "W/K", "Upper end of the 95 % interval of u: scatter, days and instruments").or_null(),
        |one| of(one, |found| &found.loss_w_per_k, |figure| figure.interval.upper),
    ),
    column(
        Heading::number("power_700_50_w", "W", "Power at 700 W/m² and 50 K by the heat balance").or_null(),
        |one| of(one, |found| &found.power_700_50_w, |figure| figure.value),
    ),
    column(
        Heading::number("power_700_50_standard_uncertainty_w", "W", "Combined standard uncertainty of the power at 700 W/m² and 50 K (k = 1)").or_null(),
        |one| of(one, |found| &found.power_700_50_w, |figure| figure.standard_uncertainty),
    ),
    column(
        Heading::number("power_700_50_lower_95_w", "W", "Lower end of the 95 % interval of the power at 700 W/m² and 50 K: scatter, days and instruments").or_null(),
        |one| of(one, |found| &found.power_700_50_w, |figure| figure.interval.lower),
    ),
    column(
        Heading::number("power_700_50_upper_95_w", "W", "Upper end of the 95 % interval of the power at 700 W/m² and 50 K: scatter, days and instruments").or_null(),
        |one| of(one, |found| &found.power_700_50_w, |figure| figure.interval.upper),
    ),
];

fn of(one: &Assessment, which: fn(&HeatBalance) -> &Figure, part: fn(&Figure) -> f64) -> Cell {
    let found = one.heat_balance.as_ref();
    found.map(|found| part(which(found))).into()
}

/// Which intervals they rest on.
pub const IN_BALANCE: &[Column<OfInterval>] = &[column(
    Heading::new(
        "in_heat_balance",
        Kind::Truth,
        "The heat balance rests on it; false for all where gain and loss cannot be fitted",
    ),
    |campaign, interval| (campaign.heat_balance.is_some() && is_sound(interval)).into(),
)];
