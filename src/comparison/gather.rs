//! What can be compared with what.

use std::path::{Path, PathBuf};

use super::departures::{Departure, TestedAlike, by_departure};
use super::places::distance_km;
use crate::campaign::classes::InstrumentKind;
use crate::campaign::find::{campaign_name, find_each, real_path, refuse_same_names};
use crate::campaign::model::Instruments;
use crate::error::{Error, Problem, Problems, Result};
use crate::language::{Message, Words, clauses, listed};
use crate::logs::Series;
use crate::procedure::dry_vessel::dry_run::dry_errors;
use crate::procedure::sources::CommonError;
use crate::procedure::stated::Stated;
use crate::procedure::{Assessment, Run};
use crate::units::counted;

/// Fewest and most campaigns of a comparison.
pub const COUNT: std::ops::RangeInclusive<usize> = 2..=200;

/// The campaigns to compare: their folders, and reports as PDF, which carry their data.
///
/// # Errors
/// [`Error::Usage`] for fewer than two or more than two hundred, for one named twice, and for
/// two folders of one name.
pub fn campaigns(paths: &[PathBuf]) -> Result<Vec<PathBuf>> {
    let mut problems = Problems::default();
    let mut folders = Vec::new();
    for path in paths {
        match find_each(std::slice::from_ref(path)) {
            _ if is_report(path) => folders.push(path.clone()),
            Ok(found) => folders.extend(found),
            Err(Error::Usage(found)) => problems.extend(found),
            Err(other) => return Err(other),
        }
    }
    if !problems.is_empty() {
        return Err(Error::Usage(problems));
    }
    for (index, folder) in folders.iter().enumerate() {
        let is_same = |other: &PathBuf| real_path(other) == real_path(folder);
        if folders[..index].iter().any(is_same) {
            let problem = Problem::at(folder, "is named twice: a campaign is compared with itself");
            problems.push(problem.hint("name each campaign once"));
        }
    }
    if !problems.is_empty() {
        return Err(Error::Usage(problems));
    }
    if !COUNT.contains(&folders.len()) {
        let what = format!(
            "{} found, a comparison takes {} to {}",
            counted(folders.len(), "campaign"),
            COUNT.start(),
            COUNT.end()
        );
        let place = folders.first().cloned().unwrap_or_default();
        let hint = "name the campaign folders that are to be compared";
        return Err(Error::Usage(Problem::at(&place, what).hint(hint).into()));
    }
    refuse_same_names(&folders, RENAME)?;
    Ok(folders)
}

/// What to do about two campaigns of one name.
const RENAME: &str = "campaigns are told apart by the name of their folder: rename one";

/// Whether a path is a report rather than a folder of campaigns.
pub fn is_report(path: &Path) -> bool {
    let is_pdf = |ending: &std::ffi::OsStr| ending.eq_ignore_ascii_case("pdf");
    path.is_file() && path.extension().is_some_and(is_pdf)
}

/// A campaign's name by its path: that of its folder, or of its report.
fn name_of(path: &Path) -> String {
    let stem = path.file_stem().filter(|_| is_report(path));
    stem.map_or_else(
        || campaign_name(path),
        |stem| stem.to_string_lossy().into_owned(),
    )
}

/// The campaign that `--baseline` names, by its folder's name or its path.
///
/// # Errors
/// [`Error::Usage`] if it is none of those compared.
pub fn baseline(folders: &[PathBuf], named: &Path) -> Result<usize> {
    let is_named = |folder: &PathBuf| {
        name_of(folder).as_str() == named.as_os_str() || real_path(folder) == real_path(named)
    };
    folders.iter().position(is_named).ok_or_else(|| {
        let names: Vec<String> = folders.iter().map(|folder| name_of(folder)).collect();
        let problem = Problem::at(named, "is none of the campaigns compared");
        Error::Usage(
            problem
                .hint(format!("name one of {}", names.join(", ")))
                .into(),
        )
    })
}

/// Refuses campaigns that share no figure with another, and two that rest on the same readings;
/// `stated` are the figures of each.
///
/// # Errors
/// [`Error::Usage`] with each of them.
pub fn refuse_incomparable(campaigns: &[Assessment], stated: &[Vec<Stated>]) -> Result<()> {
    let mut problems = Problems::default();
    let shares = |index: usize| nothing_shared(&campaigns[index], index, stated).is_none();
    let count = (0..campaigns.len()).filter(|index| shares(*index)).count();
    for (index, one) in campaigns.iter().enumerate() {
        // What is impossible is listed beside others, if there is anything to compare.
        let may_stand = one.s580.is_not_valid() && count >= *COUNT.start();
        let problem = nothing_shared(one, index, stated).filter(|_| !may_stand);
        problem
            .into_iter()
            .for_each(|problem| problems.push(problem));
        for other in &campaigns[..index] {
            if one.tested.campaign.name == other.tested.campaign.name {
                let what = format!(
                    "is a second campaign named \"{}\"",
                    other.tested.campaign.name
                );
                problems.push(Problem::at(&one.tested.campaign.file, what).hint(RENAME));
            }
            for id in two_uncertainties(one, other) {
                let what = format!(
                    "states another uncertainty than {} for {id}, which has one id in both",
                    other.tested.campaign.name
                );
                let hint =
                    "an instrument has one uncertainty: state the same in both, or give another id";
                problems.push(Problem::at(&one.tested.campaign.file, what).hint(hint));
            }
            for problem in far_instruments(one, other) {
                problems.push(problem);
            }
            if let Some(run) = common_run(one, other) {
                let what = format!(
                    "holds the readings of \"{}\" that {} holds too",
                    run.plan.label, other.tested.campaign.name
                );
                let hint = "a campaign is compared with itself, or a log was copied into the wrong one: take one of them out";
                problems.push(Problem::at(&one.tested.campaign.file, what).hint(hint));
            }
        }
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(Error::Usage(problems))
    }
}

/// A campaign of which no other states a figure.
fn nothing_shared(one: &Assessment, index: usize, stated: &[Vec<Stated>]) -> Option<Problem> {
    let own = &stated[index];
    let others = stated.iter().enumerate();
    let mut others = others.filter(|(place, _)| *place != index);
    let is_own = |other: &Stated| own.iter().any(|one| one.key == other.key);
    if others.any(|(_, other)| other.iter().any(is_own)) {
        return None;
    }
    let what = if one.s580.is_not_valid() {
        "is not valid: its rating is physically impossible, and no other figure of it can be compared"
    } else if own.is_empty() {
        "has no rating: no line can be fitted through its used intervals, and it states no other figure"
    } else {
        "states no figure that another of the campaigns states"
    };
    let hint = format!(
        "see what is missing with: simmerline check {}; or leave it out of the comparison",
        one.tested.campaign.name
    );
    Some(Problem::at(&one.tested.campaign.file, what).hint(hint))
}

/// Refuses a baseline of which no figure can be compared.
///
/// # Errors
/// [`Error::Usage`] with it.
pub fn refuse_baseline(
    campaigns: &[Assessment],
    stated: &[Vec<Stated>],
    baseline: Option<usize>,
) -> Result<()> {
    let problem = baseline.and_then(|base| nothing_shared(&campaigns[base], base, stated));
    match problem {
        Some(problem) => Err(Error::Usage(problem.into())),
        None => Ok(()),
    }
}

/// Quantities that one instrument measures in both campaigns with two uncertainties.
fn two_uncertainties(one: &Assessment, other: &Assessment) -> Vec<Message> {
    let errors = |one: &Assessment| {
        let uncertainty = one.s580.uncertainty();
        let of_rating = uncertainty.map_or_else(Vec::new, |uncertainty| {
            uncertainty.of_line.fitted.common().cloned().collect()
        });
        let mut errors: Vec<CommonError> = of_rating;
        if !one.tested.dry_runs.is_empty() {
            let dry = dry_errors(&one.tested).into_iter();
            let new = dry.filter(|dry| errors.iter().all(|error| error.source != dry.source));
            let new: Vec<CommonError> = new.collect();
            errors.extend(new);
        }
        errors
    };
    let others = errors(other);
    let is_other = |error: &CommonError| {
        others.iter().any(|other| {
            other.identity == error.identity
                && other.source == error.source
                && other.standard != error.standard
        })
    };
    let errors = errors(one).into_iter().filter(is_other);
    let errors = errors.filter(|error| !error.source.is_scale());
    errors.map(|error| error.source.quantity()).collect()
}

/// Sites further apart than this are not reached with an instrument within a day, km.
/// Common practice, no published source.
const FAR_KM: f64 = 200.0;

/// Instruments of one id that are said to have been at two sites, far apart, on one day.
fn far_instruments(one: &Assessment, other: &Assessment) -> Vec<Problem> {
    let (here, there) = (&one.tested.campaign, &other.tested.campaign);
    let apart_km = distance_km(&here.site, &there.site);
    let mut dates = one.tested.all_runs().map(|run| run.date);
    let common_date = dates.find(|date| {
        let mut others = other.tested.all_runs();
        others.any(|run| run.date == *date)
    });
    let Some(date) = common_date.filter(|_| apart_km > FAR_KM) else {
        return Vec::new();
    };
    let others: Vec<_> = ids(&there.instruments).collect();
    let mut shared: Vec<&String> = ids(&here.instruments)
        .filter(|id| others.contains(id))
        .map(|(_, id)| id)
        .collect();
    shared.dedup();
    let problem = |id: &String| {
        let what = format!(
            "names the instrument id \"{id}\", which {} names too, {apart_km:.0} km away on the same day, {date}",
            there.name
        );
        let hint = "an id stands for one instrument, whose error then cancels: give each its own id, or mend the sites or dates";
        Problem::at(&here.file, what).hint(hint)
    };
    shared.into_iter().map(problem).collect()
}

/// The ids of all instruments that have one, with what they measure: one id of two kinds is
/// two instruments.
fn ids(instruments: &Instruments) -> impl Iterator<Item = (InstrumentKind, &String)> {
    let all = [
        (InstrumentKind::Irradiance, &instruments.irradiance),
        (InstrumentKind::Temperature, &instruments.water_temperature),
        (
            InstrumentKind::Temperature,
            &instruments.ambient_temperature,
        ),
        (
            InstrumentKind::VesselTemperature,
            &instruments.vessel_temperature,
        ),
        (InstrumentKind::Mass, &instruments.water_mass),
    ];
    all.into_iter()
        .filter_map(|(kind, instrument)| Some((kind, instrument.id.as_ref()?)))
}

/// A run of one campaign with the very readings of a run of another.
fn common_run<'a>(one: &'a Assessment, other: &Assessment) -> Option<&'a Run> {
    // A log without that quantity is no log of the same readings.
    let is_same = |one: &Series, other: &Series| {
        !one.value.is_empty() && one.value == other.value && one.time_us == other.time_us
    };
    let is_common = |one: &Run, other: &Run| {
        let vessels = one.readings.vessel_c.as_ref();
        let vessels = vessels.zip(other.readings.vessel_c.as_ref());
        is_same(&one.readings.water_c, &other.readings.water_c)
            || vessels.is_some_and(|(one, other)| is_same(one, other))
    };
    let mut runs = one.tested.all_runs();
    runs.find(|run| other.tested.all_runs().any(|other| is_common(run, other)))
}

/// Refuses campaigns of different procedure or limits.
///
/// # Errors
/// [`Error::Usage`] with those that depart from what most were rated by; those that depart alike
/// are told together.
pub fn refuse_mixed(campaigns: &[Assessment]) -> Result<()> {
    let Some((norm, others)) = by_departure(campaigns) else {
        return Ok(());
    };
    let mut problems = Problems::default();
    for TestedAlike { places, departures } in others {
        let what = format!(
            "{} rated otherwise than {}: {}",
            match places.as_slice() {
                [_] => "is".to_owned(),
                [_, more @ ..] => format!("and {} are", names_of(campaigns, more)),
                [] => continue,
            },
            names_of(campaigns, &norm.places),
            Words::english().say(clauses(departures.iter().map(Departure::in_words_by_key)))
        );
        let hint = "state the same [limits] and procedure in all, or compare them all the same with --allow-mixed, which the report then says";
        let file = &campaigns[places[0]].tested.campaign.file;
        problems.push(Problem::at(file, what).hint(hint));
    }
    Err(Error::Usage(problems))
}

/// Names that a refusal tells, at most.
const TOLD_NAMES: usize = 3;

/// Campaigns by name, the first few where they are many: `box, dish and 4 others`.
fn names_of(campaigns: &[Assessment], places: &[usize]) -> String {
    let name = |place: &usize| campaigns[*place].tested.campaign.name.clone();
    // One more name takes no more room than "1 other".
    let told = match places.len() > TOLD_NAMES + 1 {
        true => TOLD_NAMES,
        false => places.len(),
    };
    let mut parts: Vec<String> = places[..told].iter().map(name).collect();
    if told < places.len() {
        parts.push(format!("{} others", places.len() - told));
    }
    Words::english().say(listed(parts))
}
