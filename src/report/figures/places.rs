//! Where a label finds room in a chart: beside what it names, over nothing that is drawn.

/// From one place that is tried to the next, points.
const STEP_PT: f64 = 3.0;
/// What a square point of overlap weighs against a point of distance.
const OVERLAP_WEIGHT: f64 = 40.0;
/// The same of what another label covers: over a drawing a text can be read, over a text not.
const LABEL_WEIGHT: f64 = 10.0 * OVERLAP_WEIGHT;

/// A rectangle, points from the chart's left and top.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spot {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

impl Spot {
    /// One of half a size about a point.
    pub fn about((x, y): (f64, f64), half_pt: f64) -> Self {
        Spot {
            left: x - half_pt,
            top: y - half_pt,
            right: x + half_pt,
            bottom: y + half_pt,
        }
    }

    /// The point of it that is nearest to another.
    pub fn nearest(&self, (x, y): (f64, f64)) -> (f64, f64) {
        (
            x.clamp(self.left, self.right),
            y.clamp(self.top, self.bottom),
        )
    }

    /// How far a point lies outside it.
    pub fn distance(&self, point: (f64, f64)) -> f64 {
        let (x, y) = self.nearest(point);
        length((x - point.0, y - point.1))
    }

    /// The area that it shares with another, square points.
    fn overlap(&self, other: &Spot) -> f64 {
        let wide = self.right.min(other.right) - self.left.max(other.left);
        let high = self.bottom.min(other.bottom) - self.top.max(other.top);
        wide.max(0.0) * high.max(0.0)
    }
}

fn length((across, up): (f64, f64)) -> f64 {
    (across * across + up * up).sqrt()
}

/// Pieces of a step's length that a straight line consists of; at least one.
fn pieces(from: (f64, f64), to: (f64, f64)) -> usize {
    let far_pt = length((to.0 - from.0, to.1 - from.1));
    (far_pt / STEP_PT).ceil().max(1.0) as usize
}

/// The point of a straight line at a share of its length.
fn between(from: (f64, f64), to: (f64, f64), share: f64) -> (f64, f64) {
    let at = |one: f64, two: f64| one + share * (two - one);
    (at(from.0, to.0), at(from.1, to.1))
}

/// A chart, and what stands in it already.
pub struct Room {
    width_pt: f64,
    height_pt: f64,
    taken: Vec<Spot>,
    labels: Vec<Spot>,
}

impl Room {
    /// An empty chart.
    pub fn new(width_pt: f64, height_pt: f64) -> Self {
        Room {
            width_pt,
            height_pt,
            taken: Vec::new(),
            labels: Vec::new(),
        }
    }

    /// Keeps labels off a rectangle.
    pub fn take(&mut self, spot: Spot) {
        self.taken.push(spot);
    }

    /// Keeps labels off a straight line.
    pub fn take_line(&mut self, from: (f64, f64), to: (f64, f64)) {
        let steps = pieces(from, to);
        for step in 0..=steps {
            let point = between(from, to, step as f64 / steps as f64);
            self.take(Spot::about(point, STEP_PT / 2.0));
        }
    }

    /// How much of the other labels lies under what leads from a label to its target, square
    /// points.
    fn under_leader(&self, spot: &Spot, target: (f64, f64)) -> f64 {
        let from = spot.nearest(target);
        let steps = pieces(from, target);
        let covered = |step: usize| -> f64 {
            let piece = Spot::about(between(from, target, step as f64 / steps as f64), 0.5);
            self.labels.iter().map(|other| piece.overlap(other)).sum()
        };
        (0..=steps).map(covered).sum()
    }

    /// Keeps other labels off one.
    pub fn take_label(&mut self, spot: Spot) {
        self.labels.push(spot);
    }

    /// Where a label of a size covers least of what is there, leads over no other label, and of
    /// such places the one nearest to what it names; before it its cost: points of distance, and
    /// what it covers. The place is not taken yet.
    pub fn find(&self, target: (f64, f64), (wide_pt, high_pt): (f64, f64)) -> (f64, Spot) {
        let along = |room: f64, label: f64| {
            let last = ((room - label) / STEP_PT).max(0.0) as usize;
            (0..=last).map(|step| step as f64 * STEP_PT)
        };
        let mut near: Vec<(f64, usize, Spot)> = Vec::new();
        for left in along(self.width_pt, wide_pt) {
            for top in along(self.height_pt, high_pt) {
                let spot = Spot {
                    left,
                    top,
                    right: left + wide_pt,
                    bottom: top + high_pt,
                };
                near.push((spot.distance(target), near.len(), spot));
            }
        }
        // The nearest first: those that are farther away than the best costs are not looked at.
        near.sort_unstable_by(|one, two| one.0.total_cmp(&two.0).then(one.1.cmp(&two.1)));
        let mut best: Option<(f64, usize, Spot)> = None;
        for (distance, place, spot) in near {
            let covered =
                |others: &[Spot]| -> f64 { others.iter().map(|other| spot.overlap(other)).sum() };
            if best.is_some_and(|(least, ..)| distance > least) {
                break;
            }
            let cost = distance
                + OVERLAP_WEIGHT * covered(&self.taken)
                + LABEL_WEIGHT * (covered(&self.labels) + self.under_leader(&spot, target));
            // Of those that cost the same, the leftmost, and of these the topmost.
            if best.is_none_or(|(least, first, _)| cost < least || cost == least && place < first) {
                best = Some((cost, place, spot));
            }
        }
        best.map_or((0.0, Spot::about(target, 0.0)), |(cost, _, spot)| {
            (cost, spot)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Finds a place, and takes it.
    fn placed(room: &mut Room, target: (f64, f64), sizes: (f64, f64)) -> Spot {
        let (_, spot) = room.find(target, sizes);
        room.take_label(spot);
        spot
    }

    #[test]
    fn a_label_goes_where_nothing_is_and_stays_near() {
        let mut room = Room::new(200.0, 100.0);
        room.take_line((0.0, 0.0), (200.0, 100.0));
        let target = (100.0, 50.0);
        let first = placed(&mut room, target, (60.0, 10.0));
        let second = placed(&mut room, target, (60.0, 10.0));
        assert!(first.distance(target) < 12.0, "{first:?}");
        assert_eq!(first.overlap(&second), 0.0);
        for share in [0.0, 0.25, 0.5, 0.75, 1.0] {
            let on_line = Spot::about((200.0 * share, 100.0 * share), 1.0);
            assert_eq!(first.overlap(&on_line), 0.0);
        }
    }

    #[test]
    fn what_leads_to_a_label_crosses_no_other() {
        let mut room = Room::new(200.0, 100.0);
        let first = placed(&mut room, (100.0, 20.0), (60.0, 10.0));
        // All is drawn over but the top, so that what names the middle stands far from it.
        room.take(Spot {
            left: 0.0,
            top: 32.0,
            right: 200.0,
            bottom: 100.0,
        });
        let target = (100.0, 60.0);
        let second = placed(&mut room, target, (60.0, 10.0));
        let from = second.nearest(target);
        for place in 0..=100 {
            let point = between(from, target, f64::from(place) / 100.0);
            assert_eq!(Spot::about(point, 0.2).overlap(&first), 0.0, "{point:?}");
        }
    }

    #[test]
    fn a_label_covers_a_drawing_rather_than_another_label() {
        let mut room = Room::new(50.0, 24.0);
        // Drawn over several times, as a line of short pieces is.
        for _ in 0..3 {
            room.take(Spot::about((25.0, 5.0), 5.0));
        }
        let first = placed(&mut room, (25.0, 15.0), (50.0, 10.0));
        let second = placed(&mut room, (25.0, 15.0), (50.0, 10.0));
        assert_eq!(first.overlap(&second), 0.0);
    }

    #[test]
    fn a_label_stays_inside_though_nothing_is_free() {
        let mut room = Room::new(50.0, 20.0);
        room.take(Spot::about((25.0, 10.0), 60.0));
        let spot = placed(&mut room, (25.0, 10.0), (40.0, 10.0));
        assert!(
            spot.left >= 0.0 && spot.right <= 50.0 && spot.bottom <= 20.0,
            "{spot:?}"
        );
    }
}
