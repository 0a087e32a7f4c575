//! The drawings of a ranking.

use super::strips::{Dot, Mark, Scale, draw_axis, draw_brackets, draw_strip};
use crate::comparison::standing::{Power, Ranking, Standing};
use crate::error::Result;
use crate::language::{Words, fixed};
use crate::report::assets::Asset;
use crate::report::comparison::words::ranking::{Extra, RankingPart, listed, mark};
use crate::report::figures::style::Canvas;

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
    let ranking = Ranking::of(standings);
    let powers = listed(&ranking).filter_map(|(_, place)| standings[place].power);
    let ends = powers.flat_map(|power| [power.interval_w.lower, power.interval_w.upper]);
    let scale = Scale::new(ends, part.plot_pt);
    let canvas = Canvas {
        words,
        width_pt: part.plot_pt,
    };
    let axis = draw_axis(&scale, |at| fixed(at, scale.decimals()), &canvas)?;
    let mut assets = vec![asset(&part.axis, axis)];
    for (row, (rank, place)) in part.rows.iter().zip(listed(&ranking)) {
        let level = standings[place].level;
        let dot = standings[place].power.map(|power| dot(&power, mark(level)));
        let strip = draw_strip(
            &scale,
            dot.as_ref(),
            (row.height_pt, row.middle_pt),
            &canvas,
        )?;
        assets.push(asset(&row.strip, strip));
        let lanes = rank.and_then(|rank| extra.lanes.get(rank));
        if let Some((name, lanes)) = row.brackets.as_ref().zip(lanes) {
            let canvas = Canvas {
                words,
                width_pt: part.brackets_pt,
            };
            assets.push(asset(name, draw_brackets(lanes, row.height_pt, &canvas)?));
        }
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

fn dot(power: &Power, mark: Mark) -> Dot {
    Dot {
        value: power.value_w,
        lower: power.interval_w.lower,
        upper: Some(power.interval_w.upper),
        mark,
    }
}
