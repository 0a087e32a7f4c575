//! The campaigns of a comparison, row by row.

use serde::Serialize;

use super::words::letter;
use crate::comparison::Comparison;
use crate::procedure::Assessment;
use crate::procedure::cooking::{START_C, TimeRange};
use crate::report::model::provenance::report_number;
use crate::report::model::report::Row;
use crate::report::model::tested::{instrument_rows, test_dates};
use crate::units::{counted, decimals_for, fixed, range, sentence_case, short, spoken_duration};

/// A table with its header.
#[derive(Debug, Clone, Serialize)]
pub struct FigureTable {
    pub header: Vec<String>,
    pub rows: Vec<Vec<String>>,
    pub note: String,
}

/// One campaign of section 2.
#[derive(Debug, Clone, Serialize)]
pub struct CampaignPart {
    pub title: String,
    pub rows: Vec<Row>,
}

fn header(names: &[&str]) -> Vec<String> {
    names.iter().map(|name| (*name).to_owned()).collect()
}

/// Rating, line and conformity.
pub fn rating_table(comparison: &Comparison, names: &[String]) -> FigureTable {
    let row = |(place, one): (usize, &Assessment)| {
        let (line, sure) = (one.line?, one.uncertainty.as_ref()?);
        let expanded_w = sure.budget.expanded_w();
        let decimals = decimals_for(expanded_w);
        let mark = if comparison.baseline == Some(place) {
            " (baseline)"
        } else {
            ""
        };
        Some(vec![
            letter(place).to_string(),
            format!("{}{mark}", names[place]),
            format!(
                "{} ± {}",
                fixed(sure.budget.power_w, decimals),
                fixed(expanded_w, decimals)
            ),
            fixed(line.intercept, decimals_for(line.intercept_standard_error)),
            fixed(line.slope, decimals_for(line.slope_standard_error).max(2)),
            line.r_squared.map_or("–".to_owned(), |r| fixed(r, 2)),
            line.points.to_string(),
            one.used_dates().len().to_string(),
            one.conformity.level.describe().to_string().to_lowercase(),
        ])
    };
    FigureTable {
        header: header(&[
            "",
            "cooker",
            "Ps(50), W (95 %)",
            "a, W",
            "b, W/K",
            "R²",
            "intervals",
            "days",
            "conformity",
        ]),
        rows: comparison
            .campaigns
            .iter()
            .enumerate()
            .filter_map(row)
            .collect(),
        note: String::new(),
    }
}

/// The rating by what a cooker is and costs, and what it means for a pot.
pub fn per_unit_table(comparison: &Comparison) -> FigureTable {
    let row = |(place, one): (usize, &Assessment)| {
        let budget = &one.uncertainty.as_ref()?.budget;
        let cooker = &one.campaign.cooker;
        let per = |quantity: Option<f64>, unit: &str| {
            quantity.map_or("–".to_owned(), |quantity| {
                let half_width = budget.expanded_w() / quantity;
                let decimals = decimals_for(half_width);
                format!(
                    "{} ± {}{unit}",
                    fixed(budget.power_w / quantity, decimals),
                    fixed(half_width, decimals)
                )
            })
        };
        let currency = cooker
            .currency
            .as_deref()
            .unwrap_or("(currency not stated)");
        Some(vec![
            letter(place).to_string(),
            per(Some(cooker.intercept_area_m2), ""),
            per(cooker.mass_kg, ""),
            per(cooker.cost, &format!(" W/{currency}")),
            spoken_heating(comparison.heating[place]),
        ])
    };
    let time = format!(
        "2 kg from {} to {} °C",
        fixed(START_C, 0),
        fixed(comparison.target_c, 1).trim_end_matches(".0")
    );
    FigureTable {
        header: header(&[
            "",
            "W/m² of intercept area",
            "W/kg of cooker",
            "by cost",
            &time,
        ]),
        rows: comparison
            .campaigns
            .iter()
            .enumerate()
            .filter_map(row)
            .collect(),
        note: format!(
            "Ps(50) over area, mass and cost as the campaign files state them, which are taken as exact. Heating times with their 95 % range: 700 W/m², air of {} °C for all, the pot's own heat left out.",
            fixed(comparison.ambient_c, 1)
        ),
    }
}

fn spoken_heating(time: Option<TimeRange>) -> String {
    let Some(time) = time else {
        return "does not get there".to_owned();
    };
    let longest = time.longest_s.map_or("never".to_owned(), spoken_duration);
    format!(
        "{} ({} – {longest})",
        spoken_duration(time.best_s),
        spoken_duration(time.shortest_s)
    )
}

/// Puts section 2 into words.
pub fn campaigns(comparison: &Comparison, names: &[String]) -> Vec<CampaignPart> {
    comparison
        .campaigns
        .iter()
        .enumerate()
        .map(|(place, one)| CampaignPart {
            title: format!("{}: {}", letter(place), names[place]),
            rows: campaign_rows(one),
        })
        .collect()
}

fn campaign_rows(one: &Assessment) -> Vec<Row> {
    let campaign = &one.campaign;
    let cooker = &campaign.cooker;
    let stated = |text: &Option<String>| {
        text.clone()
            .unwrap_or_else(|| crate::report::model::tested::NOT_STATED.to_owned())
    };
    let used_k = one.used().filter_map(|interval| interval.difference_k);
    let (low_k, high_k) = used_k.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), k| {
        (low.min(k), high.max(k))
    });
    let mut rows = vec![
        Row::new(
            "campaign",
            format!("{} ({})", campaign.title, campaign.name),
        ),
        Row::new("report", report_number(one)),
        Row::new(
            "cooker",
            format!(
                "{}, {} m²{}",
                cooker.kind.describe(),
                fixed(cooker.intercept_area_m2, 3),
                cooker
                    .description
                    .as_ref()
                    .map_or(String::new(), |words| format!(". {words}"))
            ),
        ),
        Row::new(
            "test",
            format!(
                "{}, {}; {}, {} m; tested by {}",
                test_dates(one),
                counted(one.runs.len(), "run"),
                campaign.site.name,
                fixed(campaign.site.elevation_m, 0),
                stated(&campaign.tester)
            ),
        ),
        Row::new(
            "line",
            format!(
                "{} at Td from {} K",
                counted(one.used().count(), "used interval"),
                range(low_k, high_k, 1)
            ),
        ),
    ];
    let instruments: Vec<String> = instrument_rows(one)
        .into_iter()
        .map(|row| format!("{}: {}, {}", row.quantity, row.instrument, row.uncertainty))
        .collect();
    rows.push(Row::new("instruments", instruments.join("; ")));
    let findings: Vec<String> = one
        .conformity
        .findings
        .iter()
        .map(|finding| sentence_case(&finding.text.to_string()))
        .collect();
    rows.push(Row::new(
        "conformity",
        format!(
            "{}{}",
            one.conformity.level.describe(),
            if findings.is_empty() {
                String::new()
            } else {
                format!(". {}", findings.join(". "))
            }
        ),
    ));
    if let Some(mass_kg) = cooker.mass_kg {
        rows.push(Row::new("mass", format!("{} kg", short(mass_kg))));
    }
    rows
}
