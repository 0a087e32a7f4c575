//! Figures of whole and of poor campaigns.

use lopdf::Document;
use simmerline::language::Words;
use simmerline::report::figures::style::Canvas;
use simmerline::report::s580::figures::power_line::{TALL_PT, draw_power_line};
use simmerline::report::s580::figures::residuals::draw_residuals;
use simmerline::report::s580::figures::run_day::draw_run;

use crate::report::campaigns::*;
use crate::report::pdf::pages;

#[test]
fn every_figure_is_well_formed_and_has_only_finite_numbers() {
    let mut residuals = 0;
    for (name, assessment) in samples_with_water().into_iter().chain(poor_campaigns()) {
        let mut figures =
            vec![draw_power_line(&assessment, &Canvas::page(Words::english()), TALL_PT).unwrap()];
        for run in 0..assessment.tested.runs.len() {
            figures.push(draw_run(&assessment, run, &Canvas::page(Words::english())).unwrap());
        }
        if let Some(sure) = assessment.s580.uncertainty() {
            figures
                .push(draw_residuals(&assessment, sure, &Canvas::page(Words::english())).unwrap());
            figures
                .push(draw_residuals(&assessment, sure, &Canvas::phone(Words::english())).unwrap());
            residuals += 1;
        }
        for svg in figures {
            if let Err(error) = roxmltree::Document::parse(&svg) {
                panic!("{name}: {error}");
            }
            for wrong in ["NaN", "inf"] {
                assert!(!svg.contains(wrong), "{name}: {wrong} in {svg}");
            }
            assert!(svg.contains("font-family=\"Inter\""), "{name}");
        }
    }
    assert!(residuals >= 7);
}

#[test]
fn the_air_read_every_second_time_is_still_drawn() {
    // Water every ten minutes, air every twenty: the quiet ink draws nothing else but names
    // and the bars of the strip, which are rectangles.
    let assessment = sample("kitchen-thermometer");
    let svg = draw_run(&assessment, 0, &Canvas::page(Words::english())).unwrap();
    let lines = svg.split("<polyline ").skip(1);
    let of_air = lines.filter(|line| line.split('>').next().unwrap().contains("#8B9499"));
    let longest = of_air
        .map(|line| line.split("points=\"").nth(1).unwrap())
        .map(|points| points.split('"').next().unwrap().split_whitespace().count())
        .max();
    let readings = assessment.tested.runs[0].readings.ambient_c.as_ref();
    assert_eq!(longest, Some(readings.unwrap().value.len()));
}

#[test]
fn no_axis_of_the_figure_on_page_one_shows_a_number_twice() {
    for (name, assessment) in samples_with_water().into_iter().chain(poor_campaigns()) {
        let svg = draw_power_line(&assessment, &Canvas::page(Words::english()), TALL_PT).unwrap();
        // Labels of an axis share one coordinate and hold a number only.
        let mut labels: Vec<(String, String)> = Vec::new();
        for text in svg.split("<text ").skip(1) {
            let (attributes, after) = text.split_once('>').unwrap();
            let label = after.split('<').next().unwrap().trim().to_owned();
            if label.replace('−', "-").parse::<f64>().is_err() {
                continue;
            }
            for key in ["x=\"", "y=\""] {
                let value = attributes.split(key).nth(1).unwrap();
                let line = format!("{key}{}", value.split('"').next().unwrap());
                labels.push((line, label.clone()));
            }
        }
        let numbers = labels.len();
        assert!(numbers >= 8, "{name}: {labels:?}");
        labels.sort();
        labels.dedup();
        assert_eq!(labels.len(), numbers, "{name}: {labels:?}");
    }
}

#[test]
fn a_campaign_that_lacks_something_still_gets_a_report_that_names_it() {
    for (lacking, assessment) in poor_campaigns() {
        let pdf = Document::load_mem(&slim_pdf_of(&assessment)).unwrap();
        let pages = pages(&pdf);
        let text = pages.concat();
        let said = match lacking.as_str() {
            "rating" | "rows" | "all but one interval" | "all but two intervals" => "norating",
            "runs" | "all but three intervals" => "sedintervalson1day",
            "irradiance" => "rradiancewasnotmeasured",
            "wind" => "indwasnotmeasured",
            other => panic!("{other}"),
        };
        assert!(pages[0].contains(said), "{lacking}: {}", pages[0]);
        assert!(pages[0].contains("Indicative"), "{lacking}");
        assert!(text.contains("Endofreport"), "{lacking}");
    }
}
