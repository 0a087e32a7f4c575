//! A guard band: the uncertainty of what is held against a limit counts against it.

use super::limits::LimitKey;
use crate::campaign::classes::InstrumentKind;
use crate::campaign::model::{Instrument, Instruments};
use crate::campaign::standard_uncertainty::Uncertainty;
use crate::procedure::sources::{Source, common_errors, standard_of};
use crate::units::SECONDS_PER_HOUR;
use simmerline_math::{hypot, squared};

/// Expanded over standard uncertainty.
pub const COVERAGE_FACTOR: f64 = 2.0;

/// Expanded uncertainties (k = 2) of what is held against limits: as stated, else of the class
/// named, else of the most cautious class. Intercept area, site and counts are taken as exact.
///
/// # Source
/// JCGM 106:2012, 8.3, and ILAC-G8:09/2019: guarded acceptance with a band as wide as the
/// expanded uncertainty (both from memory).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guard {
    /// Of irradiance as measured or estimated, as a fraction.
    pub irradiance: f64,
    /// Of one water temperature, K.
    pub water_k: f64,
    /// Of an ambient temperature, K.
    pub ambient_k: f64,
    /// Of wind, m/s; `None` where it is not stated, so that no band is known.
    pub wind_m_s: Option<f64>,
    /// Of one reading of the clock, s.
    pub clock_s: f64,
    /// Of the mass of water, as a fraction.
    pub water_mass: f64,
}

impl Guard {
    /// By a campaign's instruments.
    pub fn of(instruments: &Instruments) -> Self {
        let expanded = |instrument: &Instrument, kind: InstrumentKind| {
            COVERAGE_FACTOR * standard_of(instrument, kind).uncertainty.size()
        };
        let wind = instruments.wind_speed.uncertainty;
        Guard {
            irradiance: COVERAGE_FACTOR * irradiance_standard(instruments),
            water_k: expanded(&instruments.water_temperature, InstrumentKind::Temperature),
            ambient_k: expanded(
                &instruments.ambient_temperature,
                InstrumentKind::Temperature,
            ),
            wind_m_s: wind.map(|wind| COVERAGE_FACTOR * wind.size()),
            clock_s: expanded(&instruments.clock, InstrumentKind::Clock),
            water_mass: expanded(&instruments.water_mass, InstrumentKind::Mass),
        }
    }

    /// Expanded uncertainty of a value that is held against a limit, in the limit's unit.
    ///
    /// A difference of water and air has both in quadrature. The range of irradiance is taken
    /// by one sensor, whose error is a share of it.
    pub fn expanded(&self, key: LimitKey, value: f64) -> f64 {
        match key {
            LimitKey::WaterAboveAmbient => hypot(self.water_k, self.ambient_k),
            LimitKey::WaterBelowBoiling | LimitKey::WaterMin | LimitKey::WaterMax => self.water_k,
            LimitKey::AmbientMin | LimitKey::AmbientMax => self.ambient_k,
            LimitKey::IrradianceMin | LimitKey::IrradianceMax | LimitKey::IrradianceRange => {
                self.irradiance * value.abs()
            }
            LimitKey::WindMean | LimitKey::WindGust => self.wind_m_s.unwrap_or(0.0),
            LimitKey::SolarTimeStart | LimitKey::SolarTimeEnd => self.clock_s / SECONDS_PER_HOUR,
            LimitKey::Load => self.water_mass * value,
            LimitKey::Interval
            | LimitKey::LoadTolerance
            | LimitKey::Intervals
            | LimitKey::Days
            | LimitKey::RSquared => 0.0,
        }
    }
}

/// Standard uncertainty of irradiance, as a fraction: the sensor's and that of an estimate.
fn irradiance_standard(instruments: &Instruments) -> f64 {
    let errors = common_errors(instruments, "");
    let of_irradiance = errors
        .iter()
        .filter(|error| error.source == Source::Irradiance || error.source.is_estimate());
    let squares = of_irradiance.filter_map(|error| match error.standard {
        Uncertainty::Relative(fraction) => Some(squared(fraction)),
        _ => None,
    });
    squares.sum::<f64>().sqrt()
}
