//! A log's bytes, from a file or from memory, unpacked on the way.

use std::fs::File;
use std::io::{self, Cursor, Read};
use std::path::Path;

use flate2::read::MultiGzDecoder;
use sha2::{Digest, Sha256};

use crate::bounds::{LOG_BYTES, LOG_EXPANSION};
use crate::error::{Problem, why};
use crate::hash::{HashedFile, hex};

/// A compressed log may unpack to so many bytes in any case.
const ALWAYS_UNPACKED: u64 = 16 << 20;

/// Bytes that are looked at to tell what a file is.
pub const HEAD: usize = 64 << 10;

/// Where a log's bytes are.
#[derive(Debug, Clone, Copy)]
pub enum Source<'s> {
    File(&'s Path),
    /// So many bytes of a file from its start: what is appended while it is read is not of it,
    /// so that rows and hash are of the same bytes.
    Start(&'s Path, u64),
    Bytes(&'s [u8]),
}

/// What the bytes are packed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Container {
    Plain,
    Gzip,
    /// A zip archive: .xlsx or .ods.
    Spreadsheet,
    /// The spreadsheet files of before 2007.
    OldSpreadsheet,
}

impl<'s> Source<'s> {
    /// The raw bytes, from the start.
    ///
    /// # Errors
    /// That of the file system.
    pub fn open(self) -> io::Result<Box<dyn Read + 's>> {
        Ok(match self {
            Source::File(path) => Box::new(File::open(path)?),
            Source::Start(path, length) => Box::new(File::open(path)?.take(length)),
            Source::Bytes(bytes) => Box::new(Cursor::new(bytes)),
        })
    }

    /// Number of raw bytes.
    ///
    /// # Errors
    /// That of the file system.
    pub fn size(self) -> io::Result<u64> {
        Ok(match self {
            Source::File(path) => path.metadata()?.len(),
            Source::Start(_, length) => length,
            Source::Bytes(bytes) => bytes.len() as u64,
        })
    }

    /// What the bytes are packed in, by their first ones.
    ///
    /// # Errors
    /// That of the file system.
    pub fn container(self) -> io::Result<Container> {
        let mut first = Vec::new();
        self.open()?.take(8).read_to_end(&mut first)?;
        Ok(if first.starts_with(b"\x1f\x8b") {
            Container::Gzip
        } else if first.starts_with(b"PK\x03\x04") {
            Container::Spreadsheet
        } else if first.starts_with(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1") {
            Container::OldSpreadsheet
        } else {
            Container::Plain
        })
    }

    /// The bytes of text, unpacked where they are compressed, but never more of them
    /// than a log of that size can hold.
    ///
    /// # Errors
    /// That of the file system.
    pub fn open_text(self) -> io::Result<Box<dyn Read + 's>> {
        let raw = self.open()?;
        Ok(match self.container()? {
            Container::Gzip => Box::new(Bounded {
                inner: MultiGzDecoder::new(raw),
                left: LOG_BYTES.most.min(most_unpacked(self.size()?)),
                what: TOO_MUCH,
            }),
            // A file that something writes to has no end of its own.
            _ => Box::new(Bounded {
                inner: raw,
                left: LOG_BYTES.most,
                what: TOO_LONG,
            }),
        })
    }

    /// SHA-256 and length of the raw bytes, as those of a file of a name.
    ///
    /// # Errors
    /// That of the file system.
    pub fn hashed(self, name: &str) -> io::Result<HashedFile> {
        let mut hasher = Sha256::new();
        let mut source = self.open()?;
        let (mut bytes, mut block) = (0, vec![0; 1 << 20]);
        loop {
            let read = source.read(&mut block)?;
            if read == 0 {
                return Ok(HashedFile {
                    name: name.to_owned(),
                    sha256: hex(&hasher.finalize()),
                    bytes,
                });
            }
            hasher.update(&block[..read]);
            bytes += read as u64;
        }
    }
}

/// Most bytes that a compressed file of so many may unpack to.
pub fn most_unpacked(size: u64) -> u64 {
    ALWAYS_UNPACKED.max(size.saturating_mul(LOG_EXPANSION.most))
}

/// Fails rather than hand out more bytes than it was allowed.
struct Bounded<R> {
    inner: R,
    left: u64,
    /// What it fails with.
    what: &'static str,
}

impl<R: Read> Read for Bounded<R> {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        let read = self.inner.read(buffer)?;
        match self.left.checked_sub(read as u64) {
            Some(left) => self.left = left,
            None => return Err(io::Error::other(self.what)),
        }
        Ok(read)
    }
}

/// What a log that unpacks to too much fails with.
const TOO_MUCH: &str = "it unpacks to far more than a log of its size can hold";

/// What a log of more than is read of any fails with.
const TOO_LONG: &str = "it is longer than 4 GiB";

/// A failure to read, as a problem.
pub fn unreadable(path: &Path, error: &io::Error) -> Problem {
    let hint = match error.kind() {
        io::ErrorKind::UnexpectedEof | io::ErrorKind::InvalidInput | io::ErrorKind::InvalidData => {
            "the compressed file is damaged or cut off: copy it again, or unpack it first"
        }
        io::ErrorKind::Other if error.to_string() == TOO_LONG => {
            "make several logs of it, such as one a month, with a [[run]] each"
        }
        io::ErrorKind::Other => "unpack the file yourself, and look at what is in it",
        _ => "check that it is a file and that you may read it",
    };
    Problem::at(path, format!("cannot be read: {}", why(error))).hint(hint)
}

#[cfg(test)]
mod tests {
    use std::io::Write;

    use flate2::Compression;
    use flate2::write::GzEncoder;

    use super::*;

    fn gzip(bytes: &[u8]) -> Vec<u8> {
        let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
        encoder.write_all(bytes).unwrap();
        encoder.finish().unwrap()
    }

    #[test]
    fn a_compressed_log_is_unpacked_and_hashed_as_it_lies() {
        let packed = gzip(b"time,water_c\n");
        let source = Source::Bytes(&packed);
        assert_eq!(source.container().unwrap(), Container::Gzip);
        let mut text = String::new();
        source
            .open_text()
            .unwrap()
            .read_to_string(&mut text)
            .unwrap();
        assert_eq!(text, "time,water_c\n");
        let hashed = source.hashed("a.csv.gz").unwrap();
        assert_eq!(hashed.sha256, crate::hash::sha256_hex(&packed));
        assert_eq!(hashed.bytes, packed.len() as u64);
    }

    #[test]
    fn a_bomb_is_stopped() {
        let packed = gzip(&vec![b'0'; 64 << 20]);
        assert!(packed.len() < 100_000);
        let unpacked = io::copy(
            &mut Source::Bytes(&packed).open_text().unwrap(),
            &mut io::sink(),
        );
        assert!(unpacked.unwrap_err().to_string().contains("unpacks"));
    }

    #[test]
    fn what_is_appended_to_a_file_is_neither_read_nor_hashed() {
        let mut file = tempfile::NamedTempFile::new().unwrap();
        file.write_all(b"time,water_c\n10:00,21\n").unwrap();
        let path = file.path().to_owned();
        let source = Source::Start(&path, Source::File(&path).size().unwrap());
        let [mut before, mut after] = [String::new(), String::new()];
        source
            .open_text()
            .unwrap()
            .read_to_string(&mut before)
            .unwrap();
        let hashed = source.hashed("a.csv").unwrap();
        file.write_all(b"10:01,22\n").unwrap();
        source
            .open_text()
            .unwrap()
            .read_to_string(&mut after)
            .unwrap();
        assert_eq!(after, before);
        assert_eq!(source.hashed("a.csv").unwrap(), hashed);
        assert_eq!(hashed.sha256, crate::hash::sha256_hex(before.as_bytes()));
        assert_eq!(hashed.bytes, before.len() as u64);
    }
}
