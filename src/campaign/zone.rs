//! Time zones as a campaign file names them.

use jiff::tz::{Offset, TimeZone};

/// An IANA zone by its name, or a fixed offset `±hh:mm`.
pub fn parse_zone(name: &str) -> Option<TimeZone> {
    if let Some(rest) = name.strip_prefix(['+', '-']) {
        let (hours, minutes) = rest.split_once(':')?;
        let digits = |text: &str| text.len() == 2 && text.bytes().all(|b| b.is_ascii_digit());
        let (hours, minutes): (i32, i32) = (digits(hours) && digits(minutes))
            .then(|| Some((hours.parse().ok()?, minutes.parse().ok()?)))??;
        if hours > 14 || minutes > 59 {
            return None;
        }
        let seconds = (hours * 60 + minutes) * 60;
        let signed = if name.starts_with('-') {
            -seconds
        } else {
            seconds
        };
        return Some(TimeZone::fixed(Offset::from_seconds(signed).ok()?));
    }
    TimeZone::get(name).ok()
}
