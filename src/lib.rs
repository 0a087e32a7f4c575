//! Rates solar cookers from water-heating test logs and writes the report.
//!
//! The modules in the order in which a number travels:
//! [`campaign`] reads what was tested and where, [`logs`] turns bytes into valid
//! readings, [`physics`] and [`stats`] hold the formulas, [`procedure`] applies the
//! published practice (intervals, screening, rating, conformity), and [`report`]
//! puts the result on paper and into files. [`cli`] is the command line.
//! Shared by all: [`error`], [`notice`], [`units`] and [`hash`].

pub mod campaign;
pub mod logs;
pub mod physics;
pub mod procedure;
pub mod stats;

pub mod error;
pub mod hash;
pub mod notice;
pub mod units;
