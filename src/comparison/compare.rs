//! All campaigns, and all pairs of them.

use super::departures::{Departure, departures};
use super::figures::{PairFigures, figures};
use super::gather::{refuse_baseline, refuse_incomparable, refuse_mixed};
use super::groups::{groups, largest_connected};
use super::pair::{Pair, family, find, weigh};
use super::standing::{Ranking, Standing};
use crate::error::Result;
use crate::procedure::Assessment;
use crate::procedure::cooking::pots::{START_C, TARGET_C, TimeRange, heating_time};
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
use crate::procedure::stated::{Stated, stated};

/// Load that heating times are given for, kg.
pub const HEATED_KG: f64 = 2.0;

/// Campaigns side by side.
#[derive(Debug, Clone)]
pub struct Comparison {
    /// In the order in which they were named.
    pub campaigns: Vec<Assessment>,
    /// Where each stands by its power.
    pub standings: Vec<Standing>,
    /// The campaigns by their power.
    pub ranking: Ranking,
    /// Ranks that cannot be told apart, as [`groups`] has them, of the most that can be held
    /// against each other, over others or straight; `None` with a baseline, which
    /// leaves most pairs unseen, and where there are too many to read.
    pub groups: Option<Vec<Vec<usize>>>,
    /// The campaign that all others are held against; `None`: each against each.
    pub baseline: Option<usize>,
    /// How each departs from the practice and limits of the first; empty where none does.
    pub departures: Vec<Vec<Departure>>,
    /// Pairs of which both have a rating.
    pub pairs: Vec<Pair>,
    /// Every pair, with the figures beside the rating.
    pub figures: Vec<PairFigures>,
    /// What each campaign states.
    pub stated: Vec<Vec<Stated>>,
    /// Air of all heating times, °C; `None` where there is nothing to heat.
    pub ambient_c: Option<f64>,
    /// Their target, °C.
    pub target_c: f64,
    /// Time to heat 2 kg from 20 °C at 700 W/m² by the heat balance; `None`: it does not get there,
    /// or has no rating that holds or no heat balance.
    pub heating: Vec<Option<TimeRange>>,
}

/// One campaign's figures less another's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ToldAs {
    /// Places of the one, and of the other that is taken from it.
    pub minuend: usize,
    pub subtrahend: usize,
    /// Turns what a pair's second has more than its first into that.
    pub sign: f64,
}

impl Comparison {
    /// Whether campaigns of different procedure or limits are compared.
    pub fn is_mixed(&self) -> bool {
        self.departures
            .iter()
            .any(|departures| !departures.is_empty())
    }

    /// Whether a rating that holds is only indicative.
    pub fn is_indicative(&self) -> bool {
        self.rated()
            .any(|place| self.standings[place].level.falls_short())
    }

    /// Places of the campaigns that have a rating that holds, in their order.
    pub fn rated(&self) -> impl Iterator<Item = usize> + '_ {
        let places = 0..self.campaigns.len();
        places.filter(|place| self.standings[*place].valid_power().is_some())
    }

    /// Which way round the differences of a pair are told, everywhere: with a baseline, what the
    /// other has more than it; else what the one of the better rank has more.
    pub fn told(&self, first: usize, second: usize) -> ToldAs {
        let rank = |place: usize| self.ranking.rank(place);
        let is_turned = match (self.baseline, rank(first), rank(second)) {
            (None, Some(first), Some(second)) => first < second,
            _ => false,
        };
        match is_turned {
            true => ToldAs {
                minuend: first,
                subtrahend: second,
                sign: -1.0,
            },
            false => ToldAs {
                minuend: second,
                subtrahend: first,
                sign: 1.0,
            },
        }
    }

    /// The pair of two ranks, however it was named, and the sign with which its differences are
    /// those of the one less the other; `None` where they were not compared.
    pub fn between(&self, one: usize, other: usize) -> Option<(&Pair, f64)> {
        let (one, other) = (self.ranking.ranked[one], self.ranking.ranked[other]);
        let straight = self.pair_of(other, one).map(|pair| (pair, 1.0));
        straight.or_else(|| self.pair_of(one, other).map(|pair| (pair, -1.0)))
    }

    /// The rating of two places; `None` where either has none.
    pub fn pair_of(&self, first: usize, second: usize) -> Option<&Pair> {
        find(&self.pairs, first, second)
    }
}

/// Compares campaigns, each with each or all with the baseline.
///
/// # Errors
/// [`crate::error::Error::Usage`] for campaigns that share no figure with another, with the same
/// readings, a baseline with which nothing can be compared, and, unless `allow_mixed`, campaigns
/// of different procedure or limits. One whose rating is physically impossible is let in as long
/// as two others can be compared.
pub fn compare(
    campaigns: Vec<Assessment>,
    baseline: Option<usize>,
    allow_mixed: bool,
) -> Result<Comparison> {
    let stated: Vec<Vec<Stated>> = campaigns.iter().map(stated).collect();
    refuse_incomparable(&campaigns, &stated)?;
    let departures = departures(&campaigns);
    if !allow_mixed {
        refuse_mixed(&campaigns)?;
    }
    refuse_baseline(&campaigns, &stated, baseline)?;
    let standings: Vec<Standing> = campaigns.iter().map(Standing::of).collect();
    let ranking = Ranking::of(&standings);
    // What is impossible is compared with nothing, unless it states figures that do not hang on
    // what is wrong.
    let has_figures = |place: &usize| !stated[*place].is_empty();
    let compared: Vec<usize> = (0..campaigns.len()).filter(has_figures).collect();
    let places = places(&compared, baseline);
    let pairs = rated_pairs(&campaigns, &standings, &places);
    let figures = figures(&campaigns, &stated, &places, &pairs);
    let groups = baseline
        .is_none()
        .then(|| told_groups(&ranking, &pairs))
        .flatten();
    let ambients: Vec<f64> = campaigns
        .iter()
        .filter_map(|one| Some(one.prospect.as_ref()?.cooking.ambient_c))
        .collect();
    let count = ambients.len() as f64;
    let ambient_c = (count > 0.0).then(|| ambients.iter().sum::<f64>() / count);
    let boiling_c = campaigns.iter().map(|one| one.tested.boiling_point_c);
    let target_c = boiling_c.fold(TARGET_C, f64::min);
    let heating = campaigns
        .iter()
        .zip(&standings)
        .map(|(one, standing)| {
            let ambient_c = ambient_c?;
            standing.valid_power()?;
            let balance = one.water_balance.as_ref()?;
            let power = balance.power_at(STANDARD_IRRADIANCE_W_M2);
            heating_time(
                &power,
                HEATED_KG,
                (START_C - ambient_c, target_c - ambient_c),
            )
        })
        .collect();
    Ok(Comparison {
        campaigns,
        standings,
        ranking,
        groups,
        baseline,
        departures,
        pairs,
        figures,
        stated,
        ambient_c,
        target_c,
        heating,
    })
}

/// The pairs: each with each, or each with the baseline, which is then the first.
fn places(compared: &[usize], baseline: Option<usize>) -> Vec<(usize, usize)> {
    match baseline {
        Some(base) => {
            let others = compared.iter().filter(|&&one| one != base);
            others.map(|&one| (base, one)).collect()
        }
        None => {
            let firsts = compared.iter().enumerate();
            firsts
                .flat_map(|(at, &one)| compared[at + 1..].iter().map(move |&two| (one, two)))
                .collect()
        }
    }
}

/// The pairs of which both have a rating that holds.
fn rated_pairs(
    campaigns: &[Assessment],
    standings: &[Standing],
    places: &[(usize, usize)],
) -> Vec<Pair> {
    let is_rated = |place: usize| standings[place].valid_power().is_some();
    let rated = places
        .iter()
        .filter(|(one, two)| is_rated(*one) && is_rated(*two));
    family(
        rated
            .filter_map(|&(first, second)| weigh(campaigns, first, second))
            .collect(),
    )
}

/// The groups of ranks that are not told apart, among those that are held against each other.
fn told_groups(ranking: &Ranking, pairs: &[Pair]) -> Option<Vec<Vec<usize>>> {
    let ranked = &ranking.ranked;
    let pair = |one: usize, two: usize| {
        let (one, two) = (ranked[one], ranked[two]);
        find(pairs, one.min(two), one.max(two))
    };
    let is_decided = |one: usize, two: usize| {
        let pair = pair(one, two).filter(|_| one != two);
        pair.is_some_and(|pair| pair.difference.decisive().is_some())
    };
    let held = largest_connected(ranked.len(), is_decided);
    let found = groups(held.len(), |one, two| {
        pair(held[one], held[two]).is_some_and(Pair::is_shown)
    })?;
    let ranks = |group: Vec<usize>| group.into_iter().map(|one| held[one]).collect();
    Some(found.into_iter().map(ranks).collect())
}
