//! The photo of the cooker: recognised, and made small enough for a report.

use std::fs;
use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::{self, CompressionType, PngEncoder};
use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{
    ColorType, DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, ImageResult,
    Limits,
};

use super::jpeg;
use super::locate::Checker;
use super::model::Photo;
use super::named_files::{NamedFiles, NotRead};
use crate::bounds::{PHOTO_BYTES, PHOTO_MEMORY, PHOTO_PIXELS};
use crate::error::why;

/// Longest side in the report, pixels: 300 to the inch over the width of the text.
const LONGEST_SIDE: u32 = 2000;
/// A picture has so many bytes at most in the report.
const LARGEST: usize = 2 << 20;
/// Quality at which a JPEG is written anew.
const JPEG_QUALITY: u8 = 85;
/// Cyan, magenta, yellow and black: which colours they give hangs on paper and press.
const INKS: u8 = 4;
/// Memory for one that a report has carried, and which has been made small for that.
const MEMORY_CARRIED_BYTES: u64 = 64 << 20;

/// Pictures that are understood.
const FORMATS: [ImageFormat; 3] = [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP];

/// What is wrong with a photo, and how to mend that.
type Fault = (String, &'static str);

/// What to do about one that is too large.
const TOO_LARGE: &str = "make it smaller; a report shows 2000 pixels a side";

/// Reads and checks the photo that the campaign file names.
pub fn check_photo(checker: &mut Checker<'_>, files: NamedFiles<'_>, name: &str) -> Option<Photo> {
    let (what, hint) = match read_photo(files, name) {
        Ok(photo) => return Some(photo),
        Err(problem) => problem,
    };
    checker.problem("cooker.photo", format!("\"{name}\" {what}"), hint);
    None
}

/// The photo, or what is wrong with it and how to mend that.
fn read_photo(files: NamedFiles<'_>, name: &str) -> Result<Photo, (String, String)> {
    let path = files.find(name);
    let path = path.map_err(|NotRead { what, hint }| (what.to_owned(), hint))?;
    let fail = |what: String, hint: &str| (what, hint.to_owned());
    if !path.is_file() {
        let hint = "name a picture in the campaign folder";
        return Err(fail("is no file".to_owned(), hint));
    }
    let size = fs::metadata(&path).map_or(0, |metadata| metadata.len());
    if let Some(what) = PHOTO_BYTES.exceeded_by(size as usize) {
        return Err(fail(format!("is too large: {what}"), TOO_LARGE));
    }
    let bytes = fs::read(&path).map_err(|error| {
        let hint = "put the picture into the campaign folder, or delete the key";
        fail(format!("cannot be read: {}", why(&error)), hint)
    })?;
    let format = image::guess_format(&bytes).ok();
    let Some(format) = format.filter(|format| FORMATS.contains(format)) else {
        let hint = "save the picture as JPEG, PNG or WebP";
        return Err(fail("is no JPEG, PNG or WebP picture".to_owned(), hint));
    };
    let (extension, bytes) =
        for_report(bytes, format, files.is_own()).map_err(|(what, hint)| fail(what, hint))?;
    Ok(Photo {
        name: name.to_owned(),
        path,
        extension,
        bytes,
    })
}

fn fault(error: &ImageError) -> Fault {
    match error {
        ImageError::Limits(_) => ("is larger than memory allows".to_owned(), TOO_LARGE),
        error => (
            format!("is damaged ({error})"),
            "copy the picture again, or save it anew as JPEG or PNG",
        ),
    }
}

/// Opens a picture whose pixels have room, by what its head says of their number.
fn open(
    bytes: &[u8],
    format: ImageFormat,
    is_own: bool,
) -> Result<impl ImageDecoder + use<'_>, Fault> {
    let most_bytes = match is_own {
        true => PHOTO_MEMORY.most,
        false => MEMORY_CARRIED_BYTES,
    };
    let mut limits = Limits::default();
    limits.max_alloc = Some(most_bytes);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    reader.limits(limits);
    let decoder = reader.into_decoder().map_err(|error| fault(&error))?;
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    let is_large = !is_own && width.max(height) > LONGEST_SIDE;
    if is_large || pixels > PHOTO_PIXELS.most || decoder.total_bytes() > most_bytes {
        let most = match is_own {
            true => format!("{} pixels and {most_bytes} bytes", PHOTO_PIXELS.most),
            false => format!("{LONGEST_SIDE} pixels a side, as in every report"),
        };
        let found = format!(
            "is {width} × {height} pixels, {} bytes once unpacked, expected at most {most}",
            decoder.total_bytes()
        );
        return Err((found, TOO_LARGE));
    }
    Ok(decoder)
}

fn pixels(bytes: &[u8], format: ImageFormat, is_own: bool) -> Result<DynamicImage, Fault> {
    let picture = DynamicImage::from_decoder(open(bytes, format, is_own)?);
    picture.map_err(|error| fault(&error))
}

/// The picture as a report takes it: upright, small, and nothing but the picture, whatever a
/// camera or a program has written beside it. What comes out comes out of itself unchanged,
/// so that a report can be verified by the picture that is attached to it.
fn for_report(
    bytes: Vec<u8>,
    format: ImageFormat,
    is_own: bool,
) -> Result<(&'static str, Vec<u8>), Fault> {
    let bare = match format {
        ImageFormat::Jpeg => jpeg::bare(&bytes),
        _ => None,
    };
    if bare.as_ref().is_some_and(|bare| bare.components == INKS) {
        let hint = "save it anew in red, green and blue (RGB), as screens show it";
        return Err(("is in printing inks (CMYK)".to_owned(), hint));
    }
    if format == ImageFormat::Jpeg && bare.is_none() {
        let hint = "copy the picture again, or save it anew as JPEG or PNG";
        return Err((
            "breaks off, or is not put together as a JPEG is".to_owned(),
            hint,
        ));
    }
    let mut decoder = open(&bytes, format, is_own)?;
    let orientation = decoder.orientation().map_err(|error| fault(&error))?;
    let picture = DynamicImage::from_decoder(decoder).map_err(|error| fault(&error))?;
    drop(bytes);
    let is_large = picture.width().max(picture.height()) > LONGEST_SIDE;
    if !is_large && orientation == Orientation::NoTransforms {
        // Colours may have been told by what is left out.
        if let Some(bare) = bare.filter(|bare| bare.bytes.len() <= LARGEST)
            && pixels(&bare.bytes, format, is_own).is_ok_and(|alone| alone == picture)
        {
            return Ok(("jpg", bare.bytes));
        }
    }
    let mut picture = eight_bits(picture);
    if is_large {
        picture = picture.resize(LONGEST_SIDE, LONGEST_SIDE, FilterType::CatmullRom);
    }
    picture.apply_orientation(orientation);
    if format == ImageFormat::Png
        && !is_large
        && let Some(png) = as_png(&picture).map_err(|error| fault(&error))?
    {
        return Ok(("png", png));
    }
    let jpeg = as_jpeg(&picture).map_err(|error| fault(&error))?;
    Ok(("jpg", jpeg))
}

/// The picture with eight bits a channel.
fn eight_bits(picture: DynamicImage) -> DynamicImage {
    match picture.color() {
        ColorType::L16 => picture.into_luma8().into(),
        ColorType::La16 => picture.into_luma_alpha8().into(),
        ColorType::Rgb16 | ColorType::Rgb32F => picture.into_rgb8().into(),
        ColorType::Rgba16 | ColorType::Rgba32F => picture.into_rgba8().into(),
        _ => picture,
    }
}

/// The picture as PNG, if it is small enough so.
fn as_png(picture: &DynamicImage) -> ImageResult<Option<Vec<u8>>> {
    let mut png = Vec::new();
    // The fast way packs alike on every machine.
    let (packing, filter) = (CompressionType::Fast, png::FilterType::Adaptive);
    picture.write_with_encoder(PngEncoder::new_with_quality(&mut png, packing, filter))?;
    Ok((png.len() <= LARGEST).then_some(png))
}

/// The picture as JPEG, as good as it can be for its size.
fn as_jpeg(picture: &DynamicImage) -> ImageResult<Vec<u8>> {
    let picture = on_white(picture);
    let mut jpeg = Vec::new();
    let quality = (0..=JPEG_QUALITY / 10).map(|step| JPEG_QUALITY - 10 * step);
    for quality in quality {
        jpeg.clear();
        picture.write_with_encoder(JpegEncoder::new_with_quality(&mut jpeg, quality))?;
        if jpeg.len() <= LARGEST {
            break;
        }
    }
    Ok(jpeg::bare(&jpeg).map_or(jpeg, |bare| bare.bytes))
}

/// The picture in red, green and blue; what shows through is white.
fn on_white(picture: &DynamicImage) -> DynamicImage {
    let mut rgba = picture.to_rgba8();
    for pixel in rgba.pixels_mut() {
        let [.., alpha] = pixel.0;
        for channel in 0..3 {
            let ink = u32::from(pixel.0[channel]) * u32::from(alpha);
            let paper = 255 * (255 - u32::from(alpha));
            pixel.0[channel] = ((ink + paper + 127) / 255) as u8;
        }
    }
    DynamicImage::ImageRgba8(rgba).into_rgb8().into()
}

#[cfg(test)]
mod tests {
    use image::{Rgba, RgbaImage};

    use super::*;

    fn encoded(picture: &DynamicImage, format: ImageFormat) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        picture.write_to(&mut bytes, format).unwrap();
        bytes.into_inner()
    }

    /// A picture as a report takes it, which has to come out of itself, there and where a
    /// report is verified.
    fn taken(bytes: Vec<u8>, format: ImageFormat) -> (&'static str, Vec<u8>) {
        let first = for_report(bytes, format, true).unwrap();
        let format = image::guess_format(&first.1).unwrap();
        for is_own in [true, false] {
            assert!(first == for_report(first.1.clone(), format, is_own).unwrap());
        }
        first
    }

    /// A picture that no encoder makes small.
    fn noise(width: u32, height: u32) -> DynamicImage {
        let mut state = 1_u32;
        let picture = RgbaImage::from_fn(width, height, |_, _| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            let [a, b, c, _] = state.to_be_bytes();
            Rgba([a, b, c, 255])
        });
        DynamicImage::ImageRgba8(picture).into_rgb8().into()
    }

    fn holds(bytes: &[u8], text: &[u8]) -> bool {
        bytes.windows(text.len()).any(|at| at == text)
    }

    /// A segment of a JPEG, behind its start.
    fn with_segment(jpeg: &[u8], marker: u8, content: &[u8]) -> Vec<u8> {
        let length = (content.len() as u16 + 2).to_be_bytes();
        [&jpeg[..2], &[0xff, marker], &length, content, &jpeg[2..]].concat()
    }

    /// A chunk of a PNG, behind its head.
    fn with_chunk(png: &[u8], name: &[u8], content: &[u8]) -> Vec<u8> {
        let named = [name, content].concat();
        let crc = !named.iter().fold(!0_u32, |crc, byte| {
            (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
                (crc >> 1) ^ (0xedb8_8320 * (crc & 1))
            })
        });
        let length = (content.len() as u32).to_be_bytes();
        let head = 8 + 25;
        [
            &png[..head],
            &length,
            &named,
            &crc.to_be_bytes(),
            &png[head..],
        ]
        .concat()
    }

    /// An EXIF directory with an orientation alone (JEITA CP-3451, 4.6; from memory).
    fn turned(orientation: u8) -> Vec<u8> {
        let entry = [0x12, 1, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0];
        [&b"II*\0\x08\0\0\0\x01\0"[..], &entry, &[0; 4]].concat()
    }

    #[test]
    fn a_small_picture_keeps_its_pixels() {
        let picture = noise(40, 30);
        let (extension, png) = taken(encoded(&picture, ImageFormat::Png), ImageFormat::Png);
        assert_eq!(extension, "png");
        assert!(image::load_from_memory(&png).unwrap() == picture);
        let jpeg = encoded(&picture, ImageFormat::Jpeg);
        let (extension, bare) = taken(jpeg.clone(), ImageFormat::Jpeg);
        assert_eq!(extension, "jpg");
        let read = |bytes: &[u8]| image::load_from_memory(bytes).unwrap();
        assert!(read(&bare) == read(&jpeg));
    }

    #[test]
    fn twenty_megapixels_are_scaled_down() {
        let large = noise(5472, 3648);
        for format in [ImageFormat::Jpeg, ImageFormat::Png] {
            let (extension, small) = taken(encoded(&large, format), format);
            let picture = image::load_from_memory(&small).unwrap();
            assert_eq!(
                (extension, picture.width(), picture.height()),
                ("jpg", 2000, 1333)
            );
            assert!(small.len() <= LARGEST, "{} bytes", small.len());
        }
    }

    #[test]
    fn every_kind_of_png_is_taken() {
        let rgba = DynamicImage::ImageRgba8(noise(40, 30).into_rgba8());
        for picture in [
            DynamicImage::ImageLuma8(rgba.to_luma8()),
            DynamicImage::ImageLumaA8(rgba.to_luma_alpha8()),
            DynamicImage::ImageLuma16(rgba.to_luma16()),
            DynamicImage::ImageRgb16(rgba.to_rgb16()),
            DynamicImage::ImageRgba16(rgba.to_rgba16()),
            rgba,
        ] {
            let (extension, png) = taken(encoded(&picture, ImageFormat::Png), ImageFormat::Png);
            let read = image::load_from_memory(&png).unwrap();
            let same = read.to_rgba8() == picture.to_rgba8();
            assert!(extension == "png" && same, "{:?}", picture.color());
        }
    }

    #[test]
    fn webp_becomes_jpeg_and_what_shows_through_white() {
        let clear = RgbaImage::from_pixel(20, 10, Rgba([200, 0, 0, 0]));
        let bytes = encoded(&DynamicImage::ImageRgba8(clear), ImageFormat::WebP);
        for bytes in [animated(&bytes), bytes] {
            let (extension, jpeg) = taken(bytes, ImageFormat::WebP);
            let picture = image::load_from_memory(&jpeg).unwrap().into_rgb8();
            let is_white = |pixel: &image::Rgb<u8>| pixel.0.iter().all(|channel| *channel > 250);
            assert!(extension == "jpg" && picture.pixels().all(is_white));
        }
    }

    /// A moving picture of one frame, 20 by 10 (RFC 9649, 2.7).
    fn animated(still: &[u8]) -> Vec<u8> {
        let chunk = |name: &[u8], content: &[u8]| {
            let length = (content.len() as u32).to_le_bytes();
            let even = &[0][..content.len() % 2];
            [name, &length, content, even].concat()
        };
        let size = [19, 0, 0, 9, 0, 0];
        let canvas = chunk(b"VP8X", &[&[0x12, 0, 0, 0][..], &size].concat());
        let frame = [&[0; 6][..], &size, &[100, 0, 0, 0], &still[12..]].concat();
        let body = [
            b"WEBP".to_vec(),
            canvas,
            chunk(b"ANIM", &[0; 6]),
            chunk(b"ANMF", &frame),
        ];
        chunk(b"RIFF", &body.concat())
    }

    #[test]
    fn what_a_camera_or_a_program_writes_beside_a_picture_is_left_out() {
        let secret = b"taken at 12.3456 N, 65.4321 E (invented)";
        let jpeg = encoded(&noise(40, 30), ImageFormat::Jpeg);
        let png = encoded(&noise(40, 30), ImageFormat::Png);
        let exif = [b"Exif\0\0", turned(1).as_slice(), secret].concat();
        let xmp = [&b"http://ns.adobe.com/xap/1.0/\0"[..], secret].concat();
        let (bare, anew) = (
            taken(jpeg.clone(), ImageFormat::Jpeg),
            taken(png.clone(), ImageFormat::Png),
        );
        for bytes in [
            with_segment(&jpeg, 0xe1, &exif),
            with_segment(&jpeg, 0xe1, &xmp),
            with_segment(&jpeg, 0xe2, secret),
            with_segment(&jpeg, 0xed, secret),
            with_segment(&jpeg, 0xfe, secret),
            [jpeg.as_slice(), secret].concat(),
        ] {
            assert!(holds(&bytes, secret) && taken(bytes, ImageFormat::Jpeg) == bare);
        }
        let text = [&b"Comment\0"[..], secret].concat();
        let long = [&b"XML:com.adobe.xmp\0\0\0\0\0"[..], secret].concat();
        for bytes in [
            with_chunk(&png, b"tEXt", &text),
            with_chunk(&png, b"iTXt", &long),
            with_chunk(&png, b"eXIf", &exif[6..]),
            with_chunk(&png, b"prVt", secret),
            [png.as_slice(), secret].concat(),
        ] {
            assert!(holds(&bytes, secret) && taken(bytes, ImageFormat::Png) == anew);
        }
    }

    #[test]
    fn a_picture_that_lies_on_its_side_is_turned_before_that_is_forgotten() {
        let picture = noise(40, 30);
        let exif = [b"Exif\0\0", turned(6).as_slice()].concat();
        for (bytes, format) in [
            (
                with_segment(&encoded(&picture, ImageFormat::Jpeg), 0xe1, &exif),
                ImageFormat::Jpeg,
            ),
            (
                with_chunk(&encoded(&picture, ImageFormat::Png), b"eXIf", &turned(6)),
                ImageFormat::Png,
            ),
        ] {
            let upright = image::load_from_memory(&taken(bytes, format).1).unwrap();
            assert_eq!((upright.width(), upright.height()), (30, 40), "{format:?}");
        }
    }

    #[test]
    fn colours_that_a_marker_tells_survive_it() {
        // Components that are red, green and blue by the last byte of the marker
        // (ITU-T T.872, 6.5.3; from memory), and not brightness and two differences.
        let red = image::RgbImage::from_pixel(40, 30, image::Rgb([200, 30, 60]));
        let plain = encoded(&DynamicImage::ImageRgb8(red), ImageFormat::Jpeg);
        // Without its first segment, of 18 bytes, which tells colours too.
        let bare = [&plain[..2], &plain[20..]].concat();
        let marked = with_segment(&bare, 0xee, b"Adobe\0\x64\0\0\0\0\0");
        let meant = image::load_from_memory(&marked).unwrap().into_rgb8();
        let read = image::load_from_memory(&taken(marked, ImageFormat::Jpeg).1).unwrap();
        let read = read.into_rgb8();
        let means = |picture: &image::RgbImage| {
            [0, 1, 2].map(|channel| {
                let values = picture.pixels().map(|pixel| f64::from(pixel.0[channel]));
                values.sum::<f64>() / 1200.0
            })
        };
        let near = |one: &image::RgbImage, two: &image::RgbImage| {
            let pairs = means(one).into_iter().zip(means(two));
            // Writing a JPEG anew keeps the mean of a colour within a few of 256 steps.
            pairs.fold(true, |near, (one, two)| near && (one - two).abs() < 4.0)
        };
        let wrong = image::load_from_memory(&plain).unwrap().into_rgb8();
        assert!(near(&meant, &read) && !near(&meant, &wrong));
    }

    #[test]
    fn printing_inks_and_too_many_pixels_are_refused_by_name() {
        // Only the frame matters: it is read before anything is unpacked.
        let inks = b"\xff\xd8\xff\xc0\x00\x14\x08\x00\x08\x00\x08\x04\
            \x01\x11\0\x02\x11\0\x03\x11\0\x04\x11\0\xff\xd9";
        let (what, hint) = for_report(inks.to_vec(), ImageFormat::Jpeg, true).unwrap_err();
        assert!(what.contains("CMYK") && hint.contains("RGB"), "{what}");
        for (size, bits) in [(16_000_u32, 8), (8_000, 16)] {
            // Nine tenths of what this PNG says of itself is not there.
            let mut png = encoded(&noise(4, 4), ImageFormat::Png);
            png[16..20].copy_from_slice(&size.to_be_bytes());
            png[20..24].copy_from_slice(&size.to_be_bytes());
            png[24] = bits;
            let named = png[12..29].to_vec();
            let with_crc = with_chunk(&[0; 33], &named[..4], &named[4..]);
            png[29..33].copy_from_slice(&with_crc[33 + 21..33 + 25]);
            let (what, hint) = for_report(png, ImageFormat::Png, true).unwrap_err();
            assert!(what.contains("at most 64000000 pixels"), "{what}");
            assert!(hint.contains("smaller"));
        }
    }
}
