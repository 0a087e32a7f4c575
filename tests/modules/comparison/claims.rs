//! Sentences of a comparison are true of the campaigns that they are printed for.

use jiff::Timestamp;
use simmerline::comparison::{Comparison, Pair, compare};
use simmerline::language::{LANGUAGES, Message, UnitSystem, Words};
use simmerline::procedure::Assessment;
use simmerline::report::Edition;
use simmerline::report::comparison::data::json::ComparisonFile;
use simmerline::report::comparison::figures::line_panels::line_panels;
use simmerline::report::comparison::words::ranking::Extra;
use simmerline::report::comparison::words::ranking_notes::{Medium, ranking_notes};
use simmerline::report::comparison::words::report::{Built, ComparisonReport, build};

use super::invented::{CLEAR_SKY, Tested, chain};
use crate::kit::files::{copy, replace};
use crate::kit::rate::sample;
use crate::kit::samples::sample_folder;

const MEDIA: [Medium; 3] = [Medium::Paper, Medium::Web, Medium::Terminal];

/// A sample with its campaign file changed.
fn changed(name: &str, change: impl Fn(String) -> String) -> Assessment {
    let folder = tempfile::tempdir().unwrap();
    let campaign = folder.path().join(format!("changed-{name}"));
    copy(&sample_folder(name), &campaign);
    let file = campaign.join("campaign.toml");
    let text = std::fs::read_to_string(&file).unwrap();
    std::fs::write(&file, change(text)).unwrap();
    replace(
        &campaign,
        "campaign.toml",
        "title = \"",
        "title = \"Changed ",
    );
    simmerline::assess_folder(&campaign).unwrap()
}

/// The bare dish, as if its irradiance sensor had lain flat.
fn flat_dish() -> Assessment {
    changed("open-dish", |text| {
        assert!(text.contains("plane = \"normal\""));
        text.replace("plane = \"normal\"", "plane = \"horizontal\"")
    })
}

/// A sample of its first day alone.
fn first_day(name: &str) -> Assessment {
    changed(name, |text| {
        let (second, _) = text.match_indices("[[run]]").nth(1).unwrap();
        text[..second].to_owned()
    })
}

fn of<const N: usize>(campaigns: [Assessment; N], baseline: Option<usize>) -> Comparison {
    compare(campaigns.into(), baseline, true).unwrap()
}

fn built(comparison: &Comparison) -> Built {
    build(comparison, &Edition::plain(Timestamp::UNIX_EPOCH))
}

fn report(comparison: &Comparison) -> ComparisonReport {
    built(comparison).report
}

/// All notes below the ranking.
fn notes(comparison: &Comparison, medium: Medium) -> String {
    let notes = ranking_notes(comparison, &built(comparison).extra, medium);
    let said = notes.into_iter().map(|note| Words::english().say(note));
    said.collect::<Vec<_>>().join(" ")
}

fn caveat(report: &ComparisonReport, label: &str) -> String {
    let mut caveats = report.caveats.iter();
    let found = caveats.find(|row| row.label == label);
    found.map_or_else(String::new, |row| row.text.clone())
}

/// The skirt, a box, and a dish that can be held against neither.
fn with_one_flat() -> Comparison {
    let campaigns = [sample("open-dish-skirt"), sample("box"), flat_dish()];
    of(campaigns, None)
}

#[test]
fn all_are_told_apart_only_where_every_pair_is() {
    let found = with_one_flat();
    for medium in MEDIA {
        let notes = notes(&found, medium);
        assert!(!notes.contains("All can be told apart"), "{notes}");
        assert!(notes.contains("All without a dash can be told"), "{notes}");
        assert!(notes.contains("A dash: it can be compared"), "{notes}");
    }
    let ranking = report(&found).ranking.unwrap();
    // The dash that the note is of has a column, on paper too.
    assert!(ranking.has_groups && ranking.brackets_pt > 0.0);
    let groups: Vec<&str> = ranking.rows.iter().map(|row| row.groups.as_str()).collect();
    assert_eq!(groups, ["", "–", ""]);
    let all = of(["open-dish", "open-dish-skirt", "box"].map(sample), None);
    assert!(all.pairs.iter().all(|pair| pair.is_shown()));
    for medium in MEDIA {
        let notes = notes(&all, medium);
        assert!(notes.contains("All can be told apart"), "{notes}");
        assert!(!notes.contains("dash"), "{notes}");
    }
    assert!(!report(&all).ranking.unwrap().has_groups);
}

#[test]
fn where_no_pair_is_decided_only_the_dashes_are_explained() {
    // Three suns, and no heat balance.
    let campaigns = [(700.0, 1), (800.0, 11), (900.0, 21)].map(|(irradiance_w_m2, first_day)| {
        let mut one = Tested {
            irradiance_w_m2,
            first_day,
            ..Tested::default()
        }
        .assess();
        (one.heat_balance, one.water_balance) = (None, None);
        one
    });
    let found = of(campaigns, None);
    for medium in MEDIA {
        let notes = notes(&found, medium);
        assert!(notes.starts_with("A dash: it can be compared"), "{notes}");
        assert!(!notes.contains("told apart"), "{notes}");
    }
}

#[test]
fn a_baseline_without_a_rating_makes_no_title_of_ratings() {
    let names = ["dry-pot", "open-dish", "box-figures", "open-dish-skirt"];
    // With two ratings, and with three.
    for names in [&names[..3], &names] {
        let campaigns = names.iter().map(|name| sample(name)).collect();
        let found = compare(campaigns, Some(0), true).unwrap();
        let Built { report, extra, .. } = built(&found);
        let title = &report.title;
        assert!(title.starts_with("No figure of Juniper panel"), "{title}");
        let said = report.verdict.sentences.join(" ");
        assert!(said.contains("so no ratings are compared"), "{said}");
        assert!(!said.contains("0 of 0"), "{said}");
        assert!(extra.differences.is_none());
    }
}

#[test]
fn other_planes_are_no_lack_of_a_heat_balance_and_no_other_sun() {
    let found = of([flat_dish(), sample("open-dish-skirt")], None);
    assert!(
        found
            .campaigns
            .iter()
            .all(|one| one.water_balance.is_some())
    );
    let report = report(&found);
    let said = report.verdict.sentences.join(" ");
    assert!(said.contains("irradiance is in another plane"), "{said}");
    assert!(
        said.contains("gains from irradiance in different planes"),
        "{said}"
    );
    for absent in ["heat balance of both", "was tested under", "scales losses"] {
        assert!(!said.contains(absent), "{said}");
    }
    let rows = &report.difference.unwrap().rows;
    assert!(
        rows[0].text.ends_with("; planes differ"),
        "{}",
        rows[0].text
    );
    let of_planes = report
        .notes
        .iter()
        .any(|note| note.contains("irradiance is in another plane"));
    assert!(of_planes);
}

#[test]
fn pairs_that_cannot_be_compared_are_told_with_their_own_reason() {
    let report = report(&with_one_flat());
    let said = report.verdict.sentences.join(" ");
    assert!(
        said.contains("2 pairs cannot be compared: irradiance is in another"),
        "{said}"
    );
    assert!(!said.contains("heat balance"), "{said}");
    let matrix = report.matrix.unwrap().notes.join(" ");
    assert!(
        matrix.contains("–: cannot be told: irradiance is in another plane"),
        "{matrix}"
    );
    assert!(!matrix.contains("not both have a heat balance"), "{matrix}");
    let mut campaigns = [700.0, 800.0, 900.0].map(|irradiance_w_m2| {
        Tested {
            irradiance_w_m2,
            first_day: (irradiance_w_m2 / 10.0) as usize - 69,
            ..Tested::default()
        }
        .assess()
    });
    campaigns[0].water_balance = None;
    campaigns[0].heat_balance = None;
    let report = self::report(&of(campaigns, None));
    let said = report.verdict.sentences.join(" ");
    let of_balances = "2 pairs cannot be compared: mean irradiance differed, and not both have";
    assert!(said.contains(of_balances), "{said}");
    assert!(!said.contains("plane"), "{said}");
    let matrix = report.matrix.unwrap().notes.join(" ");
    assert!(!matrix.contains("plane"), "{matrix}");
}

#[test]
fn what_is_not_valid_has_no_difference_of_ratings() {
    let names = ["open-dish", "tube-area-slip", "open-dish-skirt"];
    let text = caveat(&report(&of(names.map(sample), None)), "Not valid");
    assert!(
        text.ends_with("Not ranked, and no difference of ratings is given."),
        "{text}"
    );
}

#[test]
fn an_interval_of_one_day_is_not_called_one_of_95_percent() {
    let found = of(
        [
            first_day("open-dish"),
            sample("box"),
            sample("open-dish-skirt"),
        ],
        None,
    );
    let report = report(&found);
    let ranking = report.ranking.unwrap();
    assert_eq!(ranking.axis_name, "Ps(50), W, with its interval");
    assert!(
        ranking.key.contains("except where “one day” stands"),
        "{}",
        ranking.key
    );
    let [of_one, of_others]: [Vec<&str>; 2] = [true, false].map(|is_of_one_day| {
        let rows = ranking.rows.iter();
        let rows = rows.filter(|row| row.is_of_one_day == is_of_one_day);
        rows.map(|row| row.alt.as_str()).collect()
    });
    assert_eq!((of_one.len(), of_others.len()), (1, 2));
    assert!(of_one[0].contains("interval of one day") && !of_one[0].contains("95 %"));
    assert!(of_others.iter().all(|alt| alt.contains("95 % interval")));
    let lines = report.lines.unwrap();
    assert!(
        lines
            .caption
            .contains("of one day, without days and not 95 %")
    );
    let of_one_day = |alt: &&str| alt.contains("interval of one day");
    let alts = lines.panels.iter().map(|panel| panel.alt.as_str());
    assert_eq!(alts.filter(of_one_day).count(), 1);
    let heating = report.heating.unwrap().note;
    assert!(heating.contains("95 %, but not of one day"), "{heating}");
    let matrix = report.matrix.unwrap();
    let said = matrix.notes.join(" ");
    assert!(said.contains("95 % unless marked †") && said.contains("† Not tested on several days"));
    let cells = matrix
        .rows
        .iter()
        .flat_map(|row| row.cells.iter().flatten());
    assert_eq!(cells.filter(|cell| cell.mark == "†").count(), 2);
    let beside = report.beside.unwrap().notes.join(" ");
    assert!(
        beside.contains("unless “one day” stands beside it"),
        "{beside}"
    );
    // Of several days each, all are.
    let found = of(["open-dish", "box", "open-dish-skirt"].map(sample), None);
    let report = self::report(&found);
    let ranking = report.ranking.unwrap();
    assert_eq!(ranking.axis_name, "Ps(50), W, with its 95 % interval");
    assert!(!ranking.key.contains("one day"), "{}", ranking.key);
    assert!(report.lines.unwrap().caption.contains("with a 95 % band"));
}

#[test]
fn the_difference_of_a_single_day_is_not_called_one_of_95_percent() {
    let found = of([first_day("open-dish"), sample("box")], None);
    let report = report(&found);
    let lead = report.verdict.lead.unwrap().label;
    assert!(lead.ends_with("so not a 95 % interval"), "{lead}");
    let part = report.difference.unwrap();
    assert!(
        part.rows[0].text.contains("(one day: "),
        "{}",
        part.rows[0].text
    );
    let expanded = &part.budget.rows.last().unwrap()[0];
    assert!(expanded.contains("one day, not 95 %"), "{expanded}");
    let found = of(
        [
            first_day("open-dish"),
            sample("box"),
            sample("open-dish-skirt"),
        ],
        Some(0),
    );
    for medium in MEDIA {
        let notes = notes(&found, medium);
        assert!(notes.contains("95 % unless marked †"), "{notes}");
        assert!(!notes.contains("their 95 % intervals"), "{notes}");
    }
    let differences = built(&found).extra.differences.unwrap().1;
    assert_eq!(
        differences
            .iter()
            .filter(|one| one.value.ends_with('†'))
            .count(),
        2
    );
}

#[test]
fn only_what_irradiance_sensors_are_off_by_does_not_cancel() {
    let text = caveat(
        &report(&of(["open-dish", "box"].map(sample), None)),
        "Sensors",
    );
    assert!(
        text.contains("no error of irradiance sensors cancels"),
        "{text}"
    );
    assert!(!text.contains("estimates"), "{text}");
    let stronger = |first_day: usize| Tested {
        gain_m2: 0.55,
        first_day,
        ..CLEAR_SKY
    };
    let of_day = |first_day: usize| {
        let found = of([CLEAR_SKY.assess(), stronger(first_day).assess()], None);
        caveat(&report(&found), "Sensors")
    };
    let (one_sky, two) = (of_day(1), of_day(11));
    assert!(
        one_sky.contains("Errors of estimates made in the same way, at one site"),
        "{one_sky}"
    );
    assert!(!two.contains("estimates"), "{two}");
}

#[test]
fn only_planes_are_in_no_uncertainty() {
    let estimated = of([CLEAR_SKY.assess(), Tested::default().assess()], None);
    let text = caveat(&report(&estimated), "Irradiance");
    assert!(
        text.starts_with("Not measured alike: ") && text.contains("estimated"),
        "{text}"
    );
    assert!(!text.contains("No uncertainty"), "{text}");
    let text = caveat(&report(&with_one_flat()), "Irradiance");
    assert!(
        text.ends_with(
            "The uncertainties here do not cover a sensor that lay flat, or a plane that is not stated."
        ),
        "{text}"
    );
}

#[test]
fn few_days_are_those_with_used_intervals() {
    let found = of([first_day("open-dish"), sample("box")], None);
    let text = caveat(&report(&found), "Few days");
    assert!(
        text.contains(": used intervals on one or two days"),
        "{text}"
    );
}

#[test]
fn notes_are_of_what_the_medium_shows() {
    let found = of(
        [
            first_day("open-dish"),
            sample("box"),
            sample("open-dish-skirt"),
        ],
        None,
    );
    let paper = notes(&found, Medium::Paper);
    assert!(paper.starts_with("A bar joins campaigns"), "{paper}");
    for medium in [Medium::Web, Medium::Terminal] {
        let letters = notes(&found, medium);
        assert!(
            letters.starts_with("Campaigns with a letter in common"),
            "{letters}"
        );
        assert!(!letters.contains("bar"), "{letters}");
    }
    // Too many groups for brackets: a list below on paper, elsewhere numbers in the ranking.
    let numbered = Extra {
        alike: vec!["2".to_owned(), "1".to_owned(), String::new()],
        ..Extra::default()
    };
    for medium in MEDIA {
        let notes = ranking_notes(&found, &numbered, medium);
        let first = Words::english().say(notes[0].clone());
        assert_eq!(
            first.contains("listed below"),
            medium == Medium::Paper,
            "{first}"
        );
    }
    let against = of(
        [
            sample("open-dish"),
            sample("box"),
            sample("open-dish-skirt"),
        ],
        Some(0),
    );
    for medium in MEDIA {
        let notes = notes(&against, medium);
        let is_bold = notes.contains("Bold") && notes.contains("Grey");
        assert_eq!(is_bold, medium != Medium::Terminal, "{notes}");
    }
}

#[test]
fn a_group_holds_pairs_that_are_undecided_or_of_one_day_and_says_so() {
    let of_days = of(
        [
            first_day("open-dish"),
            sample("box"),
            sample("open-dish-skirt"),
        ],
        None,
    );
    for medium in MEDIA {
        let notes = notes(&of_days, medium);
        assert!(
            notes.contains("not tested on several days each count as not told"),
            "{notes}"
        );
        assert!(!notes.contains("cannot be compared count"), "{notes}");
    }
    let method = report(&of_days).notes.join(" ");
    let exactly = "exactly if they cannot be told apart, cannot be compared, or were not tested";
    assert!(method.contains(exactly), "{method}");
    let undecided = of(super::invented::chain(), None);
    for medium in MEDIA {
        let notes = notes(&undecided, medium);
        assert!(
            notes.contains("Two that cannot be compared count as not told"),
            "{notes}"
        );
        assert!(!notes.contains("several days"), "{notes}");
        assert!(notes.contains("differ, unless one has a dash"), "{notes}");
    }
}

#[test]
fn a_single_pair_is_not_called_all_pairs_together() {
    let notes = [
        "ranking-note-brackets",
        "ranking-note-letters",
        "ranking-note-all-apart",
        "ranking-note-alike",
        "ranking-note-differences",
        "ranking-note-differences-one-day",
        "terminal-note-differences",
        "terminal-note-differences-one-day",
        "matrix-note",
        "matrix-note-one-day",
    ];
    for language in LANGUAGES {
        let words = Words::new(language, UnitSystem::Si);
        for note in notes {
            let said = |pairs: usize| words.say(Message::new(note).with("pairs", pairs));
            let (of_one, of_three) = (said(1), said(3));
            assert!(of_one.contains("95"), "{of_one}");
            assert!(!of_one.contains("Holm"), "{of_one}");
            assert!(of_three.contains("3"), "{of_three}");
            assert!(of_three.contains("Holm"), "{of_three}");
        }
    }
}

#[test]
fn sentences_say_how_many_pairs_can_be_compared() {
    // Of six pairs two can be, and both are told apart.
    let found = of(chain(), None);
    let report = report(&found);
    let verdict = report.verdict.sentences.join(" ");
    assert!(
        verdict.starts_with("Pairs shown to differ: 2 of 2 that can be compared (6 in all)."),
        "{verdict}"
    );
    let matrix = report.matrix.unwrap().notes.join(" ");
    let together = "95 % for all 2 comparable pairs together, Holm";
    assert!(matrix.contains(together), "{matrix}");
    for medium in MEDIA {
        let notes = notes(&found, medium);
        assert!(notes.contains(together), "{notes}");
    }
    let method = report.notes.join(" ");
    let allows = "the corrected p allows for 2 pairs that can be compared, by Holm's method";
    assert!(method.contains(allows), "{method}");
    // Where all can be, nothing is said of others.
    let all = of(["open-dish", "open-dish-skirt", "box"].map(sample), None);
    let verdict = self::report(&all).verdict.sentences.join(" ");
    assert_eq!(verdict, "Pairs shown to differ: 3 of 3.");
}

const SIX: [&str; 6] = [
    "open-dish",
    "open-dish-skirt",
    "box",
    "box-autumn",
    "panel-cloudy",
    "kitchen-thermometer",
];

#[test]
fn an_interval_without_zero_that_is_not_shown_is_explained() {
    let alone = "An interval is of its pair alone";
    let matrix = |found: &Comparison| report(found).matrix.unwrap().notes.join(" ");
    assert!(matrix(&of(SIX.map(sample), None)).contains(alone));
    // A single pair that can be compared is the only one that "shown" is of.
    assert!(!matrix(&with_one_flat()).contains(alone));
    let is_said = |baseline: usize, medium: Medium| {
        let found = of(SIX.map(sample), Some(baseline));
        let is_such = |pair: &Pair| {
            let (lower_w, upper_w) = pair.difference.decisive().unwrap().interval();
            let is_without_zero = lower_w > 0.0 || upper_w < 0.0;
            is_without_zero && pair.difference.knows_days() && !pair.is_shown()
        };
        let happens = found.pairs.iter().any(is_such);
        (happens, notes(&found, medium).contains(alone))
    };
    // The terminal says it only where there is one.
    assert_eq!(is_said(4, Medium::Terminal), (true, true));
    assert_eq!(is_said(0, Medium::Terminal), (false, false));
    assert_eq!(is_said(0, Medium::Paper), (false, true));
}

#[test]
fn the_number_in_the_table_is_the_one_that_p_and_real_are_of() {
    let found = of(SIX.map(sample), None);
    let text = ComparisonFile::new(&found).to_text().unwrap();
    let data: serde_json::Value = serde_json::from_str(&text).unwrap();
    let matrix = report(&found).matrix.unwrap();
    let mut at_common = 0;
    for (one, row) in matrix.rows.iter().enumerate() {
        for (column, cell) in row.cells.iter().enumerate() {
            let Some(cell) = cell else { continue };
            let [minuend, other] = [one, column + 1].map(|rank| SIX[found.ranking.ranked[rank]]);
            let mut pairs = data["pairs"].as_array().unwrap().iter();
            let (pair, sign) = pairs
                .find_map(|pair| match (&pair["first"], &pair["second"]) {
                    (first, second) if first == other && second == minuend => Some((pair, 1.0)),
                    (first, second) if first == minuend && second == other => Some((pair, -1.0)),
                    _ => None,
                })
                .unwrap();
            let is_common = pair["conditions_differ"] == true;
            let told = match is_common {
                true => &pair["common_conditions"],
                false => pair,
            };
            assert_eq!(cell.mark.contains('*'), is_common, "{cell:?}");
            let difference_w = sign * told["difference_w"].as_f64().unwrap();
            let printed_w: f64 = cell.value.replace('−', "-").parse().unwrap();
            assert!((difference_w - printed_w).abs() <= 0.5, "{cell:?} {pair}");
            assert_eq!(pair["real"], cell.is_shown);
            // By its interval and p, of the same number: 0.05 is where zero is at an end.
            let key = if is_common {
                "interval_95"
            } else {
                "difference_95_w"
            };
            let ends = told[key].as_array().unwrap();
            let [lower_w, upper_w] = [0, 1].map(|end| ends[end].as_f64().unwrap());
            let is_without_zero = lower_w > 0.0 || upper_w < 0.0;
            assert_eq!(
                is_without_zero,
                pair["p"].as_f64().unwrap() < 0.05,
                "{pair}"
            );
            at_common += usize::from(is_common);
        }
    }
    assert!(at_common > 3, "{at_common}");
}

#[test]
fn the_difference_that_days_would_show_says_of_what_it_is_a_part() {
    for language in LANGUAGES {
        let words = Words::new(language, UnitSystem::Si);
        let tenth = match language.code {
            "en" => "a tenth of the larger power",
            "es" => "la décima parte de la potencia mayor",
            "fr" => "un dixième de la plus grande puissance",
            "pt" => "um décimo da maior potência",
            "sw" => "sehemu moja ya kumi ya nguvu iliyo kubwa",
            other => panic!("no words for {other}"),
        };
        for name in ["needed-none", "needed-days", "needed-no-number"] {
            let said = words.say(
                Message::new(name)
                    .with("sought", "16")
                    .with("days", 6_usize),
            );
            assert!(said.contains(tenth), "{said}");
        }
    }
    // By the numbers: a tenth of 161 W.
    let found = of(SIX.map(sample), None);
    let sentences = report(&found).verdict.sentences.join(" ");
    assert!(
        sentences.contains("16 W (a tenth of the larger power)"),
        "{sentences}"
    );
}

#[test]
fn the_first_number_below_a_panel_has_its_unit() {
    let found = of(["open-dish", "open-dish-skirt"].map(sample), None);
    let part = report(&found).lines.unwrap();
    let panels: Vec<String> = line_panels(&found, &part, Words::english())
        .unwrap()
        .into_iter()
        .map(|asset| String::from_utf8(asset.bytes).unwrap())
        .collect();
    assert_eq!(panels.len(), 2);
    for panel in panels {
        assert_eq!(panel.matches("\u{a0}K").count(), 1, "{panel}");
    }
}

#[test]
fn what_is_the_same_of_all_campaigns_is_said_once() {
    let part = report(&of(["open-dish", "open-dish-skirt"].map(sample), None)).campaigns;
    let alike: Vec<&str> = part.alike.iter().map(|row| row.label.as_str()).collect();
    assert_eq!(
        alike,
        ["type", "intercept area", "runs", "place", "tested by"]
    );
    let columns = part.tests.columns.iter();
    let columns: Vec<&str> = columns.map(|column| column.name.as_str()).collect();
    assert_eq!(columns, ["mass", "cost", "tested", "report"]);
    let cells: Vec<&[String]> = part.tests.rows.iter().map(|row| &row.cells[..2]).collect();
    assert_eq!(
        cells,
        [["10.1 kg", "69\u{a0}EUR"], ["9.5 kg", "64\u{a0}EUR"]]
    );
    // They share every instrument, by its id.
    assert!(part.instruments.iter().all(|one| one.campaigns == "All"));
    assert_eq!(part.instruments.len(), 5);
}

#[test]
fn an_instrument_stands_once_with_the_campaigns_that_have_it() {
    let names = ["open-dish", "open-dish-skirt", "box", "box-autumn"];
    let part = report(&compare(names.map(sample).to_vec(), None, true).unwrap()).campaigns;
    let water: Vec<[&str; 3]> = part.instruments[..2]
        .iter()
        .map(|one| [&*one.quantity, &*one.uncertainty, &*one.campaigns])
        .collect();
    assert_eq!(
        water,
        [
            ["Water temperature", "0.3 K", "Nos. 1, 2"],
            ["", "0.5 K", "Nos. 3, 4"],
        ]
    );
    // What none states is no column, and what one does not state is a dash.
    let columns = part.tests.columns.iter();
    let mass = columns
        .clone()
        .position(|column| column.name == "mass")
        .unwrap();
    assert_eq!(part.tests.rows[3].cells[mass], "–");
}

#[test]
fn more_instruments_than_a_page_holds_are_counted_and_said_to_be_in_the_reports() {
    let of_place = |place: usize| {
        let mut one = Tested {
            gain_m2: 0.5 + 0.001 * place as f64,
            ..Tested::default()
        }
        .assess();
        one.tested.campaign.name = format!("campaign-{place}");
        let instruments = &mut one.tested.campaign.instruments;
        for instrument in [
            &mut instruments.water_temperature,
            &mut instruments.ambient_temperature,
            &mut instruments.irradiance,
            &mut instruments.wind_speed,
            &mut instruments.water_mass,
        ] {
            instrument.id = Some(format!("invented {place}"));
        }
        one
    };
    let of_count = |count: usize| {
        let campaigns = (0..count).map(of_place).collect();
        report(&compare(campaigns, None, true).unwrap()).campaigns
    };
    let part = of_count(12);
    assert_eq!(
        (part.instruments.len(), part.instruments_note.as_str()),
        (60, "")
    );
    let part = of_count(13);
    assert!(part.instruments.is_empty());
    assert!(
        part.instruments_note.starts_with("65 instruments"),
        "{}",
        part.instruments_note
    );
}

#[test]
fn a_part_of_the_uncertainty_is_never_printed_as_nought() {
    let report = report(&of(["open-dish", "open-dish-skirt"].map(sample), None));
    let rows = report.difference.unwrap().budget.rows;
    assert!(
        rows.iter().any(|row| row[1].starts_with("< 0.05")),
        "{rows:?}"
    );
    assert!(
        rows.iter().flatten().all(|cell| !cell.starts_with("0.0")),
        "{rows:?}"
    );
}

#[test]
fn what_ratings_rest_on_is_said_where_the_ranking_has_no_room_for_it() {
    let names = [
        "open-dish",
        "open-dish-skirt",
        "notebook",
        "box",
        "box-autumn",
        "kitchen-thermometer",
        "panel-cloudy",
        "box-figures",
        "dish-cooling",
    ];
    for (count, has_support) in [(5, true), (9, false)] {
        let campaigns = names[..count].iter().map(|name| sample(name)).collect();
        let report = report(&compare(campaigns, None, true).unwrap());
        assert_eq!(report.ranking.unwrap().has_support, has_support);
        let columns = report.campaigns.results.unwrap().columns;
        let has_days = columns.iter().any(|column| column.name == "days");
        assert_eq!(has_days, !has_support);
    }
}
