//! Programs that people have to spread work over processors and machines: each must leave the
//! bytes that one plain call leaves. GNU parallel and xargs as the help of `units` shows them;
//! Snakemake, a Slurm array and Dask by the files under `templates/engines`. Slurm is not needed:
//! its task numbers are set as Slurm sets them.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use libtest_mimic::{Failed, Trial};
use tempfile::TempDir;

use crate::kit::samples::sample_folder;
use crate::{ISSUED_S, PYTHON, is_there};

/// Campaigns of the tree, by their samples; two have one name.
const TREE: [(&str, &str); 4] = [
    ("kiln/spring/basin", "kitchen-thermometer"),
    ("kiln/autumn/basin", "notebook"),
    ("kiln/dry", "dry-pot"),
    ("panel", "open-dish"),
];
/// Of a call on all, which no engine makes.
const OF_ONE_CALL: &str = "summary.json";

/// A way to report the tree into a folder.
struct Engine {
    name: &'static str,
    /// What has to be there.
    needs: fn() -> bool,
    report: fn(&Bench) -> Result<(), Failed>,
}

const ENGINES: [Engine; 5] = [
    Engine {
        name: "xargs",
        needs: || is_there("xargs"),
        report: |bench| {
            bench.shell(
                "simmerline units programme --folders | xargs -d '\\n' -P 2 -n 1 \
                 simmerline report --root programme --out reports --format pdf,parquet \
                 --jobs 1 --quiet",
            )?;
            bench.collect()
        },
    },
    Engine {
        name: "parallel",
        needs: || is_there("parallel"),
        report: |bench| {
            bench.shell(
                "simmerline units programme --folders | parallel -j 2 \
                 simmerline report {} --root programme --out reports --format pdf,parquet \
                 --jobs 1 --quiet",
            )?;
            bench.collect()
        },
    },
    Engine {
        name: "snakemake",
        needs: || Path::new("target/outside/bin/snakemake").is_file(),
        report: |bench| {
            let file = repository("templates/engines/Snakefile");
            let command = format!(
                "snakemake --snakefile '{file}' --cores 2 --config tree=programme out=reports"
            );
            bench.shell(&command)?;
            // Given again, it finds nothing to do.
            bench.shell(&format!("{command} 2>&1 | grep 'Nothing to be done'"))
        },
    },
    Engine {
        name: "slurm_array",
        needs: || is_there("awk") && is_there("xargs"),
        report: |bench| {
            let script = repository("templates/engines/slurm-array.sh");
            bench.shell(&format!(
                "export SLURM_ARRAY_TASK_COUNT=3 SLURM_ARRAY_TASK_MIN=5 SLURM_CPUS_PER_TASK=1\n\
                 for SLURM_ARRAY_TASK_ID in 7 5 6; do\n\
                 export SLURM_ARRAY_TASK_ID\n'{script}' programme reports\ndone"
            ))?;
            bench.collect()
        },
    },
    Engine {
        name: "dask",
        needs: || has_module("dask.distributed"),
        report: |bench| {
            let script = repository("templates/engines/dask_tasks.py");
            bench.shell(&format!("python '{script}' programme reports"))
        },
    },
];

/// The trials of all engines, and of the queries over what they leave.
pub fn trials() -> Vec<Trial> {
    let engines = ENGINES.into_iter().map(|engine| {
        let name = format!("{}_leaves_the_bytes_of_a_plain_call", engine.name);
        let is_ignored = !(engine.needs)();
        let trial = Trial::test(name, move || leaves_the_same(&engine));
        trial.with_ignored_flag(is_ignored)
    });
    let are_readers_there = has_module("duckdb") && has_module("polars");
    let queries = Trial::test("queries_of_the_manual_agree_with_the_json", queries);
    engines
        .chain([queries.with_ignored_flag(!are_readers_there)])
        .collect()
}

fn leaves_the_same(engine: &Engine) -> Result<(), Failed> {
    let plain = Bench::new()?;
    plain.shell("simmerline report programme --format pdf,parquet --quiet")?;
    let expected = plain.reports()?;
    let bench = Bench::new()?;
    (engine.report)(&bench)?;
    let found = bench.reports()?;
    let expected_names: Vec<&String> = expected.keys().collect();
    let names: Vec<&String> = found.keys().collect();
    if names != expected_names {
        return Err(format!("expected {expected_names:#?}, found {names:#?}").into());
    }
    match expected
        .iter()
        .find(|(name, bytes)| found[*name] != **bytes)
    {
        Some((name, _)) => Err(format!("{name} has other bytes").into()),
        None => Ok(()),
    }
}

/// The manual's queries say what the JSON files say.
fn queries() -> Result<(), Failed> {
    let bench = Bench::new()?;
    bench.shell("simmerline report programme --format parquet --quiet")?;
    let script = repository("tests/data/queries_check.py");
    let manual = repository("templates/manual/many.md");
    bench.shell(&format!("python '{script}' '{manual}'"))
}

/// A tree of campaigns in a folder of its own.
struct Bench(TempDir);

impl Bench {
    fn new() -> Result<Self, Failed> {
        let folder = TempDir::new()?;
        for (place, sample) in TREE {
            let campaign = folder.path().join("programme").join(place);
            fs::create_dir_all(&campaign)?;
            for entry in fs::read_dir(sample_folder(sample))? {
                let path = entry?.path();
                if path.is_file() {
                    fs::copy(&path, campaign.join(path.file_name().unwrap_or_default()))?;
                }
            }
        }
        Ok(Bench(folder))
    }

    /// Runs a script in the folder, with the program and Python's tools on the path.
    fn shell(&self, script: &str) -> Result<(), Failed> {
        let program = Path::new(env!("CARGO_BIN_EXE_simmerline"));
        let own = program.parent().ok_or("the program lies in a folder")?;
        let tools = repository("target/outside/bin");
        let path = std::env::var("PATH")?;
        let output = Command::new("bash")
            .args(["-euo", "pipefail", "-c", script])
            .current_dir(self.0.path())
            .env("PATH", format!("{}:{tools}:{path}", own.display()))
            .env("SOURCE_DATE_EPOCH", ISSUED_S)
            // Tools keep what they remember of a user elsewhere.
            .env("HOME", self.0.path())
            .output()?;
        match output.status.success() {
            true => Ok(()),
            false => Err(format!(
                "{script}\n{}{}",
                String::from_utf8_lossy(&output.stdout),
                String::from_utf8_lossy(&output.stderr)
            )
            .into()),
        }
    }

    fn collect(&self) -> Result<(), Failed> {
        self.shell("simmerline collect reports --out reports --quiet")
    }

    /// Every file of the reports, by its path.
    fn reports(&self) -> Result<BTreeMap<String, Vec<u8>>, Failed> {
        let root = self.0.path().join("reports");
        let mut files = BTreeMap::new();
        list(&root, &root, &mut files)?;
        files.remove(OF_ONE_CALL);
        Ok(files)
    }
}

fn list(root: &Path, folder: &Path, files: &mut BTreeMap<String, Vec<u8>>) -> Result<(), Failed> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            list(root, &path, files)?;
        } else {
            let name = path.strip_prefix(root)?.display().to_string();
            files.insert(name, fs::read(&path)?);
        }
    }
    Ok(())
}

fn repository(path: &str) -> String {
    let path: PathBuf = Path::new(env!("CARGO_MANIFEST_DIR")).join(path);
    path.display().to_string()
}

fn has_module(name: &str) -> bool {
    let mut python = Command::new(PYTHON);
    let asked = python.args(["-c", &format!("import {name}")]).output();
    asked.is_ok_and(|output| output.status.success())
}
