//! A campaign file names no file outside its folder, unless who runs the program allows it.

use std::fs;
use std::os::unix::fs::symlink;

use image::RgbImage;
use serde_json::Value;

use crate::bench::{Bench, Ended, heating};

const FLAG: &str = "--allow-outside";

/// How a name leads out of the campaign's folder: what stands in the campaign file for a file
/// of the folder `secret`, after the way was made.
type Way = fn(&Bench, &str) -> String;

const WAYS: [(&str, Way); 4] = [
    ("a parent folder", |_, file| format!("../secret/{file}")),
    ("an absolute path", |bench, file| {
        bench.path("secret").join(file).display().to_string()
    }),
    ("a link", |bench, file| {
        symlink(format!("../secret/{file}"), bench.path("mallee").join(file)).unwrap();
        file.to_owned()
    }),
    ("a link in a parent part", |bench, file| {
        symlink("../secret", bench.path("mallee/near")).unwrap();
        format!("near/{file}")
    }),
];

/// What a campaign file names: a key, and the file that it is to lead to.
#[derive(Clone, Copy)]
enum Named {
    Log,
    Weather,
    Photo,
}

impl Named {
    const ALL: [Named; 3] = [Named::Log, Named::Weather, Named::Photo];

    fn file(self) -> &'static str {
        match self {
            Named::Log => "run.csv",
            Named::Weather => "station.csv",
            Named::Photo => "cooker.png",
        }
    }

    /// Makes the file in `secret`.
    fn make(self, bench: &Bench) {
        match self {
            Named::Log => bench.write("secret/run.csv", heating(14)),
            Named::Weather => bench.write("secret/station.csv", heating(14)),
            Named::Photo => {
                fs::create_dir_all(bench.path("secret")).unwrap();
                let picture = RgbImage::from_pixel(40, 30, image::Rgb([90, 120, 60]));
                picture.save(bench.path("secret/cooker.png")).unwrap();
            }
        }
    }

    /// Names it in the campaign file; the line.
    fn name(self, bench: &Bench, name: &str) -> usize {
        let toml = "mallee/campaign.toml";
        match self {
            Named::Log => bench.replace(toml, "log = \"day-1.csv\"", &format!("log = {name:?}")),
            Named::Weather => {
                let text = format!("log = \"day-1.csv\"\nweather = {name:?}");
                bench.replace(toml, "log = \"day-1.csv\"", &text)
            }
            Named::Photo => {
                bench.replace(toml, "[cooker]\n", &format!("[cooker]\nphoto = {name:?}\n")) - 1
            }
        }
    }
}

/// Every command that reads a campaign, on `mallee`; `compare` has another one beside it.
fn commands() -> [Vec<&'static str>; 5] {
    [
        vec!["report", "mallee"],
        vec!["check", "mallee"],
        vec!["compare", "mallee", "acacia"],
        vec!["plan", "mallee", "--date", "2026-03-18"],
        vec![
            "enter",
            "mallee",
            "--date",
            "2026-03-18",
            "--from",
            "sheet.txt",
        ],
    ]
}

fn bench() -> Bench {
    let bench = Bench::new();
    bench.add_campaign("acacia");
    for day in 1..=3 {
        bench.write(&format!("acacia/day-{day}.csv"), heating(20 + day));
    }
    bench.write("sheet.txt", "10:20 31.5 24 1 c\n10:30 36 24 1 c\n");
    bench
}

fn inputs(rating: &Value) -> Vec<(String, bool)> {
    let inputs = rating["provenance"]["inputs"].as_array().unwrap().iter();
    let of = |input: &Value| {
        let file = input["file"].as_str().unwrap().to_owned();
        (file, input["outside"].as_bool().unwrap())
    };
    inputs.map(of).collect()
}

#[test]
fn what_lies_outside_is_refused_with_place_and_remedy() {
    for (way, lead) in WAYS {
        for named in Named::ALL {
            let bench = bench();
            named.make(&bench);
            let line = named.name(&bench, &lead(&bench, named.file()));
            let before = bench.files("mallee");
            for arguments in commands() {
                let ended = bench.run(&arguments).exits(4).says(&[
                    &format!("error: mallee/campaign.toml:{line}: "),
                    named.file(),
                    "lies outside the campaign's folder",
                    "\nhint: copy it into mallee",
                    FLAG,
                ]);
                assert_eq!(ended.out, "", "{way}");
            }
            assert!(bench.files("mallee") == before, "{way}");
            // Not even whether it is there can be told.
            if !way.contains("link") {
                let there = bench.run(&["check", "mallee"]).err;
                fs::remove_file(bench.path("secret").join(named.file())).unwrap();
                assert_eq!(bench.run(&["check", "mallee"]).exits(4).err, there, "{way}");
            }
        }
    }
}

#[test]
fn what_is_allowed_is_read_named_as_outside_and_verified() {
    for (way, lead) in WAYS {
        for named in Named::ALL {
            let bench = bench();
            named.make(&bench);
            let name = lead(&bench, named.file());
            named.name(&bench, &name);
            for mut arguments in commands() {
                arguments.push(FLAG);
                let ended = bench.run(&arguments).exits(0);
                let all = ended.err + &ended.out;
                let notice = "read from outside the campaign's folder";
                assert!(
                    all.contains(notice) || arguments[0] == "enter",
                    "{way}: {all}"
                );
            }
            let rating = bench.rating("mallee");
            for (file, is_outside) in inputs(&rating) {
                assert_eq!(is_outside, file == name, "{way}: {file}");
            }
            let notices = rating["notices"].to_string();
            assert!(notices.contains("from outside"), "{way}: {notices}");
            let text = bench.pdf_text("reports/mallee.pdf");
            assert!(text.contains(",fromoutside"), "{way}");
            let comparison = bench.read("reports/comparison.json");
            let comparison: Value = serde_json::from_str(&comparison).unwrap();
            let outside = inputs(&comparison)
                .into_iter()
                .filter(|(_, outside)| *outside);
            assert_eq!(
                outside.map(|(file, _)| file).collect::<Vec<_>>(),
                [name],
                "{way}"
            );
            let text = bench.pdf_text("reports/comparison.pdf");
            assert!(text.contains(",fromoutside"), "{way}");
            fs::remove_dir_all(bench.path("secret")).unwrap();
            let sheet = "reports/mallee.2026-03-18.field-sheet.pdf";
            let documents = ["reports/mallee.pdf", "reports/comparison.pdf", sheet];
            let ended = Ended::of(bench.command(&["verify"]).args(documents));
            assert_eq!(ended.exits(0).err, "", "{way}");
        }
    }
}

#[test]
fn what_stays_inside_needs_no_leave() {
    let bench = Bench::new();
    fs::create_dir(bench.path("mallee/logs")).unwrap();
    fs::rename(
        bench.path("mallee/day-1.csv"),
        bench.path("mallee/logs/1.csv"),
    )
    .unwrap();
    symlink("logs/1.csv", bench.path("mallee/linked.csv")).unwrap();
    bench.replace("mallee/campaign.toml", "day-1.csv", "linked.csv");
    bench.replace("mallee/campaign.toml", "day-2.csv", "logs/../day-2.csv");
    let rating = bench.report();
    assert!(inputs(&rating).iter().all(|(_, outside)| !outside));
    assert!(!rating["notices"].to_string().contains("outside"));
    // The campaign's folder itself may be reached by a link.
    symlink("mallee", bench.path("by-link")).unwrap();
    bench
        .run(&["report", "by-link", "--out", "linked"])
        .exits(0);
}

#[test]
fn a_log_or_photo_that_is_no_file_is_refused_and_not_read() {
    for named in Named::ALL {
        let bench = Bench::new();
        let name = named.file();
        named.name(&bench, name);
        let path = bench.path("mallee").join(name);
        let is_refused = || {
            for command in ["report", "check"] {
                let ended = bench.run(&[command, "mallee", FLAG]);
                assert!([3, 4].contains(&ended.code), "{}", ended.err);
                ended.says(&["is no file", "\nhint: "]);
            }
        };
        fs::create_dir(&path).unwrap();
        is_refused();
        fs::remove_dir(&path).unwrap();
        for device in ["/dev/zero", "/dev/null"] {
            symlink(device, &path).unwrap();
            bench
                .run(&["check", "mallee"])
                .exits(4)
                .says(&["lies outside"]);
            is_refused();
            fs::remove_file(&path).unwrap();
        }
        let made = std::process::Command::new("mkfifo").arg(&path).status();
        assert!(made.unwrap().success());
        is_refused();
    }
}

#[test]
fn a_folder_name_that_cannot_be_seen_is_refused_and_stops_no_other() {
    use std::ffi::OsStr;
    use std::os::unix::ffi::OsStrExt;
    let names: [&[u8]; 5] = [
        b"bell\x07",
        b"two\nlines",
        b"\xe2\x80\xaeturned",
        b"esc\x1b[31m",
        b"latin\xe9",
    ];
    for name in names {
        let bench = Bench::new();
        let name = OsStr::from_bytes(name);
        bench.add_campaign("odd");
        fs::rename(bench.path("odd"), bench.root.path().join(name)).unwrap();
        let run = |arguments: &[&str]| Ended::of(bench.command(arguments).arg(name));
        for arguments in [
            &["report", "mallee"][..],
            &["check", "mallee"],
            &["compare", "mallee"],
            &["plan"],
            &["enter", "--date", "2026-03-18"],
        ] {
            let ended = run(arguments).exits(2);
            let ended = ended.says(&["error: ", "its name ", "\nhint: choose another name"]);
            let lines = ended.err.lines();
            let of_error = lines.filter(|line| !line.starts_with("note: "));
            assert_eq!(of_error.count(), 2, "{}", ended.err);
            // The other campaign is rated all the same, where each stands for itself.
            let is_rated = ended.out.contains("Mallee trough");
            assert_eq!(
                is_rated,
                ["report", "check"].contains(&arguments[0]),
                "{}",
                ended.out
            );
        }
        let new = Ended::of(bench.command(&["new"]).arg(bench.path("new").join(name)));
        new.exits(2).says(&["its name "]);
        assert!(!bench.path("new").exists());
    }
}
