//! What a page's drawing instructions say, as reports are drawn: text is in composite fonts,
//! two bytes a glyph, and each font says which characters its glyphs stand for.
//!
//! # Source
//! ISO 32000-1:2008, 7.8.2 (content streams), 9.10.3 (ToUnicode maps).

use std::collections::HashMap;

use lopdf::Object;

use super::unpack::Fault;
use super::whole::syntax::{Cursor, is_regular};

/// Longest text of one glyph, UTF-16 units: a ligature has three.
const LONGEST_GLYPH: usize = 8;
/// What a glyph without a character is taken for.
const UNKNOWN: char = '\u{fffd}';
/// Most values of one operand.
const MOST_VALUES: usize = 100_000;
/// Longest text that one operator shows, bytes.
const LONGEST_TEXT: usize = 1 << 20;
/// Most operands before an operator; maps of characters list a hundred pairs.
const MOST_OPERANDS: usize = 1024;

/// Characters by glyph code.
#[derive(Debug, Default)]
pub struct Characters(HashMap<u16, String>);

impl Characters {
    /// Reads a font's `ToUnicode` map, as far as it lists single codes; ranges, of which
    /// reports have none, are passed over.
    ///
    /// # Errors
    /// It cannot be read.
    pub fn parse(map: &[u8]) -> Result<Self, Fault> {
        let mut characters = HashMap::new();
        instructions(map, |operator, operands| {
            if operator == b"endbfchar" {
                for pair in operands.chunks_exact(2) {
                    if let [Object::String(code, _), Object::String(text, _)] = pair
                        && let [high, low] = code[..]
                    {
                        characters.insert(u16::from_be_bytes([high, low]), utf16(text));
                    }
                }
            }
            Ok(())
        })?;
        Ok(Characters(characters))
    }

    /// The characters of some glyph codes, without white space, which a line break may put
    /// anywhere.
    ///
    /// # Errors
    /// There is more of it than any page has.
    pub fn text(&self, codes: &[u8]) -> Result<String, Fault> {
        let mut text = String::new();
        for code in codes.chunks(2) {
            let known = match *code {
                [high, low] => self.0.get(&u16::from_be_bytes([high, low])),
                _ => None,
            };
            match known {
                Some(characters) => text.extend(characters.chars().filter(|c| !c.is_whitespace())),
                None => text.push(UNKNOWN),
            }
            if text.len() > LONGEST_TEXT {
                return Err(Fault::TooLarge);
            }
        }
        Ok(text)
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

/// Hands over each operator with its operands, in their order.
///
/// # Errors
/// [`Fault::Damaged`] for what is no instruction, and what `take` finds wrong.
pub fn instructions(
    content: &[u8],
    mut take: impl FnMut(&[u8], &[Object]) -> Result<(), Fault>,
) -> Result<(), Fault> {
    let mut cursor = Cursor::new(content, 0);
    let mut operands = Vec::new();
    loop {
        cursor.skip_remarks();
        let Some(byte) = cursor.peek() else {
            return match operands.is_empty() {
                true => Ok(()),
                false => Err(Fault::Damaged),
            };
        };
        cursor.left = MOST_VALUES;
        match cursor.value() {
            Ok(_) if operands.len() == MOST_OPERANDS => return Err(Fault::Damaged),
            Ok(operand) => operands.push(operand),
            Err(_) if is_regular(byte) && !matches!(byte, b'0'..=b'9' | b'+' | b'-' | b'.') => {
                let operator = cursor.word();
                take(operator, &operands)?;
                operands.clear();
            }
            Err(_) => return Err(Fault::Damaged),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn characters() -> Characters {
        let map = b"/CMapName /x def 1 begincodespacerange <0000> <FFFF> endcodespacerange
            3 beginbfchar <0001> <0041> <0002> <00660069> <0003> <D835DC00> endbfchar
            1 beginbfrange <0000> <FFFF> <0000> endbfrange";
        Characters::parse(map).unwrap()
    }

    #[test]
    fn codes_become_characters() {
        let text = |codes: &[u8]| characters().text(codes).unwrap();
        assert_eq!(text(b"\0\x01\0\x02\0\x03"), "Afi\u{1d400}");
        assert_eq!(text(b"\0\x09\0"), "\u{fffd}\u{fffd}");
        let long = vec![0; 2 << 20];
        assert!(matches!(characters().text(&long), Err(Fault::TooLarge)));
    }

    fn read(content: &str) -> Result<Vec<String>, Fault> {
        let mut read = Vec::new();
        instructions(content.as_bytes(), |operator, operands| {
            let operator = String::from_utf8_lossy(operator);
            read.push(format!("{} {operator}", operands.len()));
            Ok(())
        })?;
        Ok(read)
    }

    #[test]
    fn operators_come_with_their_operands() {
        let content = "BT /f0 8 Tf [<0001> -5 (a \\) (b) c)] TJ % <0001> Tj\n ET Q* 1 .5 -2. '";
        let read = read(content).unwrap_or_default();
        assert_eq!(read, ["0 BT", "2 Tf", "1 TJ", "0 ET", "0 Q*", "3 '"]);
    }

    #[test]
    fn cut_off_instructions_are_damaged() {
        for text in [
            "<00", "(abc", "(abc\\", "(\\0", "<<", "<", "1 2", "[1 2", "]", "1.2.3 w",
        ] {
            assert!(matches!(read(text), Err(Fault::Damaged)), "{text}");
        }
    }
}
