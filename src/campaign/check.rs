//! From the campaign file as written to a [`Campaign`] that can be trusted.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use jiff::tz::TimeZone;

use super::check_cooker::check_cooker;
use super::check_instruments::check_instruments;
use super::check_load::check_load;
use super::check_logs::{check_calibrations, check_rules, check_weather};
use super::check_meaning::{check_impact, check_stagnations, check_wishes};
use super::check_report::check_report;
use super::check_runs::{Purpose, RunBase, check_runs, need_water};
use super::find::{CAMPAIGN_FILE, campaign_name, check_folder_name};
use super::kinds::{ProcedureKey, Procedures};
use super::locate::Checker;
use super::model::{Campaign, GUARD_KEY, IrradianceEstimate, LogRules, OwnLimit, Site, Target};
use super::named_files::{AttachedFile, NamedFiles, Reach};
use super::patterns::spread;
use super::read_text::{ReadText, read_text};
use super::schema::{CampaignFile, CampaignTable, LimitValue, SiteTable};
use super::shared::{attached_shared, find_shared, read_shared};
use super::shared_file::SharedFile;
use super::wording::{nearest, words};
use super::zone::parse_zone;
use crate::believable::{
    ELEVATION_M, LARGEST_TARGET, LARGEST_TARGET_W, LATITUDE_DEG, LINKE_TURBIDITY, LONGITUDE_DEG,
    PRESSURE_HPA,
};
use crate::bounds::{NAME, NOTES, REPORT_NUMBER};
use crate::error::Result;
use crate::language::UnitSystem;

/// The test practice that campaigns are rated by.
pub const PROCEDURE: &str = "S580.1";

/// Notes what is wrong with a campaign's own limits. Which limits there are is the
/// procedure's to say, so the check comes from there.
pub type LimitCheck = fn(&mut Checker<'_>, &[OwnLimit]);

/// Reads and checks the campaign file of a folder, its own limits by `check_limits`.
///
/// # Errors
/// [`crate::error::Error::Campaign`] with the line and a remedy for everything that is wrong:
/// syntax, unknown or missing keys, values out of sense, files that are not there or that
/// `reach` does not allow; [`crate::error::Error::Usage`] for a folder whose name cannot be printed.
pub fn read_campaign(folder: &Path, reach: Reach, check_limits: LimitCheck) -> Result<Campaign> {
    read_for(&Asked::of_folder(
        folder,
        reach,
        Purpose::Rating,
        check_limits,
    )?)
}

/// The same for somebody who has yet to test: logs that are not there are passed over.
///
/// # Errors
/// As [`read_campaign`].
pub fn read_campaign_to_plan(
    folder: &Path,
    reach: Reach,
    check_limits: LimitCheck,
) -> Result<Campaign> {
    let asked = Asked::of_folder(folder, reach, Purpose::Planning, check_limits)?;
    read_for(&asked)
}

/// The same for a text that is to become the campaign file of a folder.
///
/// # Errors
/// As [`read_campaign`].
pub fn check_new_text(
    folder: &Path,
    text: &str,
    reach: Reach,
    check_limits: LimitCheck,
) -> Result<Campaign> {
    let asked = Asked::of_folder(folder, reach, Purpose::Planning, check_limits)?;
    check_text(&asked, &ReadText::of(text.to_owned()))
}

/// Reads and checks a campaign file that came attached to a report, of the campaign of a
/// name. `files` are the logs and the photo by the names that it gives them, and whether each
/// is stated to lie outside; it is not trusted, and makes no other file be read.
///
/// # Errors
/// As [`read_campaign`].
pub fn read_attached_campaign(
    file: &Path,
    name: &str,
    files: &BTreeMap<String, AttachedFile>,
    check_limits: LimitCheck,
) -> Result<Campaign> {
    read_for(&Asked::attached(
        file,
        name,
        files,
        Purpose::Rating,
        check_limits,
    ))
}

/// The same for a campaign file that came attached to a field sheet: logs that are not
/// attached are passed over.
///
/// # Errors
/// As [`read_campaign`].
pub fn read_attached_campaign_to_plan(
    file: &Path,
    name: &str,
    files: &BTreeMap<String, AttachedFile>,
    check_limits: LimitCheck,
) -> Result<Campaign> {
    read_for(&Asked::attached(
        file,
        name,
        files,
        Purpose::Planning,
        check_limits,
    ))
}

/// Which campaign file is asked for, and how.
struct Asked<'a> {
    file: PathBuf,
    /// Of the campaign.
    name: String,
    files: NamedFiles<'a>,
    purpose: Purpose,
    check_limits: LimitCheck,
}

impl<'a> Asked<'a> {
    fn of_folder(
        folder: &'a Path,
        reach: Reach,
        purpose: Purpose,
        check_limits: LimitCheck,
    ) -> Result<Self> {
        check_folder_name(folder)?;
        Ok(Asked {
            file: folder.join(CAMPAIGN_FILE),
            name: campaign_name(folder),
            files: NamedFiles::From(folder, reach),
            purpose,
            check_limits,
        })
    }

    fn attached(
        file: &Path,
        name: &str,
        files: &'a BTreeMap<String, AttachedFile>,
        purpose: Purpose,
        check_limits: LimitCheck,
    ) -> Self {
        Asked {
            file: file.to_path_buf(),
            name: name.to_owned(),
            files: NamedFiles::Only(files),
            purpose,
            check_limits,
        }
    }
}

fn read_for(asked: &Asked<'_>) -> Result<Campaign> {
    let read = read_text(&asked.file, "campaign file")?;
    check_text(asked, &read)
}

fn check_text(asked: &Asked<'_>, of: &ReadText) -> Result<Campaign> {
    let (file, files, text) = (asked.file.as_path(), asked.files, of.text.as_str());
    let places = match files {
        NamedFiles::From(folder, _) => find_shared(folder)?,
        NamedFiles::Only(attached) => attached_shared(attached),
    };
    let read = read_shared(places)?;
    let mut checker = Checker::new(file, text);
    checker.refuse_too_many()?;
    let shared = add_shared(&mut checker, &read)?;
    let mut written = checker.parse()?;
    let target = check_target(&mut checker, &written.campaign);
    let procedure = check_procedure(&mut checker, &written.campaign);
    checker.refuse_unprintable();
    check_names(&mut checker, &written);
    let procedures = check_procedures(&mut checker, &written.campaign);
    let has_stagnation = !written.stagnation.is_empty();
    let needs_water = need_water(&written.run, has_stagnation);
    let must_match = asked.purpose == Purpose::Rating;
    let written_runs = spread(&mut checker, files, &mut written, must_match);
    let load = check_load(&mut checker, &written.load, needs_water);
    let (limits, has_guard_band) = check_limit_values(&mut checker, written.limits);
    (asked.check_limits)(&mut checker, &limits);
    let site = check_site(&mut checker, written.site);
    let rules = check_rules(
        &mut checker,
        "",
        &LogRules::default(),
        written.columns,
        &written.units,
        written.format,
    );
    let base = RunBase {
        files,
        weather: check_weather(&mut checker, &rules, written.weather),
        rules,
        load: &load,
        purpose: asked.purpose,
        has_stagnation,
    };
    let runs = check_runs(&mut checker, &base, written_runs);
    let calibrations = check_calibrations(&mut checker, written.calibration);
    let mut campaign = Campaign {
        name: asked.name.clone(),
        file: file.to_path_buf(),
        text: text.to_owned(),
        sha256: of.sha256.clone(),
        bytes: of.bytes,
        shared,
        title: written.campaign.title,
        demonstration: written.campaign.demonstration,
        procedure,
        procedures,
        tester: written.campaign.tester,
        client: written.campaign.client,
        report_number: written.campaign.report_number,
        notes: written.campaign.notes,
        report: check_report(&mut checker, written.report),
        target,
        cooker: check_cooker(&mut checker, files, written.cooker),
        site,
        water_kg: load.water_kg,
        vessels: load.vessels,
        vessel_heat: load.vessel_heat,
        instruments: check_instruments(&mut checker, written.instruments),
        calibrations,
        rules: base.rules.clone(),
        limits,
        has_guard_band,
        runs,
        stagnations: check_stagnations(&mut checker, written.stagnation),
        wishes: check_wishes(&mut checker, written.cooking),
        impact: check_impact(&mut checker, written.impact),
        outside: BTreeSet::new(),
    };
    let named = campaign.named_files().filter(|name| files.is_outside(name));
    campaign.outside = named.map(str::to_owned).collect();
    check_cloudless(&mut checker, &campaign);
    checker.finish(campaign)
}

/// What files of shared keys give to a campaign that is yet to be written.
pub struct Given {
    /// The nearest first, with the keys that hold.
    pub shared: Vec<SharedFile>,
    /// How logs are read there.
    pub rules: LogRules,
    /// UTC where no site is given.
    pub time_zone: TimeZone,
    pub units: UnitSystem,
}

/// What the files of shared keys give to a campaign that is yet to be written into a folder.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for what is wrong with one of them.
pub fn given_to_new(folder: &Path) -> Result<Given> {
    let read = read_shared(find_shared(folder)?)?;
    let file = folder.join(CAMPAIGN_FILE);
    let mut checker = Checker::new(&file, "");
    let shared = add_shared(&mut checker, &read)?;
    let written = checker.parse_with_stand_ins()?;
    let (columns, units, format) = (written.columns, &written.units, written.format);
    let rules = check_rules(
        &mut checker,
        "",
        &LogRules::default(),
        columns,
        units,
        format,
    );
    let time_zone = check_site(&mut checker, written.site).time_zone;
    let units = check_report(&mut checker, written.report).units;
    checker.finish(Given {
        shared,
        rules,
        time_zone,
        units,
    })
}

/// Takes in files of shared keys, the nearest first; the same with the keys that hold.
fn add_shared<'t>(checker: &mut Checker<'t>, read: &'t [SharedFile]) -> Result<Vec<SharedFile>> {
    let shared = read.iter().map(|one| {
        Ok(SharedFile {
            holding: checker.add_shared(&one.path, &one.text)?,
            ..one.clone()
        })
    });
    shared.collect()
}

/// The own limits, and whether a guard band is asked for.
fn check_limit_values(
    checker: &mut Checker<'_>,
    written: BTreeMap<String, LimitValue>,
) -> (Vec<OwnLimit>, bool) {
    let (mut limits, mut has_guard_band) = (Vec::new(), false);
    for (key, value) in written {
        match value {
            LimitValue::Switch(is_on) if key == GUARD_KEY => has_guard_band = is_on,
            LimitValue::Number(found) if key == GUARD_KEY => checker.problem(
                &format!("limits.{key}"),
                format!("found {found}, expected true or false"),
                "write guard = true, or delete the key",
            ),
            LimitValue::Number(value) => limits.push(OwnLimit { key, value }),
            LimitValue::Switch(found) => checker.problem(
                &format!("limits.{key}"),
                format!("found {found}, expected a number"),
                "write the limit in the unit that its key names",
            ),
        }
    }
    (limits, has_guard_band)
}

/// The procedure, of which there is one.
fn check_procedure(checker: &mut Checker<'_>, written: &CampaignTable) -> String {
    let procedure = written.procedure.as_deref().unwrap_or(PROCEDURE);
    if procedure != PROCEDURE {
        checker.problem(
            "campaign.procedure",
            format!("found \"{procedure}\", expected \"{PROCEDURE}\""),
            format!("leave the key out: {PROCEDURE} is the only procedure there is so far"),
        );
    }
    procedure.to_owned()
}

/// The procedures that are asked for by name.
fn check_procedures(checker: &mut Checker<'_>, written: &CampaignTable) -> Procedures {
    const KEY: &str = "campaign.procedures";
    let Some(named) = &written.procedures else {
        return Procedures(None);
    };
    let mut found = Vec::new();
    for word in named {
        let known = ProcedureKey::ALL.into_iter();
        match known.clone().find(|key| key.word() == word) {
            Some(key) => found.push(key),
            None => {
                let near = nearest(word, known.map(ProcedureKey::word));
                let near =
                    near.map_or_else(String::new, |near| format!("did you mean \"{near}\"? "));
                checker.problem(
                    KEY,
                    format!(
                        "found \"{word}\", expected one of {}",
                        words(ProcedureKey::ALL.map(ProcedureKey::word))
                    ),
                    format!("{near}leave the key out to get every result that the data allow"),
                );
            }
        }
    }
    if !found.contains(&ProcedureKey::S580) {
        checker.problem(
            KEY,
            "\"s580\" is not among them",
            "add it: page one, and the intervals that the others rest on, are those of the standard",
        );
    }
    Procedures(Some(found))
}

/// Texts that have their place on the first page.
fn check_names(checker: &mut Checker<'_>, written: &CampaignFile) {
    checker.text("campaign.title", &written.campaign.title, &NAME);
    checker.text("cooker.name", &written.cooker.name, &NAME);
    checker.text("site.name", &written.site.name, &NAME);
    for (key, text) in [
        ("campaign.tester", &written.campaign.tester),
        ("campaign.client", &written.campaign.client),
    ] {
        if let Some(text) = text {
            checker.text(key, text, &NAME);
        }
    }
    checker.length("campaign.notes", written.campaign.notes.as_deref(), &NOTES);
    if let Some(number) = &written.campaign.report_number {
        checker.text("campaign.report_number", number, &REPORT_NUMBER);
    }
}

/// Spans stated cloudless serve the clear-sky model alone.
fn check_cloudless(checker: &mut Checker<'_>, campaign: &Campaign) {
    let is_used = campaign.instruments.irradiance_estimate == Some(IrradianceEstimate::ClearSky);
    let mut told = None;
    for run in &campaign.runs {
        // Those of one pattern are written once.
        if !is_used && !run.cloudless.is_empty() && told.replace(run.number) != Some(run.number) {
            checker.problem(
                &format!("run.{}.cloudless", run.number),
                "nothing makes use of a cloudless span here",
                "write estimate = \"clear-sky\" under [instruments.irradiance], or delete the span",
            );
        }
    }
}

/// The expanded uncertainty aimed at: in watts or as a fraction, not both.
fn check_target(checker: &mut Checker<'_>, written: &CampaignTable) -> Option<Target> {
    const WATTS: &str = "campaign.target_uncertainty_w";
    const FRACTION: &str = "campaign.target_relative_uncertainty";
    match (
        written.target_uncertainty_w,
        written.target_relative_uncertainty,
    ) {
        (Some(_), Some(_)) => {
            checker.problem(
                WATTS,
                "both target_uncertainty_w and target_relative_uncertainty are given, expected one",
                "keep the one you care for and delete the other",
            );
            None
        }
        (Some(watts), None) => checker
            .positive(WATTS, watts, LARGEST_TARGET_W, "W")
            .then_some(Target::Watts(watts)),
        (None, Some(fraction)) => checker
            .positive(
                FRACTION,
                fraction,
                LARGEST_TARGET,
                "as a fraction (0.05 is 5 %)",
            )
            .then_some(Target::Fraction(fraction)),
        (None, None) => None,
    }
}

fn check_site(checker: &mut Checker<'_>, written: SiteTable) -> Site {
    checker.in_range(
        "site.latitude_deg",
        written.latitude_deg,
        &LATITUDE_DEG,
        "degrees, north positive",
    );
    checker.in_range(
        "site.longitude_deg",
        written.longitude_deg,
        &LONGITUDE_DEG,
        "degrees, east positive",
    );
    checker.in_range("site.elevation_m", written.elevation_m, &ELEVATION_M, "m");
    if let Some(pressure_hpa) = written.pressure_hpa {
        checker.in_range(
            "site.pressure_hpa",
            pressure_hpa,
            &PRESSURE_HPA,
            "hPa (station pressure, not reduced to sea level)",
        );
    }
    if let Some(turbidity) = written.linke_turbidity {
        let unit = "(2 is mountain air, 3 clear, 5 to 7 hazy or dusty)";
        checker.in_range("site.linke_turbidity", turbidity, &LINKE_TURBIDITY, unit);
    }
    let time_zone = parse_zone(&written.time_zone);
    if time_zone.is_none() {
        // A zone with digits is an attempt at an offset; the nearest name would mislead.
        let has_digits = written.time_zone.contains(|c: char| c.is_ascii_digit());
        let known = jiff::tz::db().available().map(|name| name.to_string());
        let near: Vec<String> = known.filter(|_| !has_digits).collect();
        let near = nearest(&written.time_zone, near.iter().map(String::as_str))
            .map_or_else(String::new, |near| format!("did you mean \"{near}\"? "));
        checker.problem(
            "site.time_zone",
            format!(
                "found \"{}\", expected an IANA zone or a fixed offset",
                written.time_zone
            ),
            format!(
                "{near}write a name such as \"Africa/Nairobi\", or an offset such as \"-05:00\""
            ),
        );
    }
    Site {
        name: written.name,
        latitude_deg: written.latitude_deg,
        longitude_deg: written.longitude_deg,
        elevation_m: written.elevation_m,
        pressure_hpa: written.pressure_hpa,
        linke_turbidity: written.linke_turbidity,
        time_zone: time_zone.unwrap_or(TimeZone::UTC),
        time_zone_name: written.time_zone,
    }
}
