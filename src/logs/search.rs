//! The search for the columns of one log: what is known, what is taken, what is wrong.

use std::path::Path;

use super::layout::Layout;
use super::names::{HeaderName, Recognised, read_headers};
use super::quantity::Role;
use super::quote::quoted;
use super::request::Request;
use super::sensor::FoundBy;
use super::synonyms::Meaning;
use crate::error::{Problem, Problems};

/// A column that is taken for a quantity.
pub(super) struct Found {
    pub(super) column: usize,
    /// Index of the vessel that its sensor is in.
    pub(super) vessel: usize,
    pub(super) found_by: FoundBy,
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
    /// Keys and headers of `[columns]` that are not there, where another log may have them.
    pub(super) absent: Vec<(&'static str, String)>,
}

impl<'s> Search<'s> {
    /// A search that has found nothing.
    pub(super) fn new(path: &'s Path, layout: &'s Layout, request: &'s Request<'s>) -> Self {
        Search {
            path,
            layout,
            request,
            names: read_headers(&layout.header),
            taken: Vec::new(),
            problems: Problems::default(),
            absent: Vec::new(),
        }
    }

    /// Adds a problem with the header, with the keys of the log's own tables.
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

    /// Columns that mean something and have no quantity yet.
    pub(super) fn columns_of(&self, wanted: Meaning) -> Vec<usize> {
        let is_it = |column: &usize| {
            let name = &self.names[*column].recognised;
            matches!(name, Recognised::As { meaning, .. } if *meaning == wanted)
                && !self.taken.contains(column)
        };
        (0..self.names.len()).filter(is_it).collect()
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
