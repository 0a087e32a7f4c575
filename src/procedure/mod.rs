//! Published test practice: from a campaign's readings to results.
//!
//! What any heating test has: [`split`] makes runs of a log of many days, [`run`] trims a log,
//! [`estimate`] gives it the irradiance that was not measured by the sky in [`sky`],
//! [`conflicts`] refuses runs that cannot both be true, [`tested`] does all of it; [`site`],
//! [`spans`] and [`stretch`] serve them, and [`sources`] says how sure the instruments are. The vocabulary is in
//! [`limit`], [`finding`] and [`caveat`]. [`slips`] says what looks like a slip of the pen, a clock
//! or a sensor.
//!
//! [`uncertainty`] says how sure a fit to the readings is. The procedures, a folder each:
//! [`s580`], the rating by ASAE S580.1, [`heat_balance`], gain and loss, [`dry_vessel`], how hot it
//! gets, [`box_cooker`] and [`dish`], the figures of two kinds of cooker, and [`efficiency`].
//! [`cooking`] says what results mean in the kitchen, [`yardstick`] what others measured; [`assess()`] runs them in this order.

pub mod acceptance;
pub mod assess;
pub mod boiling;
pub mod box_cooker;
pub mod caveat;
pub mod conflicts;
pub mod cooking;
pub mod dish;
pub mod dry_vessel;
pub mod efficiency;
pub mod estimate;
pub mod finding;
pub mod heat_balance;
pub mod limit;
pub mod notice;
mod problem;
pub mod run;
pub mod run_notice;
pub mod s580;
pub mod site;
pub mod sky;
pub mod slips;
pub mod sources;
pub mod spans;
pub mod split;
pub mod stated;
pub mod stretch;
pub mod tested;
pub mod uncertainty;
pub mod yardstick;

pub use assess::{Assessment, assess};
pub use run::Run;
pub use tested::Tested;
