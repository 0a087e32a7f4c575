//! One column of numbers: what it measures, in which unit, and how it is put right.

use super::quantity::Quantity;
use crate::campaign::model::Curve;
use crate::language::Message;
use crate::measure::Unit;
use crate::message;

/// Why a column was taken for a quantity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FoundBy {
    CampaignFile,
    CanonicalHeader,
    Synonym,
    /// The only thing it can be in a weather log.
    Elimination,
}

impl FoundBy {
    /// In words.
    pub fn describe(self) -> Message {
        match self {
            FoundBy::CampaignFile => message!("found-campaign-file"),
            FoundBy::CanonicalHeader => message!("found-header"),
            FoundBy::Synonym => message!("found-synonym"),
            FoundBy::Elimination => message!("found-elimination"),
        }
    }
}

/// Where a unit is stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UnitFrom {
    Header,
    UnitsRow,
    CampaignFile,
    Cells,
    /// Nowhere: taken as the canonical log's, and said so.
    Assumed,
}

impl UnitFrom {
    /// In words.
    pub fn describe(self) -> Message {
        match self {
            UnitFrom::Header => message!("unit-header"),
            UnitFrom::UnitsRow => message!("unit-units-row"),
            UnitFrom::CampaignFile => message!("unit-campaign-file"),
            UnitFrom::Cells => message!("unit-cells"),
            UnitFrom::Assumed => message!("unit-assumed"),
        }
    }
}

/// One column of numbers.
#[derive(Debug, Clone, PartialEq)]
pub struct Sensor {
    pub quantity: Quantity,
    pub column: usize,
    pub header: String,
    pub found_by: FoundBy,
    pub unit: Unit,
    pub unit_from: UnitFrom,
    /// Cells repeat the unit behind the number.
    pub has_unit_in_cells: bool,
    /// Index of the vessel that it is in.
    pub vessel: usize,
    /// Base units of a voltage or current per W/m²; 1 for all other units.
    pub per_w_m2: f64,
    pub calibration: Option<Curve>,
}

impl Sensor {
    /// Where a problem with it sits, in words.
    pub fn item(&self) -> String {
        format!("column \"{}\" ({})", self.header, self.quantity.name())
    }

    /// A cell without the sensor's unit behind its number; as it is with another text.
    pub fn number_alone<'c>(&self, cell: &'c str) -> &'c str {
        let unit = after_number(cell);
        if Unit::parse(unit, self.quantity.meaning().kinds()) == Some(self.unit) {
            cell[..cell.len() - unit.len()].trim_end()
        } else {
            cell
        }
    }

    /// A reading in the unit of the canonical log, calibrated.
    pub fn value(&self, reading: f64) -> f64 {
        let value = self.unit.to_base(reading) / self.per_w_m2;
        match &self.calibration {
            None => value,
            Some(curve) => curve.apply(value),
        }
    }
}

impl Curve {
    /// True value of a reading, both in the unit of the canonical log. Beyond the first
    /// and last point the nearest straight line goes on.
    pub fn apply(&self, reading: f64) -> f64 {
        match self {
            Curve::Line { gain, offset } => gain * reading + offset,
            Curve::Points(points) => {
                let after = points.partition_point(|point| point[0] < reading);
                let end = after.clamp(1, points.len() - 1);
                let ([x0, y0], [x1, y1]) = (points[end - 1], points[end]);
                y0 + (y1 - y0) * (reading - x0) / (x1 - x0)
            }
        }
    }
}

/// What follows the number in a cell.
pub fn after_number(cell: &str) -> &str {
    let is_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '+' | '-' | '−' | '\'');
    cell.trim_start_matches(is_number).trim()
}
