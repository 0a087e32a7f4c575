//! The hours of sun of a test day, and when to aim.

use jiff::civil::Date;

use crate::campaign::Campaign;
use crate::campaign::kinds::RunKind;
use crate::planning::aim::{SHORTEST_BY_HAND_S, aiming_times, spacing_s};
use crate::planning::day::sun_day;
use crate::planning::pace::sun_needs;
use crate::procedure::s580::Limits;
use crate::procedure::sky::LocalSky;
use crate::procedure::spans::TimeSpan;

/// So long after a time to aim it is still the thing to do, µs.
const STILL_DUE_US: i64 = 90_000_000;

/// The sun over one date, as a plan of it has it.
#[derive(Debug, Clone, PartialEq)]
pub struct SunHours {
    pub date: Date,
    pub kind: RunKind,
    /// The practice's hours about noon, or of a dry vessel those in which the sun is high.
    pub window: TimeSpan,
    /// Times at which to aim; `None` where the acceptance angle is not stated.
    pub aimings_us: Option<Vec<i64>>,
}

/// When to aim next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Aim {
    /// The acceptance half angle is not stated.
    NotStated,
    /// By a drive: there is no time between two aimings that a person keeps up, as stated in
    /// [`SHORTEST_BY_HAND_S`].
    AlwaysOn,
    /// It was to be aimed at a time, µs since 1970, UTC, that has just passed.
    Due(i64),
    /// At a time to come.
    Next(i64),
    /// Not again on this date.
    Done,
}

/// Where a time lies in the solar window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Window {
    OpensAt(i64),
    ClosesAt(i64),
    ClosedAt(i64),
}

/// The sun over a date; `None` where the date does not exist at the site.
pub fn sun_hours(
    campaign: &Campaign,
    limits: &Limits,
    kind: RunKind,
    date: Date,
) -> Option<SunHours> {
    let day = sun_day(&campaign.site, sun_needs(kind, limits), date)?;
    let sky = LocalSky::over(&campaign.site);
    let usable = day.usable.filter(|_| kind != RunKind::Cooling);
    let half_angle_deg = campaign.cooker.acceptance_half_angle_deg;
    let aimings_us = half_angle_deg.map(|half_angle_deg| {
        usable.map_or_else(Vec::new, |span| aiming_times(&sky, &span, half_angle_deg))
    });
    Some(SunHours {
        date,
        kind,
        window: day.window,
        aimings_us,
    })
}

impl SunHours {
    /// When to aim next, at a time in µs since 1970, UTC.
    pub fn aim(&self, now_us: i64) -> Aim {
        let Some(times) = &self.aimings_us else {
            return Aim::NotStated;
        };
        if spacing_s(times).is_some_and(|(shortest_s, _)| shortest_s < SHORTEST_BY_HAND_S) {
            return Aim::AlwaysOn;
        }
        let passed = times.partition_point(|&time_us| time_us <= now_us);
        let due = passed.checked_sub(1).map(|at| times[at]);
        match (due, times.get(passed)) {
            (Some(due), _) if now_us - due <= STILL_DUE_US => Aim::Due(due),
            (_, Some(next)) => Aim::Next(*next),
            (_, None) => Aim::Done,
        }
    }

    /// Where a time, µs since 1970, UTC, lies in the solar window.
    pub fn window_at(&self, now_us: i64) -> Window {
        let TimeSpan { from_us, to_us } = self.window;
        if now_us < from_us {
            Window::OpensAt(from_us)
        } else if now_us < to_us {
            Window::ClosesAt(to_us)
        } else {
            Window::ClosedAt(to_us)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const MINUTE_US: i64 = 60_000_000;

    fn hours(aimings: Option<&[i64]>) -> SunHours {
        SunHours {
            date: Date::constant(2026, 4, 14),
            kind: RunKind::Water,
            window: TimeSpan {
                from_us: 0,
                to_us: 240 * MINUTE_US,
            },
            aimings_us: aimings.map(|times| times.iter().map(|time| time * MINUTE_US).collect()),
        }
    }

    #[test]
    fn aiming_is_due_for_a_moment_and_then_the_next_one_is_told() {
        let day = hours(Some(&[0, 30, 60]));
        for (minute, expected) in [
            (-5, Aim::Next(0)),
            (0, Aim::Due(0)),
            (2, Aim::Next(30 * MINUTE_US)),
            (30, Aim::Due(30 * MINUTE_US)),
            (62, Aim::Done),
        ] {
            assert_eq!(day.aim(minute * MINUTE_US), expected, "{minute}");
        }
        assert_eq!(hours(None).aim(0), Aim::NotStated);
        assert_eq!(hours(Some(&[0, 1, 2])).aim(0), Aim::AlwaysOn);
    }

    #[test]
    fn the_window_opens_closes_and_is_closed() {
        let day = hours(None);
        let end = 240 * MINUTE_US;
        assert_eq!(day.window_at(-1), Window::OpensAt(0));
        assert_eq!(day.window_at(0), Window::ClosesAt(end));
        assert_eq!(day.window_at(end), Window::ClosedAt(end));
    }
}
