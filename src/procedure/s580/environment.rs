//! The air and the sun during the intervals that the line is drawn through.

use super::intervals::Measured;
use super::result::S580;
use crate::procedure::spans::Summary;

/// What the used intervals had around them: the mean of their means, and the lowest and
/// highest reading. `None` where nothing was measured or no interval is used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Environment {
    /// °C.
    pub ambient: Option<Summary>,
    /// W/m².
    pub irradiance: Option<Summary>,
    /// m/s.
    pub wind: Option<Summary>,
}

impl S580 {
    /// The environment of the used intervals.
    pub fn environment(&self) -> Environment {
        let over_used = |of: fn(&Measured) -> Option<Summary>| {
            let used = self.used().map(|interval| &interval.measured);
            over_all(used.filter_map(of))
        };
        Environment {
            ambient: over_used(|interval| interval.ambient),
            irradiance: over_used(|interval| interval.irradiance),
            wind: over_used(|interval| interval.wind),
        }
    }
}

/// Mean of the means, lowest and highest of all; `None` without one.
fn over_all(all: impl Iterator<Item = Summary>) -> Option<Summary> {
    let all: Vec<Summary> = all.collect();
    let sum = all.iter().map(|one| one.mean).sum::<f64>();
    let extremes = all.iter().copied().reduce(|one, other| Summary {
        min: one.min.min(other.min),
        max: one.max.max(other.max),
        ..one
    })?;
    Some(Summary {
        mean: sum / all.len() as f64,
        ..extremes
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn intervals_have_a_mean_and_the_extremes_of_their_readings() {
        let interval = |mean: f64, min: f64, max: f64| Summary { mean, min, max };
        let all = [
            interval(24.0, 23.5, 25.0),
            interval(21.0, 20.0, 22.0),
            interval(30.0, 27.0, 30.5),
        ];
        // By hand: (24 + 21 + 30)/3 = 25.
        let expected = interval(25.0, 20.0, 30.5);
        assert_eq!(over_all(all.into_iter()), Some(expected));
        assert_eq!(over_all(std::iter::empty()), None);
    }
}
