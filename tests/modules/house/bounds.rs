//! The guide shows the bounds that the program has.

use std::fs;

use simmerline::bounds::{ALL, Bound};

/// A number as a person reads it, with its unit.
fn shown(bound: &Bound) -> String {
    let Bound { most, unit, .. } = bound;
    let powers = [(30, "GiB"), (20, "MiB")];
    let whole = powers
        .iter()
        .find(|(power, _)| *unit == "bytes" && most % (1 << power) == 0);
    if let Some((power, prefix)) = whole {
        return format!("{} {prefix}", most >> power);
    }
    let digits = most.to_string();
    let groups: Vec<&str> = (0..digits.len())
        .filter(|index| (digits.len() - index) % 3 == 0 || *index == 0)
        .map(|start| {
            let end = digits.len() - (digits.len() - start - 1) / 3 * 3;
            &digits[start..end]
        })
        .collect();
    format!("{} {unit}", groups.join(","))
}

#[test]
fn the_guide_has_every_bound_with_its_reason() {
    let guide = fs::read_to_string("DEVELOPERS.md").unwrap();
    let table = guide.split("## Bounds\n").nth(1).expect("the chapter");
    let table = table.split("\n## ").next().unwrap();
    let rows: Vec<&str> = table.lines().filter(|line| line.starts_with('|')).collect();
    let expected: Vec<String> = ALL
        .iter()
        .map(|bound| format!("| {} | {} | {} |", bound.name, shown(bound), bound.reason))
        .collect();
    assert_eq!(
        rows[2..],
        expected,
        "write into the guide:\n{}",
        expected.join("\n")
    );
}

#[test]
fn numbers_are_shown_in_groups() {
    let of = |most, unit| Bound {
        name: "",
        most,
        unit,
        reason: "",
    };
    for (most, unit, expected) in [
        (6, "cells", "6 cells"),
        (2_000, "runs", "2,000 runs"),
        (1 << 20, "rows", "1,048,576 rows"),
        (64 << 20, "bytes", "64 MiB"),
        (4 << 30, "bytes", "4 GiB"),
        ((1 << 31) - 1, "bytes", "2,147,483,647 bytes"),
    ] {
        assert_eq!(shown(&of(most, unit)), expected);
    }
}
