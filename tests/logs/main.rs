//! Any log a person has: one campaign in many dresses, logs that must be refused, and
//! what outside sources say about text, times, zones and units.
//!
//! All readings are invented. `tests/data/dresses/README.md` says with which software
//! each dress was made.

mod any_dialect;
mod clock_changes;
mod dresses;
mod how_read;
mod nist_sp_811;
mod rfc_3339;
mod rfc_4180;
mod several_runs;
mod traps;
