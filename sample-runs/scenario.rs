//! The invented scenario: cookers, places, and the weather and mishaps of each day.

use std::fmt;

pub struct Campaign {
    pub folder: &'static str,
    pub place: Place,
    pub cooker: Cooker,
    pub style: Style,
    pub days: Vec<Day>,
}

#[derive(Clone, Copy)]
pub struct Place {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
}

#[derive(Clone, Copy)]
pub struct Cooker {
    pub area_m2: f64,
    pub optical_efficiency: f64,
    pub loss_w_k: f64,
    pub wind_loss_w_k: f64,
    pub dead_capacity_j_k: f64,
    /// The tester aims the cooker anew after so many minutes …
    pub aimed_every_min: f64,
    /// … by when this share of the light misses the vessel.
    pub aim_loss: f64,
    /// Standard deviation of its efficiency from one day's set-up to the next, of one.
    pub day_spread: f64,
    /// It lies flat, and is not aimed at the sun.
    pub lies_flat: bool,
}

/// From one day's set-up to the next, where a cooker is aimed by hand.
const BY_HAND: f64 = 0.025;

/// How a tester keeps a log.
pub enum Style {
    /// A logger that writes the canonical columns every so many seconds.
    Canonical { every_s: i64 },
    /// The same once a minute, its irradiance sensor lying flat.
    FlatSensor,
    /// A logger with headers of its own, two water sensors and columns that
    /// nobody needs, once a minute, its clock written with the offset.
    OwnHeaders,
    /// A thermometer, a hand-held meter for horizontal irradiance, no wind, a
    /// line about every ten minutes.
    Notebook,
    /// A kitchen thermometer marked every five degrees Fahrenheit, the wind and the sky by
    /// eye, a line every ten minutes; the last day is still as it stands on the field sheet.
    FieldSheet,
    /// An oven's dial in steps of five degrees Fahrenheit, a household thermometer for the air
    /// and a hand-held meter, written down whenever somebody comes by.
    Dial,
}

/// What is in the vessels, and where the sun is.
#[derive(Clone, Copy, PartialEq)]
pub enum Kind {
    /// Water heats in the sun.
    Water,
    /// Hot water cools, the cooker turned to a wall under a roof.
    Cooling,
    /// Nothing: the vessel is dry, or the plate bare.
    Dry,
}

#[derive(Clone)]
pub struct Day {
    pub kind: Kind,
    pub date: Date,
    /// Ending of the log's name where a day has several heatings.
    pub heating: &'static str,
    pub utc_offset_h: f64,
    /// Local clock time of the first and last reading, minutes after midnight.
    pub from: i64,
    pub to: i64,
    pub water_kg: f64,
    /// Of the water, or of the dry vessel.
    pub water_start_c: f64,
    /// Ambient temperature at the first and at the last reading.
    pub ambient_c: [f64; 2],
    pub wind_m_s: f64,
    /// Share of the clear-sky irradiance that comes through.
    pub haze: f64,
    /// Standard deviation of what comes through from minute to minute, of one.
    pub sky_spread: f64,
    pub clouds: Vec<Cloud>,
    /// Clouds at random times on top of the listed ones, per hour.
    pub stray_clouds_per_h: f64,
    pub gusts: Vec<Gust>,
    pub mishaps: Vec<Mishap>,
}

impl Day {
    pub fn log_name(&self) -> String {
        format!("{}{}.csv", self.date, self.heating)
    }
}

#[derive(Clone, Copy)]
pub struct Date {
    pub year: i32,
    pub month: usize,
    pub day: u32,
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        write!(f, "{}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

/// A cloud before the sun, centred on a clock time.
#[derive(Clone, Copy)]
pub struct Cloud {
    pub at: i64,
    pub minutes: f64,
    /// Share of the irradiance it takes away.
    pub depth: f64,
    /// Share that its bright rim adds just before and after.
    pub rim: f64,
}

/// A spell in which the wind blows harder.
#[derive(Clone, Copy)]
pub struct Gust {
    pub from: i64,
    pub to: i64,
    pub extra_m_s: f64,
}

/// What goes wrong with the log, between two clock times (the second excluded).
#[derive(Clone, Copy)]
pub enum Mishap {
    /// The irradiance sensor is unplugged: its cells stay blank.
    NoIrradiance(i64, i64),
    /// The second water sensor writes nothing.
    SecondSensorBlank(i64, i64),
    /// The second water sensor writes its logger's fault value.
    SecondSensorFault(i64, i64),
    /// Nobody writes a line.
    NoLines(i64, i64),
    /// The line at this time is copied twice, the second time a little wrong.
    LineTwice(i64),
    /// The pot's lid is off: it loses twice the heat.
    LidOff(i64, i64),
    /// The cooker stands turned away from the sun.
    OutOfFocus(i64, i64),
}
pub use Mishap::*;

/// Clock time as minutes after midnight.
pub const fn at(hour: i64, minute: i64) -> i64 {
    hour * 60 + minute
}

pub const fn date(year: i32, month: usize, day: u32) -> Date {
    Date { year, month, day }
}

const fn cloud(at: i64, minutes: f64, depth: f64, rim: f64) -> Cloud {
    Cloud {
        at,
        minutes,
        depth,
        rim,
    }
}

/// A fair, calm day that the campaigns below vary.
pub const FAIR: Day = Day {
    kind: Kind::Water,
    date: date(2026, 1, 1),
    heating: "",
    utc_offset_h: 2.0,
    from: at(10, 40),
    to: at(14, 40),
    water_kg: 0.0,
    water_start_c: 24.0,
    ambient_c: [24.0, 30.0],
    wind_m_s: 0.4,
    haze: 0.94,
    sky_spread: 0.006,
    clouds: Vec::new(),
    stray_clouds_per_h: 0.0,
    gusts: Vec::new(),
    mishaps: Vec::new(),
};

/// A high dry plain; no daylight saving, solar noon well after twelve.
pub const DRYMERE: Place = Place {
    latitude_deg: -23.4,
    longitude_deg: 17.4,
    elevation_m: 1540.0,
};

/// A warm inland terrace with daylight saving: solar noon after two in summer.
pub const COBBLE: Place = Place {
    latitude_deg: 38.9,
    longitude_deg: -2.9,
    elevation_m: 620.0,
};

/// The eight-sided open dish with a bare black pot.
const OCTAGON: Cooker = Cooker {
    area_m2: 1.0525,
    optical_efficiency: 0.33,
    loss_w_k: 2.3,
    wind_loss_w_k: 0.7,
    dead_capacity_j_k: 1100.0,
    aimed_every_min: 20.0,
    aim_loss: 0.06,
    day_spread: BY_HAND,
    lies_flat: false,
};

/// The insulated box with a reflector behind its glass.
const BOX: Cooker = Cooker {
    area_m2: 0.496,
    optical_efficiency: 0.36,
    loss_w_k: 1.25,
    wind_loss_w_k: 0.12,
    dead_capacity_j_k: 2600.0,
    aimed_every_min: 30.0,
    aim_loss: 0.05,
    day_spread: BY_HAND,
    lies_flat: false,
};

/// The sample campaigns that the rating is about.
pub fn campaigns() -> Vec<Campaign> {
    vec![
        open_dish(),
        open_dish_skirt(),
        box_summer(),
        box_autumn(),
        panel_cloudy(),
        notebook(),
        tube_area_slip(),
        kitchen_thermometer(),
    ]
}

/// Four fair days, the dish with a bare pot.
fn open_dish() -> Campaign {
    Campaign {
        folder: "open-dish",
        place: DRYMERE,
        cooker: OCTAGON,
        style: Style::Canonical { every_s: 60 },
        days: vec![
            Day {
                date: date(2026, 9, 16),
                // Set up early: the first intervals lie before the solar window.
                from: at(10, 20),
                to: at(13, 50),
                water_kg: 7.37,
                water_start_c: 21.8,
                ambient_c: [23.5, 29.5],
                ..FAIR
            },
            Day {
                date: date(2026, 9, 17),
                from: at(10, 45),
                to: at(14, 0),
                water_kg: 7.35,
                water_start_c: 22.4,
                ambient_c: [24.5, 30.5],
                // Two small clouds with bright rims: over 1100 W/m² for a minute.
                clouds: vec![
                    cloud(at(11, 52), 5.0, 0.55, 0.24),
                    cloud(at(13, 6), 7.0, 0.45, 0.20),
                ],
                ..FAIR
            },
            Day {
                date: date(2026, 9, 18),
                // Begun late, so it runs out of the solar window.
                from: at(11, 50),
                to: at(15, 10),
                water_kg: 7.40,
                water_start_c: 23.1,
                ambient_c: [26.0, 31.0],
                wind_m_s: 0.5,
                ..FAIR
            },
            Day {
                date: date(2026, 9, 19),
                from: at(10, 50),
                to: at(14, 10),
                water_kg: 7.36,
                water_start_c: 21.5,
                ambient_c: [22.5, 28.0],
                wind_m_s: 0.6,
                // The afternoon breeze comes early.
                gusts: vec![Gust {
                    from: at(12, 40),
                    to: at(13, 5),
                    extra_m_s: 0.9,
                }],
                ..FAIR
            },
        ],
    }
}

/// The week after: the same dish, a skirt round its pot.
fn open_dish_skirt() -> Campaign {
    Campaign {
        folder: "open-dish-skirt",
        place: DRYMERE,
        // The one change: a sheet-metal skirt round the pot. It keeps wind
        // and cold air off, and shades the pot's lower edge a little.
        cooker: Cooker {
            optical_efficiency: OCTAGON.optical_efficiency * 0.98,
            loss_w_k: 1.65,
            wind_loss_w_k: 0.2,
            dead_capacity_j_k: OCTAGON.dead_capacity_j_k + 250.0,
            ..OCTAGON
        },
        style: Style::Canonical { every_s: 60 },
        days: vec![
            Day {
                date: date(2026, 9, 22),
                from: at(10, 40),
                to: at(13, 20),
                water_kg: 7.36,
                water_start_c: 22.0,
                ambient_c: [24.0, 29.0],
                ..FAIR
            },
            Day {
                date: date(2026, 9, 23),
                from: at(10, 50),
                to: at(13, 30),
                water_kg: 7.38,
                water_start_c: 23.0,
                ambient_c: [25.0, 30.5],
                clouds: vec![cloud(at(12, 34), 7.0, 0.5, 0.08)],
                ..FAIR
            },
            Day {
                date: date(2026, 9, 24),
                from: at(10, 35),
                to: at(13, 10),
                water_kg: 7.35,
                water_start_c: 21.2,
                ambient_c: [22.5, 28.0],
                wind_m_s: 0.6,
                ..FAIR
            },
            Day {
                date: date(2026, 9, 25),
                from: at(11, 0),
                to: at(13, 40),
                water_kg: 7.37,
                water_start_c: 22.6,
                ambient_c: [24.5, 30.0],
                haze: 0.91,
                ..FAIR
            },
        ],
    }
}

/// Four summer days with the box; sensors fail now and then.
fn box_summer() -> Campaign {
    Campaign {
        folder: "box",
        place: COBBLE,
        cooker: BOX,
        style: Style::OwnHeaders,
        days: vec![
            Day {
                date: date(2026, 6, 24),
                from: at(12, 10),
                to: at(16, 20),
                water_kg: 3.47,
                water_start_c: 24.5,
                ambient_c: [25.5, 31.0],
                ..FAIR
            },
            Day {
                date: date(2026, 6, 25),
                from: at(12, 15),
                to: at(15, 50),
                water_kg: 3.45,
                water_start_c: 25.1,
                ambient_c: [26.0, 32.0],
                // A foot in the cable: no irradiance for half an hour.
                mishaps: vec![NoIrradiance(at(14, 8), at(14, 38))],
                ..FAIR
            },
            Day {
                date: date(2026, 6, 26),
                from: at(12, 20),
                to: at(16, 30),
                water_kg: 3.48,
                water_start_c: 24.8,
                ambient_c: [26.5, 32.5],
                clouds: vec![cloud(at(14, 41), 8.0, 0.5, 0.06)],
                mishaps: vec![
                    SecondSensorBlank(at(13, 4), at(13, 9)),
                    SecondSensorFault(at(13, 9), at(13, 22)),
                ],
                ..FAIR
            },
            Day {
                date: date(2026, 6, 27),
                from: at(12, 15),
                to: at(16, 0),
                water_kg: 3.46,
                water_start_c: 25.6,
                ambient_c: [27.0, 33.0],
                wind_m_s: 0.6,
                haze: 0.91,
                ..FAIR
            },
        ],
    }
}

/// The same box in autumn. The clocks go back between the second and the third day.
fn box_autumn() -> Campaign {
    Campaign {
        folder: "box-autumn",
        place: COBBLE,
        cooker: BOX,
        style: Style::Canonical { every_s: 300 },
        days: vec![
            Day {
                date: date(2026, 10, 23),
                from: at(12, 55),
                to: at(16, 30),
                water_kg: 3.47,
                water_start_c: 20.5,
                ambient_c: [21.5, 25.5],
                haze: 0.96,
                ..FAIR
            },
            Day {
                date: date(2026, 10, 24),
                from: at(13, 0),
                to: at(16, 35),
                water_kg: 3.46,
                water_start_c: 21.0,
                ambient_c: [22.0, 26.5],
                haze: 0.96,
                clouds: vec![cloud(at(14, 25), 9.0, 0.6, 0.05)],
                ..FAIR
            },
            Day {
                date: date(2026, 10, 27),
                utc_offset_h: 1.0,
                from: at(11, 50),
                to: at(15, 30),
                water_kg: 3.48,
                water_start_c: 20.0,
                ambient_c: [21.0, 25.0],
                haze: 0.95,
                ..FAIR
            },
            Day {
                date: date(2026, 10, 28),
                utc_offset_h: 1.0,
                from: at(12, 0),
                to: at(15, 30),
                water_kg: 3.47,
                water_start_c: 20.2,
                ambient_c: [20.8, 25.4],
                wind_m_s: 0.6,
                haze: 0.96,
                ..FAIR
            },
        ],
    }
}

/// Three winter days: cool and cloudy, breezy, gusty.
fn panel_cloudy() -> Campaign {
    Campaign {
        folder: "panel-cloudy",
        place: DRYMERE,
        cooker: Cooker {
            area_m2: 0.46,
            optical_efficiency: 0.26,
            loss_w_k: 1.00,
            wind_loss_w_k: 0.25,
            dead_capacity_j_k: 600.0,
            aimed_every_min: 30.0,
            aim_loss: 0.10,
            day_spread: BY_HAND,
            lies_flat: false,
        },
        style: Style::Canonical { every_s: 60 },
        days: vec![
            Day {
                // A cool morning under broken cloud.
                date: date(2026, 7, 8),
                from: at(10, 50),
                to: at(15, 0),
                water_kg: 3.22,
                water_start_c: 18.0,
                ambient_c: [17.5, 23.0],
                wind_m_s: 0.7,
                stray_clouds_per_h: 2.2,
                ..FAIR
            },
            Day {
                // Warmer, with a breeze that comes and goes.
                date: date(2026, 7, 9),
                from: at(11, 0),
                to: at(14, 45),
                water_kg: 3.22,
                water_start_c: 19.0,
                ambient_c: [20.5, 24.0],
                wind_m_s: 0.9,
                stray_clouds_per_h: 1.5,
                ..FAIR
            },
            Day {
                // Good sun, but after one o'clock it blows for half an hour.
                date: date(2026, 7, 10),
                from: at(11, 0),
                to: at(14, 30),
                water_kg: 3.24,
                water_start_c: 19.5,
                ambient_c: [20.5, 24.5],
                wind_m_s: 0.8,
                gusts: vec![Gust {
                    from: at(13, 10),
                    to: at(13, 45),
                    extra_m_s: 3.4,
                }],
                ..FAIR
            },
        ],
    }
}

/// A small dish, a thermometer and a notebook.
fn notebook() -> Campaign {
    Campaign {
        folder: "notebook",
        place: DRYMERE,
        cooker: Cooker {
            area_m2: 0.6362,
            optical_efficiency: 0.38,
            loss_w_k: 1.9,
            wind_loss_w_k: 0.5,
            dead_capacity_j_k: 800.0,
            aimed_every_min: 15.0,
            aim_loss: 0.08,
            day_spread: BY_HAND,
            lies_flat: false,
        },
        style: Style::Notebook,
        days: vec![
            Day {
                date: date(2026, 10, 6),
                from: at(10, 40),
                to: at(14, 0),
                water_kg: 4.45,
                ambient_c: [24.5, 30.5],
                // Somebody looks into the pot.
                mishaps: vec![LidOff(at(12, 2), at(12, 12))],
                ..FAIR
            },
            Day {
                date: date(2026, 10, 7),
                // Written down from before the heating until after it.
                from: at(10, 0),
                to: at(14, 40),
                water_kg: 4.45,
                water_start_c: 23.0,
                ambient_c: [24.0, 31.5],
                // Thin, but more than the practice allows in ten minutes.
                clouds: vec![cloud(at(12, 2), 13.0, 0.13, 0.0)],
                mishaps: vec![
                    OutOfFocus(at(10, 0), at(10, 40)),
                    OutOfFocus(at(13, 40), at(14, 40)),
                ],
                ..FAIR
            },
            Day {
                date: date(2026, 10, 8),
                from: at(10, 45),
                to: at(14, 0),
                // A jug too much.
                water_kg: 4.90,
                ambient_c: [25.0, 31.0],
                mishaps: vec![NoLines(at(12, 6), at(12, 34))],
                ..FAIR
            },
            Day {
                date: date(2026, 10, 9),
                from: at(10, 50),
                to: at(14, 10),
                water_kg: 4.45,
                ambient_c: [23.5, 29.5],
                wind_m_s: 0.7,
                mishaps: vec![LineTwice(at(11, 50))],
                ..FAIR
            },
        ],
    }
}

/// An evacuated tube whose intercept area is taken too small.
fn tube_area_slip() -> Campaign {
    Campaign {
        folder: "tube-area-slip",
        place: DRYMERE,
        // The campaign file gives 0.18 m², the tube and one of its two
        // reflectors. It really collects half as much again.
        cooker: Cooker {
            area_m2: 0.28,
            optical_efficiency: 0.72,
            loss_w_k: 0.22,
            wind_loss_w_k: 0.03,
            dead_capacity_j_k: 300.0,
            aimed_every_min: 60.0,
            aim_loss: 0.06,
            day_spread: BY_HAND,
            lies_flat: false,
        },
        style: Style::Canonical { every_s: 30 },
        days: tube_days(),
    }
}

/// Three short heatings on each of three days: a tube boils its water in half an hour.
fn tube_days() -> Vec<Day> {
    let mut days = Vec::new();
    for day in 14..=16 {
        for (number, heating) in (0..).zip(["-a", "-b", "-c"]) {
            let from = at(10, 45) + number * 70;
            let ambient_c = 25.0 + 1.5 * number as f64;
            days.push(Day {
                date: date(2026, 10, day),
                heating,
                from,
                to: from + 40,
                water_kg: 1.26,
                // The tube is warm already while the tester gets ready.
                water_start_c: ambient_c + 5.5,
                ambient_c: [ambient_c, ambient_c + 0.7],
                haze: 0.83,
                ..FAIR
            });
        }
    }
    days
}

/// A shallow many-sided reflector in a yard, a kitchen thermometer and nothing else.
fn kitchen_thermometer() -> Campaign {
    Campaign {
        folder: "kitchen-thermometer",
        place: COBBLE,
        cooker: Cooker {
            area_m2: 0.70,
            optical_efficiency: 0.46,
            loss_w_k: 2.0,
            wind_loss_w_k: 0.4,
            dead_capacity_j_k: 900.0,
            aimed_every_min: 30.0,
            aim_loss: 0.05,
            day_spread: BY_HAND,
            lies_flat: false,
        },
        style: Style::FieldSheet,
        days: vec![
            Day {
                date: date(2026, 9, 8),
                utc_offset_h: 2.0,
                from: at(12, 10),
                to: at(15, 0),
                water_kg: 4.9,
                water_start_c: 27.0,
                ambient_c: [25.0, 29.0],
                wind_m_s: 0.8,
                ..FAIR
            },
            Day {
                date: date(2026, 9, 9),
                utc_offset_h: 2.0,
                from: at(12, 20),
                to: at(15, 30),
                water_kg: 4.9,
                water_start_c: 26.0,
                ambient_c: [24.5, 28.5],
                wind_m_s: 0.8,
                // A cloud that the tester saw and wrote down.
                clouds: vec![cloud(at(13, 34), 9.0, 0.6, 0.1)],
                ..FAIR
            },
            Day {
                date: date(2026, 9, 11),
                utc_offset_h: 2.0,
                from: at(12, 10),
                to: at(15, 0),
                water_kg: 4.9,
                water_start_c: 27.5,
                ambient_c: [25.5, 29.5],
                wind_m_s: 0.7,
                ..FAIR
            },
        ],
    }
}
