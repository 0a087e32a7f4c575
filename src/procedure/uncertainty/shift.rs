//! What errors that all readings share do to them.

use crate::procedure::sources::{SCALE_ABOUT_C, Source};

/// Readings that are off, all alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// Factors of irradiance, of the water's heat capacity (mass and specific heat), and of
    /// time.
    pub irradiance: f64,
    pub water: f64,
    pub time: f64,
    /// Offset (K) and relative scale error of each thermometer.
    pub water_k: f64,
    pub water_scale: f64,
    pub ambient_k: f64,
    pub ambient_scale: f64,
    /// Offset of the dry vessel's thermometer, K.
    pub vessel_k: f64,
    /// Factor of the heat capacity of the vessels.
    pub vessel_heat: f64,
}

impl Shift {
    /// Readings as they are.
    pub const NONE: Shift = Shift {
        irradiance: 1.0,
        water: 1.0,
        time: 1.0,
        water_k: 0.0,
        water_scale: 0.0,
        ambient_k: 0.0,
        ambient_scale: 0.0,
        vessel_k: 0.0,
        vessel_heat: 1.0,
    };

    /// The same with a source's readings too high by `size`, a fraction or K.
    #[inline]
    pub fn add(&mut self, source: Source, size: f64) {
        match source {
            Source::Irradiance | Source::ClearSky | Source::Conversion | Source::Distance => {
                self.irradiance += size;
            }
            Source::WaterMass | Source::SpecificHeat => self.water *= 1.0 + size,
            Source::ClockRate => self.time += size,
            Source::WaterTemperature => self.water_k += size,
            Source::WaterScale => self.water_scale += size,
            Source::AmbientTemperature => self.ambient_k += size,
            Source::AmbientScale => self.ambient_scale += size,
            Source::VesselTemperature => self.vessel_k += size,
            Source::VesselHeat => self.vessel_heat += size,
        }
    }

    /// One source alone.
    pub fn of(source: Source, size: f64) -> Shift {
        let mut shift = Shift::NONE;
        shift.add(source, size);
        shift
    }

    /// Td from 1, the mean water and the mean ambient temperature: its three factors.
    #[inline]
    pub fn difference(&self) -> [f64; 3] {
        [
            self.water_k - self.ambient_k + SCALE_ABOUT_C * (self.ambient_scale - self.water_scale),
            1.0 + self.water_scale,
            -1.0 - self.ambient_scale,
        ]
    }

    /// A temperature of the water, °C, as it would be read.
    pub fn water_c(&self, water_c: f64) -> f64 {
        water_c + self.water_k + self.water_scale * (water_c - SCALE_ABOUT_C)
    }

    /// A temperature of the air, °C, as it would be read.
    pub fn ambient_c(&self, ambient_c: f64) -> f64 {
        ambient_c + self.ambient_k + self.ambient_scale * (ambient_c - SCALE_ABOUT_C)
    }

    /// A temperature of the dry vessel, °C, as it would be read.
    pub fn vessel_c(&self, vessel_c: f64) -> f64 {
        vessel_c + self.vessel_k
    }

    /// The power that the vessels take up, from what it is without errors: the factor.
    #[inline]
    pub fn vessel_power(&self) -> f64 {
        (1.0 + self.water_scale) * self.vessel_heat / self.time
    }

    /// Cooking power from what it is without errors: the factor.
    #[inline]
    pub fn power(&self) -> f64 {
        (1.0 + self.water_scale) * self.water / self.time
    }
}
