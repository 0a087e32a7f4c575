//! What a typed line does to the sheet.

use jiff::civil::Time;

use super::sheet::{Line, Sheet};
use super::start::next_time;
use super::value::Refusal;

/// A sheet and the time at which the next line is expected.
#[derive(Debug, Clone)]
pub struct Desk {
    pub sheet: Sheet,
    /// Of the next line; `None` when the day is over.
    pub next: Option<Time>,
    /// By whose minute the times go on.
    start: Time,
    /// Minutes between two times.
    step_min: i32,
}

/// What became of a typed line.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// It is on the sheet, with what is odd about it.
    Kept { odd: Option<String> },
    /// The last line was taken back: its time.
    TakenBack(Time),
    /// Nothing was read at that time.
    Passed,
    /// Somebody asks what can be typed.
    Help,
    /// The sheet is complete.
    Done,
    /// It is not on the sheet.
    Refused(Refusal),
}

impl Desk {
    /// A sheet to type on, from `next`; times go on by the minute of `start`, so many minutes
    /// apart.
    pub fn new(sheet: Sheet, next: Option<Time>, start: Time, step_min: i32) -> Self {
        Desk {
            sheet,
            next,
            start,
            step_min,
        }
    }

    /// Reads a command or a line of readings.
    pub fn take(&mut self, text: &str) -> Outcome {
        match text.trim().to_lowercase().as_str() {
            "done" => Outcome::Done,
            "help" => Outcome::Help,
            "" | "skip" => self.pass(),
            "undo" => match self.sheet.take_back() {
                Some(line) => {
                    self.next = Some(line.time);
                    Outcome::TakenBack(line.time)
                }
                None => Outcome::Refused(Refusal::new(
                    "there is no line to take back",
                    "type the first one",
                )),
            },
            _ => self.keep(text).unwrap_or_else(Outcome::Refused),
        }
    }

    fn pass(&mut self) -> Outcome {
        let Some(next) = self.next else {
            return Outcome::Refused(day_is_over());
        };
        self.next = next_time(next, self.start, self.step_min);
        Outcome::Passed
    }

    fn keep(&mut self, text: &str) -> Result<Outcome, Refusal> {
        let typed = self.sheet.form.read_line(text)?;
        let time = typed.time.or(self.next).ok_or_else(day_is_over)?;
        let cells = typed.cells;
        let odd = self.sheet.add(Line { time, cells })?;
        self.next = next_time(time, self.start, self.step_min);
        Ok(Outcome::Kept { odd })
    }
}

fn day_is_over() -> Refusal {
    Refusal::new(
        "the day is over: there is no next time",
        "type done, or undo to take the last line back",
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::line::clock;
    use crate::entry::sheet::tests::sheet;

    fn desk(lines: &[&str], next: &str) -> Desk {
        let next = clock(next).unwrap();
        Desk::new(sheet("°C", lines), Some(next), next, 10)
    }

    fn times(desk: &Desk) -> Vec<Time> {
        desk.sheet.lines().iter().map(|line| line.time).collect()
    }

    fn at(text: &str) -> Time {
        clock(text).unwrap()
    }

    #[test]
    fn times_are_filled_in_passed_over_replaced_and_taken_back() {
        let mut desk = desk(&[], "10:20");
        assert_eq!(desk.take("31.5 24 1 c"), Outcome::Kept { odd: None });
        assert_eq!(desk.take(""), Outcome::Passed);
        assert_eq!(desk.take("10:43 39"), Outcome::Kept { odd: None });
        assert_eq!(desk.next, Some(at("10:50")));
        assert_eq!(desk.take("SKIP"), Outcome::Passed);
        assert_eq!(desk.take("47"), Outcome::Kept { odd: None });
        assert_eq!(times(&desk), [at("10:20"), at("10:43"), at("11:00")]);
        assert_eq!(desk.take("undo"), Outcome::TakenBack(at("11:00")));
        assert_eq!(desk.next, Some(at("11:00")));
        assert_eq!(desk.take("done"), Outcome::Done);
    }

    #[test]
    fn a_refused_line_leaves_everything_as_it_was() {
        let mut desk = desk(&["10:20 30"], "10:30");
        for text in ["3l", "10:20 31", "10:10 31", "31 24 9"] {
            assert!(matches!(desk.take(text), Outcome::Refused(_)), "{text}");
            assert_eq!(
                (times(&desk), desk.next),
                (vec![at("10:20")], Some(at("10:30")))
            );
        }
    }

    #[test]
    fn nothing_follows_the_last_time_of_the_day() {
        let mut desk = desk(&["10:20 30"], "23:50");
        assert_eq!(desk.take("31"), Outcome::Kept { odd: None });
        assert_eq!(desk.next, None);
        for text in ["32", "skip"] {
            assert!(matches!(desk.take(text), Outcome::Refused(_)), "{text}");
        }
        assert_eq!(desk.take("23:59 32"), Outcome::Kept { odd: None });
        assert_eq!(desk.take("undo"), Outcome::TakenBack(at("23:59")));
    }

    #[test]
    fn undo_on_an_empty_sheet_says_so() {
        assert!(matches!(
            desk(&[], "10:20").take("undo"),
            Outcome::Refused(_)
        ));
    }
}
