//! What `check` says of several campaigns, to people: how many are at which level, what to do
//! next, the table, then each cause once.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use super::check_many::{CheckedMany, CheckedRow, SetAside};
use super::lines::{Lines, Mark, MarkedRow};
use super::report_table::{conformity_cell, days_cell, rating_cells, title_cell, used_cell, whose};
use super::table::{Align, table_width};
use super::terminal::quoted;
use crate::batch::alike::{Alike, Group};
use crate::language::{Message, Phrase, Words};
use crate::message;
use crate::procedure::finding::Level;

/// Most campaigns in the table.
const SHOWN: usize = 40;

/// Most steps that are told before that to report.
const STEPS: usize = 5;

/// Most campaigns and sets of campaigns of which a heading tells.
const CAUSES: usize = 20;

/// Columns that a mark and the space behind it take.
const MARK_WIDTH: usize = 2;

/// Adds all that is said of several campaigns.
pub fn describe_many(lines: &mut Lines, checked: CheckedMany, words: &Words) {
    let CheckedMany {
        report,
        rows,
        next,
        findings,
        to_state,
        set_aside,
        of_figures,
        notices,
        ..
    } = checked;
    lines.verdict(mark_of_all(&rows), &words.say(sentence(&rows, words)));
    let steps = steps(next, &report, &rows, words);
    lines.blank().title(&words.say(message!("check-many-next")));
    lines.rows("  ", &steps);
    add_table(lines, &rows, words);
    for (heading, alike) in [
        (message!("check-many-findings"), findings),
        (message!("check-many-notes"), to_state),
    ] {
        add_causes(lines, heading, alike, words);
    }
    add_set_aside(lines, set_aside, words);
    add_causes(lines, message!("check-many-figures"), of_figures, words);
    add_causes(lines, message!("check-notices"), notices, words);
    // One that cannot be read has no more to say.
    let one = rows.iter().find(|row| row.brief.is_some());
    let one = &one.unwrap_or(&rows[0]).folder;
    let one = format!("simmerline check {}", quoted(Path::new(one)));
    let whole = message!(
        "check-whole",
        one = one,
        whole = "--whole",
        json = "--format json"
    );
    lines.blank().line(&words.say(whole));
}

fn mark_of(row: &CheckedRow) -> Mark {
    let brief = row.brief.as_ref();
    brief.map_or(Mark::Bad, |brief| Mark::of(brief.standing.level))
}

fn mark_of_all(rows: &[CheckedRow]) -> Mark {
    let has = |mark| rows.iter().any(|row| mark_of(row) == mark);
    match (has(Mark::Bad), has(Mark::Reserved)) {
        (true, _) => Mark::Bad,
        (false, true) => Mark::Reserved,
        (false, false) => Mark::Good,
    }
}

/// How many campaigns are at which level.
fn sentence(rows: &[CheckedRow], words: &Words) -> Message {
    let levels = |level: Option<Level>| {
        let of_row = |row: &CheckedRow| row.brief.as_ref().map(|brief| brief.standing.level);
        rows.iter().filter(|row| of_row(row) == level).count()
    };
    let all = Level::ALL.iter().map(|level| Some(*level)).chain([None]);
    let counts = all.map(|level| (level, levels(level)));
    let counts = counts.filter(|(_, count)| *count > 0);
    let said: Vec<String> = counts
        .map(|(level, count)| {
            let level = level.map_or_else(|| message!("check-unreadable"), Level::describe);
            format!("{count}\u{a0}×\u{a0}{}", words.say(level).to_lowercase())
        })
        .collect();
    message!("check-many", count = rows.len(), levels = said.join(", "))
}

/// What to do next, and for how many: what cannot be read first, to report last.
fn steps(
    next: Alike,
    report: &Message,
    rows: &[CheckedRow],
    words: &Words,
) -> Vec<(String, String)> {
    let mut groups = next.groups();
    let report = [Phrase::from(report)];
    sort_gravest_first(&mut groups);
    groups.sort_by_key(|group| group.said == report);
    let of_report = groups.iter().filter(|group| group.said == report).count();
    let others = groups.len() - of_report;
    // One that is left is told as well as that it is there.
    let told = match others {
        others if others == STEPS + 1 => others,
        others => others.min(STEPS),
    };
    let left_out = groups.drain(told..others);
    let untold: usize = left_out.map(|group| group.campaigns.len()).sum();
    let campaigns = |count: usize| words.say(message!("check-campaigns", count = count));
    let mut steps = Vec::new();
    let failed: Vec<&CheckedRow> = rows.iter().filter(|row| row.brief.is_none()).collect();
    let correct = || words.say(message!("check-next-unreadable"));
    match failed.as_slice() {
        [] => {}
        [only] => steps.push((only.folder.clone(), correct())),
        several => steps.push((campaigns(several.len()), correct())),
    }
    steps.extend(groups.into_iter().map(|group| {
        let count = group.campaigns.len();
        let whose = match (count, group.differs) {
            (1, _) => group.campaigns[0].clone(),
            (_, false) => campaigns(count),
            (_, true) => words.say(message!(
                "check-campaigns-first",
                first = &group.campaigns[0],
                others = count - 1
            )),
        };
        let step = group.said.into_iter().map(|said| words.say(said));
        (whose, step.collect())
    }));
    if untold > 0 {
        steps.push((campaigns(untold), words.say(message!("check-next-other"))));
    }
    steps
}

/// Food safety first, then by level, then by the number of campaigns.
fn sort_gravest_first(groups: &mut [Group]) {
    groups.sort_by(|one, other| {
        let by_count = || other.campaigns.len().cmp(&one.campaigns.len());
        let by_gravity = one.gravity.cmp_gravest_first(&other.gravity);
        by_gravity.then_with(by_count)
    });
}

/// The table, on one line a campaign where that fits, else on two. Of more than fit a screen or
/// two, those are shown first that cannot be read, then those that fall short most.
fn add_table(lines: &mut Lines, rows: &[CheckedRow], words: &Words) {
    let mut shown: Vec<&CheckedRow> = rows.iter().collect();
    if rows.len() > SHOWN {
        shown.sort_by_key(|row| {
            let level = row.brief.as_ref().map(|brief| brief.standing.level);
            (level.is_some(), Reverse(level))
        });
        shown.truncate(SHOWN);
    }
    let header = [
        (message!("terminal-campaign"), Align::Left),
        (message!("terminal-rating"), Align::Left),
        (message!("terminal-used"), Align::Right),
        (message!("terminal-days"), Align::Right),
        (message!("terminal-conformity"), Align::Left),
        (message!("check-folder"), Align::Left),
    ];
    let header = header.map(|(name, align)| (words.say(name), align));
    let wide = header
        .each_ref()
        .map(|(name, align)| (name.as_str(), *align));
    let cells = cells(&shown, words);
    let taken = table_width(wide, &cells) + MARK_WIDTH;
    let marks = shown.iter().map(|row| mark_of(row));
    lines.blank();
    match lines.width() {
        Some(width) if taken > width => {
            let [first @ .., _, _] = wide;
            let rows = marks
                .zip(cells)
                .map(|(mark, [a, b, c, d, e, f])| MarkedRow {
                    mark,
                    // Of one that cannot be read the folder is all that there is.
                    below: if a == f { vec![e] } else { vec![e, f] },
                    cells: [a, b, c, d],
                });
            lines.marked_table(first, &rows.collect::<Vec<_>>());
        }
        _ => {
            let rows = marks.zip(cells).map(|(mark, cells)| MarkedRow {
                mark,
                cells,
                below: Vec::new(),
            });
            lines.marked_table(wide, &rows.collect::<Vec<_>>());
        }
    }
    if shown.len() < rows.len() {
        lines.line(&words.say(which_are_shown(shown.len(), rows)));
    }
}

/// Which campaigns have a row, where not all have.
fn which_are_shown(shown: usize, rows: &[CheckedRow]) -> Message {
    let unreadable = rows.iter().filter(|row| row.brief.is_none()).count();
    let said = match unreadable {
        0 => message!("check-shown"),
        few if few < shown => message!("check-shown-unreadable", unreadable = few),
        many => message!("check-shown-only-unreadable", unreadable = many),
    };
    said.with("shown", shown).with("count", rows.len())
}

fn cells(rows: &[&CheckedRow], words: &Words) -> Vec<[String; 6]> {
    let powers = rows
        .iter()
        .map(|row| row.brief.as_ref()?.standing.valid_power());
    let ratings = rating_cells(&powers.collect::<Vec<_>>(), words);
    let cells = rows.iter().zip(ratings).map(|(row, rating)| {
        let folder = row.folder.clone();
        match &row.brief {
            Some(brief) => [
                title_cell(&brief.standing, words),
                rating,
                used_cell(brief),
                days_cell(brief),
                conformity_cell(brief, words),
                folder,
            ],
            None => [
                folder.clone(),
                rating,
                "–".to_owned(),
                "–".to_owned(),
                words.say(message!("check-unreadable")),
                folder,
            ],
        }
    });
    cells.collect()
}

/// Each cause once: whose it is, what was found, and what would remedy it.
fn add_causes(lines: &mut Lines, heading: Message, alike: Alike, words: &Words) {
    let mut groups = alike.groups();
    if groups.is_empty() {
        return;
    }
    sort_gravest_first(&mut groups);
    // What is of the same campaigns stands below them; others may be named alike.
    let mut together: Vec<(String, Vec<Group>)> = Vec::new();
    let mut at: BTreeMap<(String, BTreeSet<String>), usize> = BTreeMap::new();
    for group in groups {
        let whose = whose(&group, words);
        let set = group.campaigns.iter().cloned().collect();
        let next = together.len();
        let at = *at.entry((whose.clone(), set)).or_insert(next);
        match at == next {
            true => together.push((whose, vec![group])),
            false => together[at].1.push(group),
        }
    }
    lines.blank().title(&words.say(heading));
    let untold = together.len().saturating_sub(CAUSES);
    for (whose, groups) in together.into_iter().take(CAUSES) {
        lines.hanging("  ", &whose);
        for group in groups {
            let mut said = group.said.into_iter().map(|said| words.say(said));
            let found = said.next().unwrap_or_default();
            match said.next() {
                Some(remedy) => lines.remedied("    ", &found, &remedy),
                None => lines.hanging("    ", &found),
            };
        }
    }
    if untold > 0 {
        lines.hanging("  ", &words.say(message!("terminal-more", count = untold)));
    }
}

fn add_set_aside(lines: &mut Lines, mut all: Vec<SetAside>, words: &Words) {
    if all.is_empty() {
        return;
    }
    all.sort_by_key(|one| Reverse(one.intervals));
    let widest = all[0].intervals.to_string().len();
    lines.blank().title(&words.say(message!("check-set-aside")));
    for one in all {
        let SetAside {
            reason,
            remedy,
            intervals,
            campaigns,
        } = one;
        let whose = match campaigns.as_slice() {
            [only] => only.clone(),
            _ => words.say(message!("check-campaigns", count = campaigns.len())),
        };
        let lead = format!("  {intervals:>widest$}  ");
        let found = words.say(message!(
            "terminal-whose",
            whose = whose,
            said = reason.describe()
        ));
        lines.remedied(&lead, &found, &words.say(remedy));
    }
}
