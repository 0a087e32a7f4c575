//! What all figures share. They are SVG, drawn with plotters; text is in a font that the
//! report embeds.
//!
//! Everything that knows plotters is in this folder and in the `figures` of each procedure
//! and of the comparison.

pub mod axis;
pub mod bands;
pub mod bars;
pub mod curves;
pub mod fit;
pub mod key;
pub mod labels;
pub mod marks;
pub mod places;
pub mod points;
pub mod style;
