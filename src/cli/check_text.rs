//! What `check` says of a campaign, to people.

use std::path::Path;

use jiff::tz::TimeZone;

use super::check_procedures::of_procedures;
use super::check_verdict::verdict;
use super::lines::Lines;
use super::report_table::unnamed;
use super::table::{Align, table_width};
use crate::campaign::kinds::RunKind;
use crate::campaign::shared_file::SharedFile;
use crate::language::{Message, Phrase, Words, clock, date, short};
use crate::logs::account::{Account, alike};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::run::Run;
use crate::procedure::s580::finding::S580Finding;
use crate::procedure::s580::notice::clock_ahead_of_sun_h;
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::result::count_reasons;
use crate::procedure::tested::Tested;
use crate::units::{local_clock, zoned};

/// Adds all that is said of a campaign in a folder: the verdict, the next step, then what they
/// rest on.
pub fn describe(
    lines: &mut Lines,
    assessment: &Assessment,
    unnamed_logs: &[String],
    folder: &Path,
    words: &Words,
) {
    add_verdict(lines, assessment, folder, words);
    add_runs(lines, assessment, words);
    if is_held_against_standard(assessment) {
        add_findings(lines, assessment, words);
        add_set_aside(lines, assessment, words);
    }
    of_procedures(lines, assessment, words);
    let notices = assessment.notices.iter().map(|notice| notice.message());
    let notices: Vec<Message> = notices.chain(unnamed(unnamed_logs)).collect();
    if !notices.is_empty() {
        lines.blank().title(&words.say(message!("check-notices")));
    }
    for notice in notices {
        lines.hanging("  ", &words.say(notice));
    }
    add_how_read(lines, assessment, words);
}

fn add_verdict(lines: &mut Lines, assessment: &Assessment, folder: &Path, words: &Words) {
    let verdict = verdict(assessment, folder);
    lines.verdict(verdict.mark, &words.say(verdict.sentence));
    let mut rows = vec![(message!("check-next"), verdict.next)];
    let so_far = verdict.so_far;
    rows.extend(so_far.map(|said| (message!("check-so-far"), said.into())));
    rows.extend(
        verdict
            .outlook
            .map(|outlook| (message!("check-aim"), outlook.into())),
    );
    rows.push((
        message!("check-name"),
        (&assessment.tested.campaign.name).into(),
    ));
    let rows = rows.into_iter();
    let rows: Vec<(String, String)> = rows
        .map(|(label, text)| (words.say(label), words.say(text)))
        .collect();
    lines.rows("  ", &rows);
}

/// The tables of the runs.
fn add_runs(lines: &mut Lines, assessment: &Assessment, words: &Words) {
    let tested = &assessment.tested;
    let others: Vec<[String; 6]> = other_runs(tested, words);
    let say = |message: Message| words.say(message);
    let [run, on, readings] = [
        message!("check-run"),
        message!("check-date"),
        message!("check-readings"),
    ]
    .map(say);
    if !tested.runs.is_empty() || others.is_empty() {
        let rows: Vec<[String; 6]> = (0..tested.runs.len())
            .map(|index| run_row(assessment, index, words))
            .collect();
        let [intervals, used, aside] = [
            message!("check-intervals"),
            message!("check-used"),
            message!("check-aside"),
        ]
        .map(say);
        let header = [
            (run.as_str(), Align::Left),
            (on.as_str(), Align::Left),
            (readings.as_str(), Align::Right),
            (intervals.as_str(), Align::Right),
            (used.as_str(), Align::Right),
            (aside.as_str(), Align::Left),
        ];
        lines.blank();
        let taken = table_width(header, &rows);
        match lines.width() {
            Some(width) if taken > width => add_narrow(lines, header, rows, words),
            _ => {
                lines.table(header, &rows);
            }
        }
        for said in holes(assessment)
            .into_iter()
            .chain(not_normalised(assessment))
        {
            lines.line(&words.say(said));
        }
    }
    if !others.is_empty() {
        let [kind, from, to] = [
            message!("check-kind"),
            message!("check-from"),
            message!("check-to"),
        ]
        .map(say);
        let header = [
            (run.as_str(), Align::Left),
            (on.as_str(), Align::Left),
            (kind.as_str(), Align::Left),
            (readings.as_str(), Align::Right),
            (from.as_str(), Align::Left),
            (to.as_str(), Align::Left),
        ];
        lines.blank();
        let taken = table_width(header, &others);
        match lines.width() {
            Some(width) if taken > width => add_kinds_below(lines, header, others, words),
            _ => {
                lines.table(header, &others);
            }
        }
    }
}

/// The same table with its last column below each row, behind its header.
fn add_narrow(
    lines: &mut Lines,
    header: [(&str, Align); 6],
    rows: Vec<[String; 6]>,
    words: &Words,
) {
    let [first @ .., (last, _)] = header;
    let rows = rows.into_iter().map(|row| {
        let [a, b, c, d, e, below] = row;
        let below = match below.is_empty() {
            true => below,
            false => behind(last, below, words),
        };
        ([a, b, c, d, e], below)
    });
    lines.table_above(first, &rows.collect::<Vec<_>>());
}

/// The table of runs that heat no water with their kind below each row.
fn add_kinds_below(
    lines: &mut Lines,
    header: [(&str, Align); 6],
    rows: Vec<[String; 6]>,
    words: &Words,
) {
    let [run, on, (kind, _), readings, from, to] = header;
    let rows = rows.into_iter().map(|row| {
        let [a, b, below, c, d, e] = row;
        ([a, b, c, d, e], behind(kind, below, words))
    });
    let header = [run, on, readings, from, to];
    lines.table_above(header, &rows.collect::<Vec<_>>());
}

/// A cell behind the header of its column.
fn behind(header: &str, cell: String, words: &Words) -> String {
    words.say(message!("terminal-whose", whose = header, said = cell))
}

fn run_row(assessment: &Assessment, index: usize, words: &Words) -> [String; 6] {
    let run = &assessment.tested.runs[index];
    let screening = &assessment.s580.screenings[index];
    let reasons = count_reasons(assessment.s580.intervals_of(index)).into_iter();
    // The number stays on the line of its reason.
    let reasons = reasons.map(|(reason, count)| {
        let reason = words.say(reason.describe_briefly()).replace(' ', "\u{a0}");
        format!("{count}\u{a0}{reason}")
    });
    let reasons: Vec<String> = reasons.collect();
    [
        run.plan.label.clone(),
        run.date.to_string(),
        run.readings.time_us.len().to_string(),
        screening.intervals.to_string(),
        screening.on_line.to_string(),
        reasons.join(", "),
    ]
}

/// The runs that heat no water: what each is, and from when to when it was read.
fn other_runs(tested: &Tested, words: &Words) -> Vec<[String; 6]> {
    let runs = tested.cooling_runs.iter().chain(&tested.dry_runs);
    let zone = &tested.campaign.site.time_zone;
    runs.map(|run| other_row(run, zone, words)).collect()
}

fn other_row(run: &Run, zone: &TimeZone, words: &Words) -> [String; 6] {
    let times_us = match run.plan.kind {
        RunKind::Dry => run.readings.vessel_c.as_ref(),
        RunKind::Water | RunKind::Cooling => Some(&run.readings.water_c),
    };
    let times_us = times_us.map_or(&[][..], |series| &series.time_us);
    let ends = times_us.first().zip(times_us.last());
    let [from, to] = match ends {
        Some((from_us, to_us)) => [from_us, to_us].map(|at_us| local_clock(*at_us, zone)),
        None => ["", ""].map(str::to_owned),
    };
    [
        run.plan.label.clone(),
        run.date.to_string(),
        words.say(run.plan.kind.describe()),
        times_us.len().to_string(),
        from,
        to,
    ]
}

fn holes(assessment: &Assessment) -> Vec<Message> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let (shortest_min, longest_min) = assessment.s580.limits.interval().ends_min();
    let runs = assessment.tested.runs.iter();
    let runs = runs.zip(&assessment.s580.screenings);
    let holes =
        runs.flat_map(|(run, screening)| screening.holes.iter().map(move |hole| (run, hole)));
    let said = holes.map(|(run, hole)| {
        message!(
            "check-hole",
            run = &run.plan.label,
            from = local_clock(hole.from_us, zone),
            to = local_clock(hole.to_us, zone),
            date = date(zoned(hole.from_us, zone).date()),
            shortest = short(shortest_min),
            longest = short(longest_min)
        )
    });
    said.collect()
}

/// What breaks no limit and is not used all the same.
fn not_normalised(assessment: &Assessment) -> Vec<Message> {
    let runs = assessment.tested.runs.iter();
    let counts = runs.zip(&assessment.s580.screenings);
    let counts = counts.filter(|(_, screening)| screening.not_normalised > 0);
    let said = counts.map(|(run, screening)| {
        message!(
            "check-not-normalised",
            run = &run.plan.label,
            intervals = screening.not_normalised
        )
    });
    said.collect()
}

/// Whether the rating is spoken of: a campaign of a dry vessel alone is not held against the
/// practice for water.
pub fn is_held_against_standard(assessment: &Assessment) -> bool {
    let tested = &assessment.tested;
    let has_others = !tested.cooling_runs.is_empty() || !tested.dry_runs.is_empty();
    !tested.runs.is_empty() || !has_others
}

/// What keeps the rating from conforming, the gravest first.
pub fn grave_findings(assessment: &Assessment) -> Vec<&S580Finding> {
    // Where a number cannot be true, nothing else is worth mending first.
    let least = match assessment.s580.is_not_valid() {
        true => Level::NotValid,
        false => Level::Indicative,
    };
    let mut grave = assessment.s580.conformity.gravest_first();
    grave.retain(|finding| finding.level >= least);
    grave
}

/// What a result carries that conforms.
pub fn findings_to_state(assessment: &Assessment) -> Vec<&S580Finding> {
    let findings = assessment.s580.conformity.findings.iter();
    findings
        .filter(|finding| finding.level == Level::ConformsWithNotes)
        .filter(|_| !assessment.s580.is_not_valid())
        .collect()
}

fn add_findings(lines: &mut Lines, assessment: &Assessment, words: &Words) {
    for (heading, findings) in [
        (message!("check-findings"), grave_findings(assessment)),
        (message!("check-notes"), findings_to_state(assessment)),
    ] {
        if !findings.is_empty() {
            lines.blank().title(&words.say(heading));
        }
        for finding in findings {
            lines.remedied("  ", &words.say(&finding.text), &words.say(&finding.remedy));
        }
    }
}

fn add_set_aside(lines: &mut Lines, assessment: &Assessment, words: &Words) {
    let mut reasons = count_reasons(assessment.s580.intervals.iter());
    if reasons.is_empty() || assessment.s580.is_not_valid() {
        return;
    }
    reasons.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    let counts = reasons.iter().map(|(_, count)| count.to_string());
    let widest = counts.map(|count| count.len()).max().unwrap_or(0);
    lines.blank().title(&words.say(message!("check-set-aside")));
    for (reason, count) in reasons {
        let by_clock = match reason {
            Reason::OutsideSolarWindow => by_clock(assessment),
            _ => None,
        };
        let estimate = assessment.tested.campaign.instruments.irradiance_estimate;
        let helps = by_clock.unwrap_or_else(|| reason.remedy(estimate));
        lines.remedied(
            &format!("  {count:>widest$}  "),
            &words.say(reason.describe()),
            &words.say(helps),
        );
    }
}

/// The solar window by the clock of the last run, where it has an interval.
fn by_clock(assessment: &Assessment) -> Option<Message> {
    let last = assessment.s580.intervals.last()?;
    let (start_h, end_h) = assessment.s580.limits.solar_window_h();
    let zone = &assessment.tested.campaign.site.time_zone;
    let ahead_h = clock_ahead_of_sun_h(&last.measured, zone);
    Some(message!(
        "helps-by-clock",
        helps = Reason::OutsideSolarWindow.remedy(None),
        date = date(assessment.tested.runs[last.run].date),
        from = clock(start_h + ahead_h),
        to = clock(end_h + ahead_h)
    ))
}

/// How each log was read, those that are written alike together.
fn add_how_read(lines: &mut Lines, assessment: &Assessment, words: &Words) {
    lines.blank().title(&words.say(message!("check-how-read")));
    add_shared(lines, &assessment.tested.campaign.shared, words);
    for (index, group) in alike(&assessment.tested.accounts).into_iter().enumerate() {
        if index > 0 {
            lines.blank();
        }
        let zone = &assessment.tested.campaign.site.time_zone;
        let logs = group.iter();
        let mut rows: Vec<(String, String)> = logs
            .map(|account| (account.log.clone(), words.say(account.readings(zone))))
            .collect();
        rows.extend(skipped(&group, words));
        let form = group[0].form().into_iter();
        rows.extend(form.map(|(label, what)| (words.say(label), words.say(what))));
        lines.rows("  ", &rows);
    }
}

/// The keys that each file of shared keys gives, by their tables.
fn add_shared(lines: &mut Lines, shared: &[SharedFile], words: &Words) {
    if shared.is_empty() {
        return;
    }
    let rows = shared.iter().map(|one| {
        let said = match one.spoken_keys() {
            keys if keys.is_empty() => message!("check-shared-nothing"),
            keys => message!("check-shared", keys = keys),
        };
        (one.path.display().to_string(), words.say(said))
    });
    lines.rows("  ", &rows.collect::<Vec<_>>()).blank();
}

/// The rows that are no readings: what several logs have alike is told once.
fn skipped(group: &[&Account], words: &Words) -> Vec<(String, String)> {
    let mut told: Vec<(Message, Vec<&str>)> = Vec::new();
    for account in group {
        for said in account.skipped.describe() {
            match told.iter_mut().find(|(other, _)| *other == said) {
                Some((_, logs)) => logs.push(&account.log),
                None => told.push((said, vec![&account.log])),
            }
        }
    }
    let told = told.into_iter();
    told.map(|(said, logs)| {
        let whose: Phrase = match logs.as_slice() {
            [log] => (*log).into(),
            _ => message!("check-of-logs", count = logs.len()).into(),
        };
        (words.say(whose), words.say(said))
    })
    .collect()
}
