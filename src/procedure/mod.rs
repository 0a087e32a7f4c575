//! The published practice of cooker tests: ASAE S580.1.
//!
//! [`limits`] is its table of limits, [`split`] makes runs of a log of many days, [`run`]
//! trims a log, [`estimate`] gives it the irradiance that was not measured, [`intervals`] forms intervals from readings, [`screen`] sets aside those
//! that the practice does not let one use, [`conformity`] weighs what is left,
//! [`uncertainty`] says how sure the figure is, [`cooking`] what it means for a pot of
//! water, [`year`] for the months, [`danger`] for the safety of food; [`stagnation`] is the
//! test of a dry vessel, [`environment`] what surrounded the used intervals; [`assess()`] runs them in this order.

pub mod assess;
pub mod conformity;
pub mod cooking;
pub mod danger;
pub mod environment;
pub mod estimate;
pub mod intervals;
pub mod limits;
pub mod local_sky;
pub mod predicted;
pub mod run;
pub mod screen;
pub mod split;
pub mod stagnation;
pub mod uncertainty;
pub mod year;

pub use assess::{Assessment, assess};
pub use run::Run;
