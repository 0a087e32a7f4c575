//! The inks: one palette on paper, in figures and on the screen, legible, and told apart in grey.

use std::collections::BTreeMap;

use plotters::style::RGBColor;
use simmerline::report::figures::style;

use super::on_paper::{contrast, luminance};
use super::pages::Ink;

/// Inks that text is written in, and what it stands on, by the names of the style sheets.
const OF_TEXT: [&str; 4] = ["ink", "quiet", "teal", "amber"];
const GROUNDS: [&str; 2] = ["paper", "wash"];
/// Least contrast of text, by WCAG 2.1, success criterion 1.4.3.
const TEXT_CONTRAST: f64 = 4.5;

/// How much lighter one stroke must be than another that means something else, and an area
/// than one beside it; common practice, no published source. Strokes have their own form as
/// well, a dash, a dot or a cross, and areas touch.
const STROKES_APART: f64 = 1.25;
const AREAS_APART: f64 = 1.15;

type Palette = BTreeMap<String, Ink>;

fn hexadecimal(digits: &str) -> Ink {
    std::array::from_fn(|at| {
        let value = u8::from_str_radix(&digits[2 * at..2 * at + 2], 16).unwrap();
        f64::from(value) / 255.0
    })
}

fn ink(colour: RGBColor) -> Ink {
    [colour.0, colour.1, colour.2].map(|value| f64::from(value) / 255.0)
}

/// Colours of a text that are set as `{before}name{between}#rrggbb`.
fn palette(text: &str, before: &str, between: &str) -> Palette {
    let lines = text.lines().filter_map(|line| {
        let (name, value) = line.trim().strip_prefix(before)?.split_once(between)?;
        let value = value.trim().strip_prefix('#')?;
        let is_plain = value.len() >= 6 && !value[6..].starts_with(|c: char| c.is_ascii_hexdigit());
        is_plain.then(|| (name.to_owned(), hexadecimal(&value[..6])))
    });
    lines.collect()
}

fn on_paper() -> Palette {
    let text = std::fs::read_to_string("templates/parts/style.typ").unwrap();
    let mut palette = palette(&text, "#let ", " = rgb(\"");
    palette.insert("paper".to_owned(), [1.0; 3]);
    palette
}

/// Of a light and of a dark screen.
fn on_screen() -> [Palette; 2] {
    let text = std::fs::read_to_string("templates/web/style.css").unwrap();
    let (light, dark) = text.split_once("prefers-color-scheme: dark").unwrap();
    [light, dark].map(|text| palette(text, "--", ": "))
}

#[test]
fn text_is_legible_on_every_ground() {
    let [light, dark] = on_screen();
    for palette in [on_paper(), light, dark] {
        for text in OF_TEXT {
            for ground in GROUNDS {
                let ratio = contrast(palette[text], palette[ground]);
                assert!(ratio >= TEXT_CONTRAST, "{text} on {ground}: {ratio:.2}");
            }
        }
    }
    for colour in [style::INK, style::LINE] {
        for ground in [RGBColor(255, 255, 255), style::SHADE, style::BAND] {
            let ratio = contrast(ink(colour), ink(ground));
            assert!(
                ratio >= TEXT_CONTRAST,
                "{colour:?} on {ground:?}: {ratio:.2}"
            );
        }
    }
}

#[test]
fn paper_figures_and_screen_share_one_palette() {
    let (paper, [screen, _]) = (on_paper(), on_screen());
    for (name, ink) in &paper {
        assert_eq!(screen.get(name), Some(ink), "{name}");
    }
    for (name, of_figures) in [("ink", style::INK), ("teal", style::LINE)] {
        assert_eq!(paper[name], ink(of_figures), "{name}");
    }
}

#[test]
fn marks_of_different_meaning_are_told_apart_in_grey() {
    let apart = |pairs: &[(RGBColor, RGBColor)], least: f64| {
        for (one, two) in pairs {
            let ratio = contrast(ink(*one), ink(*two));
            assert!(ratio >= least, "{one:?}, {two:?}: {ratio:.2}");
        }
    };
    // What is drawn over each other in a run, and beside the line.
    let strokes = [
        (style::INK, style::LINE),
        (style::LINE, style::SUN),
        (style::LINE, style::QUIET),
        (style::SUN, style::QUIET),
    ];
    apart(&strokes, STROKES_APART);
    let white = RGBColor(255, 255, 255);
    let areas = [
        (style::BAND, style::OUTER_BAND),
        (style::OUTER_BAND, white),
        (style::SHADE, white),
        (style::LINE, style::BAND),
    ];
    apart(&areas, AREAS_APART);
}

#[test]
fn luminance_is_that_of_the_standard() {
    // By hand from WCAG 2.1: black, white, and the mid grey #777777, which is known to fail on
    // white with 4.48 : 1.
    assert_eq!(luminance([0.0; 3]), 0.0);
    assert!((luminance([1.0; 3]) - 1.0).abs() < 1e-12);
    let ratio = contrast([f64::from(0x77) / 255.0; 3], [1.0; 3]);
    assert!((ratio - 4.48).abs() < 0.005, "{ratio}");
}
