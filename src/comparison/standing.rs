//! Where a campaign stands among others by its power. It is little to keep, so that many
//! campaigns can be ranked without holding their readings.

use serde::{Deserialize, Serialize};

use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::s580::finding::FindingCode;
use crate::stats::line::Bounds;

/// What a ranking says of a campaign.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Standing {
    /// Name of its folder.
    pub campaign: String,
    pub title: String,
    /// Its data are invented, for demonstration.
    pub is_invented: bool,
    pub level: Level,
    /// Why it has no better level; empty where it conforms.
    pub reasons: Vec<FindingCode>,
    /// Irradiance is that of a sensor that lay flat.
    pub lies_flat: bool,
    /// `None` without a rating.
    pub power: Option<Power>,
    pub r_squared: Option<f64>,
    /// Intervals on the line.
    pub intervals: usize,
    /// Days with such intervals.
    pub days: usize,
    pub intercept_area_m2: f64,
    pub cost: Option<f64>,
    pub currency: Option<String>,
}

/// Ps(50) and how sure it is, W.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Power {
    pub value_w: f64,
    /// What stands behind ±.
    pub half_width_w: f64,
    /// For 95 %.
    pub interval_w: Bounds,
    /// What another day would do is not in the interval.
    pub is_of_one_day: bool,
}

impl Standing {
    /// Where a campaign stands.
    pub fn of(one: &Assessment) -> Standing {
        let (campaign, s580) = (&one.tested.campaign, &one.s580);
        let level = s580.conformity.level;
        let findings = s580.conformity.findings.iter();
        let mut reasons: Vec<FindingCode> = findings
            .filter(|finding| finding.level == level)
            .map(|finding| finding.code)
            .collect();
        reasons.dedup();
        Standing {
            campaign: campaign.name.clone(),
            title: campaign.title.clone(),
            is_invented: campaign.demonstration,
            level,
            reasons,
            lies_flat: one.tested.lies_flat(),
            power: s580.uncertainty().map(|uncertainty| Power {
                value_w: uncertainty.budget.value,
                half_width_w: uncertainty.half_width_w(),
                interval_w: uncertainty.interval_w,
                is_of_one_day: uncertainty.is_of_one_day(),
            }),
            r_squared: s580.line().and_then(|line| line.r_squared),
            intervals: s580.used().count(),
            days: s580.dates.len(),
            intercept_area_m2: campaign.cooker.intercept_area_m2,
            cost: campaign.cooker.cost,
            currency: campaign.cooker.currency.clone(),
        }
    }

    /// Ps(50), where it is not physically impossible.
    pub fn valid_power(&self) -> Option<Power> {
        self.power.filter(|_| self.level != Level::NotValid)
    }

    /// Ps(50) for each square metre of intercept area, W/m²; `None` where there is none that
    /// holds.
    pub fn per_area_w_m2(&self) -> Option<f64> {
        Some(self.valid_power()?.value_w / self.intercept_area_m2)
    }

    /// Ps(50) for each unit of the cost that is stated.
    pub fn per_cost_w(&self) -> Option<f64> {
        Some(self.valid_power()?.value_w / self.cost?)
    }
}

/// Campaigns by their power. The order is that of the figures: whether two can be told apart
/// is another question.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Ranking {
    /// Places of those with a rating that holds, most power first.
    pub ranked: Vec<usize>,
    /// Of those whose rating is physically impossible, in their order.
    pub not_valid: Vec<usize>,
    /// Of those without a rating, in their order.
    pub unrated: Vec<usize>,
}

impl Ranking {
    /// Ranks campaigns; equal powers stay in their order.
    pub fn of(standings: &[Standing]) -> Ranking {
        let mut ranking = Ranking::default();
        let mut powers: Vec<(usize, f64)> = Vec::new();
        for (place, one) in standings.iter().enumerate() {
            match (one.valid_power(), one.power) {
                (Some(power), _) => powers.push((place, power.value_w)),
                (None, Some(_)) => ranking.not_valid.push(place),
                (None, None) => ranking.unrated.push(place),
            }
        }
        powers.sort_by(|one, two| two.1.total_cmp(&one.1));
        ranking.ranked = powers.into_iter().map(|(place, _)| place).collect();
        ranking
    }

    /// The rank of a place, from zero; `None` where it has no rating that holds.
    pub fn rank(&self, place: usize) -> Option<usize> {
        self.ranked.iter().position(|one| *one == place)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn standing(value_w: Option<f64>, level: Level) -> Standing {
        let power = |value_w: f64| Power {
            value_w,
            half_width_w: 5.0,
            interval_w: Bounds {
                lower: value_w - 5.0,
                upper: value_w + 5.0,
            },
            is_of_one_day: false,
        };
        Standing {
            campaign: String::new(),
            title: String::new(),
            is_invented: true,
            level,
            reasons: Vec::new(),
            lies_flat: false,
            power: value_w.map(power),
            r_squared: None,
            intervals: 30,
            days: 3,
            intercept_area_m2: 0.5,
            cost: None,
            currency: None,
        }
    }

    #[test]
    fn what_is_impossible_or_missing_has_no_rank() {
        let all = [
            standing(Some(60.0), Level::Conforms),
            standing(Some(500.0), Level::NotValid),
            standing(None, Level::NoRating),
            standing(Some(90.0), Level::Indicative),
            standing(Some(60.0), Level::ConformsWithNotes),
        ];
        let ranking = Ranking::of(&all);
        assert_eq!(ranking.ranked, [3, 0, 4]);
        assert_eq!(
            (ranking.not_valid.as_slice(), ranking.unrated.as_slice()),
            (&[1][..], &[2][..])
        );
        assert_eq!((ranking.rank(4), ranking.rank(1)), (Some(2), None));
        assert_eq!(all[1].per_area_w_m2(), None);
        assert_eq!(all[0].per_area_w_m2(), Some(120.0));
    }
}
