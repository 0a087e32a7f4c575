//! What two campaigns share is one error; what they cannot have shared is refused.

use simmerline::comparison::compare;
use simmerline::comparison::pair::Difference;
use simmerline::comparison::weigh::Part;
use simmerline::procedure::sources::Source;

use super::invented::{CLEAR_SKY, SHARED, Tested};

/// A weaker and a stronger cooker.
fn two<'t>(test: Tested<'t>) -> [Tested<'t>; 2] {
    let stronger = Tested {
        gain_m2: 0.55,
        ..test
    };
    [test, stronger]
}

fn difference(campaigns: [Tested<'_>; 2]) -> Difference {
    let campaigns = campaigns.map(|one| one.assess());
    let mut found = compare(campaigns.into(), None, false).unwrap();
    found.pairs.remove(0).difference
}

fn part(difference: &Difference, source: Source) -> &Part {
    let mut parts = difference.ratings.parts.iter();
    parts.find(|part| part.source == Some(source)).unwrap()
}

/// Holds an estimate's part in the difference against the fraction by which it is unsure: of
/// the difference where it is one error, of either rating where it is two. By hand; the
/// derivative is taken by steps of that fraction, hence 2 %.
fn holds(difference: &Difference, source: Source, fraction: f64, is_one: bool) {
    let [first_w, second_w] = difference.ratings.figures;
    let expected_w = if is_one {
        fraction * (second_w - first_w).abs()
    } else {
        fraction * first_w.hypot(second_w)
    };
    let found_w = part(difference, source).of_difference;
    assert!(
        (found_w - expected_w).abs() < 0.02 * expected_w,
        "{source:?}: {found_w} W, by hand {expected_w} W"
    );
}

#[test]
fn a_clear_sky_over_both_on_the_same_days_is_one_error() {
    holds(&difference(two(CLEAR_SKY)), Source::ClearSky, 0.10, true);
}

#[test]
fn a_clear_sky_on_other_days_or_elsewhere_or_of_other_turbidity_is_two() {
    let [one, other] = two(CLEAR_SKY);
    let later = Tested {
        first_day: 11,
        ..other
    };
    holds(&difference([one, later]), Source::ClearSky, 0.10, false);
    let elsewhere = Tested {
        longitude_deg: 0.5,
        ..other
    };
    holds(&difference([one, elsewhere]), Source::ClearSky, 0.10, false);
    let mut campaigns = [one, other].map(|one| one.assess());
    campaigns[1].tested.campaign.site.linke_turbidity = Some(4.0);
    let found = compare(campaigns.into(), None, false).unwrap();
    holds(&found.pairs[0].difference, Source::ClearSky, 0.10, false);
}

#[test]
fn turning_a_horizontal_sensor_is_one_error_on_the_same_days_only() {
    let flat = Tested {
        instruments: "[instruments.irradiance]\nestimate = \"from-horizontal\"\nid = \"flat\"\nrelative_uncertainty = 0.02\n",
        logged_w_m2: Some(780.0),
        ..CLEAR_SKY
    };
    let [one, other] = two(flat);
    holds(&difference([one, other]), Source::Conversion, 0.05, true);
    let later = Tested {
        first_day: 11,
        ..other
    };
    holds(&difference([one, later]), Source::Conversion, 0.05, false);
}

#[test]
fn a_station_is_one_only_where_its_id_says_so() {
    let station = |instruments| Tested {
        instruments,
        logged_w_m2: Some(900.0),
        ..CLEAR_SKY
    };
    let named = station(
        "[instruments.irradiance]\nestimate = \"station\"\nplane = \"normal\"\nid = \"airfield\"\nrelative_uncertainty = 0.02\n",
    );
    holds(&difference(two(named)), Source::Distance, 0.10, true);
    let nameless = station(
        "[instruments.irradiance]\nestimate = \"station\"\nplane = \"normal\"\nrelative_uncertainty = 0.02\n",
    );
    holds(&difference(two(nameless)), Source::Distance, 0.10, false);
}

/// Why a comparison of two is refused; empty where it is not.
fn refusal(campaigns: [Tested<'_>; 2]) -> String {
    let campaigns = campaigns.map(|one| one.assess());
    let refused = compare(campaigns.into(), None, false).err();
    refused.map_or_else(String::new, |error| error.to_string())
}

#[test]
fn one_id_far_apart_on_one_day_is_refused_with_the_remedy() {
    let [here, there] = two(Tested::default());
    // 115 degrees of longitude at 20 degrees south.
    let far = Tested {
        longitude_deg: 115.0,
        time_zone: "Australia/Perth",
        ..there
    };
    let refused = refusal([here, far]);
    for part in [
        "instrument id \"sun\"",
        "instrument id \"scale\"",
        "km away on the same day, 2026-04-01",
        "give each its own id",
    ] {
        assert!(refused.contains(part), "{part}: {refused}");
    }
    let days_later = Tested {
        first_day: 11,
        ..far
    };
    assert_eq!(refusal([here, days_later]), "");
    let near = Tested {
        longitude_deg: 0.5,
        ..there
    };
    assert_eq!(refusal([here, near]), "");
    // One id for two kinds of instruments is no instrument that both have.
    let others = SHARED.replace("id = ", "id = \"of-there\" # ");
    let others = others.replacen("id = \"of-there\"", "id = \"scale\"", 1);
    let other_kind = Tested {
        instruments: &others,
        ..far
    };
    assert_eq!(refusal([here, other_kind]), "");
}
