//! What `report` accepts, `verify` verifies. Campaigns are drawn, and invented;
//! `SIMMERLINE_CASES=1000` draws more of them.

use std::cell::Cell;
use std::fmt::Write as _;
use std::io::Cursor;
use std::path::Path;

use image::{DynamicImage, ImageFormat, RgbaImage};
use jiff::Timestamp;
use lopdf::Document;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::strategy::ValueTree;
use proptest::test_runner::{RngSeed, TestRunner};
use simmerline::assess_folder;
use simmerline::report::{Edition, outputs};

use crate::bench::*;
use crate::kit::campaign::Invented;
use crate::kit::files::write;
use crate::kit::header::HEADER;
use crate::kit::heating::{row_with, water_c};

/// Letters that some layer on the way may take for its own.
const ODD: &str = "aZ9 äßéñçΩЖ€°²—“”…*_#$@<>&\\\"'{}[]()~`^|/%:;=+-!?.";
const FOLDERS: [&str; 6] = ["mallee", "a b", "Кухня", "x.y", "con", "día-#1"];
const LOGS: [&str; 10] = [
    "day", "día", "a b", "x'y", "logs/day", "./day", "Лог", "#1", "%20", "$x{y}",
];

const PHOTOS: [ImageFormat; 3] = [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP];

#[derive(Debug, Clone)]
struct Drawn {
    folder: &'static str,
    log: &'static str,
    days: u32,
    /// Headers of columns that are not read.
    columns: Vec<String>,
    notes: String,
    title: String,
    reason: String,
    photo: Option<ImageFormat>,
    language: &'static str,
    paper: &'static str,
    units: &'static str,
}

fn odd(most: usize) -> impl Strategy<Value = String> {
    let letters: Vec<char> = ODD.chars().collect();
    vec(select(letters), 0..most).prop_map(|letters| letters.into_iter().collect())
}

fn drawn() -> impl Strategy<Value = Drawn> {
    let wishes = (
        select(&["en", "es", "fr", "pt", "sw"]),
        select(&["a4", "us-letter"]),
        select(&["si", "us"]),
    );
    (
        select(&FOLDERS),
        select(&LOGS),
        1_u32..5,
        vec(odd(20), 0..30),
        (odd(300), odd(60), odd(60)),
        proptest::option::of(select(&PHOTOS)),
        wishes,
    )
        .prop_map(
            |(folder, log, days, columns, (notes, title, reason), photo, wishes)| Drawn {
                folder,
                log,
                days,
                columns,
                notes,
                title,
                reason,
                photo,
                language: wishes.0,
                paper: wishes.1,
                units: wishes.2,
            },
        )
}

/// A small picture with something to compress.
fn picture(format: ImageFormat) -> Vec<u8> {
    let picture = RgbaImage::from_fn(60, 40, |x, y| {
        image::Rgba([(4 * x) as u8, (6 * y) as u8, (x * y) as u8, 255])
    });
    let mut bytes = Cursor::new(Vec::new());
    let picture = DynamicImage::ImageRgba8(picture).into_rgb8();
    picture.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

/// Text as a campaign file has it.
fn quoted(text: &str) -> String {
    toml::Value::String(text.to_owned()).to_string()
}

fn log(drawn: &Drawn, day: u32) -> String {
    let is_plain = |c: &char| !matches!(c, '"' | ';' | '|');
    let headers = drawn.columns.iter().enumerate().map(|(index, odd)| {
        let odd: String = odd.chars().filter(is_plain).collect();
        format!(",zz{index}{odd}")
    });
    let mut log = format!("# Invented data\n{HEADER}{}\n", headers.collect::<String>());
    for step in 0..=23 {
        let after_s = step * 600;
        let water = format!("{:.1}", water_c(f64::from(after_s)));
        let more = ",1.5".repeat(drawn.columns.len());
        writeln!(log, "{}{more}", row_with(13 + day, after_s, &water)).unwrap();
    }
    log
}

fn write_campaign(folder: &Path, drawn: &Drawn) {
    let name = |day: u32| format!("{}-{day}.csv", drawn.log);
    let names: Vec<String> = (1..=drawn.days).map(name).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let mut text = Invented::default().text(&names);
    let title = quoted(&format!("Invented {}", drawn.title));
    text = text.replacen("\"Mallee trough, bare pot\"", &title, 1);
    let notes = format!("demonstration = true\nnotes = {}", quoted(&drawn.notes));
    text = text.replacen("demonstration = true", &notes, 1);
    if let Some(format) = drawn.photo {
        let photo = "type = \"concentrating\"\nphoto = \"cooker picture\"";
        text = text.replacen("type = \"concentrating\"", photo, 1);
        write(folder, "cooker picture", picture(format));
    }
    let (language, paper, units) = (drawn.language, drawn.paper, drawn.units);
    write!(
        text,
        "[[run.exclude]]\nfrom = \"11:00\"\nto = \"11:05\"\nreason = {}\n\n[report]\nlanguage = \"{language}\"\npaper = \"{paper}\"\nunits = \"{units}\"\n",
        quoted(&drawn.reason)
    )
    .unwrap();
    write(folder, "campaign.toml", text);
    for day in 1..=drawn.days {
        write(folder, &name(day), log(drawn, day));
    }
}

/// The report on a folder, if there is one.
fn accepted(folder: &Path) -> simmerline::error::Result<Vec<u8>> {
    let assessment = assess_folder(folder)?;
    let wishes = &assessment.tested.campaign.report;
    let edition = Edition::wished(wishes, Timestamp::from_second(ISSUED_S).unwrap());
    let made = outputs(&assessment, &edition)?;
    let pdf = made.into_iter().find(|one| one.name.ends_with(".pdf"));
    Ok(pdf.expect("a report has a PDF").bytes)
}

#[test]
fn what_report_accepts_verify_verifies() {
    let cases = std::env::var("SIMMERLINE_CASES").map_or(10, |cases| cases.parse().unwrap());
    let config = ProptestConfig {
        cases,
        rng_seed: RngSeed::Fixed(20_260_314),
        failure_persistence: None,
        max_shrink_iters: 60,
        ..ProptestConfig::default()
    };
    let (reports, refused) = (Cell::new(0), Cell::new(Vec::new()));
    let run = TestRunner::new(config).run(&drawn(), |drawn| {
        let root = tempfile::tempdir().unwrap();
        let folder = root.path().join(drawn.folder);
        write_campaign(&folder, &drawn);
        match accepted(&folder) {
            Ok(pdf) => {
                let verification = verified(&pdf);
                prop_assert!(verification.agrees(), "{}", said(&verification));
                reports.set(reports.get() + 1);
            }
            Err(error) => {
                prop_assert!(error.exit_code() != 1, "{error}");
                let mut told = refused.take();
                told.push(error.to_string());
                refused.set(told);
            }
        }
        Ok(())
    });
    run.unwrap_or_else(|error| panic!("{error}"));
    // Refusals must stay rare, or this says nothing.
    let refused = refused.take();
    assert!(reports.get() * 10 >= cases * 8, "{}", refused.join("\n"));
}

#[test]
fn a_photo_is_attached_as_it_is_shown_and_says_nothing_of_its_place() {
    let secret = b"12.3456 N (invented)";
    let jpeg = picture(ImageFormat::Jpeg);
    let segment = [b"http://ns.adobe.com/xap/1.0/\0", &secret[..]].concat();
    let length = (segment.len() as u16 + 2).to_be_bytes();
    let by_camera = [&jpeg[..2], b"\xff\xe1", &length, &segment, &jpeg[2..]].concat();
    let root = tempfile::tempdir().unwrap();
    let mut runner = TestRunner::deterministic();
    let drawn = Drawn {
        photo: Some(ImageFormat::Jpeg),
        ..drawn().new_tree(&mut runner).unwrap().current()
    };
    write_campaign(root.path(), &drawn);
    write(root.path(), "cooker picture", &by_camera);
    let pdf = accepted(root.path()).unwrap();
    let photo = attached(&Document::load_mem(&pdf).unwrap(), "cooker picture");
    assert!(photo.starts_with(b"\xff\xd8\xff"));
    for bytes in [&photo, &pdf] {
        assert!(!bytes.windows(secret.len()).any(|at| at == secret));
    }
    let verification = verified(&pdf);
    assert!(verification.agrees(), "{}", said(&verification));
    // A report on the photo that was attached is the same report.
    write(root.path(), "cooker picture", &photo);
    assert!(accepted(root.path()).unwrap() == pdf);
}
