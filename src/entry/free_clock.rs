//! Times of the day as people write them.

use jiff::civil::Time;

/// A time with what was said of morning and afternoon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FreeClock {
    /// Nothing but digits.
    pub is_bare: bool,
    hour: i8,
    minute: i8,
    half: Option<Half>,
}

/// Which half of the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Half {
    Morning,
    Afternoon,
}

/// Longest that a line may follow the one before, where only that makes its time one of the
/// afternoon, minutes.
const LONGEST_GAP_MIN: i32 = 180;
/// An hour from 1 to this, of the first line of a run in the sun, is one of the afternoon: before
/// five in the morning nobody tests. Common practice, no published source.
const LATEST_AFTERNOON_HOUR: i8 = 4;

impl FreeClock {
    /// The time at which a text begins, and what stands behind it: `10:20`, `10h30`, `1020`,
    /// `10.20`, `10:20 am`, `1 pm`.
    pub fn at_start(text: &str) -> Option<(FreeClock, &str)> {
        let text = text.trim_start_matches(|c: char| c.is_whitespace() || "-*•[(@".contains(c));
        let text = text.strip_prefix("at ").unwrap_or(text);
        let text = text
            .strip_prefix("12 noon")
            .map_or(text, |_| &text["12 ".len()..]);
        if let Some(rest) = text.strip_prefix("noon").filter(|rest| ends_word(rest)) {
            let clock = FreeClock {
                is_bare: false,
                hour: 12,
                minute: 0,
                half: Some(Half::Afternoon),
            };
            return Some((clock, behind_time(rest)));
        }
        let digits = |text: &str| text.bytes().take_while(u8::is_ascii_digit).count();
        let first = digits(text);
        let (hour, rest) = text.split_at(first);
        let (hour, minute, rest) = match first {
            1 | 2 => {
                let mark = rest.chars().next().unwrap_or(' ');
                let behind = rest.get(mark.len_utf8()..).unwrap_or("");
                let minutes = digits(behind);
                match mark {
                    ':' | 'h' | 'H' if minutes == 2 => (hour, &behind[..2], &behind[2..]),
                    // A temperature has one decimal; and a reading follows a time.
                    '.' if minutes == 2 && behind[2..].contains(|c: char| c.is_ascii_digit()) => {
                        (hour, &behind[..2], &behind[2..])
                    }
                    'h' | 'H' if minutes == 0 && !behind.starts_with(char::is_alphabetic) => {
                        (hour, "00", behind)
                    }
                    _ => (hour, "", rest),
                }
            }
            3 | 4 if rest.contains(|c: char| c.is_ascii_digit()) => {
                let (hour, minute) = hour.split_at(first - 2);
                (hour, minute, rest)
            }
            _ => return None,
        };
        // Seconds are left out.
        let rest = match rest.strip_prefix(':') {
            Some(seconds) if digits(seconds) == 2 => &seconds[2..],
            _ => rest,
        };
        let (half, rest) = half_of_day(rest);
        let minute = match (minute, half) {
            ("", None) => return None,
            ("", Some(_)) => 0,
            (minute, _) => minute.parse().ok()?,
        };
        // A zero before the hour is of a clock of 24 hours.
        let half = half.or(hour.starts_with('0').then_some(Half::Morning));
        let hour: i8 = hour.parse().ok()?;
        let is_clock = Time::new(hour, minute, 0, 0).is_ok() && (half.is_none() || hour <= 12);
        let clock = FreeClock {
            is_bare: first > 2,
            hour,
            minute,
            half,
        };
        (is_clock && ends_word(rest)).then(|| (clock, behind_time(rest)))
    }

    /// The time of the day, after that of the line before.
    ///
    /// `in_sun` tells that a first line of one to four o'clock cannot be of the night.
    pub fn time_after(self, last: Option<Time>, in_sun: bool) -> Option<Time> {
        let of_half = |half: Half| match (half, self.hour) {
            (Half::Morning, 12) => 0,
            (Half::Morning, hour) | (Half::Afternoon, hour @ 12..) => hour,
            (Half::Afternoon, hour) => hour + 12,
        };
        let at = |hour: i8| Time::new(hour, self.minute, 0, 0).ok();
        if let Some(half) = self.half {
            return at(of_half(half));
        }
        let morning = at(self.hour)?;
        if !(1..12).contains(&self.hour) {
            return Some(morning);
        }
        let afternoon = at(self.hour + 12)?;
        let minutes = |time: Time| i32::from(time.hour()) * 60 + i32::from(time.minute());
        let is_afternoon = match last {
            None => in_sun && self.hour <= LATEST_AFTERNOON_HOUR,
            Some(last) => {
                let gap_min = minutes(afternoon) - minutes(last);
                morning <= last && (1..=LONGEST_GAP_MIN).contains(&gap_min)
            }
        };
        Some(if is_afternoon { afternoon } else { morning })
    }
}

/// Whether a word ends where a text begins.
fn ends_word(rest: &str) -> bool {
    !rest.starts_with(|c: char| c.is_alphanumeric())
}

/// What stands behind a time, without the marks that part it from what follows. A dash may stand
/// for what was not read, unless it touches the time.
fn behind_time(rest: &str) -> &str {
    let rest = rest.strip_prefix(['-', '–', '—']).unwrap_or(rest);
    rest.trim_start_matches(|c: char| c.is_whitespace() || ",;:=>)]".contains(c))
}

/// Morning or afternoon, if a text begins with it, and what stands behind.
fn half_of_day(text: &str) -> (Option<Half>, &str) {
    let trimmed = text.trim_start();
    let lower = trimmed.to_ascii_lowercase();
    for (word, half) in [
        ("a.m.", Half::Morning),
        ("p.m.", Half::Afternoon),
        ("am", Half::Morning),
        ("pm", Half::Afternoon),
        ("a", Half::Morning),
        ("p", Half::Afternoon),
    ] {
        let Some(rest) = lower.strip_prefix(word) else {
            continue;
        };
        if !rest.starts_with(|c: char| c.is_alphanumeric()) && (word.len() > 1 || text == trimmed) {
            return (Some(half), &trimmed[word.len()..]);
        }
    }
    (None, text)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn time(text: &str, last: Option<&str>) -> Option<(String, String)> {
        let last = last.map(|last| last.parse::<Time>().unwrap());
        let (clock, rest) = FreeClock::at_start(text)?;
        let time = clock.time_after(last, true)?;
        Some((time.strftime("%H:%M").to_string(), rest.to_owned()))
    }

    #[test]
    fn times_are_read_as_people_write_them() {
        for (text, last, expected, rest) in [
            ("10:20 165F", None, "10:20", "165F"),
            ("10:20: 165F", None, "10:20", "165F"),
            ("10:20:30 165", None, "10:20", "165"),
            ("10h30 - 165", None, "10:30", "- 165"),
            ("10:20-165F", None, "10:20", "165F"),
            ("12 noon 165", None, "12:00", "165"),
            ("noon: 165", None, "12:00", "165"),
            ("6:45 20 24", None, "06:45", "20 24"),
            ("10h, 165", None, "10:00", "165"),
            ("10.20 165", None, "10:20", "165"),
            ("1020 165", None, "10:20", "165"),
            ("at 10:20 moved it", None, "10:20", "moved it"),
            ("- 10:20am 165", None, "10:20", "165"),
            ("1:05 pm, 190", None, "13:05", "190"),
            ("1:05p 190", None, "13:05", "190"),
            ("1 p.m. 190", None, "13:00", "190"),
            ("12:10 am 60", None, "00:10", "60"),
            ("1:00 190", Some("12:50:00"), "13:00", "190"),
            ("2:10 190", None, "14:10", "190"),
            ("7:10 190", None, "07:10", "190"),
            ("06:10 190", None, "06:10", "190"),
            ("13:10 190", Some("12:50:00"), "13:10", "190"),
            // A slip, and no time of the night.
            ("10:04 190", Some("10:30:00"), "10:04", "190"),
        ] {
            let expected = Some((expected.to_owned(), rest.to_owned()));
            assert_eq!(time(text, last), expected, "{text}");
        }
    }

    #[test]
    fn what_is_no_time_is_none() {
        for text in [
            "165F", "165", "31.5 24", "moved it", "25:10 30", "10:5 30", "14 pm 3", "12 feet",
        ] {
            assert_eq!(time(text, None), None, "{text}");
        }
    }
}
