//! The command line's arguments as types.

use std::num::NonZeroUsize;
use std::path::{Path, PathBuf};

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{Args, Parser, Subcommand};
use clap_complete::Shell;

use super::manual_topics::{TOPICS, Topic};
use crate::campaign::Reach;
use crate::campaign::kinds::RunKind;
use crate::campaign::wishes::Paper;
use crate::language::{LANGUAGES, Language};
use crate::report::plan::outputs::SheetFormat;
use crate::report::{Carried, Format};
use crate::setup::questions::Question;
use crate::verify::Beside;

const EXIT_CODES: &str = "\
Exit codes:
  0  done
  1  a fault in simmerline
  2  the command line asks for something that cannot be done
  3  a log, a typed sheet or a PDF cannot be read
  4  a campaign file is invalid";

const STRICT_CODE: &str = "  5  all done, but a rating is only indicative or not valid, or a campaign has none (report and check with --strict)";
const VERIFY_CODES: &str = "\
Exit codes:
  0  the file is the one that was issued, byte for byte
  1  a fault in simmerline
  2  the command line asks for something that cannot be done
  3  the file cannot be read as a report, carries no evidence, or a log is not beside it
  6  it does not agree with the data that it carries
  7  its content agrees, but another program saved it again
  8  another version made it: its rating, line and intervals agree, the rest only that version can hold
Of several files, the gravest: 1, 6, 3, 8, 7.";

const VERIFY_CODE: &str = "  6  a report does not agree with the data that it carries (verify)
  7  its content agrees, but another program saved it again (verify)
  8  another version made it; its rating, line and intervals agree (verify)";

const EXAMPLES: &str = "\
Example, from nothing to a report:
  simmerline new my-cooker        write a campaign file to fill in
  simmerline plan my-cooker       when to test today, and a field sheet for a pencil
  simmerline watch my-cooker      while a logger writes: how the interval stands, what to do
  simmerline enter my-cooker --date 2026-11-03    type the field sheet in
  simmerline check my-cooker      what can be used so far, and what is missing
  simmerline report my-cooker     the rating, as reports/my-cooker.pdf
  simmerline compare my-cooker my-cooker-2    which gives more, and how sure that is
  simmerline verify reports/my-cooker.pdf     whether a report follows from its data

The manual: simmerline manual lists what there is to read.";

const SCREEN: &str = "\
On a terminal lines are as wide as it is, from 60 to 100 columns, else as long as they are; \
COLUMNS states another width. NO_COLOR leaves out colours; the signs ✓, ~ and ✗ say the same.";

const REPORT_HELP: &str = "\
Example:
  simmerline report sample-runs --out reports

Writes for each campaign NAME.pdf (the report), NAME.rating.json (its results, as data) and \
NAME.intervals.csv (one row per interval); NAME is the name of the campaign's folder. --format \
chooses the form, several with commas: html writes the report as NAME.html, one file that \
opens without a network, on a phone too, and of several campaigns index.html, which ranks them \
and leads to their files; parquet writes the rows of each campaign into the data \
sets campaigns and intervals, one file per campaign, and of several campaigns collects all that lie \
there into campaigns.parquet, intervals.parquet and datapackage.json, which describes each \
file and column.

Outputs keep the tree: of programme/kiln/ash below PATH programme they are kiln/ash.pdf and so \
on. NAME.made.json says what they were made of; where nothing of it, of the options or of the \
version has changed, the campaign is left alone, so that a call that was stopped goes on \
where it was. A campaign that cannot be read does not stop the others: each cause is told once, \
and summary.json, of several campaigns, has an entry for each. A campaign's files are put in \
place together; NAME.unfinished.json beside them says that a call was killed just then, and the \
next call into the folder finishes it.";

const CHECK_HELP: &str = "\
Example:
  simmerline check my-cooker

Reads and screens the logs as a report would, writes nothing, and says what was used, what was \
set aside and why, what would remedy it, which figures of other procedures there are so far \
and what they lack, and how each column of the logs was understood. The first line is the \
verdict, with ✓ for a rating that conforms, ~ for one that is indicative, ✗ for one that is \
not valid or missing; the second says what to do next. Keys that a file shared.toml in the \
campaign's folder or above it gives are listed, and files that look like logs and that no run \
names.

Of several campaigns the first line says how many are at which level; then come what to do next, \
and in how many; a table with the folder of each, and of more than forty of those that cannot be \
read or fall short most; then each cause once, with the campaigns that it is about. --whole says \
everything of each.

With --format json the same is printed as data, in English, by the JSON Schema \
simmerline.check/1; with --strict the exit code tells a program whether every rating conforms.";

const COMPARE_HELP: &str = "\
Example:
  simmerline compare my-cooker my-cooker-with-skirt

Takes two to two hundred campaigns, as folders or as reports (PDF) with their data inside, and \
writes comparison.pdf, comparison.json and comparison.csv: every difference of \
Ps(50) with its 95 % interval, and whether it is real; and the same for every other figure that \
two of them state under like conditions, so that dry vessels are compared, too. Give one id \
under [instruments] to an instrument that several campaigns share: its errors then cancel.";

const VERIFY_HELP: &str = "\
Example:
  simmerline verify reports/my-cooker.pdf

A report carries its campaign file, shared keys, logs, photo and results; a comparison those of all its \
campaigns; a field sheet what it was planned from. This takes them out, computes everything \
again, typesets the pages again, and demands the same file, byte for byte. Where it differs, it \
says line by line how: hashes, rating, regression, intervals, headline, each page, \
and what is not drawn, such as bookmarks. A log \
of more than 100 MB is not inside: keep it beside the PDF, under its name. It shows that the \
file follows from the data, not that the data are true.

With --format json the same is printed as data, by the JSON Schema simmerline.verification/1.";

const UNITS_HELP: &str = "\
Example:
  simmerline units programme
  simmerline units programme --folders | xargs -d '\\n' -P 8 -n 50 \\
    simmerline report --root programme --out reports --jobs 1 --quiet

A campaign is a unit of work: its outputs follow from its inputs alone. For each the line says \
its folder, its place (branch and name: with report --root, the outputs are PLACE.pdf and so \
on), its input files and their bytes. Other programs spread the units over machines; each calls \
report on some of them, with the same --root, and writes of each what one call on all would \
write. What is of all together (tables, summary.json, index.html) a part does not write: collect \
makes the tables in the end.";

const COLLECT_HELP: &str = "\
Example:
  simmerline collect reports-1 reports-2 --out all

Takes the rows that report --format parquet wrote of each campaign, checks that they are as \
they were written, and writes campaigns.parquet, intervals.parquet and datapackage.json, which \
says what is in each file and column. The order is that of branches and names, however the \
campaigns were spread over folders and calls. A campaign counts as long as its files lie there.";

const PLAN_HELP: &str = "\
Example:
  simmerline plan my-cooker --date 2026-03-21

Says when the standard allows testing that day, the sun's course and clear-sky irradiance, \
how much water to weigh in, when to re-aim, what is still missing and, for a cooker rated \
already, what to expect; and writes a field sheet of one page, NAME.DATE.field-sheet.pdf, to \
fill in with a pencil. --format html writes it as a web page to read from a phone in the sun: \
large, black on white, without a network.

With --kind dry the sheet is for the empty vessel, with no water at all: when the sun is high \
and steady, and a column for the vessel. With --kind cooling it is for hot water that cools, \
shaded or turned away, and needs no sun.";

const WATCH_HELP: &str = "\
Example:
  simmerline watch my-cooker --sound

For a test day with a logger that writes a log: follows the campaign's logs as they grow and \
draws, in place, the state of the running interval and what would spoil it, what to do, the \
newest row, intervals gained and missing, when to re-aim, when the solar window closes, and \
what check says of the rows so far. Ctrl-C ends it. An incomplete last line is not judged \
yet. A log that is missing, cannot be read, was started anew or is silent, a clock that jumps, \
and a campaign file that is being edited are reported, and end nothing. Nothing is written.

Where the output is no terminal that can be drawn on (a pipe, a file, TERM=dumb), the same is \
printed whenever something happens: an interval ended or was spoiled, it is time to aim, the \
solar window opened or closed, trouble began or ended. With --once it is printed once.";

const NEW_HELP: &str = "\
Example:
  simmerline new my-cooker
  simmerline new my-cooker --yes --units us --cooker panel --opening \"36 x 24 in\"

Asks, on a terminal, what is tested, where and with what; each answer is in your own units \
and checked, with a way back; then writes campaign.toml with the answers, every key explained, and \
an empty log with the right header; or, where the folder has logs already, lists them and writes a \
run for each, in the order of their dates. Without a terminal, or with --yes, it asks nothing: what \
no option answers is marked FILL IN, but for the time zone of a place that is stated. Nothing \
that is already there is overwritten. What a \
shared.toml above it gives is not asked for.

With --kind dry the first run is of the empty vessel and needs no water; with --kind cooling \
it is of hot water that cools, shaded. Runs of all kinds may stand in one campaign.";

const ENTER_HELP: &str = "\
Example:
  simmerline enter my-cooker --date 2026-11-03

Types in a pencilled field sheet, one line per time: water, air, wind (Beaufort number), sky \
(clear or cloud), irradiance where a sensor is read, notes, as in
  10:20  > 31.5 24 1 clear thin haze
Times go on every ten minutes, or as interval_s of the campaign says. Every line is saved at \
once, so the same command goes on after an interruption. \"done\" adds the run to \
campaign.toml; \"help\" says the rest. With --from, the lines come from a text file: the same, \
or notes as people write them, each with its time first, as in
  air 75F
  10:20 165F sunny
  10:35 moved it, 190
It says how it understood such lines, and saves all or nothing. A unit behind a reading holds for \
all of its kind; 1:00 after 12:50 is an hour of the afternoon; a line without a time gives the air of \
all lines, or the sky of those below it. The file can be given again after an interruption, and with --again after it was \
corrected.

With --kind dry the vessel's temperature stands in the place of the water's, as in
  12:20  > 185 24 1 clear
With --kind cooling neither sky nor irradiance is asked for; times go on every five minutes.";

const COMPLETIONS_HELP: &str = "\
Example:
  simmerline completions bash > simmerline.bash && source simmerline.bash";

const MANUAL_HELP: &str = "\
Example:
  simmerline manual              what there is to read
  simmerline manual logs         a topic, here what is read of a log
  simmerline manual --man > simmerline.1 && man ./simmerline.1

With --man every command and every topic is printed as one page for man.";

/// Rates solar cookers from water-heating test logs and writes the report.
#[derive(Debug, Parser)]
#[command(name = "simmerline", bin_name = "simmerline", version, about, after_help = EXAMPLES, after_long_help = format!("{EXAMPLES}\n\n{EXIT_CODES}\n{STRICT_CODE}\n{VERIFY_CODE}\n\n{SCREEN}"))]
pub struct Arguments {
    #[command(subcommand)]
    pub command: Command,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Rate campaigns and write their reports
    #[command(after_help = format!("{REPORT_HELP}\n\n{EXIT_CODES}\n{STRICT_CODE}"))]
    Report(ReportOptions),
    /// Say what can be used so far, and what is missing
    #[command(after_help = format!("{CHECK_HELP}\n\n{EXIT_CODES}\n{STRICT_CODE}"))]
    Check(CheckOptions),
    /// Compare campaigns: which cooker gives more, and how sure that is
    #[command(after_help = format!("{COMPARE_HELP}\n\n{EXIT_CODES}"))]
    Compare(CompareOptions),
    /// Verify a report from its file alone: everything is computed again
    #[command(after_help = format!("{VERIFY_HELP}\n\n{VERIFY_CODES}"))]
    Verify(VerifyOptions),
    /// List campaigns as units of work, one line of JSON each
    #[command(after_help = format!("{UNITS_HELP}\n\n{EXIT_CODES}"))]
    Units(UnitsOptions),
    /// Collect the rows of reported campaigns into tables
    #[command(after_help = format!("{COLLECT_HELP}\n\n{EXIT_CODES}"))]
    Collect(CollectOptions),
    /// Start a campaign by question and answer: write its file, and an empty log
    #[command(after_help = format!("{NEW_HELP}\n\n{EXIT_CODES}"))]
    New(NewOptions),
    /// Plan a test day, and write a field sheet for it
    #[command(after_help = format!("{PLAN_HELP}\n\n{EXIT_CODES}"))]
    Plan(PlanOptions),
    /// Follow a test day's logs: how the interval stands, and what to do
    #[command(after_help = format!("{WATCH_HELP}\n\n{EXIT_CODES}"))]
    Watch(WatchOptions),
    /// Type in a field sheet: it becomes a log and a run of the campaign
    #[command(after_help = format!("{ENTER_HELP}\n\n{EXIT_CODES}"))]
    Enter(EnterOptions),
    /// Print a completion script for a shell
    #[command(after_help = format!("{COMPLETIONS_HELP}\n\n{EXIT_CODES}"))]
    Completions(CompletionsOptions),
    /// Print a topic of the manual, or all of it as a page for man
    #[command(after_help = format!("{MANUAL_HELP}\n\n{EXIT_CODES}"))]
    Manual(ManualOptions),
}

/// The codes of the languages that there are.
fn languages() -> impl TypedValueParser<Value = Language> {
    PossibleValuesParser::new(LANGUAGES.map(|language| language.code))
        .map(|code| Language::of_code(&code).expect("clap took one of the codes"))
}

/// The topics of the manual.
fn topics() -> impl TypedValueParser<Value = Topic> {
    PossibleValuesParser::new(TOPICS.map(|topic| topic.name))
        .map(|name| Topic::of_name(&name).expect("clap took one of the names"))
}

/// The kinds of run.
fn kinds() -> impl TypedValueParser<Value = RunKind> {
    PossibleValuesParser::new(RunKind::ALL.map(RunKind::word))
        .map(|word| RunKind::of_word(&word).expect("clap took one of the words"))
}

/// How far campaign files may reach, the same for every command that reads some.
#[derive(Debug, Args)]
pub struct ReachOption {
    /// Read logs and photos outside the campaign's folder too; reports name and carry them
    #[arg(long)]
    pub allow_outside: bool,
}

impl ReachOption {
    /// How far a campaign file may reach.
    pub fn reach(&self) -> Reach {
        match self.allow_outside {
            true => Reach::Outside,
            false => Reach::Inside,
        }
    }
}

/// What a PDF carries inside.
#[derive(Debug, Args)]
pub struct CarryOptions {
    /// Leave the logs and the data out of the PDF: a slim file, which nobody can verify
    #[arg(long)]
    pub no_attachments: bool,
    /// Put logs of more than 100 MB into the PDF too; else it names them by their SHA-256, and
    /// verify needs them beside it
    #[arg(long, conflicts_with = "no_attachments")]
    pub carry_all: bool,
}

impl CarryOptions {
    /// What a PDF carries.
    pub fn carried(&self) -> Carried {
        match (self.no_attachments, self.carry_all) {
            (true, _) => Carried::Nothing,
            (false, true) => Carried::All,
            (false, false) => Carried::Usual,
        }
    }
}

/// Where logs are that a PDF does not carry.
#[derive(Debug, Args)]
pub struct LogsOption {
    /// Folder with the logs that a PDF names by their SHA-256 alone; else the one of each PDF
    #[arg(long, value_name = "DIR")]
    pub logs: Option<PathBuf>,
}

impl LogsOption {
    /// Where the logs of a PDF are.
    pub fn beside(&self, pdf: &Path) -> Beside {
        let folder = self.logs.as_deref().or(pdf.parent());
        Beside::folder(folder.unwrap_or(Path::new("")))
    }
}

#[derive(Debug, Args)]
pub struct ReportOptions {
    /// Campaign folders, or folders that hold some
    #[arg(required = true, value_name = "PATH")]
    pub paths: Vec<PathBuf>,
    /// Language; else the campaign's
    #[arg(long, value_name = "CODE", value_parser = languages())]
    pub language: Option<Language>,
    /// Folder for the reports; made if it is not there
    #[arg(long, value_name = "DIR", default_value = "reports")]
    pub out: PathBuf,
    /// Form of the results; several with commas. JSON and CSV are always written
    #[arg(
        long,
        value_name = "FORMAT",
        value_enum,
        value_delimiter = ',',
        default_value = "pdf"
    )]
    pub format: Vec<Format>,
    #[command(flatten)]
    pub carried: CarryOptions,
    #[command(flatten)]
    pub files: ReachOption,
    /// Folder from which the tree of outputs is counted; else each PATH
    #[arg(long, value_name = "DIR")]
    pub root: Option<PathBuf>,
    /// Campaigns at once; else as many as there are processors, and never more than fit into memory
    #[arg(long, value_name = "N")]
    pub jobs: Option<NonZeroUsize>,
    /// Make all again, even where nothing has changed
    #[arg(long)]
    pub fresh: bool,
    /// Exit with 5 if a rating is only indicative or not valid, or a campaign has none
    #[arg(long)]
    pub strict: bool,
    /// Print nothing but errors
    #[arg(long)]
    pub quiet: bool,
}

#[derive(Debug, Args)]
pub struct CheckOptions {
    /// Campaign folders, or folders that hold some
    #[arg(required = true, value_name = "PATH")]
    pub paths: Vec<PathBuf>,
    /// Language; else the campaign's
    #[arg(long, value_name = "CODE", value_parser = languages())]
    pub language: Option<Language>,
    /// How what was found is printed; as JSON in English
    #[arg(long, value_name = "FORMAT", value_enum, default_value = "text")]
    pub format: DataFormat,
    /// Of several campaigns, each whole, one after the other
    #[arg(long)]
    pub whole: bool,
    /// Exit with 5 if a rating is only indicative or not valid, or a campaign has none
    #[arg(long)]
    pub strict: bool,
    #[command(flatten)]
    pub files: ReachOption,
}

#[derive(Debug, Args)]
pub struct CompareOptions {
    /// Campaign folders, folders that hold some, or reports as PDF
    #[arg(required = true, value_name = "PATH")]
    pub paths: Vec<PathBuf>,
    #[command(flatten)]
    pub beside: LogsOption,
    /// Compare all others with this campaign only, not each with each
    #[arg(long, value_name = "CAMPAIGN")]
    pub baseline: Option<PathBuf>,
    #[command(flatten)]
    pub files: ReachOption,
    /// Compare campaigns of different procedure or limits; the report says so
    #[arg(long)]
    pub allow_mixed: bool,
    /// Language; else the campaign's
    #[arg(long, value_name = "CODE", value_parser = languages())]
    pub language: Option<Language>,
    #[command(flatten)]
    pub carried: CarryOptions,
    /// Folder for the comparison; made if it is not there
    #[arg(long, value_name = "DIR", default_value = "reports")]
    pub out: PathBuf,
    /// Form of the comparison; both with a comma. JSON and CSV are always written
    #[arg(
        long,
        value_name = "FORMAT",
        value_enum,
        value_delimiter = ',',
        default_value = "pdf"
    )]
    pub format: Vec<PageFormat>,
    /// Print nothing but errors
    #[arg(long)]
    pub quiet: bool,
}

/// A form in which a comparison can be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub enum PageFormat {
    /// As PDF
    Pdf,
    /// As one web page that needs no network
    Html,
}

impl CompareOptions {
    /// The forms asked for, each once.
    pub fn formats(&self) -> Vec<Format> {
        let all = [
            (PageFormat::Pdf, Format::Pdf),
            (PageFormat::Html, Format::Html),
        ];
        let asked = all.into_iter().filter(|(one, _)| self.format.contains(one));
        asked.map(|(_, format)| format).collect()
    }
}

#[derive(Debug, Args)]
pub struct VerifyOptions {
    /// Reports, comparisons and field sheets, as PDF
    #[arg(required = true, value_name = "PDF")]
    pub reports: Vec<PathBuf>,
    #[command(flatten)]
    pub beside: LogsOption,
    /// Write what is attached into this folder, over nothing that is there
    #[arg(long, value_name = "DIR")]
    pub extract: Option<PathBuf>,
    /// How the outcome is printed
    #[arg(long, value_name = "FORMAT", value_enum, default_value = "text")]
    pub format: DataFormat,
}

/// How what was found is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub enum DataFormat {
    /// Lines to read
    Text,
    /// Data for other programs
    Json,
}

#[derive(Debug, Args)]
pub struct PlanOptions {
    /// Campaign folder; its logs need not be there yet
    #[arg(value_name = "CAMPAIGN")]
    pub campaign: PathBuf,
    /// Day to plan, such as 2026-03-21; today at the site if left out
    #[arg(long, value_name = "DATE")]
    pub date: Option<String>,
    /// What is tested; else that of all runs so far, else water
    #[arg(long, value_name = "KIND", value_parser = kinds())]
    pub kind: Option<RunKind>,
    #[command(flatten)]
    pub files: ReachOption,
    /// Form of the field sheet; several with commas
    #[arg(
        long,
        value_name = "FORMAT",
        value_enum,
        value_delimiter = ',',
        default_value = "pdf"
    )]
    pub format: Vec<SheetFormat>,
    /// Paper of the field sheet; else the campaign's
    #[arg(long, value_enum)]
    pub paper: Option<Paper>,
    /// Language; else the campaign's
    #[arg(long, value_name = "CODE", value_parser = languages())]
    pub language: Option<Language>,
    /// Folder for the field sheet; made if it is not there
    #[arg(long, value_name = "DIR", default_value = "reports")]
    pub out: PathBuf,
}

#[derive(Debug, Args)]
pub struct WatchOptions {
    /// Campaign folder; its logs need not be there yet
    #[arg(value_name = "CAMPAIGN")]
    pub campaign: PathBuf,
    /// Sound the terminal's bell when an interval is spoiled
    #[arg(long)]
    pub sound: bool,
    /// Print how it stands once, and end; exit with 3 or 4 if a log or a run cannot be used
    #[arg(long, conflicts_with = "sound")]
    pub once: bool,
    /// Language; else the campaign's
    #[arg(long, value_name = "CODE", value_parser = languages())]
    pub language: Option<Language>,
    #[command(flatten)]
    pub files: ReachOption,
}

#[derive(Debug, Args)]
pub struct UnitsOptions {
    /// Campaign folders, or folders that hold some
    #[arg(required = true, value_name = "PATH")]
    pub paths: Vec<PathBuf>,
    /// Print the folders alone, a line each, as xargs and parallel take them
    #[arg(long)]
    pub folders: bool,
    /// Folder from which the tree of outputs is counted; else each PATH
    #[arg(long, value_name = "DIR")]
    pub root: Option<PathBuf>,
    #[command(flatten)]
    pub files: ReachOption,
}

#[derive(Debug, Args)]
pub struct CollectOptions {
    /// Folders into which campaigns were reported
    #[arg(required = true, value_name = "REPORTS")]
    pub folders: Vec<PathBuf>,
    /// Folder for the tables; made if it is not there
    #[arg(long, value_name = "DIR", default_value = "reports")]
    pub out: PathBuf,
    /// Print nothing but errors
    #[arg(long)]
    pub quiet: bool,
}

#[derive(Debug, Args)]
pub struct NewOptions {
    /// Folder for the campaign; made if it is not there
    #[arg(value_name = "DIR")]
    pub folder: PathBuf,
    /// What the first run tests; else water
    #[arg(long, value_name = "KIND", value_parser = kinds())]
    pub kind: Option<RunKind>,
    /// Ask nothing; what no option answers is left to fill in
    #[arg(long)]
    pub yes: bool,
    #[command(flatten)]
    pub answers: NewAnswers,
}

/// Answers to the questions of `new`, for those who do not want to be asked.
#[derive(Debug, Args)]
#[command(next_help_heading = "Answers")]
pub struct NewAnswers {
    /// Units of numbers without one: metric or us
    #[arg(long, value_name = "SYSTEM")]
    pub units: Option<String>,
    /// What is tested
    #[arg(long, value_name = "TEXT")]
    pub title: Option<String>,
    /// Kind of cooker: box, panel, concentrating or tube
    #[arg(long, value_name = "TYPE")]
    pub cooker: Option<String>,
    /// Opening that sunlight falls into, as "36 x 24 in", "circle 1.1 m", "8 sides 38 in" or "10.3 ft2"
    #[arg(long, value_name = "SIZE")]
    pub opening: Option<String>,
    /// What the place is called
    #[arg(long, value_name = "TEXT")]
    pub site: Option<String>,
    /// Latitude and longitude, as "35.0844, -106.6504" or "35°05'04\"N 106°39'01\"W"
    #[arg(long, value_name = "WHERE", allow_hyphen_values = true)]
    pub place: Option<String>,
    /// Height above the sea, as "5312 ft" or "1540 m"
    #[arg(long, value_name = "HEIGHT", allow_hyphen_values = true)]
    pub elevation: Option<String>,
    /// Time zone, as Africa/Nairobi or -05:00
    #[arg(long, value_name = "ZONE", allow_hyphen_values = true)]
    pub time_zone: Option<String>,
    /// Water, as "16 lb 3 oz" or "6.65 kg"
    #[arg(long, value_name = "MASS")]
    pub water: Option<String>,
    /// What temperature is read with: kitchen, oven, thermocouple, pt100 or unknown
    #[arg(long, value_name = "WORD")]
    pub thermometer: Option<String>,
    /// What measures the sunlight: none, faces-sun, lies-flat or station
    #[arg(long, value_name = "WORD")]
    pub sun: Option<String>,
    /// Whether logs that lie in the folder become runs: yes or no
    #[arg(long, value_name = "WORD")]
    pub logs: Option<String>,
}

impl NewOptions {
    /// What options answer, in the order of the questions.
    pub fn given(&self) -> Vec<(Question, &str)> {
        let answers = &self.answers;
        let given = Question::ALL.into_iter().filter_map(|question| {
            let answer = match question {
                Question::Units => answers.units.as_deref(),
                Question::Title => answers.title.as_deref(),
                Question::Cooker => answers.cooker.as_deref(),
                Question::Opening => answers.opening.as_deref(),
                Question::Site => answers.site.as_deref(),
                Question::Place => answers.place.as_deref(),
                Question::Elevation => answers.elevation.as_deref(),
                Question::TimeZone => answers.time_zone.as_deref(),
                Question::Kind => self.kind.map(RunKind::word),
                Question::Water => answers.water.as_deref(),
                Question::Thermometer => answers.thermometer.as_deref(),
                Question::Sun => answers.sun.as_deref(),
                Question::Logs => answers.logs.as_deref(),
            };
            Some((question, answer?))
        });
        given.collect()
    }
}

#[derive(Debug, Args)]
pub struct EnterOptions {
    /// Campaign folder
    #[arg(value_name = "CAMPAIGN")]
    pub campaign: PathBuf,
    /// Day of the run, as 2026-11-03
    #[arg(long, value_name = "DATE")]
    pub date: String,
    /// What was tested; else as the run that waits for its log says, else as all runs so far,
    /// else water
    #[arg(long, value_name = "KIND", value_parser = kinds())]
    pub kind: Option<RunKind>,
    /// Time of the first line; else the solar window's start. A cooling run needs it
    #[arg(long, value_name = "HH:MM", conflicts_with = "from")]
    pub start: Option<String>,
    /// Text file of lines, each with its time first: as on a field sheet, or notes as you wrote them
    #[arg(long, value_name = "FILE")]
    pub from: Option<PathBuf>,
    /// Take the file again after it was corrected; the lines that were there are kept beside
    #[arg(long, requires = "from")]
    pub again: bool,
    #[command(flatten)]
    pub files: ReachOption,
    /// Name of the log; else DATE.csv. For a second run on one day
    #[arg(long, value_name = "NAME.csv")]
    pub log: Option<String>,
}

#[derive(Debug, Args)]
pub struct CompletionsOptions {
    /// Shell to complete for
    #[arg(value_name = "SHELL")]
    pub shell: Shell,
}

#[derive(Debug, Args)]
pub struct ManualOptions {
    /// What to read; without it, the list of topics
    #[arg(value_name = "TOPIC", value_parser = topics(), conflicts_with = "man")]
    pub topic: Option<Topic>,
    /// Print commands and topics as one page for man
    #[arg(long)]
    pub man: bool,
}
