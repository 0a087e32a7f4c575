//! The time of day in a written time, with AM, PM and the offset from UTC behind it.

use super::calendar::CALENDAR;
use super::tokens::{Token, tokens};
use super::written::{DAY_US, SECOND_US, WrittenClock};
use crate::logs::fold::fold;

/// A clock time with points behind a date, `24.02.2026 11.30`, or before "Uhr", with
/// colons: without a date it could be a number.
pub fn with_colons(text: &str) -> std::borrow::Cow<'_, str> {
    let trimmed = text.trim();
    let (body, is_hour) = match trimmed.strip_suffix("uhr") {
        Some(body) => (body.trim_end(), true),
        None => (trimmed, false),
    };
    let (before, clock) = body.rsplit_once(' ').unwrap_or(("", body));
    let parts: Vec<&str> = clock.split('.').collect();
    let is_digits =
        |part: &&str| (1..=2).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
    let is_clock = matches!(parts.len(), 2 | 3) && parts.iter().all(is_digits);
    let has_date = before.bytes().filter(u8::is_ascii_digit).count() >= 3;
    if is_clock && (is_hour || has_date) {
        format!("{before} {}", parts.join(":")).into()
    } else {
        text.into()
    }
}

/// Takes the clock time with what belongs to it out of the tokens; `None` inside if
/// there is none, and outside if it is no time of day.
#[allow(clippy::option_option)]
pub fn take_clock(tokens: &mut Vec<Token<'_>>) -> Option<Option<WrittenClock>> {
    let is_clock = |at: usize| {
        matches!(
            (tokens.get(at), tokens.get(at + 1)),
            (
                Some(Token::Number(_)),
                Some(Token::Mark(':') | Token::Word("h"))
            )
        )
    };
    let Some(start) = (0..tokens.len()).find(|&at| is_clock(at)) else {
        return Some(None);
    };
    let number = |at: usize| match tokens.get(at) {
        Some(Token::Number(text)) => text.parse::<i64>().ok(),
        _ => None,
    };
    let is_separator = |at: usize| {
        matches!(
            tokens.get(at),
            Some(Token::Mark(':') | Token::Word("h" | "m" | "min" | "mn"))
        )
    };
    let mut end = start + 2;
    let mut parts = [number(start)?, 0, 0];
    let mut written = 1;
    for part in &mut parts[1..] {
        let Some(value) = number(end) else { break };
        *part = value;
        written += 1;
        end += 1;
        if is_separator(end) {
            end += 1;
        }
    }
    if matches!(tokens.get(end), Some(Token::Word("s"))) {
        end += 1;
    }
    let mut fraction_us = 0;
    if let (Some(Token::Mark('.' | ',')), Some(Token::Number(digits))) =
        (tokens.get(end), tokens.get(end + 1))
    {
        let micro: String = digits.chars().chain("000000".chars()).take(6).collect();
        fraction_us = micro.parse().ok()?;
        end += 2;
    }
    let half = take_half(tokens, &mut end);
    let offset_s = take_offset(tokens, &mut end);
    let [hour, minute, second] = parts;
    let hour = match half {
        None => hour,
        Some(_) if !(1..=12).contains(&hour) => return None,
        Some(Half::Am) => hour % 12,
        Some(Half::Pm) => hour % 12 + 12,
    };
    let clock_us = clock_us(hour, minute, second, fraction_us)?;
    tokens.drain(start..end);
    Some(Some(WrittenClock {
        clock_us,
        offset_s,
        is_short: written < 3,
    }))
}

/// A time of day, µs since midnight; `None` if there is no such time.
pub fn clock_us(hour: i64, minute: i64, second: i64, fraction_us: i64) -> Option<i64> {
    if hour > 24 || minute > 59 || second > 59 {
        return None;
    }
    let seconds = hour * 3600 + minute * 60 + second;
    let clock_us = seconds * SECOND_US + fraction_us;
    (clock_us <= DAY_US).then_some(clock_us)
}

#[derive(Clone, Copy)]
enum Half {
    Am,
    Pm,
}

/// AM or PM after a clock time, also as `p. m.`.
fn take_half(tokens: &[Token<'_>], end: &mut usize) -> Option<Half> {
    let mut letters = String::new();
    for (index, token) in tokens.iter().enumerate().skip(*end) {
        match token {
            Token::Space => continue,
            Token::Mark('.') if !letters.is_empty() => {}
            Token::Word(word) if letters.len() + word.len() <= 2 => letters += word,
            _ => break,
        }
        let half = match letters.as_str() {
            // "12:00p": a letter right behind the time, and nothing after it.
            "a" if index == *end && index + 1 == tokens.len() => Half::Am,
            "p" if index == *end && index + 1 == tokens.len() => Half::Pm,
            _ if CALENDAR.am.contains(&letters) => Half::Am,
            _ if CALENDAR.pm.contains(&letters) => Half::Pm,
            _ => continue,
        };
        *end = index + 1;
        if matches!(tokens.get(*end), Some(Token::Mark('.'))) {
            *end += 1;
        }
        return Some(half);
    }
    None
}

/// `Z`, `UTC`, `+01:00`, `-0500` or `+1` after a clock time, s.
fn take_offset(tokens: &[Token<'_>], end: &mut usize) -> Option<i32> {
    let mut at = *end;
    while tokens.get(at) == Some(&Token::Space) {
        at += 1;
    }
    let is_named = matches!(tokens.get(at), Some(Token::Word("z" | "utc" | "gmt")));
    at += usize::from(is_named);
    let offset = signed_offset(&tokens[at.min(tokens.len())..]);
    match offset {
        Some((offset_s, used)) => {
            *end = at + used;
            Some(offset_s)
        }
        None if is_named => {
            *end = at;
            Some(0)
        }
        None => None,
    }
}

fn signed_offset(tokens: &[Token<'_>]) -> Option<(i32, usize)> {
    let (sign, digits) = match tokens {
        [Token::Mark('+'), Token::Number(digits), ..] => (1, digits),
        [Token::Mark('-'), Token::Number(digits), ..] => (-1, digits),
        _ => return None,
    };
    let number = |text: &str| text.parse::<i32>().ok();
    let (hours, minutes, used) = match (digits.len(), tokens.get(2), tokens.get(3)) {
        (1 | 2, Some(Token::Mark(':')), Some(Token::Number(minutes))) => {
            (number(digits)?, number(minutes)?, 4)
        }
        (1 | 2, ..) => (number(digits)?, 0, 2),
        (4, ..) => (number(&digits[..2])?, number(&digits[2..])?, 2),
        _ => return None,
    };
    (hours <= 14 && minutes < 60).then(|| (sign * (hours * 60 + minutes) * 60, used))
}

/// An offset from UTC as it stands in a header: `UTC`, `GMT-5`, `+01:00`.
pub fn read_zone(text: &str) -> Option<i32> {
    let folded = fold(text);
    let tokens = tokens(&folded);
    let mut end = 0;
    let offset_s = take_offset(&tokens, &mut end)?;
    (end == tokens.len()).then_some(offset_s)
}

/// The offset from UTC of a header that says "UTC" or "GMT" somewhere.
pub fn find_zone(text: &str) -> Option<i32> {
    let folded = fold(text);
    let tokens = tokens(&folded);
    let mut named =
        (0..tokens.len()).filter(|&at| matches!(tokens[at], Token::Word("utc" | "gmt")));
    let mut at = named.next()?;
    take_offset(&tokens, &mut at)
}
