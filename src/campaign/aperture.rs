//! Intercept area of a cooker from the shape of its aperture.

use simmerline_math::{cos, sin};
use std::f64::consts::{PI, TAU};

use crate::language::{Message, metres, short};
use crate::message;

/// Outline of the aperture, lengths in metres.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A disc.
    Circle {
        /// Diameter, m.
        diameter_m: f64,
    },
    /// A rectangle.
    Rectangle {
        /// Width, m.
        width_m: f64,
        /// Height, m.
        height_m: f64,
    },
    /// A polygon with equal sides and angles.
    RegularPolygon {
        /// Number of sides, 3 or more.
        sides: u32,
        /// Diameter of the circle through the corners, m.
        across_corners_m: f64,
    },
    /// Any outline that does not cross itself: its corners in order, m.
    Outline {
        /// Corners as (x, y), m, at least three.
        points_m: Vec<[f64; 2]>,
    },
}

impl Shape {
    /// Area inside the outline, m².
    ///
    /// Circle π d²/4; rectangle w·h; regular polygon with n sides in a circle of
    /// diameter d: n/2 · (d/2)² · sin(2π/n); outline: half the absolute value of
    /// Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ).
    ///
    /// ```
    /// use simmerline::campaign::aperture::Shape;
    /// let square = Shape::RegularPolygon { sides: 4, across_corners_m: 2.0 };
    /// assert!((square.area_m2() - 2.0).abs() < 1e-12);
    /// ```
    ///
    /// # Source
    /// Elementary geometry; the outline by the surveyor's (shoelace) formula.
    pub fn area_m2(&self) -> f64 {
        match self {
            Shape::Circle { diameter_m } => PI * diameter_m * diameter_m / 4.0,
            Shape::Rectangle { width_m, height_m } => width_m * height_m,
            Shape::RegularPolygon {
                sides,
                across_corners_m,
            } => {
                let n = f64::from(*sides);
                let radius_m = across_corners_m / 2.0;
                n / 2.0 * radius_m * radius_m * sin(TAU / n)
            }
            Shape::Outline { points_m } => {
                let next = points_m.iter().cycle().skip(1);
                let twice: f64 = points_m
                    .iter()
                    .zip(next)
                    .map(|([x, y], [x_next, y_next])| x * y_next - x_next * y)
                    .sum();
                twice.abs() / 2.0
            }
        }
    }

    /// The shape in words, for the report.
    pub fn describe(&self) -> Message {
        match self {
            Shape::Circle { diameter_m } => {
                message!("aperture-circle", diameter = metres(short(*diameter_m)))
            }
            Shape::Rectangle { width_m, height_m } => message!(
                "aperture-rectangle",
                width = metres(short(*width_m)),
                height = metres(short(*height_m))
            ),
            Shape::RegularPolygon {
                sides,
                across_corners_m,
            } => message!(
                "aperture-regular-polygon",
                sides = *sides as usize,
                across = metres(short(*across_corners_m))
            ),
            Shape::Outline { points_m } => message!("aperture-outline", points = points_m.len()),
        }
    }
}

/// Intercept area, m²: the aperture's area projected on the plane normal to the
/// beam, A cos θ, with θ the angle between beam and aperture normal, degrees.
pub fn intercept_area_m2(shape: &Shape, incidence_deg: f64) -> f64 {
    shape.area_m2() * cos(incidence_deg.to_radians())
}

/// Whether two sides of a closed outline cross.
pub fn crosses_itself(points_m: &[[f64; 2]]) -> bool {
    let n = points_m.len();
    let side = |i: usize| (points_m[i], points_m[(i + 1) % n]);
    (0..n).any(|i| {
        (i + 1..n)
            .filter(|&j| j != i + 1 && (j + 1) % n != i)
            .any(|j| sides_cross(side(i), side(j)))
    })
}

type Side = ([f64; 2], [f64; 2]);

fn sides_cross((a, b): Side, (c, d): Side) -> bool {
    let turn = |p: [f64; 2], q: [f64; 2], r: [f64; 2]| {
        (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    };
    turn(a, b, c) * turn(a, b, d) < 0.0 && turn(c, d, a) * turn(c, d, b) < 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn outline_of_a_rectangle_has_its_area_in_either_direction() {
        let mut points_m = vec![[0.0, 0.0], [1.2, 0.0], [1.2, 0.5], [0.0, 0.5]];
        let forward = Shape::Outline {
            points_m: points_m.clone(),
        };
        assert!((forward.area_m2() - 0.6).abs() < 1e-12);
        points_m.reverse();
        assert!((Shape::Outline { points_m }.area_m2() - 0.6).abs() < 1e-12);
    }

    #[test]
    fn polygon_with_many_sides_tends_to_the_circle() {
        let polygon = Shape::RegularPolygon {
            sides: 100_000,
            across_corners_m: 1.3,
        };
        let circle = Shape::Circle { diameter_m: 1.3 };
        assert!((polygon.area_m2() - circle.area_m2()).abs() < 1e-8);
    }

    #[test]
    fn incidence_of_sixty_degrees_halves_the_area() {
        let square = Shape::Rectangle {
            width_m: 1.0,
            height_m: 1.0,
        };
        assert!((intercept_area_m2(&square, 60.0) - 0.5).abs() < 1e-12);
    }

    #[test]
    fn bow_tie_crosses_itself_and_a_square_does_not() {
        assert!(crosses_itself(&[
            [0.0, 0.0],
            [1.0, 1.0],
            [1.0, 0.0],
            [0.0, 1.0]
        ]));
        assert!(!crosses_itself(&[
            [0.0, 0.0],
            [1.0, 0.0],
            [1.0, 1.0],
            [0.0, 1.0]
        ]));
    }
}
