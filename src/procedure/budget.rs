//! What the scatter and the stated instruments contribute to the uncertainty of Ps(50).

use super::limits::RATING_DIFFERENCE_K;
use crate::campaign::model::{Instruments, Uncertainty};
use crate::stats::line::{COVERAGE, Line};
use crate::stats::student::two_sided_t;

/// Degrees of freedom beyond which Student's t is the normal distribution.
const MOST_DEGREES_OF_FREEDOM: f64 = 1e4;

/// Standard uncertainty of Ps(50) with what contributes to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    pub contributions: Vec<Contribution>,
    /// Root of the sum of squares of the contributions, W.
    pub combined_w: f64,
    /// Degrees of freedom of the combined uncertainty.
    pub effective_degrees_of_freedom: f64,
    /// Coverage factor for 95 %.
    pub coverage_factor: f64,
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
    /// Expanded uncertainty for 95 %, W.
    pub fn expanded_w(&self) -> f64 {
        self.coverage_factor * self.combined_w
    }

    /// Whether the campaign file states the uncertainty of any instrument.
    pub fn knows_instruments(&self) -> bool {
        self.contributions.iter().any(|part| part.evaluation == 'B')
    }

    /// Standard uncertainty common to all powers, as a fraction: irradiance and mass.
    pub fn relative_scale(&self) -> f64 {
        let scales = self
            .contributions
            .iter()
            .filter_map(|part| match part.of_source {
                Some(Uncertainty::Relative(fraction)) => Some(fraction * fraction),
                _ => None,
            });
        scales.sum::<f64>().sqrt()
    }
}

/// Budget of Ps(50).
///
/// A calibration error is common to all intervals: one of irradiance or of mass
/// scales the whole line, u = u_rel·Ps(50); one of a temperature cancels in the
/// rise of the water and shifts Td, u = |b|·u(T). Wind does not enter the line.
///
/// The scatter has n − 2 degrees of freedom, the instruments have none to lose, so
/// ν_eff = (n − 2)·(u_c/u_A)⁴, and k is Student's t for 95 % and ν_eff rounded down.
///
/// # Source
/// JCGM 100:2008, 5.1.2, with the line as the model; first order, no correlation;
/// coverage factor by G.4.1 (Welch–Satterthwaite) and G.6.4.
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
    let combined_w = squares.sum::<f64>().sqrt();
    let scatter_w = line.standard_error(RATING_DIFFERENCE_K);
    let scatter_degrees_of_freedom = (line.points - 2) as f64;
    let effective_degrees_of_freedom = if scatter_w > 0.0 {
        (scatter_degrees_of_freedom * (combined_w / scatter_w).powi(4)).min(MOST_DEGREES_OF_FREEDOM)
    } else {
        MOST_DEGREES_OF_FREEDOM
    };
    Budget {
        combined_w,
        effective_degrees_of_freedom,
        coverage_factor: two_sided_t(COVERAGE, effective_degrees_of_freedom as usize),
        contributions,
        not_stated,
    }
}
