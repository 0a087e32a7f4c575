//! The header that every log of the tests has.

/// Names of the columns, as the program writes them itself; without the end of the line.
pub const HEADER: &str = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s";
