//! Names of any length, in any language, in the room that a figure has for them.

use crate::report::document::width_in_figures;

/// Smallest size that can still be read, points.
const SMALLEST_PT: f64 = 6.0;

/// Width of a line of a size, both in points.
pub fn width_pt(line: &str, size_pt: f64) -> f64 {
    width_in_figures(line, false) * size_pt
}

/// Width of a line of heavier text.
pub fn strong_width_pt(line: &str, size_pt: f64) -> f64 {
    width_in_figures(line, true) * size_pt
}

/// A name on one line or two, and the size at which they fit.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted<'n> {
    pub lines: Vec<&'n str>,
    pub size_pt: f64,
}

/// Fits a name into a room: on one line of the size wished, else on two, smaller if need be.
pub fn fit(name: &str, size_pt: f64, room_pt: f64) -> Fitted<'_> {
    let lines = if width_pt(name, size_pt) <= room_pt {
        vec![name]
    } else {
        halves(name)
    };
    Fitted {
        size_pt: shrunk(widest(&lines), size_pt, room_pt),
        lines,
    }
}

/// The size, at most the one wished, at which a line fits into a room.
pub fn fit_line(line: &str, size_pt: f64, room_pt: f64) -> f64 {
    shrunk(width_pt(line, 1.0), size_pt, room_pt)
}

fn shrunk(width_em: f64, size_pt: f64, room_pt: f64) -> f64 {
    size_pt.min((room_pt / width_em).max(SMALLEST_PT))
}

/// Width of the widest of several lines, as a share of their size.
fn widest(lines: &[&str]) -> f64 {
    let widths = lines.iter().map(|line| width_pt(line, 1.0));
    widths.fold(0.0, f64::max)
}

/// A name broken where its longer part is shortest; whole if it has no blank.
fn halves(name: &str) -> Vec<&str> {
    let broken = name
        .match_indices(' ')
        .map(|(at, blank)| vec![&name[..at], &name[at + blank.len()..]]);
    broken
        .min_by(|one, two| widest(one).total_cmp(&widest(two)))
        .unwrap_or_else(|| vec![name])
}
