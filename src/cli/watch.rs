//! `watch`: a test day while it runs.

use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;
use std::time::{Duration, Instant};

use jiff::Timestamp;
use signal_hook::consts::{SIGINT, SIGTERM};

use super::args::WatchOptions;
use super::issue::fixed_time;
use super::lines::Lines;
use super::screen::Screen;
use super::speech::words_for_one;
use super::terminal::{Canvas, print_lines, print_while_read};
use super::watch_text::describe;
use crate::campaign::find::find_one;
use crate::error::{Error, Result};
use crate::language::{Language, Words};
use crate::units::MICROSECONDS_PER_SECOND;
use crate::watch::state::Gist;
use crate::watch::{Look, Now, State, Watcher};

/// Between two looks at the files. A row is shown within twice that.
const BETWEEN_LOOKS: Duration = Duration::from_millis(100);

/// Where the time comes from, and the wish to end.
trait Clock {
    fn now(&mut self) -> Now;
    /// Waits until the next look; whether there is to be one.
    fn wait(&mut self) -> bool;
}

/// Where what is seen goes.
trait Output {
    /// Shows a state; whether somebody still reads it.
    fn show(&mut self, state: &State<'_>) -> Result<bool>;
    /// Whether what was shown no longer fits where it is shown.
    fn is_outdated(&self) -> bool {
        false
    }
}

/// Follows a campaign until it is interrupted.
///
/// # Errors
/// [`Error::Usage`] for a folder without a campaign; [`Error::Campaign`] for a campaign file that
/// cannot be read to begin with.
pub fn run(options: &WatchOptions) -> Result<u8> {
    let folder = find_one(&options.campaign)?;
    let mut clock = SystemClock::new()?;
    let mut watcher = Watcher::start(&folder, options.files.reach(), clock.now())?;
    let mut speaker = Speaker {
        asked: options.language,
        folder: &folder,
        words: None,
    };
    if options.once {
        print_lines(&speaker.text_of(&watcher.state(clock.now())))?;
        return Ok(watcher.error().map_or(0, Error::exit_code));
    }
    clock.end_on_signals()?;
    match Canvas::open()? {
        Some(canvas) => {
            let mut drawing = Drawing {
                canvas,
                speaker: &mut speaker,
                sounds: options.sound,
                spoiled_from_us: None,
                is_first: true,
            };
            follow(&mut watcher, &mut clock, &mut drawing)?;
            drop(drawing);
            // How it stood in the end stays on the screen.
            print_lines(&speaker.text_of(&watcher.state(clock.now())))?;
        }
        None => {
            let mut blocks = Blocks {
                speaker: &mut speaker,
                last: None,
            };
            follow(&mut watcher, &mut clock, &mut blocks)?;
        }
    }
    Ok(0)
}

/// Looks and shows in turn.
fn follow(watcher: &mut Watcher, clock: &mut impl Clock, output: &mut impl Output) -> Result<()> {
    let mut shown_s = None;
    let mut look = Look::Changed;
    loop {
        let now = clock.now();
        // Without a change there is a new second to show at the most.
        let second = now.wall_us.div_euclid(MICROSECONDS_PER_SECOND as i64);
        if look == Look::Changed || shown_s != Some(second) || output.is_outdated() {
            shown_s = Some(second);
            if !output.show(&watcher.state(now))? {
                return Ok(());
            }
        }
        if !clock.wait() {
            return Ok(());
        }
        look = watcher.look(clock.now());
    }
}

/// Says states in a language; to make its words ready takes longer than to say something.
struct Speaker<'f> {
    asked: Option<Language>,
    folder: &'f Path,
    words: Option<Words>,
}

impl Speaker<'_> {
    fn text_of(&mut self, state: &State<'_>) -> Lines {
        let wishes = &state.campaign.report;
        let fits = |words: &Words| {
            words.language == self.asked.unwrap_or(wishes.language) && words.units == wishes.units
        };
        let words = self.words.take().filter(fits);
        let words = words.unwrap_or_else(|| words_for_one(self.asked, wishes));
        let mut lines = Lines::new(Screen::out());
        describe(&mut lines, state, self.folder, &words);
        self.words = Some(words);
        lines
    }
}

/// On a terminal, drawn in place.
struct Drawing<'s, 'f> {
    canvas: Canvas,
    speaker: &'s mut Speaker<'f>,
    sounds: bool,
    /// The interval that was last seen spoiled, by its start.
    spoiled_from_us: Option<i64>,
    is_first: bool,
}

impl Output for Drawing<'_, '_> {
    fn show(&mut self, state: &State<'_>) -> Result<bool> {
        self.canvas.draw(&self.speaker.text_of(state))?;
        let spoiled = state.spoiled_from_us();
        let is_new = spoiled.is_some() && spoiled > self.spoiled_from_us;
        if is_new && self.sounds && !self.is_first {
            self.canvas.sound()?;
        }
        self.spoiled_from_us = spoiled.max(self.spoiled_from_us);
        self.is_first = false;
        Ok(true)
    }

    fn is_outdated(&self) -> bool {
        self.canvas.has_other_size()
    }
}

/// In a pipe, a block of lines whenever something happened.
struct Blocks<'s, 'f> {
    speaker: &'s mut Speaker<'f>,
    last: Option<Gist>,
}

impl Output for Blocks<'_, '_> {
    fn show(&mut self, state: &State<'_>) -> Result<bool> {
        let gist = state.gist();
        if self.last.as_ref() == Some(&gist) {
            return Ok(true);
        }
        let mut lines = Lines::new(Screen::out());
        if self.last.is_some() {
            lines.blank();
        }
        lines.append(&self.speaker.text_of(state));
        self.last = Some(gist);
        print_while_read(&lines)
    }
}

/// The clock of this computer, or the time that the environment fixes and what has passed since.
struct SystemClock {
    began: Instant,
    fixed: Option<Timestamp>,
    is_to_end: Arc<AtomicBool>,
}

impl SystemClock {
    fn new() -> Result<Self> {
        Ok(SystemClock {
            began: Instant::now(),
            fixed: fixed_time()?,
            is_to_end: Arc::default(),
        })
    }

    /// Ends the waiting when the keyboard or the system asks for it.
    fn end_on_signals(&self) -> Result<()> {
        for signal in [SIGINT, SIGTERM] {
            let flag = Arc::clone(&self.is_to_end);
            let registered = signal_hook::flag::register(signal, flag);
            registered.map_err(|error| Error::Internal(format!("no signal: {error}")))?;
        }
        Ok(())
    }
}

impl Clock for SystemClock {
    fn now(&mut self) -> Now {
        let ran = self.began.elapsed();
        let wall_us = match self.fixed {
            Some(fixed) => {
                fixed.as_microsecond() + (ran.as_secs_f64() * MICROSECONDS_PER_SECOND) as i64
            }
            None => Timestamp::now().as_microsecond(),
        };
        Now { wall_us, ran }
    }

    fn wait(&mut self) -> bool {
        if !self.is_to_end.load(Ordering::Relaxed) {
            thread::sleep(BETWEEN_LOOKS);
        }
        !self.is_to_end.load(Ordering::Relaxed)
    }
}
