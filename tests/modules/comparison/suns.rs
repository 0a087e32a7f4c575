//! Campaigns under different suns: what is said of which difference, and of its cause.

use jiff::Timestamp;
use simmerline::comparison::{Comparison, compare};
use simmerline::language::Words;
use simmerline::procedure::Assessment;
use simmerline::report::Edition;
use simmerline::report::comparison::data::csv::comparison_csv;
use simmerline::report::comparison::data::json::ComparisonFile;
use simmerline::report::comparison::words::calls::Calls;
use simmerline::report::comparison::words::causes::cause;
use simmerline::report::comparison::words::differences::{difference, pair_sentence};
use simmerline::report::comparison::words::report::build;
use simmerline::report::comparison::words::verdict::verdict;

use super::invented::Tested;

/// The same cooker under 930 and 680 W/m².
fn one_cooker() -> [Tested<'static>; 2] {
    let under = |irradiance_w_m2: f64, first_day: usize| Tested {
        irradiance_w_m2,
        first_day,
        ..Tested::default()
    };
    [under(930.0, 1), under(680.0, 11)]
}

fn compared(campaigns: [Tested<'_>; 2]) -> Comparison {
    of(campaigns.map(|one| one.assess()))
}

fn of(campaigns: [Assessment; 2]) -> Comparison {
    compare(campaigns.into(), None, false).unwrap()
}

/// Two campaigns of these titles.
fn titled(campaigns: [Tested<'_>; 2], titles: [&str; 2]) -> Comparison {
    let mut campaigns = campaigns.map(|one| one.assess());
    for (campaign, title) in campaigns.iter_mut().zip(titles) {
        campaign.tested.campaign.title = title.to_owned();
    }
    of(campaigns)
}

fn said(comparison: &Comparison) -> String {
    let calls = Calls::of(comparison);
    Words::english().say(pair_sentence(comparison, &comparison.pairs[0], &calls))
}

fn cause_of(comparison: &Comparison) -> String {
    let calls = Calls::of(comparison);
    Words::english().say(cause(comparison, &comparison.pairs[0], &calls))
}

fn json(comparison: &Comparison) -> serde_json::Value {
    serde_json::from_str(&ComparisonFile::new(comparison).to_text().unwrap()).unwrap()
}

#[test]
fn one_cooker_in_two_suns_is_held_against_itself_at_common_conditions() {
    let found = compared(one_cooker());
    let pair = &found.pairs[0];
    assert!(pair.difference.conditions_differ);
    // The ratings do differ: 50 K of 3 W/K scaled by 700/680 and by 700/930.
    assert!(pair.difference.ratings.p < 0.05, "{pair:?}");
    let common = pair.difference.common_conditions.as_ref().unwrap();
    assert_eq!(pair.difference.decisive(), Some(common));
    assert!(!pair.is_shown(), "{pair:?}");
    // By hand: 0.5·700 − 3·50 W, the aim 0.2 % lower on the mean.
    for power_w in common.figures {
        assert!((power_w - 200.0).abs() < 6.0, "{power_w}");
    }
    let said = said(&found);
    for part in ["rating scales losses", "heat balances", "No difference"] {
        assert!(said.contains(part), "{part}: {said}");
    }
    assert!(!said.contains("a real difference"), "{said}");
}

#[test]
fn a_stronger_cooker_is_found_so_under_another_sun() {
    let [one, other] = one_cooker();
    let stronger = Tested {
        gain_m2: 1.2 * other.gain_m2,
        ..other
    };
    let found = titled([one, stronger], ["Mulga", "Wattle"]);
    // By hand: a fifth of 350 W.
    let common_w = found.pairs[0].difference.decisive().unwrap().value;
    assert!((common_w - 70.0).abs() < 10.0, "{common_w}");
    let said = said(&found);
    assert!(said.contains("Wattle gives "), "{said}");
    assert!(said.contains(" W more than Mulga ("), "{said}");
    assert!(said.contains("a real difference"), "{said}");
    let cause = cause_of(&found);
    assert!(
        cause.contains("Wattle takes in more sunlight than Mulga"),
        "{cause}"
    );
    assert!(
        cause.contains("Wattle minus Mulga by the heat balances: gain +0."),
        "{cause}"
    );
}

#[test]
fn under_one_sun_the_ratings_decide() {
    let found = compared([
        Tested::default(),
        Tested {
            gain_m2: 0.55,
            first_day: 11,
            ..Tested::default()
        },
    ]);
    let difference = &found.pairs[0].difference;
    assert!(!difference.conditions_differ);
    assert_eq!(difference.decisive(), Some(&difference.ratings));
    assert!(!said(&found).contains("heat balance"));
}

#[test]
fn without_a_heat_balance_it_cannot_be_told() {
    let mut campaigns = one_cooker().map(|one| one.assess());
    campaigns[1].heat_balance = None;
    campaigns[1].water_balance = None;
    let found = of(campaigns);
    assert_eq!(found.pairs[0].difference.decisive(), None);
    assert!(!found.pairs[0].is_shown());
    let said = said(&found);
    assert!(
        said.contains("whether the cookers differ cannot be told"),
        "{said}"
    );
    assert!(cause_of(&found).contains("cannot be told"));
    let pair = &json(&found)["pairs"][0];
    for key in ["p", "p_corrected", "common_conditions", "more_days_each"] {
        assert!(pair[key].is_null(), "{key}");
    }
    assert_eq!(pair["real"], false);
}

#[test]
fn a_cause_is_named_from_gain_and_loss_only() {
    // One cooker: the normalised lines have other slopes, which once named the insulation.
    let found = compared(one_cooker());
    assert!(found.pairs[0].difference.shape.unwrap().slopes.p < 0.05);
    let said = cause_of(&found);
    assert!(said.starts_with("No difference is shown"), "{said}");
    let against = |gain_m2: f64, loss_w_per_k: f64| {
        let other = Tested {
            gain_m2,
            loss_w_per_k,
            first_day: 11,
            ..Tested::default()
        };
        cause_of(&titled([Tested::default(), other], ["Mulga", "Wattle"]))
    };
    let (gain, loss) = (against(0.6, 3.0), against(0.5, 4.5));
    assert!(
        gain.contains("Wattle takes in more sunlight than Mulga"),
        "{gain}"
    );
    assert!(!gain.contains("loses"), "{gain}");
    assert!(
        loss.contains("Mulga loses less heat per kelvin than Wattle"),
        "{loss}"
    );
    assert!(!loss.contains("takes in"), "{loss}");
    let both = against(0.4, 4.5);
    assert!(
        both.contains("Mulga takes in more sunlight than Wattle")
            && both.contains("Mulga loses less heat per kelvin than Wattle"),
        "{both}"
    );
}

#[test]
fn data_say_which_difference_is_meant() {
    let found = compared(one_cooker());
    let (json, difference) = (json(&found), &found.pairs[0].difference);
    let pair = &json["pairs"][0];
    let common = difference.common_conditions.as_ref().unwrap();
    assert_eq!(pair["conditions_differ"], true);
    assert_eq!(pair["real"], false);
    assert_eq!(pair["p"], common.p);
    assert_eq!(pair["difference_w"], difference.ratings.value);
    let of_json = &pair["common_conditions"];
    assert_eq!(of_json["irradiance_w_m2"], 700.0);
    assert_eq!(of_json["difference_k"], 50.0);
    assert_eq!(of_json["difference_w"], common.value);
    assert_eq!(of_json["interval_95"][0], common.interval().0);
    let causes = difference.causes.as_ref().unwrap();
    assert_eq!(pair["gain_difference_m2"]["value"], causes.gain_m2.value);
    assert_eq!(
        pair["loss_difference_w_per_k"]["interval_95"][1],
        causes.loss_w_per_k.interval().1
    );
    for (place, sun_w_m2) in [(0, 930.0), (1, 680.0)] {
        let campaign = &json["campaigns"][place];
        // Irradiance grows by 0.4 % a day, over four days.
        let mean_w_m2 = campaign["mean_irradiance_w_m2"].as_f64().unwrap();
        assert!((mean_w_m2 / sun_w_m2 - 1.006).abs() < 0.003, "{mean_w_m2}");
        assert_eq!(campaign["mean_ambient_c"], 26.0);
        assert!((campaign["mean_wind_m_s"].as_f64().unwrap() - 0.4).abs() < 1e-9);
    }
}

#[test]
fn the_table_has_its_new_columns_last_and_filled_from_a_baseline() {
    let campaigns = one_cooker().map(|one| one.assess());
    let found = compare(campaigns.into(), Some(0), false).unwrap();
    let text = comparison_csv(&found).unwrap();
    let rows: Vec<Vec<&str>> = text.lines().map(|line| line.split(',').collect()).collect();
    let of = |name: &str| {
        let column = rows[0].iter().position(|header| *header == name);
        rows[2][column.unwrap()]
    };
    assert_eq!(rows[0][26], "mean_irradiance_w_m2");
    assert_eq!(rows[0][39..41], ["real", "gain_m2"]);
    let last = [
        "quality_factor_upper_95",
        "title",
        "rank",
        "valid",
        "groups",
    ];
    assert!(rows[0].ends_with(&last), "{:?}", rows[0]);
    assert_eq!((of("conditions_differ"), of("real")), ("true", "false"));
    let common = found.pairs[0]
        .difference
        .common_conditions
        .as_ref()
        .unwrap();
    assert_eq!(of("common_difference_w"), common.value.to_string());
    assert_eq!(of("p"), common.p.to_string());
}

#[test]
fn a_difference_of_ratings_that_do_not_decide_has_no_p() {
    let part = difference(&compared(one_cooker()), Words::english()).unwrap();
    let labels: Vec<&str> = part.rows.iter().map(|row| row.label.as_str()).collect();
    let expected = [
        "Ps(50)",
        "power at 700 W/m², 50 K",
        "difference",
        "p",
        "scatter and days",
    ];
    assert_eq!(labels, expected);
    assert!(
        part.rows[0].text.ends_with("suns differ"),
        "{}",
        part.rows[0].text
    );
    assert_eq!(part.rows[2].text, "not shown");
}

#[test]
fn the_title_is_what_is_shown_and_no_more() {
    let title = |found: &Comparison| verdict(found, &Calls::of(found), Words::english());
    let alike = title(&compared(one_cooker()));
    assert!(
        alike.title.contains("cannot be told apart"),
        "{}",
        alike.title
    );
    assert!(!alike.lead.unwrap().is_shown);
    let [one, other] = one_cooker();
    let stronger = Tested {
        gain_m2: 1.2 * other.gain_m2,
        ..other
    };
    let told = title(&compared([one, stronger]));
    assert!(told.title.contains("W more than"), "{}", told.title);
    assert!(told.lead.unwrap().is_shown);
}

#[test]
fn what_rounds_to_nothing_has_the_interval_of_the_lead_on_the_side_of_a_baseline() {
    // The second is weaker by 0.0005 m² of 700 W/m², about a third of a watt.
    let weaker = Tested {
        gain_m2: 0.4995,
        first_day: 11,
        ..Tested::default()
    };
    for (second, is_less) in [
        (weaker, true),
        (
            Tested {
                gain_m2: 0.5005,
                ..weaker
            },
            false,
        ),
    ] {
        let mut campaigns = [Tested::default(), second].map(|one| one.assess());
        for (campaign, title) in campaigns.iter_mut().zip(["Bare", "Skirt"]) {
            campaign.tested.campaign.title = title.to_owned();
        }
        let comparison = compare(campaigns.into(), Some(0), true).unwrap();
        assert_eq!(comparison.pairs[0].difference.ratings.value < 0.0, is_less);
        let report = build(&comparison, &Edition::plain(Timestamp::UNIX_EPOCH)).report;
        let lead = report.verdict.lead.unwrap();
        assert_eq!(lead.value, "0");
        assert!(lead.label.contains("Skirt minus Bare"), "{}", lead.label);
        let said = report.verdict.sentences.join(" ");
        let expected = format!("Skirt minus Bare: anything from {} W fits", lead.interval);
        assert!(said.contains(&expected), "{expected}: {said}");
    }
}
