//! What the scatter and the stated instruments contribute to the uncertainty of Ps(50).

use super::limits::RATING_DIFFERENCE_K;
use crate::campaign::model::{Instruments, Uncertainty};
use crate::stats::line::Line;

/// Coverage factor of the expanded uncertainty.
///
/// # Source
/// JCGM 100:2008, 6.2 and 6.3: k = 2 for about 95 %.
pub const COVERAGE_FACTOR: f64 = 2.0;

/// Standard uncertainty of Ps(50) with what contributes to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    pub contributions: Vec<Contribution>,
    /// Root of the sum of squares of the contributions, W.
    pub combined_w: f64,
    /// Instruments whose uncertainty the campaign file does not state.
    pub not_stated: Vec<&'static str>,
}

/// One source of uncertainty.
#[derive(Debug, Clone, PartialEq)]
pub struct Contribution {
    pub source: &'static str,
    /// Standard uncertainty of the source; `None` for the scatter itself.
    pub of_source: Option<Uncertainty>,
    /// How it was evaluated, A (statistics) or B (otherwise).
    pub evaluation: char,
    /// Standard uncertainty that it gives Ps(50), W.
    pub of_rating_w: f64,
}

impl Budget {
    /// Expanded uncertainty, W.
    pub fn expanded_w(&self) -> f64 {
        COVERAGE_FACTOR * self.combined_w
    }
}

/// Budget of Ps(50).
///
/// A calibration error is common to all intervals: one of irradiance or of mass
/// scales the whole line, u = u_rel·Ps(50); one of a temperature cancels in the
/// rise of the water and shifts Td, u = |b|·u(T). Wind does not enter the line.
///
/// # Source
/// JCGM 100:2008, 5.1.2, with the line as the model; first order, no correlation.
pub fn draw_up(line: &Line, instruments: &Instruments) -> Budget {
    let ps50_w = line.predict(RATING_DIFFERENCE_K);
    let mut contributions = vec![Contribution {
        source: "scatter about the line",
        of_source: None,
        evaluation: 'A',
        of_rating_w: line.standard_error(RATING_DIFFERENCE_K),
    }];
    let mut not_stated = Vec::new();
    for (source, instrument) in [
        ("irradiance", &instruments.irradiance),
        ("water mass", &instruments.water_mass),
        ("water temperature", &instruments.water_temperature),
        ("ambient temperature", &instruments.ambient_temperature),
    ] {
        let of_rating_w = match instrument.uncertainty {
            Some(Uncertainty::Relative(fraction)) => fraction * ps50_w.abs(),
            Some(Uncertainty::Kelvin(kelvin)) => kelvin * line.slope.abs(),
            Some(Uncertainty::MetresPerSecond(_)) | None => {
                not_stated.push(source);
                continue;
            }
        };
        contributions.push(Contribution {
            source,
            of_source: instrument.uncertainty,
            evaluation: 'B',
            of_rating_w,
        });
    }
    let squares = contributions.iter().map(|part| part.of_rating_w.powi(2));
    Budget {
        combined_w: squares.sum::<f64>().sqrt(),
        contributions,
        not_stated,
    }
}
