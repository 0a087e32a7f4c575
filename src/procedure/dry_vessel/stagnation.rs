//! The dry, empty vessel: how hot it gets, for each watt of sunlight.

use crate::campaign::Campaign;
use crate::campaign::classes::InstrumentKind;
use crate::campaign::model::{StagnationLight, StagnationTest};
use crate::error::Problem;
use crate::local_time::unix_seconds;
use crate::procedure::sky::LocalSky;
use crate::procedure::sources::{clear_sky_fraction, standard_of};
use crate::procedure::tested::Tested;
use crate::stats::combine::combined;

/// Limits of an oven thermometer whose uncertainty is not stated, K.
/// Common practice, no published source.
const OVEN_THERMOMETER_WITHIN_K: f64 = 10.0;
/// Coverage factor for 95 % of a normal distribution, rounded up.
const COVERAGE: f64 = 2.0;

/// What a test of the dry vessel says.
#[derive(Debug, Clone, PartialEq)]
pub struct Stagnation {
    pub irradiance_w_m2: f64,
    /// Vessel above ambient, K.
    pub difference_k: f64,
    /// The same for each W/m², K m²/W, with its expanded uncertainty for 95 %.
    pub per_irradiance_k_m2_w: f64,
    pub expanded_k_m2_w: f64,
}

/// Evaluates a campaign's tests of the dry vessel, in their order:
/// (Tp − Ta)/G, with u² = (u(Tp)² + u(Ta)²)/(Tp − Ta)² + (u(G)/G)², relative.
///
/// # Errors
/// A [`Problem`] for a time that the clocks of the site skipped.
///
/// # Source
/// The ratio is that of Mullick, Kandpal and Saxena 1987, Solar Energy 39, 353–360, there
/// for box cookers; from memory. Uncertainty: JCGM 100:2008, equation 12.
pub fn stagnations(tested: &Tested) -> Result<Vec<Stagnation>, Problem> {
    let campaign = &tested.campaign;
    let tests = campaign.stagnations.iter();
    tests.map(|test| evaluate(campaign, test)).collect()
}

fn evaluate(campaign: &Campaign, test: &StagnationTest) -> Result<Stagnation, Problem> {
    let (irradiance_w_m2, of_light) = match test.light {
        StagnationLight::Measured(irradiance_w_m2) => {
            let sensor = &campaign.instruments.irradiance;
            (
                irradiance_w_m2,
                standard_of(sensor, InstrumentKind::Irradiance)
                    .uncertainty
                    .size(),
            )
        }
        StagnationLight::ClearSky => {
            let time = test.time.unwrap_or_default();
            let local = test.date.to_datetime(time);
            let zone = &campaign.site.time_zone;
            let unix_s = unix_seconds(local, zone).ok_or_else(|| {
                let what = format!("{local} is no time in the site's zone");
                Problem::at(&campaign.file, what)
                    .item("[[stagnation]]")
                    .hint("correct date and time")
            })?;
            let normal_w_m2 = LocalSky::over(&campaign.site).clear(unix_s).normal_w_m2;
            (normal_w_m2, clear_sky_fraction())
        }
    };
    let vessel_k = test
        .uncertainty_k
        .unwrap_or(OVEN_THERMOMETER_WITHIN_K / 3.0_f64.sqrt());
    let ambient = &campaign.instruments.ambient_temperature;
    let ambient_k = standard_of(ambient, InstrumentKind::Temperature)
        .uncertainty
        .size();
    let difference_k = test.plateau_c - test.ambient_c;
    let per_irradiance_k_m2_w = difference_k / irradiance_w_m2;
    let effects = [vessel_k / difference_k, ambient_k / difference_k, of_light];
    Ok(Stagnation {
        irradiance_w_m2,
        difference_k,
        per_irradiance_k_m2_w,
        expanded_k_m2_w: COVERAGE * per_irradiance_k_m2_w * combined(&effects, |_, _| 0.0),
    })
}
