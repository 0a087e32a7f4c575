//! Places on a page: points from its top left corner, and what moves them.

/// A box on a page, points from its top left corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

impl Place {
    pub const EVERYWHERE: Place = Place {
        left: f64::NEG_INFINITY,
        top: f64::NEG_INFINITY,
        right: f64::INFINITY,
        bottom: f64::INFINITY,
    };

    /// The smallest that holds some points; `None` without one.
    pub fn around(points: impl IntoIterator<Item = (f64, f64)>) -> Option<Place> {
        let mut points = points.into_iter();
        let (x, y) = points.next()?;
        let first = Place {
            left: x,
            top: y,
            right: x,
            bottom: y,
        };
        Some(points.fold(first, |place, (x, y)| Place {
            left: place.left.min(x),
            top: place.top.min(y),
            right: place.right.max(x),
            bottom: place.bottom.max(y),
        }))
    }

    /// What lies in both, of a negative size where nothing does.
    pub fn within(&self, other: &Place) -> Place {
        Place {
            left: self.left.max(other.left),
            top: self.top.max(other.top),
            right: self.right.min(other.right),
            bottom: self.bottom.min(other.bottom),
        }
    }

    pub fn with(&self, other: &Place) -> Place {
        Place {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    pub fn width(&self) -> f64 {
        self.right - self.left
    }

    pub fn height(&self) -> f64 {
        self.bottom - self.top
    }

    pub fn middle(&self) -> (f64, f64) {
        (
            (self.left + self.right) / 2.0,
            (self.top + self.bottom) / 2.0,
        )
    }

    pub fn holds(&self, (x, y): (f64, f64)) -> bool {
        x >= self.left && x <= self.right && y >= self.top && y <= self.bottom
    }
}

/// A transformation, as PDF writes it: x' = a x + c y + e, y' = b x + d y + f.
///
/// # Source
/// ISO 32000-1:2008, 8.3.3 and 8.3.4.
#[derive(Debug, Clone, Copy)]
pub struct Matrix(pub [f64; 6]);

impl Matrix {
    pub const NONE: Matrix = Matrix([1.0, 0.0, 0.0, 1.0, 0.0, 0.0]);

    /// This one, and `after` on what it gives.
    pub fn then(&self, after: &Matrix) -> Matrix {
        let ([a, b, c, d, e, f], [g, h, i, j, k, l]) = (self.0, after.0);
        Matrix([
            a * g + b * i,
            a * h + b * j,
            c * g + d * i,
            c * h + d * j,
            e * g + f * i + k,
            e * h + f * j + l,
        ])
    }

    pub fn of(&self, (x, y): (f64, f64)) -> (f64, f64) {
        let [a, b, c, d, e, f] = self.0;
        (a * x + c * y + e, b * x + d * y + f)
    }

    pub fn shifted(&self, x: f64, y: f64) -> Matrix {
        Matrix([1.0, 0.0, 0.0, 1.0, x, y]).then(self)
    }
}
