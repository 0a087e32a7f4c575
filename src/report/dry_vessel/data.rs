//! Tests of the dry vessel as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::campaign::model::StagnationLight;
use crate::procedure::Assessment;

/// One test of the dry vessel.
#[derive(Debug, Serialize, JsonSchema)]
pub struct StagnationEntry {
    /// Local date.
    #[schemars(extend("format" = "date"))]
    date: String,
    /// Highest steady temperature of the vessel, °C.
    plateau_c: f64,
    /// °C.
    ambient_c: f64,
    /// W/m².
    irradiance_w_m2: f64,
    /// The irradiance is that of a clear-sky model.
    irradiance_estimated: bool,
    /// Vessel above ambient for each W/m², K m²/W.
    difference_per_irradiance_k_m2_per_w: f64,
    /// Of it, for 95 %, K m²/W.
    expanded_uncertainty_k_m2_per_w: f64,
}

/// The tests of the dry vessel.
pub fn stagnation_entries(assessment: &Assessment) -> Vec<StagnationEntry> {
    let tests = assessment.tested.campaign.stagnations.iter();
    tests
        .zip(&assessment.dry_vessel)
        .map(|(test, found)| StagnationEntry {
            date: test.date.to_string(),
            plateau_c: test.plateau_c,
            ambient_c: test.ambient_c,
            irradiance_w_m2: found.irradiance_w_m2,
            irradiance_estimated: test.light == StagnationLight::ClearSky,
            difference_per_irradiance_k_m2_per_w: found.per_irradiance_k_m2_w,
            expanded_uncertainty_k_m2_per_w: found.expanded_k_m2_w,
        })
        .collect()
}
