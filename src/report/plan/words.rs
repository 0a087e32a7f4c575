//! The plan of a test day in words, for the terminal and for the field sheet.

use crate::measure::{Kind, Unit};
use crate::physics::sun::Daylight;
use crate::planning::Plan;
use crate::planning::aim::{SHORTEST_BY_HAND_S, spacing_s};
use crate::planning::day::micros;
use crate::procedure::screen::TimeSpan;
use crate::report::model::report::Row;
use crate::report::model::uncertainty::with_uncertainty;
use crate::units::{clock_from_hours, counted, fixed, local_clock, range, short, spoken_duration};

/// Air temperature for which the start is given, °C.
const EXAMPLE_C: f64 = 25.0;
/// Most aimings that are listed by their clock times.
const MOST_AIMINGS: usize = 30;

/// The date with its weekday: `Tuesday 3 November 2026`.
pub fn spoken_day(plan: &Plan) -> String {
    plan.date.strftime("%A %-d %B %Y").to_string()
}

/// What the sun does.
pub fn sun_rows(plan: &Plan) -> Vec<Row> {
    let zone = &plan.campaign.site.time_zone;
    let clock = |unix_s: f64| local_clock(micros(unix_s), zone);
    let noon = clock(plan.day.noon_s);
    let light = match plan.day.light {
        Daylight::AlwaysUp => format!("does not set; solar noon {noon}"),
        Daylight::AlwaysDown => "does not rise".to_owned(),
        Daylight::RisesAndSets { rise_s, set_s } => {
            let event = |name: &str, none: &str, time: Option<f64>| match time {
                Some(time_s) => format!("{name} {}", clock(time_s)),
                None => none.to_owned(),
            };
            format!(
                "{}, solar noon {noon}, {}",
                event("rises", "does not rise", rise_s),
                event("sets", "does not set", set_s)
            )
        }
    };
    let hour = |key: &str| clock_from_hours(plan.limits.get(key).unwrap_or(12.0));
    vec![
        Row::new("sun", light),
        Row::new(
            "solar window",
            format!(
                "{} by the clock ({} to {} solar time)",
                clocks(plan, &plan.day.window),
                hour("solar_time_start_h"),
                hour("solar_time_end_h")
            ),
        ),
        Row::new("clear sky", enough(plan)),
    ]
}

/// `10:33 to 14:33`.
fn clocks(plan: &Plan, span: &TimeSpan) -> String {
    let zone = &plan.campaign.site.time_zone;
    format!(
        "{} to {}",
        local_clock(span.from_us, zone),
        local_clock(span.to_us, zone)
    )
}

/// Whether and when a clear sky gives enough.
fn enough(plan: &Plan) -> String {
    let limit = |key: &str| plan.limits.get(key).unwrap_or(f64::NAN);
    let (least, most) = (limit("irradiance_min_w_m2"), limit("irradiance_max_w_m2"));
    let highest = fixed(plan.day.most_w_m2, 0);
    let too_much = if plan.day.most_w_m2 > most {
        format!(
            "; beyond {} W/m² intervals are set aside too, and a very clear sky here gives up to {highest}",
            short(most)
        )
    } else {
        String::new()
    };
    match (&plan.day.enough, &plan.day.usable) {
        (Some(span), Some(usable)) => format!(
            "{} W/m² or more on the plane normal to the beam from {}, {}{too_much}",
            short(least),
            clocks(plan, span),
            if *usable == plan.day.window {
                "so all through the solar window".to_owned()
            } else {
                format!("in the solar window from {}", clocks(plan, usable))
            }
        ),
        (Some(span), None) => format!(
            "{} W/m² only from {}, outside the solar window: no interval of this day can be used",
            short(least),
            clocks(plan, span)
        ),
        _ => format!(
            "never reaches {} W/m² (at most {highest}): no interval of this day can be used",
            short(least)
        ),
    }
}

/// The load, and the temperatures between which a run counts.
pub fn load_rows(plan: &Plan) -> Vec<Row> {
    let vessels = plan.campaign.vessels;
    let each = match vessels {
        1 => "in one vessel".to_owned(),
        more => format!(
            "{} kg in each of {more} vessels",
            fixed(plan.load_kg / f64::from(more), 2)
        ),
    };
    let stated_kg = plan.campaign.water_kg;
    let differs = if (stated_kg - plan.load_kg).abs() > 0.005 * plan.load_kg {
        format!("; the campaign file says {} kg", short(stated_kg))
    } else {
        String::new()
    };
    let start = match plan.limits.get("water_above_ambient_k") {
        Some(above_k) => format!(
            "{} above the air, such as {} in air of {}",
            spoken_difference(plan, above_k),
            spoken_temperature(plan, plan.start_c(EXAMPLE_C)),
            spoken_temperature(plan, EXAMPLE_C)
        ),
        None => spoken_temperature(plan, plan.start_c(EXAMPLE_C)),
    };
    vec![
        Row::new(
            "water",
            format!(
                "{} kg, {} kg for each of {} m², {each}{differs}",
                fixed(plan.load_kg, 2),
                short(plan.limits.of_finding("load-off")),
                fixed(plan.campaign.cooker.intercept_area_m2, 3)
            ),
        ),
        Row::new("counts from", start),
        Row::new(
            "counts up to",
            format!(
                "{}; water boils at {} here",
                spoken_temperature(plan, plan.stop_c()),
                spoken_temperature(plan, plan.boiling_point_c)
            ),
        ),
    ]
}

/// The unit of the water thermometer.
pub fn water_unit(plan: &Plan) -> Unit {
    let stated = plan.campaign.rules.units.water_temperature;
    stated.unwrap_or_else(|| Unit::base(Kind::Temperature))
}

/// A temperature in °C, and in the thermometer's unit if that is another.
fn spoken_temperature(plan: &Plan, celsius: f64) -> String {
    let unit = water_unit(plan);
    let own = format!("{} °C", fixed(celsius, 1));
    if unit == Unit::base(Kind::Temperature) {
        own
    } else {
        format!(
            "{} {} ({own})",
            fixed(unit.of_base(celsius), 0),
            unit.symbol()
        )
    }
}

/// A temperature difference in K, and in the thermometer's unit if that is another.
fn spoken_difference(plan: &Plan, kelvin: f64) -> String {
    let unit = water_unit(plan);
    let scaled = unit.of_base(kelvin) - unit.of_base(0.0);
    if (scaled - kelvin).abs() < 1e-9 {
        format!("{} K", short(kelvin))
    } else {
        format!("{} {} ({} K)", short(scaled), unit.symbol(), short(kelvin))
    }
}

/// When to aim.
pub fn aiming(plan: &Plan) -> String {
    let zone = &plan.campaign.site.time_zone;
    let Some(half_angle_deg) = plan.campaign.cooker.acceptance_half_angle_deg else {
        return "acceptance_half_angle_deg is not stated under [cooker], so no times are given. Common practice, no published source: a shallow many-sided reflector about every 45 minutes, in which the sun moves about 11°, a sharp dish every 10 to 15.".to_owned();
    };
    let Some(times) = &plan.aimings_us else {
        return "no time of this day can be used".to_owned();
    };
    let clocks: Vec<String> = times
        .iter()
        .map(|time_us| local_clock(*time_us, zone))
        .collect();
    let half_angle = format!(
        "the sun moves {}°, the acceptance half angle, in that time",
        short(half_angle_deg)
    );
    match spacing_s(times) {
        None => format!(
            "at {} and then no more: {}° are enough for the whole window",
            clocks.join(", "),
            short(half_angle_deg)
        ),
        Some((shortest_s, _)) if shortest_s < SHORTEST_BY_HAND_S => format!(
            "all the time, by a drive: the sun moves {}° in under {}",
            short(half_angle_deg),
            spoken_duration(SHORTEST_BY_HAND_S)
        ),
        Some((shortest_s, longest_s)) => {
            let every = spoken_range(shortest_s, longest_s);
            match clocks.len() {
                0..=MOST_AIMINGS => format!("at {}; {half_angle} ({every})", clocks.join(", ")),
                _ => format!("every {every} from {}; {half_angle}", clocks[0]),
            }
        }
    }
}

fn spoken_range(shortest_s: f64, longest_s: f64) -> String {
    format!("{} min", range(shortest_s / 60.0, longest_s / 60.0, 0))
}

/// What is missing, and how much of it this day can give.
pub fn missing(plan: &Plan) -> String {
    let missing = match &plan.missing {
        Some(missing) => format!("Still missing: {missing}."),
        None => "Intervals and days are enough already.".to_owned(),
    };
    if plan.most_intervals == 0 {
        return format!("{missing} This day can give none.");
    }
    let a_heating = match plan.intervals_a_heating() {
        Some(count) => {
            format!("; one heating of this load about {count}, then start again with fresh water")
        }
        None => String::new(),
    };
    format!(
        "{missing} This day can give {} at most{a_heating}.",
        counted(plan.most_intervals, "ten-minute interval")
    )
}

/// What the table of expected values rests on.
pub fn expectation(plan: &Plan) -> Option<String> {
    let (expected, (power_w, expanded_w)) = (plan.expected.as_ref()?, plan.rated_w?);
    Some(format!(
        "Expected of the cooker as rated so far, Ps(50) = {}: {} kg heated from {} under a clear sky, in air of {} as in its tests; with its 95 % range. Water well below that speaks of haze, wind, a wrong aim or a loose lid.",
        with_uncertainty(power_w, expanded_w),
        fixed(expected.water_kg, 2),
        spoken_temperature(plan, plan.start_c(expected.ambient_c)),
        spoken_temperature(plan, expected.ambient_c)
    ))
}

/// What to expect, up to the temperature at which the run ends, in the thermometer's unit:
/// water, and its 95 % range.
pub fn expected_rows(plan: &Plan) -> Vec<[String; 4]> {
    let unit = water_unit(plan);
    let zone = &plan.campaign.site.time_zone;
    let moments = plan.expected.iter().flat_map(|all| &all.moments);
    let within = moments.take_while(|moment| moment.water_c <= plan.stop_c());
    within
        .map(|moment| {
            let [water, lowest, highest] =
                [moment.water_c, moment.lowest_c, moment.highest_c].map(|c| unit.of_base(c));
            [
                local_clock(moment.time_us, zone),
                fixed(water, 0),
                range(lowest, highest, 0),
                fixed(moment.power_w, 0),
            ]
        })
        .collect()
}

/// The models behind the numbers.
pub fn models(plan: &Plan) -> String {
    let usual = match plan.campaign.site.linke_turbidity {
        Some(_) => "as stated",
        None => "usual for a clear sky",
    };
    format!(
        "Clear sky after Ineichen and Perez 2002 for {} m, Linke turbidity {} ({usual}); haze and dust give less. Sun after NREL/TP-560-34302; a level horizon.",
        fixed(plan.campaign.site.elevation_m, 0),
        short(plan.day.turbidity)
    )
}
