//! The parts of a JPEG file: what makes the picture, and all the rest.
//!
//! # Source
//! ITU-T T.81 (1992), annex B, for markers and segments; JFIF 1.02 (ECMA TR/98) for the
//! first one.

const START: [u8; 2] = [0xff, 0xd8];
const END: [u8; 2] = [0xff, 0xd9];

/// What says that colours are those of JFIF, with square pixels and no preview.
const JFIF: &[u8] = b"\xff\xe0\x00\x10JFIF\0\x01\x01\0\0\x01\0\x01\0\0";

/// A JPEG file with nothing in it but its picture.
#[derive(Debug, PartialEq, Eq)]
pub struct Bare {
    pub bytes: Vec<u8>,
    /// How many colours a pixel has: 1 grey, 3 a colour, 4 inks.
    pub components: u8,
}

/// The picture alone: tables, frame and scans in their order, behind a first segment that is
/// always the same. What a camera or a program writes about the picture, previews, and what
/// stands behind its end are left out. The picture alone gives itself.
///
/// `None` for what is not put together as the standard says.
pub fn bare(bytes: &[u8]) -> Option<Bare> {
    let mut rest = bytes.strip_prefix(&START)?;
    let mut components = None;
    let mut bare = [&START[..], JFIF].concat();
    loop {
        // A marker may stand behind any number of filling bytes.
        let filled = rest.strip_prefix(&[0xff])?;
        let after = &filled[filled.iter().position(|&byte| byte != 0xff)?..];
        let (&marker, after) = after.split_first()?;
        if marker == END[1] {
            bare.extend(END);
            return components.map(|components| Bare {
                bytes: bare,
                components,
            });
        }
        let length = usize::from(u16::from_be_bytes(*after.first_chunk()?));
        let segment = after.get(..length).filter(|_| length >= 2)?;
        rest = &after[length..];
        let is_frame = matches!(marker, 0xc0..=0xc2);
        if is_frame && components.replace(*segment.get(7)?).is_some() {
            return None;
        }
        let is_table = matches!(marker, 0xc4 | 0xdb | 0xdd);
        let is_scan = marker == 0xda;
        match marker {
            _ if is_frame || is_table || is_scan => {
                bare.extend([0xff, marker]);
                bare.extend(segment);
            }
            // What applications and people say of it.
            0xe0..=0xef | 0xfe => {}
            _ => return None,
        }
        if is_scan {
            let (scan, behind) = rest.split_at(end_of_scan(rest));
            bare.extend(scan);
            rest = behind;
        }
    }
}

/// Where the next marker stands that does not belong to the scan itself.
fn end_of_scan(bytes: &[u8]) -> usize {
    let mut pairs = bytes.windows(2);
    let end = pairs.position(|pair| pair[0] == 0xff && !matches!(pair[1], 0 | 0xd0..=0xd7));
    end.unwrap_or(bytes.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One block of one component, with room for more segments behind the start.
    fn file(said: &[u8], behind: &[u8]) -> Vec<u8> {
        let frame = b"\xff\xc0\x00\x0b\x08\x00\x08\x00\x08\x01\x01\x11\x00";
        let scan = b"\xff\xda\x00\x08\x01\x01\x00\x00\x3f\x00\x3f\xff\x00\xff\xd0\x12";
        [&START[..], said, frame, scan, &END, behind].concat()
    }

    #[test]
    fn what_is_said_of_a_picture_is_left_out_and_the_picture_is_not() {
        let plain = bare(&file(b"", b"")).unwrap();
        assert_eq!((plain.components, &plain.bytes[..2]), (1, &START[..]));
        assert_eq!(plain.bytes, file(JFIF, b""));
        for said in [
            &b"\xff\xe1\x00\x08Exif\0\0"[..],
            b"\xff\xe1\x00\x05xmp\xff\xfe\x00\x04hi",
            b"\xff\xff\xff\xe2\x00\x05icc",
        ] {
            assert_eq!(bare(&file(said, b"a second picture")).unwrap(), plain);
        }
        assert_eq!(bare(&plain.bytes).unwrap(), plain);
    }

    #[test]
    fn what_is_cut_off_or_has_two_frames_is_none() {
        let whole = file(b"", b"");
        for end in 0..whole.len() {
            assert_eq!(bare(&whole[..end]), None, "{end}");
        }
        assert_eq!(bare(&file(&whole[2..15], b"")), None);
        assert_eq!(bare(&file(b"\xff\xe1\x00\x01", b"")), None);
    }
}
