//! What other people's tools say of our files. A tool that is not there has its tests
//! listed as ignored; `.ci/run` installs all of them.
//!
//! qpdf, poppler-utils and Chromium are Debian's packages of these names; `frictionless` is
//! the reference library of Frictionless Data, from PyPI; so are pymupdf, pypdfium2, pikepdf and
//! pypdf, which read, save and change PDFs in `readers/readers.py`. `same` needs a C
//! compiler and util-linux.

mod browser;
mod engines;
mod pictures;
mod readers;
mod same;

#[path = "../kit"]
mod kit {
    pub mod samples;
}

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};
use std::sync::Arc;

use libtest_mimic::{Arguments, Failed, Trial};
use tempfile::TempDir;

use kit::samples::{sample_folder, sample_names};

/// Time of issue, so that a failing file can be made again.
const ISSUED_S: &str = "1795600000";
/// Python with the libraries of `tests/data/frictionless_check.py`, made by `.ci/run`.
const PYTHON: &str = "target/outside/bin/python";

fn main() -> ExitCode {
    let arguments = Arguments::from_args();
    let made = Arc::new(Made::new());
    let mut trials = Vec::new();
    for name in &made.names {
        for (tool, check) in CHECKS {
            let (made, name) = (Arc::clone(&made), name.clone());
            let trial = Trial::test(format!("{tool}_accepts_{name}"), move || {
                check(&made, &name)
            });
            trials.push(trial.with_ignored_flag(!is_there(tool)));
        }
    }
    let is_python_there = Path::new(PYTHON).is_file();
    let are_readers_there = is_python_there && is_there("pdftoppm") && readers::are_there();
    for (name, check) in READERS {
        let made = Arc::clone(&made);
        let trial = Trial::test(name, move || check(&made));
        trials.push(trial.with_ignored_flag(!are_readers_there));
    }
    let trial = Trial::test("frictionless_accepts_the_data_package", {
        let made = Arc::clone(&made);
        move || tables(&made)
    });
    trials.push(trial.with_ignored_flag(!is_python_there));
    trials.extend(browser::trials(&made));
    trials.extend(pictures::trials(&made));
    trials.extend(same::trials(&made));
    trials.extend(engines::trials());
    let conclusion = libtest_mimic::run(&arguments, trials);
    conclusion.exit_code()
}

/// A check of one sample's files, with the program that it runs.
type Check = fn(&Made, &str) -> Result<(), Failed>;

const CHECKS: [(&str, Check); 4] = [
    ("qpdf", qpdf),
    ("pdfinfo", pdfinfo),
    ("pdfdetach", pdfdetach),
    ("chromium", browser::chromium),
];

type CheckOfReaders = fn(&Made) -> Result<(), Failed>;

/// Checks that need readers of PDF.
const READERS: [(&str, CheckOfReaders); 2] = [
    (
        "a_report_saved_again_has_the_same_content",
        readers::saved_again,
    ),
    ("no_change_that_a_reader_shows_passes", readers::changed),
];

/// The outputs of all samples.
struct Made {
    folder: TempDir,
    names: Vec<String>,
}

impl Made {
    fn new() -> Self {
        let folder = TempDir::new().expect("a folder for the outputs");
        let mut command = Command::new(env!("CARGO_BIN_EXE_simmerline"));
        let status = report_samples(&mut command, folder.path())
            .status()
            .expect("simmerline runs");
        assert!(status.success());
        let names = sample_names();
        Made { folder, names }
    }

    fn outputs(&self) -> &Path {
        self.folder.path()
    }

    fn path(&self, name: &str, ending: &str) -> PathBuf {
        self.folder.path().join(format!("{name}.{ending}"))
    }
}

/// Has the command write the outputs of all samples into a folder.
fn report_samples<'c>(command: &'c mut Command, into: &Path) -> &'c mut Command {
    command
        .args(["report", "sample-runs", "--quiet"])
        .args(["--format", "pdf,html,parquet", "--out"])
        .arg(into)
        .env("SOURCE_DATE_EPOCH", ISSUED_S)
}

fn is_there(tool: &str) -> bool {
    let path = std::env::var_os("PATH").unwrap_or_default();
    std::env::split_paths(&path).any(|folder| folder.join(tool).is_file())
}

/// What a program prints; an error with all of it unless it exits with 0.
fn output(program: &str, arguments: &[&OsStr]) -> Result<String, Failed> {
    let done = Command::new(program).args(arguments).output()?;
    let said = String::from_utf8_lossy(&done.stdout).into_owned();
    if done.status.success() {
        return Ok(said);
    }
    let complaint = String::from_utf8_lossy(&done.stderr);
    Err(format!("{program} {}: {said}{complaint}", done.status).into())
}

fn holds(text: &str, expected: &str) -> Result<(), Failed> {
    if text.contains(expected) {
        Ok(())
    } else {
        Err(format!("no \"{expected}\" in: {text}").into())
    }
}

fn qpdf(made: &Made, name: &str) -> Result<(), Failed> {
    let pdf = made.path(name, "pdf");
    let said = output("qpdf", &["--check".as_ref(), pdf.as_ref()])?;
    holds(&said, "No syntax or stream encoding errors found")
}

fn pdfinfo(made: &Made, name: &str) -> Result<(), Failed> {
    let pdf = made.path(name, "pdf");
    let said = output("pdfinfo", &[pdf.as_ref()])?;
    let squeezed = said.split_whitespace().collect::<Vec<_>>().join(" ");
    for expected in ["Tagged: yes", "Encrypted: no", "JavaScript: no", "(A4)"] {
        holds(&squeezed, expected)?;
    }
    Ok(())
}

/// The tables are what their descriptions and the CSV files say.
fn tables(made: &Made) -> Result<(), Failed> {
    let script = Path::new("tests/data/frictionless_check.py");
    output(PYTHON, &[script.as_ref(), made.folder.path().as_ref()]).map(|_| ())
}

/// Every attachment comes out as it went in.
fn pdfdetach(made: &Made, name: &str) -> Result<(), Failed> {
    let pdf = made.path(name, "pdf");
    let list = output("pdfdetach", &["-list".as_ref(), pdf.as_ref()])?;
    let inputs = sample_folder(name);
    // The outputs stay as they were made: another check holds them against others.
    let folder = TempDir::new()?;
    for (attachment, original) in [
        ("campaign.toml".to_owned(), inputs.join("campaign.toml")),
        (
            format!("{name}.rating.json"),
            made.path(name, "rating.json"),
        ),
        (
            format!("{name}.intervals.csv"),
            made.path(name, "intervals.csv"),
        ),
    ] {
        holds(&list, &attachment)?;
        let detached = folder.path().join(&attachment);
        let arguments: [&OsStr; 5] = [
            "-savefile".as_ref(),
            attachment.as_ref(),
            "-o".as_ref(),
            detached.as_ref(),
            pdf.as_ref(),
        ];
        output("pdfdetach", &arguments)?;
        if fs::read(&detached)? != fs::read(&original)? {
            return Err(format!("{attachment} is not what went in").into());
        }
    }
    Ok(())
}
