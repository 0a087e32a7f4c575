//! Rows out of order: slips that are sorted, and clocks that were put back.

/// Stretches of rows in order of time. Rows out of order are sorted; but a clock that was
/// put back, or two logs in one file, would be interleaved by that.
#[derive(Default)]
pub struct Stretches {
    /// Line and row on which each begins.
    begins: Vec<(u64, usize)>,
    rows: usize,
    last_us: i64,
    /// So many stretches that the rows are in no order at all.
    is_disorder: bool,
}

/// More stretches than this are rows in no order. Common practice, no published source.
const MOST_STRETCHES: usize = 4;

impl Stretches {
    /// Takes the next row.
    pub fn see(&mut self, line: u64, time_us: i64) {
        if self.rows == 0 || time_us < self.last_us {
            self.is_disorder |= self.begins.len() == MOST_STRETCHES;
            if !self.is_disorder {
                self.begins.push((line, self.rows));
            }
        }
        self.rows += 1;
        self.last_us = time_us;
    }

    /// The line on which a stretch begins whose rows lie in several places between those
    /// of a stretch before. Rows that are there already, and a block that fills one hole,
    /// are no fault.
    pub fn interleaved(&self, time_us: &[i64]) -> Option<u64> {
        if self.is_disorder {
            return None;
        }
        let ends = self.begins.iter().skip(1).map(|begin| begin.1);
        let ends: Vec<usize> = ends.chain(std::iter::once(self.rows)).collect();
        let stretch = |index: usize| &time_us[self.begins[index].1..ends[index]];
        let pairs =
            (0..ends.len()).flat_map(|later| (0..later).map(move |earlier| (earlier, later)));
        let mut meeting = pairs.filter(|&(earlier, later)| {
            let mut places = places(stretch(earlier), stretch(later));
            places.dedup();
            places.len() > 1
        });
        meeting.next().map(|(_, later)| self.begins[later].0)
    }
}

/// Between which rows of one stretch the rows of another lie, where they lie inside it.
fn places(earlier: &[i64], later: &[i64]) -> Vec<usize> {
    let inside = later
        .iter()
        .filter_map(|time| earlier.binary_search(time).err());
    inside
        .filter(|place| (1..earlier.len()).contains(place))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn interleaved(time_us: &[i64]) -> Option<u64> {
        let mut stretches = Stretches::default();
        for (line, time_us) in (1..).zip(time_us) {
            stretches.see(line, *time_us);
        }
        stretches.interleaved(time_us)
    }

    #[test]
    fn a_slip_is_sorted_and_a_clock_put_back_is_not() {
        assert_eq!(interleaved(&[0, 10, 40, 20, 30, 50]), None);
        assert_eq!(interleaved(&[0, 10, 20, 30, 20, 30, 40]), None);
        assert_eq!(interleaved(&[50, 40, 30, 20, 10, 0]), None);
        assert_eq!(interleaved(&[0, 10, 20, 30, 5, 15, 25]), Some(5));
    }
}
