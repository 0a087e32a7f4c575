//! The load: water in the vessels, and the heat that the vessels store.

use super::locate::Checker;
use super::materials::{MATERIALS, VesselHeat};
use super::schema::LoadTable;
use super::wording::words;
use crate::believable::{HEAVIEST_VESSELS_KG, MOST_VESSEL_HEAT_J_PER_K, MOST_WATER_KG};
use crate::bounds::VESSELS;
use crate::units::short;

/// The water in the vessels.
pub struct Load {
    /// `None` where it is not stated.
    pub water_kg: Option<f64>,
    /// In each vessel, kg; empty where they are not told apart.
    pub vessel_water_kg: Vec<f64>,
    pub vessels: u32,
    /// `None` where nothing is stated.
    pub vessel_heat: Option<VesselHeat>,
}

/// The key of the load.
const WATER: &str = "load.water_kg";
/// How far the vessels may add up to something else than the load: rounding.
const LOAD_ROUNDING: f64 = 2e-3;

/// The load of the campaign; `needs_water` where a run heats some.
pub fn check_load(checker: &mut Checker<'_>, written: &LoadTable, needs_water: bool) -> Load {
    let each = written.vessel_water_kg.clone().unwrap_or_default();
    let counted = each.len().max(written.vessels.unwrap_or(0) as usize);
    checker.bound("load.vessels", counted, &VESSELS, "count the vessels");
    let vessels = written.vessels.unwrap_or(each.len().max(1) as u32);
    if vessels == 0 || (!each.is_empty() && vessels as usize != each.len()) {
        let what = match each.len() {
            0 => format!("found {vessels}, expected at least 1"),
            each => format!("found {vessels}, and vessel_water_kg has {each}"),
        };
        checker.problem("load.vessels", what, "count the vessels");
    }
    if needs_water && written.water_kg.is_none() && each.is_empty() {
        const DRY: &str = "or write kind = \"dry\" in each [[run]] of an empty vessel";
        let hint = match checker.how_to_fill_in(WATER) {
            Some(fill_in) => format!("weigh the water and {fill_in}; {DRY}"),
            None => format!("weigh the water; {DRY}"),
        };
        checker.problem(WATER, "the key \"water_kg\" is missing", hint);
    }
    Load {
        water_kg: check_water(checker, "load", written.water_kg, &each),
        vessel_heat: check_vessel_heat(checker, written),
        vessel_water_kg: each,
        vessels,
    }
}

/// Water of a table, kg: the one number, or the sum over the vessels.
pub fn check_water(
    checker: &mut Checker<'_>,
    table: &str,
    water_kg: Option<f64>,
    each: &[f64],
) -> Option<f64> {
    for &kg in each {
        checker.positive(&format!("{table}.vessel_water_kg"), kg, MOST_WATER_KG, "kg");
    }
    let sum: f64 = each.iter().sum();
    let Some(water_kg) = water_kg else {
        return (!each.is_empty()).then_some(sum);
    };
    let is_right = checker.positive(&format!("{table}.water_kg"), water_kg, MOST_WATER_KG, "kg");
    if is_right && !each.is_empty() && (sum - water_kg).abs() > LOAD_ROUNDING * water_kg {
        checker.problem(
            &format!("{table}.vessel_water_kg"),
            format!(
                "adds up to {} kg, and water_kg is {water_kg} kg",
                short(sum)
            ),
            "correct one of the two, or delete water_kg",
        );
    }
    Some(water_kg)
}

/// The heat capacity of the vessels: stated, or of their mass and material.
fn check_vessel_heat(checker: &mut Checker<'_>, written: &LoadTable) -> Option<VesselHeat> {
    const STATED: &str = "load.vessel_heat_capacity_j_per_k";
    const MASS: &str = "load.vessel_mass_kg";
    const MATERIAL: &str = "load.vessel_material";
    if let Some(kg) = written.vessel_mass_kg {
        checker.positive(MASS, kg, HEAVIEST_VESSELS_KG, "kg");
    }
    let material = written.vessel_material.as_deref().and_then(|word| {
        let found = MATERIALS.iter().find(|material| material.word == word);
        if found.is_none() {
            let known = words(MATERIALS.each_ref().map(|material| material.word));
            checker.problem(
                MATERIAL,
                format!("found \"{word}\", expected one of {known}"),
                "or state vessel_heat_capacity_j_per_k instead: mass times specific heat, in J/K",
            );
        }
        found
    });
    match (
        written.vessel_heat_capacity_j_per_k,
        written.vessel_mass_kg,
        &written.vessel_material,
    ) {
        (None, None, None) => None,
        (Some(j_per_k), None, None) => {
            checker.positive(STATED, j_per_k, MOST_VESSEL_HEAT_J_PER_K, "J/K");
            Some(VesselHeat::Stated(j_per_k))
        }
        (Some(_), _, _) => {
            checker.problem(
                STATED,
                "both the heat capacity and mass or material are given, expected one",
                "keep the one you know and delete the other",
            );
            None
        }
        (None, Some(kg), Some(_)) => Some(VesselHeat::Weighed(kg, material?)),
        (None, Some(_), None) => {
            checker.problem(
                MASS,
                "has no material beside it",
                "add vessel_material = \"…\", such as \"aluminium\" or \"stainless-steel\"",
            );
            None
        }
        (None, None, Some(_)) => {
            checker.problem(
                MATERIAL,
                "has no mass beside it",
                "weigh the empty vessels with their lids and add vessel_mass_kg",
            );
            None
        }
    }
}
