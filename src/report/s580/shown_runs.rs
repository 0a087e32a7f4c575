//! Which runs of a long campaign are shown one by one. The line, the tables for programs and all
//! results are of all of them.

use crate::campaign::wishes::RunsShown;
use crate::procedure::Assessment;

/// So many runs are all shown: twenty rows of three figures, six pages.
pub const ALL_SHOWN: usize = 60;
/// Of more runs, evenly spaced ones are shown, so many at most.
const SPACED: usize = 40;
/// Influential intervals that are named; the rest are counted.
pub const NAMED_INTERVALS: usize = 4;

/// The runs that are shown.
#[derive(Debug, PartialEq, Eq)]
pub struct ShownRuns {
    /// Their places, in order.
    pub places: Vec<usize>,
    /// One in so many is shown; `None`: all are.
    pub one_in: Option<usize>,
}

impl ShownRuns {
    /// Those of a campaign: all, where they are few or all are wished for; else evenly spaced
    /// ones, the last, and those of the influential intervals that are named.
    pub fn of(assessment: &Assessment) -> Self {
        let runs = assessment.tested.runs.len();
        let wish = assessment.tested.campaign.report.runs_shown;
        let uncertainty = assessment.s580.uncertainty();
        let influential = uncertainty.iter().flat_map(|one| &one.influential);
        let named = influential
            .take(NAMED_INTERVALS)
            .map(|one| assessment.s580.intervals[one.interval].run);
        ShownRuns::chosen(runs, wish, named)
    }

    fn chosen(runs: usize, wish: RunsShown, named: impl Iterator<Item = usize>) -> Self {
        if runs <= ALL_SHOWN || wish == RunsShown::All {
            return ShownRuns {
                places: (0..runs).collect(),
                one_in: None,
            };
        }
        let one_in = runs.div_ceil(SPACED);
        let spaced = (0..runs).step_by(one_in);
        let mut places: Vec<usize> = spaced.chain([runs - 1]).chain(named).collect();
        places.sort_unstable();
        places.dedup();
        ShownRuns {
            places,
            one_in: Some(one_in),
        }
    }

    /// Whether a run is shown.
    pub fn has(&self, place: usize) -> bool {
        self.places.binary_search(&place).is_ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_many_runs_some_are_shown_from_the_first_to_the_last() {
        let chosen = |runs, wish| ShownRuns::chosen(runs, wish, [7, 200, 7].into_iter());
        assert_eq!(chosen(60, RunsShown::Some).places.len(), 60);
        assert_eq!(chosen(60, RunsShown::Some).one_in, None);
        assert_eq!(chosen(2_000, RunsShown::All).places.len(), 2_000);
        let year = chosen(365, RunsShown::Some);
        assert_eq!(year.one_in, Some(10));
        // 0, 10 … 360 and 364, 7; 200 is among them.
        assert_eq!(year.places.len(), 37 + 2);
        assert_eq!(year.places[..3], [0, 7, 10]);
        assert_eq!(year.places.last(), Some(&364));
        assert!(year.has(364) && !year.has(363));
        for runs in 61..2_000 {
            let most = SPACED + 1 + NAMED_INTERVALS;
            assert!(chosen(runs, RunsShown::Some).places.len() <= most, "{runs}");
        }
    }
}
