//! Keys that campaigns share: whose hold, and where a mistake in them is said to stand.

use std::fs;
use std::path::Path;

use simmerline::bounds::{CAMPAIGN_BYTES, CAMPAIGN_KEYS};
use simmerline::campaign::model::{Campaign, IrradianceEstimate, Plane, Target};
use simmerline::campaign::template::{CAMPAIGN_TEMPLATE, without_shared};
use simmerline::campaign::{Reach, check, inputs_of, read_campaign};
use simmerline::error::Result;
use simmerline::language::UnitSystem;
use simmerline::procedure::s580::limits::fixed_ends;
use simmerline::procedure::s580::own_limits::check_own_limits;
use tempfile::TempDir;

use crate::kit::files::write;
use crate::kit::header::HEADER;
use crate::kit::heating::row_with;

/// What a campaign cannot share, and no more.
const OWN: &str = "\
[campaign]
title = \"Mallee trough (invented)\"
[cooker]
name = \"Mallee trough\"
type = \"concentrating\"
intercept_area_m2 = 1.0
[load]
water_kg = 7.0
[[run]]
log = \"day.csv\"
";

const SITE: &str = "\
[site]
name = \"Nowhere flats (invented)\"
latitude_deg = -20.0
longitude_deg = 14.0
elevation_m = 100
time_zone = \"UTC\"
";

/// The folder `lab/tests/mallee` with a campaign file, and files of shared keys above it.
struct Tree(TempDir);

impl Tree {
    fn new(campaign: &str, shared: &[(&str, &str)]) -> Self {
        let tree = Tree(TempDir::new().unwrap());
        write(&tree.folder(), "campaign.toml", campaign);
        let rows = (0..30).map(|step| row_with(1, step * 120, &format!("{}", 30 + step)));
        let rows: Vec<String> = rows.collect();
        write(
            &tree.folder(),
            "day.csv",
            format!("{HEADER}\n{}\n", rows.join("\n")),
        );
        for (name, text) in shared {
            write(tree.0.path(), name, text);
        }
        tree
    }

    fn folder(&self) -> std::path::PathBuf {
        self.0.path().join("lab/tests/mallee")
    }

    fn read(&self) -> Result<Campaign> {
        read_campaign(&self.folder(), Reach::Inside, check_own_limits)
    }

    /// What is wrong, with the folder of the test as `~`.
    fn said(&self) -> String {
        let said = self.read().unwrap_err().to_string();
        said.replace(&self.0.path().display().to_string(), "~")
    }
}

/// A campaign that has `own` after what it cannot share, with `shared` above it.
fn read(own: &str, shared: &str) -> Campaign {
    Tree::new(&format!("{OWN}{own}"), &[("lab/shared.toml", shared)])
        .read()
        .unwrap()
}

#[test]
fn a_campaign_without_shared_keys_is_as_it_was() {
    let campaign = Tree::new(&format!("{OWN}{SITE}"), &[]).read().unwrap();
    assert!(campaign.shared.is_empty());
    let said = Tree::new(OWN, &[]).said();
    assert_eq!(
        said,
        "~/lab/tests/mallee/campaign.toml: [site]: the table [site] is missing\n\
         hint: add the table: simmerline new FOLDER writes a file that shows every table and key"
    );
}

#[test]
fn keys_hold_from_every_folder_above_and_the_nearest_wins_key_by_key() {
    let far = format!("{SITE}linke_turbidity = 4\n[report]\nlanguage = \"fr\"\nunits = \"us\"\n");
    let near = "[report]\nlanguage = \"es\"\npaper = \"us-letter\"\n[site]\nlinke_turbidity = 5\n";
    let own = format!("{OWN}[report]\npaper = \"a4\"\n");
    let tree = Tree::new(
        &own,
        &[("shared.toml", &far), ("lab/tests/shared.toml", near)],
    );
    let campaign = tree.read().unwrap();
    assert_eq!(campaign.site.name, "Nowhere flats (invented)");
    assert_eq!(campaign.site.linke_turbidity, Some(5.0));
    assert_eq!(campaign.report.language.code, "es");
    assert_eq!(campaign.report.paper.word(), "a4");
    assert!(campaign.report.units == UnitSystem::Us);
    let held: Vec<(&str, usize, String)> = campaign
        .shared
        .iter()
        .map(|one| (one.name.as_str(), one.levels_above, one.spoken_keys()))
        .collect();
    let expected = [
        (
            "shared.toml",
            1,
            "[report] language; [site] linke_turbidity",
        ),
        (
            "shared-2.toml",
            3,
            "[report] units; [site] elevation_m, latitude_deg, longitude_deg, name, time_zone",
        ),
    ];
    let expected = expected.map(|(name, above, keys)| (name, above, keys.to_owned()));
    assert_eq!(held, expected);
    let names: Vec<String> = campaign
        .input_files()
        .into_iter()
        .map(|one| one.name)
        .collect();
    assert_eq!(
        names,
        ["campaign.toml", "shared.toml", "shared-2.toml", "day.csv"]
    );
    assert_eq!(
        inputs_of(&tree.folder(), Reach::Inside).unwrap(),
        campaign.input_files()
    );
}

#[test]
fn lists_are_taken_as_a_whole_and_tables_are_not() {
    let shared = format!(
        "{SITE}[cooking]\nwater_kg = [1, 2]\nstart_c = 21\n[columns]\ntime = [\"Day\", \"Clock\"]\n\
         wind_speed = \"w\"\n[[calibration]]\ncolumn = \"a\"\ngain = 1.1\n"
    );
    let own = "[cooking]\nwater_kg = [4]\n[columns]\ntime = \"t\"\n[[calibration]]\ncolumn = \"b\"\noffset = 1\n";
    let campaign = read(own, &shared);
    assert_eq!(campaign.wishes.water_kg, [4.0]);
    assert_eq!(campaign.wishes.start_c, Some(21.0));
    assert_eq!(campaign.rules.columns.time, ["t"]);
    assert_eq!(campaign.rules.columns.wind_speed.as_deref(), Some("w"));
    assert_eq!(campaign.calibrations.len(), 1);
    assert_eq!(campaign.calibrations[0].column, "b");
    assert_eq!(read("", &shared).calibrations[0].column, "a");
}

#[test]
fn seven_files_hold_and_the_folder_beyond_the_sixth_is_not_searched() {
    let root = TempDir::new().unwrap();
    let folder = root.path().join("1/2/3/4/5/6/7");
    write(&folder, "campaign.toml", format!("{OWN}{SITE}"));
    write(
        &folder,
        "day.csv",
        format!("{HEADER}\n{}\n", row_with(1, 0, "30")),
    );
    for (level, above) in folder.ancestors().take(8).enumerate() {
        write(
            above,
            "shared.toml",
            format!("[cooking]\nambient_c = {}\n", 20 + level),
        );
    }
    let campaign = read_campaign(&folder, Reach::Inside, check_own_limits).unwrap();
    let levels: Vec<usize> = campaign.shared.iter().map(|one| one.levels_above).collect();
    assert_eq!(levels, [0, 1, 2, 3, 4, 5, 6]);
    assert_eq!(campaign.wishes.ambient_c, Some(20.0));
    // As `verify --extract` would put them, they would be one more.
    write(&folder, "shared-2.toml", "");
    let error = read_campaign(&folder, Reach::Inside, check_own_limits).unwrap_err();
    assert!(
        error
            .to_string()
            .contains("found 8 files of shared keys, expected at most 7")
    );
}

/// A file of shared keys, what stands under a campaign's own keys, and what has to come of it.
type Case = (&'static str, &'static str, fn(&Campaign) -> bool);

#[test]
fn keys_that_mean_something_together_are_taken_from_one_file() {
    const SENSOR: &str =
        "[instruments.irradiance]\nplane = \"normal\"\nclass = \"pyranometer-b\"\nid = \"P1\"\n";
    const SKY: &str = "[instruments.irradiance]\nestimate = \"clear-sky\"\n";
    const STATION: &str =
        "[instruments.irradiance]\nplane = \"horizontal\"\nestimate = \"station\"\n";
    let cases: &[Case] = &[
        // A class of its own is not outweighed by an uncertainty that is stated further up.
        (
            "[instruments.irradiance]\nplane = \"normal\"\nrelative_uncertainty = 0.2\n",
            "[instruments.irradiance]\nclass = \"pyranometer-a\"\n",
            |one| {
                one.instruments.irradiance.uncertainty.is_none()
                    && one.instruments.irradiance.class.is_some()
            },
        ),
        (
            SENSOR,
            "[instruments.irradiance]\nrelative_uncertainty = 0.02\n",
            |one| {
                one.instruments.irradiance.class.is_none()
                    && one.instruments.irradiance.id.is_some()
            },
        ),
        // Another instrument is not of the class of the shared one.
        (SENSOR, "[instruments.irradiance]\nid = \"P2\"\n", |one| {
            one.instruments.irradiance.class.is_none() && one.instruments.irradiance_plane.is_none()
        }),
        (SENSOR, "[instruments.irradiance]\nid = \"P1\"\n", |one| {
            one.instruments.irradiance.class.is_some()
        }),
        // A model has no sensor, and a sensor needs no model.
        (SENSOR, SKY, |one| {
            one.instruments.irradiance_estimate == Some(IrradianceEstimate::ClearSky)
                && one.instruments.irradiance.class.is_none()
                && one.instruments.irradiance.id.is_none()
        }),
        (SKY, SENSOR, |one| {
            one.instruments.irradiance_estimate.is_none()
        }),
        (
            SKY,
            "[instruments.irradiance]\nplane = \"horizontal\"\n",
            |one| {
                one.instruments.irradiance_estimate.is_none()
                    && one.instruments.irradiance_plane == Some(Plane::Horizontal)
            },
        ),
        (
            STATION,
            "[instruments.irradiance]\nclass = \"pyranometer-a\"\n",
            |one| one.instruments.irradiance_estimate == Some(IrradianceEstimate::Station),
        ),
        // A panel or a station is no pyranometer of another class and name.
        (
            SENSOR,
            "[instruments.irradiance]\nestimate = \"station\"\nplane = \"horizontal\"\n",
            |one| {
                one.instruments.irradiance.class.is_none()
                    && one.instruments.irradiance.id.is_none()
            },
        ),
        // A sensor that lies flat stays that sensor where it is turned to the sun.
        (
            SENSOR,
            "[instruments.irradiance]\nestimate = \"from-horizontal\"\nplane = \"horizontal\"\n",
            |one| one.instruments.irradiance.id.is_some(),
        ),
        // Another thermometer was not calibrated with the shared one.
        (
            "[instruments.water_temperature]\nid = \"T1\"\n[[calibration]]\ncolumn = \"water_c\"\ngain = 1.1\n",
            "[instruments.water_temperature]\nid = \"T2\"\n",
            |one| one.calibrations.is_empty(),
        ),
        ("[campaign]\ntarget_uncertainty_w = 5\n", "", |one| {
            one.target == Some(Target::Watts(5.0))
        }),
        (
            "[limits]\nwater_above_ambient_k = 6\nwater_max_c = 90\n",
            "[limits]\nwater_min_c = 40\n",
            |one| {
                one.limits
                    .iter()
                    .map(|limit| limit.key.as_str())
                    .eq(["water_max_c", "water_min_c"])
            },
        ),
        (
            "[limits]\nguard = true\nwater_max_c = 90\n",
            "[limits]\nguard = false\n",
            |one| !one.has_guard_band && one.limits.len() == 1,
        ),
        (
            "[report]\nclient_contact = \"a\"\n[campaign]\nclient = \"A\"\n",
            "",
            |one| one.client.is_some() && one.report.client_contact.is_some(),
        ),
    ];
    for (shared, own, holds) in cases {
        let campaign = read(own, &format!("{SITE}{shared}"));
        assert!(holds(&campaign), "{shared}\n{own}\n{campaign:?}");
    }
    // The table of the campaign is at hand once: what it adds to that stands there.
    let own = OWN.replace(
        "[cooker]",
        "target_relative_uncertainty = 0.04\nclient = \"B\"\n[cooker]",
    );
    let shared = format!(
        "{SITE}[campaign]\ntarget_uncertainty_w = 5\nclient = \"A\"\n[report]\nclient_contact = \"a\"\n"
    );
    let campaign = Tree::new(&own, &[("shared.toml", &shared)]).read().unwrap();
    assert_eq!(campaign.target, Some(Target::Fraction(0.04)));
    assert_eq!(campaign.client.as_deref(), Some("B"));
    assert_eq!(campaign.report.client_contact, None);
}

#[test]
fn the_ends_of_the_water_window_that_exclude_each_other_are_those_of_the_procedure() {
    for (fixed, moving) in fixed_ends() {
        let [fixed, moving] = [fixed, moving].map(|row| row.word.unwrap());
        for (near, far) in [(fixed, moving), (moving, fixed)] {
            let shared = format!("{SITE}[limits]\n{far} = 50\n");
            let campaign = read(&format!("[limits]\n{near} = 45\n"), &shared);
            let keys: Vec<&str> = campaign.limits.iter().map(|one| one.key.as_str()).collect();
            assert_eq!(keys, [near]);
        }
    }
}

#[test]
fn a_site_or_an_assumption_of_its_own_has_everything_of_its_own() {
    let own = format!(
        "{OWN}[site]\nname = \"Elsewhere (invented)\"\nlatitude_deg = 10.0\nlongitude_deg = 20.0\n"
    );
    let said = Tree::new(&own, &[("shared.toml", SITE)]).said();
    for key in ["elevation_m", "time_zone"] {
        let expected = format!(
            "~/lab/tests/mallee/campaign.toml:11: [site] {key}: the key \"{key}\" is missing"
        );
        assert!(said.contains(&expected), "{said}");
    }
    assert!(
        said.contains("to the campaign file or to the file of shared keys"),
        "{said}"
    );
    // One that only calls it by another name is at the same place.
    let campaign = read("[site]\nname = \"North corner (invented)\"\n", SITE);
    assert_eq!(
        (campaign.site.name.as_str(), campaign.site.elevation_m),
        ("North corner (invented)", 100.0)
    );
    let impact = "[impact]\nfuel = \"wood\"\nheating_value_mj_kg = 15.6\nheating_value_source = \"A\"\n\
                  stove_efficiency = 0.1\nstove_efficiency_source = \"B\"\ndays_per_year = 200\ndays_source = \"C\"\n";
    let shared = format!("{SITE}{impact}");
    assert!(read("", &shared).impact.is_some());
    let own = format!("{OWN}[impact]\nstove_efficiency = 0.2\n");
    let said = Tree::new(&own, &[("shared.toml", &shared)]).said();
    assert!(
        said.contains("the key \"stove_efficiency_source\" is missing"),
        "{said}"
    );
    assert_eq!(said.matches("error: ").count(), 0, "{said}");
}

/// What stands in `lab/shared.toml` after the site, and the problem, with its line.
const WRONG: &[(&str, &str)] = &[
    (
        "[report]\nlangage = \"fr\"\n",
        "8: [report] langage: unknown key \"langage\"",
    ),
    (
        "[report]\nlanguage = 7\n",
        "8: [report] language: found integer",
    ),
    (
        "[report]\nlanguage = \"xx\"\n",
        "8: [report] language: found \"xx\"",
    ),
    ("[report\n", "7:"),
    ("pressure_hpa = 30\n", "7: [site] pressure_hpa: found 30"),
    (
        "[instruments.irradiance]\nclass = \"pyranometer-z\"\n",
        "8: [instruments.irradiance] class: found",
    ),
    (
        "[instruments.irradiance]\nestimate = \"station\"\n",
        "8: [instruments.irradiance] estimate: needs the plane",
    ),
    (
        "[limits]\nwind_max = 3\n",
        "8: [limits] wind_max: unknown key \"wind_max\"",
    ),
    (
        "[limits]\ninterval_s = 61\n",
        "8: [limits] interval_s: found 61",
    ),
    (
        "[format]\ntime_zone = \"Nowhere\"\n",
        "8: [format] time_zone: found \"Nowhere\"",
    ),
    (
        "[[calibration]]\ncolumn = \"c\"\n",
        "7: [[calibration]] 1: expected gain",
    ),
    (
        "[campaign]\ntester = \"\\u0007\"\n",
        "8: [campaign] tester: holds the character U+0007",
    ),
    (
        "[cooker]\nname = \"x\"\n",
        "7: [cooker]: belongs to one campaign",
    ),
    (
        "[load]\nwater_kg = 7\n",
        "7: [load]: belongs to one campaign",
    ),
    (
        "[[run]]\nlog = \"day.csv\"\n",
        "7: [[run]]: belongs to one campaign",
    ),
    (
        "[[stagnation]]\ndate = 2026-01-01\n",
        "7: [[stagnation]]: belongs to one campaign",
    ),
    (
        "[campaign]\ntitle = \"x\"\n",
        "8: [campaign] title: belongs to one campaign",
    ),
    (
        "[campaign]\ndemonstration = true\n",
        "8: [campaign] demonstration: belongs to one campaign",
    ),
    (
        "[report]\nsampling = \"x\"\n",
        "8: [report] sampling: belongs to one campaign",
    ),
];

#[test]
fn every_mistake_is_told_with_the_file_and_the_line_that_it_stands_in() {
    for (wrong, expected) in WRONG {
        let said = Tree::new(OWN, &[("lab/shared.toml", &format!("{SITE}{wrong}"))]).said();
        let expected = format!("~/lab/shared.toml:{expected}");
        assert!(said.starts_with(&expected), "{expected}\n{said}");
    }
    // Of a key that the campaign states itself, what is wrong further up is told all the same
    // where it could be nothing else.
    let own = format!("{OWN}{SITE}[report]\nlanguage = \"fr\"\n");
    let said = Tree::new(&own, &[("shared.toml", "[report]\nlanguage = 7\n")]).said();
    assert!(
        said.starts_with("~/shared.toml:2: [report] language: found"),
        "{said}"
    );
    // And what is wrong in the campaign file is told there.
    let own = format!("{OWN}[report]\nlanguage = \"xx\"\n[site]\nelevation_m = 1e9\n");
    let shared = format!("{SITE}[cooking]\nambient_c = 300\n");
    let said = Tree::new(&own, &[("shared.toml", &shared)]).said();
    let places: Vec<&str> = said
        .lines()
        .filter_map(|line| line.trim_start_matches("error: ").strip_prefix("~/"))
        .map(|line| line.split(": ").next().unwrap())
        .collect();
    let file = "lab/tests/mallee/campaign.toml";
    let expected = [
        format!("{file}:12"),
        format!("{file}:14"),
        "shared.toml:8".to_owned(),
    ];
    assert_eq!(places, expected, "{said}");
}

#[test]
fn limits_that_contradict_each_other_across_files_are_told_with_both() {
    let shared = format!("{SITE}[limits]\nirradiance_min_w_m2 = 800\n");
    let own = format!("{OWN}[limits]\nirradiance_max_w_m2 = 700\n");
    let tree = Tree::new(&own, &[("lab/shared.toml", &shared)]);
    let error = simmerline::assess_folder(&tree.folder())
        .unwrap_err()
        .to_string();
    assert!(error.contains("mallee/campaign.toml: [limits]"), "{error}");
    assert!(error.contains("limits.irradiance_min_w_m2 in "), "{error}");
    assert!(error.contains("lab/shared.toml"), "{error}");
    let shared = format!("{shared}irradiance_max_w_m2 = 700\n");
    let tree = Tree::new(OWN, &[("lab/shared.toml", &shared)]);
    let error = simmerline::assess_folder(&tree.folder())
        .unwrap_err()
        .to_string();
    assert!(error.contains("lab/shared.toml: [limits]"), "{error}");
}

#[test]
fn a_calibration_of_no_column_is_told_in_the_file_that_has_it() {
    let shared = format!("{SITE}[[calibration]]\ncolumn = \"nothing\"\ngain = 1.1\n");
    let tree = Tree::new(OWN, &[("lab/shared.toml", &shared)]);
    let error = simmerline::assess_folder(&tree.folder())
        .unwrap_err()
        .to_string();
    assert!(
        error.contains("lab/shared.toml: [[calibration]] 1, column"),
        "{error}"
    );
}

#[test]
fn what_is_no_readable_file_is_told_by_name() {
    let tree = Tree::new(&format!("{OWN}{SITE}"), &[]);
    let shared = tree.0.path().join("lab/shared.toml");
    fs::create_dir(&shared).unwrap();
    assert!(
        tree.said()
            .starts_with("~/lab/shared.toml: is no file (a folder or a device)")
    );
    fs::remove_dir(&shared).unwrap();
    fs::write(&shared, b"[report]\nlaboratory = \"\xff\"\n").unwrap();
    assert!(
        tree.said()
            .starts_with("~/lab/shared.toml: is not UTF-8 text (at byte 24)")
    );
    fs::write(&shared, "#".repeat(CAMPAIGN_BYTES.count() + 1)).unwrap();
    assert!(
        tree.said()
            .contains("lab/shared.toml: found 4194305 bytes, expected at most 4194304")
    );
    let many = format!(
        "[columns]\ntime = [{}]\n",
        "1,".repeat(CAMPAIGN_KEYS.count())
    );
    fs::write(&shared, many).unwrap();
    assert!(
        tree.said()
            .contains("keys and values, expected at most 200000")
    );
    fs::write(&shared, "\u{feff}# nothing but a remark\n").unwrap();
    assert!(tree.read().is_ok());
}

#[cfg(unix)]
#[test]
fn a_link_leads_to_another_file_of_its_folder_or_is_refused() {
    use std::os::unix::fs::symlink;
    let tree = Tree::new(OWN, &[("lab/site.toml", SITE), ("other/site.toml", SITE)]);
    let shared = tree.0.path().join("lab/shared.toml");
    symlink("site.toml", &shared).unwrap();
    assert!(tree.read().is_ok());
    for (target, what) in [
        (
            "../other/site.toml",
            "is a link that leads out of its folder",
        ),
        ("nowhere.toml", "is a link that leads to no file"),
    ] {
        fs::remove_file(&shared).unwrap();
        symlink(target, &shared).unwrap();
        let said = tree.said();
        assert!(
            said.starts_with(&format!("~/lab/shared.toml: {what}")),
            "{said}"
        );
    }
    // A folder is above another by its real path.
    fs::remove_file(&shared).unwrap();
    fs::write(&shared, SITE).unwrap();
    let aside = tree.0.path().join("aside");
    fs::create_dir(&aside).unwrap();
    write(&aside, "shared.toml", "[report]\nlanguage = \"fr\"\n");
    symlink(tree.folder(), aside.join("link")).unwrap();
    let campaign = read_campaign(&aside.join("link"), Reach::Inside, check_own_limits).unwrap();
    assert_eq!(campaign.shared.len(), 1);
    assert_eq!(campaign.report.language.code, "en");
}

#[test]
fn a_log_or_a_photo_has_no_name_of_shared_keys() {
    let own = format!("{OWN}{SITE}").replace("day.csv", "./shared-2.toml");
    let said = Tree::new(&own, &[]).said();
    assert!(
        said.contains("the log \"./shared-2.toml\" has the name of a file of shared keys"),
        "{said}"
    );
}

#[test]
fn a_new_campaign_needs_only_what_is_its_own() {
    let given = "plane = \"horizontal\"\nestimate = \"station\"\n";
    let shared =
        format!("{SITE}[instruments.irradiance]\n{given}[weather.columns]\nirradiance = \"Sun\"\n");
    let tree = Tree::new(OWN, &[("lab/shared.toml", &shared)]);
    let given = check::given_to_new(&tree.folder()).unwrap();
    let text = without_shared(CAMPAIGN_TEMPLATE, &given.shared);
    let filled = text
        .replace("# intercept_area_m2 = 0.95 ", "intercept_area_m2 = 0.95 ")
        .replace("# water_kg = 6.65 ", "water_kg = 6.65 ")
        .replace("run-1.csv", "day.csv");
    write(&tree.folder(), "campaign.toml", &filled);
    let campaign = tree.read().unwrap();
    assert_eq!(campaign.site.name, "Nowhere flats (invented)");
    assert_eq!(
        campaign.instruments.irradiance_estimate,
        Some(IrradianceEstimate::Station)
    );
    assert_eq!(campaign.shared[0].holding, given.shared[0].holding);
    assert!(
        text.contains("# latitude_deg                    # given by ../../shared.toml\n"),
        "{text}"
    );
    assert!(
        text.contains("# irradiance                      # given by ../../shared.toml\n"),
        "{text}"
    );
    assert_eq!(without_shared(CAMPAIGN_TEMPLATE, &[]), CAMPAIGN_TEMPLATE);
}

#[test]
fn a_relative_path_is_told_as_somebody_would_name_it() {
    let named = |folder: &str| {
        let places = simmerline::campaign::shared::find_shared(Path::new(folder)).unwrap();
        places.len()
    };
    // The repository has none, and neither has what is above it.
    assert_eq!(named("sample-runs/open-dish"), 0);
}
