//! What `watch` says, to people.

use std::path::Path;

use super::check_verdict::verdict;
use super::lines::{Lines, Mark};
use super::watch_answer::answer;
use crate::campaign::kinds::RunKind;
use crate::language::{
    Message, Phrase, Words, celsius, clauses, date, fixed, kelvins, metres_per_second,
};
use crate::message;
use crate::units::{local_clock, seconds_between, zoned};
use crate::watch::State;
use crate::watch::day::{Aim, Window};
use crate::watch::growing::Running;
use crate::watch::state::Newest;
use crate::watch::trouble::time_of;

/// Adds how it stands, what to do, what is not as it should be, and the numbers.
pub fn describe(lines: &mut Lines, state: &State<'_>, folder: &Path, words: &Words) {
    let answer = answer(state, folder);
    lines.verdict(answer.mark, &words.say(answer.sentence));
    let next = [(message!("check-next"), answer.next)];
    add_rows(lines, next.into(), words);
    for trouble in &state.troubles {
        lines.item("", Mark::Reserved, "", &words.say(trouble.message()));
    }
    lines.blank();
    let mut rows = newest_rows(state);
    rows.extend(interval_rows(state));
    rows.extend(day_rows(state));
    rows.extend(so_far_rows(state, folder));
    rows.extend(head_rows(state));
    add_rows(lines, rows, words);
    let caution = match state.kind {
        RunKind::Dry => message!("watch-caution-dry"),
        RunKind::Water | RunKind::Cooling => message!("watch-caution"),
    };
    lines.blank().line(&words.say(caution));
}

type Rows = Vec<(Message, Phrase)>;

fn add_rows(lines: &mut Lines, rows: Rows, words: &Words) {
    let rows = rows.into_iter();
    let rows: Vec<(String, String)> = rows
        .map(|(label, text)| (words.say(label), words.say(text)))
        .collect();
    lines.rows("  ", &rows);
}

/// What the newest row holds.
fn newest_rows(state: &State<'_>) -> Rows {
    // What another day ended with would be taken for what is there now.
    let Some(newest) = state.newest.filter(|_| !state.is_waiting) else {
        return Vec::new();
    };
    let mut rows = Rows::new();
    let air = newest
        .ambient_c
        .map(|c| message!("watch-air", air = celsius(fixed(c, 1))));
    let tested = match state.kind {
        RunKind::Dry => newest.vessel_c.map(|c| (message!("watch-vessel"), c)),
        RunKind::Water | RunKind::Cooling => newest.water_c.map(|c| (message!("plan-water"), c)),
    };
    if let Some((label, tested_c)) = tested {
        let above = newest.ambient_c.map(|ambient_c| {
            message!(
                "watch-above",
                difference = kelvins(fixed(tested_c - ambient_c, 1))
            )
        });
        let told: Vec<Phrase> = std::iter::once(celsius(fixed(tested_c, 1)))
            .chain(above.map(Phrase::from))
            .chain(air.map(Phrase::from))
            .collect();
        rows.push((label, clauses(told)));
    }
    rows.extend(sky_row(&newest));
    rows
}

fn sky_row(newest: &Newest) -> Option<(Message, Phrase)> {
    // The limits are on what counts.
    let sun = newest.irradiance_w_m2.map(|sun| {
        let sun = fixed(sun, 0);
        Phrase::from(match newest.turned_irradiance_w_m2 {
            Some(turned) => message!(
                "watch-irradiance-turned",
                turned = fixed(turned, 0),
                irradiance = sun
            ),
            None => message!("watch-irradiance", irradiance = sun),
        })
    });
    let wind = newest.wind_m_s.map(|wind| {
        Phrase::from(message!(
            "watch-wind",
            wind = metres_per_second(fixed(wind, 1))
        ))
    });
    let told: Vec<Phrase> = sun.into_iter().chain(wind).collect();
    (!told.is_empty()).then(|| (message!("plan-sun"), clauses(told)))
}

/// What would spoil the interval that runs.
fn interval_rows(state: &State<'_>) -> Rows {
    let running = state.running().filter(|running| running.spoiled.is_empty());
    let row = running.map(|running| (message!("watch-spoils"), spoils(running)));
    row.into_iter().collect()
}

fn spoils(running: &Running) -> Phrase {
    let margins = &running.margins;
    let sun = margins.irradiance_w_m2.map(|(low, high)| {
        message!(
            "watch-spoils-irradiance",
            low = fixed(low.ceil(), 0),
            high = fixed(high.floor(), 0)
        )
    });
    let wind = margins.wind_m_s.map(|(most, mean)| {
        message!(
            "watch-spoils-wind",
            most = metres_per_second(fixed(most, 1)),
            mean = metres_per_second(fixed(mean, 1))
        )
    });
    let water = message!(
        "watch-spoils-water",
        most = celsius(fixed(margins.water_c, 1))
    );
    clauses(sun.into_iter().chain(wind).chain([water]))
}

/// Intervals of the day, aiming, and the solar window.
fn day_rows(state: &State<'_>) -> Rows {
    let mut rows = Rows::new();
    let zone = &state.campaign.site.time_zone;
    let at = |time_us: i64| local_clock(time_us, zone);
    let until = |time_us: i64| time_of(seconds_between(state.now_us, time_us));
    if state.kind == RunKind::Water {
        let gained = message!(
            "watch-gained",
            used = state.gained.used,
            all = state.gained.all
        );
        let missing = state.assessment.map(|found| &found.s580.conformity.missing);
        let missing = match missing {
            Some(Some(missing)) => Some(message!("watch-missing", missing = missing)),
            Some(None) => Some(message!("watch-missing-nothing")),
            None => None,
        };
        let today = zoned(state.now_us, zone).date();
        let (label, gained) = match state.gained.date == today {
            true => (message!("watch-today"), gained),
            false => {
                let on = date(state.gained.date);
                let gained = message!("watch-gained-on", date = on, gained = gained);
                (message!("watch-last-day"), gained)
            }
        };
        let told = std::iter::once(gained).chain(missing);
        rows.push((label, clauses(told)));
    }
    if state.kind == RunKind::Cooling {
        return rows;
    }
    let aim = state.aim().map(|aim| match aim {
        Aim::NotStated => message!("watch-aim-not-stated"),
        Aim::AlwaysOn => message!("watch-aim-always"),
        Aim::Due(us) => message!("watch-aim-due", clock = at(us)),
        Aim::Next(us) => message!("watch-at-in", clock = at(us), time = until(us)),
        Aim::Done => message!("watch-aim-done"),
    });
    rows.extend(aim.map(|aim| (message!("watch-aim"), aim.into())));
    let window = state.window().map(|window| match window {
        Window::OpensAt(us) => message!("watch-opens", clock = at(us), time = until(us)),
        Window::ClosesAt(us) => message!("watch-closes", clock = at(us), time = until(us)),
        Window::ClosedAt(us) => message!("watch-closed", clock = at(us)),
    });
    let label = match state.kind {
        RunKind::Dry => message!("plan-high-sun"),
        RunKind::Water | RunKind::Cooling => message!("plan-window"),
    };
    rows.extend(window.map(|window| (label, window.into())));
    rows
}

/// What `check` says, in its words.
fn so_far_rows(state: &State<'_>, folder: &Path) -> Rows {
    let Some(assessment) = state.assessment else {
        return Rows::new();
    };
    let Some(said) = verdict(assessment, folder).so_far else {
        return Rows::new();
    };
    let level = assessment.s580.conformity.level.describe();
    let zone = &state.campaign.site.time_zone;
    let said = match state.assessed_to_us {
        Some(to_us) => message!("watch-so-far", clock = seconds_clock(to_us, zone)),
        None => message!("watch-so-far-no-row"),
    }
    .with("said", said)
    .with("level", level);
    vec![(message!("check-so-far"), said.into())]
}

/// The time, the newest row, and the campaign.
fn head_rows(state: &State<'_>) -> Rows {
    let zone = &state.campaign.site.time_zone;
    let now = seconds_clock(state.now_us, zone);
    let time = match state.newest {
        Some(newest) => message!(
            "watch-time-text",
            now = now,
            row = seconds_clock(newest.time_us, zone)
        )
        .into(),
        None => Phrase::from(now),
    };
    let title: Phrase = match state.campaign.demonstration {
        true => message!("terminal-invented", title = &state.campaign.title).into(),
        false => (&state.campaign.title).into(),
    };
    vec![
        (message!("watch-time"), time),
        (message!("check-name"), title),
    ]
}

/// `12:14:20`.
fn seconds_clock(time_us: i64, zone: &jiff::tz::TimeZone) -> String {
    zoned(time_us, zone).strftime("%H:%M:%S").to_string()
}
