//! Keys that campaigns share, logs by a pattern, and logs that no run names.

use serde_json::Value;

use crate::bench::{Bench, Ended, campaign, heating};

/// `lab/mallee` and `lab/wattle`, whose site stands in `lab/shared.toml`, and their tester above
/// that; every log by one pattern.
fn lab() -> Bench {
    let bench = Bench::empty();
    let text = campaign();
    let (above, site) = text.split_once("[site]\n").unwrap();
    let (site, below) = site.split_once("[load]\n").unwrap();
    let tester = "tester = \"N. Nobody (invented)\"\n";
    let (instruments, _) = below.split_once("[[run]]").unwrap();
    for (name, first) in [("mallee", 14), ("wattle", 21)] {
        let own = above
            .replace(tester, "")
            .replace("Mallee trough", &format!("{name} trough"));
        let own = format!("{own}[load]\n{instruments}[[run]]\nlog = \"day-?.csv\"\n");
        bench.write(&format!("lab/{name}/campaign.toml"), own);
        for day in 0..3 {
            bench.write(
                &format!("lab/{name}/day-{}.csv", day + 1),
                heating(first + day),
            );
        }
    }
    bench.write("lab/shared.toml", format!("# Invented\n[site]\n{site}"));
    bench.write(
        "shared.toml",
        format!("[campaign]\n{tester}[cooking]\nstart_c = 21\n"),
    );
    bench
}

/// The same campaign as one file, whose runs name their logs.
fn alone() -> Bench {
    let bench = Bench::empty();
    bench.add_campaign("mallee");
    let title = "Mallee trough";
    bench.change_lines("mallee/campaign.toml", |_, line| {
        Some(line.replace(title, "mallee trough"))
    });
    let text = bench.read("mallee/campaign.toml");
    bench.write("mallee/campaign.toml", text + "\n[cooking]\nstart_c = 21\n");
    bench
}

/// The results but for what they were made from.
fn results(mut rating: Value) -> Value {
    let keys = rating.as_object_mut().unwrap();
    keys.remove("provenance");
    keys.remove("report_number");
    rating
}

fn issue(bench: &Bench, arguments: &[&str]) {
    let mut command = bench.command(arguments);
    Ended::of(command.env("SOURCE_DATE_EPOCH", "1793707200")).exits(0);
}

#[test]
fn a_campaign_of_shared_keys_is_rated_as_one_that_states_them() {
    let (lab, alone) = (lab(), alone());
    lab.run(&["report", "lab/mallee"]).exits(0);
    let rating = lab.rating("mallee");
    assert_eq!(results(rating.clone()), results(alone.report()));
    let inputs = rating["provenance"]["inputs"].as_array().unwrap();
    let names: Vec<&str> = inputs
        .iter()
        .map(|one| one["file"].as_str().unwrap())
        .collect();
    let expected = [
        "campaign.toml",
        "shared.toml",
        "shared-2.toml",
        "day-1.csv",
        "day-2.csv",
        "day-3.csv",
    ];
    assert_eq!(names, expected);
    assert!(inputs.iter().all(|one| one["outside"] == false));
    let text = lab.pdf_text("reports/mallee.pdf");
    assert!(text.contains("shared.toml") && text.contains("shared-2.toml"));
}

#[test]
fn check_says_which_file_gives_which_keys() {
    let bench = lab();
    bench.run(&["check", "lab/mallee"]).exits(0).prints(&[
        "lab/shared.toml  gives [site] elevation_m, latitude_deg, longitude_deg, name, time_zone",
        "shared.toml      gives [campaign] tester; [cooking] start_c",
    ]);
    let ended = bench
        .run(&["check", "lab/mallee", "--format", "json"])
        .exits(0);
    let checked: Value = serde_json::from_str(&ended.out).unwrap();
    let shared = &checked["campaigns"][0]["checked"]["shared"];
    assert_eq!(shared[1]["file"], "shared.toml");
    assert_eq!(shared[1]["keys"][0], "campaign.tester");
    // From inside its folder, too.
    let ended = bench
        .command(&["check", "."])
        .current_dir(bench.path("lab/mallee"))
        .output()
        .unwrap();
    let out = String::from_utf8(ended.stdout).unwrap();
    assert!(
        out.contains("  ../shared.toml     gives [site]")
            && out.contains("  ../../shared.toml  gives"),
        "{out}"
    );
}

#[test]
fn a_mistake_in_shared_keys_stops_every_campaign_below_with_its_place() {
    let bench = lab();
    bench.write("shared.toml", "[report]\nlanguage = \"xx\"\n");
    for name in ["lab/mallee", "lab/wattle"] {
        bench
            .run(&["check", name])
            .exits(4)
            .says(&["shared.toml:2: [report] language: found \"xx\""]);
    }
    bench.write("shared.toml", "[cooker]\nname = \"x\"\n");
    bench
        .run(&["report", "lab"])
        .exits(4)
        .says(&["shared.toml:1: [cooker]: belongs to one campaign"]);
    assert_eq!(bench.names("reports"), ["summary.json"]);
}

#[test]
fn what_verify_takes_out_is_reported_again_byte_for_byte() {
    let bench = lab();
    issue(&bench, &["report", "lab/mallee"]);
    bench.run(&["verify", "reports/mallee.pdf"]).exits(0);
    // Below the same files of shared keys it would be another campaign.
    bench
        .run(&[
            "verify",
            "reports/mallee.pdf",
            "--extract",
            "lab/out/mallee",
        ])
        .exits(2)
        .says(&["lab/shared.toml: would hold for the campaign"]);
    assert!(!bench.path("lab/out").exists());
    let elsewhere = Bench::empty();
    let out = elsewhere.path("mallee");
    bench
        .run(&[
            "verify",
            "reports/mallee.pdf",
            "--extract",
            out.to_str().unwrap(),
        ])
        .exits(0);
    let names = elsewhere.names("mallee");
    assert!(names.contains(&"shared-2.toml".to_owned()), "{names:?}");
    issue(&elsewhere, &["report", "mallee"]);
    // What outputs were made of says where the campaign lay.
    let is_made = |(name, _): &(String, Vec<u8>)| name.ends_with(".made.json");
    let [mut again, mut first] = [&elsewhere, &bench].map(|bench| bench.files("reports"));
    again.retain(|file| !is_made(file));
    first.retain(|file| !is_made(file));
    let bytes = |files: Vec<(String, Vec<u8>)>| files.into_iter().map(|(_, bytes)| bytes);
    assert!(bytes(again).eq(bytes(first)));
}

#[test]
fn reports_with_shared_keys_are_compared_as_pdf_and_the_comparison_is_verified() {
    let bench = lab();
    bench.run(&["report", "lab"]).exits(0);
    issue(
        &bench,
        &["compare", "lab/mallee", "lab/wattle", "--out", "folders"],
    );
    issue(
        &bench,
        &[
            "compare",
            "reports/mallee.pdf",
            "reports/wattle.pdf",
            "--out",
            "pdfs",
        ],
    );
    assert!(bench.read("pdfs/comparison.json") == bench.read("folders/comparison.json"));
    let pdf = |folder: &str| std::fs::read(bench.path(folder).join("comparison.pdf")).unwrap();
    assert!(pdf("pdfs") == pdf("folders"));
    std::fs::remove_dir_all(bench.path("lab")).unwrap();
    bench.run(&["verify", "pdfs/comparison.pdf"]).exits(0);
    let out = Bench::empty();
    let folder = out.path("out");
    bench
        .run(&[
            "verify",
            "pdfs/comparison.pdf",
            "--extract",
            folder.to_str().unwrap(),
        ])
        .exits(0);
    out.run(&["check", "out/wattle"])
        .exits(0)
        .prints(&["out/wattle/shared-2.toml  gives"]);
}

#[test]
fn a_field_sheet_and_a_typed_log_know_the_shared_site() {
    let bench = lab();
    issue(&bench, &["plan", "lab/mallee", "--date", "2026-04-20"]);
    let sheet = bench
        .names("reports")
        .into_iter()
        .find(|name| name.ends_with(".field-sheet.pdf"));
    bench
        .run(&["verify", &format!("reports/{}", sheet.unwrap())])
        .exits(0);
    let before = bench.read("lab/mallee/campaign.toml");
    let lines: String = (0..8)
        .map(|step| {
            format!(
                "{}:{:02} {} 26 1\n",
                10 + step / 6,
                step % 6 * 10,
                30 + 4 * step
            )
        })
        .collect();
    bench.write("typed.txt", lines);
    let enter = [
        "enter",
        "lab/mallee",
        "--date",
        "2026-04-20",
        "--from",
        "typed.txt",
    ];
    // Its name is none that the pattern matches, so it gets a table of its own.
    bench
        .run(&enter)
        .exits(0)
        .prints(&["the run 2026-04-20.csv is added"]);
    let after = bench.read("lab/mallee/campaign.toml");
    assert!(
        after.starts_with(before.trim_end()) && after.contains("log = \"2026-04-20.csv\""),
        "{after}"
    );
    // One that it matches is there already.
    let enter = [&enter[..], &["--log", "day-9.csv"]].concat();
    bench
        .run(&enter)
        .exits(0)
        .prints(&["the run day-9.csv is there, by a pattern"]);
    assert_eq!(bench.read("lab/mallee/campaign.toml"), after);
}

#[test]
fn a_new_campaign_below_shared_keys_needs_only_what_is_its_own() {
    let bench = lab();
    bench.run(&["new", "lab/wandoo"]).exits(0).prints(&[
        "lab/shared.toml gives [site] elevation_m, latitude_deg, longitude_deg, name, time_zone: these keys need not be filled in",
    ]);
    let toml = "lab/wandoo/campaign.toml";
    let text = bench.read(toml);
    assert!(
        text.contains("# time_zone                       # given by ../shared.toml"),
        "{text}"
    );
    bench.replace(
        toml,
        "# intercept_area_m2 = 0.95",
        "intercept_area_m2 = 1.0",
    );
    bench.replace(toml, "# water_kg = 6.65", "water_kg = 7.0");
    bench.write("lab/wandoo/run-1.csv", heating(14));
    bench.run(&["check", "lab/wandoo"]).exits(0);
    bench.write("lab/shared.toml", "[site]\nlatitude_deg = \"x\"\n");
    bench
        .run(&["new", "lab/boree"])
        .exits(4)
        .says(&["lab/shared.toml:2: [site] latitude_deg"]);
    assert!(!bench.path("lab/boree").exists());
}

#[test]
fn a_log_that_no_run_names_is_said_on_the_terminal_and_nowhere_else() {
    let bench = Bench::new();
    issue(&bench, &["report", "mallee"]);
    let before = bench.files("reports");
    let silent = bench.run(&["report", "mallee"]).exits(0);
    assert!(!silent.err.contains("no run names"), "{}", silent.err);
    // What is none: texts, tables of something else, a field sheet, results.
    bench.write(
        "mallee/README.txt",
        "Water and ambient were read by N. Nobody.\n",
    );
    bench.write("mallee/costs.csv", "part,cost\nglass,12\n");
    bench.write("mallee/2026-04-20.sheet.txt", "10:00 30 26 1\n");
    bench.write(
        "mallee/mallee.intervals.csv",
        bench.read("reports/mallee.intervals.csv"),
    );
    bench.write("mallee/.day-8.csv", heating(18));
    let checked = bench.run(&["check", "mallee"]).exits(0);
    assert!(!checked.out.contains("no run names"), "{}", checked.out);
    bench.write("mallee/day-4.csv", heating(17));
    let one = "one file in its folder looks like a log, and no run names it: day-4.csv";
    bench.run(&["check", "mallee"]).exits(0).prints(&[one]);
    bench
        .run(&["report", "mallee"])
        .exits(0)
        .says(&[&format!("note: mallee: {one}")]);
    issue(&bench, &["report", "mallee"]);
    assert!(
        bench.files("reports") == before,
        "a report says nothing of it"
    );
    bench.run(&["verify", "reports/mallee.pdf"]).exits(0);
    for day in 5..=9 {
        bench.write(&format!("mallee/day-{day}.TXT"), heating(13 + day));
    }
    let six = "6 files in its folder look like logs, and no run names them: day-4.csv, day-5.TXT, day-6.TXT, day-7.TXT and 2 more";
    bench.run(&["report", "mallee"]).exits(0).says(&[six]);
    let quiet = bench.run(&["report", "mallee", "--quiet"]).exits(0);
    assert!(!quiet.err.contains("no run names"));
    let json = bench
        .run(&["check", "mallee", "--format", "json"])
        .exits(0)
        .out;
    let json: Value = serde_json::from_str(&json).unwrap();
    let unnamed = json["campaigns"][0]["checked"]["unnamed_logs"]
        .as_array()
        .unwrap();
    assert_eq!(unnamed.len(), 6);
    // A run by a pattern names them all.
    bench.replace(
        "mallee/campaign.toml",
        "log = \"day-3.csv\"",
        "log = \"day-3.csv\"\n[[run]]\nlog = \"day-*\"",
    );
    let checked = bench.run(&["check", "mallee"]);
    assert!(!checked.out.contains("no run names"), "{}", checked.out);
}

#[test]
fn no_sample_has_a_log_that_no_run_names() {
    let bench = Bench::empty();
    let samples = std::env::current_dir().unwrap().join("sample-runs");
    let json = bench
        .run(&["check", samples.to_str().unwrap(), "--format", "json"])
        .exits(0)
        .out;
    let json: Value = serde_json::from_str(&json).unwrap();
    let campaigns = json["campaigns"].as_array().unwrap();
    assert!(campaigns.len() > 9);
    for campaign in campaigns {
        assert_eq!(
            campaign["checked"]["unnamed_logs"],
            serde_json::json!([]),
            "{campaign}"
        );
    }
}

#[test]
fn new_makes_a_run_of_each_log_that_is_there_and_touches_none() {
    let bench = Bench::empty();
    bench.write("dish/b.csv", heating(14));
    bench.write("dish/a.csv", heating(16));
    bench.write(
        "dish/both.csv",
        heating(20)
            + heating(21)
                .split_once('\n')
                .unwrap()
                .1
                .split_once('\n')
                .unwrap()
                .1,
    );
    let dry = heating(18).replacen("water_c", "vessel_c", 1);
    bench.write("dish/dry \"1\".csv", dry);
    bench.write("dish/costs.csv", "part,cost\nglass,12\n");
    bench.write("dish/notes.txt", "nothing\n");
    let before = bench.files("dish");
    let ended = bench.run(&["new", "dish"]).exits(0).prints(&[
        "dish: wrote campaign.toml, with the 4 logs found there:",
        "b.csv: 2026-04-14, 10:05 to 13:55",
        "both.csv: 2026-04-20 to 2026-04-21",
    ]);
    assert!(
        ended.err.contains("dish/costs.csv is left out"),
        "{}",
        ended.err
    );
    assert!(!ended.err.contains("notes.txt"), "{}", ended.err);
    let after = bench.files("dish");
    assert!(before.iter().all(|file| after.contains(file)) && after.len() == before.len() + 1);
    let text = bench.read("dish/campaign.toml");
    let file: toml::Table = text.parse().unwrap();
    let runs = file["run"].as_array().unwrap();
    let said = |key: &str| -> Vec<Option<&str>> {
        runs.iter()
            .map(|run| run.get(key).and_then(toml::Value::as_str))
            .collect()
    };
    let logs = ["b.csv", "a.csv", "dry \"1\".csv", "both.csv"];
    assert_eq!(said("log"), logs.map(Some));
    assert_eq!(said("kind"), [None, None, Some("dry"), None]);
    assert_eq!(said("split"), [None, None, None, Some("daily")]);
    assert!(
        text.contains("log = \"b.csv\"                     # 2026-04-14, 10:05 to 13:55\n"),
        "{text}"
    );
    // A second call changes nothing.
    bench
        .run(&["new", "dish"])
        .exits(2)
        .says(&["campaign.toml: is there already"]);
    assert!(bench.files("dish") == after);
}
