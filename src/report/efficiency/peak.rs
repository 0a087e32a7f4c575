//! Exergy that the water gains against its temperature difference, and the parabola.

use crate::error::Result;
use crate::language::{PairedUnit, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::efficiency::peak::{Parabola, parabola};
use crate::procedure::efficiency::step::Step;
use crate::procedure::uncertainty::Off;
use crate::procedure::uncertainty::shift::Shift;
use crate::report::assets::Asset;
use crate::report::figures::axis::Axis;
use crate::report::figures::curves::{At, Curve, Curves, draw_curves};
use crate::report::figures::style::Canvas;

/// Its name among the figures.
pub const FILE: &str = "exergy.svg";
/// Points of the parabola.
const POINTS: usize = 40;

/// The figure, where there are sound intervals.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn exergy_figure(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Option<Asset>> {
    let words = canvas.words;
    let Some(found) = &assessment.efficiency else {
        return Ok(None);
    };
    let at = |step: &Step| -> At { (step.difference_k(&Shift::NONE), step.exergy_w(&Shift::NONE)) };
    let points: Vec<At> = found.steps.iter().map(at).collect();
    let low = points.iter().map(|at| at.0).fold(f64::INFINITY, f64::min);
    let high = points
        .iter()
        .map(|at| at.0)
        .fold(f64::NEG_INFINITY, f64::max);
    let told = |law: Parabola| -> Vec<At> {
        let at = |place: usize| low + (high - low) * place as f64 / POINTS as f64;
        (0..=POINTS)
            .map(|place| (at(place), law.at(at(place))))
            .collect()
    };
    let told: Vec<Vec<At>> = parabola(&found.steps, &Off::NONE)
        .map(told)
        .into_iter()
        .collect();
    let curves = Curves {
        measured: vec![Curve {
            name: String::new(),
            points,
        }],
        are_joined: false,
        told_name: if told.is_empty() {
            String::new()
        } else {
            words.say(message!("efficiency-key-parabola"))
        },
        told,
        measured_name: words.say(message!("efficiency-key-intervals")),
        x: Axis::in_unit(
            message!(
                "efficiency-axis-difference",
                unit = unit_symbol(PairedUnit::Kelvin)
            ),
            PairedUnit::Kelvin,
        ),
        y: Axis::named(message!("efficiency-axis-exergy")),
        from_zero: true,
    };
    Ok(Some(Asset {
        name: FILE.to_owned(),
        bytes: draw_curves(&curves, canvas)?.into_bytes(),
    }))
}
