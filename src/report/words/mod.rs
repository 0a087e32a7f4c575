//! Every string of the report, in the order of its pages.
//!
//! The templates hold layout only: what they print is what stands here, and in the `words` of
//! each procedure.

pub mod cautions;
pub mod cooking;
mod facts;
pub mod headline;
pub mod headline_dry;
pub mod inputs;
pub mod instruments;
pub mod letterhead;
pub mod provenance;
pub mod report;
pub mod summary;
pub mod tested;
mod unchecked;
pub mod year;

pub use report::{Report, build};
