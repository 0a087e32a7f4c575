//! The rows that came to a log since it was read, without reading the rest again.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::known::Known;
use super::whole_lines::whole_lines;
use crate::logs::account::Account;
use crate::logs::{Part, Readings, Series, read_log_of};

/// Bytes of a log's head that are read again with the new rows: the header and enough rows to
/// tell how times and numbers are written. Of a log no longer than that, nothing is spared.
const HEAD: u64 = 16 << 10;
/// Bytes before the end that was read, from which reading goes on: a weather log may have been
/// ahead of the cooker's.
const OVERLAP: u64 = 8 << 10;

/// The bytes of a log on which new rows are laid.
#[derive(Debug, Clone)]
struct Kept {
    head: Vec<u8>,
    /// Where the overlap begins, and its bytes, up to where the log was read.
    overlap_at: u64,
    overlap: Vec<u8>,
    /// Whole lines up to here were read.
    end: u64,
    /// Whole lines up to here were seen at the last look.
    seen: u64,
    /// A line that is not ended stood behind them then.
    has_rest: bool,
}

/// What remains of the logs of the followed run once they are read.
#[derive(Debug, Clone, Default)]
pub struct Tail {
    kept: BTreeMap<PathBuf, Kept>,
}

/// What a look at the growing logs brings.
#[derive(Debug)]
pub enum Grown {
    /// No whole line more.
    Nothing,
    /// All readings, with the new ones.
    Rows(Readings),
    /// Lines came that hold no later reading.
    NoneLater,
    /// What was read before is no longer what the file begins with.
    Anew,
    /// The new rows alone do not tell how they are to be read: all has to be read.
    Unclear,
}

impl Tail {
    /// Keeps what new rows are laid on. A log that is compressed, a spreadsheet or a long one in
    /// UTF-16 has none, and is read as a whole.
    ///
    /// # Errors
    /// That of the file system.
    pub fn of(known: &Known) -> io::Result<Tail> {
        let mut kept = BTreeMap::new();
        for path in known.followed_files() {
            let of_path = known
                .ends
                .get(path)
                .map(|&end| keep(path, end))
                .transpose()?;
            kept.extend(of_path.flatten().map(|one| (path.to_owned(), one)));
        }
        Ok(Tail { kept })
    }

    /// Looks at the logs of the run that is followed, whose latest reading so far is `last_us`.
    ///
    /// # Errors
    /// That of the file system.
    pub fn look(&mut self, known: &Known, last_us: i64) -> io::Result<Grown> {
        let Some(followed) = &known.followed else {
            return Ok(Grown::Unclear);
        };
        let mut parts = BTreeMap::new();
        let mut has_new = false;
        for path in known.followed_files() {
            let Some(kept) = self.kept.get_mut(path) else {
                return Ok(Grown::Unclear);
            };
            match kept.with_new(path)? {
                Some((bytes, grew)) => {
                    has_new |= grew;
                    parts.insert(path.to_owned(), bytes);
                }
                None => return Ok(Grown::Anew),
            }
        }
        if !has_new {
            return Ok(Grown::Nothing);
        }
        let part = |path: &Path| {
            parts
                .get(path)
                .map_or(Part::Whole, |b| Part::Bytes(b.clone()))
        };
        let Ok(new) = read_log_of(&known.campaign, &followed.plan, &part) else {
            return Ok(Grown::Unclear);
        };
        let is_read_alike = new.accounts.len() == followed.log.accounts.len()
            && new
                .accounts
                .iter()
                .zip(&followed.log.accounts)
                .all(|(new, old)| alike(new, old));
        let all = &followed.log.readings;
        let is_later = new
            .readings
            .time_us
            .last()
            .is_some_and(|&newest| newest > last_us);
        if is_read_alike && !is_later {
            return Ok(Grown::NoneLater);
        }
        Ok(match joined(all, &new.readings) {
            Some(readings) if is_read_alike => Grown::Rows(readings),
            _ => Grown::Unclear,
        })
    }
}

impl Tail {
    /// Logs of the run that is followed, and whether a line that is not ended stood behind their
    /// whole ones at the last look.
    pub fn rests(&self) -> impl Iterator<Item = (&Path, bool)> {
        let kept = self.kept.iter();
        kept.map(|(path, kept)| (path.as_path(), kept.has_rest))
    }
}

/// Whether two parts of a log were understood alike.
fn alike(new: &Account, old: &Account) -> bool {
    (
        &new.decimal_mark,
        new.header_line,
        &new.time_header,
        &new.time_format,
        &new.time_zone,
        new.is_elapsed,
        &new.columns,
    ) == (
        &old.decimal_mark,
        old.header_line,
        &old.time_header,
        &old.time_format,
        &old.time_zone,
        old.is_elapsed,
        &old.columns,
    )
}

fn read_span(path: &Path, from: u64, to: u64) -> io::Result<Vec<u8>> {
    let mut file = File::open(path)?;
    file.seek(SeekFrom::Start(from))?;
    let mut bytes = Vec::new();
    file.take(to.saturating_sub(from)).read_to_end(&mut bytes)?;
    Ok(bytes)
}

/// Up to the last end of a line in some bytes.
fn to_line_end(mut bytes: Vec<u8>) -> Vec<u8> {
    let end = bytes
        .iter()
        .rposition(|&byte| byte == b'\n')
        .map_or(0, |at| at + 1);
    bytes.truncate(end);
    bytes
}

fn keep(path: &Path, end: u64) -> io::Result<Option<Kept>> {
    if end <= HEAD + OVERLAP {
        return Ok(Some(Kept {
            head: Vec::new(),
            overlap_at: 0,
            overlap: read_span(path, 0, end)?,
            end,
            seen: end,
            has_rest: false,
        }));
    }
    let head = to_line_end(read_span(path, 0, HEAD)?);
    if head.starts_with(&[0xff, 0xfe]) || head.starts_with(&[0xfe, 0xff]) {
        return Ok(None);
    }
    let mut overlap = read_span(path, end - OVERLAP, end)?;
    let first = overlap
        .iter()
        .position(|&byte| byte == b'\n')
        .map_or(0, |at| at + 1);
    overlap.drain(..first);
    Ok(Some(Kept {
        head,
        overlap_at: end - overlap.len() as u64,
        overlap,
        end,
        seen: end,
        has_rest: false,
    }))
}

impl Kept {
    /// Head, overlap and what came since, up to the last whole line, and whether any did since the
    /// last look;
    /// `None` where the file does not go on from what was read.
    fn with_new(&mut self, path: &Path) -> io::Result<Option<(Vec<u8>, bool)>> {
        let Some(lines) = whole_lines(path)? else {
            return Ok(None);
        };
        let head = read_span(path, 0, self.head.len() as u64)?;
        let rest = read_span(path, self.overlap_at, lines.end)?;
        let goes_on = head == self.head && rest.starts_with(&self.overlap) && lines.end >= self.end;
        let grew = lines.end > self.seen;
        self.seen = lines.end;
        self.has_rest = lines.has_rest;
        Ok(goes_on.then(|| ([head, rest].concat(), grew)))
    }
}

/// Readings with those of a later part of the log behind them; `None` where the part holds
/// readings between those that are there, or quantities that they do not have.
fn joined(all: &Readings, part: &Readings) -> Option<Readings> {
    let last_us = *all.time_us.last()?;
    let known = part.time_us.iter().take_while(|time| **time <= last_us);
    let is_known = |time: &i64| all.time_us.binary_search(time).is_ok();
    if !known.into_iter().all(is_known) {
        return None;
    }
    let later = |old: &[i64], new: &[i64]| {
        let from = old.last().copied().unwrap_or(i64::MIN);
        new.partition_point(|&time| time <= from)
    };
    let series = |old: &Series, new: &Series| {
        let from = later(&old.time_us, &new.time_us);
        let time_us = [&old.time_us[..], &new.time_us[from..]].concat();
        Series::new(time_us, [&old.value[..], &new.value[from..]].concat())
    };
    let optional = |old: &Option<Series>, new: &Option<Series>| match (old, new) {
        (Some(old), Some(new)) => Some(Some(series(old, new))),
        (None, Some(_)) => None,
        (old, None) => Some(old.clone()),
    };
    let from = later(&all.time_us, &part.time_us);
    // The first row of a part may be one that is known.
    let aimed_from = part.aimed_us.partition_point(|time_us| *time_us <= last_us);
    Some(Readings {
        aimed_us: [&all.aimed_us[..], &part.aimed_us[aimed_from..]].concat(),
        time_us: Arc::new([&all.time_us[..], &part.time_us[from..]].concat()),
        water_c: series(&all.water_c, &part.water_c),
        vessel_c: optional(&all.vessel_c, &part.vessel_c)?,
        ambient_c: optional(&all.ambient_c, &part.ambient_c)?,
        irradiance_w_m2: optional(&all.irradiance_w_m2, &part.irradiance_w_m2)?,
        wind_m_s: optional(&all.wind_m_s, &part.wind_m_s)?,
    })
}
