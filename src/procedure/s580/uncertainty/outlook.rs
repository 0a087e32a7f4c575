//! What more data would bring.

use super::of_line::LineUncertainty;
use crate::procedure::uncertainty::budget::Origin;
use crate::procedure::uncertainty::expanded;

/// Most intervals that are asked for.
pub const MOST_INTERVALS: usize = 5_000;
/// Rounding of a whole number of days.
const WHOLE: f64 = 1e-9;

/// What it takes to reach an expanded uncertainty, if the spread stays as it was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Outlook {
    /// It is reached.
    Reached,
    /// So many more used intervals, on so many more days.
    More { intervals: usize, days: usize },
    /// No number of intervals reaches it: the errors that all share leave so much, W.
    OutOfReach { least_w: f64 },
    /// It would take more than anybody will measure.
    TooFar,
}

/// A number of used intervals and days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extent {
    pub intervals: f64,
    pub days: f64,
}

impl LineUncertainty {
    /// Intervals and days so far.
    pub fn extent(&self) -> Extent {
        Extent {
            intervals: self.line.points as f64,
            days: self.days.days.len() as f64,
        }
    }

    /// Standard uncertainty of scatter and days at `at_k` with its degrees of freedom, if
    /// there were so many intervals and days, spread over Td as those so far.
    pub fn statistical_with(&self, extent: Extent, at_k: f64) -> (f64, f64) {
        let now = self.extent();
        let statistical = self.fitted.statistical([1.0, at_k]);
        let variance = statistical.covariance.of([1.0, at_k]);
        let of_intervals = now.intervals / extent.intervals;
        let (share, freedom) = match statistical.origin {
            Origin::Days => (now.days / extent.days, extent.days - 1.0),
            Origin::Scatter => (of_intervals, extent.intervals - 2.0),
            Origin::ReadingNoise | Origin::Common(_) => (of_intervals, statistical.freedom),
        };
        ((variance * share).sqrt(), freedom)
    }

    /// Intervals and days after so many more intervals, as many a day as so far. Where days
    /// are what counts, only whole ones do.
    pub fn extent_with(&self, more: usize) -> Extent {
        let now = self.extent();
        let more = more as f64;
        let days = more / (now.intervals / now.days);
        let days = match self.fitted.days() {
            Some(_) => (days + WHOLE).floor(),
            None => days.ceil(),
        };
        Extent {
            intervals: now.intervals + more,
            days: now.days + days,
        }
    }

    /// What it takes to bring the expanded uncertainty at `at_k` to `target_w`.
    pub fn outlook(&self, target_w: f64, at_k: f64) -> Outlook {
        let budget = self.at(at_k);
        if budget.expanded <= target_w {
            return Outlook::Reached;
        }
        let least_w = budget.common_expanded();
        if least_w >= target_w {
            return Outlook::OutOfReach { least_w };
        }
        let expanded_w = |extent: &Extent| {
            let (statistical_w, freedom) = self.statistical_with(*extent, at_k);
            expanded(&[(statistical_w, freedom)], budget.common)
        };
        let now = self.extent();
        let mut extents = (1..=MOST_INTERVALS).map(|more| self.extent_with(more));
        let enough = extents.find(|extent| expanded_w(extent) <= target_w);
        enough.map_or(Outlook::TooFar, |extent| Outlook::More {
            intervals: (extent.intervals - now.intervals) as usize,
            days: (extent.days - now.days) as usize,
        })
    }
}
