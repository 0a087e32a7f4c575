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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_that_fits_stays_whole_and_of_its_size() {
        let fitted = fit("wind, m/s", 8.5, 60.0);
        assert_eq!((fitted.lines, fitted.size_pt), (vec!["wind, m/s"], 8.5));
    }

    #[test]
    fn a_longer_name_is_broken_where_its_lines_are_most_alike() {
        let fitted = fit("irradiance on the tilted plane, W/m²", 8.5, 100.0);
        let lines = vec!["irradiance on the", "tilted plane, W/m²"];
        assert_eq!((fitted.lines, fitted.size_pt), (lines, 8.5));
    }

    #[test]
    fn a_word_that_is_too_long_is_set_smaller_but_can_be_read() {
        let word = "Bestrahlungsstärke,";
        let fitted = fit("Bestrahlungsstärke, W/m²", 8.5, 74.0);
        assert_eq!(fitted.lines, [word, "W/m²"]);
        assert!((width_pt(word, fitted.size_pt) - 74.0).abs() < 1e-9);
        assert_eq!(fit(&word.repeat(4), 8.5, 74.0).size_pt, SMALLEST_PT);
        assert_eq!(fit_line(&word.repeat(4), 8.5, 74.0), SMALLEST_PT);
    }
}
