//! A person at a terminal: the program behind a pseudo-terminal.

use std::ffi::OsStr;
use std::fs::File;
use std::io::{Read, Write};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::thread;
use std::time::{Duration, Instant};

use assert_cmd::cargo::cargo_bin;
use rustix::fs::{Mode, OFlags, open};
use rustix::pty::{OpenptFlags, grantpt, openpt, ptsname, unlockpt};
use rustix::termios::{Winsize, tcsetwinsize};

/// Longest that anything is waited for.
const PATIENCE: Duration = Duration::from_secs(30);

/// What stands on the screen, and the keyboard.
pub struct Typist {
    child: Child,
    keyboard: File,
    screen: Receiver<Vec<u8>>,
    shown: Vec<u8>,
    /// Up to where the screen has been looked at.
    seen: usize,
}

impl Typist {
    /// Starts the program in a folder, at a terminal that shows no colours and does not say how
    /// wide it is.
    pub fn start(folder: &Path, arguments: &[impl AsRef<OsStr>]) -> Self {
        Typist::at(folder, arguments, 0, &[("NO_COLOR", "1")])
    }

    /// Starts the program in a folder, at a terminal of so many columns, with variables of the
    /// environment.
    pub fn at(
        folder: &Path,
        arguments: &[impl AsRef<OsStr>],
        columns: u16,
        variables: &[(&str, &str)],
    ) -> Self {
        Typist::at_size(folder, arguments, (columns, 40), variables)
    }

    /// The same at a terminal of so many columns and lines.
    pub fn at_size(
        folder: &Path,
        arguments: &[impl AsRef<OsStr>],
        (columns, lines): (u16, u16),
        variables: &[(&str, &str)],
    ) -> Self {
        let ours = openpt(OpenptFlags::RDWR | OpenptFlags::NOCTTY).unwrap();
        grantpt(&ours).unwrap();
        unlockpt(&ours).unwrap();
        let name = ptsname(&ours, Vec::new()).unwrap();
        let theirs = open(&*name, OFlags::RDWR | OFlags::NOCTTY, Mode::empty()).unwrap();
        let size = Winsize {
            ws_row: lines,
            ws_col: columns,
            ws_xpixel: 0,
            ws_ypixel: 0,
        };
        tcsetwinsize(&ours, size).unwrap();
        let stream = || Stdio::from(theirs.try_clone().unwrap());
        let child = Command::new(cargo_bin!("simmerline"))
            .current_dir(folder)
            .args(arguments)
            .env_remove("COLUMNS")
            .env_remove("NO_COLOR")
            // Services that run tests set it, and get colours whatever the terminal is.
            .env_remove("CI")
            .env_remove("CLICOLOR")
            .env_remove("CLICOLOR_FORCE")
            .env("TERM", "xterm-256color")
            .envs(variables.iter().copied())
            .stdin(stream())
            .stdout(stream())
            .stderr(stream())
            .spawn()
            .unwrap();
        drop(theirs);
        let keyboard = File::from(ours);
        let mut reader = keyboard.try_clone().unwrap();
        let (sender, screen) = channel();
        thread::spawn(move || {
            let mut buffer = [0; 4096];
            // Reading fails when the program has closed its side.
            while let Ok(count @ 1..) = reader.read(&mut buffer) {
                if sender.send(buffer[..count].to_vec()).is_err() {
                    break;
                }
            }
        });
        Typist {
            child,
            keyboard,
            screen,
            shown: Vec::new(),
            seen: 0,
        }
    }

    /// Waits until a text stands on the screen, behind what was waited for before.
    pub fn sees(&mut self, text: &str) -> &mut Self {
        let until = Instant::now() + PATIENCE;
        loop {
            let ahead = String::from_utf8_lossy(&self.shown[self.seen..]).into_owned();
            if let Some(at) = ahead.find(text) {
                self.seen += at + text.len();
                return self;
            }
            let left = until.saturating_duration_since(Instant::now());
            match self.screen.recv_timeout(left) {
                Ok(bytes) => self.shown.extend(bytes),
                Err(RecvTimeoutError::Timeout | RecvTimeoutError::Disconnected) => {
                    panic!("no {text:?} in: {ahead}")
                }
            }
        }
    }

    /// Types a line and the Enter key.
    pub fn types(&mut self, line: &str) -> &mut Self {
        self.press(&format!("{line}\n"))
    }

    /// Presses keys.
    pub fn press(&mut self, keys: &str) -> &mut Self {
        self.keyboard.write_all(keys.as_bytes()).unwrap();
        self
    }

    /// Sends a signal to the program, by its name without SIG. The terminal is nobody's session
    /// here, so that its keys send none.
    pub fn signal(&mut self, name: &str) -> &mut Self {
        let command = format!("kill -{name} {}", self.child.id());
        let status = Command::new("sh").args(["-c", &command]).status().unwrap();
        assert!(status.success(), "{command}");
        self
    }

    /// Makes the terminal as wide as so many columns, and as high as so many lines.
    pub fn resize(&mut self, columns: u16, lines: u16) -> &mut Self {
        let size = Winsize {
            ws_row: lines,
            ws_col: columns,
            ws_xpixel: 0,
            ws_ypixel: 0,
        };
        tcsetwinsize(&self.keyboard, size).unwrap();
        self
    }

    /// Waits for the end of the program: its exit code.
    pub fn code(mut self) -> i32 {
        self.end()
    }

    /// Waits for the end of the program: its exit code, and all that came to the screen.
    pub fn screen(mut self) -> (i32, Vec<u8>) {
        let code = self.end();
        // The reader ends with the program, and hands over what it has before.
        self.shown.extend(self.screen.iter().flatten());
        (code, self.shown)
    }

    fn end(&mut self) -> i32 {
        let until = Instant::now() + PATIENCE;
        loop {
            // A program that prints much waits until somebody has read it.
            self.shown.extend(self.screen.try_iter().flatten());
            if let Some(status) = self.child.try_wait().unwrap() {
                return status.code().unwrap();
            }
            if Instant::now() > until {
                self.child.kill().unwrap();
                panic!("still running: {}", String::from_utf8_lossy(&self.shown));
            }
            thread::sleep(Duration::from_millis(10));
        }
    }
}
