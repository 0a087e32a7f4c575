//! The drawings of a ranking.

use super::strips::{Dot, Mark, Scale, draw_axis, draw_brackets, draw_strip};
use crate::comparison::standing::{Power, Ranking, Standing};
use crate::error::Result;
use crate::language::{Words, fixed};
use crate::report::assets::Asset;
use crate::report::comparison::words::ranking::{
    Extra, RankRow, RankingPart, axis_range, listed, mark,
};
use crate::report::figures::style::Canvas;

/// Height of a row on a narrow screen, points.
const NARROW_ROW_PT: f64 = 14.0;

/// The drawings of a ranking, by the names that [`RankingPart`] gives them.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn ranking_assets(
    standings: &[Standing],
    part: &RankingPart,
    extra: &Extra,
    words: &Words,
) -> Result<Vec<Asset>> {
    let canvas = Canvas {
        words,
        width_pt: part.plot_pt,
    };
    let place = |row: &RankRow| (row.height_pt, row.middle_pt);
    let mut assets = strips(standings, part, place, &canvas)?;
    for (row, lanes) in part.rows.iter().zip(&extra.lanes) {
        if let Some(name) = &row.brackets {
            let canvas = Canvas {
                words,
                width_pt: part.brackets_pt,
            };
            assets.push(asset(name, draw_brackets(lanes, row.height_pt, &canvas)?));
        }
    }
    Ok(assets)
}

/// Axis and strips again, for a narrow screen.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn narrow_ranking_assets(
    standings: &[Standing],
    part: &RankingPart,
    words: &Words,
) -> Result<Vec<Asset>> {
    let place = |_: &RankRow| (NARROW_ROW_PT, NARROW_ROW_PT / 2.0);
    let assets = strips(standings, part, place, &Canvas::phone(words))?;
    Ok(assets.into_iter().map(Asset::for_narrow_screen).collect())
}

/// The axis, and a strip a row of a height with its mark at a place.
fn strips(
    standings: &[Standing],
    part: &RankingPart,
    place_of: impl Fn(&RankRow) -> (f64, f64),
    canvas: &Canvas<'_>,
) -> Result<Vec<Asset>> {
    let ranking = Ranking::of(standings);
    let range = axis_range(standings, &ranking);
    let scale = Scale::new([range.lower, range.upper].into_iter(), canvas.width_pt);
    let axis = draw_axis(&scale, |at| fixed(at, scale.decimals()), canvas)?;
    let mut assets = vec![asset(&part.axis, axis)];
    for (row, (_, place)) in part.rows.iter().zip(listed(&ranking)) {
        let level = standings[place].level;
        let dot = standings[place]
            .power
            .map(|power| dot(&power, mark(level), &scale));
        let strip = draw_strip(&scale, dot.as_ref(), place_of(row), canvas)?;
        assets.push(asset(&row.strip, strip));
    }
    Ok(assets)
}

/// A drawing by its name.
pub fn asset(name: &str, drawn: String) -> Asset {
    Asset {
        name: name.to_owned(),
        bytes: drawn.into_bytes(),
    }
}

fn dot(power: &Power, mark: Mark, scale: &Scale) -> Dot {
    Dot {
        value: power.value_w,
        lower: power.interval_w.lower,
        upper: Some(power.interval_w.upper).filter(|upper| *upper <= scale.end()),
        mark,
    }
}
