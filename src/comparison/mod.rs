//! Campaigns side by side: which cooker is better, and how sure that is.
//!
//! [`gather`] refuses what cannot be compared, [`weigh`] holds one figure of two against
//! each other and [`pair`] all that is said of a pair, [`places`] says which sites are one, [`shape`] tells a change of slope from one of level, [`needed`] says how many
//! intervals would show a difference; [`compare()`] runs them over all pairs.

mod compare;
pub mod gather;
pub mod needed;
pub mod pair;
pub mod places;
pub mod shape;
pub mod weigh;

pub use compare::{Comparison, HEATED_KG, compare};
pub use pair::{Difference, Pair};
