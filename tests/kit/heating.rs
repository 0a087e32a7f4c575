//! One clear day with the invented cooker: the water, the clock, and the rows of a log.

pub const AMBIENT_C: f64 = 26.0;
/// How fast the water follows, s.
pub const TIME_CONSTANT_S: f64 = 8600.0;

/// Water that starts at ambient and tends to 91 K above it.
pub fn water_c(after_s: f64) -> f64 {
    AMBIENT_C + 91.0 * (1.0 - simmerline_math::exp(-after_s / TIME_CONSTANT_S))
}

/// One row: so long after the start of a heating, which starts at 10:05 on `day` of April.
pub fn row_with(day: u32, after_s: u32, water: &str) -> String {
    let clock_s = 10 * 3600 + 5 * 60 + after_s;
    let (hour, minute, second) = (clock_s / 3600, clock_s / 60 % 60, clock_s % 60);
    format!(
        "2026-04-{day:02} {hour:02}:{minute:02}:{second:02},{water},{AMBIENT_C:.1},{},0.4",
        880 + day
    )
}
