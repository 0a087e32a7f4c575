//! Invented cookers of known gain and loss, each tested on four days as a test wants it.

use simmerline::procedure::Assessment;

use crate::kit::campaign::Invented;
use crate::kit::header::HEADER;
use crate::kit::rate::rate;

/// Heat capacity of the invented campaign's 7 kg of water, J/K.
const WATER_J_PER_KG_K: f64 = 7.0 * 4186.0;
const AMBIENT_C: f64 = 26.0;
const FIRST_MINUTE: usize = 10 * 60 + 5;

/// Instruments that two campaigns share.
pub const SHARED: &str = r#"[instruments.irradiance]
plane = "normal"
id = "sun"
relative_uncertainty = 0.02
[instruments.water_temperature]
id = "water"
uncertainty_k = 0.3
[instruments.ambient_temperature]
id = "air"
uncertainty_k = 0.3
[instruments.water_mass]
id = "scale"
relative_uncertainty = 0.003
"#;

/// A cooker and its test.
#[derive(Debug, Clone, Copy)]
pub struct Tested<'t> {
    pub gain_m2: f64,
    pub loss_w_per_k: f64,
    pub irradiance_w_m2: f64,
    /// Day of April on which the first of four days was.
    pub first_day: usize,
    pub longitude_deg: f64,
    pub time_zone: &'t str,
    /// Tables of instruments, as the campaign file has them.
    pub instruments: &'t str,
    /// Irradiance as the log has it, in place of what the cooker saw; 0: no such column.
    pub logged_w_m2: Option<f64>,
}

/// Irradiance estimated from a clear sky.
pub const CLEAR_SKY: Tested<'_> = Tested {
    gain_m2: 0.5,
    loss_w_per_k: 3.0,
    irradiance_w_m2: 950.0,
    first_day: 1,
    longitude_deg: 0.0,
    time_zone: "UTC",
    instruments: "[instruments.irradiance]\nestimate = \"clear-sky\"\n",
    logged_w_m2: Some(0.0),
};

impl Default for Tested<'_> {
    fn default() -> Self {
        Tested {
            gain_m2: 0.5,
            loss_w_per_k: 3.0,
            irradiance_w_m2: 900.0,
            first_day: 1,
            longitude_deg: 0.0,
            time_zone: "UTC",
            instruments: SHARED,
            logged_w_m2: None,
        }
    }
}

impl Tested<'_> {
    /// The campaign, assessed.
    pub fn assess(&self) -> Assessment {
        let names = [1, 2, 3, 4].map(|day| format!("day-{day}.csv"));
        let logs: Vec<String> = (0..4).map(|day| self.log(day)).collect();
        let invented = Invented {
            longitude_deg: self.longitude_deg,
            time_zone: self.time_zone,
            instruments: self.instruments,
            ..Invented::default()
        };
        let mut text = invented.text(&names.each_ref().map(String::as_str));
        if self.logged_w_m2 == Some(0.0) {
            for name in &names {
                let log = format!("log = \"{name}\"\n");
                let span = "[[run.cloudless]]\nfrom = \"10:05\"\nto = \"14:00\"\n";
                text = text.replace(&log, &format!("{log}{span}"));
            }
        }
        let files: Vec<(&str, &str)> = names
            .iter()
            .zip(&logs)
            .map(|(name, log)| (name.as_str(), log.as_str()))
            .collect();
        rate(&text, &files).unwrap()
    }

    /// A line a minute until the water is near boiling. Gain and loss vary a little from day
    /// to day, and the aim by ten minutes.
    fn log(&self, day: usize) -> String {
        let gain_m2 = self.gain_m2 * [1.0, 1.012, 0.991, 1.004][day];
        let loss_w_per_k = self.loss_w_per_k * [1.0, 0.98, 1.03, 0.99][day];
        let has_column = self.logged_w_m2 != Some(0.0);
        let columns = |cells: &[String]| -> String {
            let kept = cells.iter().enumerate();
            let kept = kept.filter(|(column, _)| has_column || *column != 3);
            kept.map(|(_, cell)| cell.as_str())
                .collect::<Vec<_>>()
                .join(",")
                + "\n"
        };
        let header: Vec<String> = HEADER.split(',').map(str::to_owned).collect();
        let mut text = columns(&header);
        let mut water_c = AMBIENT_C + 3.0 + day as f64;
        for minute in 0..230 {
            let clock = FIRST_MINUTE + minute;
            let sun_w_m2 = self.irradiance_w_m2 * (1.0 + 0.004 * day as f64);
            text += &columns(&[
                format!(
                    "2026-04-{:02} {:02}:{:02}:00",
                    self.first_day + day,
                    clock / 60,
                    clock % 60
                ),
                format!("{water_c:.2}"),
                format!("{AMBIENT_C:.1}"),
                format!("{:.1}", self.logged_w_m2.unwrap_or(sun_w_m2)),
                "0.4".to_owned(),
            ]);
            let aim = [1.0, 0.985, 1.01][(minute / 10 + day) % 3];
            let net_w = gain_m2 * aim * sun_w_m2 - loss_w_per_k * (water_c - AMBIENT_C);
            water_c = (water_c + net_w * 60.0 / WATER_J_PER_KG_K).min(99.6);
        }
        text
    }
}

/// Four campaigns by their ranks. Of the first three, which differ, the first and the last cannot
/// be compared: their suns are too far apart, and the first has no heat balance. Irradiance of the
/// fourth is in another plane than that of the others.
pub fn chain() -> [Assessment; 4] {
    let under = |gain_m2: f64, irradiance_w_m2: f64, first_day: usize| Tested {
        gain_m2,
        irradiance_w_m2,
        first_day,
        ..Tested::default()
    };
    let mut first = under(0.8, 900.0, 1).assess();
    first.water_balance = None;
    first.heat_balance = None;
    let flat = SHARED.replace("plane = \"normal\"", "plane = \"horizontal\"");
    let flat = Tested {
        instruments: &flat,
        ..under(0.4, 900.0, 16)
    };
    [
        first,
        under(0.65, 914.0, 6).assess(),
        under(0.5, 929.0, 11).assess(),
        flat.assess(),
    ]
}
