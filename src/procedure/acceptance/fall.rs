//! How gain may fall with the angle between sun and axis.

use simmerline_math::{exp, ln, squared};

/// Share of the gain that is left where the sun stands off the axis by the acceptance half
/// angle. That a tenth is lost is how acceptance angles of concentrators are often stated
/// (Benítez and others, Optics Express 18 (2010) A25–A40, from memory); other limits are in use.
pub const LEFT_AT_HALF_ANGLE: f64 = 0.9;

/// How steep the fall is: f = 0.9^(x^n) at x times the half angle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// n = 1: from the axis on.
    Peak,
    /// n = 2: a bell.
    Bell,
    /// n = 4: flat around the axis.
    Plateau,
    /// n = 8: all but an edge.
    Edge,
}

impl Shape {
    /// All that are tried.
    pub const ALL: &[Shape] = &[Shape::Peak, Shape::Bell, Shape::Plateau, Shape::Edge];

    /// Share of the gain on the axis at an angle (degrees).
    ///
    /// `per_deg2` is 1/θa², 1/degree². It may be negative, which means a gain that rises with the
    /// angle as it would fall: an estimate of none has to be free to lie on either side of it.
    ///
    /// ```
    /// use simmerline::procedure::acceptance::fall::Shape;
    /// for shape in Shape::ALL {
    ///     assert!((shape.share_left(8.0, 1.0 / 64.0) - 0.9).abs() < 1e-12);
    ///     assert_eq!(shape.share_left(0.0, 1.0), 1.0);
    /// }
    /// assert!((Shape::Bell.share_left(4.0, 1.0 / 4.0) - 0.9_f64.powi(4)).abs() < 1e-12);
    /// ```
    ///
    /// # Source
    /// Common practice, no published source: optics fall off in ways of their own, and these are
    /// from one that peaks to one with an edge.
    pub fn share_left(self, angle_deg: f64, per_deg2: f64) -> f64 {
        let square = squared(angle_deg) * per_deg2.abs();
        let power = match self {
            Shape::Peak => square.sqrt(),
            Shape::Bell => square,
            Shape::Plateau => squared(square),
            Shape::Edge => squared(squared(square)),
        };
        exp(ln(LEFT_AT_HALF_ANGLE) * per_deg2.signum() * power.min(MOST_POWER))
    }
}

/// Beyond this nothing is left, and a rise would have no bound.
const MOST_POWER: f64 = 100.0;
