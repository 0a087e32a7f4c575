//! Groups that cannot be told apart, as brackets beside a ranking.

use super::calls::spans;
use super::ranking::{Difference, Extra, NOT_HELD};
use super::spoken::spoken;
use crate::comparison::Comparison;
use crate::comparison::pair::Pair;
use crate::language::{Message, Words};
use crate::message;
use crate::report::comparison::figures::strips::Bracket;
use crate::report::comparison::names::group_letter;
use crate::report::comparison::words::matrix::marks;

/// Lanes of brackets beside a ranking, at most; of more, each row says in numbers from which
/// others its campaign is not told apart.
const MOST_LANES: usize = 6;
/// Campaigns of which groups are made, at least.
pub const FEWEST: usize = 3;
/// Campaigns up to which a matrix has the differences.
pub const WITH_MATRIX: usize = 8;

/// What a comparison adds to the ranking.
pub fn extra(comparison: &Comparison, words: &Words) -> Extra {
    let mut extra = Extra {
        differences: differences(comparison, words),
        ..Extra::default()
    };
    let count = comparison.ranking.ranked.len();
    // Of two, the title says it.
    if count < FEWEST {
        return extra;
    }
    let lanes = comparison
        .groups
        .as_ref()
        .and_then(|groups| lanes(groups, count));
    match lanes {
        Some((lanes, letters)) => {
            extra.lanes = lanes;
            extra.letters = letters;
            let held: Vec<&usize> = comparison.groups.iter().flatten().flatten().collect();
            let apart = (0..count).filter(|rank| !held.contains(&rank));
            apart.for_each(|rank| extra.letters[rank] = NOT_HELD.to_owned());
        }
        None if comparison.baseline.is_none() => extra.alike = alike(comparison, count, words),
        None => {}
    }
    extra
}

/// Brackets of each rank, a lane each, and the letters of its groups; `None` where they take
/// more lanes than there is room for. A rank that is alone in its group has no bracket.
fn lanes(groups: &[Vec<usize>], count: usize) -> Option<(Vec<Vec<Bracket>>, Vec<String>)> {
    let mut letters = vec![String::new(); count];
    let mut lanes: Vec<Vec<Bracket>> = Vec::new();
    let several = groups.iter().filter(|group| group.len() > 1);
    for (index, group) in several.enumerate() {
        let (first, last) = (*group.first()?, *group.last()?);
        for rank in group {
            letters[*rank] += &group_letter(index);
        }
        // Groups come by their first rank; one apart from what stands there leaves a row free.
        let is_free = |lane: &&mut Vec<Bracket>| {
            let from = first.saturating_sub(1);
            lane[from..=last].iter().all(|one| *one == Bracket::None)
        };
        let lane = match lanes.iter_mut().find(is_free) {
            Some(lane) => lane,
            None => {
                lanes.push(vec![Bracket::None; count]);
                lanes.last_mut()?
            }
        };
        for (rank, bracket) in lane.iter_mut().enumerate().take(last + 1).skip(first) {
            *bracket = match group.contains(&rank) {
                true => Bracket::Holds {
                    begins: rank == first,
                    ends: rank == last,
                },
                false => Bracket::Passes,
            };
        }
    }
    if lanes.len() > MOST_LANES {
        return None;
    }
    let of_rank = |rank: usize| lanes.iter().map(|lane| lane[rank]).collect();
    Some(((0..count).map(of_rank).collect(), letters))
}

/// Of each rank, the numbers of those from which it is not told apart.
fn alike(comparison: &Comparison, count: usize, words: &Words) -> Vec<String> {
    let is_alike = |one: usize, other: usize| {
        let pair = comparison.between(one, other);
        one != other && !pair.is_some_and(|(pair, _)| pair.is_shown())
    };
    let of = |one: usize| {
        let others = (0..count).filter(|other| is_alike(one, *other));
        words.say(spans(others.map(|other| other + 1).collect()))
    };
    (0..count).map(of).collect()
}

/// Of each rank, the pair whose difference stands in its row, and the sign with which it does:
/// from the baseline, else what the first has more than each, where no matrix has them. `None`
/// without such a column.
pub fn in_column(comparison: &Comparison) -> Option<Vec<Option<(&Pair, f64)>>> {
    let count = comparison.ranking.ranked.len();
    let base = match comparison.baseline {
        Some(base) => Some(comparison.ranking.rank(base)?),
        None if count > WITH_MATRIX => None,
        None => return None,
    };
    let of = |rank: usize| match base {
        Some(base) => comparison.between(rank, base).filter(|_| rank != base),
        None => comparison.between(0, rank).filter(|_| rank != 0),
    };
    Some((0..count).map(of).collect())
}

/// A column of differences, with its header.
fn differences(comparison: &Comparison, words: &Words) -> Option<(String, Vec<Difference>)> {
    let header: Message = match comparison.baseline {
        Some(_) => message!("ranking-from-baseline"),
        None => message!("ranking-from-first"),
    };
    let of = |found: Option<(&Pair, f64)>| {
        let Some((pair, sign)) = found else {
            return Difference::default();
        };
        let Some(weighed) = pair.difference.decisive() else {
            return Difference {
                value: "–".to_owned(),
                ..Difference::default()
            };
        };
        let (value, interval) = spoken(weighed, sign);
        Difference {
            value: words.say(value) + marks(pair),
            interval: words.say(interval),
            is_shown: pair.is_shown(),
        }
    };
    let column = in_column(comparison)?;
    Some((words.say(header), column.into_iter().map(of).collect()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn groups_that_meet_stand_side_by_side_and_others_below_each_other() {
        // 0–1 and 1–2 overlap in 1; 4–5 lies apart from both.
        let groups = [vec![0, 1], vec![1, 2], vec![3], vec![4, 5]];
        let (lanes, letters) = lanes(&groups, 6).unwrap();
        assert_eq!(lanes[0].len(), 2);
        assert_eq!(letters, ["a", "ab", "b", "", "c", "c"]);
        let holds = |begins, ends| Bracket::Holds { begins, ends };
        assert_eq!(lanes[1], [holds(false, true), holds(true, false)]);
        assert_eq!(lanes[3], [Bracket::None; 2]);
        assert_eq!(lanes[4][0], holds(true, false));
    }

    #[test]
    fn a_bracket_passes_by_what_is_not_of_its_group() {
        let (lanes, letters) = lanes(&[vec![0, 2], vec![1]], 3).unwrap();
        assert_eq!(lanes[1], [Bracket::Passes]);
        assert_eq!(letters, ["a", "", "a"]);
    }
}
