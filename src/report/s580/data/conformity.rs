//! Limits, and whether a result conforms, as data: parts of `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::s580::Limits;
use crate::procedure::s580::conformity::Conformity;
use crate::procedure::s580::guard::{COVERAGE_FACTOR, Guard};
use crate::procedure::s580::limits::S580Limit;
use crate::report::data::finding::{FindingEntry, LEVELS, finding_entry};

/// A limit of the practice, or the campaign's own in its place.
#[derive(Debug, Serialize, JsonSchema)]
pub struct LimitEntry {
    /// Reason or finding that breaking it gives; `no-interval` of the length of an interval.
    code: &'static str,
    /// Its key under `[limits]` of the campaign file; null where it cannot be changed.
    key: Option<&'static str>,
    /// In `unit`.
    limit: f64,
    /// Of the limit; `fraction` of a share of another.
    unit: &'static str,
    /// Where it is from.
    source: &'static str,
    /// `requirement` or `recommendation`.
    standing: &'static str,
    /// The campaign has put its own in place of the practice's.
    changed: bool,
}

/// Expanded uncertainties that count against limits, where a guard band is asked for.
#[derive(Debug, Serialize, JsonSchema)]
struct GuardEntry {
    /// Expanded over standard uncertainty.
    coverage_factor: f64,
    /// Of irradiance, as a fraction.
    irradiance_relative: f64,
    /// Of water temperature, K.
    water_k: f64,
    /// Of ambient temperature, K.
    ambient_k: f64,
    /// Of wind, m/s; null where it is not stated, so that no band is known.
    wind_m_s: Option<f64>,
    /// Of one reading of the clock, s.
    clock_s: f64,
    /// Of the mass of water, as a fraction.
    water_mass_relative: f64,
}

/// Whether the rating conforms to the practice.
#[derive(Debug, Serialize, JsonSchema)]
pub struct ConformityEntry {
    /// `conforms`, `conforms-with-notes`, `indicative` or `not-valid`; `indicative` too where there
    /// is no rating.
    #[schemars(extend("enum" = LEVELS))]
    level: &'static str,
    /// What lowers the level.
    findings: Vec<FindingEntry>,
    /// Intervals and days still missing, in words; null where none are.
    missing: Option<String>,
    /// Guarded acceptance: a limit is met where the value with its expanded uncertainty is
    /// within; null for simple acceptance.
    guard: Option<GuardEntry>,
}

/// A limit.
pub fn limit_entry(row: &S580Limit) -> LimitEntry {
    LimitEntry {
        code: row.key.breach().code(),
        key: row.word,
        limit: row.value,
        unit: row.unit,
        source: row.source,
        standing: row.standing.word(),
        changed: row.changed,
    }
}

/// The level, and what lowers it.
pub fn conformity_entry(conformity: &Conformity, limits: &Limits) -> ConformityEntry {
    let findings = conformity.findings.iter();
    ConformityEntry {
        level: conformity.level.code_in_files(),
        findings: findings
            .map(|finding| finding_entry(finding.code.code(), finding))
            .collect(),
        missing: conformity.missing.as_ref().map(ToString::to_string),
        guard: limits.guard.map(guard_entry),
    }
}

fn guard_entry(guard: Guard) -> GuardEntry {
    GuardEntry {
        coverage_factor: COVERAGE_FACTOR,
        irradiance_relative: guard.irradiance,
        water_k: guard.water_k,
        ambient_k: guard.ambient_k,
        wind_m_s: guard.wind_m_s,
        clock_s: guard.clock_s,
        water_mass_relative: guard.water_mass,
    }
}
