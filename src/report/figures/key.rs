//! A key above a figure: marks with their names, in as many rows as these take.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::fit::width_pt;
use super::style::{Area, INK, anchored, fault, pt, text};
use crate::error::Result;

/// Size of the names, points.
const SIZE_PT: f64 = 8.0;
/// From one row to the next, points.
const ROW_PT: f64 = 11.0;
/// Least room between a name and the mark of the next, points.
const GAP_PT: f64 = 5.0;

/// A name of the key.
pub struct Entry {
    pub name: String,
    /// Its place from the left where the names before it leave room, points.
    pub left_pt: f64,
    /// What its mark takes to the left of it, points.
    pub mark_pt: f64,
}

/// A key laid out.
pub struct Key {
    entries: Vec<Entry>,
    rows: Vec<usize>,
    first_row_pt: f64,
}

impl Key {
    /// Lays names out from the left, in a new row where one is full. `first_row_pt` is the
    /// height of the first, `figure_pt` the width of the figure.
    pub fn new(mut entries: Vec<Entry>, first_row_pt: f64, figure_pt: f64) -> Self {
        let mut rows = Vec::new();
        let (mut row, mut end_pt) = (0, f64::NEG_INFINITY);
        let margin_pt = entries.first().map_or(0.0, |entry| entry.left_pt);
        for entry in &mut entries {
            let next_pt = end_pt + GAP_PT + entry.mark_pt;
            let wide_pt = width_pt(&entry.name, SIZE_PT);
            let left_pt = if row == 0 {
                entry.left_pt.max(next_pt)
            } else {
                next_pt
            };
            let is_full = left_pt + wide_pt > figure_pt && end_pt.is_finite();
            entry.left_pt = match is_full {
                // A long name in a narrow figure begins where its mark leaves room.
                true if margin_pt + wide_pt > figure_pt => entry.mark_pt,
                true => margin_pt,
                false => left_pt,
            };
            row += usize::from(is_full);
            rows.push(row);
            end_pt = entry.left_pt + wide_pt;
        }
        Key {
            entries,
            rows,
            first_row_pt,
        }
    }

    /// Height of all rows, points.
    pub fn height_pt(&self) -> f64 {
        self.first_row_pt + ROW_PT * self.rows.last().map_or(0.0, |row| *row as f64)
    }

    /// Writes the names, the first row about a height, and gives where each one begins, in
    /// drawing units.
    ///
    /// # Errors
    /// [`crate::error::Error::Internal`] if the drawing fails.
    pub fn write(&self, area: &Area<'_>, middle_pt: f64) -> Result<Vec<(i32, i32)>> {
        let mut places = Vec::new();
        for (entry, row) in self.entries.iter().zip(&self.rows) {
            let place = (pt(entry.left_pt), pt(middle_pt + ROW_PT * *row as f64));
            let style = anchored(text(SIZE_PT, &INK), HPos::Left, VPos::Center);
            area.draw(&Text::new(entry.name.as_str(), place, style))
                .map_err(fault)?;
            places.push(place);
        }
        Ok(places)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn key(names: &[&str]) -> Key {
        let entry = |(place, name): (usize, &&str)| Entry {
            name: (*name).to_owned(),
            left_pt: 56.0 + 100.0 * place as f64,
            mark_pt: 9.0,
        };
        Key::new(names.iter().enumerate().map(entry).collect(), 16.0, 482.0)
    }

    #[test]
    fn short_names_keep_their_places() {
        let key = key(&["used", "set aside", "line"]);
        let left_pt: Vec<f64> = key.entries.iter().map(|entry| entry.left_pt).collect();
        assert_eq!(left_pt, [56.0, 156.0, 256.0]);
        assert_eq!(key.height_pt(), 16.0);
    }

    #[test]
    fn long_names_neither_touch_nor_leave_the_figure() {
        let key = key(&["intervals that were used (1234)"; 7]);
        assert!(key.height_pt() > 16.0);
        let mut end = (0, 0.0);
        for (entry, row) in key.entries.iter().zip(&key.rows) {
            let end_pt = entry.left_pt + width_pt(&entry.name, SIZE_PT);
            assert!(end_pt <= 482.0, "{end_pt}");
            let before_pt = if *row == end.0 { end.1 } else { 0.0 };
            assert!(entry.left_pt - entry.mark_pt > before_pt, "{before_pt}");
            end = (*row, end_pt);
        }
    }
}
