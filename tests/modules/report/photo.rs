//! A photo of the cooker, sound or broken.

use lopdf::{Dictionary, Document, Object};

use crate::report::campaigns::*;
use crate::report::pdf::dictionaries;

/// A grey picture, 5 by 3, as PNG.
pub fn png() -> Vec<u8> {
    fn crc32(bytes: &[u8]) -> u32 {
        !bytes.iter().fold(!0, |crc, byte| {
            (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
                (crc >> 1) ^ (0xedb8_8320 * (crc & 1))
            })
        })
    }
    fn chunk(name: &[u8], data: &[u8]) -> Vec<u8> {
        let named = [name, data].concat();
        [
            &(data.len() as u32).to_be_bytes()[..],
            &named,
            &crc32(&named).to_be_bytes(),
        ]
        .concat()
    }
    let rows = [0, 9, 60, 120, 180, 240].repeat(3);
    let adler = rows.iter().fold((1_u32, 0_u32), |(a, b), byte| {
        let a = (a + u32::from(*byte)) % 65_521;
        (a, (b + a) % 65_521)
    });
    let length = rows.len() as u16;
    let stored = [
        &[0x78, 0x01, 0x01][..],
        &length.to_le_bytes(),
        &(!length).to_le_bytes(),
        &rows,
        &((adler.1 << 16) | adler.0).to_be_bytes(),
    ]
    .concat();
    [
        b"\x89PNG\r\n\x1a\n".to_vec(),
        chunk(b"IHDR", &[0, 0, 0, 5, 0, 0, 0, 3, 8, 0, 0, 0, 0]),
        chunk(b"IDAT", &stored),
        chunk(b"IEND", &[]),
    ]
    .concat()
}

/// A grey picture, 8 by 8, as JPEG: one block, every coefficient zero.
pub fn jpeg() -> Vec<u8> {
    [
        &b"\xff\xd8\xff\xdb\x00\x43\x00"[..],
        &[1; 64],
        b"\xff\xc0\x00\x0b\x08\x00\x08\x00\x08\x01\x01\x11\x00",
        b"\xff\xc4\x00\x14\x00\x01",
        &[0; 16],
        b"\xff\xc4\x00\x14\x10\x01",
        &[0; 16],
        b"\xff\xda\x00\x08\x01\x01\x00\x00\x3f\x00\x3f\xff\xd9",
    ]
    .concat()
}

pub fn with_photo(name: &str, bytes: &[u8]) -> Copy {
    let copy = Copy::new().with_one_run();
    copy.write(name, bytes);
    copy.replace("cost = 64", &format!("photo = \"{name}\""))
}

#[test]
fn a_photo_is_embedded_with_its_pixels_and_words() {
    for (name, bytes, size) in [
        ("cooker.png", png(), (5, 3)),
        ("cooker.jpg", jpeg(), (8, 8)),
    ] {
        let pdf = pdf_of(&with_photo(name, &bytes).assess());
        let pdf = Document::load_mem(&pdf).unwrap();
        let is_image = |d: &&Dictionary| {
            d.get(b"Subtype")
                .and_then(Object::as_name)
                .is_ok_and(|s| s == b"Image")
        };
        let pixels = |d: &Dictionary, key: &[u8]| d.get(key).unwrap().as_i64().unwrap();
        let sizes: Vec<(i64, i64)> = dictionaries(&pdf)
            .filter(is_image)
            .map(|d| (pixels(d, b"Width"), pixels(d, b"Height")))
            .collect();
        assert!(sizes.contains(&size), "{name}: {sizes:?}");
        let alt = |d: &Dictionary| lopdf::decode_text_string(d.get(b"Alt").ok()?).ok();
        let mut told = dictionaries(&pdf).filter_map(alt);
        assert!(
            told.any(|alt| alt.starts_with("Photograph of the cooker")),
            "{name}"
        );
    }
}

#[test]
fn a_photo_that_is_no_picture_is_refused_by_name() {
    for (name, bytes) in [
        ("cooker.txt", &b"words"[..]),
        ("cooker.jpg", b"GIF89a"),
        ("cooker.png", b""),
    ] {
        let error = with_photo(name, bytes).fails();
        assert_eq!(error.exit_code(), 4);
        let text = error.to_string();
        assert!(text.contains(name) && text.contains("hint: "), "{text}");
    }
    let copy = Copy::new().replace("cost = 64", "photo = \"gone.jpg\"");
    let text = copy.fails().to_string();
    assert!(
        text.contains("campaign.toml:") && text.contains("\"gone.jpg\" is not there"),
        "{text}"
    );
}

#[test]
fn a_broken_picture_is_refused_by_name_and_is_no_fault_of_ours() {
    let (png, jpeg) = (png(), jpeg());
    let mut spoiled = png.clone();
    spoiled[50] ^= 0xff;
    let mut wrong = Vec::new();
    for (name, bytes) in [
        ("cooker.png", &png[..8]),
        ("cooker.png", &png[..40]),
        ("cooker.png", &png[..png.len() - 20]),
        ("cooker.png", &spoiled),
        ("cooker.jpg", &jpeg[..4]),
        ("cooker.jpg", &jpeg[..60]),
    ] {
        let error = with_photo(name, bytes).fails();
        let text = error.to_string();
        if error.exit_code() != 4 || !text.contains(name) || !text.contains("hint: ") {
            wrong.push(format!("{} bytes of {name}: {text}", bytes.len()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
