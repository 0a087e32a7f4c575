//! The `[[run]]` of a typed log in the campaign file, whose remarks and layout stay.

use toml_edit::{ArrayOfTables, DocumentMut, InlineTable, Item, Table, Value, value};

use super::own_rules::OwnRules;
use super::sheet::{ClearSpan, spoken};
use super::value::Refusal;
use crate::campaign::kinds::RunKind;

/// Which run the log is to be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place<'p> {
    /// A new one.
    New,
    /// One that names the log already, as it writes it.
    Present(&'p str),
    /// One, of a kind, that a pattern stands for, which matches the log: it has no table of its
    /// own.
    Matched(&'p str, RunKind),
    /// One whose log is empty, whose place this log takes.
    InsteadOf(&'p str),
}

/// What the campaign file is to say of the log.
#[derive(Debug, Clone)]
pub struct RunEntry<'r> {
    pub log: &'r str,
    pub kind: RunKind,
    pub place: Place<'r>,
    pub own_rules: OwnRules,
    /// Empty where the campaign has no use for them.
    pub cloudless: Vec<ClearSpan>,
    /// The log was taken from corrected notes: what the run says of an older one goes.
    pub is_again: bool,
}

/// The text of a campaign file with the run; the same text where it says all already.
///
/// # Errors
/// A [`Refusal`] where the file is written in a way that is not changed safely.
pub fn with_run(text: &str, entry: &RunEntry<'_>) -> Result<String, Refusal> {
    if let Place::Matched(log, kind) = entry.place {
        return match kind == entry.kind && entry.cloudless.is_empty() {
            true => Ok(text.to_owned()),
            false => Err(Refusal::new(
                format!(
                    "the run of {log} is one of those that a pattern stands for, and has a kind or cloudless spans of its own"
                ),
                "write the run in a table of its own, which the pattern passes over",
            )),
        };
    }
    let mut document: DocumentMut = text.parse().map_err(|error: toml_edit::TomlError| {
        Refusal::new(error.message().to_owned(), "correct campaign.toml")
    })?;
    let before = document.to_string();
    // Remarks behind the last table belong to what stands above them.
    let remarks = document.trailing().as_str().unwrap_or_default();
    let remarks = remarks.replace('\r', "");
    if !remarks.trim().is_empty() {
        document.set_trailing("");
    }
    let runs = runs_of(&mut document)?;
    match entry.place {
        Place::New | Place::Matched(..) => {}
        Place::Present(log) => {
            let run = run_of(runs, log)?;
            set_kind(run, entry.kind, entry.is_again)?;
            if entry.is_again {
                run.remove("cloudless");
                run.remove("units");
                add_own_rules(run, &entry.own_rules);
            }
        }
        Place::InsteadOf(log) => {
            let run = run_of(runs, log)?;
            rename_log(run, entry.log);
            set_kind(run, entry.kind, true)?;
            add_own_rules(run, &entry.own_rules);
        }
    }
    let without_tables = document.to_string();
    let runs = runs_of(&mut document)?;
    match entry.place {
        Place::Matched(..) => {}
        Place::New => runs.push(new_run(entry, before.is_empty())),
        Place::Present(log) => add_spans(run_of(runs, log)?, &entry.cloudless)?,
        Place::InsteadOf(_) => add_spans(run_of(runs, entry.log)?, &entry.cloudless)?,
    }
    let after = with_remarks(&without_tables, &document.to_string(), &remarks);
    if after == before {
        return Ok(text.to_owned());
    }
    // toml_edit writes line feeds alone.
    Ok(match text.contains("\r\n") {
        true => after.replace('\n', "\r\n"),
        false => after,
    })
}

/// The text of the file, with the remarks that stood at its end above the tables that were added
/// behind them, if they were.
fn with_remarks(without_tables: &str, after: &str, remarks: &str) -> String {
    if remarks.trim().is_empty() {
        return after.to_owned();
    }
    match after.strip_prefix(without_tables) {
        Some(added) if !added.is_empty() && !remarks.ends_with('\n') => {
            format!("{without_tables}{remarks}\n{added}")
        }
        Some(added) => format!("{without_tables}{remarks}{added}"),
        None => format!("{after}{remarks}"),
    }
}

/// The `[[run]]` tables, none of them where there is none yet.
fn runs_of(document: &mut DocumentMut) -> Result<&mut ArrayOfTables, Refusal> {
    let runs = document.entry("run");
    let runs = runs.or_insert_with(|| Item::ArrayOfTables(ArrayOfTables::new()));
    runs.as_array_of_tables_mut().ok_or_else(|| {
        Refusal::new(
            "the runs are not written as [[run]] tables",
            "add the run where the others are",
        )
    })
}

/// The lines that say the same, to be added by hand.
pub fn lines_by_hand(entry: &RunEntry<'_>) -> String {
    let mut document = DocumentMut::new();
    let mut runs = ArrayOfTables::new();
    runs.push(new_run(entry, true));
    document.insert("run", Item::ArrayOfTables(runs));
    document.to_string()
}

fn new_run(entry: &RunEntry<'_>, opens_the_text: bool) -> Table {
    let mut run = Table::new();
    run.decor_mut()
        .set_prefix(if opens_the_text { "" } else { "\n" });
    run.insert("log", value(entry.log));
    if entry.kind != RunKind::default() {
        run.insert("kind", value(entry.kind.word()));
    }
    add_own_rules(&mut run, &entry.own_rules);
    if !entry.cloudless.is_empty() {
        run.insert("cloudless", spans(&entry.cloudless));
    }
    run
}

fn run_of<'r>(runs: &'r mut ArrayOfTables, log: &str) -> Result<&'r mut Table, Refusal> {
    let mut named = runs
        .iter_mut()
        .filter(|run| run.get("log").and_then(Item::as_str) == Some(log));
    match (named.next(), named.next()) {
        (Some(run), None) => Ok(run),
        _ => Err(Refusal::new(
            format!("{log} is not the log of exactly one [[run]]"),
            "say which of them it is",
        )),
    }
}

/// Names another log, and keeps the remark behind the name.
fn rename_log(run: &mut Table, log: &str) {
    if let Some(old) = run.get_mut("log").and_then(Item::as_value_mut) {
        replace_value(old, log);
    }
}

/// Says what kind of run it is, where the file says nothing or `is_ours` lets it be changed.
fn set_kind(run: &mut Table, kind: RunKind, is_ours: bool) -> Result<(), Refusal> {
    let Some(written) = run.get_mut("kind").and_then(Item::as_value_mut) else {
        if kind != RunKind::default() {
            run.insert("kind", value(kind.word()));
        }
        return Ok(());
    };
    if written.as_str() == Some(kind.word()) {
        return Ok(());
    }
    if !is_ours {
        return Err(Refusal::new(
            format!(
                "the run of the log is of another kind than the sheet, which is \"{}\"",
                kind.word()
            ),
            "write the kind that it was",
        ));
    }
    replace_value(written, kind.word());
    Ok(())
}

/// Another text, with the spaces and the remark of the old one.
fn replace_value(old: &mut Value, text: &str) {
    let decor = old.decor().clone();
    *old = Value::from(text);
    *old.decor_mut() = decor;
}

fn add_own_rules(run: &mut Table, rules: &OwnRules) {
    for (name, keys) in rules.tables() {
        if !run.contains_key(name) {
            let keys = keys.iter().map(|(key, text)| (*key, Value::from(text)));
            run.insert(name, value(keys.collect::<InlineTable>()));
        }
    }
}

/// Adds the spans to a run that has none.
fn add_spans(run: &mut Table, cloudless: &[ClearSpan]) -> Result<(), Refusal> {
    if cloudless.is_empty() {
        return Ok(());
    }
    let Some(present) = run.get("cloudless") else {
        run.insert("cloudless", spans(cloudless));
        return Ok(());
    };
    let texts = |item: &Item| -> Vec<[Option<String>; 2]> {
        let tables = item.as_array_of_tables().into_iter().flatten();
        let end = |table: &Table, key: &str| Some(table.get(key)?.as_str()?.trim().to_owned());
        let ends = tables.map(|table| [end(table, "from"), end(table, "to")]);
        ends.collect()
    };
    if texts(present) == texts(&spans(cloudless)) {
        return Ok(());
    }
    Err(Refusal::new(
        "the run has other [[run.cloudless]] spans already",
        "keep those that are right",
    ))
}

fn spans(cloudless: &[ClearSpan]) -> Item {
    let mut tables = ArrayOfTables::new();
    for span in cloudless {
        let mut table = Table::new();
        table.decor_mut().set_prefix("");
        table.insert("from", value(spoken(span.from)));
        table.insert("to", value(spoken(span.to)));
        tables.push(table);
    }
    Item::ArrayOfTables(tables)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::template::CAMPAIGN_TEMPLATE;
    use crate::entry::sheet::tests::sheet;

    fn entry(place: Place<'_>) -> RunEntry<'_> {
        RunEntry {
            log: "2026-11-03.csv",
            kind: RunKind::Water,
            place,
            own_rules: OwnRules::default(),
            cloudless: sheet("°C", &["10:20 30", "10:30 31 - - c", "10:40 32"]).clear_spans(),
            is_again: false,
        }
    }

    const RUN: &str =
        "[[run]]\nlog = \"2026-11-03.csv\"\n[[run.cloudless]]\nfrom = \"10:20\"\nto = \"10:30\"\n";

    #[test]
    fn a_run_is_added_and_nothing_else_changes() {
        let text = "# mine\n[campaign]   # odd  layout\ntitle='x'\n";
        let added = with_run(text, &entry(Place::New)).unwrap();
        assert_eq!(added, format!("{text}\n{RUN}"));
        let text = "[[run]]\nlog = \"a.csv\" # first\n\n[limits]\n# last\n";
        let added = with_run(text, &entry(Place::New)).unwrap();
        let expected = format!("[[run]]\nlog = \"a.csv\" # first\n\n{RUN}\n[limits]\n# last\n");
        assert_eq!(added, expected);
    }

    #[test]
    fn the_template_takes_the_log_in_place_of_the_empty_one() {
        let place = Place::InsteadOf("run-1.csv");
        let added = with_run(CAMPAIGN_TEMPLATE, &entry(place)).unwrap();
        // The remarks on a run's keys stay with its keys.
        let (run, spans) = RUN.split_at(RUN.find("[[run.cloudless]]").unwrap());
        let expected = CAMPAIGN_TEMPLATE.replacen("[[run]]\nlog = \"run-1.csv\"\n", run, 1);
        assert_eq!(added, expected + spans);
    }

    #[test]
    fn what_is_there_already_stays_as_it_is() {
        let text = format!("# mine\r\n{}", RUN.replace('\n', "\r\n"));
        let place = Place::Present("2026-11-03.csv");
        assert_eq!(with_run(&text, &entry(place)).unwrap(), text);
        let other = text.replace("10:30", "10:40");
        assert!(with_run(&other, &entry(place)).is_err());
        let without = "[[run]]\r\nlog = \"2026-11-03.csv\" # typed\r\n";
        let added = with_run(without, &entry(place)).unwrap();
        let span = "[[run.cloudless]]\r\nfrom = \"10:20\"\r\nto = \"10:30\"\r\n";
        assert_eq!(added, format!("{without}{span}"));
    }

    #[test]
    fn remarks_at_the_end_stay_with_what_they_are_about() {
        let of_the_last_table = "[impact]\nfuel = \"wood\"\n# days_per_year = 200\n";
        let added = with_run(of_the_last_table, &entry(Place::New)).unwrap();
        assert_eq!(added, format!("{of_the_last_table}\n{RUN}"));
        let of_a_run = "[[run]]\r\nlog = \"a.csv\"\r\n# notes = \"haze\"";
        let added = with_run(of_a_run, &entry(Place::New)).unwrap();
        let expected = format!("{of_a_run}\n\n{RUN}").replace("\r\n", "\n");
        assert_eq!(added, expected.replace('\n', "\r\n"));
        let before_others = "[[run]]\nlog = \"a.csv\"\n\n[limits]\nguard = true\n# last";
        let added = with_run(before_others, &entry(Place::New)).unwrap();
        let (run, limits) = before_others.split_at(before_others.find("\n[limits]").unwrap());
        assert_eq!(added, format!("{run}\n{RUN}{limits}"));
    }

    #[test]
    fn the_run_says_its_kind_unless_it_heats_water() {
        let dry = |place| RunEntry {
            kind: RunKind::Dry,
            cloudless: Vec::new(),
            is_again: false,
            ..entry(place)
        };
        let run = "[[run]]\nlog = \"2026-11-03.csv\"\nkind = \"dry\"\n";
        assert_eq!(lines_by_hand(&dry(Place::New)), run);
        let place = Place::InsteadOf("run-1.csv");
        let empty = "[[run]]\nlog = \"run-1.csv\"  # first\n# more\n";
        let expected = "[[run]]\nlog = \"2026-11-03.csv\"  # first\nkind = \"dry\"\n# more\n";
        assert_eq!(with_run(empty, &dry(place)).unwrap(), expected);
        let empty = "[[run]]\nlog = \"run-1.csv\"\nkind = \"cooling\" # shade\n";
        let expected = empty.replace("run-1", "2026-11-03");
        let taken = with_run(empty, &dry(place)).unwrap();
        assert_eq!(taken, expected.replace("cooling", "dry"));
        let place = Place::Present("2026-11-03.csv");
        assert_eq!(with_run(run, &dry(place)).unwrap(), run);
        assert!(with_run(&run.replace("dry", "water"), &dry(place)).is_err());
    }

    #[test]
    fn runs_written_another_way_are_left_to_a_person() {
        let text = "run = [{ log = \"a.csv\" }]\n";
        assert!(with_run(text, &entry(Place::New)).is_err());
        assert_eq!(lines_by_hand(&entry(Place::New)), RUN);
    }

    #[test]
    fn own_rules_of_the_run_are_written_on_a_line_each() {
        let mut entry = entry(Place::New);
        entry.cloudless.clear();
        entry.own_rules.units = vec![("wind_speed", "Bft".to_owned())];
        assert_eq!(
            lines_by_hand(&entry),
            "[[run]]\nlog = \"2026-11-03.csv\"\nunits = { wind_speed = \"Bft\" }\n"
        );
    }
}
