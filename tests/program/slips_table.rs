//! The slips of [`super::slips`]: what a person changes, and all that is said of it.

use super::slips::Edit::{Copy, Rows, Text, Toml};
use super::slips::{Row, Slip, rows};

const NOON: &str = "solar noon falls at";

/// Halves, or doubles, what the water takes up.
fn with_power(index: usize, row: &mut Row, power: f64) {
    row.water_c = rows(7, power)[index].water_c;
}

/// A temperature in °C as a thermometer in °F shows it.
fn fahrenheit(celsius: f64) -> f64 {
    celsius * 1.8 + 32.0
}

/// The row so many hours later; into the next day at midnight.
fn later(row: &mut Row, hours: u32) {
    row.clock_s += hours * 3600;
    if row.clock_s >= 86_400 {
        row.clock_s -= 86_400;
        let day: u32 = row.date[8..].parse().unwrap();
        row.date = format!("{}{:02}", &row.date[..8], day + 1);
    }
}

/// Slips.
pub const SLIPS: &[Slip] = &[
    // The site.
    Slip { what: "longitude of the wrong sign", edits: &[Toml("longitude_deg = 33.0", "longitude_deg = -33.0")], said: &["day-5.csv: solar noon falls at 16:1 … with 33 as the longitude it would fall at 11:5 … sign of longitude_deg", NOON, NOON, NOON, "finding too-few-intervals", "finding too-few-days", "finding no-rating"] },
    Slip { what: "longitude of the wrong sign, nearer to Greenwich", edits: &[Toml("longitude_deg = 33.0", "longitude_deg = -25.5"), Toml("Harare", "Lusaka")], said: &["the site lies 5800 km from the principal place of its time zone Africa/Lusaka; with 25.5 as the longitude it would be within 500 km: check the sign of longitude_deg", "at ambient temperature the line takes up", "finding too-few-intervals", "finding r-squared-low", "finding extrapolated"] },
    Slip { what: "latitude and longitude exchanged", edits: &[Toml("latitude_deg = -19.0\nlongitude_deg = 33.0", "latitude_deg = 33.0\nlongitude_deg = -19.0")], said: &["Africa/Harare; at latitude −19 and longitude 33 it would be within 300 km … each other's place", "finding too-few-intervals", "finding r-squared-low", "finding extrapolated"] },
    Slip { what: "latitude and longitude exchanged, far from the zone", edits: &[Toml("latitude_deg = -19.0\nlongitude_deg = 33.0", "latitude_deg = -73.0\nlongitude_deg = -19.0"), Toml("Africa/Harare", "-05:00")], said: &["08:19 by the clock; with latitude and longitude exchanged it would fall at 11:55", NOON, NOON, NOON, "finding too-few-intervals", "finding too-few-days", "finding no-rating"] },
    Slip { what: "zone of another continent", edits: &[Toml("Africa/Harare", "America/New_York")], said: &["05:51 by the clock; check the longitude (east positive) and the time zone", NOON, NOON, NOON, "finding too-few-intervals", "finding too-few-days", "finding no-rating"] },
    Slip { what: "sign of the zone's offset", edits: &[Toml("Africa/Harare", "-02:00")], said: &["07:51 by the clock … else the time zone", NOON, NOON, NOON, "finding too-few-intervals", "finding too-few-days", "finding no-rating"] },
    Slip { what: "zone misspelled", edits: &[Toml("Africa/Harare", "Africa/Harrare")], said: &["[site] time_zone: found \"Africa/Harrare\" … did you mean \"Africa/Harare\"?"] },
    Slip { what: "latitude beyond the pole", edits: &[Toml("latitude_deg = -19.0", "latitude_deg = -190")], said: &["latitude_deg: found -190, expected -90 to 90"] },
    Slip { what: "longitude beyond the date line", edits: &[Toml("longitude_deg = 33.0", "longitude_deg = 330")], said: &["longitude_deg: found 330, expected -180 to 180"] },
    Slip { what: "latitude as text", edits: &[Toml("latitude_deg = -19.0", "latitude_deg = \"19 S\"")], said: &["found string \"19 S\", expected a number"] },
    Slip { what: "feet as metres, beyond all sites", edits: &[Toml("elevation_m = 600", "elevation_m = 9000")], said: &["elevation_m: found 9000, expected -430 to 6000 m"] },
    Slip { what: "elevation far too high for water so hot", edits: &[Toml("elevation_m = 600", "elevation_m = 5900")], said: &["day-5.csv: the water reaches 89.7 °C, above its boiling point of 80.2 °C here", "day-6.csv: the water", "day-7.csv: the water", "day-8.csv: the water", "finding extrapolated"] },
    Slip { what: "pressure in bar", edits: &[Toml("elevation_m = 600", "elevation_m = 600\npressure_hpa = 0.943")], said: &["pressure_hpa: found 0.943, expected 400 to 1100 hPa"] },
    // Keys.
    Slip { what: "elevation in another unit", edits: &[Toml("elevation_m = 600", "elevation_yd = 656")], said: &["the key \"elevation_m\" is missing", "unknown key \"elevation_yd\"; \"elevation_yd\" is in yd, and the key here is \"elevation_m\", in m: 1 yd is 0.9144 m"] },
    Slip { what: "elevation without its unit", edits: &[Toml("elevation_m = 600", "elevation = 1970")], said: &["[site] elevation: found \"1970\", expected a number with its unit, as in \"5052 ft\""] },
    Slip { what: "elevation in two units", edits: &[Toml("elevation_m = 600", "elevation_m = 600\nelevation_ft = 1970")], said: &["elevation_m: both elevation_m and elevation_ft are given, expected one"] },
    Slip { what: "feet spelt out", edits: &[Toml("elevation_m = 600", "elevation_feet = 1970")], said: &["the key \"elevation_m\" is missing", "unknown key \"elevation_feet\"; did you mean \"elevation_ft\"?"] },
    Slip { what: "thousands mark in feet", edits: &[Toml("elevation_m = 600", "elevation = \"1,970 ft\"")], said: &["found \"1,970 ft\" … without a thousands mark"] },
    Slip { what: "feet beyond all sites", edits: &[Toml("elevation_m = 600", "elevation_ft = 65000")], said: &["[site] elevation_ft: found 65000 ft, which is 19812 m, expected -430 to 6000 m"] },
    Slip { what: "water in another unit", edits: &[Toml("water_kg = 7.0", "water_pounds = 15.4")], said: &["did you mean \"water_lb\"?"] },
    Slip { what: "water by volume", edits: &[Toml("water_kg = 7.0", "water_l = 7.0")], said: &["weighing is surer"] },
    Slip { what: "water without its unit", edits: &[Toml("water_kg = 7.0", "water = 7.0")], said: &["[load] water: found \"7\", expected a number with its unit, as in \"16.2 lb\""] },
    Slip { what: "kilograms under the key of pounds", edits: &[Toml("water_kg = 7.0", "water_lb = \"7 kg\"")], said: &["[load] water_lb: the key water_lb is in lb, and its text is \"7 kg\""] },
    Slip { what: "area in another unit", edits: &[Toml("intercept_area_m2 = 1.0", "intercept_area_sqft = 10.8")], said: &["did you mean \"intercept_area_ft2\"?"] },
    Slip { what: "wind limit in another unit", edits: &[Toml("[instruments.irr", "[limits]\nwind_mean_kn = 2\n[instruments.irr")], said: &["unknown key \"wind_mean_kn\" … \"wind_mean_max_m_s\", in m/s: 1 kn is 0.5144 m/s"] },
    Slip { what: "limit of the air in another unit", edits: &[Toml("[instruments.irr", "[limits]\nambient_max_f = 95\n[instruments.irr")], said: &["\"ambient_max_c\", in °C: °C is (°F − 32)/1.8"] },
    Slip { what: "key misspelled", edits: &[Toml("latitude_deg = -19.0", "lattitude_deg = -19.0")], said: &["\"latitude_deg\" is missing", "unknown key \"lattitude_deg\"; did you mean \"latitude_deg\"?"] },
    Slip { what: "table misspelled", edits: &[Toml("[instruments.irr", "[instrument.irr")], said: &["did you mean \"instruments\"?"] },
    Slip { what: "kind of cooker misspelled", edits: &[Toml("type = \"concentrating\"", "type = \"concentrator\"")], said: &["found \"concentrator\", expected one of"] },
    Slip { what: "plateau in °F colder than the air", edits: &[Toml("[instruments.irr", "[[stagnation]]\ndate = 2026-04-09\ntime = \"12:30\"\nplateau_f = 70\nambient_f = 250\ncloudless = true\n[instruments.irr")], said: &["[[stagnation]] 1, plateau_f: the vessel is no hotter than the air"] },
    // Clocks and dates.
    Slip { what: "clock of one log five hours slow", edits: &[Rows(&[6], |_, row| row.clock_s -= 5 * 3600)], said: &["day-6.csv: 8 … when the sun … clock and its zone"] },
    Slip { what: "afternoon for morning", edits: &[Rows(&[7], |_, row| later(row, 12))], said: &["day-7.csv: 8 … at 22: … 7 April 2026, when the sun is below the horizon"] },
    Slip { what: "year of the last log", edits: &[Rows(&[8], |_, row| row.date = "2025-04-08".to_owned())], said: &["day-8.csv: its readings are of 8 April 2025, those of the other runs of 5 April 2026 to 7 April 2026; if its year is a slip and 8 April 2026 is meant"] },
    Slip { what: "year of the first log", edits: &[Rows(&[5], |_, row| row.date = "2025-04-05".to_owned())], said: &["day-5.csv: its readings are of 5 April 2025 … 5 April 2026 is meant"] },
    Slip { what: "month of a log", edits: &[Rows(&[6], |_, row| row.date = "2026-03-06".to_owned())], said: &["day-6.csv: its readings are of 6 March 2026 … if its month is a slip and 6 April 2026 is meant"] },
    Slip { what: "day and month exchanged", edits: &[Rows(&[6], |_, row| row.date = "2026-06-04".to_owned())], said: &["day-6.csv: its readings are of 4 June 2026 … 6 April 2026 is meant … date_order"] },
    Slip { what: "clock never set, from 1970", edits: &[Rows(&[7], |_, row| row.date = "1970-01-01".to_owned())], said: &["day-7.csv: its readings are of 1 January 1970, from when clocks count"] },
    Slip { what: "clock never set, from 2000", edits: &[Rows(&[7], |_, row| row.date = "2000-01-03".to_owned())], said: &["day-7.csv: its readings are of 3 January 2000"] },
    Slip { what: "all in the future", edits: &[Rows(&[5, 6, 7, 8], |_, row| row.date = row.date.replace("2026", "2027"))], said: &["day-8.csv: its readings are of 8 April 2027, and today is 25 November 2026; in all 4 runs lie ahead; check the dates"] },
    Slip { what: "year in the log but not in its name", edits: &[Rows(&[6], |_, row| row.date = "2025-04-06".to_owned()), Copy(6, "2026-04-06.csv"), Toml("day-6.csv", "2026-04-06.csv")], said: &["its name says 6 April 2026, its readings are of 6 April 2025", "unnamed day-6.csv"] },
    Slip { what: "date of a run", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\ndate = 2026-04-16")], said: &["the run's date is given as 16 April 2026"] },
    Slip { what: "start after end", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nstart = \"12:30\"\nend = \"10:30\"")], said: &["[[run]] with log \"day-6.csv\": ends at 10:30, and starts at 12:30; exchange or correct start and end"] },
    Slip { what: "end in hours of twelve", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nstart = \"10:30\"\nend = \"01:30\"")], said: &["ends at 01:30, and starts at 10:30 … 13:30 for half past one"] },
    Slip { what: "start and end of another part of the day", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nstart = \"03:00\"\nend = \"04:00\"")], said: &["no reading with a water temperature lies between its start and end"] },
    Slip { what: "excluded span exchanged", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nexclude = [{ from = \"12:00\", to = \"11:00\" }]")], said: &["the excluded span 12:00 to 11:00 does not end after it begins"] },
    Slip { what: "excluded span at another time", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nexclude = [{ from = \"02:00\", to = \"02:20\" }]")], said: &["day-6.csv: the excluded span 02:00 to 02:20 meets no interval"] },
    Slip { what: "rows of another year in a log", edits: &[Rows(&[7], |index, row| if index == 0 { row.date = "2024-04-07".to_owned(); })], said: &["day-7.csv: the readings span 730"] },
    Slip { what: "rows out of order", edits: &[Rows(&[7], |index, row| if index == 20 { row.clock_s += 660; })], said: &["day-7.csv: the rows were not in order of time"] },
    Slip { what: "a time twice", edits: &[Rows(&[7], |index, row| if index == 20 { row.clock_s += 300; })], said: &["day-7.csv: 1 row with the time of an earlier row left out"] },
    // Logs and runs.
    Slip { what: "a log that no run names", edits: &[Copy(7, "day-9.csv")], said: &["unnamed day-9.csv"] },
    Slip { what: "a log that is not there", edits: &[Toml("day-6.csv", "day-66.csv")], said: &["the log \"day-66.csv\""] },
    Slip { what: "a log named twice", edits: &[Toml("day-6.csv", "day-5.csv")], said: &["names the same log as [[run]] 1"] },
    Slip { what: "a log under two names", edits: &[Copy(5, "day-6.csv")], said: &["runs at the same time as \"day-5.csv\""] },
    Slip { what: "kind of a run misspelled", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nkind = \"watter\"")], said: &["found \"watter\", expected one of"] },
    Slip { what: "a run of a cooker half as strong", edits: &[Rows(&[7], |index, row| with_power(index, row, 0.5))], said: &["day-7.csv: its intervals take up 50 % of the power that the line of the other 3 runs says", "finding r-squared-low", "finding no-loss"] },
    Slip { what: "a run of a cooker twice as strong", edits: &[Rows(&[7], |index, row| with_power(index, row, 2.0))], said: &["day-7.csv: the water reaches 104.4 °C", "day-7.csv: its intervals take up 203 % of the power", "finding r-squared-low"] },
    // Columns, sensors and units of a log.
    Slip { what: "water and air exchanged", edits: &[Rows(&[6], |_, row| std::mem::swap(&mut row.water_c, &mut row.air_c))], said: &["if it is the water, name the column of each"] },
    Slip { what: "water and air exchanged, not hot yet", edits: &[Rows(&[6], |index, row| { std::mem::swap(&mut row.water_c, &mut row.air_c); row.is_gone = index > 14; })], said: &["day-6.csv: the air rises by 29 K and the water by 1 K; if the columns are exchanged"] },
    Slip { what: "irradiance that never changes", edits: &[Rows(&[6], |_, row| row.sun_w_m2 = 893.0)], said: &["day-6.csv: irradiance is 893 W/m² in each of 47 readings over 3 h 50 min"] },
    Slip { what: "air that never changes", edits: &[Rows(&[6], |_, row| row.air_c = 24.3)], said: &["day-6.csv: ambient temperature is 24.3 °C in each of 47 readings"] },
    Slip { what: "wind that never changes", edits: &[Rows(&[6], |_, row| row.wind_m_s = 0.9)], said: &["day-6.csv: wind speed is 0.9 m/s in each of 47 readings"] },
    Slip { what: "water that never changes", edits: &[Rows(&[6], |_, row| row.water_c = 27.4)], said: &["day-6.csv: water temperature is 27.4 °C in each of 47 readings"] },
    Slip { what: "irradiance in kW/m²", edits: &[Text(6, "irradiance_w_m2", "irradiance"), Rows(&[6], |_, row| row.sun_w_m2 /= 890.0)], said: &["this looks like kW/m²"] },
    Slip { what: "water in °F", edits: &[Rows(&[6], |_, row| row.water_c = row.water_c * 1.8 + 32.0)], said: &["this looks like °F"] },
    Slip { what: "water in °C under a header in °F", edits: &[Text(6, "water_c", "water_f")], said: &["day-6.csv: this looks like °C: the water in column \"water_f\" begins at 27, near the air of 26 °C … as °F it would begin at −3 °C … write (°C) behind the header"] },
    Slip { what: "water and air in °C under headers in °F", edits: &[Text(6, "water_c,ambient_c", "water_f,ambient_f")], said: &["day-6.csv: this looks like °C: the water in column \"water_f\" begins at 27 and ends at … as °F it would begin at −3 °C", "finding no-loss"] },
    Slip { what: "water in °C with °F under [units]", edits: &[Text(5, "water_c", "water"), Text(6, "water_c", "water"), Text(7, "water_c", "water"), Text(8, "water_c", "water"), Toml("[instruments.irr", "[units]\nwater_temperature = \"°F\"\n[instruments.irr")], said: &["day-5.csv: this looks like °C", "day-6.csv: this looks like °C", "day-7.csv: this looks like °C", "day-8.csv: this looks like °C", "finding too-few-intervals", "finding too-few-days", "finding no-rating"] },
    Slip { what: "water in kelvin", edits: &[Rows(&[6], |_, row| row.water_c += 273.15)], said: &["this looks like K"] },
    Slip { what: "a spike", edits: &[Rows(&[6], |index, row| if index == 9 { row.water_c = 850.0; })], said: &["day-6.csv: 1 reading in column \"water_c\" cannot be true"] },
    Slip { what: "no wind", edits: &[Text(6, ",wind_m_s", ",gusts")], said: &["day-6.csv: no column is understood as wind speed", "finding wind-not-measured"] },
    // The load.
    Slip { what: "pounds as kilograms", edits: &[Toml("water_kg = 7.0", "water_kg = 15.4")], said: &["15.4 kg of water on 1 m² is 15.4 kg/m²; if the number were pounds, it would be 7.0 kg/m², and 7 kg/m² is expected", "finding load-off"] },
    Slip { what: "square feet as square metres", edits: &[Toml("intercept_area_m2 = 1.0", "intercept_area_m2 = 10.76")], said: &["7 kg of water on 10.76 m² is 0.65 kg/m²; if the area were in square feet … 7.0 kg/m²", "finding load-off"] },
    Slip { what: "feet as metres in the aperture", edits: &[Toml("intercept_area_m2 = 1.0", "[cooker.aperture]\nshape = \"rectangle\"\nwidth_m = 3.28\nheight_m = 3.28")], said: &["if the area were in square feet, or its lengths in feet", "finding load-off"] },
    Slip { what: "kilograms converted as if pounds", edits: &[Toml("water_kg = 7.0", "water_kg = 3.175")], said: &["if kilograms were converted as if they were pounds, it would be 7.0", "finding load-off"] },
    Slip { what: "square metres converted as if square feet", edits: &[Toml("intercept_area_m2 = 1.0", "intercept_area_m2 = 0.0929")], said: &["on 0.0929 m² is 75.3 kg/m²; if square metres were converted as if they were square feet, it would be 7.0", "at ambient temperature the line takes up", "finding load-off", "finding impossible-gain", "finding more-than-sunlight"] },
    Slip { what: "pounds as kilograms in one run", edits: &[Toml("log = \"day-6.csv\"", "log = \"day-6.csv\"\nwater_kg = 15.4")], said: &["day-6.csv: 15.4 kg of water", "finding r-squared-low", "finding load-off"] },
    Slip { what: "area in cm²", edits: &[Toml("intercept_area_m2 = 1.0", "intercept_area_m2 = 10500")], said: &["found 10500, expected 0.001 to 100 m²; if it is in cm², that is 1.05 m²"] },
    Slip { what: "no water", edits: &[Toml("water_kg = 7.0", "water_kg = 0")], said: &["water_kg: found 0, expected more than 0"] },
    Slip { what: "water in grams", edits: &[Toml("water_kg = 7.0", "water_kg = 7000")], said: &["water_kg: found 7000 … at most 1000 kg"] },
];

/// What looks odd and is honest: nothing is said of a slip.
pub const UNSUSPICIOUS: &[Slip] = &[
    Slip { what: "a small load that is weighed", edits: &[Toml("water_kg = 7.0", "water_kg = 3.175"), Rows(&[5, 6, 7, 8], |index, row| { with_power(index, row, 7.0 / 3.175); row.is_gone = index > 22; })], said: &["finding load-off"] },
    Slip { what: "a great load that is weighed", edits: &[Toml("water_kg = 7.0", "water_kg = 15.4"), Rows(&[5, 6, 7, 8], |index, row| with_power(index, row, 7.0 / 15.4))], said: &["finding extrapolated", "finding load-off"] },
    Slip { what: "a calm day: cups that stand still", edits: &[Rows(&[6], |_, row| row.wind_m_s = 0.0)], said: &[] },
    Slip { what: "cups that stand still, and the offset of their logger", edits: &[Rows(&[6], |_, row| row.wind_m_s = 0.4)], said: &[] },
    Slip { what: "weather that is typed in once", edits: &[Rows(&[6], |_, row| { row.wind_m_s = 0.9; row.air_c = 24.3; row.sun_w_m2 = 893.0; })], said: &[] },
    Slip { what: "water in °F under a header in °F", edits: &[Text(6, "water_c", "water_f"), Rows(&[6], |_, row| row.water_c = fahrenheit(row.water_c))], said: &[] },
    Slip { what: "water and air in °F, a short heating", edits: &[Text(6, "water_c,ambient_c", "water_f,ambient_f"), Rows(&[6], |index, row| { row.water_c = fahrenheit(row.water_c); row.air_c = fahrenheit(row.air_c); row.is_gone = index > 16; })], said: &[] },
    Slip { what: "water of a cold well in °F on a hot day", edits: &[Text(6, "water_c", "water_f"), Rows(&[6], |index, row| { row.water_c = fahrenheit(row.water_c - 20.0); row.air_c += 9.0; row.is_gone = index > 18; })], said: &[] },
    Slip { what: "frost: water in °F that begins at freezing", edits: &[Text(6, "water_c,ambient_c", "water_f,ambient_f"), Rows(&[6], |index, row| { row.water_c = fahrenheit(row.water_c - 27.0); row.air_c = fahrenheit(row.air_c - 28.0); row.is_gone = index > 18; })], said: &[] },
    Slip { what: "one run a month later", edits: &[Rows(&[8], |_, row| row.date = "2026-05-08".to_owned())], said: &[] },
    Slip { what: "two runs a year later", edits: &[Rows(&[7, 8], |_, row| row.date = row.date.replace("2026", "2025")), Toml("day-5.csv", "x"), Toml("day-7.csv", "day-5.csv"), Toml("\"x\"", "\"day-7.csv\"")], said: &[] },
    Slip { what: "a day with a tenth less power", edits: &[Rows(&[7], |index, row| with_power(index, row, 0.9))], said: &[] },
    Slip { what: "a clock that keeps to no place", edits: &[Toml("Africa/Harare", "UTC"), Toml("[instruments.irr", "[format]\ntime_zone = \"Africa/Harare\"\n[instruments.irr")], said: &[] },
    Slip { what: "an offset of zero", edits: &[Toml("Africa/Harare", "+00:00"), Toml("[instruments.irr", "[format]\ntime_zone = \"Africa/Harare\"\n[instruments.irr")], said: &[] },
];
