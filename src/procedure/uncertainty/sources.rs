//! Errors that all intervals of a campaign share.

use crate::campaign::classes::{Class, Kind, Shape, assumed};
use crate::campaign::model::{Instrument, Instruments, Uncertainty};
use crate::stats::line::Line;

/// Largest departure of the specific heat of water from 4186 J/(kg K) between 10 and
/// 95 °C, as a fraction: 4210.6 J/(kg K) at 95 °C.
///
/// # Source
/// IAPWS-IF97.
const SPECIFIC_HEAT_WITHIN: f64 = 0.006;
/// Rate error of a clock, as a fraction. Common practice, no published source.
const CLOCK_RATE_WITHIN: f64 = 1e-4;

/// What is in error.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Source {
    Irradiance,
    WaterTemperature,
    AmbientTemperature,
    WaterMass,
    SpecificHeat,
    ClockRate,
}

impl Source {
    /// The source in words.
    pub fn name(self) -> &'static str {
        match self {
            Source::Irradiance => "irradiance",
            Source::WaterTemperature => "water temperature",
            Source::AmbientTemperature => "ambient temperature",
            Source::WaterMass => "water mass",
            Source::SpecificHeat => "specific heat of water",
            Source::ClockRate => "time",
        }
    }
}

/// Where a standard uncertainty comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Origin {
    /// The campaign file states it.
    Stated,
    /// The campaign file names the class.
    Class(&'static Class),
    /// The campaign file names neither: the most cautious class.
    Assumed(&'static Class),
    /// Not the tester's to state.
    Known {
        basis: &'static str,
        source: &'static str,
    },
}

/// One error, the same in all intervals.
#[derive(Debug, Clone, PartialEq)]
pub struct CommonError {
    pub source: Source,
    /// What the error belongs to: errors of one identity are one error.
    pub identity: String,
    /// Standard uncertainty, fraction or K.
    pub standard: Uncertainty,
    pub shape: Shape,
    pub origin: Origin,
}

impl CommonError {
    /// What the line read at `at_k` changes by, per unit (1 or K) of a reading too high, W.
    ///
    /// A scale common to all powers is one of the whole line: −Ps for irradiance and time,
    /// +Ps for mass and specific heat. An offset of the water cancels in its rise and
    /// moves Td: −b, and +b for ambient.
    pub fn sensitivity_w(&self, line: &Line, at_k: f64) -> f64 {
        let power_w = line.predict(at_k);
        match self.source {
            Source::Irradiance | Source::ClockRate => -power_w,
            Source::WaterMass | Source::SpecificHeat => power_w,
            Source::WaterTemperature => -line.slope,
            Source::AmbientTemperature => line.slope,
        }
    }

    /// What one standard uncertainty changes the line by at `at_k`, with its sign, W.
    pub fn effect_w(&self, line: &Line, at_k: f64) -> f64 {
        self.sensitivity_w(line, at_k) * self.standard.size()
    }
}

/// Errors that the intervals of a campaign share; those of instruments without an id are
/// the `owner`'s alone.
pub fn common_errors(instruments: &Instruments, owner: &str) -> Vec<CommonError> {
    let measured = [
        (
            Source::Irradiance,
            Kind::Irradiance,
            &instruments.irradiance,
        ),
        (
            Source::WaterTemperature,
            Kind::Temperature,
            &instruments.water_temperature,
        ),
        (
            Source::AmbientTemperature,
            Kind::Temperature,
            &instruments.ambient_temperature,
        ),
        (Source::WaterMass, Kind::Mass, &instruments.water_mass),
    ];
    let of_instrument = |(source, kind, instrument): (Source, Kind, &Instrument)| {
        let (standard, shape, origin) = standard_of(instrument, kind);
        let identity = match &instrument.id {
            Some(id) => format!("{kind:?} {id}"),
            None => format!("{source:?} of {owner}"),
        };
        CommonError {
            source,
            identity,
            standard,
            shape,
            origin,
        }
    };
    let known = |source: Source, identity: String, within: f64, origin: Origin| CommonError {
        source,
        identity,
        standard: Uncertainty::Relative(within / 3.0_f64.sqrt()),
        shape: Shape::Rectangular,
        origin,
    };
    let specific_heat = known(
        Source::SpecificHeat,
        "water".to_owned(),
        SPECIFIC_HEAT_WITHIN,
        Origin::Known {
            basis: "4186 J/(kg K) within ± 0.6 %",
            source: "IAPWS-IF97, 10 to 95 °C",
        },
    );
    let clock = known(
        Source::ClockRate,
        format!("clock of {owner}"),
        CLOCK_RATE_WITHIN,
        Origin::Known {
            basis: "rate of the clock within ± 0.01 %",
            source: "common practice, no published source",
        },
    );
    measured
        .into_iter()
        .map(of_instrument)
        .chain([specific_heat, clock])
        .collect()
}

/// Standard uncertainty as stated, else that of the class named, else of the most
/// cautious class.
pub fn standard_of(instrument: &Instrument, kind: Kind) -> (Uncertainty, Shape, Origin) {
    match (instrument.uncertainty, instrument.class) {
        (Some(stated), _) => (stated, Shape::Normal, Origin::Stated),
        (None, Some(class)) => (class.standard, class.shape, Origin::Class(class)),
        (None, None) => {
            let class = assumed(kind);
            (class.standard, class.shape, Origin::Assumed(class))
        }
    }
}

/// Step of the readings of a thermometer's class, K; `None` where only an uncertainty is
/// stated.
pub fn class_resolution_k(instrument: &Instrument) -> Option<f64> {
    match (instrument.uncertainty, instrument.class) {
        (_, Some(class)) => class.resolution_k,
        (None, None) => assumed(Kind::Temperature).resolution_k,
        (Some(_), None) => None,
    }
}
