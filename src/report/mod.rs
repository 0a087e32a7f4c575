//! Results on paper and in files: words, figures, layout, no practice.
//!
//! [`rating_json`] and [`tables`] are the results as data; [`model`] fixes
//! every string of the report, [`figures`] draws, [`cautions`] warns, [`document`]
//! hands all of it to the templates of the PDF and [`web_page`] to those of the web page,
//! [`outputs()`] puts a campaign's files together,
//! and [`files`] writes them. [`comparison`] does the same for several campaigns.

mod attached_names;
mod attachments;
mod campaign_json;
pub mod cautions;
pub mod comparison;
mod cooking_json;
pub mod document;
mod edition;
pub mod figures;
pub mod files;
mod intervals_json;
mod logs_json;
pub mod model;
mod outputs;
pub mod plan;
pub mod rating_json;
pub mod sections;
pub mod tables;
mod uncertainty_json;
pub mod web_page;

pub use attached_names::{
    INTERVALS_ENDING, RATING_ENDING, TakenNames, attached_names, is_plain, result_names,
};
pub use attachments::{LARGEST_TOTAL, MOST_ATTACHMENTS};
pub use edition::{Edition, Format, Setting};
pub use outputs::{check_characters, outputs};
