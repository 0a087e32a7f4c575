//! Campaigns with runs of any kind, built run by run; logs frozen or made from a solution.

use std::fmt::Write as _;

use serde_json::Value;
use simmerline::error::Result;
use simmerline::procedure::Assessment;

use super::rate::rate;

/// The cooker, the load and the instruments of the frozen box.
pub const BOX: &str = "\
[cooker]
name = \"Invented box\"
type = \"box\"
intercept_area_m2 = 0.25
[load]
water_kg = 2.0
vessel_heat_capacity_j_per_k = 930
[instruments.irradiance]
plane = \"horizontal\"
relative_uncertainty = 0.02
";

/// Those of the frozen dish.
pub const DISH: &str = "\
[cooker]
name = \"Invented dish\"
type = \"concentrating\"
intercept_area_m2 = 1.4
loss_area_m2 = 0.15
[load]
water_kg = 4.0
vessel_heat_capacity_j_per_k = 800
[instruments.irradiance]
plane = \"normal\"
relative_uncertainty = 0.02
";

/// Those of the frozen dry pot.
pub const POT: &str = "\
[cooker]
name = \"Invented pot\"
type = \"panel\"
intercept_area_m2 = 0.2
[instruments.irradiance]
plane = \"normal\"
relative_uncertainty = 0.02
";

/// Thermometers that are stated, for every cooker.
const THERMOMETERS: &str = "\
[instruments.water_temperature]
uncertainty_k = 0.3
[instruments.ambient_temperature]
uncertainty_k = 0.3
[instruments.vessel_temperature]
uncertainty_k = 0.5
";

/// Site of the frozen logs.
const SITE: &str = "\
[site]
name = \"Nowhere flats (invented)\"
latitude_deg = -16.4
longitude_deg = -71.5
elevation_m = 200
time_zone = \"-05:00\"
";

/// A campaign that is being built.
#[derive(Clone)]
pub struct Kinds {
    text: String,
    logs: Vec<(String, String)>,
}

impl Kinds {
    /// A cooker with its load and its instruments, without a run.
    pub fn of(tables: &str) -> Kinds {
        let text = format!(
            "# Invented data, made by tests/kit/kinds.rs\n\
             [campaign]\ntitle = \"Invented\"\ndemonstration = true\n\
             tester = \"N. Nobody (invented)\"\n{SITE}{tables}{THERMOMETERS}"
        );
        let logs = Vec::new();
        Kinds { text, logs }
    }

    /// The same with a text of its campaign file, which must be there, in another's place.
    #[must_use]
    pub fn with(mut self, from: &str, to: &str) -> Kinds {
        assert!(self.text.contains(from), "no {from:?} in {}", self.text);
        self.text = self.text.replacen(from, to, 1);
        self
    }

    /// The same with a thermometer of the dry vessel that is read to a hundredth: readings that
    /// stay the same show no step.
    #[must_use]
    pub fn read_finely(self) -> Kinds {
        let table = "[instruments.vessel_temperature]\n";
        self.with(table, &format!("{table}resolution_k = 0.01\n"))
    }

    /// The same with the named procedures alone.
    #[must_use]
    pub fn asking(self, procedures: &[&str]) -> Kinds {
        let demonstration = "demonstration = true\n";
        let asked = format!("{demonstration}procedures = {procedures:?}\n");
        self.with(demonstration, &asked)
    }

    /// With one more run, of a kind, of a log.
    #[must_use]
    pub fn run(self, kind: &str, log: impl Into<String>) -> Kinds {
        self.run_with(kind, log, "")
    }

    /// The same, with more keys of the run.
    #[must_use]
    pub fn run_with(mut self, kind: &str, log: impl Into<String>, keys: &str) -> Kinds {
        let name = format!("run-{}.csv", self.logs.len() + 1);
        let run = format!("\n[[run]]\nlog = \"{name}\"\nkind = \"{kind}\"\n{keys}");
        self.text.push_str(&run);
        self.logs.push((name, log.into()));
        self
    }

    /// What the library makes of it, or why nothing.
    pub fn try_assess(&self) -> Result<Assessment> {
        let logs: Vec<(&str, &str)> = self
            .logs
            .iter()
            .map(|(name, log)| (name.as_str(), log.as_str()))
            .collect();
        rate(&self.text, &logs)
    }

    /// What the library makes of it.
    #[track_caller]
    pub fn assess(&self) -> Assessment {
        self.try_assess()
            .unwrap_or_else(|error| panic!("{error}\n{}", self.text))
    }
}

/// A log of `tests/data/procedures`.
pub fn frozen(name: &str) -> String {
    let path = format!("tests/data/procedures/{name}");
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// The same with its rows changed; `None` takes one out. The header stays.
pub fn changed(log: &str, change: impl Fn(usize, &[&str]) -> Option<String>) -> String {
    let mut text = String::new();
    let mut row = 0;
    for line in log.lines() {
        if line.starts_with(|first: char| first.is_ascii_digit()) {
            let cells: Vec<&str> = line.split(',').collect();
            if let Some(line) = change(row, &cells) {
                writeln!(text, "{line}").unwrap();
            }
            row += 1;
        } else {
            writeln!(text, "{line}").unwrap();
        }
    }
    text
}

/// The same log on another day.
pub fn on_date(log: &str, date: &str) -> String {
    changed(log, |_, cells| {
        let clock = cells[0].split_once(' ').unwrap().1;
        Some(format!("{date} {clock},{}", cells[1..].join(",")))
    })
}

/// A number of a frozen file by its pointer.
pub struct Facts(Value);

impl Facts {
    pub fn of(name: &str) -> Facts {
        Facts(serde_json::from_str(&frozen(name)).unwrap())
    }

    #[track_caller]
    pub fn at(&self, pointer: &str) -> f64 {
        let found = self.0.pointer(pointer).and_then(Value::as_f64);
        found.unwrap_or_else(|| panic!("no number at {pointer}"))
    }

    #[track_caller]
    pub fn list(&self, pointer: &str) -> &[Value] {
        let found = self.0.pointer(pointer).and_then(Value::as_array);
        found.unwrap_or_else(|| panic!("no list at {pointer}"))
    }
}

/// What a made log has at a moment: temperature, air (°C), irradiance (W/m²).
pub struct At {
    pub celsius: f64,
    pub ambient_c: f64,
    pub irradiance_w_m2: f64,
}

/// A log made of a solution by its time after the start, s: of a date, from a clock time in
/// hours, every so many seconds, so long.
pub struct Made<'t> {
    pub date: &'t str,
    pub from_h: f64,
    pub every_s: u32,
    pub lasts_s: u32,
}

impl Default for Made<'_> {
    fn default() -> Self {
        Made {
            date: "2026-03-14",
            from_h: 10.5,
            every_s: 60,
            lasts_s: 3_600,
        }
    }
}

impl Made<'_> {
    /// The log; `column` is `water_c` or `vessel_c`.
    pub fn log(&self, column: &str, solution: impl Fn(f64) -> At) -> String {
        let mut text =
            format!("# Invented data\ntime,{column},ambient_c,irradiance_w_m2,wind_m_s\n");
        for after_s in (0..=self.lasts_s).step_by(self.every_s as usize) {
            let clock_s = (self.from_h * 3600.0).round() as u32 + after_s;
            let At {
                celsius,
                ambient_c,
                irradiance_w_m2,
            } = solution(f64::from(after_s));
            writeln!(
                text,
                "{} {:02}:{:02}:{:02},{celsius:.9},{ambient_c:.6},{irradiance_w_m2:.6},0.5",
                self.date,
                clock_s / 3600,
                clock_s / 60 % 60,
                clock_s % 60
            )
            .unwrap();
        }
        text
    }
}
