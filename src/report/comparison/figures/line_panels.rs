//! The line of each campaign in a panel of its own.

use plotters::prelude::*;

use super::panel::{OTHERS, Shared, draw_panel};
use super::ranked::asset;
use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::Words;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::assets::Asset;
use crate::report::comparison::words::lines::{PanelsPart, drawn};
use crate::report::figures::bands::{about, fill_band, steps};
use crate::report::figures::style::{BAND, Canvas, Chart, INK, LINE, fault, pt, stroke};

/// Width of a line of the others, and of one in ink, points.
const THIN_PT: f64 = 0.7;
const THICK_PT: f64 = 1.6;
/// Half the size of an interval's point, and of the rating's mark, points.
const POINT_PT: f64 = 0.9;
const MARK_PT: f64 = 2.6;

/// A campaign that has a line.
struct Drawn<'c> {
    campaign: &'c Assessment,
    uncertainty: &'c RatingUncertainty,
}

impl Drawn<'_> {
    fn span_k(&self) -> (f64, f64) {
        self.uncertainty.of_line.line.x_range
    }

    fn at(&self, k: f64) -> f64 {
        self.uncertainty.of_line.line.predict(k)
    }

    fn points(&self) -> impl Iterator<Item = (f64, f64)> + Clone {
        let all = self.campaign.s580.intervals.iter();
        all.filter(|interval| interval.is_on_line())
            .filter_map(Interval::point)
    }
}

/// Draws the panels, by their names.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn line_panels(
    comparison: &Comparison,
    part: &PanelsPart,
    words: &Words,
) -> Result<Vec<Asset>> {
    let all: Vec<Drawn<'_>> = drawn(comparison)
        .filter_map(|(_, place)| {
            let campaign = &comparison.campaigns[place];
            Some(Drawn {
                uncertainty: campaign.s580.uncertainty()?,
                campaign,
            })
        })
        .collect();
    let shared = shared(&all, part.panel_pt);
    let canvas = Canvas {
        words,
        width_pt: part.panel_pt,
    };
    let panels = part.panels.iter().zip(&all);
    let drawn = panels.map(|(panel, own)| {
        let drawn = draw_panel(&shared, &canvas, |chart| draw_on(chart, &all, own))?;
        Ok(asset(&panel.file, drawn))
    });
    drawn.collect()
}

/// Axes that hold all points, lines and ratings.
fn shared(all: &[Drawn<'_>], width_pt: f64) -> Shared {
    let differences = all.iter().flat_map(|one| {
        let (low, high) = one.span_k();
        [low, high, RATING_DIFFERENCE_K]
    });
    let powers = all.iter().flat_map(|one| {
        let ends = one.uncertainty.interval_w;
        let (low, high) = one.span_k();
        let of_points = one.points().map(|point| point.1);
        of_points.chain([ends.lower, ends.upper, one.at(low), one.at(high)])
    });
    Shared::holding(differences, powers, width_pt, "K")
}

fn draw_on(chart: &mut Chart<'_, '_>, all: &[Drawn<'_>], own: &Drawn<'_>) -> Result<()> {
    fill_band(chart, own.span_k(), BAND, |k| {
        let budget = own.uncertainty.of_line.at(k);
        about(budget.value, budget.expanded)
    })?;
    for one in all {
        draw_line(chart, one, &OTHERS, THIN_PT)?;
    }
    let points = own.points();
    let points = points.map(|at| Circle::new(at, pt(POINT_PT), LINE.filled()));
    chart.draw_series(points).map_err(fault)?;
    draw_line(chart, own, &LINE, THICK_PT)?;
    let at = (RATING_DIFFERENCE_K, own.uncertainty.budget.value);
    let falls_short = own.campaign.s580.conformity.level >= Level::Indicative;
    let (ink, face) = match falls_short {
        true => (INK, WHITE),
        false => (LINE, LINE),
    };
    let mark = EmptyElement::at(at)
        + Circle::new((0, 0), pt(MARK_PT + 0.9), WHITE.filled())
        + Circle::new((0, 0), pt(MARK_PT), ink.filled())
        + Circle::new((0, 0), pt(MARK_PT - 0.9), face.filled());
    chart.draw_series([mark]).map_err(fault)?;
    Ok(())
}

fn draw_line(
    chart: &mut Chart<'_, '_>,
    one: &Drawn<'_>,
    ink: &RGBColor,
    width_pt: f64,
) -> Result<()> {
    let points = steps(one.span_k()).map(|k| (k, one.at(k)));
    let line = LineSeries::new(points, stroke(ink, width_pt));
    chart.draw_series(line).map_err(fault)?;
    Ok(())
}
