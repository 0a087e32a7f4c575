//! Every slip as a notice.

use super::celsius::CelsiusAsFahrenheit;
use super::dates::DateSlip;
use super::exchanged::WaterAndAirExchanged;
use super::load::LoadSlip;
use super::odd_run::OddRun;
use super::stuck::StuckSensor;
use super::sun::SunSlip;
use super::zone::FarFromZone;
use crate::language::Message;

/// Something that looks like a slip and stops nothing.
#[derive(Debug, Clone, PartialEq)]
pub enum SlipNotice {
    FarFromZone(FarFromZone),
    Sun(SunSlip),
    Date(DateSlip),
    OddRun(OddRun),
    StuckSensor(StuckSensor),
    WaterAndAirExchanged(WaterAndAirExchanged),
    CelsiusAsFahrenheit(CelsiusAsFahrenheit),
    Load(LoadSlip),
}

impl SlipNotice {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            SlipNotice::FarFromZone(slip) => slip.message(),
            SlipNotice::Sun(slip) => slip.message(),
            SlipNotice::Date(slip) => slip.message(),
            SlipNotice::OddRun(slip) => slip.message(),
            SlipNotice::StuckSensor(slip) => slip.message(),
            SlipNotice::WaterAndAirExchanged(slip) => slip.message(),
            SlipNotice::CelsiusAsFahrenheit(slip) => slip.message(),
            SlipNotice::Load(slip) => slip.message(),
        }
    }
}
