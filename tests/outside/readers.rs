//! Five readers against `verify`: whatever one of them shows otherwise must not pass.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use libtest_mimic::Failed;
use tempfile::TempDir;

use super::{Made, PYTHON, output};

const SCRIPT: &str = "tests/outside/readers/readers.py";
/// Report that is saved again and changed.
const SAMPLE: &str = "open-dish";
/// How many changed copies are tried, unless the environment says otherwise.
const MUTANTS: usize = 60;
const MUTANTS_VARIABLE: &str = "SIMMERLINE_MUTANTS";
const SEED_VARIABLE: &str = "SIMMERLINE_SEED";

/// Whether Python has the readers.
pub fn are_there() -> bool {
    let libraries = "import pymupdf, pypdfium2, pikepdf, pypdf";
    let tried = Command::new(PYTHON).args(["-c", libraries]).output();
    tried.is_ok_and(|done| done.status.success())
}

fn run(command: &str, source: &Path, rest: &[&OsStr]) -> Result<String, Failed> {
    let arguments = [SCRIPT.as_ref(), command.as_ref(), source.as_os_str()];
    output(PYTHON, &[&arguments[..], rest].concat())
}

fn pdfs(folder: &Path) -> Result<Vec<PathBuf>, Failed> {
    let files = fs::read_dir(folder)?.map(|entry| Ok(entry?.path()));
    let mut files = files.collect::<Result<Vec<PathBuf>, Failed>>()?;
    files.sort();
    Ok(files)
}

/// What `verify` says of each file.
fn verdicts(files: &[PathBuf]) -> Result<Vec<String>, Failed> {
    let mut verdicts = Vec::new();
    for part in files.chunks(100) {
        let done = Command::new(env!("CARGO_BIN_EXE_simmerline"))
            .args(["verify", "--format", "json"])
            .args(part)
            .output()?;
        let said: serde_json::Value = serde_json::from_slice(&done.stdout)?;
        let reports = said["reports"].as_array().ok_or("no reports")?;
        let words = reports
            .iter()
            .map(|report| report["verdict"].as_str().unwrap_or_default());
        verdicts.extend(words.map(str::to_owned));
    }
    Ok(verdicts)
}

/// Each of several programs saves the report again: another file, the same content.
pub fn saved_again(made: &Made) -> Result<(), Failed> {
    let folder = TempDir::new()?;
    let source = made.path(SAMPLE, "pdf");
    run("resave", &source, &[folder.path().as_ref()])?;
    let files = pdfs(folder.path())?;
    assert!(files.len() >= 8, "{files:?}");
    for (file, verdict) in files.iter().zip(verdicts(&files)?) {
        if verdict != "same-content" {
            return Err(format!("{}: {verdict}", file.display()).into());
        }
    }
    let files: Vec<&OsStr> = files.iter().map(|file| file.as_os_str()).collect();
    run("same", &source, &files).map(drop)
}

/// Copies with something changed: those that `verify` passes show nothing else in any reader.
pub fn changed(made: &Made) -> Result<(), Failed> {
    let number = |name: &str, otherwise: usize| {
        let stated = std::env::var(name)
            .ok()
            .and_then(|stated| stated.parse().ok());
        stated.unwrap_or(otherwise)
    };
    let (count, seed) = (number(MUTANTS_VARIABLE, MUTANTS), number(SEED_VARIABLE, 1));
    let folder = TempDir::new()?;
    let source = made.path(SAMPLE, "pdf");
    let arguments = [count.to_string(), seed.to_string()];
    let arguments: Vec<&OsStr> = [folder.path().as_os_str()]
        .into_iter()
        .chain(arguments.iter().map(OsStr::new))
        .collect();
    run("mutate", &source, &arguments)?;
    let files = pdfs(folder.path())?;
    let verdicts = verdicts(&files)?;
    assert!(
        verdicts.iter().all(|verdict| verdict != "issued"),
        "{verdicts:?}"
    );
    let passed = files
        .iter()
        .zip(&verdicts)
        .filter(|(_, verdict)| *verdict == "same-content");
    let passed: Vec<&OsStr> = passed.map(|(file, _)| file.as_os_str()).collect();
    println!(
        "{} of {count} changed copies pass as the same content",
        passed.len()
    );
    run("same", &source, &passed).map(drop)
}
