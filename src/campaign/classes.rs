//! Classes of instruments, each with the standard uncertainty that is taken where the
//! campaign file states none.

use super::standard_uncertainty::Uncertainty;
use crate::language::{Message, fixed, kelvins, short};
use crate::message;

/// Tables under `[instruments]` that know classes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InstrumentKind {
    Irradiance,
    Temperature,
    /// Of the dark vessel, far above boiling water.
    VesselTemperature,
    Mass,
    Clock,
}

impl InstrumentKind {
    /// Whether it is a thermometer.
    pub fn is_thermometer(self) -> bool {
        matches!(
            self,
            InstrumentKind::Temperature | InstrumentKind::VesselTemperature
        )
    }

    /// Whether its table knows the classes of a kind.
    pub fn knows(self, class: InstrumentKind) -> bool {
        self == class || (self.is_thermometer() && class == InstrumentKind::Temperature)
    }
}

/// How an error is spread about zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Spread {
    Normal,
    /// Anywhere within limits, all alike.
    Rectangular,
}

/// What a standard uncertainty follows from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Basis {
    /// An uncertainty for 95 %, percent of the reading.
    For95Percent(f64),
    /// Limits, percent of the reading.
    WithinPercent(f64),
    /// Limits, K, and the decimals with which they are printed.
    WithinKelvin(f64, usize),
    /// Limits of one reading, s.
    WithinSeconds(f64),
}

impl Basis {
    /// Standard uncertainty (k = 1).
    const fn standard(self) -> Uncertainty {
        match self {
            Basis::For95Percent(percent) => Uncertainty::Relative(percent / 100.0 / WMO_COVERAGE),
            Basis::WithinPercent(percent) => Uncertainty::Relative(percent / 100.0 / ROOT_3),
            Basis::WithinKelvin(limit_k, _) => Uncertainty::Kelvin(limit_k / ROOT_3),
            Basis::WithinSeconds(limit_s) => Uncertainty::Seconds(limit_s / ROOT_3),
        }
    }

    const fn spread(self) -> Spread {
        match self {
            Basis::For95Percent(_) => Spread::Normal,
            _ => Spread::Rectangular,
        }
    }
}

/// One class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Class {
    pub kind: InstrumentKind,
    /// Its word in the campaign file.
    pub word: &'static str,
    /// Standard uncertainty (k = 1) common to all readings.
    pub standard: Uncertainty,
    pub spread: Spread,
    basis: Basis,
    /// Smallest step that is read, K.
    pub resolution_k: Option<f64>,
    /// Name of the message that says where the basis is from.
    source: &'static str,
}

impl Class {
    /// Its name in the report.
    pub fn name(&self) -> Message {
        Message::new(format!("class-{}", self.word))
    }

    /// What the standard uncertainty follows from.
    pub fn basis(&self) -> Message {
        match (self.basis, self.resolution_k) {
            (Basis::For95Percent(percent), _) => {
                message!("basis-for-95-percent", limit = short(percent))
            }
            (Basis::WithinPercent(percent), _) => {
                message!("basis-within-percent", limit = short(percent))
            }
            (Basis::WithinKelvin(limit_k, decimals), Some(step_k)) if step_k > LOGGED_K => {
                message!(
                    "basis-within-kelvin-read",
                    limit = kelvins(fixed(limit_k, decimals)),
                    step = kelvins(short(step_k))
                )
            }
            (Basis::WithinKelvin(limit_k, decimals), _) => {
                message!(
                    "basis-within-kelvin",
                    limit = kelvins(fixed(limit_k, decimals))
                )
            }
            (Basis::WithinSeconds(limit_s), _) => {
                message!("basis-within-seconds", limit = short(limit_s))
            }
        }
    }

    /// Where the basis is from.
    pub fn source(&self) -> Message {
        Message::new(self.source)
    }
}

/// Word of the class that a solar panel has where none is named: its current also follows
/// its temperature, its dirt and the colour of the light.
pub const SOLAR_PANEL: &str = "solar-panel";

/// Half-width of a rectangular distribution over its standard deviation, √3.
///
/// # Source
/// JCGM 100:2008, 4.3.7.
const ROOT_3: f64 = 1.732_050_807_568_877_2;
/// Coverage factor of the uncertainties that WMO-No. 8 states for 95 %.
const WMO_COVERAGE: f64 = 2.0;

/// Messages that say where a basis is from.
const WMO: &str = "source-wmo-8";
const IEC_60584: &str = "source-iec-60584";
const IEC_60751: &str = "source-iec-60751";
const COMMON: &str = "source-common-practice";
/// Step of a logger, K: the practice asks for the nearest 0.1 °C.
const LOGGED_K: f64 = 0.1;

const fn class(
    kind: InstrumentKind,
    word: &'static str,
    basis: Basis,
    source: &'static str,
) -> Class {
    let resolution_k = match kind {
        InstrumentKind::Temperature | InstrumentKind::VesselTemperature => Some(LOGGED_K),
        _ => None,
    };
    Class {
        kind,
        word,
        standard: basis.standard(),
        spread: basis.spread(),
        basis,
        resolution_k,
        source,
    }
}

/// Every class. The last of each kind is the most cautious, and taken where the campaign
/// file names none.
pub const CLASSES: [Class; 22] = {
    use Basis::{For95Percent, WithinKelvin, WithinPercent, WithinSeconds};
    use InstrumentKind::{Clock, Irradiance, Mass, Temperature, VesselTemperature};
    [
        class(Irradiance, "pyranometer-a", For95Percent(3.0), WMO),
        class(Irradiance, "pyranometer-b", For95Percent(8.0), WMO),
        class(Irradiance, "reference-cell", WithinPercent(8.0), COMMON),
        class(Irradiance, SOLAR_PANEL, WithinPercent(15.0), COMMON),
        class(Irradiance, "hand-held-meter", WithinPercent(20.0), COMMON),
        class(Irradiance, "pyranometer-c", For95Percent(20.0), WMO),
        class(
            Temperature,
            "thermocouple-t-1",
            WithinKelvin(0.5, 1),
            IEC_60584,
        ),
        class(
            Temperature,
            "thermocouple-t-2",
            WithinKelvin(1.0, 1),
            IEC_60584,
        ),
        class(
            Temperature,
            "thermocouple-k-1",
            WithinKelvin(1.5, 1),
            IEC_60584,
        ),
        class(
            Temperature,
            "thermocouple-k-2",
            WithinKelvin(2.5, 1),
            IEC_60584,
        ),
        class(
            Temperature,
            "thermocouple-j-1",
            WithinKelvin(1.5, 1),
            IEC_60584,
        ),
        class(
            Temperature,
            "thermocouple-j-2",
            WithinKelvin(2.5, 1),
            IEC_60584,
        ),
        class(Temperature, "pt100-a", WithinKelvin(0.35, 2), IEC_60751),
        class(Temperature, "pt100-b", WithinKelvin(0.8, 1), IEC_60751),
        Class {
            resolution_k: Some(5.0),
            ..class(Temperature, "oven-dial", WithinKelvin(10.0, 0), COMMON)
        },
        Class {
            resolution_k: Some(1.0),
            ..class(
                Temperature,
                "kitchen-thermometer",
                WithinKelvin(2.0, 0),
                COMMON,
            )
        },
        Class {
            resolution_k: Some(5.0),
            ..class(
                VesselTemperature,
                "oven-dial",
                WithinKelvin(10.0, 0),
                COMMON,
            )
        },
        class(Mass, "measuring-jug", WithinPercent(3.0), COMMON),
        class(Mass, "platform-scale", WithinPercent(0.5), COMMON),
        class(Mass, "kitchen-scale", WithinPercent(1.0), COMMON),
        class(Clock, "watch", WithinSeconds(10.0), COMMON),
        class(Clock, "logger", WithinSeconds(1.0), COMMON),
    ]
};

/// The class taken where the campaign file names none: the last of its kind.
pub fn assumed(kind: InstrumentKind) -> &'static Class {
    CLASSES
        .iter()
        .rev()
        .find(|class| class.kind == kind)
        .expect("every kind has a class")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_class_has_a_name_a_basis_and_a_source_in_words() {
        for class in &CLASSES {
            for said in [class.name(), class.basis(), class.source()] {
                assert!(!said.to_string().is_empty(), "{}", class.word);
            }
        }
    }

    #[test]
    fn every_kind_assumes_what_the_report_says_it_does() {
        let words = [
            InstrumentKind::Irradiance,
            InstrumentKind::Temperature,
            InstrumentKind::VesselTemperature,
            InstrumentKind::Mass,
            InstrumentKind::Clock,
        ]
        .map(|kind| assumed(kind).word);
        let expected = [
            "pyranometer-c",
            "kitchen-thermometer",
            "oven-dial",
            "kitchen-scale",
            "logger",
        ];
        assert_eq!(words, expected);
    }
}
