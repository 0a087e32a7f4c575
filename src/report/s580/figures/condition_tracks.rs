//! The conditions of the standard as tracks: what is allowed, what the used intervals saw, and
//! how many intervals each set aside.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use crate::error::Result;
use crate::language::UnitSystem;
use crate::procedure::Assessment;
use crate::report::figures::fit::{fit_line, width_pt};
use crate::report::figures::style::{
    Area, BAND, Canvas, GRID, INK, LIMIT, LINE, NOTE, SHADE, anchored, fault, pt, stroke, strong,
    text,
};
use crate::report::s580::words::tracks::{Track, tracks};

/// Height of a row, where its name stands beside the track and where it stands above, points.
const ROW_PT: f64 = 15.2;
const TALL_ROW_PT: f64 = 25.0;
/// Room for the limits of the first row, points.
const ABOVE_PT: f64 = 3.0;
/// Width under which names stand above the tracks, points.
const NARROW_PT: f64 = 400.0;
/// Most room for names; room for what was seen, in units of the SI alone and with those of the US,
/// and for counts, points.
const NAMES_PT: f64 = 176.0;
const SEEN_PT: f64 = 92.0;
const SEEN_US_PT: f64 = 126.0;
const COUNT_PT: f64 = 40.0;
/// Between a name and its track, points.
const BESIDE_PT: f64 = 8.0;
/// Heights within a row: of what is allowed, and of what was seen, points.
const ALLOWED_PT: f64 = 6.4;
const SEEN_HIGH_PT: f64 = 2.6;
/// Sizes of type, points.
const NAME_PT: f64 = 7.8;
const LIMIT_PT: f64 = 7.0;

/// Draws a row a condition.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_condition_tracks(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<String> {
    let tracks = tracks(assessment, canvas.words);
    let is_narrow = canvas.width_pt < NARROW_PT;
    let row_pt = if is_narrow { TALL_ROW_PT } else { ROW_PT };
    let height_pt = ABOVE_PT + row_pt * tracks.len() as f64 + 2.0;
    let names = tracks.iter().map(|track| width_pt(&track.name, NAME_PT));
    let names_pt = (names.fold(0.0, f64::max) + BESIDE_PT).min(NAMES_PT);
    let seen_pt = match canvas.words.units {
        UnitSystem::Si => SEEN_PT,
        UnitSystem::Us => SEEN_US_PT,
    };
    canvas.draw(height_pt, |area| {
        for (index, track) in tracks.iter().enumerate() {
            let place = Place {
                // A narrow row has its name above the track.
                middle_pt: ABOVE_PT + row_pt * (index + 1) as f64 - 5.0,
                left_pt: if is_narrow { 2.0 } else { names_pt },
                right_pt: canvas.width_pt - seen_pt - COUNT_PT,
                seen_pt,
                end_pt: canvas.width_pt,
                is_narrow,
            };
            draw_track(area, track, &place)?;
        }
        Ok(())
    })
}

/// Where a row stands, points.
struct Place {
    middle_pt: f64,
    left_pt: f64,
    right_pt: f64,
    seen_pt: f64,
    end_pt: f64,
    is_narrow: bool,
}

impl Place {
    /// Where a share of the track's scale lies, drawing units.
    fn at(&self, share: f64) -> i32 {
        pt(self.left_pt + share.clamp(0.0, 1.0) * (self.right_pt - self.left_pt))
    }

    fn bar(&self, (from, to): (f64, f64), high_pt: f64) -> [(i32, i32); 2] {
        // What was seen once only can be seen, too.
        let (from, to) = (self.at(from), self.at(to).max(self.at(from) + pt(1.2)));
        [
            (from, pt(self.middle_pt - high_pt / 2.0)),
            (to, pt(self.middle_pt + high_pt / 2.0)),
        ]
    }
}

fn draw_track(area: &Area<'_>, track: &Track, place: &Place) -> Result<()> {
    let middle = pt(place.middle_pt);
    let rail = vec![(place.at(0.0), middle), (place.at(1.0), middle)];
    area.draw(&PathElement::new(rail, stroke(&GRID, 0.6)))
        .map_err(fault)?;
    let allowed = place.bar(track.allowed, ALLOWED_PT);
    area.draw(&Rectangle::new(allowed, SHADE.filled()))
        .map_err(fault)?;
    for (share, said) in &track.limits {
        let at = place.at(*share);
        let ends = vec![allowed[0].1, allowed[1].1]
            .into_iter()
            .map(|y| (at, y));
        area.draw(&PathElement::new(
            ends.collect::<Vec<_>>(),
            stroke(&BAND, 0.9),
        ))
        .map_err(fault)?;
        let ink = if track.is_own { LIMIT } else { NOTE };
        let style = anchored(text(LIMIT_PT, &ink), HPos::Center, VPos::Bottom);
        let above = pt(place.middle_pt - ALLOWED_PT / 2.0 - 0.4);
        area.draw(&Text::new(said.as_str(), (at, above), style))
            .map_err(fault)?;
    }
    if let Some(seen) = track.seen {
        let bar = Rectangle::new(place.bar(seen, SEEN_HIGH_PT), LINE.filled());
        area.draw(&bar).map_err(fault)?;
    }
    write_words(area, track, place)
}

fn write_words(area: &Area<'_>, track: &Track, place: &Place) -> Result<()> {
    let middle = pt(place.middle_pt);
    let (name_at, vertical) = if place.is_narrow {
        ((pt(2.0), pt(place.middle_pt - 16.5)), VPos::Center)
    } else {
        ((0, middle), VPos::Center)
    };
    let room_pt = if place.is_narrow {
        place.end_pt - 2.0
    } else {
        place.left_pt - BESIDE_PT
    };
    let size_pt = fit_line(&track.name, NAME_PT, room_pt);
    let style = anchored(text(size_pt, &INK), HPos::Left, vertical);
    area.draw(&Text::new(track.name.as_str(), name_at, style))
        .map_err(fault)?;
    let seen_pt = fit_line(&track.observed, NAME_PT, place.seen_pt - 6.0);
    let style = anchored(text(seen_pt, &INK), HPos::Right, VPos::Center);
    let at = (pt(place.end_pt - COUNT_PT), middle);
    area.draw(&Text::new(track.observed.as_str(), at, style))
        .map_err(fault)?;
    let style = if track.count > 0 {
        strong(NAME_PT, &LIMIT)
    } else {
        text(NAME_PT, &NOTE)
    };
    let style = anchored(style, HPos::Right, VPos::Center);
    let at = (pt(place.end_pt), middle);
    area.draw(&Text::new(track.set_aside.as_str(), at, style))
        .map_err(fault)?;
    Ok(())
}
