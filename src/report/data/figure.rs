//! A figure as data.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::uncertainty::Figure;

/// A figure with its uncertainty.
#[derive(Debug, Serialize, JsonSchema)]
pub struct FigureEntry {
    /// In the unit of the figure's key.
    value: f64,
    /// Combined, k = 1: scatter, days and instruments.
    standard_uncertainty: f64,
    /// Ends of the interval that the report prints, for 95 %. With the finding `one-day` it
    /// leaves out what another day would do.
    interval_95: [f64; 2],
}

/// The entry of a figure.
pub fn figure_entry(figure: &Figure) -> FigureEntry {
    FigureEntry {
        value: figure.value,
        standard_uncertainty: figure.standard_uncertainty,
        interval_95: [figure.interval.lower, figure.interval.upper],
    }
}
