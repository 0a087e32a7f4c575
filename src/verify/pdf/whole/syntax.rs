//! Values as PDF writes them, read strictly.
//!
//! What readers take in different ways is refused rather than mended: a key twice in a
//! dictionary, a number with two points, a `#` in a name that starts no code.
//!
//! # Source
//! ISO 32000-1:2008, 7.2 (lexical conventions) and 7.3 (objects).

use lopdf::{Dictionary, Object, StringFormat};

use super::unreadable::Unreadable;
use crate::bounds::PDF_VALUES;

/// Deepest nesting of arrays and dictionaries.
const DEEPEST: usize = 64;
/// Longest number, characters: no reader needs more, and some break off.
const LONGEST_NUMBER: usize = 40;
/// A comment with one of these words would look to some readers like a part of the file.
const NOT_IN_COMMENTS: [&[u8]; 8] = [
    b"startxref",
    b"trailer",
    b"xref",
    b"obj",
    b"endobj",
    b"stream",
    b"endstream",
    b"EOF",
];

/// Most values of a file of so many bytes.
pub fn most_values(bytes: usize) -> usize {
    (bytes / 4).clamp(2_000_000, PDF_VALUES.count())
}

/// A place in a file, from which values are read.
#[derive(Clone)]
pub struct Cursor<'b> {
    pub bytes: &'b [u8],
    pub at: usize,
    /// Values that may yet be read.
    pub left: usize,
}

impl<'b> Cursor<'b> {
    pub fn new(bytes: &'b [u8], at: usize) -> Self {
        Cursor {
            bytes,
            at,
            left: PDF_VALUES.count(),
        }
    }

    pub fn rest(&self) -> &'b [u8] {
        self.bytes.get(self.at..).unwrap_or_default()
    }

    pub fn peek(&self) -> Option<u8> {
        self.bytes.get(self.at).copied()
    }

    /// Goes past white space, and past nothing else.
    pub fn skip_blanks(&mut self) {
        while self.peek().is_some_and(is_blank) {
            self.at += 1;
        }
    }

    /// Goes past white space and comments in a content, where no reader looks for parts of
    /// the file.
    pub fn skip_remarks(&mut self) {
        self.skip_blanks();
        while self.peek() == Some(b'%') {
            self.run(|byte| !matches!(byte, b'\r' | b'\n'));
            self.skip_blanks();
        }
    }

    /// Goes past white space and comments.
    ///
    /// # Errors
    /// A comment that looks like a part of the file.
    pub fn skip_space(&mut self) -> Result<(), Unreadable> {
        loop {
            self.skip_blanks();
            if self.peek() != Some(b'%') {
                return Ok(());
            }
            let comment = self.run(|byte| !matches!(byte, b'\r' | b'\n'));
            let mut words = comment.split(|byte| !is_regular(*byte));
            if words.any(|word| NOT_IN_COMMENTS.contains(&word)) {
                return Err(Unreadable::two_readings(format!(
                    "has a comment that looks like a part of the file (byte {})",
                    self.at
                )));
            }
        }
    }

    /// Goes past a keyword, if it is the next thing here.
    pub fn eat(&mut self, word: &[u8]) -> bool {
        let ends = |rest: &[u8]| rest.get(word.len()).is_none_or(|byte| !is_regular(*byte));
        let is_here = self.rest().starts_with(word) && ends(self.rest());
        self.at += if is_here { word.len() } else { 0 };
        is_here
    }

    /// Goes past a keyword that has to be here.
    ///
    /// # Errors
    /// It is not.
    pub fn expect(&mut self, word: &str) -> Result<(), Unreadable> {
        self.skip_blanks();
        match self.eat(word.as_bytes()) {
            true => Ok(()),
            false => Err(self.fault(&format!("there is no \"{word}\""))),
        }
    }

    /// A whole number without a sign.
    ///
    /// # Errors
    /// There is none.
    pub fn whole(&mut self) -> Result<u64, Unreadable> {
        let digits = self.run(|byte| byte.is_ascii_digit());
        let number = std::str::from_utf8(digits)
            .ok()
            .and_then(|digits| digits.parse().ok());
        match number {
            Some(number) if !self.peek().is_some_and(is_regular) => Ok(number),
            _ => Err(self.fault("there is no whole number")),
        }
    }

    pub fn fault(&self, what: &str) -> Unreadable {
        Unreadable::damaged(what, self.at)
    }

    fn run(&mut self, is_so: impl Fn(u8) -> bool) -> &'b [u8] {
        let rest = self.rest();
        let length = rest
            .iter()
            .position(|byte| !is_so(*byte))
            .unwrap_or(rest.len());
        self.at += length;
        &rest[..length]
    }

    /// The next word: a keyword or an operator.
    pub fn word(&mut self) -> &'b [u8] {
        self.run(is_regular)
    }

    /// The next value; of a stream, its dictionary.
    ///
    /// # Errors
    /// It breaks off, or readers would take it in different ways.
    pub fn value(&mut self) -> Result<Object, Unreadable> {
        self.nested(DEEPEST)
    }

    fn nested(&mut self, depth: usize) -> Result<Object, Unreadable> {
        let depth = depth
            .checked_sub(1)
            .ok_or_else(|| self.fault("values are nested too deep"))?;
        self.left = self
            .left
            .checked_sub(1)
            .ok_or_else(|| self.fault("it holds more values than any report"))?;
        self.skip_blanks();
        match self.peek() {
            Some(b'/') => Ok(Object::Name(self.name()?)),
            Some(b'(') => Ok(Object::String(self.literal()?, StringFormat::Literal)),
            Some(b'[') => self.array(depth),
            Some(b'<') if self.bytes.get(self.at + 1) == Some(&b'<') => {
                self.dictionary(depth).map(Object::Dictionary)
            }
            Some(b'<') => Ok(Object::String(
                self.hexadecimal()?,
                StringFormat::Hexadecimal,
            )),
            Some(b'0'..=b'9') => match self.reference() {
                Some(reference) => Ok(reference),
                None => self.number(),
            },
            Some(b'-' | b'.') => self.number(),
            _ if self.eat(b"true") => Ok(Object::Boolean(true)),
            _ if self.eat(b"false") => Ok(Object::Boolean(false)),
            _ if self.eat(b"null") => Ok(Object::Null),
            _ => Err(self.fault("there is no value")),
        }
    }

    /// A reference, as `12 0 R`, if one begins here.
    fn reference(&mut self) -> Option<Object> {
        let mut ahead = self.clone();
        let number = ahead.whole().ok()?;
        ahead.skip_blanks();
        let generation = ahead.whole().ok()?;
        ahead.skip_blanks();
        let id = (number.try_into().ok()?, generation.try_into().ok()?);
        ahead.eat(b"R").then(|| {
            self.at = ahead.at;
            Object::Reference(id)
        })
    }

    fn number(&mut self) -> Result<Object, Unreadable> {
        let start = self.at;
        let word = self.word();
        let text = std::str::from_utf8(word).unwrap_or_default();
        let digits = text.strip_prefix('-').unwrap_or(text);
        let is_plain = digits
            .bytes()
            .all(|byte| byte.is_ascii_digit() || byte == b'.')
            && digits.bytes().any(|byte| byte.is_ascii_digit())
            && digits.matches('.').count() <= 1
            && text.len() <= LONGEST_NUMBER;
        let fault = || Unreadable::damaged("a number is not as PDF writes one", start);
        if !is_plain {
            return Err(fault());
        }
        if digits.contains('.') {
            return text.parse().map(Object::Real).map_err(|_| fault());
        }
        text.parse().map(Object::Integer).map_err(|_| fault())
    }

    fn name(&mut self) -> Result<Vec<u8>, Unreadable> {
        self.at += 1;
        let word = self.word();
        let fault = || {
            Unreadable::two_readings(format!(
                "has a name that readers spell differently (byte {})",
                self.at
            ))
        };
        let (mut name, mut rest) = (Vec::with_capacity(word.len()), word.iter());
        while let Some(&byte) = rest.next() {
            let byte = match byte {
                b'#' => {
                    let mut digit = || char::from(*rest.next()?).to_digit(16);
                    let code = digit().zip(digit());
                    let byte = code.map(|(high, low)| (high << 4 | low) as u8);
                    // What needs no code is written without one, and 0 is in no name.
                    let is_so = |byte: &u8| {
                        *byte != 0
                            && (*byte == b'#' || !byte.is_ascii_graphic() || !is_regular(*byte))
                    };
                    byte.filter(is_so).ok_or_else(fault)?
                }
                byte => byte,
            };
            name.push(byte);
        }
        Ok(name)
    }

    fn array(&mut self, depth: usize) -> Result<Object, Unreadable> {
        self.at += 1;
        let mut items = Vec::new();
        loop {
            self.skip_blanks();
            if self.peek() == Some(b']') {
                self.at += 1;
                return Ok(Object::Array(items));
            }
            items.push(self.nested(depth)?);
        }
    }

    /// A dictionary, whose keys all differ.
    fn dictionary(&mut self, depth: usize) -> Result<Dictionary, Unreadable> {
        self.at += 2;
        let mut dictionary = Dictionary::new();
        loop {
            self.skip_blanks();
            match self.peek() {
                Some(b'>') if self.bytes.get(self.at + 1) == Some(&b'>') => {
                    self.at += 2;
                    return Ok(dictionary);
                }
                Some(b'/') => {}
                _ => return Err(self.fault("a dictionary breaks off")),
            }
            let place = self.at;
            let key = self.name()?;
            if dictionary.has(&key) {
                return Err(Unreadable::two_readings(format!(
                    "has the key /{} twice in one dictionary (byte {place}): of two, each reader takes another",
                    String::from_utf8_lossy(&key).escape_debug()
                )));
            }
            let value = self.nested(depth)?;
            dictionary.set(key, value);
        }
    }

    fn hexadecimal(&mut self) -> Result<Vec<u8>, Unreadable> {
        self.at += 1;
        let inside = self.run(|byte| byte != b'>');
        if self.peek().is_none() {
            return Err(self.fault("a string breaks off"));
        }
        self.at += 1;
        let digits = inside.iter().filter(|byte| !is_blank(**byte));
        let digits = digits.map(|byte| char::from(*byte).to_digit(16).map(|digit| digit as u8));
        let digits: Option<Vec<u8>> = digits.collect();
        let digits = digits.ok_or_else(|| self.fault("a string has something else than digits"))?;
        let byte = |pair: &[u8]| pair[0] << 4 | pair.get(1).unwrap_or(&0);
        Ok(digits.chunks(2).map(byte).collect())
    }

    /// A string in parentheses.
    ///
    /// # Source
    /// ISO 32000-1:2008, 7.3.4.2.
    fn literal(&mut self) -> Result<Vec<u8>, Unreadable> {
        self.at += 1;
        let (mut string, mut depth) = (Vec::new(), 1_usize);
        while let Some(byte) = self.peek() {
            self.at += 1;
            match byte {
                b'\\' => {
                    string.extend(self.escaped()?);
                    continue;
                }
                // An end of line is one line feed, however it is written.
                b'\r' => {
                    self.at += usize::from(self.peek() == Some(b'\n'));
                    string.push(b'\n');
                    continue;
                }
                b'(' => depth += 1,
                b')' => depth -= 1,
                _ => {}
            }
            if depth == 0 {
                return Ok(string);
            }
            string.push(byte);
        }
        Err(self.fault("a string breaks off"))
    }

    /// What stands behind a backslash; nothing, where the string only goes on in the next line.
    fn escaped(&mut self) -> Result<Option<u8>, Unreadable> {
        let Some(byte) = self.peek() else {
            return Ok(None);
        };
        self.at += 1;
        Ok(Some(match byte {
            b'n' => b'\n',
            b'r' => b'\r',
            b't' => b'\t',
            b'b' => b'\x08',
            b'f' => b'\x0c',
            b'\n' => return Ok(None),
            b'\r' => {
                self.at += usize::from(self.peek() == Some(b'\n'));
                return Ok(None);
            }
            b'0'..=b'7' => {
                self.at -= 1;
                let digits = self.rest().iter().take(3);
                let digits = digits.take_while(|byte| matches!(byte, b'0'..=b'7'));
                let (count, value) = digits.fold((0, 0_u32), |(count, value), digit| {
                    (count + 1, value * 8 + u32::from(digit - b'0'))
                });
                self.at += count;
                // What does not fit into a byte some readers cut, and others do not.
                u8::try_from(value).map_err(|_| self.fault("a string has a code beyond a byte"))?
            }
            b'(' | b')' | b'\\' => byte,
            // The standard drops the backslash; not every reader does.
            _ => return Err(self.fault("a string has a code that there is not")),
        }))
    }
}

/// White space of PDF, but for NUL, which some readers take for a letter.
pub fn is_blank(byte: u8) -> bool {
    matches!(byte, b'\t' | b'\n' | b'\x0c' | b'\r' | b' ')
}

/// What names, numbers and keywords are made of.
pub fn is_regular(byte: u8) -> bool {
    let delimits = matches!(
        byte,
        b'(' | b')' | b'<' | b'>' | b'[' | b']' | b'{' | b'}' | b'/' | b'%'
    );
    !is_blank(byte) && !delimits
}
