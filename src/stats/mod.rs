//! Pure functions of statistics. Nothing here knows of cookers.

pub mod combine;
pub mod groups;
pub mod holm;
pub mod influence;
pub mod line;
pub mod monte_carlo;
pub mod normal;
pub mod serial;
pub mod student;
pub mod two;
