//! Campaigns side by side: which cooker is better, and how sure that is.
//!
//! [`gather`] refuses what cannot be compared, [`places`] says which sites are one, [`weigh`]
//! holds one figure of two against each other and [`pair`] all that is said of two,
//! [`shape`] compares slopes and levels of their lines, [`needed`] says how many days would
//! show a difference; [`compare()`] runs them over all pairs.

mod compare;
pub mod gather;
pub mod needed;
pub mod pair;
pub mod places;
pub mod shape;
pub mod weigh;

pub use compare::{Comparison, HEATED_KG, compare};
pub use pair::{Causes, Difference, Pair};
