//! The figures of a box cooker as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::procedure::box_cooker::figures::{Grade, glass_m2};
use crate::report::data::figure::{FigureEntry, figure_entry};
use crate::report::data::finding::{FindingEntry, finding_entry};

/// The figures of merit of a box cooker.
#[derive(Debug, Serialize, JsonSchema)]
pub struct BoxEntry {
    /// (Tps − Tas)/Hs at the plateaus of the dry runs, K m²/W.
    f1: Option<FigureEntry>,
    /// Over the water's rise, no unit.
    f2: Option<FigureEntry>,
    /// From ambient to the local boiling point, s, under the irradiance and with the load below.
    boiling_time_s: Option<f64>,
    /// Ends of its interval for 95 %, s.
    boiling_time_interval_95_s: Option<[f64; 2]>,
    /// Of the rises, W/m²; null without a time to boil.
    mean_irradiance_w_m2: Option<f64>,
    /// Of the rises, °C; null without a time to boil.
    mean_ambient_c: Option<f64>,
    /// Of the rises, kg; null without a time to boil.
    mean_water_kg: Option<f64>,
    /// Number of rises of the water that F2 rests on.
    rises: usize,
    /// `A` where F1 is surely above its limit; null where it is not, or nobody can tell.
    grade: Option<&'static str>,
    /// Area of the glass that F2 takes, m²: as stated, else the intercept area.
    glazing_area_m2: f64,
    /// Irradiance was not measured in the horizontal plane.
    indicative: bool,
    /// What weakens or prevents them.
    findings: Vec<FindingEntry>,
}

/// The figures; `None` where they do not apply.
pub fn box_entry(assessment: &Assessment) -> Option<BoxEntry> {
    let found = assessment.box_figures.as_ref()?;
    let figure = |one: &crate::procedure::uncertainty::Derived| figure_entry(&one.figure);
    let boiling = found.boiling.as_ref();
    let findings = found.findings.iter();
    Some(BoxEntry {
        f1: found.f1.as_ref().map(figure),
        f2: found.f2.as_ref().map(figure),
        boiling_time_s: boiling.map(|one| one.time_s.figure.value),
        boiling_time_interval_95_s: boiling.map(|one| {
            let ends = one.time_s.figure.interval;
            [ends.lower, ends.upper]
        }),
        mean_irradiance_w_m2: boiling.map(|one| one.irradiance_w_m2),
        mean_ambient_c: boiling.map(|one| one.ambient_c),
        mean_water_kg: boiling.map(|one| one.water_kg),
        rises: found.stretches.len(),
        grade: (found.grade == Some(Grade::A)).then_some("A"),
        glazing_area_m2: glass_m2(&assessment.tested),
        indicative: found.is_indicative,
        findings: findings
            .map(|one| finding_entry(one.code.code(), one))
            .collect(),
    })
}
