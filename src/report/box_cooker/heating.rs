//! How the water of a box cooker rises, and what its figures say of it.

use jiff::civil::Date;
use simmerline_math::exp;

use crate::error::Result;
use crate::language::{PairedUnit, unit_symbol};
use crate::message;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::Assessment;
use crate::procedure::box_cooker::figures::glass_m2;
use crate::procedure::stretch::Stretch;
use crate::report::assets::Asset;
use crate::report::figures::axis::Axis;
use crate::report::figures::curves::{At, Curve, Curves, draw_curves};
use crate::report::figures::style::Canvas;
use crate::report::run_names::run_names;
use crate::units::seconds_between;

/// Its name among the figures.
pub const FILE: &str = "box-cooker.svg";
/// Points of a curve that the figures give.
const POINTS: usize = 40;

/// The figure, where there is an F2.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn rise_figure(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Option<Asset>> {
    let words = canvas.words;
    let Some(found) = &assessment.box_figures else {
        return Ok(None);
    };
    let (Some(f1), Some(f2)) = (&found.f1, &found.f2) else {
        return Ok(None);
    };
    let area_m2 = glass_m2(&assessment.tested);
    let told = |stretch: &Stretch| -> Vec<At> {
        // F2 and F1 as a heating law: dTw/dt = F2·A·[H − (Tw − Ta)/F1]/(M·c).
        let (f1, f2) = (f1.figure.value, f2.figure.value);
        let heat_j_per_k = stretch.water_kg * SPECIFIC_HEAT_J_PER_KG_K;
        let end_c = stretch.ambient_c + f1 * stretch.irradiance_w_m2;
        let per_s = f2 * area_m2 / (f1 * heat_j_per_k);
        let at = |place: usize| {
            let seconds = stretch.duration_s * place as f64 / POINTS as f64;
            (
                seconds / 60.0,
                end_c - (end_c - stretch.from_c) * exp(-per_s * seconds),
            )
        };
        (0..=POINTS).map(at).collect()
    };
    let measured = |stretch: &Stretch| -> Vec<At> {
        let run = assessment.tested.runs.iter().find(|run| {
            let times = &run.readings.water_c.time_us;
            times
                .first()
                .is_some_and(|first| *first <= stretch.span.from_us)
                && times.last().is_some_and(|last| *last >= stretch.span.to_us)
        });
        run.map_or_else(Vec::new, |run| {
            let (times, values) = run
                .readings
                .water_c
                .between(stretch.span.from_us, stretch.span.to_us);
            let minutes = |time: &i64| seconds_between(stretch.span.from_us, *time) / 60.0;
            times
                .iter()
                .map(minutes)
                .zip(values.iter().copied())
                .collect()
        })
    };
    let dates: Vec<Date> = found.stretches.iter().map(|one| one.date).collect();
    let named = found.stretches.iter().zip(run_names(&dates, words));
    let curves = Curves {
        measured: named
            .map(|(stretch, name)| Curve {
                name,
                points: measured(stretch),
            })
            .collect(),
        are_joined: true,
        told: found.stretches.iter().map(told).collect(),
        measured_name: words.say(message!("box-key-water")),
        told_name: words.say(message!("box-key-told")),
        x: Axis::named(message!("box-axis-time")),
        y: Axis::in_unit(
            message!("box-axis-water", unit = unit_symbol(PairedUnit::Celsius)),
            PairedUnit::Celsius,
        ),
        from_zero: false,
    };
    Ok(Some(Asset {
        name: FILE.to_owned(),
        bytes: draw_curves(&curves, canvas)?.into_bytes(),
    }))
}
