//! Long simulations: what holds on the average of many invented campaigns.

mod coverage;
