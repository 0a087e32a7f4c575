//! `comparison.csv`: one row a campaign, in full precision.

use csv::Writer;

use crate::comparison::Comparison;
use crate::comparison::weigh::Weighed;
use crate::error::{Error, Result};
use crate::procedure::Assessment;
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::comparison::names::{group_letter, letter};
use crate::shown::in_cell;

/// Columns, with their units; the differences are from the baseline, where there is
/// one. `p` and `real` are of the ratings, and where conditions differ of the powers at 700 W/m²
/// and 50 K by the heat balances (`common_difference_w`).
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
    "mean_irradiance_w_m2",
    "mean_ambient_c",
    "mean_wind_m_s",
    "conditions_differ",
    "common_difference_w",
    "common_difference_lower_95_w",
    "common_difference_upper_95_w",
    "gain_difference_m2",
    "gain_difference_lower_95_m2",
    "gain_difference_upper_95_m2",
    "loss_difference_w_per_k",
    "loss_difference_lower_95_w_per_k",
    "loss_difference_upper_95_w_per_k",
    "real",
];

/// Columns after those of all figures: the newest.
const LAST: &[&str] = &["title", "rank", "valid", "groups"];

/// What each figure beside the rating has columns for, after those: its value and the ends of
/// its 95 % interval.
const PARTS: [&str; 3] = ["", "_lower_95", "_upper_95"];

/// The figures beside the rating.
fn keys() -> impl Iterator<Item = FigureKey> {
    let keys = FigureKey::ALL.iter().copied();
    keys.filter(|key| *key != FigureKey::Ps50)
}

/// The columns of a figure, with its unit.
fn columns(key: FigureKey) -> [String; 3] {
    let unit = match key.result_unit() {
        "W" => "_w",
        "m²" => "_m2",
        "W/K" => "_w_per_k",
        "K m²/W" => "_k_m2_per_w",
        "W/(m² K)" => "_w_per_m2_k",
        "s" => "_s",
        _ => "",
    };
    let name = key.code().replace('-', "_");
    PARTS.map(|part| format!("{name}{part}{unit}"))
}

/// What a campaign states of a figure; empty where it does not.
fn cells(stated: &[Stated], key: FigureKey) -> [String; 3] {
    let stated = stated.iter().find(|stated| stated.key == key);
    let interval = stated
        .and_then(|stated| stated.figure)
        .map(|figure| figure.interval);
    [
        stated.map(|stated| stated.value),
        interval.map(|interval| interval.lower),
        interval.map(|interval| interval.upper),
    ]
    .map(|value| value.map_or_else(String::new, |value| value.to_string()))
}

/// The table as text.
///
/// # Errors
/// [`Error::Internal`] if a row does not fit the header.
pub fn comparison_csv(comparison: &Comparison) -> Result<String> {
    let internal = |error: String| Error::Internal(error);
    let always = HEADER.iter().map(|name| (*name).to_owned());
    let last = LAST.iter().map(|name| (*name).to_owned());
    let header: Vec<String> = always.chain(keys().flat_map(columns)).chain(last).collect();
    let mut table = Writer::from_writer(Vec::new());
    table
        .write_record(header)
        .map_err(|error| internal(error.to_string()))?;
    for (place, one) in comparison.campaigns.iter().enumerate() {
        table
            .write_record(row(comparison, place, one))
            .map_err(|error| internal(error.to_string()))?;
    }
    let bytes = table
        .into_inner()
        .map_err(|error| internal(error.to_string()))?;
    String::from_utf8(bytes).map_err(|error| internal(error.to_string()))
}

fn row(comparison: &Comparison, place: usize, one: &Assessment) -> Vec<String> {
    let number = |value: f64| value.to_string();
    let optional = |value: Option<f64>| value.map_or_else(String::new, number);
    let cooker = &one.tested.campaign.cooker;
    let standing = &comparison.standings[place];
    let ps50_w = one.s580.rating().map(|rating| rating.ps50_w);
    let valid_w = standing.valid_power().map(|power| power.value_w);
    let per = |quantity: Option<f64>| optional(valid_w.zip(quantity).map(|(w, per)| w / per));
    let heating = comparison.heating[place];
    let pair = comparison.baseline.and_then(|_| {
        let mut pairs = comparison.pairs.iter();
        pairs.find(|pair| pair.difference.second == place)
    });
    let decisive = pair.and_then(|pair| pair.difference.decisive());
    let mut row = vec![
        letter(place),
        in_cell(&one.tested.campaign.name),
        in_cell(&cooker.name),
        optional(ps50_w),
        optional(
            one.s580
                .uncertainty()
                .as_ref()
                .map(|uncertainty| uncertainty.budget.expanded),
        ),
        optional(one.s580.line().map(|line| line.intercept)),
        optional(one.s580.line().map(|line| line.slope)),
        optional(one.s580.line().and_then(|line| line.r_squared)),
        one.s580.used().count().to_string(),
        one.s580.dates.len().to_string(),
        one.s580.conformity.level.code_in_files().to_owned(),
        per(Some(cooker.intercept_area_m2)),
        per(cooker.mass_kg),
        per(cooker.cost),
        in_cell(cooker.currency.as_deref().unwrap_or_default()),
        optional(heating.map(|time| time.best_s)),
        optional(heating.map(|time| time.shortest_s)),
        optional(heating.and_then(|time| time.longest_s)),
        (comparison.baseline == Some(place)).to_string(),
        optional(pair.map(|pair| pair.difference.ratings.value)),
        optional(pair.map(|pair| pair.difference.ratings.interval().0)),
        optional(pair.map(|pair| pair.difference.ratings.interval().1)),
        optional(decisive.map(|weighed| weighed.p)),
        optional(
            pair.filter(|_| decisive.is_some())
                .map(|pair| pair.p_corrected),
        ),
        (!comparison.departures[place].is_empty()).to_string(),
        one.tested.campaign.demonstration.to_string(),
    ];
    let around = one.s580.environment();
    let means = [around.irradiance, around.ambient, around.wind];
    row.extend(means.map(|around| optional(around.map(|around| around.mean))));
    let difference = pair.map(|pair| &pair.difference);
    row.push(difference.map_or_else(String::new, |one| one.conditions_differ.to_string()));
    let causes = difference.and_then(|one| one.causes.as_ref());
    let figures = [
        difference.and_then(|one| one.common_conditions.as_ref()),
        causes.map(|causes| &causes.gain_m2),
        causes.map(|causes| &causes.loss_w_per_k),
    ];
    row.extend(figures.into_iter().flat_map(with_interval));
    row.push(pair.map_or_else(String::new, |pair| pair.is_shown().to_string()));
    row.extend(keys().flat_map(|key| cells(&comparison.stated[place], key)));
    let rank = comparison.ranking.rank(place);
    row.extend([
        in_cell(&standing.title),
        rank.map_or_else(String::new, |rank| (rank + 1).to_string()),
        standing
            .power
            .map_or_else(String::new, |_| valid_w.is_some().to_string()),
        rank.map_or_else(String::new, |rank| groups_of(comparison, rank)),
    ]);
    row
}

/// Letters of the groups of several that a rank is of, with blanks between them.
fn groups_of(comparison: &Comparison, rank: usize) -> String {
    let groups = comparison.groups.iter().flatten();
    let several = groups.filter(|group| group.len() > 1).enumerate();
    let own = several.filter(|(_, group)| group.contains(&rank));
    let letters: Vec<String> = own.map(|(index, _)| group_letter(index)).collect();
    letters.join(" ")
}

/// A difference, and the ends of its 95 % interval.
fn with_interval(weighed: Option<&Weighed>) -> [String; 3] {
    let Some(weighed) = weighed else {
        return [const { String::new() }; 3];
    };
    let (lower, upper) = weighed.interval();
    [weighed.value, lower, upper].map(|value| value.to_string())
}
