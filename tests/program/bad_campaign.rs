//! A campaign file that is wrong is refused with place and remedy.

use crate::bench::{Bench, refuses_campaign};
use std::fs;

#[test]
fn a_syntax_error_is_refused_with_its_line() {
    refuses_campaign("type = \"concentrating\"", "type = \"concentrating", &[]);
    refuses_campaign("elevation_m = 100", "elevation_m = 1,5", &[]);
    refuses_campaign("[load]", "[load", &[]);
}

#[test]
fn a_campaign_file_that_is_no_text_or_empty_is_refused() {
    for content in [
        &b"\xff\xfe[\x00c\x00"[..],
        b"",
        b"\x00\x01\x02",
        b"[campaign]\ntitle = \"\xe4\"\n",
    ] {
        let bench = Bench::new();
        bench.write("mallee/campaign.toml", content);
        bench.refuses(4, &["error: mallee/campaign.toml"]);
    }
    let bench = Bench::new();
    fs::remove_file(bench.path("mallee/campaign.toml")).unwrap();
    fs::create_dir(bench.path("mallee/campaign.toml")).unwrap();
    bench.refuses(4, &["error: mallee/campaign.toml: is no file"]);
}

#[test]
fn an_unknown_key_is_refused_and_the_nearest_suggested() {
    refuses_campaign(
        "latitude_deg",
        "lattitude_deg",
        &["\"lattitude_deg\"", "did you mean \"latitude_deg\"?"],
    );
    refuses_campaign(
        "water_kg = 7.0",
        "water_kg = 7.0\nvesels = 2",
        &["did you mean \"vessels\"?"],
    );
    refuses_campaign(
        "water_kg = 7.0",
        "water_kg = 7.0\n[limits]\nwind_gust = 3",
        &["did you mean \"wind_gust_m_s\"?"],
    );
}

#[test]
fn an_unknown_table_is_refused_and_the_nearest_suggested() {
    refuses_campaign(
        "[instruments.irradiance]",
        "[instrument.irradiance]",
        &["did you mean \"instruments\"?"],
    );
}

#[test]
fn a_missing_key_or_table_is_refused_by_name() {
    for (line, key) in [
        ("title = \"Mallee trough, bare pot\"\n", "\"title\""),
        ("latitude_deg = -20.0\n", "\"latitude_deg\""),
        ("water_kg = 7.0\n", "\"water_kg\""),
        ("time_zone = \"UTC\"\n", "\"time_zone\""),
        ("type = \"concentrating\"\n", "\"type\""),
        ("intercept_area_m2 = 1.0\n", "intercept_area_m2"),
        ("[load]\nwater_kg = 7.0\n", "[load]"),
    ] {
        let bench = Bench::new();
        bench.replace("mallee/campaign.toml", line, "");
        bench.refuses(4, &["error: mallee/campaign.toml", key]);
    }
}

#[test]
fn a_campaign_without_a_run_is_refused() {
    let bench = Bench::new();
    let text = bench.read("mallee/campaign.toml");
    bench.write(
        "mallee/campaign.toml",
        text.split("[[run]]").next().unwrap(),
    );
    bench.refuses(4, &["there is no run", "[[run]]", "log = "]);
}

#[test]
fn a_value_of_a_wrong_type_is_refused_with_its_line() {
    refuses_campaign(
        "latitude_deg = -20.0",
        "latitude_deg = \"20 S\"",
        &["hint: "],
    );
    refuses_campaign(
        "demonstration = true",
        "demonstration = \"yes\"",
        &["hint: "],
    );
    refuses_campaign("log = \"day-2.csv\"", "log = [\"day-2.csv\"]", &["hint: "]);
}

#[test]
fn a_number_out_of_sense_is_refused_with_its_line_key_and_bounds() {
    for (from, to, key, bounds) in [
        (
            "latitude_deg = -20.0",
            "latitude_deg = 123",
            "latitude_deg",
            "-90 to 90 degrees",
        ),
        (
            "longitude_deg = 0.0",
            "longitude_deg = 181.0",
            "longitude_deg",
            "-180 to 180 degrees",
        ),
        (
            "elevation_m = 100",
            "elevation_m = 9000",
            "elevation_m",
            "6000 m",
        ),
        ("water_kg = 7.0", "water_kg = 0", "water_kg", "more than 0"),
        (
            "water_kg = 7.0",
            "water_kg = -7.0",
            "water_kg",
            "more than 0",
        ),
        (
            "intercept_area_m2 = 1.0",
            "intercept_area_m2 = -1.0",
            "intercept_area_m2",
            "0.001 to 100 m²",
        ),
        (
            "log = \"day-2.csv\"",
            "log = \"day-2.csv\"\nwater_kg = 0.0",
            "water_kg",
            "more than 0",
        ),
        (
            "water_kg = 7.0",
            "water_kg = 7.0\nvessels = 0",
            "vessels",
            "at least 1",
        ),
        (
            "elevation_m = 100",
            "elevation_m = 100\npressure_hpa = 1.013",
            "pressure_hpa",
            "400 to 1100 hPa",
        ),
        (
            "plane = \"normal\"",
            "relative_uncertainty = 3",
            "relative_uncertainty",
            "0 to 1",
        ),
    ] {
        refuses_campaign(from, to, &[&format!("{key}: found "), bounds]);
    }
}

#[test]
fn values_that_are_no_numbers_are_refused_at_each_key() {
    for (from, to) in [
        ("latitude_deg = -20.0", "latitude_deg = nan"),
        ("longitude_deg = 0.0", "longitude_deg = inf"),
        ("elevation_m = 100", "elevation_m = -inf"),
        ("water_kg = 7.0", "water_kg = inf"),
        ("water_kg = 7.0", "water_kg = nan"),
        ("intercept_area_m2 = 1.0", "intercept_area_m2 = nan"),
        ("intercept_area_m2 = 1.0", "intercept_area_m2 = inf"),
        (
            "water_kg = 7.0",
            "water_kg = 7.0\n[limits]\nambient_min_c = nan",
        ),
        (
            "water_kg = 7.0",
            "water_kg = 7.0\n[limits]\nambient_max_c = inf",
        ),
        ("plane = \"normal\"", "relative_uncertainty = nan"),
        (
            "intercept_area_m2 = 1.0",
            "[cooker.aperture]\nshape = \"circle\"\ndiameter_m = nan",
        ),
        (
            "type = \"concentrating\"",
            "type = \"concentrating\"\nmass_kg = nan",
        ),
        (
            "type = \"concentrating\"",
            "type = \"concentrating\"\ncost = inf",
        ),
        (
            "log = \"day-2.csv\"",
            "log = \"day-2.csv\"\ntracking_interval_min = nan",
        ),
    ] {
        let (key, value) = to.lines().last().unwrap().split_once(" = ").unwrap();
        let found = format!("found {}, expected ", value.parse::<f64>().unwrap());
        refuses_campaign(from, to, &[&format!("{key}: "), &found]);
    }
}

#[test]
fn own_limits_that_leave_nothing_or_no_hour_of_the_day_are_refused() {
    for (limits, key) in [
        ("solar_time_start_h = 30", "solar_time_start_h"),
        ("solar_time_end_h = -1", "solar_time_end_h"),
        ("wind_gust_m_s = -1", "wind_gust_m_s"),
        ("ambient_min_c = 35\nambient_max_c = 20", "ambient_m"),
        ("water_min_c = 90\nwater_max_c = 40", "water_m"),
    ] {
        let bench = Bench::new();
        let to = format!("water_kg = 7.0\n[limits]\n{limits}");
        bench.replace("mallee/campaign.toml", "water_kg = 7.0", &to);
        bench.refuses(4, &["error: mallee/campaign.toml:", key]);
    }
}

#[test]
fn both_area_and_aperture_are_refused() {
    refuses_campaign(
        "intercept_area_m2 = 1.0",
        "aperture = { shape = \"circle\", diameter_m = 1.1 }\nintercept_area_m2 = 1.0",
        &[
            "intercept_area_m2",
            "[cooker.aperture]",
            "expected one",
            "delete the other",
        ],
    );
}

#[test]
fn an_aperture_that_is_no_shape_is_refused() {
    for (aperture, part) in [
        ("{ shape = \"square\" }", "\"square\""),
        ("{ shape = \"circle\" }", "diameter_m"),
        ("{ shape = \"rectangle\", width_m = 1.0 }", "height_m"),
        (
            "{ shape = \"regular-polygon\", sides = 2, across_corners_m = 1.0 }",
            "sides",
        ),
        (
            "{ shape = \"outline\", points_m = [[0, 0], [1, 1]] }",
            "2 points",
        ),
        (
            "{ shape = \"outline\", points_m = [[0, 0], [1, 1], [1, 0], [0, 1]] }",
            "crosses itself",
        ),
        (
            "{ shape = \"circle\", diameter_m = 1.0, incidence_deg = 95 }",
            "incidence_deg",
        ),
        (
            "{ shape = \"outline\", points_m = [[0, 0], [1, 1], [2, 2]] }",
            "aperture",
        ),
    ] {
        let to = format!("aperture = {aperture}");
        refuses_campaign("intercept_area_m2 = 1.0", &to, &["aperture", part]);
    }
}

#[test]
fn an_unknown_zone_is_refused_and_the_nearest_suggested() {
    refuses_campaign(
        "\"UTC\"",
        "\"Africa/Nairoby\"",
        &["\"Africa/Nairoby\"", "did you mean \"Africa/Nairobi\"?"],
    );
    for zone in ["", "+25:00", "-5", "UTC+2", "local"] {
        refuses_campaign(
            "time_zone = \"UTC\"",
            &format!("time_zone = \"{zone}\""),
            &["time_zone", "\"-05:00\""],
        );
    }
}

#[test]
fn a_word_that_is_not_among_the_known_ones_is_refused_with_those() {
    refuses_campaign(
        "\"concentrating\"",
        "\"parabolic\"",
        &["\"parabolic\"", "\"box\"", "\"tube\""],
    );
    refuses_campaign(
        "\"normal\"",
        "\"tilted\"",
        &["\"tilted\"", "\"horizontal\""],
    );
    refuses_campaign(
        "demonstration = true",
        "procedure = \"X9\"",
        &["\"X9\"", "\"S580.1\""],
    );
}

#[test]
fn an_uncertainty_under_a_key_of_another_quantity_is_refused() {
    refuses_campaign(
        "water_kg = 7.0",
        "water_kg = 7.0\n[instruments.water_temperature]\nrelative_uncertainty = 0.01",
        &["relative_uncertainty", "did you mean \"uncertainty_k\"?"],
    );
}

#[test]
fn a_time_or_date_of_a_run_that_is_none_is_refused() {
    for (key, value) in [
        ("start", "\"10.05\""),
        ("end", "\"25:00\""),
        ("date", "\"14 April\""),
    ] {
        let to = format!("log = \"day-2.csv\"\n{key} = {value}");
        refuses_campaign(
            "log = \"day-2.csv\"",
            &to,
            &[key, value.trim_matches('"'), "hint: write"],
        );
    }
}

#[test]
fn a_start_and_end_that_leave_no_reading_are_refused() {
    let bench = Bench::new();
    let to = "log = \"day-2.csv\"\nstart = \"14:30\"";
    bench.replace("mallee/campaign.toml", "log = \"day-2.csv\"", to);
    bench.refuses(4, &["mallee/campaign.toml", "day-2.csv", "start and end"]);
}

#[test]
fn an_exclusion_that_ends_before_it_begins_is_refused() {
    let bench = Bench::new();
    let to = "log = \"day-2.csv\"\nexclude = [{ from = \"12:00\", to = \"11:00\" }]";
    bench.replace("mallee/campaign.toml", "log = \"day-2.csv\"", to);
    bench.refuses(
        4,
        &[
            "mallee/campaign.toml",
            "day-2.csv",
            "does not end after it begins",
        ],
    );
}

#[test]
fn every_problem_of_a_campaign_file_is_listed_at_once() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "latitude_deg = -20.0",
        "latitude_deg = 123",
    );
    bench.replace("mallee/campaign.toml", "water_kg = 7.0", "water_kg = 0");
    bench.replace("mallee/campaign.toml", "day-3.csv", "day-4.csv");
    let ended = bench.refuses(4, &["latitude_deg", "water_kg", "\"day-4.csv\""]);
    assert_eq!(ended.err.matches("error: ").count(), 3, "{}", ended.err);
    // Two of them are mended alike and share a hint.
    assert_eq!(ended.err.matches("hint: ").count(), 2, "{}", ended.err);
}

#[test]
fn two_runs_that_name_one_log_are_refused() {
    for name in ["day-2.csv", "./day-2.csv", ".//day-2.csv"] {
        refuses_campaign(
            "\"day-3.csv\"",
            &format!("\"{name}\""),
            &["[[run]] 3", "same log as [[run]] 2"],
        );
    }
}

#[test]
fn a_photo_in_printing_inks_is_refused_by_name() {
    // A frame of four components (ITU-T T.81, B.2.2), of which nothing is drawn.
    let inks = b"\xff\xd8\xff\xc0\x00\x14\x08\x00\x08\x00\x08\x04\
        \x01\x11\0\x02\x11\0\x03\x11\0\x04\x11\0\xff\xd9";
    let bench = Bench::new();
    bench.write("mallee/cooker.jpg", inks);
    let area = "intercept_area_m2 = 1.0";
    let photo = format!("photo = \"cooker.jpg\"\n{area}");
    bench.replace("mallee/campaign.toml", area, &photo);
    bench.refuses(
        4,
        &[
            "\"cooker.jpg\" is in printing inks (CMYK)",
            "hint: save it anew in red",
        ],
    );
}

/// The same, with the problem at another place than the last new line.
fn refuses_anywhere(from: &str, to: &str, parts: &[&str]) {
    let bench = Bench::new();
    bench.replace("mallee/campaign.toml", from, to);
    bench.refuses(4, &[&["error: mallee/campaign.toml:"], parts].concat());
}

#[test]
fn a_kind_of_run_that_is_none_is_refused_with_those_there_are() {
    refuses_campaign(
        "log = \"day-2.csv\"",
        "log = \"day-2.csv\"\nkind = \"wet\"",
        &[
            "[[run]] 2, kind: found \"wet\", expected one of",
            "\"water\"",
            "\"cooling\"",
            "\"dry\"",
        ],
    );
}

#[test]
fn water_in_a_dry_run_is_refused() {
    for key in ["water_kg = 3.0", "vessel_water_kg = [1.0, 2.0]"] {
        refuses_anywhere(
            "log = \"day-2.csv\"",
            &format!("log = \"day-2.csv\"\nkind = \"dry\"\n{key}"),
            &["[[run]] 2, ", "a dry run has no water", "kind = \"water\""],
        );
    }
}

#[test]
fn only_a_log_of_heatings_is_split() {
    for kind in ["dry", "cooling"] {
        refuses_campaign(
            "log = \"day-2.csv\"",
            &format!("log = \"day-2.csv\"\nkind = \"{kind}\"\nsplit = \"daily\""),
            &[
                "[[run]] 2, split",
                &format!("a log of {kind} runs is not split"),
                "write a [[run]] for each test",
            ],
        );
    }
}

#[test]
fn the_heat_of_the_vessels_is_stated_in_one_way_and_whole() {
    for (keys, parts) in [
        (
            "vessel_heat_capacity_j_per_k = 800\nvessel_mass_kg = 1.0",
            &[
                "vessel_heat_capacity_j_per_k: both",
                "expected one",
                "delete the other",
            ][..],
        ),
        (
            "vessel_heat_capacity_j_per_k = 800\nvessel_material = \"steel\"",
            &["vessel_heat_capacity_j_per_k: both", "expected one"],
        ),
        (
            "vessel_mass_kg = 1.0",
            &[
                "vessel_mass_kg: ",
                "no material beside it",
                "vessel_material = ",
            ],
        ),
        (
            "vessel_material = \"copper\"",
            &["vessel_material: ", "no mass beside it", "vessel_mass_kg"],
        ),
        (
            "vessel_mass_kg = 1.0\nvessel_material = \"unobtainium\"",
            &[
                "vessel_material: found \"unobtainium\"",
                "\"aluminium\"",
                "\"fired-clay\"",
            ],
        ),
        (
            "vessel_heat_capacity_j_per_k = -1",
            &["vessel_heat_capacity_j_per_k: found -1"],
        ),
        (
            "vessel_mass_kg = 0\nvessel_material = \"copper\"",
            &["vessel_mass_kg: found 0"],
        ),
    ] {
        refuses_anywhere("water_kg = 7.0", &format!("water_kg = 7.0\n{keys}"), parts);
    }
}

#[test]
fn a_surface_that_loses_heat_is_a_number_of_square_metres() {
    for value in ["0", "-0.2", "nan", "1e6"] {
        let to = format!("intercept_area_m2 = 1.0\nloss_area_m2 = {value}");
        refuses_campaign(
            "intercept_area_m2 = 1.0",
            &to,
            &["loss_area_m2: found ", "m²"],
        );
    }
}

#[test]
fn procedures_are_named_by_their_words_and_with_the_practice_among_them() {
    for (named, parts) in [
        ("[\"heat-balance\"]", &["\"s580\" is not among them"][..]),
        ("[]", &["\"s580\" is not among them"]),
        (
            "[\"s580\", \"box-coker\"]",
            &[
                "found \"box-coker\"",
                "did you mean \"box-cooker\"?",
                "\"efficiency\"",
            ],
        ),
    ] {
        let to = format!("demonstration = true\nprocedures = {named}");
        let parts = [&["[campaign] procedures: "], parts].concat();
        refuses_campaign("demonstration = true", &to, &parts);
    }
}

#[test]
fn logs_that_are_not_there_are_named_each_and_not_taken_for_one() {
    let bench = Bench::new();
    for day in [2, 3] {
        fs::remove_file(bench.path(&format!("mallee/day-{day}.csv"))).unwrap();
    }
    let told = [
        "the log \"day-2.csv\" is not there",
        "the log \"day-3.csv\" is not there",
    ];
    let ended = bench.refuses(4, &told);
    assert!(!ended.err.contains("same log"), "{}", ended.err);
    assert_eq!(
        ended.err.matches("is not there").count(),
        2,
        "{}",
        ended.err
    );
    // One that is named twice is one, whether it is there or not.
    bench.replace("mallee/campaign.toml", "day-3.csv", "day-2.csv");
    bench.refuses(4, &["names the same log as [[run]] 2"]);
}
