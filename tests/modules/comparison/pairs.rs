//! Comparisons of invented campaigns: what must hold whatever the numbers are.

use simmerline::comparison::pair::Pair;
use simmerline::comparison::weigh::{Method, Part};
use simmerline::comparison::{Comparison, Difference, compare};
use simmerline::language::Words;
use simmerline::procedure::s580::rated::rate_line;
use simmerline::procedure::stated::FigureKey;

use super::invented::chain;
use crate::kit::rate::sample as rated;

fn of(names: &[&str], baseline: Option<usize>) -> Comparison {
    let campaigns = names.iter().map(|name| rated(name)).collect();
    compare(campaigns, baseline, true).unwrap()
}

fn part<'p>(pair: &'p Pair, name: &str) -> &'p Part {
    let is_named = |part: &&Part| Words::english().say(part.name()) == name;
    pair.difference.ratings.parts.iter().find(is_named).unwrap()
}

#[test]
fn the_other_order_gives_the_other_sign_and_nothing_else() {
    let there = &of(&["open-dish", "open-dish-skirt"], None).pairs[0].difference;
    let back = &of(&["open-dish-skirt", "open-dish"], None).pairs[0].difference;
    let figures = |difference: &Difference| {
        let causes = difference.causes.clone().unwrap();
        let common = difference.common_conditions.clone().unwrap();
        [
            difference.ratings.clone(),
            common,
            causes.gain_m2,
            causes.loss_w_per_k,
        ]
    };
    for (there, back) in figures(there).iter().zip(&figures(back)) {
        assert!((there.value + back.value).abs() < 1e-9);
        assert!((there.combined - back.combined).abs() < 1e-9);
        assert!((there.p - back.p).abs() < 1e-9);
    }
    let (there, back) = (there.shape.unwrap(), back.shape.unwrap());
    assert!((there.slopes.p - back.slopes.p).abs() < 1e-9);
    assert!((there.intercepts_p - back.intercepts_p).abs() < 1e-9);
}

#[test]
fn what_one_instrument_reads_wrong_cancels_but_for_the_difference() {
    // By hand: one pyranometer of 2.5 % leaves 0.025·|D|, two leave 0.025·√(A² + B²). The
    // derivative is taken by steps of 2.5 %, which moves it by 0.025² of itself.
    let is_near = |found_w: f64, expected_w: f64| (found_w / expected_w - 1.0).abs() < 0.001;
    let shared = of(&["open-dish", "open-dish-skirt"], None);
    let pair = &shared.pairs[0];
    let irradiance = part(pair, "irradiance");
    let difference_w = pair.difference.ratings.value.abs();
    assert!(is_near(irradiance.of_difference, 0.025 * difference_w));
    let rating = |place: usize| shared.campaigns[place].s580.rating().unwrap().ps50_w;
    let apart_w = 0.025 * rating(0).hypot(rating(1));
    assert!(is_near(irradiance.apart, apart_w));
    let mut stranger = rated("open-dish-skirt");
    for error in stranger
        .s580
        .rated
        .iter_mut()
        .flat_map(|rated| &mut rated.uncertainty.budget.contributions)
    {
        use simmerline::procedure::uncertainty::budget::Origin;
        if let Origin::Common(error) = &mut error.origin {
            error.identity += " of another";
        }
    }
    let apart = compare(vec![rated("open-dish"), stranger], None, false).unwrap();
    let irradiance = part(&apart.pairs[0], "irradiance");
    assert!(is_near(irradiance.of_difference, apart_w));
    assert!(apart.pairs[0].difference.ratings.combined > pair.difference.ratings.combined);
}

#[test]
fn intervals_p_values_and_holm_agree_with_each_other() {
    let all = of(
        &[
            "open-dish",
            "open-dish-skirt",
            "box",
            "box-autumn",
            "panel-cloudy",
        ],
        None,
    );
    assert_eq!(all.pairs.len(), 10);
    for pair in &all.pairs {
        let decisive = pair.difference.decisive().unwrap();
        let (lower_w, upper_w) = decisive.interval();
        let excludes_zero = lower_w > 0.0 || upper_w < 0.0;
        assert_eq!(excludes_zero, decisive.p < 0.05, "{pair:?}");
        assert!(pair.p_corrected >= decisive.p && pair.p_corrected <= 1.0);
        assert_eq!(decisive.method, Method::Apart);
    }
}

#[test]
fn only_pairs_that_can_be_compared_are_in_the_family_that_p_is_corrected_for() {
    use simmerline::comparison::needed::needed;
    use simmerline::comparison::pair::compared;
    // Of six pairs two can be compared. By hand, Holm of two: twice the smaller p, and the larger
    // as it is unless that is below.
    let all = compare(chain().into(), None, true).unwrap();
    assert_eq!((all.pairs.len(), compared(&all.pairs)), (6, 2));
    let (tested, untold): (Vec<&Pair>, Vec<&Pair>) = all
        .pairs
        .iter()
        .partition(|pair| pair.difference.decisive().is_some());
    let p: Vec<f64> = tested.iter().map(|pair| pair.difference.p()).collect();
    let twice_the_smaller = (2.0 * p[0].min(p[1])).min(1.0);
    for (pair, &p) in tested.iter().zip(&p) {
        let is_smaller = p <= twice_the_smaller / 2.0;
        let expected = if is_smaller {
            twice_the_smaller
        } else {
            p.max(twice_the_smaller)
        };
        assert!((pair.p_corrected - expected).abs() < 1e-15, "{pair:?}");
        let of_two = needed(pair.difference.decisive().unwrap(), 2);
        assert_eq!(pair.needed, Some(of_two));
    }
    for pair in untold {
        assert_eq!((pair.p_corrected, pair.needed), (1.0, None));
    }
}

#[test]
fn only_pairs_in_which_a_figure_is_compared_are_in_its_family() {
    let names = [
        "open-dish",
        "open-dish-skirt",
        "box",
        "box-autumn",
        "box-figures",
        "dish-cooling",
    ];
    let all = of(&names, None);
    let mut untold = 0;
    for key in FigureKey::ALL {
        let figures = all.figures.iter().flat_map(|pair| &pair.figures);
        let of_key: Vec<_> = figures.filter(|figure| figure.key == *key).collect();
        let told: Vec<_> = of_key
            .iter()
            .filter_map(|one| one.told.as_ref().ok())
            .collect();
        // By Holm's rule the smallest p is multiplied by the number of all that are tested.
        let smallest = told.iter().map(|told| told.held.p).fold(1.0, f64::min);
        let corrected = told.iter().map(|told| told.p_corrected).fold(1.0, f64::min);
        let expected = (smallest * told.len() as f64).min(1.0);
        assert!(
            told.is_empty() || (corrected - expected).abs() < 1e-15,
            "{key:?}"
        );
        untold += usize::from(!told.is_empty()) * (of_key.len() - told.len());
    }
    // There are some that a correction for all pairs would have counted.
    assert!(untold > 0);
}

#[test]
fn cookers_side_by_side_on_the_same_days_are_paired_by_day() {
    // The same dish twice, the second one's power a tenth higher: what days do to it is in
    // both, so their differences scatter by a tenth of what the days do.
    let one = rated("open-dish");
    let mut two = rated("open-dish");
    two.tested.campaign.name = "open-dish-again".to_owned();
    for interval in &mut two.s580.intervals {
        interval.measured.standardised_power_w = interval
            .measured
            .standardised_power_w
            .map(|power_w| 1.1 * power_w);
    }
    for run in &mut two.tested.runs {
        for value in &mut run.readings.water_c.value {
            *value += 0.001;
        }
    }
    let points: (Vec<f64>, Vec<f64>) = two
        .s580
        .used()
        .filter_map(|interval| interval.point())
        .unzip();
    assert!(points.0.len() > 2);
    two.s580.rated = rate_line(&two.tested, &two.s580.intervals);
    let pair = &compare(vec![one, two], None, false).unwrap().pairs[0];
    assert_eq!(
        pair.difference.ratings.method,
        Method::PairedByDay { days: 4 }
    );
    let scatter = part(pair, "scatter and days");
    assert!(scatter.of_difference < 0.12 * scatter.apart, "{scatter:?}");
    assert!(pair.is_shown());
}

#[test]
fn a_baseline_stands_first_in_every_pair() {
    let all = of(&["open-dish", "open-dish-skirt", "box"], Some(2));
    let places: Vec<(usize, usize)> = all
        .pairs
        .iter()
        .map(|pair| (pair.difference.first, pair.difference.second))
        .collect();
    assert_eq!(places, [(2, 0), (2, 1)]);
}

#[test]
fn more_days_are_asked_for_only_where_they_would_help() {
    let all = of(&["box", "box-autumn"], None);
    let needed = all.pairs[0].needed.unwrap();
    assert!(needed.sought_w > 0.0);
    // These two boxes were tested with instruments that nobody says are the same.
    assert!(needed.days_each.is_none_or(|more| more > 0), "{needed:?}");
}

#[test]
fn no_cause_is_named_where_no_difference_is_shown() {
    use simmerline::report::comparison::words::calls::Calls;
    use simmerline::report::comparison::words::causes::cause;
    let said = |all: &Comparison| {
        let cause = cause(all, &all.pairs[0], &Calls::of(all));
        Words::english().say(cause)
    };
    let all = of(&["box", "box-autumn"], None);
    assert!(!all.pairs[0].is_shown());
    assert!(
        said(&all).starts_with("No difference is shown, so no cause"),
        "{}",
        said(&all)
    );
    // As sample-runs/scenario.rs makes them: the skirt keeps heat in, and shades by 2 %, which is
    // less than can be told.
    let skirt = of(&["open-dish", "open-dish-skirt"], None);
    let said = said(&skirt);
    assert!(said.contains("pot with skirt loses less heat"), "{said}");
    assert!(!said.contains("sunlight"), "{said}");
}

#[test]
fn what_is_impossible_is_listed_and_held_against_nothing() {
    let names = ["open-dish", "tube-area-slip", "open-dish-skirt"];
    let all = of(&names, None);
    assert_eq!(all.ranking.ranked, [2, 0]);
    assert_eq!(all.ranking.not_valid, [1]);
    assert_eq!((all.pairs.len(), all.figures.len()), (1, 1));
    assert_eq!(all.heating[1], None);
    let alone = [rated("open-dish"), rated("tube-area-slip")];
    let refused = compare(alone.into(), None, true).unwrap_err().to_string();
    assert!(refused.contains("is not valid"), "{refused}");
    let campaigns = names.map(rated).into();
    let refused = compare(campaigns, Some(1), true).unwrap_err().to_string();
    assert!(refused.contains("is not valid"), "{refused}");
}

#[test]
fn two_share_a_group_exactly_if_they_are_not_told_apart() {
    let names = [
        "box",
        "box-autumn",
        "open-dish",
        "open-dish-skirt",
        "panel-cloudy",
    ];
    let all = of(&names, None);
    let groups = all.groups.clone().unwrap();
    let ranks = all.ranking.ranked.len();
    assert_eq!(ranks, 5);
    let mut shown = 0;
    for one in 0..ranks {
        for two in one + 1..ranks {
            let (pair, sign) = all.between(one, two).unwrap();
            // The better rank less the other, whichever was named first.
            let value_w = pair.difference.ratings.value * sign;
            assert!(value_w >= 0.0, "{one} {two}: {value_w}");
            let is_together = |group: &Vec<usize>| group.contains(&one) && group.contains(&two);
            assert_eq!(groups.iter().any(is_together), !pair.is_shown());
            shown += usize::from(pair.is_shown());
        }
    }
    assert!(shown > 3, "{shown}");
    // Most pairs are not looked at with a baseline.
    assert_eq!(of(&names, Some(0)).groups, None);
}

#[test]
fn an_undecided_pair_shares_a_group_and_what_is_not_held_has_none() {
    let all = compare(chain().into(), None, true).unwrap();
    assert_eq!(all.ranking.ranked, [0, 1, 2, 3]);
    let is_decided = |one: usize, two: usize| {
        let (pair, _) = all.between(one, two).unwrap();
        let is_decided = pair.difference.decisive().is_some();
        // All that are decided are told apart.
        assert_eq!(pair.is_shown(), is_decided, "{one} {two}");
        is_decided
    };
    assert!(is_decided(0, 1) && is_decided(1, 2) && !is_decided(0, 2));
    assert!((0..3).all(|rank| !is_decided(rank, 3)));
    assert_eq!(all.groups, Some(vec![vec![0, 2], vec![1]]));
}
