//! Errors that all readings of a campaign share: what is in error, and by how much.

use crate::campaign::classes::{Class, InstrumentKind, Spread, assumed};
use crate::campaign::model::{Instrument, Instruments, IrradianceEstimate, Plane};
use crate::campaign::standard_uncertainty::Uncertainty;
use crate::language::{Message, short};
use crate::message;
use simmerline_math::squared;

/// Largest departure of the specific heat of water from 4186 J/(kg K) between 10 and
/// 95 °C, as a fraction: 4210.6 J/(kg K) at 95 °C.
///
/// # Source
/// IAPWS-IF97.
const SPECIFIC_HEAT_WITHIN: f64 = 0.006;
/// Largest departure of the heat capacity of the vessels from what is stated, as a fraction: a
/// lid that is not as hot as the pot, a specific heat that grows with temperature.
/// Common practice, no published source.
const VESSEL_HEAT_WITHIN: f64 = 0.10;
/// Rate error of a clock, as a fraction. Common practice, no published source.
const CLOCK_RATE_WITHIN: f64 = 1e-4;

/// Standard uncertainty of the model of a clear sky, as a fraction: 5 % for the model on
/// clear days, and a turbidity known within ± 2, rectangular, which moves the plane normal to
/// the beam by 10 % with the sun 30° from the zenith and by 17 % at 50°: 6 and 10 %.
const CLEAR_SKY: Estimated = Estimated {
    source: Source::ClearSky,
    standard: 0.10,
};
/// The same, of the plane normal to the beam from the horizontal: a beam that is wrong by a
/// fifth moves it by 2 % with the sun at 30° from the zenith, by 10 % at 60°.
const CONVERSION: Estimated = Estimated {
    source: Source::Conversion,
    standard: 0.05,
};
/// The same, of a station a few kilometres away under a sky without clouds.
const DISTANCE: Estimated = Estimated {
    source: Source::Distance,
    standard: 0.10,
};

/// Temperatures between which a thermometer is used, °C: water from the tap to the boil. What is
/// known of it holds at either end, and what it is off by at one says nothing of the other.
/// Common practice, no published source.
pub const COLD_END_C: f64 = 20.0;
/// See [`COLD_END_C`].
pub const HOT_END_C: f64 = 100.0;
/// Temperature about which an error of scale turns, °C.
pub const SCALE_ABOUT_C: f64 = (COLD_END_C + HOT_END_C) / 2.0;

/// Standard uncertainty of the clear-sky model, as a fraction.
pub fn clear_sky_fraction() -> f64 {
    CLEAR_SKY.standard
}

/// How sure an estimate of irradiance is.
struct Estimated {
    source: Source,
    standard: f64,
}

/// What is in error.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Source {
    Irradiance,
    /// The model of a clear sky in place of a sensor.
    ClearSky,
    /// From the horizontal to the plane normal to the beam.
    Conversion,
    /// A station's sky is not that over the cooker.
    Distance,
    /// Offset of the water thermometer, and its error of scale.
    WaterTemperature,
    WaterScale,
    /// The same of the ambient thermometer.
    AmbientTemperature,
    AmbientScale,
    /// The thermometer of the dry vessel.
    VesselTemperature,
    /// Heat capacity of the vessels.
    VesselHeat,
    WaterMass,
    SpecificHeat,
    ClockRate,
}

impl Source {
    /// Whether it is a thermometer's error of scale.
    pub fn is_scale(self) -> bool {
        matches!(self, Source::WaterScale | Source::AmbientScale)
    }

    /// Whether it is an error of irradiance.
    pub fn is_irradiance(self) -> bool {
        self == Source::Irradiance || self.is_estimate()
    }

    /// Whether it comes of an estimate in place of a measurement.
    pub fn is_estimate(self) -> bool {
        matches!(
            self,
            Source::ClearSky | Source::Conversion | Source::Distance
        )
    }

    /// The source as names of messages have it.
    pub fn code(self) -> &'static str {
        match self {
            Source::Irradiance => "irradiance",
            Source::ClearSky => "clear-sky",
            Source::Conversion => "conversion",
            Source::Distance => "distance",
            Source::WaterTemperature => "water-temperature",
            Source::WaterScale => "water-scale",
            Source::AmbientTemperature => "ambient-temperature",
            Source::AmbientScale => "ambient-scale",
            Source::VesselTemperature => "vessel-temperature",
            Source::VesselHeat => "vessel-heat",
            Source::WaterMass => "water-mass",
            Source::SpecificHeat => "specific-heat",
            Source::ClockRate => "clock-rate",
        }
    }

    /// What is measured, in words: of both errors of a thermometer its temperature.
    pub fn quantity(self) -> Message {
        match self {
            Source::WaterTemperature | Source::WaterScale => message!("tested-water-temperature"),
            Source::AmbientTemperature | Source::AmbientScale => {
                message!("tested-ambient-temperature")
            }
            other => other.name(),
        }
    }

    /// The source in words.
    pub fn name(self) -> Message {
        Message::new(format!("error-{}", self.code()))
    }
}

/// Where a standard uncertainty comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Basis {
    /// The campaign file states it.
    Stated,
    /// The campaign file names the class.
    Class(&'static Class),
    /// The campaign file names neither: the most cautious class.
    Assumed(&'static Class),
    /// Not the tester's to state.
    Known(Known),
}

/// How sure something is that no instrument measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Known {
    source: Source,
    /// Standard uncertainty or limit that the report names, as a fraction.
    fraction: f64,
}

impl Known {
    /// What the standard uncertainty follows from.
    pub fn basis(&self) -> Message {
        // Without what is beyond a double's digits.
        let percent = short((self.fraction * 1e6).round() / 1e4);
        Message::new(format!("known-{}", self.source.code())).with("percent", percent)
    }

    /// Where that is from.
    pub fn named_source(&self) -> Message {
        Message::new(match self.source {
            Source::ClearSky => "source-clear-sky",
            Source::Conversion => "source-conversion",
            Source::SpecificHeat => "source-specific-heat",
            _ => "source-common-practice",
        })
    }
}

/// One error, the same in all intervals.
#[derive(Debug, Clone, PartialEq)]
pub struct CommonError {
    pub source: Source,
    /// What the error belongs to: errors of one identity are one error.
    pub identity: String,
    /// Standard uncertainty, fraction or K.
    pub standard: Uncertainty,
    pub spread: Spread,
    pub basis: Basis,
}

impl CommonError {
    /// The error of an instrument; without an id it is the `owner`'s alone.
    fn of_instrument(
        source: Source,
        kind: InstrumentKind,
        instrument: &Instrument,
        owner: &str,
    ) -> Self {
        let Standard {
            uncertainty,
            spread,
            basis,
        } = standard_of(instrument, kind);
        let identity = match &instrument.id {
            Some(id) => format!("{kind:?} {id}"),
            None => format!("{source:?} of {owner}"),
        };
        CommonError {
            source,
            identity,
            standard: uncertainty,
            spread,
            basis,
        }
    }

    /// Both errors of a thermometer whose standard uncertainty u holds at either end of the
    /// range, independently: the offset is the mean of both ends, u/√2, and the scale their
    /// difference over the range, u·√2/80 K. At either end both together are u.
    fn of_thermometer(
        [offset, scale]: [Source; 2],
        thermometer: &Instrument,
        owner: &str,
    ) -> [Self; 2] {
        let of =
            |source| Self::of_instrument(source, InstrumentKind::Temperature, thermometer, owner);
        let part = |whole: Self, what: &str, standard: Uncertainty| CommonError {
            identity: format!("{what} of {}", whole.identity),
            standard,
            ..whole
        };
        let (of_offset, of_scale) = (of(offset), of(scale));
        let at_an_end_k = of_offset.standard.size();
        let root_2 = 2.0_f64.sqrt();
        let scale = at_an_end_k * root_2 / (HOT_END_C - COLD_END_C);
        [
            part(
                of_offset,
                "offset",
                Uncertainty::Kelvin(at_an_end_k / root_2),
            ),
            part(of_scale, "scale", Uncertainty::Relative(scale)),
        ]
    }

    /// The standard uncertainty of a thermometer whose offset this is, K; `None` of any other
    /// error.
    pub fn whole_k(&self) -> Option<f64> {
        let is_offset = matches!(
            self.source,
            Source::WaterTemperature | Source::AmbientTemperature
        );
        // Without what is beyond a stated number's digits.
        let whole_k = self.standard.size() * 2.0_f64.sqrt();
        is_offset.then(|| (whole_k * 1e9).round() / 1e9)
    }

    /// An error known to lie within a fraction of the reading.
    fn within(source: Source, identity: String, fraction: f64) -> Self {
        CommonError {
            source,
            identity,
            standard: Uncertainty::Relative(fraction / 3.0_f64.sqrt()),
            spread: Spread::Rectangular,
            basis: Basis::Known(Known { source, fraction }),
        }
    }

    /// The error of an estimate of irradiance.
    fn of_estimate(estimated: &Estimated, owner: &str) -> Self {
        let Estimated { source, standard } = *estimated;
        CommonError {
            source,
            identity: format!("{source:?} of {owner}"),
            standard: Uncertainty::Relative(standard),
            spread: Spread::Normal,
            basis: Basis::Known(Known {
                source,
                fraction: standard,
            }),
        }
    }
}

/// Errors that the readings of a campaign share; those of instruments without an id are
/// the `owner`'s alone.
pub fn common_errors(instruments: &Instruments, owner: &str) -> Vec<CommonError> {
    use InstrumentKind::{Irradiance, Mass};
    let of = |source: Source, kind: InstrumentKind, instrument: &Instrument| {
        CommonError::of_instrument(source, kind, instrument, owner)
    };
    let has_sensor = instruments.irradiance_estimate != Some(IrradianceEstimate::ClearSky);
    let sensor = has_sensor.then(|| of(Source::Irradiance, Irradiance, &instruments.irradiance));
    let estimates = estimates(instruments).into_iter();
    let estimates = estimates.map(|estimated| CommonError::of_estimate(estimated, owner));
    let (water, ambient) = (
        &instruments.water_temperature,
        &instruments.ambient_temperature,
    );
    let thermometers = [
        (water, [Source::WaterTemperature, Source::WaterScale]),
        (ambient, [Source::AmbientTemperature, Source::AmbientScale]),
    ];
    let thermometers = thermometers.into_iter().flat_map(|(thermometer, sources)| {
        CommonError::of_thermometer(sources, thermometer, owner)
    });
    let others = [
        of(Source::WaterMass, Mass, &instruments.water_mass),
        CommonError::within(
            Source::SpecificHeat,
            "water".to_owned(),
            SPECIFIC_HEAT_WITHIN,
        ),
        CommonError::within(
            Source::ClockRate,
            format!("clock of {owner}"),
            CLOCK_RATE_WITHIN,
        ),
    ];
    let of_sun = sensor.into_iter().chain(estimates);
    of_sun.chain(thermometers).chain(others).collect()
}

/// Standard uncertainty of irradiance, as a fraction: the root of the sum of squares of those of
/// the errors that are errors of irradiance.
///
/// # Source
/// JCGM 100:2008, equation 10, of a product.
pub fn irradiance_fraction<'e>(errors: impl IntoIterator<Item = &'e CommonError>) -> f64 {
    let errors = errors.into_iter();
    let of_sun = errors.filter(|error| error.source.is_irradiance());
    let squares: f64 = of_sun.map(|error| squared(error.standard.size())).sum();
    squares.sqrt()
}

/// The error of the dry vessel's thermometer: an offset, since nothing is known of its scale.
pub fn vessel_error(instruments: &Instruments, owner: &str) -> CommonError {
    CommonError::of_instrument(
        Source::VesselTemperature,
        InstrumentKind::VesselTemperature,
        &instruments.vessel_temperature,
        owner,
    )
}

/// The error of the heat capacity of the vessels, as stated or of their mass and material.
pub fn vessel_heat_error(owner: &str) -> CommonError {
    CommonError::within(
        Source::VesselHeat,
        format!("vessels of {owner}"),
        VESSEL_HEAT_WITHIN,
    )
}

/// What an estimate of irradiance adds to the sensor that it rests on, if there is one.
fn estimates(instruments: &Instruments) -> Vec<&'static Estimated> {
    let Some(way) = instruments.irradiance_estimate else {
        return Vec::new();
    };
    let of_way = match way {
        IrradianceEstimate::ClearSky => Some(&CLEAR_SKY),
        IrradianceEstimate::Station => Some(&DISTANCE),
        IrradianceEstimate::FromHorizontal | IrradianceEstimate::SolarPanel => None,
    };
    let is_turned = instruments.irradiance_plane == Some(Plane::Horizontal);
    of_way
        .into_iter()
        .chain(is_turned.then_some(&CONVERSION))
        .collect()
}

/// The standard uncertainty of an instrument, how its error is distributed, and where that
/// comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standard {
    pub uncertainty: Uncertainty,
    pub spread: Spread,
    pub basis: Basis,
}

/// Standard uncertainty as stated, else that of the class named, else of the most
/// cautious class.
pub fn standard_of(instrument: &Instrument, kind: InstrumentKind) -> Standard {
    let of_class = |class: &'static Class, basis: Basis| Standard {
        uncertainty: class.standard,
        spread: class.spread,
        basis,
    };
    match (instrument.uncertainty, instrument.class) {
        (Some(uncertainty), _) => Standard {
            uncertainty,
            spread: Spread::Normal,
            basis: Basis::Stated,
        },
        (None, Some(class)) => of_class(class, Basis::Class(class)),
        (None, None) => {
            let class = assumed(kind);
            of_class(class, Basis::Assumed(class))
        }
    }
}

/// Step of the readings of a thermometer's class, K; `None` where only an uncertainty is
/// stated.
pub fn class_resolution_k(instrument: &Instrument) -> Option<f64> {
    match (instrument.uncertainty, instrument.class) {
        (_, Some(class)) => class.resolution_k,
        (None, None) => assumed(InstrumentKind::Temperature).resolution_k,
        (Some(_), None) => None,
    }
}
