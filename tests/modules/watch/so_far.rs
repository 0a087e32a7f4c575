//! What is told so far is what the pipeline says of the same rows, and what is told of the
//! interval that runs is what the practice says once it has ended.

use std::fs;

use simmerline::assess_folder;
use simmerline::procedure::s580::intervals::Verdict;
use simmerline::procedure::s580::reason::Reason;

use super::day::{Day, row, rows};
use crate::kit::header::HEADER;

/// A row with another irradiance and wind.
fn row_in(after_s: u32, irradiance: u32, wind: &str) -> String {
    row(after_s).replace(",895,0.4", &format!(",{irradiance},{wind}"))
}

#[test]
fn the_rating_so_far_is_the_very_one_of_the_same_rows() {
    let mut day = Day::watched(610);
    for to_s in (1200..6000).step_by(700) {
        let from_s = day.newest_s() as u32 + 10;
        day.append(&rows(from_s, to_s));
        day.look_much_later();
        let expected = assess_folder(&day.folder()).unwrap();
        let state = day.state();
        let found = state.assessment.unwrap();
        assert_eq!(found.s580.intervals, expected.s580.intervals);
        assert_eq!(found.s580.rating(), expected.s580.rating());
        let half_width = |of: &simmerline::procedure::Assessment| {
            of.s580.uncertainty().map(|one| one.half_width_w())
        };
        assert_eq!(half_width(found), half_width(&expected));
        assert_eq!(found.s580.conformity.level, expected.s580.conformity.level);
        let missing = |of: &simmerline::procedure::Assessment| of.s580.conformity.missing.clone();
        assert_eq!(missing(found), missing(&expected));
    }
}

#[test]
fn rows_laid_on_a_long_log_give_what_reading_all_of_it_gives() {
    // Over half a megabyte, so that its middle is spared.
    let mut day = Day::until(10);
    let second = |after_s: u32| row(after_s);
    let text: String = (0..13_000).map(second).collect();
    day.write("day-2.csv", &format!("{HEADER}\n{text}"));
    day.start();
    let mut last_s = 12_999;
    for more in [1, 3, 40] {
        let new: String = (last_s + 1..=last_s + more).map(second).collect();
        last_s += more;
        day.append(&new);
        day.look(0.1);
        assert_eq!(
            day.newest_s(),
            i64::from(last_s),
            "{:?}",
            day.state().troubles
        );
    }
    assert_eq!(day.assessed_s(), 12_999, "the rest was not read again");
    let laid_on = day.state().growth.unwrap().clone();
    let newest = day.state().newest;
    day.start();
    assert_eq!(day.assessed_s(), i64::from(last_s));
    assert_eq!(*day.state().growth.unwrap(), laid_on);
    assert_eq!(day.state().newest, newest);
}

#[test]
fn what_spoils_a_running_interval_sets_it_aside_in_the_end() {
    // A cloud in the third interval, a gusty fourth one, a slow rise of the sun in the fifth.
    let log = |to_s: u32| -> String {
        let rows = (0..to_s).step_by(30).map(|after_s| match after_s {
            1500..1560 => row_in(after_s, 400, "0.4"),
            1900..2400 => row_in(after_s, 895, "1.4"),
            2400..3000 => row_in(after_s, 700 + (after_s - 2400) / 5, "0.4"),
            _ => row_in(after_s, 895, "0.4"),
        });
        format!("{HEADER}\n{}", rows.collect::<String>())
    };
    let mut day = Day::until(10);
    day.write("day-2.csv", &log(3700));
    let whole = assess_folder(&day.folder()).unwrap();
    let ended: Vec<&Verdict> = whole.s580.intervals_of(1).map(|one| &one.verdict).collect();
    let mut spoiled = vec![Vec::new(); ended.len() + 1];
    let mut risks = vec![Vec::new(); ended.len() + 1];
    for to_s in (90..3700).step_by(90) {
        day.write("day-2.csv", &log(to_s));
        day.start();
        let state = day.state();
        let growth = state.growth.unwrap();
        let Some(running) = &growth.running else {
            continue;
        };
        let told = running.spoiled.iter().map(|fault| fault.reason);
        spoiled[growth.settled].extend(told);
        risks[growth.settled].extend(running.at_risk.iter().map(|fault| fault.reason));
        if let Some((_, last)) = &growth.last {
            assert_eq!(last, ended[growth.settled - 1]);
        }
    }
    for (reasons, verdict) in spoiled.iter_mut().zip(&ended) {
        reasons.sort();
        reasons.dedup();
        let set_aside = match verdict {
            Verdict::SetAside(set_aside) => set_aside.as_slice(),
            Verdict::OnLine | Verdict::NotNormalised => &[],
        };
        let is_kept = reasons.iter().all(|reason| set_aside.contains(reason));
        assert!(is_kept, "{reasons:?} told, {set_aside:?} in the end");
    }
    assert_eq!(
        spoiled[2],
        [Reason::IrradianceLow, Reason::IrradianceUnsteady]
    );
    assert!(risks[3].contains(&Reason::WindHigh) && spoiled[3].is_empty());
    assert_eq!(spoiled[4], [Reason::IrradianceUnsteady]);
}

#[test]
fn margins_are_the_limits_of_the_practice_and_the_range_so_far() {
    let mut day = Day::until(10);
    let text: String = [(0, 880), (10, 890), (20, 850), (30, 870)]
        .map(|(after_s, sun)| row_in(after_s, sun, "0.4"))
        .concat();
    day.write("day-2.csv", &format!("{HEADER}\n{text}"));
    day.start();
    let state = day.state();
    let margins = state.growth.unwrap().running.as_ref().unwrap().margins;
    // It may change by 100 W/m²: 890 − 100 and 850 + 100. Wind of 1.0 m/s, by 5 K below boiling
    // (ASAE S580.1, values from memory).
    assert_eq!(margins.irradiance_w_m2, Some((790.0, 950.0)));
    let (most, mean) = margins.wind_m_s.unwrap();
    assert_eq!(most, 1.0);
    assert!((mean - 0.4).abs() < 1e-9);
    let boiling_c = state.assessment.unwrap().tested.boiling_point_c;
    assert!((margins.water_c - (boiling_c - 5.0)).abs() < 1e-9);
}

#[test]
fn a_log_that_nobody_writes_to_any_more_counts_to_its_last_byte() {
    let mut day = Day::until(3010);
    let text = fs::read_to_string(day.path("day-2.csv")).unwrap();
    day.write("day-2.csv", text.trim_end());
    day.start();
    assert_eq!((day.newest_s(), day.troubles()), (2990, vec!["line"]));
    let log = fs::File::options().append(true).open(day.path("day-2.csv"));
    let two_days_ago = std::time::SystemTime::now() - std::time::Duration::from_secs(172_800);
    log.unwrap().set_modified(two_days_ago).unwrap();
    day.start();
    assert_eq!((day.newest_s(), day.troubles()), (3000, vec![]));
}
