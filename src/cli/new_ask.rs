//! `new` asks: one question a time, with what it serves for, and a way back.

use std::io::{self, BufRead};
use std::path::Path;

use super::lines::Lines;
use super::screen::Screen;
use super::terminal::{print, print_lines, print_note_with_hint};
use crate::error::{Error, Problem, Result, why};
use crate::setup::answers::Answers;
use crate::setup::interview::{Interview, Outcome};
use crate::setup::questions::Question;

/// Answers with those that options of the command line give.
///
/// # Errors
/// [`Error::Usage`] for one that cannot be.
pub fn answers_given(mut answers: Answers, given: &[(Question, &str)]) -> Result<Answers> {
    for (question, text) in given {
        question.take(&mut answers, text).map_err(|refusal| {
            let option = format!("--{}", question.option());
            let problem = Problem::at(Path::new(&option), refusal.what);
            Error::Usage(problem.hint(refusal.hint).into())
        })?;
    }
    Ok(answers)
}

/// Puts questions to whoever sits at the terminal; `None` where nothing is to be written.
///
/// # Errors
/// [`Error::Usage`] if standard input cannot be read, or ends before all is answered.
pub fn ask(answers: Answers, questions: Vec<Question>) -> Result<Option<Answers>> {
    let mut interview = Interview::new(answers, questions);
    let mut lines = Lines::new(Screen::out());
    lines.line(
        "An empty line takes the answer in brackets. back returns to the question before, help says what an answer serves for, quit writes nothing.",
    );
    print_lines(&lines)?;
    let mut put = None;
    while let Some(question) = interview.question() {
        if put != Some(question) {
            put_question(&interview, question)?;
            put = Some(question);
        }
        let offered = interview.offers(question);
        let offered = offered.map_or_else(String::new, |offered| format!("[{offered}] "));
        print(&format!("{offered}> "))?;
        match interview.take(&read_line()?) {
            Outcome::Taken(None) => {}
            Outcome::Taken(Some(said)) => print(&format!("  {said}\n"))?,
            Outcome::Back => put = None,
            Outcome::Help => print_explained(&interview, question)?,
            Outcome::Quit => return Ok(None),
            Outcome::Refused(refusal) => {
                print_note_with_hint(&format!("not taken: {}", refusal.what), &refusal.hint);
            }
        }
    }
    Ok(Some(interview.answers))
}

fn put_question(interview: &Interview, question: Question) -> Result<()> {
    let (at, of) = interview.position();
    let mut lines = Lines::new(Screen::out());
    lines.blank();
    lines.title(&format!("{at}/{of}  {}", question.asks()));
    lines.hanging("  ", &question.explains(&interview.answers));
    add_choices(&mut lines, question);
    print_lines(&lines)
}

fn print_explained(interview: &Interview, question: Question) -> Result<()> {
    let mut lines = Lines::new(Screen::out());
    lines.hanging("  ", &question.explains(&interview.answers));
    add_choices(&mut lines, question);
    lines.hanging(
        "  ",
        "Everything can be changed in campaign.toml later, where every key is explained.",
    );
    print_lines(&lines)
}

fn add_choices(lines: &mut Lines, question: Question) {
    let choices = question.choices().iter().enumerate();
    let rows = choices.map(|(index, choice)| {
        let word = format!("{} {}", index + 1, choice.word);
        (word, choice.meaning.to_owned())
    });
    lines.rows("  ", &rows.collect::<Vec<_>>());
}

fn read_line() -> Result<String> {
    let problem = |what: String| {
        let problem = Problem::at(Path::new("standard input"), what);
        Error::Usage(
            problem
                .hint("nothing is written; answer by options, see --help")
                .into(),
        )
    };
    let mut bytes = Vec::new();
    let read = io::stdin().lock().read_until(b'\n', &mut bytes);
    match read {
        Ok(0) => {
            // The prompt's line has no end yet.
            print("\n")?;
            Err(problem("ended before all was answered".to_owned()))
        }
        Ok(_) => Ok(String::from_utf8_lossy(&bytes).into_owned()),
        Err(error) => Err(problem(format!("cannot be read: {}", why(&error)))),
    }
}
