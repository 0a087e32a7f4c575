//! Energy and exergy efficiency over the sound intervals.

use jiff::civil::Date;

use super::finding::{EfficiencyFinding, FindingCode};
use super::peak::{Vertex, lost_w, vertex};
use super::step::{Step, Terms};
use crate::campaign::kinds::ProcedureKey;
use crate::campaign::model::Plane;
use crate::language::{celsius, fixed, kelvins};
use crate::message;
use crate::physics::exergy::ZERO_CELSIUS_K;
use crate::physics::water::EVAPORATION_C;
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::heat_balance::fit::is_sound;
use crate::procedure::s580::S580;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::sources::{CommonError, common_errors};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::derived::{Group, derive_by_budget};
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::{Derived, Figure, Off, derive};
use crate::stats::line::Bounds;
use simmerline_math::{hypot, squared};

/// So far above the air the first interval of a test should begin, K: as the practice has it, by
/// [`crate::procedure::s580::limits`].
const ABOVE_AIR_K: f64 = 5.0;

/// Shares of the sunlight that the water keeps.
#[derive(Debug, Clone, PartialEq)]
pub struct Efficiency {
    /// Heat that the water took up over sunlight on the intercept area, a fraction.
    pub energy: Derived,
    /// The same of exergy.
    pub exergy: Derived,
    pub peak: Result<Peak, NoPeak>,
    /// The sensor of irradiance did not face the sun, or irradiance is estimated.
    pub is_indicative: bool,
    /// Every sound interval.
    pub steps: Vec<Step>,
    /// Lowest and highest temperature of the water in them, °C.
    pub water_c: Bounds,
    pub mean_irradiance_w_m2: f64,
    pub mean_ambient_c: f64,
    pub findings: Vec<EfficiencyFinding>,
}

/// The highest rate at which the water gains exergy.
#[derive(Debug, Clone, PartialEq)]
pub struct Peak {
    /// W.
    pub exergy_w: Derived,
    /// At this temperature difference, K.
    pub difference_k: f64,
    /// The peak over the exergy of the heat lost there; `None` where that is not known. What
    /// makes peak and loss unsure counts as independent.
    pub quality_factor: Option<Figure>,
}

/// Why there is no peak.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoPeak {
    /// The parabola has no highest point among the intervals.
    NoVertex,
    /// It has one, but not without one of the days, or within what instruments may be off by.
    Unsure,
}

/// The steps by days, each with its terms.
struct ByDay(Vec<(Date, Terms)>);

impl ByDay {
    fn of(steps: &[Step]) -> ByDay {
        let mut days: Vec<(Date, Terms)> = Vec::new();
        for step in steps {
            match days.iter_mut().find(|(date, _)| *date == step.date) {
                Some((_, terms)) => *terms = terms.plus(step.terms),
                None => days.push((step.date, step.terms)),
            }
        }
        ByDay(days)
    }

    fn counted(&self, off: &Off) -> Terms {
        let counted = self.0.iter().filter(|(date, _)| off.counts(0, *date));
        counted.fold(Terms::default(), |sum, (_, terms)| sum.plus(*terms))
    }
}

/// Energy and exergy over the sound intervals, those of the heat balance; `None` without one, and
/// where the campaign leaves the procedure out.
///
/// Energy: Σm·c·ΔT/Σ(A·G·Δt). Exergy: Σm·c·[(T2 − T1) − Ta·ln(T2/T1)] over
/// Σ(A·G·Δt·[1 − 4/3·(Ta/Ts) + 1/3·(Ta/Ts)⁴]), with Ts = 5777 K. The vessels do not count.
///
/// # Source
/// Öztürk 2004 and others; Petela's factor:
/// [`share_of_sunlight`](crate::physics::exergy::share_of_sunlight). That the sound intervals are
/// the span is this project's choice: papers choose their own, so spans have to be told.
pub fn efficiency(
    tested: &Tested,
    s580: &S580,
    balance: Option<&HeatBalance>,
) -> Option<Efficiency> {
    let procedures = &tested.campaign.procedures;
    if procedures.leaves_out(ProcedureKey::Efficiency) {
        return None;
    }
    let sound: Vec<&Interval> = s580.intervals.iter().filter(|one| is_sound(one)).collect();
    let steps: Vec<Step> = sound
        .iter()
        .enumerate()
        .filter_map(|(place, interval)| {
            let before = place.checked_sub(1).map(|before| sound[before]);
            Step::of(interval, tested, before)
        })
        .collect();
    let owner = tested.campaign.file.to_string_lossy();
    let errors = common_errors(&tested.campaign.instruments, &owner);
    let days = ByDay::of(&steps);
    let all = days.counted(&Off::NONE);
    let read_j = read_j(tested, &steps);
    let group = |of_readings: f64| Group::new(steps.iter().map(|step| step.date), of_readings);
    let energy = derive(&[group(read_j / all.sun_j)], &errors, |off| {
        days.counted(off).energy(&off.shift)
    });
    let of_exergy = read_exergy_j(tested, &steps) / all.sun_exergy_j;
    let exergy = derive(&[group(of_exergy)], &errors, |off| {
        days.counted(off).exergy(&off.shift)
    });
    let (energy, exergy) = (energy.ok()?, exergy.ok()?);
    let mean = |of: fn(&Step) -> f64| steps.iter().map(of).sum::<f64>() / steps.len() as f64;
    let mean_ambient_c = mean(|step| step.ambient_c);
    let peak = peak(&steps, &errors, mean_ambient_c, balance);
    let water_c = ends(&steps);
    Some(Efficiency {
        findings: findings(tested, &energy, &peak, water_c),
        is_indicative: tested.estimates_irradiance()
            || tested.campaign.instruments.irradiance_plane != Some(Plane::Normal),
        mean_irradiance_w_m2: mean(|step| step.sun_w) / tested.campaign.cooker.intercept_area_m2,
        energy,
        exergy,
        peak,
        water_c,
        mean_ambient_c,
        steps,
    })
}

/// The same of the exergy: a kelvin at a temperature counts by what it could do there.
fn read_exergy_j(tested: &Tested, steps: &[Step]) -> f64 {
    let read_k = reading_spread(tested).water_k.unwrap_or(0.0);
    let worth = |celsius: f64, ambient_c: f64| {
        1.0 - (ambient_c + ZERO_CELSIUS_K) / (celsius + ZERO_CELSIUS_K)
    };
    let mut squares = 0.0;
    for (place, step) in steps.iter().enumerate() {
        let ends_chain = steps.get(place + 1).is_none_or(|next| !next.follows);
        for (is_end, celsius) in [(!step.follows, step.from_c), (ends_chain, step.to_c)] {
            if is_end {
                squares += squared(step.heat_j_per_k * worth(celsius, step.ambient_c));
            }
        }
    }
    read_k * squares.sqrt()
}

/// What single readings of the water give the heat, one standard uncertainty, J: both ends of
/// each chain of intervals.
fn read_j(tested: &Tested, steps: &[Step]) -> f64 {
    let read_k = reading_spread(tested).water_k.unwrap_or(0.0);
    let chains = steps.iter().filter(|step| !step.follows);
    let squares: f64 = chains
        .map(|step| 2.0 * step.heat_j_per_k * step.heat_j_per_k)
        .sum();
    read_k * squares.sqrt()
}

fn ends(steps: &[Step]) -> Bounds {
    let all = || steps.iter().flat_map(|step| [step.from_c, step.to_c]);
    Bounds {
        lower: all().fold(f64::INFINITY, f64::min),
        upper: all().fold(f64::NEG_INFINITY, f64::max),
    }
}

fn peak(
    steps: &[Step],
    errors: &[CommonError],
    ambient_c: f64,
    balance: Option<&HeatBalance>,
) -> Result<Peak, NoPeak> {
    let at: Vertex = vertex(steps, &Off::NONE).ok_or(NoPeak::NoVertex)?;
    let group = Group::new(steps.iter().map(|step| step.date), at.of_scatter_w);
    let exergy_w = derive_by_budget(&[group], errors, |off| Some(vertex(steps, off)?.exergy_w));
    let exergy_w = exergy_w.map_err(|_| NoPeak::Unsure)?;
    let quality_factor = balance.and_then(|balance| {
        let lost_w = lost_w(&at, ambient_c, balance)?;
        Some(quality(&exergy_w.figure, lost_w, &balance.loss_w_per_k))
    });
    Ok(Peak {
        exergy_w,
        difference_k: at.difference_k,
        quality_factor,
    })
}

/// Peak over loss (W), with the relative uncertainty of both.
fn quality(peak: &Figure, lost_w: f64, loss: &Figure) -> Figure {
    let value = peak.value / lost_w;
    let relative =
        |of: fn(&Figure) -> f64| hypot(of(peak) / peak.value, of(loss) / loss.value) * value;
    let half_width = relative(Figure::half_width);
    Figure {
        value,
        standard_uncertainty: relative(|figure| figure.standard_uncertainty),
        interval: Bounds {
            lower: value - half_width,
            upper: value + half_width,
        },
    }
}

fn findings(
    tested: &Tested,
    energy: &Derived,
    peak: &Result<Peak, NoPeak>,
    water_c: Bounds,
) -> Vec<EfficiencyFinding> {
    let mut findings = Vec::new();
    let mut note = |code: FindingCode, text, remedy| {
        findings.push(EfficiencyFinding::note(code, text, remedy));
    };
    if energy.figure.value > 1.0 {
        note(
            FindingCode::MoreThanSunlight,
            message!("efficiency-too-much"),
            message!("efficiency-too-much-remedy"),
        );
    }
    if tested.lies_flat() {
        note(
            FindingCode::PlaneNotNormal,
            message!("efficiency-plane"),
            message!("efficiency-plane-remedy"),
        );
    }
    match peak {
        Err(NoPeak::NoVertex) => note(
            FindingCode::NoPeak,
            message!("efficiency-no-peak"),
            message!(
                "efficiency-no-peak-remedy",
                above = kelvins(fixed(ABOVE_AIR_K, 0))
            ),
        ),
        Err(NoPeak::Unsure) => note(
            FindingCode::PeakUnsure,
            message!("efficiency-peak-unsure"),
            message!(
                "efficiency-peak-unsure-remedy",
                above = kelvins(fixed(ABOVE_AIR_K, 0))
            ),
        ),
        Ok(peak) if peak.quality_factor.is_none() => note(
            FindingCode::NoLoss,
            message!("efficiency-no-loss"),
            message!("efficiency-no-loss-remedy"),
        ),
        Ok(_) => {}
    }
    if energy.is_of_one_day {
        note(
            FindingCode::OneDay,
            message!("efficiency-one-day"),
            message!("efficiency-one-day-remedy"),
        );
    }
    if water_c.upper > EVAPORATION_C {
        note(
            FindingCode::Evaporation,
            message!("evaporation", limit = celsius(fixed(EVAPORATION_C, 0))),
            message!("evaporation-remedy"),
        );
    }
    findings
}
