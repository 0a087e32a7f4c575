//! What is to be written.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use serde::{Deserialize, Serialize};

use sha2::{Digest, Sha256};

use crate::hash::{hex, sha256_hex};

/// One output: its file name and content.
pub struct Output {
    pub name: String,
    pub bytes: Vec<u8>,
}

/// What can be said of an output without its content.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct FileFacts {
    pub name: String,
    /// Length in bytes.
    pub length: usize,
    /// SHA-256, lower-case hex.
    pub sha256: String,
}

impl Output {
    /// Its name, length and hash.
    pub fn facts(&self) -> FileFacts {
        FileFacts {
            name: self.name.clone(),
            length: self.bytes.len(),
            sha256: sha256_hex(&self.bytes),
        }
    }
}

/// SHA-256 of a file of any length, lower-case hex.
///
/// # Errors
/// If it cannot be read.
pub fn sha256_of(path: &Path) -> io::Result<String> {
    let mut file = File::open(path)?;
    let (mut hasher, mut block) = (Sha256::new(), vec![0; 64 << 10]);
    loop {
        match file.read(&mut block)? {
            0 => return Ok(hex(&hasher.finalize())),
            read => hasher.update(&block[..read]),
        }
    }
}
