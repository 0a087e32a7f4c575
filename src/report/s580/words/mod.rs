//! Every string on conditions, runs, intervals, the line and its uncertainty.

pub mod budget;
pub mod conditions;
pub mod evidence;
pub mod line;
pub mod regression;
pub mod scatter;
pub mod tracks;
pub mod uncertainty;
