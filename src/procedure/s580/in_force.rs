//! The limits that hold for a campaign: the practice's, and its own in their place.

use std::path::Path;

use super::guard::Guard;
use super::intervals::IntervalLength;
use super::limits::{FIXED_WINDOW, LOAD_TOLERANCE, LimitKey, PRACTICE, S580Limit, own_rows};
use crate::campaign::Campaign;
use crate::campaign::model::OwnLimit;
use crate::error::{Place, Problem};
use crate::procedure::limit::{Allowed, SLACK};
use crate::units::SECONDS_PER_HOUR;

/// The limits that hold for a campaign.
#[derive(Debug, Clone, PartialEq)]
pub struct Limits {
    /// In the order of [`PRACTICE`].
    pub rows: Vec<S580Limit>,
    /// What counts against a limit, where the campaign asks for a guard band.
    pub guard: Option<Guard>,
}

/// A problem with the limits together, with the files in which those stand that are shared.
fn placed(problem: Problem, campaign: &Campaign) -> Problem {
    let of_limits = |held: &&String| held.starts_with("limits.");
    let shared = campaign.shared.iter().filter_map(|one| {
        let keys: Vec<&str> = one
            .holding
            .iter()
            .filter(of_limits)
            .map(String::as_str)
            .collect();
        (!keys.is_empty()).then(|| {
            (
                keys.len(),
                format!("{} in {}", keys.join(", "), one.path.display()),
            )
        })
    });
    let (counts, said): (Vec<usize>, Vec<String>) = shared.unzip();
    if said.is_empty() {
        return problem;
    }
    let own = campaign.limits.len() + usize::from(campaign.has_guard_band);
    let path = match counts.iter().sum::<usize>() >= own {
        true => campaign.file_of("limits").to_path_buf(),
        false => problem.place.path.clone(),
    };
    let hint = problem.hint.as_deref().unwrap_or_default();
    let hint = format!("{hint}; shared: {}", said.join("; "));
    Problem {
        place: Place {
            path,
            ..problem.place
        },
        ..problem
    }
    .hint(hint)
}

impl Limits {
    /// The limits of a campaign.
    ///
    /// # Errors
    /// As [`Limits::of`].
    pub fn of_campaign(campaign: &Campaign) -> Result<Self, Problem> {
        let limits = Limits::of(&campaign.file, &campaign.limits);
        let limits = limits.map_err(|problem| placed(problem, campaign))?;
        let guard = campaign.has_guard_band;
        Ok(Limits {
            guard: guard.then(|| Guard::of(&campaign.instruments)),
            ..limits
        })
    }

    /// The practice's limits with a campaign's own in their place and no guard band; `file` is
    /// its campaign file.
    ///
    /// # Errors
    /// A [`Problem`] for a key that is none, and for limits between which nothing lies.
    pub fn of(file: &Path, own: &[OwnLimit]) -> Result<Self, Problem> {
        let knows =
            |own: &&OwnLimit| own_rows().any(|row| row.word.is_some_and(|word| own.key == word));
        if let Some(unknown) = own.iter().find(|own| !knows(own)) {
            let problem = Problem::at(file, format!("unknown key \"{}\"", unknown.key));
            return Err(problem.item("[limits]").hint("delete it"));
        }
        let own_value = |word: Option<&str>| {
            let mut values = own
                .iter()
                .filter(|own| word.is_some_and(|word| own.key == word));
            values.next().map(|own| own.value)
        };
        let own_row = |row: &S580Limit| {
            let mut fixed = FIXED_WINDOW.iter().filter(|(moving, _)| *moving == row.key);
            let fixed = fixed.find_map(|(_, fixed)| Some(fixed.with_own(own_value(fixed.word)?)));
            fixed.unwrap_or_else(|| match own_value(row.word) {
                Some(value) if value != row.value => row.with_own(value),
                _ => *row,
            })
        };
        let tolerance = own_value(Some("load_tolerance")).unwrap_or(LOAD_TOLERANCE);
        let rows = PRACTICE.iter().map(own_row).map(|row| match row.key {
            LimitKey::Load => S580Limit {
                allowed: Allowed::Within(tolerance),
                ..row
            },
            _ => row,
        });
        let limits = Limits {
            rows: rows.collect(),
            guard: None,
        };
        match limits.contradiction() {
            Some(what) => Err(Problem::at(file, what)
                .item("[limits]")
                .hint("correct your own limit, or set its other end too")),
            None => Ok(limits),
        }
    }

    /// Two limits between which nothing lies, if an own one contradicts another.
    fn contradiction(&self) -> Option<String> {
        let pairs = [
            (LimitKey::AmbientMin, LimitKey::AmbientMax),
            (LimitKey::IrradianceMin, LimitKey::IrradianceMax),
            (LimitKey::SolarTimeStart, LimitKey::SolarTimeEnd),
        ];
        pairs.into_iter().find_map(|(low, high)| {
            let (low, high) = (self.row(low)?, self.row(high)?);
            let what = format!(
                "{} is {} and {} is {}, so nothing lies between",
                low.word?, low.value, high.word?, high.value
            );
            (low.value >= high.value).then_some(what)
        })
    }

    /// The row of a key, if it holds for this campaign: of each end of the water window,
    /// either the moving or the fixed one does.
    pub fn row(&self, key: LimitKey) -> Option<&S580Limit> {
        self.rows.iter().find(|row| row.key == key)
    }

    /// Value of a key, if it holds for this campaign.
    pub fn get(&self, key: LimitKey) -> Option<f64> {
        self.row(key).map(|row| row.value)
    }

    /// A row that is never replaced by another.
    fn standing_row(&self, key: LimitKey) -> &S580Limit {
        self.row(key)
            .expect("only the moving ends of the water window are ever replaced")
    }

    /// Water temperature, °C, from which an interval counts, in air of a temperature, °C; with
    /// a guard band, by that more.
    pub fn water_start_c(&self, ambient_c: f64) -> f64 {
        match self.get(LimitKey::WaterMin) {
            Some(lowest_c) => lowest_c + self.tenths_of_band(LimitKey::WaterMin),
            None => {
                let above_k = self.standing_row(LimitKey::WaterAboveAmbient).value;
                ambient_c + above_k + self.tenths_of_band(LimitKey::WaterAboveAmbient)
            }
        }
    }

    /// How far above ambient the water window begins, K, guard band included; `None` where its
    /// end is fixed.
    pub fn water_start_above_ambient_k(&self) -> Option<f64> {
        let above_k = self.get(LimitKey::WaterAboveAmbient)?;
        let start_k = above_k + self.tenths_of_band(LimitKey::WaterAboveAmbient);
        // Without what is beyond a double's digits: it is told as it is.
        Some((start_k * 1e6).round() / 1e6)
    }

    /// Guard band of a water temperature, K, rounded up to the tenths that a plan tells.
    fn tenths_of_band(&self, key: LimitKey) -> f64 {
        (self.guard_band(key, 0.0) * 10.0 - SLACK).ceil() / 10.0
    }

    /// Water temperature, °C, up to which an interval counts, with a local boiling point, °C;
    /// with a guard band, by that less.
    pub fn water_stop_c(&self, boiling_point_c: f64) -> f64 {
        let highest_c = self.get(LimitKey::WaterMax).unwrap_or_else(|| {
            boiling_point_c - self.standing_row(LimitKey::WaterBelowBoiling).value
        });
        highest_c - self.tenths_of_band(LimitKey::WaterMax)
    }

    /// Least irradiance, W/m².
    pub fn irradiance_min_w_m2(&self) -> f64 {
        self.standing_row(LimitKey::IrradianceMin).value
    }

    /// Greatest irradiance, W/m².
    pub fn irradiance_max_w_m2(&self) -> f64 {
        self.standing_row(LimitKey::IrradianceMax).value
    }

    /// Wind that gusts may not exceed for long, m/s.
    pub fn wind_gust(&self) -> &S580Limit {
        self.standing_row(LimitKey::WindGust)
    }

    /// Start and end of the solar window, h of solar time.
    pub fn solar_window_h(&self) -> (f64, f64) {
        let hour = |key: LimitKey| self.standing_row(key).value;
        (hour(LimitKey::SolarTimeStart), hour(LimitKey::SolarTimeEnd))
    }

    /// Length of the solar window, s.
    pub fn solar_window_s(&self) -> f64 {
        let (start_h, end_h) = self.solar_window_h();
        (end_h - start_h).max(0.0) * SECONDS_PER_HOUR
    }

    /// How long intervals are to be.
    pub fn interval(&self) -> IntervalLength {
        IntervalLength::of_s(self.standing_row(LimitKey::Interval).value)
    }

    /// The same limits, but for the length of an interval, s.
    pub fn with_interval_s(&self, length_s: f64) -> Limits {
        let mut limits = self.clone();
        for row in limits
            .rows
            .iter_mut()
            .filter(|row| row.key == LimitKey::Interval)
        {
            row.value = length_s;
        }
        limits
    }

    /// Whether the campaign has a limit of its own in place of the practice's.
    pub fn is_own(&self, key: LimitKey) -> bool {
        self.row(key).is_some_and(|row| row.changed)
    }

    /// Expanded uncertainty that counts against a limit, in its unit, at a value; zero without
    /// a guard band.
    pub fn guard_band(&self, key: LimitKey, value: f64) -> f64 {
        self.guard.map_or(0.0, |guard| guard.expanded(key, value))
    }

    /// Share by which the load may be off.
    pub fn load_tolerance(&self) -> f64 {
        self.standing_row(LimitKey::LoadTolerance).value
    }

    /// Water over intercept area.
    pub fn load(&self) -> &S580Limit {
        self.standing_row(LimitKey::Load)
    }

    /// Fewest used intervals.
    pub fn least_intervals(&self) -> usize {
        self.standing_row(LimitKey::Intervals).value as usize
    }

    /// Fewest days with used intervals.
    pub fn least_days(&self) -> usize {
        self.standing_row(LimitKey::Days).value as usize
    }

    /// Least R² of the line.
    pub fn r_squared(&self) -> &S580Limit {
        self.standing_row(LimitKey::RSquared)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn with(key: &str, value: f64) -> Result<Limits, Problem> {
        let key = key.to_owned();
        Limits::of(Path::new("campaign.toml"), &[OwnLimit { key, value }])
    }

    #[test]
    fn a_fixed_window_replaces_the_moving_one() {
        let limits = with("water_min_c", 40.0).unwrap();
        assert_eq!(limits.get(LimitKey::WaterMin), Some(40.0));
        assert_eq!(limits.get(LimitKey::WaterAboveAmbient), None);
        assert_eq!(limits.get(LimitKey::WaterBelowBoiling), Some(5.0));
        assert!(limits.rows[0].changed);
    }

    #[test]
    fn a_guard_band_narrows_the_water_window_that_a_plan_tells() {
        let guard = Guard {
            irradiance: 0.06,
            water_k: 0.6,
            ambient_k: 0.8,
            wind_m_s: None,
            clock_s: 30.0,
            water_mass: 0.01,
        };
        let limits = with("ambient_min_c", 20.0).unwrap();
        let guarded = Limits {
            guard: Some(guard),
            ..limits.clone()
        };
        // √(0.6² + 0.8²) = 1.
        let start_k = guarded.water_start_above_ambient_k().unwrap();
        assert!((start_k - 6.0).abs() < 1e-9);
        assert!((guarded.water_start_c(25.0) - 31.0).abs() < 1e-9);
        assert!((guarded.water_stop_c(95.0) - 89.4).abs() < 1e-9);
        assert_eq!(limits.water_stop_c(95.0), 90.0);
    }

    #[test]
    fn an_own_limit_equal_to_the_practice_is_no_change() {
        let limits = with("ambient_min_c", 20.0).unwrap();
        assert!(limits.rows.iter().all(|row| !row.changed));
    }

    #[test]
    fn a_key_that_is_none_is_refused() {
        let refused = with("ambient_mim_c", 20.0).unwrap_err();
        assert!(refused.to_string().contains("ambient_mim_c"), "{refused}");
    }

    #[test]
    fn what_always_holds_has_its_row_whatever_a_campaign_sets() {
        for row in own_rows() {
            let fixed = match row.key {
                LimitKey::WaterMin => 40.0,
                LimitKey::WaterMax => 90.0,
                _ => row.value,
            };
            let limits = with(row.word.unwrap(), fixed).unwrap();
            let window_h = limits.solar_window_h();
            assert!(window_h.0 < window_h.1);
            assert!(limits.water_stop_c(100.0) > limits.water_start_c(20.0));
            assert!(limits.irradiance_min_w_m2() < limits.irradiance_max_w_m2());
            assert_eq!((limits.least_intervals(), limits.least_days()), (30, 3));
            assert_eq!((limits.load().value, limits.r_squared().value), (7.0, 0.75));
            assert_eq!(limits.wind_gust().value, 2.5);
        }
    }
}
