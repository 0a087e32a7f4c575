//! Anybody's check of a report, from its file alone.
//!
//! [`Pdf`] takes the file apart, [`Evidence`] takes out what is attached, [`verify()`]
//! computes everything again and holds the results and the pages against it. What a
//! campaign file names is read among the attachments, or, where the results name a long log by
//! its hash, in the folder that [`Beside`] has, and nowhere else.

mod again;
mod beside;
mod check;
mod compare;
mod evidence;
mod hold;
mod keys;
mod pages;
mod pdf;
mod results;
mod stated;

pub use again::assess_again;
pub use beside::Beside;
pub use check::{Check, Outcome, THIS_VERSION, Verdict, Verification};
pub use evidence::Evidence;
pub use hold::{verification_of, verify};
pub use pdf::Pdf;
pub use stated::Subject;
