//! A log written in a dialect drawn by chance reads as the canonical one; any bytes end
//! in readings or in an error. From a fixed seed: the same cases on every machine.

use std::fs;
use std::path::Path;

use jiff::civil::{Date, DateTime};
use jiff::tz::TimeZone;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use proptest::test_runner::RngSeed;
use simmerline::campaign::model::LogRules;
use simmerline::error::Error;
use simmerline::logs::Readings;
use simmerline::logs::read::{FileLog, read_bytes};
use simmerline::logs::request::Request;

fn settings(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        rng_seed: RngSeed::Fixed(20_261_125),
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

fn read(bytes: &[u8]) -> Result<FileLog, Error> {
    let rules = LogRules::default();
    let zone = TimeZone::get("Europe/Madrid").unwrap();
    let request = Request {
        // Settles dates that can be read in two ways.
        date: Some(DAY),
        ..Request::new(&rules, &zone)
    };
    read_bytes(Path::new("log"), "log", bytes, &request)
}

const DAY: Date = jiff::civil::date(2026, 4, 3);

/// One row: minutes since the first, and tenths of each quantity.
type Tenths = (i32, i32, i32, i32);

/// How a log is written.
#[derive(Debug, Clone)]
struct Dialect {
    delimiter: char,
    is_comma_decimal: bool,
    is_quoted: bool,
    line_end: &'static str,
    encoding: &'static str,
    time: &'static str,
    language: usize,
    preamble: usize,
    has_units_row: bool,
    has_footer: bool,
}

fn dialects() -> impl Strategy<Value = Dialect> {
    let form = (
        select(&[',', ';', '\t', '|'][..]),
        any::<bool>(),
        any::<bool>(),
        select(&["\n", "\r\n", "\r"][..]),
        select(
            &[
                "utf-8",
                "utf-8 mark",
                "utf-16le",
                "utf-16be",
                "windows-1252",
            ][..],
        ),
    );
    let times = [
        "%Y-%m-%d %H:%M:%S",
        "%Y-%m-%dT%H:%M:%S",
        "%d/%m/%Y %H:%M",
        "%m/%d/%Y %I:%M %p",
        "%d.%m.%Y %H:%M",
        "%d %B %Y %H:%M",
        "%y-%m-%d %H:%M",
    ];
    let content = (
        select(times.to_vec()),
        0..HEADERS.len(),
        0..4_usize,
        any::<bool>(),
        any::<bool>(),
    );
    (form, content).prop_map(|(form, content)| {
        let (delimiter, is_comma_decimal, is_quoted, line_end, encoding) = form;
        let (time, language, preamble, has_units_row, has_footer) = content;
        Dialect {
            delimiter,
            is_comma_decimal,
            // A decimal comma between commas must be quoted.
            is_quoted: is_quoted || (is_comma_decimal && delimiter == ','),
            line_end,
            encoding,
            time,
            language,
            preamble,
            has_units_row,
            has_footer,
        }
    })
}

const HEADERS: [[&str; 5]; 5] = [
    [
        "Date Time",
        "Water temperature",
        "Ambient temperature",
        "Irradiance",
        "Wind speed",
    ],
    [
        "Fecha y hora",
        "Temperatura del agua",
        "Temperatura ambiente",
        "Irradiancia",
        "Velocidad del viento",
    ],
    [
        "Date et heure",
        "Température de l'eau",
        "Température ambiante",
        "Éclairement énergétique",
        "Vitesse du vent",
    ],
    [
        "Datum Uhrzeit",
        "Wassertemperatur",
        "Lufttemperatur",
        "Einstrahlung",
        "Windgeschwindigkeit",
    ],
    [
        "Data e hora",
        "Temperatura da água",
        "Temperatura do ar",
        "Irradiância",
        "Velocidade do vento",
    ],
];
const UNITS: [&str; 5] = ["", "°C", "°C", "W/m²", "m/s"];

impl Dialect {
    fn number(&self, tenths: i32) -> String {
        let text = format!("{:.1}", f64::from(tenths) / 10.0);
        if self.is_comma_decimal {
            text.replace('.', ",")
        } else {
            text
        }
    }

    fn row(&self, cells: &[String]) -> String {
        let quoted = |cell: &String| {
            if self.is_quoted {
                format!("\"{cell}\"")
            } else {
                cell.clone()
            }
        };
        let cells: Vec<String> = cells.iter().map(quoted).collect();
        cells.join(&self.delimiter.to_string()) + self.line_end
    }

    fn write(&self, rows: &[Tenths]) -> Vec<u8> {
        let mut text = String::new();
        for line in 0..self.preamble {
            text += &format!("Invented logger no. {line}{}", self.line_end);
        }
        let header = HEADERS[self.language].iter().zip(UNITS);
        let header: Vec<String> = header
            .map(|(name, unit)| match (self.has_units_row, unit) {
                (true, _) | (_, "") => (*name).to_owned(),
                (false, unit) => format!("{name} ({unit})"),
            })
            .collect();
        text += &self.row(&header);
        if self.has_units_row {
            text += &self.row(&UNITS.map(str::to_owned));
        }
        for (index, (water, ambient, sun, wind)) in rows.iter().enumerate() {
            let at = time(index).strftime(self.time).to_string();
            let mut cells = vec![at];
            cells.extend([water, ambient, sun, wind].map(|tenths| self.number(*tenths)));
            text += &self.row(&cells);
        }
        if self.has_footer {
            text += &format!("End of data{}", self.line_end);
        }
        self.encode(&text)
    }

    fn encode(&self, text: &str) -> Vec<u8> {
        match self.encoding {
            "utf-8" => text.as_bytes().to_vec(),
            "utf-8 mark" => format!("\u{feff}{text}").into_bytes(),
            "utf-16le" => format!("\u{feff}{text}")
                .encode_utf16()
                .flat_map(u16::to_le_bytes)
                .collect(),
            "utf-16be" => text.encode_utf16().flat_map(u16::to_be_bytes).collect(),
            // Every letter used lies in Latin-1, where it is its own number.
            _ => text
                .chars()
                .map(|letter| u8::try_from(letter as u32).unwrap())
                .collect(),
        }
    }
}

/// Time of a row; over three hours it stays on the one day.
fn time(row: usize) -> DateTime {
    DAY.at(10, 0, 0, 0) + jiff::Span::new().minutes(row as i64 * 5)
}

fn tenths() -> impl Strategy<Value = Vec<Tenths>> {
    vec(
        (100..1000_i32, 150..400_i32, 4000..11_000_i32, 0..90_i32),
        3..36,
    )
}

fn values(readings: &Readings) -> Vec<Vec<f64>> {
    let optional = [
        &readings.ambient_c,
        &readings.irradiance_w_m2,
        &readings.wind_m_s,
    ];
    let optional = optional.map(|series| series.as_ref().unwrap().value.clone());
    std::iter::once(readings.water_c.value.clone())
        .chain(optional)
        .collect()
}

proptest! {
    #![proptest_config(settings(256))]

    #[test]
    fn a_log_in_any_dialect_reads_as_the_canonical_one(dialect in dialects(), rows in tenths()) {
        let bytes = dialect.write(&rows);
        let log = read(&bytes).map_err(|error| TestCaseError::fail(error.to_string()))?;
        let zone = TimeZone::get("Europe/Madrid").unwrap();
        let times: Vec<i64> = (0..rows.len())
            .map(|row| zone.to_timestamp(time(row)).unwrap().as_microsecond())
            .collect();
        prop_assert_eq!(&*log.readings.time_us, &times);
        let column = |pick: fn(&Tenths) -> i32| -> Vec<f64> {
            rows.iter().map(|row| f64::from(pick(row)) / 10.0).collect()
        };
        let expected = vec![column(|r| r.0), column(|r| r.1), column(|r| r.2), column(|r| r.3)];
        prop_assert_eq!(values(&log.readings), expected);
    }
}

/// Dresses whose bytes are worth damaging: text of every kind, packed and spreadsheets.
const DAMAGED: [&str; 10] = [
    "tall-german/day-1.txt",
    "tall-logger/day-1.csv",
    "tall-portuguese/day-1.csv.gz",
    "quoted-decimal-comma/day-1.csv",
    "spaces/day-1.txt",
    "month-fr/day-1.csv",
    "xlsx/day-1.xlsx",
    "ods/day-1.ods",
    "libreoffice-xlsx/day-1.xlsx",
    "cr/day-1.csv",
];

fn dress(name: &str) -> Vec<u8> {
    let folder = Path::new("tests/data/dresses").join(name);
    fs::read(&folder).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// Readings or a problem of input; nothing else.
fn ends_well(bytes: &[u8]) -> Result<(), TestCaseError> {
    match read(bytes) {
        Ok(log) => {
            let times = &log.readings.time_us;
            prop_assert!(times.windows(2).all(|pair| pair[0] < pair[1]));
            prop_assert!(
                log.readings
                    .water_c
                    .value
                    .iter()
                    .all(|value| value.is_finite())
            );
            Ok(())
        }
        Err(Error::Input(problems)) => {
            prop_assert!(!problems.listed().is_empty());
            Ok(())
        }
        Err(other) => Err(TestCaseError::fail(other.to_string())),
    }
}

proptest! {
    #![proptest_config(settings(400))]

    #[test]
    fn damaged_logs_of_every_kind_end_in_readings_or_an_error(
        name in select(&DAMAGED[..]),
        flips in vec((any::<Index>(), any::<u8>()), 0..12),
        cut in any::<Index>(),
        is_cut in any::<bool>(),
    ) {
        let mut bytes = dress(name);
        for (at, byte) in flips {
            let at = at.index(bytes.len());
            bytes[at] = byte;
        }
        if is_cut {
            bytes.truncate(cut.index(bytes.len()));
        }
        ends_well(&bytes)?;
    }

    #[test]
    fn words_of_logs_in_any_order_end_in_readings_or_an_error(
        pieces in vec(select(&PIECES[..]), 0..120)
    ) {
        ends_well(pieces.concat().as_bytes())?;
    }
}

/// Pieces that mean something to the reader.
const PIECES: [&str; 44] = [
    "time",
    "date",
    "water",
    "ambient",
    "°C",
    "(°F)",
    "\"",
    "\"\"",
    ",",
    ";",
    "\t",
    "|",
    " ",
    "  ",
    "\n",
    "\r\n",
    "\r",
    "#",
    "2026-04-03",
    "03/04/2026",
    "3.4.26",
    "10:20",
    "10:20:30",
    "24:00",
    "12:00 AM",
    "p. m.",
    "+01:00",
    "Z",
    "UTC",
    "1775203200",
    "46115.5",
    "21.8",
    "21,8",
    "1.234",
    "1,234.5",
    "-999",
    "NaN",
    "1e308",
    "−5",
    "marzo",
    "99999999999999999999",
    "\u{feff}",
    "\0",
    "é",
];
