//! Exergy: how much of a heat could do work.

use simmerline_math::ln;

/// 0 °C in kelvin.
pub const ZERO_CELSIUS_K: f64 = 273.15;
/// Temperature of the sun as a radiator, K. Stated by the procedures that use it; from memory.
pub const SUN_K: f64 = 5777.0;

/// Share of sunlight that could do work: 1 − 4/3·(Ta/Ts) + 1/3·(Ta/Ts)⁴, with ambient Ta and the
/// sun's Ts in K.
///
/// ```
/// // Derived: at 300 K and 5777 K.
/// let share = simmerline::physics::exergy::share_of_sunlight(300.0, 5777.0);
/// assert!((share - 0.930762).abs() < 1e-6);
/// ```
///
/// # Source
/// Petela 1964, Journal of Heat Transfer 86, 187–192; from memory.
pub fn share_of_sunlight(ambient_k: f64, sun_k: f64) -> f64 {
    let ratio = ambient_k / sun_k;
    let square = ratio * ratio;
    1.0 - 4.0 / 3.0 * ratio + square * square / 3.0
}

/// Exergy that a heat capacity of 1 J/K gains from one temperature to another, J:
/// (T2 − T1) − Ta·ln(T2/T1), all in K.
///
/// ```
/// // Derived: 2 kg of water, 50 to 55 °C in 600 s at 30 °C: 4.819083 W.
/// use simmerline::physics::exergy::gained;
/// let joules = 2.0 * 4186.0 * gained(323.15, 328.15, 303.15);
/// assert!((joules / 600.0 - 4.819083).abs() < 1e-5);
/// ```
///
/// # Source
/// Second law for an incompressible body without change of pressure; any textbook of
/// thermodynamics. Held against CoolProp and IAPWS-95 in `tests/modules/physics`.
pub fn gained(from_k: f64, to_k: f64, ambient_k: f64) -> f64 {
    (to_k - from_k) - ambient_k * ln(to_k / from_k)
}
