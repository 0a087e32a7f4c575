//! What is shown of two campaigns.

use crate::comparison::Comparison;

/// What is shown of two ranks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Told {
    /// The first gives more.
    More,
    /// The first gives less.
    Less,
    /// Neither is shown to.
    Alike,
    /// They cannot be held against each other.
    Untold,
}

/// What is shown of two ranks.
pub fn told(comparison: &Comparison, one: usize, other: usize) -> Told {
    let Some((pair, sign)) = comparison.between(one, other) else {
        return Told::Untold;
    };
    match pair.difference.decisive() {
        None => Told::Untold,
        Some(_) if !pair.is_shown() => Told::Alike,
        Some(weighed) if weighed.value * sign > 0.0 => Told::More,
        Some(_) => Told::Less,
    }
}
