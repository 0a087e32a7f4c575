//! The acceptance half angle by least squares over all teeth, with its range.

use simmerline_math::squared;

use super::fall::Shape;
use super::finding::{AcceptanceFinding, FindingCode};
use super::squares::{Squares, of_run, shares};
use super::teeth::{Tooth, teeth};
use crate::campaign::kinds::ProcedureKey;
use crate::language::fixed;
use crate::message;
use crate::procedure::s580::Limits;
use crate::procedure::sky::LocalSky;
use crate::procedure::tested::Tested;
use crate::stats::line::Bounds;
use crate::stats::student::{two_sided_p, two_sided_t};
use crate::stats::two::jackknife_variance;
use crate::units::seconds_between;

/// Fewest teeth that say anything. Common practice, no published source.
const LEAST_TEETH: usize = 6;
/// Fewest readings of a tooth, for it to count: with three or four, ranges held the angle in 11 of
/// 14 campaigns. Found by simulation.
const LEAST_READINGS: usize = 5;
/// Fewest degrees by which the sun has to move off the axis in a tooth, for it to count: less
/// says nothing, and many such teeth would hide what others say.
const LEAST_ANGLE_DEG: f64 = 1.0;
/// Probability by chance below which a fall shows.
const SHOWS_BELOW: f64 = 0.005;
/// Share of such ranges that hold the angle.
const COVERAGE: f64 = 0.95;
/// A shape of the fall stays possible where it leaves at most this more than the best, over the
/// number of teeth. Found by simulation.
const HARDLY_MORE: f64 = 4.0;
/// Smallest half angle that is looked for, and the largest that is told from none, degrees.
const SMALLEST_DEG: f64 = 0.8;
const LARGEST_DEG: f64 = 60.0;
/// Half angles, one over the other, of the falls that are tried.
const RATIO: f64 = 1.15;
/// Time constants with which heat reaches the water, s: the pot is between. Common practice, no
/// published source.
const LAGS_S: &[f64] = &[0.0, 45.0, 90.0, 150.0, 240.0, 360.0];

/// What the aimings of a campaign say of its acceptance half angle.
#[derive(Debug, Clone)]
pub struct Acceptance {
    /// Stretches from one aiming to the next that count, and the runs that they are of.
    pub teeth: usize,
    pub runs: usize,
    /// How far the sun stood off the axis at most, degrees.
    pub largest_deg: f64,
    /// `None` where it does not show.
    pub half_angle: Option<HalfAngle>,
    /// Why it does not.
    pub findings: Vec<AcceptanceFinding>,
}

/// An acceptance half angle, degrees: a tenth of the gain is lost there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfAngle {
    pub value_deg: f64,
    /// With 95 %.
    pub range_deg: Bounds,
    /// Probability that chance alone makes such a fall.
    pub p: f64,
}

/// Fits how gain falls with the angle that the sun has moved since the last aiming; `None` where
/// no run tells when it was aimed, or the campaign leaves the heat balance out.
///
/// In each tooth the water's temperature follows from C dT/dt = g·f(θ)·G − u·Td − w·Td², with f by
/// one of [`Shape`]; g/C, u/C and w/C are each run's own, and every tooth
/// begins at a temperature of its own, so that only what is within a tooth counts. 1/θa² has the
/// least squares; its scatter is that of the teeth, each left out in turn. The fall shows where
/// 1/θa² is above none by a margin that chance gives in one of 200 campaigns, and the cooker was
/// left standing long enough for the sun to reach the angle.
///
/// # Source
/// Common practice, no published source. The delete-a-group jackknife: Kott, Journal of Official
/// Statistics 17 (2001) 521–526, from memory.
pub fn fit(tested: &Tested, limits: &Limits) -> Option<Acceptance> {
    let mut runs = tested.runs.iter();
    let is_told = runs.any(|run| !run.readings.aimed_us.is_empty());
    let procedures = &tested.campaign.procedures;
    let is_left_out = procedures.leaves_out(ProcedureKey::HeatBalance);
    (is_told && !is_left_out).then(|| of_teeth(&all_teeth(tested, limits)))
}

fn all_teeth(tested: &Tested, limits: &Limits) -> Vec<Tooth> {
    let sky = LocalSky::over(&tested.campaign.site);
    let stop_c = limits.water_stop_c(tested.boiling_point_c);
    let runs = tested.runs.iter().enumerate();
    let all = runs.flat_map(|(index, run)| teeth(index, run, &run.readings.aimed_us, &sky, stop_c));
    let counts = |tooth: &Tooth| {
        tooth.largest_deg() >= LEAST_ANGLE_DEG && tooth.steps() >= LEAST_READINGS - 1
    };
    all.filter(counts).collect()
}

/// What teeth say, those of one run together.
pub fn of_teeth(teeth: &[Tooth]) -> Acceptance {
    let mut runs: Vec<usize> = teeth.iter().map(|tooth| tooth.run).collect();
    runs.dedup();
    let largest_deg = teeth.iter().map(Tooth::largest_deg).fold(0.0, f64::max);
    let half_angle = (teeth.len() >= LEAST_TEETH)
        .then(|| half_angle(teeth, largest_deg))
        .flatten();
    Acceptance {
        teeth: teeth.len(),
        runs: runs.len(),
        largest_deg,
        half_angle,
        findings: findings(teeth.len(), largest_deg, half_angle.is_some()),
    }
}

/// How well the times of the aimings are known, as a fraction of what passes between them.
fn known_to(teeth: &[Tooth]) -> f64 {
    let known_to_s: f64 = teeth.iter().map(|tooth| tooth.known_to_s).sum();
    let lengths = teeth.iter().map(|tooth| tooth.span);
    let length_s: f64 = lengths
        .map(|span| seconds_between(span.from_us, span.to_us))
        .sum();
    known_to_s / length_s
}

fn findings(teeth: usize, largest_deg: f64, shows: bool) -> Vec<AcceptanceFinding> {
    let finding = if shows {
        None
    } else if teeth < LEAST_TEETH {
        Some(AcceptanceFinding::note(
            FindingCode::FewAimings,
            message!(
                "acceptance-few",
                teeth = teeth,
                least = LEAST_TEETH,
                readings = LEAST_READINGS,
                angle = fixed(LEAST_ANGLE_DEG, 0)
            ),
            message!("acceptance-few-remedy"),
        ))
    } else {
        Some(AcceptanceFinding::note(
            FindingCode::FallNotShown,
            message!(
                "acceptance-not-shown",
                teeth = teeth,
                angle = fixed(largest_deg, 1)
            ),
            message!("acceptance-not-shown-remedy"),
        ))
    };
    finding.into_iter().collect()
}

/// What every fall of a shape leaves, of each run and without each of its teeth.
struct Falls {
    per_deg2: Vec<f64>,
    /// By lag, and for each by fall: of all runs, K².
    all_k2: Vec<Vec<f64>>,
    /// The same with one tooth left out, by tooth.
    without_k2: Vec<Vec<Vec<f64>>>,
}

/// 1/θa² with its scatter.
struct Fall {
    per_deg2: f64,
    /// What it leaves, K².
    left_k2: f64,
    standard_error: f64,
    freedom: usize,
}

impl Falls {
    /// Of teeth, those of one run together.
    fn of(teeth: &[Tooth], shape: Shape) -> Falls {
        let per_deg2 = falls();
        let mut all_k2 = vec![vec![0.0; per_deg2.len()]; LAGS_S.len()];
        // What a run leaves without a tooth, less what it leaves with it.
        let mut without_k2: Vec<Vec<Vec<f64>>> = Vec::new();
        for run in teeth.chunk_by(|one, two| one.run == two.run) {
            let first = without_k2.len();
            without_k2.resize(first + run.len(), all_k2.clone());
            for (fall, per_deg2) in per_deg2.iter().enumerate() {
                let shares = shares(run, shape, *per_deg2);
                for (lag, lag_s) in LAGS_S.iter().enumerate() {
                    let squares = of_run(run, &shares, *lag_s);
                    let whole_k2 = left_k2(&squares, None);
                    all_k2[lag][fall] += whole_k2;
                    for tooth in 0..run.len() {
                        let more_k2 = left_k2(&squares, Some(tooth)) - whole_k2;
                        without_k2[first + tooth][lag][fall] = more_k2;
                    }
                }
            }
        }
        for without in &mut without_k2 {
            for (lefts, all) in without.iter_mut().zip(&all_k2) {
                for (left, all) in lefts.iter_mut().zip(all) {
                    *left += all;
                }
            }
        }
        Falls {
            per_deg2,
            all_k2,
            without_k2,
        }
    }

    /// The fall that leaves the least, at whatever lag.
    fn best(&self, left_k2: &[Vec<f64>]) -> Lowest {
        let of_lags = left_k2.iter().map(|left| lowest(&self.per_deg2, left));
        let best = of_lags.min_by(|one, two| one.left_k2.total_cmp(&two.left_k2));
        best.expect("there are lags")
    }

    /// The best fall, and its scatter by each tooth left out in turn.
    fn fall(&self) -> Fall {
        let best = self.best(&self.all_k2);
        let without = self.without_k2.iter();
        let without: Vec<f64> = without.map(|left| self.best(left).per_deg2).collect();
        Fall {
            per_deg2: best.per_deg2,
            left_k2: best.left_k2,
            standard_error: jackknife_variance(&without).sqrt(),
            freedom: without.len() - 1,
        }
    }
}

/// What a run leaves, with or without one of its teeth, K².
fn left_k2(teeth: &[Squares], without: Option<usize>) -> f64 {
    let teeth = teeth.iter().enumerate();
    let kept = teeth.filter(|(tooth, _)| Some(*tooth) != without);
    kept.fold(Squares::default(), |sum, (_, one)| sum.plus(one))
        .left_k2()
}

/// 1/θa², from below none up to that of the smallest half angle, 1/degree².
fn falls() -> Vec<f64> {
    let mut angles_deg = vec![LARGEST_DEG];
    let mut angle_deg = LARGEST_DEG;
    while angle_deg > SMALLEST_DEG {
        angle_deg /= RATIO;
        angles_deg.push(angle_deg);
    }
    let rising = angles_deg.iter().rev().map(|angle| -1.0 / squared(*angle));
    let rising = rising.filter(|fall| *fall > -1.0 / squared(LEAST_RISING_DEG));
    let falling = angles_deg.iter().map(|angle| 1.0 / squared(*angle));
    rising.chain([0.0]).chain(falling).collect()
}

/// Where Student's t says no more.
const MOST_T: f64 = 1e6;

/// Gain that rises faster than this with the angle is not looked for, degrees.
const LEAST_RISING_DEG: f64 = 3.0;

/// A fall, and what it leaves, K².
struct Lowest {
    per_deg2: f64,
    left_k2: f64,
}

/// Where values at places (rising) are lowest: on the parabola through the lowest and its
/// neighbours, or at an end.
fn lowest(places: &[f64], values: &[f64]) -> Lowest {
    let mut least = 0;
    for place in 1..values.len() {
        if values[place] < values[least] {
            least = place;
        }
    }
    let at_least = Lowest {
        per_deg2: places[least],
        left_k2: values[least],
    };
    if least == 0 || least + 1 == values.len() {
        return at_least;
    }
    let (low, middle, high) = (places[least - 1], places[least], places[least + 1]);
    let to_low = (values[least - 1] - values[least]) / (low - middle);
    let to_high = (values[least + 1] - values[least]) / (high - middle);
    let curvature = (to_high - to_low) / (high - low);
    if curvature <= 0.0 {
        return at_least;
    }
    let slope = to_low - curvature * (low - middle);
    let away = (-slope / (2.0 * curvature)).clamp(low - middle, high - middle);
    Lowest {
        per_deg2: middle + away,
        left_k2: values[least] + (slope + curvature * away) * away,
    }
}

impl Fall {
    /// Probability that chance alone makes such a fall, or one that is steeper.
    fn p(&self) -> f64 {
        if self.per_deg2 <= 0.0 {
            return 1.0;
        }
        // Readings without any scatter have none of their own.
        let t = (self.per_deg2 / self.standard_error).min(MOST_T);
        two_sided_p(t, self.freedom as f64) / 2.0
    }

    /// The half angles that it may be, degrees; `None` where it may be none.
    ///
    /// Aimings that all came earlier than their notes by a share of the teeth change the angles by
    /// about as much, and 1/θa² by twice that.
    fn range_deg(&self, known_to: f64) -> Option<Bounds> {
        let of_teeth = two_sided_t(COVERAGE, self.freedom) * self.standard_error;
        let of_times = 2.0 * known_to * self.per_deg2;
        let reach = (squared(of_teeth) + squared(of_times)).sqrt();
        (self.per_deg2 > reach).then(|| Bounds {
            lower: half_angle_deg(self.per_deg2 + reach),
            upper: half_angle_deg(self.per_deg2 - reach),
        })
    }
}

/// θa of 1/θa².
fn half_angle_deg(per_deg2: f64) -> f64 {
    (1.0 / per_deg2).sqrt()
}

/// The half angle by the shape that leaves the least, with the ranges by all shapes that leave
/// hardly more; `None` where the fall does not show, or the sun never stood so far off.
fn half_angle(teeth: &[Tooth], largest_deg: f64) -> Option<HalfAngle> {
    let fall = |shape: Shape| Falls::of(teeth, shape).fall();
    let p = fall(Shape::Bell).p();
    if p >= SHOWS_BELOW {
        return None;
    }
    let falls: Vec<Fall> = Shape::ALL.iter().map(|shape| fall(*shape)).collect();
    let best = falls
        .iter()
        .min_by(|one, two| one.left_k2.total_cmp(&two.left_k2))?;
    let enough_k2 = best.left_k2 * (1.0 + HARDLY_MORE / teeth.len() as f64);
    let known_to = known_to(teeth);
    let mut range_deg = best.range_deg(known_to)?;
    for fall in falls.iter().filter(|fall| fall.left_k2 <= enough_k2) {
        let range = fall.range_deg(known_to)?;
        range_deg.lower = range_deg.lower.min(range.lower);
        range_deg.upper = range_deg.upper.max(range.upper);
    }
    let value_deg = half_angle_deg(best.per_deg2);
    (value_deg <= largest_deg).then_some(HalfAngle {
        value_deg,
        range_deg,
        p,
    })
}
