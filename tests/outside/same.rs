//! The same inputs give the same bytes on another computer: with another mathematical
//! library, one processor, and other numbers of threads. The files of all samples are held
//! against those of `Made`.

use std::fs;
use std::path::Path;
use std::process::Command;
use std::sync::Arc;

use libtest_mimic::{Failed, Trial};
use tempfile::TempDir;

use crate::{Made, is_there, report_samples};

/// A mathematical library that is off by one unit in the last place.
const OFF_BY_ONE: &str = "tests/data/off_by_one.c";

pub fn trials(made: &Arc<Made>) -> Vec<Trial> {
    let trial = |name: &str, tools: &[&str], check: fn(&Made) -> Result<(), Failed>| {
        let made = Arc::clone(made);
        let there = cfg!(target_os = "linux") && tools.iter().all(|tool| is_there(tool));
        Trial::test(name, move || check(&made)).with_ignored_flag(!there)
    };
    vec![
        trial("same_with_another_libm", &["cc"], another_library),
        trial("same_on_one_processor", &["taskset"], one_processor),
        trial("same_with_one_thread", &[], |made| threads(made, "1")),
        trial("same_with_five_threads", &[], |made| threads(made, "5")),
    ]
}

/// The library is loaded, as the file says that it writes, and off, as a program of C sees.
fn another_library(made: &Made) -> Result<(), Failed> {
    let folder = TempDir::new()?;
    let path = |name: &str| folder.path().join(name);
    let (library, witness, asked) = (path("off.so"), path("witness"), path("asked"));
    run(Command::new("cc")
        .args(["-O1", "-fno-builtin", "-shared", "-fPIC", "-o"])
        .arg(&library)
        .args([OFF_BY_ONE, "-ldl", "-lm"]))?;
    run(Command::new("cc")
        .args(["-O1", "-fno-builtin", "-DWITNESS", "-o"])
        .arg(&witness)
        .args([OFF_BY_ONE, "-lm"]))?;
    let alone = run(&mut Command::new(&witness))?;
    let off = run(Command::new(&witness).env("LD_PRELOAD", &library))?;
    if alone == off {
        return Err(format!("the library changes nothing: {off}").into());
    }
    same(made, |command| {
        command.env("LD_PRELOAD", &library).env("ASKED", &asked)
    })?;
    match fs::read_to_string(&asked)?.as_str() {
        "" => Ok(()),
        functions => Err(format!("asked of the machine's library: {functions}").into()),
    }
}

fn one_processor(made: &Made) -> Result<(), Failed> {
    let into = TempDir::new()?;
    let mut command = Command::new("taskset");
    command.args(["-c", "0", env!("CARGO_BIN_EXE_simmerline")]);
    run(report_samples(&mut command, into.path()))?;
    differences(made, into.path())
}

fn threads(made: &Made, count: &str) -> Result<(), Failed> {
    same(made, |command| {
        command
            .env("RAYON_NUM_THREADS", count)
            .env("POLARS_MAX_THREADS", count)
    })
}

/// The outputs of a changed command are those that were made.
fn same(made: &Made, change: impl Fn(&mut Command) -> &mut Command) -> Result<(), Failed> {
    let into = TempDir::new()?;
    let mut command = Command::new(env!("CARGO_BIN_EXE_simmerline"));
    run(change(report_samples(&mut command, into.path())))?;
    differences(made, into.path())
}

fn differences(made: &Made, into: &Path) -> Result<(), Failed> {
    let names = file_names(made.outputs())?;
    assert!(names.len() > 30, "only {names:?}");
    if file_names(into)? != names {
        return Err("other files".into());
    }
    for name in names {
        if fs::read(made.outputs().join(&name))? != fs::read(into.join(&name))? {
            return Err(format!("{name} differs").into());
        }
    }
    Ok(())
}

/// The names of the outputs, in order.
fn file_names(folder: &Path) -> Result<Vec<String>, Failed> {
    let mut names = Vec::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        match entry.file_type()?.is_dir() {
            true => {
                let below = file_names(&entry.path())?.into_iter();
                names.extend(below.map(|file| format!("{name}/{file}")));
            }
            false => names.push(name),
        }
    }
    names.sort();
    Ok(names)
}

/// What the command prints; an error unless it exits with 0.
fn run(command: &mut Command) -> Result<String, Failed> {
    let done = command.output()?;
    if done.status.success() {
        return Ok(String::from_utf8_lossy(&done.stdout).into_owned());
    }
    let complaint = String::from_utf8_lossy(&done.stderr);
    Err(format!("{command:?}: {}: {complaint}", done.status).into())
}
