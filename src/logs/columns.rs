//! Which column of a log is which quantity, in which unit.

use std::path::Path;

use super::layout::Layout;
use super::names::{HeaderName, Recognised, fold, read_headers};
use super::quantity::{Quantity, Role};
use super::read::Request;
use super::sensor::{FoundBy, Sensor};
use super::synonyms::Meaning;
use super::time_columns::TimeColumns;
use crate::error::{Problem, Problems};
use crate::measure::Unit;
use crate::units::counted;

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
    let mut search = Search {
        path,
        layout,
        request,
        names: read_headers(&layout.header),
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

/// The search for the columns of one log.
pub(super) struct Search<'s> {
    pub(super) path: &'s Path,
    pub(super) layout: &'s Layout,
    pub(super) request: &'s Request<'s>,
    pub(super) names: Vec<HeaderName>,
    /// Columns that have a quantity.
    pub(super) taken: Vec<usize>,
    pub(super) problems: Problems,
    pub(super) absent: Vec<(&'static str, String)>,
}

impl Search<'_> {
    pub(super) fn problem(&mut self, what: String, hint: String) {
        let hint = match self.request.role {
            Role::Weather => hint
                .replace("[columns]", "[weather.columns]")
                .replace("[units]", "[weather.units]")
                .replace("[format]", "[weather.format]"),
            _ => hint,
        };
        let problem = Problem::at(self.path, what).line(self.layout.header_line);
        self.problems.push(problem.hint(hint));
    }

    /// The column of a header that `[columns]` names.
    pub(super) fn named_column(
        &mut self,
        key: &'static str,
        name: &str,
        may_be_elsewhere: bool,
    ) -> Option<usize> {
        let header = &self.layout.header;
        let with = |same: &dyn Fn(&str) -> bool| -> Vec<usize> {
            (0..header.len())
                .filter(|&index| same(&header[index]))
                .collect()
        };
        let mut matching = with(&|header| same_header(header, name));
        if matching.is_empty() {
            matching = with(&|header| same_header(&without_brackets(header), name));
        }
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

    pub(super) fn columns_of(&self, wanted: Meaning) -> Vec<usize> {
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
        let mut columns = self.columns_of(quantity.meaning());
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
            let candidates: Vec<String> = meanings
                .iter()
                .map(|meaning| meaning.describe().to_string())
                .collect();
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

/// Whether a name is a header's, with its unit in brackets or without.
pub fn is_header_of(header: &str, name: &str) -> bool {
    same_header(header, name) || same_header(&without_brackets(header), name)
}

fn without_brackets(header: &str) -> String {
    let end = header.find(['(', '[']).filter(|&start| start > 0);
    header[..end.unwrap_or(header.len())].to_owned()
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
