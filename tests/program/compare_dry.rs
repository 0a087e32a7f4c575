//! `compare` on campaigns of dry vessels, which have no rating.

use serde_json::Value;

use crate::bench::Bench;

/// An empty pot in the sun: it gets `per_sun` K m²/W hotter than the air, and is there for the
/// last hour and a half. Invented.
fn dry_log(date: &str, per_sun: f64, sun_w_m2: f64) -> String {
    let rows = (0..=36).map(|step| {
        let minute = 5 * step;
        let rise = 1.0 - (-f64::from(minute) / 15.0).exp();
        let vessel_c = 26.0 + per_sun * sun_w_m2 * rise;
        let (hour, minute) = (11 + minute / 60, minute % 60);
        format!("{date} {hour}:{minute:02},{vessel_c:.1},26.0,{sun_w_m2:.0}\n")
    });
    let header = "time,oven thermometer (°C),air (°C),sun meter (W/m²)\n";
    format!("# Invented data\n{header}{}", rows.collect::<String>())
}

/// A pot whose mass is stated, in a panel cooker, on two days each.
fn add_pot(bench: &Bench, name: &str, per_sun: [f64; 2], vessel_kg: f64) {
    let text = format!(
        r#"# Invented data
[campaign]
title = "{name} panel, dry pot"
demonstration = true
[cooker]
name = "{name} panel"
type = "panel"
intercept_area_m2 = 0.42
[site]
name = "Nowhere flats (invented)"
latitude_deg = 33.0
longitude_deg = -106.5
elevation_m = 100
time_zone = "America/Denver"
[load]
vessel_mass_kg = {vessel_kg}
vessel_material = "steel"
[instruments.irradiance]
plane = "normal"
id = "sun"
relative_uncertainty = 0.03
[instruments.vessel_temperature]
id = "dial"
uncertainty_k = 1.0
[instruments.ambient_temperature]
id = "air"
uncertainty_k = 0.5
[columns]
irradiance = "sun meter (W/m²)"
[[run]]
log = "one.csv"
kind = "dry"
[[run]]
log = "two.csv"
kind = "dry"
"#
    );
    bench.write(&format!("{name}/campaign.toml"), text);
    let logs = [("one", "2026-05-09", 940.0), ("two", "2026-05-11", 905.0)];
    for ((log, date, sun_w_m2), per_sun) in logs.into_iter().zip(per_sun) {
        bench.write(
            &format!("{name}/{log}.csv"),
            dry_log(date, per_sun, sun_w_m2),
        );
    }
}

fn json(bench: &Bench) -> Value {
    serde_json::from_str(&bench.read("reports/comparison.json")).unwrap()
}

fn figure<'j>(json: &'j Value, code: &str) -> &'j Value {
    let mut figures = json["pairs"][0]["figures"].as_array().unwrap().iter();
    figures.find(|one| one["figure"] == code).unwrap()
}

#[test]
fn two_dry_pots_are_held_against_each_other() {
    let bench = Bench::empty();
    add_pot(&bench, "juniper", [0.150, 0.1502], 1.1);
    add_pot(&bench, "larch", [0.165, 0.1653], 1.1);
    let ended = bench.run(&["compare", "juniper", "larch"]).exits(0);
    for absent in ["Ps(50)", "inf", "NaN"] {
        assert!(!ended.out.contains(absent), "{}", ended.out);
    }
    ended.prints(&[
        "larch panel, dry pot gets hotter than juniper panel, dry pot when dry",
        "The dry vessel of larch panel, dry pot gets hotter per W/m²",
        "10 %: a real difference",
        "dry vessel above the air, per W/m²  +0.015",
        "reports/comparison.pdf",
    ]);
    let json = json(&bench);
    let pair = &json["pairs"][0];
    assert!(pair["difference_w"].is_null() && pair["real"] == false);
    let dry = figure(&json, "dry-difference");
    assert_eq!(dry["unit"], "K m²/W");
    assert_eq!(dry["told_apart"], true);
    assert!(dry["not_compared"].is_null());
    // From the invented pots' own figures.
    let difference = dry["difference"].as_f64().unwrap();
    assert!((difference - 0.01505).abs() < 2e-4, "{difference}");
    let lower = dry["interval_95"][0].as_f64().unwrap();
    assert!(lower > 0.0 && lower < difference);
}

#[test]
fn the_table_and_the_report_have_both_dry_vessels() {
    let bench = Bench::empty();
    add_pot(&bench, "juniper", [0.150, 0.1502], 1.1);
    add_pot(&bench, "larch", [0.165, 0.1653], 1.1);
    bench.run(&["compare", "juniper", "larch"]).exits(0);
    let csv = bench.read("reports/comparison.csv");
    let rows: Vec<Vec<&str>> = csv.lines().map(|line| line.split(',').collect()).collect();
    let column = |name: &str| rows[0].iter().position(|one| *one == name).unwrap();
    let cell = |row: usize, name: &str| rows[row][column(name)].parse::<f64>().unwrap();
    for (row, expected) in [(1, 0.1501), (2, 0.16515)] {
        let value = cell(row, "dry_difference_k_m2_per_w");
        assert!((value - expected).abs() < 2e-4, "{value}");
        assert!(cell(row, "dry_difference_lower_95_k_m2_per_w") < value);
        assert!(cell(row, "dry_difference_upper_95_k_m2_per_w") > value);
    }
    assert!(column("dry_difference_k_m2_per_w") > column("real"));
    let text = bench.pdf_text("reports/comparison.pdf");
    for part in [
        "Figuresbesidetherating",
        "juniperpanel",
        "one.csv",
        "different",
    ] {
        assert!(text.contains(part), "{part}: {text}");
    }
    bench.run(&["verify", "reports/comparison.pdf"]).exits(0);
}

#[test]
fn near_pots_and_other_vessels_are_not_told_apart() {
    let bench = Bench::empty();
    add_pot(&bench, "juniper", [0.150, 0.1502], 1.1);
    add_pot(&bench, "larch", [0.1503, 0.1500], 1.1);
    add_pot(&bench, "rowan", [0.165, 0.1653], 1.4);
    let near = bench.run(&["compare", "juniper", "larch"]).exits(0);
    near.prints(&["cannot be told", "not shown"]);
    assert_eq!(figure(&json(&bench), "dry-difference")["told_apart"], false);
    let other = bench.run(&["compare", "juniper", "rowan"]).exits(0);
    other.prints(&[
        "is not compared: other vessels",
        "not compared: other vessels",
    ]);
    let json = json(&bench);
    let dry = figure(&json, "dry-difference");
    assert_eq!(dry["not_compared"], "other-vessels");
    assert!(dry["difference"].is_null() && dry["first"].is_f64());
    assert_eq!(dry["told_apart"], false);
}

#[test]
fn a_difference_of_single_days_is_never_called_told_apart() {
    let bench = Bench::empty();
    for (name, per_sun) in [("juniper", 0.15), ("larch", 0.20)] {
        add_pot(&bench, name, [per_sun; 2], 1.1);
        let second = "[[run]]\nlog = \"two.csv\"\nkind = \"dry\"\n";
        bench.replace(&format!("{name}/campaign.toml"), second, "");
    }
    let ended = bench.run(&["compare", "juniper", "larch"]).exits(0);
    ended.prints(&["got hotter", "days alone may explain it", "(not 95 %)"]);
    let json = json(&bench);
    let dry = figure(&json, "dry-difference");
    assert_eq!(dry["told_apart"], false);
    assert_eq!(dry["one_day"], true);
}

#[test]
fn a_dry_pot_and_a_rated_cooker_without_a_figure_in_common_are_refused() {
    let bench = Bench::new();
    add_pot(&bench, "juniper", [0.150, 0.1502], 1.1);
    let ended = bench.run(&["compare", "mallee", "juniper"]).exits(2);
    ended.says(&["states no figure that another of the campaigns states"]);
    assert!(bench.names("reports").is_empty());
}

#[test]
fn one_log_of_a_dry_pot_in_two_campaigns_is_refused() {
    let bench = Bench::empty();
    for name in ["juniper", "larch"] {
        add_pot(&bench, name, [0.150, 0.1502], 1.1);
    }
    let ended = bench.run(&["compare", "juniper", "larch"]).exits(2);
    ended.says(&["holds the readings of \"one.csv\" that juniper holds too"]);
}
