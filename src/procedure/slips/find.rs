//! Every slip of a campaign, in the order in which it is told.

use super::celsius::celsius_as_fahrenheit;
use super::dates::date_slips;
use super::exchanged::exchanged;
use super::load::load_slips;
use super::notice::SlipNotice;
use super::odd_run::odd_run;
use super::stuck::stuck_sensors;
use super::sun::sun_slip;
use super::zone::far_from_zone;
use crate::procedure::s580::S580;
use crate::procedure::s580::notice::S580Notice;
use crate::procedure::tested::Tested;

/// Every slip: of the site, of dates, run by run, of the load, and of a run among the others.
pub fn find_slips(tested: &Tested, s580: &S580) -> Vec<SlipNotice> {
    let noon_is_odd = s580
        .screenings
        .iter()
        .any(|screening| matches!(screening.notice, Some(S580Notice::OddSolarNoon { .. })));
    // Solar noon has given it away already.
    let far = far_from_zone(&tested.campaign.site).filter(|_| !noon_is_odd);
    // A wrong place has its sun at wrong times: then the clocks are not at fault.
    let is_misplaced = noon_is_odd || far.is_some();
    let mut slips: Vec<SlipNotice> = far.into_iter().map(SlipNotice::FarFromZone).collect();
    slips.extend(date_slips(tested).into_iter().map(SlipNotice::Date));
    for run in tested.all_runs() {
        let sun = sun_slip(tested, run).filter(|_| !is_misplaced);
        slips.extend(sun.map(SlipNotice::Sun));
        slips.extend(exchanged(run).map(SlipNotice::WaterAndAirExchanged));
        let celsius = celsius_as_fahrenheit(tested, run);
        slips.extend(celsius.map(SlipNotice::CelsiusAsFahrenheit));
        let stuck = stuck_sensors(tested, run).into_iter();
        slips.extend(stuck.map(SlipNotice::StuckSensor));
    }
    let odd_run = odd_run(tested, s580);
    let loads = load_slips(tested, s580, odd_run.as_ref());
    // A load in another unit is why.
    let odd_run = odd_run.filter(|odd| !loads.iter().any(|load| load.runs.contains(&odd.log)));
    slips.extend(loads.into_iter().map(SlipNotice::Load));
    slips.extend(odd_run.map(SlipNotice::OddRun));
    slips
}
