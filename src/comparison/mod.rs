//! Campaigns side by side: which cooker is better, and how sure that is.
//!
//! [`gather`] refuses what cannot be compared, [`departures`] tells other limits, [`places`] says which sites are one, [`weigh`]
//! holds one figure of two against each other, with [`effects`] of what both share, and [`pair`]
//! all that is said of two ratings; [`figures`] does so with every figure beside the rating that
//! was taken [`alike`]. [`shape`] compares slopes and levels of lines, [`needed`] says how many
//! days would show a difference; [`standing`] ranks campaigns by power, [`groups`] finds
//! those that cannot be told apart; [`compare()`] runs them over all pairs.

pub mod alike;
mod compare;
pub mod departures;
pub mod effects;
pub mod figures;
pub mod gather;
pub mod groups;
pub mod needed;
pub mod pair;
pub mod places;
pub mod shape;
pub mod standing;
pub mod weigh;

pub use compare::{Comparison, HEATED_KG, ToldAs, compare};
pub use pair::{Causes, Difference, Pair};
