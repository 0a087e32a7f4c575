//! What is wrong with one procedure's data is a finding of that one, with its remedy; the others
//! are unharmed.

use simmerline::language::Message;
use simmerline::procedure::Assessment;
use simmerline::procedure::box_cooker::BoxFigures;
use simmerline::procedure::box_cooker::finding::FindingCode as Box;
use simmerline::procedure::dish::DishFigures;
use simmerline::procedure::dish::finding::FindingCode as Dish;
use simmerline::procedure::dry_vessel::finding::FindingCode as Dry;
use simmerline::procedure::finding::{Finding, Level};

use crate::kit::kinds::{At, BOX, DISH, Kinds, Made, POT, changed, frozen};

/// What was found under a code, in English; its remedy is there.
#[track_caller]
fn said<C: PartialEq + Copy + std::fmt::Debug>(
    findings: &[Finding<C>],
    code: C,
    level: Level,
) -> String {
    let codes: Vec<C> = findings.iter().map(|finding| finding.code).collect();
    let found = findings.iter().find(|finding| finding.code == code);
    let found = found.unwrap_or_else(|| panic!("{code:?} is not among {codes:?}"));
    assert_eq!(found.level, level, "{code:?}");
    let [text, remedy] = [&found.text, &found.remedy].map(Message::to_string);
    for said in [&text, &remedy] {
        assert!(
            said.len() > 15 && !said.contains("NaN"),
            "{code:?}: {said:?}"
        );
        assert!(
            !said.contains("inf ") && !said.contains('{'),
            "{code:?}: {said:?}"
        );
    }
    assert_ne!(text, remedy);
    text
}

#[track_caller]
fn of_dry(assessment: &Assessment, code: Dry) -> String {
    said(
        &assessment.dry_runs.runs[0].findings,
        code,
        Level::Indicative,
    )
}

#[track_caller]
fn of_box(assessment: &Assessment, code: Box, level: Level) -> String {
    said(
        &assessment.box_figures.as_ref().unwrap().findings,
        code,
        level,
    )
}

#[track_caller]
fn of_dish(assessment: &Assessment, code: Dish, level: Level) -> String {
    said(
        &assessment.dish_figures.as_ref().unwrap().findings,
        code,
        level,
    )
}

/// Rating, heat balance and efficiency are what they are without what is wrong.
#[track_caller]
fn others_are_unharmed(spoiled: &Assessment, fair: &Assessment) {
    assert!(fair.s580.line().is_some());
    assert_eq!(spoiled.s580.line(), fair.s580.line());
    let gain = |assessment: &Assessment| {
        let balance = assessment.heat_balance.as_ref().unwrap();
        (balance.gain_m2, balance.loss_w_per_k)
    };
    assert_eq!(gain(spoiled), gain(fair));
    let shares = |assessment: &Assessment| {
        let efficiency = assessment.efficiency.as_ref().unwrap();
        (efficiency.energy.figure, efficiency.exergy.figure)
    };
    assert_eq!(shares(spoiled), shares(fair));
}

fn box_water() -> Kinds {
    Kinds::of(BOX).run("water", frozen("box/water-1.csv"))
}

fn dish_water() -> Kinds {
    let kinds = Kinds::of(DISH).run("water", frozen("dish/heating-1.csv"));
    kinds.run("water", frozen("dish/heating-2.csv"))
}

/// The box with a dry log that gives no plateau: the dry run says why, the box that there is none.
#[track_caller]
fn no_plateau(log: &str, code: Dry) -> String {
    no_plateau_with(log, "", code)
}

#[track_caller]
fn no_plateau_with(log: &str, keys: &str, code: Dry) -> String {
    let spoiled = box_water()
        .read_finely()
        .run_with("dry", log, keys)
        .assess();
    assert!(spoiled.dry_runs.runs[0].plateau.is_none());
    assert!(spoiled.dry_runs.difference.is_none());
    let figures = spoiled.box_figures.as_ref().unwrap();
    assert!(figures.f1.is_none() && figures.f2.is_none() && figures.boiling.is_none());
    of_box(&spoiled, Box::NoPlateau, Level::Indicative);
    others_are_unharmed(&spoiled, &box_water().assess());
    of_dry(&spoiled, code)
}

/// A plate that stays at a temperature in air of 30 °C, under a sun.
fn plate(lasts_s: u32, celsius: f64, sun: impl Fn(f64) -> f64) -> String {
    let made = Made {
        lasts_s,
        ..Made::default()
    };
    made.log("vessel_c", |after_s| At {
        celsius,
        ambient_c: 30.0,
        irradiance_w_m2: sun(after_s),
    })
}

#[test]
fn a_plateau_never_reached_is_told_with_the_rate_at_which_it_still_rises() {
    // The last ten minutes rise by 0.58 K/min: truth.json.
    let text = no_plateau(&frozen("refused/dry-rising.csv"), Dry::PlateauNotReached);
    assert!(text.contains("0.58") && text.contains("K/min"), "{text}");
    assert!(text.contains("rose"), "{text}");
}

#[test]
fn a_vessel_that_only_cools_is_told_to_fall() {
    let falls = |after_s: f64| At {
        celsius: 120.0 - after_s / 60.0,
        ambient_c: 30.0,
        irradiance_w_m2: 800.0,
    };
    let log = Made::default().log("vessel_c", falls);
    let text = no_plateau(&log, Dry::PlateauNotReached);
    assert!(text.contains("1.00") && text.contains("fell"), "{text}");
}

#[test]
fn a_dry_run_with_waters_log_lacks_the_vessels_temperature() {
    let log = plate(1_800, 90.0, |_| 800.0);
    no_plateau(
        &log.replace("vessel_c", "water_c"),
        Dry::NoVesselTemperature,
    );
}

#[test]
fn a_dry_run_without_irradiance_is_told() {
    let log = plate(1_800, 130.0, |_| 800.0);
    let log = log.replace("irradiance_w_m2", "something_else");
    no_plateau(&log, Dry::NoIrradiance);
}

#[test]
fn a_dry_run_too_short_an_unsteady_sun_and_a_weak_one_are_told_apart() {
    let text = no_plateau(&plate(540, 130.0, |_| 800.0), Dry::TooShort);
    assert!(text.contains("10 min"), "{text}");
    let wild = |after_s: f64| if after_s % 120.0 < 60.0 { 760.0 } else { 860.0 };
    no_plateau(&plate(1_800, 130.0, wild), Dry::SunUnsteady);
    let text = no_plateau(&plate(1_800, 90.0, |_| 512.0), Dry::SunWeak);
    assert!(text.contains("512"), "{text}");
    // Above 600 W/m² is above.
    no_plateau(&plate(1_800, 90.0, |_| 600.0), Dry::SunWeak);
    let just = Kinds::of(POT).read_finely();
    let just = just.run("dry", plate(1_800, 90.0, |_| 601.0)).assess();
    assert!(just.dry_runs.difference.is_some());
}

#[test]
fn a_span_excluded_over_the_plateau_leaves_none() {
    let keys = "exclude = [{ from = \"10:45\", to = \"12:51\", reason = \"haze\" }]\n";
    no_plateau_with(&frozen("box/dry.csv"), keys, Dry::PlateauNotReached);
    // One beside it changes nothing.
    let of = |keys: &str| {
        let kinds = Kinds::of(BOX).run_with("dry", frozen("box/dry.csv"), keys);
        kinds.assess().dry_runs.difference.unwrap().figure
    };
    let keys = "exclude = [{ from = \"10:00\", to = \"10:30\" }]\n";
    assert_eq!(of(""), of(keys));
}

#[test]
fn three_rows_give_findings_of_every_kind_of_run_and_no_figure() {
    let first = |log: String| changed(&log, |row, cells| (row < 3).then(|| cells.join(",")));
    let dry = Kinds::of(BOX)
        .run("water", first(frozen("box/water-1.csv")))
        .run("dry", first(frozen("box/dry.csv")))
        .assess();
    of_dry(&dry, Dry::TooShort);
    of_box(&dry, Box::NoPlateau, Level::Indicative);
    of_box(&dry, Box::NoHeating, Level::Indicative);
    let dish = Kinds::of(DISH)
        .run("cooling", first(frozen("dish/cooling.csv")))
        .run("water", first(frozen("dish/heating-1.csv")))
        .assess();
    of_dish(&dish, Dish::CoolingTooShort, Level::Indicative);
    of_dish(&dish, Dish::NoHeating, Level::Indicative);
    let figures = dish.dish_figures.unwrap();
    assert!(figures.time_constant_s.is_none() && figures.optical_factor.is_none());
    assert!(dry.efficiency.is_none() && dish.efficiency.is_none());
}

/// The dish with a cooling run that gives no loss.
#[track_caller]
fn no_cooling(log: &str, code: Dish) -> String {
    let spoiled = dish_water().run("cooling", log).assess();
    let figures = spoiled.dish_figures.as_ref().unwrap();
    assert!(figures.time_constant_s.is_none() && figures.loss_factor.is_none());
    assert!(figures.optical_factor.is_none() && figures.boiling.is_none());
    assert_eq!(figures.heatings.len(), 2);
    others_are_unharmed(&spoiled, &dish_water().assess());
    of_dish(&spoiled, code, Level::Indicative)
}

#[test]
fn a_shaded_run_that_warms_is_told_with_how_far() {
    // From 50.0 to 71.4 °C: truth.json.
    let text = no_cooling(&frozen("refused/cooling-in-the-sun.csv"), Dish::Warms);
    assert!(text.contains("21.4"), "{text}");
}

#[test]
fn a_cooling_run_that_begins_12_k_above_ambient_is_told_with_what_it_takes() {
    let text = no_cooling(&frozen("refused/cooling-late.csv"), Dish::BeginsTooCool);
    assert!(text.contains("20 K"), "{text}");
}

#[test]
fn a_cooling_run_with_an_hour_missing_at_its_start_does_not_count() {
    let log = changed(&frozen("dish/cooling.csv"), |row, cells| {
        (!(5..65).contains(&row)).then(|| cells.join(","))
    });
    no_cooling(&log, Dish::CoolingTooShort);
}

#[test]
fn a_spoiled_cooling_run_beside_a_fair_one_is_a_note() {
    let fair = dish_water().run("cooling", frozen("dish/cooling.csv"));
    let spoiled = fair
        .clone()
        .run("cooling", frozen("refused/cooling-late.csv"))
        .assess();
    of_dish(&spoiled, Dish::BeginsTooCool, Level::ConformsWithNotes);
    let (fair, spoiled) = (
        fair.assess().dish_figures.unwrap(),
        spoiled.dish_figures.unwrap(),
    );
    let figures = |found: DishFigures| {
        let [one, two] = [found.time_constant_s, found.optical_factor];
        (one.unwrap().figure, two.unwrap().figure)
    };
    assert_eq!(figures(fair), figures(spoiled));
}

#[test]
fn irradiance_from_the_wrong_plane_leaves_the_figures_indicative() {
    let flat = box_water().run("dry", frozen("box/dry.csv"));
    assert!(!flat.assess().box_figures.unwrap().is_indicative);
    for to in ["plane = \"normal\"", ""] {
        let spoiled = flat.clone().with("plane = \"horizontal\"", to).assess();
        of_box(&spoiled, Box::PlaneNotHorizontal, Level::Indicative);
        let figures = spoiled.box_figures.as_ref().unwrap();
        assert!(figures.is_indicative && figures.f1.is_some() && figures.f2.is_some());
    }
    let turned = dish_water().run("cooling", frozen("dish/cooling.csv"));
    assert!(!turned.assess().dish_figures.unwrap().is_indicative);
    for to in ["plane = \"horizontal\"", ""] {
        let spoiled = turned.clone().with("plane = \"normal\"", to).assess();
        of_dish(&spoiled, Dish::PlaneNotNormal, Level::Indicative);
        let figures = spoiled.dish_figures.as_ref().unwrap();
        assert!(figures.is_indicative && figures.optical_factor.is_some());
    }
}

#[test]
fn water_that_does_not_pass_60_to_90_degrees_gives_no_f2_and_leaves_f1() {
    let fair = box_water().run("dry", frozen("box/dry.csv")).assess();
    let cut = |keep: fn(f64) -> bool| {
        changed(&frozen("box/water-1.csv"), |_, cells| {
            keep(cells[1].parse().unwrap()).then(|| cells.join(","))
        })
    };
    for log in [cut(|c| c < 85.0), cut(|c| c > 66.0)] {
        let kinds = Kinds::of(BOX)
            .run("water", log)
            .run("dry", frozen("box/dry.csv"));
        let spoiled = kinds.assess();
        let text = of_box(&spoiled, Box::NoHeating, Level::Indicative);
        assert!(text.contains("60") && text.contains("90"), "{text}");
        let figures = spoiled.box_figures.unwrap();
        assert!(figures.f2.is_none() && figures.boiling.is_none());
        let f1 = fair
            .box_figures
            .as_ref()
            .unwrap()
            .f1
            .as_ref()
            .unwrap()
            .figure;
        assert_eq!(figures.f1.unwrap().figure, f1);
        assert!(spoiled.efficiency.is_some() && spoiled.s580.line().is_some());
    }
}

#[test]
fn a_hole_in_the_rise_leaves_that_run_out_and_says_so() {
    let hole = changed(&frozen("box/water-2.csv"), |row, cells| {
        (!(60..90).contains(&row)).then(|| cells.join(","))
    });
    let fair = box_water().run("dry", frozen("box/dry.csv"));
    let spoiled = fair.clone().run("water", hole).assess();
    of_box(&spoiled, Box::RunsLeftOut, Level::ConformsWithNotes);
    let (fair, spoiled) = (
        fair.assess().box_figures.unwrap(),
        spoiled.box_figures.unwrap(),
    );
    let f2 = |found: BoxFigures| found.f2.unwrap().figure.value;
    assert_eq!(f2(spoiled), f2(fair));
}

#[test]
fn f2_says_where_the_plate_would_not_get_the_water_so_hot_or_hardly() {
    // Water ends 63.7 K above air under 854 W/m²: the plate has to reach so far.
    let with_f1 = |f1: f64| {
        let log = plate(1_800, 30.0 + 800.0 * f1, |_| 800.0);
        box_water().read_finely().run("dry", log).assess()
    };
    let beyond = with_f1(0.070);
    of_box(&beyond, Box::BeyondReach, Level::Indicative);
    let near = with_f1(0.080);
    of_box(&near, Box::NearReach, Level::ConformsWithNotes);
    // The published form has no end so near to the edge; the integral has.
    let nearest = with_f1(0.0752);
    of_box(&nearest, Box::NearReach, Level::ConformsWithNotes);
    let f2 = |assessment: &Assessment| assessment.box_figures.as_ref().unwrap().f2.clone();
    assert!(f2(&beyond).is_none() && f2(&nearest).is_some());
    // How it grows: near the edge the interval is wider above than far from it.
    let width = |assessment: &Assessment| {
        let figure = f2(assessment).unwrap().figure;
        (figure.interval.upper - figure.value) / figure.value
    };
    let far = with_f1(0.121);
    assert!(
        width(&near) > 1.3 * width(&far),
        "{} {}",
        width(&near),
        width(&far)
    );
    let fair = box_water().assess();
    for spoiled in [&beyond, &near, &nearest] {
        others_are_unharmed(spoiled, &fair);
        assert!(spoiled.box_figures.as_ref().unwrap().f1.is_some());
    }
}

#[test]
fn what_is_not_stated_of_the_vessels_is_a_note_with_its_remedy() {
    let kinds = dish_water().run("cooling", frozen("dish/cooling.csv"));
    let bare = kinds.clone().with("loss_area_m2 = 0.15\n", "").assess();
    of_dish(&bare, Dish::NoLossArea, Level::ConformsWithNotes);
    assert!(bare.dish_figures.unwrap().loss_factor.is_none());
    let light = kinds
        .with("vessel_heat_capacity_j_per_k = 800\n", "")
        .assess();
    of_dish(&light, Dish::NoVesselHeat, Level::ConformsWithNotes);
    // (MC)' without the vessel is that much less; τ0 is the same.
    let figures = light.dish_figures.unwrap();
    let loss = figures.loss_factor.unwrap().figure.value;
    let expected = 15.0 * 4.0 * 4186.0 / 17_544.0;
    assert!((loss / expected - 1.0).abs() < 1e-3, "{loss}");
}

#[test]
fn a_box_without_a_dry_run_and_a_dish_without_a_cooling_run_say_so_when_they_are_asked_for() {
    let flat = box_water().asking(&["s580", "box-cooker"]).assess();
    of_box(&flat, Box::NoDryRun, Level::Indicative);
    let dish = dish_water().asking(&["s580", "dish"]).assess();
    of_dish(&dish, Dish::NoCoolingRun, Level::Indicative);
}

#[test]
fn mirrors_are_told_to_be_covered_and_evaporation_is_told_above_80_degrees() {
    let fair = box_water().run("dry", frozen("box/dry.csv")).assess();
    let text = of_box(&fair, Box::CoverMirrors, Level::ConformsWithNotes);
    assert!(text.to_lowercase().contains("mirror"), "{text}");
    let text = of_box(&fair, Box::Evaporation, Level::ConformsWithNotes);
    assert!(text.contains("80 °C"), "{text}");
    of_box(&fair, Box::OneDay, Level::ConformsWithNotes);
    let dish = dish_water()
        .run("cooling", frozen("dish/cooling.csv"))
        .assess();
    of_dish(&dish, Dish::Evaporation, Level::ConformsWithNotes);
    of_dish(&dish, Dish::GlobalNotBeam, Level::ConformsWithNotes);
}

#[test]
fn a_sensor_that_may_as_well_read_nothing_gives_no_difference_and_says_so() {
    // Off by 80 % (k = 1), every tenth draw of it is no sunlight at all.
    let wild = Kinds::of(POT)
        .with("relative_uncertainty = 0.02", "relative_uncertainty = 0.8")
        .run("dry", frozen("dry-pot/exact-60s.csv"))
        .assess();
    of_dry(&wild, Dry::NoEnd);
    assert!(wild.dry_runs.runs[0].plateau.is_some());
    assert!(wild.dry_runs.runs[0].difference.is_none() && wild.dry_runs.difference.is_none());
}
