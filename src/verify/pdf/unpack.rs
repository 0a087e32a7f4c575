//! Streams, unpacked within bounds.

use std::io::{self, Read, Write};

use flate2::read::ZlibDecoder;
use lopdf::{Object, Stream};
use sha2::{Digest, Sha256};

use crate::error::why;
use crate::hash::hex;

/// Why a stream was not unpacked.
#[derive(Debug)]
pub enum Fault {
    TooLarge,
    Damaged,
    /// Compressed in a way that reports do not use.
    Foreign,
    Writing(io::Error),
}

impl Fault {
    /// In words.
    pub fn what(&self) -> String {
        match self {
            Fault::TooLarge => "unpacks to far more than a report can hold".to_owned(),
            Fault::Damaged => "is damaged".to_owned(),
            Fault::Foreign => "is compressed in a way that simmerline does not use".to_owned(),
            Fault::Writing(error) => format!("cannot be written: {}", why(error)),
        }
    }
}

/// What was unpacked.
pub struct Unpacked {
    /// Lower-case hex.
    pub sha256: String,
    pub bytes: u64,
}

/// Unpacks a stream, to so many bytes at most; what it says of its length is not believed.
pub fn unpack(stream: &Stream, out: &mut impl Write, most: u64) -> Result<Unpacked, Fault> {
    let content = stream.content.as_slice();
    match packing(stream) {
        Packing::None => copy(&mut &*content, out, most),
        Packing::Deflate => {
            let mut source = ZlibDecoder::new(content);
            let unpacked = copy(&mut source, out, most)?;
            // What stands behind the end some readers take for more of it; a line end is none.
            let behind = &content[content.len().min(source.total_in() as usize)..];
            let is_line_end = [&b""[..], b"\n", b"\r", b"\r\n"].contains(&behind);
            match is_line_end {
                true => Ok(unpacked),
                false => Err(Fault::Damaged),
            }
        }
        Packing::Other => Err(Fault::Foreign),
    }
}

/// Copies so many bytes at most.
fn copy(source: &mut dyn Read, out: &mut impl Write, most: u64) -> Result<Unpacked, Fault> {
    let mut hasher = Sha256::new();
    let (mut bytes, mut block) = (0, vec![0; 64 << 10]);
    loop {
        let read = source.read(&mut block).map_err(|_| Fault::Damaged)?;
        if read == 0 {
            let sha256 = hex(&hasher.finalize());
            return Ok(Unpacked { sha256, bytes });
        }
        bytes += read as u64;
        if bytes > most {
            return Err(Fault::TooLarge);
        }
        hasher.update(&block[..read]);
        out.write_all(&block[..read]).map_err(Fault::Writing)?;
    }
}

/// The bytes that a stream unpacks to, so many at most.
pub fn unpack_bytes(stream: &Stream, most: u64) -> Result<Vec<u8>, Fault> {
    let mut bytes = Vec::new();
    unpack(stream, &mut bytes, most)?;
    Ok(bytes)
}

/// How a stream is packed.
pub enum Packing {
    None,
    Deflate,
    Other,
}

/// How a stream says that it is packed.
pub fn packing(stream: &Stream) -> Packing {
    let filter = match stream.dict.get(b"Filter") {
        Ok(Object::Array(filters)) if filters.len() == 1 => filters[0].as_name(),
        Ok(Object::Array(filters)) if filters.is_empty() => return Packing::None,
        Ok(filter) => filter.as_name(),
        Err(_) => return Packing::None,
    };
    match filter {
        Ok(b"FlateDecode") if !stream.dict.has(b"DecodeParms") => Packing::Deflate,
        _ => Packing::Other,
    }
}
