//! Attached campaign files that would have other files read, and a photo that would fill the
//! memory.

use std::fs;
use std::path::{Path, PathBuf};

use simmerline::hash::sha256_hex;

use crate::bench::*;

const CAMPAIGN: &str = "campaign.toml";

/// The report on a sample whose attached campaign file names another file in the place of one;
/// all hashes are right.
fn naming(sample_name: &str, from: &str, to: &str) -> Vec<u8> {
    changed(&sample(sample_name), |document| {
        let rating = format!("{sample_name}.rating.json");
        let old = sha256_hex(&attached(document, CAMPAIGN));
        replace_in(
            document,
            CAMPAIGN,
            &format!("= \"{from}\""),
            &format!("= {to:?}"),
        );
        let new = sha256_hex(&attached(document, CAMPAIGN));
        replace_in(document, &rating, &old, &new);
        replace_in(
            document,
            &rating,
            &format!("\"file\": \"{from}\""),
            &format!("\"file\": {to:?}"),
        );
    })
}

/// A file where the temporary folders are, which goes when it is dropped.
struct Bait(PathBuf);

impl Bait {
    fn new(name: &str, content: &Path) -> Self {
        let path = std::env::temp_dir().join(format!("{}-{name}", std::process::id()));
        fs::copy(content, &path).unwrap();
        Bait(path)
    }

    fn name(&self) -> &str {
        self.0.file_name().unwrap().to_str().unwrap()
    }
}

impl Drop for Bait {
    fn drop(&mut self) {
        fs::remove_file(&self.0).unwrap();
    }
}

#[test]
fn a_log_that_is_not_attached_is_not_read() {
    let log = "2026-09-16.csv";
    // The very log, so that the rating would be right if it were read.
    let bait = Bait::new("log.csv", &Path::new("sample-runs/open-dish").join(log));
    let absolute = bait.0.display().to_string();
    let beside = format!("../{}", bait.name());
    let deep = format!("../../../../../../..{absolute}");
    for name in [
        absolute.as_str(),
        &beside,
        &deep,
        "/etc/passwd",
        "../../secret",
        "x/../../secret",
    ] {
        let pdf = naming("open-dish", log, name);
        let not_there = format!("the log \"{}\" is not there", name.escape_debug());
        differs(
            &pdf,
            &["attachments", "hashes", "results"],
            &[
                &not_there,
                "it is not attached",
                "2026-09-16.csv: does not belong",
            ],
        );
    }
}

#[test]
fn a_weather_log_that_is_not_attached_is_not_read() {
    let bait = Bait::new(
        "weather.csv",
        Path::new("sample-runs/open-dish/2026-09-16.csv"),
    );
    let pdf = changed(&sample("open-dish"), |document| {
        let weather = format!("log = \"2026-09-16.csv\"\nweather = {:?}", bait.0);
        replace_in(document, CAMPAIGN, "log = \"2026-09-16.csv\"", &weather);
    });
    differs(
        &pdf,
        &["hashes", "results"],
        &["[[run]] 1, weather: the log ", "it is not attached"],
    );
}

#[test]
fn a_photo_that_is_not_attached_is_not_read() {
    let bait = Bait::new("photo.png", Path::new("sample-runs/box/cooker.png"));
    let beside = format!("../{}", bait.name());
    for name in [&bait.0.display().to_string(), &beside, "/etc/passwd"] {
        let pdf = naming("box", "cooker.png", name);
        let subjects = ["attachments", "hashes", "results"];
        differs(
            &pdf,
            &subjects,
            &["[cooker] photo: ", "is not there", "it is not attached"],
        );
    }
}

#[test]
fn a_photo_that_would_fill_the_memory() {
    let pdf = changed(&sample("box"), |document| {
        let mut photo = attached(document, "cooker.png");
        // Width and height of the header, and its checksum by the specification of PNG, 5.5.
        photo[16..24].copy_from_slice(&[0, 0, 0x75, 0x30, 0, 0, 0x75, 0x30]);
        let mut crc = flate2::Crc::new();
        crc.update(&photo[12..29]);
        photo[29..33].copy_from_slice(&crc.sum().to_be_bytes());
        let old = sha256_hex(&attached(document, "cooker.png"));
        attach_instead(document, "cooker.png", &photo);
        replace_in(document, "box.rating.json", &old, &sha256_hex(&photo));
    });
    differs(
        &pdf,
        &["hashes", "results"],
        &["photo: \"cooker.png\" is 30000 × 30000 pixels, 2700000000 bytes once unpacked"],
    );
}

#[test]
fn a_campaign_file_that_is_none() {
    for (text, what) in [("", "campaign.toml"), ("\u{1b}[2J = 1", "campaign.toml")] {
        let pdf = changed(&sample("open-dish"), |document| {
            attach_instead(document, CAMPAIGN, text.as_bytes());
        });
        differs(&pdf, &["hashes", "results"], &[what]);
    }
}
