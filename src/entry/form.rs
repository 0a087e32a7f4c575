//! What holds for every line of a sheet, and the columns that its log has.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::value::example_of;
use crate::campaign::kinds::RunKind;
use crate::logs::quantity::Quantity;
use crate::measure::Unit;

/// What holds for every line of a sheet.
#[derive(Debug, Clone)]
pub struct Form {
    pub date: Date,
    /// The site's zone.
    pub zone: TimeZone,
    pub kind: RunKind,
    /// Of the temperature that the run is about: of the water, or of the dry vessel.
    pub tested_unit: Unit,
    pub air_unit: Unit,
    /// Of water at the site, °C.
    pub boiling_point_c: f64,
    /// A sensor of irradiance is read by hand, too, where the sun is on the cooker.
    pub has_irradiance: bool,
    /// The data are invented.
    pub is_demonstration: bool,
}

/// A column of the typed log.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    Time,
    /// The temperature that the run is about.
    Tested,
    Air,
    Wind,
    Sky,
    Irradiance,
    Notes,
}

impl Column {
    const ALL: [Column; 7] = [
        Column::Time,
        Column::Tested,
        Column::Air,
        Column::Wind,
        Column::Sky,
        Column::Irradiance,
        Column::Notes,
    ];
}

impl Form {
    /// The columns of the log, in the order in which a line is typed.
    pub fn columns(&self) -> impl Iterator<Item = Column> + use<> {
        let (in_sun, has_irradiance) = (self.in_sun(), self.has_irradiance);
        Column::ALL.into_iter().filter(move |column| match column {
            Column::Sky => in_sun,
            Column::Irradiance => in_sun && has_irradiance,
            _ => true,
        })
    }

    /// The header of a column.
    pub fn header(&self, column: Column) -> String {
        let name = match column {
            Column::Time => "time",
            Column::Tested => match self.kind {
                RunKind::Water | RunKind::Cooling => "water",
                // "vessel" alone may be the water in it.
                RunKind::Dry => "dry vessel",
            },
            Column::Air => "air",
            Column::Wind => "wind",
            Column::Sky => "sky",
            Column::Irradiance => "irradiance",
            Column::Notes => "notes",
        };
        match self.unit(column) {
            Some(unit) => format!("{name} ({unit})"),
            None => name.to_owned(),
        }
    }

    /// The unit of a column of numbers.
    pub fn unit(&self, column: Column) -> Option<&'static str> {
        match column {
            Column::Tested => Some(self.tested_unit.symbol()),
            Column::Air => Some(self.air_unit.symbol()),
            Column::Wind => Some("Bft"),
            Column::Irradiance => Some("W/m²"),
            Column::Time | Column::Sky | Column::Notes => None,
        }
    }

    /// What a column of numbers measures.
    pub fn quantity(&self, column: Column) -> Option<Quantity> {
        match column {
            Column::Tested => Some(match self.kind {
                RunKind::Water | RunKind::Cooling => Quantity::Water,
                RunKind::Dry => Quantity::Vessel,
            }),
            Column::Air => Some(Quantity::Ambient),
            Column::Wind => Some(Quantity::Wind),
            Column::Irradiance => Some(Quantity::Irradiance),
            Column::Time | Column::Sky | Column::Notes => None,
        }
    }

    /// What the run is about, in a word that begins its keys, too.
    pub fn tested_name(&self) -> &'static str {
        match self.kind {
            RunKind::Water | RunKind::Cooling => "water",
            RunKind::Dry => "vessel",
        }
    }

    /// A line with its time, to show how one is written.
    pub fn example(&self) -> String {
        let (time, tested, air) = self.example_values();
        match self.in_sun() {
            true => format!("{time} {tested} {air} 1 clear"),
            false => format!("{time} {tested} {air} 1"),
        }
    }

    /// Time, tested temperature and air of an example, in the sheet's units.
    pub fn example_values(&self) -> (&'static str, String, String) {
        let (time, tested_c) = match self.kind {
            RunKind::Water => ("10:20", 31.5),
            RunKind::Cooling => ("13:20", 94.5),
            RunKind::Dry => ("12:20", 185.0),
        };
        let tested = example_of(self.tested_unit, tested_c);
        (time, tested, example_of(self.air_unit, 24.0))
    }

    /// Whether the sun is on the cooker.
    pub fn in_sun(&self) -> bool {
        self.kind != RunKind::Cooling
    }
}

#[cfg(test)]
pub mod tests {
    use super::*;
    use crate::measure::Kind;

    /// A form of a heating on 3 November 2026 at sea level, no irradiance read.
    pub fn form(unit: &str) -> Form {
        Form {
            has_irradiance: false,
            ..form_of(RunKind::Water, unit)
        }
    }

    /// A form of a kind of run on that day, where irradiance is read.
    pub fn form_of(kind: RunKind, unit: &str) -> Form {
        let unit = Unit::parse(unit, &[Kind::Temperature]).unwrap();
        Form {
            date: "2026-11-03".parse().unwrap(),
            zone: TimeZone::UTC,
            kind,
            tested_unit: unit,
            air_unit: unit,
            boiling_point_c: 100.0,
            has_irradiance: true,
            is_demonstration: true,
        }
    }

    #[test]
    fn each_kind_has_the_columns_that_apply() {
        let header = |kind: RunKind| {
            let form = form_of(kind, "°F");
            let names: Vec<String> = form.columns().map(|column| form.header(column)).collect();
            names.join(",")
        };
        assert_eq!(
            header(RunKind::Water),
            "time,water (°F),air (°F),wind (Bft),sky,irradiance (W/m²),notes"
        );
        assert_eq!(
            header(RunKind::Dry),
            "time,dry vessel (°F),air (°F),wind (Bft),sky,irradiance (W/m²),notes"
        );
        assert_eq!(
            header(RunKind::Cooling),
            "time,water (°F),air (°F),wind (Bft),notes"
        );
    }
}
