//! One target: samples, damage, and what has to hold of whatever comes out.

use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;
use proptest::test_runner::{RngSeed, TestError, TestRunner};
use simmerline::error::{Error, Result};
use simmerline::hash::sha256_hex;

use crate::damage::{Damage, damage};
use crate::limits::within_limits;

/// Cases of a target where `FUZZ_CASES` does not say how many.
const FEW: u32 = 400;
/// Most damages at once.
const MOST: usize = 6;

/// A sound input in its parts, as the files of a spreadsheet or the objects of a PDF. One
/// part is all there is of a text.
#[derive(Debug, Clone)]
pub struct Sample {
    pub name: String,
    pub parts: Vec<Part>,
}

#[derive(Debug, Clone)]
pub struct Part {
    pub name: String,
    pub bytes: Vec<u8>,
}

impl Sample {
    /// A sample of one part.
    pub fn whole(name: impl Into<String>, bytes: impl Into<Vec<u8>>) -> Self {
        let name = name.into();
        let part = Part {
            name: name.clone(),
            bytes: bytes.into(),
        };
        Sample {
            name,
            parts: vec![part],
        }
    }
}

/// A parser, and what it reads.
pub struct Target<J, P> {
    /// Of its folder in the corpus.
    pub name: &'static str,
    pub samples: Vec<Sample>,
    /// What reading may take in any case, bytes.
    pub always: usize,
    /// Puts damaged parts together.
    pub join: J,
    /// Reads bytes; the index is that of the sample that they were.
    pub parse: P,
}

fn from_environment<N: std::str::FromStr>(name: &str, otherwise: N) -> N {
    match std::env::var(name) {
        Ok(text) => match text.parse() {
            Ok(number) => number,
            Err(_) => panic!("{name}: found {text:?}, expected a number"),
        },
        Err(_) => otherwise,
    }
}

impl<J, P> Target<J, P>
where
    J: Fn(&[Part]) -> Vec<u8>,
    P: Fn(usize, &[u8]) -> Result<()>,
{
    /// All of it: the samples are sound, the corpus and damaged samples do no harm.
    pub fn run(&self) {
        for (index, sample) in self.samples.iter().enumerate() {
            let bytes = (self.join)(&sample.parts);
            if let Err(error) = (self.parse)(index, &bytes) {
                panic!("{} is not sound: {error}", sample.name);
            }
            if let Err(reason) = self.harmless(index, &bytes) {
                panic!("{}: {reason}", sample.name);
            }
        }
        self.replay();
        let config = ProptestConfig {
            cases: from_environment("FUZZ_CASES", FEW),
            rng_seed: RngSeed::Fixed(from_environment("FUZZ_SEED", 20_261_128)),
            failure_persistence: None,
            max_shrink_iters: 4000,
            ..ProptestConfig::default()
        };
        // Some damage hits a part, some the whole.
        let of_part = vec((any::<Index>(), damage()), 0..=MOST);
        let of_whole = prop_oneof![3 => Just(Vec::new()), 1 => vec(damage(), 1..=2)];
        let cases = (0..self.samples.len(), of_part, of_whole);
        let outcome = TestRunner::new(config).run(&cases, |(sample, of_part, of_whole)| {
            let bytes = self.damaged(sample, &of_part, &of_whole);
            self.harmless(sample, &bytes).map_err(TestCaseError::fail)
        });
        match outcome {
            Ok(()) => {}
            Err(TestError::Fail(reason, (sample, of_part, of_whole))) => {
                let bytes = self.damaged(sample, &of_part, &of_whole);
                let kept = self.keep(sample, &bytes);
                panic!("{}: {reason}; the input: {}", self.name, kept.display());
            }
            Err(TestError::Abort(reason)) => panic!("{}: {reason}", self.name),
        }
    }

    /// What once was found; a file's name ends with that of the sample that it came from.
    fn replay(&self) {
        let folder = Path::new("tests/fuzz/corpus").join(self.name);
        if !folder.is_dir() {
            return;
        }
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            let name = path.file_stem().unwrap().to_string_lossy().into_owned();
            let is_of = |sample: &Sample| name.ends_with(&sample.name);
            let sample = self.samples.iter().position(is_of);
            let sample = sample.unwrap_or_else(|| panic!("{name}: of which sample?"));
            if let Err(reason) = self.harmless(sample, &fs::read(&path).unwrap()) {
                panic!("{}: {reason}", path.display());
            }
        }
    }

    fn damaged(&self, sample: usize, of_part: &[(Index, Damage)], of_whole: &[Damage]) -> Vec<u8> {
        let mut parts = self.samples[sample].parts.clone();
        for (which, damage) in of_part {
            let part = &mut parts[which.index(self.samples[sample].parts.len())];
            part.bytes = damage.apply(std::mem::take(&mut part.bytes));
        }
        let whole = (self.join)(&parts);
        of_whole
            .iter()
            .fold(whole, |whole, damage| damage.apply(whole))
    }

    /// Reads bytes within limits; an error is one of the input's, and says something.
    fn harmless(&self, sample: usize, bytes: &[u8]) -> std::result::Result<(), String> {
        let parsed = within_limits(self.always, bytes.len(), || {
            catch_unwind(AssertUnwindSafe(|| (self.parse)(sample, bytes)))
        })?;
        match parsed {
            Ok(Ok(())) => Ok(()),
            Ok(Err(error @ Error::Internal(_))) => Err(error.to_string()),
            Ok(Err(error)) if error.to_string().is_empty() => Err("an empty error".to_owned()),
            Ok(Err(_)) => Ok(()),
            Err(_) => Err("a panic, told above".to_owned()),
        }
    }

    /// Writes an input down; where to.
    fn keep(&self, sample: usize, bytes: &[u8]) -> PathBuf {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(self.name);
        fs::create_dir_all(&folder).unwrap();
        let hash = &sha256_hex(bytes)[..8];
        let path = folder.join(format!("{hash}-{}", self.samples[sample].name));
        fs::write(&path, bytes).unwrap();
        path
    }
}
