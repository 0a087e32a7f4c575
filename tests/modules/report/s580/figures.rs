//! Figures of whole and of poor campaigns.

use lopdf::Document;
use simmerline::language::{LANGUAGES, UnitSystem, Words};
use simmerline::procedure::Assessment;
use simmerline::procedure::s580::result::count_reasons;
use simmerline::report::figures::fit::width_pt;
use simmerline::report::figures::style::Canvas;
use simmerline::report::s580::figures::drawn::draw_figures;
use simmerline::report::s580::figures::power_line::{HEIGHTS_PT, draw_power_line};
use simmerline::report::s580::figures::residuals::draw_residuals;

use crate::kit::campaign::Invented;
use crate::kit::rate::rate;
use crate::report::campaigns::*;
use crate::report::pdf::{pages, squeezed};

/// The ink of limits.
const AMBER: &str = "#9A4A00";

#[test]
fn every_figure_is_well_formed_and_has_only_finite_numbers() {
    let mut residuals = 0;
    for (name, assessment) in samples_with_water().into_iter().chain(poor_campaigns()) {
        let mut figures = vec![
            draw_power_line(&assessment, &Canvas::page(Words::english()), HEIGHTS_PT[0]).unwrap(),
        ];
        figures.extend(runs_drawn(&assessment, &Canvas::page(Words::english())));
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

/// The figures of a campaign's runs, as a report on such a canvas has them.
fn runs_drawn(assessment: &Assessment, canvas: &Canvas<'_>) -> Vec<String> {
    let figures = draw_figures(assessment, canvas).unwrap().into_iter();
    let runs = figures.filter(|figure| figure.name.starts_with("run-"));
    runs.map(|figure| String::from_utf8(figure.bytes).unwrap())
        .collect()
}

/// A text in a figure, with its box in drawing units.
#[derive(Debug, Clone)]
struct Written {
    words: String,
    colour: String,
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
}

/// Width and height of a figure in drawing units, and what is written on it.
fn written(svg: &str) -> (f64, f64, Vec<Written>) {
    let svg = roxmltree::Document::parse(svg).unwrap();
    let number = |node: &roxmltree::Node<'_, '_>, name: &str| -> f64 {
        node.attribute(name).unwrap().parse().unwrap()
    };
    let root = svg.root_element();
    let texts = root.descendants().filter(|node| node.has_tag_name("text"));
    let written = texts.map(|node| {
        let words = node.text().unwrap().trim().to_owned();
        let (x, y, size) = (
            number(&node, "x"),
            number(&node, "y"),
            number(&node, "font-size"),
        );
        let width = width_pt(&words, size);
        let left = match node.attribute("text-anchor").unwrap() {
            "start" => x,
            "middle" => x - width / 2.0,
            _ => x - width,
        };
        // Half the height of an x below the place; capitals of Inter are 0.73 of its size high.
        assert_eq!(node.attribute("dy"), Some("0.5ex"), "{words}");
        let base = y + 0.27 * size;
        Written {
            words,
            colour: node.attribute("fill").unwrap().to_owned(),
            left,
            right: left + width,
            top: base - 0.73 * size,
            bottom: base,
        }
    });
    let written = written.collect();
    (number(&root, "width"), number(&root, "height"), written)
}

#[test]
fn no_label_of_a_run_leaves_its_figure_or_touches_another_in_any_language() {
    for language in LANGUAGES {
        let words = Words::new(language, UnitSystem::Si);
        for (name, assessment) in samples_with_water().into_iter().chain(poor_campaigns()) {
            for canvas in [Canvas::page(&words), Canvas::phone(&words)] {
                for svg in runs_drawn(&assessment, &canvas) {
                    let (width, height, written) = written(&svg);
                    let place = format!("{name}, {}", language.code);
                    assert!(written.len() > 5, "{place}: {written:?}");
                    for (index, label) in written.iter().enumerate() {
                        // A unit is an eighth of a point; places are rounded to whole ones.
                        let is_inside = label.left >= -1.0
                            && label.right <= width + 1.0
                            && label.top >= -1.0
                            && label.bottom <= height + 1.0;
                        assert!(is_inside, "{place}: {label:?} on {width} × {height}");
                        for other in &written[..index] {
                            let touches = label.left < other.right
                                && other.left < label.right
                                && label.top < other.bottom
                                && other.top < label.bottom;
                            assert!(!touches, "{place}: {label:?} and {other:?}");
                        }
                    }
                }
            }
        }
    }
}

/// A run that is read by hand every ten minutes, from one tick of its clock to another.
fn read_by_hand() -> Assessment {
    let rows = (0..12).map(|step| {
        let (minutes, water_c) = (11 * 60 + 30 + 10 * step, 20.0 + 6.0 * f64::from(step));
        let clock = format!("{:02}:{:02}", minutes / 60, minutes % 60);
        format!("2026-10-04 {clock},{water_c:.1},24.0,900\n")
    });
    let log = format!(
        "time,water (°C),air (°C),irradiance (W/m²)\n{}",
        rows.collect::<String>()
    );
    rate(
        &Invented::default().text(&["notes.csv"]),
        &[("notes.csv", &log)],
    )
    .unwrap()
}

#[test]
fn the_times_below_a_run_follow_each_other_and_stand_at_their_ticks() {
    let by_hand = ("read by hand".to_owned(), read_by_hand());
    for units in [UnitSystem::Si, UnitSystem::Us] {
        let words = Words::new(LANGUAGES[0], units);
        for (name, assessment) in samples_with_water().into_iter().chain([by_hand.clone()]) {
            for canvas in [Canvas::page(&words), Canvas::phone(&words)] {
                for svg in runs_drawn(&assessment, &canvas) {
                    let (_, _, written) = written(&svg);
                    let mut times: Vec<Written> = written
                        .into_iter()
                        .filter(|label| {
                            let clock = label.words.split_once(':');
                            clock.is_some_and(|(hour, _)| hour.parse::<u8>().is_ok())
                        })
                        .collect();
                    times.sort_by(|one, other| one.left.total_cmp(&other.left));
                    let clocks: Vec<&str> = times.iter().map(|time| &*time.words).collect();
                    assert!(clocks.is_sorted(), "{name}: {clocks:?}");
                    if name == by_hand.0 && canvas.width_pt > 400.0 {
                        assert_eq!(clocks.first(), Some(&"11:30"), "{clocks:?}");
                        assert_eq!(clocks.last(), Some(&"13:20"), "{clocks:?}");
                    }
                }
            }
        }
    }
}

#[test]
fn every_run_of_a_campaign_has_the_same_lanes_and_the_same_axes() {
    let words = Words::english();
    for (name, assessment) in samples_with_water() {
        let occurring = count_reasons(assessment.s580.intervals.iter()).len();
        let mut of_first: Option<Vec<(String, i64)>> = None;
        for svg in runs_drawn(&assessment, &Canvas::page(words)) {
            let (_, _, written) = written(&svg);
            // Names of lanes and numbers of axes end at one line, left of the panels.
            let edge = written.iter().find(|label| label.words.ends_with("W/m²"));
            let edge = edge.unwrap().right;
            let at_edge = written
                .iter()
                .filter(|label| (label.right - edge).abs() < 1.0);
            let left: Vec<(String, i64)> = at_edge
                .map(|label| (label.words.clone(), label.top.round() as i64))
                .collect();
            let is_number =
                |(text, _): &&(String, i64)| text.starts_with(|c: char| c.is_ascii_digit());
            let lanes = left.iter().filter(|label| !is_number(label)).count();
            assert_eq!(lanes, occurring, "{name}: {left:?}");
            let first = of_first.get_or_insert_with(|| left.clone());
            assert_eq!(*first, left, "{name}");
        }
    }
}

#[test]
fn limits_of_the_campaign_are_drawn_with_their_numbers() {
    let own = sample("notebook");
    let svg = &runs_drawn(&own, &Canvas::page(Words::english()))[0];
    // Water boils at 94.9 °C there: 5 K less, and the limits of irradiance.
    let (_, _, labels) = written(svg);
    let limits = labels.iter().filter(|label| label.colour == AMBER);
    let limits: Vec<&str> = limits.map(|label| label.words.as_str()).collect();
    for expected in [
        "89.9 °C",
        "1100 W/m²",
        "450",
        "boiling − 5 K",
        "ambient + 5 K",
    ] {
        assert!(limits.contains(&expected), "{expected}: {limits:?}");
    }
    assert!(svg.contains("stroke-dasharray"));
}

#[test]
fn the_air_read_every_second_time_is_still_drawn() {
    // Water every ten minutes, air every twenty: nothing else is drawn in quiet ink of this
    // width.
    let assessment = sample("kitchen-thermometer");
    let svg = &runs_drawn(&assessment, &Canvas::page(Words::english()))[0];
    let lines = svg.split("<polyline ").skip(1);
    let of_air = lines.filter(|line| {
        let attributes = line.split('>').next().unwrap();
        attributes.contains("stroke=\"#566066\" stroke-width=\"7\"")
    });
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
        let svg =
            draw_power_line(&assessment, &Canvas::page(Words::english()), HEIGHTS_PT[0]).unwrap();
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
        let level = assessment.s580.conformity.level;
        assert!(level.falls_short(), "{lacking}");
        let level = squeezed(&level.describe().to_string());
        assert!(pages[0].contains(&level), "{lacking}: {level}");
        assert!(text.contains("Endofreport"), "{lacking}");
    }
}
