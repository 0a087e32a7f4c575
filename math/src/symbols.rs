//! The C functions that `f64` and `f32` call, under the names that the linker looks for. They
//! stand in the program itself and so come before the platform's library.
//!
//! This file has the only unsafe attribute of the project: it says that no other function
//! of the program has such a name, which the linker checks.

/// C functions that do what their namesakes in the `libm` crate do.
macro_rules! c_functions {
    ($($name:ident($($x:ident),+) -> $float:ty;)+) => {
        $(
            #[unsafe(no_mangle)]
            extern "C" fn $name($($x: $float),+) -> $float {
                libm::$name($($x),+)
            }
        )+
    };
}

c_functions! {
    acos(x) -> f64;
    acosh(x) -> f64;
    asin(x) -> f64;
    asinh(x) -> f64;
    atan(x) -> f64;
    atan2(y, x) -> f64;
    atanh(x) -> f64;
    cbrt(x) -> f64;
    cos(x) -> f64;
    cosh(x) -> f64;
    exp(x) -> f64;
    exp10(x) -> f64;
    exp2(x) -> f64;
    expm1(x) -> f64;
    hypot(x, y) -> f64;
    log(x) -> f64;
    log10(x) -> f64;
    log1p(x) -> f64;
    log2(x) -> f64;
    pow(x, y) -> f64;
    sin(x) -> f64;
    sinh(x) -> f64;
    tan(x) -> f64;
    tanh(x) -> f64;
    tgamma(x) -> f64;

    acosf(x) -> f32;
    acoshf(x) -> f32;
    asinf(x) -> f32;
    asinhf(x) -> f32;
    atanf(x) -> f32;
    atan2f(y, x) -> f32;
    atanhf(x) -> f32;
    cbrtf(x) -> f32;
    cosf(x) -> f32;
    coshf(x) -> f32;
    expf(x) -> f32;
    exp10f(x) -> f32;
    exp2f(x) -> f32;
    expm1f(x) -> f32;
    hypotf(x, y) -> f32;
    logf(x) -> f32;
    log10f(x) -> f32;
    log1pf(x) -> f32;
    log2f(x) -> f32;
    powf(x, y) -> f32;
    sinf(x) -> f32;
    sinhf(x) -> f32;
    tanf(x) -> f32;
    tanhf(x) -> f32;
    tgammaf(x) -> f32;
}

/// What the compiler makes of a sine and a cosine of the same angle.
#[unsafe(no_mangle)]
extern "C" fn sincos(x: f64, sine: &mut f64, cosine: &mut f64) {
    (*sine, *cosine) = libm::sincos(x);
}

/// As `sincos`.
#[unsafe(no_mangle)]
extern "C" fn sincosf(x: f32, sine: &mut f32, cosine: &mut f32) {
    (*sine, *cosine) = libm::sincosf(x);
}
