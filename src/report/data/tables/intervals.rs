//! The table of intervals, used and set aside.

use super::columns::{Cell, Column, OfInterval, Table};
use crate::procedure::Assessment;
use crate::report::heat_balance::data::balance_columns::IN_BALANCE;
use crate::report::s580::data::interval_columns::MEASURED;

fn columns() -> impl Iterator<Item = &'static Column<OfInterval>> {
    MEASURED.iter().chain(IN_BALANCE)
}

/// The table without rows.
pub fn no_intervals() -> Table {
    Table::new(columns().map(|column| column.heading).collect())
}

/// A row an interval of a campaign.
pub fn interval_rows(campaign: &Assessment) -> impl Iterator<Item = Vec<Cell>> {
    let row = |interval| {
        columns()
            .map(|column| (column.cell)(campaign, interval))
            .collect()
    };
    campaign.s580.intervals.iter().map(row)
}
