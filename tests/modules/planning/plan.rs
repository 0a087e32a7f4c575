//! Aiming and expectation, held against geometry and the closed form of the heating.

use std::path::Path;

use simmerline::campaign::kinds::RunKind;
use simmerline::campaign::model::{OwnLimit, Site};
use simmerline::planning::aim::{aiming_times, spacing_s};
use simmerline::planning::plan;
use simmerline::procedure::s580::own_limits::check_own_limits;
use simmerline::procedure::sky::LocalSky;
use simmerline::procedure::spans::TimeSpan;
use simmerline::{assess_folder, campaign};

fn equator() -> Site {
    Site {
        name: "Nowhere (invented)".to_owned(),
        latitude_deg: 0.0,
        longitude_deg: 0.0,
        elevation_m: 0.0,
        pressure_hpa: None,
        linke_turbidity: None,
        time_zone: jiff::tz::TimeZone::UTC,
        time_zone_name: "UTC".to_owned(),
    }
}

/// Microseconds since 1970.
fn micros(text: &str) -> i64 {
    text.parse::<jiff::Timestamp>().unwrap().as_microsecond()
}

#[test]
fn at_the_equinox_on_the_equator_eleven_degrees_last_three_quarters_of_an_hour() {
    // 15° an hour: 11.25° in 45 minutes. Common practice, no published source, re-aims a
    // shallow reflector as often; times are whole minutes before the light is lost.
    let sky = LocalSky::over(&equator());
    let span = TimeSpan {
        from_us: micros("2026-03-20T10:07:26Z"),
        to_us: micros("2026-03-20T14:07:26Z"),
    };
    let times = aiming_times(&sky, &span, 11.3);
    let (shortest_s, longest_s) = spacing_s(&times).unwrap();
    assert_eq!((times.len(), shortest_s, longest_s), (6, 2700.0, 2700.0));
    // 3° in twelve minutes: a sharp dish every ten to fifteen.
    let sharp = spacing_s(&aiming_times(&sky, &span, 3.01)).unwrap();
    assert_eq!(sharp, (720.0, 720.0));
    for pair in times.windows(2) {
        let at = |time_us: i64| sky.sun(time_us as f64 / 1e6);
        let moved_deg = at(pair[0]).apart_deg(&at(pair[1]));
        assert!((11.2..=11.3).contains(&moved_deg), "{moved_deg}");
    }
}

#[test]
fn near_the_zenith_the_azimuth_races_and_the_aim_does_not() {
    // The azimuth turns by half a circle at noon; the sun itself still moves 15° an hour.
    let sky = LocalSky::over(&equator());
    let span = TimeSpan {
        from_us: micros("2026-03-20T11:50:00Z"),
        to_us: micros("2026-03-20T12:20:00Z"),
    };
    assert_eq!(aiming_times(&sky, &span, 8.0).len(), 1);
}

#[test]
fn expected_water_is_the_heat_balance_solved_by_its_integrating_factor() {
    // dx/dt = (g G − u x)/C for x above ambient gives x = e^(−u t/C)·(x0 + ∫ g G/C e^(u s/C) ds);
    // steps of a minute are within 0.02 K of it in steps of ten seconds.
    let folder = Path::new("sample-runs/box");
    let rated = assess_folder(folder).unwrap();
    let campaign =
        campaign::read_campaign(folder, campaign::Reach::Inside, check_own_limits).unwrap();
    let sky = LocalSky::over(&campaign.site);
    let date = "2026-06-30".parse().unwrap();
    let planned = plan(campaign, Some(&rated), date, RunKind::Water).unwrap();
    let expected = planned.expected.as_ref().unwrap();
    let [gain_m2, loss_w_per_k] = rated.heat_balance.as_ref().unwrap().fitted.parameters;
    let heat_j_per_k = expected.water_kg * 4186.0;
    let first = expected.moments[0];
    assert_eq!(first.water_c, expected.ambient_c + 5.0);
    let (mut gained_k, mut now_us) = (0.0, first.time_us);
    let decay = |until_us: i64| {
        let seconds = (until_us - first.time_us) as f64 / 1e6;
        (-loss_w_per_k * seconds / heat_j_per_k).exp()
    };
    for moment in &expected.moments {
        while now_us < moment.time_us {
            let middle_us = now_us + 5_000_000;
            let sun = sky.clear(middle_us as f64 / 1e6).normal_w_m2;
            gained_k += gain_m2 * sun / heat_j_per_k * 10.0 / decay(middle_us);
            now_us += 10_000_000;
        }
        let start_k = first.water_c - expected.ambient_c;
        let closed_c = expected.ambient_c + decay(moment.time_us) * (start_k + gained_k);
        if closed_c > rated.tested.boiling_point_c {
            break;
        }
        assert!(
            (moment.water_c - closed_c).abs() < 0.02,
            "{moment:?}: {closed_c}"
        );
        assert!(moment.lowest_c <= moment.water_c && moment.water_c <= moment.highest_c);
    }
    assert!(gained_k > 20.0, "{gained_k}");
}

#[test]
fn sheet_times_are_tens_by_the_clock_in_any_zone() {
    for (zone, longitude_deg) in [("+05:45", 85.3), ("-03:30", -52.7), ("+12:45", -176.5)] {
        let folder = Path::new("sample-runs/open-dish");
        let mut campaign =
            campaign::read_campaign(folder, campaign::Reach::Inside, check_own_limits).unwrap();
        campaign.site.time_zone = campaign::zone::parse_zone(zone).unwrap();
        campaign.site.longitude_deg = longitude_deg;
        campaign.site.elevation_m = 0.0;
        let zone = campaign.site.time_zone.clone();
        let planned = plan(
            campaign,
            None,
            "2026-09-30".parse().unwrap(),
            RunKind::Water,
        )
        .unwrap();
        assert!(planned.times_us.len() >= 23, "{}", planned.times_us.len());
        for time_us in planned.times_us {
            let clock = simmerline::units::local_clock(time_us, &zone);
            assert!(clock.ends_with('0'), "{clock}");
        }
        assert_eq!(
            planned
                .missing
                .map(|missing| missing.to_string())
                .as_deref(),
            Some("30 more intervals and 3 more days")
        );
    }
}

#[test]
fn sheet_times_intervals_and_load_follow_the_campaigns_own_limits() {
    let folder = Path::new("sample-runs/open-dish");
    let own = |key: &str, value: f64| OwnLimit {
        key: key.to_owned(),
        value,
    };
    let planned = |limits: Vec<OwnLimit>| {
        let mut campaign =
            campaign::read_campaign(folder, campaign::Reach::Inside, check_own_limits).unwrap();
        campaign.limits = limits;
        plan(
            campaign,
            None,
            "2026-09-30".parse().unwrap(),
            RunKind::Water,
        )
        .unwrap()
    };
    let plain = planned(Vec::new());
    let other = planned(vec![
        own("interval_s", 900.0),
        own("load_kg_m2", 6.0),
        own("intervals_min", 12.0),
    ]);
    for pair in other.times_us.windows(2) {
        assert_eq!(pair[1] - pair[0], 900_000_000);
    }
    for time_us in &other.times_us {
        assert_eq!(
            time_us % 900_000_000,
            0,
            "quarters of the hour by the clock"
        );
    }
    let span = other.day.usable.unwrap();
    let fit = (span.to_us - span.from_us) / 900_000_000;
    assert_eq!(other.most_intervals as i64, fit);
    assert!(other.most_intervals < plain.most_intervals);
    assert!((other.load_kg - plain.load_kg * 6.0 / 7.0).abs() < 1e-12);
    let missing = other.missing.unwrap().to_string();
    assert_eq!(missing, "12 more intervals and 3 more days");
}
