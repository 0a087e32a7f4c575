//! How much of a log that is being written is whole lines.

use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};
use std::path::Path;

use crate::logs::source::{Container, Source};

/// Bytes that are looked at in one go, from the end backwards.
const BLOCK: u64 = 8 << 10;

/// How far a log can be read while something may still be writing to it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WholeLines {
    /// Bytes from the start up to the end of its last whole line.
    pub end: u64,
    /// Something stands behind it: a line that is not ended.
    pub has_rest: bool,
}

/// How a log's lines end, as far as looking for the last end goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum LineEnd {
    Byte(u8),
    /// UTF-16, which has two bytes of each sign: the end of a line in its order of bytes.
    Pair([u8; 2]),
}

impl LineEnd {
    /// By the first bytes.
    fn of(head: &[u8]) -> LineEnd {
        if head.starts_with(&[0xff, 0xfe]) {
            LineEnd::Pair([b'\n', 0])
        } else if head.starts_with(&[0xfe, 0xff]) {
            LineEnd::Pair([0, b'\n'])
        } else if !head.contains(&b'\n') && head.contains(&b'\r') {
            LineEnd::Byte(b'\r')
        } else {
            LineEnd::Byte(b'\n')
        }
    }

    /// Where the last line of a block ends that begins at an even place of the file.
    fn last_in(self, block: &[u8]) -> Option<usize> {
        match self {
            LineEnd::Byte(end) => Some(block.iter().rposition(|&byte| byte == end)? + 1),
            LineEnd::Pair(end) => {
                let (pairs, _) = block.as_chunks::<2>();
                Some((pairs.iter().rposition(|pair| *pair == end)? + 1) * 2)
            }
        }
    }
}

/// How far a log can be read; `None` for one that is no plain text, which is read as it is, and
/// for a folder, a device or a pipe, which is not opened.
///
/// # Errors
/// That of the file system.
pub fn whole_lines(path: &Path) -> io::Result<Option<WholeLines>> {
    if !path.metadata()?.is_file() || Source::File(path).container()? != Container::Plain {
        return Ok(None);
    }
    let mut file = File::open(path)?;
    let length = file.metadata()?.len();
    let mut head = Vec::new();
    file.by_ref().take(BLOCK).read_to_end(&mut head)?;
    let line_end = LineEnd::of(&head);
    let mut to = length;
    while to > 0 {
        let from = (to - 1) / BLOCK * BLOCK;
        file.seek(SeekFrom::Start(from))?;
        let mut block = Vec::new();
        file.by_ref().take(to - from).read_to_end(&mut block)?;
        if let Some(at) = line_end.last_in(&block) {
            let end = from + at as u64;
            return Ok(Some(WholeLines {
                end,
                has_rest: end < length,
            }));
        }
        to = from;
    }
    Ok(Some(WholeLines {
        end: 0,
        has_rest: length > 0,
    }))
}

#[cfg(test)]
mod tests {
    use std::io::Write;

    use super::*;

    fn of(bytes: &[u8]) -> WholeLines {
        let mut file = tempfile::NamedTempFile::new().unwrap();
        file.write_all(bytes).unwrap();
        whole_lines(file.path()).unwrap().unwrap()
    }

    #[test]
    fn a_line_that_is_not_ended_is_left_out() {
        let cases: [(&[u8], u64, bool); 7] = [
            (b"", 0, false),
            (b"time,wa", 0, true),
            (b"time\n10:00\n", 11, false),
            (b"time\n10:00\n10:0", 11, true),
            (b"time\r\n10:00\r", 6, true),
            (b"time\r10:00\r10:0", 11, true),
            (b"\xff\xfea\0\n\0b\0", 6, true),
        ];
        for (bytes, end, has_rest) in cases {
            assert_eq!(of(bytes), WholeLines { end, has_rest }, "{bytes:?}");
        }
        // A byte of a line feed that belongs to another sign, U+0A00 in UTF-16 LE.
        assert_eq!(of(b"\xff\xfe\n\0\0\x0ab\0").end, 4);
    }

    #[test]
    fn the_last_end_is_found_behind_a_long_line() {
        let mut text = b"time\n".to_vec();
        text.extend(vec![b'x'; 3 * BLOCK as usize]);
        assert_eq!(of(&text).end, 5);
        text.push(b'\n');
        assert_eq!(of(&text).end, text.len() as u64);
    }

    #[test]
    fn a_spreadsheet_is_read_as_it_is() {
        let mut file = tempfile::NamedTempFile::new().unwrap();
        file.write_all(b"PK\x03\x04\n").unwrap();
        assert_eq!(whole_lines(file.path()).unwrap(), None);
    }
}
