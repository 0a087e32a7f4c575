//! SHA-256 of the inputs, for the report's provenance.

use sha2::{Digest, Sha256};

/// A file that was read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HashedFile {
    /// As the campaign file calls it.
    pub name: String,
    /// Of its bytes, lower-case hex.
    pub sha256: String,
    /// Its length.
    pub bytes: u64,
}

/// SHA-256 as 64 lower-case hex digits.
///
/// ```
/// // FIPS 180-4, the example message "abc".
/// assert!(simmerline::hash::sha256_hex(b"abc").starts_with("ba7816bf8f01cfea"));
/// ```
///
/// # Source
/// FIPS PUB 180-4, Secure Hash Standard, by the sha2 crate.
pub fn sha256_hex(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

/// Bytes as lower-case hex digits.
pub fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
