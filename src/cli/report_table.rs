//! The table that `report` prints: a row a campaign, or two lines where one is too wide.

use super::lines::{Lines, Mark, MarkedRow};
use super::table::{Align, decimals_aligned, table_width};
use crate::batch::alike::{Alike, Gravity, Group, Said};
use crate::batch::brief::Brief;
use crate::campaign::Campaign;
use crate::comparison::standing::{Power, Standing};
use crate::language::{Language, Message, Phrase, Words, clauses, fixed, listed};
use crate::logs::unnamed::unnamed_logs;
use crate::message;
use crate::procedure::Assessment;
use crate::units::decimals_for;

/// Columns that a mark and the space behind it take.
const MARK_WIDTH: usize = 2;

/// What the table says of a campaign.
pub struct CampaignRow {
    brief: Brief,
    /// Where its report is.
    report: String,
}

impl CampaignRow {
    /// Of a campaign whose report is in a file.
    pub fn of(brief: Brief, report: String) -> Self {
        CampaignRow { brief, report }
    }

    /// As the campaign file asks for it.
    pub fn language(&self) -> Option<Language> {
        Language::of_code(&self.brief.language)
    }

    /// Whether the rating is worse than one that conforms, or there is none.
    pub fn falls_short(&self) -> bool {
        self.brief.standing.level.falls_short()
    }

    fn r_squared_cell(&self, words: &Words) -> String {
        let found = self.brief.standing.r_squared;
        let found = found.map(|found| words.say(fixed(found, 2)));
        found.unwrap_or_else(|| "–".to_owned())
    }
}

/// The title of a campaign, and that it is invented.
pub fn title_cell(standing: &Standing, words: &Words) -> String {
    match standing.is_invented {
        true => words.say(message!("terminal-invented", title = &standing.title)),
        false => standing.title.clone(),
    }
}

/// Intervals that are used, of all; a dash where no run heats water.
pub fn used_cell(brief: &Brief) -> String {
    match brief.heats_no_water {
        true => "–".to_owned(),
        false => format!("{}/{}", brief.standing.intervals, brief.all_intervals),
    }
}

/// Days with used intervals; a dash where no run heats water.
pub fn days_cell(brief: &Brief) -> String {
    match brief.heats_no_water {
        true => "–".to_owned(),
        false => brief.standing.days.to_string(),
    }
}

/// How far a campaign conforms, and what weakens its number.
pub fn conformity_cell(brief: &Brief, words: &Words) -> String {
    let level = words.say(brief.standing.level.describe()).to_lowercase();
    let caveats = brief.caveats.iter();
    let caveats = caveats.map(|caveat| Phrase::from(caveat.describe()));
    words.say(clauses([level.into()].into_iter().chain(caveats)))
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
    let powers = campaigns.iter();
    let powers = powers.map(|row| row.brief.standing.valid_power());
    let ratings = rating_cells(&powers.collect::<Vec<_>>(), words);
    let cells = campaigns.iter().zip(ratings).map(|(row, rating)| {
        [
            title_cell(&row.brief.standing, words),
            rating,
            row.r_squared_cell(words),
            used_cell(&row.brief),
            days_cell(&row.brief),
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
                conformity_cell(&row.brief, words),
                row.report.clone(),
            ]
        })
        .collect();
    let taken = table_width(wide, &wide_cells) + MARK_WIDTH;
    let marks = campaigns
        .iter()
        .map(|row| Mark::of(row.brief.standing.level));
    match lines.width() {
        Some(width) if taken > width => {
            let below = campaigns
                .iter()
                .map(|row| vec![conformity_cell(&row.brief, words), row.report.clone()]);
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
pub fn rating_cells(ratings: &[Option<Power>], words: &Words) -> Vec<String> {
    let mark = words
        .say(fixed(0.5, 1))
        .trim_matches(|c: char| c.is_ascii_digit())
        .to_owned();
    let said = |of: fn(Power) -> f64, power: Option<Power>| match power {
        Some(power) => words.say(fixed(of(power), decimals_for(power.half_width_w))),
        None => "–".to_owned(),
    };
    let column = |of: fn(Power) -> f64| {
        let cells = ratings.iter().map(|power| said(of, *power));
        decimals_aligned(&cells.collect::<Vec<_>>(), &mark)
    };
    let powers = column(|power| power.value_w);
    let half_widths = column(|power| power.half_width_w);
    let pairs = powers.into_iter().zip(half_widths).zip(ratings);
    let cells = pairs.map(|((power, half_width), rating)| match rating {
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

/// What the reader should know of a campaign's data.
pub struct Noticed {
    /// The campaign's place in its tree.
    pub campaign: String,
    pub notices: Vec<Said>,
}

impl Noticed {
    /// Of a campaign whose data are as they were, that files look like logs and no run names
    /// them. A report says nothing of those: it follows from what it carries.
    pub fn unnamed(campaign: &Campaign, place: String) -> Self {
        let notices = unnamed(&unnamed_logs(campaign));
        Noticed {
            campaign: place,
            notices: notices.into_iter().map(Said::from).collect(),
        }
    }

    /// Of a campaign.
    pub fn of(assessment: &Assessment, campaign: String) -> Self {
        let is_not_valid = assessment.s580.is_not_valid();
        let not_valid = is_not_valid.then(|| message!("headline-not-valid"));
        let notices = assessment.notices.iter().map(|notice| {
            let gravity = Gravity {
                danger: notice.danger(),
                level: None,
            };
            let phrases = vec![notice.message().into()];
            Said { phrases, gravity }
        });
        let not_valid = not_valid.into_iter().map(Said::from);
        Noticed {
            campaign,
            notices: not_valid.chain(notices).collect(),
        }
    }
}

/// The notices of all campaigns, those that are alike once, with the campaigns that they are
/// about.
pub fn notes(campaigns: &[Noticed], words: &Words) -> Vec<String> {
    let mut alike = Alike::default();
    for one in campaigns {
        for notice in &one.notices {
            alike.add(&one.campaign, notice.clone());
        }
    }
    let groups = alike.groups().into_iter();
    groups
        .map(|group| {
            let whose = whose(&group, words);
            let said = clauses(group.said);
            words.say(message!("terminal-whose", whose = whose, said = said))
        })
        .collect()
}

/// Whose something is that is told once: the campaigns, and how often where it is told by the
/// first of them; that this is the gravest, where it is of food safety.
pub fn whose(group: &Group, words: &Words) -> String {
    let names = &group.campaigns;
    let mut named: Vec<String> = names.iter().take(NAMED).cloned().collect();
    if names.len() > NAMED {
        named.push(words.say(message!("terminal-more", count = names.len() - NAMED)));
    }
    let named = named.join(", ");
    let whose = match names.len() {
        1 => named,
        count => words.say(message!("terminal-campaigns", count = count, names = named)),
    };
    match (group.differs, group.times) {
        (false, _) => whose,
        (true, _) if group.gravity.danger.is_some() => {
            words.say(message!("terminal-alike-gravest", campaigns = whose))
        }
        (true, times) if times == names.len() => {
            words.say(message!("terminal-alike", campaigns = whose))
        }
        (true, times) => words.say(message!(
            "terminal-alike-times",
            campaigns = whose,
            count = times
        )),
    }
}
