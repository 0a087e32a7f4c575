//! A figure as it is printed.

use super::budget::Budget;
use super::trials::{MonteCarlo, printed};
use crate::stats::line::Bounds;

/// A figure with its uncertainty, in its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figure {
    pub value: f64,
    pub standard_uncertainty: f64,
    /// For 95 %.
    pub interval: Bounds,
}

impl Figure {
    /// Half of the interval; the larger, where it is not even on both sides.
    pub fn half_width(&self) -> f64 {
        self.interval.reach_from(self.value)
    }

    /// A figure by its budget, and by its draws where they reach further.
    pub fn of(budget: &Budget, drawn: Option<&MonteCarlo>) -> Figure {
        Figure {
            value: budget.value,
            standard_uncertainty: budget.combined,
            interval: printed(budget, drawn),
        }
    }
}
