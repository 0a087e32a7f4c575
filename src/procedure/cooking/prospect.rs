//! What a rated cooker promises: pots, food, months.

use super::pots::{Cooking, Kitchen, cook};
use super::year::{ClearYear, clear_year};
use crate::procedure::s580::S580;
use crate::procedure::tested::Tested;

/// What there is wherever there is a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Prospect {
    /// What the line means for a pot of water.
    pub cooking: Cooking,
    /// What it means for clear days through the year of the last test.
    pub year: ClearYear,
}

/// Reads pots, food and months off the line; `None` without one.
pub fn look_ahead(tested: &Tested, s580: &S580) -> Option<Prospect> {
    let campaign = &tested.campaign;
    let uncertainty = &s580.uncertainty()?.of_line;
    let kitchen = Kitchen {
        tested_kg: s580.mean_load_kg(tested)?,
        mean_ambient_c: s580.mean_ambient_c()?,
        boiling_point_c: tested.boiling_point_c,
        window_s: s580.limits.solar_window_s(),
        wishes: &campaign.wishes,
    };
    let cooking = cook(uncertainty, kitchen);
    let last_year = tested.runs.iter().map(|run| run.date.year()).max()?;
    let year = clear_year(
        &campaign.site,
        last_year,
        uncertainty,
        &cooking,
        s580.limits.irradiance_min_w_m2(),
        campaign.impact.as_ref(),
    );
    Some(Prospect { cooking, year })
}
