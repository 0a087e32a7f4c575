//! Pure functions of statistics. Nothing here knows of cookers.

pub mod line;
pub mod student;
