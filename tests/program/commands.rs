//! The commands: what each prints and writes.

use crate::bench::{Bench, Ended, HEADER, OUTPUTS, heating, row};
use assert_cmd::cargo::cargo_bin;
use std::fs;
use std::process::Stdio;

#[test]
fn report_writes_three_files_and_prints_the_table_alone() {
    let bench = Bench::new();
    let ended = bench.run(&["report", "mallee"]).exits(0);
    assert_eq!(bench.names("reports"), OUTPUTS);
    assert!(
        fs::read(bench.path("reports/mallee.pdf"))
            .unwrap()
            .starts_with(b"%PDF-")
    );
    // A pipe shows no progress bar; the campaign states no uncertainty.
    assert!(
        ended
            .err
            .starts_with("note: mallee: uncertainty not stated")
    );
    assert_eq!(ended.err.lines().count(), 1, "{}", ended.err);
    let rating = bench.rating("mallee");
    assert_eq!(rating["schema"], "simmerline.rating/1");
    assert_eq!(rating["conformity"]["level"], "conforms");
    let intervals = rating["intervals"].as_array().unwrap().len();
    assert_eq!(
        bench.read("reports/mallee.intervals.csv").lines().count(),
        intervals + 1
    );
    let ps50_w = rating["rating"]["ps50_w"].as_f64().unwrap();
    let ended = ended.prints(&[
        "campaign",
        "R²",
        "✓ Mallee trough, bare pot (invented)",
        "conforms",
        "reports/mallee.pdf",
    ]);
    let row = ended.out.lines().nth(2).unwrap();
    assert!(row.contains(&format!("  {ps50_w:.0} ± ")), "{row}");
    assert!(row.contains(&format!("/{intervals}  ")), "{row}");
    assert_eq!(ended.out.lines().count(), 3);
}

#[test]
fn report_writes_the_forms_that_are_asked_for_and_names_the_first() {
    for (forms, expected) in [
        ("html", ["mallee.html"].as_slice()),
        ("html,pdf", &["mallee.html", "mallee.pdf"]),
        ("pdf,html", &["mallee.pdf", "mallee.html"]),
    ] {
        let bench = Bench::new();
        bench
            .run(&["report", "mallee", "--format", forms])
            .exits(0)
            .prints(&[&format!("reports/{}", expected[0])]);
        let data = [
            "mallee.intervals.csv",
            "mallee.made.json",
            "mallee.rating.json",
        ];
        let mut all = [expected, &data].concat();
        all.sort_unstable();
        assert_eq!(bench.names("reports"), all, "{forms}");
    }
    let bench = Bench::new();
    bench
        .run(&["report", "mallee", "--format", "page"])
        .exits(2)
        .says(&["page", "html"]);
    assert!(!bench.path("reports").exists());
}

#[test]
fn report_puts_outputs_into_a_new_folder_named_with_out() {
    let bench = Bench::new();
    bench
        .run(&["report", "mallee", "--out", "a/b"])
        .exits(0)
        .prints(&["a/b/mallee.pdf"]);
    assert_eq!(bench.names("a/b"), OUTPUTS);
    assert!(!bench.path("reports").exists());
}

#[test]
fn quiet_report_prints_nothing_but_errors() {
    let bench = Bench::new();
    bench.write("mallee/day-1.csv", heating(14) + &row(14, 0) + "\n");
    let ended = bench.run(&["report", "mallee", "--quiet"]).exits(0);
    assert_eq!((ended.out.as_str(), ended.err.as_str()), ("", ""));
    assert_eq!(bench.names("reports"), OUTPUTS);
    bench.write("mallee/day-1.csv", "");
    let ended = bench.run(&["report", "mallee", "--quiet"]).exits(3);
    assert_eq!(ended.out, "");
    assert!(
        ended.err.starts_with("error: mallee/day-1.csv"),
        "{}",
        ended.err
    );
}

#[test]
fn strict_report_exits_with_5_only_if_a_rating_is_indicative() {
    let bench = Bench::new();
    bench.run(&["report", "mallee", "--strict"]).exits(0);
    bench.add_campaign("jarrah");
    bench.replace(
        "jarrah/campaign.toml",
        "plane = \"normal\"",
        "plane = \"horizontal\"",
    );
    bench
        .run(&["report", "mallee", "jarrah"])
        .exits(0)
        .prints(&["indicative only"]);
    bench
        .run(&["report", "mallee", "jarrah", "--strict"])
        .exits(5)
        .prints(&["indicative only"]);
    assert_eq!(bench.rating("jarrah")["conformity"]["level"], "indicative");
}

#[test]
fn a_broken_campaign_does_not_stop_the_others() {
    let bench = Bench::empty();
    for name in ["all/acacia", "all/broken", "all/wattle"] {
        bench.add_campaign(name);
    }
    fs::remove_file(bench.path("all/broken/day-3.csv")).unwrap();
    let ended = bench
        .run(&["report", "all"])
        .exits(4)
        .says(&["all/broken/campaign.toml", "day-3.csv"]);
    assert_eq!(ended.err.matches("error: ").count(), 1);
    let mut stems: Vec<String> = bench.names("reports");
    stems.retain(|name| name != "summary.json");
    assert_eq!(stems.len(), 8, "{stems:?}");
    assert!(
        stems
            .iter()
            .all(|name| name.starts_with("acacia.") || name.starts_with("wattle."))
    );
    assert_eq!(ended.out.matches("Mallee trough").count(), 2);
    bench.run(&["check", "all"]).exits(4).prints(&[
        "  all/acacia\n",
        "  all/broken\n",
        "  all/wattle\n",
    ]);
}

#[test]
fn a_broken_campaign_outweighs_an_indicative_one() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "plane = \"normal\"",
        "plane = \"horizontal\"",
    );
    bench.add_campaign("broken");
    bench.write("broken/day-1.csv", "");
    bench
        .run(&["report", "mallee", "broken", "--strict"])
        .exits(3);
    let both = [&OUTPUTS[..], &["summary.json"]].concat();
    assert_eq!(bench.names("reports"), both);
}

#[test]
fn existing_outputs_are_overwritten_and_no_temporary_file_stays() {
    let bench = Bench::new();
    for name in OUTPUTS {
        bench.write(&format!("reports/{name}"), "old");
    }
    bench.report();
    assert_eq!(bench.names("reports"), OUTPUTS);
    for (name, content) in bench.files("reports") {
        assert!(content.len() > 1000, "{name} is still the old one");
    }
}

#[test]
fn an_output_folder_that_is_a_file_or_below_one_is_refused_before_rating() {
    let bench = Bench::new();
    bench.write("taken", "a file");
    let before = bench.files("");
    for out in ["taken", "taken/below"] {
        let ended = bench.run(&["report", "mallee", "--out", out]).exits(2);
        let ended = ended.says(&[&format!("error: {out}: "), "hint: ", "--out"]);
        assert_eq!(ended.out, "");
    }
    assert!(bench.files("") == before);
}

#[test]
fn a_folder_in_the_place_of_an_output_leaves_every_older_output_as_it_was() {
    for taken in OUTPUTS {
        let bench = Bench::new();
        for name in OUTPUTS.into_iter().filter(|name| *name != taken) {
            bench.write(&format!("reports/{name}"), "old");
        }
        bench.write(&format!("reports/{taken}/inside"), "a file");
        let before = bench.files("");
        let ended = bench.run(&["report", "mallee"]).exits(2);
        ended.says(&[&format!("error: reports/{taken}: "), "hint: "]);
        assert!(bench.files("") == before, "{taken}");
    }
}

#[test]
fn the_same_input_and_time_of_issue_give_the_same_files_byte_for_byte() {
    let bench = Bench::new();
    let run = || {
        let mut command = bench.command(&["report", "mallee"]);
        Ended::of(command.env("SOURCE_DATE_EPOCH", "1770000000")).exits(0);
        bench.files("reports")
    };
    let first = run();
    fs::remove_dir_all(bench.path("reports")).unwrap();
    assert!(first == run());
}

#[test]
fn a_time_of_issue_that_is_no_time_is_refused() {
    let bench = Bench::new();
    for fixed in ["yesterday", "", "1.5", "99999999999999999999"] {
        let mut command = bench.command(&["report", "mallee"]);
        let ended = Ended::of(command.env("SOURCE_DATE_EPOCH", fixed)).exits(2);
        ended.says(&["SOURCE_DATE_EPOCH", &format!("\"{fixed}\""), "hint: "]);
        assert!(!bench.path("reports").exists());
    }
}

#[test]
fn a_time_of_issue_far_off_is_refused_or_printed_and_no_fault() {
    let bench = Bench::new();
    for fixed in ["-1", "253402207200", "-62135596801", "-377705023201"] {
        let mut command = bench.command(&["report", "mallee"]);
        let ended = Ended::of(command.env("SOURCE_DATE_EPOCH", fixed));
        assert!([0, 2].contains(&ended.code), "{fixed}: {}", ended.err);
    }
}

#[test]
fn an_error_for_a_reader_that_has_gone_keeps_its_exit_code() {
    let bench = Bench::new();
    bench.write("mallee/day-1.csv", "");
    let mut program = std::process::Command::new(cargo_bin!("simmerline"));
    program
        .current_dir(bench.root.path())
        .args(["report", "mallee"]);
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    let status = program
        .stdout(Stdio::null())
        .stderr(writer)
        .status()
        .unwrap();
    assert_eq!(status.code(), Some(3));
}

#[test]
fn a_table_for_a_reader_that_has_gone_is_no_error() {
    let bench = Bench::new();
    let mut program = std::process::Command::new(cargo_bin!("simmerline"));
    program
        .current_dir(bench.root.path())
        .args(["report", "mallee"]);
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    let status = program.stdout(writer).status().unwrap();
    assert_eq!(status.code(), Some(0));
    assert_eq!(bench.names("reports"), OUTPUTS);
}

// check

#[test]
fn check_prints_counts_reasons_findings_and_remedies_and_writes_nothing() {
    let bench = Bench::new();
    for day in [2, 3] {
        let run = format!("\n[[run]]\nlog = \"day-{day}.csv\"\n");
        bench.replace("mallee/campaign.toml", &run, "");
    }
    bench.replace(
        "mallee/campaign.toml",
        "plane = \"normal\"",
        "plane = \"horizontal\"",
    );
    let before = bench.files("");
    let ended = bench.run(&["check", "mallee"]).exits(0).prints(&[
        "  campaign  mallee",
        "used  set aside",
        "intervals used, the standard requires 30\n  → ",
        "used intervals on 1 day, the standard requires 3\n  → a test on 2 more days",
        "irradiance was measured in the horizontal plane",
        "→ mount the sensor",
        "  1  the water was still too close to ambient\n     → start with water",
    ]);
    assert_eq!(ended.err, "");
    let mut lines = ended.out.lines();
    assert_eq!(
        lines.next().unwrap(),
        "~ Indicative only (horizontal sensor; one day only: ± is not 95 %): \
         Mallee trough, bare pot (invented)"
    );
    let next = lines.next().unwrap();
    // More days with a sensor that lies flat would not conform either.
    assert!(
        next.starts_with("  next      mount the sensor") && next.ends_with(" and 2 more days"),
        "{next}"
    );
    let row = ended.out.lines().find(|line| line.starts_with("day-1.csv"));
    let cells: Vec<&str> = row.unwrap().split_whitespace().collect();
    // 47 readings five minutes apart make 23 intervals.
    assert_eq!(cells[..4], ["day-1.csv", "2026-04-14", "47", "23"]);
    let used: usize = cells[4].parse().unwrap();
    assert!((1..23).contains(&used), "{row:?}");
    assert!(
        ended
            .out
            .contains(&format!("{} more intervals and 2 more days", 30 - used))
    );
    assert!(bench.files("") == before);
    assert!(!bench.path("reports").exists());
}

#[test]
fn check_of_a_conforming_campaign_says_that_it_is_enough() {
    let bench = Bench::new();
    let ended = bench.run(&["check", "mallee"]).exits(0);
    let ended = ended.prints(&["  so far    Ps(50) = "]);
    assert!(
        ended.out.starts_with(
            "✓ Conforms: Mallee trough, bare pot (invented)\n  \
             next      write the report: simmerline report mallee\n"
        ),
        "{}",
        ended.out
    );
}

// new

#[test]
fn a_new_campaign_is_understood_up_to_its_empty_log() {
    let bench = Bench::empty();
    bench
        .run(&["new", "plot"])
        .exits(0)
        .prints(&["plot", "campaign.toml", "run-1.csv"]);
    assert_eq!(bench.names("plot"), ["campaign.toml", "run-1.csv"]);
    assert_eq!(bench.read("plot/run-1.csv"), format!("{HEADER}\n"));
    // What has to be filled in is asked for; the values shown are then taken.
    bench.run(&["check", "plot"]).exits(4).says(&["is missing"]);
    let filled: String = bench
        .read("plot/campaign.toml")
        .lines()
        .map(|line| match line.strip_prefix("# ") {
            Some(rest) if line.contains("FILL IN") && rest.contains(" = ") => format!("{rest}\n"),
            _ => format!("{line}\n"),
        })
        .collect();
    bench.write("plot/campaign.toml", filled);
    let ended = bench.run(&["check", "plot"]).exits(3);
    ended.says(&[
        "error: plot/run-1.csv: has a header and no readings",
        "hint: ",
    ]);
    bench.write("plot/run-1.csv", heating(14));
    bench
        .run(&["check", "plot"])
        .exits(0)
        .prints(&["run-1.csv"]);
}

#[test]
fn every_key_that_a_new_campaign_file_shows_is_known() {
    let bench = Bench::empty();
    bench.run(&["new", "plot"]).exits(0);
    let is_key = |text: &str| {
        let name = text.split(" = ").next().unwrap_or_default();
        text.contains(" = ")
            && name
                .bytes()
                .all(|b| b.is_ascii_lowercase() || b == b'_' || b.is_ascii_digit())
    };
    let mut shown = 0;
    let text = bench.read("plot/campaign.toml");
    // What contradicts another line, or says that the log is another one than it is.
    let unfit = [
        "# intercept_area_m2",
        "# vessel_water_kg",
        "# points = [[0.3",
        "# weather",
        "# split",
        "# columns = {",
        "# sheet",
        "# header_line",
        "# estimate",
        "# vessel_heat_capacity_j_per_k",
        "# kind",
    ];
    let of_other_logs = [
        "[units]",
        "[format]",
        "[weather.columns]",
        "[weather.units]",
        "[[run.cloudless]]",
    ];
    let mut table = "";
    let lines = text.lines().filter(|line| {
        if let Some(name) = line.trim_start_matches("# ").split_whitespace().next()
            && name.starts_with('[')
        {
            table = name;
        }
        !unfit.iter().any(|start| line.starts_with(start)) && !of_other_logs.contains(&table)
    });
    let uncommented = lines.map(|line| match line.strip_prefix("# ") {
        Some(rest) if is_key(rest) || rest.starts_with('[') => {
            shown += 1;
            format!("{rest}\n")
        }
        _ => format!("{line}\n"),
    });
    let text: String = uncommented.collect();
    assert!(shown > 30, "{shown}");
    let text = text.replace("date = 2026-03-14", "date = 2026-04-14");
    bench.write("plot/campaign.toml", text.replace("photo = ", "# photo = "));
    let header = "Stamp,T1,T2,T3,Ch 4,Ch 5";
    let rows = heating(14)
        .lines()
        .skip(2)
        .map(|row| {
            let cells: Vec<&str> = row.split(',').collect();
            format!(
                "{},{},{},{},{},{}\n",
                cells[0], cells[1], cells[1], cells[2], cells[3], cells[4]
            )
        })
        .collect::<String>();
    bench.write("plot/run-1.csv", format!("{header}\n{rows}"));
    bench
        .run(&["check", "plot"])
        .exits(0)
        .prints(&["the tester excluded the span"]);
}

#[test]
fn no_key_that_a_new_campaign_file_shows_is_unknown() {
    let bench = Bench::empty();
    bench.run(&["new", "plot"]).exits(0);
    let is_key = |text: &str| text.contains(" = ") || text.starts_with('[');
    let text = bench.read("plot/campaign.toml");
    let lines = text.lines().map(|line| match line.strip_prefix("# ") {
        Some(rest) if is_key(rest) && !rest.contains("true = gain") => format!("{rest}\n"),
        _ => format!("{line}\n"),
    });
    bench.write("plot/campaign.toml", lines.collect::<String>());
    let run = bench.run(&["check", "plot"]).exits(4);
    // It contradicts itself, but every key is read.
    run.says(&["gain and offset, or points"]);
}

#[test]
fn new_overwrites_neither_a_campaign_file_nor_a_log() {
    let bench = Bench::empty();
    bench.write("with-file/campaign.toml", "mine");
    bench.write("with-log/run-1.csv", "mine");
    bench.write("taken", "a file");
    let before = bench.files("");
    for (folder, named) in [
        ("with-file", "with-file/campaign.toml"),
        ("with-log", "with-log/run-1.csv"),
        ("taken", "taken"),
        ("taken/below", "taken/below"),
    ] {
        let ended = bench.run(&["new", folder]).exits(2);
        ended.says(&[&format!("error: {named}: "), "hint: ", "choose"]);
    }
    assert!(bench.files("") == before);
}

// help, version, completions, manual

#[test]
fn help_of_the_program_and_of_each_command_shows_an_example_and_the_exit_codes() {
    let bench = Bench::empty();
    let ended = bench.run(&["--help"]).exits(0);
    ended.prints(&[
        "report",
        "check",
        "new",
        "completions",
        "manual",
        "Example",
        "Exit codes:",
    ]);
    for command in [
        "report",
        "check",
        "compare",
        "new",
        "watch",
        "enter",
        "completions",
        "manual",
    ] {
        for flag in ["--help", "-h"] {
            let ended = bench.run(&[command, flag]).exits(0);
            let example = format!("simmerline {command}");
            ended.prints(&["Example:", &example, "Exit codes:", "  2  "]);
        }
    }
}

#[test]
fn help_names_every_exit_code() {
    let ended = Bench::empty().run(&["--help"]).exits(0);
    for code in 0..=5 {
        assert!(
            ended.out.contains(&format!("\n  {code}  ")),
            "{code}: {}",
            ended.out
        );
    }
}

#[test]
fn version_is_that_of_the_crate() {
    let ended = Bench::empty().run(&["--version"]).exits(0);
    assert_eq!(
        ended.out,
        format!("simmerline {}\n", env!("CARGO_PKG_VERSION"))
    );
}

#[test]
fn a_command_line_that_asks_for_nothing_or_for_the_unknown_is_refused() {
    let bench = Bench::new();
    for arguments in [
        &[][..],
        &["report"],
        &["check"],
        &["new"],
        &["rate", "mallee"],
        &["report", "mallee", "--stric"],
        &["completions", "abacus"],
    ] {
        let ended = bench.run(arguments).exits(2);
        assert!(
            ended.err.contains("Usage") || ended.err.contains("possible values"),
            "{}",
            ended.err
        );
    }
}

#[test]
fn completions_of_each_shell_know_commands_and_options() {
    let bench = Bench::empty();
    for shell in ["bash", "zsh", "fish"] {
        let ended = bench.run(&["completions", shell]).exits(0);
        let ended = ended.prints(&[
            "simmerline",
            "report",
            "check",
            "strict",
            "quiet",
            "watch",
            "sound",
        ]);
        assert_eq!(ended.err, "");
    }
}

#[test]
fn the_manual_page_has_every_command_and_the_exit_codes() {
    let ended = Bench::empty().run(&["manual", "--man"]).exits(0);
    let ended = ended.prints(&[
        ".TH",
        "report",
        "check",
        "watch",
        "once",
        "completions",
        "strict",
        "Exit codes",
    ]);
    assert_eq!(ended.err, "");
}
