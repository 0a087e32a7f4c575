//! What an error that all intervals share does to the line.

use crate::procedure::sources::{CommonError, Source};
use crate::stats::line::Line;

/// What the line read at `at_k` changes by, per unit (1 or K) of a reading too high, W.
///
/// A scale common to all powers is one of the whole line: −Ps for irradiance and time,
/// +Ps for mass and specific heat. An offset of the water cancels in its rise and
/// moves Td: −b, and +b for ambient.
pub fn sensitivity_w(source: Source, line: &Line, at_k: f64) -> f64 {
    let power_w = line.predict(at_k);
    match source {
        Source::Irradiance
        | Source::ClearSky
        | Source::Conversion
        | Source::Distance
        | Source::ClockRate => -power_w,
        Source::WaterMass | Source::SpecificHeat => power_w,
        Source::WaterTemperature => -line.slope,
        Source::AmbientTemperature => line.slope,
    }
}

/// What one standard uncertainty of an error changes the line by at `at_k`, with its sign, W.
pub fn effect_w(error: &CommonError, line: &Line, at_k: f64) -> f64 {
    sensitivity_w(error.source, line, at_k) * error.standard.size()
}
