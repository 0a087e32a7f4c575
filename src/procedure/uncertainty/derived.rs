//! A figure that a formula gives from a few readings, and how sure it is.

use jiff::civil::Date;
use rand_distr::{ChiSquared, Distribution};
use simmerline_math::hypot;

use super::budget::{Budget, MOST_FREEDOM, Origin, coverage_factor, expanded, freedom_of};
use super::figure::Figure;
use super::shift::Shift;
use super::trials::{DIGITS, FINER, MOST_TRIALS, MonteCarlo, Places, SEED};
use crate::procedure::sources::{CommonError, Source};
use crate::stats::monte_carlo::{BLOCK, Generator, Outcome, Plan, normal, propagate, tolerance};
use crate::stats::two::jackknife_variance;

/// Readings that are off, and what of them does not count.
#[derive(Debug, Clone, Copy)]
pub struct Off {
    pub shift: Shift,
    /// One day of one group is left out.
    pub without: Option<(usize, Date)>,
}

impl Off {
    /// Readings as they are, all of them.
    pub const NONE: Off = Off {
        shift: Shift::NONE,
        without: None,
    };

    /// Whether a day of a group counts.
    pub fn counts(&self, group: usize, date: Date) -> bool {
        self.without != Some((group, date))
    }
}

/// Runs of one kind that a figure rests on, such as all dry ones.
#[derive(Debug, Clone, PartialEq)]
pub struct Group {
    /// Local dates, in order, none twice.
    pub dates: Vec<Date>,
    /// What the errors of its single readings give the figure, one standard uncertainty, in the
    /// figure's unit.
    pub of_readings: f64,
}

impl Group {
    /// Some dates, in any order, and what single readings give.
    pub fn new(dates: impl IntoIterator<Item = Date>, of_readings: f64) -> Group {
        let mut dates: Vec<Date> = dates.into_iter().collect();
        dates.sort_unstable();
        dates.dedup();
        Group { dates, of_readings }
    }
}

/// A figure with all that makes it unsure.
#[derive(Debug, Clone, PartialEq)]
pub struct Derived {
    pub figure: Figure,
    pub budget: Budget,
    /// Some group has one day alone: what another day would do is not in it.
    pub is_of_one_day: bool,
}

/// Why there is no figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Missing {
    /// The formula has none.
    Value,
    /// It has a value, and its uncertainty has no end on one side.
    End(f64),
}

/// A figure by a formula of readings that may be off.
///
/// `formula` gives the figure for some errors; each common error is tried one standard
/// uncertainty up and down, and each day of a group that has several is left out in turn. What
/// days and single readings give a group, the wider counts. The draws go through the formula as
/// a whole, and where they reach further their end is the interval's.
///
/// # Errors
/// [`Missing`] where the formula has no value for the readings as they are, or none within what
/// they may be off by.
///
/// # Source
/// JCGM 100:2008, 5.1.3, sensitivities by differences; JCGM 101:2008, 7, draws; days by the
/// jackknife, as for the heat balance.
pub fn derive(
    groups: &[Group],
    common: &[CommonError],
    formula: impl Fn(&Off) -> Option<f64> + Sync,
) -> Result<Derived, Missing> {
    let Prepared { budget, statistics } = prepare(groups, common, &formula)?;
    let drawn = draw(&budget, &statistics, common, &formula);
    let has_ends =
        |drawn: &MonteCarlo| drawn.outcome.lower.is_finite() && drawn.outcome.upper.is_finite();
    if drawn.is_some_and(|drawn| !has_ends(&drawn)) {
        return Err(Missing::End(budget.value));
    }
    Ok(Derived {
        figure: Figure::of(&budget, drawn.as_ref()),
        budget,
        is_of_one_day: are_of_one_day(groups),
    })
}

/// The same without draws, for a formula that takes long.
///
/// # Errors
/// As [`derive()`].
pub fn derive_by_budget(
    groups: &[Group],
    common: &[CommonError],
    formula: impl Fn(&Off) -> Option<f64>,
) -> Result<Derived, Missing> {
    let Prepared { budget, .. } = prepare(groups, common, &formula)?;
    Ok(Derived {
        figure: Figure::of(&budget, None),
        budget,
        is_of_one_day: are_of_one_day(groups),
    })
}

fn are_of_one_day(groups: &[Group]) -> bool {
    groups.iter().any(|group| group.dates.len() < 2)
}

struct Prepared {
    budget: Budget,
    statistics: Vec<Statistic>,
}

fn prepare(
    groups: &[Group],
    common: &[CommonError],
    formula: &impl Fn(&Off) -> Option<f64>,
) -> Result<Prepared, Missing> {
    let value = formula(&Off::NONE).ok_or(Missing::Value)?;
    let no_end = || Missing::End(value);
    let statistics: Option<Vec<Statistic>> = groups
        .iter()
        .enumerate()
        .map(|(group, of)| Statistic::of(group, of, formula))
        .collect();
    let statistics = statistics.ok_or_else(no_end)?;
    let effects: Option<Vec<(CommonError, f64)>> = common
        .iter()
        .map(|error| Some((error.clone(), effect(error, formula)?)))
        .collect();
    let effects = effects.ok_or_else(no_end)?.into_iter();
    let (origin, standard, freedom) = together(&statistics);
    let budget = Budget::new(
        value,
        (origin, standard),
        freedom,
        effects.filter(|(_, effect)| *effect != 0.0),
    );
    Ok(Prepared { budget, statistics })
}

/// What days and readings of one group give.
struct Statistic {
    origin: Origin,
    standard: f64,
    freedom: f64,
}

impl Statistic {
    /// `None` where the formula fails without one of the days.
    fn of(group: usize, of: &Group, formula: &impl Fn(&Off) -> Option<f64>) -> Option<Statistic> {
        let of_readings = Statistic {
            origin: Origin::ReadingNoise,
            standard: of.of_readings.abs(),
            freedom: MOST_FREEDOM,
        };
        if of.dates.len() < 2 {
            return Some(of_readings);
        }
        let without: Option<Vec<f64>> = of
            .dates
            .iter()
            .map(|date| {
                formula(&Off {
                    without: Some((group, *date)),
                    ..Off::NONE
                })
            })
            .collect();
        let of_days = Statistic {
            origin: Origin::Days,
            standard: jackknife_variance(&without?).sqrt(),
            freedom: of.dates.len() as f64 - 1.0,
        };
        let is_wider = of_days.reach() > of_readings.reach();
        Some(if is_wider { of_days } else { of_readings })
    }

    fn reach(&self) -> f64 {
        coverage_factor(self.freedom) * self.standard
    }
}

/// The groups together: what gives most, their standard uncertainty, and the degrees of freedom
/// with which it reaches as far as theirs do.
fn together(statistics: &[Statistic]) -> (Origin, f64, f64) {
    let widest = statistics
        .iter()
        .max_by(|one, two| one.reach().total_cmp(&two.reach()));
    let origin = widest.map_or(Origin::ReadingNoise, |one| one.origin.clone());
    let standard = statistics
        .iter()
        .fold(0.0, |sum: f64, one| hypot(sum, one.standard));
    let parts: Vec<(f64, f64)> = statistics
        .iter()
        .map(|one| (one.standard, one.freedom))
        .collect();
    if standard == 0.0 {
        return (origin, 0.0, MOST_FREEDOM);
    }
    let freedom = freedom_of(expanded(&parts, 0.0) / standard);
    (origin, standard, freedom)
}

/// What one standard uncertainty of an error gives the figure; `None` where the formula fails
/// on either side.
fn effect(error: &CommonError, formula: &impl Fn(&Off) -> Option<f64>) -> Option<f64> {
    let size = error.standard.size();
    let at = |size: f64| {
        formula(&Off {
            shift: Shift::of(error.source, size),
            ..Off::NONE
        })
    };
    Some((at(size)? - at(-size)?) / 2.0)
}

/// The figure by drawing; `None` where nothing is uncertain. A draw for which the formula has no
/// value counts as beyond every value.
fn draw(
    budget: &Budget,
    statistics: &[Statistic],
    common: &[CommonError],
    formula: &(impl Fn(&Off) -> Option<f64> + Sync),
) -> Option<MonteCarlo> {
    if budget.combined <= 0.0 {
        return None;
    }
    let tolerance = tolerance(budget.combined, DIGITS);
    let plan = Plan {
        seed: SEED,
        tolerance: [tolerance / FINER],
        block: BLOCK,
        most_trials: MOST_TRIALS,
    };
    let places = Places::of(common.iter());
    let spreads: Vec<(f64, f64, ChiSquared<f64>)> = statistics
        .iter()
        .filter(|one| one.standard > 0.0)
        .filter_map(|one| {
            let chi = ChiSquared::new(one.freedom).ok()?;
            Some((one.standard, one.freedom, chi))
        })
        .collect();
    let [outcome]: [Outcome; 1] = propagate(plan, || {
        let (places, spreads) = (&places, &spreads);
        let mut drawn = vec![0.0; common.len()];
        move |generator: &mut Generator| {
            let shift = places.draw(&mut drawn, generator);
            let off = Off { shift, ..Off::NONE };
            let at = formula(&off).unwrap_or(f64::INFINITY);
            let scatter: f64 = spreads
                .iter()
                .map(|(standard, freedom, chi)| {
                    let scale = (freedom / chi.sample(generator)).sqrt();
                    standard * scale * normal(generator)
                })
                .sum();
            [at + scatter]
        }
    });
    let interval = budget.interval();
    let lower = (interval.lower - outcome.lower).abs();
    Some(MonteCarlo {
        sd: None,
        outcome,
        tolerance,
        apart: lower.max((interval.upper - outcome.upper).abs()),
    })
}

/// The errors of some sources.
pub fn of_sources(errors: &[CommonError], sources: impl Fn(Source) -> bool) -> Vec<CommonError> {
    let errors = errors.iter();
    errors
        .filter(|error| sources(error.source))
        .cloned()
        .collect()
}
