//! The campaign file: what was tested, where, with what, and which logs hold it.
//!
//! [`schema`] is the file as written, with what it shares with others ([`shared`]) under its own
//! keys; [`check`] turns it into the [`Campaign`]
//! of [`model`] or lists everything that is wrong with it, and [`aperture`]
//! does the geometry of the intercept area.

pub mod aperture;
mod by_hand;
pub mod check;
mod check_aperture;
mod check_cooker;
mod check_instruments;
mod check_load;
mod check_logs;
mod check_meaning;
mod check_report;
mod check_runs;
pub mod classes;
mod everyday;
pub mod files;
pub mod find;
mod inputs;
mod jpeg;
mod key_units;
pub mod kinds;
pub mod listing;
pub mod locate;
pub mod materials;
pub mod measured;
mod merge;
pub mod model;
pub mod moment;
mod named_files;
mod needed;
mod patterns;
mod photo;
mod read_text;
pub mod schema;
pub mod shared;
pub mod shared_file;
mod shared_names;
mod source;
pub mod standard_uncertainty;
pub mod template;
pub mod wishes;
mod wording;
pub mod zone;

pub use check::{
    LimitCheck, read_attached_campaign, read_attached_campaign_to_plan, read_campaign,
    read_campaign_to_plan,
};
pub use files::InputFile;
pub use find::find_campaigns;
pub use inputs::inputs_of;
pub use model::Campaign;
pub use named_files::{AttachedFile, Reach};
