//! Which column of a log is which quantity, in which unit.

use std::collections::BTreeSet;
use std::path::Path;

use super::aimings::is_of_notes;
use super::fold::fold;
use super::layout::Layout;
use super::names::Recognised;
use super::quantity::{Quantity, Role};
use super::quote::quoted;
use super::request::Request;
use super::search::{Found, Search};
use super::sensor::{FoundBy, Sensor};
use super::synonyms::{Meaning, names_water};
use super::time_columns::TimeColumns;
use crate::campaign::kinds::RunKind;
use crate::error::Problems;
use crate::measure::Unit;
use crate::units::counted;

/// Positions of the columns that are read.
#[derive(Debug, Clone, PartialEq)]
pub struct ColumnMap {
    pub time: TimeColumns,
    /// One entry a sensor, in the order of [`Quantity::ALL`].
    pub sensors: Vec<Sensor>,
    /// Position of the column of notes.
    pub notes: Option<usize>,
    /// Headers that are not read.
    pub ignored: Vec<String>,
    /// Keys and headers of `[columns]` that this log does not have, where another may.
    pub absent: Vec<(&'static str, String)>,
    /// Cells that a row must have for every column that is read.
    pub least_cells: usize,
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
    let mut search = Search::new(path, layout, request);
    let sought = request.role.sought(request.kind);
    let named: Vec<Vec<Found>> = sought
        .iter()
        .map(|&quantity| search.find_named(quantity))
        .collect();
    let time = search.find_time();
    let mut found: Vec<Vec<Found>> = Vec::new();
    for (&quantity, named) in sought.iter().zip(named) {
        let is_open = named.is_empty() && !search.is_named_here(quantity);
        found.push(if is_open {
            search.find_by_meaning(quantity)
        } else {
            named
        });
    }
    search.settle_open(&mut found);
    let mut sensors = Vec::new();
    for (&quantity, columns) in sought.iter().zip(&found) {
        for column in columns {
            sensors.extend(search.sensor(quantity, column));
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
    // Notes beside the cooker say what was done to it; those of a weather station do not.
    let is_beside = request.role != Role::Weather;
    let notes = (0..layout.header.len())
        .find(|index| is_beside && !taken.contains(index) && is_of_notes(&layout.header[*index]));
    let ignored =
        (0..layout.header.len()).filter(|index| !taken.contains(index) && notes != Some(*index));
    let of_time = std::iter::once(time.first)
        .chain(time.clock)
        .chain(time.half);
    let last = of_time
        .chain(sensors.iter().map(|sensor| sensor.column))
        .max();
    Ok(ColumnMap {
        least_cells: least_cells(layout, last.map_or(0, |last| last + 1)),
        time,
        sensors,
        notes,
        ignored: ignored
            .map(|index| layout.header[index].clone())
            .filter(|h| !h.is_empty())
            .collect(),
        absent,
    })
}

/// Cells that a row must have: those that are read, and those beside them that hold
/// something in rows of full length, where a lost cell would shift the others. Blank ones
/// and notes at the end of a row may be left off.
fn least_cells(layout: &Layout, read: usize) -> usize {
    let whole = || {
        layout
            .first_rows
            .iter()
            .filter(|row| row.len() >= layout.header.len())
    };
    let is_note = |column: usize| {
        let header = fold(&layout.header[column]);
        [
            "note", "nota", "remark", "comment", "coment", "bemerk", "obs",
        ]
        .iter()
        .any(|word| header.contains(word))
    };
    let is_blank = |column: usize| whole().all(|row| row.cell(column).is_empty());
    let may_lack =
        |column: &usize| whole().next().is_some() && (is_note(*column) || is_blank(*column));
    let end = (read..layout.header.len())
        .rev()
        .take_while(may_lack)
        .last();
    end.unwrap_or(layout.header.len())
}

impl Search<'_> {
    fn find_named(&mut self, quantity: Quantity) -> Vec<Found> {
        let columns = &self.request.rules.columns;
        let may_be_elsewhere = self.may_be_elsewhere(quantity);
        let named = quantity.named(columns).into_iter();
        named
            .filter_map(|(vessel, name)| {
                Some(Found {
                    column: self.named_column(quantity.key(), name, may_be_elsewhere)?,
                    vessel,
                    found_by: FoundBy::CampaignFile,
                })
            })
            .collect()
    }

    /// Whether `[columns]` names a column that must be in this log.
    fn is_named_here(&self, quantity: Quantity) -> bool {
        !self.may_be_elsewhere(quantity) && !quantity.named(&self.request.rules.columns).is_empty()
    }

    /// Whether a column that `[columns]` names for all logs may be lacking here: of a quantity
    /// that another log holds, or that a load cooling in the shade does not need.
    fn may_be_elsewhere(&self, quantity: Quantity) -> bool {
        let is_of_sun = quantity == Quantity::Irradiance;
        self.request.role != Role::Whole || (is_of_sun && self.request.kind == RunKind::Cooling)
    }

    /// Columns whose header means a quantity; several only for the water, and only if
    /// their headers differ in nothing but a number.
    fn find_by_meaning(&mut self, quantity: Quantity) -> Vec<Found> {
        let columns = self.fitting_columns(quantity);
        self.check_rivals(quantity, &columns);
        self.taken.extend(&columns);
        let found_by = |column: usize| {
            if self.layout.header[column].eq_ignore_ascii_case(quantity.header()) {
                FoundBy::CanonicalHeader
            } else {
                FoundBy::Synonym
            }
        };
        let numbered = columns.iter().enumerate();
        numbered
            .map(|(vessel, &column)| Found {
                column,
                vessel,
                found_by: found_by(column),
            })
            .collect()
    }

    /// Columns whose header means a quantity, without those that another outdoes by its
    /// unit.
    fn fitting_columns(&self, quantity: Quantity) -> Vec<usize> {
        let mut columns = self.columns_of(quantity.meaning());
        if quantity == Quantity::Vessel && columns.is_empty() {
            // What means the water of a full pot means an empty one itself.
            columns = self.columns_of(Meaning::Water);
            columns.retain(|&column| !names_water(&self.layout.header[column]));
        }
        // A column in the unit of something else is no rival of one that fits.
        let fits = |column: &usize| self.names[*column].not_a_unit.is_none();
        if columns.iter().any(fits) {
            columns.retain(fits);
        }
        // One quantity in two units: that of the canonical log counts.
        let units: Vec<_> = columns
            .iter()
            .map(|&column| self.names[column].unit)
            .collect();
        let is_other = |unit: &Option<Unit>| unit.is_some_and(|unit| unit != quantity.base_unit());
        let in_base = units
            .iter()
            .filter(|unit| **unit == Some(quantity.base_unit()))
            .count();
        if in_base == 1 && units.iter().filter(|unit| is_other(unit)).count() + 1 == units.len() {
            columns.retain(|&column| self.names[column].unit == Some(quantity.base_unit()));
        }
        columns
    }

    /// Refuses several columns of a quantity where they are no sensors of one kind.
    fn check_rivals(&mut self, quantity: Quantity, columns: &[usize]) {
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
        let distinct: BTreeSet<&String> = headers.iter().collect();
        let are_distinct = distinct.len() == headers.len();
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
    }

    /// Columns that could be several things: taken where only one is possible, refused
    /// where a quantity would be guessed.
    fn settle_open(&mut self, found: &mut [Vec<Found>]) {
        let open = self.open_columns(found);
        if self.request.role == Role::Weather
            && let [(column, could_be)] = open.as_slice()
            && let [only] = could_be.as_slice()
        {
            self.taken.push(*column);
            found[*only].push(Found {
                column: *column,
                vessel: 0,
                found_by: FoundBy::Elimination,
            });
            return;
        }
        let refused = self.refuse_guesses(&open);
        if !refused {
            self.refuse_missing(found);
        }
    }

    /// Columns that could be several things, each with the positions of the quantities
    /// sought that it could be and that have no column yet.
    fn open_columns(&self, found: &[Vec<Found>]) -> Vec<(usize, Vec<usize>)> {
        let sought = self.request.role.sought(self.request.kind);
        let mut open: Vec<(usize, Vec<usize>)> = Vec::new();
        for column in 0..self.names.len() {
            let Recognised::OneOf(meanings) = &self.names[column].recognised else {
                continue;
            };
            let could_be: Vec<usize> = (0..sought.len())
                .filter(|&index| {
                    let meaning = match sought[index] {
                        // The thermometer that a full pot has in its water.
                        Quantity::Vessel => Meaning::Water,
                        other => other.meaning(),
                    };
                    meanings.contains(&meaning) && found[index].is_empty()
                })
                .collect();
            if !self.taken.contains(&column) && !could_be.is_empty() {
                open.push((column, could_be));
            }
        }
        open
    }

    /// Refuses open columns of which one would be guessed; whether there are any.
    fn refuse_guesses(&mut self, open: &[(usize, Vec<usize>)]) -> bool {
        let (role, kind) = (self.request.role, self.request.kind);
        let mut refused = false;
        for (column, could_be) in open {
            let guessed: Vec<Quantity> = could_be
                .iter()
                .map(|&index| role.sought(kind)[index])
                .collect();
            let is_needed = guessed
                .iter()
                .any(|quantity| role.is_needed(*quantity, kind));
            let Recognised::OneOf(meanings) = &self.names[*column].recognised else {
                continue;
            };
            if !is_needed && (guessed.len() < 2 || role == Role::Cooker) {
                continue;
            }
            refused = true;
            let candidates: Vec<String> = meanings
                .iter()
                .map(|meaning| meaning.describe().to_string())
                .collect();
            let header = &self.layout.header[*column];
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
        refused
    }

    /// Refuses a log without a column of a quantity that it must have. Of a dry run that holds
    /// the water's temperature instead, the procedure tells.
    fn refuse_missing(&mut self, found: &[Vec<Found>]) {
        let (role, kind) = (self.request.role, self.request.kind);
        for (quantity, columns) in role.sought(kind).iter().zip(found) {
            let is_lacking = columns.is_empty() && !self.is_named_here(*quantity);
            let is_other =
                *quantity == Quantity::Vessel && !self.columns_of(Meaning::Water).is_empty();
            if is_lacking && !is_other && role.is_needed(*quantity, kind) {
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

    fn check_vessels(&mut self, sensors: &[Sensor]) {
        let loads = self.request.vessel_water_kg.len();
        let water = sensors
            .iter()
            .filter(|sensor| sensor.quantity == Quantity::Water);
        let vessels = water.map(|sensor| sensor.vessel + 1).max().unwrap_or(0);
        let are_named = sensors
            .iter()
            .filter(|sensor| sensor.quantity == Quantity::Water)
            .all(|sensor| sensor.found_by == FoundBy::CampaignFile);
        if loads > 1 && vessels > 1 && !are_named {
            self.problem(
                "has the water of several vessels, and it is not said which column is which".to_owned(),
                "name them in the order of vessel_water_kg: water_temperature = [\"…\", \"…\"] under [columns] in campaign.toml".to_owned(),
            );
        } else if loads > 0 && vessels > 0 && loads != vessels {
            self.problem(
                format!(
                    "has the water of {}, and vessel_water_kg has {loads}",
                    counted(vessels, "vessel")
                ),
                "name the water columns in the order of the vessels under [columns] water_temperature; several sensors of one vessel stand in a list of their own".to_owned(),
            );
        }
    }
}
