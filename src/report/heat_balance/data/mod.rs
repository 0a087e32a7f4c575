//! Gain, loss and what follows from them as data.

pub mod acceptance;
pub mod balance;
pub mod balance_columns;
