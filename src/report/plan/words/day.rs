//! The plan of a test day in words, for the terminal and for the field sheet.

use crate::language::{
    Message, Phrase, Words, celsius, clauses, clock, date, duration, fixed, joined, kelvins,
    kilograms, metres, range, short, square_metres,
};
use crate::measure::{Kind, Unit};
use crate::message;
use crate::physics::sun::Daylight;
use crate::planning::Plan;
use crate::planning::aim::{SHORTEST_BY_HAND_S, spacing_s};
use crate::planning::day::micros;
use crate::procedure::spans::TimeSpan;
use crate::report::heat_balance::acceptance_words::angle;
use crate::report::rows::Row;
use crate::units::{decimals_for, local_clock};

/// Air temperature for which the start is given, °C.
pub const EXAMPLE_C: f64 = 25.0;
/// Most aimings that are listed by their clock times.
const MOST_AIMINGS: usize = 30;

/// The date with its weekday: `Tuesday 3 November 2026`.
pub fn spoken_day(plan: &Plan) -> Message {
    let day = plan.date.weekday().to_monday_one_offset();
    message!(
        "plan-day",
        weekday = Message::new(format!("weekday-{day}")),
        date = date(plan.date)
    )
}

/// What the sun does, when the practice lets one test, and how strong a clear sky is.
pub fn sun_rows(plan: &Plan, words: &Words) -> [Row; 3] {
    let row = |label: Message, text: Phrase| Row::new(&words.say(label), words.say(text));
    let (start_h, end_h) = plan.limits.solar_window_h();
    let window = message!(
        "plan-window-text",
        clocks = clocks(plan, &plan.day.window),
        from = clock(start_h),
        to = clock(end_h)
    );
    [
        row(message!("plan-sun"), course(plan).into()),
        row(message!("plan-window"), window.into()),
        row(message!("plan-clear-sky"), enough(plan)),
    ]
}

/// When the sun rises, is highest, and sets.
pub fn course(plan: &Plan) -> Message {
    let zone = &plan.campaign.site.time_zone;
    let at = |unix_s: f64| local_clock(micros(unix_s), zone);
    let noon = at(plan.day.noon_s);
    let (rise_s, set_s) = match plan.day.light {
        Daylight::AlwaysUp => return message!("plan-sun-always", noon = noon),
        Daylight::AlwaysDown => return message!("plan-sun-never"),
        Daylight::RisesAndSets { rise_s, set_s } => (rise_s, set_s),
    };
    match (rise_s.map(at), set_s.map(at)) {
        (Some(rise), Some(set)) => {
            message!("plan-sun-course", rise = rise, noon = noon, set = set)
        }
        (None, Some(set)) => message!("plan-sun-no-rise", noon = noon, set = set),
        (Some(rise), None) => message!("plan-sun-no-set", rise = rise, noon = noon),
        (None, None) => message!("plan-sun-neither", noon = noon),
    }
}

/// `10:33 to 14:33`.
pub fn clocks(plan: &Plan, span: &TimeSpan) -> Message {
    let zone = &plan.campaign.site.time_zone;
    message!(
        "plan-clocks",
        from = local_clock(span.from_us, zone),
        to = local_clock(span.to_us, zone)
    )
}

/// Whether and when a clear sky gives enough.
fn enough(plan: &Plan) -> Phrase {
    let most_w_m2 = plan.limits.irradiance_max_w_m2();
    let least = short(plan.limits.irradiance_min_w_m2());
    let highest = fixed(plan.day.most_w_m2, 0);
    let Some(span) = &plan.day.enough else {
        return message!("plan-never-enough", least = least, highest = highest).into();
    };
    let from_to = clocks(plan, span);
    let Some(usable) = &plan.day.usable else {
        return message!("plan-enough-outside", least = least, clocks = from_to).into();
    };
    let enough = if *usable == plan.day.window {
        message!("plan-enough-all-through", least = least, clocks = from_to)
    } else {
        message!(
            "plan-enough-in-window",
            least = least,
            clocks = from_to,
            usable = clocks(plan, usable)
        )
    };
    let too_much = (plan.day.most_w_m2 > most_w_m2)
        .then(|| message!("plan-too-much", most = short(most_w_m2), highest = highest));
    clauses([enough].into_iter().chain(too_much))
}

/// The load, and the temperatures between which a run counts.
pub fn load_rows(plan: &Plan, words: &Words) -> [Row; 3] {
    let row = |label: Message, text: Phrase| Row::new(&words.say(label), words.say(text));
    let start_of = |air_c: f64| spoken_temperature(plan, plan.start_c(air_c));
    let start = match plan.limits.water_start_above_ambient_k() {
        Some(above_k) => message!(
            "plan-start-above",
            difference = spoken_difference(plan, above_k),
            start = start_of(EXAMPLE_C),
            air = spoken_temperature(plan, EXAMPLE_C)
        )
        .into(),
        None => start_of(EXAMPLE_C),
    };
    let stop = message!(
        "plan-stop-text",
        stop = spoken_temperature(plan, plan.stop_c()),
        boiling = spoken_temperature(plan, plan.boiling_point_c)
    );
    [
        row(message!("plan-water"), load(plan)),
        row(message!("plan-start"), start),
        row(message!("plan-stop"), stop.into()),
    ]
}

/// The water that the practice asks for, and what the campaign file says if that is another
/// amount.
fn load(plan: &Plan) -> Phrase {
    let load = match plan.campaign.vessels {
        1 => message!("plan-load-one"),
        several => message!(
            "plan-load-several",
            vessels = several as usize,
            vessel = kilograms(fixed(plan.load_kg / f64::from(several), 2))
        ),
    };
    let load = load
        .with("load", kilograms(fixed(plan.load_kg, 2)))
        .with("each", kilograms(short(plan.limits.load().value)))
        .with(
            "area",
            square_metres(fixed(plan.campaign.cooker.intercept_area_m2, 3)),
        );
    let differs = |stated_kg: &f64| (stated_kg - plan.load_kg).abs() > 0.005 * plan.load_kg;
    let stated = plan.campaign.water_kg.filter(differs);
    let stated =
        stated.map(|stated_kg| message!("plan-load-stated", stated = kilograms(short(stated_kg))));
    clauses([load].into_iter().chain(stated))
}

/// The unit of the thermometer in the water, or in the dry vessel.
pub fn tested_unit(plan: &Plan) -> Unit {
    plan.campaign.tested_unit(plan.kind)
}

/// A temperature, °C, and before it in the thermometer's unit if that is another.
pub fn spoken_temperature(plan: &Plan, temperature_c: f64) -> Phrase {
    let unit = tested_unit(plan);
    if unit == Unit::base(Kind::Temperature) {
        return celsius(fixed(temperature_c, 1));
    }
    message!(
        "plan-temperature",
        temperature = fixed(unit.of_base(temperature_c), 0),
        unit = unit.symbol(),
        celsius = fixed(temperature_c, 1)
    )
    .into()
}

/// A temperature difference in K, and before it in the thermometer's unit if that is another.
pub fn spoken_difference(plan: &Plan, kelvin: f64) -> Phrase {
    let unit = tested_unit(plan);
    let scaled = unit.of_base(kelvin) - unit.of_base(0.0);
    if (scaled - kelvin).abs() < 1e-9 {
        return kelvins(short(kelvin));
    }
    message!(
        "plan-difference",
        difference = short(scaled),
        unit = unit.symbol(),
        kelvin = short(kelvin)
    )
    .into()
}

/// When to aim, and where the half angle is from if it is not stated.
pub fn aiming(plan: &Plan) -> Message {
    let Some(half_angle) = plan.half_angle else {
        return message!("plan-aim-unknown");
    };
    let when = aiming_times(plan, half_angle.half_angle_deg);
    match &half_angle.shown {
        Some(shown) if plan.aimings_us.is_some() => {
            message!("plan-aim-shown", when = when, shown = angle(shown))
        }
        _ => when,
    }
}

fn aiming_times(plan: &Plan, half_angle_deg: f64) -> Message {
    let zone = &plan.campaign.site.time_zone;
    let Some(times) = &plan.aimings_us else {
        return message!("plan-aim-no-time");
    };
    let angle = match plan.half_angle.and_then(|one| one.shown) {
        Some(_) => fixed(half_angle_deg, 1),
        None => short(half_angle_deg),
    };
    let clocks: Vec<String> = times
        .iter()
        .map(|time_us| local_clock(*time_us, zone))
        .collect();
    let count = clocks.len();
    let first = clocks.first().cloned().unwrap_or_default();
    let clocks = joined(clocks, ", ");
    let Some((shortest_s, longest_s)) = spacing_s(times) else {
        return message!("plan-aim-once", clocks = clocks, angle = angle);
    };
    let minutes = range(shortest_s / 60.0, longest_s / 60.0, 0);
    if shortest_s < SHORTEST_BY_HAND_S {
        let time = duration(SHORTEST_BY_HAND_S);
        message!("plan-aim-drive", angle = angle, time = time)
    } else if count <= MOST_AIMINGS {
        message!(
            "plan-aim-at",
            clocks = clocks,
            angle = angle,
            minutes = minutes
        )
    } else {
        message!(
            "plan-aim-every",
            minutes = minutes,
            first = first,
            angle = angle
        )
    }
}

/// What is missing, and how much of it this day can give.
pub fn missing(plan: &Plan) -> Phrase {
    let missing = match &plan.missing {
        Some(missing) => message!("plan-missing", missing = missing),
        None => message!("plan-missing-nothing"),
    };
    let most = plan.most_intervals;
    let minutes = short(plan.limits.interval().aim_min());
    let gives = match plan.intervals_a_heating() {
        _ if most == 0 => message!("plan-gives-none"),
        Some(heating) => message!(
            "plan-gives-by-heating",
            most = most,
            minutes = minutes,
            heating = heating
        ),
        None => message!("plan-gives", most = most, minutes = minutes),
    };
    joined([missing, gives], " ")
}

/// What the table of expected values rests on.
pub fn expectation(plan: &Plan) -> Option<Message> {
    let (expected, (power_w, expanded_w)) = (plan.expected.as_ref()?, plan.rated_w?);
    let decimals = decimals_for(expanded_w);
    Some(message!(
        "plan-expected",
        spread = spread(plan),
        power = fixed(power_w, decimals),
        expanded = fixed(expanded_w, decimals),
        load = kilograms(fixed(expected.water_kg, 2)),
        start = spoken_temperature(plan, plan.start_c(expected.ambient_c)),
        air = spoken_temperature(plan, expected.ambient_c)
    ))
}

/// What the ± holds: that of one day says nothing of other days.
fn spread(plan: &Plan) -> Message {
    match plan.is_of_one_day {
        true => message!("plan-spread-one-day"),
        false => message!("plan-spread"),
    }
}

/// What to expect, up to the temperature at which the run ends, in the thermometer's unit:
/// clock, water, its 95 % range, and power.
pub fn expected_rows(plan: &Plan, words: &Words) -> Vec<[String; 4]> {
    let unit = tested_unit(plan);
    let zone = &plan.campaign.site.time_zone;
    let moments = plan.expected.iter().flat_map(|all| &all.moments);
    let within = moments.take_while(|moment| moment.water_c <= plan.stop_c());
    within
        .map(|moment| {
            let [water, lowest, highest] =
                [moment.water_c, moment.lowest_c, moment.highest_c].map(|c| unit.of_base(c));
            [
                local_clock(moment.time_us, zone),
                words.say(fixed(water, 0)),
                words.say(range(lowest, highest, 0)),
                words.say(fixed(moment.power_w, 0)),
            ]
        })
        .collect()
}

/// The models behind the numbers.
pub fn models(plan: &Plan) -> Message {
    let models = match plan.campaign.site.linke_turbidity {
        Some(_) => message!("plan-models-stated"),
        None => message!("plan-models"),
    };
    models
        .with(
            "elevation",
            metres(fixed(plan.campaign.site.elevation_m, 0)),
        )
        .with("turbidity", short(plan.day.turbidity))
}
