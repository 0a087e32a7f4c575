//! `comparison.json`: the comparison as data, in full precision.

use serde::Serialize;

use crate::comparison::Comparison;
use crate::comparison::figures::{FigurePair, PairFigures, Told};
use crate::comparison::pair::{Difference, Pair};
use crate::comparison::shape::Shape;
use crate::comparison::weigh::{Method, Weighed};
use crate::error::{Error, Result};
use crate::language::Words;
use crate::procedure::Assessment;
use crate::procedure::s580::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use crate::report::comparison::names::{letter, number};
use crate::report::number::report_number;

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.comparison/1";

/// The file. Units are in the keys; what is not known is `null`.
#[derive(Debug, Serialize)]
pub struct ComparisonFile {
    schema: &'static str,
    report_number: String,
    demonstration: bool,
    /// Name of the campaign that all others are held against.
    baseline: Option<String>,
    mixed: bool,
    /// `null` where there is nothing to heat.
    ambient_c: Option<f64>,
    target_c: f64,
    campaigns: Vec<CampaignEntry>,
    pairs: Vec<PairEntry>,
    provenance: Provenance,
}

#[derive(Debug, Serialize)]
struct CampaignEntry {
    letter: String,
    campaign: String,
    cooker: String,
    title: String,
    report_number: String,
    ps50_w: Option<f64>,
    ps50_expanded_uncertainty_w: Option<f64>,
    intercept_w: Option<f64>,
    slope_w_per_k: Option<f64>,
    r_squared: Option<f64>,
    intervals: usize,
    days: usize,
    conformity: &'static str,
    ps50_w_per_m2: Option<f64>,
    ps50_w_per_kg: Option<f64>,
    ps50_w_per_cost: Option<f64>,
    currency: Option<String>,
    heating_2_kg_s: Option<f64>,
    heating_2_kg_95_s: Option<[Option<f64>; 2]>,
    departures: Vec<String>,
    /// Means over the used intervals.
    mean_irradiance_w_m2: Option<f64>,
    mean_ambient_c: Option<f64>,
    mean_wind_m_s: Option<f64>,
}

/// Two campaigns; what is of ratings is `null` unless both have one.
#[derive(Debug, Serialize)]
struct PairEntry {
    first: String,
    second: String,
    /// Ps(50) of the second less that of the first.
    difference_w: Option<f64>,
    difference_standard_uncertainty_w: Option<f64>,
    difference_95_w: Option<[f64; 2]>,
    effective_degrees_of_freedom: Option<f64>,
    coverage_factor: Option<f64>,
    /// `apart` or `paired-by-day`.
    method: Option<&'static str>,
    paired_days: Option<usize>,
    /// Of the difference of which `real` is said: of the ratings, and where `conditions_differ`
    /// that of `common_conditions`.
    p: Option<f64>,
    p_corrected: Option<f64>,
    real: bool,
    /// To the uncertainty of `difference_w`.
    contributions: Vec<PartEntry>,
    shape: Option<ShapeEntry>,
    sought_difference_w: Option<f64>,
    /// Of the campaign that had more of them a day, on `more_days_each`.
    more_intervals_each: Option<usize>,
    more_days_each: Option<usize>,
    /// Mean irradiance differs by so much that ratings do not tell cookers apart.
    conditions_differ: Option<bool>,
    common_conditions: Option<CommonEntry>,
    gain_difference_m2: Option<FigureEntry>,
    loss_difference_w_per_k: Option<FigureEntry>,
    /// The figures beside the rating that both state; gain and loss where the two above are null.
    figures: Vec<BesideEntry>,
}

/// One figure of two campaigns, in its `unit`.
#[derive(Debug, Serialize)]
struct BesideEntry {
    figure: &'static str,
    unit: &'static str,
    first: f64,
    second: f64,
    /// Second less first; `null` where it is not compared.
    difference: Option<f64>,
    standard_uncertainty: Option<f64>,
    interval_95: Option<[f64; 2]>,
    p: Option<f64>,
    /// By Holm, for the pairs in which this figure is compared.
    p_corrected: Option<f64>,
    /// Never of a single day.
    told_apart: bool,
    /// Why it is not compared.
    not_compared: Option<&'static str>,
    one_day: bool,
    indicative: bool,
    vessels_not_stated: bool,
}

/// Difference of the powers by the heat balances.
#[derive(Debug, Serialize)]
struct CommonEntry {
    irradiance_w_m2: f64,
    difference_k: f64,
    difference_w: f64,
    standard_uncertainty_w: f64,
    interval_95: [f64; 2],
}

/// Difference of gain or of loss, in the unit of its key.
#[derive(Debug, Serialize)]
struct FigureEntry {
    value: f64,
    standard_uncertainty: f64,
    interval_95: [f64; 2],
    p: f64,
}

#[derive(Debug, Serialize)]
struct PartEntry {
    source: String,
    standard_uncertainty_w: f64,
    if_nothing_were_shared_w: f64,
}

#[derive(Debug, Serialize)]
struct ShapeEntry {
    slope_difference_w_per_k: f64,
    intercept_difference_w: f64,
    slopes_f: f64,
    slopes_degrees_of_freedom: [usize; 2],
    slopes_p: f64,
    intercepts_p: f64,
    /// What is taken as independent: `intervals` or `days`.
    independent: &'static str,
}

#[derive(Debug, Serialize)]
struct Provenance {
    tool_version: &'static str,
    inputs: Vec<InputEntry>,
}

#[derive(Debug, Serialize)]
struct InputEntry {
    campaign: String,
    file: String,
    sha256: String,
    /// It lay outside the campaign's folder.
    outside: bool,
}

impl ComparisonFile {
    /// The file's content.
    pub fn new(comparison: &Comparison) -> Self {
        let name = |place: usize| comparison.campaigns[place].tested.campaign.name.clone();
        let inputs = comparison.campaigns.iter().flat_map(|one| {
            let campaign = &one.tested.campaign;
            one.tested
                .inputs()
                .into_iter()
                .map(|(file, sha256)| InputEntry {
                    campaign: campaign.name.clone(),
                    outside: campaign.outside.contains(&file),
                    file,
                    sha256,
                })
        });
        let campaigns = comparison.campaigns.iter().enumerate();
        ComparisonFile {
            schema: SCHEMA,
            report_number: number(comparison),
            demonstration: comparison
                .campaigns
                .iter()
                .any(|one| one.tested.campaign.demonstration),
            baseline: comparison.baseline.map(name),
            mixed: comparison.is_mixed(),
            ambient_c: comparison.ambient_c,
            target_c: comparison.target_c,
            campaigns: campaigns
                .map(|(place, one)| campaign_entry(comparison, place, one))
                .collect(),
            pairs: comparison
                .figures
                .iter()
                .map(|figures| pair_entry(comparison, figures))
                .collect(),
            provenance: Provenance {
                tool_version: env!("CARGO_PKG_VERSION"),
                inputs: inputs.collect(),
            },
        }
    }

    /// The file as text.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn to_text(&self) -> Result<String> {
        let text = serde_json::to_string_pretty(self);
        text.map(|text| text + "\n")
            .map_err(|error| Error::Internal(error.to_string()))
    }
}

fn campaign_entry(comparison: &Comparison, place: usize, one: &Assessment) -> CampaignEntry {
    let cooker = &one.tested.campaign.cooker;
    let ps50_w = one.s580.rating().map(|rating| rating.ps50_w);
    let per = |quantity: Option<f64>| ps50_w.zip(quantity).map(|(w, per)| w / per);
    let heating = comparison.heating[place];
    let around = one.s580.environment();
    CampaignEntry {
        letter: letter(place),
        campaign: one.tested.campaign.name.clone(),
        cooker: cooker.name.clone(),
        title: one.tested.campaign.title.clone(),
        report_number: report_number(one),
        ps50_w,
        ps50_expanded_uncertainty_w: one
            .s580
            .uncertainty()
            .as_ref()
            .map(|uncertainty| uncertainty.budget.expanded),
        intercept_w: one.s580.line().map(|line| line.intercept),
        slope_w_per_k: one.s580.line().map(|line| line.slope),
        r_squared: one.s580.line().and_then(|line| line.r_squared),
        intervals: one.s580.used().count(),
        days: one.s580.dates.len(),
        conformity: one.s580.conformity.level.code(),
        ps50_w_per_m2: per(Some(cooker.intercept_area_m2)),
        ps50_w_per_kg: per(cooker.mass_kg),
        ps50_w_per_cost: per(cooker.cost),
        currency: cooker.currency.clone(),
        heating_2_kg_s: heating.map(|time| time.best_s),
        heating_2_kg_95_s: heating.map(|time| [Some(time.shortest_s), time.longest_s]),
        departures: comparison.departures[place]
            .iter()
            .map(|departure| departure.by_key().to_string())
            .collect(),
        mean_irradiance_w_m2: around.irradiance.map(|around| around.mean),
        mean_ambient_c: around.ambient.map(|around| around.mean),
        mean_wind_m_s: around.wind.map(|around| around.mean),
    }
}

fn pair_entry(comparison: &Comparison, figures: &PairFigures) -> PairEntry {
    let pair = comparison.pair_of(figures.first, figures.second);
    let difference = pair.map(|pair| &pair.difference);
    let ratings = difference.map(|difference| &difference.ratings);
    let name = |place: usize| comparison.campaigns[place].tested.campaign.name.clone();
    let (method, paired_days) = match ratings.map(|ratings| ratings.method) {
        None => (None, None),
        Some(Method::Apart) => (Some("apart"), None),
        Some(Method::PairedByDay { days }) => (Some("paired-by-day"), Some(days)),
    };
    let parts = ratings.into_iter().flat_map(|ratings| &ratings.parts);
    let contributions = parts.map(|part| PartEntry {
        source: Words::english().say(part.name()),
        standard_uncertainty_w: part.of_difference,
        if_nothing_were_shared_w: part.apart,
    });
    let decisive = difference.and_then(Difference::decisive);
    let needed = difference.and_then(|difference| difference.needed);
    let more_days_each = needed.and_then(|needed| needed.days_each);
    let causes = difference.and_then(|difference| difference.causes.as_ref());
    let freedom = ratings.map(|ratings| ratings.effective_freedom);
    let of_common = difference.and_then(|difference| difference.common_conditions.as_ref());
    let shape = difference.and_then(|difference| difference.shape.as_ref());
    PairEntry {
        first: name(figures.first),
        second: name(figures.second),
        difference_w: ratings.map(|ratings| ratings.value),
        difference_standard_uncertainty_w: ratings.map(|ratings| ratings.combined),
        difference_95_w: ratings.map(|ratings| ratings.interval().into()),
        effective_degrees_of_freedom: freedom.filter(|f| f.is_finite()),
        coverage_factor: ratings.map(|ratings| ratings.coverage_factor),
        method,
        paired_days,
        p: decisive.map(|weighed| weighed.p),
        p_corrected: decisive.and(pair).map(|pair| pair.p_corrected),
        real: pair.is_some_and(Pair::is_shown),
        contributions: contributions.collect(),
        shape: shape.map(shape_entry),
        sought_difference_w: needed.map(|needed| needed.sought_w),
        more_intervals_each: pair
            .zip(more_days_each)
            .map(|(pair, days)| days * intervals_a_day(comparison, pair)),
        more_days_each,
        conditions_differ: difference.map(|difference| difference.conditions_differ),
        common_conditions: of_common.map(common_entry),
        gain_difference_m2: causes.map(|causes| figure_entry(&causes.gain_m2)),
        loss_difference_w_per_k: causes.map(|causes| figure_entry(&causes.loss_w_per_k)),
        figures: figures.figures.iter().map(beside_entry).collect(),
    }
}

fn beside_entry(figure: &FigurePair) -> BesideEntry {
    let told = figure.told.as_ref().ok();
    BesideEntry {
        figure: figure.key.code(),
        unit: figure.key.result_unit(),
        first: figure.first.value,
        second: figure.second.value,
        difference: told.map(|told| told.held.value),
        standard_uncertainty: told.map(|told| told.held.standard_uncertainty),
        interval_95: told.map(Told::interval),
        p: told.map(|told| told.held.p),
        p_corrected: told.map(|told| told.p_corrected),
        told_apart: figure.is_told_apart(),
        not_compared: figure.told.as_ref().err().map(|why| why.code()),
        one_day: figure.is_of_one_day(),
        indicative: figure.is_indicative(),
        vessels_not_stated: figure.has_unknown_vessels,
    }
}

/// Used intervals a day, rounded up, of the campaign that had more of them.
fn intervals_a_day(comparison: &Comparison, pair: &Pair) -> usize {
    let of = |place: usize| {
        let s580 = &comparison.campaigns[place].s580;
        s580.used().count().div_ceil(s580.dates.len().max(1))
    };
    of(pair.difference.first).max(of(pair.difference.second))
}

fn common_entry(weighed: &Weighed) -> CommonEntry {
    CommonEntry {
        irradiance_w_m2: STANDARD_IRRADIANCE_W_M2,
        difference_k: RATING_DIFFERENCE_K,
        difference_w: weighed.value,
        standard_uncertainty_w: weighed.combined,
        interval_95: weighed.interval().into(),
    }
}

fn figure_entry(weighed: &Weighed) -> FigureEntry {
    FigureEntry {
        value: weighed.value,
        standard_uncertainty: weighed.combined,
        interval_95: weighed.interval().into(),
        p: weighed.p,
    }
}

fn shape_entry(shape: &Shape) -> ShapeEntry {
    ShapeEntry {
        slope_difference_w_per_k: shape.slope_difference_w_per_k,
        intercept_difference_w: shape.intercept_difference_w,
        slopes_f: shape.slopes.statistic,
        slopes_degrees_of_freedom: [
            shape.slopes.numerator_freedom,
            shape.slopes.denominator_freedom,
        ],
        slopes_p: shape.slopes.p,
        intercepts_p: shape.intercepts_p,
        independent: if shape.by_days { "days" } else { "intervals" },
    }
}
