//! Readings to intervals: spans of about ten minutes over which power is taken.

use super::limits::{END_TOLERANCE, INTERVAL_S, STANDARD_IRRADIANCE_W_M2};
use super::reason::Reason;
use crate::campaign::model::Site;
use crate::logs::{Readings, Series};
use crate::physics::sun::solar_time_h;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::spans::{Summary, TimeSpan, summarise};
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// How long the intervals of a campaign are to be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct IntervalLength {
    aim_us: i64,
}

impl IntervalLength {
    /// The practice's.
    pub fn of_practice() -> Self {
        IntervalLength::of_s(INTERVAL_S)
    }

    /// A length to aim at, s.
    pub fn of_s(aim_s: f64) -> Self {
        IntervalLength {
            aim_us: (aim_s * MICROSECONDS_PER_SECOND).round() as i64,
        }
    }

    /// Length to aim at, µs.
    pub fn aim_us(self) -> i64 {
        self.aim_us
    }

    /// Length to aim at, min.
    pub fn aim_min(self) -> f64 {
        self.aim_us as f64 / US_PER_MINUTE
    }

    /// Shortest and longest interval, µs.
    fn ends_us(self) -> (i64, i64) {
        let share_us = (self.aim_us as f64 * END_TOLERANCE).round() as i64;
        (self.aim_us - share_us, self.aim_us + share_us)
    }

    /// Shortest and longest interval, s.
    pub fn ends_s(self) -> (f64, f64) {
        let (shortest_us, longest_us) = self.ends_us();
        let seconds = |us: i64| us as f64 / MICROSECONDS_PER_SECOND;
        (seconds(shortest_us), seconds(longest_us))
    }

    /// Shortest and longest interval, min.
    pub fn ends_min(self) -> (f64, f64) {
        let (shortest_s, longest_s) = self.ends_s();
        (
            shortest_s / SECONDS_PER_MINUTE,
            longest_s / SECONDS_PER_MINUTE,
        )
    }
}

const SECONDS_PER_MINUTE: f64 = 60.0;
const US_PER_MINUTE: f64 = SECONDS_PER_MINUTE * MICROSECONDS_PER_SECOND;

/// What was measured in one interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    pub span: TimeSpan,
    /// Time that really passed, s.
    pub duration_s: f64,
    pub water_start_c: f64,
    pub water_end_c: f64,
    pub water: Summary,
    /// `None` where there is no reading.
    pub ambient: Option<Summary>,
    pub irradiance: Option<Summary>,
    pub wind: Option<Summary>,
    pub solar_start_h: f64,
    pub solar_end_h: f64,
    /// P, W; negative while the water cools.
    pub cooking_power_w: f64,
    /// Ps, W.
    pub standardised_power_w: Option<f64>,
    /// Td, K.
    pub difference_k: Option<f64>,
}

/// What the practice says of an interval.
#[derive(Debug, Clone, PartialEq)]
pub enum Verdict {
    /// It breaks no limit and can be normalised: a point of the line.
    OnLine,
    /// It breaks no limit, and has no irradiance to be normalised by.
    NotNormalised,
    /// Every reason, in the order of the report.
    SetAside(Vec<Reason>),
}

/// One interval, as measured and as screened.
#[derive(Debug, Clone, PartialEq)]
pub struct Interval {
    /// Index of the run.
    pub run: usize,
    pub measured: Measured,
    pub verdict: Verdict,
}

impl Verdict {
    /// Every code in files.
    pub const CODES: &[&str] = &["used", "not-normalised", "set-aside"];

    /// The code in files.
    pub fn code(&self) -> &'static str {
        match self {
            Verdict::OnLine => "used",
            Verdict::NotNormalised => "not-normalised",
            Verdict::SetAside(_) => "set-aside",
        }
    }
}

impl Measured {
    /// Its point on the plot, Td (K) and Ps (W), if it is complete.
    pub fn point(&self) -> Option<(f64, f64)> {
        Some((self.difference_k?, self.standardised_power_w?))
    }
}

/// The intervals of one run, of those of all runs in their order.
pub fn of_run(intervals: &[Interval], run: usize) -> &[Interval] {
    let first = intervals.partition_point(|interval| interval.run < run);
    let count = intervals[first..].partition_point(|interval| interval.run == run);
    &intervals[first..first + count]
}

impl Interval {
    /// Whether it is used: a point of the line.
    pub fn is_on_line(&self) -> bool {
        self.verdict == Verdict::OnLine
    }

    /// Whether it breaks no limit, and has no irradiance to be normalised by.
    pub fn is_not_normalised(&self) -> bool {
        self.verdict == Verdict::NotNormalised
    }

    /// Whether it breaks a limit.
    pub fn is_set_aside(&self) -> bool {
        matches!(self.verdict, Verdict::SetAside(_))
    }

    /// Why it is set aside; empty where it is not.
    pub fn reasons(&self) -> &[Reason] {
        match &self.verdict {
            Verdict::SetAside(reasons) => reasons,
            Verdict::OnLine | Verdict::NotNormalised => &[],
        }
    }

    /// Its point on the plot, if it is complete.
    pub fn point(&self) -> Option<(f64, f64)> {
        self.measured.point()
    }
}

/// Cooking power of an interval, W: P = m c (T2 − T1)/Δt, with the mass of water m
/// (kg), its temperature at both ends (°C) and the time between them (s).
///
/// ```
/// let watts = simmerline::procedure::s580::intervals::cooking_power_w(1.0, 20.0, 30.0, 418.6);
/// assert!((watts - 100.0).abs() < 1e-9);
/// ```
///
/// # Source
/// ASAE S580, the clause on cooking power; c = 4186 J/(kg K), Δt 600 s.
/// DIFFERENCE: Δt is the time that really passed, so that readings by hand can be used.
pub fn cooking_power_w(water_kg: f64, start_c: f64, end_c: f64, duration_s: f64) -> f64 {
    water_kg * SPECIFIC_HEAT_J_PER_KG_K * (end_c - start_c) / duration_s
}

/// Standardised cooking power, W: Ps = P·700/G, with the mean irradiance G of the
/// interval (W/m²); `None` unless G is positive and Ps a finite number.
///
/// # Source
/// ASAE S580, the clause on standardised cooking power.
pub fn standardised_power_w(cooking_power_w: f64, irradiance_mean_w_m2: f64) -> Option<f64> {
    (irradiance_mean_w_m2 > 0.0)
        .then(|| cooking_power_w * STANDARD_IRRADIANCE_W_M2 / irradiance_mean_w_m2)
        .filter(|power_w| power_w.is_finite())
}

/// Boundaries of the intervals: pairs of indices into the water readings.
///
/// An interval ends at the reading nearest to its length after its start (600 s) among those
/// a tenth of that sooner or later (540 to 660 s), the earlier of two equally near; the next
/// starts there. Where there is none, the chain goes on from the next reading.
pub fn chain(water_time_us: &[i64], length: IntervalLength) -> Vec<(usize, usize)> {
    let (shortest_us, longest_us) = length.ends_us();
    let mut pairs = Vec::new();
    let mut start = 0;
    while start < water_time_us.len() {
        let after = |us: i64| water_time_us[start].saturating_add(us);
        let from = water_time_us.partition_point(|&time| time < after(shortest_us));
        let to = water_time_us.partition_point(|&time| time <= after(longest_us));
        let nearest =
            (from..to).min_by_key(|&end| (water_time_us[end] - after(length.aim_us)).abs());
        match nearest {
            Some(end) => {
                pairs.push((start, end));
                start = end;
            }
            None => start += 1,
        }
    }
    pairs
}

/// What was measured in each interval of a run.
pub fn measure_intervals(
    readings: &Readings,
    water_kg: f64,
    site: &Site,
    length: IntervalLength,
) -> Vec<Measured> {
    chain(&readings.water_c.time_us, length)
        .into_iter()
        .map(|ends| measure(readings, water_kg, site, ends))
        .collect()
}

/// What was measured from one water reading to another, given by their places.
fn measure(
    readings: &Readings,
    water_kg: f64,
    site: &Site,
    (start, end): (usize, usize),
) -> Measured {
    let water = &readings.water_c;
    let span = TimeSpan {
        from_us: water.time_us[start],
        to_us: water.time_us[end],
    };
    let (water_start_c, water_end_c) = (water.value[start], water.value[end]);
    let duration_s = seconds_between(span.from_us, span.to_us);
    let over = |series: &Option<Series>| {
        let series = series.as_ref();
        series.and_then(|series| summarise(series, span))
    };
    let water = summarise(water, span).expect("both boundaries of an interval are water readings");
    let (ambient, irradiance) = (over(&readings.ambient_c), over(&readings.irradiance_w_m2));
    let cooking_power_w = cooking_power_w(water_kg, water_start_c, water_end_c, duration_s);
    Measured {
        span,
        duration_s,
        water_start_c,
        water_end_c,
        water,
        ambient,
        irradiance,
        wind: over(&readings.wind_m_s),
        solar_start_h: solar_h(span.from_us, site),
        solar_end_h: solar_h(span.to_us, site),
        cooking_power_w,
        standardised_power_w: irradiance
            .and_then(|irradiance| standardised_power_w(cooking_power_w, irradiance.mean)),
        difference_k: ambient.map(|ambient| water.mean - ambient.mean),
    }
}

/// Where a run stands whose log still grows.
#[derive(Debug, Clone, PartialEq)]
pub struct Growing {
    /// How many of the intervals of [`chain`] no further reading can change.
    pub settled: usize,
    /// From the start of the interval that runs now to the last water reading; `None` before a
    /// second one.
    pub so_far: Option<Measured>,
}

/// The interval that runs now. One whose last reading is the last of all is still running until it
/// has its length: a later reading may lie nearer to that.
pub fn measure_growing(
    readings: &Readings,
    water_kg: f64,
    site: &Site,
    length: IntervalLength,
) -> Growing {
    let times = &readings.water_c.time_us;
    let mut ends = chain(times, length);
    let last = times.len().saturating_sub(1);
    let is_open =
        |&(start, end): &(usize, usize)| end == last && times[end] - times[start] < length.aim_us();
    if ends.last().is_some_and(is_open) {
        ends.pop();
    }
    let (_, longest_us) = length.ends_us();
    let mut start = ends.last().map_or(0, |&(_, end)| end);
    // Where a hole is longer than an interval, the chain goes on behind it.
    while start < last && times[last] - times[start] > longest_us {
        start += 1;
    }
    Growing {
        settled: ends.len(),
        so_far: (start < last).then(|| measure(readings, water_kg, site, (start, last))),
    }
}

/// Stretches longer than an interval's end may wander that no interval covers.
pub fn find_holes(
    intervals: &[Measured],
    water_time_us: &[i64],
    length: IntervalLength,
) -> Vec<TimeSpan> {
    let (Some(&first_us), Some(&last_us)) = (water_time_us.first(), water_time_us.last()) else {
        return Vec::new();
    };
    let mut holes = Vec::new();
    let mut covered_to = first_us;
    let mut note = |from_us: i64, to_us: i64, least_us: i64| {
        if to_us - from_us > least_us {
            holes.push(TimeSpan { from_us, to_us });
        }
    };
    for interval in intervals {
        note(covered_to, interval.span.from_us, 0);
        covered_to = interval.span.to_us;
    }
    let (_, longest_us) = length.ends_us();
    note(covered_to, last_us, longest_us);
    holes
}

fn solar_h(time_us: i64, site: &Site) -> f64 {
    let unix_s = time_us as f64 / MICROSECONDS_PER_SECOND;
    solar_time_h(unix_s, site.longitude_deg)
        .expect("readings lie between 1900 and 2200, which the algorithm covers")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(seconds: &[i64]) -> Vec<i64> {
        let us = MICROSECONDS_PER_SECOND as i64;
        seconds.iter().map(|second| second * us).collect()
    }

    fn chain(water_time_us: &[i64]) -> Vec<(usize, usize)> {
        super::chain(water_time_us, IntervalLength::of_practice())
    }

    #[test]
    fn an_interval_of_another_length_has_a_window_of_a_tenth_too() {
        let five_minutes = IntervalLength::of_s(300.0);
        assert_eq!(five_minutes.ends_s(), (270.0, 330.0));
        assert_eq!(five_minutes.ends_min(), (4.5, 5.5));
        let times = at(&[0, 269, 331, 601, 931]);
        assert_eq!(super::chain(&times, five_minutes), [(2, 3), (3, 4)]);
        assert_eq!(IntervalLength::of_practice().ends_s(), (540.0, 660.0));
    }

    #[test]
    fn the_nearest_reading_ends_an_interval_and_the_earlier_of_two() {
        assert_eq!(chain(&at(&[0, 560, 630])), [(0, 2)]);
        assert_eq!(chain(&at(&[0, 580, 620])), [(0, 1)]);
        assert_eq!(chain(&at(&[0, 540])), [(0, 1)]);
        assert_eq!(chain(&at(&[0, 660])), [(0, 1)]);
        assert_eq!(chain(&at(&[0, 539, 661])), []);
    }

    #[test]
    fn after_a_hole_the_chain_goes_on_from_the_next_reading() {
        assert_eq!(chain(&at(&[0, 600, 3000, 3600])), [(0, 1), (2, 3)]);
        assert_eq!(chain(&at(&[0, 300, 900, 1500])), [(1, 2), (2, 3)]);
    }
}
