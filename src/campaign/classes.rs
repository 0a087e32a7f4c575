//! Classes of instruments, each with the standard uncertainty that is taken where the
//! campaign file states none.

use super::model::Uncertainty;

/// Tables under `[instruments]` that know classes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    Irradiance,
    Temperature,
    Mass,
    Clock,
}

/// How an error is spread about zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    Normal,
    /// Anywhere within limits, all alike.
    Rectangular,
}

/// One class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Class {
    pub kind: Kind,
    /// Its word in the campaign file.
    pub word: &'static str,
    /// Its name in the report.
    pub name: &'static str,
    /// Standard uncertainty (k = 1) common to all readings.
    pub standard: Uncertainty,
    pub shape: Shape,
    /// What `standard` follows from.
    pub basis: &'static str,
    /// Smallest step that is read, K.
    pub resolution_k: Option<f64>,
    pub source: &'static str,
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

const WMO: &str = "WMO-No. 8, hourly totals, for the classes of ISO 9060:1990 (secondary standard, first, second) that A, B, C of 2018 follow";
const IEC_60584: &str = "IEC 60584-1:2013, tolerance up to 100 °C";
const IEC_60751: &str = "IEC 60751, tolerance at 100 °C, from memory";
const COMMON: &str = "common practice, no published source";
/// Step of a logger: the practice asks for the nearest 0.1 °C.
const LOGGED_K: Option<f64> = Some(0.1);

const fn pyranometer(
    word: &'static str,
    name: &'static str,
    of_95: f64,
    basis: &'static str,
) -> Class {
    Class {
        kind: Kind::Irradiance,
        word,
        name,
        standard: Uncertainty::Relative(of_95 / WMO_COVERAGE),
        shape: Shape::Normal,
        basis,
        resolution_k: None,
        source: WMO,
    }
}

const fn within(
    kind: Kind,
    (word, name): (&'static str, &'static str),
    standard: Uncertainty,
    basis: &'static str,
    source: &'static str,
) -> Class {
    let resolution_k = match kind {
        Kind::Temperature => LOGGED_K,
        _ => None,
    };
    Class {
        kind,
        word,
        name,
        standard,
        shape: Shape::Rectangular,
        basis,
        resolution_k,
        source,
    }
}

const fn kelvin(limit_k: f64) -> Uncertainty {
    Uncertainty::Kelvin(limit_k / ROOT_3)
}

const fn fraction(limit: f64) -> Uncertainty {
    Uncertainty::Relative(limit / ROOT_3)
}

/// Every class. The last of each kind is the most cautious, and taken where the campaign
/// file names none.
pub const CLASSES: [Class; 20] = {
    use Kind::{Clock, Irradiance, Mass, Temperature};
    [
        pyranometer(
            "pyranometer-a",
            "pyranometer of class A",
            0.03,
            "± 3 % for 95 %",
        ),
        pyranometer(
            "pyranometer-b",
            "pyranometer of class B",
            0.08,
            "± 8 % for 95 %",
        ),
        within(
            Irradiance,
            ("reference-cell", "reference cell"),
            fraction(0.08),
            "within ± 8 %",
            COMMON,
        ),
        within(
            Irradiance,
            (SOLAR_PANEL, "solar panel by its short-circuit current"),
            fraction(0.15),
            "within ± 15 %",
            COMMON,
        ),
        within(
            Irradiance,
            ("hand-held-meter", "hand-held meter"),
            fraction(0.20),
            "within ± 20 %",
            COMMON,
        ),
        pyranometer(
            "pyranometer-c",
            "pyranometer of class C",
            0.20,
            "± 20 % for 95 %",
        ),
        within(
            Temperature,
            ("thermocouple-t-1", "thermocouple type T, class 1"),
            kelvin(0.5),
            "within ± 0.5 K",
            IEC_60584,
        ),
        within(
            Temperature,
            ("thermocouple-t-2", "thermocouple type T, class 2"),
            kelvin(1.0),
            "within ± 1.0 K",
            IEC_60584,
        ),
        within(
            Temperature,
            ("thermocouple-k-1", "thermocouple type K, class 1"),
            kelvin(1.5),
            "within ± 1.5 K",
            IEC_60584,
        ),
        within(
            Temperature,
            ("thermocouple-k-2", "thermocouple type K, class 2"),
            kelvin(2.5),
            "within ± 2.5 K",
            IEC_60584,
        ),
        within(
            Temperature,
            ("thermocouple-j-1", "thermocouple type J, class 1"),
            kelvin(1.5),
            "within ± 1.5 K",
            IEC_60584,
        ),
        within(
            Temperature,
            ("thermocouple-j-2", "thermocouple type J, class 2"),
            kelvin(2.5),
            "within ± 2.5 K",
            IEC_60584,
        ),
        within(
            Temperature,
            ("pt100-a", "Pt100, class A"),
            kelvin(0.35),
            "within ± 0.35 K",
            IEC_60751,
        ),
        within(
            Temperature,
            ("pt100-b", "Pt100, class B"),
            kelvin(0.80),
            "within ± 0.8 K",
            IEC_60751,
        ),
        Class {
            resolution_k: Some(1.0),
            ..within(
                Temperature,
                ("kitchen-thermometer", "kitchen thermometer"),
                kelvin(2.0),
                "within ± 2 K, read to 1 K",
                COMMON,
            )
        },
        within(
            Mass,
            ("measuring-jug", "measuring jug"),
            fraction(0.03),
            "within ± 3 %",
            COMMON,
        ),
        within(
            Mass,
            ("platform-scale", "platform scale"),
            fraction(0.005),
            "within ± 0.5 %",
            COMMON,
        ),
        within(
            Mass,
            ("kitchen-scale", "kitchen scale"),
            fraction(0.01),
            "within ± 1 %",
            COMMON,
        ),
        within(
            Clock,
            ("watch", "watch, read by hand"),
            Uncertainty::Seconds(10.0 / ROOT_3),
            "within ± 10 s",
            COMMON,
        ),
        within(
            Clock,
            ("logger", "a logger's clock"),
            Uncertainty::Seconds(1.0 / ROOT_3),
            "within ± 1 s",
            COMMON,
        ),
    ]
};

/// The class taken where the campaign file names none: the last of its kind.
pub fn assumed(kind: Kind) -> &'static Class {
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
    fn every_kind_assumes_what_the_report_says_it_does() {
        let words = [Kind::Irradiance, Kind::Temperature, Kind::Mass, Kind::Clock]
            .map(|kind| assumed(kind).word);
        let expected = [
            "pyranometer-c",
            "kitchen-thermometer",
            "kitchen-scale",
            "logger",
        ];
        assert_eq!(words, expected);
    }
}
