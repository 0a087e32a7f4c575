//! Times to heat water, a row each, with their ranges on a strip.

use serde::Serialize;

use super::calls::Calls;
use super::lines::{drawn, left_out};
use crate::comparison::{Comparison, HEATED_KG};
use crate::language::{Message, Phrase, Words, celsius, duration, fixed, kilograms, short};
use crate::message;
use crate::procedure::cooking::pots::{START_C, TimeRange};
use crate::procedure::heat_balance::balance::HeatBalance;
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
use crate::report::comparison::figures::strips::AXIS_PT;

/// Name of the drawing of the axis.
const AXIS: &str = "heating-axis.svg";
/// Width of the plot, points.
const PLOT_PT: f64 = 170.0;
/// Height of a row, points.
const ROW_PT: f64 = 15.0;

/// The times.
#[derive(Debug, Clone, Serialize)]
pub struct HeatingPart {
    pub title: String,
    pub axis: String,
    pub axis_height_pt: f64,
    pub plot_pt: f64,
    pub row_pt: f64,
    pub rows: Vec<HeatingRow>,
    pub note: String,
    /// That others are left out; empty where none is.
    pub left_out: String,
}

/// A campaign's time.
#[derive(Debug, Clone, Serialize)]
pub struct HeatingRow {
    pub number: String,
    pub name: String,
    /// `1 h 5 min (58 min – 1 h 15 min)`, or that it does not get there.
    pub time: String,
    /// Name of the drawing of its strip.
    pub strip: String,
    #[serde(skip)]
    pub range: Option<TimeRange>,
    #[serde(skip)]
    pub place: usize,
}

/// Puts the times into words; `None` where no campaign has a heat balance.
pub fn heating(comparison: &Comparison, calls: &Calls, words: &Words) -> Option<HeatingPart> {
    let ambient_c = comparison.ambient_c?;
    let with_balance = drawn(comparison).filter(|(_, place)| {
        let balance = &comparison.campaigns[*place].water_balance;
        balance.is_some()
    });
    let rows: Vec<HeatingRow> = with_balance
        .map(|(rank, place)| HeatingRow {
            number: calls.number(place).to_string(),
            name: calls.name(place).to_owned(),
            time: words.say(spoken_heating(comparison.heating[place])),
            strip: format!("heating-{}.svg", rank + 1),
            range: comparison.heating[place],
            place,
        })
        .collect();
    let has_one_day = drawn(comparison).any(|(_, place)| {
        let balance = comparison.campaigns[place].water_balance.as_ref();
        balance.is_some_and(HeatBalance::is_of_one_day)
    });
    (!rows.is_empty()).then(|| HeatingPart {
        title: words.say(heated(comparison)),
        axis: AXIS.to_owned(),
        axis_height_pt: AXIS_PT,
        plot_pt: PLOT_PT,
        row_pt: ROW_PT,
        rows,
        note: words.say(
            match has_one_day {
                true => message!("heating-note-one-day"),
                false => message!("heating-note"),
            }
            .with("irradiance", fixed(STANDARD_IRRADIANCE_W_M2, 0))
            .with("ambient", celsius(fixed(ambient_c, 1))),
        ),
        left_out: left_out(comparison, words),
    })
}

/// `2 kg of water from 20 to 95 °C`.
fn heated(comparison: &Comparison) -> Message {
    let target_c = comparison.target_c;
    let is_whole = (target_c - target_c.round()).abs() < 0.05;
    message!(
        "heating-title",
        load = kilograms(short(HEATED_KG)),
        start = celsius(fixed(START_C, 0)),
        target = celsius(fixed(target_c, usize::from(!is_whole))),
        irradiance = fixed(STANDARD_IRRADIANCE_W_M2, 0)
    )
}

fn spoken_heating(time: Option<TimeRange>) -> Phrase {
    let Some(time) = time else {
        return message!("heating-never").into();
    };
    let (best, shortest) = (duration(time.best_s), duration(time.shortest_s));
    match time.longest_s {
        Some(longest_s) => message!(
            "heating-time",
            best = best,
            shortest = shortest,
            longest = duration(longest_s)
        ),
        None => message!("heating-time-or-never", best = best, shortest = shortest),
    }
    .into()
}
