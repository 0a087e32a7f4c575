//! What limits the single figure most.

use super::budget::{Budget, Origin};
use super::evaluate::RatingUncertainty;
use crate::procedure::sources::Source;

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
        let is_scatter = !most.is_common() && !matches!(most.origin, Origin::Days);
        let what = match &most.origin {
            _ if is_scatter && self.step_is_most() => Limiting::Step,
            Origin::Common(error) if error.source.is_estimate() => Limiting::Estimate,
            _ => return None,
        };
        Some(MostLimiting {
            what,
            share: most.share,
        })
    }

    /// Whether the step of the thermometer is most of the scatter.
    pub fn step_is_most(&self) -> bool {
        let resolution_w = self.of_line.reading.resolution_w.unwrap_or(0.0);
        resolution_w > self.of_line.scatter().sd_w / 2.0_f64.sqrt()
    }
}

impl Budget {
    /// The source, of those that all intervals share, that gives most.
    pub fn heaviest_common(&self) -> Option<Source> {
        let parts = self.contributions.iter();
        let common = parts.filter_map(|part| match &part.origin {
            Origin::Common(error) => Some((error.source, part.effect_w.abs())),
            _ => None,
        });
        let heaviest = common.max_by(|one, two| one.1.total_cmp(&two.1));
        heaviest.map(|(source, _)| source)
    }
}
