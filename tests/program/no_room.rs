//! Disks that are full, and places that cannot be written to: nothing half-written, and
//! nothing older touched.

use std::fs::{self, Permissions};
use std::os::unix::fs::{PermissionsExt, symlink};
use std::os::unix::process::CommandExt;
use std::process::Command;

use assert_cmd::cargo::cargo_bin;

use crate::bench::{Bench, Ended, OUTPUTS, campaign};

/// Nobody of importance.
const NOBODY: u32 = 65_534;

/// Runs the program where no file may grow beyond so many blocks of 512 bytes, as on a disk
/// that is full.
fn run_with_room(bench: &Bench, blocks: u32, arguments: &[&str]) -> Ended {
    let script = format!("trap '' XFSZ; ulimit -f {blocks}; exec \"$@\"");
    let mut command = assert_cmd::Command::new("sh");
    command
        .args(["-c", &script, "sh"])
        .arg(cargo_bin!("simmerline"))
        .args(arguments)
        .current_dir(bench.root.path());
    Ended::of(&mut command)
}

#[test]
fn a_report_that_does_not_fit_leaves_every_older_file_and_no_other() {
    for blocks in [0, 1, 16] {
        let bench = Bench::new();
        for name in OUTPUTS {
            bench.write(&format!("reports/{name}"), "old");
        }
        let before = bench.files("");
        let ended = run_with_room(&bench, blocks, &["report", "mallee"]).exits(2);
        ended.says(&["cannot be written", "file too large", "\nhint: "]);
        assert!(bench.files("") == before, "{blocks}");
    }
}

#[test]
fn a_new_campaign_that_does_not_fit_can_be_started_again() {
    let bench = Bench::empty();
    // The log fits into a block, the campaign file does not.
    run_with_room(&bench, 1, &["new", "plot"])
        .exits(2)
        .says(&["plot/campaign.toml: cannot be written", "\nhint: "]);
    assert_eq!(bench.names("plot"), ["run-1.csv"]);
    bench.run(&["new", "plot"]).exits(0);
    assert_eq!(bench.names("plot"), ["campaign.toml", "run-1.csv"]);
}

#[test]
fn a_sheet_that_does_not_fit_leaves_log_and_campaign_as_they_were() {
    let bench = Bench::empty();
    let text = campaign();
    let remark = format!("# {}\n", "longer than a block ".repeat(30));
    let text = &(remark + &text[..text.find("\n[[run]]").unwrap()]);
    bench.write("mallee/campaign.toml", text);
    bench.write("sheet.txt", "10:20 31 26 1\n10:30 36 26 1\n");
    let enter = [
        "enter",
        "mallee",
        "--date",
        "2026-11-03",
        "--from",
        "sheet.txt",
    ];
    // The log fits into a block, the campaign file does not.
    run_with_room(&bench, 1, &enter)
        .exits(2)
        .prints(&["The log is saved"])
        .says(&["campaign.toml: cannot be written", "\nhint: "]);
    assert_eq!(&bench.read("mallee/campaign.toml"), text);
    assert_eq!(bench.names("mallee"), ["2026-11-03.csv", "campaign.toml"]);
    run_with_room(&bench, 0, &enter).exits(2);
    bench.run(&enter).exits(0).prints(&["is added"]);
    assert_eq!(bench.names("mallee"), ["2026-11-03.csv", "campaign.toml"]);
}

#[test]
fn a_link_or_a_pipe_in_the_place_of_an_output_is_refused() {
    for taken in OUTPUTS {
        let bench = Bench::new();
        for name in OUTPUTS.into_iter().filter(|name| *name != taken) {
            bench.write(&format!("reports/{name}"), "old");
        }
        bench.write("elsewhere", "somebody's own");
        symlink("../elsewhere", bench.path(&format!("reports/{taken}"))).unwrap();
        let before = bench.files("");
        let complaint = format!("error: reports/{taken}: is a link where a file has to go");
        let ended = bench.run(&["report", "mallee"]).exits(2);
        ended.says(&[&complaint, "\nhint: "]);
        assert!(bench.files("") == before, "{taken}");
        let link = fs::symlink_metadata(bench.path(&format!("reports/{taken}"))).unwrap();
        assert!(link.is_symlink());
    }
    let bench = Bench::new();
    fs::create_dir(bench.path("reports")).unwrap();
    pipe(&bench, "reports/mallee.pdf");
    let ended = bench.run(&["report", "mallee"]).exits(2);
    ended.says(&["mallee.pdf: is a device or a pipe", "\nhint: "]);
    assert_eq!(fs::read_dir(bench.path("reports")).unwrap().count(), 1);
}

fn pipe(bench: &Bench, name: &str) {
    let made = Command::new("mkfifo").arg(bench.path(name)).status();
    assert!(made.unwrap().success());
}

#[test]
fn an_output_folder_that_is_read_only_is_refused_before_rating() {
    let bench = Bench::new();
    bench.write("reports/mallee.pdf", "old");
    let forbid = |name: &str| {
        fs::set_permissions(bench.path(name), Permissions::from_mode(0o555)).unwrap();
    };
    forbid("");
    forbid("reports");
    let mut command = Command::new(cargo_bin!("simmerline"));
    if fs::write(bench.path("reports/probe"), "").is_ok() {
        // The superuser may write everywhere: somebody else has to try.
        fs::remove_file(bench.path("reports/probe")).unwrap();
        command.uid(NOBODY).gid(NOBODY);
    }
    command.current_dir(bench.root.path());
    let output = command.args(["report", "mallee"]).output();
    for name in ["", "reports"] {
        fs::set_permissions(bench.path(name), Permissions::from_mode(0o755)).unwrap();
    }
    let output = output.expect("the program can be run by another user");
    let err = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2), "{err}");
    assert!(
        err.starts_with("error: reports: cannot be written to: permission denied"),
        "{err}"
    );
    assert!(err.contains("\nhint: "), "{err}");
    assert_eq!(bench.names("reports"), ["mallee.pdf"]);
}

#[test]
fn a_sheet_from_what_never_ends_or_never_begins_is_refused() {
    let bench = Bench::empty();
    let text = campaign();
    bench.write(
        "mallee/campaign.toml",
        &text[..text.find("\n[[run]]").unwrap()],
    );
    pipe(&bench, "pipe");
    let long = fs::File::create(bench.path("long.txt")).unwrap();
    long.set_len(1 << 40).unwrap();
    let before = bench.names("mallee");
    for (from, part) in [
        ("/dev/zero", "a device or a pipe, expected a file"),
        ("/dev/urandom", "a device or a pipe, expected a file"),
        ("pipe", "a device or a pipe, expected a file"),
        ("mallee", "a folder, a device or a pipe"),
        ("long.txt", "1099511627776 bytes, too long for a sheet"),
    ] {
        let enter = ["enter", "mallee", "--date", "2026-11-03", "--from", from];
        let mut command = bench.command(&enter);
        command.timeout(std::time::Duration::from_secs(20));
        let ended = Ended::of(&mut command).exits(3);
        ended.says(&[&format!("error: {from}: cannot be read"), part, "\nhint: "]);
    }
    assert_eq!(bench.names("mallee"), before);
}

#[test]
fn a_full_folder_for_temporary_files_is_named_and_no_report_blamed() {
    let bench = Bench::new();
    bench.report();
    fs::create_dir(bench.path("room")).unwrap();
    for blocks in [0, 1, 8] {
        let script = format!("trap '' XFSZ; ulimit -f {blocks}; exec \"$@\"");
        let mut command = assert_cmd::Command::new("sh");
        command
            .args(["-c", &script, "sh"])
            .arg(cargo_bin!("simmerline"))
            .args(["verify", "reports/mallee.pdf"])
            .env("TMPDIR", bench.path("room"))
            .current_dir(bench.root.path());
        let ended = Ended::of(&mut command).exits(2);
        let place = format!("error: {}: ", bench.path("room").display());
        ended.says(&[&place, "the folder for temporary files", "TMPDIR"]);
        assert_eq!(fs::read_dir(bench.path("room")).unwrap().count(), 0);
    }
}
