//! The dry, empty vessel: how hot it gets.
//!
//! [`stagnation`] evaluates what was typed into the campaign file, [`dry_run`] the logs of dry
//! runs, in which [`plateau`] finds where the vessel gets no hotter; [`finding`] names what
//! prevents that.

pub mod dry_run;
pub mod finding;
pub mod plateau;
pub mod stagnation;

pub use dry_run::{DryRuns, dry_runs};
pub use stagnation::{Stagnation, stagnations};
