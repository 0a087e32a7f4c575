//! The acceptance half angle that a report finds, held against invented campaigns whose optics are
//! known: the whole tool, from logs with notes to the range that is printed.
//!
//! `cargo test --release --test simulation aim -- --nocapture` prints every share;
//! `SIMMERLINE_CASES=200` tries more campaigns of each kind.

use std::fmt::Write as _;
use std::sync::atomic::{AtomicU64, Ordering};

use rand_xoshiro::rand_core::{Rng, SeedableRng};
use simmerline::physics::sun::{SunPosition, sun_position};
use simmerline::procedure::acceptance::Acceptance;
use simmerline::stats::monte_carlo::{Generator, normal};

const WATER_J_PER_KG_K: f64 = 4186.0;
const WATER_KG: f64 = 7.0;
const LATITUDE_DEG: f64 = -20.0;
/// 2026-04-01 00:00 UTC, s since 1970.
const FIRST_DAY_S: f64 = 1_775_001_600.0;
/// Solar time is four minutes behind at longitude 0 in April.
const BEGIN_S: f64 = 10.0 * 3600.0;
const RUN_S: f64 = 3.7 * 3600.0;

/// How gain falls off beyond the axis, by its angle over that at which a tenth is lost.
#[derive(Debug, Clone, Copy)]
enum Optics {
    /// As the fit has it.
    Bell,
    /// Flat up to nine tenths of the angle, and from there straight down.
    Trapezoid,
    /// Straight down from the axis.
    Tent,
    /// Flatter at the axis than a bell: 0.9 to the fourth power of the angle.
    Flat,
    /// No fall at all.
    None,
}

impl Optics {
    fn share(self, x: f64) -> f64 {
        match self {
            Optics::Bell => 0.9_f64.powf(x * x),
            Optics::Trapezoid => (1.0 - (x - 0.9).max(0.0)).max(0.0),
            Optics::Tent => (1.0 - 0.1 * x).max(0.0),
            Optics::Flat => 0.9_f64.powf(x.powi(4)),
            Optics::None => 1.0,
        }
    }
}

/// What an invented campaign is made of.
#[derive(Debug, Clone, Copy)]
struct Aimed {
    optics: Optics,
    /// Angle at which a tenth of the gain is lost, degrees.
    half_angle_deg: f64,
    /// From one reading to the next, and from one aiming to the next.
    step_s: f64,
    every_min: f64,
    /// Standard deviation of the time of an aiming, and of its direction on either axis.
    late_min: f64,
    miss_deg: f64,
    days: usize,
    /// Step in which the water is read, and standard deviation of its noise, K.
    step_k: f64,
    noise_k: f64,
    gain_by_day: f64,
    clouds_per_h: f64,
    /// Heat capacity between the absorber and the water, J/K, whose heat comes late.
    pot_j_per_k: f64,
    /// Loss that grows with the temperature difference, W/K².
    loss_w_per_k2: f64,
    /// The wind changes the loss slowly, by this share.
    loss_drift: f64,
}

impl Default for Aimed {
    fn default() -> Self {
        Aimed {
            optics: Optics::Bell,
            half_angle_deg: 5.0,
            step_s: 60.0,
            every_min: 25.0,
            late_min: 3.0,
            miss_deg: 0.5,
            days: 4,
            step_k: 0.1,
            noise_k: 0.05,
            gain_by_day: 0.03,
            clouds_per_h: 0.3,
            pot_j_per_k: 900.0,
            loss_w_per_k2: 0.006,
            loss_drift: 0.1,
        }
    }
}

fn sun(unix_s: f64) -> SunPosition {
    sun_position(unix_s, LATITUDE_DEG, 0.0, 100.0).unwrap()
}

impl Aimed {
    fn simulate(&self, seed: u64) -> Option<Acceptance> {
        let mut generator = Generator::seed_from_u64(seed);
        let folder = tempfile::tempdir().unwrap();
        let mut text = format!(
            r#"# Invented data, made by tests/simulation/aim.rs
[campaign]
title = "Simulated dish"
demonstration = true
tester = "N. Nobody (invented)"
[cooker]
name = "Simulated dish"
type = "concentrating"
intercept_area_m2 = 1.0
[site]
name = "Nowhere flats (invented)"
latitude_deg = {LATITUDE_DEG:.1}
longitude_deg = 0.0
elevation_m = 100
time_zone = "UTC"
[load]
water_kg = {WATER_KG:.1}
[instruments.irradiance]
plane = "normal"
relative_uncertainty = 0.025
[instruments.water_temperature]
uncertainty_k = 0.5
"#
        );
        for day in 0..self.days {
            let name = format!("{day}.csv");
            std::fs::write(folder.path().join(&name), self.log(day, &mut generator)).unwrap();
            write!(text, "[[run]]\nlog = \"{name}\"\n").unwrap();
        }
        std::fs::write(folder.path().join("campaign.toml"), text).unwrap();
        simmerline::assess_folder(folder.path()).unwrap().acceptance
    }

    /// A day's log, reckoned in steps of ten seconds.
    fn log(&self, day: usize, generator: &mut Generator) -> String {
        const TICK_S: f64 = 10.0;
        let unit = |generator: &mut Generator| (generator.next_u64() >> 11) as f64 / 2f64.powi(53);
        let gain_m2 = 0.31 * (1.0 + self.gain_by_day * normal(generator));
        let heat_j_per_k = WATER_KG * WATER_J_PER_KG_K;
        let ambient_begin_c = 26.0 + 2.0 * normal(generator);
        let mut water_c = ambient_begin_c + 5.0;
        let mut pot_w = 0.0;
        let (mut cloud, mut cloud_left_s) = (1.0, 0.0);
        let (mut next_aim_s, mut axis, mut is_noted) = (0.0, (0.0, 0.0), false);
        let phase = unit(generator) * std::f64::consts::TAU;
        let mut text = String::from("time,water_c,ambient_c,irradiance_w_m2,wind_m_s,notes\n");
        let ticks = (RUN_S / TICK_S) as usize;
        let ticks_a_row = (self.step_s / TICK_S) as usize;
        for tick in 0..ticks {
            let since_s = tick as f64 * TICK_S;
            let unix_s = FIRST_DAY_S + day as f64 * 86_400.0 + BEGIN_S + since_s;
            if since_s >= next_aim_s {
                let at = sun(unix_s);
                // Zenith and azimuth of the axis, with what the hand misses by.
                let miss_deg = self.miss_deg * normal(generator);
                let across_deg = self.miss_deg * normal(generator);
                let sine = at.zenith_deg.to_radians().sin().max(0.1);
                axis = (at.zenith_deg + miss_deg, at.azimuth_deg + across_deg / sine);
                let after_s = 60.0 * (self.every_min + self.late_min * normal(generator)).max(3.0);
                // Whoever reads by hand aims when reading.
                let steps = (after_s / self.step_s).round().max(1.0);
                let is_by_hand = self.step_s >= 300.0;
                next_aim_s = since_s
                    + if is_by_hand {
                        steps * self.step_s
                    } else {
                        after_s
                    };
                is_noted = true;
            }
            cloud_left_s -= TICK_S;
            if cloud_left_s <= 0.0 {
                cloud = 1.0;
                if unit(generator) < self.clouds_per_h * TICK_S / 3600.0 {
                    cloud = 0.3 + 0.6 * unit(generator);
                    cloud_left_s = 60.0 * (2.0 + 10.0 * unit(generator));
                }
            }
            let off_noon_h = (since_s - RUN_S / 2.0) / 3600.0;
            let sun_w_m2 = 900.0 * (1.0 - 0.008 * off_noon_h * off_noon_h) * cloud;
            let ambient_c = ambient_begin_c + since_s / 7200.0;
            if tick % ticks_a_row == 0 {
                let read_c = water_c + self.noise_k * normal(generator);
                let read_c = (read_c / self.step_k).round() * self.step_k;
                let clock_s = BEGIN_S + since_s;
                writeln!(
                    text,
                    "2026-04-{:02} {:02}:{:02}:{:02},{read_c:.3},{ambient_c:.2},{:.1},0.4,{}",
                    day + 1,
                    (clock_s / 3600.0) as usize,
                    (clock_s / 60.0) as usize % 60,
                    clock_s as usize % 60,
                    sun_w_m2 * (1.0 + 0.003 * normal(generator)),
                    if is_noted { "moved it" } else { "" },
                )
                .unwrap();
                is_noted = false;
            }
            let axis_at = SunPosition {
                zenith_deg: axis.0,
                azimuth_deg: axis.1,
            };
            let angle_deg = sun(unix_s).apart_deg(&axis_at);
            let share = self.optics.share(angle_deg / self.half_angle_deg);
            let difference_k = water_c - ambient_c;
            let wind = 1.0 + self.loss_drift * (phase + since_s / 1500.0).sin();
            let loss_w =
                (1.6 * difference_k + self.loss_w_per_k2 * difference_k * difference_k) * wind;
            let absorbed_w = gain_m2 * share * sun_w_m2;
            // The pot passes heat on with a delay of its capacity over 10 W/K.
            let delay_s = (self.pot_j_per_k / 10.0).max(TICK_S);
            pot_w += (absorbed_w - pot_w) * TICK_S / delay_s;
            water_c = (water_c + (pot_w - loss_w) * TICK_S / heat_j_per_k).min(99.6);
        }
        text
    }
}

/// How many campaigns of a kind say what.
#[derive(Debug, Default, Clone, Copy)]
struct Said {
    campaigns: usize,
    shows: usize,
    covers: usize,
    /// The lower end is at most the truth: a plan made by it is cautious.
    cautious: usize,
    value_deg: f64,
    lower_deg: f64,
    upper_deg: f64,
}

fn all(scenario: &Aimed, campaigns: u64) -> Said {
    let next = AtomicU64::new(0);
    let work = || {
        let mut said = Said::default();
        loop {
            let seed = next.fetch_add(1, Ordering::Relaxed);
            if seed >= campaigns {
                return said;
            }
            said.campaigns += 1;
            let acceptance = scenario.simulate(seed).expect("its logs have notes");
            let Some(found) = acceptance.half_angle else {
                continue;
            };
            let truth_deg = scenario.half_angle_deg;
            let range = found.range_deg;
            said.shows += 1;
            said.covers += usize::from(range.lower <= truth_deg && truth_deg <= range.upper);
            said.cautious += usize::from(range.lower <= truth_deg);
            said.value_deg += found.value_deg;
            said.lower_deg += range.lower;
            said.upper_deg += range.upper;
        }
    };
    std::thread::scope(|scope| {
        let threads = [scope.spawn(work), scope.spawn(work)];
        let [one, two] = threads.map(|thread| thread.join().unwrap());
        let shows = (one.shows + two.shows).max(1) as f64;
        Said {
            campaigns: one.campaigns + two.campaigns,
            shows: one.shows + two.shows,
            covers: one.covers + two.covers,
            cautious: one.cautious + two.cautious,
            value_deg: (one.value_deg + two.value_deg) / shows,
            lower_deg: (one.lower_deg + two.lower_deg) / shows,
            upper_deg: (one.upper_deg + two.upper_deg) / shows,
        }
    })
}

fn campaigns() -> u64 {
    let asked = std::env::var("SIMMERLINE_CASES").ok();
    asked.map_or(24, |cases| cases.parse().expect("a number of campaigns"))
}

/// What a kind of campaign has to do.
enum Must {
    /// Show nothing in all but so many.
    NotShow { but: usize },
    /// Cover in all but one, and one in ten, of those that show, of which there are at least so many
    /// in ten.
    Cover { tenths: usize },
}

/// Prints what was found, and names what does not do what it must.
fn failing(what: &str, scenario: &Aimed, must: &Must) -> Option<String> {
    let said = all(scenario, campaigns());
    println!(
        "| {what} | {} | {} | {} | {} | {:.1} | {:.1} to {:.1} |",
        said.campaigns,
        said.shows,
        said.covers,
        said.cautious,
        said.value_deg,
        said.lower_deg,
        said.upper_deg
    );
    let fails = match must {
        Must::NotShow { but } => said.shows > *but,
        Must::Cover { tenths } => {
            10 * said.shows < tenths * said.campaigns
                || said.covers + 1 + said.shows / 10 < said.shows
                || said.cautious + 1 + said.shows / 10 < said.shows
        }
    };
    fails.then(|| what.to_owned())
}

/// How a campaign is read: step, s, and resolution and noise of the thermometer, K.
const READ: &[(&str, f64, f64, f64)] = &[
    ("10 s, 0.1 K", 10.0, 0.1, 0.05),
    ("1 min, 0.1 K", 60.0, 0.1, 0.05),
    ("5 min, 0.1 K", 300.0, 0.1, 0.05),
    ("1 min, 1 °F", 60.0, 0.556, 0.1),
    ("1 min, 5 °F", 60.0, 2.778, 0.3),
];

#[test]
fn gain_that_does_not_fall_shows_no_half_angle() {
    let none = Aimed {
        optics: Optics::None,
        ..Aimed::default()
    };
    let mut failed = Vec::new();
    for (read, step_s, step_k, noise_k) in READ {
        let scenario = Aimed {
            step_s: *step_s,
            step_k: *step_k,
            noise_k: *noise_k,
            ..none
        };
        let what = format!("no fall; {read}");
        failed.extend(failing(&what, &scenario, &Must::NotShow { but: 1 }));
    }
    let cloudy = Aimed {
        clouds_per_h: 4.0,
        ..none
    };
    failed.extend(failing(
        "no fall; four clouds an hour",
        &cloudy,
        &Must::NotShow { but: 1 },
    ));
    // Read too seldom: nothing is said, whatever the fall.
    let seldom = Aimed {
        step_s: 600.0,
        ..Aimed::default()
    };
    failed.extend(failing(
        "5°; 10 min, 0.1 K",
        &seldom,
        &Must::NotShow { but: 0 },
    ));
    assert!(failed.is_empty(), "shows where it should not: {failed:?}");
}

#[test]
fn a_range_holds_the_half_angle_whatever_the_reading() {
    let mut failed = Vec::new();
    for (read, step_s, step_k, noise_k) in READ {
        for (half_angle_deg, tenths) in [(3.0, 5), (5.0, 3), (8.0, 0), (20.0, 0)] {
            let scenario = Aimed {
                half_angle_deg,
                step_s: *step_s,
                step_k: *step_k,
                noise_k: *noise_k,
                ..Aimed::default()
            };
            let tenths = if *step_k > 1.0 { 0 } else { tenths };
            let what = format!("{half_angle_deg}°; {read}");
            failed.extend(failing(&what, &scenario, &Must::Cover { tenths }));
        }
    }
    assert!(failed.is_empty(), "cover too little: {failed:?}");
}

#[test]
fn a_range_holds_the_half_angle_whatever_the_optics_and_the_pot() {
    let usual = Aimed::default();
    let of = |optics: Optics, half_angle_deg: f64| Aimed {
        optics,
        half_angle_deg,
        ..usual
    };
    let mut failed = Vec::new();
    for optics in [Optics::Trapezoid, Optics::Tent, Optics::Flat] {
        for half_angle_deg in [2.0, 3.0, 5.0] {
            let what = format!("{half_angle_deg}°, {optics:?}");
            let must = Must::Cover { tenths: 3 };
            failed.extend(failing(&what, &of(optics, half_angle_deg), &must));
        }
    }
    // The sun stands 15° off after an hour.
    let hourly = |half_angle_deg: f64| Aimed {
        half_angle_deg,
        every_min: 60.0,
        ..usual
    };
    let pot = |pot_j_per_k: f64| Aimed {
        half_angle_deg: 4.0,
        pot_j_per_k,
        ..usual
    };
    let missed = Aimed {
        half_angle_deg: 4.0,
        miss_deg: 1.0,
        ..usual
    };
    for (what, scenario) in [
        ("8°, aimed every hour", hourly(8.0)),
        ("12°, aimed every hour", hourly(12.0)),
        ("4°, no pot between", pot(0.0)),
        ("4°, heavy pot: heat four minutes late", pot(2400.0)),
        ("4°, aimed to 1°", missed),
    ] {
        failed.extend(failing(what, &scenario, &Must::Cover { tenths: 0 }));
    }
    assert!(failed.is_empty(), "cover too little: {failed:?}");
}
