//! A long campaign: years of a laboratory in one report; and very many campaigns in one comparison.

use std::fmt::Write;

use lopdf::Document;
use simmerline::comparison::compare;
use simmerline::report::Edition;
use simmerline::report::comparison::outputs::outputs as comparison_outputs;
use simmerline::report::words::build;

use crate::report::campaigns::*;
use crate::report::pdf::{pages, squeezed};

const RUNS: usize = 40;
const INTERVALS_A_RUN: usize = 50;

/// Invented logs, a run a day: water that tends to 105 °C in a steady sun.
fn long_campaign() -> Copy {
    let copy = Copy::new().with_one_run();
    let path = copy.root.path().join("campaign.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let head = text.split("[[run]]").next().unwrap();
    let mut campaign = head.to_owned();
    for run in 0..RUNS {
        let date = format!("2026-{:02}-{:02}", 1 + run / 20, 1 + run % 20);
        let mut log = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n".to_owned();
        for step in 0..=INTERVALS_A_RUN {
            let minutes = 8 * 60 + 10 * step;
            let wobble = ((run * 7 + step * 13) % 11) as f64 / 10.0;
            let water_c = 105.0 - 85.0 * (-(step as f64) / 25.0).exp();
            writeln!(
                log,
                "{date} {:02}:{:02}:00,{water_c:.2},{:.1},{:.0},{:.1}",
                minutes / 60,
                minutes % 60,
                24.0 + wobble,
                850.0 + 30.0 * wobble,
                0.5 * wobble
            )
            .unwrap();
        }
        copy.write(&format!("{date}.csv"), log);
        write!(campaign, "[[run]]\nlog = \"{date}.csv\"\n\n").unwrap();
    }
    copy.write("campaign.toml", campaign);
    copy
}

#[test]
fn forty_runs_and_two_thousand_intervals_are_printed_whole() {
    let copy = long_campaign();
    let assessment = copy.assess();
    assert_eq!(assessment.tested.runs.len(), RUNS);
    assert_eq!(assessment.s580.intervals.len(), RUNS * INTERVALS_A_RUN);
    let bytes = pdf_of(&assessment);
    // Figures have a mark for each of the 2,000 intervals, and each of their 28,000 cells a tag.
    assert!(bytes.len() < 7_200_000, "{} bytes", bytes.len());
    let pdf = Document::load_mem(&bytes).unwrap();
    let pages = pages(&pdf);
    let text = pages.concat();
    for run in 1..=RUNS {
        let titles = text.matches(&squeezed(&format!("Run {run}, "))).count();
        assert!(titles >= 2, "run {run}: {titles} titles");
    }
    let times = text.matches("16:10–16:20").count();
    assert_eq!(times, RUNS, "last intervals");
    let last = pages.last().unwrap();
    assert!(last.contains("Endofreport"), "{last}");
    for (index, page) in pages.iter().enumerate() {
        let letters = page.chars().count();
        assert!(letters > 250, "page {} holds {letters} letters", index + 1);
    }
}

/// A page's lines of the table of intervals: titles of runs, and rows.
fn lines_of_table(page: &str) -> Vec<(bool, &str)> {
    let mut lines: Vec<(usize, bool)> = Vec::new();
    // Every row begins with two clock times; every title ends with the count of used ones.
    lines.extend(page.match_indices("Run").map(|(at, _)| (at, true)));
    let is_clock = |at: usize| {
        let shape: String = page[at..].chars().take(11).collect();
        let digits = shape
            .chars()
            .enumerate()
            .all(|(place, letter)| match place {
                2 | 8 => letter == ':',
                5 => letter == '–',
                _ => letter.is_ascii_digit(),
            });
        digits && shape.chars().count() == 11
    };
    let starts = page.char_indices().map(|(at, _)| at);
    lines.extend(starts.filter(|at| is_clock(*at)).map(|at| (at, false)));
    lines.sort_unstable();
    lines
        .into_iter()
        .map(|(at, is_title)| (is_title, &page[at..]))
        .collect()
}

#[test]
fn a_run_that_goes_on_to_the_next_page_says_so_and_leaves_no_row_alone() {
    let copy = long_campaign();
    let pdf = Document::load_mem(&slim_pdf_of(&copy.assess())).unwrap();
    let pages = pages(&pdf);
    let (mut continued, mut tables) = (0, 0);
    for page in pages.iter().filter(|page| page.contains("lowest–highest")) {
        tables += 1;
        let (_, table) = page.split_once("lowest–highest").unwrap();
        let (table, _) = table.split_once("Regression").unwrap_or((table, ""));
        let lines = lines_of_table(table);
        assert!(
            lines[0].0,
            "a page begins without the title of a run: {page}"
        );
        let goes_on = lines[0]
            .1
            .split_once("used")
            .unwrap()
            .0
            .contains("continued");
        continued += usize::from(goes_on);
        for group in lines[1..].split(|(is_title, _)| *is_title) {
            assert!(
                group.len() >= 5,
                "{} rows below a title: {page}",
                group.len()
            );
        }
    }
    // 2,000 rows do not end with a run at the foot of each page.
    assert!(
        tables >= 20 && continued * 2 > tables,
        "{continued} of {tables}"
    );
}

/// A year of runs a day, six readings each.
fn year_of_runs(wish: &str) -> Copy {
    let copy = Copy::new().with_one_run();
    let path = copy.root.path().join("campaign.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let head = text.split("[[run]]").next().unwrap();
    let runs = "[[run]]\nlog = \"year.csv\"\nsplit = \"daily\"\nnotes = \"said once\"\n";
    copy.write(
        "campaign.toml",
        head.replacen("[report]\n", &format!("[report]\n{wish}\n"), 1) + runs,
    );
    let mut log = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n".to_owned();
    for day in 0..YEAR {
        let date = format!("2026-{:02}-{:02}", 1 + day / 20, 1 + day % 20);
        for step in 0..6 {
            let water_c = 40.0 + 8.0 * f64::from(step) - 0.4 * f64::from(step * step);
            let clock = 600 + 10 * step;
            writeln!(
                log,
                "{date} {:02}:{:02}:00,{water_c:.2},24.0,{},0.4",
                clock / 60,
                clock % 60,
                860 + day % 9
            )
            .unwrap();
        }
    }
    copy.write("year.csv", log);
    copy
}

/// Runs of it.
const YEAR: usize = 100;

#[test]
fn of_many_runs_some_have_a_figure_all_are_named_and_all_can_be_wished_for() {
    let copy = year_of_runs("");
    let assessment = copy.assess();
    assert_eq!(assessment.tested.runs.len(), YEAR);
    let report = build(&assessment, &edition());
    let shown = report.runs.rows.concat().len();
    assert!((34..=39).contains(&shown), "{shown} shown");
    assert_eq!(shown + report.runs.others.len(), YEAR);
    assert_eq!(report.intervals.groups.len(), shown);
    let said = &report.runs.how[0];
    for part in ["100 runs", "one in 3", "intervals.csv", "runs_shown"] {
        assert!(said.contains(part), "no {part:?} in {said}");
    }
    let all = &assessment.s580.intervals;
    assert!(report.intervals.notes[0].contains(&format!("all {}", all.len())));
    // The note of all runs stands beside the figures, and not a hundred times.
    assert!(report.runs.others.iter().all(|run| run.remarks.is_empty()));
    let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
    let text = pages(&pdf).concat();
    for run in 1..=YEAR {
        let title = squeezed(&format!("Run {run}, "));
        assert!(text.contains(&title), "no run {run}");
    }
    let wished = year_of_runs("runs_shown = \"all\"");
    let report = build(&wished.assess(), &edition());
    assert_eq!(report.runs.rows.concat().len(), YEAR);
    assert!(report.runs.others.is_empty() && report.intervals.groups.len() == YEAR);
}

#[test]
fn of_very_many_without_a_rating_every_title_is_printed() {
    const VERY_MANY: usize = 50;
    let title = |place: usize| format!("Invented pot of place {place},");
    let dry = sample("dry-pot");
    let of_place = |place: usize| {
        let mut one = dry.clone();
        one.tested.campaign.name = format!("pot-{place}");
        one.tested.campaign.title = title(place);
        // The same readings twice are refused.
        for run in &mut one.tested.dry_runs {
            let vessel = run.readings.vessel_c.as_mut().unwrap();
            vessel.value[0] += 0.001 * place as f64;
        }
        one
    };
    let comparison = compare((0..VERY_MANY).map(of_place).collect(), None, true).unwrap();
    let slim = Edition {
        has_attachments: false,
        ..edition()
    };
    let outputs = comparison_outputs(&comparison, &slim).unwrap();
    let pdf = outputs.iter().find(|file| file.name.ends_with(".pdf"));
    let pages = pages(&Document::load_mem(&pdf.unwrap().bytes).unwrap());
    let text = pages.concat();
    for place in 0..VERY_MANY {
        let title = squeezed(&title(place));
        assert!(text.contains(&title), "{title}");
    }
}
