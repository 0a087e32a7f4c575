//! Results on paper and in files: words, figures, layout, no practice.
//!
//! The same in each folder: `words` fixes every string, `figures` draws, `data` is for other
//! programs, `outputs` puts files together. [`words`], [`data`] and [`figures`] are of the report
//! as a whole; [`s580`], [`heat_balance`], [`dry_vessel`], [`box_cooker`], [`dish`] and
//! [`efficiency`] have what a procedure adds to it, those beside the rating by [`procedure_part`].
//! [`document`] hands all of it to the templates of the PDF and [`web_page`] to those of the web
//! page, [`outputs()`] puts a campaign's files together, and [`files`] writes them, whole and together.
//! [`comparison`] does the same for several campaigns, and [`plan`] for a day to come.

mod assets;
mod attached_names;
mod attachments;
pub mod box_cooker;
pub mod comparison;
pub mod data;
pub mod dish;
pub mod document;
pub mod dry_vessel;
mod edition;
pub mod efficiency;
mod engine;
pub mod figures;
pub mod files;
pub mod heat_balance;
pub mod index;
mod number;
mod outputs;
pub mod plan;
pub mod procedure_part;
mod rows;
pub mod run_names;
pub mod s580;
pub mod sections;
mod spoken;
pub mod unbroken;
mod web_links;
pub mod web_page;
pub mod words;

pub use attached_names::{
    INTERVALS_ENDING, RATING_ENDING, TakenNames, attached_names, is_plain, result_names,
};
pub use attachments::{LARGEST_TOTAL, MOST_ATTACHMENTS, placed};
pub use edition::{Carried, Edition, Format, References, Setting};
pub use outputs::{check_characters, outputs};
