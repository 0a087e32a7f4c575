//! A campaign and its logs to everything that the procedures make of them.

use super::acceptance::{self, Acceptance};
use super::box_cooker::{BoxFigures, box_figures};
use super::cooking::{DangerZone, Prospect, danger_zone, look_ahead};
use super::dish::{DishFigures, dish_figures};
use super::dry_vessel::{DryRuns, Stagnation, dry_runs, stagnations};
use super::efficiency::{Efficiency, efficiency};
use super::heat_balance::{self, Heat, HeatBalance};
use super::notice::{Notice, outside};
use super::s580::{self, Limits, S580};
use super::slips::find_slips;
use super::tested::{Tested, gather};
use crate::campaign::Campaign;
use crate::campaign::kinds::ProcedureKey;
use crate::error::{Error, Problem, Result};
use crate::logs::Log;

/// What was tested, the result of each procedure, and what follows for the kitchen.
#[derive(Debug, Clone)]
pub struct Assessment {
    pub tested: Tested,
    /// The rating by ASAE S580.1.
    pub s580: S580,
    /// Gain and loss; `None` where they cannot be fitted, or the campaign leaves them out.
    pub heat_balance: Option<HeatBalance>,
    /// The same of the water alone, whatever the vessels store: what is said of pots, months and
    /// other sun rests on it.
    pub water_balance: Option<HeatBalance>,
    /// How far the sun may stand off the axis; `None` where no log tells when the cooker was aimed,
    /// or the heat balance is left out.
    pub acceptance: Option<Acceptance>,
    /// The campaign's tests of the dry vessel that were typed in, in their order.
    pub dry_vessel: Vec<Stagnation>,
    /// Its dry runs.
    pub dry_runs: DryRuns,
    /// `None` where they do not apply.
    pub box_figures: Option<BoxFigures>,
    pub dish_figures: Option<DishFigures>,
    pub efficiency: Option<Efficiency>,
    /// `None` without a line or a heat balance.
    pub prospect: Option<Prospect>,
    /// Heating that would leave food too long where bacteria grow.
    pub danger_zone: Option<DangerZone>,
    pub notices: Vec<Notice>,
}

impl Assessment {
    /// Whether the water was read at steps too long for any interval of the practice, but short
    /// enough for the heat balance.
    pub fn is_read_too_seldom(&self) -> bool {
        let balance = self.water_balance.as_ref();
        balance.is_some_and(|balance| balance.far_apart.is_some())
    }
}

/// Applies every procedure.
///
/// `logs` are those of `campaign.runs`, in the same order.
///
/// # Errors
/// [`Error::Campaign`] for own limits between which nothing lies, for a time that the clocks
/// of the site skipped, and as [`gather`].
pub fn assess(campaign: Campaign, logs: Vec<Log>) -> Result<Assessment> {
    let refuse = |problem: Problem| Error::Campaign(problem.into());
    let limits = Limits::of_campaign(&campaign).map_err(refuse)?;
    let tested = gather(campaign, logs)?;
    let s580 = s580::rate(&tested, limits);
    let dry_vessel = stagnations(&tested).map_err(refuse)?;
    let water_balance = heat_balance::fit(&tested, &s580, Heat::OfWater);
    let heat_balance = printed_balance(&tested, &s580, water_balance.as_ref());
    let acceptance = acceptance::fit(&tested, &s580.limits);
    let dry_runs = dry_runs(&tested);
    let box_figures = box_figures(&tested, &dry_runs);
    let dish_figures = dish_figures(&tested, heat_balance.as_ref().or(water_balance.as_ref()));
    // The loss that is printed, where it is.
    let printed = heat_balance.as_ref().or(water_balance.as_ref());
    let efficiency = efficiency(&tested, &s580, printed);
    let prospect = look_ahead(&tested, &s580, water_balance.as_ref());
    let cooking = prospect.as_ref().map(|prospect| &prospect.cooking);
    let danger_zone = danger_zone(&tested.runs, cooking);
    let notices = notices(&tested, &s580, danger_zone.as_ref());
    Ok(Assessment {
        tested,
        s580,
        heat_balance,
        water_balance,
        acceptance,
        dry_vessel,
        dry_runs,
        box_figures,
        dish_figures,
        efficiency,
        prospect,
        danger_zone,
        notices,
    })
}

/// The heat balance that is printed, with the vessels' heat where that is known; `None` where it
/// cannot be fitted or the campaign leaves it out.
fn printed_balance(
    tested: &Tested,
    s580: &S580,
    of_water: Option<&HeatBalance>,
) -> Option<HeatBalance> {
    let campaign = &tested.campaign;
    if campaign.procedures.leaves_out(ProcedureKey::HeatBalance) {
        None
    } else if campaign.vessel_heat.is_some() {
        heat_balance::fit(tested, s580, Heat::OfWaterAndVessels)
    } else {
        of_water.cloned()
    }
}

/// Every notice: where files lie, then run by run, then of the campaign as a whole.
fn notices(tested: &Tested, s580: &S580, danger: Option<&DangerZone>) -> Vec<Notice> {
    let mut notices: Vec<Notice> = outside(&tested.campaign).into_iter().collect();
    for (run, screening) in tested.runs.iter().zip(&s580.screenings) {
        notices.extend(run.notices.iter().cloned().map(Notice::Run));
        notices.extend(screening.notice.iter().cloned().map(Notice::S580));
        notices.extend(run.reading_notices.iter().cloned().map(Notice::Run));
        notices.extend(screening.idle.iter().cloned().map(Notice::S580));
    }
    for run in tested.cooling_runs.iter().chain(&tested.dry_runs) {
        let told = run.notices.iter().chain(&run.reading_notices);
        notices.extend(told.cloned().map(Notice::Run));
    }
    notices.extend(find_slips(tested, s580).into_iter().map(Notice::Slip));
    notices.extend(s580.notices.iter().cloned().map(Notice::S580));
    notices.extend(danger.cloned().map(Notice::DangerZone));
    // Wet or dry, it is told last.
    let line = s580.line();
    let above_film = line.and_then(|line| s580::notice::above_film(&tested.campaign.cooker, line));
    notices.extend(above_film.map(Notice::S580));
    notices
}
