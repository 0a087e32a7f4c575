//! A run that is not of this cooker, by its powers.

use crate::language::{Message, fixed};
use crate::message;
use crate::procedure::s580::S580;
use crate::procedure::tested::Tested;
use crate::stats::line::fit_line;
use crate::stats::student::two_sided_p;
use simmerline_math::{ln, squared};

/// Fewest intervals of a run that is doubted, and of one that tells how far runs differ.
const LEAST_OF_DOUBTED: usize = 3;
const LEAST_OF_OTHERS: usize = 2;
/// Fewest other runs.
const LEAST_OTHERS: usize = 2;
/// How far runs of one cooker differ in power, as a standard deviation of its logarithm, before
/// any is seen, and for how many degrees of freedom that counts: wind, aim and sky differ by day.
/// Common practice, no published source.
const USUAL_DIFFERENCE: f64 = 0.10;
const USUAL_FREEDOM: f64 = 8.0;
/// Chance at which some run of a campaign is doubted though all are of one cooker, in theory.
const FALSE_ALARM: f64 = 0.003;
/// A power less far off than this is never doubted, as the logarithm of its share: 0.70 or 1.42.
const LEAST_DIFFERENCE: f64 = 0.35;
/// Where the line of the others has so little of its power left, a share of it says nothing.
const LEAST_SHARE_OF_LINE: f64 = 0.2;
/// Smallest share of which a logarithm is taken: a load that does not heat at all.
const LEAST_SHARE: f64 = 0.01;
/// So far beyond the temperature differences of the others a run is held against their line, K.
const BEYOND_K: f64 = 5.0;

/// A run that heats by far more or less than all others together would have it.
#[derive(Debug, Clone, PartialEq)]
pub struct OddRun {
    pub log: String,
    /// Its power over that of the line of all others.
    pub share: f64,
    /// Runs that it was held against.
    pub others: usize,
}

/// Temperature differences (K) and standardised powers (W) of a run's used intervals.
type Points = Vec<(f64, f64)>;

/// The run whose power is most unlike that of all others, where it is too far off to be of the
/// same cooker, or of the same load.
///
/// With the line through all runs but one, that one's share is its power over the line's at its
/// own temperature differences. The shares of the other runs, each against the rest, say how far
/// runs differ from day to day, pooled with what is usual: few runs do not tell. Then
/// t = ln(share)/(s √(1 + 1/k)) for k others; the level counts for all runs together.
///
/// # Source
/// Deleted residuals: Cook and Weisberg, Residuals and Influence in Regression, 1982, 2.2.
/// A variance pooled with a usual one: Smyth 2004, Statistical Applications in Genetics and
/// Molecular Biology 3(1), article 3 (both from memory). False alarms and what is found are
/// measured in `tests/simulation/slips.rs`.
pub fn odd_run(tested: &Tested, s580: &S580) -> Option<OddRun> {
    let points = |run: usize| -> Points {
        let on_line = s580.intervals_of(run).filter(|one| one.is_on_line());
        on_line.filter_map(|interval| interval.point()).collect()
    };
    let runs = (0..tested.runs.len()).map(|run| (run, points(run)));
    let runs: Vec<(usize, Points)> = runs
        .filter(|(_, points)| points.len() >= LEAST_OF_OTHERS)
        .collect();
    let all: Vec<&Points> = runs.iter().map(|(_, points)| points).collect();
    let (place, share) = most_odd(&all)?;
    let log = tested.runs[runs[place].0].plan.label.clone();
    Some(OddRun {
        log,
        share,
        others: all.len() - 1,
    })
}

/// Place and share of the run that is most odd among some, if it is too odd.
fn most_odd(runs: &[&Points]) -> Option<(usize, f64)> {
    if runs.len() <= LEAST_OTHERS {
        return None;
    }
    let shares = (0..runs.len()).filter_map(|one| {
        let share = share_of_line(runs[one], &without(runs, one))?;
        Some((one, share))
    });
    let doubted = shares.filter(|(one, _)| runs[*one].len() >= LEAST_OF_DOUBTED);
    let (one, share) = doubted.max_by(|(_, one), (_, other)| {
        let off = |share: f64| logarithm(share).abs();
        off(*one).total_cmp(&off(*other))
    })?;
    let others = without(runs, one);
    let differences = (0..others.len())
        .filter_map(|other| share_of_line(others[other], &without(&others, other)));
    let squares: Vec<f64> = differences.map(|share| squared(logarithm(share))).collect();
    if squares.len() < LEAST_OTHERS {
        return None;
    }
    let count = squares.len() as f64;
    let freedom = USUAL_FREEDOM + count - 1.0;
    let seen = squares.iter().sum::<f64>() / count * (count - 1.0);
    let variance = (USUAL_FREEDOM * squared(USUAL_DIFFERENCE) + seen) / freedom;
    let t = logarithm(share) / (variance * (1.0 + 1.0 / count)).sqrt();
    let is_odd = logarithm(share).abs() > LEAST_DIFFERENCE
        && two_sided_p(t, freedom) < FALSE_ALARM / runs.len() as f64;
    is_odd.then_some((one, share))
}

/// All but one.
fn without<'p>(runs: &[&'p Points], one: usize) -> Vec<&'p Points> {
    let all = runs.iter().enumerate();
    all.filter(|(place, _)| *place != one)
        .map(|(_, points)| *points)
        .collect()
}

/// Power of a run over that of the line through others; `None` where these have no line there.
fn share_of_line(run: &Points, others: &[&Points]) -> Option<f64> {
    let (x, y): (Vec<f64>, Vec<f64>) = others.iter().copied().flatten().copied().unzip();
    let line = fit_line(&x, &y)?;
    let count = run.len() as f64;
    let mean_k = run.iter().map(|point| point.0).sum::<f64>() / count;
    let (lowest_k, highest_k) = line.x_range;
    let expected_w = run.iter().map(|point| line.predict(point.0)).sum::<f64>() / count;
    let found_w = run.iter().map(|point| point.1).sum::<f64>() / count;
    let is_told = (lowest_k - BEYOND_K..=highest_k + BEYOND_K).contains(&mean_k)
        && expected_w > LEAST_SHARE_OF_LINE * line.intercept
        && expected_w > 0.0;
    is_told.then(|| found_w / expected_w)
}

/// Of a share that may be none or less.
fn logarithm(share: f64) -> f64 {
    ln(share.max(LEAST_SHARE))
}

impl OddRun {
    /// Whether its power times a factor would be no odd one.
    pub fn is_mended_by(&self, factor: f64) -> bool {
        logarithm(factor * self.share).abs() <= LEAST_DIFFERENCE
    }

    /// What it says.
    pub fn message(&self) -> Message {
        message!(
            "notice-odd-run",
            log = &self.log,
            share = fixed(self.share.max(0.0) * 100.0, 0),
            others = self.others
        )
    }
}
