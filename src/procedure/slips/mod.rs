//! Slips that people make with a site, a clock, a date, a unit or a sensor.
//!
//! None of them stops anything: each is a [`notice`] that says where it is, what was found, what
//! it may have been meant to be, and what to do. [`find`] looks for all of them but for readings
//! in the future, which take the time of issue ([`dates`]). Bounds are so wide that honest tests
//! keep within them; each has its reason beside it.

pub mod celsius;
pub mod dates;
pub mod exchanged;
pub mod find;
pub mod load;
pub mod notice;
pub mod odd_run;
pub mod stuck;
pub mod sun;
pub mod zone;

pub use find::find_slips;
