//! One written date or time to its parts. Which number of `03/04/2026` is the month is
//! left open here; [`super::survey`] settles it for a whole column.

use jiff::Timestamp;
use jiff::civil::Date;

use super::calendar::CALENDAR;
use super::time_of_day::{clock_us, take_clock, with_colons};
use super::tokens::{Token, tokens};
use super::written::{ThreeNumbers, Written, WrittenDate, full_year};
use crate::logs::fold::fold;

/// Longest written time, bytes: day of the week, date, clock and zone in words have 60.
const LONGEST: usize = 200;

/// Reads a date, a clock time or both, in ISO 8601 or as people and loggers write
/// them. `None` if it is neither.
///
/// ```
/// use simmerline::logs::times::{dates::read_written, written::WrittenDate};
/// let written = read_written("14 de marzo de 2026, 3:05 p. m.").unwrap();
/// let day = jiff::civil::date(2026, 3, 14);
/// assert_eq!(written.date, Some(WrittenDate::Known(day)));
/// assert_eq!(written.clock_us, Some((15 * 60 + 5) * 60_000_000));
/// ```
pub fn read_written(text: &str) -> Option<Written> {
    if text.len() > LONGEST {
        return None;
    }
    if let Some(written) = read_compact(text).or_else(|| read_instant(text)) {
        return Some(written);
    }
    let folded = fold(text);
    let folded = with_colons(&folded);
    let mut tokens = tokens(&folded);
    let clock = take_clock(&mut tokens)?;
    let date = read_date(&tokens)?;
    if date.is_none() && clock.is_none() {
        return None;
    }
    Some(Written {
        date,
        clock_us: clock.map(|clock| clock.clock_us),
        offset_s: clock.and_then(|clock| clock.offset_s),
        is_short: clock.is_some_and(|clock| clock.is_short),
    })
}

/// `20260314`, `202603141020` and `20260314102000`, also with a `T` between.
fn read_compact(text: &str) -> Option<Written> {
    let digits = text.replacen(['T', 't'], "", 1);
    if !digits.bytes().all(|b| b.is_ascii_digit()) || !matches!(digits.len(), 8 | 12 | 14) {
        return None;
    }
    let number = |from: usize, to: usize| digits.get(from..to).and_then(|n| n.parse::<i16>().ok());
    let year = number(0, 4).filter(|year| (1970..2100).contains(year))?;
    let (month, day) = (number(4, 6)? as i8, number(6, 8)? as i8);
    let date = Date::new(year, month, day).ok()?;
    let clock_us = match digits.len() {
        8 => None,
        length => {
            let second = if length == 14 { number(12, 14)? } else { 0 };
            Some(clock_us(
                number(8, 10)?.into(),
                number(10, 12)?.into(),
                second.into(),
                0,
            )?)
        }
    };
    Some(Written {
        date: Some(WrittenDate::Known(date)),
        clock_us,
        offset_s: None,
        is_short: digits.len() == 12,
    })
}

/// ISO 8601 with an offset, by the time library.
fn read_instant(text: &str) -> Option<Written> {
    let instant: Timestamp = text.parse().ok()?;
    let utc = instant.to_zoned_datetime(jiff::tz::TimeZone::UTC);
    let midnight = utc.date().to_datetime(jiff::civil::Time::midnight());
    let since = utc.datetime().duration_since(midnight);
    Some(Written {
        date: Some(WrittenDate::Known(utc.date())),
        clock_us: i64::try_from(since.as_micros()).ok(),
        offset_s: Some(0),
        is_short: false,
    })
}

/// The date in what is left; `None` inside if nothing is, and outside if it is no date.
#[allow(clippy::option_option)]
fn read_date(tokens: &[Token<'_>]) -> Option<Option<WrittenDate>> {
    let mut numbers: Vec<&str> = Vec::new();
    let mut month = None;
    let mut month_at = 0;
    let mut month_word = "";
    let mut separator = None;
    for token in tokens {
        match token {
            Token::Number(digits) => numbers.push(digits),
            Token::Mark(mark @ ('-' | '/' | '.')) if numbers.len() == 1 => {
                separator = separator.or(Some(*mark));
            }
            Token::Space | Token::Mark('-' | '/' | '.' | ',' | '\'') => {}
            Token::Mark(_) => return None,
            Token::Word("t") => {}
            Token::Word(word) if CALENDAR.ignored.contains(*word) => {}
            Token::Word(word) => {
                let named = CALENDAR.months.get(*word).copied();
                // "mar. 24 févr. 2026": a Tuesday, of which "mar" is short too.
                let was_weekday = month_word == "mar" && month_at == 0;
                if named.is_none() || (month.is_some() && !was_weekday) {
                    return None;
                }
                (month, month_at) = (named, numbers.len());
                month_word = word;
            }
        }
    }
    if numbers.is_empty() && month.is_none() {
        return Some(None);
    }
    if let Some(month) = month {
        let date = with_named_month(&numbers, month, month_at)?;
        return Some(Some(WrittenDate::Known(date)));
    }
    if let [compact] = numbers[..] {
        // "20260224 11:30"
        return read_compact(compact)
            .filter(|written| written.clock_us.is_none())
            .map(|written| written.date);
    }
    of_three_numbers(&numbers, separator.unwrap_or(' ')).map(Some)
}

fn value(digits: &str) -> Option<i16> {
    digits.parse().ok()
}

/// A date of two numbers and a month in words, before which so many of them stand.
fn with_named_month(numbers: &[&str], month: i8, month_at: usize) -> Option<Date> {
    let &[first, second] = numbers else {
        return None;
    };
    let year_first = month_at > 0 && (first.len() == 4 || value(first)? > 31);
    let (year, day) = if year_first {
        (first, second)
    } else {
        (second, first)
    };
    let full = if year.len() == 4 {
        value(year)?
    } else {
        full_year(value(year)?)
    };
    Date::new(full, month, i8::try_from(value(day)?).ok()?).ok()
}

fn of_three_numbers(numbers: &[&str], separator: char) -> Option<WrittenDate> {
    let &[first, second, third] = numbers else {
        return None;
    };
    let small = |text: &str| text.len() <= 2;
    if first.len() == 4 && small(second) && small(third) {
        let number = |text: &str| value(text).and_then(|n| i8::try_from(n).ok());
        let date = Date::new(value(first)?, number(second)?, number(third)?).ok()?;
        return Some(WrittenDate::Known(date));
    }
    let has_long_year = third.len() == 4;
    if !small(first) || !small(second) || !(small(third) || has_long_year) {
        return None;
    }
    let open = ThreeNumbers {
        numbers: [value(first)?, value(second)?, value(third)?],
        has_long_year,
        separator,
    };
    let is_a_day = !open.readings().is_empty();
    is_a_day.then_some(WrittenDate::Open(open))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::model::DateOrder;
    use crate::logs::times::time_of_day::read_zone;
    use crate::logs::times::written::{DAY_US, HOUR_US, SECOND_US};

    const CLOCK: i64 = (10 * 60 + 20) * 60 * SECOND_US;

    fn day(year: i16, month: i8, day: i8) -> Date {
        jiff::civil::date(year, month, day)
    }

    #[test]
    fn a_month_is_named_in_five_languages() {
        for text in [
            "14 March 2026 10:20",
            "Sat, Mar 14, 2026 10:20 AM",
            "14-Mar-26 10:20:00",
            "14 de marzo de 2026 10:20",
            "14 mars 2026 à 10h20",
            "14. März 2026, 10:20 Uhr",
            "sam. 14 mars 2026 10:20",
            "20260314 10:20",
            "14.03.2026 10.20",
            "14.03.2026 10.20 Uhr",
            "14 Mar 2026 10:20a",
            "14 de março de 2026 10:20",
            "2026 Mar 14 10:20",
        ] {
            let written = read_written(text).unwrap_or_else(|| panic!("{text}"));
            let date = match written.date {
                Some(WrittenDate::Open(open)) => Some(WrittenDate::Known(open.readings()[0].1)),
                known => known,
            };
            assert_eq!(date, Some(WrittenDate::Known(day(2026, 3, 14))), "{text}");
            assert_eq!(written.clock_us, Some(CLOCK), "{text}");
        }
    }

    #[test]
    fn noon_and_midnight_of_the_twelve_hour_clock() {
        let clock = |text: &str| read_written(text).and_then(|written| written.clock_us);
        assert_eq!(clock("12:00 AM"), Some(0));
        assert_eq!(clock("12:30 pm"), Some(12 * HOUR_US + HOUR_US / 2));
        assert_eq!(clock("1:00 p.m."), Some(13 * HOUR_US));
        assert_eq!(clock("01:00PM"), Some(13 * HOUR_US));
        assert_eq!(clock("1:00 p. m."), Some(13 * HOUR_US));
        assert_eq!(clock("13:00 PM"), None);
        assert_eq!(clock("24:00"), Some(DAY_US));
        assert_eq!(clock("25:00"), None);
        assert_eq!(clock("10:60"), None);
    }

    #[test]
    fn three_numbers_keep_every_order_that_people_write() {
        let orders = |text: &str| match read_written(text).unwrap().date.unwrap() {
            WrittenDate::Known(_) => Vec::new(),
            WrittenDate::Open(open) => open.readings(),
        };
        let (april, march) = (day(2026, 4, 3), day(2026, 3, 4));
        assert_eq!(
            orders("03/04/2026"),
            [
                (DateOrder::DayMonthYear, april),
                (DateOrder::MonthDayYear, march)
            ]
        );
        assert_eq!(orders("03.04.2026"), [(DateOrder::DayMonthYear, april)]);
        assert_eq!(
            orders("14/03/26"),
            [(DateOrder::DayMonthYear, day(2026, 3, 14))]
        );
        assert_eq!(orders("26-03-14").len(), 2);
        assert_eq!(read_written("45/45/2026"), None);
    }

    #[test]
    fn offsets_are_read_where_they_stand() {
        let offset = |text: &str| read_written(text).unwrap().offset_s;
        assert_eq!(offset("14/03/2026 10:20 +01:00"), Some(3600));
        assert_eq!(offset("14/03/2026 10:20:00 UTC"), Some(0));
        assert_eq!(offset("14/03/2026 10:20 GMT-5"), Some(-18_000));
        assert_eq!(offset("14/03/2026 10:20"), None);
        assert_eq!(read_zone("UTC-05:00"), Some(-18_000));
        assert_eq!(read_zone("local"), None);
    }

    #[test]
    fn numbers_and_words_are_no_time() {
        for text in [
            "21.8",
            "",
            "end of data",
            "10",
            "2026",
            "14 Foo 2026",
            "2026-13-14",
        ] {
            assert_eq!(read_written(text), None, "{text}");
        }
    }
}
