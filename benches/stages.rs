//! How long each stage takes. Run with `cargo bench`.

#![allow(
    clippy::disallowed_methods,
    reason = "no report hangs on a test's last digit"
)]

use std::hint::black_box;
use std::path::Path;

use criterion::{Criterion, criterion_group, criterion_main};
use jiff::Timestamp;
use jiff::tz::TimeZone;
use simmerline::campaign::model::{LogRules, Site};
use simmerline::logs::read::read_bytes;
use simmerline::logs::request::Request;
use simmerline::procedure::s580::intervals::{IntervalLength, Measured, measure_intervals};
use simmerline::procedure::uncertainty::trials::draw;
use simmerline::report::{Edition, outputs, words};
use simmerline::stats::line::fit_line;

/// Eight hours at one reading a second.
const ROWS: i64 = 28_800;
/// 2026-09-16 06:00 UTC.
const START_S: i64 = 1_789_538_400;

/// Of intercept and slope in Ps(50).
const WEIGHTS: [f64; 2] = [1.0, 50.0];

/// An invented heating, one reading a second.
fn one_second_log() -> String {
    let zone = TimeZone::UTC;
    let mut log = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n".to_owned();
    for second in 0..ROWS {
        let time = Timestamp::from_second(START_S + second).expect("a time in 2026");
        let time = zone
            .to_datetime(time)
            .strftime("%Y-%m-%d %H:%M:%S")
            .to_string();
        let warmed = 70.0 * (1.0 - (-(second as f64) / 9000.0).exp());
        let waver = (second as f64 / 300.0).sin();
        log += &format!(
            "{time},{:.2},{:.2},{:.1},{:.2}\n",
            24.0 + warmed,
            26.0 + waver,
            850.0 + 20.0 * waver,
            0.5 + 0.2 * waver
        );
    }
    log
}

fn site() -> Site {
    Site {
        name: "invented".to_owned(),
        latitude_deg: 0.0,
        longitude_deg: 30.0,
        elevation_m: 1000.0,
        pressure_hpa: None,
        linke_turbidity: None,
        time_zone: TimeZone::UTC,
        time_zone_name: "UTC".to_owned(),
    }
}

fn one_second_day(criterion: &mut Criterion) {
    let log = one_second_log();
    let read = || {
        let path = Path::new("invented.csv");
        read_bytes(
            path,
            "invented.csv",
            log.as_bytes(),
            &Request::new(&LogRules::default(), &TimeZone::UTC),
        )
        .expect("the invented log is valid")
    };
    let rate = |readings: &_| {
        let intervals = measure_intervals(readings, 7.0, &site(), IntervalLength::of_practice());
        let (difference_k, power_w): (Vec<f64>, Vec<f64>) =
            intervals.iter().filter_map(Measured::point).unzip();
        fit_line(&difference_k, &power_w)
    };
    criterion.bench_function("one-second day: read", |bench| {
        bench.iter(|| black_box(read()))
    });
    let readings = read().readings;
    criterion.bench_function("one-second day: intervals and line", |bench| {
        bench.iter(|| black_box(rate(&readings)));
    });
    criterion.bench_function("one-second day: read, intervals and line", |bench| {
        bench.iter(|| black_box(rate(&read().readings)));
    });
}

fn one_campaign(criterion: &mut Criterion) {
    let folder = Path::new("sample-runs/open-dish");
    let assess = || simmerline::assess_folder(folder).expect("the sample runs are valid");
    criterion.bench_function("open-dish: read and rate", |bench| {
        bench.iter(|| black_box(assess()))
    });
    let assessment = assess();
    let issued = Timestamp::UNIX_EPOCH;
    criterion.bench_function("open-dish: report in words", |bench| {
        bench.iter(|| black_box(words::build(&assessment, &Edition::plain(issued))));
    });
    let point = assessment
        .s580
        .uncertainty()
        .expect("the sample has a line");
    let fitted = &point.of_line.fitted;
    criterion.bench_function("open-dish: draws of the rating", |bench| {
        let at_50_k = |[a, b]: [f64; 2]| [a + b * WEIGHTS[1]];
        let budgets = [point.budget.clone()];
        bench.iter(|| black_box(draw(fitted, WEIGHTS, &budgets, at_50_k)));
    });
    let data_alone = Edition {
        formats: Vec::new(),
        ..Edition::plain(issued)
    };
    criterion.bench_function("open-dish: outputs as data alone", |bench| {
        bench.iter(|| {
            black_box(outputs(&assessment, &data_alone).expect("the data can be written"))
        });
    });
    criterion.bench_function("open-dish: all outputs", |bench| {
        bench.iter(|| {
            black_box(outputs(&assessment, &Edition::plain(issued)).expect("the report can be set"))
        });
    });
}

criterion_group! {
    name = stages;
    config = Criterion::default().sample_size(20);
    targets = one_second_day, one_campaign
}
criterion_main!(stages);
