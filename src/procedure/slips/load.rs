//! A load that gives a unit away: pounds for kilograms, square feet for square metres.

use super::odd_run::OddRun;
use crate::language::{
    Message, Phrase, fixed, kilograms, kilograms_per_square_metre, listed, short, square_metres,
};
use crate::message;
use crate::procedure::s580::S580;
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
use crate::procedure::tested::Tested;
use crate::units::{kilograms_to_pounds, square_metres_to_square_feet};

/// A load is weighed to less than this, as a fraction. Common practice, no published source: the
/// practice lets it be off by a tenth, and whoever converts aims at its middle.
const MEANT_WITHIN: f64 = 0.05;

/// A load that would be that of the practice in another unit.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadSlip {
    pub runs: Vec<String>,
    pub water_kg: f64,
    pub area_m2: f64,
    pub load_kg_m2: f64,
    /// As it would be.
    pub meant_kg_m2: f64,
    /// That of the practice, or the campaign's own.
    pub expected_kg_m2: f64,
    pub typed: Typed,
}

/// What was typed into a key of kilograms or of square metres.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Typed {
    /// Pounds as kilograms.
    Pounds,
    /// Square feet as square metres.
    SquareFeet,
    /// Kilograms that were converted as if they were pounds.
    KilogramsConverted,
    /// Square metres that were converted as if they were square feet.
    SquareMetresConverted,
}

impl Typed {
    const ALL: [Typed; 4] = [
        Typed::Pounds,
        Typed::SquareFeet,
        Typed::KilogramsConverted,
        Typed::SquareMetresConverted,
    ];

    /// What is meant over what is written: of the load, and of the share of the sunlight that the
    /// water takes up.
    fn factors(self) -> (f64, f64) {
        let (pounds, feet) = (kilograms_to_pounds(1.0), square_metres_to_square_feet(1.0));
        match self {
            Typed::Pounds => (1.0 / pounds, 1.0 / pounds),
            Typed::SquareFeet => (feet, feet),
            Typed::KilogramsConverted => (pounds, pounds),
            Typed::SquareMetresConverted => (1.0 / feet, 1.0 / feet),
        }
    }
}

/// Share of the sunlight that the water of a working cooker takes up where it is as warm as the
/// air. Common practice, no published source: from a poor panel to more than any mirror sends on.
const POSSIBLE_SHARES: std::ops::RangeInclusive<f64> = 0.08..=1.0;
/// The same of most cookers. Common practice, no published source.
const USUAL_SHARES: std::ops::RangeInclusive<f64> = 0.2..=0.5;

/// How well a share of the sunlight fits a working cooker, the better the greater.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Fit {
    Impossible,
    Possible,
    Usual,
}

impl Fit {
    fn of(share: f64) -> Fit {
        if USUAL_SHARES.contains(&share) {
            Fit::Usual
        } else if POSSIBLE_SHARES.contains(&share) {
            Fit::Possible
        } else {
            Fit::Impossible
        }
    }
}

/// Whether another unit makes more of what is written than its own: the share of the sunlight
/// that the water takes up fits a cooker better with it than as written. A load alone gives no
/// pounds away, since 3.2 or 15.4 kg/m² may well be weighed; one of square feet is that of no pot.
///
/// What others measured, as in [`crate::procedure::yardstick`], is of hot water and spans a factor
/// of more than five: it tells no pounds from kilograms.
fn is_likelier(typed: Typed, share: Option<f64>) -> bool {
    let (_, of_share) = typed.factors();
    match share {
        Some(share) => Fit::of(of_share * share) > Fit::of(share),
        None => matches!(typed, Typed::SquareFeet | Typed::SquareMetresConverted),
    }
}

/// The loads that give a unit away, each with its runs: that of the practice in another unit,
/// where that unit is likelier than the one as written, or puts a run that is odd among the others.
pub fn load_slips(tested: &Tested, s580: &S580, odd: Option<&OddRun>) -> Vec<LoadSlip> {
    let area_m2 = tested.campaign.cooker.intercept_area_m2;
    let expected = s580.limits.load();
    let line = s580.line();
    let share = line.map(|line| line.intercept / (STANDARD_IRRADIANCE_W_M2 * area_m2));
    let mut slips: Vec<LoadSlip> = Vec::new();
    for run in &tested.runs {
        let load_kg_m2 = run.load_kg_m2;
        if let Some(known) = slips.iter_mut().find(|one| one.load_kg_m2 == load_kg_m2) {
            known.runs.push(run.plan.label.clone());
            continue;
        }
        if expected.allows(load_kg_m2) {
            continue;
        }
        let found = Typed::ALL.into_iter().find_map(|typed| {
            let (of_load, of_share) = typed.factors();
            let is_of_odd =
                odd.is_some_and(|odd| odd.log == run.plan.label && odd.is_mended_by(of_share));
            let meant_kg_m2 = of_load * load_kg_m2;
            let is_near = (meant_kg_m2 / expected.value - 1.0).abs() < MEANT_WITHIN;
            (is_near && (is_of_odd || is_likelier(typed, share))).then_some((typed, meant_kg_m2))
        });
        slips.extend(found.map(|(typed, meant_kg_m2)| LoadSlip {
            runs: vec![run.plan.label.clone()],
            water_kg: run.plan.water_kg,
            area_m2,
            load_kg_m2,
            meant_kg_m2,
            expected_kg_m2: expected.value,
            typed,
        }));
    }
    slips
}

impl LoadSlip {
    /// What it says.
    pub fn message(&self) -> Message {
        let said = match self.typed {
            Typed::Pounds => message!("notice-load-pounds"),
            Typed::SquareFeet => message!("notice-load-square-feet"),
            Typed::KilogramsConverted => message!("notice-load-kilograms"),
            Typed::SquareMetresConverted => message!("notice-load-square-metres"),
        };
        said.with("runs", listed(&self.runs))
            .with("water", kilograms(short(self.water_kg)))
            .with("area", square_metres(short(self.area_m2)))
            .with("load", kilograms_per_square_metre(told(self.load_kg_m2)))
            .with("meant", kilograms_per_square_metre(told(self.meant_kg_m2)))
            .with(
                "expected",
                kilograms_per_square_metre(short(self.expected_kg_m2)),
            )
    }
}

/// A load to two or three digits.
fn told(kg_m2: f64) -> Phrase {
    fixed(kg_m2, if kg_m2 < 1.0 { 2 } else { 1 })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_unit_is_doubted_only_where_another_makes_more_of_the_sunlight() {
        use Typed::{KilogramsConverted, Pounds, SquareFeet, SquareMetresConverted};
        for (typed, share, is_said) in [
            // As a box and a dish take up, with a load that is honestly small or great.
            (KilogramsConverted, Some(0.25), false),
            (KilogramsConverted, Some(0.4), false),
            (Pounds, Some(0.3), false),
            (Pounds, Some(0.45), false),
            // 0.28 and 0.28 as they are meant.
            (KilogramsConverted, Some(0.127), true),
            (Pounds, Some(0.617), true),
            // More than the sun sends, and less than a poor panel takes up.
            (Pounds, Some(1.2), true),
            (KilogramsConverted, Some(0.05), true),
            (SquareFeet, Some(0.026), true),
            (SquareMetresConverted, Some(3.0), true),
            (SquareFeet, Some(0.3), false),
            (KilogramsConverted, None, false),
            (Pounds, None, false),
            (SquareFeet, None, true),
        ] {
            assert_eq!(is_likelier(typed, share), is_said, "{typed:?} {share:?}");
        }
    }
}
