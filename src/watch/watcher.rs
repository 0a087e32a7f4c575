//! Looks at a campaign again and again, and knows what changed.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant, SystemTime};

use super::arrival::{Arrival, Now};
use super::day::{SunHours, sun_hours};
use super::growing::{Growth, growth};
use super::known::{Followed, Known, name_of, read_known};
use super::mark::{Mark, Marks, marks};
use super::state::{Gained, Newest, State};
use super::tail::{Grown, Tail};
use super::trouble::{Trouble, first_line};
use crate::campaign::Reach;
use crate::campaign::kinds::RunKind;
use crate::error::{Error, Problem, Result};
use crate::logs::source::unreadable;
use crate::logs::{Log, Readings};
use crate::procedure::Run;
use crate::procedure::estimate::is_turned_to_the_sun;
use crate::procedure::s580::Limits;
use crate::procedure::tested::gather;
use crate::units::{local_clock, seconds_between, zoned};

/// All is read and assessed again while rows come: at least so long after the last time, and so
/// many times as long as that took, so that it takes a hundredth of one processor.
const ROUTINE: Pace = Pace::new(5_000, 100);
/// The same where an interval ended or a file is another one than before.
const AT_ONCE: Pace = Pace::new(200, 20);
/// The same where something could not be read.
const AGAIN: Pace = Pace::new(2_000, 100);

/// Longest that a logger takes for a line.
const LINE_TAKES: Duration = Duration::from_secs(2);
/// How long something that happened is told.
const TOLD: Duration = Duration::from_secs(600);

/// How often something is done.
struct Pace {
    least: Duration,
    /// Times as long as it takes.
    share: u32,
}

impl Pace {
    const fn new(least_ms: u64, share: u32) -> Self {
        Pace {
            least: Duration::from_millis(least_ms),
            share,
        }
    }

    fn allows(&self, since: Duration, cost: Duration) -> bool {
        since >= self.least.max(cost * self.share)
    }
}

/// What a look came to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    Same,
    Changed,
}

/// A campaign that is watched.
#[derive(Debug)]
pub struct Watcher {
    folder: PathBuf,
    reach: Reach,
    known: Known,
    tail: Tail,
    marks: Marks,
    /// Of the run that is followed, with the rows that came since it was read.
    readings: Readings,
    newest: Option<Newest>,
    growth: Option<Growth>,
    /// Intervals that had ended when all was assessed.
    settled: usize,
    step_s: Option<f64>,
    sun: Option<SunHours>,
    arrival: Option<Arrival>,
    /// What happened, and until when it is told.
    told: Vec<(Trouble, Duration)>,
    /// Logs with a line that is not ended, and since when; `None`: since before the watching.
    rests: BTreeMap<PathBuf, Option<Duration>>,
    campaign_trouble: Option<Trouble>,
    /// Of the run that is followed.
    run_trouble: Option<Trouble>,
    read_at: Duration,
    cost: Duration,
    /// All has to be read again; rows came that are not assessed.
    is_outdated: bool,
    has_new: bool,
}

impl Watcher {
    /// Reads a campaign for the first time.
    ///
    /// # Errors
    /// Those of its campaign file.
    pub fn start(folder: &Path, reach: Reach, now: Now) -> Result<Watcher> {
        let began = Instant::now();
        let known = read_known(folder, reach)?;
        let mut watcher = Watcher {
            folder: folder.to_owned(),
            reach,
            marks: marks(known.files.iter().map(PathBuf::as_path)),
            known,
            tail: Tail::default(),
            readings: Readings::default(),
            newest: None,
            growth: None,
            settled: 0,
            step_s: None,
            sun: None,
            arrival: None,
            told: Vec::new(),
            rests: BTreeMap::new(),
            campaign_trouble: None,
            run_trouble: None,
            read_at: now.ran,
            cost: began.elapsed(),
            is_outdated: false,
            has_new: false,
        };
        watcher.take_up(now);
        watcher.rests.values_mut().for_each(|since| *since = None);
        Ok(watcher)
    }

    /// Looks at the files, and reads what changed.
    pub fn look(&mut self, now: Now) -> Look {
        let found = marks(self.known.files.iter().map(PathBuf::as_path));
        let mut look = Look::Same;
        if found != self.marks {
            look = Look::Changed;
            let followed: Vec<&Path> = self.known.followed_files().collect();
            let changed = found
                .iter()
                .filter(|(path, mark)| self.marks[*path] != **mark);
            let grew = |(path, mark): &(&PathBuf, &Option<Mark>)| {
                followed.contains(&path.as_path()) && mark.is_some()
            };
            let (grown, others): (Vec<_>, Vec<_>) = changed.partition(grew);
            let (has_grown, is_other) = (!grown.is_empty(), !others.is_empty());
            self.marks = found;
            if has_grown {
                self.look_at_tail(now);
            }
            self.is_outdated |= is_other;
        }
        let since = now.ran.saturating_sub(self.read_at);
        let has_ended = self.settled_by_now() != self.settled;
        let is_due = (self.is_outdated || has_ended) && AT_ONCE.allows(since, self.cost)
            || self.has_new && ROUTINE.allows(since, self.cost)
            || self.has_failed() && AGAIN.allows(since, self.cost);
        if is_due {
            self.read_again(now);
            look = Look::Changed;
        }
        let before = self.told.len();
        self.told.retain(|(_, until)| *until > now.ran);
        match before == self.told.len() {
            true => look,
            false => Look::Changed,
        }
    }

    /// Whether something could not be read that may be readable by now.
    fn has_failed(&self) -> bool {
        let is_failure = |trouble: &Trouble| {
            matches!(
                trouble,
                Trouble::NotRead { .. }
                    | Trouble::LogMissing {
                        was_there: true,
                        ..
                    }
            )
        };
        self.campaign_trouble.is_some() || self.known.troubles.iter().any(is_failure)
    }

    fn look_at_tail(&mut self, now: Now) {
        let last_us = self.readings.time_us.last().copied().unwrap_or(i64::MIN);
        let grown = self.tail.look(&self.known, last_us);
        for (path, has_rest) in self.tail.rests() {
            match has_rest {
                true => {
                    self.rests.entry(path.to_owned()).or_insert(Some(now.ran));
                }
                false => {
                    self.rests.remove(path);
                }
            }
        }
        match grown {
            Ok(Grown::Nothing) => {}
            Ok(Grown::Rows(readings)) => {
                self.has_new = true;
                self.set_readings(readings, now);
            }
            Ok(Grown::NoneLater) => {
                let zone = &self.known.campaign.site.time_zone;
                let clock = local_clock(last_us, zone);
                self.is_outdated = true;
                self.tell(Trouble::NoneLater { clock }, now);
            }
            Ok(Grown::Anew) => {
                self.is_outdated = true;
                // Its rows do not go on from those of before.
                self.arrival = None;
                let logs = self.known.followed_files();
                let logs: Vec<String> = logs.map(|path| name_of(path, &self.folder)).collect();
                self.tell(
                    Trouble::BegunAnew {
                        log: logs.join(", "),
                    },
                    now,
                );
            }
            Ok(Grown::Unclear) => self.is_outdated = true,
            Err(error) => self.fail(&error),
        }
    }

    fn fail(&mut self, error: &std::io::Error) {
        let path = self.known.followed_files().next().unwrap_or(&self.folder);
        let problem = unreadable(path, error);
        self.known.troubles.push(Trouble::NotRead {
            what: first_line(&Error::Input(problem.into())),
        });
        self.is_outdated = true;
    }

    /// Tells of something once, for a while.
    fn tell(&mut self, trouble: Trouble, now: Now) {
        self.told
            .retain(|(other, _)| other.kind() != trouble.kind());
        self.told.push((trouble, now.ran + TOLD));
    }

    fn read_again(&mut self, now: Now) {
        let began = Instant::now();
        // Looked at before, so that what changes while it is read is seen at the next look.
        let mut before = marks(self.known.files.iter().map(PathBuf::as_path));
        let read = read_known(&self.folder, self.reach);
        self.cost = began.elapsed();
        self.read_at = now.ran;
        self.is_outdated = false;
        match read {
            Ok(known) => {
                self.campaign_trouble = None;
                let is_same_campaign = known.campaign.sha256 == self.known.campaign.sha256;
                let lost = self.lost(&known).filter(|_| is_same_campaign);
                let files = known.files.iter();
                self.marks = files
                    .map(|path| {
                        let mark = before.remove(path).unwrap_or_else(|| Mark::of(path));
                        (path.clone(), mark)
                    })
                    .collect();
                match lost {
                    // What was known counts until the log can be read again.
                    Some(troubles) => {
                        self.known.troubles = troubles;
                        self.known.files = known.files;
                        self.settled = self.settled_by_now();
                    }
                    None => {
                        self.known = known;
                        self.take_up(now);
                    }
                }
            }
            Err(error) => {
                self.campaign_trouble = Some(Trouble::CampaignNotRead {
                    what: first_line(&error),
                });
                self.settled = self.settled_by_now();
            }
        }
    }

    /// What is wrong where a log that was read before is not there or cannot be read.
    fn lost(&self, known: &Known) -> Option<Vec<Trouble>> {
        let has = |known: &Known, log: &str| known.campaign.runs.iter().any(|run| run.log == log);
        // What a pattern no longer finds was named by nobody.
        let mut named = self
            .known
            .campaign
            .runs
            .iter()
            .filter(|run| !run.is_matched);
        let is_lost = named.any(|run| !has(known, &run.log))
            || self.known.assessment.is_some() && known.assessment.is_none();
        let mut troubles = known.troubles.clone();
        for trouble in &mut troubles {
            if let Trouble::LogMissing { log, was_there } = trouble {
                *was_there = has(&self.known, log);
            }
        }
        is_lost.then_some(troubles)
    }

    /// Goes on from what was read.
    fn take_up(&mut self, now: Now) {
        self.has_new = false;
        let rests = self.known.rests.iter();
        let since = |path: &PathBuf| self.rests.get(path).copied().unwrap_or(Some(now.ran));
        self.rests = rests.map(|path| (path.clone(), since(path))).collect();
        match Tail::of(&self.known) {
            Ok(tail) => self.tail = tail,
            Err(error) => self.fail(&error),
        }
        let followed = self.known.followed.as_ref();
        let readings = followed.map(|followed| followed.log.readings.clone());
        self.set_readings(readings.unwrap_or_default(), now);
        self.settled = self.settled_by_now();
    }

    fn settled_by_now(&self) -> usize {
        self.growth.as_ref().map_or(0, |growth| growth.settled)
    }

    fn set_readings(&mut self, readings: Readings, now: Now) {
        self.step_s = readings.median_step_s();
        self.note_arrival(&readings, now);
        self.newest = Newest::of(&readings);
        self.readings = readings;
        let kind = self.known.kind();
        let followed = self
            .known
            .followed
            .as_ref()
            .filter(|_| kind == RunKind::Water);
        let run = followed.map(|followed| run_of(&self.known, followed, &self.readings));
        self.run_trouble = None;
        self.growth = None;
        match run {
            Some(Ok((run, boiling_point_c))) => {
                let (site, limits) = (&self.known.campaign.site, &self.known.limits);
                if has_newest(&run, &self.readings, limits) {
                    self.growth = Some(growth(&run, site, limits, boiling_point_c));
                    if let Some(newest) = &mut self.newest
                        && is_turned_to_the_sun(&self.known.campaign)
                    {
                        newest.take_turned_irradiance(&run.readings);
                    }
                }
            }
            Some(Err(error)) => {
                self.run_trouble = Some(Trouble::NotRead {
                    what: first_line(&error),
                });
            }
            None => {}
        }
    }

    fn note_arrival(&mut self, readings: &Readings, now: Now) {
        let path = self.known.followed_files().next();
        let Some((path, &newest_us)) = path.zip(readings.time_us.last()) else {
            self.arrival = None;
            return;
        };
        // Another log has its own past, and was not seen to grow; neither was one whose latest
        // reading is gone.
        let goes_on = |before: &&Arrival| before.path == path && before.newest_us() <= newest_us;
        let before = self.arrival.as_ref().filter(goes_on);
        let (arrival, jump) = match before {
            Some(before) => before.then(newest_us, self.step_s, now),
            None => (Arrival::first(path, newest_us, self.age(), now), None),
        };
        self.arrival = Some(arrival);
        if let Some(jump) = jump {
            self.tell(jump, now);
        }
    }

    /// How long ago the log that is followed was written to.
    fn age(&self) -> Duration {
        let path = self.known.followed_files().next();
        let modified = path.and_then(|path| std::fs::metadata(path).ok()?.modified().ok());
        let age = modified.and_then(|modified| SystemTime::now().duration_since(modified).ok());
        age.unwrap_or_default()
    }

    /// The first error of a log that is there, or of a run.
    pub fn error(&self) -> Option<&Error> {
        self.known.error.as_ref()
    }

    /// What is seen at a moment.
    pub fn state(&mut self, now: Now) -> State<'_> {
        let zone = self.known.campaign.site.time_zone.clone();
        let today = zoned(now.wall_us, &zone).date();
        let newest = self.newest;
        let date = newest.map(|newest| zoned(newest.time_us, &zone).date());
        let arrival = self.arrival.as_ref();
        let came = arrival.is_some_and(Arrival::came);
        let is_waiting = !came && date != Some(today);
        let kind = self.known.kind();
        let is_told = |sun: &SunHours| sun.date == today && sun.kind == kind;
        if !self.sun.as_ref().is_some_and(is_told) {
            self.sun = sun_hours(&self.known.campaign, &self.known.limits, kind, today);
        }
        let of_date = date.unwrap_or(today);
        let (used, all) = self.known.intervals_on(of_date);
        let arrival = self.arrival.as_ref();
        let silent_s = arrival.and_then(|arrival| arrival.silent_s(self.step_s, now));
        let mut troubles = Vec::new();
        troubles.extend(self.campaign_trouble.clone());
        troubles.extend(self.known.troubles.iter().cloned());
        if self.known.assessment.is_some() {
            troubles.extend(self.run_trouble.clone());
        }
        troubles.extend(self.told.iter().map(|(trouble, _)| trouble.clone()));
        troubles.extend(arrival.and_then(|arrival| arrival.clocks_apart(self.step_s)));
        troubles.extend(self.lines_not_ended(now));
        State {
            silent_s: silent_s.filter(|_| !is_waiting),
            campaign: &self.known.campaign,
            limits: &self.known.limits,
            kind,
            now_us: now.wall_us,
            newest,
            is_waiting,
            growth: self.growth.as_ref(),
            gained: Gained {
                date: of_date,
                used,
                all,
            },
            sun: self.sun.as_ref(),
            assessment: self.known.assessment.as_ref(),
            assessed_to_us: self
                .known
                .followed
                .as_ref()
                .and_then(|followed| followed.log.readings.time_us.last().copied()),
            troubles,
        }
    }

    /// A logger may write a line in two goes: that is told when the second does not come.
    fn lines_not_ended(&self, now: Now) -> impl Iterator<Item = Trouble> {
        let is_old = move |since: &Option<Duration>| {
            since.is_none_or(|since| now.ran.saturating_sub(since) >= LINE_TAKES)
        };
        let rests = self.rests.iter().filter(move |(_, since)| is_old(since));
        rests.map(|(path, _)| Trouble::LineNotEnded {
            log: name_of(path, &self.folder),
        })
    }
}

/// The run that is followed with the readings it has by now, and the boiling point there, °C; of
/// a log that holds several, the last.
fn run_of(known: &Known, followed: &Followed, readings: &Readings) -> Result<(Run, f64)> {
    let mut campaign = known.campaign.clone();
    campaign.runs = vec![followed.plan.clone()];
    let log = Log {
        readings: readings.clone(),
        accounts: followed.log.accounts.clone(),
        ..Log::default()
    };
    let mut tested = gather(campaign, vec![log])?;
    let no_run = || {
        let problem = Problem::at(&followed.plan.path, "holds no run that heats water");
        Error::Input(problem.into())
    };
    let run = tested.runs.pop().ok_or_else(no_run)?;
    Ok((run, tested.boiling_point_c))
}

/// Whether the newest reading is of a run: its interval could still go on to it. The run may be
/// that of another day of one log, or its end may be past.
fn has_newest(run: &Run, readings: &Readings, limits: &Limits) -> bool {
    let ends = run.readings.time_us.last().zip(readings.time_us.last());
    let (_, longest_s) = limits.interval().ends_s();
    ends.is_some_and(|(of_run, newest)| seconds_between(*of_run, *newest) <= longest_s)
}
