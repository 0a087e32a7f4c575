//! How dry vessels heat up.

use jiff::civil::Date;

use crate::error::Result;
use crate::language::{PairedUnit, Words, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::report::assets::Asset;
use crate::report::figures::axis::Axis;
use crate::report::figures::curves::{At, Curve, Curves, draw_curves};
use crate::report::figures::style::Canvas;
use crate::report::run_names::run_names;
use crate::units::seconds_between;

/// Its name among the figures.
pub const FILE: &str = "dry-vessel.svg";

/// What each dry run is called.
pub fn names(assessment: &Assessment, words: &Words) -> Vec<String> {
    let runs = assessment.dry_runs.runs.iter();
    let dates: Vec<Date> = runs
        .map(|run| assessment.tested.dry_runs[run.run].date)
        .collect();
    run_names(&dates, words)
}

/// The figure, where a dry run has readings of the vessel.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn heating_figure(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Option<Asset>> {
    let words = canvas.words;
    let mut curves = Curves {
        measured: Vec::new(),
        are_joined: true,
        told: Vec::new(),
        measured_name: words.say(message!("dry-key-vessel")),
        told_name: words.say(message!("dry-key-plateau")),
        x: Axis::named(message!("dry-axis-time")),
        y: Axis::in_unit(
            message!("dry-axis-vessel", unit = unit_symbol(PairedUnit::Celsius)),
            PairedUnit::Celsius,
        ),
        from_zero: false,
    };
    for (run, name) in assessment
        .dry_runs
        .runs
        .iter()
        .zip(names(assessment, words))
    {
        let readings = &assessment.tested.dry_runs[run.run].readings;
        let Some(vessel) = &readings.vessel_c else {
            continue;
        };
        let Some(&first_us) = vessel.time_us.first() else {
            continue;
        };
        let minutes = |time_us: i64| seconds_between(first_us, time_us) / 60.0;
        let points = vessel.time_us.iter().zip(&vessel.value);
        let points: Vec<At> = points
            .map(|(time, value)| (minutes(*time), *value))
            .collect();
        curves.measured.push(Curve { name, points });
        if let Some(plateau) = &run.plateau {
            let ends = [plateau.span.from_us, plateau.span.to_us];
            let told = ends.map(|end| (minutes(end), plateau.vessel_c));
            curves.told.push(told.to_vec());
        }
    }
    if curves.measured.is_empty() {
        return Ok(None);
    }
    if curves.told.is_empty() {
        curves.told_name = String::new();
    }
    Ok(Some(Asset {
        name: FILE.to_owned(),
        bytes: draw_curves(&curves, canvas)?.into_bytes(),
    }))
}
