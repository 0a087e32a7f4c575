//! What limits the single figure most: one answer, for every page that names it.

use simmerline_math::squared;

use super::days::SHOWN_P;
use super::evaluate::RatingUncertainty;
use crate::procedure::sources::Source;
use crate::procedure::uncertainty::budget::{Contribution, Origin};

/// What the largest part of ± comes of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limiting {
    /// Days are so few that Student's t makes their scatter the largest part; for itself another
    /// part is larger.
    FewDays {
        days: usize,
    },
    /// The scatter between days, which differ by more than the intervals within them.
    Days,
    /// The scatter within days and between them, which are not shown to differ.
    WithinDays,
    /// The scatter of the intervals of what counts as one day.
    Scatter,
    /// The step in which the water thermometer is read, which is most of that scatter.
    Step,
    /// A measured irradiance.
    Irradiance,
    /// An estimate in place of a measurement of irradiance.
    Estimate,
    WaterThermometer,
    AmbientThermometer,
    WaterMass,
    /// The specific heat of water, or the clock: nobody mends these.
    Other,
}

/// What limits the figure most, with its share of the square of ±.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MostLimiting {
    pub what: Limiting,
    pub share: f64,
}

/// What one instrument gives, or all that no instrument does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    Statistical,
    Irradiance,
    WaterThermometer,
    AmbientThermometer,
    WaterMass,
    Other,
}

const PARTS: &[Part] = &[
    Part::Statistical,
    Part::Irradiance,
    Part::WaterThermometer,
    Part::AmbientThermometer,
    Part::WaterMass,
    Part::Other,
];

impl Part {
    fn of(contribution: &Contribution) -> Part {
        let Origin::Common(error) = &contribution.origin else {
            return Part::Statistical;
        };
        match error.source {
            source if source.is_irradiance() => Part::Irradiance,
            Source::WaterTemperature | Source::WaterScale => Part::WaterThermometer,
            Source::AmbientTemperature | Source::AmbientScale => Part::AmbientThermometer,
            Source::WaterMass => Part::WaterMass,
            _ => Part::Other,
        }
    }
}

impl RatingUncertainty {
    /// What limits the figure most; `None` where nothing is uncertain.
    ///
    /// Shares are of the square of the expanded uncertainty, in which few days count with a
    /// large t; all errors of one instrument are one part. Where scatter and days have the most
    /// only by their t, days are too few, whatever makes them scatter.
    pub fn most_limiting(&self) -> Option<MostLimiting> {
        let share = |part: Part, of: fn(&Contribution) -> f64| -> f64 {
            let contributions = self.budget.contributions.iter();
            contributions
                .filter(|one| Part::of(one) == part)
                .map(of)
                .sum()
        };
        let largest = |of: fn(&Contribution) -> f64| {
            let parts = PARTS.iter().copied();
            parts.max_by(|one, two| share(*one, of).total_cmp(&share(*two, of)))
        };
        let most = largest(|one| one.share)?;
        let of_square = share(most, |one| one.share);
        let has_most_variance = largest(|one| one.share_of_variance) == Some(most);
        (of_square > 0.0).then(|| MostLimiting {
            what: self.named(most, has_most_variance),
            share: of_square,
        })
    }

    fn named(&self, part: Part, has_most_variance: bool) -> Limiting {
        match part {
            Part::Statistical => self.of_scatter(has_most_variance),
            Part::Irradiance if self.estimate_has_most() => Limiting::Estimate,
            Part::Irradiance => Limiting::Irradiance,
            Part::WaterThermometer => Limiting::WaterThermometer,
            Part::AmbientThermometer => Limiting::AmbientThermometer,
            Part::WaterMass => Limiting::WaterMass,
            Part::Other => Limiting::Other,
        }
    }

    fn of_scatter(&self, has_most_variance: bool) -> Limiting {
        let days = self.of_line.days.days.len();
        match self.counts_days() {
            true if !has_most_variance => Limiting::FewDays { days },
            _ if self.step_is_most() => Limiting::Step,
            true if self.days_differ() => Limiting::Days,
            true => Limiting::WithinDays,
            false => Limiting::Scatter,
        }
    }

    /// Whether an estimate gives more than the sensor that it rests on.
    fn estimate_has_most(&self) -> bool {
        let of = |is_it: fn(Source) -> bool| -> f64 {
            let parts = self.budget.contributions.iter();
            let shares = parts.filter_map(|part| match &part.origin {
                Origin::Common(error) => is_it(error.source).then_some(part.share),
                _ => None,
            });
            shares.sum()
        };
        of(Source::is_estimate) > of(|source| source == Source::Irradiance)
    }

    /// Whether the step of the thermometer is most of scatter and days.
    pub fn step_is_most(&self) -> bool {
        let reading = &self.of_line.reading;
        self.readings_are_most() && reading.resolution_w.unwrap_or(0.0) > reading.clock_w
    }

    /// Whether days are shown to differ by more than the intervals within them explain.
    pub fn days_differ(&self) -> bool {
        let test = self.of_line.days.test.as_ref();
        test.is_some_and(|test| test.p < SHOWN_P)
    }

    /// Whether the step of the water thermometer is most of the scatter of single intervals.
    pub fn step_is_most_of_intervals(&self) -> bool {
        let step_w = self.of_line.reading.resolution_w.unwrap_or(0.0);
        squared(step_w) > squared(self.of_line.line.residual_sd) / 2.0
    }
}
