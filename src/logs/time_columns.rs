//! Which column of a log is the time.

use super::columns::{Search, quoted};
use super::names::{Meaning, Recognised, unit_of, zone_of};
use super::quantity::Role;
use super::sensor::FoundBy;
use crate::measure::{Kind, Unit};

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
}
