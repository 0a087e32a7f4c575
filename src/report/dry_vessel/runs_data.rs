//! Dry runs as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::campaign::kinds::ProcedureKey;
use crate::procedure::Assessment;
use crate::procedure::dry_vessel::dry_run::DryRun;
use crate::report::data::figure::{FigureEntry, figure_entry};
use crate::report::data::finding::{FindingEntry, finding_entry};
use crate::units::rfc3339;

/// One run of the dry vessel. What rests on a plateau is null where there is none.
#[derive(Debug, Serialize, JsonSchema)]
pub struct DryRunEntry {
    /// As in `runs`.
    run: String,
    /// Local date.
    #[schemars(extend("format" = "date"))]
    date: String,
    /// Mean temperature of the vessel in the hottest steady stretch, °C.
    plateau_c: Option<f64>,
    /// Mean in the same stretch, °C.
    ambient_c: Option<f64>,
    /// Mean in the same stretch, W/m², in the plane of the sensor.
    irradiance_w_m2: Option<f64>,
    /// Slope of the vessel's temperature in it, K/min.
    trend_k_per_min: Option<f64>,
    /// Local time with its offset.
    #[schemars(extend("format" = "date-time"))]
    plateau_from: Option<String>,
    /// Local time with its offset.
    #[schemars(extend("format" = "date-time"))]
    plateau_to: Option<String>,
    /// Vessel above ambient for each W/m², K m²/W.
    difference_k_m2_per_w: Option<FigureEntry>,
    /// Highest reading, °C; null without readings of the vessel.
    highest_c: Option<f64>,
    /// Over the first ten minutes, or over the first two readings where these are further apart,
    /// K/min; null with a single reading.
    initial_k_per_min: Option<f64>,
    /// When the vessel reached stated temperatures.
    reached: Vec<ReachedEntry>,
    /// What prevents a plateau.
    findings: Vec<FindingEntry>,
}

/// A temperature, and when it was reached.
#[derive(Debug, Serialize, JsonSchema)]
struct ReachedEntry {
    /// °C.
    c: f64,
    /// From the first reading, s; null where it was not reached, or from the start.
    after_s: Option<f64>,
}

/// The dry runs, in the order of the campaign file; none where it leaves them out.
pub fn dry_run_entries(assessment: &Assessment) -> Vec<DryRunEntry> {
    let procedures = &assessment.tested.campaign.procedures;
    if procedures.leaves_out(ProcedureKey::DryVessel) {
        return Vec::new();
    }
    let runs = assessment.dry_runs.runs.iter();
    runs.map(|run| entry(assessment, run)).collect()
}

fn entry(assessment: &Assessment, found: &DryRun) -> DryRunEntry {
    let run = &assessment.tested.dry_runs[found.run];
    let zone = &assessment.tested.campaign.site.time_zone;
    let plateau = found.plateau.as_ref();
    let time = |time_us: i64| rfc3339(time_us, zone);
    let reached = found.reached.iter();
    let findings = found.findings.iter();
    DryRunEntry {
        run: run.plan.label.clone(),
        date: run.date.to_string(),
        plateau_c: plateau.map(|one| one.vessel_c),
        ambient_c: plateau.map(|one| one.ambient_c),
        irradiance_w_m2: plateau.map(|one| one.irradiance_w_m2),
        trend_k_per_min: plateau.map(|one| one.trend_k_per_min),
        plateau_from: plateau.map(|one| time(one.span.from_us)),
        plateau_to: plateau.map(|one| time(one.span.to_us)),
        difference_k_m2_per_w: found
            .difference
            .as_ref()
            .map(|one| figure_entry(&one.figure)),
        highest_c: found.highest_c,
        initial_k_per_min: found.initial_k_per_min,
        reached: reached
            .map(|one| ReachedEntry {
                c: one.celsius,
                after_s: one.after_s,
            })
            .collect(),
        findings: findings
            .map(|one| finding_entry(one.code.code(), one))
            .collect(),
    }
}
