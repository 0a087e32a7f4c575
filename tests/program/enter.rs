//! `enter`: a field sheet typed at a terminal, through a pipe and from a file.

use std::fs;

use crate::bench::{Bench, Ended, campaign, heating};

const LOG: &str = "mallee/2026-11-03.csv";
const ENTER: [&str; 4] = ["enter", "mallee", "--date", "2026-11-03"];
const HEADER: &str = "# Invented sample data\ntime,water (°C),air (°C),wind (Bft),sky,notes\n";
/// A sheet of five lines, in a text file.
const SHEET: &str = "# an invented sheet\n\n10:20 31,5 26 1\n10:30 36 26 1 c\n\
                     10:40 40.5 - 1 c thin haze, west\n10:52 45.5 26 2 x\n11:00 49 26 1 c\n";

/// A campaign without runs, and the line of its file that ends with `irradiance`.
fn bench(irradiance: &str) -> Bench {
    let bench = Bench::empty();
    let whole = campaign();
    let start = whole.find("\n[[run]]").unwrap();
    let text = &whole[..start];
    let text = text.replace(
        "plane = \"normal\"\n",
        &format!("plane = \"normal\"\n{irradiance}"),
    );
    bench.write("mallee/campaign.toml", text);
    bench
}

const CLEAR_SKY: &str = "estimate = \"clear-sky\"\n";

/// What `enter` leaves after these lines have come through a pipe.
fn piped(bench: &Bench, more: &[&str], lines: &str) -> Ended {
    let mut command = bench.command(&[&ENTER[..], more].concat());
    Ended::of(command.write_stdin(lines))
}

#[cfg(unix)]
mod at_a_terminal {
    use super::*;
    use crate::typist::Typist;

    #[test]
    fn a_sheet_is_typed_mended_interrupted_and_becomes_a_run() {
        let bench = bench(CLEAR_SKY);
        let arguments = [&ENTER[..], &["--start", "10:20"]].concat();
        let before = bench.read("mallee/campaign.toml");
        let mut typist = Typist::start(bench.root.path(), &arguments);
        typist.sees("3 November 2026").sees("water (°C)");
        typist.sees("10:20  > ").types("3l.5 26 1");
        typist
            .sees("note: not taken: found \"3l.5\"")
            .sees("hint: ");
        typist.sees("10:20  > ").types("131.5");
        typist
            .sees("found water of 131.5 °C")
            .sees("was it read in °F?");
        typist.sees("10:20  > ").types("31.5 26 1");
        typist.sees("10:30  > ").types("");
        typist.sees("10:40  > ").types("help");
        typist.sees("smoke rises straight up");
        typist.sees("10:40  > ").types("10:43 95 26 1 c");
        typist
            .sees("note: the water rose by 63.5 K")
            .sees("10:50  > ");
        assert!(bench.read(LOG).ends_with("10:43,95,26,1,clear,\n"));
        typist.types("undo").sees("10:43 is taken back");
        typist.sees("10:43  > ").types("36 26 1 c");
        typist
            .sees("10:50  > ")
            .types("10:43 37")
            .sees("expected a time after 10:43");
        typist.sees("10:50  > ").press("\u{4}");
        typist
            .sees("2 lines kept")
            .sees("To go on: simmerline enter mallee --date 2026-11-03");
        assert_eq!(typist.code(), 0);
        let first = "2026-11-03 10:20,31.5,26,1,,\n2026-11-03 10:43,36,26,1,clear,\n";
        assert_eq!(bench.read(LOG), format!("{HEADER}{first}"));
        assert_eq!(bench.read("mallee/campaign.toml"), before);

        let mut typist = Typist::start(bench.root.path(), &ENTER);
        typist.sees("2 lines are there; it goes on after 10:43");
        typist.sees("10:50  > ").types("39 - 0,5 c haze, \"thin\"");
        typist
            .sees("11:00  > ")
            .types("44")
            .sees("11:10  > ")
            .types("done");
        typist
            .sees("4 lines from 10:20 to 11:00")
            .sees("with 1 cloudless span");
        typist.sees("Next: simmerline check mallee");
        assert_eq!(typist.code(), 0);
        let second = "2026-11-03 10:50,39,,0.5,clear,\"haze, \"\"thin\"\"\"\n\
                      2026-11-03 11:00,44,,,,\n";
        assert_eq!(bench.read(LOG), format!("{HEADER}{first}{second}"));
        let run = "\n[[run]]\nlog = \"2026-11-03.csv\"\n\
                   [[run.cloudless]]\nfrom = \"10:20\"\nto = \"10:50\"\n";
        assert_eq!(bench.read("mallee/campaign.toml"), before + run);
        assert_eq!(bench.names("mallee"), ["2026-11-03.csv", "campaign.toml"]);
        bench.run(&["check", "mallee"]).exits(0).prints(&[
            "4 readings from 2026-11-03 10:20:00",
            "\"water (°C)\"    water temperature (synonym), °C (header)",
            "\"air (°C)\"      ambient temperature (synonym), °C (header)",
            "\"wind (Bft)\"    wind speed (synonym), Bft (header)",
        ]);
    }

    #[test]
    fn a_log_that_is_changed_meanwhile_stays_as_it_was_left() {
        let bench = bench("");
        let mut typist = Typist::start(bench.root.path(), &ENTER);
        typist.sees("  > ").types("31.5").sees("  > ");
        let theirs = bench.read(LOG) + "2026-11-03 11:00,50,,,,\n";
        bench.write(LOG, &theirs);
        typist
            .types("36")
            .sees("was changed by another program meanwhile");
        assert_eq!(typist.code(), 2);
        assert_eq!(bench.read(LOG), theirs);
    }

    #[test]
    fn a_campaign_file_that_is_changed_while_the_run_is_added_stays() {
        let bench = bench("");
        let path = bench.path("mallee/campaign.toml");
        let before = bench.read("mallee/campaign.toml");
        // While the folder is locked, `done` waits after it has read the campaign file.
        let folder = fs::File::open(bench.path("mallee")).unwrap();
        let mut typist = Typist::start(bench.root.path(), &ENTER);
        typist
            .sees("  > ")
            .types("31.5 26")
            .sees("  > ")
            .types("36 26");
        typist.sees("  > ");
        folder.lock().unwrap();
        typist.types("done").sees("2 lines from");
        std::thread::sleep(std::time::Duration::from_millis(500));
        let theirs = format!("{before}# edited meanwhile\n");
        fs::write(&path, &theirs).unwrap();
        folder.unlock().unwrap();
        typist
            .sees("[[run]]")
            .sees("campaign.toml: was changed by another program meanwhile");
        assert_eq!(typist.code(), 2);
        assert_eq!(bench.read("mallee/campaign.toml"), theirs);
        piped(&bench, &[], "done\n").exits(0);
        assert!(bench.read("mallee/campaign.toml").contains("# edited"));
    }

    #[test]
    fn an_interrupted_line_is_not_taken() {
        let bench = bench("");
        let mut typist = Typist::start(bench.root.path(), &ENTER);
        typist.sees("  > ").types("31.5\u{1b}[D");
        typist.sees("control character").sees("  > ").press("\u{4}");
        assert_eq!(typist.code(), 0);
        assert_eq!(bench.names("mallee"), ["campaign.toml"]);
    }
}

#[test]
fn times_begin_with_the_solar_window() {
    // Apparent noon at Greenwich is at 11:43:34 UTC that day.
    let bench = bench("");
    piped(&bench, &[], "31.5\n")
        .exits(0)
        .prints(&["\n09:50  > ", "10:00  > "]);
    let text = bench.read("mallee/campaign.toml");
    bench.write(
        "mallee/campaign.toml",
        text + "\n[limits]\nsolar_time_start_h = 9\n",
    );
    fs::remove_file(bench.path(LOG)).unwrap();
    piped(&bench, &[], "").exits(0).prints(&["08:50  > "]);
}

#[test]
fn a_pipe_says_that_later_lines_may_have_moved() {
    let bench = bench("");
    let ended = piped(&bench, &[], "31.5\nfoo\n36\n\u{4}\n").exits(0);
    ended.says(&["not taken: found \"foo\"", "2 lines not taken", "wrong one"]);
    assert_eq!(bench.read(LOG).lines().count(), 4);
}

#[test]
fn nothing_typed_adds_no_run() {
    let bench = bench("");
    let before = bench.files("");
    piped(&bench, &[], "done\n")
        .exits(0)
        .prints(&["no run is added"]);
    piped(&bench, &[], "").exits(0).prints(&["0 lines kept"]);
    assert!(bench.files("") == before);
}

#[test]
fn a_text_file_becomes_a_log_and_a_run_with_its_clear_spans() {
    let bench = bench(CLEAR_SKY);
    let before = bench.read("mallee/campaign.toml");
    bench.write("sheet.txt", SHEET);
    let from = [&ENTER[..], &["--from", "sheet.txt"]].concat();
    let ended = bench.run(&from).exits(0);
    ended.prints(&["5 lines from 10:20 to 11:00", "with 2 cloudless spans"]);
    let rows = "2026-11-03 10:20,31.5,26,1,,\n2026-11-03 10:30,36,26,1,clear,\n\
                2026-11-03 10:40,40.5,,1,clear,\"thin haze, west\"\n\
                2026-11-03 10:52,45.5,26,2,cloud,\n2026-11-03 11:00,49,26,1,clear,\n";
    assert_eq!(bench.read(LOG), format!("{HEADER}{rows}"));
    let run = "\n[[run]]\nlog = \"2026-11-03.csv\"\n\
               [[run.cloudless]]\nfrom = \"10:20\"\nto = \"10:40\"\n\
               [[run.cloudless]]\nfrom = \"10:52\"\nto = \"11:00\"\n";
    assert_eq!(bench.read("mallee/campaign.toml"), before + run);
    bench.run(&["check", "mallee"]).exits(0);
    // A second time nothing is overwritten, and it is no error: the first call may have been
    // killed at its end. Other lines are refused.
    let saved = bench.files("mallee");
    bench
        .run(&from)
        .exits(0)
        .prints(&["the run 2026-11-03.csv is there"]);
    assert!(bench.files("mallee") == saved);
    bench.write("sheet.txt", SHEET.replace("36 26", "37 26"));
    bench
        .run(&from)
        .exits(2)
        .says(&["is there already, with lines to 11:00", "\nhint: "]);
    assert!(bench.files("mallee") == saved);
    // Typing on after it adds no second run.
    piped(&bench, &[], "11:10 53 - - x\ndone\n")
        .exits(0)
        .prints(&["is there"]);
    assert_eq!(
        bench
            .read("mallee/campaign.toml")
            .matches("[[run]]")
            .count(),
        1
    );
}

#[test]
fn every_line_of_a_file_that_cannot_be_taken_is_named_and_nothing_is_written() {
    let bench = bench(CLEAR_SKY);
    let text = "10:20 31.5\n36 26 1\n10:40 4o 26\n10:50 45 26 12\n10:30 36 77\n10:35 37\n\
                11:00 49 26 1 2\n25:00 50\n";
    bench.write("sheet.txt", text);
    let before = bench.files("");
    let ended = bench
        .run(&[&ENTER[..], &["--from", "sheet.txt"]].concat())
        .exits(3);
    let ended = ended.says(&[
        "sheet.txt:2: found \"36 26 1\", expected the time first",
        "sheet.txt:3: found \"4o\"",
        "sheet.txt:4: found a wind of 12",
        "sheet.txt:5: found air of 77 °C",
        "sheet.txt:7: found \"2\", expected the sky",
        "sheet.txt:8: found \"25:00\"",
        "write ambient_temperature = \"°F\" under [units]",
        "\nhint: ",
    ]);
    assert_eq!(ended.err.matches("error: ").count(), 6, "{}", ended.err);
    assert!(bench.files("") == before, "a file was written or changed");
    let ended = bench.run(&[&ENTER[..], &["--from", "nowhere.txt"]].concat());
    ended
        .exits(3)
        .says(&["error: nowhere.txt: cannot be read", "\nhint: "]);
}

#[test]
fn the_run_of_an_empty_log_is_taken() {
    let bench = bench("");
    let text = bench.read("mallee/campaign.toml");
    let run = "\n[[run]]\nlog = \"run-1.csv\"   # the first\nnotes = \"invented\"\n# more = 1\n";
    bench.write("mallee/campaign.toml", text.clone() + run);
    bench.write(
        "mallee/run-1.csv",
        "time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n",
    );
    // A sensor is read, so its reading stands before the notes.
    bench.write("sheet.txt", SHEET.replace("1 c thin", "1 c 905 thin"));
    let ended = bench
        .run(&[&ENTER[..], &["--from", "sheet.txt"]].concat())
        .exits(0);
    ended.prints(&["takes the place of the empty run-1.csv"]);
    let expected = text + &run.replace("run-1", "2026-11-03");
    assert_eq!(bench.read("mallee/campaign.toml"), expected);
    let row = "2026-11-03 10:40,40.5,,1,clear,905,\"thin haze, west\"\n";
    assert!(bench.read(LOG).contains(row));
    bench.run(&["check", "mallee"]).exits(0).prints(&[
        "\"irradiance (W/m²)\"  irradiance",
        "wind was estimated by eye",
    ]);
}

#[test]
fn a_campaign_of_other_units_and_marks_still_reads_the_typed_log() {
    let bench = bench("");
    let text = bench.read("mallee/campaign.toml");
    let rules = "[units]\nwater_temperature = \"°F\"\nwind_speed = \"km/h\"\n\
                 [format]\ndelimiter = \";\"\ndecimal_mark = \",\"\n\
                 date_order = \"day-month-year\"\ntime_zone = \"-05:00\"\n";
    bench.write("mallee/campaign.toml", format!("{text}\n{rules}"));
    piped(&bench, &[], "31.5\n10:30 212.5 24\n10:40 220\ndone\n")
        .exits(0)
        .says(&["31.5 °F are −0.3 °C", "water of 220 °F (104.4 °C)"]);
    assert!(bench.read(LOG).contains("water (°F),air (°C)"));
    bench.run(&["check", "mallee"]).exits(0).prints(&[
        "2 readings from 2026-11-03 09:50:00 to 10:30:00",
        "water temperature (synonym), °F",
        "wind speed (synonym), Bft",
        "zone UTC",
    ]);
}

#[test]
fn a_second_heating_of_the_day_has_a_log_of_its_own() {
    let bench = bench("");
    piped(&bench, &[], "10:00 31 26\n10:10 36\n10:20 41\ndone\n").exits(0);
    let second = ["--log", "second.csv", "--start", "12:00"];
    piped(&bench, &second, "31 26\n36\n41\n")
        .exits(0)
        .prints(&["--log second.csv"]);
    piped(&bench, &second[..2], "done\n").exits(0);
    assert!(bench.read("mallee/second.csv").contains("12:20,41,,,,"));
    bench
        .run(&["check", "mallee"])
        .exits(0)
        .prints(&["second.csv", "2026-11-03.csv"]);
}

#[test]
fn another_log_of_that_name_is_left_alone() {
    let bench = bench("");
    for content in [heating(3).as_bytes(), b"", b"\xff\xfe\x00"] {
        bench.write(LOG, content);
        let before = bench.files("");
        piped(&bench, &[], "31.5\n").exits(2).says(&[
            "error: mallee/2026-11-03.csv: is there already, and is no sheet",
            "\nhint: ",
        ]);
        assert!(bench.files("") == before);
    }
    fs::remove_file(bench.path(LOG)).unwrap();
    fs::create_dir(bench.path(LOG)).unwrap();
    piped(&bench, &[], "31.5\n")
        .exits(2)
        .says(&["cannot be read", "\nhint: "]);
}

#[test]
fn a_typed_log_that_was_spoilt_is_refused_line_by_line() {
    let bench = bench("");
    piped(&bench, &[], "31.5\n36\n").exits(0);
    let spoilt = bench
        .read(LOG)
        .replace("31.5", "3l.5")
        .replace(",36,", ",-36,");
    bench.write(LOG, &spoilt);
    piped(&bench, &[], "41\n").exits(3).says(&[
        "2026-11-03.csv:3: found \"3l.5\"",
        "2026-11-03.csv:4: found water of -36",
    ]);
    assert_eq!(bench.read(LOG), spoilt);
}

#[test]
fn options_that_cannot_be_are_refused_before_anything_is_written() {
    let bench = bench("");
    let before = bench.files("");
    for (arguments, part) in [
        (
            &["mallee", "--date", "1899-11-03"][..],
            "year 1899, expected 1900 to 2200",
        ),
        (&["mallee", "--date", "9999-11-03"], "year 9999"),
        (&["mallee", "--date", "3.11.2026"], "expected a date"),
        (
            &["mallee", "--date", "2026-11-03", "--start", "ten"],
            "expected a time of the day",
        ),
        (
            &["mallee", "--date", "2026-11-03", "--log", "../x.csv"],
            "--log: found",
        ),
        (
            &["mallee", "--date", "2026-11-03", "--log", "x.txt"],
            "--log: found",
        ),
        (&["mallee"], "--date"),
    ] {
        let ended = bench.run(&[&["enter"], arguments].concat());
        ended.exits(2).says(&["error: ", part]);
    }
    let ended = bench.run(&["enter", "nowhere", "--date", "2026-11-03"]);
    ended
        .exits(4)
        .says(&["nowhere/campaign.toml: cannot be read"]);
    assert!(bench.files("") == before);
}

#[test]
fn a_start_before_the_last_line_is_refused() {
    let bench = bench("");
    piped(&bench, &["--start", "10:05"], "31\n36\n").exits(0);
    let late = piped(&bench, &["--start", "10:15"], "41\n").exits(2);
    late.says(&["the sheet goes to 10:15 already", "\nhint: "]);
    // Times go on by the minute of the lines that are there.
    piped(&bench, &[], "41\n").exits(0).prints(&["10:25  > "]);
}

#[test]
fn a_campaign_file_that_cannot_take_the_run_is_left_and_the_lines_are_printed() {
    let bench = bench("");
    bench.write("mallee/a.csv", heating(14));
    let text = format!(
        "run = [{{ log = \"a.csv\" }}]\n{}",
        bench.read("mallee/campaign.toml")
    );
    bench.write("mallee/campaign.toml", &text);
    let ended = piped(&bench, &[], "31\n36\ndone\n").exits(4);
    ended
        .prints(&["The log is saved", "\n[[run]]\nlog = \"2026-11-03.csv\"\n"])
        .says(&["error: mallee/campaign.toml: ", "\nhint: "]);
    assert_eq!(bench.read("mallee/campaign.toml"), text);
    assert_eq!(bench.read(LOG).lines().count(), 4);
}

#[test]
fn a_sheet_without_the_air_is_saved_but_needs_a_second_log() {
    let bench = bench("");
    let before = bench.read("mallee/campaign.toml");
    let ended = piped(&bench, &[], "31\n36\ndone\n").exits(3);
    ended
        .prints(&["The log is saved", "\n[[run]]\nlog = \"2026-11-03.csv\"\n"])
        .says(&["no valid ambient temperature", "weather = "]);
    assert_eq!(bench.read("mallee/campaign.toml"), before);
    piped(&bench, &[], "undo\n36 26\ndone\n").exits(0);
    bench.run(&["check", "mallee"]).exits(0);
}

#[cfg(unix)]
mod where_writing_is_forbidden {
    use std::fs::Permissions;
    use std::os::unix::fs::PermissionsExt;
    use std::os::unix::process::CommandExt;
    use std::process::Command;

    use super::*;

    /// Nobody of importance.
    const NOBODY: u32 = 65_534;

    #[test]
    fn a_folder_that_is_read_only_is_refused_before_anything_is_typed() {
        let bench = bench("");
        bench.write("sheet.txt", SHEET);
        let forbid = |name: &str| {
            fs::set_permissions(bench.path(name), Permissions::from_mode(0o555)).unwrap();
        };
        forbid("");
        forbid("mallee");
        let program = assert_cmd::cargo::cargo_bin!("simmerline");
        let mut command = Command::new(program);
        if fs::write(bench.path("mallee/probe"), "").is_ok() {
            // The superuser may write everywhere: somebody else has to try.
            fs::remove_file(bench.path("mallee/probe")).unwrap();
            command.uid(NOBODY).gid(NOBODY);
        }
        command.current_dir(bench.root.path()).args(ENTER);
        let output = command.args(["--from", "sheet.txt"]).output();
        fs::set_permissions(bench.path("mallee"), Permissions::from_mode(0o755)).unwrap();
        fs::set_permissions(bench.path(""), Permissions::from_mode(0o755)).unwrap();
        let output = output.expect("the program can be run by another user");
        let err = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(2), "{err}");
        assert!(
            err.starts_with("error: mallee: cannot be written to"),
            "{err}"
        );
        assert!(err.contains("\nhint: "), "{err}");
        assert_eq!(bench.names("mallee"), ["campaign.toml"]);
    }

    #[test]
    fn a_campaign_file_that_is_read_only_stays_and_the_lines_are_printed() {
        let bench = bench("");
        let path = bench.path("mallee/campaign.toml");
        let before = bench.read("mallee/campaign.toml");
        fs::set_permissions(&path, Permissions::from_mode(0o444)).unwrap();
        let ended = piped(&bench, &[], "31 26\n36\ndone\n").exits(2);
        ended
            .prints(&["\n[[run]]\nlog = \"2026-11-03.csv\"\n"])
            .says(&["campaign.toml: cannot be written", "by hand"]);
        assert_eq!(bench.read("mallee/campaign.toml"), before);
        assert_eq!(bench.names("mallee"), ["2026-11-03.csv", "campaign.toml"]);
    }
}

/// Notes of an oven dial in an empty pot.
const DRY_NOTES: &str = "# invented\nair 26 C\n10:20 60C sunny\n10:35 95C\n10:50 moved it, 120C\n\
                         11:05 135\n11:20 141 C\n";

#[test]
fn notes_of_a_pot_hotter_than_water_are_a_dry_run() {
    let bench = bench("");
    bench.write("notes.txt", DRY_NOTES);
    let ended = bench.run(&[&ENTER[..], &["--from", "notes.txt"]].concat());
    ended.exits(0).says(&[
        "note: notes.txt: taken as a run of the dry, empty vessel: most readings are hotter than water gets",
    ]);
    let log = bench.read(LOG);
    assert!(log.contains("time,dry vessel (°C),air (°C)"), "{log}");
    assert!(log.contains("2026-11-03 10:50,120,26,,,,moved it"), "{log}");
    let file = bench.read("mallee/campaign.toml");
    assert!(file.contains("kind = \"dry\""), "{file}");
    // Said to have held water, it is refused, and nothing changes.
    let before = bench.files("");
    let asked = ["--from", "notes.txt", "--kind", "water", "--log", "b.csv"];
    let ended = bench.run(&[&ENTER[..], &asked].concat()).exits(3);
    ended.says(&["notes.txt:5: found water of 120 °C"]);
    assert!(bench.files("") == before);
}

#[test]
fn a_corrected_file_is_taken_again_and_the_older_lines_are_kept() {
    let bench = bench("");
    let enter = |more: &[&str]| bench.run(&[&ENTER[..], &["--from", "notes.txt"], more].concat());
    bench.write(
        "notes.txt",
        "air 26\n10:20 31\n10:30 moved it, 36\n10:40 14\n",
    );
    enter(&[]).exits(0);
    let first = bench.read(LOG);
    bench.write(
        "notes.txt",
        "air 26\n10:20 31\n10:30 moved it, 36\n10:40 41\n",
    );
    enter(&[]).exits(2).says(&["is there already", "--again"]);
    assert_eq!(bench.read(LOG), first);
    enter(&["--again"])
        .exits(0)
        .says(&["mallee/2026-11-03.csv.before"]);
    assert!(bench.read(LOG).contains("10:40,41,26"));
    assert_eq!(bench.read("mallee/2026-11-03.csv.before"), first);
    // Nothing that is there is written over, and what was thought of the run goes with its lines.
    bench.write("notes.txt", "air 26\ndry pot\n10:20 31\n10:30 90\n");
    enter(&["--again"])
        .exits(0)
        .says(&["mallee/2026-11-03.csv.before-2", "the notes say so"]);
    assert_eq!(bench.read("mallee/2026-11-03.csv.before"), first);
    assert!(
        bench
            .read("mallee/campaign.toml")
            .contains("kind = \"dry\"")
    );
    bench.write("notes.txt", "air 26\n10:20 31\n10:30 36\n10:40 41\n");
    enter(&["--again"]).exits(0);
    assert!(
        bench
            .read("mallee/campaign.toml")
            .contains("kind = \"water\"")
    );
    bench.write("notes.txt", "10:20 31\n10:30 36\n");
    let before = bench.files("");
    enter(&["--again"])
        .exits(3)
        .says(&["no line has an air temperature", "air 24"]);
    assert!(bench.files("") == before);
    // What nobody typed in is not written over.
    bench.write("notes.txt", "air 26\n10:20 31\n");
    bench.write(LOG, "time,water_c\n");
    enter(&["--again"])
        .exits(2)
        .says(&["is no sheet that was typed in"]);
    assert_eq!(bench.read(LOG), "time,water_c\n");
}

#[test]
fn numbers_without_a_unit_that_are_no_water_in_the_campaigns_are_refused_and_not_guessed() {
    let bench = bench("");
    bench.write("notes.txt", "air 75\n10:20 88\n10:30 104\n10:40 121\n");
    let before = bench.files("");
    let ended = bench.run(&[&ENTER[..], &["--from", "notes.txt"]].concat());
    ended.exits(3).says(&[
        "notes.txt:3: found water of 104 °C",
        "was it read in °F? 104 °F are 40.0 °C",
        "write the unit behind each number",
    ]);
    assert!(bench.files("") == before);
    bench.write("notes.txt", "air 75\n10:20 88F\n10:30 104\n10:40 121\n");
    let ended = bench.run(&[&ENTER[..], &["--from", "notes.txt"]].concat());
    ended
        .exits(0)
        .says(&["the water temperature is in °F, as the notes say"]);
    assert!(bench.read(LOG).contains("time,water (°F),air (°F)"));
}

/// A line of a field sheet means what it always did, and a slip stays a slip.
#[test]
fn lines_of_a_field_sheet_are_never_read_as_notes() {
    let bench = bench(CLEAR_SKY);
    bench.write(
        "notes.txt",
        "10:20 31.5 24 1 c\n10:30 - 24 1 c\n10:40 -2 -3\n",
    );
    bench
        .run(&[&ENTER[..], &["--from", "notes.txt"]].concat())
        .exits(0);
    let log = bench.read(LOG);
    assert!(
        log.contains("10:30,,24,1,clear,\n2026-11-03 10:40,-2,-3,,,\n"),
        "{log}"
    );
    for (notes, said) in [
        (
            "10:20 31.5\n10:30 33\n10:40 355\n10:50 38\n",
            "notes.txt:3: found water of 355 °C",
        ),
        (
            "10:20 35.5\n10:30 43\n10:40 152\n10:50 58\n",
            "notes.txt:3: found water of 152 °C",
        ),
        (
            "10:20 65\n130 24\n",
            "notes.txt:2: found \"130 24\", expected the time first",
        ),
    ] {
        bench.write("notes.txt", notes);
        let asked = ["--from", "notes.txt", "--log", "b.csv"];
        bench
            .run(&[&ENTER[..], &asked].concat())
            .exits(3)
            .says(&[said]);
        assert!(!bench.path("mallee/b.csv").exists(), "{notes}");
    }
}

#[test]
fn notes_that_cannot_be_placed_are_named_with_what_to_write() {
    let bench = bench("");
    for (notes, said) in [
        ("November 4, 2026\n10:20 31\n", "say --date 2026-11-04"),
        ("10:20 31\n36 at some time\n", "expected the time first"),
        (
            "10:20 31\n10:30 36 26 1 c 912 40 50 12\n10:20 40\n",
            "expected a time after",
        ),
        ("10:20 l31\n", "found \"l31\""),
        (
            "10:20 31C\n10:30 88F\n",
            "expected the water temperature in °C",
        ),
    ] {
        bench.write("notes.txt", notes);
        let before = bench.files("");
        let ended = bench
            .run(&[&ENTER[..], &["--from", "notes.txt"]].concat())
            .exits(3);
        ended.says(&[said, "\nhint: "]);
        assert!(bench.files("") == before, "{notes}");
    }
}
