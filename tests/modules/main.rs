//! The library, module by module: a test stands in the folder of the module that it checks.
//!
//! Numbers of others, held against ours, are one file a published source, named after it.
//! Each such test names its source with table or row, and gives its tolerance with a
//! reason. `tests/data/README.md` says where the data files come from.

#![allow(
    clippy::disallowed_methods,
    reason = "no report hangs on a test's last digit"
)]

mod data;

#[path = "../kit"]
mod kit {
    pub mod campaign;
    pub mod files;
    pub mod header;
    pub mod heating;
    pub mod kinds;
    pub mod rate;
    pub mod samples;
    pub mod schema;
}

/// What the samples of the procedures beside the rating were made of.
#[path = "../../sample-runs/truth.rs"]
#[allow(dead_code, reason = "the generator of the samples needs the rest")]
mod truth;

/// The order of the house itself, read off the source text.
mod house {
    mod bounds;
    mod circles;
    mod lengths;
    mod links;
    mod notices;
    mod source;
}

/// What holds from a folder to its rating, whatever is in the folder.
mod pipeline {
    mod any_bytes;
    mod bad_input;
    mod finite;
    mod invariants;
    pub mod made;
    mod not_valid;
    mod own_limits;
    mod results;
    mod sample_truth;
    mod samples;
    pub mod trial;
}

mod shown {
    mod unicode;
}

mod campaign {
    mod bounds;
    mod patterns;
    mod shared;
    mod template;
}

/// Any log a person has: one campaign in many dresses, logs that must be refused, and
/// what outside sources say about text, times and zones. All readings are invented;
/// `tests/data/dresses/README.md` says with which software each dress was made.
mod logs {
    mod any_dialect;
    mod bounds;
    mod clock_changes;
    mod daylight_saving;
    mod dresses;
    mod how_read;
    mod rfc_3339;
    mod rfc_4180;
    mod several_runs;
    mod traps;
}

mod math {
    mod one_library;
}

mod physics {
    mod beaufort;
    mod boiling_point;
    mod exergy;
    mod sky;
    mod solar_time;
    mod specific_heat;
}

mod stats {
    mod gum_budgets;
    mod gum_h3;
    mod jcgm_101;
    mod montgomery_runger;
    mod nist_strd_norris;
    mod statistics;
    mod student_t;
}

mod procedure {
    /// The standardised cooking power of ASAE S580.1.
    mod s580 {
        mod apart;
        mod lumped_heating;
        mod predicted;
        mod reference_campaigns;
        mod three_intervals_by_hand;
        pub mod uncertainty;
    }

    /// Slips of the pen, a clock or a sensor: that honest campaigns have none.
    mod slips {
        mod honest;
    }

    /// Gain and loss.
    mod heat_balance {
        mod samples;
    }

    /// How far the sun may stand off the axis.
    mod acceptance {
        mod sawtooth;
    }

    /// How hot the empty vessel gets.
    mod dry_vessel {
        mod runs;
    }

    /// Two figures of merit.
    mod box_cooker {
        mod figures;
    }

    /// Losses in the shade, gains in the sun.
    mod dish {
        mod figures;
    }

    /// Energy and exergy.
    mod efficiency {
        mod shares;
    }

    /// What holds of all of them.
    mod beside {
        mod asked_for;
        mod bad_input;
        mod invariants;
        mod samples;
        mod sparse;
    }

    /// What a test means for pots, food and months.
    mod cooking {
        mod food;
        mod heating;
        mod year;
    }
}

mod comparison {
    mod claims;
    mod invented;
    mod pairs;
    mod schema;
    mod shared;
    mod suns;
}

mod planning {
    mod plan;
}

/// A test day that is watched.
mod watch {
    mod day;
    mod so_far;
    mod survived;
}

/// The report: its words, its PDF, its web page, its tables.
mod report {
    mod campaigns;
    mod files;
    mod frame;
    mod iso_17025;
    mod long;
    mod names;
    mod pdf;
    mod photo;
    mod schema;
    mod tables;
    mod web_page;

    /// Words and figures of the standardised cooking power.
    mod s580 {
        mod figures;
        mod words;
    }

    /// Rules of the pages as they are laid out.
    mod layout {
        mod faces;
        mod flow;
        mod known;
        mod lines;
        mod made;
        mod on_paper;
        mod pages;
        mod palette;
        mod place;
        mod rules;
        mod said;
        mod tags;
    }
}

/// The message files: whole, translated, used, and safe.
mod language {
    mod arguments;
    mod code;
    pub mod files;
    mod glossary;
    mod listed;
    mod release;
    mod reports;
}

mod measure {
    mod nist_sp_811;
}

mod hash {
    mod sha256;
}
