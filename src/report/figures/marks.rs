//! Marks that can be told apart without colour.

use plotters::prelude::*;
use simmerline_math::{cos, sin};

use super::style::{pt, stroke};

/// How many marks there are before they repeat.
pub const KINDS: usize = 6;

/// Corners of the polygon that stands for a circle.
const CIRCLE_CORNERS: usize = 14;
/// Half the size of a mark, points.
const HALF_PT: f64 = 2.0;

/// Outline of a kind of mark about its middle, in drawing units, and whether it is filled.
pub fn outline(kind: usize) -> (Vec<(i32, i32)>, bool) {
    let corners = |count: usize, turn: f64, half_pt: f64| -> Vec<(i32, i32)> {
        let corner = |index: usize| {
            let angle = std::f64::consts::TAU * (index as f64 + turn) / count as f64;
            (pt(half_pt * sin(angle)), pt(-half_pt * cos(angle)))
        };
        (0..count).map(corner).collect()
    };
    match kind % KINDS {
        0 => (corners(CIRCLE_CORNERS, 0.0, HALF_PT), true),
        1 => (corners(CIRCLE_CORNERS, 0.0, HALF_PT), false),
        2 => (corners(3, 0.0, HALF_PT * 1.3), true),
        3 => (corners(4, 0.5, HALF_PT * 1.2), false),
        4 => (corners(4, 0.0, HALF_PT * 1.3), true),
        _ => (corners(3, 0.5, HALF_PT * 1.3), false),
    }
}

/// Face of a mark, in drawing units about its middle.
type Face = Polygon<(i32, i32)>;
/// Its edge.
type Edge = PathElement<(i32, i32)>;

/// The parts of a mark.
pub fn parts(kind: usize, colour: RGBColor) -> (Face, Edge) {
    let (corners, is_filled) = outline(kind);
    let face = if is_filled { colour } else { WHITE };
    let closed: Vec<(i32, i32)> = corners.iter().chain(corners.first()).copied().collect();
    (
        Polygon::new(corners, face.filled()),
        PathElement::new(closed, stroke(&colour, 0.7)),
    )
}
