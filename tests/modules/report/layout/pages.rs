//! What is on each page of a PDF, and where: lines of text, and whatever else is drawn.
//!
//! The drawing instructions are followed as a viewer does, so that what is found is what a
//! reader sees, whoever set the page.
//!
//! # Source
//! ISO 32000-1:2008, 8.4 (graphics state), 8.5 (paths, clipping), 9.4 (text), 14.6 (marked
//! content).

use std::rc::Rc;

use lopdf::content::{Content, Operation};
use lopdf::{Dictionary, Document, Object, ObjectId};

use super::faces::{Face, Faces};
use super::place::{Matrix, Place};

/// Red, green and blue, from 0 to 1.
pub type Ink = [f64; 3];

const BLACK: Ink = [0.0; 3];
const WHITE: Ink = [1.0; 3];

/// How high a capital stands above the line, and how far below it most letters reach, as a
/// share of the size: the fonts of reports have 0.65 to 0.73, and accents go beyond it.
const ABOVE_EM: f64 = 0.7;
const BELOW_EM: f64 = 0.12;

/// What something on a page belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The content, by its number in the page's structure.
    Content(i64),
    /// Rules, backgrounds.
    Ornament,
    /// Head and foot.
    Frame,
}

/// Text that one instruction shows.
#[derive(Debug, Clone)]
pub struct Text {
    pub text: String,
    pub place: Place,
    /// Where its letters stand, points below the page's top; across, for upright text.
    pub baseline: f64,
    pub size_pt: f64,
    pub is_level: bool,
    pub is_strong: bool,
    pub part: Part,
    /// What is seen of its surroundings.
    pub clip: Place,
    pub ink: Ink,
    /// What is behind it.
    pub ground: Ink,
}

/// A stroke, a filled area or a picture.
#[derive(Debug, Clone, Copy)]
pub struct Drawn {
    pub place: Place,
    pub part: Part,
}

/// A page.
#[derive(Debug)]
pub struct Page {
    pub width: f64,
    pub height: f64,
    pub texts: Vec<Text>,
    pub drawn: Vec<Drawn>,
}

/// All pages of a PDF.
pub fn read_pages(pdf: &Document) -> Vec<Page> {
    let mut faces = Faces::default();
    let pages = pdf.get_pages().into_values();
    pages.map(|id| read_page(pdf, id, &mut faces)).collect()
}

fn read_page(pdf: &Document, id: ObjectId, faces: &mut Faces) -> Page {
    let page = pdf.get_dictionary(id).unwrap();
    let sizes = page.get_deref(b"MediaBox", pdf).unwrap();
    let sizes: Vec<f64> = numbers(sizes.as_array().unwrap());
    let (width, height) = (sizes[2], sizes[3]);
    let resources = page.get_deref(b"Resources", pdf).unwrap();
    let content = pdf.get_page_content(id);
    let state = State {
        matrix: Matrix([1.0, 0.0, 0.0, -1.0, 0.0, height]),
        ink: BLACK,
        opacity: 1.0,
        clip: Place::EVERYWHERE,
        face: None,
        size: 0.0,
        text_matrix: Matrix::NONE,
    };
    let mut drawing = Drawing {
        pdf,
        faces,
        page: Page {
            width,
            height,
            texts: Vec::new(),
            drawn: Vec::new(),
        },
        grounds: Vec::new(),
        parts: Vec::new(),
    };
    drawing.follow(&content, resources.as_dict().unwrap(), state);
    drawing.page
}

fn numbers(operands: &[Object]) -> Vec<f64> {
    let numbers = operands.iter();
    let numbers = numbers.filter_map(|operand| operand.as_float().ok());
    numbers.map(f64::from).collect()
}

/// What holds while instructions are followed.
#[derive(Clone)]
struct State {
    matrix: Matrix,
    ink: Ink,
    opacity: f64,
    clip: Place,
    face: Option<Rc<Face>>,
    size: f64,
    text_matrix: Matrix,
}

/// A path that is being built, in points of the page.
#[derive(Default)]
struct Path {
    points: Vec<(f64, f64)>,
    has_curves: bool,
    clips: bool,
}

impl Path {
    /// Its area, where that is a rectangle along the page.
    fn rectangle(&self) -> Option<Place> {
        let place = Place::around(self.points.iter().copied())?;
        let near = |one: f64, two: f64| (one - two).abs() < 0.01;
        let is_corner = |(x, y): (f64, f64)| {
            (near(x, place.left) || near(x, place.right))
                && (near(y, place.top) || near(y, place.bottom))
        };
        let is_rectangle = !self.has_curves
            && self.points.len() >= 4
            && self.points.iter().all(|&point| is_corner(point));
        is_rectangle.then_some(place)
    }
}

struct Drawing<'d> {
    pdf: &'d Document,
    faces: &'d mut Faces,
    page: Page,
    /// Filled rectangles, the last on top.
    grounds: Vec<(Place, Ink)>,
    /// Marked content that is open, the innermost last.
    parts: Vec<Option<Part>>,
}

impl Drawing<'_> {
    fn follow(&mut self, content: &[u8], resources: &Dictionary, mut state: State) {
        let content = Content::decode(content).unwrap();
        let (mut saved, mut path) = (Vec::new(), Path::default());
        for operation in &content.operations {
            let operands = &operation.operands;
            match operation.operator.as_str() {
                "q" => saved.push(state.clone()),
                "Q" => state = saved.pop().unwrap(),
                "BDC" | "BMC" => self.parts.push(self.part_of(operands)),
                "EMC" => {
                    self.parts.pop().unwrap();
                }
                "Do" => self.draw_named(operands, resources, &state),
                "gs" => self.set_opacity(operands, resources, &mut state),
                "Tf" => {
                    let fonts = resources.get_deref(b"Font", self.pdf).unwrap();
                    let name = operands[0].as_name().unwrap();
                    let font = fonts.as_dict().unwrap().get_deref(name, self.pdf).unwrap();
                    state.face = Some(self.faces.face(self.pdf, font.as_dict().unwrap()));
                    state.size = numbers(operands)[0];
                }
                "Tj" => self.show(&operands[..1], &mut state),
                "TJ" => self.show(operands[0].as_array().unwrap(), &mut state),
                "S" | "s" | "f" | "F" | "f*" | "B" | "B*" | "b" | "b*" | "n" => {
                    self.paint(&operation.operator, std::mem::take(&mut path), &mut state);
                }
                _ => set(&mut state, &mut path, operation),
            }
        }
        assert!(saved.is_empty(), "a page closes what it opens");
    }

    /// What marked content is of; `None`: of what is around it.
    fn part_of(&self, operands: &[Object]) -> Option<Part> {
        let properties = operands.get(1).and_then(|found| found.as_dict().ok());
        if let Some(number) = properties.and_then(|found| found.get(b"MCID").ok()) {
            return Some(Part::Content(number.as_i64().unwrap()));
        }
        if operands[0].as_name().unwrap() != b"Artifact" {
            return None;
        }
        // Heads of tables that go on are artifacts, too.
        let kind = properties.and_then(|found| found.get(b"Subtype").ok()?.as_name().ok());
        Some(match kind {
            Some(b"Header" | b"Footer") => Part::Frame,
            _ => Part::Ornament,
        })
    }

    fn part(&self) -> Part {
        let innermost = self.parts.iter().rev().find_map(|part| *part);
        innermost.unwrap_or(Part::Ornament)
    }

    fn draw_named(&mut self, operands: &[Object], resources: &Dictionary, state: &State) {
        let named = resources.get_deref(b"XObject", self.pdf).unwrap();
        let name = operands[0].as_name().unwrap();
        let object = named.as_dict().unwrap().get_deref(name, self.pdf).unwrap();
        let stream = object.as_stream().unwrap();
        if stream.dict.get(b"Subtype").unwrap().as_name().unwrap() == b"Image" {
            let square = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)];
            let place = Place::around(square.map(|corner| state.matrix.of(corner))).unwrap();
            self.draw(place.within(&state.clip));
            return;
        }
        let mut inner = state.clone();
        if let Ok(matrix) = stream.dict.get_deref(b"Matrix", self.pdf) {
            let values = numbers(matrix.as_array().unwrap());
            inner.matrix = Matrix(values.try_into().unwrap()).then(&inner.matrix);
        }
        let content = stream.decompressed_content();
        let content = content.unwrap_or_else(|_| stream.content.clone());
        let own = stream.dict.get_deref(b"Resources", self.pdf);
        let own = own.ok().and_then(|own| own.as_dict().ok());
        self.follow(&content, own.unwrap_or(resources), inner);
    }

    fn set_opacity(&self, operands: &[Object], resources: &Dictionary, state: &mut State) {
        let states = resources.get_deref(b"ExtGState", self.pdf).unwrap();
        let name = operands[0].as_name().unwrap();
        let named = states.as_dict().unwrap().get_deref(name, self.pdf).unwrap();
        if let Ok(opacity) = named.as_dict().unwrap().get(b"ca") {
            state.opacity = f64::from(opacity.as_float().unwrap());
        }
    }

    fn draw(&mut self, place: Place) {
        if place.width() >= 0.0 && place.height() >= 0.0 {
            let part = self.part();
            self.page.drawn.push(Drawn { place, part });
        }
    }

    fn paint(&mut self, operator: &str, path: Path, state: &mut State) {
        let Some(place) = Place::around(path.points.iter().copied()) else {
            return;
        };
        if path.clips {
            state.clip = state.clip.within(&place);
        }
        if operator != "n" {
            self.draw(place.within(&state.clip));
        }
        let is_filled = matches!(operator, "f" | "F" | "f*" | "B" | "B*" | "b" | "b*");
        if is_filled && let Some(place) = path.rectangle() {
            let behind = self.ground(place.middle());
            let ink = over(state.ink, behind, state.opacity);
            self.grounds.push((place.within(&state.clip), ink));
        }
    }

    /// What is seen at a point so far.
    fn ground(&self, point: (f64, f64)) -> Ink {
        let mut grounds = self.grounds.iter().rev();
        let found = grounds.find(|(place, _)| place.holds(point));
        found.map_or(WHITE, |(_, ink)| *ink)
    }

    fn show(&mut self, shown: &[Object], state: &mut State) {
        let face = Rc::clone(state.face.as_ref().unwrap());
        let (mut text, mut width_em) = (String::new(), 0.0);
        // White space at the end is not seen.
        let mut seen_em = 0.0;
        for piece in shown {
            match piece {
                Object::String(codes, _) => {
                    for glyph in face.glyphs(codes) {
                        text.push_str(&glyph.text);
                        width_em += glyph.width_em;
                        if !glyph.text.trim().is_empty() {
                            seen_em = width_em;
                        }
                    }
                }
                kerning => width_em -= f64::from(kerning.as_float().unwrap()) / 1000.0,
            }
        }
        let matrix = state.text_matrix.then(&state.matrix);
        state.text_matrix = state.text_matrix.shifted(width_em * state.size, 0.0);
        if text.trim().is_empty() {
            return;
        }
        // Letters stand upwards in the matrix of text.
        let (above, below) = (ABOVE_EM * state.size, -BELOW_EM * state.size);
        let end = seen_em * state.size;
        let corners = [(0.0, below), (end, below), (end, above), (0.0, above)];
        let place = Place::around(corners.map(|corner| matrix.of(corner))).unwrap();
        let (x, y) = matrix.of((0.0, 0.0));
        let [a, b, c, d, ..] = matrix.0;
        let is_level = b.abs() < 0.01 * a.abs();
        let ground = self.ground(place.middle());
        let part = self.part();
        self.page.texts.push(Text {
            text,
            place,
            baseline: if is_level { y } else { x },
            size_pt: state.size * c.hypot(d),
            is_level,
            is_strong: face.is_strong,
            part,
            clip: state.clip,
            ink: over(state.ink, ground, state.opacity),
            ground,
        });
    }
}

fn over(ink: Ink, ground: Ink, opacity: f64) -> Ink {
    std::array::from_fn(|index| opacity * ink[index] + (1.0 - opacity) * ground[index])
}

/// Instructions that change the state or add to the path.
fn set(state: &mut State, path: &mut Path, operation: &Operation) {
    let values = numbers(&operation.operands);
    match (operation.operator.as_str(), &values[..]) {
        ("cm", &[a, b, c, d, e, f]) => {
            state.matrix = Matrix([a, b, c, d, e, f]).then(&state.matrix);
        }
        ("rg" | "sc" | "scn", &[red, green, blue]) => state.ink = [red, green, blue],
        ("g" | "sc" | "scn", &[grey]) => state.ink = [grey; 3],
        ("BT", _) => state.text_matrix = Matrix::NONE,
        ("Tm", &[a, b, c, d, e, f]) => state.text_matrix = Matrix([a, b, c, d, e, f]),
        ("m" | "l", &[x, y]) => path.points.push(state.matrix.of((x, y))),
        ("c", &[x1, y1, x2, y2, x, y]) => {
            path.has_curves = true;
            let points = [(x1, y1), (x2, y2), (x, y)];
            path.points
                .extend(points.map(|point| state.matrix.of(point)));
        }
        ("re", &[x, y, width, height]) => {
            let far = (x + width, y + height);
            let corners = [(x, y), (far.0, y), far, (x, far.1)];
            path.points
                .extend(corners.map(|corner| state.matrix.of(corner)));
        }
        ("W" | "W*", _) => path.clips = true,
        // What changes neither places nor the ink of text.
        (
            "h" | "ET" | "Tr" | "cs" | "CS" | "SCN" | "SC" | "G" | "RG" | "w" | "M" | "J" | "j"
            | "d" | "ri" | "i",
            _,
        ) => {}
        (other, values) => panic!("an instruction that reports do not have: {values:?} {other}"),
    }
}
