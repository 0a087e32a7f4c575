//! Clear days through the year against pvlib, and what follows from them by hand.

use simmerline::assess_folder;
use simmerline::campaign::model::Impact;
use simmerline::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use simmerline::procedure::cooking::year::fuel_saved;

use crate::data::{Table, assert_absolute, assert_relative};

#[test]
fn months_have_the_hours_and_the_sunlight_of_pvlib() {
    // `clear_months.csv`: pvlib minute by minute. Ours goes by steps of twenty minutes of the
    // afternoon and takes the morning as its mirror: 0.05 h, and 0.5 % of the sunlight, of which
    // losses take up to half: 1 % of the heat.
    let assessment = assess_folder(std::path::Path::new("sample-runs/box-autumn")).unwrap();
    let prospect = assessment.prospect.as_ref().unwrap();
    let year = prospect.year.as_ref().unwrap();
    let cooking = &prospect.cooking;
    let [gain_m2, loss_w_per_k] = assessment.heat_balance.as_ref().unwrap().fitted.parameters;
    // Time to heat a load from 20 to 65 °C at one irradiance: m c ln(P1/P2)/u.
    let load_s = |irradiance_w_m2: f64| {
        let power_w =
            |celsius: f64| gain_m2 * irradiance_w_m2 - loss_w_per_k * (celsius - cooking.ambient_c);
        cooking.tested_kg * SPECIFIC_HEAT_J_PER_KG_K * (power_w(20.0) / power_w(65.0)).ln()
            / loss_w_per_k
    };
    let table = Table::new(include_str!("../../../data/clear_months.csv"));
    for (row, month) in table.rows(12).zip(&year.months) {
        assert_eq!(f64::from(month.month), row.number("month"));
        assert_absolute("hours", month.hours, row.number("hours"), 0.05);
        let standard_s = row.number("standard_s");
        // P = g G − u 50 K, summed over the hours: 700 W/m² are in the table's standard time.
        let hours_s = 3600.0 * row.number("hours");
        let heat_j = gain_m2 * 700.0 * standard_s - loss_w_per_k * 50.0 * hours_s;
        assert_relative("heat", month.heat_j.best, heat_j, 1e-2);
        // As many loads as fit: each takes its time at some irradiance between the least that
        // counts and the most that a clear sky gives, and six minutes, with two to spare.
        let loads = month.pasteurised_kg.best / cooking.tested_kg;
        let most = hours_s / (load_s(1100.0) + 6.0 * 60.0);
        let least = hours_s / (load_s(450.0) + 8.0 * 60.0) - 1.0;
        assert!(
            (least..=most).contains(&loads),
            "{least} to {most}: {loads}"
        );
        assert_absolute("whole loads", loads, loads.round(), 1e-9);
        assert!(month.pasteurised_kg.lowest <= month.pasteurised_kg.best);
        assert!(
            month.heat_j.lowest < month.heat_j.best && month.heat_j.best < month.heat_j.highest
        );
    }
}

#[test]
fn fuel_is_heat_over_heating_value_and_efficiency() {
    // By hand, with all months alike: 4.68 MJ a day on 200 days over 15.6 MJ/kg at 10 %
    // are 600 kg.
    let assessment = assess_folder(std::path::Path::new("sample-runs/box-autumn")).unwrap();
    let mut months = assessment.prospect.unwrap().year.unwrap().months;
    for month in &mut months {
        month.heat_j.best = 4.68e6;
        month.heat_j.lowest = 3.9e6;
        month.heat_j.highest = 5.46e6;
    }
    let impact = Impact {
        fuel: "firewood".to_owned(),
        heating_value_mj_kg: 15.6,
        heating_value_source: "IPCC 2006, wood".to_owned(),
        stove_efficiency: 0.10,
        stove_efficiency_source: "by hand".to_owned(),
        days_per_year: 200.0,
        days_source: "by hand".to_owned(),
    };
    let saved = fuel_saved(&months, &impact).unwrap();
    assert_relative("fuel", saved.fuel_kg.best, 600.0, 1e-12);
    assert_relative("lowest", saved.fuel_kg.lowest, 500.0, 1e-12);
    assert_relative("highest", saved.fuel_kg.highest, 700.0, 1e-12);
    assert!(fuel_saved(&[], &impact).is_none());
}
