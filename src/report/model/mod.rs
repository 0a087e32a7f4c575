//! Every string of the report, in the order of its pages.
//!
//! The templates hold layout only: what they print is what stands here.

pub mod conditions;
pub mod cooking;
pub mod evidence;
pub mod headline;
pub mod instruments;
pub mod provenance;
pub mod regression;
pub mod report;
pub mod scatter;
pub mod stagnation;
pub mod tested;
pub mod uncertainty;
pub mod year;

pub use report::{Report, build};
