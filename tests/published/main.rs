//! Numbers of others, held against ours: one module a source.
//!
//! Each test names its source with table or row, and gives its tolerance with a
//! reason. `tests/data/README.md` says where the data files come from.

mod beaufort;
mod boiling_point;
mod data;
mod food;
mod gum_budgets;
mod gum_h3;
mod heating;
mod jcgm_101;
mod lumped_heating;
mod montgomery_runger;
mod nist_strd_norris;
mod predicted;
mod reference_campaigns;
mod sha256;
mod sky;
mod solar_time;
mod specific_heat;
mod statistics;
mod student_t;
mod three_intervals_by_hand;
mod uncertainty;
mod year;
