//! A campaign's own limits: whether they make sense, and what they do to the level.

use super::finding::{FindingCode, S580Finding};
use super::in_force::Limits;
use super::intervals::Interval;
use super::limits::{LimitKey, PRACTICE, S580Limit, fixed_ends, own_rows};
use crate::believable::{
    OWN_LIMIT_C, OWN_LIMIT_DAYS, OWN_LIMIT_FRACTION, OWN_LIMIT_H, OWN_LIMIT_INTERVALS, OWN_LIMIT_K,
    OWN_LIMIT_KG_M2, OWN_LIMIT_M_S, OWN_LIMIT_R_SQUARED, OWN_LIMIT_S, OWN_LIMIT_W_M2, Range,
};
use crate::campaign::locate::Checker;
use crate::campaign::model::{GUARD_KEY, OwnLimit};
use crate::language::{Phrase, listed};
use crate::message;
use crate::procedure::limit::{Allowed, DAYS, FRACTION, INTERVALS, SLACK, Standing};

/// Notes keys that are no limit, values out of sense, and limits that contradict each other.
pub fn check_own_limits(checker: &mut Checker<'_>, own: &[OwnLimit]) {
    let words = own_rows().filter_map(|row| row.word);
    let words: Vec<&str> = words.chain([GUARD_KEY]).collect();
    for limit in own {
        let mut rows = own_rows();
        match rows.find(|row| row.word == Some(&limit.key)) {
            Some(row) => {
                let key = format!("limits.{}", limit.key);
                checker.in_range(&key, limit.value, &sensible_range(row.unit), row.unit);
                check_whole(checker, &key, limit.value, row.unit);
            }
            None => checker.unknown_key("limits", &limit.key, &words),
        }
    }
    check_water_window(checker, own);
}

/// Counts are whole, and so are minutes: a person reads a clock by them.
fn check_whole(checker: &mut Checker<'_>, key: &str, value: f64, unit: &str) {
    if matches!(unit, INTERVALS | DAYS) && value.fract() != 0.0 {
        let what = format!("found {value}, expected a whole number of {unit}");
        checker.problem(key, what, "round it up");
    }
    if unit == "s" && value % 60.0 != 0.0 {
        let what = format!("found {value}, expected whole minutes in seconds");
        checker.problem(key, what, "write a multiple of 60, as in 300 or 900");
    }
}

/// The two ends of the water window: not beyond each other, and each given once.
fn check_water_window(checker: &mut Checker<'_>, own: &[OwnLimit]) {
    let value_of = |row: &S580Limit| {
        let mut set = own.iter().filter(|own| row.word == Some(&own.key));
        set.next().map(|own| own.value)
    };
    let ends: Vec<_> = fixed_ends().collect();
    if let [(least, _), (most, _)] = ends.as_slice()
        && let (Some(least_key), Some(most_key)) = (least.word, most.word)
        && let (Some(lowest), Some(highest)) = (value_of(least), value_of(most))
        && lowest >= highest
    {
        checker.problem(
            &format!("limits.{least_key}"),
            format!("{least_key} is {lowest} and {most_key} is {highest}, so nothing lies between"),
            "exchange or correct the two",
        );
    }
    for (fixed, moving) in ends {
        if let (Some(fixed_key), Some(moving_key)) = (fixed.word, moving.word)
            && value_of(fixed).is_some()
            && value_of(moving).is_some()
        {
            checker.problem(
                &format!("limits.{fixed_key}"),
                format!("both {fixed_key} and {moving_key} are given, expected one"),
                "a fixed end of the water window takes the place of the moving one: delete one of the two",
            );
        }
    }
}

/// Bounds of an own limit, by its unit.
fn sensible_range(unit: &str) -> Range {
    match unit {
        "W/m²" => OWN_LIMIT_W_M2,
        "m/s" => OWN_LIMIT_M_S,
        "h" => OWN_LIMIT_H,
        "K" => OWN_LIMIT_K,
        "s" => OWN_LIMIT_S,
        "kg/m²" => OWN_LIMIT_KG_M2,
        FRACTION => OWN_LIMIT_FRACTION,
        INTERVALS => OWN_LIMIT_INTERVALS,
        DAYS => OWN_LIMIT_DAYS,
        "" => OWN_LIMIT_R_SQUARED,
        _ => OWN_LIMIT_C,
    }
}

/// How an own limit compares with the practice's.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Change {
    Looser,
    Tighter,
}

/// What a campaign's own limits do to the level, looser and tighter ones.
pub fn own_limit_findings(
    limits: &Limits,
    intervals: &[Interval],
    boiling_point_c: f64,
) -> Vec<S580Finding> {
    let mut relaxed_requirements = Vec::new();
    let mut relaxed_recommendations = Vec::new();
    let mut tightened = Vec::new();
    for (own, practice) in limits
        .rows
        .iter()
        .zip(PRACTICE)
        .filter(|(own, _)| own.changed)
    {
        let text = message!(
            "finding-own-limit",
            what = own.what(),
            value = own.bound(),
            practice = spoken_practice(own, practice)
        );
        match (
            compare(own, practice, intervals, boiling_point_c),
            practice.standing,
        ) {
            (Some(Change::Looser), Standing::Requirement) => relaxed_requirements.push(text),
            (Some(Change::Looser), Standing::Recommendation) => relaxed_recommendations.push(text),
            (Some(Change::Tighter), _) => tightened.push(text),
            (None, _) => {}
        }
    }
    if limits.guard.is_some() {
        tightened.push(message!("finding-guard"));
    }
    let mut findings = Vec::new();
    let remedy = || message!("finding-own-limit-remedy");
    if !relaxed_requirements.is_empty() {
        findings.push(S580Finding::indicative(
            FindingCode::RequirementRelaxed,
            message!(
                "finding-requirement-relaxed",
                limits = listed(relaxed_requirements)
            ),
            remedy(),
        ));
    }
    if !relaxed_recommendations.is_empty() {
        findings.push(S580Finding::note(
            FindingCode::RecommendationRelaxed,
            message!(
                "finding-recommendation-relaxed",
                limits = listed(relaxed_recommendations)
            ),
            remedy(),
        ));
    }
    if !tightened.is_empty() {
        findings.push(S580Finding::note(
            FindingCode::LimitTightened,
            message!("finding-limit-tightened", limits = listed(tightened)),
            remedy(),
        ));
    }
    findings
}

fn spoken_practice(own: &S580Limit, practice: &S580Limit) -> Phrase {
    if own.key == practice.key {
        practice.bound()
    } else {
        message!(
            "finding-practice-limit",
            what = practice.what(),
            value = practice.bound()
        )
        .into()
    }
}

/// Looser if it lies beyond the practice's limit, or is another where the practice asks for one
/// value; a fixed end of the water window, if it
/// does so for any interval.
fn compare(
    own: &S580Limit,
    practice: &S580Limit,
    intervals: &[Interval],
    boiling_point_c: f64,
) -> Option<Change> {
    let practice_values: Vec<f64> = match own.key {
        LimitKey::WaterMin => intervals
            .iter()
            .filter_map(|interval| Some(interval.measured.ambient?.mean + practice.value))
            .collect(),
        LimitKey::WaterMax => vec![boiling_point_c - practice.value],
        _ => vec![practice.value],
    };
    let is_looser = |value: &f64| match own.allowed {
        Allowed::AtLeast => own.value < value - SLACK,
        Allowed::AtMost => own.value > value + SLACK,
        Allowed::Within(_) => (own.value - value).abs() > SLACK,
    };
    let is_tighter = |value: &f64| (own.value - value).abs() > SLACK && !is_looser(value);
    if practice_values.iter().any(is_looser) {
        Some(Change::Looser)
    } else if practice_values.iter().any(is_tighter) {
        Some(Change::Tighter)
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::Path;

    use crate::error::{Error, Problem};

    /// What is told of the lines below `[limits]`, which is line 1.
    fn problems(lines: &str) -> Vec<Problem> {
        let text = format!("[limits]\n{lines}\n");
        let mut checker = Checker::new(Path::new("campaign.toml"), &text);
        let own: Vec<OwnLimit> = lines
            .lines()
            .filter_map(|line| line.split_once(" = "))
            .map(|(key, value)| OwnLimit {
                key: key.to_owned(),
                value: value.parse().unwrap(),
            })
            .collect();
        check_own_limits(&mut checker, &own);
        match checker.finish(()) {
            Ok(()) => Vec::new(),
            Err(Error::Campaign(problems)) => problems.listed().to_vec(),
            Err(other) => panic!("{other}"),
        }
    }

    fn told(lines: &str) -> Vec<String> {
        let problems = problems(lines);
        problems.iter().map(Problem::to_string).collect()
    }

    #[test]
    fn a_misspelt_limit_is_told_with_its_line_and_the_nearest() {
        assert_eq!(
            told("ambient_min_c = 15\nwind_gust = 3"),
            [
                "campaign.toml:3: [limits] wind_gust: unknown key \"wind_gust\"\nhint: did you mean \"wind_gust_m_s\"? its number is in m/s"
            ]
        );
    }

    #[test]
    fn a_limit_like_none_is_told_with_all_that_are_known() {
        let known = "water_above_ambient_k, water_below_boiling_k, water_min_c, water_max_c, \
            ambient_min_c, ambient_max_c, irradiance_min_w_m2, irradiance_max_w_m2, \
            irradiance_range_w_m2, wind_mean_max_m_s, wind_gust_m_s, solar_time_start_h, \
            solar_time_end_h, interval_s, load_kg_m2, load_tolerance, intervals_min, days_min, \
            r_squared_min, guard";
        assert_eq!(
            told("zzz = 3"),
            [format!(
                "campaign.toml:2: [limits] zzz: unknown key \"zzz\"\nhint: known here: {known}"
            )]
        );
    }

    #[test]
    fn every_limit_has_a_sensible_range_in_its_unit() {
        for (line, expected) in [
            (
                "irradiance_min_w_m2 = 2001",
                "found 2001, expected 0 to 2000 W/m²",
            ),
            ("wind_mean_max_m_s = -1", "found -1, expected 0 to 50 m/s"),
            ("solar_time_end_h = 25", "found 25, expected 0 to 24 h"),
            (
                "water_above_ambient_k = 101",
                "found 101, expected 0 to 100 K",
            ),
            ("water_max_c = 111", "found 111, expected -40 to 110 °C"),
            ("ambient_min_c = nan", "found NaN, expected -40 to 110 °C"),
            ("interval_s = 7200", "found 7200, expected 60 to 1800 s"),
            (
                "interval_s = 90",
                "found 90, expected whole minutes in seconds",
            ),
            ("load_kg_m2 = 0", "found 0, expected 0.1 to 100 kg/m²"),
            ("load_tolerance = 5", "found 5, expected 0 to 0.5 fraction"),
            (
                "intervals_min = 2",
                "found 2, expected 3 to 10000 intervals",
            ),
            (
                "intervals_min = 30.5",
                "found 30.5, expected a whole number of intervals",
            ),
            ("days_min = 0", "found 0, expected 1 to 366 days"),
            ("r_squared_min = 75", "found 75, expected 0 to 1 "),
        ] {
            let problems = problems(line);
            let what: Vec<&str> = problems
                .iter()
                .map(|problem| problem.what.as_str())
                .collect();
            assert_eq!(what, [expected], "{line}");
            assert_eq!(problems[0].place.line, Some(2));
        }
        for row in own_rows() {
            let highest = *sensible_range(row.unit).end();
            let is_in = told(&format!("{} = {}", row.word.unwrap(), highest.min(600.0)));
            assert_eq!(is_in, Vec::<String>::new());
        }
    }

    #[test]
    fn ends_of_the_water_window_contradict_each_other() {
        assert_eq!(
            told("water_min_c = 90\nwater_max_c = 40"),
            [
                "campaign.toml:2: [limits] water_min_c: water_min_c is 90 and water_max_c is 40, so nothing lies between\nhint: exchange or correct the two"
            ]
        );
        assert_eq!(
            told("water_max_c = 90\nwater_below_boiling_k = 4"),
            [
                "campaign.toml:2: [limits] water_max_c: both water_max_c and water_below_boiling_k are given, expected one\nhint: a fixed end of the water window takes the place of the moving one: delete one of the two"
            ]
        );
    }
}
