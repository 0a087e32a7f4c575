//! Power for each W/m² of irradiance.

pub mod power_per_irradiance;
