//! Long simulations: what holds on the average of many invented campaigns.

mod coverage;
mod invented;
mod truth;
mod two_suns;
