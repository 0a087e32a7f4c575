//! Mathematical functions whose last digit is the same on every machine.
//!
//! Those of [`f64`] call the platform's mathematical library, and two libraries may differ in
//! the last digit. A report that is set again elsewhere must be the same byte for byte, so
//! all of them come from the pure `libm` crate:
//!
//! - simmerline calls the functions of this module, and `clippy.toml` forbids the others;
//! - the crates below it (fonts, drawing, distributions) call `f64`'s. Those end in the C
//!   functions of `symbols.rs`, which the linker takes instead of the platform's.
//!
//! Square root, rounding, remainder and `mul_add` are exact everywhere and stay `f64`'s.
//! Angles are in radians.

mod symbols;

pub use libm::{
    asin, atan2, cos, exp, expm1 as exp_m1, hypot, log as ln, log10, pow, sin, sincos as sin_cos,
    tan,
};

/// `x²`.
pub fn squared(x: f64) -> f64 {
    x * x
}

/// `10ⁿ`, exact up to n = 22; `f64::powi` does not say how exact it is.
///
/// ```
/// assert_eq!(simmerline_math::power_of_ten(3), 1000.0);
/// assert_eq!(simmerline_math::power_of_ten(-3), 0.001);
/// ```
pub fn power_of_ten(n: i32) -> f64 {
    let power = (0..n.abs()).fold(1.0, |power, _| power * 10.0);
    if n < 0 { 1.0 / power } else { power }
}
