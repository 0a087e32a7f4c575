//! What tests of the dry vessel add to a report: those typed in ([`words`], [`data`]), and the
//! dry runs ([`runs_words`], [`runs_data`], and [`heating`], their figure).

pub mod data;
pub mod heating;
pub mod runs_data;
pub mod runs_words;
pub mod words;
