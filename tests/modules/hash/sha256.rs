//! SHA-256: FIPS PUB 180-4, Secure Hash Standard (2015).

use simmerline::hash::sha256_hex;

// The two short messages are those of NIST's published examples for SHA-256
// ("Examples with Intermediate Values", which FIPS 180-4 points to; appendix B.1 and
// B.2 of the older FIPS 180-2). Messages and digests are written here from memory.
// No tolerance: a digest is right or wrong.

#[test]
fn one_block_message_gives_the_published_digest() {
    assert_eq!(
        sha256_hex(b"abc"),
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    );
}

#[test]
fn two_block_message_gives_the_published_digest() {
    assert_eq!(
        sha256_hex(b"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    );
}
