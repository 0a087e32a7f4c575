//! Long simulations: what holds on the average of many invented campaigns.

#![allow(
    clippy::disallowed_methods,
    reason = "no report hangs on a test's last digit"
)]

mod aim;
mod coverage;
mod far_apart;
mod invented;
mod kinds;
mod kinds_coverage;
mod many;
mod slips;
mod truth;
mod two_suns;
