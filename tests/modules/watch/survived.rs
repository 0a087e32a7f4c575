//! What happens to a log, a clock and a campaign file on a test day: it is told, and ends nothing.

use std::fs;

use simmerline::watch::Look;

use super::day::{Day, row, rows};
use crate::kit::header::HEADER;
#[cfg(unix)]
use crate::pipeline::trial::{make_pipe, within};

#[test]
fn a_row_is_seen_at_the_next_look_and_assessed_later() {
    let mut day = Day::watched(3000);
    assert_eq!((day.newest_s(), day.assessed_s()), (2990, 2990));
    assert_eq!(day.look(0.1), Look::Same);
    day.append(&row(3000));
    assert_eq!(day.look(0.1), Look::Changed);
    assert_eq!((day.newest_s(), day.assessed_s()), (3000, 2990));
    day.look(0.1);
    assert_eq!(day.assessed_s(), 2990);
    day.look_much_later();
    assert_eq!(day.assessed_s(), 3000);
    assert_eq!(day.troubles(), [""; 0]);
}

#[test]
fn the_end_of_an_interval_is_assessed_at_once() {
    // The fifth interval ends 3,000 s after the start.
    let mut day = Day::watched(2990);
    let settled = |day: &mut Day| day.state().growth.unwrap().settled;
    assert_eq!(settled(&mut day), 4);
    let before = day.state().gained;
    day.append(&rows(2990, 3010));
    // Less than the routine takes at the least, and many times what an assessment costs.
    day.look(60.0);
    assert_eq!(settled(&mut day), 5);
    assert_eq!(day.assessed_s(), 3000);
    assert_eq!(before.used, day.state().gained.used);
}

#[test]
fn a_half_written_line_is_not_judged_until_it_ends() {
    let mut day = Day::watched(3000);
    let whole = row(3000);
    // As it stands, it would be a reading of 4 °C.
    let (half, rest) = whole.split_at(whole.find(',').unwrap() + 2);
    day.append(half);
    day.look(0.1);
    assert_eq!(day.newest_s(), 2990);
    assert_eq!(day.troubles(), [""; 0]);
    day.look(3.0);
    assert_eq!(day.troubles(), ["line"]);
    day.look_much_later();
    assert_eq!((day.newest_s(), day.assessed_s()), (2990, 2990));
    day.append(rest);
    day.look(0.1);
    assert_eq!(day.newest_s(), 3000);
    assert_eq!(day.state().newest.unwrap().water_c.unwrap().round(), 53.0);
    assert!(!day.troubles().contains(&"line"));
}

#[test]
fn a_log_that_is_written_anew_counts_as_it_stands() {
    let mut day = Day::watched(3000);
    // Other rows, as many bytes as before and more.
    let text = format!("{HEADER}\n{}", rows(0, 3600).replace(",26.0,", ",27.0,"));
    day.write("day-2.csv", &text);
    day.look_much_later();
    assert_eq!(day.newest_s(), 3590);
    assert_eq!(day.state().newest.unwrap().ambient_c, Some(27.0));
    assert!(day.troubles().contains(&"anew"));
    // Told for a while.
    day.look(1000.0);
    assert!(!day.troubles().contains(&"anew"));
}

#[test]
fn a_log_that_is_written_anew_with_fewer_rows_is_no_jump_of_its_clock() {
    let mut day = Day::watched(3000);
    for after_s in [3000, 3010] {
        day.append(&row(after_s));
        day.look(10.0);
    }
    day.write("day-2.csv", &format!("{HEADER}\n{}", rows(0, 2400)));
    day.look_much_later();
    assert_eq!((day.newest_s(), day.troubles()), (2390, vec!["anew"]));
    // From there on a jump is told again.
    for after_s in [2400, 2410] {
        day.append(&row(after_s));
        day.look(10.0);
    }
    assert!(!day.troubles().contains(&"jumped"), "{:?}", day.troubles());
    day.append(&row(2410 + 1800));
    day.look(10.0);
    assert!(day.troubles().contains(&"jumped"), "{:?}", day.troubles());
}

#[cfg(unix)]
#[test]
fn a_log_that_is_a_pipe_is_told_and_does_not_hang() {
    let mut day = Day::watched(3000);
    fs::remove_file(day.path("day-2.csv")).unwrap();
    if !make_pipe(&day.path("day-2.csv")) {
        return;
    }
    within(20, move || {
        day.look_much_later();
        assert_eq!(
            (day.newest_s(), day.troubles()),
            (2990, vec!["not-read", "anew"])
        );
        day.start();
        assert!(day.troubles().contains(&"not-read"), "{:?}", day.troubles());
        let told = day.state().troubles[0].message().to_string();
        assert!(told.contains("day-2.csv: is no file"), "{told}");
    });
}

#[test]
fn a_logger_that_writes_the_same_rows_again_with_more_goes_on() {
    let mut day = Day::watched(3000);
    day.write("new.csv", &format!("{HEADER}\n{}", rows(0, 3010)));
    day.rename("new.csv", "day-2.csv");
    day.look_much_later();
    assert_eq!((day.newest_s(), day.assessed_s()), (3000, 3000));
    assert!(!day.troubles().contains(&"anew"));
}

#[test]
fn a_log_that_is_put_aside_and_begun_anew_is_followed() {
    let mut day = Day::watched(3000);
    day.rename("day-2.csv", "day-2.csv.1");
    day.look_much_later();
    assert_eq!(day.troubles(), ["missing"]);
    assert_eq!(day.newest_s(), 2990, "what was known stays");
    day.write("day-2.csv", &format!("{HEADER}\n"));
    day.look_much_later();
    assert_eq!(day.newest_s(), 2990, "no row yet");
    day.append(&rows(3000, 3700));
    day.look_much_later();
    assert_eq!((day.newest_s(), day.assessed_s()), (3690, 3690));
    assert!(day.troubles().contains(&"anew"), "{:?}", day.troubles());
    assert!(!day.troubles().contains(&"not-read"));
    assert_eq!(day.state().growth.unwrap().settled, 1);
}

#[test]
fn a_log_that_is_put_aside_and_begun_anew_between_two_looks_is_told() {
    let mut day = Day::watched(3000);
    day.rename("day-2.csv", "day-2.csv.1");
    day.write("day-2.csv", &format!("{HEADER}\n{}", rows(3000, 3700)));
    day.look_much_later();
    assert_eq!((day.newest_s(), day.assessed_s()), (3690, 3690));
    assert!(day.troubles().contains(&"anew"), "{:?}", day.troubles());
}

#[test]
fn a_log_that_is_begun_anew_while_the_campaign_file_is_broken_is_followed() {
    let mut day = Day::watched(3000);
    let good = fs::read_to_string(day.path("campaign.toml")).unwrap();
    day.rename("day-2.csv", "day-2.csv.1");
    day.write("campaign.toml", &good.replace("[site]", "[sight]"));
    day.look_much_later();
    assert_eq!(day.troubles(), ["campaign"]);
    day.write("campaign.toml", &good);
    day.write("day-2.csv", &format!("{HEADER}\n"));
    day.look_much_later();
    assert_eq!(day.troubles(), ["not-read", "anew"]);
    assert_eq!(day.newest_s(), 2990);
    day.append(&rows(3000, 3050));
    day.look_much_later();
    assert_eq!((day.newest_s(), day.assessed_s()), (3040, 3040));
}

#[test]
fn a_log_that_is_not_there_yet_is_told_and_then_followed() {
    let mut day = Day::until(3000);
    day.rename("day-2.csv", "later.csv");
    day.start();
    assert_eq!(day.troubles(), ["missing"]);
    assert!(day.state().is_waiting);
    assert!(day.state().assessment.is_some(), "the first day counts");
    day.rename("later.csv", "day-2.csv");
    day.look_much_later();
    assert_eq!(day.troubles(), [""; 0]);
    assert_eq!(day.newest_s(), 2990);
}

#[test]
fn without_any_log_the_first_row_is_waited_for() {
    let mut day = Day::until(3000);
    let text = fs::read_to_string(day.path("campaign.toml")).unwrap();
    day.rename("day-2.csv", "later.csv");
    day.write("campaign.toml", &text.replace("day-1.csv", "day-0.csv"));
    day.start();
    assert!(day.state().is_waiting);
    assert!(day.state().newest.is_none() && day.state().assessment.is_none());
    day.rename("later.csv", "day-2.csv");
    day.look_much_later();
    assert_eq!(day.newest_s(), 2990);
}

#[test]
fn a_campaign_file_that_is_broken_for_a_while_leaves_the_last_good_one_in_force() {
    let mut day = Day::watched(3000);
    let good = fs::read_to_string(day.path("campaign.toml")).unwrap();
    let rating = |day: &mut Day| {
        day.state()
            .assessment
            .unwrap()
            .s580
            .rating()
            .unwrap()
            .ps50_w
    };
    let before_w = rating(&mut day);
    day.write("campaign.toml", &good[..good.len() / 2]);
    day.look_much_later();
    assert_eq!(day.troubles(), ["campaign"]);
    assert_eq!(rating(&mut day), before_w);
    day.append(&row(3000));
    day.look(0.1);
    assert_eq!(day.newest_s(), 3000, "rows go on coming");
    day.write(
        "campaign.toml",
        &good.replace("water_kg = 7.0", "water_kg = 6.8"),
    );
    day.look_much_later();
    assert!(!day.troubles().contains(&"campaign"));
    assert!((rating(&mut day) / before_w - 6.8 / 7.0).abs() < 0.01);
}

#[test]
fn a_log_that_cannot_be_opened_for_a_while_is_read_again() {
    let mut day = Day::watched(3000);
    day.rename("day-2.csv", "aside.csv");
    fs::create_dir(day.path("day-2.csv")).unwrap();
    day.look_much_later();
    assert_eq!(day.newest_s(), 2990);
    assert!(!day.troubles().is_empty());
    fs::remove_dir(day.path("day-2.csv")).unwrap();
    day.rename("aside.csv", "day-2.csv");
    day.append(&row(3000));
    day.look_much_later();
    day.look_much_later();
    assert_eq!((day.newest_s(), day.assessed_s()), (3000, 3000));
    let troubles = day.troubles();
    assert!(!troubles.contains(&"not-read") && !troubles.contains(&"missing"));
}

#[test]
fn a_row_that_cannot_be_read_is_told_and_what_was_known_stays() {
    let mut day = Day::watched(3000);
    let good = fs::read_to_string(day.path("day-2.csv")).unwrap();
    day.append("2026-04-15 10:55:00,5x.1,26.0,895,0.4\n");
    day.look_much_later();
    assert!(day.troubles().contains(&"not-read"), "{:?}", day.troubles());
    assert!(day.state().assessment.is_some());
    day.write("day-2.csv", &good);
    day.look_much_later();
    assert!(!day.troubles().contains(&"not-read"));
}

#[test]
fn a_clock_that_is_put_back_is_told() {
    let mut day = Day::watched(3000);
    day.append(&row(1005));
    day.look(10.0);
    assert!(
        day.troubles().contains(&"none-later"),
        "{:?}",
        day.troubles()
    );
}

#[test]
fn intervals_are_those_of_the_day_of_the_rows_whether_they_come_or_not() {
    let mut day = Day::until(3000);
    day.start_days_later(2);
    let before = day.state().gained;
    assert!(day.state().is_waiting && before.all == 5, "{before:?}");
    day.append(&row(3000));
    day.look(10.0);
    assert!(!day.state().is_waiting);
    assert_eq!(day.state().gained, before);
}

#[test]
fn a_clock_that_jumps_ahead_is_told_and_one_that_goes_on_is_not() {
    let mut day = Day::watched(3000);
    for after_s in [3000, 3010] {
        day.append(&row(after_s));
        day.look(10.0);
    }
    assert_eq!(day.troubles(), [""; 0]);
    day.append(&row(3010 + 1800));
    day.look(10.0);
    assert_eq!(day.troubles(), ["jumped", "apart"]);
}

#[test]
fn a_logger_that_stops_is_told_after_three_of_its_periods_and_for_how_long() {
    let mut day = Day::watched(3000);
    day.append(&row(3000));
    day.look(10.0);
    day.look(29.0);
    assert_eq!(day.state().silent_s, None);
    day.look(16.0);
    assert_eq!(day.state().silent_s, Some(45.0));
    day.append(&row(3050));
    day.look(5.0);
    assert_eq!(day.state().silent_s, None);
}

#[test]
fn a_file_that_another_program_keeps_beside_the_logs_changes_nothing() {
    let mut day = Day::watched(3000);
    day.write(".lock", "");
    day.look_much_later();
    assert_eq!((day.newest_s(), day.troubles()), (2990, vec![]));
}
