//! Fonts of a PDF as reports have them: composite, two bytes a glyph, with a map to characters.
//!
//! # Source
//! ISO 32000-1:2008, 9.7.4.3 (glyph widths of CID fonts), 9.10.3 (ToUnicode maps).

use std::collections::{BTreeMap, HashMap};
use std::rc::Rc;

use lopdf::{Dictionary, Document, Object};

/// A glyph's characters, and its width as a share of the size.
#[derive(Debug, Clone)]
pub struct Glyph {
    pub text: String,
    pub width_em: f64,
}

/// A font.
#[derive(Debug)]
pub struct Face {
    glyphs: HashMap<u16, Glyph>,
    pub is_strong: bool,
}

impl Face {
    fn read(pdf: &Document, font: &Dictionary) -> Face {
        let name = font.get(b"BaseFont").and_then(Object::as_name).unwrap();
        let name = String::from_utf8_lossy(name).into_owned();
        let descendants = font.get_deref(b"DescendantFonts", pdf).unwrap();
        let descendant = pdf
            .dereference(&descendants.as_array().unwrap()[0])
            .unwrap();
        let widths = descendant
            .1
            .as_dict()
            .unwrap()
            .get_deref(b"W", pdf)
            .unwrap();
        let encoding = font.get_font_encoding(pdf).unwrap();
        let glyphs = widths_of(pdf, widths.as_array().unwrap());
        let glyphs = glyphs.into_iter().map(|(code, width_em)| {
            let text = Document::decode_text(&encoding, &code.to_be_bytes()).unwrap();
            (code, Glyph { text, width_em })
        });
        Face {
            glyphs: glyphs.collect(),
            is_strong: name.contains("Bold"),
        }
    }

    /// The glyphs of a shown string; one without a width is an error of the file.
    pub fn glyphs<'f>(&'f self, shown: &'f [u8]) -> impl Iterator<Item = &'f Glyph> {
        let codes = shown.chunks_exact(2);
        codes.map(|code| &self.glyphs[&u16::from_be_bytes([code[0], code[1]])])
    }
}

/// Widths by glyph: `first [w1 w2 …]`, or `first last w`.
fn widths_of(pdf: &Document, widths: &[Object]) -> BTreeMap<u16, f64> {
    let code = |object: &Object| u16::try_from(object.as_i64().unwrap()).unwrap();
    let em = |object: &Object| f64::from(object.as_float().unwrap()) / 1000.0;
    let mut found = BTreeMap::new();
    let mut left = widths.iter();
    while let Some(first) = left.next() {
        let first = code(first);
        let (_, next) = pdf.dereference(left.next().unwrap()).unwrap();
        match next {
            Object::Array(listed) => {
                found.extend(
                    listed
                        .iter()
                        .zip(first..)
                        .map(|(width, code)| (code, em(width))),
                );
            }
            last => {
                let width = em(left.next().unwrap());
                found.extend((first..=code(last)).map(|code| (code, width)));
            }
        }
    }
    found
}

/// Fonts that have been read, by their map to characters, which each has for itself.
#[derive(Default)]
pub struct Faces(HashMap<lopdf::ObjectId, Rc<Face>>);

impl Faces {
    pub fn face(&mut self, pdf: &Document, font: &Dictionary) -> Rc<Face> {
        let map = font.get(b"ToUnicode").and_then(Object::as_reference);
        let face = self.0.entry(map.unwrap());
        Rc::clone(face.or_insert_with(|| Rc::new(Face::read(pdf, font))))
    }
}
