//! The message files against the glossary of the contributor's guide: one term for one thing, and
//! no word that was wrong before.

use std::fs;

use simmerline::language::{LANGUAGES, Language};

use super::files::messages_of;

/// An English term, and what a message that has it says in each other language: one of these.
struct Term {
    english: &'static str,
    es: &'static [&'static str],
    fr: &'static [&'static str],
    pt: &'static [&'static str],
    sw: &'static [&'static str],
    /// Messages that rightly say it otherwise.
    but: &'static [&'static str],
}

const TERMS: &[Term] = &[
    Term {
        english: "irradiance",
        es: &["irradian", "irrad."],
        fr: &["irradian", "irrad."],
        pt: &["irradiân", "irrad."],
        sw: &["mnuru"],
        // A name of a table of the campaign file; beam irradiance.
        but: &[
            "finding-irradiance-plane-not-stated-remedy",
            "figure-optical-factor-not-with",
        ],
    },
    Term {
        english: "intercept area",
        es: &["área de captación"],
        fr: &["surface de captation"],
        pt: &["área de captação"],
        sw: &["eneo la kupokea mwanga"],
        but: &[],
    },
    Term {
        english: "cooking power",
        es: &["potencia de cocción"],
        fr: &["puissance de cuisson"],
        pt: &["potência de cozimento"],
        sw: &["nguvu ya kupikia", "nguvu sanifu ya kupikia"],
        but: &[],
    },
    Term {
        english: "heat balance",
        es: &["balance térmico", "balances térmicos"],
        fr: &["bilan thermique", "bilans thermiques"],
        pt: &["balanço térmico", "balanços térmicos"],
        sw: &["mizania ya joto", "mizania za joto"],
        but: &[],
    },
    Term {
        english: "acceptance half angle",
        es: &["semiángulo de aceptación"],
        fr: &["demi-angle d'acceptance"],
        pt: &["semiângulo de aceitação"],
        sw: &["nusu ya pembe ya kupokea mwanga"],
        but: &[],
    },
    Term {
        english: "dry vessel",
        es: &["recipiente vacío", "recipientes vacíos"],
        fr: &[
            "récipient à sec",
            "récipients à sec",
            "récipient sec",
            "récipient vide",
        ],
        pt: &["recipiente seco", "recipientes secos"],
        sw: &["chombo kikavu", "vyombo vikavu"],
        // Empty and dry.
        but: &["plan-dry-begin"],
    },
    Term {
        english: "uncertainty",
        es: &["incertidumbre"],
        fr: &["incertitude"],
        pt: &["incerteza"],
        sw: &["utovu"],
        but: &[],
    },
    Term {
        english: "resolution",
        es: &["resolución"],
        fr: &["résolution"],
        pt: &["resolução"],
        sw: &["upambanuzi"],
        but: &[],
    },
    Term {
        english: "influential",
        es: &["influyente"],
        fr: &["influent"],
        pt: &["influente"],
        sw: &["athari kubwa"],
        but: &[],
    },
    Term {
        english: "guard band",
        es: &["banda de guarda"],
        fr: &["bande de garde"],
        pt: &["banda de guarda"],
        sw: &["ukanda wa tahadhari"],
        but: &[],
    },
    Term {
        english: "the standard",
        es: &["norma"],
        fr: &["norme"],
        pt: &["norma"],
        sw: &["kiwango"],
        but: &[],
    },
    Term {
        english: "tester",
        es: &["operador"],
        fr: &["opérateur"],
        pt: &["operador"],
        sw: &["mpimaji", "wapimaji"],
        but: &[],
    },
    Term {
        english: "shortcoming",
        es: &["deficiencia"],
        fr: &["écart"],
        pt: &["deficiência"],
        sw: &["kasoro"],
        but: &[],
    },
    Term {
        english: "common practice",
        es: &["práctica habitual"],
        fr: &["pratique courante"],
        pt: &["prática comum"],
        sw: &["mazoea ya kawaida"],
        but: &[],
    },
];

impl Term {
    fn in_language(&self, code: &str) -> &'static [&'static str] {
        match code {
            "es" => self.es,
            "fr" => self.fr,
            "pt" => self.pt,
            "sw" => self.sw,
            other => panic!("no terms of {other}"),
        }
    }
}

/// A word that was wrong, in its language, with what to say. It counts from the start of a word,
/// and to its end unless it ends with "…".
struct Wrong {
    code: &'static str,
    word: &'static str,
    better: &'static str,
    /// Beginnings of names of messages that may have it.
    but: &'static [&'static str],
}

/// Messages that name the practice of licensed people.
const OF_LICENSED: &[&str] = &[
    "caution-",
    "headline-caution",
    "index-caution",
    "watch-caution",
];
/// A document without a section on provenance says itself what rests on what.
const BESIDE_REPORTS: &[&str] = &[
    "unchecked-common",
    "plan-",
    "watch-",
    "notice-above-film",
    "dry-very-hot",
];
/// The verdict, and the one paragraph of provenance.
const SAID_ONCE: &[&str] = &["headline-conforms-rests-on", "unchecked-memory"];

const fn wrong(code: &'static str, word: &'static str, better: &'static str) -> Wrong {
    wrong_but(code, word, better, &[])
}

const fn wrong_but(
    code: &'static str,
    word: &'static str,
    better: &'static str,
    but: &'static [&'static str],
) -> Wrong {
    Wrong {
        code,
        word,
        better,
        but,
    }
}

const WRONG: &[Wrong] = &[
    wrong_but("en", "the practice", "the standard", OF_LICENSED),
    wrong("en", "hold against", "compare with"),
    wrong("en", "held against", "compared with"),
    wrong("en", "set aside for", "set aside"),
    wrong("en", "is told apart", "differs"),
    wrong("en", "are told apart", "differ"),
    wrong("en", "mend", "remedy"),
    wrong("en", "off by", "error, uncertainty"),
    wrong("en", "no better than", "only as reliable as"),
    wrong("en", "content with", "asks only for"),
    wrong("en", "for each m²", "per m²"),
    wrong("en", "for each w/m²", "per W/m²"),
    wrong("en", "does not count", "is not used"),
    wrong("en", "a hole", "a gap"),
    wrong_but(
        "en",
        "no published source",
        "common practice",
        BESIDE_REPORTS,
    ),
    wrong_but("en", "from memory", "say it in unchecked-memory", SAID_ONCE),
    wrong("es", "la práctica pide", "la norma exige"),
    wrong("es", "luz solar", "irradiancia, energía solar"),
    wrong("es", "calificación", "resultado"),
    wrong("es", "quien ensay…", "el operador"),
    wrong("es", "margen 95", "intervalo del 95 %"),
    wrong("es", "meseta", "estancamiento"),
    wrong("es", "no indicad…", "sin indicar"),
    wrong("es", "ordenador", "equipo"),
    wrong("es", "fichero", "archivo"),
    wrong_but(
        "es",
        "sin fuente publicada",
        "práctica habitual",
        BESIDE_REPORTS,
    ),
    wrong_but("es", "de memoria", "unchecked-memory", SAID_ONCE),
    wrong("fr", "éclairement", "irradiance"),
    wrong("fr", "ensoleillement", "irradiance"),
    wrong("fr", "journaux", "fichiers de mesures"),
    wrong("fr", "essayé…", "soumis à l’essai"),
    wrong("fr", "constats", "écarts constatés"),
    wrong("fr", "d'autrui", "externes"),
    wrong("fr", "chapitre", "section"),
    wrong("fr", "échaudure…", "brûlure"),
    wrong("fr", "casserole", "marmite"),
    wrong_but(
        "fr",
        "sans source publiée",
        "pratique courante",
        BESIDE_REPORTS,
    ),
    wrong_but("fr", "de mémoire", "unchecked-memory", SAID_ONCE),
    wrong("pt", "capítulo", "seção"),
    wrong("pt", "a prática pede", "a norma exige"),
    wrong("pt", "luz solar", "irradiância, energia solar"),
    wrong("pt", "ficheiro…", "arquivo"),
    wrong("pt", "registo…", "registro"),
    wrong("pt", "secção", "seção"),
    wrong("pt", "num", "em um"),
    wrong("pt", "numa", "em uma"),
    wrong("pt", "partilh…", "compartilhar"),
    wrong("pt", "arrefec…", "esfriar, resfriar"),
    wrong("pt", "planear", "planejar"),
    wrong("pt", "contacto", "contato"),
    wrong("pt", "água a aquecer", "água aquecendo"),
    wrong("pt", "merece crédito", "é válido"),
    wrong_but("pt", "sem fonte publicada", "prática comum", BESIDE_REPORTS),
    wrong_but("pt", "de memória", "unchecked-memory", SAID_ONCE),
    wrong("sw", "faida", "pato"),
    wrong("sw", "hasara", "upotevu"),
    wrong("sw", "nambari", "namba"),
    wrong("sw", "faili la", "faili ya"),
    wrong("sw", "safu", "safumlalo"),
    wrong_but("sw", "hakuna chanzo", "mazoea ya kawaida", BESIDE_REPORTS),
    wrong_but(
        "sw",
        "kumbukumbu ya kichwani",
        "unchecked-memory",
        SAID_ONCE,
    ),
];

/// Small letters, plain spaces and apostrophes.
fn plain(text: &str) -> String {
    let plain = |letter: char| match letter {
        '\u{a0}' | '\u{202f}' | '\n' => ' ',
        '’' => '\'',
        other => other,
    };
    text.to_lowercase().chars().map(plain).collect()
}

/// Whether a text has a word: from the start of a word, and to an end unless `word` ends with "…".
fn has(text: &str, word: &str) -> bool {
    let stem = word.strip_suffix('…');
    let sought = stem.unwrap_or(word);
    let is_letter = |letter: Option<char>| letter.is_some_and(char::is_alphanumeric);
    text.match_indices(sought).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = text[at + sought.len()..].chars().next();
        !is_letter(before) && (stem.is_some() || !is_letter(after))
    })
}

#[test]
fn a_word_is_found_whole_or_by_its_beginning() {
    assert!(has("o número, num dia", "num") && !has("o número", "num"));
    assert!(has("os registos", "registo…") && !has("um desregisto", "registo…"));
    assert!(has(&plain("d’autrui"), "d'autrui"));
}

#[test]
fn each_english_term_has_its_one_word_in_every_language() {
    let english = messages_of(&Language::ENGLISH);
    let mut otherwise = Vec::new();
    for term in TERMS {
        let names = english.iter().filter(|(name, message)| {
            let text = plain(&message.words);
            let is_there = has(&text, term.english) || has(&text, &format!("{}s", term.english));
            is_there && !term.but.contains(&name.as_str())
        });
        let names: Vec<&String> = names.map(|(name, _)| name).collect();
        assert!(!names.is_empty(), "no message has \"{}\"", term.english);
        for language in LANGUAGES.iter().skip(1) {
            let messages = messages_of(language);
            let expected = term.in_language(language.code);
            for name in &names {
                let text = plain(&messages[*name].words);
                if !expected.iter().any(|word| text.contains(word)) {
                    let code = language.code;
                    otherwise.push(format!("{code}: {name}: {}: {text}", term.english));
                }
            }
        }
    }
    assert!(otherwise.is_empty(), "{}", otherwise.join("\n"));
}

#[test]
fn no_message_has_a_word_that_was_wrong() {
    let mut found = Vec::new();
    for language in &LANGUAGES {
        let messages = messages_of(language);
        let of_language = WRONG.iter().filter(|one| one.code == language.code);
        for one in of_language {
            let is_left = |name: &str| one.but.iter().any(|start| name.starts_with(start));
            for (name, message) in messages.iter().filter(|(name, _)| !is_left(name)) {
                if has(&plain(&message.words), one.word) {
                    let Wrong {
                        code, word, better, ..
                    } = one;
                    found.push(format!("{code}: {name}: \"{word}\", better: {better}"));
                }
            }
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn the_contributors_guide_has_every_term_that_is_held() {
    let guide = fs::read_to_string("DEVELOPERS.md").unwrap();
    let (_, glossary) = guide.split_once("## Glossary").unwrap();
    for term in TERMS {
        let rows = glossary.lines().filter(|row| row.starts_with('|'));
        let mut first_cells = rows.filter_map(|row| row.split('|').nth(1));
        let is_there = first_cells.any(|cell| has(&plain(cell), term.english));
        assert!(is_there, "no row for \"{}\"", term.english);
    }
}
