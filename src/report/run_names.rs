//! What runs beside the rating are called: by their days.

use std::collections::BTreeSet;

use jiff::civil::Date;

use crate::language::{Message, Words, date};
use crate::message;

/// A name for each run by its local date, `2 July`; with the year where there are several, and
/// with a number where a day has several runs: `2 July (2)`.
pub fn run_names(dates: &[Date], words: &Words) -> Vec<String> {
    let years: BTreeSet<i16> = dates.iter().map(|one| one.year()).collect();
    let named = dates.iter().enumerate();
    named
        .map(|(place, one)| {
            let name = if years.len() > 1 {
                words.say(date(*one))
            } else {
                day(*one, words)
            };
            let before = dates[..place].iter().filter(|other| *other == one).count();
            match before {
                0 => name,
                more => format!("{name} ({})", more + 1),
            }
        })
        .collect()
}

fn day(date: Date, words: &Words) -> String {
    let month = Message::new(format!("month-{}", date.month()));
    words.say(message!(
        "figure-day",
        day = date.day().to_string(),
        month = month
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn runs_are_told_apart_by_day_by_number_and_by_year() {
        let words = Words::english();
        let same_year = [date(2026, 7, 2), date(2026, 7, 3), date(2026, 7, 2)];
        assert_eq!(
            run_names(&same_year, words),
            ["2 July", "3 July", "2 July (2)"]
        );
        let years = [date(2026, 7, 2), date(2025, 7, 2)];
        assert_eq!(run_names(&years, words), ["2 July 2026", "2 July 2025"]);
    }
}
