//! Logs with holes, and readings that somebody took now and then.

use simmerline::procedure::dry_vessel::finding::FindingCode as Dry;
use simmerline::procedure::stated::{FigureKey, stated};
use simmerline::report::data::rating_file::RatingFile;

use crate::data::assert_relative;
use crate::kit::kinds::{At, BOX, DISH, Facts, Kinds, Made, POT, changed, frozen};

fn without(log: &str, rows: std::ops::Range<usize>) -> String {
    changed(log, |row, cells| {
        (!rows.contains(&row)).then(|| cells.join(","))
    })
}

#[test]
fn two_readings_on_either_side_of_a_hole_are_no_plateau() {
    // After 50 minutes the plate has 118 °C and still 8 K to go; then nobody reads for two hours.
    // Nobody knows how sun and plate were meanwhile, and a mean of both ends is 4 % too low.
    let made = Made {
        lasts_s: 10_200,
        ..Made::default()
    };
    let whole = made.log("vessel_c", |after_s| At {
        celsius: 126.0 - 96.0 * (-after_s / 1200.0).exp(),
        ambient_c: 30.0,
        irradiance_w_m2: 800.0,
    });
    let log = without(&whole, 51..170);
    let run = &Kinds::of(BOX).run("dry", log).assess().dry_runs.runs[0];
    assert!(run.plateau.is_none(), "{:?}", run.plateau);
}

/// The dry pot's log with the air read at some of its rows alone, to a row.
fn air_at(is_read: fn(usize) -> bool) -> String {
    changed(&frozen("dry-pot/exact-60s.csv"), |row, cells| {
        let air = if is_read(row) { cells[2] } else { "" };
        let [time, vessel, sun, wind] = [cells[0], cells[1], cells[3], cells[4]];
        (row <= 172).then(|| format!("{time},{vessel},{air},{sun},{wind}"))
    })
}

#[test]
fn air_that_is_read_every_twenty_minutes_serves_a_plateau_between_two_readings() {
    // The hottest ten minutes, 9480 to 10 080 s, have no reading of the air: rows 150 and 170 are
    // beside them, and what is asked of readings by hand is every twenty minutes.
    let log = air_at(|row| row % 20 == 10);
    let run = &Kinds::of(POT).run("dry", log).assess().dry_runs.runs[0];
    let reference = Facts::of("reference.json");
    let at = "/dry-pot/logs/exact-60s.csv/plateau";
    let plateau = run.plateau.unwrap();
    let expected_c = reference.at(&format!("{at}/plateau_c"));
    assert_relative("plateau", plateau.vessel_c, expected_c, 1e-9);
    let expected = reference.at(&format!("{at}/difference_k_m2_per_w"));
    let difference = run.difference.as_ref().unwrap().figure.value;
    assert_relative("difference", difference, expected, 1e-4);
}

#[test]
fn a_lack_of_air_is_called_neither_a_weak_sun_nor_a_vessel_that_rises() {
    // Under 886 W/m² the pot stays at 173 °C; nobody read the air after 20 minutes.
    let kinds = Kinds::of(POT).run("dry", air_at(|row| row < 20));
    let run = &kinds.assess().dry_runs.runs[0];
    let codes: Vec<Dry> = run.findings.iter().map(|finding| finding.code).collect();
    let is_wrong = |code: &Dry| matches!(code, Dry::SunWeak | Dry::PlateauNotReached);
    assert!(!codes.iter().any(is_wrong), "{codes:?}");
}

#[test]
fn a_dry_run_with_waters_log_is_told_to_be_a_run_of_water() {
    let log = frozen("box/dry.csv").replace("vessel_c", "water_c");
    let run = &Kinds::of(BOX).run("dry", log).assess().dry_runs.runs[0];
    assert_eq!(run.findings[0].code, Dry::NoVesselTemperature);
    let remedy = run.findings[0].remedy.to_string();
    assert!(remedy.contains("kind = \"water\""), "{remedy}");
}

#[test]
fn how_far_above_the_air_a_cooling_run_begins_is_told_of_its_first_reading() {
    // 12 K then; the air warms by 2 K meanwhile: truth.json.
    let kinds = Kinds::of(DISH).run("cooling", frozen("refused/cooling-late.csv"));
    let findings = kinds.assess().dish_figures.unwrap().findings;
    let text = findings[0].text.to_string();
    assert!(text.contains("12 K above the air"), "{text}");
}

#[test]
fn a_cooling_run_counts_up_to_its_hole() {
    let log = without(&frozen("dish/cooling.csv"), 100..140);
    let kinds = Kinds::of(DISH).run("cooling", log);
    let figures = kinds.assess().dish_figures.unwrap();
    assert_eq!(figures.coolings[0].readings, 100);
    let found = figures.time_constant_s.unwrap().figure.value;
    assert_relative("τ0", found, 7797.333, 1e-3);
}

#[test]
fn a_dry_vessel_that_is_not_asked_for_is_in_no_table_and_no_file() {
    let assessment = Kinds::of(BOX)
        .asking(&["s580", "heat-balance"])
        .run("dry", frozen("box/dry.csv"))
        .run("water", frozen("box/water-1.csv"))
        .assess();
    let keys: Vec<FigureKey> = stated(&assessment).iter().map(|one| one.key).collect();
    assert!(!keys.contains(&FigureKey::DryDifference), "{keys:?}");
    let text = RatingFile::new(&assessment).to_text().unwrap();
    let data: serde_json::Value = serde_json::from_str(&text).unwrap();
    assert_eq!(data["dry_runs"].as_array().map(Vec::len), Some(0));
}
