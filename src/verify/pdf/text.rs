//! The words in a page's drawing instructions, as reports are drawn: text is in composite
//! fonts, two bytes a glyph, and each font says which characters its glyphs stand for.

use std::collections::{BTreeMap, HashMap};

/// Longest text of one glyph, UTF-16 units: a ligature has three.
const LONGEST_GLYPH: usize = 8;
/// What a glyph without a character is taken for.
const UNKNOWN: char = '\u{fffd}';

/// Characters by glyph code.
#[derive(Debug, Default)]
pub struct Characters(HashMap<u16, String>);

impl Characters {
    /// Reads a font's `ToUnicode` map, as far as it lists single codes; ranges, of which
    /// reports have none, are passed over.
    pub fn parse(map: &[u8]) -> Self {
        let mut characters = HashMap::new();
        let mut lexer = Lexer::new(map);
        let mut strings: Vec<Vec<u8>> = Vec::new();
        while let Some(token) = lexer.next() {
            match token {
                Token::String(bytes) => strings.push(bytes),
                Token::Word(b"endbfchar") => {
                    for pair in strings.chunks_exact(2) {
                        if let [high, low] = pair[0][..] {
                            characters.insert(u16::from_be_bytes([high, low]), utf16(&pair[1]));
                        }
                    }
                    strings.clear();
                }
                Token::Word(_) => strings.clear(),
                Token::Name(_) => {}
            }
        }
        Characters(characters)
    }

    fn write(&self, codes: &[u8], text: &mut String) {
        for code in codes.chunks(2) {
            let known = match *code {
                [high, low] => self.0.get(&u16::from_be_bytes([high, low])),
                _ => None,
            };
            match known {
                Some(characters) => text.extend(characters.chars().filter(|c| !c.is_whitespace())),
                None => text.push(UNKNOWN),
            }
        }
    }
}

fn utf16(bytes: &[u8]) -> String {
    let units = bytes
        .chunks_exact(2)
        .take(LONGEST_GLYPH)
        .map(|unit| u16::from_be_bytes([unit[0], unit[1]]));
    let decoded = char::decode_utf16(units);
    decoded
        .map(|character| character.unwrap_or(UNKNOWN))
        .collect()
}

/// All text that drawing instructions show, in their order, without white space, which a line
/// break may put anywhere.
pub fn shown_text(instructions: &[u8], fonts: &BTreeMap<Vec<u8>, &Characters>) -> String {
    let none = Characters::default();
    let mut font = &none;
    let mut text = String::new();
    let (mut name, mut strings): (&[u8], Vec<Vec<u8>>) = (b"", Vec::new());
    let mut lexer = Lexer::new(instructions);
    while let Some(token) = lexer.next() {
        match token {
            Token::Name(found) => name = found,
            Token::String(bytes) => strings.push(bytes),
            Token::Word(word) if is_number(word) => {}
            Token::Word(operator) => {
                match operator {
                    b"Tf" => font = fonts.get(name).copied().unwrap_or(&none),
                    b"Tj" | b"TJ" | b"'" | b"\"" => {
                        strings
                            .iter()
                            .for_each(|codes| font.write(codes, &mut text));
                    }
                    _ => {}
                }
                strings.clear();
            }
        }
    }
    text
}

fn is_number(word: &[u8]) -> bool {
    word.iter()
        .all(|byte| matches!(byte, b'0'..=b'9' | b'+' | b'-' | b'.'))
}

/// What instructions are made of; brackets do not matter here.
enum Token<'b> {
    Name(&'b [u8]),
    String(Vec<u8>),
    /// A number or an operator.
    Word(&'b [u8]),
}

struct Lexer<'b> {
    bytes: &'b [u8],
    at: usize,
}

impl<'b> Lexer<'b> {
    fn new(bytes: &'b [u8]) -> Self {
        Lexer { bytes, at: 0 }
    }

    fn next(&mut self) -> Option<Token<'b>> {
        loop {
            let byte = *self.bytes.get(self.at)?;
            self.at += 1;
            match byte {
                b'%' => {
                    self.run(|byte| !matches!(byte, b'\r' | b'\n'));
                }
                b'/' => return Some(Token::Name(self.run(is_regular))),
                b'(' => return Some(Token::String(self.literal())),
                b'<' if self.bytes.get(self.at) == Some(&b'<') => self.at += 1,
                b'<' => return Some(Token::String(self.hexadecimal())),
                _ if is_regular(byte) => {
                    self.at -= 1;
                    return Some(Token::Word(self.run(is_regular)));
                }
                _ => {}
            }
        }
    }

    /// The bytes from here that are so.
    fn run(&mut self, is_so: impl Fn(u8) -> bool) -> &'b [u8] {
        let rest = &self.bytes[self.at..];
        let length = rest
            .iter()
            .position(|byte| !is_so(*byte))
            .unwrap_or(rest.len());
        self.at += length;
        &rest[..length]
    }

    fn hexadecimal(&mut self) -> Vec<u8> {
        let digits = self.run(|byte| byte != b'>');
        self.at += 1;
        let digits = digits
            .iter()
            .filter_map(|byte| char::from(*byte).to_digit(16));
        let digits: Vec<u8> = digits.map(|digit| digit as u8).collect();
        let byte = |pair: &[u8]| pair[0] << 4 | pair.get(1).unwrap_or(&0);
        digits.chunks(2).map(byte).collect()
    }

    /// A string in parentheses.
    ///
    /// # Source
    /// ISO 32000-1:2008, 7.3.4.2.
    fn literal(&mut self) -> Vec<u8> {
        let (mut string, mut depth) = (Vec::new(), 1);
        while let Some(&byte) = self.bytes.get(self.at) {
            self.at += 1;
            match byte {
                b'\\' => {
                    string.extend(self.escaped());
                    continue;
                }
                b'(' => depth += 1,
                b')' => depth -= 1,
                _ => {}
            }
            if depth == 0 {
                break;
            }
            string.push(byte);
        }
        string
    }

    /// What stands behind a backslash; nothing, where it only goes on in the next line.
    fn escaped(&mut self) -> Option<u8> {
        let byte = *self.bytes.get(self.at)?;
        self.at += 1;
        Some(match byte {
            b'n' => b'\n',
            b'r' => b'\r',
            b't' => b'\t',
            b'b' => b'\x08',
            b'f' => b'\x0c',
            b'\n' => return None,
            b'\r' => {
                self.at += usize::from(self.bytes.get(self.at) == Some(&b'\n'));
                return None;
            }
            b'0'..=b'7' => {
                self.at -= 1;
                let rest = &self.bytes[self.at..];
                let digits = rest
                    .iter()
                    .take(3)
                    .take_while(|byte| matches!(byte, b'0'..=b'7'));
                let (count, value) = digits.fold((0, 0_u32), |(count, value), digit| {
                    (count + 1, value * 8 + u32::from(digit - b'0'))
                });
                self.at += count;
                // What does not fit into a byte is passed over, as the standard asks.
                (value & 0xff) as u8
            }
            other => other,
        })
    }
}

fn is_regular(byte: u8) -> bool {
    !matches!(
        byte,
        b'\0'
            | b'\t'
            | b'\n'
            | b'\x0c'
            | b'\r'
            | b' '
            | b'('
            | b')'
            | b'<'
            | b'>'
            | b'['
            | b']'
            | b'{'
            | b'}'
            | b'/'
            | b'%'
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(instructions: &str) -> String {
        let map = b"/CMapName /x def 1 begincodespacerange <0000> <FFFF> endcodespacerange
            3 beginbfchar <0001> <0041> <0002> <00660069> <0003> <D835DC00> endbfchar
            1 beginbfrange <0000> <FFFF> <0000> endbfrange";
        let characters = Characters::parse(map);
        let fonts = BTreeMap::from([(b"f0".to_vec(), &characters)]);
        shown_text(instructions.as_bytes(), &fonts)
    }

    #[test]
    fn codes_become_characters() {
        assert_eq!(
            shown("BT /f0 8 Tf [<0001> -5 <00020003>] TJ ET"),
            "Afi\u{1d400}"
        );
        assert_eq!(shown("/f0 8 Tf <0001>Tj /f9 8 Tf <0001>Tj"), "A\u{fffd}");
        assert_eq!(shown("/f0 8 Tf <0009>Tj <00> Tj"), "\u{fffd}\u{fffd}");
    }

    #[test]
    fn what_is_not_shown_is_left_out() {
        assert_eq!(
            shown("/f0 8 Tf /Span <</Alt (a \\) (b) c)>> BDC <0001> Tj % <0001> Tj"),
            "A"
        );
        assert_eq!(shown("/f0 8 Tf (\0\u{1}) Tj"), "A");
        assert_eq!(
            shown("/f0 8 Tf [(\\000\\001)5(\\0\\2\\0\\\n\\003)]TJ"),
            "Afi\u{1d400}"
        );
    }

    #[test]
    fn cut_off_instructions_end() {
        for text in ["<00", "(abc", "(abc\\", "(\\0", "/", "<<", "<"] {
            assert_eq!(shown(text), "", "{text}");
        }
    }
}
