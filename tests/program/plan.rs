//! `plan`: before there is a log, and where no day will do.

use crate::bench::{Bench, campaign};

const DAY: [&str; 4] = ["plan", "mallee", "--date", "2026-04-20"];

/// A campaign whose logs are not there yet, at a latitude.
fn planned(latitude: &str) -> Bench {
    let bench = Bench::empty();
    let text = campaign().replace(
        "latitude_deg = -20.0",
        &format!("latitude_deg = {latitude}"),
    );
    bench.write("mallee/campaign.toml", text);
    bench
}

/// Pages of a PDF, with width and height of the first in points.
fn paper(bench: &Bench, name: &str) -> (usize, [f32; 2]) {
    let pdf = lopdf::Document::load(bench.path(name)).unwrap();
    let pages = pdf.get_pages();
    let first = pdf.get_dictionary(pages[&1]).unwrap();
    let media = first.get(b"MediaBox").unwrap().as_array().unwrap();
    let size = |index: usize| media[index].as_float().unwrap();
    (pages.len(), [size(2), size(3)])
}

#[test]
fn a_day_is_planned_before_there_is_a_log() {
    let bench = planned("-20.0");
    let ended = bench.run(&DAY).exits(0);
    ended.prints(&[
        "Monday 20 April 2026",
        "water         7.00 kg: 7 kg per m² of intercept area (1.000 m²), in one vessel",
        "Still missing: 30 more intervals and 3 more days",
        "the acceptance half angle is not stated",
        "reports/mallee.2026-04-20.field-sheet.pdf",
    ]);
    let text = bench.pdf_text("reports/mallee.2026-04-20.field-sheet.pdf");
    for part in [
        "Malleetrough",
        "10mmabovethebottom",
        "Neverlookintothefocus",
        "Inventeddata",
    ] {
        assert!(text.contains(part), "{part}: {text}");
    }
}

#[test]
fn the_field_sheet_is_one_page_of_the_paper_asked_for() {
    // ISO 216: A4 is 210 mm by 297 mm; ANSI letter 8.5 in by 11 in; 72 points to the inch.
    for (paper_name, size) in [("a4", [595.276, 841.89]), ("us-letter", [612.0, 792.0])] {
        let bench = Bench::new();
        let half_angle = "type = \"concentrating\"\nacceptance_half_angle_deg = 3";
        bench.replace(
            "mallee/campaign.toml",
            "type = \"concentrating\"",
            half_angle,
        );
        let arguments = [&DAY[..], &["--paper", paper_name]].concat();
        bench
            .run(&arguments)
            .exits(0)
            .prints(&["Expected of the cooker"]);
        let (pages, found) = paper(&bench, "reports/mallee.2026-04-20.field-sheet.pdf");
        assert_eq!(pages, 1, "{paper_name}");
        for (found, expected) in found.iter().zip(size) {
            assert!((found - expected).abs() < 0.1, "{paper_name}: {found}");
        }
    }
}

/// What is written on the sheet goes under a key of its unit.
#[test]
fn the_field_sheet_asks_for_water_in_the_unit_of_the_scale() {
    let page = "reports/mallee.2026-04-20.field-sheet.html";
    let arguments = [&DAY[..], &["--format", "html"]].concat();
    let asked = |bench: &Bench| {
        bench.run(&arguments).exits(0);
        bench.read(page)
    };
    let bench = Bench::new();
    assert!(asked(&bench).contains("water weighed, kg"));
    let campaign = "mallee/campaign.toml";
    bench.replace(campaign, "[load]", "[report]\nunits = \"us\"\n\n[load]");
    let sheet = asked(&bench);
    assert!(sheet.contains("water weighed, lb"), "{sheet}");
    assert!(!sheet.contains("water weighed, kg"), "{sheet}");
    let rating_kg = bench.report()["runs"][0]["water_kg"].clone();
    // 7 kg / 0.453 592 37 is 15.4324 lb (NIST SP 811, appendix B.8).
    let weighed = "log = \"day-1.csv\"\nwater_lb = 15.4324";
    bench.replace(campaign, "log = \"day-1.csv\"", weighed);
    let read_kg = bench.report()["runs"][0]["water_kg"].as_f64().unwrap();
    assert!(
        (read_kg - rating_kg.as_f64().unwrap()).abs() < 1e-4,
        "{read_kg}"
    );
}

#[test]
fn the_field_sheet_is_a_web_page_where_it_is_asked_for() {
    let bench = Bench::new();
    let page = "reports/mallee.2026-04-20.field-sheet.html";
    let arguments = [&DAY[..], &["--format", "html,pdf,html"]].concat();
    let ended = bench.run(&arguments).exits(0);
    ended.prints(&[page, "reports/mallee.2026-04-20.field-sheet.pdf"]);
    let text = bench.read(page);
    for part in [
        "Mallee trough",
        "Never look into the focus",
        "Invented data",
        "10:50",
        "<h1>",
    ] {
        assert!(text.contains(part), "{part}");
    }
    for part in ["http:", "https:", "<script", "<form"] {
        assert!(!text.contains(part), "{part}");
    }
    // Whoever adds to it keeps it well-formed.
    let options = roxmltree::ParsingOptions {
        allow_dtd: true,
        ..roxmltree::ParsingOptions::default()
    };
    let parsed = roxmltree::Document::parse_with_options(&text, options).unwrap();
    let rows = parsed.descendants().filter(|node| node.has_tag_name("tr"));
    assert!(rows.count() > 10);
    assert_eq!(bench.names("reports").len(), 2);
    let alone = [&DAY[..], &["--format", "html", "--out", "alone"]].concat();
    bench.run(&alone).exits(0);
    assert_eq!(bench.names("alone"), ["mallee.2026-04-20.field-sheet.html"]);
}

#[test]
fn the_same_time_of_issue_gives_the_same_sheet() {
    let sheet = || {
        let bench = Bench::new();
        let mut command = bench.command(&DAY);
        command
            .env("SOURCE_DATE_EPOCH", "1795600000")
            .assert()
            .success();
        std::fs::read(bench.path("reports/mallee.2026-04-20.field-sheet.pdf")).unwrap()
    };
    assert!(sheet() == sheet());
}

#[test]
fn logs_that_cannot_be_rated_yet_do_not_stop_the_plan() {
    let bench = Bench::new();
    bench.write("mallee/day-2.csv", "time,water_c\n");
    let ended = bench.run(&DAY).exits(0);
    ended.says(&["planned as for a first day", "day-2.csv"]);
}

#[test]
fn a_polar_night_and_a_low_sun_give_no_sheet_and_say_why() {
    let night = planned("80.0");
    let run = ["plan", "mallee", "--date", "2026-12-21"];
    let ended = night.run(&run).exits(0);
    ended.prints(&[
        "sun           does not rise",
        "never reaches 450 W/m² (at most 0): no interval of this day can be used",
        "This day can give none.",
        "so there is no field sheet",
    ]);
    assert_eq!(night.names("reports"), [""; 0]);
    // At 66.4° the midwinter sun stands at most a degree above the horizon.
    let low = planned("66.4");
    let ended = low.run(&run).exits(0);
    ended.prints(&[
        "rises",
        "never reaches 450 W/m²",
        "so there is no field sheet",
    ]);
    // Polar day: it never sets, and the window is that of solar time.
    let day = planned("80.0");
    let ended = day
        .run(&["plan", "mallee", "--date", "2026-06-21"])
        .exits(0);
    ended.prints(&[
        "does not set; solar noon 12:0",
        "so all through the solar window",
    ]);
}

#[test]
fn dates_and_angles_that_cannot_be_are_refused() {
    let bench = planned("-20.0");
    for date in ["21.3.2026", "2026-02-30", "today", "2026"] {
        let run = bench.run(&["plan", "mallee", "--date", date]).exits(2);
        run.says(&["--date", date, "2026-03-21"]);
    }
    for date in ["1899-12-31", "2201-01-01", "-000001-01-01"] {
        let written = format!("--date={date}");
        let run = bench.run(&["plan", "mallee", &written]).exits(2);
        run.says(&["is outside the years 1900 to 2200"]);
    }
    for angle in ["0", "-3", "0.2", "91"] {
        let bench = planned("-20.0");
        let keys = format!("type = \"concentrating\"\nacceptance_half_angle_deg = {angle}");
        bench.replace("mallee/campaign.toml", "type = \"concentrating\"", &keys);
        let run = bench.run(&DAY).exits(4);
        run.says(&[
            "[cooker] acceptance_half_angle_deg",
            "expected 0.27 to 90 degrees",
        ]);
    }
}

#[test]
fn a_sharp_focus_needs_a_drive_and_a_wide_one_is_aimed_once() {
    let aim = |angle: &str| {
        let bench = planned("-20.0");
        let keys = format!("type = \"concentrating\"\nacceptance_half_angle_deg = {angle}");
        bench.replace("mallee/campaign.toml", "type = \"concentrating\"", &keys);
        bench.run(&DAY).exits(0).out
    };
    assert!(aim("0.3").contains("all the time, by a drive"));
    assert!(aim("90").contains("only: 90° is enough"));
    let twelve = aim("12");
    assert!(twelve.contains("aim           at 09:58, 10:4"), "{twelve}");
}

#[test]
fn two_campaigns_below_the_folder_are_refused() {
    let bench = Bench::new();
    bench.add_campaign("acacia");
    bench
        .run(&["plan", "."])
        .exits(2)
        .says(&["holds 2 campaigns, expected one"]);
}
