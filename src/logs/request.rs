//! What is known of a log before it is read.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::quantity::Role;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{Calibration, LogRules, Plane, Sensitivity};
use crate::campaign::moment::Moment;

/// How a log is to be read.
#[derive(Debug, Clone)]
pub struct Request<'c> {
    pub role: Role,
    /// Of the run.
    pub kind: RunKind,
    pub rules: &'c LogRules,
    /// The site's zone.
    pub zone: &'c TimeZone,
    /// Of the run, for times without a date and dates with two readings.
    pub date: Option<Date>,
    /// Of the run, from which elapsed time counts.
    pub start: Option<Moment>,
    /// Added to all times, µs.
    pub clock_offset_us: i64,
    pub calibrations: &'c [Calibration],
    pub sensitivity: Sensitivity,
    /// Of the irradiance sensor; `None` where it is not stated.
    pub plane: Option<Plane>,
    /// Water in each vessel, kg; empty where the vessels count alike.
    pub vessel_water_kg: &'c [f64],
}

impl<'c> Request<'c> {
    /// A run's only log, with nothing said about it but the rules.
    pub fn new(rules: &'c LogRules, zone: &'c TimeZone) -> Self {
        Request {
            role: Role::Whole,
            kind: RunKind::default(),
            rules,
            zone,
            date: None,
            start: None,
            clock_offset_us: 0,
            calibrations: &[],
            sensitivity: Sensitivity::default(),
            plane: None,
            vessel_water_kg: &[],
        }
    }
}
