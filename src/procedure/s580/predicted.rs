//! What the line predicts for each run, from the irradiance and the air that were measured.

use super::intervals::Interval;
use super::limits::STANDARD_IRRADIANCE_W_M2;
use crate::physics::heating::Heating;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::run::Run;
use crate::stats::line::Line;
use simmerline_math::squared;

/// A run as the line predicts it: from the water's temperature at the start of its first
/// used interval to the end of its last one.
#[derive(Debug, Clone, PartialEq)]
pub struct Predicted {
    /// Pieces without a hole, each of (microseconds since 1970, °C); the first point of each
    /// is measured.
    pub pieces: Vec<Vec<(i64, f64)>>,
    /// Root mean square of predicted minus measured at the ends of the intervals, K.
    pub rms_k: f64,
}

/// Predicts one run; `None` if nothing of it is on the line.
///
/// In each interval dT/dt = (a + b (T − Ta)) · (G/700)/(m c), with the line's intercept a
/// (W) and slope b (W/K), and the interval's mean ambient Ta (°C) and irradiance G (W/m²).
/// Water gets no hotter than it boils.
pub fn predict_run(
    line: &Line,
    run: &Run,
    intervals: &[&Interval],
    boiling_point_c: f64,
) -> Option<Predicted> {
    let first = intervals
        .iter()
        .position(|interval| interval.is_on_line())?;
    let last = intervals
        .iter()
        .rposition(|interval| interval.is_on_line())?;
    let heat_capacity_j_per_k = run.plan.water_kg * SPECIFIC_HEAT_J_PER_KG_K;
    let mut pieces: Vec<Vec<(i64, f64)>> = Vec::new();
    let mut squares = Vec::new();
    let mut is_open = false;
    for (index, interval) in intervals.iter().enumerate().take(last + 1).skip(first) {
        let interval = &interval.measured;
        let (Some(ambient), Some(sun)) = (interval.ambient, interval.irradiance) else {
            is_open = false;
            continue;
        };
        let before = index.checked_sub(1).map(|before| intervals[before]);
        let follows =
            before.is_some_and(|before| before.measured.span.to_us == interval.span.from_us);
        if !(is_open && follows) {
            pieces.push(vec![(interval.span.from_us, interval.water_start_c)]);
            is_open = true;
        }
        let piece = pieces.last_mut().expect("a piece is open");
        let (_, from_c) = *piece.last().expect("a piece has its first point");
        let share = sun.mean / STANDARD_IRRADIANCE_W_M2;
        let heating = Heating {
            intercept_w: line.intercept * share,
            slope_w_per_k: line.slope * share,
            heat_capacity_j_per_k,
        };
        let to_k = heating.after_k(from_c - ambient.mean, interval.duration_s);
        let to_c = (ambient.mean + to_k).min(boiling_point_c);
        squares.push(squared(to_c - interval.water_end_c));
        piece.push((interval.span.to_us, to_c));
    }
    let mean = squares.iter().sum::<f64>() / squares.len() as f64;
    Some(Predicted {
        pieces,
        rms_k: mean.sqrt(),
    })
}
