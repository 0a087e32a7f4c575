//! Every figure beside the rating that two campaigns both state, the second held against the
//! first.

use jiff::civil::Date;
use simmerline_math::{hypot, squared};

use super::alike::{Unlike, Vessels, is_of_vessels, unlike, vessels};
use super::effects::{common, effects_of};
use super::pair::{Pair, find as find_pair};
use super::places::{is_one_estimate, is_one_site};
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::procedure::stated::{FigureKey, Stated};
use crate::procedure::uncertainty::budget::freedom_of;
use crate::procedure::uncertainty::{Budget, expanded};
use crate::procedure::{Assessment, Run};
use crate::stats::holm::holm;
use crate::stats::student::two_sided_p;

/// The figures of two campaigns.
#[derive(Debug, Clone, PartialEq)]
pub struct PairFigures {
    /// Places among the campaigns compared.
    pub first: usize,
    pub second: usize,
    /// What estimates of irradiance are off by is one error in both.
    pub is_one_sky: bool,
    /// In the order of [`FigureKey::ALL`].
    pub figures: Vec<FigurePair>,
}

/// One figure of two campaigns.
#[derive(Debug, Clone, PartialEq)]
pub struct FigurePair {
    pub key: FigureKey,
    pub first: Stated,
    pub second: Stated,
    /// The difference, or why there is none.
    pub told: Result<Told, Unlike>,
    /// It is of the vessels too, and not enough is stated of these to know them alike.
    pub has_unknown_vessels: bool,
}

impl FigurePair {
    /// Whether what another day would do is missing in either.
    pub fn is_of_one_day(&self) -> bool {
        self.first.is_of_one_day || self.second.is_of_one_day
    }

    /// Whether the conditions of either were not those of its procedure.
    pub fn is_indicative(&self) -> bool {
        self.first.is_indicative || self.second.is_indicative
    }

    /// Whether the difference is there, however many pairs were looked at. On a single day it
    /// could be the day's.
    pub fn is_told_apart(&self) -> bool {
        let is_told = |told: &Told| told.p_corrected < SHOWN_P;
        self.told.as_ref().is_ok_and(is_told) && !self.is_of_one_day()
    }
}

/// A figure of the second less that of the first, in the unit of the result.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    pub value: f64,
    pub standard_uncertainty: f64,
    /// Half-width of the 95 % interval.
    pub expanded: f64,
    /// Probability of so large a difference if there is none.
    pub p: f64,
}

/// The same as one of several pairs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Told {
    pub held: Held,
    /// Corrected by Holm for the pairs that this figure is compared in.
    pub p_corrected: f64,
}

impl Told {
    /// The 95 % interval of the difference.
    pub fn interval(&self) -> [f64; 2] {
        let Held {
            value, expanded, ..
        } = self.held;
        [value - expanded, value + expanded]
    }
}

/// Holds a figure against another: scatter and days of each add, each with its own degrees of
/// freedom; errors of one identity are one error and subtract with their signs. What the
/// interval of either figure reaches beyond its budget widens that of the difference, in
/// squares. What one day does to both is not taken out.
///
/// # Source
/// JCGM 100:2008, 5.2.2 and F.1.2.3. DIFFERENCE: [`expanded`] in place of G.4.1.
pub fn hold([first, second]: [&Budget; 2], beyond: [f64; 2], is_one_sky: bool) -> Held {
    let value = second.value - first.value;
    let statistical = [first, second].map(|one| (one.statistical, one.statistical_freedom));
    let common = common(&effects_of([first, second], is_one_sky));
    let combined = statistical
        .iter()
        .fold(common, |sum: f64, (u, _)| hypot(sum, *u));
    let of_budgets = expanded(&statistical, common);
    let reach = beyond
        .iter()
        .fold(of_budgets, |sum: f64, one| hypot(sum, *one));
    if combined <= 0.0 {
        return Held {
            value,
            standard_uncertainty: combined,
            expanded: reach,
            p: f64::from(u8::from(value.abs() <= reach)),
        };
    }
    let standard_uncertainty = combined * reach / of_budgets;
    Held {
        value,
        standard_uncertainty,
        expanded: reach,
        p: two_sided_p(
            value / standard_uncertainty,
            freedom_of(of_budgets / combined),
        ),
    }
}

/// What the interval of a figure reaches beyond that of its budget, in squares.
fn beyond(stated: &Stated, budget: &Budget) -> f64 {
    let half_width = stated.figure.map_or(0.0, |figure| figure.half_width());
    (squared(half_width) - squared(budget.expanded))
        .max(0.0)
        .sqrt()
}

/// Every pair's figures; `stated` are those of each campaign. The rating has a comparison of its
/// own, and so have gain and loss where `pairs` has that of the heat balances.
pub fn figures(
    campaigns: &[Assessment],
    stated: &[Vec<Stated>],
    places: &[(usize, usize)],
    pairs: &[Pair],
) -> Vec<PairFigures> {
    let shared: Vec<Shared> = places
        .iter()
        .map(|&(first, second)| {
            let pair = find_pair(pairs, first, second);
            let has_causes = pair.is_some_and(|pair| pair.difference.causes.is_some());
            shared(campaigns, stated, (first, second), has_causes)
        })
        .collect();
    let mut corrected = correct(&shared);
    let places = places.iter().zip(shared);
    places
        .map(|(&(first, second), shared)| PairFigures {
            first,
            second,
            is_one_sky: is_one_sky(&campaigns[first], &campaigns[second]),
            figures: shared
                .into_iter()
                .map(|one| one.corrected(&mut corrected))
                .collect(),
        })
        .collect()
}

/// The figures that two campaigns share.
type Shared = Vec<SharedFigure>;

/// A figure that two campaigns state, before the other pairs are looked at.
struct SharedFigure {
    stated: [Stated; 2],
    held: Result<Held, Unlike>,
    has_unknown_vessels: bool,
}

impl SharedFigure {
    fn key(&self) -> FigureKey {
        self.stated[0].key
    }

    /// With the next corrected p of its figure.
    fn corrected(self, corrected: &mut [(FigureKey, std::vec::IntoIter<f64>)]) -> FigurePair {
        let key = self.key();
        let mut next = || {
            let of_key = corrected.iter_mut().find(|(one, _)| *one == key);
            of_key.and_then(|(_, p)| p.next()).unwrap_or(1.0)
        };
        let told = self.held.map(|held| Told {
            held,
            p_corrected: next(),
        });
        let [first, second] = self.stated;
        FigurePair {
            key,
            first,
            second,
            told,
            has_unknown_vessels: self.has_unknown_vessels,
        }
    }
}

/// The p of each figure over all pairs, corrected by Holm, in the order of the pairs.
fn correct(shared: &[Shared]) -> Vec<(FigureKey, std::vec::IntoIter<f64>)> {
    let of_key = |key: FigureKey| {
        let of_pairs = shared.iter().flatten().filter(|one| one.key() == key);
        let p: Vec<f64> = of_pairs
            .filter_map(|one| one.held.ok())
            .map(|held| held.p)
            .collect();
        (key, holm(&p).into_iter())
    };
    FigureKey::ALL.iter().copied().map(of_key).collect()
}

fn shared(
    campaigns: &[Assessment],
    stated: &[Vec<Stated>],
    (first, second): (usize, usize),
    has_causes: bool,
) -> Shared {
    let (one, two) = (&campaigns[first], &campaigns[second]);
    let is_one_sky = is_one_sky(one, two);
    let find = |place: usize, key: FigureKey| stated[place].iter().find(|one| one.key == key);
    let keys = FigureKey::ALL.iter().copied().filter(|key| match key {
        FigureKey::Ps50 => false,
        FigureKey::Gain | FigureKey::Loss => !has_causes,
        _ => true,
    });
    keys.filter_map(|key| {
        let (of_one, of_two) = (find(first, key)?, find(second, key)?);
        let held = match (unlike(key, one, two), &of_one.budget, &of_two.budget) {
            (Some(why), _, _) => Err(why),
            (None, Some(first), Some(second)) => {
                let beyond = [beyond(of_one, first), beyond(of_two, second)];
                Ok(hold([first, second], beyond, is_one_sky))
            }
            _ => Err(Unlike::NoBudget),
        };
        let known = vessels(&one.tested.campaign, &two.tested.campaign);
        Some(SharedFigure {
            stated: [of_one.clone(), of_two.clone()],
            held,
            has_unknown_vessels: is_of_vessels(key) && known == Vessels::NotStated,
        })
    })
    .collect()
}

/// Whether irradiance was estimated of one sky: in the same way, at one site, and runs of each
/// kind on the same days.
fn is_one_sky(one: &Assessment, two: &Assessment) -> bool {
    let dates = |runs: &[Run]| -> Vec<Date> {
        let mut dates: Vec<Date> = runs.iter().map(|run| run.date).collect();
        dates.sort_unstable();
        dates.dedup();
        dates
    };
    let days = [one, two].map(|side| {
        let of = &side.tested;
        [&of.runs, &of.cooling_runs, &of.dry_runs].map(|runs| dates(runs))
    });
    let campaigns = [one, two].map(|side| &side.tested.campaign);
    is_one_estimate(campaigns[0], campaigns[1])
        && is_one_site(&campaigns[0].site, &campaigns[1].site)
        && days[0] == days[1]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::classes::Spread;
    use crate::campaign::standard_uncertainty::Uncertainty;
    use crate::procedure::sources::{Basis, CommonError, Source};
    use crate::procedure::uncertainty::Figure;
    use crate::procedure::uncertainty::budget::{MOST_FREEDOM, Origin, coverage_factor};

    /// An instrument's error; one `identity` is one instrument.
    fn error(identity: &str) -> CommonError {
        let class =
            crate::campaign::classes::assumed(crate::campaign::classes::InstrumentKind::Irradiance);
        CommonError {
            source: Source::Irradiance,
            identity: identity.to_owned(),
            standard: Uncertainty::Relative(0.01),
            spread: Spread::Normal,
            basis: Basis::Assumed(class),
        }
    }

    /// A figure with scatter and days of so much, and one instrument that gives it so much.
    fn budget(value: f64, statistical: f64, (identity, effect): (&str, f64)) -> Budget {
        Budget::new(
            value,
            (Origin::ReadingNoise, statistical),
            MOST_FREEDOM,
            [(error(identity), effect)].into_iter(),
        )
    }

    /// A figure of days alone.
    fn of_days(value: f64, standard: f64, freedom: f64) -> Budget {
        Budget::new(value, (Origin::Days, standard), freedom, std::iter::empty())
    }

    fn held(first: &Budget, second: &Budget) -> Held {
        hold([first, second], [0.0; 2], false)
    }

    #[test]
    fn what_one_instrument_reads_wrong_cancels_but_for_the_difference() {
        // Derived: our own arithmetic. One instrument leaves 0.011 − 0.010, two leave √(0.010² +
        // 0.011²); the scatter is √2·0.001.
        let first = budget(0.100, 0.001, ("sun", 0.010));
        let shared = held(&first, &budget(0.110, 0.001, ("sun", 0.011)));
        let apart = held(&first, &budget(0.110, 0.001, ("another", 0.011)));
        let of_scatter = 2.0_f64.sqrt() * 0.001;
        assert!((shared.standard_uncertainty - hypot(of_scatter, 0.001)).abs() < 1e-12);
        let expected = hypot(of_scatter, hypot(0.010, 0.011));
        assert!((apart.standard_uncertainty - expected).abs() < 1e-12);
        assert!((shared.value - 0.010).abs() < 1e-12);
        assert!(shared.p < SHOWN_P && apart.p > SHOWN_P);
    }

    #[test]
    fn a_campaign_differs_from_itself_by_nothing() {
        let one = budget(0.12, 0.002, ("sun", 0.01));
        let found = held(&one, &one);
        assert_eq!(found.value, 0.0);
        assert!((found.p - 1.0).abs() < 1e-9);
        // And nothing is unsure in what its instruments share.
        assert!((found.standard_uncertainty - 0.002 * 2.0_f64.sqrt()).abs() < 1e-12);
        let exact = of_days(0.12, 0.0, 3.0);
        assert_eq!(held(&exact, &exact).p, 1.0);
    }

    #[test]
    fn a_tenth_is_told_apart_with_a_hundredth_of_each() {
        // Derived: 10 ± 1.96·√2·1: 2.77.
        let found = held(
            &of_days(100.0, 1.0, MOST_FREEDOM),
            &of_days(110.0, 1.0, MOST_FREEDOM),
        );
        assert!((found.expanded - 2.772).abs() < 2e-3, "{found:?}");
        assert!(found.p < SHOWN_P);
        // A fiftieth is not.
        let near = held(
            &of_days(100.0, 1.0, MOST_FREEDOM),
            &of_days(102.0, 1.0, MOST_FREEDOM),
        );
        assert!(near.p > SHOWN_P);
    }

    #[test]
    fn each_has_its_own_degrees_of_freedom_and_p_and_interval_agree() {
        // Student's t for 95 % and 1 and 3 degrees of freedom, any table: 12.706 and 3.182.
        let (first, second) = (of_days(10.0, 0.5, 1.0), of_days(17.0, 0.8, 3.0));
        let found = held(&first, &second);
        let expected = hypot(12.706 * 0.5, 3.182 * 0.8);
        assert!((found.expanded - expected).abs() < 2e-3, "{found:?}");
        for value in [expected * 0.999, expected * 1.001] {
            let found = held(&first, &of_days(10.0 + value, 0.8, 3.0));
            assert_eq!(found.p < SHOWN_P, value > found.expanded, "{found:?}");
        }
    }

    #[test]
    fn the_other_order_gives_the_other_sign_and_nothing_else() {
        let first = budget(3.0, 0.2, ("sun", 0.3));
        let second = budget(4.0, 0.1, ("sun", 0.4));
        let (there, back) = (held(&first, &second), held(&second, &first));
        assert_eq!(there.value, -back.value);
        assert!((there.expanded - back.expanded).abs() < 1e-12);
        assert!((there.p - back.p).abs() < 1e-12);
    }

    #[test]
    fn what_draws_reach_beyond_a_budget_widens_the_difference() {
        let one = of_days(10.0, 1.0, MOST_FREEDOM);
        let reach = 1.25 * one.expanded;
        let stated = Stated {
            key: FigureKey::F2,
            value: 10.0,
            figure: Some(Figure {
                value: 10.0,
                standard_uncertainty: 1.0,
                interval: crate::stats::line::Bounds {
                    lower: 10.0 - one.expanded,
                    upper: 10.0 + reach,
                },
            }),
            budget: Some(one.clone()),
            is_of_one_day: false,
            is_indicative: false,
        };
        // Derived: √(1.25² − 1²) = 0.75 of it; with the other, √(1 + 1 + 0.75²).
        let beyond = beyond(&stated, &one);
        assert!((beyond - 0.75 * one.expanded).abs() < 1e-9);
        let found = hold([&one, &one], [beyond, 0.0], false);
        let factor = coverage_factor(MOST_FREEDOM);
        assert!((found.expanded - factor * 2.5625_f64.sqrt()).abs() < 1e-9);
    }
}
