//! Every figure that a campaign's results state, in one list: for a table of all of them, and for
//! holding campaigns against each other.

use super::assess::Assessment;
use super::uncertainty::{Budget, Derived, Figure};
use crate::campaign::kinds::ProcedureKey;
use crate::language::Message;

/// A figure, by what it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FigureKey {
    Ps50,
    Gain,
    Loss,
    OptoThermalRatio,
    DryDifference,
    F1,
    F2,
    BoxBoiling,
    TimeConstant,
    LossFactor,
    OpticalFactor,
    DishBoiling,
    Energy,
    Exergy,
    PeakExergy,
    QualityFactor,
}

impl FigureKey {
    /// Every figure, in the order of the table.
    pub const ALL: &[FigureKey] = &[
        FigureKey::Ps50,
        FigureKey::Gain,
        FigureKey::Loss,
        FigureKey::OptoThermalRatio,
        FigureKey::DryDifference,
        FigureKey::F1,
        FigureKey::F2,
        FigureKey::BoxBoiling,
        FigureKey::TimeConstant,
        FigureKey::LossFactor,
        FigureKey::OpticalFactor,
        FigureKey::DishBoiling,
        FigureKey::Energy,
        FigureKey::Exergy,
        FigureKey::PeakExergy,
        FigureKey::QualityFactor,
    ];

    /// The code in files and in names of messages.
    pub fn code(self) -> &'static str {
        match self {
            FigureKey::Ps50 => "ps50",
            FigureKey::Gain => "gain",
            FigureKey::Loss => "loss",
            FigureKey::OptoThermalRatio => "opto-thermal-ratio",
            FigureKey::DryDifference => "dry-difference",
            FigureKey::F1 => "f1",
            FigureKey::F2 => "f2",
            FigureKey::BoxBoiling => "box-boiling",
            FigureKey::TimeConstant => "time-constant",
            FigureKey::LossFactor => "loss-factor",
            FigureKey::OpticalFactor => "optical-factor",
            FigureKey::DishBoiling => "dish-boiling",
            FigureKey::Energy => "energy",
            FigureKey::Exergy => "exergy",
            FigureKey::PeakExergy => "peak-exergy",
            FigureKey::QualityFactor => "quality-factor",
        }
    }

    /// Its symbol in the papers.
    pub fn symbol(self) -> &'static str {
        match self {
            FigureKey::Ps50 => "Ps(50)",
            FigureKey::Gain => "g",
            FigureKey::Loss => "u",
            FigureKey::OptoThermalRatio => "g/u",
            FigureKey::DryDifference => "(Tp − Ta)/G",
            FigureKey::F1 => "F1",
            FigureKey::F2 => "F2",
            FigureKey::BoxBoiling | FigureKey::DishBoiling => "t",
            FigureKey::TimeConstant => "τ0",
            FigureKey::LossFactor => "F′UL",
            FigureKey::OpticalFactor => "F′η0",
            FigureKey::Energy => "η",
            FigureKey::Exergy => "ψ",
            FigureKey::PeakExergy => "Ex",
            FigureKey::QualityFactor => "Q",
        }
    }

    /// Its unit on paper; empty for a number without.
    pub fn unit(self) -> &'static str {
        match self {
            FigureKey::Ps50 | FigureKey::PeakExergy => "W",
            FigureKey::Gain => "m²",
            FigureKey::Loss => "W/K",
            FigureKey::OptoThermalRatio | FigureKey::DryDifference | FigureKey::F1 => "K m²/W",
            FigureKey::F2 | FigureKey::OpticalFactor | FigureKey::QualityFactor => "",
            FigureKey::BoxBoiling | FigureKey::DishBoiling | FigureKey::TimeConstant => "min",
            FigureKey::LossFactor => "W/(m² K)",
            FigureKey::Energy | FigureKey::Exergy => "%",
        }
    }

    /// Its unit on paper, over that of the result.
    pub fn scale(self) -> f64 {
        match self.unit() {
            "min" => 1.0 / 60.0,
            "%" => 100.0,
            _ => 1.0,
        }
    }

    /// The unit of the result, as files have it; 1 for a number without.
    pub fn result_unit(self) -> &'static str {
        match self.unit() {
            "min" => "s",
            "%" | "" => "1",
            unit => unit,
        }
    }

    /// What it is, in words.
    pub fn name(self) -> Message {
        Message::new(format!("figure-{}", self.code()))
    }

    /// What it is good for.
    pub fn good_for(self) -> Message {
        Message::new(format!("figure-{}-good-for", self.code()))
    }

    /// What it must not be compared with.
    pub fn not_with(self) -> Message {
        Message::new(format!("figure-{}-not-with", self.code()))
    }
}

/// A figure that is stated.
#[derive(Debug, Clone, PartialEq)]
pub struct Stated {
    pub key: FigureKey,
    /// In the unit of the result.
    pub value: f64,
    /// `None` where nothing is said of how sure it is.
    pub figure: Option<Figure>,
    /// What makes it unsure; `None` where it is not told apart.
    pub budget: Option<Budget>,
    /// What another day would do is not in its interval.
    pub is_of_one_day: bool,
    /// Its conditions were not those of its procedure.
    pub is_indicative: bool,
}

impl Stated {
    fn of(key: FigureKey, derived: &Derived, is_indicative: bool) -> Stated {
        Stated {
            key,
            value: derived.figure.value,
            figure: Some(derived.figure),
            budget: Some(derived.budget.clone()),
            is_of_one_day: derived.is_of_one_day,
            is_indicative,
        }
    }
}

/// Every figure that there is, in the order of [`FigureKey::ALL`]; of a campaign whose rating is
/// physically impossible only those of dry runs, in which neither area nor load counts.
pub fn stated(assessment: &Assessment) -> Vec<Stated> {
    let mut all = computed(assessment);
    if assessment.s580.is_not_valid() {
        all.retain(|one| matches!(one.key, FigureKey::DryDifference | FigureKey::F1));
    }
    all
}

fn computed(assessment: &Assessment) -> Vec<Stated> {
    let mut all = of_practice(assessment);
    all.extend(of_balance(assessment));
    let estimates = assessment.tested.estimates_irradiance();
    let mut add = |key: FigureKey, derived: Option<&Derived>, is_indicative: bool| {
        all.extend(derived.map(|derived| Stated::of(key, derived, is_indicative)));
    };
    let procedures = &assessment.tested.campaign.procedures;
    let dry = assessment.dry_runs.difference.as_ref();
    let dry = dry.filter(|_| !procedures.leaves_out(ProcedureKey::DryVessel));
    add(FigureKey::DryDifference, dry, estimates);
    if let Some(found) = &assessment.box_figures {
        let is_indicative = found.is_indicative || estimates;
        let time = found.boiling.as_ref().map(|boiling| &boiling.time_s);
        add(FigureKey::F1, found.f1.as_ref(), is_indicative);
        add(FigureKey::F2, found.f2.as_ref(), is_indicative);
        add(FigureKey::BoxBoiling, time, is_indicative);
    }
    if let Some(found) = &assessment.dish_figures {
        let is_indicative = found.is_indicative;
        let time = found.boiling.as_ref().map(|boiling| &boiling.time_s);
        add(
            FigureKey::TimeConstant,
            found.time_constant_s.as_ref(),
            false,
        );
        add(FigureKey::LossFactor, found.loss_factor.as_ref(), false);
        add(
            FigureKey::OpticalFactor,
            found.optical_factor.as_ref(),
            is_indicative,
        );
        add(FigureKey::DishBoiling, time, is_indicative);
    }
    if let Some(found) = &assessment.efficiency {
        let is_indicative = found.is_indicative;
        add(FigureKey::Energy, Some(&found.energy), is_indicative);
        add(FigureKey::Exergy, Some(&found.exergy), is_indicative);
        let peak = found.peak.as_ref().ok();
        add(
            FigureKey::PeakExergy,
            peak.map(|peak| &peak.exergy_w),
            is_indicative,
        );
        let quality = peak.and_then(|peak| peak.quality_factor);
        all.extend(quality.map(|figure| Stated {
            key: FigureKey::QualityFactor,
            value: figure.value,
            figure: Some(figure),
            budget: None,
            is_of_one_day: found.energy.is_of_one_day,
            is_indicative,
        }));
    }
    all
}

fn of_practice(assessment: &Assessment) -> Vec<Stated> {
    let rated = assessment.s580.rated.iter();
    rated
        .map(|rated| Stated {
            key: FigureKey::Ps50,
            value: rated.rating.ps50_w,
            figure: Some(Figure {
                value: rated.rating.ps50_w,
                standard_uncertainty: rated.uncertainty.budget.combined,
                interval: rated.uncertainty.interval_w,
            }),
            budget: None,
            is_of_one_day: rated.uncertainty.is_of_one_day(),
            is_indicative: assessment.s580.conformity.level.falls_short(),
        })
        .collect()
}

fn of_balance(assessment: &Assessment) -> Vec<Stated> {
    let Some(found) = &assessment.heat_balance else {
        return Vec::new();
    };
    let of = |key: FigureKey, figure: &Figure, budget: Option<Budget>| Stated {
        key,
        value: figure.value,
        figure: Some(*figure),
        budget,
        is_of_one_day: found.is_of_one_day(),
        is_indicative: assessment.tested.estimates_irradiance(),
    };
    let gain = Some(found.fitted.budget([1.0, 0.0]));
    let loss = Some(found.fitted.budget([0.0, 1.0]));
    let mut all = vec![
        of(FigureKey::Gain, &found.gain_m2, gain),
        of(FigureKey::Loss, &found.loss_w_per_k, loss),
    ];
    let ratio = found.opto_thermal_ratio.iter();
    let [gain_m2, loss_w_per_k] = found.fitted.parameters;
    all.extend(ratio.map(|ratio| {
        let weights = [1.0 / loss_w_per_k, -gain_m2 / (loss_w_per_k * loss_w_per_k)];
        let budget = Budget {
            value: ratio.value,
            ..found.fitted.budget(weights)
        };
        of(FigureKey::OptoThermalRatio, ratio, Some(budget))
    }));
    all
}
