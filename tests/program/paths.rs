//! Paths and output folders that cannot be used.

use crate::bench::{Bench, Ended, OUTPUTS};
use std::fs;

#[test]
fn a_path_without_a_campaign_is_refused_with_what_to_do() {
    let bench = Bench::new();
    fs::create_dir(bench.path("bare")).unwrap();
    let before = bench.files("");
    for (path, part) in [
        ("nowhere", "error: nowhere: cannot be opened"),
        ("bare", "error: bare: holds no campaign.toml"),
        (
            "mallee/day-1.csv",
            "error: mallee/day-1.csv: is a file, expected a folder",
        ),
        (
            "mallee/day-1.csv/x",
            "error: mallee/day-1.csv/x: cannot be opened",
        ),
    ] {
        for command in ["report", "check"] {
            let ended = bench.run(&[command, "mallee", path]).exits(2);
            let ended = ended.says(&[part, "\nhint: "]);
            assert_eq!(ended.out, "");
        }
    }
    bench
        .run(&["check", "bare"])
        .exits(2)
        .says(&["simmerline new bare"]);
    assert!(bench.files("") == before);
}

#[test]
fn campaigns_are_found_below_a_folder_but_not_in_hidden_ones_and_each_once() {
    let bench = Bench::empty();
    bench.add_campaign("shed/shelf/wattle");
    bench.add_campaign("shed/acacia");
    bench.add_campaign("shed/.old/acacia");
    let ended = bench
        .run(&["check", "shed", "shed/acacia", "shed/acacia/campaign.toml"])
        .exits(0);
    assert!(ended.out.contains(" 2 campaigns: "), "{}", ended.out);
    for (end, count) in [
        (" shed/acacia", 1),
        (" shed/shelf/wattle", 1),
        ("/.old/acacia", 0),
    ] {
        let rows = ended.out.lines().filter(|line| line.ends_with(end));
        // A row of the table, and none of what is to be done next.
        let rows = rows.filter(|line| line.contains(" ± ") || line.contains(" – "));
        assert_eq!(rows.count(), count, "{end}: {}", ended.out);
    }
}

#[test]
fn a_campaign_folder_named_by_a_dot_keeps_its_name() {
    let bench = Bench::new();
    let mut command = bench.command(&["report", "."]);
    Ended::of(command.current_dir(bench.path("mallee"))).exits(0);
    assert_eq!(bench.names("mallee/reports"), OUTPUTS);
}

#[test]
fn two_campaign_folders_of_one_name_are_refused() {
    let bench = Bench::empty();
    bench.add_campaign("first/mallee");
    bench.add_campaign("second/mallee");
    let before = bench.files("");
    let ended = bench.run(&["report", "first", "second"]).exits(2);
    ended.says(&[
        "error: second/mallee: ",
        "named \"mallee\"",
        "\nhint: ",
        "--out",
    ]);
    assert!(bench.files("") == before);
}
