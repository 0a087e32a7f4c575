//! How hot loads cool, and what the time constant says of it.

use jiff::civil::Date;
use simmerline_math::exp;

use crate::error::Result;
use crate::language::{PairedUnit, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dish::cooling::Cooling;
use crate::procedure::uncertainty::shift::Shift;
use crate::report::assets::Asset;
use crate::report::figures::axis::Axis;
use crate::report::figures::curves::{At, Curve, Curves, draw_curves};
use crate::report::figures::style::Canvas;
use crate::report::run_names::run_names;
use crate::units::seconds_between;

/// Its name among the figures.
pub const FILE: &str = "dish.svg";
/// Points of a curve that the time constant gives.
const POINTS: usize = 40;

/// The figure, where there is a time constant.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn fall_figure(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Option<Asset>> {
    let words = canvas.words;
    let found = assessment.dish_figures.as_ref();
    let Some(found) = found.filter(|found| found.time_constant_s.is_some()) else {
        return Ok(None);
    };
    let measured = |cooling: &Cooling| -> Vec<At> {
        let water = &assessment.tested.cooling_runs[cooling.run].readings.water_c;
        let (times, values) = water.between(cooling.span.from_us, cooling.span.to_us);
        let minutes = |time: &i64| seconds_between(cooling.span.from_us, *time) / 60.0;
        let above = values.iter().map(|value| value - cooling.ambient_c);
        times.iter().map(minutes).zip(above).collect()
    };
    let told = |cooling: &Cooling| -> Option<Vec<At>> {
        let rate_per_s = cooling.rate_per_s(&Shift::NONE)?;
        let whole_s = seconds_between(cooling.span.from_us, cooling.span.to_us);
        let start_k = cooling.from_c - cooling.ambient_c;
        let at = |place: usize| {
            let seconds = whole_s * place as f64 / POINTS as f64;
            (seconds / 60.0, start_k * exp(-rate_per_s * seconds))
        };
        Some((0..=POINTS).map(at).collect())
    };
    let dates: Vec<Date> = found.coolings.iter().map(|one| one.date).collect();
    let named = found.coolings.iter().zip(run_names(&dates, words));
    let curves = Curves {
        measured: named
            .map(|(cooling, name)| Curve {
                name,
                points: measured(cooling),
            })
            .collect(),
        are_joined: true,
        told: found.coolings.iter().filter_map(told).collect(),
        measured_name: words.say(message!("dish-key-water")),
        told_name: words.say(message!("dish-key-told")),
        x: Axis::named(message!("dish-axis-time")),
        y: Axis::in_unit(
            message!(
                "dish-axis-difference",
                unit = unit_symbol(PairedUnit::Kelvin)
            ),
            PairedUnit::Kelvin,
        ),
        from_zero: true,
    };
    Ok(Some(Asset {
        name: FILE.to_owned(),
        bytes: draw_curves(&curves, canvas)?.into_bytes(),
    }))
}
