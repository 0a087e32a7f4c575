//! A message by its name in the message files, with what goes into it.

use std::borrow::Cow;
use std::fmt;

use super::phrase::Phrase;
use super::words::Words;

/// A message of the message files. Printed, it is English.
#[derive(Debug, Clone, PartialEq)]
pub struct Message {
    pub name: Cow<'static, str>,
    pub arguments: Vec<(&'static str, Phrase)>,
}

impl Message {
    /// A message without anything in it yet.
    pub fn new(name: impl Into<Cow<'static, str>>) -> Self {
        Message {
            name: name.into(),
            arguments: Vec::new(),
        }
    }

    /// The same message, with one thing more in it.
    #[must_use]
    pub fn with(mut self, argument: &'static str, phrase: impl Into<Phrase>) -> Self {
        self.arguments.push((argument, phrase.into()));
        self
    }
}

impl fmt::Display for Message {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&Words::english().say(self.clone()))
    }
}

/// `message!("counted-days", days = 3)`: a message of the message files, with
/// what goes into it.
///
/// ```
/// use simmerline::message;
///
/// let said = message!("month-3").to_string();
/// assert_eq!(said, "March");
/// ```
#[macro_export]
macro_rules! message {
    ($name:literal $(, $argument:ident = $phrase:expr)* $(,)?) => {
        $crate::language::Message::new($name)$(.with(stringify!($argument), $phrase))*
    };
}
