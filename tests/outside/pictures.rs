//! Page one as a picture, against the picture of it that somebody looked at.
//!
//! The pictures are small and grey: they show where things stand and how dark they are, not
//! every letter. With `RENEW_PICTURES=1` in the environment they are written anew; look at them
//! before they are kept.

use std::ffi::OsStr;
use std::fs;
use std::path::Path;
use std::process::Command;
use std::sync::Arc;

use image::GrayImage;
use libtest_mimic::{Failed, Trial};
use tempfile::TempDir;

use super::{ISSUED_S, Made, is_there, output};

const PICTURES: &str = "tests/outside/pictures";
/// What a page that has changed looks like now.
const CHANGED: &str = "target/pictures";
/// A page is 298 × 421 pixels.
const DOTS_PER_INCH: &str = "36";
/// Reports of every level: it conforms, it is indicative, not valid, and without a rating.
const REPORTS: [&str; 4] = ["open-dish", "panel-cloudy", "tube-area-slip", "dry-pot"];
const COMPARISON: &str = "comparison";
const COMPARED: [&str; 6] = [
    "open-dish",
    "open-dish-skirt",
    "box",
    "box-autumn",
    "panel-cloudy",
    "tube-area-slip",
];

/// Pixels along a cell: eighteen points, a line and a half.
const CELL: u32 = 9;
/// By how much the mean of a cell may differ, of 255: renderers, and versions of one, draw
/// the edges of letters differently, by up to 5; one line moved by half its height makes 30.
const MOST_DIFFERENCE: f64 = 14.0;
/// So many cells of some 1,500 may differ more: a word that is another.
const MOST_CELLS: usize = 6;

pub fn trials(made: &Arc<Made>) -> Vec<Trial> {
    let names = REPORTS.into_iter().chain([COMPARISON]);
    let trials = names.map(|name| {
        let made = Arc::clone(made);
        let trial = Trial::test(format!("page_one_of_{name}_looks_as_it_did"), move || {
            looks_alike(&made, name)
        });
        trial.with_ignored_flag(!is_there("pdftoppm"))
    });
    trials.collect()
}

fn looks_alike(made: &Made, name: &str) -> Result<(), Failed> {
    let folder = TempDir::new()?;
    let pdf = match name {
        COMPARISON => compared(folder.path())?,
        name => made.path(name, "pdf"),
    };
    let drawn = folder.path().join("page");
    let arguments: [&OsStr; 10] = [
        "-r".as_ref(),
        DOTS_PER_INCH.as_ref(),
        "-gray".as_ref(),
        "-png".as_ref(),
        "-singlefile".as_ref(),
        "-f".as_ref(),
        "1".as_ref(),
        "-l".as_ref(),
        "1".as_ref(),
        pdf.as_ref(),
    ];
    let arguments = [&arguments[..], &[drawn.as_ref()]].concat();
    output("pdftoppm", &arguments)?;
    let drawn = image::open(drawn.with_extension("png"))?.into_luma8();
    let kept = Path::new(PICTURES).join(format!("{name}.png"));
    if std::env::var_os("RENEW_PICTURES").is_some() {
        fs::create_dir_all(PICTURES)?;
        drawn.save(kept)?;
        return Ok(());
    }
    let before = image::open(&kept).map_err(|error| format!("{}: {error}", kept.display()))?;
    let differing = differing_cells(&before.into_luma8(), &drawn)?;
    if differing.len() <= MOST_CELLS {
        return Ok(());
    }
    fs::create_dir_all(CHANGED)?;
    let now = Path::new(CHANGED).join(format!("{name}.png"));
    drawn.save(&now)?;
    Err(format!(
        "{} cells of page one differ, the first at {:?} pixels; look at {} and {}, and renew it with RENEW_PICTURES=1",
        differing.len(),
        differing[0],
        kept.display(),
        now.display()
    )
    .into())
}

/// The comparison of six samples.
fn compared(into: &Path) -> Result<std::path::PathBuf, Failed> {
    let folders = COMPARED.map(|name| Path::new("sample-runs").join(name));
    let done = Command::new(env!("CARGO_BIN_EXE_simmerline"))
        .args(["compare", "--quiet", "--allow-mixed", "--out"])
        .arg(into)
        .args(folders)
        .env("SOURCE_DATE_EPOCH", ISSUED_S)
        .output()?;
    if !done.status.success() {
        return Err(String::from_utf8_lossy(&done.stderr).into_owned().into());
    }
    Ok(into.join("comparison.pdf"))
}

/// Corners of the cells whose means differ too much.
fn differing_cells(one: &GrayImage, two: &GrayImage) -> Result<Vec<(u32, u32)>, Failed> {
    if one.dimensions() != two.dimensions() {
        let (one, two) = (one.dimensions(), two.dimensions());
        return Err(format!("the page was {one:?} pixels, and is {two:?}").into());
    }
    let (width, height) = one.dimensions();
    let mean = |image: &GrayImage, left: u32, top: u32| {
        let (right, bottom) = ((left + CELL).min(width), (top + CELL).min(height));
        let pixels = (top..bottom).flat_map(|y| (left..right).map(move |x| (x, y)));
        let values = pixels.map(|(x, y)| f64::from(image.get_pixel(x, y).0[0]));
        let count = f64::from((right - left) * (bottom - top));
        values.sum::<f64>() / count
    };
    let columns = (0..width).step_by(CELL as usize);
    let cells = columns.flat_map(|x| (0..height).step_by(CELL as usize).map(move |y| (x, y)));
    let differs =
        |&(x, y): &(u32, u32)| (mean(one, x, y) - mean(two, x, y)).abs() > MOST_DIFFERENCE;
    Ok(cells.filter(differs).collect())
}
