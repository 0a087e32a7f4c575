//! What is seen of a test day at one moment, for whoever shows it.

use jiff::civil::Date;

use super::day::{Aim, SunHours, Window};
use super::growing::{Growth, Running};
use super::trouble::Trouble;
use crate::campaign::Campaign;
use crate::campaign::kinds::RunKind;
use crate::logs::{Readings, Series};
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::s580::Limits;
use crate::procedure::s580::intervals::Verdict;
use crate::procedure::s580::reason::Reason;
use crate::units::seconds_between;

/// A quantity whose last reading is older than the newest row by more is not told, s.
const STALE_S: f64 = 600.0;

/// The newest reading; what was not measured is `None`.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Newest {
    /// µs since 1970, UTC.
    pub time_us: i64,
    pub water_c: Option<f64>,
    pub vessel_c: Option<f64>,
    pub ambient_c: Option<f64>,
    /// As the sensor says it.
    pub irradiance_w_m2: Option<f64>,
    /// As it counts, of a sensor that lies flat and whose readings are turned to face the sun.
    pub turned_irradiance_w_m2: Option<f64>,
    pub wind_m_s: Option<f64>,
}

impl Newest {
    /// Of readings, each quantity as it was read last; `None` where there is no reading.
    pub fn of(readings: &Readings) -> Option<Newest> {
        let time_us = *readings.time_us.last()?;
        let of = |series: &Option<Series>| series.as_ref().and_then(|one| fresh(one, time_us));
        Some(Newest {
            time_us,
            water_c: fresh(&readings.water_c, time_us),
            vessel_c: of(&readings.vessel_c),
            ambient_c: of(&readings.ambient_c),
            irradiance_w_m2: of(&readings.irradiance_w_m2),
            turned_irradiance_w_m2: None,
            wind_m_s: of(&readings.wind_m_s),
        })
    }

    /// Adds the irradiance that counts, from the readings of the run, which are turned.
    pub fn take_turned_irradiance(&mut self, of_run: &Readings) {
        let series = of_run.irradiance_w_m2.as_ref();
        self.turned_irradiance_w_m2 = series.and_then(|series| fresh(series, self.time_us));
    }
}

/// The last value, unless it is much older than the newest row.
fn fresh(series: &Series, newest_us: i64) -> Option<f64> {
    let (at_us, value) = (*series.time_us.last()?, *series.value.last()?);
    (seconds_between(at_us, newest_us) <= STALE_S).then_some(value)
}

/// Intervals of a date.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gained {
    /// Of the newest reading; this day where there is none.
    pub date: Date,
    pub used: usize,
    pub all: usize,
}

/// A test day at one moment.
#[derive(Debug, Clone)]
pub struct State<'w> {
    pub campaign: &'w Campaign,
    pub limits: &'w Limits,
    pub kind: RunKind,
    /// µs since 1970, UTC, by this computer.
    pub now_us: i64,
    pub newest: Option<Newest>,
    /// No row of this date came yet.
    pub is_waiting: bool,
    /// How long the logger has been silent, s, if that is longer than it should.
    pub silent_s: Option<f64>,
    /// Of the water; `None` for runs that heat none, or before there is one.
    pub growth: Option<&'w Growth>,
    pub gained: Gained,
    /// Its sun; `None` where the date does not exist at the site.
    pub sun: Option<&'w SunHours>,
    /// As `check` has it, and the last reading that it counts, µs since 1970, UTC.
    pub assessment: Option<&'w Assessment>,
    pub assessed_to_us: Option<i64>,
    pub troubles: Vec<Trouble>,
}

/// What a state comes to: where two differ, something happened.
#[derive(Debug, Clone, PartialEq)]
pub struct Gist {
    is_waiting: bool,
    is_silent: bool,
    settled: usize,
    used: usize,
    spoiled: Vec<Reason>,
    level: Option<Level>,
    is_aim_due: bool,
    window: Option<std::mem::Discriminant<Window>>,
    troubles: Vec<&'static str>,
}

impl State<'_> {
    /// The interval that runs now; none is told where no row comes.
    pub fn running(&self) -> Option<&Running> {
        let running = self.growth?.running.as_ref();
        running.filter(|_| !self.is_waiting)
    }

    /// When to aim.
    pub fn aim(&self) -> Option<Aim> {
        Some(self.sun?.aim(self.now_us))
    }

    /// Where this moment lies in the solar window.
    pub fn window(&self) -> Option<Window> {
        Some(self.sun?.window_at(self.now_us))
    }

    /// Start of the last interval that was spoiled, µs since 1970, UTC: of the one that runs, else
    /// of the one that ended last.
    pub fn spoiled_from_us(&self) -> Option<i64> {
        let running = self.running().filter(|running| !running.spoiled.is_empty());
        let last = || {
            let (span, verdict) = self.growth?.last.as_ref()?;
            matches!(verdict, Verdict::SetAside(_)).then_some(span.from_us)
        };
        running
            .map(|running| running.so_far.span.from_us)
            .or_else(last)
    }

    /// What it comes to.
    pub fn gist(&self) -> Gist {
        let spoiled = self.running().map(|running| &running.spoiled);
        Gist {
            is_waiting: self.is_waiting,
            is_silent: self.silent_s.is_some(),
            settled: self.growth.map_or(0, |growth| growth.settled),
            used: self.gained.used,
            spoiled: spoiled
                .into_iter()
                .flatten()
                .map(|fault| fault.reason)
                .collect(),
            level: self.assessment.map(|found| found.s580.conformity.level),
            is_aim_due: matches!(self.aim(), Some(Aim::Due(_))),
            window: self.window().map(|window| std::mem::discriminant(&window)),
            troubles: self.troubles.iter().map(Trouble::kind).collect(),
        }
    }
}
