//! Every string of a comparison, in the order of its pages.

pub mod beside;
mod bracketing;
pub mod calls;
mod campaigns;
pub mod causes;
mod caveats;
pub mod differences;
pub mod dry;
pub mod heating;
pub mod lines;
pub mod matrix;
mod method;
pub mod ranking;
pub mod ranking_notes;
pub mod report;
mod spoken;
pub mod status;
mod told;
pub mod verdict;
