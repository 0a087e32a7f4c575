//! What single points do to a line.

use super::line::Line;

/// What is left beside a point, 1 − h, that is rounding: the line needs that point.
const NO_REST: f64 = 1e-9;

/// What one point does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Influence {
    /// Cook's distance.
    pub distance: f64,
    /// The line at the place asked for, less the line there without the point.
    pub shift: f64,
}

/// Influence of each point on its line, and on the line read at `at`.
///
/// D = e²h/(2s²(1 − h)²) and shift = w e/(1 − h), with residual e, leverage h and weight w
/// of the point in the line at `at`. Where there is no scatter, nothing has influence.
///
/// # Source
/// Cook, Technometrics 19 (1977) 15–18.
pub fn influences(line: &Line, x: &[f64], y: &[f64], at: f64) -> Vec<Influence> {
    let variance = line.residual_sd * line.residual_sd;
    let of_point = |(&x, &y): (&f64, &f64)| {
        let (residual, leverage) = (y - line.predict(x), line.leverage(x));
        let rest = 1.0 - leverage;
        if variance <= 0.0 || rest <= NO_REST {
            return Influence {
                distance: 0.0,
                shift: 0.0,
            };
        }
        Influence {
            distance: residual * residual * leverage / (2.0 * variance * rest * rest),
            shift: line.weight(x, at) * residual / rest,
        }
    };
    x.iter().zip(y).map(of_point).collect()
}
