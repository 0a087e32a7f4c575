//! The campaigns of a comparison: what was tested, where, and what came of it. What is the same of
//! all is said once, and the tables have what differs.

use serde::Serialize;

use super::bracketing::in_column;
use super::calls::Calls;
use crate::comparison::Comparison;
use crate::language::{
    Message, Phrase, Words, celsius, fixed, joined, kelvins, kilograms, metres, metres_per_second,
    range, short, square_metres,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::spans::Summary;
use crate::procedure::uncertainty::Figure;
use crate::report::number::report_number;
use crate::report::rows::Row;
use crate::report::words::instruments::{InstrumentRow, instrument_rows};
use crate::report::words::tested::test_dates;
use crate::units::{decimals_for, sentence_case};

/// Instruments that are told, at most: beyond, the reports have them.
const INSTRUMENTS: usize = 60;
/// In place of what a campaign does not have.
const NONE: &str = "–";

/// The campaigns.
#[derive(Debug, Clone, Serialize)]
pub struct CampaignsPart {
    /// What is the same of all.
    pub alike: Vec<Row>,
    /// What differs: cookers and tests.
    pub tests: Table,
    /// What came of them; `None` where no campaign has a line.
    pub results: Option<Table>,
    /// Instruments, each with the campaigns that have it.
    pub instruments: Vec<InstrumentOf>,
    /// Where those are that are too many to be told; else, where one is of several campaigns, that
    /// a row is a description. Empty elsewhere.
    pub instruments_note: String,
}

/// A table with a row a campaign.
#[derive(Debug, Clone, Serialize)]
pub struct Table {
    pub title: String,
    /// Headers over several columns each, in their order; empty without any.
    pub groups: Vec<Group>,
    pub columns: Vec<Column>,
    pub rows: Vec<CampaignRow>,
}

/// A header over columns that follow each other.
#[derive(Debug, Clone, Serialize)]
pub struct Group {
    pub name: String,
    pub columns: usize,
}

/// A column.
#[derive(Debug, Clone, Serialize)]
pub struct Column {
    pub name: String,
    /// It has words, which may wrap; else a number.
    pub is_text: bool,
}

/// A campaign in a table.
#[derive(Debug, Clone, Serialize)]
pub struct CampaignRow {
    pub number: String,
    pub name: String,
    /// What was tested.
    pub cooker: String,
    pub cells: Vec<String>,
}

/// An instrument, and which campaigns have it.
#[derive(Debug, Clone, Serialize)]
pub struct InstrumentOf {
    /// Empty where it is that of the row above.
    pub quantity: String,
    pub instrument: String,
    pub uncertainty: String,
    pub campaigns: String,
}

/// A column before it is known whether it is the same of all.
struct Told {
    header: Message,
    is_text: bool,
    /// In the order of the numbers; `None` where a campaign does not state it.
    cells: Vec<Option<String>>,
}

impl Told {
    /// What all state alike.
    fn alike(&self) -> Option<&String> {
        let first = self.cells.first()?.as_ref()?;
        let mut cells = self.cells.iter();
        cells
            .all(|cell| cell.as_ref() == Some(first))
            .then_some(first)
    }

    fn is_stated(&self) -> bool {
        self.cells.iter().any(Option::is_some)
    }
}

/// Puts the campaigns into words, in the order of their numbers.
pub fn campaigns(comparison: &Comparison, calls: &Calls, words: &Words) -> CampaignsPart {
    let telling = Telling {
        comparison,
        calls,
        words,
    };
    let kinds = telling.column(message!("campaigns-type"), true, |one| {
        Some(one.tested.campaign.cooker.kind.describe().into())
    });
    let columns = telling.tests();
    let all = [&kinds].into_iter().chain(&columns);
    let alike = all.filter_map(|column| {
        let text = column.alike()?;
        Some(Row::new(&words.say(&column.header), text))
    });
    let alike = alike.collect();
    let differ = columns.iter().filter(|one| one.alike().is_none());
    let differ: Vec<&Told> = differ.filter(|one| one.is_stated()).collect();
    let has_kinds = kinds.alike().is_none();
    let (instruments, instruments_note) = telling.instruments();
    CampaignsPart {
        alike,
        tests: telling.table(message!("campaigns-tests"), &differ, has_kinds),
        results: telling.results(),
        instruments,
        instruments_note,
    }
}

struct Telling<'c> {
    comparison: &'c Comparison,
    calls: &'c Calls,
    words: &'c Words,
}

impl Telling<'_> {
    fn in_order(&self) -> impl Iterator<Item = &Assessment> {
        let places = self.calls.order().iter();
        places.map(|place| &self.comparison.campaigns[*place])
    }

    fn column(
        &self,
        header: Message,
        is_text: bool,
        cell: impl Fn(&Assessment) -> Option<Phrase>,
    ) -> Told {
        let cells = self
            .in_order()
            .map(|one| cell(one).map(|said| self.words.say(said)));
        Told {
            header,
            is_text,
            cells: cells.collect(),
        }
    }

    /// What was tested, where, when and by whom.
    fn tests(&self) -> Vec<Told> {
        let cooker = |one: &Assessment| one.tested.campaign.cooker.clone();
        vec![
            self.column(message!("campaigns-area"), false, |one| {
                Some(square_metres(fixed(cooker(one).intercept_area_m2, 3)))
            }),
            self.column(message!("campaigns-mass"), false, |one| {
                cooker(one).mass_kg.map(|kg| kilograms(short(kg)))
            }),
            self.column(message!("campaigns-cost"), false, |one| {
                let cost = short(cooker(one).cost?);
                let currency = cooker(one).currency.map(Phrase::from);
                Some(joined([cost].into_iter().chain(currency), "\u{a0}"))
            }),
            self.column(message!("campaigns-dates"), true, |one| {
                Some(test_dates(one))
            }),
            self.column(message!("campaigns-runs"), false, |one| {
                Some(one.tested.all_runs().count().into())
            }),
            self.column(message!("campaigns-place"), true, |one| {
                let site = &one.tested.campaign.site;
                let elevation = metres(fixed(site.elevation_m, 0));
                Some(joined([Phrase::from(&site.name), elevation], ", "))
            }),
            self.column(message!("campaigns-tester"), true, |one| {
                one.tested.campaign.tester.as_ref().map(Phrase::from)
            }),
            self.column(message!("campaigns-report"), true, |one| {
                Some(report_number(one).into())
            }),
        ]
    }

    fn table(&self, title: Message, columns: &[&Told], has_kinds: bool) -> Table {
        let cell = |index: usize, column: &&Told| {
            let own = column.cells[index].clone();
            own.unwrap_or_else(|| NONE.to_owned())
        };
        let rows = self.calls.order().iter().enumerate();
        let rows = rows.map(|(index, place)| {
            let cooker = &self.comparison.campaigns[*place].tested.campaign.cooker;
            let kind = has_kinds.then(|| Phrase::from(cooker.kind.describe()));
            let named = [Phrase::from(&cooker.name)].into_iter().chain(kind);
            CampaignRow {
                number: self.calls.number(*place).to_string(),
                name: self.calls.name(*place).to_owned(),
                cooker: self.words.say(joined(named, ", ")),
                cells: columns.iter().map(|column| cell(index, column)).collect(),
            }
        });
        let header = |column: &&Told| Column {
            name: self.words.say(&column.header),
            is_text: column.is_text,
        };
        Table {
            title: self.words.say(title),
            groups: Vec::new(),
            rows: rows.collect(),
            columns: columns.iter().map(header).collect(),
        }
    }

    /// Line, heat balance, and what was around the used intervals; `None` where no campaign has
    /// any of them.
    fn results(&self) -> Option<Table> {
        let groups = [
            (message!("campaigns-line"), self.line()),
            (message!("campaigns-balance"), self.balance().into()),
            (message!("campaigns-around"), self.around().into()),
        ];
        let stated = groups.map(|(name, columns)| {
            let columns = columns.into_iter().filter(Told::is_stated);
            (name, columns.collect::<Vec<Told>>())
        });
        let (mut names, mut columns) = (Vec::new(), Vec::new());
        for (name, own) in &stated {
            names.push(Group {
                name: self.words.say(name),
                columns: own.len(),
            });
            columns.extend(own);
        }
        names.retain(|group| group.columns > 0);
        let table = self.table(message!("campaigns-results"), &columns, false);
        (!columns.is_empty()).then_some(Table {
            groups: names,
            ..table
        })
    }

    /// The line, and what it rests on unless the ranking says so.
    fn line(&self) -> Vec<Told> {
        let mut columns = vec![
            self.column(message!("campaigns-intercept"), false, |one| {
                let line = one.s580.line()?;
                let decimals = decimals_for(line.intercept_standard_error);
                Some(fixed(line.intercept, decimals))
            }),
            self.column(message!("campaigns-slope"), false, |one| {
                let line = one.s580.line()?;
                let decimals = decimals_for(line.slope_standard_error).max(2);
                Some(fixed(-line.slope, decimals))
            }),
            self.column(message!("campaigns-range"), false, |one| {
                let (low, high) = one.s580.line()?.x_range;
                Some(kelvins(range(low, high, 0)))
            }),
        ];
        if in_column(self.comparison).is_some() {
            columns.push(self.column(message!("campaigns-r-squared"), false, |one| {
                one.s580.line()?.r_squared.map(|found| fixed(found, 2))
            }));
            columns.push(self.column(message!("campaigns-intervals"), false, |one| {
                Some(one.s580.used().count().into())
            }));
            columns.push(self.column(message!("campaigns-days"), false, |one| {
                Some(one.s580.dates.len().into())
            }));
        }
        columns
    }

    /// Gain, loss, and the power at 700 W/m² and 50 K.
    fn balance(&self) -> [Told; 3] {
        let figure = |header: Message, of: fn(&Assessment) -> Option<Figure>| {
            self.column(header, false, |one| {
                let found = of(one).filter(|_| !one.s580.is_not_valid())?;
                let half_width = found.half_width();
                let decimals = decimals_for(half_width);
                let parts = [fixed(found.value, decimals), fixed(half_width, decimals)];
                Some(joined(parts, "\u{a0}±\u{a0}"))
            })
        };
        [
            figure(message!("campaigns-gain"), |one| {
                Some(one.water_balance.as_ref()?.gain_m2)
            }),
            figure(message!("campaigns-loss"), |one| {
                Some(one.water_balance.as_ref()?.loss_w_per_k)
            }),
            figure(message!("campaigns-power"), |one| {
                Some(one.water_balance.as_ref()?.power_700_50_w)
            }),
        ]
    }

    /// Means of what was around the used intervals.
    fn around(&self) -> [Told; 3] {
        let mean = |of: Option<Summary>, decimals: usize| of.map(|of| fixed(of.mean, decimals));
        [
            self.column(message!("campaigns-sun"), false, |one| {
                mean(one.s580.environment().irradiance, 0)
            }),
            self.column(message!("campaigns-air"), false, |one| {
                mean(one.s580.environment().ambient, 1).map(celsius)
            }),
            self.column(message!("campaigns-wind"), false, |one| {
                mean(one.s580.environment().wind, 1).map(metres_per_second)
            }),
        ]
    }

    /// Each instrument once, and the note on them.
    fn instruments(&self) -> (Vec<InstrumentOf>, String) {
        let described = self.described();
        let count = described.len();
        if count > INSTRUMENTS {
            let note = message!("campaigns-instruments-many", count = count);
            return (Vec::new(), self.words.say(note));
        }
        let is_of_several = described.iter().any(|(_, places)| places.len() > 1);
        let note = is_of_several.then(|| message!("campaigns-instruments-described"));
        let note = note.map_or_else(String::new, |note| self.words.say(note));
        (self.instruments_of(described), note)
    }

    /// Each description of an instrument once with the places of its campaigns, those for one
    /// quantity after each other.
    fn described(&self) -> Vec<(InstrumentRow, Vec<usize>)> {
        let budget_in = message!("budget-in-own-report");
        let mut known: Vec<(InstrumentRow, Vec<usize>)> = Vec::new();
        let mut quantities: Vec<String> = Vec::new();
        for place in self.calls.order() {
            let one = &self.comparison.campaigns[*place];
            let mut before: Option<String> = None;
            for row in instrument_rows(one, &budget_in, self.words) {
                place_after(&mut quantities, before.as_ref(), &row.quantity);
                before = Some(row.quantity.clone());
                match known.iter_mut().find(|(other, _)| *other == row) {
                    Some((_, places)) => places.push(*place),
                    None => known.push((row, vec![*place])),
                }
            }
        }
        let rank = |quantity: &String| quantities.iter().position(|one| one == quantity);
        known.sort_by_key(|(row, _)| rank(&row.quantity));
        known
    }

    fn instruments_of(&self, described: Vec<(InstrumentRow, Vec<usize>)>) -> Vec<InstrumentOf> {
        let mut told = String::new();
        let rows = described.into_iter().map(|(row, places)| {
            let is_next = told != row.quantity;
            told.clone_from(&row.quantity);
            InstrumentOf {
                quantity: if is_next { row.quantity } else { String::new() },
                instrument: row.instrument,
                uncertainty: row.uncertainty,
                campaigns: self.who(&places),
            }
        });
        rows.collect()
    }

    /// Which campaigns: all, or by number.
    fn who(&self, places: &[usize]) -> String {
        match places.len() == self.comparison.campaigns.len() {
            true => self.words.say(message!("campaigns-all")),
            false => sentence_case(&self.words.say(self.calls.by_number(places))),
        }
    }
}

/// Adds a quantity that is new, behind the one that it follows in its campaign.
fn place_after(quantities: &mut Vec<String>, before: Option<&String>, quantity: &String) {
    if quantities.contains(quantity) {
        return;
    }
    let at = before.and_then(|before| quantities.iter().position(|one| one == before));
    quantities.insert(at.map_or(0, |at| at + 1), quantity.clone());
}
