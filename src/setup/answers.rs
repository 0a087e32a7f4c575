//! What a person said of a campaign that is yet to be written.

use super::opening::Opening;
use super::place::Place;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::CookerType;
use crate::language::UnitSystem;
use crate::measure::{Kind, Unit};

/// What the water, or the dry vessel, is read with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Thermometer {
    Kitchen,
    OvenDial,
    Thermocouple,
    Pt100,
    /// Nobody knows: the most cautious class is taken.
    Unknown,
}

/// What there is of sunlight measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SunSensor {
    /// None: a clear sky is computed for the spans that were cloudless.
    None,
    /// It faces the sun, as the cooker does.
    FacesSun,
    /// It lies flat.
    LiesFlat,
    /// A weather station nearby.
    Station,
}

/// What was said; `None` where nothing was.
#[derive(Debug, Clone, Default)]
pub struct Answers {
    pub units: Option<UnitSystem>,
    pub title: Option<String>,
    pub cooker: Option<CookerType>,
    pub opening: Option<Opening>,
    pub site: Option<String>,
    pub place: Option<Place>,
    /// A number with its unit.
    pub elevation: Option<String>,
    /// As the campaign file names it.
    pub time_zone: Option<String>,
    pub kind: Option<RunKind>,
    /// A number with its unit.
    pub water: Option<String>,
    pub thermometer: Option<Thermometer>,
    pub sun: Option<SunSensor>,
    /// What the logs that lie there tell of it.
    pub logged_sun: Option<SunSensor>,
    /// Whether the logs that lie there become runs.
    pub takes_logs: Option<bool>,
}

impl Answers {
    /// Whether the person measures in units of the US.
    pub fn is_us(&self) -> bool {
        self.units == Some(UnitSystem::Us)
    }

    /// The unit of a kind that a number without one has.
    pub fn usual(&self, kind: Kind) -> Unit {
        let us = match kind {
            Kind::Length => "ft",
            Kind::Area => "ft²",
            Kind::Mass => "lb",
            Kind::Temperature => "°F",
            _ => "",
        };
        let us = Unit::parse(us, &[kind]).filter(|_| self.is_us());
        us.unwrap_or_else(|| Unit::base(kind))
    }

    /// The unit in which a person gives the size of a cooker.
    pub fn usual_size(&self) -> Unit {
        let inch = Unit::parse("in", &[Kind::Length]).filter(|_| self.is_us());
        inch.unwrap_or_else(|| Unit::base(Kind::Length))
    }

    /// The kind of the first run.
    pub fn kind(&self) -> RunKind {
        self.kind.unwrap_or_default()
    }
}
