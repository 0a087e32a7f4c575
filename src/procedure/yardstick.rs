//! What others measured, to hold a rating against: power for each m² of intercept area.
//!
//! None of the sources rated by ASAE S580.1. They tell what order a number is of, and rate
//! nothing.

use super::Assessment;
use super::s580::limits::STANDARD_IRRADIANCE_W_M2;

/// Kind of a published cooker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PublishedKind {
    Parabolic,
    Box,
}

/// A published cooker, without its name; all were read in the abstract of the source only.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Published {
    pub kind: PublishedKind,
    /// Power for each m², W/m².
    pub w_per_m2: (f64, f64),
    pub source: &'static str,
}

/// Energy efficiency that Öztürk gives for a parabolic cooker, lowest and highest.
const PARABOLIC_EFFICIENCY: (f64, f64) = (0.028, 0.157);
/// Power that Aidan gives for a box cooker, W, in 750 W/m² and more, and its area, m².
const BOX_POWER_W: f64 = 27.0;
const BOX_AREA_M2: f64 = 0.408;

/// The published values that are known.
pub const PUBLISHED: &[Published] = &[
    Published {
        kind: PublishedKind::Parabolic,
        w_per_m2: (
            PARABOLIC_EFFICIENCY.0 * STANDARD_IRRADIANCE_W_M2,
            PARABOLIC_EFFICIENCY.1 * STANDARD_IRRADIANCE_W_M2,
        ),
        source: "Öztürk 2004, Solar Energy 77, 67–71",
    },
    Published {
        kind: PublishedKind::Box,
        w_per_m2: (BOX_POWER_W / BOX_AREA_M2, BOX_POWER_W / BOX_AREA_M2),
        source: "Aidan, Int. J. Innov. Res. Dev.",
    },
];

/// A rating for each m² of intercept area.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PerArea {
    /// W/m².
    pub w_per_m2: f64,
    /// Half of the printed 95 % interval, W/m². The area counts as exact.
    pub half_width_w_per_m2: f64,
    /// Of an irradiance of 700 W/m², from 0 to 1.
    pub share_of_sunlight: f64,
}

/// The rating for each m²; `None` without one, or where it is physically impossible.
pub fn per_area(assessment: &Assessment) -> Option<PerArea> {
    if assessment.s580.is_not_valid() {
        return None;
    }
    let rated = assessment.s580.rated.as_ref()?;
    let area_m2 = assessment.tested.campaign.cooker.intercept_area_m2;
    let w_per_m2 = rated.rating.ps50_w / area_m2;
    Some(PerArea {
        w_per_m2,
        half_width_w_per_m2: rated.uncertainty.half_width_w() / area_m2,
        share_of_sunlight: w_per_m2 / STANDARD_IRRADIANCE_W_M2,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn published_values_are_those_of_their_sources() {
        // Öztürk 2004, abstract: energy efficiency 2.8 to 15.7 %; of 700 W/m². Aidan, abstract:
        // 27 W from 0.408 m². By hand.
        let rounded = PUBLISHED.iter().map(|one| {
            let (low, high) = one.w_per_m2;
            (low.round(), high.round())
        });
        let rounded: Vec<(f64, f64)> = rounded.collect();
        assert_eq!(rounded, [(20.0, 110.0), (66.0, 66.0)]);
    }
}
