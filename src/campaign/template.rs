//! What `simmerline new` writes: a commented campaign file and an empty log.

/// Header of the canonical log.
pub const CANONICAL_HEADER: &str = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s";

/// A campaign file that shows every key, with values to replace.
pub const CAMPAIGN_TEMPLATE: &str = include_str!("../../templates/campaign.toml");

/// Name of the empty log that goes with it.
pub const LOG_NAME: &str = "run-1.csv";
