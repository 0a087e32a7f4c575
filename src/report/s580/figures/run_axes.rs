//! One set of axes for all runs of a campaign, with the limits that are drawn on them.

use crate::language::{Phrase, Words, fixed, joined, short};
use crate::logs::Series;
use crate::procedure::s580::limits::LimitKey;
use crate::procedure::{Assessment, Run};
use crate::report::figures::fit::width_pt;
use crate::report::s580::lanes::Lane;
use crate::report::s580::run_grid::RunClock;

/// Size of all text in the figure of a run, points.
pub const TEXT_PT: f64 = 7.0;
/// Room between an axis and what stands left of it, points.
pub const GAP_PT: f64 = 3.5;
/// Most of a figure's width that stands left of the axes, as a share.
const MOST_LEFT: f64 = 0.38;
/// The lowest temperature of the axis is a multiple of this, and so far below the coldest, °C.
const ROUND_C: f64 = 10.0;
const BELOW_COLDEST_K: f64 = 9.0;
/// Room above all temperatures, for the name of the boiling point, as a share of them.
const ABOVE_HOTTEST: f64 = 0.12;
/// Room above the highest irradiance and wind, as a share of them.
const ABOVE_HIGHEST: f64 = 0.1;
/// Least range of an axis that begins at zero, in its unit.
const LEAST_RANGE: f64 = 0.5;

/// A limit at an axis.
pub struct AxisLimit {
    pub value: f64,
    /// Its number; that of the first limit of an axis has the unit, too.
    pub name: String,
}

/// An upright axis.
pub struct Scale {
    /// From its lower to its upper end.
    pub range: (f64, f64),
    pub limits: Vec<AxisLimit>,
    /// Up to where it has numbers.
    pub last_number: f64,
}

/// The axes, and what is drawn alike for each run.
pub struct RunAxes {
    pub clock: RunClock,
    pub temperature: Scale,
    /// `None`: no run has it.
    pub irradiance: Option<Scale>,
    pub wind: Option<Scale>,
    pub boiling_point_c: f64,
    /// How far above ambient the water window begins, and how far below boiling it ends, K;
    /// `None` where that end is fixed.
    pub above_ambient_k: Option<f64>,
    pub below_boiling_k: Option<f64>,
    pub lanes: Vec<Lane>,
    pub lane_names: Vec<String>,
}

impl RunAxes {
    /// The axes of a campaign's runs.
    pub fn of(assessment: &Assessment, words: &Words) -> Self {
        let limits = &assessment.s580.limits;
        let runs = &assessment.tested.runs;
        let zone = &assessment.tested.campaign.site.time_zone;
        let boiling_point_c = assessment.tested.boiling_point_c;
        let lanes = Lane::of_campaign(assessment);
        let below_boiling_k = limits.get(LimitKey::WaterBelowBoiling);
        let moving_end = below_boiling_k.map(|margin_k| {
            let value = boiling_point_c - margin_k;
            (value, fixed(value, 1))
        });
        let own_ends = [LimitKey::WaterMax, LimitKey::WaterMin];
        let own_ends = own_ends.iter().filter_map(|key| limits.get(*key));
        let own_ends = own_ends.map(|value| (value, short(value)));
        let named =
            |limits: Vec<(f64, Phrase)>, unit: &'static str| axis_limits(limits, unit, words);
        let on_intervals = |keys: [LimitKey; 2], unit: &'static str| {
            let values = keys.into_iter().filter_map(|key| limits.get(key));
            named(values.map(|value| (value, short(value))).collect(), unit)
        };
        RunAxes {
            clock: RunClock::of(runs, zone),
            temperature: Scale {
                range: temperatures_c(runs, boiling_point_c),
                limits: named(moving_end.into_iter().chain(own_ends).collect(), "°C"),
                last_number: boiling_point_c,
            },
            irradiance: from_zero(
                runs,
                |run| run.readings.irradiance_w_m2.as_ref(),
                on_intervals([LimitKey::IrradianceMax, LimitKey::IrradianceMin], "W/m²"),
            ),
            wind: from_zero(
                runs,
                |run| run.readings.wind_m_s.as_ref(),
                on_intervals([LimitKey::WindMean, LimitKey::WindGust], "m/s"),
            ),
            boiling_point_c,
            above_ambient_k: limits.get(LimitKey::WaterAboveAmbient),
            below_boiling_k,
            lane_names: lanes.iter().map(|lane| words.say(lane.name())).collect(),
            lanes,
        }
    }

    /// Room left of the axes, on a figure of a width, points.
    pub fn left_pt(&self, figure_pt: f64) -> f64 {
        let scales = [
            Some(&self.temperature),
            self.irradiance.as_ref(),
            self.wind.as_ref(),
        ];
        let limits = scales.into_iter().flatten().flat_map(|scale| &scale.limits);
        let names = limits.map(|limit| &limit.name).chain(&self.lane_names);
        let widths = names.map(|name| width_pt(name, TEXT_PT));
        (widths.fold(0.0, f64::max) + GAP_PT + 0.5).min(MOST_LEFT * figure_pt)
    }
}

fn temperatures_c(runs: &[Run], boiling_point_c: f64) -> (f64, f64) {
    let of_run = |run: &Run| {
        let ambient = run.readings.ambient_c.as_ref();
        let series = [Some(&run.readings.water_c), ambient].into_iter().flatten();
        extremes(series.flat_map(|series| series.value.iter().copied()))
    };
    let (coldest_c, hottest_c) = extremes(
        runs.iter()
            .map(of_run)
            .flat_map(|(low, high)| [low, high])
            .chain([boiling_point_c]),
    );
    let low = ((coldest_c - BELOW_COLDEST_K) / ROUND_C).floor() * ROUND_C;
    (low, hottest_c + ABOVE_HOTTEST * (hottest_c - low))
}

fn extremes(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    })
}

/// An axis from zero, or from the lowest value below it, that holds a quantity and the first
/// of its limits; `None`: no run has the quantity.
fn from_zero(
    runs: &[Run],
    of_run: fn(&Run) -> Option<&Series>,
    mut limits: Vec<AxisLimit>,
) -> Option<Scale> {
    let measured: Vec<&Series> = runs.iter().filter_map(of_run).collect();
    if measured.is_empty() {
        return None;
    }
    let values = measured
        .iter()
        .flat_map(|series| series.value.iter().copied());
    let first = limits.first().map(|limit| limit.value);
    let (low, high) = extremes(values.chain(first).chain([0.0, LEAST_RANGE]));
    limits.retain(|limit| (low..=high).contains(&limit.value));
    Some(Scale {
        range: (low, high + ABOVE_HIGHEST * (high - low)),
        limits,
        last_number: high,
    })
}

/// Limits with their names, of which the first has the unit.
fn axis_limits(limits: Vec<(f64, Phrase)>, unit: &'static str, words: &Words) -> Vec<AxisLimit> {
    let named = limits.into_iter().enumerate();
    let named = named.map(|(place, (value, said))| AxisLimit {
        value,
        name: words.say(match place {
            0 => joined([said, unit.into()], " "),
            _ => said,
        }),
    });
    named.collect()
}
