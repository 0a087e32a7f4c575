//! Invented campaigns whose truth is known, written as files and read by the whole tool.

use std::fmt::Write as _;
use std::path::Path;

use rand_xoshiro::rand_core::{Rng, SeedableRng};
use simmerline::procedure::Assessment;
use simmerline::stats::monte_carlo::{Generator, normal, rectangular};

/// Specific heat of water that the practice fixes, J/(kg K).
const WATER_J_PER_KG_K: f64 = 4186.0;
const WATER_KG: f64 = 7.0;
const FIRST_MINUTE: usize = 10 * 60 + 5;
/// Ends of the range between which a thermometer's tolerance holds, °C.
const ENDS_C: [f64; 2] = [20.0, 100.0];

/// What an invented campaign is made of.
#[derive(Debug, Clone, Copy)]
pub struct Scenario {
    pub irradiance_w_m2: f64,
    /// The first day of April on which it was tested, and for how many days.
    pub first_day: usize,
    pub days: usize,
    /// Gain, m², and loss, W/K.
    pub gain_m2: f64,
    pub loss_w_per_k: f64,
    /// Standard deviation from day to day of either, as a fraction.
    pub gain_by_day: f64,
    pub loss_by_day: f64,
    /// Share of the gain lost at the end of each half hour between aiming and aiming.
    pub aim_lost: f64,
    /// Clouds an hour, each of some minutes.
    pub clouds_per_h: f64,
    /// Step in which the water is read, K.
    pub step_k: f64,
    /// Tolerance of the water thermometer, K, which holds at either end independently; its
    /// class in the campaign file.
    pub tolerance_k: f64,
    pub class: &'static str,
    /// Standard uncertainty of irradiance, as a fraction.
    pub irradiance_uncertainty: f64,
    /// Heat capacity of the vessel, J/K.
    pub vessel_j_per_k: f64,
    /// Minutes from one reading to the next.
    pub every_min: usize,
    /// Gain and loss of the cooker that the last day's log is of, over those of the others.
    pub last_cooker: f64,
}

impl Default for Scenario {
    fn default() -> Self {
        Scenario {
            irradiance_w_m2: 900.0,
            first_day: 1,
            days: 4,
            gain_m2: 0.31,
            loss_w_per_k: 2.0,
            gain_by_day: 0.02,
            loss_by_day: 0.05,
            aim_lost: 0.05,
            clouds_per_h: 0.3,
            step_k: 0.1,
            tolerance_k: 0.5,
            class: "thermocouple-t-1",
            irradiance_uncertainty: 0.025,
            vessel_j_per_k: 0.0,
            every_min: 1,
            last_cooker: 1.0,
        }
    }
}

/// A campaign as the tool sees it, and what its sensor made of the sun.
pub struct Simulated {
    pub assessment: Assessment,
    /// What is read of one W/m², W/m².
    pub irradiance_read: f64,
}

/// What the instruments of one campaign read wrong, the same in all of it.
struct Wrong {
    irradiance: f64,
    water_k: [f64; 2],
    ambient_k: f64,
    mass: f64,
}

impl Scenario {
    /// Gain and loss that the water has, with the aim as it is on average and without the
    /// vessel's part of the heat.
    fn of_water(&self) -> (f64, f64) {
        let water_j_per_k = WATER_KG * WATER_J_PER_KG_K;
        let share = water_j_per_k / (water_j_per_k + self.vessel_j_per_k);
        let aim = 1.0 - self.aim_lost * 29.0 / 60.0;
        (share * aim * self.gain_m2, share * self.loss_w_per_k)
    }

    /// True power at 700 W/m² and 50 K, W.
    pub fn power_700_50_w(&self) -> f64 {
        self.power_50_w(700.0)
    }

    /// True power at 50 K and an irradiance, W.
    pub fn power_50_w(&self, irradiance_w_m2: f64) -> f64 {
        let (gain_m2, loss_w_per_k) = self.of_water();
        irradiance_w_m2 * gain_m2 - 50.0 * loss_w_per_k
    }

    /// True power at 50 K and an irradiance, in proportion to 700 W/m²: what the practice
    /// rates.
    pub fn ps50_w(&self, irradiance_w_m2: f64) -> f64 {
        self.power_50_w(irradiance_w_m2) * 700.0 / irradiance_w_m2
    }

    /// A campaign of it, assessed by the tool; `seed` makes it another one.
    pub fn simulate(&self, seed: u64) -> Simulated {
        let mut generator = Generator::seed_from_u64(seed);
        let folder = tempfile::tempdir().unwrap();
        let wrong = Wrong {
            irradiance: self.irradiance_uncertainty * normal(&mut generator),
            water_k: [0, 1]
                .map(|_| self.tolerance_k / 3.0_f64.sqrt() * rectangular(&mut generator)),
            ambient_k: 0.3 * normal(&mut generator),
            mass: 0.003 * normal(&mut generator),
        };
        let mut logs = Vec::new();
        for day in self.first_day..self.first_day + self.days {
            let name = format!("{day:02}.csv");
            let text = self.log(day, &wrong, &mut generator);
            std::fs::write(folder.path().join(&name), text).unwrap();
            logs.push(name);
        }
        self.write_campaign(folder.path(), &wrong, &logs);
        Simulated {
            assessment: simmerline::assess_folder(folder.path()).unwrap(),
            irradiance_read: 1.0 + wrong.irradiance,
        }
    }

    fn write_campaign(&self, folder: &Path, wrong: &Wrong, logs: &[String]) {
        let mut text = format!(
            r#"# Invented data, made by tests/simulation/invented.rs
[campaign]
title = "Simulated trough"
demonstration = true
tester = "N. Nobody (invented)"
[cooker]
name = "Simulated trough"
type = "concentrating"
intercept_area_m2 = 1.0
[site]
name = "Nowhere flats (invented)"
latitude_deg = -20.0
longitude_deg = 0.0
elevation_m = 100
time_zone = "UTC"
[load]
water_kg = {:.4}
[instruments.irradiance]
plane = "normal"
relative_uncertainty = {:?}
[instruments.water_temperature]
class = "{}"
[instruments.ambient_temperature]
uncertainty_k = 0.3
[instruments.water_mass]
relative_uncertainty = 0.003
"#,
            WATER_KG * (1.0 + wrong.mass),
            self.irradiance_uncertainty,
            self.class,
        );
        for log in logs {
            write!(text, "[[run]]\nlog = \"{log}\"\n").unwrap();
        }
        std::fs::write(folder.join("campaign.toml"), text).unwrap();
    }

    /// A day's log, a line a minute, from solar ten o'clock until the water is near boiling.
    fn log(&self, day: usize, wrong: &Wrong, generator: &mut Generator) -> String {
        let is_last = day + 1 == self.first_day + self.days;
        let cooker = if is_last { self.last_cooker } else { 1.0 };
        let gain_m2 = cooker * self.gain_m2 * (1.0 + self.gain_by_day * normal(generator));
        let loss_w_per_k =
            cooker * self.loss_w_per_k * (1.0 + self.loss_by_day * normal(generator));
        let of_day = 1.0 + 0.02 * normal(generator);
        let heat_j_per_k = WATER_KG * WATER_J_PER_KG_K + self.vessel_j_per_k;
        let unit = |generator: &mut Generator| (generator.next_u64() >> 11) as f64 / 2f64.powi(53);
        let cool_c = 26.0 + 2.0 * normal(generator);
        let mut water_c = cool_c + 4.0 + 4.0 * unit(generator);
        let (mut cloud, mut left_min) = (1.0, 0);
        let mut text = String::from("time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n");
        for minute in 0..235 {
            if left_min > 0 {
                left_min -= 1;
            } else if unit(generator) < self.clouds_per_h / 60.0 {
                cloud = 0.3 + 0.6 * unit(generator);
                left_min = 2 + (10.0 * unit(generator)) as usize;
            } else {
                cloud = 1.0;
            }
            let off_noon_h = (minute as f64 - 117.0) / 60.0;
            let clear_w_m2 =
                self.irradiance_w_m2 * of_day * (1.0 - 0.008 * off_noon_h * off_noon_h);
            let sun_w_m2 = clear_w_m2 * cloud;
            let ambient_c = cool_c + minute as f64 / 120.0;
            let share = (water_c - ENDS_C[0]) / (ENDS_C[1] - ENDS_C[0]);
            let off_k = wrong.water_k[0] * (1.0 - share) + wrong.water_k[1] * share;
            let read_c = water_c + off_k + 0.02 * normal(generator);
            let read_c = (read_c / self.step_k).round() * self.step_k;
            let clock_min = FIRST_MINUTE + minute;
            let line = format!(
                "2026-04-{day:02} {:02}:{:02}:00,{read_c:.3},{:.2},{:.1},0.4\n",
                clock_min / 60,
                clock_min % 60,
                ambient_c + wrong.ambient_k,
                sun_w_m2 * (1.0 + wrong.irradiance) + normal(generator),
            );
            if minute % self.every_min == 0 {
                text += &line;
            }
            let aim = 1.0 - self.aim_lost * (minute % 30) as f64 / 30.0;
            let net_w = gain_m2 * aim * sun_w_m2 - loss_w_per_k * (water_c - ambient_c);
            water_c = (water_c + net_w * 60.0 / heat_j_per_k).min(99.6);
        }
        text
    }
}
