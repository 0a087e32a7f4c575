//! What limits the single figure most.

use super::evaluate::RatingUncertainty;
use crate::procedure::uncertainty::budget::Origin;

/// Something that limits the figure most, and that the tester can mend.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limiting {
    /// The step in which the water thermometer is read.
    Step,
    /// An estimate in place of a measurement of irradiance.
    Estimate,
}

/// What limits the figure most, with its share of the variance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MostLimiting {
    pub what: Limiting,
    pub share: f64,
}

impl RatingUncertainty {
    /// What limits the figure most, where irradiance is estimated or the thermometer is coarse.
    pub fn most_limiting(&self) -> Option<MostLimiting> {
        let parts = self.budget.contributions.iter();
        let most = parts.max_by(|one, two| one.share.total_cmp(&two.share))?;
        let what = match &most.origin {
            _ if !most.is_common() && self.step_is_most() => Limiting::Step,
            Origin::Common(error) if error.source.is_estimate() => Limiting::Estimate,
            _ => return None,
        };
        Some(MostLimiting {
            what,
            share: most.share,
        })
    }

    /// Whether the step of the thermometer is most of scatter and days.
    pub fn step_is_most(&self) -> bool {
        let reading = &self.of_line.reading;
        self.readings_are_most() && reading.resolution_w.unwrap_or(0.0) > reading.clock_w
    }
}
