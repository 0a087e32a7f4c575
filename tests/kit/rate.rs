//! From files that a test writes to what the library makes of them.

use simmerline::error::Result;
use simmerline::procedure::Assessment;

use super::files::write;
use super::samples::{sample_folder, sample_names};

/// Rates a campaign file with its logs; the folder that they stand in is gone afterwards.
pub fn rate(campaign: &str, logs: &[(&str, &str)]) -> Result<Assessment> {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path(), "campaign.toml", campaign);
    for (name, log) in logs {
        write(folder.path(), name, log);
    }
    simmerline::assess_folder(folder.path())
}

/// What the library makes of a sample campaign.
pub fn sample(name: &str) -> Assessment {
    simmerline::assess_folder(&sample_folder(name)).unwrap()
}

/// Every sample campaign, with its name.
pub fn samples() -> Vec<(String, Assessment)> {
    let names = sample_names().into_iter();
    let rated = names.map(|name| {
        let assessment = sample(&name);
        (name, assessment)
    });
    rated.collect()
}

/// Those that heat water, and so have a rating.
pub fn samples_with_water() -> Vec<(String, Assessment)> {
    let samples = samples().into_iter();
    let heated = samples.filter(|(_, assessment)| !assessment.tested.runs.is_empty());
    heated.collect()
}
