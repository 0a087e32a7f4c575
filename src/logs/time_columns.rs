//! Which column of a log is the time.

use super::fold::fold;
use super::names::{Recognised, unit_of};
use super::quantity::Role;
use super::quote::{quoted, shortened};
use super::search::Search;
use super::sensor::FoundBy;
use super::synonyms::Meaning;
use super::time_header::{clock_unit_of, unknown_zone_of, zone_of};
use super::times::calendar::CALENDAR;
use super::times::dates::read_written;
use super::times::time_of_day::{find_zone, read_zone};
use crate::language::Message;
use crate::measure::{Kind, Unit};
use crate::message;

/// The column or columns of the time.
#[derive(Debug, Clone, PartialEq)]
pub struct TimeColumns {
    /// Of the time, or of the date.
    pub first: usize,
    /// Of the clock time, where it has a column of its own.
    pub clock: Option<usize>,
    /// Of AM and PM, where they have a column of their own.
    pub half: Option<usize>,
    pub header: String,
    pub is_elapsed: bool,
    pub unit: Option<Unit>,
    /// Offset from UTC that the header states, s.
    pub offset_s: Option<i32>,
    /// Where the offset stands.
    pub offset_from: Message,
    pub found_by: FoundBy,
}

impl Search<'_> {
    /// The column of the time: by `[columns]`, else by its header.
    pub(super) fn find_time(&mut self) -> Option<TimeColumns> {
        let wanted = self.request.rules.columns.time.clone();
        let may_be_elsewhere = self.request.role != Role::Whole;
        let named: Vec<usize> = wanted
            .iter()
            .filter_map(|name| self.named_column("time", name, may_be_elsewhere))
            .collect();
        if let [first, rest @ ..] = named.as_slice() {
            let clock = rest.first().copied();
            let is_whole = named.len() == wanted.len();
            return is_whole.then(|| self.time_columns(*first, clock, FoundBy::CampaignFile));
        }
        if !wanted.is_empty() && !may_be_elsewhere {
            return None;
        }
        let of = |meaning: Meaning| self.columns_of(meaning);
        let (time, date) = (of(Meaning::Time), of(Meaning::Date));
        let (clock, elapsed) = (of(Meaning::Clock), of(Meaning::Elapsed));
        let (first, second) = match (time.first(), date.first(), clock.first(), elapsed.first()) {
            // "Local time" beside "Date" is a clock time.
            (Some(&time), Some(&date), ..) if self.is_clock_only(time) => (date, Some(time)),
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

    fn time_columns(
        &mut self,
        first: usize,
        clock: Option<usize>,
        found_by: FoundBy,
    ) -> TimeColumns {
        let half = self.half_column();
        self.taken.extend(half);
        let columns: Vec<usize> = std::iter::once(first).chain(clock).collect();
        let unknown_zone = columns
            .iter()
            .find_map(|&column| unknown_zone_of(&self.layout.header[column]));
        if let (Some(zone), None) = (unknown_zone, &self.request.rules.format.time_zone) {
            self.problem(
                format!("the header of the time says \"{}\", which zone that is is not known", shortened(&zone)),
                "write the zone of the logger's clock, such as time_zone = \"+10:00\", under [format] in campaign.toml".to_owned(),
            );
        }
        let header = &self.layout.header;
        let time_headers = || columns.iter().map(|&column| &header[column]);
        let is_meant = |column: usize, wanted: Meaning| matches!(self.names[column].recognised, Recognised::As { meaning, .. } if meaning == wanted);
        let units_row = self.layout.units.as_ref();
        let in_units_row = units_row.and_then(|(_, cells)| cells.get(first));
        let pattern = clock_unit_of(&header[first])
            .or_else(|| in_units_row.and_then(|cell| clock_unit_of(cell)))
            .filter(|_| clock.is_none());
        let in_header = time_headers().find_map(|header| zone_of(header));
        let in_units = in_units_row.and_then(|cell| read_zone(cell));
        let (offset_s, offset_from) = match (in_header, in_units, self.preamble_zone()) {
            (Some(offset_s), ..) => (Some(offset_s), message!("from-header")),
            (None, Some(offset_s), _) => (Some(offset_s), message!("from-units-row")),
            (None, None, found) => (found, message!("from-line-before")),
        };
        let headers: Vec<&str> = time_headers()
            .map(String::as_str)
            .chain(half.map(|half| header[half].as_str()))
            .collect();
        TimeColumns {
            first,
            clock,
            half,
            header: headers.join(" + "),
            // "Time (mm:ss)" is no time of day.
            is_elapsed: is_meant(first, Meaning::Elapsed)
                || (clock.is_none() && pattern.is_some_and(|unit| unit.symbol() == "min")),
            unit: pattern
                .or(self.names[first].unit)
                .or_else(|| unit_of(&header[first], &[Kind::Time]))
                .filter(|unit| unit.kind() == Kind::Time)
                .or_else(|| Unit::parse(in_units_row?, &[Kind::Time]))
                .or(self.request.rules.units.time),
            offset_s,
            offset_from,
            found_by,
        }
    }

    /// Whether the first rows have clock times without dates in a column.
    fn is_clock_only(&self, column: usize) -> bool {
        let rows = self.layout.first_rows.iter();
        let mut written = rows.filter_map(|row| read_written(row.cell(column)));
        let first = written.next();
        first.is_some_and(|written| written.date.is_none() && written.clock_us.is_some())
    }

    /// A column of nothing but AM and PM.
    fn half_column(&self) -> Option<usize> {
        let is_half = |cell: &str| {
            let word: String = fold(cell).chars().filter(|c| c.is_alphanumeric()).collect();
            CALENDAR.am.contains(&word) || CALENDAR.pm.contains(&word)
        };
        (0..self.layout.header.len()).find(|&column| {
            let rows = self.layout.first_rows.iter();
            let mut cells = rows
                .map(|row| row.cell(column))
                .filter(|cell| !cell.is_empty());
            let first = cells.next();
            !self.taken.contains(&column) && first.is_some_and(is_half) && cells.all(is_half)
        })
    }

    /// The offset from UTC that a line before the header states: "Time zone: UTC+02:00".
    fn preamble_zone(&self) -> Option<i32> {
        const WORDS: [&str; 7] = [
            "time zone",
            "timezone",
            "zona horaria",
            "fuseau horaire",
            "zeitzone",
            "fuso horario",
            "utc offset",
        ];
        self.layout.preamble.iter().find_map(|line| {
            let line = fold(line);
            let word = WORDS.into_iter().find(|word| line.contains(word))?;
            let after = line.split_once(word)?.1;
            find_zone(after).or_else(|| {
                read_zone(after.trim_matches(|c: char| {
                    matches!(c, ':' | ';' | ',' | '=' | '"') || c.is_whitespace()
                }))
            })
        })
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
}
