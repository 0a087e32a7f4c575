//! Units in which a person reads a campaign's thermometers.

use super::kinds::RunKind;
use super::model::Campaign;
use crate::language::UnitSystem;
use crate::measure::{Kind, Unit};

impl Campaign {
    /// The unit of the thermometer in the water, or in the dry vessel: where that is not stated,
    /// the water's, and else that of the units that the campaign asks for.
    pub fn tested_unit(&self, kind: RunKind) -> Unit {
        let units = &self.rules.units;
        let stated = match kind {
            RunKind::Water | RunKind::Cooling => units.water_temperature,
            RunKind::Dry => units.vessel_temperature.or(units.water_temperature),
        };
        stated.unwrap_or_else(|| self.usual_temperature())
    }

    /// The unit of the thermometer in the air.
    pub fn air_unit(&self) -> Unit {
        let stated = self.rules.units.ambient_temperature;
        stated.unwrap_or_else(|| self.usual_temperature())
    }

    fn usual_temperature(&self) -> Unit {
        let celsius = Unit::base(Kind::Temperature);
        match self.report.units {
            UnitSystem::Si => celsius,
            UnitSystem::Us => Unit::parse("°F", &[Kind::Temperature]).unwrap_or(celsius),
        }
    }
}
