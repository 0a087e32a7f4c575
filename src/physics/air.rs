//! The standard atmosphere.

use simmerline_math::pow;

/// Pressure at sea level, Pa.
const SEA_LEVEL_PRESSURE_PA: f64 = 101_325.0;
/// Temperature at sea level, K.
const SEA_LEVEL_TEMPERATURE_K: f64 = 288.15;
/// Fall of temperature with height in the troposphere, K/m.
const LAPSE_RATE_K_PER_M: f64 = 0.0065;
/// Standard acceleration of free fall, m/s².
const GRAVITY_M_S2: f64 = 9.806_65;
/// Molar mass of air, kg/mol.
const MOLAR_MASS_KG_PER_MOL: f64 = 0.028_964_4;
/// Gas constant as the standard atmosphere uses it, J/(mol K).
const GAS_CONSTANT_J_PER_MOL_K: f64 = 8.314_32;

/// Air pressure, Pa, at a geopotential height `elevation_m` (m, up to 11 km).
///
/// p = p0 (1 − L h/T0)^(g M/(R L))
///
/// ```
/// let pascals = simmerline::physics::air::pressure_pa(2000.0);
/// assert!((pascals - 79_495.2).abs() < 0.1);
/// ```
///
/// # Source
/// ISO 2533:1975, Standard Atmosphere, troposphere; the same as ICAO Doc 7488.
/// DIFFERENCE: elevation is taken as geopotential height; at 4 km they differ by 2.5 m.
pub fn pressure_pa(elevation_m: f64) -> f64 {
    let exponent =
        GRAVITY_M_S2 * MOLAR_MASS_KG_PER_MOL / (GAS_CONSTANT_J_PER_MOL_K * LAPSE_RATE_K_PER_M);
    SEA_LEVEL_PRESSURE_PA
        * pow(
            1.0 - LAPSE_RATE_K_PER_M * elevation_m / SEA_LEVEL_TEMPERATURE_K,
            exponent,
        )
}
