//! Which column of a log is which quantity, in which unit.

use std::path::Path;

use super::cells::{Cell, Marks, read_cell};
use super::layout::Layout;
use super::names::{HeaderName, Meaning, Recognised, read_header, unit_of, zone_of};
use super::read::Request;
use super::readings::Readings;
use super::walk::shortened;
use crate::campaign::model::{Columns, Curve, Units};
use crate::error::{Problem, Problems};
use crate::measure::{Kind, Unit};

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

    /// Key under `[columns]` and `[units]`.
    pub fn key(self) -> &'static str {
        match self {
            Quantity::Water => "water_temperature",
            Quantity::Ambient => "ambient_temperature",
            Quantity::Irradiance => "irradiance",
            Quantity::Wind => "wind_speed",
        }
    }

    /// What a header of it means.
    pub fn meaning(self) -> Meaning {
        match self {
            Quantity::Water => Meaning::Water,
            Quantity::Ambient => Meaning::Ambient,
            Quantity::Irradiance => Meaning::Irradiance,
            Quantity::Wind => Meaning::Wind,
        }
    }

    /// The quantity in words.
    pub fn name(self) -> &'static str {
        self.meaning().describe()
    }

    /// Unit of the canonical log.
    pub fn unit(self) -> &'static str {
        self.base_unit().symbol()
    }

    fn base_unit(self) -> Unit {
        Unit::base(self.meaning().kinds()[0])
    }

    /// Without it nothing can be rated.
    pub fn is_needed(self) -> bool {
        matches!(self, Quantity::Water | Quantity::Ambient)
    }

    fn named(self, columns: &Columns) -> Vec<(usize, &str)> {
        let single = match self {
            Quantity::Water => {
                let vessels = columns.water_temperature.iter().enumerate();
                return vessels
                    .flat_map(|(vessel, names)| {
                        names.iter().map(move |name| (vessel, name.as_str()))
                    })
                    .collect();
            }
            Quantity::Ambient => &columns.ambient_temperature,
            Quantity::Irradiance => &columns.irradiance,
            Quantity::Wind => &columns.wind_speed,
        };
        single.iter().map(|name| (0, name.as_str())).collect()
    }

    fn declared_unit(self, units: &Units) -> Option<Unit> {
        match self {
            Quantity::Water => units.water_temperature,
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
    /// The quantities that it is searched for.
    pub fn sought(self) -> &'static [Quantity] {
        match self {
            Role::Weather => &Quantity::ALL[1..],
            _ => &Quantity::ALL,
        }
    }

    fn is_needed(self, quantity: Quantity) -> bool {
        match self {
            Role::Whole => quantity.is_needed(),
            Role::Cooker => quantity == Quantity::Water,
            Role::Weather => false,
        }
    }
}

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
    pub fn describe(self) -> &'static str {
        match self {
            FoundBy::CampaignFile => "campaign file",
            FoundBy::CanonicalHeader => "header",
            FoundBy::Synonym => "synonym",
            FoundBy::Elimination => "nothing else in a weather log",
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
    pub fn describe(self) -> &'static str {
        match self {
            UnitFrom::Header => "header",
            UnitFrom::UnitsRow => "units row",
            UnitFrom::CampaignFile => "campaign file",
            UnitFrom::Cells => "cells",
            UnitFrom::Assumed => "not stated, assumed",
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

/// The column or columns of the time.
#[derive(Debug, Clone, PartialEq)]
pub struct TimeColumns {
    /// Of the time, or of the date.
    pub first: usize,
    /// Of the clock time, where it has a column of its own.
    pub clock: Option<usize>,
    pub header: String,
    pub is_elapsed: bool,
    pub unit: Option<Unit>,
    /// Offset from UTC that the header states, s.
    pub offset_s: Option<i32>,
    pub found_by: FoundBy,
}

/// Positions of the columns that are read.
#[derive(Debug, Clone, PartialEq)]
pub struct ColumnMap {
    pub time: TimeColumns,
    /// One entry a sensor, in the order of [`Quantity::ALL`].
    pub sensors: Vec<Sensor>,
    /// Headers that are not read.
    pub ignored: Vec<String>,
    /// Keys and headers of `[columns]` that this log does not have, where another may.
    pub absent: Vec<(&'static str, String)>,
}

/// Finds each quantity's column: by `[columns]` where it names one, else by what its
/// header means.
///
/// # Errors
/// One problem for each column that is named or needed and not there, that could be two
/// quantities, or whose unit is not known, with the key that settles it.
pub fn map_columns(
    path: &Path,
    layout: &Layout,
    request: &Request<'_>,
) -> Result<ColumnMap, Problems> {
    let mut search = Search {
        path,
        layout,
        request,
        names: layout
            .header
            .iter()
            .map(|header| read_header(header))
            .collect(),
        taken: Vec::new(),
        problems: Problems::default(),
        absent: Vec::new(),
    };
    let named: Vec<Vec<(usize, usize)>> = request
        .role
        .sought()
        .iter()
        .map(|quantity| search.find_named(*quantity))
        .collect();
    let time = search.find_time();
    let mut found: Vec<Vec<(usize, usize, FoundBy)>> = Vec::new();
    for (quantity, named) in request.role.sought().iter().zip(named) {
        let named = named
            .into_iter()
            .map(|(column, vessel)| (column, vessel, FoundBy::CampaignFile));
        let mut columns: Vec<_> = named.collect();
        if columns.is_empty() && !search.is_named_here(*quantity) {
            columns = search.find_by_meaning(*quantity);
        }
        found.push(columns);
    }
    search.settle_open(&mut found);
    let mut sensors = Vec::new();
    for (quantity, columns) in request.role.sought().iter().zip(&found) {
        for (column, vessel, found_by) in columns {
            sensors.extend(search.sensor(*quantity, *column, *vessel, *found_by));
        }
    }
    search.check_vessels(&sensors);
    let Search {
        problems,
        taken,
        absent,
        ..
    } = search;
    let Some(time) = time.filter(|_| problems.is_empty()) else {
        return Err(problems);
    };
    let ignored = (0..layout.header.len()).filter(|index| !taken.contains(index));
    Ok(ColumnMap {
        time,
        sensors,
        ignored: ignored
            .map(|index| layout.header[index].clone())
            .filter(|h| !h.is_empty())
            .collect(),
        absent,
    })
}

struct Search<'s> {
    path: &'s Path,
    layout: &'s Layout,
    request: &'s Request<'s>,
    names: Vec<HeaderName>,
    /// Columns that have a quantity.
    taken: Vec<usize>,
    problems: Problems,
    absent: Vec<(&'static str, String)>,
}

impl Search<'_> {
    fn problem(&mut self, what: String, hint: String) {
        let problem = Problem::at(self.path, what).line(self.layout.header_line);
        self.problems.push(problem.hint(hint));
    }

    /// The column of a header that `[columns]` names.
    fn named_column(
        &mut self,
        key: &'static str,
        name: &str,
        may_be_elsewhere: bool,
    ) -> Option<usize> {
        let header = &self.layout.header;
        let matching: Vec<usize> = (0..header.len())
            .filter(|&index| same_header(&header[index], name))
            .collect();
        match matching.as_slice() {
            [column] => {
                if self.taken.contains(column) {
                    self.problem(
                        format!("the column \"{}\" is named twice", header[*column]),
                        "under [columns], give each quantity a column of its own".to_owned(),
                    );
                }
                self.taken.push(*column);
                return Some(*column);
            }
            [] if may_be_elsewhere => self.absent.push((key, name.to_owned())),
            [] => self.problem(
                format!("has no column \"{name}\"; there are: {}", quoted(header)),
                format!("name the right one under [columns] {key} in campaign.toml, for all runs or under this [[run]] alone, or rename the column in this log"),
            ),
            several => self.problem(
                format!("has the column \"{name}\" {} times", several.len()),
                "rename the columns so that each has a header of its own".to_owned(),
            ),
        }
        None
    }

    fn find_named(&mut self, quantity: Quantity) -> Vec<(usize, usize)> {
        let columns = &self.request.rules.columns;
        let may_be_elsewhere = self.request.role != Role::Whole;
        let named = quantity.named(columns).into_iter();
        named
            .filter_map(|(vessel, name)| {
                Some((
                    self.named_column(quantity.key(), name, may_be_elsewhere)?,
                    vessel,
                ))
            })
            .collect()
    }

    /// Whether `[columns]` names a column that must be in this log.
    fn is_named_here(&self, quantity: Quantity) -> bool {
        self.request.role == Role::Whole && !quantity.named(&self.request.rules.columns).is_empty()
    }

    fn find_time(&mut self) -> Option<TimeColumns> {
        let wanted = self.request.rules.columns.time.clone();
        let may_be_elsewhere = self.request.role != Role::Whole;
        let named: Vec<usize> = wanted
            .iter()
            .filter_map(|name| self.named_column("time", name, may_be_elsewhere))
            .collect();
        if let [first, rest @ ..] = named.as_slice() {
            return (named.len() == wanted.len())
                .then(|| self.time_columns(*first, rest.first().copied(), FoundBy::CampaignFile));
        }
        if !wanted.is_empty() && !may_be_elsewhere {
            return None;
        }
        let of = |meaning: Meaning| self.columns_of(meaning);
        let (time, date) = (of(Meaning::Time), of(Meaning::Date));
        let (clock, elapsed) = (of(Meaning::Clock), of(Meaning::Elapsed));
        let (first, second) = match (time.first(), date.first(), clock.first(), elapsed.first()) {
            (Some(&time), ..) => (time, None),
            (None, Some(&date), Some(&clock), _) => (date, Some(clock)),
            (None, None, Some(&clock), _) => (clock, None),
            (None, Some(&date), None, _) => (date, None),
            (None, None, None, Some(&elapsed)) => (elapsed, None),
            (None, None, None, None) => {
                self.refuse_time();
                return None;
            }
        };
        let kind = [&time, &date, &clock, &elapsed]
            .into_iter()
            .find(|columns| columns.contains(&first));
        if let Some(several) = kind.filter(|columns| columns.len() > 1 && second.is_none()) {
            let headers: Vec<String> = several
                .iter()
                .map(|&column| self.layout.header[column].clone())
                .collect();
            self.problem(
                format!("has several time columns: {}", quoted(&headers)),
                "say which counts under [columns] time in campaign.toml".to_owned(),
            );
            return None;
        }
        let found_by = if second.is_none() && self.layout.header[first].eq_ignore_ascii_case("time")
        {
            FoundBy::CanonicalHeader
        } else {
            FoundBy::Synonym
        };
        self.taken.extend(std::iter::once(first).chain(second));
        Some(self.time_columns(first, second, found_by))
    }

    fn time_columns(&self, first: usize, clock: Option<usize>, found_by: FoundBy) -> TimeColumns {
        let header = &self.layout.header;
        let is_meant = |column: usize, wanted: Meaning| matches!(self.names[column].recognised, Recognised::As { meaning, .. } if meaning == wanted);
        let units_row = self.layout.units.as_ref();
        let in_units_row = units_row.and_then(|(_, cells)| cells.get(first));
        let columns = std::iter::once(first).chain(clock);
        TimeColumns {
            first,
            clock,
            header: match clock {
                Some(clock) => format!("{} + {}", header[first], header[clock]),
                None => header[first].clone(),
            },
            is_elapsed: is_meant(first, Meaning::Elapsed),
            unit: self.names[first]
                .unit
                .or_else(|| unit_of(&header[first], &[Kind::Time]))
                .filter(|unit| unit.kind() == Kind::Time)
                .or_else(|| Unit::parse(in_units_row?, &[Kind::Time]))
                .or(self.request.rules.units.time),
            offset_s: columns
                .into_iter()
                .find_map(|column| zone_of(&header[column])),
            found_by,
        }
    }

    fn refuse_time(&mut self) {
        let is_time = |meaning: &Meaning| meaning.kinds() == [Kind::Time];
        let open = (0..self.names.len()).find(|&column| {
            matches!(&self.names[column].recognised, Recognised::OneOf(meanings) if meanings.iter().any(is_time))
        });
        let header = &self.layout.header;
        let what = match open {
            Some(column) => format!(
                "no column is certain to be the time; \"{}\" could be",
                header[column]
            ),
            None => format!(
                "has no column that is understood as time; there are: {}",
                quoted(header)
            ),
        };
        self.problem(
            what,
            "name it under [columns] time in campaign.toml, or call it \"time\"".to_owned(),
        );
    }

    fn columns_of(&self, wanted: Meaning) -> Vec<usize> {
        let is_it = |column: &usize| {
            let name = &self.names[*column].recognised;
            matches!(name, Recognised::As { meaning, .. } if *meaning == wanted)
                && !self.taken.contains(column)
        };
        (0..self.names.len()).filter(is_it).collect()
    }

    /// Columns whose header means a quantity; several only for the water, and only if
    /// their headers differ in nothing but a number.
    fn find_by_meaning(&mut self, quantity: Quantity) -> Vec<(usize, usize, FoundBy)> {
        let columns = self.columns_of(quantity.meaning());
        let base = |column: usize| match &self.names[column].recognised {
            Recognised::As { base, .. } => base.clone(),
            _ => String::new(),
        };
        let are_alike = columns
            .windows(2)
            .all(|pair| base(pair[0]) == base(pair[1]));
        let headers: Vec<String> = columns
            .iter()
            .map(|&column| self.layout.header[column].clone())
            .collect();
        let are_distinct = headers
            .iter()
            .all(|one| headers.iter().filter(|other| *other == one).count() == 1);
        if columns.len() > 1 && !are_distinct {
            self.problem(
                format!("has the column \"{}\" {} times", headers[0], columns.len()),
                "rename the columns so that each has a header of its own".to_owned(),
            );
        } else if columns.len() > 1 && !(quantity == Quantity::Water && are_alike) {
            let listed = quoted(&headers);
            let key = quantity.key();
            let example = match quantity {
                Quantity::Water => format!("[{listed}], or one of them"),
                _ => format!("\"{}\"", headers[0]),
            };
            self.problem(
                format!(
                    "has several columns that could be {}: {listed}",
                    quantity.name()
                ),
                format!("say which counts under [columns] in campaign.toml: {key} = {example}"),
            );
        }
        self.taken.extend(&columns);
        let canonical = |column: usize| {
            if self.layout.header[column].eq_ignore_ascii_case(quantity.header()) {
                FoundBy::CanonicalHeader
            } else {
                FoundBy::Synonym
            }
        };
        let numbered = columns.iter().enumerate();
        numbered
            .map(|(vessel, &column)| (column, vessel, canonical(column)))
            .collect()
    }

    /// Columns that could be several things: taken where only one is possible, refused
    /// where a quantity would be guessed.
    fn settle_open(&mut self, found: &mut [Vec<(usize, usize, FoundBy)>]) {
        let role = self.request.role;
        let sought = role.sought();
        let is_missing =
            |found: &[Vec<(usize, usize, FoundBy)>], index: usize| found[index].is_empty();
        let mut open: Vec<(usize, Vec<usize>)> = Vec::new();
        for column in 0..self.names.len() {
            let Recognised::OneOf(meanings) = &self.names[column].recognised else {
                continue;
            };
            let could_be: Vec<usize> = (0..sought.len())
                .filter(|&index| {
                    meanings.contains(&sought[index].meaning()) && is_missing(found, index)
                })
                .collect();
            if !self.taken.contains(&column) && !could_be.is_empty() {
                open.push((column, could_be));
            }
        }
        if role == Role::Weather
            && let [(column, could_be)] = open.as_slice()
            && let [only] = could_be.as_slice()
        {
            self.taken.push(*column);
            found[*only].push((*column, 0, FoundBy::Elimination));
            return;
        }
        let mut refused = false;
        for (column, could_be) in open {
            let guessed: Vec<Quantity> = could_be.iter().map(|&index| sought[index]).collect();
            let is_needed = guessed.iter().any(|quantity| role.is_needed(*quantity));
            let Recognised::OneOf(meanings) = &self.names[column].recognised else {
                continue;
            };
            if !is_needed && (guessed.len() < 2 || role == Role::Cooker) {
                continue;
            }
            refused = true;
            let candidates: Vec<&str> = meanings.iter().map(|meaning| meaning.describe()).collect();
            let header = &self.layout.header[column];
            let keys: Vec<String> = guessed
                .iter()
                .map(|q| format!("{} = \"{header}\"", q.key()))
                .collect();
            let (what, hint) = (
                format!(
                    "the column \"{header}\" could be {}",
                    candidates.join(" or ")
                ),
                format!(
                    "say which under [columns] in campaign.toml: {}",
                    keys.join(", or ")
                ),
            );
            self.problem(what, hint);
        }
        for (index, quantity) in sought.iter().enumerate() {
            let is_lacking = is_missing(found, index) && !self.is_named_here(*quantity);
            if !refused && is_lacking && role.is_needed(*quantity) {
                let name = quantity.name();
                self.problem(
                    format!("has no column that is understood as {name}; there are: {}", quoted(&self.layout.header)),
                    format!(
                        "name it under [columns] {} in campaign.toml, for all runs or under this [[run]] alone, or call it \"{}\"",
                        quantity.key(),
                        quantity.header()
                    ),
                );
            }
        }
    }

    /// A column as a sensor, with its unit; `None` after a problem.
    fn sensor(
        &mut self,
        quantity: Quantity,
        column: usize,
        vessel: usize,
        found_by: FoundBy,
    ) -> Option<Sensor> {
        let header = self.layout.header[column].clone();
        let (unit, unit_from) = self.unit(quantity, column)?;
        let calibration = self
            .request
            .calibrations
            .iter()
            .find(|one| same_header(&one.column, &header));
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
        let in_header = name
            .unit
            .filter(|unit| kinds.contains(&unit.kind()))
            .or_else(|| unit_of(header, kinds));
        if let Some(unit) = in_header {
            return Some((unit, UnitFrom::Header));
        }
        let units_row = self.layout.units.as_ref();
        let in_row = units_row
            .and_then(|(_, cells)| cells.get(column))
            .filter(|cell| !cell.is_empty());
        if let Some(unit) = in_row.and_then(|cell| Unit::parse(cell, kinds)) {
            return Some((unit, UnitFrom::UnitsRow));
        }
        if let Some(unit) = quantity.declared_unit(&self.request.rules.units) {
            return Some((unit, UnitFrom::CampaignFile));
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

    fn check_vessels(&mut self, sensors: &[Sensor]) {
        let loads = self.request.vessel_water_kg.len();
        let water = sensors
            .iter()
            .filter(|sensor| sensor.quantity == Quantity::Water);
        let vessels = water.map(|sensor| sensor.vessel + 1).max().unwrap_or(0);
        if loads > 0 && vessels > 0 && loads != vessels {
            self.problem(
                format!("has the water of {vessels} vessels, and vessel_water_kg has {loads}"),
                "name the water columns in the order of the vessels under [columns] water_temperature; several sensors of one vessel stand in a list of their own".to_owned(),
            );
        }
    }
}

/// What follows the number in a cell.
pub fn after_number(cell: &str) -> &str {
    let is_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '+' | '-' | '−' | '\'');
    cell.trim_start_matches(is_number).trim()
}

/// A cell without the unit behind its number.
pub fn number_alone(cell: &str) -> &str {
    let unit = after_number(cell);
    match read_cell(cell, Marks::POINT) {
        Cell::Number(_) => cell,
        _ => cell[..cell.len() - unit.len()].trim_end(),
    }
}

fn same_header(left: &str, right: &str) -> bool {
    let words = |text: &str| {
        text.split_whitespace()
            .collect::<Vec<_>>()
            .join(" ")
            .to_lowercase()
    };
    words(left) == words(right)
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
