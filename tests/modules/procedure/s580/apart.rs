//! Why the draws' interval is not the budget's, and what limits a rating most.

use simmerline::procedure::Assessment;
use simmerline::procedure::s580::uncertainty::RatingUncertainty;
use simmerline::procedure::s580::uncertainty::limiting::Limiting;
use simmerline::procedure::uncertainty::apart::{Apart, Causes, causes};
use simmerline::procedure::uncertainty::budget::Origin;

use crate::kit::rate::{sample, samples_with_water};

const WEIGHTS: [f64; 2] = [1.0, 50.0];

fn uncertainty(assessment: &Assessment) -> &RatingUncertainty {
    assessment.s580.uncertainty().unwrap()
}

fn causes_of(found: &RatingUncertainty) -> [Causes; 2] {
    let drawn = found.monte_carlo.as_ref().unwrap();
    causes(&found.of_line.fitted, WEIGHTS, &found.budget, drawn).unwrap()
}

#[test]
fn the_causes_add_up_to_what_sets_both_intervals_apart() {
    for (name, assessment) in samples_with_water() {
        let found = uncertainty(&assessment);
        let (drawn, budget) = (found.monte_carlo.unwrap().outcome, found.budget.interval());
        let ends = [drawn.lower - budget.lower, drawn.upper - budget.upper];
        for (end, causes) in ends.into_iter().zip(causes_of(found)) {
            let Causes {
                division,
                curved,
                limits,
                few_freedom,
                ..
            } = causes;
            let sum = division + curved + limits + few_freedom;
            assert!((sum - end).abs() < 1e-9, "{name}: {sum} for {end}");
        }
    }
}

/// The notebook's irradiance has 8 % and most of the variance. Divided by 1 + δ, δ normal, the
/// ends of an interval of 1.96 standard uncertainties move to v/(1 ∓ 1.96·u): worked out here
/// without the draws.
#[test]
fn an_irradiance_of_8_percent_is_named_as_what_makes_the_interval_lopsided() {
    let assessment = sample("notebook");
    let found = uncertainty(&assessment);
    assert_eq!(found.apart, Some(Apart::Division));
    let value = found.budget.value;
    let of_sun =
        |sign: f64| value / (1.0 - sign * 1.96 * 0.08) - value * (1.0 + sign * 1.96 * 0.08);
    let [below, above] = causes_of(found);
    // What else is uncertain dilutes it: no more than alone, and at least half of that.
    for (cause, alone) in [
        (below.division, of_sun(-1.0)),
        (above.division, of_sun(1.0)),
    ] {
        assert!(alone > 0.0);
        assert!((0.5 * alone..alone).contains(&cause), "{cause} of {alone}");
    }
    assert!(above.division > 10.0 * above.few_freedom.abs());
}

/// With two days Student's t has one degree of freedom, and an irradiance of 5 % hardly matters.
#[test]
fn irradiance_is_not_blamed_for_draws_that_have_not_settled() {
    let assessment = sample("panel-cloudy");
    let found = uncertainty(&assessment);
    assert_eq!(found.budget.statistical_freedom, 1.0);
    assert_eq!(found.apart, Some(Apart::Unsettled));
    let [below, above] = causes_of(found);
    for causes in [below, above] {
        assert!(
            causes.division.abs() < causes.few_freedom.abs() / 4.0,
            "{causes:?}"
        );
    }
}

#[test]
fn no_reason_is_given_where_the_draws_agree() {
    for (name, assessment) in samples_with_water() {
        let found = uncertainty(&assessment);
        let agrees = found.monte_carlo.unwrap().agrees();
        assert_eq!(found.apart.is_none(), agrees, "{name}");
    }
}

#[test]
fn what_is_named_as_limiting_has_the_largest_share_of_the_square_of_the_uncertainty() {
    for (name, assessment) in samples_with_water() {
        let found = uncertainty(&assessment);
        let most = found.most_limiting().unwrap();
        let parts = &found.budget.contributions;
        let of_sun: f64 = parts
            .iter()
            .filter(|part| matches!(&part.origin, Origin::Common(error) if error.source.is_irradiance()))
            .map(|part| part.share)
            .sum();
        let of_scatter = found.budget.statistical_share();
        match most.what {
            Limiting::Irradiance | Limiting::Estimate => {
                assert!(
                    (most.share - of_sun).abs() < 1e-12 && of_sun > of_scatter,
                    "{name}"
                );
            }
            Limiting::FewDays { .. } | Limiting::Days | Limiting::Scatter | Limiting::Step => {
                assert!(
                    (most.share - of_scatter).abs() < 1e-12 && of_scatter > of_sun,
                    "{name}"
                );
            }
            other => panic!("{name}: {other:?}"),
        }
    }
}

/// A thermometer read to 1 K is most of the scatter of the intervals there, yet the estimated
/// irradiance has more of the variance, and what makes ± large is that there are two days.
#[test]
fn a_thermometer_is_not_blamed_where_irradiance_has_more_of_the_variance() {
    let assessment = sample("kitchen-thermometer");
    let found = uncertainty(&assessment);
    let parts = &found.budget.contributions;
    let of_sun = parts
        .iter()
        .filter(
            |part| matches!(&part.origin, Origin::Common(error) if error.source.is_irradiance()),
        )
        .map(|part| part.share_of_variance)
        .fold(0.0, f64::max);
    assert!(of_sun > parts[0].share_of_variance, "{of_sun}");
    assert_eq!(
        found.most_limiting().unwrap().what,
        Limiting::FewDays { days: 2 }
    );
}
