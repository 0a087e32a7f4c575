//! One run against local clock time, small beside the others: temperatures, irradiance, wind,
//! what of it is used, and which limit set aside what is not.

use jiff::tz::TimeZone;
use plotters::prelude::*;
use plotters::style::text_anchor::HPos;

use super::condition_strip::{LANE_PT, LanesPlace, draw_lanes};
use super::run_aims::draw_aims;
use super::run_axes::{RunAxes, Scale, TEXT_PT};
use super::run_clock::{CLOCK_PT, clock_ticks, draw_clock};
use super::run_curves::pieces;
use super::run_panel::{Panel, dotted, draw_limit, draw_line};
use crate::error::Result;
use crate::language::{Message, PairedUnit, UnitSystem, celsius, fixed, kelvins, short};
use crate::logs::Series;
use crate::message;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::{Assessment, Run};
use crate::report::figures::labels::{Label, Labels, PlacePt, Spot};
use crate::report::figures::style::{Area, Canvas, INK, LIMIT, NOTE, stroke};
use crate::report::s580::run_grid::local_hours;
use crate::units::fahrenheit_to_celsius;

/// Heights of the three panels by the width of the figure, points, the widest first.
const HEIGHTS_PT: &[(f64, [f64; 3])] = &[
    (400.0, [112.0, 50.0, 36.0]),
    (200.0, [46.0, 22.0, 17.0]),
    (0.0, [46.0, 22.0, 18.0]),
];
/// The same where figures stand in three rows or more of a page, and from how many runs on.
const LOW_PT: [f64; 3] = [38.0, 17.0, 14.0];
const MANY_RUNS: usize = 7;
/// Room above the first panel and between two, for the upper half of a number, points.
const ABOVE_PT: f64 = 4.0;
const BETWEEN_PT: f64 = 7.0;
/// Room right of the panels, for counts and the last clock time, points.
const RIGHT_PT: f64 = 15.0;
/// The same where there are degrees Fahrenheit and miles per hour, too.
const RIGHT_US_PT: f64 = 30.0;
/// Degrees Fahrenheit that are marked, the first with its unit, and the length of a mark, points.
const FAHRENHEIT: &[f64] = &[200.0, 150.0, 100.0, 50.0];
const TICK_PT: f64 = 2.2;
/// Room between the clock and the lanes, and below the last, points.
const LANES_GAP_PT: f64 = 2.5;
const BELOW_PT: f64 = 0.5;
/// Spans of time for each point of width, of which the lowest and highest are drawn.
const SPANS_A_POINT: f64 = 1.0;
/// How far the middle of a name is above or below its curve, and how far it ends beside it,
/// points.
const OFF_CURVE_PT: f64 = 5.2;
const BESIDE_PT: f64 = 3.0;
/// Where along a curve its name is tried, as shares of it.
const ALONG: &[f64] = &[0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2, 0.9, 0.1];

/// What the parts of one figure share.
struct Day<'d, 'b> {
    area: &'d Area<'b>,
    axes: &'d RunAxes,
    run: &'d Run,
    zone: &'d TimeZone,
    canvas: Canvas<'d>,
    intervals: &'d [&'d Interval],
    span_h: (f64, f64),
    left_pt: f64,
}

/// Heights of the panels of one of several runs, points.
fn panel_heights_pt(width_pt: f64, runs: usize) -> [f64; 3] {
    let is_wide_enough = |(least_pt, _): &&(f64, [f64; 3])| width_pt >= *least_pt;
    match HEIGHTS_PT.iter().find(is_wide_enough) {
        Some((0.0, _)) if runs >= MANY_RUNS => LOW_PT,
        of_width => of_width.map_or([0.0; 3], |(_, heights)| *heights),
    }
}

/// Draws a run on the axes of its campaign.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_run(
    assessment: &Assessment,
    index: usize,
    axes: &RunAxes,
    canvas: &Canvas<'_>,
) -> Result<String> {
    let run = &assessment.tested.runs[index];
    let zone = &assessment.tested.campaign.site.time_zone;
    let intervals: Vec<&Interval> = assessment.s580.intervals_of(index).collect();
    let runs = assessment.tested.runs.len();
    let [temperature_pt, irradiance_pt, wind_pt] = panel_heights_pt(canvas.width_pt, runs);
    let mut bottom_pt = ABOVE_PT + temperature_pt;
    let mut edges = |height_pt: f64| {
        let top_pt = bottom_pt + BETWEEN_PT;
        bottom_pt = top_pt + height_pt;
        (top_pt, bottom_pt)
    };
    let irradiance = axes.irradiance.as_ref();
    let irradiance = irradiance.map(|scale| (scale, edges(irradiance_pt)));
    let wind = axes.wind.as_ref().map(|scale| (scale, edges(wind_pt)));
    let lanes_top_pt = bottom_pt + CLOCK_PT + LANES_GAP_PT;
    let height_pt = lanes_top_pt + LANE_PT * axes.lanes.len() as f64 + BELOW_PT;
    let svg = canvas.draw(height_pt, |area| {
        let day = Day {
            area,
            axes,
            run,
            zone,
            canvas: *canvas,
            intervals: &intervals,
            span_h: axes.clock.shown_h(run, zone),
            left_pt: axes.left_pt(canvas.width_pt),
        };
        let mut labels = Labels::new(canvas.width_pt, height_pt);
        let temperature = (ABOVE_PT, ABOVE_PT + temperature_pt);
        let panel = day.panel(&axes.temperature, temperature);
        let ticks = clock_ticks(&panel, run.date, canvas.words);
        day.draw_temperatures(&panel, &mut labels)?;
        let aimed_us = run.readings.aimed_us.iter();
        let aimed_h = aimed_us.map(|time_us| day.hours(*time_us));
        draw_aims(area, &mut labels, &panel, aimed_h, canvas.words)?;
        if let Some((scale, edges)) = irradiance {
            let panel = day.panel(scale, edges);
            day.draw_irradiance(&panel, &mut labels, assessment)?;
        }
        if let Some((scale, edges)) = wind {
            day.draw_wind(&day.panel(scale, edges), &mut labels)?;
        }
        draw_clock(area, &mut labels, &panel, bottom_pt, &ticks)?;
        let place = LanesPlace {
            left_pt: panel.left_pt,
            right_pt: panel.right_pt,
            top_pt: lanes_top_pt,
            edge_pt: canvas.width_pt,
            across_pt: &|time_us| panel.across_pt(day.hours(time_us)),
        };
        draw_lanes(area, &mut labels, axes, &intervals, &place)
    })?;
    Ok(dotted(&svg))
}

impl Day<'_, '_> {
    fn hours(&self, time_us: i64) -> f64 {
        local_hours(time_us, self.run, self.zone)
    }

    fn panel<'s>(&self, scale: &'s Scale, (top_pt, bottom_pt): (f64, f64)) -> Panel<'s> {
        Panel {
            left_pt: self.left_pt,
            right_pt: self.canvas.width_pt
                - match self.canvas.words.units {
                    UnitSystem::Si => RIGHT_PT,
                    UnitSystem::Us => RIGHT_US_PT,
                },
            top_pt,
            bottom_pt,
            span_h: self.span_h,
            scale,
        }
    }

    /// Spans of used intervals, hours; those that follow each other are one.
    fn used_h(&self) -> Vec<(f64, f64)> {
        let mut used: Vec<(i64, i64)> = Vec::new();
        for interval in self
            .intervals
            .iter()
            .filter(|interval| interval.is_on_line())
        {
            let span = interval.measured.span;
            match used.last_mut() {
                Some(last) if last.1 == span.from_us => last.1 = span.to_us,
                _ => used.push((span.from_us, span.to_us)),
            }
        }
        let hours = |(from_us, to_us)| (self.hours(from_us), self.hours(to_us));
        used.into_iter().map(hours).collect()
    }

    /// A series as curves in points.
    fn curves(&self, panel: &Panel<'_>, series: &Series) -> Vec<Vec<PlacePt>> {
        let spans = (panel.right_pt - panel.left_pt) * SPANS_A_POINT;
        let place = |(time_us, value): (i64, f64)| panel.place(self.hours(time_us), value);
        pieces(series, spans as usize)
            .into_iter()
            .map(|piece| piece.into_iter().map(place).collect())
            .collect()
    }

    fn draw_curves(&self, curves: &[Vec<PlacePt>], style: ShapeStyle) -> Result<()> {
        curves
            .iter()
            .try_for_each(|curve| draw_line(self.area, curve, style))
    }

    fn draw_temperatures(&self, panel: &Panel<'_>, labels: &mut Labels) -> Result<()> {
        panel.shade(self.area, &self.used_h())?;
        panel.draw_axis(self.area, labels, self.canvas.words)?;
        let boiling = panel.level(self.axes.boiling_point_c);
        draw_line(self.area, &boiling, stroke(&NOTE, 0.5))?;
        let water = self.curves(panel, &self.run.readings.water_c);
        let ambient = self.run.readings.ambient_c.as_ref();
        let ambient_curves = ambient.map(|series| self.curves(panel, series));
        let ambient_curves = ambient_curves.unwrap_or_default();
        let least = ambient
            .zip(self.axes.above_ambient_k)
            .map(|(series, above_k)| {
                let above = Series {
                    time_us: series.time_us.clone(),
                    value: series.value.iter().map(|value| value + above_k).collect(),
                };
                self.curves(panel, &above)
            });
        let least = least.unwrap_or_default();
        for curve in &least {
            draw_limit(self.area, curve)?;
        }
        self.draw_curves(&ambient_curves, stroke(&NOTE, 0.9))?;
        self.draw_curves(&water, stroke(&INK, 1.4))?;
        let levels = panel.scale.limits.iter();
        let levels = levels.map(|limit| panel.level(limit.value));
        for level in levels.chain([boiling]) {
            labels.keep_clear_of(&level);
        }
        for curve in water.iter().chain(&ambient_curves).chain(&least) {
            labels.keep_clear_of(curve);
        }
        self.name_temperatures(panel, labels, [&water, &ambient_curves, &least])?;
        match self.canvas.words.units {
            UnitSystem::Si => Ok(()),
            UnitSystem::Us => self.draw_fahrenheit(panel, labels),
        }
    }

    /// Names the curves and the ends of the water window, each where it is free.
    fn name_temperatures(
        &self,
        panel: &Panel<'_>,
        labels: &mut Labels,
        [water, ambient, least]: [&[Vec<PlacePt>]; 3],
    ) -> Result<()> {
        let boiling_point_c = self.axes.boiling_point_c;
        let boils = message!("figure-boils", at = celsius(fixed(boiling_point_c, 1)));
        let boiling_pt = panel.down_pt(boiling_point_c);
        self.name(
            labels,
            boils,
            &NOTE,
            &beside_level(panel, boiling_pt - OFF_CURVE_PT),
        )?;
        self.name(labels, message!("figure-water"), &INK, &beside_curve(water))?;
        let below = along_curve(ambient, OFF_CURVE_PT);
        self.name(labels, message!("figure-ambient"), &NOTE, &below)?;
        if let Some(margin_k) = self.axes.below_boiling_k {
            let limit_pt = panel.down_pt(boiling_point_c - margin_k);
            let name = message!("figure-below-boiling", margin = kelvins(short(margin_k)));
            let spots = beside_level(panel, limit_pt + OFF_CURVE_PT);
            self.name(labels, name, &LIMIT, &spots)?;
        }
        if let Some(margin_k) = self.axes.above_ambient_k {
            let name = message!("figure-above-ambient", margin = kelvins(short(margin_k)));
            let above = along_curve(least, -OFF_CURVE_PT);
            self.name(labels, name, &LIMIT, &above)?;
        }
        Ok(())
    }

    /// Degrees Fahrenheit at the right edge of the temperatures.
    fn draw_fahrenheit(&self, panel: &Panel<'_>, labels: &mut Labels) -> Result<()> {
        for (place, fahrenheit) in FAHRENHEIT.iter().enumerate() {
            let celsius = fahrenheit_to_celsius(*fahrenheit);
            let (low_c, high_c) = panel.scale.range;
            if !(low_c..=high_c).contains(&celsius) {
                continue;
            }
            let at = panel.place(panel.span_h.1, celsius);
            let tick = [at, (at.0 + TICK_PT, at.1)];
            draw_line(self.area, &tick, stroke(&NOTE, 0.5))?;
            let number = self.canvas.words.say(short(*fahrenheit));
            let words = &match place {
                0 => format!("{number} °F"),
                _ => number,
            };
            self.at_right_edge(labels, words, &NOTE, at.1)?;
        }
        Ok(())
    }

    /// Writes at the right edge of the figure, at a height.
    fn at_right_edge(
        &self,
        labels: &mut Labels,
        words: &str,
        colour: &RGBColor,
        down_pt: f64,
    ) -> Result<()> {
        let label = Label {
            words,
            size_pt: TEXT_PT,
            colour,
        };
        let spot = Spot {
            at: (self.canvas.width_pt, down_pt),
            side: HPos::Right,
        };
        labels.write(self.area, &label, &[spot]).map(|_| ())
    }

    /// The first limit of the wind in miles per hour, at the right edge.
    fn draw_miles_per_hour(&self, panel: &Panel<'_>, labels: &mut Labels) -> Result<()> {
        let Some(limit) = panel.scale.limits.first() else {
            return Ok(());
        };
        let unit = PairedUnit::MetrePerSecond;
        let number = self.canvas.words.say(unit.in_us(&short(limit.value)));
        let words = format!("{number} {}", unit.us_symbol());
        self.at_right_edge(labels, &words, &LIMIT, panel.down_pt(limit.value))
    }

    fn draw_irradiance(
        &self,
        panel: &Panel<'_>,
        labels: &mut Labels,
        assessment: &Assessment,
    ) -> Result<()> {
        let series = self.run.readings.irradiance_w_m2.as_ref();
        let is_estimated = assessment.tested.estimates_irradiance();
        self.draw_single(panel, labels, series, stroke(&INK, 0.9))?;
        match series {
            None => self.absence(panel, labels, message!("run-alt-no-irradiance")),
            Some(_) if is_estimated => self.in_a_corner(panel, labels),
            Some(_) => Ok(()),
        }
    }

    /// Readings of wind as a thin line, and means of the intervals, which the limit is on, as
    /// bars.
    fn draw_wind(&self, panel: &Panel<'_>, labels: &mut Labels) -> Result<()> {
        let series = self.run.readings.wind_m_s.as_ref();
        // Before the readings, which may reach the edge.
        if self.canvas.words.units == UnitSystem::Us {
            self.draw_miles_per_hour(panel, labels)?;
        }
        self.draw_single(panel, labels, series, stroke(&NOTE, 0.45))?;
        for interval in self.intervals {
            let Some(wind) = interval.measured.wind else {
                continue;
            };
            let span = interval.measured.span;
            let ends = [span.from_us, span.to_us];
            let bar = ends.map(|time_us| panel.place(self.hours(time_us), wind.mean));
            draw_line(self.area, &bar, stroke(&INK, 1.5))?;
        }
        match series {
            None => self.absence(panel, labels, message!("run-alt-no-wind")),
            Some(_) if self.run.estimates_wind => self.in_a_corner(panel, labels),
            Some(_) => Ok(()),
        }
    }

    fn draw_single(
        &self,
        panel: &Panel<'_>,
        labels: &mut Labels,
        series: Option<&Series>,
        style: ShapeStyle,
    ) -> Result<()> {
        panel.shade(self.area, &self.used_h())?;
        panel.draw_axis(self.area, labels, self.canvas.words)?;
        let curves = series.map(|series| self.curves(panel, series));
        let curves = curves.unwrap_or_default();
        for curve in &curves {
            labels.keep_clear_of(curve);
        }
        self.draw_curves(&curves, style)
    }

    /// Says in an empty panel why it is empty.
    fn absence(&self, panel: &Panel<'_>, labels: &mut Labels, why: Message) -> Result<()> {
        let at = (
            (panel.left_pt + panel.right_pt) / 2.0,
            (panel.top_pt + panel.bottom_pt) / 2.0 + 1.0,
        );
        let side = HPos::Center;
        self.name(labels, why, &NOTE, &[Spot { at, side }])
    }

    /// Says that what a panel shows is an estimate.
    fn in_a_corner(&self, panel: &Panel<'_>, labels: &mut Labels) -> Result<()> {
        let heights = [
            panel.top_pt + TEXT_PT / 2.0,
            panel.bottom_pt - TEXT_PT / 2.0 - 1.0,
            (panel.top_pt + panel.bottom_pt) / 2.0,
        ];
        let spots: Vec<Spot> = heights
            .into_iter()
            .flat_map(|down_pt| beside_level(panel, down_pt))
            .collect();
        self.name(labels, message!("figure-estimated"), &NOTE, &spots)
    }

    fn name(
        &self,
        labels: &mut Labels,
        name: Message,
        colour: &RGBColor,
        spots: &[Spot],
    ) -> Result<()> {
        let words = &self.canvas.words.say(name);
        let label = Label {
            words,
            size_pt: TEXT_PT,
            colour,
        };
        labels.write(self.area, &label, spots).map(|_| ())
    }
}

/// At the left end, the right end and the middle of a level.
fn beside_level(panel: &Panel<'_>, down_pt: f64) -> Vec<Spot> {
    let (left_pt, right_pt) = (panel.left_pt + BESIDE_PT, panel.right_pt - BESIDE_PT);
    let ends = [
        (left_pt, HPos::Left),
        (right_pt, HPos::Right),
        ((left_pt + right_pt) / 2.0, HPos::Center),
    ];
    ends.map(|(across_pt, side)| Spot {
        at: (across_pt, down_pt),
        side,
    })
    .to_vec()
}

/// Along the longest of some curves.
fn places_along(curves: &[Vec<PlacePt>]) -> impl Iterator<Item = PlacePt> {
    let longest = curves.iter().max_by_key(|curve| curve.len());
    longest.into_iter().flat_map(|curve| {
        let last = curve.len().saturating_sub(1) as f64;
        ALONG
            .iter()
            .filter_map(move |share| curve.get((share * last) as usize).copied())
    })
}

/// Left above a rising curve, then right below it.
fn beside_curve(curves: &[Vec<PlacePt>]) -> Vec<Spot> {
    let left = places_along(curves).map(|(across, down)| Spot {
        at: (across - BESIDE_PT, down - OFF_CURVE_PT),
        side: HPos::Right,
    });
    let right = places_along(curves).map(|(across, down)| Spot {
        at: (across + BESIDE_PT, down + OFF_CURVE_PT),
        side: HPos::Left,
    });
    left.chain(right).collect()
}

/// Along a flat curve, so far below it, or on its other side.
fn along_curve(curves: &[Vec<PlacePt>], below_pt: f64) -> Vec<Spot> {
    let spots = |below_pt: f64| {
        places_along(curves).map(move |(across, down)| Spot {
            at: (across, down + below_pt),
            side: HPos::Center,
        })
    };
    spots(below_pt).chain(spots(-below_pt)).collect()
}
