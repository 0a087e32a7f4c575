//! A ranking by itself: for a page that lists campaigns without comparing them.

use super::figures::ranked::{narrow_ranking_assets, ranking_assets};
use super::names::titles;
use super::words::ranking::{Extra, RankingPart, ranking_part};
use crate::comparison::standing::Standing;
use crate::error::Result;
use crate::language::Words;
use crate::report::assets::Asset;

/// Campaigns by their power, with the drawings that the rows name. Nothing is said of
/// differences: the order is that of the figures. Rows are those with a rating, the
/// impossible ones last; campaigns without one are named in `left_out`.
///
/// # Errors
/// [`crate::error::Error::Internal`] if a drawing fails.
pub fn ranking(standings: &[Standing], words: &Words) -> Result<(RankingPart, Vec<Asset>)> {
    let extra = Extra::default();
    let part = ranking_part(standings, &titles(standings), &extra, words);
    let mut assets = ranking_assets(standings, &part, &extra, words)?;
    assets.extend(narrow_ranking_assets(standings, &part, words)?);
    Ok((part, assets))
}
