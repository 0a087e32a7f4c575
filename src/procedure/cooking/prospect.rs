//! What a rated cooker promises: pots, food, months.

use super::pots::{Cooking, Kitchen, cook};
use super::year::{ClearYear, clear_year};
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::s580::S580;
use crate::procedure::tested::Tested;

/// What there is wherever there is a line and a heat balance.
#[derive(Debug, Clone, PartialEq)]
pub struct Prospect {
    /// What the test means for a pot of water.
    pub cooking: Cooking,
    /// What it means for clear days through the year of the last test; `None` where the sensor
    /// lay flat, so that the gain is not for the plane that faces the sun.
    pub year: Option<ClearYear>,
}

/// Reads pots and food off the line at the irradiance of the test, or off the heat balance at
/// the one that the campaign asks for, and the months off the heat balance; `None` without one
/// of them.
pub fn look_ahead(tested: &Tested, s580: &S580, balance: Option<&HeatBalance>) -> Option<Prospect> {
    let campaign = &tested.campaign;
    let balance = balance.filter(|_| !s580.is_not_valid())?;
    let of_test_w_m2 = s580.mean_irradiance_w_m2()?;
    let power = match campaign.wishes.irradiance_w_m2 {
        Some(asked_w_m2) => balance.power_at(asked_w_m2),
        None => s580.uncertainty()?.of_line.power_at(of_test_w_m2),
    };
    let kitchen = Kitchen {
        tested_kg: s580.mean_load_kg(tested)?,
        mean_ambient_c: s580.mean_ambient_c()?,
        irradiance_w_m2: campaign.wishes.irradiance_w_m2.unwrap_or(of_test_w_m2),
        boiling_point_c: tested.boiling_point_c,
        window_s: s580.limits.solar_window_s(),
        wishes: &campaign.wishes,
    };
    let cooking = cook(&power, kitchen);
    let last_year = tested.runs.iter().map(|run| run.date.year()).max()?;
    let year = (!tested.lies_flat()).then(|| {
        clear_year(
            &campaign.site,
            last_year,
            balance,
            &cooking,
            s580.limits.irradiance_min_w_m2(),
            campaign.impact.as_ref(),
        )
    });
    Some(Prospect { cooking, year })
}
