//! What a number can be: beyond it stands a slip of the pen or a wrong unit.
//!
//! All of them are common practice without a published source, but for what a definition
//! gives. Two ranges of one quantity are named for what they are of.

use std::ops::RangeInclusive;

/// From the lowest to the highest, both believed.
pub type Range = RangeInclusive<f64>;

/// Years of a test or a plan.
pub const YEARS: RangeInclusive<i16> = 1900..=2200;

/// Air beside a cooker, °C.
pub const AIR_C: Range = -40.0..=60.0;
/// Air for which the cooking section computes, °C.
pub const COOKING_AIR_C: Range = -20.0..=50.0;
/// Air beside a dry vessel, and the vessel itself, °C.
pub const DRY_VESSEL_C: Range = -40.0..=600.0;
/// Water in a log, °C: in an open pot it boils below 101 °C.
pub const LOGGED_WATER_C: Range = -5.0..=105.0;
/// Lowest temperature of water that is typed in, °C.
pub const COLDEST_TYPED_WATER_C: f64 = -5.0;
/// How far a good thermometer may read above the boiling point of its water, K.
pub const ABOVE_BOILING_K: f64 = 2.0;
/// Water and food at the start of cooking, °C.
pub const COOKING_START_C: Range = 0.0..=60.0;
/// Temperature that a campaign sets as a limit, °C.
pub const OWN_LIMIT_C: Range = -40.0..=110.0;
/// Difference that a campaign sets as a limit, K.
pub const OWN_LIMIT_K: Range = 0.0..=100.0;
/// Highest temperatures that a log in °F may hold.
pub const FAHRENHEIT_HIGHS: Range = 60.0..=250.0;
/// Lowest temperature of a log in kelvin.
pub const LOWEST_KELVIN: f64 = 230.0;

/// Irradiance in a log, W/m²: a sensor reads a little below zero at night.
pub const LOGGED_IRRADIANCE_W_M2: Range = -50.0..=2000.0;
/// Irradiance that is typed in, W/m².
pub const TYPED_IRRADIANCE_W_M2: Range = 0.0..=2000.0;
/// Irradiance on a dry vessel, W/m².
pub const DRY_VESSEL_IRRADIANCE_W_M2: Range = 100.0..=2000.0;
/// Irradiance for which the cooking section computes, W/m².
pub const COOKING_IRRADIANCE_W_M2: Range = 450.0..=1100.0;
/// Irradiance that a campaign sets as a limit, W/m².
pub const OWN_LIMIT_W_M2: Range = 0.0..=2000.0;
/// Irradiance that some time of a test day exceeds, W/m².
pub const LEAST_SUN_W_M2: f64 = 100.0;
/// Highest readings of a log that looks like kW/m².
pub const KILOWATT_HIGHS: std::ops::Range<f64> = 0.05..3.0;

/// Wind in a log, m/s: a sensor reads a little below zero in still air.
pub const LOGGED_WIND_M_S: Range = -0.5..=75.0;
/// Wind that a campaign sets as a limit, m/s.
pub const OWN_LIMIT_M_S: Range = 0.0..=50.0;

/// Hour of the day that a campaign sets as a limit, h.
pub const OWN_LIMIT_H: Range = 0.0..=24.0;

/// Length of an interval that a campaign sets as a limit, s: a minute to half an hour.
pub const OWN_LIMIT_S: Range = 60.0..=1800.0;
/// Load that a campaign sets as a limit, kg/m².
pub const OWN_LIMIT_KG_M2: Range = 0.1..=100.0;
/// Share by which a campaign lets the load be off, as a fraction.
pub const OWN_LIMIT_FRACTION: Range = 0.0..=0.5;
/// Fewest intervals that a campaign sets as a limit: a line takes three.
pub const OWN_LIMIT_INTERVALS: Range = 3.0..=10_000.0;
/// Fewest days that a campaign sets as a limit.
pub const OWN_LIMIT_DAYS: Range = 1.0..=366.0;
/// Lowest R² that a campaign sets as a limit.
pub const OWN_LIMIT_R_SQUARED: Range = 0.0..=1.0;

/// Latitude, degrees, north positive.
pub const LATITUDE_DEG: Range = -90.0..=90.0;
/// Longitude, degrees, east positive.
pub const LONGITUDE_DEG: Range = -180.0..=180.0;
/// Elevation of a site, m.
pub const ELEVATION_M: Range = -430.0..=6000.0;
/// Station pressure, hPa.
pub const PRESSURE_HPA: Range = 400.0..=1100.0;
/// Linke turbidity of a clear sky.
pub const LINKE_TURBIDITY: Range = 1.0..=10.0;

/// Intercept area, m²: from a hand's breadth in the square; beyond, a length was given in
/// centimetres.
pub const INTERCEPT_AREA_M2: Range = 1e-3..=100.0;
/// Longest side of an aperture, m.
pub const LONGEST_APERTURE_M: f64 = 100.0;
/// Angle between beam and aperture normal, degrees.
pub const INCIDENCE_DEG: Range = 0.0..=89.0;
/// Half angle from which a cooker takes light, degrees, from the radius of the sun's disc:
/// no reflector can do with less.
pub const ACCEPTANCE_HALF_ANGLE_DEG: Range = 0.27..=90.0;
/// Heaviest cooker, kg.
pub const HEAVIEST_COOKER_KG: f64 = 1e5;
/// Highest cost of a cooker, in units of any currency.
pub const HIGHEST_COST: f64 = 1e12;
/// Most water in vessels, kg.
pub const MOST_WATER_KG: f64 = 1000.0;
/// Heaviest vessels of a cooker, together, kg.
pub const HEAVIEST_VESSELS_KG: f64 = 200.0;
/// Most heat that the vessels of a cooker store, J/K.
pub const MOST_VESSEL_HEAT_J_PER_K: f64 = 2e5;
/// Surface of the vessels that loses heat, and glass of a box, m².
pub const LOSS_AREA_M2: Range = 1e-3..=100.0;
/// Longest time between two re-aimings, min: a day.
pub const LONGEST_TRACKING_MIN: f64 = 1440.0;

/// Largest standard uncertainty, as a fraction.
pub const LARGEST_UNCERTAINTY: f64 = 1.0;
/// Largest standard uncertainty of a thermometer, K.
pub const LARGEST_UNCERTAINTY_K: f64 = 50.0;
/// Largest standard uncertainty of a wind sensor, m/s.
pub const LARGEST_UNCERTAINTY_M_S: f64 = 10.0;
/// Largest standard uncertainty of a clock, s.
pub const LARGEST_UNCERTAINTY_S: f64 = 300.0;
/// Largest step of a thermometer, K.
pub const LARGEST_RESOLUTION_K: f64 = 20.0;
/// Largest signal of an irradiance sensor, µV or mA per W/m².
pub const LARGEST_SENSITIVITY: f64 = 1e4;
/// Largest gain of a calibration.
pub const LARGEST_GAIN: f64 = 1000.0;
/// Offset of a calibration, in the unit of its readings.
pub const CALIBRATION_OFFSET: Range = -1000.0..=1000.0;
/// Error of a weather station's clock that is corrected, s: a wrong day is not a wrong clock.
pub const CLOCK_OFFSET_S: Range = -86_400.0..=86_400.0;

/// Largest expanded uncertainty to aim at, W, and as a fraction of the rating.
pub const LARGEST_TARGET_W: f64 = 1e5;
/// See [`LARGEST_TARGET_W`].
pub const LARGEST_TARGET: f64 = 1.0;

/// Heating value of a fuel, MJ/kg.
pub const HEATING_VALUE_MJ_KG: Range = 1.0..=150.0;
/// Share of a fuel's heat that a stove brings into the pot.
pub const STOVE_EFFICIENCY: Range = 0.01..=1.0;
/// Days of a year on which somebody cooks.
pub const DAYS_PER_YEAR: Range = 1.0..=366.0;
