//! Campaigns by power: a row each, with its interval on a strip.

use serde::Serialize;

use super::status::status;
use crate::comparison::standing::{Ranking, Standing};
use crate::language::{Message, Phrase, Words, fixed, joined, range};
use crate::message;
use crate::procedure::finding::Level;
use crate::report::comparison::figures::strips::{AXIS_PT, Bracket, LANE_PT, Mark};
use crate::report::figures::fit::{strong_width_pt, width_pt};
use crate::stats::line::Bounds;
use crate::units::decimals_for;

/// Size of names, points.
pub const NAME_SIZE_PT: f64 = 8.5;
/// Size of what stands below them, points.
pub const STATUS_SIZE_PT: f64 = 7.0;
/// From one line to the next, as a share of its size.
const LINE_STEP: f64 = 1.15;
/// From the top of the first line to the middle of its letters, the same.
const LINE_MIDDLE: f64 = 0.61;
/// Room above and below what stands in a row, together, points; and where rows fill pages.
const ROW_ROOM_PT: f64 = 8.0;
const DENSE_ROOM_PT: f64 = 5.0;
/// Rows that stand on one page with all else that page one has.
const ON_PAGE_ONE: usize = 12;
/// Width of names, at least, points, and of that what stays free on both sides.
const NAME_PT: f64 = 126.0;
const NAME_INSETS_PT: f64 = 5.0;
/// What long names may take of the room that they share with the plot.
const NAME_SHARE: f64 = 0.52;
/// Width of the plot where nothing takes from it, and at least, points.
const PLOT_PT: f64 = 206.0;
const LEAST_PLOT_PT: f64 = 60.0;
/// What columns take from it: of differences, of cost.
const DIFFERENCE_PT: f64 = 56.0;
const COST_PT: f64 = 32.0;
/// What the column of R², intervals and days leaves to it, where it is not there.
const SUPPORT_PT: f64 = 50.0;
/// In place of the letters of a campaign that cannot be held against the others.
pub const NOT_HELD: &str = "–";
/// Between brackets and the next column, points.
const GUTTER_PT: f64 = 6.0;

/// The ranking.
#[derive(Debug, Clone, Serialize)]
pub struct RankingPart {
    /// Name of the drawing of the axis.
    pub axis: String,
    /// What the axis says.
    pub axis_name: String,
    pub axis_height_pt: f64,
    pub plot_pt: f64,
    /// Room above and below what stands in a row, together, points.
    pub row_room_pt: f64,
    /// They fill pages, so that how they are read stands before them.
    pub is_long: bool,
    /// Width of the brackets, or of dashes in their place; zero without any.
    pub brackets_pt: f64,
    /// Rows say from which others they are not told apart: by brackets, or by numbers, for which
    /// paper has a list of its own.
    pub has_groups: bool,
    /// Headers of the cells.
    pub columns: Vec<String>,
    /// The first of these is R², intervals and days.
    pub has_support: bool,
    /// Header of a column of differences; `None` without one.
    pub differences: Option<String>,
    pub rows: Vec<RankRow>,
    /// What filled, open and struck marks are, as far as there are any.
    pub key: String,
    /// Those that have no row.
    pub left_out: String,
}

/// A campaign.
#[derive(Debug, Clone, Serialize)]
pub struct RankRow {
    /// Its rank, from one; empty for one that has none.
    pub number: String,
    pub name: String,
    pub status: String,
    /// Code of its level.
    pub level: &'static str,
    /// It is physically impossible, so that its number is struck.
    pub is_struck: bool,
    /// What another day would do is not in its interval.
    #[serde(skip)]
    pub is_of_one_day: bool,
    /// Ps(50), W.
    pub power: String,
    /// `± 14`.
    pub half_width: String,
    /// In the order of the columns.
    pub cells: Vec<String>,
    /// Height, points, and how far below its top its mark stands.
    pub height_pt: f64,
    #[serde(skip)]
    pub middle_pt: f64,
    /// Name of the drawing of its strip.
    pub strip: String,
    /// The strip in words.
    pub alt: String,
    /// Letters of the groups that it is of, and the drawing of their brackets; or the numbers
    /// of those from which it is not told apart.
    pub groups: String,
    pub brackets: Option<String>,
    /// `None` where there is no such column.
    pub difference: Option<Difference>,
}

/// What a comparison adds to a ranking.
#[derive(Debug, Default)]
pub struct Extra {
    /// Brackets of each rank, a lane each.
    pub lanes: Vec<Vec<Bracket>>,
    /// Letters of the groups of each rank.
    pub letters: Vec<String>,
    /// In place of both, the numbers of those from which each rank is not told apart.
    pub alike: Vec<String>,
    /// A column of differences: its header, and that of each rank.
    pub differences: Option<(String, Vec<Difference>)>,
}

impl Extra {
    /// Whether there are brackets.
    pub fn has_brackets(&self) -> bool {
        self.lanes.first().is_some_and(|lanes| !lanes.is_empty())
    }

    /// Whether a dash says of any that it cannot be held against the others.
    pub fn has_dashes(&self) -> bool {
        self.letters.iter().any(|letters| letters == NOT_HELD)
    }
}

/// A difference in a ranking.
#[derive(Debug, Clone, Default, Serialize)]
pub struct Difference {
    pub value: String,
    pub interval: String,
    pub is_shown: bool,
}

/// Puts a ranking into words; `names` are those of the campaigns.
pub fn ranking_part(
    standings: &[Standing],
    names: &[String],
    extra: &Extra,
    words: &Words,
) -> RankingPart {
    let ranking = Ranking::of(standings);
    let lanes = extra.lanes.first().map_or(0, Vec::len);
    let has_dashes = extra.has_dashes();
    let brackets_pt = lanes.max(usize::from(has_dashes)) as f64 * LANE_PT;
    // Beside a column of differences the plot would be left no room.
    let has_support = extra.differences.is_none();
    let columns = Columns::of(standings, has_support);
    let taken_pt = [
        (brackets_pt > 0.0, brackets_pt + GUTTER_PT),
        (extra.differences.is_some(), DIFFERENCE_PT),
        (columns.has_cost, COST_PT),
        (!has_support, -SUPPORT_PT),
    ];
    let taken_pt = taken_pt.iter().filter(|(is_there, _)| *is_there);
    let taken_pt: f64 = taken_pt.map(|(_, width_pt)| width_pt).sum();
    let is_long = listed(&ranking).count() > ON_PAGE_ONE;
    let shape = Shape::of(&ranking, names, PLOT_PT - taken_pt, is_long);
    let rows = listed(&ranking).map(|(rank, place)| {
        let of_rank = |of: &[String]| rank.and_then(|rank| of.get(rank).cloned());
        let group = of_rank(&extra.letters).or_else(|| of_rank(&extra.alike));
        let differences = extra.differences.as_ref();
        let difference = differences.map(|(_, all)| {
            let own = rank.and_then(|rank| all.get(rank).cloned());
            own.unwrap_or_default()
        });
        RankRow {
            cells: columns.cells(&standings[place], words),
            groups: group.unwrap_or_default(),
            brackets: rank
                .filter(|_| lanes > 0)
                .map(|rank| format!("brackets-{}.svg", rank + 1)),
            difference,
            ..shape.row(&standings[place], &names[place], place, rank, words)
        }
    });
    let differences = extra.differences.as_ref();
    RankingPart {
        axis: "rank-axis.svg".to_owned(),
        axis_name: words.say(match has_one_day(standings, &ranking) {
            true => message!("ranking-axis-one-day"),
            false => message!("ranking-axis"),
        }),
        axis_height_pt: AXIS_PT,
        plot_pt: shape.plot_pt,
        row_room_pt: shape.room_pt,
        is_long,
        brackets_pt,
        has_groups: lanes > 0 || has_dashes || !extra.alike.is_empty(),
        columns: columns.headers(words),
        has_support,
        differences: differences.map(|(header, _)| header.clone()),
        rows: rows.collect(),
        key: words.say(key(standings, &ranking)),
        left_out: words.say(left_out(&ranking, names)),
    }
}

/// Ranks and places: those with a rank, then those whose rating is impossible.
pub fn listed(ranking: &Ranking) -> impl Iterator<Item = (Option<usize>, usize)> {
    let ranked = ranking.ranked.iter().enumerate();
    let ranked = ranked.map(|(rank, place)| (Some(rank), *place));
    ranked.chain(ranking.not_valid.iter().map(|place| (None, *place)))
}

/// How wide and how high rows are.
struct Shape {
    name_pt: f64,
    plot_pt: f64,
    /// Above and below what stands in a row, together.
    room_pt: f64,
}

impl Shape {
    /// Names as wide as the longest, as far as the plot can spare it; `plot_pt`: its width beside
    /// names of the least width.
    fn of(ranking: &Ranking, names: &[String], plot_pt: f64, is_long: bool) -> Shape {
        let both_pt = NAME_PT + plot_pt.max(LEAST_PLOT_PT);
        let wanted_pt = listed(ranking)
            .map(|(_, place)| strong_width_pt(&names[place], NAME_SIZE_PT))
            .fold(0.0, f64::max);
        let most_pt = (NAME_SHARE * both_pt).max(NAME_PT);
        // What a line is measured to take is not exactly what it takes.
        let name_pt = (wanted_pt + NAME_INSETS_PT + 1.0).clamp(NAME_PT, most_pt);
        Shape {
            name_pt,
            plot_pt: both_pt - name_pt,
            room_pt: if is_long { DENSE_ROOM_PT } else { ROW_ROOM_PT },
        }
    }

    fn row(
        &self,
        standing: &Standing,
        name: &str,
        place: usize,
        rank: Option<usize>,
        words: &Words,
    ) -> RankRow {
        let status = words.say(status(standing));
        let (power, half_width) = standing.power.map_or_else(Default::default, |power| {
            let decimals = decimals_for(power.half_width_w);
            let half_width = fixed(power.half_width_w, decimals);
            (
                words.say(fixed(power.value_w, decimals)),
                words.say(joined(["±".into(), half_width], " ")),
            )
        });
        let lines = |text: &str, width_pt: &dyn Fn(&str) -> f64| {
            count_lines(text, self.name_pt - NAME_INSETS_PT, width_pt)
        };
        let name_lines = lines(name, &|word| strong_width_pt(word, NAME_SIZE_PT));
        let status_lines = lines(&status, &|word| width_pt(word, STATUS_SIZE_PT));
        let text_pt = name_lines as f64 * NAME_SIZE_PT + status_lines as f64 * STATUS_SIZE_PT;
        RankRow {
            number: rank.map_or_else(String::new, |rank| (rank + 1).to_string()),
            name: name.to_owned(),
            level: standing.level.code(),
            is_struck: standing.level == Level::NotValid,
            is_of_one_day: standing.power.is_some_and(|power| power.is_of_one_day),
            height_pt: self.room_pt + LINE_STEP * text_pt,
            middle_pt: self.room_pt / 2.0 + LINE_MIDDLE * NAME_SIZE_PT,
            strip: format!("rank-{}.svg", place + 1),
            alt: words.say(alt(standing)),
            status,
            power,
            half_width,
            cells: Vec::new(),
            groups: String::new(),
            brackets: None,
            difference: None,
        }
    }
}

/// Lines that a text takes in a width, broken at blanks, words that are too long within.
fn count_lines(text: &str, room_pt: f64, width_pt: &dyn Fn(&str) -> f64) -> usize {
    let blank_pt = width_pt(" ");
    let (mut lines, mut used_pt) = (1, 0.0);
    for word in text.split(' ') {
        let word_pt = width_pt(word);
        if used_pt > 0.0 && used_pt + blank_pt + word_pt > room_pt {
            lines += 1;
            used_pt = 0.0;
        }
        let whole = (word_pt / room_pt).floor();
        lines += whole as usize;
        used_pt += word_pt - whole * room_pt + if used_pt > 0.0 { blank_pt } else { 0.0 };
    }
    lines
}

/// The strip in words.
fn alt(standing: &Standing) -> Phrase {
    let Some(power) = standing.power else {
        return message!("ratings-no-rating").into();
    };
    let decimals = decimals_for(power.half_width_w);
    let ends = power.interval_w;
    match power.is_of_one_day {
        true => message!("ranking-alt-one-day"),
        false => message!("ranking-alt"),
    }
    .with("power", fixed(power.value_w, decimals))
    .with("range", range(ends.lower, ends.upper, decimals))
    .into()
}

/// Whether an interval of the ranking is of one day.
fn has_one_day(standings: &[Standing], ranking: &Ranking) -> bool {
    let mut powers = listed(ranking).filter_map(|(_, place)| standings[place].power);
    powers.any(|power| power.is_of_one_day)
}

fn key(standings: &[Standing], ranking: &Ranking) -> Phrase {
    let is_open = |place: &usize| mark(standings[*place].level) == Mark::Open;
    let ranked = &ranking.ranked;
    let range = axis_range(standings, ranking);
    let reaches_out = |(_, place): (Option<usize>, usize)| {
        let power = standings[place].power;
        power.is_some_and(|power| {
            power.interval_w.lower < range.lower || power.interval_w.upper > range.upper
        })
    };
    let parts = [
        (!ranked.iter().all(is_open)).then(|| message!("ranking-key-filled")),
        ranked
            .iter()
            .any(is_open)
            .then(|| message!("ranking-key-open")),
        (!ranking.not_valid.is_empty()).then(|| message!("ranking-key-struck")),
        listed(ranking)
            .any(reaches_out)
            .then(|| message!("ranking-key-arrow")),
        has_one_day(standings, ranking).then(|| message!("ranking-key-one-day")),
    ];
    joined(parts.into_iter().flatten(), " ")
}

/// Beyond it no interval is drawn: one of hardly any end would leave the others no room. So many
/// times the highest power, and so many of it below zero.
const BEYOND: f64 = 1.4;
const BELOW: f64 = 0.15;

/// What the axis holds, W.
pub fn axis_range(standings: &[Standing], ranking: &Ranking) -> Bounds {
    let powers = || listed(ranking).filter_map(|(_, place)| standings[place].power);
    let most_w = powers().map(|power| power.value_w).fold(0.0, f64::max);
    let lowest_w = powers().map(|power| power.value_w).fold(0.0, f64::min);
    let (least_w, beyond_w) = (lowest_w - BELOW * most_w, BEYOND * most_w);
    let ends = powers().flat_map(|power| {
        let Bounds { lower, upper } = power.interval_w;
        [lower.max(least_w), upper.min(beyond_w), power.value_w]
    });
    let ends: Vec<f64> = ends.collect();
    Bounds {
        lower: ends.iter().copied().fold(0.0, f64::min),
        upper: ends.into_iter().fold(0.0, f64::max),
    }
}

fn left_out(ranking: &Ranking, names: &[String]) -> Phrase {
    let unrated = ranking.unrated.iter().map(|place| names[*place].as_str());
    let names: Vec<&str> = unrated.collect();
    match names.is_empty() {
        true => "".into(),
        false => message!("ranking-left-out", names = crate::language::clauses(names)).into(),
    }
}

/// How a level is marked.
pub fn mark(level: Level) -> Mark {
    match level {
        Level::Conforms | Level::ConformsWithNotes => Mark::Filled,
        Level::Indicative | Level::NoRating => Mark::Open,
        Level::NotValid => Mark::Struck,
    }
}

/// The columns of numbers, as far as any campaign has something in them.
struct Columns {
    has_support: bool,
    has_cost: bool,
    /// Where it is one for all.
    currency: Option<String>,
}

impl Columns {
    fn of(standings: &[Standing], has_support: bool) -> Columns {
        let costs = standings.iter().filter(|one| one.per_cost_w().is_some());
        let mut currencies: Vec<Option<&String>> = costs.map(|one| one.currency.as_ref()).collect();
        currencies.dedup();
        Columns {
            has_support,
            has_cost: !currencies.is_empty(),
            currency: match currencies.as_slice() {
                [only] => only.cloned(),
                _ => None,
            },
        }
    }

    fn headers(&self, words: &Words) -> Vec<String> {
        let of_cost = match &self.currency {
            Some(currency) => message!("ranking-per-currency", currency = currency),
            None => message!("ranking-per-cost"),
        };
        let support = self.has_support.then(|| message!("ranking-rests-on"));
        let of_cost = self.has_cost.then_some(of_cost);
        let all = [support, Some(message!("ranking-per-area")), of_cost];
        let all = all.into_iter().flatten();
        all.map(|header: Message| words.say(header)).collect()
    }

    fn cells(&self, one: &Standing, words: &Words) -> Vec<String> {
        let optional = |number: Option<Phrase>| number.unwrap_or_else(|| "–".into());
        let per = |value: Option<f64>, quantity: Option<f64>| {
            let half_width = one.valid_power()?.half_width_w / quantity?;
            Some(fixed(value?, decimals_for(half_width)))
        };
        let of_cost = per(one.per_cost_w(), one.cost).map(|number| match &one.currency {
            Some(currency) if self.currency.is_none() => {
                message!("per-unit-of-cost", rating = number, currency = currency).into()
            }
            _ => number,
        });
        let rests_on: [Phrase; 3] = [
            optional(one.r_squared.map(|r_squared| fixed(r_squared, 2))),
            one.intervals.into(),
            one.days.into(),
        ];
        let of_area = optional(per(one.per_area_w_m2(), Some(one.intercept_area_m2)));
        let all = [
            self.has_support.then(|| joined(rests_on, " · ")),
            Some(of_area),
            self.has_cost.then(|| optional(of_cost)),
        ];
        let all = all.into_iter().flatten();
        all.map(|cell: Phrase| words.say(cell)).collect()
    }
}
