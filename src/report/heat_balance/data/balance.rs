//! The heat balance as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::report::data::figure::{FigureEntry, figure_entry};
use crate::report::data::finding::{FindingEntry, finding_entry};

/// P = g·G − u·Td, fitted without intercept to every interval with sound readings, whatever the
/// practice says of its weather and hour: P the power that the water takes up, G the irradiance,
/// Td the temperature difference.
#[derive(Debug, Serialize, JsonSchema)]
pub struct BalanceEntry {
    /// Number of intervals that it rests on.
    intervals: usize,
    /// Minutes from one reading to the next, where they are too far apart for any interval of the
    /// practice, and the steps between them serve; else null.
    readings_apart_min: Option<f64>,
    /// Number of local dates with such an interval.
    days: usize,
    /// Of these intervals, W/m².
    mean_irradiance_w_m2: f64,
    /// Lowest and highest mean irradiance of such an interval, W/m².
    irradiance_range_w_m2: [f64; 2],
    /// g: W of gain for each W/m² of irradiance, m².
    gain_m2: FigureEntry,
    /// u, W/K.
    loss_w_per_k: FigureEntry,
    /// 700 W/m² · g − 50 K · u, W.
    power_700_50_w: FigureEntry,
    /// What scaling in proportion to irradiance adds to Ps(50), by u and the mean irradiance of
    /// the used intervals, W; null without a rating.
    scaling_in_ps50_w: Option<f64>,
    /// The heat of the vessels is in gain, loss and power; what scaling adds is of the water
    /// alone, as Ps(50) is.
    counts_vessels: bool,
    /// g/u, K m²/W; null where the loss may be none.
    opto_thermal_ratio_k_m2_per_w: Option<FigureEntry>,
    /// What weakens it.
    findings: Vec<FindingEntry>,
}

/// The heat balance; `None` where it cannot be fitted.
pub fn balance_entry(assessment: &Assessment) -> Option<BalanceEntry> {
    let found = assessment.heat_balance.as_ref()?;
    let findings = found.findings.iter();
    Some(BalanceEntry {
        intervals: found.intervals,
        readings_apart_min: found.far_apart.as_ref().map(|one| one.step_min),
        days: found.dates.len(),
        mean_irradiance_w_m2: found.mean_irradiance_w_m2,
        irradiance_range_w_m2: [found.irradiance_w_m2.lower, found.irradiance_w_m2.upper],
        gain_m2: figure_entry(&found.gain_m2),
        loss_w_per_k: figure_entry(&found.loss_w_per_k),
        power_700_50_w: figure_entry(&found.power_700_50_w),
        scaling_in_ps50_w: assessment
            .water_balance
            .as_ref()
            .and_then(|of_water| of_water.scaling_in_ps50_w(&assessment.s580)),
        counts_vessels: found.counts_vessels,
        opto_thermal_ratio_k_m2_per_w: found.opto_thermal_ratio.as_ref().map(figure_entry),
        findings: findings
            .map(|finding| finding_entry(finding.code.code(), finding))
            .collect(),
    })
}
