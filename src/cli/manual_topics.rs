//! The topics of the manual: files of `templates/manual`, which can be read in the repository as
//! well.

/// A part of the manual.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Topic {
    /// As it is asked for.
    pub name: &'static str,
    /// As it is written: its title behind `#`, then its text.
    text: &'static str,
}

macro_rules! topics {
    ($($name:literal)+) => {
        [$(Topic {
            name: $name,
            text: include_str!(concat!("../../templates/manual/", $name, ".md")),
        }),+]
    };
}

/// Every topic, in the order in which one would read them.
pub const TOPICS: [Topic; 17] = topics! {
    "campaign" "thermometer" "kinds" "logs" "reports" "rating" "uncertainty" "limitations"
    "procedures" "cooking" "comparing" "handing-over" "verify" "data" "many" "ci" "cautions"
};

impl Topic {
    /// The topic of a name.
    pub fn of_name(name: &str) -> Option<Topic> {
        TOPICS.into_iter().find(|topic| topic.name == name)
    }

    /// Its title, and the text below it.
    pub fn parts(&self) -> (&'static str, &'static str) {
        let (title, text) = self.text.split_once('\n').unwrap_or((self.text, ""));
        (title.trim_start_matches("# "), text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cli::manual_text::blocks;

    #[test]
    fn every_topic_has_a_name_of_its_own_a_title_and_a_text() {
        for (index, topic) in TOPICS.iter().enumerate() {
            assert!(topic.text.starts_with("# "), "{}", topic.name);
            assert!(!blocks(topic.parts().1).is_empty(), "{}", topic.name);
            let others = &TOPICS[index + 1..];
            assert!(others.iter().all(|other| other.name != topic.name));
        }
    }

    /// Else it would be set as a paragraph.
    #[test]
    fn topics_are_written_in_what_can_be_set() {
        for topic in TOPICS {
            for part in topic.parts().1.split("```").step_by(2) {
                for line in part.lines() {
                    let unknown = ["###", "* ", "+ ", "> ", "<", "![", "---", "1. "];
                    let starts = unknown.iter().find(|start| line.starts_with(**start));
                    assert_eq!(starts, None, "{}: {line}", topic.name);
                }
            }
        }
    }
}
