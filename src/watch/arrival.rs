//! When rows came, by the clocks of the logger and of this computer.

use std::path::{Path, PathBuf};
use std::time::Duration;

use super::trouble::Trouble;
use crate::units::seconds_between;

/// Periods of the logger without a row after which it is silent, and the fewest seconds.
const SILENT_PERIODS: f64 = 3.0;
const SILENT_LEAST_S: f64 = 5.0;
/// The same where one reading alone does not tell its period, s.
const SILENT_UNKNOWN_S: f64 = 600.0;
/// What the clocks of a logger and a computer may differ by, besides the logger's period, s.
const APART_S: f64 = 120.0;
/// What the time between two rows may differ from that between their coming, besides some
/// periods of the logger, s: a logger may hand over several rows at once.
const JUMP_S: f64 = 60.0;
/// The time of a look.
#[derive(Debug, Clone, Copy)]
pub struct Now {
    /// µs since 1970, UTC, by this computer.
    pub wall_us: i64,
    /// How long the watching has lasted: it never goes back.
    pub ran: Duration,
}

/// When the newest reading of a log came.
#[derive(Debug, Clone)]
pub struct Arrival {
    /// The log.
    pub path: PathBuf,
    /// Its newest reading, µs since 1970, UTC.
    newest_us: i64,
    /// When it was seen; what had come before the watching began was that long before.
    ran: Duration,
    silent_before: Duration,
    /// It came while watching, at that time by this computer's clock.
    wall_us: Option<i64>,
}

impl Arrival {
    /// What a log held already that was last written to some time ago.
    pub fn first(path: &Path, newest_us: i64, age: Duration, now: Now) -> Arrival {
        Arrival {
            path: path.to_owned(),
            newest_us,
            ran: now.ran,
            silent_before: age,
            wall_us: None,
        }
    }

    /// The same log at a later look, of a logger that writes every so many seconds, and whether
    /// its clock jumped between two rows that came while watching.
    pub fn then(
        &self,
        newest_us: i64,
        step_s: Option<f64>,
        now: Now,
    ) -> (Arrival, Option<Trouble>) {
        if newest_us == self.newest_us {
            return (self.clone(), None);
        }
        let later = Arrival {
            newest_us,
            ran: now.ran,
            silent_before: Duration::ZERO,
            wall_us: Some(now.wall_us),
            path: self.path.clone(),
        };
        let Some(wall_us) = self.wall_us else {
            return (later, None);
        };
        let between_s = seconds_between(self.newest_us, newest_us);
        let ran_s = now.ran.saturating_sub(self.ran).as_secs_f64();
        // A computer that slept knows it by its clock alone, one that was set anew by the time
        // that it ran.
        let waited_s = [ran_s, seconds_between(wall_us, now.wall_us)];
        let by_s = waited_s.map(|waited_s| between_s - waited_s);
        let most_s = JUMP_S + SILENT_PERIODS * step_s.unwrap_or(0.0);
        let is_jump = by_s.iter().all(|by_s| by_s.abs() > most_s);
        let jump = is_jump.then_some(Trouble::ClockJumped { by_s: by_s[0] });
        (later, jump)
    }

    /// The newest reading, µs since 1970, UTC.
    pub fn newest_us(&self) -> i64 {
        self.newest_us
    }

    /// Whether it came while watching.
    pub fn came(&self) -> bool {
        self.wall_us.is_some()
    }

    /// How long the logger has been silent, s, if that is longer than it should.
    pub fn silent_s(&self, step_s: Option<f64>, now: Now) -> Option<f64> {
        let silent = now.ran.saturating_sub(self.ran) + self.silent_before;
        let most_s = step_s.map_or(SILENT_UNKNOWN_S, |step_s| {
            (SILENT_PERIODS * step_s).max(SILENT_LEAST_S)
        });
        Some(silent.as_secs_f64()).filter(|silent_s| *silent_s > most_s)
    }

    /// That the clock of the rows is not that of this computer.
    pub fn clocks_apart(&self, step_s: Option<f64>) -> Option<Trouble> {
        let by_s = seconds_between(self.newest_us, self.wall_us?);
        let most_s = APART_S + SILENT_PERIODS * step_s.unwrap_or(0.0);
        (by_s.abs() > most_s).then_some(Trouble::ClocksApart { by_s })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(wall_s: i64, ran_s: u64) -> Now {
        Now {
            wall_us: wall_s * 1_000_000,
            ran: Duration::from_secs(ran_s),
        }
    }

    #[test]
    fn neither_sleep_nor_a_clock_set_anew_is_a_jump_of_the_rows() {
        let log = Path::new("day.csv");
        let first = Arrival::first(log, 0, Duration::ZERO, at(0, 0));
        let (second, _) = first.then(10_000_000, Some(10.0), at(10, 10));
        let jumps = |row_s: i64, now: Now| {
            let (_, jump) = second.then(row_s * 1_000_000, Some(10.0), now);
            jump.is_some()
        };
        assert!(!jumps(20, at(20, 20)));
        // The computer slept for an hour, in which it did not run.
        assert!(!jumps(3620, at(3620, 20)));
        // Its clock was put on by an hour.
        assert!(!jumps(20, at(3620, 20)));
        assert!(jumps(3620, at(20, 20)));
        assert!(second.came() && !first.came());
    }

    #[test]
    fn rows_handed_over_together_are_no_jump() {
        let log = Path::new("day.csv");
        let first = Arrival::first(log, 0, Duration::ZERO, at(0, 0));
        let (second, _) = first.then(300_000_000, Some(1.0), at(300, 300));
        let (_, jump) = second.then(600_000_000, Some(1.0), at(600, 600));
        assert_eq!(jump, None);
    }
}
