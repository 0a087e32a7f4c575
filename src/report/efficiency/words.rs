//! Energy and exergy in words.

use super::peak::FILE;
use crate::language::{Words, celsius, fixed, kelvins, range};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::efficiency::Efficiency;
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::procedure_part::{ProcedurePart, row, said, spread};
use crate::report::rows::Figure;

/// The section on energy and exergy; `None` where there is none.
pub fn efficiency_part(
    assessment: &Assessment,
    stated: &[Stated],
    words: &Words,
) -> Option<ProcedurePart> {
    use FigureKey::{Energy, Exergy, PeakExergy, QualityFactor};
    let found = assessment.efficiency.as_ref()?;
    let is_ours = |key: FigureKey| matches!(key, Energy | Exergy | PeakExergy | QualityFactor);
    let ours = stated.iter().filter(|one| is_ours(one.key));
    let mut rests_on = vec![words.say(message!(
        "efficiency-rests-on",
        intervals = found.steps.len(),
        range = celsius(range(found.water_c.lower, found.water_c.upper, 0)),
        irradiance = fixed(found.mean_irradiance_w_m2, 0)
    ))];
    if let Ok(peak) = &found.peak {
        rests_on.push(words.say(message!(
            "efficiency-peak-at",
            difference = kelvins(fixed(peak.difference_k, 0)),
            irradiance = fixed(found.mean_irradiance_w_m2, 0)
        )));
    }
    Some(ProcedurePart {
        what: words.say(message!("efficiency-what")),
        spread: words.say(spread(found.energy.is_of_one_day)),
        rows: ours.map(|one| row(one, words)).collect(),
        rests_on,
        table: None,
        figure: Some(figure(found, words)),
        findings: said(&found.findings, |code| code.code(), words),
        source: words.say(message!("efficiency-source")),
    })
}

fn figure(found: &Efficiency, words: &Words) -> Figure {
    Figure {
        file: FILE.to_owned(),
        caption: words.say(if found.peak.is_ok() {
            message!("efficiency-caption")
        } else {
            message!("efficiency-caption-no-peak")
        }),
        alt: words.say(message!("efficiency-alt", intervals = found.steps.len())),
    }
}
