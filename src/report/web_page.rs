//! The report as one web page that needs nothing else. Everything that knows minijinja is
//! in this file.

use std::collections::BTreeMap;

use minijinja::value::Value;
use minijinja::{Environment, UndefinedBehavior, context, escape_formatter};
use serde::Serialize;

use super::assets::Asset;
use super::edition::References;
use super::unbroken::kept_together;
use super::web_links::linked;
use crate::error::{Error, Result};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;

/// Template of the report on one campaign.
pub const REPORT: &str = "report.html";
/// Template of the page that leads to several reports.
pub const INDEX: &str = "index.html";
/// Template of a field sheet.
pub const FIELD_SHEET: &str = "field-sheet.html";

/// Template of a comparison.
pub const COMPARISON: &str = "comparison.html";

/// Template sources, by the name under which they take each other in.
const TEMPLATES: &[(&str, &str)] = &[
    (REPORT, include_str!("../../templates/web/report.html")),
    (INDEX, include_str!("../../templates/web/index.html")),
    (
        FIELD_SHEET,
        include_str!("../../templates/web/field-sheet.html"),
    ),
    (
        "field-sheet.css",
        include_str!("../../templates/web/field-sheet.css"),
    ),
    ("style.css", include_str!("../../templates/web/style.css")),
    ("parts.html", include_str!("../../templates/web/parts.html")),
    ("front.html", include_str!("../../templates/web/front.html")),
    (
        "tested.html",
        include_str!("../../templates/web/tested.html"),
    ),
    (
        "conditions.html",
        include_str!("../../templates/web/conditions.html"),
    ),
    (
        COMPARISON,
        include_str!("../../templates/web/comparison.html"),
    ),
    (
        "compared.html",
        include_str!("../../templates/web/compared.html"),
    ),
    (
        "comparison.css",
        include_str!("../../templates/web/comparison.css"),
    ),
    (
        "ranking.html",
        include_str!("../../templates/web/ranking.html"),
    ),
    (
        "ranking.css",
        include_str!("../../templates/web/ranking.css"),
    ),
    ("runs.html", include_str!("../../templates/web/runs.html")),
    (
        "intervals.html",
        include_str!("../../templates/web/intervals.html"),
    ),
    (
        "regression.html",
        include_str!("../../templates/web/regression.html"),
    ),
    (
        "heat_balance.html",
        include_str!("../../templates/web/heat_balance.html"),
    ),
    (
        "summary.html",
        include_str!("../../templates/web/summary.html"),
    ),
    (
        "procedure.html",
        include_str!("../../templates/web/procedure.html"),
    ),
    (
        "dry_vessel.html",
        include_str!("../../templates/web/dry_vessel.html"),
    ),
    (
        "box_cooker.html",
        include_str!("../../templates/web/box_cooker.html"),
    ),
    ("dish.html", include_str!("../../templates/web/dish.html")),
    (
        "efficiency.html",
        include_str!("../../templates/web/efficiency.html"),
    ),
    (
        "cooking.html",
        include_str!("../../templates/web/cooking.html"),
    ),
    (
        "cautions.html",
        include_str!("../../templates/web/cautions.html"),
    ),
    (
        "provenance.html",
        include_str!("../../templates/web/provenance.html"),
    ),
];

/// The font of the page, cut to the letters of the report's languages.
const REGULAR: &[u8] = include_bytes!("../../templates/fonts/web/Inter-Regular.woff2");
const STRONG: &[u8] = include_bytes!("../../templates/fonts/web/Inter-SemiBold.woff2");

/// The fonts, as the style sheet embeds them: in base 64.
#[derive(Serialize)]
struct Fonts {
    regular: Value,
    strong: Value,
}

impl Fonts {
    fn embedded() -> Self {
        let encoded = |bytes: &[u8]| Value::from_safe_string(STANDARD.encode(bytes));
        Fonts {
            regular: encoded(REGULAR),
            strong: encoded(STRONG),
        }
    }
}

/// A figure or photo, as the templates put it into the page.
#[derive(Serialize)]
struct Picture {
    /// A drawing.
    #[serde(flatten)]
    drawing: Drawing,
    /// The same for a narrow screen.
    narrow: Option<Drawing>,
    /// A photo, as a `data:` URI.
    data: Option<String>,
}

/// What a drawing consists of, as SVG, and the view that shows it; both `None`: it is a photo.
#[derive(Serialize, Default)]
struct Drawing {
    shapes: Option<Value>,
    view: Option<String>,
}

/// Fills one of the templates. What goes into it is escaped; the SVG of our own figures
/// stays as it was drawn.
///
/// # Errors
/// [`Error::Internal`] if a template does not compile or asks for what is not there.
pub fn compose(template: &str, report: &impl Serialize, assets: &[Asset]) -> Result<String> {
    let mut environment = Environment::new();
    environment.set_undefined_behavior(UndefinedBehavior::SemiStrict);
    environment.set_trim_blocks(true);
    environment.set_lstrip_blocks(true);
    environment.set_formatter(|out, state, value| match value.as_str() {
        Some(text) if !value.is_safe() => {
            escape_formatter(out, state, &Value::from(kept_together(text)))
        }
        _ => escape_formatter(out, state, value),
    });
    for (name, source) in TEMPLATES.iter().copied() {
        environment.add_template(name, source).map_err(internal)?;
    }
    let pictures = pictures(assets)?;
    let template = environment.get_template(template).map_err(internal)?;
    let report = Value::from_serialize(report);
    let setting = report.get_attr("setting").map_err(internal)?;
    let words = setting.get_attr("words").map_err(internal)?;
    let fonts = Fonts::embedded();
    let page = template
        .render(context! { report, pictures, words, fonts })
        .map_err(internal)?;
    let said = |value: &Value, name: &str| {
        let said = value.get_attr(name).map_err(internal)?;
        Ok(said.as_str().map(str::to_owned))
    };
    let names = setting.get_attr("references").map_err(internal)?;
    let references = References {
        section: said(&names, "section")?.unwrap_or_default(),
        page: said(&names, "page")?.unwrap_or_default(),
    };
    // What stands on the second page of a report on paper.
    let summary = report.get_attr("summary").map_err(internal)?;
    let title = match summary.is_undefined() || summary.is_none() {
        true => None,
        false => said(&summary, "title")?,
    };
    let second = title.as_deref().map(|title| (SUMMARY, title));
    Ok(linked(&page, &references, second))
}

/// Anchor of all figures at a glance.
const SUMMARY: &str = "summary";

/// Figures and photos by their names. A drawing for a narrow screen is part of its figure.
fn pictures(assets: &[Asset]) -> Result<BTreeMap<&str, Picture>> {
    let (narrow, others): (Vec<&Asset>, Vec<&Asset>) =
        assets.iter().partition(|asset| asset.narrow_of().is_some());
    let mut pictures = others
        .into_iter()
        .map(|asset| Ok((asset.name.as_str(), picture(asset)?)))
        .collect::<Result<BTreeMap<&str, Picture>>>()?;
    for asset in narrow {
        let figure = asset.narrow_of().and_then(|name| pictures.get_mut(name));
        let figure = figure.ok_or_else(|| internal(format!("{} is of no figure", asset.name)))?;
        figure.narrow = Some(drawing(asset)?);
    }
    Ok(pictures)
}

fn picture(asset: &Asset) -> Result<Picture> {
    let kind = match asset.name.rsplit_once('.') {
        Some((_, "svg")) => {
            return Ok(Picture {
                drawing: drawing(asset)?,
                narrow: None,
                data: None,
            });
        }
        Some((_, "jpg")) => "jpeg",
        Some((_, extension)) => extension,
        None => return Err(internal(format!("{} has no extension", asset.name))),
    };
    Ok(Picture {
        drawing: Drawing::default(),
        narrow: None,
        data: Some(format!(
            "data:image/{kind};base64,{}",
            STANDARD.encode(&asset.bytes)
        )),
    })
}

/// A figure without its outermost element, to which the template gives a size and words, and
/// without what is so anyhow.
fn drawing(asset: &Asset) -> Result<Drawing> {
    let svg = std::str::from_utf8(&asset.bytes).map_err(internal)?;
    let parts = svg.strip_prefix("<svg ").and_then(|svg| {
        let (attributes, shapes) = svg.trim_end().strip_suffix("</svg>")?.split_once('>')?;
        let (_, view) = attributes.split_once("viewBox=\"")?;
        Some((view.split_once('"')?.0, shapes))
    });
    let (view, shapes) = parts.ok_or_else(|| internal(format!("{} is no drawing", asset.name)))?;
    let shapes = OF_ITSELF
        .iter()
        .fold(shapes.to_owned(), |shapes, (long, short)| {
            shapes.replace(long, short)
        });
    Ok(Drawing {
        shapes: Some(Value::from_safe_string(shapes)),
        view: Some(view.to_owned()),
    })
}

/// What the figures say and what would be so without it. A text cannot hold any of these: its
/// quotation marks are escaped in SVG.
const OF_ITSELF: [(&str, &str); 4] = [
    (" opacity=\"1\"", ""),
    (" stroke=\"none\" stroke-width=\"1\"", ""),
    (" stroke=\"none\"", ""),
    (" font-family=\"Inter\"", ""),
];

fn internal(error: impl std::fmt::Display) -> Error {
    Error::Internal(format!("the web page cannot be made: {error}"))
}
