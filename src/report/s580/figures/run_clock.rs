//! The clock below the panels of a run, in steps whose names have room.

use jiff::ToSpan;
use jiff::civil::Date;
use plotters::style::text_anchor::HPos;

use super::run_axes::TEXT_PT;
use super::run_panel::{Panel, draw_line};
use crate::error::Result;
use crate::language::{Message, Words, clock};
use crate::message;
use crate::report::figures::fit::width_pt;
use crate::report::figures::labels::{Label, Labels, Spot};
use crate::report::figures::style::{Area, INK, stroke};

/// Height of the clock below the lowest panel, points.
pub const CLOCK_PT: f64 = 11.0;
/// How far the middle of a name is below the axis, and the length of a tick, points.
const BELOW_AXIS_PT: f64 = 6.8;
const TICK_PT: f64 = 2.2;
/// Least room between two names, points.
const BETWEEN_PT: f64 = 5.0;
/// Steps of the clock, h.
const STEPS_H: &[f64] = &[
    1.0 / 12.0,
    1.0 / 6.0,
    0.25,
    0.5,
    1.0,
    2.0,
    3.0,
    4.0,
    6.0,
    12.0,
];
const HOURS_PER_DAY: f64 = 24.0;

/// A time on the clock: hours of the run's day, and its name.
pub struct Tick {
    hours: f64,
    name: String,
}

/// Round times of a run's clock: of the day, or the days of a run so long that they stand
/// more than half a day apart.
pub fn clock_ticks(panel: &Panel<'_>, date: Date, words: &Words) -> Vec<Tick> {
    let (from_h, to_h) = panel.span_h;
    let per_hour_pt = (panel.right_pt - panel.left_pt) / (to_h - from_h);
    let ticks = |step_h: f64| -> Vec<Tick> {
        let first = (from_h / step_h - 1e-9).ceil() as i64;
        let last = (to_h / step_h + 1e-9).floor() as i64;
        let hours = (first..=last).map(|step| step as f64 * step_h);
        hours
            .map(|hours| Tick {
                hours,
                name: name_of(hours, step_h, date, words),
            })
            .collect()
    };
    let fits = |step_h: f64, ticks: &[Tick]| {
        let widths = ticks.iter().map(|tick| width_pt(&tick.name, TEXT_PT));
        widths.fold(0.0, f64::max) + BETWEEN_PT <= step_h * per_hour_pt
    };
    let days = (1..).map(|days| f64::from(days) * HOURS_PER_DAY);
    let steps_h = STEPS_H.iter().copied().chain(days);
    // A step longer than the run has no two names that could touch.
    let mut tried = steps_h.map(|step_h| (step_h, ticks(step_h)));
    let found = tried.find(|(step_h, ticks)| ticks.len() < 2 || fits(*step_h, ticks));
    found.map_or_else(Vec::new, |(_, ticks)| ticks)
}

fn name_of(hours: f64, step_h: f64, date: Date, words: &Words) -> String {
    if step_h < HOURS_PER_DAY {
        return words.say(clock(hours));
    }
    let days = (hours / HOURS_PER_DAY).round() as i64;
    let date = date.saturating_add(days.days());
    let month = Message::new(format!("month-{}", date.month()));
    words.say(message!(
        "figure-day",
        day = date.day().to_string(),
        month = month
    ))
}

/// Draws the clock below the lowest panel.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_clock(
    area: &Area<'_>,
    labels: &mut Labels,
    panel: &Panel<'_>,
    bottom_pt: f64,
    ticks: &[Tick],
) -> Result<()> {
    for tick in ticks {
        let across_pt = panel.across_pt(tick.hours);
        let down = [bottom_pt, bottom_pt + TICK_PT];
        draw_line(
            area,
            &down.map(|down_pt| (across_pt, down_pt)),
            stroke(&INK, 0.6),
        )?;
        let label = Label {
            words: &tick.name,
            size_pt: TEXT_PT,
            colour: &INK,
        };
        let spot = |across_pt: f64, side: HPos| Spot {
            at: (across_pt, bottom_pt + BELOW_AXIS_PT),
            side,
        };
        let half_pt = width_pt(&tick.name, TEXT_PT) / 2.0;
        let width_pt = labels.width_pt();
        let beside = if across_pt + half_pt > width_pt {
            // A long name at the right edge ends where the figure does.
            spot(width_pt, HPos::Right)
        } else {
            // One at the left edge, where a number of the panel is in its way, begins at its tick.
            spot(across_pt, HPos::Left)
        };
        labels.write(area, &label, &[spot(across_pt, HPos::Center), beside])?;
    }
    Ok(())
}
