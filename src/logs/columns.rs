//! Which column of a log is which quantity.

use std::path::Path;

use super::readings::Readings;
use crate::campaign::model::Columns;
use crate::error::{Problem, Problems};

/// A measured quantity of the canonical log.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    Water,
    Ambient,
    Irradiance,
    Wind,
}

impl Quantity {
    /// Every quantity, in the order of the canonical header.
    pub const ALL: [Quantity; 4] = [
        Quantity::Water,
        Quantity::Ambient,
        Quantity::Irradiance,
        Quantity::Wind,
    ];

    /// Header of the canonical log.
    pub fn header(self) -> &'static str {
        match self {
            Quantity::Water => "water_c",
            Quantity::Ambient => "ambient_c",
            Quantity::Irradiance => "irradiance_w_m2",
            Quantity::Wind => "wind_m_s",
        }
    }

    /// Key under `[columns]`.
    pub fn key(self) -> &'static str {
        match self {
            Quantity::Water => "water_temperature",
            Quantity::Ambient => "ambient_temperature",
            Quantity::Irradiance => "irradiance",
            Quantity::Wind => "wind_speed",
        }
    }

    /// The quantity in words.
    pub fn name(self) -> &'static str {
        match self {
            Quantity::Water => "water temperature",
            Quantity::Ambient => "ambient temperature",
            Quantity::Irradiance => "irradiance",
            Quantity::Wind => "wind speed",
        }
    }

    /// Unit of the canonical log.
    pub fn unit(self) -> &'static str {
        match self {
            Quantity::Water | Quantity::Ambient => "°C",
            Quantity::Irradiance => "W/m²",
            Quantity::Wind => "m/s",
        }
    }

    /// Without it nothing can be rated.
    pub fn is_needed(self) -> bool {
        matches!(self, Quantity::Water | Quantity::Ambient)
    }
}

/// Header of the time column in the canonical log.
pub const TIME_HEADER: &str = "time";

/// Positions of the columns that are read.
#[derive(Debug, Clone, PartialEq)]
pub struct ColumnMap {
    pub time: usize,
    pub time_header: String,
    /// One entry a sensor, in the order of [`Quantity::ALL`].
    pub sensors: Vec<Sensor>,
    /// Headers that no quantity was found for.
    pub ignored: Vec<String>,
}

/// One column of numbers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sensor {
    pub quantity: Quantity,
    pub column: usize,
    pub header: String,
}

impl Sensor {
    /// Where a problem with it sits, in words.
    pub fn item(&self) -> String {
        format!("column \"{}\" ({})", self.header, self.quantity.name())
    }
}

/// Finds each quantity's column: by `[columns]` where it names one, else by the
/// canonical header (case and spaces around it do not matter).
///
/// # Errors
/// One problem for each column that is named or needed and not there, or that is
/// there twice, with the list of columns that are there.
pub fn map_columns(
    path: &Path,
    header: &[String],
    wanted: &Columns,
) -> Result<ColumnMap, Problems> {
    let mut problems = Problems::default();
    let mut find = |named: Option<&str>, canonical: &str, key: &str, needed: bool| {
        let name = named.unwrap_or(canonical);
        let matching: Vec<usize> = (0..header.len())
            .filter(|&index| header[index].eq_ignore_ascii_case(name.trim()))
            .collect();
        match matching.as_slice() {
            [column] => return Some(*column),
            [] if named.is_none() && !needed => {}
            [] => problems.push(
                Problem::at(
                    path,
                    format!("has no column \"{name}\"; there are: {}", quoted(header)),
                )
                .hint(format!(
                    "name the right one under [columns] {key} in campaign.toml, for all runs, or rename the column in this log"
                )),
            ),
            several => problems.push(
                Problem::at(
                    path,
                    format!("has the column \"{name}\" {} times", several.len()),
                )
                .hint("rename the columns so that each has a header of its own"),
            ),
        }
        None
    };
    let time = find(wanted.time.as_deref(), TIME_HEADER, "time", true);
    let mut sensors = Vec::new();
    for quantity in Quantity::ALL {
        let named: Vec<Option<&str>> = match quantity {
            Quantity::Water if wanted.water_temperature.is_empty() => vec![None],
            Quantity::Water => wanted
                .water_temperature
                .iter()
                .map(|name| Some(name.as_str()))
                .collect(),
            Quantity::Ambient => vec![wanted.ambient_temperature.as_deref()],
            Quantity::Irradiance => vec![wanted.irradiance.as_deref()],
            Quantity::Wind => vec![wanted.wind_speed.as_deref()],
        };
        for name in named {
            let found = find(
                name,
                quantity.header(),
                quantity.key(),
                quantity.is_needed(),
            );
            sensors.extend(found.map(|column| Sensor {
                quantity,
                column,
                header: header[column].clone(),
            }));
        }
    }
    for (index, sensor) in sensors.iter().enumerate() {
        let is_taken = |other: &Sensor| other.column == sensor.column;
        if Some(sensor.column) == time || sensors[..index].iter().any(is_taken) {
            problems.push(
                Problem::at(
                    path,
                    format!("the column \"{}\" is named twice", sensor.header),
                )
                .hint("under [columns], give each quantity a column of its own"),
            );
        }
    }
    let Some(time) = time.filter(|_| problems.is_empty()) else {
        return Err(problems);
    };
    let is_read =
        |index: &usize| *index == time || sensors.iter().any(|sensor| sensor.column == *index);
    let ignored = (0..header.len())
        .filter(|index| !is_read(index))
        .map(|index| header[index].clone())
        .collect();
    Ok(ColumnMap {
        time,
        time_header: header[time].clone(),
        sensors,
        ignored,
    })
}

/// Headers in quotes, separated by commas.
pub fn quoted(headers: &[String]) -> String {
    let quoted: Vec<String> = headers
        .iter()
        .map(|header| format!("\"{header}\""))
        .collect();
    quoted.join(", ")
}

impl Readings {
    /// Whether the run holds at least one valid reading of a quantity.
    pub fn measures(&self, quantity: Quantity) -> bool {
        match quantity {
            Quantity::Water => !self.water_c.value.is_empty(),
            Quantity::Ambient => self.ambient_c.is_some(),
            Quantity::Irradiance => self.irradiance_w_m2.is_some(),
            Quantity::Wind => self.wind_m_s.is_some(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn header(names: &[&str]) -> Vec<String> {
        names.iter().map(|name| (*name).to_owned()).collect()
    }

    #[test]
    fn columns_are_found_in_any_order_among_others() {
        let header = header(&["lux", "Wind_m_s", "ambient_c", "time", "water_c"]);
        let map = map_columns(Path::new("a.csv"), &header, &Columns::default()).unwrap();
        assert_eq!(map.time, 3);
        let found: Vec<_> = map.sensors.iter().map(|s| (s.quantity, s.column)).collect();
        assert_eq!(
            found,
            [
                (Quantity::Water, 4),
                (Quantity::Ambient, 2),
                (Quantity::Wind, 1)
            ]
        );
        assert_eq!(map.ignored, ["lux"]);
    }

    #[test]
    fn every_missing_column_is_named_with_those_that_are_there() {
        let header = header(&["when", "water"]);
        let problems = map_columns(Path::new("a.csv"), &header, &Columns::default()).unwrap_err();
        let text = problems.to_string();
        for part in [
            "\"time\"",
            "\"water_c\"",
            "\"ambient_c\"",
            "\"when\", \"water\"",
        ] {
            assert!(text.contains(part), "{text}");
        }
    }
}
