//! `comparison.csv`: one row a campaign, in full precision.

use csv::Writer;

use crate::comparison::Comparison;
use crate::error::{Error, Result};
use crate::procedure::Assessment;
use crate::report::comparison::names::{letter, names};

/// Columns, with their units; the differences are from the baseline, where there is one.
const HEADER: &[&str] = &[
    "letter",
    "campaign",
    "cooker",
    "ps50_w",
    "ps50_expanded_uncertainty_w",
    "intercept_w",
    "slope_w_per_k",
    "r_squared",
    "intervals",
    "days",
    "conformity",
    "ps50_w_per_m2",
    "ps50_w_per_kg",
    "ps50_w_per_cost",
    "currency",
    "heating_2_kg_s",
    "heating_2_kg_shortest_s",
    "heating_2_kg_longest_s",
    "baseline",
    "difference_w",
    "difference_lower_95_w",
    "difference_upper_95_w",
    "p",
    "p_corrected",
    "mixed",
    "demonstration",
];

/// The table as text.
///
/// # Errors
/// [`Error::Internal`] if a row does not fit the header.
pub fn comparison_csv(comparison: &Comparison) -> Result<String> {
    let internal = |error: String| Error::Internal(error);
    let mut table = Writer::from_writer(Vec::new());
    table
        .write_record(HEADER)
        .map_err(|error| internal(error.to_string()))?;
    let names = names(&comparison.campaigns);
    for (place, one) in comparison.campaigns.iter().enumerate() {
        table
            .write_record(row(comparison, &names, place, one))
            .map_err(|error| internal(error.to_string()))?;
    }
    let bytes = table
        .into_inner()
        .map_err(|error| internal(error.to_string()))?;
    String::from_utf8(bytes).map_err(|error| internal(error.to_string()))
}

fn row(
    comparison: &Comparison,
    names: &[String],
    place: usize,
    one: &Assessment,
) -> [String; HEADER.len()] {
    let number = |value: f64| value.to_string();
    let optional = |value: Option<f64>| value.map_or_else(String::new, number);
    let cooker = &one.tested.campaign.cooker;
    let ps50_w = one.s580.rating().map(|rating| rating.ps50_w);
    let per = |quantity: Option<f64>| optional(ps50_w.zip(quantity).map(|(w, per)| w / per));
    let heating = comparison.heating[place];
    let pair = comparison.baseline.and_then(|_| {
        let mut pairs = comparison.pairs.iter();
        pairs.find(|pair| pair.difference.second == place)
    });
    [
        letter(place).to_string(),
        one.tested.campaign.name.clone(),
        names[place].clone(),
        optional(ps50_w),
        optional(
            one.s580
                .uncertainty()
                .as_ref()
                .map(|uncertainty| uncertainty.budget.expanded()),
        ),
        optional(one.s580.line().map(|line| line.intercept)),
        optional(one.s580.line().map(|line| line.slope)),
        optional(one.s580.line().and_then(|line| line.r_squared)),
        one.s580.used().count().to_string(),
        one.s580.dates.len().to_string(),
        one.s580.conformity.level.code().to_owned(),
        per(Some(cooker.intercept_area_m2)),
        per(cooker.mass_kg),
        per(cooker.cost),
        cooker.currency.clone().unwrap_or_default(),
        optional(heating.map(|time| time.best_s)),
        optional(heating.map(|time| time.shortest_s)),
        optional(heating.and_then(|time| time.longest_s)),
        (comparison.baseline == Some(place)).to_string(),
        optional(pair.map(|pair| pair.difference.ratings.value)),
        optional(pair.map(|pair| pair.difference.ratings.interval().0)),
        optional(pair.map(|pair| pair.difference.ratings.interval().1)),
        optional(pair.map(|pair| pair.difference.p())),
        optional(pair.map(|pair| pair.p_corrected)),
        (!comparison.departures[place].is_empty()).to_string(),
        one.tested.campaign.demonstration.to_string(),
    ]
}
