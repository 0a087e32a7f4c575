//! How sure what is fitted to the readings of several days is, for any procedure.
//!
//! [`shift`] is what an error that all readings share does to them, [`points`] what they give
//! to a fit of two parameters, [`fitted`] the fit with all that makes it unsure, [`budget`] that
//! of one figure read off it, [`trials`] the same by drawing, [`apart`] why the two
//! differ, and [`step`] how finely a
//! thermometer was read. [`derived`] does all of it for a figure that a formula gives, and
//! [`figure`] is what is printed of either.

pub mod apart;
pub mod budget;
pub mod derived;
pub mod figure;
pub mod fitted;
pub mod points;
pub mod shift;
pub mod step;
pub mod trials;

pub use budget::{Budget, coverage_factor, expanded};
pub use derived::{Derived, Missing, Off, derive};
pub use figure::Figure;
pub use fitted::{Fitted, Region};
pub use points::Point;
pub use trials::MonteCarlo;
