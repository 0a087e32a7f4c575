//! The photo of the cooker: recognised, and made small enough for a report.

use std::fs;
use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{
    DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, ImageResult, Limits,
};

use super::locate::Checker;
use super::model::Photo;
use super::named_files::{NamedFiles, NotRead};

/// Longest side in the report, pixels: 300 to the inch over the width of the text.
const LONGEST_SIDE: u32 = 2000;
/// A picture of so many bytes or fewer is taken as it is.
const SMALL_BYTES: usize = 2 << 20;
/// Quality at which a larger one is written anew.
const JPEG_QUALITY: u8 = 85;
/// Longest side that is read at all, pixels, and memory that reading may take, bytes.
const LONGEST_SIDE_READ: u32 = 30_000;
const MEMORY_BYTES: u64 = 1 << 30;
/// Memory for one that a report has carried, and which has been made small for that.
const MEMORY_CARRIED_BYTES: u64 = 64 << 20;

/// Pictures that are understood.
const FORMATS: [ImageFormat; 3] = [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP];

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
    let bytes = fs::read(&path).map_err(|error| {
        let hint = "put the picture into the campaign folder, or delete the key";
        fail(format!("cannot be read ({error})"), hint)
    })?;
    let format = image::guess_format(&bytes).ok();
    let Some(format) = format.filter(|format| FORMATS.contains(format)) else {
        let hint = "save the picture as JPEG, PNG or WebP";
        return Err(fail("is no JPEG, PNG or WebP picture".to_owned(), hint));
    };
    let (extension, bytes) =
        for_report(bytes, format, limits(files)).map_err(|error| match error {
            ImageError::Limits(_) => fail(
                format!("is larger than {LONGEST_SIDE_READ} pixels a side, or than memory allows"),
                "make it smaller; a report shows 2000 pixels",
            ),
            error => fail(
                format!("is damaged ({error})"),
                "copy the picture again, or save it anew as JPEG or PNG",
            ),
        })?;
    Ok(Photo {
        name: name.to_owned(),
        extension,
        bytes,
    })
}

/// What reading a picture may take.
fn limits(files: NamedFiles<'_>) -> Limits {
    let (longest_side, memory_bytes) = match files.is_own() {
        true => (LONGEST_SIDE_READ, MEMORY_BYTES),
        false => (LONGEST_SIDE, MEMORY_CARRIED_BYTES),
    };
    let mut limits = Limits::default();
    limits.max_image_width = Some(longest_side);
    limits.max_image_height = Some(longest_side);
    limits.max_alloc = Some(memory_bytes);
    limits
}

/// The picture as a report takes it: as it is if it is upright, small, of a kind that PDF
/// knows and without a camera's particulars, else turned, scaled and written as JPEG. What comes out would be taken as it is.
fn for_report(
    bytes: Vec<u8>,
    format: ImageFormat,
    limits: Limits,
) -> ImageResult<(&'static str, Vec<u8>)> {
    let mut reader = ImageReader::with_format(Cursor::new(&bytes), format);
    reader.limits(limits);
    let mut decoder = reader.into_decoder()?;
    let orientation = decoder.orientation()?;
    // Cameras write there where the picture was taken, and with which device.
    let has_particulars = decoder.exif_metadata()?.is_some();
    let mut picture = DynamicImage::from_decoder(decoder)?;
    let is_small = bytes.len() <= SMALL_BYTES
        && picture.width().max(picture.height()) <= LONGEST_SIDE
        && orientation == Orientation::NoTransforms
        && !has_particulars;
    match format {
        ImageFormat::Jpeg if is_small => return Ok(("jpg", bytes)),
        ImageFormat::Png if is_small => return Ok(("png", bytes)),
        _ => {}
    }
    picture.apply_orientation(orientation);
    if picture.width().max(picture.height()) > LONGEST_SIDE {
        picture = picture.resize(LONGEST_SIDE, LONGEST_SIDE, FilterType::CatmullRom);
    }
    let mut jpeg = Vec::new();
    let quality = (0..=JPEG_QUALITY / 10).map(|step| JPEG_QUALITY - 10 * step);
    for quality in quality {
        jpeg.clear();
        on_white(&picture).write_with_encoder(JpegEncoder::new_with_quality(&mut jpeg, quality))?;
        if jpeg.len() <= SMALL_BYTES {
            break;
        }
    }
    Ok(("jpg", jpeg))
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
    use std::path::Path;

    use image::{Rgba, RgbaImage};

    use super::super::named_files::Reach;
    use super::*;

    fn encoded(picture: &DynamicImage, format: ImageFormat) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        picture.write_to(&mut bytes, format).unwrap();
        bytes.into_inner()
    }

    fn taken(bytes: Vec<u8>, format: ImageFormat) -> ImageResult<(&'static str, Vec<u8>)> {
        for_report(
            bytes,
            format,
            limits(NamedFiles::From(Path::new(""), Reach::Inside)),
        )
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

    #[test]
    fn a_small_picture_is_taken_as_it_is() {
        let bytes = encoded(&noise(40, 30), ImageFormat::Png);
        assert_eq!(
            taken(bytes.clone(), ImageFormat::Png).unwrap(),
            ("png", bytes)
        );
    }

    #[test]
    fn twenty_megapixels_are_scaled_down_and_then_taken_as_they_are() {
        let large = noise(5472, 3648);
        for format in [ImageFormat::Jpeg, ImageFormat::Png] {
            let bytes = encoded(&large, format);
            let (extension, small) = taken(bytes, format).unwrap();
            let picture = image::load_from_memory(&small).unwrap();
            assert_eq!(
                (extension, picture.width(), picture.height()),
                ("jpg", 2000, 1333)
            );
            assert!(small.len() <= SMALL_BYTES, "{} bytes", small.len());
            let again = taken(small.clone(), ImageFormat::Jpeg).unwrap();
            assert_eq!(again, ("jpg", small));
        }
    }

    #[test]
    fn webp_becomes_jpeg_and_what_shows_through_white() {
        let clear = RgbaImage::from_pixel(20, 10, Rgba([200, 0, 0, 0]));
        let bytes = encoded(&DynamicImage::ImageRgba8(clear), ImageFormat::WebP);
        let (extension, jpeg) = taken(bytes, ImageFormat::WebP).unwrap();
        let picture = image::load_from_memory(&jpeg).unwrap().into_rgb8();
        assert_eq!(extension, "jpg");
        assert!(
            picture
                .get_pixel(5, 5)
                .0
                .iter()
                .all(|channel| *channel > 250)
        );
    }

    #[test]
    fn what_a_camera_writes_of_place_and_device_is_left_out() {
        // An empty EXIF directory behind the start of the file (JEITA CP-3451, 4.5; from memory).
        let jpeg = encoded(&noise(40, 30), ImageFormat::Jpeg);
        let directory = b"\xff\xe1\x00\x16Exif\0\0II*\0\x08\0\0\0\0\0\0\0\0\0";
        let by_camera = [&jpeg[..2], directory, &jpeg[2..]].concat();
        let holds_exif = |bytes: &[u8]| bytes.windows(4).any(|four| four == b"Exif");
        assert!(holds_exif(&by_camera));
        let (_, plain) = taken(jpeg.clone(), ImageFormat::Jpeg).unwrap();
        assert_eq!(plain, jpeg);
        let (extension, left) = taken(by_camera, ImageFormat::Jpeg).unwrap();
        assert_eq!((extension, holds_exif(&left)), ("jpg", false));
    }
}
