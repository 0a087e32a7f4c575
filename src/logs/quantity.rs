//! What a log measures, and which of a run's logs must hold what.

use super::readings::Readings;
use super::synonyms::Meaning;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{Columns, Units};
use crate::language::Message;
use crate::measure::Unit;

/// A measured quantity of the canonical log.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    Water,
    /// The dark vessel, or the absorber plate, of a dry run.
    Vessel,
    Ambient,
    Irradiance,
    Wind,
}

impl Quantity {
    /// Every quantity, in the order of the canonical header.
    pub const ALL: [Quantity; 5] = [
        Quantity::Water,
        Quantity::Vessel,
        Quantity::Ambient,
        Quantity::Irradiance,
        Quantity::Wind,
    ];

    /// Header of the canonical log.
    pub fn header(self) -> &'static str {
        match self {
            Quantity::Water => "water_c",
            Quantity::Vessel => "vessel_c",
            Quantity::Ambient => "ambient_c",
            Quantity::Irradiance => "irradiance_w_m2",
            Quantity::Wind => "wind_m_s",
        }
    }

    /// Key under `[columns]` and `[units]`.
    pub fn key(self) -> &'static str {
        match self {
            Quantity::Water => "water_temperature",
            Quantity::Vessel => "vessel_temperature",
            Quantity::Ambient => "ambient_temperature",
            Quantity::Irradiance => "irradiance",
            Quantity::Wind => "wind_speed",
        }
    }

    /// What a header of it means.
    pub fn meaning(self) -> Meaning {
        match self {
            Quantity::Water => Meaning::Water,
            Quantity::Vessel => Meaning::Vessel,
            Quantity::Ambient => Meaning::Ambient,
            Quantity::Irradiance => Meaning::Irradiance,
            Quantity::Wind => Meaning::Wind,
        }
    }

    /// The quantity in words.
    pub fn name(self) -> Message {
        self.meaning().describe()
    }

    /// Unit of the canonical log.
    pub fn unit(self) -> &'static str {
        self.base_unit().symbol()
    }

    /// The same, as a unit.
    pub fn base_unit(self) -> Unit {
        Unit::base(self.meaning().kinds()[0])
    }

    /// Whether it is the temperature that a run of a kind is about.
    pub fn is_tested_in(self, kind: RunKind) -> bool {
        match kind {
            RunKind::Water | RunKind::Cooling => self == Quantity::Water,
            RunKind::Dry => self == Quantity::Vessel,
        }
    }

    /// Without it nothing comes of a run of a kind.
    pub fn is_needed(self, kind: RunKind) -> bool {
        self == Quantity::Ambient || self.is_tested_in(kind)
    }

    /// The vessel and header of each column that `[columns]` names for it.
    pub fn named(self, columns: &Columns) -> Vec<(usize, &str)> {
        let single = match self {
            Quantity::Water => {
                let vessels = columns.water_temperature.iter().enumerate();
                return vessels
                    .flat_map(|(vessel, names)| {
                        names.iter().map(move |name| (vessel, name.as_str()))
                    })
                    .collect();
            }
            Quantity::Vessel => &columns.vessel_temperature,
            Quantity::Ambient => &columns.ambient_temperature,
            Quantity::Irradiance => &columns.irradiance,
            Quantity::Wind => &columns.wind_speed,
        };
        single.iter().map(|name| (0, name.as_str())).collect()
    }

    /// The unit that `[units]` gives it.
    pub fn declared_unit(self, units: &Units) -> Option<Unit> {
        match self {
            Quantity::Water => units.water_temperature,
            Quantity::Vessel => units.vessel_temperature,
            Quantity::Ambient => units.ambient_temperature,
            Quantity::Irradiance => units.irradiance,
            Quantity::Wind => units.wind_speed,
        }
    }
}

/// Which of a run's logs a log is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// The only one.
    Whole,
    /// The one with the water; another holds the weather.
    Cooker,
    /// The one with the weather.
    Weather,
}

impl Role {
    /// The quantities that it is searched for, of a run of a kind.
    pub fn sought(self, kind: RunKind) -> &'static [Quantity] {
        use Quantity::{Ambient, Irradiance, Vessel, Water, Wind};
        match (self, kind) {
            (Role::Weather, _) => &[Ambient, Irradiance, Wind],
            (_, RunKind::Dry) => &[Vessel, Ambient, Irradiance, Wind],
            _ => &[Water, Ambient, Irradiance, Wind],
        }
    }

    /// Whether a run of a kind cannot do without finding a quantity in this log.
    pub fn is_needed(self, quantity: Quantity, kind: RunKind) -> bool {
        match self {
            Role::Whole => quantity.is_needed(kind),
            Role::Cooker => quantity.is_tested_in(kind),
            Role::Weather => false,
        }
    }
}

impl Readings {
    /// Whether the run holds at least one valid reading of a quantity.
    pub fn measures(&self, quantity: Quantity) -> bool {
        match quantity {
            Quantity::Water => !self.water_c.value.is_empty(),
            Quantity::Vessel => self.vessel_c.is_some(),
            Quantity::Ambient => self.ambient_c.is_some(),
            Quantity::Irradiance => self.irradiance_w_m2.is_some(),
            Quantity::Wind => self.wind_m_s.is_some(),
        }
    }
}
