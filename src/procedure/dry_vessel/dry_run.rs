//! The dry runs of a campaign: plateau, heating, and how hot for each watt of sunlight.

use super::finding::{DryFinding, FindingCode};
use super::plateau::{NoPlateau, Plateau, find_plateau, slope_k_per_min};
use crate::language::{celsius, fixed, kelvins};
use crate::logs::Series;
use crate::message;
use crate::physics::sun::sun_position;
use crate::procedure::run::Run;
use crate::procedure::sources::{CommonError, common_errors, vessel_error};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::derived::{Group, of_sources};
use crate::procedure::uncertainty::step::step_k;
use crate::procedure::uncertainty::{Derived, Missing, Off, derive};
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// Temperatures whose time is told where the campaign file names none, °C.
/// Common practice, no published source: water boils at the one, bread bakes at the other.
const USUAL_REACHED_C: &[f64] = &[100.0, 150.0];
/// Share of the difference from which on it is told that a plateau may go on.
/// Common practice, no published source.
const WORTH_TELLING: f64 = 0.01;
/// A vessel in the sun is not colder than the coolest air of its run by more than this, K.
/// Common practice, no published source.
const COLDER_BY_K: f64 = 5.0;
/// Home-built cookers bring a dry pot to less than this, °C. Common practice, no published source.
const VERY_HOT_C: f64 = 250.0;
/// The first rise is taken over this, s.
const FIRST_S: f64 = 600.0;

/// What one dry run says.
#[derive(Debug, Clone, PartialEq)]
pub struct DryRun {
    /// Its place among the dry runs.
    pub run: usize,
    /// `None`: the findings say why.
    pub plateau: Option<Plateau>,
    /// Vessel above ambient for each W/m², K m²/W; `None` without a plateau.
    pub difference: Option<Derived>,
    /// Highest reading, °C; `None` without readings of the vessel.
    pub highest_c: Option<f64>,
    pub reached: Vec<Reached>,
    /// Rise over the first ten minutes, or over the first two readings where these are further
    /// apart, K/min; `None` with a single reading.
    pub initial_k_per_min: Option<f64>,
    pub findings: Vec<DryFinding>,
}

/// A temperature, and when the vessel reached it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reached {
    pub celsius: f64,
    /// From the first reading, s; `None` where it did not, or was as hot from the start.
    pub after_s: Option<f64>,
}

/// What the dry runs of a campaign say together.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct DryRuns {
    pub runs: Vec<DryRun>,
    /// Mean of the runs' difference for each W/m², K m²/W; `None` without a plateau.
    pub difference: Option<Derived>,
}

impl DryRuns {
    /// The plateaus, each with the place of its run.
    pub fn plateaus(&self) -> impl Iterator<Item = (usize, &Plateau)> {
        let runs = self.runs.iter();
        runs.filter_map(|run| Some((run.run, run.plateau.as_ref()?)))
    }
}

/// Evaluates the dry runs of a campaign, in their order: (Tp − Ta)/G at each plateau.
///
/// # Source
/// The ratio is that of Mullick, Kandpal and Saxena 1987, Solar Energy 39, 353–360, there for
/// box cookers; from memory. The rule of the plateau is this project's: [`find_plateau`].
pub fn dry_runs(tested: &Tested) -> DryRuns {
    let step_k = vessel_step_k(tested);
    let runs: Vec<DryRun> = tested
        .dry_runs
        .iter()
        .enumerate()
        .map(|(index, run)| evaluate(tested, index, run, step_k))
        .collect();
    let plateaus: Vec<Placed> = runs
        .iter()
        .filter_map(|run| placed(tested, run.run, run.plateau?))
        .collect();
    DryRuns {
        // What one run lacks, the mean lacks, and the finding of the run tells.
        difference: difference(tested, &plateaus, step_k).ok(),
        runs,
    }
}

/// A plateau with the date of its run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    pub date: jiff::civil::Date,
    pub plateau: Plateau,
}

fn placed(tested: &Tested, run: usize, plateau: Plateau) -> Option<Placed> {
    let date = tested.dry_runs.get(run)?.date;
    Some(Placed { date, plateau })
}

/// The plateaus of a campaign with their dates.
pub fn placed_plateaus(tested: &Tested, dry: &DryRuns) -> Vec<Placed> {
    let plateaus = dry.plateaus();
    plateaus
        .filter_map(|(run, plateau)| placed(tested, run, *plateau))
        .collect()
}

/// Mean of (Tp − Ta)/G over plateaus, K m²/W, with readings that are off; days of dry runs are
/// the group of this number. `None` where none is left.
pub fn mean_difference(plateaus: &[Placed], off: &Off, group: usize) -> Option<f64> {
    let counted = plateaus.iter().filter(|one| off.counts(group, one.date));
    let (mut sum, mut count) = (0.0, 0.0);
    for Placed { plateau, .. } in counted {
        let difference_k =
            off.shift.vessel_c(plateau.vessel_c) - off.shift.ambient_c(plateau.ambient_c);
        sum += difference_k / (plateau.irradiance_w_m2 * off.shift.irradiance);
        count += 1.0;
    }
    (count > 0.0 && off.shift.irradiance > 0.0).then(|| sum / count)
}

/// What one reading of the vessel's thermometer gives the mean, K m²/W: its step, read to the
/// nearest, which the readings of one plateau share.
pub fn of_step(plateaus: &[Placed], step_k: Option<f64>) -> f64 {
    let count = plateaus.len() as f64;
    let per_kelvin = plateaus.iter().map(|one| 1.0 / one.plateau.irradiance_w_m2);
    step_k.unwrap_or(0.0) / 12.0_f64.sqrt() * per_kelvin.sum::<f64>() / count / count.sqrt()
}

/// The step of the vessel's thermometer in the dry runs, K.
pub fn vessel_step_k(tested: &Tested) -> Option<f64> {
    let vessels = tested.dry_runs.iter();
    step_k(
        &tested.campaign.instruments.vessel_temperature,
        vessels.filter_map(|run| run.readings.vessel_c.as_ref()),
    )
}

/// The errors that dry runs share.
pub fn dry_errors(tested: &Tested) -> Vec<CommonError> {
    let campaign = &tested.campaign;
    let owner = campaign.file.to_string_lossy();
    let all = common_errors(&campaign.instruments, &owner);
    let mut errors = of_sources(&all, |source| {
        use crate::procedure::sources::Source::{AmbientScale, AmbientTemperature};
        source.is_irradiance() || matches!(source, AmbientScale | AmbientTemperature)
    });
    errors.push(vessel_error(&campaign.instruments, &owner));
    errors
}

fn difference(
    tested: &Tested,
    plateaus: &[Placed],
    step_k: Option<f64>,
) -> Result<Derived, Missing> {
    if plateaus.is_empty() {
        return Err(Missing::Value);
    }
    let dates = plateaus.iter().map(|one| one.date);
    let group = Group::new(dates, of_step(plateaus, step_k));
    let formula = |off: &Off| mean_difference(plateaus, off, 0);
    derive(&[group], &dry_errors(tested), formula)
}

fn evaluate(tested: &Tested, index: usize, run: &Run, step_k: Option<f64>) -> DryRun {
    let plateau = find_plateau(run, step_k);
    let is_dark = plateau.is_ok_and(|plateau| is_sun_down(tested, &plateau));
    let vessel = run.readings.vessel_c.as_ref();
    let initial_k_per_min = vessel.and_then(first_rise);
    let found = plateau.ok().filter(|_| !is_dark);
    let mut findings = match plateau {
        _ if is_dark => vec![sun_down()],
        Ok(plateau) => may_get_hotter(&plateau, initial_k_per_min)
            .into_iter()
            .collect(),
        Err(why) => vec![finding(why)],
    };
    let difference = found.map(|plateau| {
        let placed = Placed {
            date: run.date,
            plateau,
        };
        difference(tested, &[placed], step_k)
    });
    if let Some(Err(_)) = difference {
        findings.push(DryFinding::indicative(
            FindingCode::NoEnd,
            message!("dry-no-end"),
            message!("dish-no-end-remedy"),
        ));
    }
    findings.extend(vessel.into_iter().flat_map(|vessel| slips(run, vessel)));
    DryRun {
        run: index,
        difference: difference.and_then(Result::ok),
        highest_c: vessel.map(|vessel| {
            let values = vessel.value.iter().copied();
            values.fold(f64::NEG_INFINITY, f64::max)
        }),
        reached: vessel.map_or_else(Vec::new, |vessel| reached(tested, vessel)),
        findings,
        initial_k_per_min,
        plateau: found,
    }
}

fn reached(tested: &Tested, vessel: &Series) -> Vec<Reached> {
    let asked = &tested.campaign.wishes.reached_c;
    let levels = if asked.is_empty() {
        USUAL_REACHED_C
    } else {
        asked
    };
    let levels = levels.iter();
    levels
        .map(|&celsius| Reached {
            celsius,
            after_s: first_at(vessel, celsius),
        })
        .collect()
}

/// Time from the first reading to a temperature, on a straight line between two readings, s.
fn first_at(vessel: &Series, celsius: f64) -> Option<f64> {
    let at = vessel.value.iter().position(|&value| value >= celsius)?;
    let before = at.checked_sub(1)?;
    let (low, high) = (vessel.value[before], vessel.value[at]);
    let step_s = seconds_between(vessel.time_us[before], vessel.time_us[at]);
    let so_far_s = seconds_between(vessel.time_us[0], vessel.time_us[before]);
    Some(so_far_s + step_s * (celsius - low) / (high - low))
}

/// Slope of the readings of the first ten minutes, or of the first two where they are further
/// apart, K/min.
fn first_rise(vessel: &Series) -> Option<f64> {
    let first_us = *vessel.time_us.first()?;
    let end_us = first_us + (FIRST_S * MICROSECONDS_PER_SECOND) as i64;
    let within = vessel.time_us.partition_point(|&time| time <= end_us);
    let count = within.max(2).min(vessel.time_us.len());
    slope_k_per_min(&vessel.time_us[..count], &vessel.value[..count])
}

/// Whether the sun is below the horizon in the middle of a plateau: then a clock or a zone is
/// wrong.
fn is_sun_down(tested: &Tested, plateau: &Plateau) -> bool {
    let site = &tested.campaign.site;
    let middle_us = plateau.span.from_us.midpoint(plateau.span.to_us);
    let sun = sun_position(
        middle_us as f64 / MICROSECONDS_PER_SECOND,
        site.latitude_deg,
        site.longitude_deg,
        site.elevation_m,
    );
    sun.is_some_and(|sun| sun.zenith_deg >= 90.0)
}

fn sun_down() -> DryFinding {
    DryFinding::indicative(
        FindingCode::SunDown,
        message!("dry-sun-down"),
        message!("dry-sun-down-remedy"),
    )
}

/// What a unit taken for another looks like.
fn slips(run: &Run, vessel: &Series) -> Vec<DryFinding> {
    let values = || vessel.value.iter().copied();
    let coldest_c = values().fold(f64::INFINITY, f64::min);
    let hottest_c = values().fold(f64::NEG_INFINITY, f64::max);
    let air = run
        .readings
        .ambient_c
        .iter()
        .flat_map(|air| air.value.iter());
    let air_c = air.copied().fold(f64::INFINITY, f64::min);
    let colder = (coldest_c < air_c - COLDER_BY_K).then(|| {
        DryFinding::indicative(
            FindingCode::ColderThanAir,
            message!(
                "dry-colder-than-air",
                below = kelvins(fixed(air_c - coldest_c, 0))
            ),
            message!("dry-unit-remedy"),
        )
    });
    let hot = (hottest_c > VERY_HOT_C).then(|| {
        DryFinding::note(
            FindingCode::VeryHot,
            message!("dry-very-hot", highest = celsius(fixed(hottest_c, 0))),
            message!("dry-unit-remedy"),
        )
    });
    colder.into_iter().chain(hot).collect()
}

/// What is left to rise on a plateau that still has a trend: with the time constant of the
/// vessel, its difference over its first rise, the trend goes on to trend times constant.
fn may_get_hotter(plateau: &Plateau, initial_k_per_min: Option<f64>) -> Option<DryFinding> {
    let constant_min = plateau.difference_k() / initial_k_per_min.filter(|rate| *rate > 0.0)?;
    let more_k = plateau.trend_k_per_min * constant_min;
    (more_k > WORTH_TELLING * plateau.difference_k()).then(|| {
        DryFinding::note(
            FindingCode::MayGetHotter,
            message!(
                "dry-may-get-hotter",
                rate = fixed(plateau.trend_k_per_min, 2),
                more = kelvins(fixed(more_k, 0))
            ),
            message!("dry-still-moves-remedy"),
        )
    })
}

/// Why there is no plateau, with its remedy.
fn finding(why: NoPlateau) -> DryFinding {
    match why {
        NoPlateau::NoVessel => DryFinding::indicative(
            FindingCode::NoVesselTemperature,
            message!("dry-no-vessel"),
            message!("dry-no-vessel-remedy"),
        ),
        NoPlateau::NoIrradiance => DryFinding::indicative(
            FindingCode::NoIrradiance,
            message!("dry-no-irradiance"),
            message!("dry-no-irradiance-remedy"),
        ),
        NoPlateau::NoAmbient => DryFinding::indicative(
            FindingCode::NoAmbient,
            message!("dry-no-ambient"),
            message!("dry-no-ambient-remedy"),
        ),
        NoPlateau::TooShort { needs_min } => DryFinding::indicative(
            FindingCode::TooShort,
            message!("dry-too-short", minutes = fixed(needs_min, 0)),
            message!("dry-too-short-remedy", minutes = fixed(needs_min, 0)),
        ),
        NoPlateau::SunUnsteady { needs_min } => DryFinding::indicative(
            FindingCode::SunUnsteady,
            message!("dry-sun-unsteady", minutes = fixed(needs_min, 0)),
            message!("dry-sun-unsteady-remedy"),
        ),
        NoPlateau::SunWeak { highest_w_m2 } => DryFinding::indicative(
            FindingCode::SunWeak,
            message!("dry-sun-weak", highest = fixed(highest_w_m2, 0)),
            message!("dry-sun-weak-remedy"),
        ),
        NoPlateau::StillMoves {
            k_per_min,
            vessel_c,
        } => {
            let said = if k_per_min > 0.0 {
                message!("dry-still-rises")
            } else {
                message!("dry-still-falls")
            };
            DryFinding::indicative(
                FindingCode::PlateauNotReached,
                said.with("rate", fixed(k_per_min.abs(), 2))
                    .with("vessel", celsius(fixed(vessel_c, 0))),
                message!("dry-still-moves-remedy"),
            )
        }
    }
}
