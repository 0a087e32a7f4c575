//! The report's table: language, paper, units, and who answers for it.

use super::locate::Checker;
use super::schema::ReportTable;
use super::wishes::{Paper, ReportWishes, RunsShown};
use super::wording::words;
use crate::bounds::TEXT;
use crate::language::{LANGUAGES, Language, UnitSystem};

/// The report's wishes; what is left out is English, A4, the SI alone and, of many runs,
/// some.
pub fn check_report(checker: &mut Checker<'_>, written: ReportTable) -> ReportWishes {
    for (key, text) in [
        ("report.laboratory", &written.laboratory),
        ("report.client_contact", &written.client_contact),
        ("report.client_data", &written.client_data),
        ("report.authorised_by", &written.authorised_by),
        ("report.sampling", &written.sampling),
        ("report.external_results", &written.external_results),
    ] {
        if let Some(text) = text {
            checker.text(key, text, &TEXT);
        }
    }
    let languages = LANGUAGES.map(|language| (language.code, language));
    let papers = Paper::ALL.map(|paper| (paper.word(), paper));
    let shown = RunsShown::BOTH.map(|choice| (choice.word(), choice));
    let systems = UnitSystem::ALL.map(|system| (system.word(), system));
    ReportWishes {
        language: choose(checker, "report.language", written.language, languages)
            .unwrap_or(Language::ENGLISH),
        paper: choose(checker, "report.paper", written.paper, papers).unwrap_or(Paper::A4),
        units: choose(checker, "report.units", written.units, systems).unwrap_or(UnitSystem::Si),
        runs_shown: choose(checker, "report.runs_shown", written.runs_shown, shown)
            .unwrap_or(RunsShown::Some),
        laboratory: written.laboratory,
        client_contact: written.client_contact,
        client_data: written.client_data,
        authorised_by: written.authorised_by,
        sampling: written.sampling,
        external_results: written.external_results,
    }
}

/// What a word of the campaign file stands for.
fn choose<T, const N: usize>(
    checker: &mut Checker<'_>,
    key: &str,
    written: Option<String>,
    known: [(&str, T); N],
) -> Option<T> {
    let found = written?;
    let all = known.each_ref().map(|(word, _)| *word);
    let choice = known.into_iter().find(|(word, _)| *word == found);
    if choice.is_none() {
        checker.problem(
            key,
            format!("found \"{found}\", expected one of {}", words(all)),
            "write one of them, or delete the key",
        );
    }
    choice.map(|(_, meant)| meant)
}
