//! The air and the sun during the intervals that the line is drawn through.

use super::assess::Assessment;
use super::intervals::{Interval, Summary};

/// What the used intervals had around them: of the intervals' means their mean, lowest and
/// highest. `None` where nothing was measured or no interval is used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Environment {
    /// °C.
    pub ambient: Option<Summary>,
    /// W/m².
    pub irradiance: Option<Summary>,
    /// m/s.
    pub wind: Option<Summary>,
}

impl Assessment {
    /// The environment of the used intervals.
    pub fn environment(&self) -> Environment {
        let over_used = |of: fn(&Interval) -> Option<Summary>| {
            summarise(self.used().filter_map(of).map(|summary| summary.mean))
        };
        Environment {
            ambient: over_used(|interval| interval.ambient),
            irradiance: over_used(|interval| interval.irradiance),
            wind: over_used(|interval| interval.wind),
        }
    }
}

/// Mean and extremes of some means; `None` without one.
fn summarise(means: impl Iterator<Item = f64>) -> Option<Summary> {
    let means: Vec<f64> = means.collect();
    (!means.is_empty()).then(|| Summary {
        mean: means.iter().sum::<f64>() / means.len() as f64,
        min: means.iter().copied().fold(f64::INFINITY, f64::min),
        max: means.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn means_of_intervals_have_a_mean_and_extremes() {
        // By hand: (21 + 24 + 30)/3 = 25.
        let found = summarise([24.0, 21.0, 30.0].into_iter());
        let expected = Summary {
            mean: 25.0,
            min: 21.0,
            max: 30.0,
        };
        assert_eq!(found, Some(expected));
        assert_eq!(summarise(std::iter::empty()), None);
    }
}
