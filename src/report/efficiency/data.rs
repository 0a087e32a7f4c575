//! Energy and exergy as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::procedure::uncertainty::Derived;
use crate::report::data::finding::{FindingEntry, finding_entry};

/// What share of the sunlight on the intercept area the water keeps, over the sound intervals.
#[derive(Debug, Serialize, JsonSchema)]
pub struct EfficiencyEntry {
    /// Heat over sunlight, a fraction.
    energy: f64,
    /// Ends of its interval for 95 %.
    energy_interval_95: [f64; 2],
    /// Exergy over that of the sunlight, a fraction.
    exergy: f64,
    /// Ends of its interval for 95 %.
    exergy_interval_95: [f64; 2],
    /// Vertex of the parabola of exergy over the temperature difference, W; null where that is
    /// no highest point among the intervals.
    peak_exergy_w: Option<f64>,
    /// Ends of its interval for 95 %, W.
    peak_exergy_interval_95_w: Option<[f64; 2]>,
    /// Where it lies, K.
    peak_difference_k: Option<f64>,
    /// The peak over the exergy of the heat that is lost there; null where that is not known.
    quality_factor: Option<f64>,
    /// Ends of its interval for 95 %.
    quality_factor_interval_95: Option<[f64; 2]>,
    /// Number of intervals.
    intervals: usize,
    /// Lowest and highest temperature of the water in them, °C.
    water_range_c: [f64; 2],
    /// Of them, W/m².
    mean_irradiance_w_m2: f64,
    /// What weakens them.
    findings: Vec<FindingEntry>,
}

/// Energy and exergy; `None` without a sound interval, or where they are left out.
pub fn efficiency_entry(assessment: &Assessment) -> Option<EfficiencyEntry> {
    let found = assessment.efficiency.as_ref()?;
    let ends = |one: &Derived| [one.figure.interval.lower, one.figure.interval.upper];
    let peak = found.peak.as_ref().ok();
    let findings = found.findings.iter();
    Some(EfficiencyEntry {
        energy: found.energy.figure.value,
        energy_interval_95: ends(&found.energy),
        exergy: found.exergy.figure.value,
        exergy_interval_95: ends(&found.exergy),
        peak_exergy_w: peak.map(|one| one.exergy_w.figure.value),
        peak_exergy_interval_95_w: peak.map(|one| ends(&one.exergy_w)),
        peak_difference_k: peak.map(|one| one.difference_k),
        quality_factor: peak.and_then(|one| one.quality_factor).map(|one| one.value),
        quality_factor_interval_95: peak
            .and_then(|one| one.quality_factor)
            .map(|one| [one.interval.lower, one.interval.upper]),
        intervals: found.steps.len(),
        water_range_c: [found.water_c.lower, found.water_c.upper],
        mean_irradiance_w_m2: found.mean_irradiance_w_m2,
        findings: findings
            .map(|one| finding_entry(one.code.code(), one))
            .collect(),
    })
}
