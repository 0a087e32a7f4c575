//! How much a campaign file may hold: as much as is allowed is taken, one more is refused
//! with its place, the number and a remedy.

use simmerline::bounds::{
    AMOUNTS, Bound, CALIBRATION_POINTS, CALIBRATIONS, CAMPAIGN_BYTES, CAMPAIGN_KEYS, CORNERS,
    HEADER_LINE, LOG_COLUMNS, NAME, NOTES, REMARK, REPORT_NUMBER, RUNS, SPANS, STAGNATIONS, TEXT,
    VESSELS,
};
use simmerline::error::LISTED_PROBLEMS;

use crate::kit::campaign::Invented;
use crate::kit::header::HEADER;
use crate::kit::heating::row_with;
use crate::kit::rate::rate;

/// A campaign file whose tables have other text in place of some.
type Write = fn(usize) -> (&'static str, String);

/// So many of something, written one after the other.
fn times(count: usize, item: impl Fn(usize) -> String) -> String {
    (0..count).map(item).collect()
}

const CASES: &[(&Bound, &str, Write)] = &[
    (&RUNS, "[[run]]", |count| {
        (
            "",
            times(count, |n| format!("[[run]]\nlog = \"{n}.csv\"\n")),
        )
    }),
    (&SPANS, "[[run]]", |count| {
        let span = |_| "[[run.exclude]]\nfrom = \"11:00\"\nto = \"11:10\"\n".to_owned();
        (
            "",
            format!("[[run]]\nlog = \"1.csv\"\n{}", times(count, span)),
        )
    }),
    (&CALIBRATIONS, "[[calibration]]", |count| {
        let one = |n| format!("[[calibration]]\ncolumn = \"c{n}\"\ngain = 1.0\n");
        ("", times(count, one))
    }),
    (&CALIBRATION_POINTS, "[[calibration]] 1, points", |count| {
        let points = times(count, |n| format!("[{n}, {n}.5], "));
        (
            "",
            format!("[[calibration]]\ncolumn = \"c\"\npoints = [{points}]\n"),
        )
    }),
    (&STAGNATIONS, "[[stagnation]]", |count| {
        let one = "[[stagnation]]\ndate = 2026-04-14\nplateau_c = 150\nambient_c = 25\nirradiance_w_m2 = 900\n";
        ("", one.repeat(count))
    }),
    (&VESSELS, "[load] vessels", |count| {
        let each = "0.007, ".repeat(count);
        ("water_kg = 7.0", format!("vessel_water_kg = [{each}]"))
    }),
    (&AMOUNTS, "[cooking] water_kg", |count| {
        (
            "",
            format!("[cooking]\nwater_kg = [{}]\n", "2, ".repeat(count)),
        )
    }),
    (&CORNERS, "[cooker.aperture] points_m", |count| {
        let corner = |n| {
            let turn = std::f64::consts::TAU * n as f64 / count as f64;
            format!("[{}, {}], ", turn.cos(), turn.sin())
        };
        let corners = times(count, corner);
        (
            "intercept_area_m2 = 1.0",
            format!("[cooker.aperture]\nshape = \"outline\"\npoints_m = [{corners}]"),
        )
    }),
    (&LOG_COLUMNS, "[columns]", |count| {
        let names = times(count, |n| format!("\"w{n}\", "));
        ("", format!("[columns]\nwater_temperature = [{names}]\n"))
    }),
    (&HEADER_LINE, "[format] header_line", |count| {
        ("", format!("[format]\nheader_line = {count}\n"))
    }),
    (&NAME, "[site] name", |count| {
        ("Nowhere flats (invented)", "x".repeat(count))
    }),
    (&REPORT_NUMBER, "[campaign] report_number", |count| {
        let number = "7".repeat(count);
        (
            "demonstration = true",
            format!("report_number = \"{number}\""),
        )
    }),
    (&TEXT, "[report] laboratory", |count| {
        (
            "",
            format!("[report]\nlaboratory = \"{}\"\n", "é".repeat(count)),
        )
    }),
    (&NOTES, "[campaign] notes", |count| {
        (
            "demonstration = true",
            format!("notes = \"{}\"", "y".repeat(count)),
        )
    }),
    (&REMARK, "[[run]] 1, notes", |count| {
        (
            "",
            format!(
                "[[run]]\nlog = \"1.csv\"\nnotes = \"{}\"\n",
                "z".repeat(count)
            ),
        )
    }),
    (&CAMPAIGN_KEYS, "", |count| {
        // Of these, the rest of the file has some already, and the list is one more.
        ("", format!("[columns]\ntime = [{}]\n", "1,".repeat(count)))
    }),
    (&CAMPAIGN_BYTES, "", |count| ("", "#".repeat(count))),
];

/// What is said of a campaign with so many, as one text.
fn said(write: Write, count: usize) -> String {
    let (from, to) = write(count);
    let text = Invented::default().text(&[]);
    let text = match from {
        "" => text + "\n" + &to,
        from => text.replacen(from, &to, 1),
    };
    rate(&text, &[]).err().map_or_else(String::new, |error| {
        assert!([3, 4].contains(&error.exit_code()), "{error}");
        error.to_string()
    })
}

#[test]
fn as_many_as_allowed_are_taken_and_one_more_is_refused() {
    for &(bound, item, write) in CASES {
        let expected = format!("expected at most {}", bound.most);
        let spare = match bound.name {
            // The campaign around them counts too.
            _ if bound == &CAMPAIGN_KEYS || bound == &CAMPAIGN_BYTES => 2_000,
            _ => 0,
        };
        let within = said(write, bound.count() - spare);
        assert!(!within.contains(&expected), "{}: {within}", bound.name);
        let beyond = said(write, bound.count() + 1);
        let found = beyond.lines().find(|line| line.contains(&expected));
        let found = found.unwrap_or_else(|| panic!("{}: {beyond}", bound.name));
        assert!(
            found.contains("campaign.toml") && found.contains(item),
            "{found}"
        );
        assert!(beyond.contains("hint: "), "{beyond}");
    }
}

#[test]
fn a_log_is_split_into_no_more_runs_than_a_campaign_has() {
    let day = |n: i32| {
        let date = jiff::civil::date(2010, 1, 1).saturating_add(jiff::Span::new().days(n));
        let rows = (0..4).map(|step| {
            let row = row_with(1, step * 600, &format!("{}", 30 + 10 * step));
            row.replacen("2026-04-01", &date.to_string(), 1) + "\n"
        });
        rows.collect::<String>()
    };
    let most = RUNS.most as i32;
    let log: String = (0..=most).map(day).collect();
    let text = Invented::default().text(&["all.csv"]) + "split = \"daily\"\n";
    let error = rate(&text, &[("all.csv", &format!("{HEADER}\n{log}"))]).unwrap_err();
    assert_eq!(error.exit_code(), 4);
    let error = error.to_string();
    assert!(
        error.contains("found 2001 runs, expected at most 2000"),
        "{error}"
    );
}

#[test]
fn of_thousands_of_mistakes_a_few_are_told_and_all_are_counted() {
    let keys = times(20_000, |n| format!("key-{n} = 1\n"));
    let texts = format!("time = [{}]\n", "\"\\u0007\", ".repeat(20_000));
    for (table, lines) in [("limits", keys), ("columns", texts)] {
        let text = format!("{}\n[{table}]\n{lines}", Invented::default().text(&[]));
        let said = rate(&text, &[]).unwrap_err().to_string();
        let told = said.matches("campaign.toml:").count();
        let counted = said.split("not listed here: ").nth(1).unwrap();
        let counted: usize = counted.split(' ').next().unwrap().parse().unwrap();
        assert!(
            told == LISTED_PROBLEMS && told + counted >= 20_000,
            "{said}"
        );
    }
}
