//! The campaigns that show the procedures beside the rating, made of `truth.rs`.
//!
//! Their losses do not follow the wind, and what little the days differ by is in their set-up,
//! so that a procedure has to give the figures of `truth.rs` back.

use crate::scenario::{COBBLE, DRYMERE, at, date};
use crate::scenario::{Campaign, Cooker, Day, FAIR, Kind, Place, Style};
use crate::truth::{BOX_FIGURES, DISH_COOLING, DRY_POT};

/// A yard on high ground, daylight saving in force: solar noon at one o'clock.
const MILKWORT: Place = Place {
    latitude_deg: 33.0,
    longitude_deg: -106.5,
    elevation_m: 1250.0,
};

/// A calm cooker that needs no aiming, or is aimed at every reading.
const STEADY: Cooker = Cooker {
    area_m2: 0.0,
    optical_efficiency: 0.0,
    loss_w_k: 0.0,
    wind_loss_w_k: 0.0,
    dead_capacity_j_k: 0.0,
    aimed_every_min: 10.0,
    aim_loss: 0.0,
    day_spread: 0.004,
    lies_flat: false,
};

/// A fair day with a steady sky.
fn clear_day() -> Day {
    Day {
        sky_spread: 0.003,
        ..FAIR
    }
}

/// Those of each folder, a cooker a campaign: a box without water is another cooker.
pub fn procedure_campaigns() -> Vec<Campaign> {
    vec![
        bare_plate(),
        box_with_pots(),
        dish_heating(),
        dish_cooling(),
        dry_pot(),
    ]
}

/// Two days with the empty box, its plate bare.
fn bare_plate() -> Campaign {
    let dry = Day {
        kind: Kind::Dry,
        from: at(12, 55),
        to: at(15, 35),
        ..clear_day()
    };
    Campaign {
        folder: "box-figures",
        place: COBBLE,
        cooker: Cooker {
            area_m2: BOX_FIGURES.area_m2,
            optical_efficiency: BOX_FIGURES.eta0,
            loss_w_k: BOX_FIGURES.area_m2 * BOX_FIGURES.loss_w_m2_k,
            dead_capacity_j_k: BOX_FIGURES.plate_j_k,
            lies_flat: true,
            ..STEADY
        },
        style: Style::FlatSensor,
        days: vec![
            Day {
                date: date(2026, 7, 2),
                water_start_c: 33.0,
                ambient_c: [26.0, 30.5],
                ..dry.clone()
            },
            Day {
                date: date(2026, 7, 3),
                water_start_c: 34.5,
                ambient_c: [27.0, 31.5],
                haze: 0.92,
                ..dry
            },
        ],
    }
}

/// Three days with the same box and its four pots.
fn box_with_pots() -> Campaign {
    let water = Day {
        from: at(12, 50),
        // The tester stops soon after 95 °C.
        to: at(15, 12),
        water_kg: BOX_FIGURES.water_kg,
        ..clear_day()
    };
    Campaign {
        folder: "box-figures",
        place: COBBLE,
        cooker: Cooker {
            area_m2: BOX_FIGURES.area_m2,
            optical_efficiency: BOX_FIGURES.f_prime * BOX_FIGURES.eta0,
            loss_w_k: BOX_FIGURES.loss_w_k(),
            dead_capacity_j_k: BOX_FIGURES.vessels_j_k,
            lies_flat: true,
            ..STEADY
        },
        style: Style::FlatSensor,
        days: vec![
            Day {
                date: date(2026, 7, 6),
                water_start_c: 35.2,
                ambient_c: [27.0, 31.0],
                ..water.clone()
            },
            Day {
                date: date(2026, 7, 7),
                water_kg: 2.87,
                water_start_c: 34.6,
                ambient_c: [26.5, 30.5],
                haze: 0.95,
                ..water.clone()
            },
            Day {
                date: date(2026, 7, 8),
                water_kg: 2.89,
                water_start_c: 35.9,
                ambient_c: [28.0, 32.0],
                wind_m_s: 0.6,
                ..water
            },
        ],
    }
}

const DISH: Cooker = Cooker {
    area_m2: DISH_COOLING.aperture_m2,
    optical_efficiency: DISH_COOLING.optical_factor,
    loss_w_k: DISH_COOLING.loss_w_k(),
    dead_capacity_j_k: DISH_COOLING.vessel_j_k,
    ..STEADY
};

/// Three days on which the dish heats its pot.
fn dish_heating() -> Campaign {
    let water = Day {
        from: at(11, 0),
        to: at(13, 6),
        water_kg: DISH_COOLING.water_kg,
        ..clear_day()
    };
    Campaign {
        folder: "dish-cooling",
        place: DRYMERE,
        cooker: DISH,
        style: Style::Canonical { every_s: 60 },
        days: vec![
            Day {
                date: date(2026, 10, 20),
                water_start_c: 25.8,
                ambient_c: [25.0, 30.0],
                haze: 0.89,
                ..water.clone()
            },
            Day {
                date: date(2026, 10, 21),
                water_kg: 5.48,
                water_start_c: 24.9,
                ambient_c: [24.0, 29.5],
                haze: 0.87,
                ..water.clone()
            },
            Day {
                date: date(2026, 10, 22),
                water_kg: 5.51,
                water_start_c: 26.4,
                ambient_c: [26.0, 31.0],
                haze: 0.88,
                wind_m_s: 0.6,
                ..water
            },
        ],
    }
}

/// The same pot, brought hot under a roof: once in the evening, once in the morning.
fn dish_cooling() -> Campaign {
    let cooling = Day {
        kind: Kind::Cooling,
        water_kg: DISH_COOLING.water_kg,
        wind_m_s: 0.3,
        ..clear_day()
    };
    Campaign {
        folder: "dish-cooling",
        place: DRYMERE,
        cooker: DISH,
        style: Style::Canonical { every_s: 60 },
        days: vec![
            Day {
                date: date(2026, 10, 20),
                heating: "-cooling",
                from: at(17, 50),
                to: at(20, 30),
                water_start_c: 92.3,
                ambient_c: [22.3, 21.8],
                ..cooling.clone()
            },
            Day {
                date: date(2026, 10, 23),
                heating: "-cooling",
                from: at(8, 0),
                to: at(10, 40),
                water_kg: 5.49,
                water_start_c: 91.6,
                ambient_c: [20.4, 20.8],
                ..cooling
            },
        ],
    }
}

/// Two days with an empty pot before a panel, and an oven's dial.
fn dry_pot() -> Campaign {
    let dry = Day {
        kind: Kind::Dry,
        utc_offset_h: -6.0,
        ..clear_day()
    };
    Campaign {
        folder: "dry-pot",
        place: MILKWORT,
        cooker: Cooker {
            area_m2: DRY_POT.area_m2,
            optical_efficiency: DRY_POT.efficiency,
            loss_w_k: DRY_POT.loss_w_k,
            dead_capacity_j_k: DRY_POT.vessel_j_k,
            ..STEADY
        },
        style: Style::Dial,
        days: vec![
            Day {
                date: date(2026, 5, 9),
                from: at(11, 42),
                to: at(14, 10),
                water_start_c: 41.0,
                ambient_c: [24.0, 28.0],
                ..dry.clone()
            },
            Day {
                date: date(2026, 5, 11),
                from: at(12, 5),
                to: at(14, 30),
                water_start_c: 43.0,
                ambient_c: [25.5, 29.5],
                haze: 0.90,
                ..dry
            },
        ],
    }
}
