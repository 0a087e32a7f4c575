//! How long food would stay where bacteria grow.

use super::pots::{Cooking, HOT_C, TimeRange};
use crate::language::{Message, celsius, duration, short};
use crate::message;
use crate::procedure::run::Run;
use crate::units::{SECONDS_PER_HOUR, seconds_between};

/// Temperature below which bacteria hardly grow, °C; the range ends at [`HOT_C`].
///
/// # Source
/// WHO, Five Keys to Safer Food (2006), key 4.
pub const COLD_C: f64 = 5.0;
/// Longest time that food may stay between, s, and the same in hot air.
///
/// # Source
/// USDA FSIS, danger zone 40 to 140 °F: two hours, one hour above 90 °F (32 °C).
const LONGEST_S: f64 = 2.0 * SECONDS_PER_HOUR;
const LONGEST_IN_HEAT_S: f64 = SECONDS_PER_HOUR;
/// Hot air, °C.
const HOT_AIR_C: f64 = 32.0;

/// How bad a warning of food safety is: the one that is greater is worse.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Danger {
    /// By the slow end of what is to be expected, the load never gets hot.
    pub is_endless: bool,
    /// The longest stay that is stated, in units of the longest allowed.
    pub times_allowed: f64,
}

/// Heating that leaves food too long between 5 and 60 °C.
#[derive(Debug, Clone, PartialEq)]
pub struct DangerZone {
    /// Longest time allowed, s.
    pub longest_s: f64,
    /// The run that stayed longest, and how long, s, if that is too long.
    pub measured: Option<(String, f64)>,
    /// With the load tested, if that may be too long by the slow end of its range; `None`
    /// inside where it never gets to 60 °C.
    pub predicted: Option<Option<TimeRange>>,
}

impl DangerZone {
    /// How bad it is.
    pub fn danger(&self) -> Danger {
        let slow_s = |time: TimeRange| time.longest_s;
        let is_endless = self.predicted.map(|time| time.and_then(slow_s).is_none());
        let measured_s = self.measured.as_ref().map(|(_, seconds)| *seconds);
        let predicted_s = self.predicted.flatten();
        let predicted_s = predicted_s.map(|time| time.longest_s.unwrap_or(time.best_s));
        let seconds = measured_s.into_iter().chain(predicted_s);
        Danger {
            is_endless: is_endless.unwrap_or_default(),
            times_allowed: seconds.fold(0.0, f64::max) / self.longest_s,
        }
    }

    /// What it says.
    pub fn message(&self) -> Message {
        let hot = || celsius(short(HOT_C));
        let predicted = self.predicted.map(|predicted| match predicted {
            None => message!("danger-expected-never", hot = hot()),
            Some(TimeRange {
                best_s,
                shortest_s,
                longest_s,
            }) => match longest_s {
                Some(longest_s) => message!("danger-expected", longest = duration(longest_s)),
                None => message!("danger-expected-open"),
            }
            .with("time", duration(best_s))
            .with("hot", hot())
            .with("shortest", duration(shortest_s)),
        });
        let said = match (&self.measured, predicted) {
            (Some((run, seconds)), Some(predicted)) => message!(
                "danger-both",
                run = run,
                time = duration(*seconds),
                predicted = predicted
            ),
            (Some((run, seconds)), None) => {
                message!("danger-measured", run = run, time = duration(*seconds))
            }
            (None, Some(predicted)) => message!("danger-predicted", predicted = predicted),
            (None, None) => unreachable!("a danger is measured or predicted"),
        };
        said.with(
            "zone",
            message!("danger-zone", cold = celsius(short(COLD_C)), hot = hot()),
        )
        .with("longest", duration(self.longest_s))
    }
}

/// Weighs what was measured and what is to be expected; `None`: nothing to warn of.
pub fn danger_zone(runs: &[Run], cooking: Option<&Cooking>) -> Option<DangerZone> {
    let is_hot_air = cooking.is_some_and(|cooking| cooking.ambient_c > HOT_AIR_C);
    let longest_s = if is_hot_air {
        LONGEST_IN_HEAT_S
    } else {
        LONGEST_S
    };
    let measured = runs
        .iter()
        .map(|run| (run.plan.label.clone(), between_s(run)))
        .filter(|(_, seconds)| *seconds > longest_s)
        .max_by(|one, two| one.1.total_cmp(&two.1));
    let predicted = cooking
        .map(|cooking| cooking.to_hot)
        .filter(|time| is_longer(*time, longest_s));
    let is_warned = measured.is_some() || predicted.is_some();
    is_warned.then_some(DangerZone {
        longest_s,
        measured,
        predicted,
    })
}

/// Whether a time may be longer, by the slow end of its range; `None`: it is never reached.
fn is_longer(time: Option<TimeRange>, longest_s: f64) -> bool {
    let slow_s = time.and_then(|time| time.longest_s);
    slow_s.is_none_or(|slow_s| slow_s > longest_s)
}

/// Time that the water of a run spent between 5 and 60 °C on its way up, s.
fn between_s(run: &Run) -> f64 {
    let water = &run.readings.water_c;
    let readings = water.time_us.iter().zip(&water.value);
    let on_the_way = readings.take_while(|(_, celsius)| **celsius < HOT_C);
    let inside: Vec<i64> = on_the_way
        .filter(|(_, celsius)| **celsius >= COLD_C)
        .map(|(time_us, _)| *time_us)
        .collect();
    let (first, last) = (inside.first(), inside.last());
    first
        .zip(last)
        .map_or(0.0, |(from_us, to_us)| seconds_between(*from_us, *to_us))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn warning(measured_h: Option<f64>, predicted: Option<Option<TimeRange>>) -> DangerZone {
        let measured = measured_h.map(|hours| ("a.csv".to_owned(), hours * SECONDS_PER_HOUR));
        DangerZone {
            longest_s: LONGEST_S,
            measured,
            predicted,
        }
    }

    fn expected(longest_h: Option<f64>) -> Option<TimeRange> {
        Some(TimeRange {
            best_s: SECONDS_PER_HOUR,
            shortest_s: SECONDS_PER_HOUR,
            longest_s: longest_h.map(|hours| hours * SECONDS_PER_HOUR),
        })
    }

    #[test]
    fn a_longer_stay_is_a_worse_danger_and_one_without_an_end_is_the_worst() {
        let rising = [
            warning(Some(2.05), None),
            warning(None, Some(expected(Some(3.0)))),
            warning(Some(3.5), Some(expected(Some(3.0)))),
            warning(Some(6.0), None),
            warning(Some(2.5), Some(expected(None))),
            warning(Some(6.0), Some(None)),
        ];
        let dangers = rising.each_ref().map(DangerZone::danger);
        assert!(dangers.is_sorted(), "{dangers:?}");
        assert_eq!(dangers[3].times_allowed, 3.0);
    }

    #[test]
    fn the_same_stay_is_worse_where_less_is_allowed() {
        let in_heat = DangerZone {
            longest_s: LONGEST_IN_HEAT_S,
            ..warning(Some(3.0), None)
        };
        assert!(in_heat.danger() > warning(Some(5.0), None).danger());
    }
}
