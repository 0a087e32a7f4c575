//! Writes the logs of the sample campaigns. Everything in them is invented:
//! no cooker, person or place of these names exists.
//!
//! ```text
//! cargo run --release --example sample-runs [FOLDER]     (default: sample-runs)
//! ```
//!
//! The same program gives the same logs, byte for byte. The `campaign.toml`
//! beside the logs is written by hand and not touched.
//!
//! How a log comes about:
//!
//! - **Sun.** A clear sky lets 0.7^(AM^0.678) of the sunlight through (AM air
//!   mass; Meinel and Meinel 1976, from memory) and adds a tenth from all round,
//!   times the day's haze. A cloud takes part of it away for some minutes; its
//!   bright rim can add some.
//! - **Air.** Ambient temperature rises through the day, wind wavers about a
//!   mean; both carry first-order autoregressive noise, minute by minute.
//! - **Cooker.** One lumped heat capacity, stepped every five seconds:
//!
//!   ```text
//!   (m c + C) dT/dt = η A G f − (U + Uw v) (T − Ta)
//!   ```
//!
//!   m mass of water in kg, c = 4186 J/(kg K), C heat capacity of vessel and
//!   walls in J/K, η optical efficiency, A intercept area in m², G irradiance
//!   normal to the beam in W/m², f share of the light that still hits while the
//!   sun drifts away from a cooker aimed by hand, U and Uw heat loss in W/K and
//!   W/K per m/s, v wind in m/s, Ta ambient temperature. At the local boiling
//!   point the water stays and the surplus leaves as steam.
//!   What `truth.rs` holds is made by the same balance, in the terms of the procedures that
//!   it is for: a dry vessel without the water, a cooling pot without the sun, a box that
//!   lies flat under the irradiance of its own plane.
//! - **People and instruments.** A day's set-up is never quite that of the day
//!   before (η varies by 2.5 %, or by what a campaign says), sensors are noisy, and their readings are
//!   rounded as instruments round: 0.1 °C, 1 W/m², 0.1 m/s. What goes wrong in
//!   the field is listed day by day under `mishaps` in `scenario.rs`.

use simmerline_math::{cos, ln, pow, sin};
use std::f64::consts::PI;
use std::path::Path;
use std::{env, fs, io};

mod procedures;
mod scenario;
mod truth;

use procedures::procedure_campaigns;
use scenario::{Campaign, Cloud, Date, Day, Kind, Mishap::*, Place, Style, campaigns};
use truth::{BOX_FIGURES, DISH_COOLING, DRY_POT, WATER_J_KG_K};

/// Step of the model, s. Every log interval is a whole number of steps.
const STEP_S: i64 = 5;
/// What the sensor sees of a wall under a roof, W/m², with the sun overhead.
const SHADE_W_M2: f64 = 12.0;

fn main() -> io::Result<()> {
    let target = env::args().nth(1).unwrap_or_else(|| "sample-runs".into());
    for campaign in campaigns().into_iter().chain(procedure_campaigns()) {
        let folder = Path::new(&target).join(campaign.folder);
        fs::create_dir_all(&folder)?;
        for (index, day) in campaign.days.iter().enumerate() {
            let is_pencilled =
                matches!(campaign.style, Style::FieldSheet) && index + 1 == campaign.days.len();
            let (name, log) = match campaign.style {
                Style::FieldSheet => write_sheet(&campaign, day, is_pencilled),
                Style::Dial => (day.log_name(), write_dial(&campaign, day)),
                _ => (day.log_name(), write_log(&campaign, day)),
            };
            fs::write(folder.join(name), log)?;
        }
    }
    print_truth();
    Ok(())
}

/// The figures that the procedures have to find.
fn print_truth() {
    let (flat, dish) = (BOX_FIGURES, DISH_COOLING);
    println!(
        "box-figures: F1 {:.4} K m²/W, F2 {:.4}, g {:.4} m², u {:.4} W/K",
        flat.f1(),
        flat.f2(),
        flat.gain_m2(),
        flat.loss_w_k()
    );
    println!(
        "dish-cooling: τ0 {:.0} s, F'UL {:.2} W/(m² K), F'η0 {:.3}, g {:.4} m², u {:.4} W/K",
        dish.time_constant_s(),
        dish.loss_factor_w_m2_k,
        dish.optical_factor,
        dish.gain_m2(),
        dish.loss_w_k()
    );
    println!("dry-pot: {:.4} K m²/W", DRY_POT.difference_k_m2_w());
}

// ------------------------------------------------------------------- the model

/// What really happens, one entry a step; the sensors have yet to read it.
struct Moment {
    /// Of the water, or of the dry vessel.
    water_c: f64,
    ambient_c: f64,
    normal_w_m2: f64,
    horizontal_w_m2: f64,
    wind_m_s: f64,
}

fn heat_water(campaign: &Campaign, day: &Day, rng: &mut Rng) -> Vec<Moment> {
    let cooker = &campaign.cooker;
    // Close to the standard atmosphere at the heights where people cook.
    let boiling_c = match day.kind {
        Kind::Dry => f64::INFINITY,
        _ => 100.0 - campaign.place.elevation_m / 300.0,
    };
    let capacity_j_k = day.water_kg * WATER_J_KG_K + cooker.dead_capacity_j_k;
    let optical_efficiency = cooker.optical_efficiency * (1.0 + cooker.day_spread * rng.normal());
    let clouds = gather_clouds(day, rng);
    let length_min = (day.to - day.from + 2) as usize;
    let wind_noise = wander(length_min, 0.85, 0.25, rng);
    let air_noise = wander(length_min, 0.95, 0.25, rng);
    let sky_noise = wander(length_min, 0.80, day.sky_spread, rng);

    let mut water_c = day.water_start_c;
    let steps = (day.to - day.from) * 60 / STEP_S;
    let mut moments = Vec::new();
    for step in 0..=steps {
        let minute = (step * STEP_S) as f64 / 60.0;
        let clock_min = day.from as f64 + minute;
        let sun = sun_at(&campaign.place, day, clock_min);
        let sky = day.haze * (1.0 + between(&sky_noise, minute)) * cloud_factor(&clouds, clock_min);
        let normal_w_m2 = match day.kind {
            Kind::Cooling => SHADE_W_M2 * sun.sine_of_elevation.max(0.0),
            _ => sun.clear_normal_w_m2 * sky,
        };
        // A tenth of the light comes from the sky, the rest from the sun's place.
        let horizontal_w_m2 = normal_w_m2 * (0.9 * sun.sine_of_elevation + 0.1);
        let share = minute / (day.to - day.from) as f64;
        let ambient_c = day.ambient_c[0]
            + (day.ambient_c[1] - day.ambient_c[0]) * sin(share * PI / 2.0)
            + between(&air_noise, minute);
        let gust_m_s: f64 = (day.gusts.iter())
            .filter(|gust| (gust.from as f64..gust.to as f64).contains(&clock_min))
            .map(|gust| gust.extra_m_s)
            .sum();
        let wind_m_s = (day.wind_m_s + gust_m_s + between(&wind_noise, minute)).max(0.0);
        moments.push(Moment {
            water_c,
            ambient_c,
            normal_w_m2,
            horizontal_w_m2,
            wind_m_s,
        });

        let drift = (minute / cooker.aimed_every_min).fract();
        let on_target = 1.0 - cooker.aim_loss * drift * drift;
        let caught_w_m2 = match (day.kind, cooker.lies_flat) {
            (Kind::Cooling, _) => 0.0,
            (_, true) => horizontal_w_m2,
            (_, false) => normal_w_m2,
        };
        let mut gain_w = optical_efficiency * cooker.area_m2 * caught_w_m2 * on_target;
        let mut loss_w_k = cooker.loss_w_k + cooker.wind_loss_w_k * wind_m_s;
        let whole_min = clock_min as i64;
        for mishap in &day.mishaps {
            match mishap {
                LidOff(a, b) if (*a..*b).contains(&whole_min) => loss_w_k *= 2.0,
                OutOfFocus(a, b) if (*a..*b).contains(&whole_min) => gain_w = 0.0,
                _ => {}
            }
        }
        let net_w = gain_w - loss_w_k * (water_c - ambient_c);
        water_c = (water_c + net_w * STEP_S as f64 / capacity_j_k).min(boiling_c);
    }
    moments
}

struct Sun {
    sine_of_elevation: f64,
    clear_normal_w_m2: f64,
}

/// The sun over a clear sky, good to about a degree: enough to invent a day.
fn sun_at(place: &Place, day: &Day, clock_min: f64) -> Sun {
    let angle = 2.0 * PI * (day_of_year(day.date) - 1.0) / 365.0;
    let declination = 0.4093 * sin(angle - 1.405);
    // Equation of time, minutes, after Spencer (1971).
    let equation_min = 229.18
        * (0.000075 + 0.001868 * cos(angle)
            - 0.032077 * sin(angle)
            - 0.014615 * cos(2.0 * angle)
            - 0.040849 * sin(2.0 * angle));
    let solar_min = clock_min - 60.0 * day.utc_offset_h + 4.0 * place.longitude_deg + equation_min;
    let hour_angle = (solar_min / 60.0 - 12.0) * PI / 12.0;
    let latitude = place.latitude_deg.to_radians();
    let sine_of_elevation =
        sin(latitude) * sin(declination) + cos(latitude) * cos(declination) * cos(hour_angle);
    let air_mass = 1.0 / sine_of_elevation.max(0.05);
    let outside_w_m2 = 1361.0 * (1.0 + 0.033 * cos(angle));
    Sun {
        sine_of_elevation,
        clear_normal_w_m2: outside_w_m2 * 1.1 * pow(0.7_f64, pow(air_mass, 0.678)),
    }
}

fn day_of_year(date: Date) -> f64 {
    const BEFORE: [u32; 12] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
    f64::from(BEFORE[date.month - 1] + date.day)
}

/// The listed clouds and the stray ones.
fn gather_clouds(day: &Day, rng: &mut Rng) -> Vec<Cloud> {
    let mut clouds = day.clouds.clone();
    let hours = (day.to - day.from) as f64 / 60.0;
    for _ in 0..(hours * day.stray_clouds_per_h).round() as usize {
        clouds.push(Cloud {
            at: day.from + (rng.uniform() * hours * 60.0) as i64,
            minutes: 3.0 + 12.0 * rng.uniform(),
            depth: 0.25 + 0.45 * rng.uniform(),
            rim: 0.08 * rng.uniform(),
        });
    }
    clouds
}

/// Share of the clear-sky irradiance that clouds leave, over one at a bright rim.
fn cloud_factor(clouds: &[Cloud], clock_min: f64) -> f64 {
    (clouds.iter())
        .map(|cloud| {
            // Minutes outside the cloud's edge; negative inside it.
            let outside = (clock_min - cloud.at as f64).abs() - cloud.minutes / 2.0;
            let shade = (0.5 - outside).clamp(0.0, 1.0);
            let rim = (1.0 - (outside - 1.5).abs() / 1.0).max(0.0);
            1.0 - cloud.depth * shade + cloud.rim * rim
        })
        .product()
}

// -------------------------------------------------------------------- the logs

fn write_log(campaign: &Campaign, day: &Day) -> String {
    // Each log has its own random numbers, so that a change to one day leaves
    // the others as they are.
    let mut rng = Rng::named(&format!("{}/{}", campaign.folder, day.log_name()));
    let style = &campaign.style;
    let moments = heat_water(campaign, day, &mut rng);
    let mut log = String::from("# Invented sample data, made by sample-runs/generate.rs\n");
    log.push_str(match style {
        Style::Canonical { .. } | Style::FlatSensor if day.kind == Kind::Dry => {
            "time,vessel_c,ambient_c,irradiance_w_m2,wind_m_s\n"
        }
        Style::Canonical { .. } | Style::FlatSensor => {
            "time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n"
        }
        Style::OwnHeaders => {
            "Record,Battery V,Air,Pyranometer,Pot left,Pot right,Anemometer,Stamp\n"
        }
        Style::Notebook | Style::FieldSheet | Style::Dial => {
            "time,water_c,ambient_c,irradiance_w_m2\n"
        }
    });
    for (record, second) in (1..).zip(reading_times(style, day, &mut rng)) {
        let minute = day.from + second.div_euclid(60);
        if (day.mishaps.iter()).any(|m| matches!(m, NoLines(a, b) if (*a..*b).contains(&minute))) {
            continue;
        }
        let moment = &moments[(second / STEP_S) as usize];
        let time = write_clock(style, day, second);
        let mut cells = read_sensors(moment, style, time, &mut rng);
        for mishap in &day.mishaps {
            match mishap {
                NoIrradiance(a, b) if (*a..*b).contains(&minute) => cells.sun.clear(),
                SecondSensorBlank(a, b) if (*a..*b).contains(&minute) => cells.other_water.clear(),
                SecondSensorFault(a, b) if (*a..*b).contains(&minute) => {
                    cells.other_water = "-9999".into();
                }
                _ => {}
            }
        }
        log.push_str(&write_line(style, record, &cells));
        // A copying slip: the line comes again with the water a kelvin too warm.
        let ten_minutes = minute..minute + 10;
        if (day.mishaps.iter()).any(|m| matches!(m, LineTwice(t) if ten_minutes.contains(t))) {
            cells.water_c += 1.0;
            log.push_str(&write_line(style, record, &cells));
        }
    }
    log
}

/// A day of a field sheet, as it was typed in or as it stands there in pencil: its name and
/// its text.
fn write_sheet(campaign: &Campaign, day: &Day, is_pencilled: bool) -> (String, String) {
    let mut rng = Rng::named(&format!("{}/{}", campaign.folder, day.log_name()));
    let moments = heat_water(campaign, day, &mut rng);
    let mut text = if is_pencilled {
        String::from(
            "# Invented field sheet, made by sample-runs/generate.rs\n# clock water air wind sky notes\n",
        )
    } else {
        String::from(
            "# Invented sample data, made by sample-runs/generate.rs\ntime,water (°F),air (°F),wind (Bft),sky,notes\n",
        )
    };
    for (line, second) in (0..).zip(reading_times(&campaign.style, day, &mut rng)) {
        let moment = &moments[(second / STEP_S) as usize];
        let clock_min = day.from + second / 60;
        // Water to the nearest mark of the dial, air every second line.
        let to_mark = |celsius: f64, step: f64| ((celsius * 1.8 + 32.0) / step).round() * step;
        let water_f = to_mark(moment.water_c, 5.0);
        let air = match line % 2 {
            0 => format!("{:.0}", to_mark(moment.ambient_c, 5.0)),
            _ if is_pencilled => "-".into(),
            _ => String::new(),
        };
        let force = u8::from(moment.wind_m_s >= 0.25) + u8::from(moment.wind_m_s >= 1.55);
        let is_clear = line > 0
            && (clock_min - 10..=clock_min)
                .all(|minute| cloud_factor(&day.clouds, minute as f64) == 1.0);
        let (sky, note) = match (line, is_clear) {
            (0, _) => ("clear", "begun"),
            (_, true) => ("clear", ""),
            (_, false) => ("cloud", "sun gone for a while"),
        };
        let (hour, minute) = (clock_min / 60, clock_min % 60);
        let written = if is_pencilled {
            format!("{hour:02}:{minute:02} {water_f:.0} {air} {force} {sky} {note}")
        } else {
            let time = format!("{} {hour:02}:{minute:02}", day.date);
            format!("{time},{water_f:.0},{air},{force},{sky},{note}")
        };
        text += written.trim_end();
        text.push('\n');
    }
    let name = match is_pencilled {
        true => format!("{}.sheet.txt", day.date),
        false => day.log_name(),
    };
    (name, text)
}

/// A log of an empty pot, read off an oven's dial.
fn write_dial(campaign: &Campaign, day: &Day) -> String {
    let mut rng = Rng::named(&format!("{}/{}", campaign.folder, day.log_name()));
    let moments = heat_water(campaign, day, &mut rng);
    let mut log = String::from(
        "# Invented sample data, made by sample-runs/generate.rs\n\
         time,oven thermometer (°F),air (°F),sun meter (W/m²)\n",
    );
    for second in reading_times(&campaign.style, day, &mut rng) {
        let moment = &moments[(second / STEP_S) as usize];
        let clock_min = day.from + second / 60;
        let to_mark = |celsius: f64, step: f64| ((celsius * 1.8 + 32.0) / step).round() * step;
        let dial_f = to_mark(moment.water_c + 0.5 * rng.normal(), 5.0);
        let air_f = to_mark(moment.ambient_c, 1.0);
        // A hand wavers, and nobody reads single watts.
        let sun_w_m2 = ((moment.normal_w_m2 + 6.0 * rng.normal()) / 10.0).round() * 10.0;
        let (hour, minute) = (clock_min / 60, clock_min % 60);
        let time = format!("{} {hour:02}:{minute:02}", day.date);
        log.push_str(&format!("{time},{dial_f:.0},{air_f:.0},{sun_w_m2:.0}\n"));
    }
    log
}

/// What the sensors show at one moment; text where a mishap can spoil it.
struct Cells {
    time: String,
    water_c: f64,
    other_water: String,
    ambient_c: f64,
    sun: String,
    wind_m_s: f64,
}

fn read_sensors(moment: &Moment, style: &Style, time: String, rng: &mut Rng) -> Cells {
    let water_c = moment.water_c + 0.06 * rng.normal();
    // The second pot stands a little warmer.
    let other_water_c = moment.water_c + 0.3 + 0.06 * rng.normal();
    let ambient_c = moment.ambient_c + 0.05 * rng.normal();
    let wind_m_s = (moment.wind_m_s + 0.03 * rng.normal()).max(0.0);
    let plane_w_m2 = match style {
        Style::Notebook | Style::FlatSensor => moment.horizontal_w_m2,
        _ => moment.normal_w_m2,
    };
    Cells {
        time,
        water_c,
        other_water: format!("{other_water_c:.1}"),
        ambient_c,
        sun: format!("{:.0}", (plane_w_m2 + 1.5 * rng.normal()).max(0.0)),
        wind_m_s,
    }
}

fn write_line(style: &Style, record: u16, cells: &Cells) -> String {
    let Cells {
        time,
        water_c,
        other_water,
        ambient_c,
        sun,
        wind_m_s,
    } = cells;
    match style {
        Style::Canonical { .. } | Style::FlatSensor => {
            format!("{time},{water_c:.1},{ambient_c:.1},{sun},{wind_m_s:.1}\n")
        }
        Style::OwnHeaders => {
            let battery_v = 12.7 - 0.0004 * f64::from(record);
            format!(
                "{record},{battery_v:.2},{ambient_c:.1},{sun},\
                 {water_c:.1},{other_water},{wind_m_s:.1},{time}\n"
            )
        }
        Style::Notebook | Style::FieldSheet | Style::Dial => {
            format!("{time},{water_c:.1},{ambient_c:.1},{sun}\n")
        }
    }
}

/// Seconds after the first reading at which a line is written.
fn reading_times(style: &Style, day: &Day, rng: &mut Rng) -> Vec<i64> {
    let last = (day.to - day.from) * 60;
    match style {
        Style::Canonical { every_s } => (0..=last / every_s).map(|i| i * every_s).collect(),
        Style::OwnHeaders | Style::FlatSensor => (0..=last / 60).map(|i| i * 60).collect(),
        Style::FieldSheet => (0..=last / 600).map(|i| i * 600).collect(),
        // Every ten to fifteen minutes.
        Style::Dial => {
            let pause_s = |rng: &mut Rng| (10 + (6.0 * rng.uniform()) as i64).min(15) * 60;
            let after = |second: &i64| Some(second + pause_s(rng)).filter(|next| *next <= last);
            std::iter::successors(Some(0), after).collect()
        }
        // Nobody reads a thermometer on the dot: up to 40 s early or late.
        Style::Notebook => (0..=last / 600)
            .map(|i| {
                let jitter = ((2.0 * rng.uniform() - 1.0) * 40.0 / STEP_S as f64) as i64 * STEP_S;
                (i * 600 + jitter).clamp(0, last)
            })
            .collect(),
    }
}

/// Local clock time; a logger with headers of its own adds the offset from UTC.
fn write_clock(style: &Style, day: &Day, second: i64) -> String {
    let s = day.from * 60 + second;
    let (hour, minute, second) = (s / 3600, s / 60 % 60, s % 60);
    let (sep, offset) = match style {
        Style::OwnHeaders => ("T", format!("{:+03}:00", day.utc_offset_h as i64)),
        _ => (" ", String::new()),
    };
    format!("{}{sep}{hour:02}:{minute:02}:{second:02}{offset}", day.date)
}

// -------------------------------------------------------------- random numbers

/// SplitMix64 (Steele, Lea and Flood 2014): small, seedable, good enough here.
struct Rng(u64);

impl Rng {
    /// A generator whose seed is the FNV-1a hash of a name.
    fn named(name: &str) -> Rng {
        let hash = name.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
        });
        Rng(hash)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Between 0 (excluded) and 1.
    fn uniform(&mut self) -> f64 {
        ((self.next() >> 11) as f64 + 1.0) / (1_u64 << 53) as f64
    }

    /// Mean 0, standard deviation 1 (Box and Muller 1958).
    fn normal(&mut self) -> f64 {
        (-2.0 * ln(self.uniform())).sqrt() * cos(2.0 * PI * self.uniform())
    }
}

/// First-order autoregressive noise, a value a minute: `memory` is the
/// correlation from one minute to the next, `spread` the standard deviation.
fn wander(minutes: usize, memory: f64, spread: f64, rng: &mut Rng) -> Vec<f64> {
    let mut value = spread * rng.normal();
    let kick = spread * (1.0 - memory * memory).sqrt();
    (0..minutes)
        .map(|_| {
            value = memory * value + kick * rng.normal();
            value
        })
        .collect()
}

/// Straight line between the values of two neighbouring minutes.
fn between(values: &[f64], minute: f64) -> f64 {
    let left = minute as usize;
    values[left] + (values[left + 1] - values[left]) * minute.fract()
}
