//! From one question to the next, and back.

use super::answers::Answers;
use super::questions::Question;
use crate::entry::value::Refusal;

/// Questions that are put one after the other.
#[derive(Debug, Clone)]
pub struct Interview {
    pub answers: Answers,
    /// Those that are put, if they apply.
    asked: Vec<Question>,
    /// Of those that were answered: which, and what was known before.
    before: Vec<(usize, Answers)>,
    /// Of the next question.
    at: usize,
    /// What was typed before somebody went back.
    typed: Vec<(Question, String)>,
}

/// What became of an answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// It is taken, with what was understood, where that is more than what was typed.
    Taken(Option<String>),
    /// It is put again, or the one before it is.
    Back,
    /// Somebody wants to know more.
    Help,
    /// Nothing is to be written.
    Quit,
    Refused(Refusal),
}

impl Interview {
    /// Puts questions, of which some may be answered already.
    pub fn new(answers: Answers, asked: Vec<Question>) -> Self {
        Interview {
            answers,
            asked,
            before: Vec::new(),
            at: 0,
            typed: Vec::new(),
        }
    }

    /// The next question; `None` where all are answered.
    pub fn question(&mut self) -> Option<Question> {
        while let Some(question) = self.asked.get(self.at) {
            if question.applies(&self.answers) {
                return Some(*question);
            }
            self.at += 1;
        }
        None
    }

    /// What an empty line stands for: what was typed before, or else the answer that the question
    /// offers.
    pub fn offers(&self, question: Question) -> Option<String> {
        let typed = self.typed.iter().rev().find(|(of, _)| *of == question);
        let typed = typed.map(|(_, text)| text.clone());
        typed.or_else(|| question.offers(&self.answers))
    }

    /// Which question it is of how many, counted from 1.
    pub fn position(&self) -> (usize, usize) {
        let applying = |questions: &[Question]| {
            let applying = questions.iter().filter(|one| one.applies(&self.answers));
            applying.count()
        };
        (applying(&self.asked[..self.at]) + 1, applying(&self.asked))
    }

    /// Takes what was typed: an answer, nothing for the one that is offered, or a command.
    pub fn take(&mut self, text: &str) -> Outcome {
        let Some(question) = self.question() else {
            return Outcome::Taken(None);
        };
        match text.trim().to_lowercase().as_str() {
            "back" => {
                if let Some((at, answers)) = self.before.pop() {
                    (self.at, self.answers) = (at, answers);
                }
                return Outcome::Back;
            }
            "help" | "?" => return Outcome::Help,
            "quit" | "q" => return Outcome::Quit,
            _ => {}
        }
        let offered = self.offers(question);
        let text = match (text.trim(), offered) {
            ("", Some(offered)) => offered,
            ("", None) => {
                return Outcome::Refused(Refusal::new(
                    "found nothing, and there is no answer to offer",
                    "type one, back for the question before, or quit to write nothing",
                ));
            }
            (text, _) => text.to_owned(),
        };
        let mut answers = self.answers.clone();
        match question.take(&mut answers, &text) {
            Ok(said) => {
                let before = std::mem::replace(&mut self.answers, answers);
                self.before.push((self.at, before));
                self.typed.push((question, text));
                self.at += 1;
                Outcome::Taken(said)
            }
            Err(refusal) => Outcome::Refused(refusal),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::kinds::RunKind;

    fn answered(texts: &[&str]) -> Interview {
        let mut interview = Interview::new(Answers::default(), Question::ALL.to_vec());
        for text in texts {
            let outcome = interview.take(text);
            assert!(matches!(outcome, Outcome::Taken(_)), "{text}: {outcome:?}");
        }
        interview
    }

    const US: [&str; 8] = [
        "us",
        "Basket (invented)",
        "panel",
        "36 x 24 in",
        "",
        "35.08, -106.65",
        "5312",
        "",
    ];

    #[test]
    fn answers_lead_to_the_end_and_what_is_offered_is_taken() {
        let mut interview = answered(&US);
        assert_eq!(
            interview.answers.time_zone.as_deref(),
            Some("America/Denver")
        );
        assert_eq!(interview.answers.elevation.as_deref(), Some("5312 ft"));
        assert_eq!(interview.question(), Some(Question::Kind));
        assert_eq!(interview.position(), (9, 13));
        assert_eq!(interview.take(""), Outcome::Taken(None));
        // 7 kg/m² of 6 ft² (0.5574 m²) are 3.902 kg, 8.6 lb.
        let said = interview.take("");
        assert_eq!(said, Outcome::Taken(Some("7.0 kg per m²".to_owned())));
        assert_eq!(interview.answers.water.as_deref(), Some("8.6 lb"));
        for text in ["", "1", "yes"] {
            assert!(matches!(interview.take(text), Outcome::Taken(_)));
        }
        assert_eq!(interview.question(), None);
    }

    #[test]
    fn back_undoes_an_answer_and_what_it_led_to() {
        let mut interview = answered(&US);
        assert_eq!(interview.take("dry"), Outcome::Taken(None));
        assert_eq!(
            interview.question(),
            Some(Question::Thermometer),
            "no water"
        );
        assert_eq!(interview.take("back"), Outcome::Back);
        assert_eq!(interview.question(), Some(Question::Kind));
        assert_eq!(interview.answers.kind(), RunKind::Water);
        assert_eq!(interview.offers(Question::Kind).as_deref(), Some("dry"));
        assert_eq!(
            interview.offers(Question::Opening).as_deref(),
            Some("36 x 24 in")
        );
        for _ in 0..20 {
            interview.take("back");
        }
        assert_eq!(interview.question(), Some(Question::Units));
    }

    #[test]
    fn what_cannot_be_is_refused_and_asked_again() {
        let mut interview = answered(&US[..3]);
        for text in ["", "huge", "7 kg", "0 x 3"] {
            assert!(
                matches!(interview.take(text), Outcome::Refused(_)),
                "{text}"
            );
            assert_eq!(interview.question(), Some(Question::Opening));
        }
        assert_eq!(interview.take("?"), Outcome::Help);
        assert_eq!(interview.take("quit"), Outcome::Quit);
    }
}
