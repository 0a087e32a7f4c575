//! The table that `report` prints: a row a campaign, or two lines where one is too wide.

use super::lines::{Lines, Mark, MarkedRow};
use super::table::{Align, decimals_aligned, table_width};
use crate::language::{Language, Message, Phrase, Words, fixed, listed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::s580::finding::FindingCode;
use crate::units::decimals_for;

/// Columns that a mark and the space behind it take.
const MARK_WIDTH: usize = 2;

/// A power with its half width, W.
#[derive(Debug, Clone, Copy)]
struct Rated {
    power_w: f64,
    half_width_w: f64,
}

/// What the table says of a campaign.
pub struct CampaignRow {
    /// The folder's name.
    pub name: String,
    /// As the campaign file asks for it.
    pub language: Language,
    title: String,
    is_invented: bool,
    /// `None` where there is no number, or none that can be true.
    rated: Option<Rated>,
    r_squared: Option<f64>,
    used: usize,
    intervals: usize,
    days: usize,
    level: Level,
    /// What weakens the number.
    caveats: Vec<Message>,
    notices: Vec<Message>,
    /// Where its report is.
    report: String,
}

impl CampaignRow {
    /// Of a campaign whose report is in a file.
    pub fn of(assessment: &Assessment, report: String) -> Self {
        let s580 = &assessment.s580;
        let campaign = &assessment.tested.campaign;
        let rated = s580.rated.as_ref().filter(|_| !s580.is_not_valid());
        let line = s580.line();
        let not_valid = s580.is_not_valid().then(|| message!("headline-not-valid"));
        let notices = assessment.notices.iter().map(|notice| notice.message());
        CampaignRow {
            name: campaign.name.clone(),
            language: campaign.report.language,
            title: campaign.title.clone(),
            is_invented: campaign.demonstration,
            rated: rated.map(|rated| Rated {
                power_w: rated.rating.ps50_w,
                half_width_w: rated.uncertainty.half_width_w(),
            }),
            r_squared: line.and_then(|line| line.r_squared),
            used: s580.used().count(),
            intervals: s580.intervals.len(),
            days: s580.dates.len(),
            level: s580.conformity.level,
            caveats: caveats(assessment),
            notices: not_valid.into_iter().chain(notices).collect(),
            report,
        }
    }

    /// The same row with one notice more, if there is one.
    pub fn noting(mut self, notice: Option<Message>) -> Self {
        self.notices.extend(notice);
        self
    }

    /// Whether the rating is worse than one that conforms, or there is none.
    pub fn falls_short(&self) -> bool {
        self.level.falls_short()
    }

    fn title_cell(&self, words: &Words) -> String {
        match self.is_invented {
            true => words.say(message!("terminal-invented", title = &self.title)),
            false => self.title.clone(),
        }
    }

    fn r_squared_cell(&self, words: &Words) -> String {
        let found = self.r_squared.map(|found| words.say(fixed(found, 2)));
        found.unwrap_or_else(|| "–".to_owned())
    }

    fn conformity_cell(&self, words: &Words) -> String {
        let level = words.say(self.level.describe()).to_lowercase();
        let caveats = self.caveats.iter();
        let caveats = caveats.map(|caveat| format!("; {}", words.say(caveat.clone())));
        level + &caveats.collect::<String>()
    }
}

/// What a reader of the number alone would not see: an estimate, a sensor that lies flat, a
/// single day, an extrapolation.
pub fn caveats(assessment: &Assessment) -> Vec<Message> {
    let s580 = &assessment.s580;
    let findings = &s580.conformity.findings;
    let is_found = |code| findings.iter().any(|finding| finding.code == code);
    let rated = s580.rated.as_ref();
    let is_of_one_day = rated.is_some_and(|rated| rated.uncertainty.is_of_one_day());
    let mut caveats = Vec::new();
    if assessment.tested.estimates_irradiance() {
        caveats.push(message!("irradiance-estimated"));
    }
    if assessment.tested.lies_flat() {
        caveats.push(message!("terminal-horizontal"));
    }
    if is_found(FindingCode::IrradiancePlaneNotStated) {
        caveats.push(message!("terminal-plane-not-stated"));
    }
    if is_of_one_day && !s580.is_not_valid() {
        caveats.push(message!("terminal-one-day"));
    }
    if is_found(FindingCode::Extrapolated) && !s580.is_not_valid() {
        caveats.push(message!("terminal-extrapolated"));
    }
    caveats
}

/// Adds the table to the lines: on one line a campaign where that fits, else on two.
pub fn add_table(lines: &mut Lines, campaigns: &[CampaignRow], words: &Words) {
    let say = |message: Message| words.say(message);
    let [campaign, rating] = [message!("terminal-campaign"), message!("terminal-rating")].map(say);
    let [r_squared, used, days] = [
        message!("terminal-r-squared"),
        message!("terminal-used"),
        message!("terminal-days"),
    ]
    .map(say);
    let [conformity, report] =
        [message!("terminal-conformity"), message!("terminal-report")].map(say);
    let ratings = rating_cells(campaigns, words);
    let cells = campaigns.iter().zip(ratings).map(|(row, rating)| {
        [
            row.title_cell(words),
            rating,
            row.r_squared_cell(words),
            format!("{}/{}", row.used, row.intervals),
            row.days.to_string(),
        ]
    });
    let cells: Vec<[String; 5]> = cells.collect();
    let [a, b, c, d, e] = [
        (campaign.as_str(), Align::Left),
        (rating.as_str(), Align::Left),
        (r_squared.as_str(), Align::Right),
        (used.as_str(), Align::Right),
        (days.as_str(), Align::Right),
    ];
    let (f, g) = (
        (conformity.as_str(), Align::Left),
        (report.as_str(), Align::Left),
    );
    let wide = [a, b, c, d, e, f, g];
    let wide_cells: Vec<[String; 7]> = campaigns
        .iter()
        .zip(&cells)
        .map(|(row, [a, b, c, d, e])| {
            let [a, b, c, d, e] = [a, b, c, d, e].map(Clone::clone);
            [
                a,
                b,
                c,
                d,
                e,
                row.conformity_cell(words),
                row.report.clone(),
            ]
        })
        .collect();
    let taken = table_width(wide, &wide_cells) + MARK_WIDTH;
    let marks = campaigns.iter().map(|row| Mark::of(row.level));
    match lines.width() {
        Some(width) if taken > width => {
            let below = campaigns
                .iter()
                .map(|row| vec![row.conformity_cell(words), row.report.clone()]);
            let rows = marks.zip(cells).zip(below);
            let rows = rows.map(|((mark, cells), below)| MarkedRow { mark, cells, below });
            lines.marked_table([a, b, c, d, e], &rows.collect::<Vec<_>>());
        }
        _ => {
            let rows = marks.zip(wide_cells);
            let rows = rows.map(|(mark, cells)| MarkedRow {
                mark,
                cells,
                below: Vec::new(),
            });
            lines.marked_table(wide, &rows.collect::<Vec<_>>());
        }
    }
}

/// `131 ± 10`, with the numbers and the ± of all rows below each other.
fn rating_cells(campaigns: &[CampaignRow], words: &Words) -> Vec<String> {
    let mark = words
        .say(fixed(0.5, 1))
        .trim_matches(|c: char| c.is_ascii_digit())
        .to_owned();
    let said = |value: Option<f64>, rated: Option<Rated>| match (value, rated) {
        (Some(value), Some(rated)) => words.say(fixed(value, decimals_for(rated.half_width_w))),
        _ => "–".to_owned(),
    };
    let column = |of: fn(Rated) -> f64| {
        let cells = campaigns.iter();
        let cells = cells.map(|row| said(row.rated.map(of), row.rated));
        decimals_aligned(&cells.collect::<Vec<_>>(), &mark)
    };
    let powers = column(|rated| rated.power_w);
    let half_widths = column(|rated| rated.half_width_w);
    let pairs = powers.into_iter().zip(half_widths).zip(campaigns);
    let cells = pairs.map(|((power, half_width), row)| match row.rated {
        Some(_) => format!("{power} ± {half_width}"),
        None => power,
    });
    cells.collect()
}

/// Most campaigns that are named before a note that they share.
const NAMED: usize = 4;

/// That files look like logs and no run names them, if there are any.
pub fn unnamed(logs: &[String]) -> Option<Message> {
    let more = logs.len().saturating_sub(NAMED);
    let more = (more > 0).then(|| message!("terminal-more", count = more).into());
    let first = logs.iter().take(NAMED).map(Phrase::from);
    (!logs.is_empty()).then(|| {
        message!(
            "terminal-unnamed-logs",
            count = logs.len(),
            names = listed(first.chain(more))
        )
    })
}

/// The notices of all campaigns, each once, with the campaigns that it is about.
pub fn notes(campaigns: &[CampaignRow], words: &Words) -> Vec<String> {
    let mut notes: Vec<(&Message, Vec<&str>)> = Vec::new();
    for row in campaigns {
        for notice in &row.notices {
            match notes.iter_mut().find(|(said, _)| *said == notice) {
                Some((_, names)) => names.push(&row.name),
                None => notes.push((notice, vec![&row.name])),
            }
        }
    }
    let notes = notes.into_iter();
    notes
        .map(|(notice, names)| format!("{}: {}", whose(&names, words), words.say(notice.clone())))
        .collect()
}

fn whose(names: &[&str], words: &Words) -> String {
    if let [name] = names {
        return (*name).to_owned();
    }
    let mut named: Vec<String> = names
        .iter()
        .take(NAMED)
        .map(|&name| name.to_owned())
        .collect();
    if names.len() > NAMED {
        named.push(words.say(message!("terminal-more", count = names.len() - NAMED)));
    }
    let named = named.join(", ");
    words.say(message!(
        "terminal-campaigns",
        count = names.len(),
        names = named
    ))
}
