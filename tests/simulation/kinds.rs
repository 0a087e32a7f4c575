//! Invented campaigns of a box, a dish and a dry pot whose true figures are known, written as
//! files and read by the whole tool.

use std::fmt::Write as _;

use rand_xoshiro::rand_core::SeedableRng;
use simmerline::procedure::Assessment;
use simmerline::stats::monte_carlo::{Generator, normal, rectangular};

/// Specific heat of water that the practice fixes, J/(kg K).
const WATER_J_PER_KG_K: f64 = 4186.0;
/// Ends of the range between which a thermometer's tolerance holds, °C.
const ENDS_C: [f64; 2] = [20.0, 100.0];
/// What single readings are off by: temperatures, K, and irradiance, W/m².
const NOISE_K: f64 = 0.1;
const NOISE_W_M2: f64 = 1.0;
/// Standard deviation of the losses from day to day, as a fraction.
const LOSS_BY_DAY: f64 = 0.03;
/// Standard uncertainties of what is stated: irradiance and mass, fractions; the vessel's
/// thermometer and that of the air, K; tolerance of the water's thermometer, K, and of the oven's
/// dial; how far the vessel's heat may be off, a fraction.
const IRRADIANCE: f64 = 0.02;
const MASS: f64 = 0.003;
const VESSEL_K: f64 = 0.8;
const AIR_K: f64 = 0.3;
const WATER_WITHIN_K: f64 = 0.5;
const DIAL_WITHIN_K: f64 = 10.0;
const VESSEL_HEAT_WITHIN: f64 = 0.10;

/// The box: A, η0, U, F', C of the plate, M, C of the vessels.
const BOX_M2: f64 = 0.25;
const BOX_ETA0: f64 = 0.605;
const BOX_LOSS: f64 = 5.0;
const BOX_F: f64 = 0.85;
const PLATE_J_PER_K: f64 = 1500.0;
const BOX_KG: f64 = 2.0;
const BOX_VESSEL: f64 = 930.0;
pub const F1: f64 = BOX_ETA0 / BOX_LOSS;

/// The dish: Ap, At, F'UL, F'η0, M, C of the vessel.
const DISH_M2: f64 = 1.4;
const LOSS_M2: f64 = 0.15;
pub const LOSS_FACTOR: f64 = 15.0;
pub const OPTICAL_FACTOR: f64 = 0.42;
const DISH_KG: f64 = 4.0;
const DISH_VESSEL: f64 = 800.0;

/// The dry pot: η A, u, C.
const POT_GAIN_M2: f64 = 0.132;
const POT_LOSS: f64 = 0.8;
const POT_J_PER_K: f64 = 900.0;
pub const POT_DIFFERENCE: f64 = POT_GAIN_M2 / POT_LOSS;

/// A campaign as the tool sees it, and the share of the light that its water would keep on its
/// intervals if no day differed and nothing were read wrong.
pub struct Simulated {
    pub assessment: Assessment,
    pub energy: f64,
}

/// What the instruments of one campaign read wrong, the same in all of it.
struct Wrong {
    irradiance: f64,
    water_k: [f64; 2],
    air_k: [f64; 2],
    vessel_k: f64,
    mass: f64,
    /// True heat of the vessels for each J/K that is stated.
    vessel_heat: f64,
}

impl Wrong {
    fn draw(generator: &mut Generator, vessel_k: f64, has_dial: bool) -> Wrong {
        let within = |generator: &mut Generator| rectangular(generator) / 3.0_f64.sqrt();
        Wrong {
            irradiance: IRRADIANCE * normal(generator),
            water_k: [0, 1].map(|_| WATER_WITHIN_K * within(generator)),
            air_k: [0, 1].map(|_| AIR_K * normal(generator)),
            vessel_k: if has_dial {
                DIAL_WITHIN_K * within(generator)
            } else {
                vessel_k * normal(generator)
            },
            mass: MASS * normal(generator),
            vessel_heat: 1.0 + VESSEL_HEAT_WITHIN * within(generator),
        }
    }
}

/// What a thermometer reads that is off at either end of its range.
fn read_c(true_c: f64, [cold_k, hot_k]: [f64; 2]) -> f64 {
    let share = (true_c - ENDS_C[0]) / (ENDS_C[1] - ENDS_C[0]);
    true_c + cold_k * (1.0 - share) + hot_k * share
}

/// One run: a body of some heat capacity (J/K) that gains g·G and loses u·(T − Ta).
struct Body {
    gain_m2: f64,
    loss_w_per_k: f64,
    j_per_k: f64,
    start_c: f64,
    /// It is over at this temperature, or after so many minutes.
    end_c: f64,
    most_min: usize,
    ends_below: bool,
}

/// Sun and air of a day.
struct Day {
    day: usize,
    first_min: usize,
    highest_w_m2: f64,
    cool_c: f64,
}

impl Day {
    /// About noon, with two slow waves of 2 % that are no clouds.
    fn sun_w_m2(&self, minute: f64) -> f64 {
        let off_noon_h = (self.first_min as f64 + minute - 720.0) / 60.0;
        let wave = 0.02 * (minute / 40.0 + self.day as f64).sin();
        self.highest_w_m2 * (1.0 - 0.008 * off_noon_h * off_noon_h + wave)
    }

    fn air_c(&self, minute: f64) -> f64 {
        self.cool_c + minute / 100.0
    }
}

/// Temperatures of a run, one a minute; a tenth of a minute a step, by the midpoint.
fn solve(body: &Body, day: &Day, sun: f64) -> Vec<f64> {
    const STEPS: usize = 10;
    let step_s = 60.0 / STEPS as f64;
    let rate = |minute: f64, c: f64| {
        let gain_w = body.gain_m2 * sun * day.sun_w_m2(minute);
        (gain_w - body.loss_w_per_k * (c - day.air_c(minute))) / body.j_per_k
    };
    let mut at_c = body.start_c;
    let mut found = vec![at_c];
    for minute in 0..body.most_min {
        for step in 0..STEPS {
            let from = minute as f64 + step as f64 / STEPS as f64;
            let half_c = at_c + rate(from, at_c) * step_s / 2.0;
            at_c += rate(from + 0.5 / STEPS as f64, half_c) * step_s;
        }
        found.push(at_c);
        if (at_c >= body.end_c) != body.ends_below {
            break;
        }
    }
    found
}

/// The kind of a log, for its column and how it is read.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Water,
    Cooling,
    Dry,
    /// An oven's dial, read every ten minutes to 5 °F.
    Dial,
}

impl Kind {
    fn word(self) -> &'static str {
        match self {
            Kind::Water => "water",
            Kind::Cooling => "cooling",
            Kind::Dry | Kind::Dial => "dry",
        }
    }
}

/// A campaign that grows run by run.
struct Growing {
    generator: Generator,
    wrong: Wrong,
    text: String,
    folder: tempfile::TempDir,
    runs: usize,
}

impl Growing {
    fn new(seed: u64, has_dial: bool) -> Growing {
        let mut generator = Generator::seed_from_u64(seed);
        let wrong = Wrong::draw(&mut generator, VESSEL_K, has_dial);
        Growing {
            generator,
            wrong,
            text: String::new(),
            folder: tempfile::tempdir().unwrap(),
            runs: 0,
        }
    }

    fn day(&mut self, day: usize, first_min: usize, highest_w_m2: f64) -> Day {
        Day {
            day,
            first_min,
            highest_w_m2: highest_w_m2 * (1.0 + 0.02 * normal(&mut self.generator)),
            cool_c: 25.0 + 2.0 * normal(&mut self.generator),
        }
    }

    /// Losses of one day for each of the mean.
    fn losses(&mut self) -> f64 {
        1.0 + LOSS_BY_DAY * normal(&mut self.generator)
    }

    fn add(&mut self, kind: Kind, day: &Day, solved: &[f64]) {
        let column = if kind.word() == "dry" {
            "vessel_c"
        } else {
            "water_c"
        };
        let mut log = format!("time,{column},ambient_c,irradiance_w_m2,wind_m_s\n");
        let noise = |generator: &mut Generator, of: f64| of * normal(generator);
        let wrong = &self.wrong;
        for (minute, true_c) in solved.iter().enumerate() {
            if kind == Kind::Dial && minute % 10 != 0 {
                continue;
            }
            let generator = &mut self.generator;
            let seen_c = match kind {
                Kind::Water | Kind::Cooling => read_c(*true_c, wrong.water_k),
                Kind::Dry | Kind::Dial => true_c + wrong.vessel_k,
            } + noise(generator, NOISE_K);
            let seen_c = if kind == Kind::Dial {
                (((seen_c * 1.8 + 32.0) / 5.0).round() * 5.0 - 32.0) / 1.8
            } else {
                seen_c
            };
            let air_c = read_c(day.air_c(minute as f64), wrong.air_k) + noise(generator, NOISE_K);
            let sun_w_m2 = if kind == Kind::Cooling {
                0.0
            } else {
                day.sun_w_m2(minute as f64) * (1.0 + wrong.irradiance)
                    + noise(generator, NOISE_W_M2)
            };
            let clock_min = day.first_min + minute;
            writeln!(
                log,
                "2026-04-{:02} {:02}:{:02}:00,{seen_c:.8},{air_c:.2},{sun_w_m2:.1},0.4",
                day.day,
                clock_min / 60,
                clock_min % 60,
            )
            .unwrap();
        }
        self.runs += 1;
        let name = format!("{}.csv", self.runs);
        std::fs::write(self.folder.path().join(&name), log).unwrap();
        let word = kind.word();
        write!(self.text, "[[run]]\nlog = \"{name}\"\nkind = \"{word}\"\n").unwrap();
    }

    fn assess(self, tables: &str, vessel: &str) -> Assessment {
        let text = format!(
            "# Invented data, made by tests/simulation/kinds.rs\n\
             [campaign]\ntitle = \"Simulated\"\ndemonstration = true\n\
             [site]\nname = \"Nowhere flats (invented)\"\nlatitude_deg = -20.0\n\
             longitude_deg = 0.0\nelevation_m = 100\ntime_zone = \"UTC\"\n\
             [instruments.water_temperature]\nclass = \"thermocouple-t-1\"\n\
             [instruments.ambient_temperature]\nuncertainty_k = {AIR_K:?}\n\
             [instruments.vessel_temperature]\n{vessel}\n\
             [instruments.water_mass]\nrelative_uncertainty = {MASS:?}\n\
             {tables}relative_uncertainty = {IRRADIANCE:?}\n{}",
            self.text
        );
        std::fs::write(self.folder.path().join("campaign.toml"), text).unwrap();
        simmerline::assess_folder(self.folder.path()).unwrap()
    }
}

/// A day of water as it would have been without days that differ.
struct Nominal {
    day: Day,
    water_c: Vec<f64>,
}

/// Energy of the tool's own sound intervals with nothing read wrong: heat of the water over light
/// on the area, by minutes.
fn nominal_energy(assessment: &Assessment, days: &[Nominal], (kg, area_m2): (f64, f64)) -> f64 {
    use simmerline::procedure::heat_balance::fit::is_sound;
    let (mut heat_j, mut light_j) = (0.0, 0.0);
    for interval in assessment.s580.intervals.iter().filter(|one| is_sound(one)) {
        let Nominal { day, water_c } = &days[interval.run];
        let midnight_us = {
            let first_us = assessment.tested.runs[interval.run]
                .readings
                .water_c
                .time_us[0];
            first_us - day.first_min as i64 * 60_000_000
        };
        let minute = |time_us: i64| ((time_us - midnight_us) / 60_000_000) as usize - day.first_min;
        let span = interval.measured.span;
        let (from, to) = (minute(span.from_us), minute(span.to_us));
        heat_j += kg * WATER_J_PER_KG_K * (water_c[to] - water_c[from]);
        let light = (from..to).map(|minute| day.sun_w_m2(minute as f64 + 0.5) * 60.0);
        light_j += area_m2 * light.sum::<f64>();
    }
    heat_j / light_j
}

/// A box on so many days of either kind.
pub fn simulate_box(seed: u64, days: usize) -> Simulated {
    let mut growing = Growing::new(seed, false);
    let mut nominals = Vec::new();
    for day in 1..=days {
        let loss = growing.losses();
        let plate = Body {
            gain_m2: BOX_M2 * BOX_ETA0,
            loss_w_per_k: BOX_M2 * BOX_LOSS * loss,
            j_per_k: PLATE_J_PER_K,
            start_c: 40.0,
            end_c: f64::INFINITY,
            most_min: 150,
            ends_below: false,
        };
        let of_dry = growing.day(day, 630, 860.0);
        let solved = solve(&plate, &of_dry, 1.0);
        growing.add(Kind::Dry, &of_dry, &solved);
        let loss = growing.losses();
        let water = |loss: f64, wrong: &Wrong| Body {
            gain_m2: BOX_M2 * BOX_F * BOX_ETA0,
            loss_w_per_k: BOX_M2 * BOX_F * BOX_LOSS * loss,
            j_per_k: BOX_KG * (1.0 - wrong.mass) * WATER_J_PER_KG_K
                + BOX_VESSEL * wrong.vessel_heat,
            start_c: 35.0,
            end_c: 97.0,
            most_min: 240,
            ends_below: false,
        };
        let of_water = growing.day(10 + day, 600, 860.0);
        let solved = solve(&water(loss, &growing.wrong), &of_water, 1.0);
        growing.add(Kind::Water, &of_water, &solved);
        let mut nominal = water(1.0, &growing.wrong);
        nominal.end_c = f64::INFINITY;
        nominals.push(Nominal {
            water_c: solve(&nominal, &of_water, 1.0),
            day: of_water,
        });
    }
    let kg = BOX_KG * (1.0 - growing.wrong.mass);
    let tables = format!(
        "[cooker]\nname = \"Simulated box\"\ntype = \"box\"\nintercept_area_m2 = {BOX_M2:?}\n\
         [load]\nwater_kg = {BOX_KG:?}\nvessel_heat_capacity_j_per_k = {BOX_VESSEL:?}\n\
         [instruments.irradiance]\nplane = \"horizontal\"\n"
    );
    let assessment = growing.assess(&tables, &format!("uncertainty_k = {VESSEL_K:?}"));
    let energy = nominal_energy(&assessment, &nominals, (kg, BOX_M2));
    Simulated { assessment, energy }
}

/// What F2 truly is for a box whose vessels store as much as is true of this campaign.
pub fn true_f2(seed: u64) -> f64 {
    let growing = Growing::new(seed, false);
    let water_j_per_k = BOX_KG * (1.0 - growing.wrong.mass) * WATER_J_PER_KG_K;
    let vessel_j_per_k = BOX_VESSEL * growing.wrong.vessel_heat;
    BOX_F * BOX_ETA0 * water_j_per_k / (water_j_per_k + vessel_j_per_k)
}

/// A dish on so many days of either kind.
pub fn simulate_dish(seed: u64, days: usize) -> Simulated {
    let mut growing = Growing::new(seed, false);
    let mut nominals = Vec::new();
    let body = |loss: f64, wrong: &Wrong| Body {
        gain_m2: OPTICAL_FACTOR * DISH_M2,
        loss_w_per_k: LOSS_FACTOR * LOSS_M2 * loss,
        j_per_k: DISH_KG * (1.0 - wrong.mass) * WATER_J_PER_KG_K + DISH_VESSEL * wrong.vessel_heat,
        start_c: 28.0,
        end_c: 97.0,
        most_min: 90,
        ends_below: false,
    };
    for day in 1..=days {
        let loss = growing.losses();
        let heated = body(loss, &growing.wrong);
        let of_water = growing.day(10 + day, 660, 720.0);
        let solved = solve(&heated, &of_water, 1.0);
        growing.add(Kind::Water, &of_water, &solved);
        let nominal = Body {
            end_c: f64::INFINITY,
            ..body(1.0, &growing.wrong)
        };
        nominals.push(Nominal {
            water_c: solve(&nominal, &of_water, 1.0),
            day: of_water,
        });
        let loss = growing.losses();
        let cooled = Body {
            start_c: 92.0,
            end_c: 45.0,
            most_min: 240,
            ends_below: true,
            ..body(loss, &growing.wrong)
        };
        let of_cooling = growing.day(day, 810, 720.0);
        let solved = solve(&cooled, &of_cooling, 0.0);
        growing.add(Kind::Cooling, &of_cooling, &solved);
    }
    let kg = DISH_KG * (1.0 - growing.wrong.mass);
    let tables = format!(
        "[cooker]\nname = \"Simulated dish\"\ntype = \"concentrating\"\n\
         intercept_area_m2 = {DISH_M2:?}\nloss_area_m2 = {LOSS_M2:?}\n\
         [load]\nwater_kg = {DISH_KG:?}\nvessel_heat_capacity_j_per_k = {DISH_VESSEL:?}\n\
         [instruments.irradiance]\nplane = \"normal\"\n"
    );
    let assessment = growing.assess(&tables, &format!("uncertainty_k = {VESSEL_K:?}"));
    let energy = nominal_energy(&assessment, &nominals, (kg, DISH_M2));
    Simulated { assessment, energy }
}

/// τ0 of this campaign's dish, whose vessel stores as much as is true of it, s.
pub fn true_time_constant_s(seed: u64) -> f64 {
    let wrong = Growing::new(seed, false).wrong;
    let water_j_per_k = DISH_KG * (1.0 - wrong.mass) * WATER_J_PER_KG_K;
    (water_j_per_k + DISH_VESSEL * wrong.vessel_heat) / (LOSS_FACTOR * LOSS_M2)
}

/// A dry pot on so many days, with an oven's dial or a thermocouple.
pub fn simulate_pot(seed: u64, days: usize, has_dial: bool) -> Assessment {
    let mut growing = Growing::new(seed, has_dial);
    let kind = if has_dial { Kind::Dial } else { Kind::Dry };
    for day in 1..=days {
        let loss = growing.losses();
        let pot = Body {
            gain_m2: POT_GAIN_M2,
            loss_w_per_k: POT_LOSS * loss,
            j_per_k: POT_J_PER_K,
            start_c: 30.0,
            end_c: f64::INFINITY,
            most_min: 170,
            ends_below: false,
        };
        let of_dry = growing.day(day, 630, 880.0);
        let solved = solve(&pot, &of_dry, 1.0);
        growing.add(kind, &of_dry, &solved);
    }
    let tables = "[cooker]\nname = \"Simulated pot\"\ntype = \"panel\"\nintercept_area_m2 = 0.4\n\
                  [instruments.irradiance]\nplane = \"normal\"\n";
    let vessel = if has_dial {
        "class = \"oven-dial\"".to_owned()
    } else {
        format!("uncertainty_k = {VESSEL_K:?}")
    };
    growing.assess(tables, &vessel)
}
