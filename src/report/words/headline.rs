//! Page one: the number, how sure it is, whether it conforms, and in plain words.

use serde::Serialize;

use super::facts::{caveats, facts};
use crate::language::{Message, Words, fixed, kelvins, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::s580::conformity::Conformity;
use crate::procedure::s580::finding::{FindingCode, S580Finding};
use crate::procedure::s580::limits::LimitKey;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::rated::Rated;
use crate::report::heat_balance::words::power_of;
use crate::report::rows::{Figure, FindingText, Row};
use crate::report::s580::figures::drawn::{CONDITIONS, INTERVAL, POWER_LINES};
use crate::report::s580::words::line::{equation, spoken_r_squared};
use crate::report::s580::words::tracks::tracks;
use crate::report::sections::{Section, Sections};
use crate::units::decimals_for;

/// Page one.
#[derive(Debug, Clone, Serialize)]
pub struct Headline {
    pub label: String,
    /// `None`: no rating.
    pub number: Option<Number>,
    /// The number on a scale; `None` where it is not to be believed, or there is none.
    pub interval: Option<Figure>,
    pub level: String,
    pub level_code: String,
    /// How many intervals and days there are, and R², each with what is asked for.
    pub counts: String,
    /// Says the level, of which standard, and what is missing.
    pub level_text: String,
    /// What "conforms" rests on that nobody checked; empty where it does not.
    pub rests_on: String,
    /// In plain words.
    pub facts: Vec<Row>,
    /// What the figure shows, as a title.
    pub figure_title: String,
    pub figure: Figure,
    /// Files of the same figure for pages with less and less room.
    pub lower_figures: Vec<String>,
    pub findings: Vec<FindingText>,
    /// The conditions as tracks; `None` where nothing was heated.
    pub conditions: Option<Figure>,
    pub caution: String,
}

/// The single figure.
#[derive(Debug, Clone, Serialize)]
pub struct Number {
    pub value: String,
    pub spread: String,
    pub unit: String,
    /// What a reader must know before he uses it.
    pub caveats: Vec<String>,
    /// What it is.
    pub explanation: Vec<String>,
}

/// Puts page one into words.
pub fn headline(assessment: &Assessment, sections: &Sections, words: &Words) -> Headline {
    let conformity = &assessment.s580.conformity;
    let finding = |finding: &S580Finding| FindingText::said(words, finding.code.code(), finding);
    // Where the readings cannot be true, nothing else is worth mending first.
    let least = match assessment.s580.is_not_valid() {
        true => Level::NotValid,
        false => Level::Conforms,
    };
    let found = conformity.gravest_first().into_iter();
    let found = found.filter(|finding| finding.level >= least);
    let rated = assessment.s580.rated.as_ref();
    let believed = rated.filter(|_| !assessment.s580.is_not_valid());
    Headline {
        label: words.say(message!("headline-label")),
        number: rated.map(|rated| number(assessment, rated, words)),
        interval: believed.map(|rated| interval(rated, words)),
        level: words.say(conformity.level.describe()),
        level_code: conformity.level.code().to_owned(),
        counts: words.say(counts(assessment)),
        level_text: words.say(level_text(
            conformity,
            &assessment.tested.campaign.procedure,
            sections,
        )),
        rests_on: match conformity.level {
            Level::Conforms | Level::ConformsWithNotes => {
                words.say(message!("headline-conforms-rests-on"))
            }
            Level::Indicative | Level::NotValid => String::new(),
            Level::NoRating => {
                no_rating_but(assessment, sections).map_or_else(String::new, |said| words.say(said))
            }
        },
        facts: facts(assessment, sections, words),
        figure_title: words.say(figure_title(assessment)),
        figure: figure(assessment, words),
        lower_figures: POWER_LINES[1..].iter().map(|&file| file.into()).collect(),
        findings: found.map(finding).collect(),
        conditions: Some(conditions(assessment, words)),
        caution: words.say(message!(
            "headline-caution",
            section = sections.number(Section::Cautions)
        )),
    }
}

/// What the heat balance gives where there is no rating.
fn no_rating_but(assessment: &Assessment, sections: &Sections) -> Option<Message> {
    let balance = assessment.heat_balance.as_ref()?;
    Some(message!(
        "headline-no-rating-balance",
        power = power_of(balance),
        section = sections.number(Section::HeatBalance)
    ))
}

fn level_text(conformity: &Conformity, procedure: &str, sections: &Sections) -> Message {
    let missing = conformity.missing.as_ref();
    let stated_in = sections.number(Section::Conditions);
    match (conformity.level, missing) {
        (Level::NotValid, _) => message!("headline-not-valid"),
        (Level::NoRating, Some(missing)) => {
            message!(
                "headline-no-rating-missing",
                procedure = procedure,
                missing = missing
            )
        }
        (Level::NoRating, None) => message!("headline-without-rating", procedure = procedure),
        (Level::Indicative, Some(missing)) => {
            let is_all = |found: &S580Finding| {
                found.level < Level::Indicative
                    || matches!(
                        found.code,
                        FindingCode::TooFewIntervals | FindingCode::TooFewDays
                    )
            };
            let said = if conformity.findings.iter().all(is_all) {
                message!("headline-indicative-missing")
            } else {
                message!("headline-indicative-missing-too")
            };
            said.with("procedure", procedure).with("missing", missing)
        }
        (Level::Indicative, None) => message!("headline-indicative", procedure = procedure),
        (Level::ConformsWithNotes, _) => {
            message!(
                "headline-conforms-with-notes",
                procedure = procedure,
                section = stated_in
            )
        }
        (Level::Conforms, _) => message!(
            "headline-conforms",
            procedure = procedure,
            section = stated_in
        ),
    }
}

/// `45 intervals (30 asked for) · 4 days (3) · R² 0.94 (0.75)`.
fn counts(assessment: &Assessment) -> Message {
    let limits = &assessment.s580.limits;
    let least = |key: LimitKey| {
        let mut rows = limits.rows.iter();
        let row = rows.find(|row| row.key == key);
        row.map_or_else(|| "–".into(), |row| short(row.value))
    };
    let said = match assessment.s580.line() {
        Some(line) => message!(
            "headline-counts",
            r_squared = spoken_r_squared(line, 2),
            least_r_squared = least(LimitKey::RSquared)
        ),
        None => message!("headline-counts-no-line"),
    };
    said.with("intervals", assessment.s580.used().count())
        .with("least_intervals", least(LimitKey::Intervals))
        .with("days", assessment.s580.dates.len())
        .with("least_days", least(LimitKey::Days))
}

/// The number with its expanded uncertainty.
fn number(assessment: &Assessment, rated: &Rated, words: &Words) -> Number {
    let uncertainty = &rated.uncertainty;
    let half_width_w = uncertainty.half_width_w();
    let decimals = decimals_for(half_width_w);
    Number {
        value: words.say(fixed(rated.rating.ps50_w, decimals)),
        spread: format!("± {}", words.say(fixed(half_width_w, decimals))),
        unit: words.say(if uncertainty.is_of_one_day() {
            message!("headline-unit-one-day")
        } else {
            message!("headline-unit")
        }),
        caveats: caveats(assessment)
            .into_iter()
            .map(|caveat| words.say(caveat))
            .collect(),
        explanation: vec![words.say(message!(
            "headline-what-it-is",
            procedure = &assessment.tested.campaign.procedure,
            difference = kelvins(short(RATING_DIFFERENCE_K))
        ))],
    }
}

fn interval(rated: &Rated, words: &Words) -> Figure {
    let half_width_w = rated.uncertainty.half_width_w();
    let decimals = decimals_for(half_width_w);
    let said = if rated.uncertainty.is_of_one_day() {
        message!("headline-interval-one-day")
    } else {
        message!("headline-interval")
    };
    let said = said
        .with("low", fixed(rated.rating.ps50_w - half_width_w, decimals))
        .with("high", fixed(rated.rating.ps50_w + half_width_w, decimals));
    Figure {
        file: INTERVAL.to_owned(),
        alt: words.say(&said),
        caption: words.say(said),
    }
}

/// The conditions as tracks; for those who do not see them, in words.
fn conditions(assessment: &Assessment, words: &Words) -> Figure {
    let told = tracks(assessment, words).into_iter().map(|track| {
        words.say(message!(
            "conditions-track",
            name = track.name,
            observed = track.observed,
            count = track.set_aside
        ))
    });
    let told: Vec<String> = told.collect();
    Figure {
        file: CONDITIONS.to_owned(),
        caption: words.say(message!("conditions-title")),
        alt: format!(
            "{}: {}",
            words.say(message!("conditions-title")),
            told.join("; ")
        ),
    }
}

/// What the figure shows, with the line's equation.
fn figure_title(assessment: &Assessment) -> Message {
    let Some(line) = assessment.s580.line() else {
        return message!("figure-title-no-line");
    };
    if assessment.s580.is_not_valid() {
        return message!("figure-title-not-valid");
    }
    let estimated = assessment.tested.estimates_irradiance();
    let said = match (line.slope < 0.0, estimated) {
        (true, false) => message!("figure-title-falling"),
        (true, true) => message!("figure-title-falling-estimated"),
        (false, false) => message!("figure-title-rising"),
        (false, true) => message!("figure-title-rising-estimated"),
    };
    said.with("equation", equation(line))
        .with("r_squared", spoken_r_squared(line, 2))
}

fn figure(assessment: &Assessment, words: &Words) -> Figure {
    let aside = assessment.s580.set_aside().count();
    let rating = assessment.s580.rating();
    let believed = rating.filter(|_| !assessment.s580.is_not_valid());
    let (caption, alt) = match (assessment.s580.line(), believed) {
        (Some(line), Some(rating)) => {
            let (lowest_k, highest_k) = line.x_range;
            let facts = message!(
                "power-line-facts",
                equation = equation(line),
                r_squared = spoken_r_squared(line, 3),
                intervals = line.points,
                days = assessment.s580.dates.len(),
                lowest = fixed(lowest_k, 1),
                highest = fixed(highest_k, 1)
            );
            let alt = message!(
                "power-line-alt",
                facts = &facts,
                aside = aside,
                power = fixed(rating.ps50_w, 1)
            );
            let marked = |text: Message| match assessment.tested.estimates_irradiance() {
                true => message!("power-line-estimated", text = text),
                false => text,
            };
            let caption = message!("power-line-caption", facts = facts);
            (marked(caption), marked(alt))
        }
        (line, _) => {
            let said = match line {
                Some(_) => message!("not-valid-facts"),
                None => message!("no-line-facts"),
            };
            let used = assessment.s580.used().count();
            let facts = said.with("intervals", used).with("aside", aside);
            let alt = message!("no-line-alt", facts = &facts);
            (message!("power-line-caption", facts = facts), alt)
        }
    };
    Figure {
        file: POWER_LINES[0].to_owned(),
        caption: words.say(caption),
        alt: words.say(alt),
    }
}
