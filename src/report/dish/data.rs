//! The figures of a concentrating cooker as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::procedure::dish::cooling::Cooling;
use crate::procedure::uncertainty::shift::Shift;
use crate::report::data::figure::{FigureEntry, figure_entry};
use crate::report::data::finding::{FindingEntry, finding_entry};

/// The figures of a concentrating cooker.
#[derive(Debug, Serialize, JsonSchema)]
pub struct DishEntry {
    /// τ0 of cooling, s.
    time_constant_s: Option<f64>,
    /// Ends of its interval for 95 %, s.
    time_constant_interval_95_s: Option<[f64; 2]>,
    /// F′UL, W/(m² K) of the vessels' surface; null where that is not stated.
    loss_factor_w_per_m2_k: Option<FigureEntry>,
    /// F′UL times that surface, W/K.
    loss_w_per_k: Option<FigureEntry>,
    /// F′η0, no unit.
    optical_factor: Option<FigureEntry>,
    /// From ambient to the local boiling point, s, under the irradiance and with the load below.
    boiling_time_s: Option<f64>,
    /// Ends of its interval for 95 %, s.
    boiling_time_interval_95_s: Option<[f64; 2]>,
    /// Of the heatings, W/m²; null without a time to boil.
    mean_irradiance_w_m2: Option<f64>,
    /// Of the heatings, °C; null without a time to boil.
    mean_ambient_c: Option<f64>,
    /// Of the heatings, kg; null without a time to boil.
    mean_water_kg: Option<f64>,
    /// Heat capacity of the vessels, J/K; null where it is not stated and not counted.
    vessel_heat_capacity_j_per_k: Option<f64>,
    /// The cooling runs that count.
    cooling_runs: Vec<CoolingEntry>,
    /// Number of heatings that count.
    heatings: usize,
    /// Irradiance was not measured in the plane normal to the beam.
    indicative: bool,
    /// What weakens or prevents them.
    findings: Vec<FindingEntry>,
}

/// A cooling run.
#[derive(Debug, Serialize, JsonSchema)]
struct CoolingEntry {
    /// The log, with the date where it holds several runs.
    run: String,
    /// Local date.
    #[schemars(extend("format" = "date"))]
    date: String,
    /// First temperature of the water that counts, °C.
    from_c: f64,
    /// The last one, °C.
    to_c: f64,
    /// Mean, °C.
    ambient_c: f64,
    /// Water, kg.
    water_kg: f64,
    /// Number of readings that count.
    readings: usize,
    /// τ0 of this run, s.
    time_constant_s: Option<f64>,
}

fn cooling_entry(assessment: &Assessment, cooling: &Cooling) -> CoolingEntry {
    let run = &assessment.tested.cooling_runs[cooling.run];
    CoolingEntry {
        run: run.plan.label.clone(),
        date: cooling.date.to_string(),
        from_c: cooling.from_c,
        to_c: cooling.to_c,
        ambient_c: cooling.ambient_c,
        water_kg: cooling.water_kg,
        readings: cooling.readings,
        time_constant_s: cooling.rate_per_s(&Shift::NONE).map(|rate| 1.0 / rate),
    }
}

/// The figures; `None` where they do not apply.
pub fn dish_entry(assessment: &Assessment) -> Option<DishEntry> {
    let found = assessment.dish_figures.as_ref()?;
    let figure = |one: &crate::procedure::uncertainty::Derived| figure_entry(&one.figure);
    let ends = |one: &crate::procedure::uncertainty::Derived| {
        [one.figure.interval.lower, one.figure.interval.upper]
    };
    let boiling = found.boiling.as_ref();
    let time = found.time_constant_s.as_ref();
    let findings = found.findings.iter();
    let vessels = assessment.tested.campaign.vessel_heat;
    Some(DishEntry {
        time_constant_s: time.map(|one| one.figure.value),
        time_constant_interval_95_s: time.map(ends),
        loss_factor_w_per_m2_k: found.loss_factor.as_ref().map(figure),
        loss_w_per_k: found.loss_w_per_k.as_ref().map(figure),
        optical_factor: found.optical_factor.as_ref().map(figure),
        boiling_time_s: boiling.map(|one| one.time_s.figure.value),
        boiling_time_interval_95_s: boiling.map(|one| ends(&one.time_s)),
        mean_irradiance_w_m2: boiling.map(|one| one.irradiance_w_m2),
        mean_ambient_c: boiling.map(|one| one.ambient_c),
        mean_water_kg: boiling.map(|one| one.water_kg),
        vessel_heat_capacity_j_per_k: vessels.map(|heat| heat.j_per_k()),
        cooling_runs: found
            .coolings
            .iter()
            .map(|cooling| cooling_entry(assessment, cooling))
            .collect(),
        heatings: found.heatings.len(),
        indicative: found.is_indicative,
        findings: findings
            .map(|one| finding_entry(one.code.code(), one))
            .collect(),
    })
}
