//! The aimings in the figure of a run: small triangles that stand on the axis of the temperatures.

use plotters::prelude::*;
use plotters::style::text_anchor::HPos;

use super::run_axes::TEXT_PT;
use super::run_panel::Panel;
use crate::error::Result;
use crate::language::Words;
use crate::message;
use crate::report::figures::labels::{Label, Labels, Spot};
use crate::report::figures::style::{Area, INK, fault, pt};

/// Width and height of a triangle, points.
const WIDE_PT: f64 = 3.6;
const HIGH_PT: f64 = 3.8;
/// Aimings nearer than this to the one before share its triangle, points.
const APART_PT: f64 = 2.0;
/// How far the middle of the name is above the axis, points.
const NAME_PT: f64 = 8.2;

/// Draws a triangle at each of some hours, and names them where there is room.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_aims(
    area: &Area<'_>,
    labels: &mut Labels,
    panel: &Panel<'_>,
    hours: impl Iterator<Item = f64>,
    words: &Words,
) -> Result<()> {
    let mut places_pt: Vec<f64> = Vec::new();
    for hour in hours {
        let across_pt = panel.across_pt(hour);
        let is_apart = |last: &f64| across_pt - last >= APART_PT;
        if places_pt.last().is_none_or(is_apart) {
            places_pt.push(across_pt);
        }
    }
    for across_pt in &places_pt {
        let base_pt = panel.bottom_pt;
        let corner = |aside_pt: f64, up_pt: f64| (pt(across_pt + aside_pt), pt(base_pt - up_pt));
        let corners = vec![
            corner(-WIDE_PT / 2.0, 0.0),
            corner(0.0, HIGH_PT),
            corner(WIDE_PT / 2.0, 0.0),
        ];
        area.draw(&Polygon::new(corners, INK.filled()))
            .map_err(fault)?;
        let (left_pt, right_pt) = (across_pt - WIDE_PT / 2.0, across_pt + WIDE_PT / 2.0);
        labels.keep_clear_of(&[(left_pt, base_pt - 1.0), (right_pt, base_pt - 1.0)]);
        labels.keep_clear_of(&[(*across_pt, base_pt - HIGH_PT), (*across_pt, base_pt)]);
    }
    let label = Label {
        words: &words.say(message!("figure-aimed")),
        size_pt: TEXT_PT,
        colour: &INK,
    };
    let spot = |across_pt: f64, side: HPos| Spot {
        at: (across_pt, panel.bottom_pt - NAME_PT),
        side,
    };
    let spots = places_pt.iter().flat_map(|across_pt| {
        [
            spot(across_pt - WIDE_PT / 2.0, HPos::Left),
            spot(across_pt + WIDE_PT / 2.0, HPos::Right),
        ]
    });
    let spots: Vec<Spot> = spots.collect();
    if spots.is_empty() {
        return Ok(());
    }
    labels.write(area, &label, &spots).map(|_| ())
}
