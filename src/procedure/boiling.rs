//! The time to boil, as figures of a cooker give it.

use super::uncertainty::Derived;
use crate::language::{Message, celsius, fixed};
use crate::message;

/// Time from ambient to the local boiling point.
#[derive(Debug, Clone, PartialEq)]
pub struct Boiling {
    /// s.
    pub time_s: Derived,
    /// At this irradiance and this ambient temperature: those of the test.
    pub irradiance_w_m2: f64,
    pub ambient_c: f64,
    /// Up to here, °C.
    pub boiling_point_c: f64,
    /// With this much water, kg.
    pub water_kg: f64,
}

/// Why there is no time to boil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoBoiling {
    /// In the sun of the test the water gets no hotter than this, °C.
    GetsTo(f64),
    /// The time has no upper end: within its ± the water may not boil.
    MayNotBoil,
}

/// What is told of a time that there is not, and its remedy.
pub fn no_boiling_said(why: NoBoiling, boiling_point_c: f64) -> (Message, Message) {
    let boiling = celsius(fixed(boiling_point_c, 0));
    let text = match why {
        NoBoiling::GetsTo(highest_c) => message!(
            "boiling-gets-to",
            highest = celsius(fixed(highest_c, 0)),
            boiling = boiling
        ),
        NoBoiling::MayNotBoil => message!("boiling-may-not", boiling = boiling),
    };
    (text, message!("boiling-remedy"))
}
