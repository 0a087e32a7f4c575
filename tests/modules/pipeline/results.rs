//! Results that make no sense, and what is said about them.

use jiff::Timestamp;
use serde_json::Value;
use simmerline::logs::LogNotice;
use simmerline::procedure::Assessment;
use simmerline::procedure::finding::Level;
use simmerline::procedure::notice::Notice;
use simmerline::procedure::run_notice::RunNotice;
use simmerline::procedure::s580::finding::{FindingCode, S580Finding};
use simmerline::procedure::s580::notice::S580Notice;

use crate::pipeline::trial::*;

/// A log's notice as an assessment has it.
fn of_log(notice: &LogNotice) -> Notice {
    Notice::Run(RunNotice::Log(notice.clone()))
}

#[test]
fn the_unchanged_campaign_conforms_without_a_notice() {
    let assessment = Trial::fair().rated();
    assert_eq!(assessment.s580.conformity.level, Level::Conforms);
    assert_eq!(codes(&assessment), [""; 0]);
    assert_eq!(assessment.notices, []);
    assert_eq!(assessment.s580.intervals.len(), 3 * INTERVALS);
    // 7 kg·4186 J/(kg K)/8600 s·(91 − 50) K·700/895 = 109.26 W; the trapezoid over rows
    // 300 s apart takes 1e-4 of it, and the written temperatures three decimals.
    assert!((ps50_w(&assessment) - 109.26).abs() < 0.05);
}

#[test]
fn water_that_only_cools_has_no_useful_heat_and_never_conforms() {
    let cooling = |day| log(day, |s| AMBIENT_C + 62.0 * (-s / TIME_CONSTANT_S).exp());
    let assessment = Trial::of(&[14, 15, 16].map(cooling)).rated();
    assert!(ps50_w(&assessment) < -100.0);
    assert!(finding(&assessment, "no-useful-heat").contains("loses heat"));
    assert_eq!(assessment.s580.conformity.level, Level::Indicative);
    let rating = rating_json(&assessment);
    assert_eq!(rating["conformity"]["level"], "indicative");
    assert!(report(&assessment).title.ends_with("(indicative)"));
    for heating in assessment.prospect.unwrap().cooking.heatings {
        assert_eq!((heating.time, heating.may_get_there), (None, false));
    }
}

#[test]
fn a_line_that_rises_with_the_temperature_difference_is_said_not_to_fall() {
    // dx/dt = (x + 20 K)/τ from x = 8 K: the power grows with the temperature.
    let rising = |day| log(day, |s| AMBIENT_C - 20.0 + 28.0 * (s / 12_500.0).exp());
    let assessment = Trial::of(&[14, 15, 16].map(rising)).rated();
    assert!(assessment.s580.line().unwrap().slope > 0.0);
    finding(&assessment, "line-not-falling");
    assert_eq!(assessment.s580.conformity.level, Level::Indicative);
}

const TWO_WATER_COLUMNS: &str = "[columns]\nwater_temperature = [\"left_c\", \"right_c\"]";

/// Three days with a second water column, from the row's number and the first one.
fn two_sensors(second_c: impl Fn(u32, f64) -> f64 + Copy) -> Trial {
    let with_second = |day| {
        changed_log(day, |row, line| match row {
            None => line.replace("water_c", "left_c") + ",right_c",
            Some(row) => {
                let left_c: f64 = line.split(',').nth(1).unwrap().parse().unwrap();
                format!("{line},{:.3}", second_c(row, left_c))
            }
        })
    };
    Trial::of(&[14, 15, 16].map(with_second)).with_table(TWO_WATER_COLUMNS)
}

#[test]
fn a_second_water_sensor_stuck_at_150_celsius_is_an_error_that_names_its_column() {
    let message = two_sensors(|_, _| 150.0).refused_as_input();
    for log in ["day-1.csv", "day-2.csv", "day-3.csv"] {
        assert!(message.contains(log), "{message}");
    }
    assert!(message.contains("column \"right_c\""), "{message}");
    assert!(message.contains("150"), "{message}");
    assert!(!message.contains("left_c"), "{message}");
}

#[test]
fn a_second_water_sensor_stuck_at_zero_gives_the_notice_that_the_sensors_are_apart() {
    let assessment = two_sensors(|_, _| 0.0).rated();
    for day in 1..=3 {
        let expected = LogNotice::SensorsApart {
            log: format!("day-{day}.csv"),
            quantity: simmerline::logs::quantity::Quantity::Water,
            readings: ROWS as usize,
            apart_k: 15.0,
        };
        assert!(assessment.notices.contains(&of_log(&expected)), "day {day}");
        let on_paper = report(&assessment).provenance.notices;
        // There it is a sentence.
        let sentence = format!("D{}.", &expected.to_string()[1..]);
        assert!(on_paper.contains(&sentence), "{on_paper:?}");
    }
}

#[test]
fn two_water_sensors_that_agree_give_no_notice() {
    let assessment = two_sensors(|_, left_c| left_c + 0.4).rated();
    assert_eq!(assessment.notices, []);
}

#[test]
fn a_sensor_that_fails_in_two_rows_is_taken_out_before_the_mean() {
    // 120 °C and the 60 °C of the other sensor have a mean that could be believed.
    let plain = two_sensors(|_, left_c| left_c).rated();
    let failed = |row| matches!(row, 20 | 31);
    let assessment =
        two_sensors(move |row, left_c| if failed(row) { 120.0 } else { left_c }).rated();
    for run in 0..3 {
        assert_eq!(points(&assessment, run), points(&plain, run));
        let readings = &assessment.tested.runs[run].readings.water_c;
        assert_eq!(readings, &plain.tested.runs[run].readings.water_c);
        let log = format!("day-{}.csv", run + 1);
        for expected in [
            LogNotice::UnbelievableReadings {
                log: log.clone(),
                column: "right_c".to_owned(),
                readings: 2,
                lowest: 120.0,
                highest: 120.0,
                unit: "°C",
            },
            LogNotice::SensorsIncomplete {
                log,
                quantity: simmerline::logs::quantity::Quantity::Water,
                readings: 2,
            },
        ] {
            assert!(
                assessment.notices.contains(&of_log(&expected)),
                "{expected}"
            );
        }
    }
}

/// A fair day without the column of irradiance.
fn sunless_log(day: u32) -> String {
    changed_log(day, |_, line| {
        let cells: Vec<&str> = line.split(',').collect();
        [cells[0], cells[1], cells[2], cells[4]].join(",")
    })
}

#[test]
fn intervals_without_irradiance_are_not_normalised_and_nowhere_counted_as_used() {
    let plain = Trial::fair().rated();
    let logs = [fair_log(14), fair_log(15), sunless_log(17), fair_log(16)];
    let assessment = Trial::of(&logs).rated();
    assert_eq!(assessment.s580.line(), plain.s580.line());
    let rating = rating_json(&assessment);
    let intervals = rating["intervals"].as_array().unwrap();
    let of_run = intervals.iter().filter(|i| i["run"] == "day-3.csv");
    let dark: Vec<&Value> = of_run
        .filter(|i| i["verdict"] == "not-normalised")
        .collect();
    assert!(!dark.is_empty());
    assert_eq!(rating["runs"][2]["used"], 0);
    assert_eq!(rating["runs"][2]["not_normalised"], dark.len());
    for interval in dark {
        assert_eq!(interval["used"], false);
        for key in ["irradiance_mean_w_m2", "standardised_power_w"] {
            assert_eq!(interval[key], Value::Null);
        }
        assert_eq!(interval["reasons"], Value::Array(Vec::new()));
    }
    let on_line = rating_json(&plain)["regression"]["intervals"].clone();
    assert_eq!(rating["regression"]["intervals"], on_line);
    assert_eq!(rating["regression"]["days"], 3);
    let used = |i: &&Value| i["used"] == true;
    let all_used = intervals.iter().filter(used).count();
    assert_eq!(all_used as u64, on_line.as_u64().unwrap());
    for interval in intervals {
        let is_aside = !interval["reasons"].as_array().unwrap().is_empty();
        let expected = match (interval["used"] == true, is_aside) {
            (true, false) => "used",
            (false, true) => "set-aside",
            (false, false) => "not-normalised",
            (true, true) => panic!("{interval}"),
        };
        assert_eq!(interval["verdict"], expected);
    }
    let table = report(&assessment).intervals;
    let lane = table.lanes.iter().position(|name| name == "no irradiance");
    let lane = lane.unwrap_or_else(|| panic!("{:?}", table.lanes));
    let rows = &table.groups[2].rows;
    assert!(rows.iter().any(|row| row.marks[lane]));
    assert!(rows.iter().all(|row| !row.used));
    let text = finding(&assessment, "irradiance-not-normal");
    assert!(text.contains("day-3.csv"), "{text}");
    assert!(!text.contains("day-1.csv"), "{text}");
    assert_eq!(assessment.s580.conformity.level, Level::Indicative);
}

#[test]
fn intervals_and_days_without_irradiance_do_not_count_as_enough() {
    let logs = [
        fair_log(14),
        sunless_log(15),
        sunless_log(16),
        sunless_log(17),
    ];
    let assessment = Trial::of(&logs).rated();
    let on_line = assessment
        .s580
        .intervals_of(0)
        .filter(|i| i.is_on_line())
        .count();
    let dark = assessment.s580.not_normalised().count();
    assert!((3..30).contains(&on_line) && on_line + dark >= 30);
    let rating = rating_json(&assessment);
    assert_eq!(rating["regression"]["intervals"], on_line);
    assert_eq!(rating["regression"]["days"], 1);
    let few_intervals = finding(&assessment, "too-few-intervals");
    assert!(
        few_intervals.starts_with(&format!("{on_line} intervals")),
        "{few_intervals}"
    );
    let few_days = finding(&assessment, "too-few-days");
    assert!(few_days.contains("on 1 day,"), "{few_days}");
    let missing = assessment.s580.conformity.missing.clone().unwrap();
    let expected = format!("{} more intervals and 2 more days", 30 - on_line);
    assert_eq!(missing.to_string(), expected);
}

#[test]
fn without_the_plane_of_its_sensor_a_rating_is_indicative_and_says_what_mends_it() {
    let unstated = Trial::fair().change("plane = \"normal\"\n", "");
    let assessment = unstated.rated();
    assert_eq!(codes(&assessment), ["irradiance-plane-not-stated"]);
    assert_eq!(assessment.s580.conformity.level, Level::Indicative);
    assert_eq!(assessment.notices, []);
    let finding = &assessment.s580.conformity.findings[0];
    let remedy = finding.remedy.to_string();
    assert!(remedy.contains("plane = \"normal\""), "{remedy}");
    assert_eq!(
        assessment.s580.line(),
        Trial::fair().rated().s580.line(),
        "the number stays as it is"
    );
}

#[test]
fn without_any_irradiance_its_plane_is_not_asked_for() {
    let assessment = Trial::of(&[14, 15, 16].map(sunless_log))
        .change("plane = \"normal\"\n", "")
        .rated();
    let codes = codes(&assessment);
    assert!(codes.contains(&"irradiance-not-normal"), "{codes:?}");
    assert!(!codes.contains(&"irradiance-plane-not-stated"), "{codes:?}");
}

#[test]
fn conformity_says_at_the_verdict_what_nobody_checked() {
    let conforming = report(&Trial::fair().rated()).headline;
    for part in ["from memory", "the sensors", "the tester’s statement"] {
        assert!(
            conforming.rests_on.contains(part),
            "{}",
            conforming.rests_on
        );
    }
    let indicative = Trial::fair().change("plane = \"normal\"\n", "").rated();
    assert_eq!(report(&indicative).headline.rests_on, "");
}

/// A fair day in air of 25 °C with a constant power plus a sign that changes from interval to
/// interval, over water of 40 to 60 °C.
fn flat_log(day: u32, rise_k: f64, scatter_k: f64) -> String {
    log(day, |s| {
        let step = (s / 600.0).floor();
        let within = (s - 600.0 * step) / 600.0;
        let extra = |step: f64| scatter_k * (step % 2.0);
        35.0 + rise_k * s / 600.0 - 2e-9 * s * s
            + extra(step) * (1.0 - within)
            + extra(step + 1.0) * within
    })
}

#[test]
fn a_low_r_squared_of_a_flat_line_is_not_blamed_on_the_aim() {
    // The power hardly falls; it scatters by 1 % of itself.
    let flat = Trial::of(&[14, 15, 16].map(|day| flat_log(day, 1.9, 0.01))).rated();
    let scattered = Trial::of(&[14, 15, 16].map(|day| flat_log(day, 1.9, 0.9))).rated();
    let remedy = |assessment: &Assessment| {
        let findings = &assessment.s580.conformity.findings;
        let code = |finding: &&S580Finding| finding.code == FindingCode::RSquaredLow;
        findings.iter().find(code).unwrap().remedy.to_string()
    };
    let line = flat.s580.line().unwrap();
    assert!(line.slope < 0.0 && line.residual_sd < 0.05 * ps50_w(&flat));
    let said = remedy(&flat);
    assert!(
        said.contains("hardly falls") && said.contains("wider range"),
        "{said}"
    );
    assert!(!said.contains("aiming"), "{said}");
    let line = scattered.s580.line().unwrap();
    assert!(line.residual_sd > 0.05 * ps50_w(&scattered));
    assert!(remedy(&scattered).contains("steadier aiming"));
    // What the step of the thermometer explains is not blamed on the aim either.
    let stepped = Trial::of(&[14, 15, 16].map(|day| flat_log(day, 1.9, 0.3))).rated();
    let step_w = (stepped.s580.uncertainty().unwrap().of_line.reading).resolution_w;
    let scatter_w = stepped.s580.line().unwrap().residual_sd;
    assert!(step_w.unwrap() > 0.9 * scatter_w, "{step_w:?}, {scatter_w}");
    assert!(remedy(&stepped).contains("finer water thermometer"));
}

#[test]
fn a_run_that_is_not_on_the_line_does_not_change_the_load_as_tested() {
    let logs = [14, 15, 16].map(fair_log).into_iter();
    let logs: Vec<String> = logs.chain([sunless_log(17)]).collect();
    let run = "log = \"day-4.csv\"\n";
    let trial = Trial::of(&logs).change(run, &format!("{run}water_kg = 3.0\n"));
    let cooking = trial.rated().prospect.unwrap().cooking;
    assert_eq!(cooking.tested_kg, 7.0);
}

#[test]
fn water_three_kelvin_above_the_local_boiling_point_gives_a_notice() {
    let boiling_point_c = Trial::fair().rated().tested.boiling_point_c;
    let up_to = |highest_c: f64| {
        let steep = move |s: f64| AMBIENT_C + 140.0 * (1.0 - (-s / TIME_CONSTANT_S).exp());
        log(15, move |s| steep(s).min(highest_c))
    };
    let says_so = |highest_c: f64| {
        let assessment = Trial::with_second(up_to(highest_c)).rated();
        assessment.notices.iter().find_map(|notice| match notice {
            Notice::Run(RunNotice::WaterAboveBoiling { log, highest_c, .. }) => {
                Some((log.clone(), *highest_c))
            }
            _ => None,
        })
    };
    let (log, highest_c) = says_so(boiling_point_c + 3.0).unwrap();
    assert_eq!(log, "day-2.csv");
    // The log has three decimals.
    assert!((highest_c - boiling_point_c - 3.0).abs() < 0.000_6);
    assert_eq!(says_so(boiling_point_c + 1.0), None);
}

/// Hours by the clock at which solar noon is said to fall.
fn odd_noons_h(trial: &Trial) -> Vec<f64> {
    let notices = trial.rated().notices.into_iter();
    let noons = notices.filter_map(|notice| match notice {
        Notice::S580(S580Notice::OddSolarNoon { noon_h, .. }) => Some(noon_h),
        _ => None,
    });
    noons.collect()
}

#[test]
fn notices_of_a_run_are_told_from_its_intervals_to_its_exclusions() {
    // Far off in longitude, so high that the water is too hot, and a span at night.
    let steep = |s: f64| AMBIENT_C + 140.0 * (1.0 - (-s / TIME_CONSTANT_S).exp());
    let run = "log = \"day-2.csv\"\n";
    let exclude = "exclude = [{ from = \"03:00\", to = \"03:10\" }]\n";
    let assessment = Trial::with_second(log(15, move |s| steep(s).min(99.0)))
        .change("longitude_deg = 0.0", "longitude_deg = 170.0")
        // By a clock of offset zero no noon is odd.
        .change("+00:00", "+01:00")
        .change("elevation_m = 100", "elevation_m = 4500")
        .change(run, &format!("{run}{exclude}"))
        .rated();
    let of_second = assessment.notices.iter().filter_map(|notice| match notice {
        Notice::S580(S580Notice::OddSolarNoon { log, .. }) => Some((log, "noon")),
        Notice::Run(RunNotice::WaterAboveBoiling { log, .. }) => Some((log, "boiling")),
        Notice::S580(S580Notice::IdleExclusion { log, .. }) => Some((log, "exclusion")),
        _ => None,
    });
    let told: Vec<&str> = of_second
        .filter(|(log, _)| *log == "day-2.csv")
        .map(|(_, what)| what)
        .collect();
    assert_eq!(told, ["noon", "boiling", "exclusion"]);
}

#[test]
fn a_longitude_of_the_wrong_sign_gives_the_notice_on_solar_noon() {
    // 75° east is five hours ahead of UTC; at 75° west noon by that clock is at 22:00,
    // give or take the equation of time, under 0.1 h in April.
    let at = |longitude: &str| {
        Trial::fair()
            .change("longitude_deg = 0.0", longitude)
            .change("\"+00:00\"", "\"+05:00\"")
    };
    assert!(odd_noons_h(&at("longitude_deg = 75.0")).is_empty());
    let noons_h = odd_noons_h(&at("longitude_deg = -75.0"));
    assert_eq!(noons_h.len(), 3);
    for noon_h in noons_h {
        assert!((noon_h - 22.0).abs() < 0.1, "{noon_h}");
    }
}

#[test]
fn a_time_zone_far_off_gives_the_notice_on_solar_noon() {
    for (zone, noon_h) in [("+09:00", 21.0), ("-08:00", 4.0), ("Asia/Tokyo", 21.0)] {
        let trial = Trial::fair().change("+00:00", zone);
        let noons_h = odd_noons_h(&trial);
        assert_eq!(noons_h.len(), 3, "{zone}");
        for found_h in noons_h {
            assert!((found_h - noon_h).abs() < 0.1, "{zone}: {found_h}");
        }
    }
}

#[test]
fn a_stray_date_years_away_gives_a_notice_and_still_a_report() {
    let plain_w = ps50_w(&Trial::fair().rated());
    let days = 20.0 * 365.25;
    for (row, stray) in [(0, "2006"), (ROWS - 1, "2046")] {
        // A row more than the plain log has, before its first or after its last.
        let stray_log = changed_log(15, |at, line| match at {
            Some(at) if at == row && row == 0 => {
                format!("{}\n{line}", line.replace("2026", stray))
            }
            Some(at) if at == row => format!("{line}\n{}", line.replace("2026", stray)),
            _ => line.to_owned(),
        });
        let assessment = Trial::with_second(stray_log).rated();
        let found = assessment.notices.iter().find_map(|notice| match notice {
            Notice::Run(RunNotice::LongRun { log, days, .. }) => Some((log.clone(), *days)),
            _ => None,
        });
        let (log, found_days) = found.unwrap_or_else(|| panic!("{stray}: no notice"));
        assert_eq!(log, "day-2.csv");
        assert!((found_days - days).abs() < 2.0, "{stray}: {found_days}");
        assert_eq!(ps50_w(&assessment), plain_w, "{stray}");
        let outputs = within(60, move || {
            // The trial's folder, with the logs to attach, is gone.
            let edition = simmerline::report::Edition {
                has_attachments: false,
                ..simmerline::report::Edition::plain(Timestamp::UNIX_EPOCH)
            };
            simmerline::report::outputs(&assessment, &edition).unwrap()
        });
        assert_eq!(outputs.len(), 3);
        assert!(outputs[0].bytes.starts_with(b"%PDF-"));
    }
}

#[test]
fn an_own_limit_beyond_the_practices_other_end_is_refused() {
    let trial = Trial::fair().with_table("[limits]\nambient_min_c = 40");
    let text = trial.refused_as_campaign();
    assert!(text.contains("ambient_min_c is 40"), "{text}");
    assert!(text.contains("ambient_max_c is 35"), "{text}");
}

#[test]
fn irradiance_that_may_be_nothing_gives_no_monte_carlo_check_and_no_number_that_is_none() {
    let wild = Trial::fair().change("relative_uncertainty = 0.03", "relative_uncertainty = 1.0");
    let assessment = wild.rated();
    let sure = assessment.s580.uncertainty().unwrap();
    assert_eq!(sure.monte_carlo, None);
    let report = serde_json::to_string(&report(&assessment)).unwrap();
    assert!(report.contains("No Monte Carlo check") && !report.contains("NaN"));
}
