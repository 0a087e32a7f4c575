//! Every mathematical function of this program is that of the `libm` crate, to the last bit:
//! also those of `f64` and `f32`, which the crates below ours call. Held against `libm` itself.
//!
//! Without `math/src/symbols.rs` the test fails: with glibc 2.36 every function but the cube
//! root differs in some last digit.

use std::hint::black_box;

/// Numbers of both signs over 40 powers of two, evenly by their digits.
fn numbers() -> impl Iterator<Item = f64> {
    let mut state = 0x2545_f491_4f6c_dd1d_u64;
    (0..20_000).map(move |_| {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        let exponent = 1023 - 25 + (state >> 52) % 40;
        black_box(f64::from_bits(
            state & 0x800f_ffff_ffff_ffff | exponent << 52,
        ))
    })
}

type Pair = (&'static str, fn(f64) -> f64, fn(f64) -> f64);
type SmallPair = (&'static str, fn(f32) -> f32, fn(f32) -> f32);

#[test]
fn functions_of_one_number() {
    let pairs: [Pair; 20] = [
        ("acos", |x| (x / 2e4).acos(), |x| libm::acos(x / 2e4)),
        ("asin", |x| (x / 2e4).asin(), |x| libm::asin(x / 2e4)),
        ("atan", f64::atan, libm::atan),
        ("cbrt", f64::cbrt, libm::cbrt),
        ("cos", f64::cos, libm::cos),
        ("cosh", f64::cosh, libm::cosh),
        ("exp", f64::exp, libm::exp),
        ("exp2", f64::exp2, libm::exp2),
        ("exp_m1", f64::exp_m1, libm::expm1),
        ("ln", |x| x.abs().ln(), |x| libm::log(x.abs())),
        ("ln_1p", |x| x.abs().ln_1p(), |x| libm::log1p(x.abs())),
        ("log10", |x| x.abs().log10(), |x| libm::log10(x.abs())),
        ("log2", |x| x.abs().log2(), |x| libm::log2(x.abs())),
        ("sin", f64::sin, libm::sin),
        ("sin_cos, sine", |x| x.sin_cos().0, libm::sin),
        ("sin_cos, cosine", |x| x.sin_cos().1, libm::cos),
        ("sinh", f64::sinh, libm::sinh),
        ("tan", f64::tan, libm::tan),
        ("tanh", f64::tanh, libm::tanh),
        ("tenth power", |x| 10_f64.powf(x), |x| libm::pow(10.0, x)),
    ];
    for (name, ours, theirs) in pairs {
        for x in numbers() {
            assert_eq!(ours(x).to_bits(), theirs(x).to_bits(), "{name} of {x:e}");
        }
    }
}

#[test]
fn functions_of_one_small_number() {
    let pairs: [SmallPair; 17] = [
        ("acos", |x| (x / 2e4).acos(), |x| libm::acosf(x / 2e4)),
        ("asin", |x| (x / 2e4).asin(), |x| libm::asinf(x / 2e4)),
        ("atan", f32::atan, libm::atanf),
        ("cbrt", f32::cbrt, libm::cbrtf),
        ("cos", f32::cos, libm::cosf),
        ("cosh", f32::cosh, libm::coshf),
        ("exp", f32::exp, libm::expf),
        ("exp2", f32::exp2, libm::exp2f),
        ("exp_m1", f32::exp_m1, libm::expm1f),
        ("ln", |x| x.abs().ln(), |x| libm::logf(x.abs())),
        ("ln_1p", |x| x.abs().ln_1p(), |x| libm::log1pf(x.abs())),
        ("log10", |x| x.abs().log10(), |x| libm::log10f(x.abs())),
        ("log2", |x| x.abs().log2(), |x| libm::log2f(x.abs())),
        ("sin", f32::sin, libm::sinf),
        ("sinh", f32::sinh, libm::sinhf),
        ("tan", f32::tan, libm::tanf),
        ("tanh", f32::tanh, libm::tanhf),
    ];
    for (name, ours, theirs) in pairs {
        for x in numbers().map(|x| x as f32) {
            assert_eq!(ours(x).to_bits(), theirs(x).to_bits(), "{name} of {x:e}");
        }
    }
}

#[test]
fn functions_of_two_numbers() {
    for (x, y) in numbers().zip(numbers().skip(1)) {
        let held = |name: &str, ours: f64, theirs: f64| {
            assert_eq!(ours.to_bits(), theirs.to_bits(), "{name} of {x:e}, {y:e}");
        };
        held("atan2", x.atan2(y), libm::atan2(x, y));
        held("hypot", x.hypot(y), libm::hypot(x, y));
        held("powf", x.abs().powf(y), libm::pow(x.abs(), y));
        let (x, y) = (x as f32, y as f32);
        let held = |name: &str, ours: f32, theirs: f32| {
            assert_eq!(ours.to_bits(), theirs.to_bits(), "{name} of {x:e}, {y:e}");
        };
        held("atan2", x.atan2(y), libm::atan2f(x, y));
        held("hypot", x.hypot(y), libm::hypotf(x, y));
        held("powf", x.abs().powf(y), libm::powf(x.abs(), y));
    }
}

/// Powers of ten as their names read: Rust's reader of numbers rounds correctly.
#[test]
fn powers_of_ten() {
    for n in -22..=22 {
        let read: f64 = format!("1e{n}").parse().unwrap();
        assert_eq!(simmerline_math::power_of_ten(n), read, "{n}");
        assert_eq!(simmerline_math::log10(read), f64::from(n), "{n}");
    }
}
