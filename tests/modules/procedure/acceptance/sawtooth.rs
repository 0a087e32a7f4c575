//! A sawtooth whose optics are known, as readings without noise and as logs with notes. No
//! published source has such data; that a tenth is lost at the half angle is the definition, and
//! what the sun moves in an hour, 15°, is geometry.

use std::fmt::Write as _;
use std::path::Path;

use jiff::tz::TimeZone;
use simmerline::campaign;
use simmerline::campaign::kinds::RunKind;
use simmerline::language::Words;
use simmerline::planning::plan;
use simmerline::procedure::acceptance::finding::FindingCode;
use simmerline::procedure::acceptance::fit::of_teeth;
use simmerline::procedure::acceptance::teeth::{Step, Stretch, Tooth};
use simmerline::procedure::s580::own_limits::check_own_limits;
use simmerline::procedure::spans::TimeSpan;
use simmerline::report::heat_balance::words::heat_balance;
use simmerline::units::local_clock;
use simmerline::{assess_folder, procedure::Assessment};

use crate::kit::campaign::Invented;

/// 15° an hour.
const DEG_PER_S: f64 = 15.0 / 3600.0;
const SUN_W_M2: f64 = 800.0;
const SECOND_US: i64 = 1_000_000;

/// Teeth of two runs, each of six teeth of half an hour read every minute, of water that takes up
/// `share(θ)` of the sun and loses in proportion to its warmth; reckoned in steps of a second.
fn teeth(share: impl Fn(f64) -> f64) -> Vec<Tooth> {
    let mut teeth = Vec::new();
    for run in 0..2 {
        let mut water_k = 5.0;
        for tooth in 0..6 {
            let mut stretch = Stretch::default();
            let mut last_k_s = 0.0;
            let (mut difference_k_s, mut square_k2_s) = (0.0, 0.0);
            for second in 0..=1800 {
                let since_s = f64::from(second);
                if second % 60 == 0 {
                    if second > 0 {
                        stretch.steps.push(Step {
                            sun_j_m2: SUN_W_M2 * 60.0,
                            difference_k_s,
                            square_k2_s,
                            angle_deg: [(since_s - 60.0) * DEG_PER_S, since_s * DEG_PER_S],
                        });
                    }
                    (difference_k_s, square_k2_s) = (0.0, 0.0);
                    stretch.since_s.push(since_s);
                    stretch.water_c.push(25.0 + water_k);
                }
                let middle_deg = (since_s + 0.5) * DEG_PER_S;
                last_k_s = 0.3 / 29_302.0 * SUN_W_M2 * share(middle_deg) - 7e-5 * water_k;
                difference_k_s += water_k;
                square_k2_s += water_k * water_k;
                water_k += last_k_s;
            }
            water_k -= last_k_s;
            let from_us = (run * 86_400 + tooth * 1800) * SECOND_US;
            teeth.push(Tooth {
                run: run as usize,
                span: TimeSpan {
                    from_us,
                    to_us: from_us + 1800 * SECOND_US,
                },
                known_to_s: 0.0,
                stretches: vec![stretch],
            });
        }
    }
    teeth
}

#[test]
fn half_angle_of_a_sawtooth_without_noise_is_that_of_the_optics() {
    for half_angle_deg in [2.0, 4.0, 7.0] {
        let bell = |angle_deg: f64| 0.9_f64.powf((angle_deg / half_angle_deg).powi(2));
        let found = of_teeth(&teeth(bell));
        assert_eq!((found.teeth, found.runs), (12, 2));
        assert!((found.largest_deg - 7.5).abs() < 1e-9);
        let found = found.half_angle.unwrap();
        // Steps of a second, and a parabola over tries 15 % apart.
        let off = found.value_deg / half_angle_deg - 1.0;
        assert!(off.abs() < 0.02, "{half_angle_deg}: {}", found.value_deg);
    }
}

#[test]
fn half_angle_that_the_sun_never_reached_is_not_told() {
    // A tenth would be lost at 9°, and it stood 7.5° off at most.
    let found = of_teeth(&teeth(|angle_deg| 0.9_f64.powf((angle_deg / 9.0).powi(2))));
    assert!(found.half_angle.is_none());
    assert_eq!(found.findings[0].code, FindingCode::FallNotShown);
}

#[test]
fn steady_gain_and_few_aimings_tell_no_half_angle() {
    let steady = of_teeth(&teeth(|_| 1.0));
    assert!(steady.half_angle.is_none());
    assert_eq!(steady.findings[0].code, FindingCode::FallNotShown);
    let few = of_teeth(&teeth(|angle_deg| 1.0 - 0.05 * angle_deg)[..5]);
    assert!(few.half_angle.is_none());
    assert_eq!(few.findings[0].code, FindingCode::FewAimings);
    assert_eq!(of_teeth(&[]).findings[0].code, FindingCode::FewAimings);
}

/// Logs of four days of a cooker that loses a tenth at 4°, aimed every 25 minutes as its notes
/// say, in a language each.
fn write_campaign(folder: &Path, keys: &str) {
    let notes = ["moved it", "Réorienté", "nachgeführt", "movido"];
    let mut logs = Vec::new();
    for (day, note) in notes.iter().enumerate() {
        let mut text = String::from("time,water_c,ambient_c,irradiance_w_m2,sky,Remarks\n");
        let mut water_c = 30.0;
        for minute in 0..220 {
            let angle_deg = f64::from(minute % 25) * 0.245;
            let said = match minute {
                30 => "pot not moved",
                minute if minute % 25 == 0 => note,
                _ => "",
            };
            // A reading to a tenth, a little off in turn.
            let read_c = water_c + 0.03 * f64::from(minute * 7 % 5 - 2);
            let (hour, minutes) = (10 + (5 + minute) / 60, (5 + minute) % 60);
            writeln!(
                text,
                "2026-04-{:02} {hour:02}:{minutes:02}:00,{read_c:.1},25.0,800,clear,{said}",
                day + 1
            )
            .unwrap();
            let share = 0.9_f64.powf((angle_deg / 4.0).powi(2));
            let gained_w = (0.29 + 0.005 * day as f64) * 800.0 * share;
            water_c += (gained_w - 1.8 * (water_c - 25.0)) * 60.0 / (7.0 * 4186.0);
        }
        let name = format!("{}.csv", day + 1);
        std::fs::write(folder.join(&name), text).unwrap();
        logs.push(name);
    }
    let logs: Vec<&str> = logs.iter().map(String::as_str).collect();
    let text = Invented::default().text(&logs);
    let text = text.replace(
        "type = \"concentrating\"",
        &format!("type = \"concentrating\"{keys}"),
    );
    std::fs::write(folder.join("campaign.toml"), text).unwrap();
}

fn assessed(keys: &str) -> (tempfile::TempDir, Assessment) {
    let folder = tempfile::tempdir().unwrap();
    write_campaign(folder.path(), keys);
    let assessment = assess_folder(folder.path()).unwrap();
    (folder, assessment)
}

#[test]
fn notes_in_any_language_tell_when_a_cooker_was_aimed() {
    let (_folder, assessment) = assessed("");
    for run in &assessment.tested.runs {
        let clocks = run.readings.aimed_us.iter();
        let clocks: Vec<String> = clocks
            .map(|time_us| local_clock(*time_us, &TimeZone::UTC))
            .collect();
        let expected = [
            "10:05", "10:30", "10:55", "11:20", "11:45", "12:10", "12:35", "13:00", "13:25",
        ];
        assert_eq!(clocks, expected);
    }
    let account = &assessment.tested.accounts[0];
    assert_eq!(account.notes.as_deref(), Some("Remarks"));
    assert_eq!(account.not_read, ["sky"]);
}

#[test]
fn report_tells_the_half_angle_of_logs_with_notes() {
    let (_folder, assessment) = assessed("");
    let found = assessment.acceptance.as_ref().unwrap().half_angle.unwrap();
    let range = found.range_deg;
    assert!(range.lower <= 4.0 && 4.0 <= range.upper, "{found:?}");
    assert!((found.value_deg - 4.0).abs() < 0.4, "{found:?}");
    let part = heat_balance(&assessment, Words::english()).fitted.unwrap();
    let row = part.rows.last().unwrap();
    assert_eq!(row.label, "acceptance half angle");
    let value = format!("{:.1}° (", found.value_deg);
    assert!(row.text.starts_with(&value), "{}", row.text);
    assert!(part.acceptance.contains("(common practice)"));
}

#[test]
fn plan_aims_by_the_stated_half_angle_else_by_the_lower_end_of_what_shows() {
    let planned = |keys: &str| {
        let (folder, assessment) = assessed(keys);
        let campaign =
            campaign::read_campaign(folder.path(), campaign::Reach::Inside, check_own_limits)
                .unwrap();
        let date = "2026-05-02".parse().unwrap();
        let lower_deg = assessment
            .acceptance
            .as_ref()
            .unwrap()
            .half_angle
            .unwrap()
            .range_deg
            .lower;
        let planned = plan(campaign, Some(&assessment), date, RunKind::Water).unwrap();
        (planned, lower_deg)
    };
    let said = |planned| simmerline::report::plan::words::day::aiming(planned).to_string();
    let (shown, lower_deg) = planned("");
    let half_angle = shown.half_angle.unwrap();
    assert_eq!(half_angle.half_angle_deg, lower_deg);
    assert!(said(&shown).contains("lower end of what the runs so far show"));
    let (stated, _) = planned("\nacceptance_half_angle_deg = 8");
    assert_eq!(stated.half_angle.unwrap().half_angle_deg, 8.0);
    assert!(!said(&stated).contains("runs so far"));
    let aimings = |one: &simmerline::planning::Plan| one.aimings_us.as_ref().unwrap().len();
    assert!(aimings(&shown) > aimings(&stated));
}
