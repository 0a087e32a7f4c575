//! `report`: one campaign, from its folder to its outputs, or left alone.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use jiff::Timestamp;

use super::args::ReportOptions;
use super::issue::{fixed_time, open_folder};
use super::report_table::Noticed;
use super::terminal::print_note;
use crate::batch::alike::Said;
use crate::batch::brief::Brief;
use crate::batch::record::{Choices, Record, inputs_now, listed, mark_of, place_of};
use crate::campaign::find::{Unit, place_in};
use crate::campaign::read_campaign;
use crate::error::Result;
use crate::language::{Message, Phrase};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::slips::dates::in_future;
use crate::report::data::tables::shards::shards;
use crate::report::files::{FileFacts, remove_file, write_all};
use crate::report::{Carried, Edition, Format, outputs};

/// What a call does to each of its campaigns.
pub struct Call<'o> {
    options: &'o ReportOptions,
    choices: Choices,
    /// Time of issue.
    pub issued: Timestamp,
    /// Folders of outputs that are ready.
    opened: Mutex<BTreeSet<PathBuf>>,
}

/// What was done about a campaign.
pub enum Done {
    /// Its outputs were made.
    Made {
        record: Box<Record>,
        noticed: Noticed,
    },
    /// Its outputs were as they would be made again.
    LeftAlone {
        record: Box<Record>,
        noticed: Noticed,
    },
}

impl<'o> Call<'o> {
    /// A call.
    ///
    /// # Errors
    /// [`crate::error::Error::Usage`] for a time of issue that is none.
    pub fn begin(options: &'o ReportOptions) -> Result<Self> {
        let fixed = fixed_time()?;
        let formats = distinct(&options.format);
        let carried = options.carried.carried();
        Ok(Call {
            options,
            choices: Choices::new(options.language, formats, carried, fixed),
            issued: fixed.unwrap_or_else(Timestamp::now),
            opened: Mutex::default(),
        })
    }

    /// Rates a campaign and writes its outputs, unless they are there as they would be made.
    ///
    /// # Errors
    /// What is wrong with the campaign or its logs; [`crate::error::Error::Usage`] if an output
    /// cannot be written.
    pub fn work(&self, unit: &Unit) -> Result<Done> {
        let folder = self.options.out.join(&unit.branch);
        if folder.is_dir() {
            self.open(&folder)?;
        }
        if let Some(left_alone) = self.left_alone(unit) {
            return Ok(left_alone);
        }
        let assessment = crate::assess_reaching(&unit.folder, self.options.files.reach())?;
        let wishes = &assessment.tested.campaign.report;
        let edition = Edition {
            formats: self.choices.formats.clone(),
            ..Edition::wished(wishes, self.issued).in_language(self.options.language)
        };
        let edition = edition.carrying(self.choices.carried);
        let mut outputs = outputs(&assessment, &edition)?;
        self.open(&folder)?;
        let mut files = self.write_rows(&assessment, unit)?;
        files.extend(outputs.iter().map(|output| {
            let facts = output.facts();
            FileFacts {
                name: place_in(&unit.branch, &facts.name),
                ..facts
            }
        }));
        let record = Record::new(
            self.choices.clone(),
            &unit.branch,
            mark_of(&unit.folder, &self.options.out),
            listed(assessment.tested.inputs(), &assessment.tested.campaign),
            files,
            Brief::of(&assessment),
        );
        let root = &self.options.out;
        let older = Record::read(&place_of(root, &unit.branch, &unit.name));
        // With the others and so never without them.
        outputs.push(record.output()?);
        write_all(&folder, &unit.name, &outputs)?;
        if let Some(older) = older {
            self.clear_after(&older, &record)?;
        }
        let mut noticed = Noticed::of(&assessment, unit.place());
        let unnamed = Noticed::unnamed(&assessment.tested.campaign, unit.place());
        noticed.notices.extend(unnamed.notices);
        // Not on paper, which has the time of issue beside the dates.
        let in_future = in_future(&assessment.tested, self.issued);
        noticed
            .notices
            .extend(in_future.iter().map(|slip| slip.message().into()));
        let beside = self.kept_beside(&assessment);
        noticed.notices.extend(beside.into_iter().map(Said::from));
        Ok(Done::Made {
            noticed,
            record: Box::new(record),
        })
    }

    /// Writes the campaign's rows into the data sets, if they are asked for. They are there
    /// before the record that names them.
    fn write_rows(&self, assessment: &Assessment, unit: &Unit) -> Result<Vec<FileFacts>> {
        let mut files = Vec::new();
        if !self.choices.formats.contains(&Format::Parquet) {
            return Ok(files);
        }
        for shard in shards(assessment, &unit.branch)? {
            let folder = self.options.out.join(&shard.folder);
            self.open(&folder)?;
            let written = write_all(&folder, &unit.name, &[shard.output])?;
            files.extend(written.into_iter().map(|facts| FileFacts {
                name: place_in(&shard.folder, &facts.name),
                ..facts
            }));
        }
        Ok(files)
    }

    /// That the PDF does not carry some logs, since they are long.
    fn kept_beside(&self, assessment: &Assessment) -> Option<Message> {
        let carried = self.choices.carried;
        if !self.choices.formats.contains(&Format::Pdf) || carried == Carried::Nothing {
            return None;
        }
        let inputs = assessment.tested.inputs().into_iter();
        let long = inputs.filter(|input| input.bytes > carried.largest_log());
        let names: Vec<String> = long.map(|input| input.name).collect();
        (!names.is_empty()).then(|| {
            message!(
                "terminal-kept-beside",
                names = crate::language::listed(names.iter().map(Phrase::from))
            )
        })
    }

    /// Takes away rows of older results, which would be asked as if they were of these, and says
    /// what has been replaced.
    fn clear_after(&self, older: &Record, record: &Record) -> Result<()> {
        for rows in older.rows_without(record) {
            remove_file(&self.options.out.join(rows))?;
        }
        if older.is_of_another(record) && !self.options.quiet {
            print_note(&format!(
                "{}: the outputs of another campaign of this name were there, and are replaced; report both together from a folder above them, or into different --out folders",
                place_in(&record.branch, record.name())
            ));
        }
        Ok(())
    }

    /// The campaign, if the outputs that are there are what would be made again. What cannot be
    /// read or compared is made again, and then says why.
    fn left_alone(&self, unit: &Unit) -> Option<Done> {
        if self.options.fresh {
            return None;
        }
        let root = &self.options.out;
        let record = Record::read(&place_of(root, &unit.branch, &unit.name))?;
        let reach = self.options.files.reach();
        let campaign = read_campaign(&unit.folder, reach, check_own_limits).ok()?;
        let inputs = inputs_now(&campaign).ok()?;
        let holds = record.holds(&self.choices, unit, &inputs, root);
        holds.then(|| Done::LeftAlone {
            noticed: Noticed::unnamed(&campaign, unit.place()),
            record: Box::new(record),
        })
    }

    /// Makes a folder of outputs ready, once in a call.
    fn open(&self, folder: &Path) -> Result<()> {
        let mut opened = self.opened.lock().unwrap_or_else(PoisonError::into_inner);
        if !opened.contains(folder) {
            open_folder(folder, self.options.quiet)?;
            opened.insert(folder.to_path_buf());
        }
        Ok(())
    }
}

/// Each format once, in the order asked for.
fn distinct(formats: &[Format]) -> Vec<Format> {
    let mut distinct = Vec::new();
    for format in formats {
        if !distinct.contains(format) {
            distinct.push(*format);
        }
    }
    distinct
}
