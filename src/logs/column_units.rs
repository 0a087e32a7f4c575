//! The sensor in a column: in which unit its numbers are, and how they are put right.

use super::fold::fold;
use super::names::{Recognised, unit_of};
use super::quantity::Quantity;
use super::quote::shortened;
use super::search::{Found, Search, is_header_of};
use super::sensor::{FoundBy, Sensor, UnitFrom, after_number};
use crate::campaign::model::Plane;
use crate::measure::{Kind, Unit};

impl Search<'_> {
    /// A column as a sensor, with its unit; `None` after a problem.
    pub(super) fn sensor(&mut self, quantity: Quantity, found: &Found) -> Option<Sensor> {
        let &Found {
            column,
            vessel,
            found_by,
        } = found;
        let header = self.layout.header[column].clone();
        let is_normal = self.request.plane != Some(Plane::Horizontal);
        if quantity == Quantity::Irradiance
            && found_by != FoundBy::CampaignFile
            && is_normal
            && is_horizontal(&header)
        {
            self.problem(
                format!("the column \"{header}\" is horizontal irradiance by its name, and the campaign file's sensor is normal to the beam"),
                "write plane = \"horizontal\" under [instruments.irradiance], or name the right column under [columns] irradiance".to_owned(),
            );
            return None;
        }
        let (unit, unit_from) = self.unit(quantity, column)?;
        let calibration = self
            .request
            .calibrations
            .iter()
            .find(|one| is_header_of(&header, &one.column));
        Some(Sensor {
            quantity,
            column,
            found_by,
            unit,
            unit_from,
            has_unit_in_cells: self.unit_in_cells(quantity, column) == Some(unit),
            vessel,
            per_w_m2: self.sensitivity(unit, &header)?,
            calibration: calibration.map(|one| one.curve.clone()),
            header,
        })
    }

    /// The unit as the log states it, else as the campaign file does, else the canonical.
    fn unit(&mut self, quantity: Quantity, column: usize) -> Option<(Unit, UnitFrom)> {
        let kinds = quantity.meaning().kinds();
        let header = &self.layout.header[column];
        let name = &self.names[column];
        // Where the header is understood, it has said what its unit is.
        let is_meant = matches!(&name.recognised, Recognised::As { meaning, .. } if *meaning == quantity.meaning());
        let in_header = name
            .unit
            .filter(|unit| kinds.contains(&unit.kind()))
            .or_else(|| unit_of(header, kinds).filter(|_| !is_meant));
        let units_row = self.layout.units.as_ref();
        let in_row = units_row
            .and_then(|(_, cells)| cells.get(column))
            .filter(|cell| !cell.trim_matches(['-', '–', '—', ' ']).is_empty());
        let declared = quantity.declared_unit(&self.request.rules.units);
        if let Some(unit) = declared.filter(|_| self.request.rules.units_come_first) {
            return Some((unit, UnitFrom::CampaignFile));
        }
        let stated = [
            (in_header, UnitFrom::Header),
            (
                in_row.and_then(|cell| Unit::parse(cell, kinds)),
                UnitFrom::UnitsRow,
            ),
            (declared, UnitFrom::CampaignFile),
        ];
        let stated = stated
            .into_iter()
            .filter_map(|(unit, from)| Some((unit?, from)));
        let stated: Vec<(Unit, UnitFrom)> = stated.collect();
        if let [(unit, from), others @ ..] = stated.as_slice() {
            if let Some((other, other_from)) = others.iter().find(|(other, _)| other != unit) {
                let what = format!(
                    "column \"{header}\" is in {} by its {} and in {} by the {}",
                    unit.symbol(),
                    from.describe(),
                    other.symbol(),
                    other_from.describe()
                );
                let hint = "take out the wrong one; [units] is for logs that state none, and can stand under a [[run]]";
                self.problem(what, hint.to_owned());
                return None;
            }
            return Some((*unit, *from));
        }
        if let Some(not_a_unit) = in_row.cloned().or_else(|| name.not_a_unit.clone()) {
            let (key, known) = (quantity.key(), Unit::known(kinds));
            let what = format!(
                "column \"{header}\": found the unit \"{}\", expected one of {known}",
                shortened(&not_a_unit)
            );
            let hint = format!(
                "correct it in the log, or write {key} = \"{}\" under [units] in campaign.toml",
                quantity.unit()
            );
            self.problem(what, hint);
            return None;
        }
        if let Some(unit) = self.unit_in_cells(quantity, column) {
            return Some((unit, UnitFrom::Cells));
        }
        Some((quantity.base_unit(), UnitFrom::Assumed))
    }

    /// The unit behind the number in the first cells that hold something.
    fn unit_in_cells(&self, quantity: Quantity, column: usize) -> Option<Unit> {
        let rows = self.layout.first_rows.iter();
        let cells = rows
            .map(|row| row.cell(column))
            .filter(|cell| cell.starts_with(|c: char| c.is_ascii_digit()));
        let mut units =
            cells.map(|cell| Unit::parse(after_number(cell), quantity.meaning().kinds()));
        let first = units.next()??;
        units.all(|unit| unit == Some(first)).then_some(first)
    }

    fn sensitivity(&mut self, unit: Unit, header: &str) -> Option<f64> {
        let sensitivity = self.request.sensitivity;
        let (value, key, example) = match unit.kind() {
            Kind::Voltage => (
                sensitivity.uv_per_w_m2,
                "sensitivity_uv_per_w_m2",
                "µV per W/m², from the sensor's certificate",
            ),
            Kind::Current => (
                sensitivity.ma_per_w_m2,
                "sensitivity_ma_per_w_m2",
                "mA of short-circuit current per W/m², from the cell's calibration",
            ),
            _ => return Some(1.0),
        };
        if value.is_none() {
            let what = format!(
                "column \"{header}\": irradiance is in {}, and the sensor's sensitivity is not given",
                unit.symbol()
            );
            self.problem(
                what,
                format!("write {key} under [instruments.irradiance] in campaign.toml: {example}"),
            );
        }
        value
    }
}

/// Whether a header says that irradiance is that on the horizontal.
fn is_horizontal(header: &str) -> bool {
    let folded = fold(header);
    let mut words = folded.split(|c: char| !c.is_alphanumeric());
    words.any(|word| matches!(word, "ghi" | "horizontal" | "horizontale"))
}
