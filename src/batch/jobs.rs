//! Work side by side: as many pieces as the machine has processors, and as its memory holds.

use std::collections::BTreeMap;
use std::fs;
use std::num::NonZeroUsize;
use std::path::Path;
use std::sync::mpsc;
use std::sync::{Condvar, Mutex, PoisonError};
use std::thread;

use sysinfo::{MemoryRefreshKind, RefreshKind, System};

/// Memory that any campaign takes, whatever its logs: fonts, pages, figures, bytes.
const OF_ANY: u64 = 96 << 20;
/// So much of the free memory is filled, as a share.
const FILLED: f64 = 0.7;
/// Where the system does not say what is free, bytes.
const UNKNOWN: u64 = 2 << 30;

/// How much may be worked on at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Jobs {
    /// Pieces of work.
    pub most: NonZeroUsize,
    /// What all of them may need together, bytes. A piece that needs more is worked on alone.
    pub memory: u64,
}

impl Jobs {
    /// So many, or as many as there are processors, within the memory that is free now: of the
    /// machine, or of the group of processes that it allows less.
    pub fn wanted(most: Option<NonZeroUsize>) -> Jobs {
        let processors = || thread::available_parallelism().unwrap_or(NonZeroUsize::MIN);
        Jobs {
            most: most.unwrap_or_else(processors),
            memory: (free_memory() as f64 * FILLED) as u64,
        }
    }
}

fn free_memory() -> u64 {
    let memory = MemoryRefreshKind::nothing().with_ram();
    let system = System::new_with_specifics(RefreshKind::nothing().with_memory(memory));
    let of_group = system.cgroup_limits().map(|limits| limits.free_memory);
    match of_group.map_or(system.available_memory(), |of_group| {
        of_group.min(system.available_memory())
    }) {
        0 => UNKNOWN,
        free => free,
    }
}

/// Memory that a campaign's folder or a report may need, bytes: by the sizes of the files in it
/// and in the folders below it. A log is held as it was read, as readings, and as an
/// attachment, of which no more than three are there at a time; one that is packed holds many
/// times its size. What is outside the folder is not counted.
pub fn memory_of(path: &Path) -> u64 {
    let of_file = |path: &Path, length: u64| {
        let ending = path.extension().and_then(|ending| ending.to_str());
        let is_packed = ending.is_some_and(|ending| PACKED.contains(&ending));
        length.saturating_mul(if is_packed { 30 } else { 3 })
    };
    OF_ANY.saturating_add(sum_of_files(path, DEEPEST, &of_file))
}

/// How deep below a campaign's folder its files are counted.
const DEEPEST: usize = 5;
/// Files of which many times more than they have is held.
const PACKED: [&str; 5] = ["gz", "xlsx", "xlsm", "ods", "pdf"];

/// What files come to, as far as they can be seen: a file itself, or those of a folder.
fn sum_of_files(path: &Path, depth: usize, of_file: &impl Fn(&Path, u64) -> u64) -> u64 {
    let Ok(of) = fs::metadata(path) else {
        return 0;
    };
    if of.is_file() {
        return of_file(path, of.len());
    }
    // A link may lead back to the folder that it is in.
    let Some(below) = depth.checked_sub(1) else {
        return 0;
    };
    let entries = fs::read_dir(path).into_iter().flatten().flatten();
    let sums = entries.map(|entry| sum_of_files(&entry.path(), below, of_file));
    sums.fold(0, u64::saturating_add)
}

/// What is being worked on.
struct Load {
    next: usize,
    /// What the next piece needs, once it is known.
    needed: Option<u64>,
    running: usize,
    memory: u64,
}

/// Room that a piece of work takes until it has ended, however it ends.
struct Taken<'l> {
    load: &'l Mutex<Load>,
    is_freed: &'l Condvar,
    needed: u64,
}

impl Drop for Taken<'_> {
    fn drop(&mut self) {
        let mut load = self.load.lock().unwrap_or_else(PoisonError::into_inner);
        load.running -= 1;
        load.memory = load.memory.saturating_sub(self.needed);
        self.is_freed.notify_all();
    }
}

/// Works on the pieces, in their order and as many at once as `jobs` allows, and hands over
/// what came of each in their order. `need` says what memory a piece takes, in bytes.
///
/// # Panics
/// Where `work` panics.
pub fn side_by_side<P: Sync, T: Send>(
    jobs: Jobs,
    pieces: &[P],
    need: impl Fn(&P) -> u64 + Sync,
    work: impl Fn(&P) -> T + Sync,
    mut hand_over: impl FnMut(&P, T),
) {
    let load = Mutex::new(Load {
        next: 0,
        needed: None,
        running: 0,
        memory: 0,
    });
    let is_freed = Condvar::new();
    // The next piece, as soon as there is room for it.
    let take = || {
        let mut load = load.lock().unwrap_or_else(PoisonError::into_inner);
        loop {
            let index = load.next;
            let piece = pieces.get(index)?;
            let needed = *load.needed.get_or_insert_with(|| need(piece));
            if load.running == 0 || load.memory.saturating_add(needed) <= jobs.memory {
                load.next += 1;
                load.needed = None;
                load.running += 1;
                load.memory = load.memory.saturating_add(needed);
                return Some((index, needed));
            }
            load = is_freed.wait(load).unwrap_or_else(PoisonError::into_inner);
        }
    };
    let (done, outcomes) = mpsc::channel();
    thread::scope(|scope| {
        for _ in 0..jobs.most.get().min(pieces.len()) {
            let (done, take, work) = (done.clone(), &take, &work);
            let (load, is_freed) = (&load, &is_freed);
            scope.spawn(move || {
                while let Some((index, needed)) = take() {
                    let taken = Taken {
                        load,
                        is_freed,
                        needed,
                    };
                    let outcome = work(&pieces[index]);
                    drop(taken);
                    done.send((index, outcome))
                        .expect("outcomes are taken until all are done");
                }
            });
        }
        drop(done);
        let (mut early, mut due) = (BTreeMap::new(), 0);
        for (index, outcome) in outcomes {
            early.insert(index, outcome);
            while let Some(outcome) = early.remove(&due) {
                hand_over(&pieces[due], outcome);
                due += 1;
            }
        }
    });
}

#[cfg(test)]
mod tests {
    use std::sync::atomic::{AtomicU64, AtomicUsize, Ordering};

    use super::*;

    fn jobs(most: usize, memory: u64) -> Jobs {
        Jobs {
            most: NonZeroUsize::new(most).unwrap(),
            memory,
        }
    }

    #[test]
    fn outcomes_come_in_order_whatever_the_number_of_jobs() {
        let pieces: Vec<u64> = (0..50).collect();
        for most in [1, 2, 7, 200] {
            let mut handed = Vec::new();
            side_by_side(
                jobs(most, u64::MAX),
                &pieces,
                |_| 1,
                |piece| {
                    // The first of all ends last.
                    thread::sleep(std::time::Duration::from_micros(50 * (50 - piece)));
                    piece * piece
                },
                |piece, square| handed.push((*piece, square)),
            );
            assert!(
                handed
                    .iter()
                    .copied()
                    .eq(pieces.iter().map(|n| (*n, n * n)))
            );
        }
    }

    #[test]
    fn memory_bounds_what_runs_at_once_and_the_largest_runs_alone() {
        let needs = [30, 30, 30, 500, 30, 90, 10];
        let (running, most) = (AtomicU64::new(0), AtomicU64::new(0));
        let alone = AtomicUsize::new(usize::MAX);
        let at_once = AtomicUsize::new(0);
        side_by_side(
            jobs(4, 100),
            &needs,
            |need| *need,
            |need| {
                let beside = at_once.fetch_add(1, Ordering::SeqCst);
                let now = running.fetch_add(*need, Ordering::SeqCst) + need;
                if *need > 100 {
                    alone.store(beside, Ordering::SeqCst);
                } else {
                    most.fetch_max(now, Ordering::SeqCst);
                }
                thread::sleep(std::time::Duration::from_millis(20));
                running.fetch_sub(*need, Ordering::SeqCst);
                at_once.fetch_sub(1, Ordering::SeqCst);
            },
            |_, ()| {},
        );
        assert_eq!(alone.load(Ordering::SeqCst), 0, "the largest had company");
        let most = most.load(Ordering::SeqCst);
        assert!(most <= 100);
        assert!(most >= 60, "two never ran side by side");
    }

    #[cfg(unix)]
    #[test]
    fn a_link_that_leads_back_is_no_end_of_memory() {
        let folder = tempfile::TempDir::new().unwrap();
        fs::write(folder.path().join("a.csv"), [b'1'; 1000]).unwrap();
        fs::write(folder.path().join("b.xlsx"), [b'1'; 10]).unwrap();
        assert_eq!(memory_of(folder.path()), OF_ANY + 3 * 1000 + 30 * 10);
        std::os::unix::fs::symlink(folder.path(), folder.path().join("again")).unwrap();
        let with_link = OF_ANY + DEEPEST as u64 * (3 * 1000 + 30 * 10);
        assert_eq!(memory_of(folder.path()), with_link);
    }

    #[test]
    fn work_that_fails_frees_its_room_for_the_rest() {
        let pieces = [1, 2, 3];
        let tried = std::panic::catch_unwind(|| {
            side_by_side(
                jobs(2, 1),
                &pieces,
                |_| 1,
                |piece| assert!(*piece != 1, "the first fails"),
                |_, ()| {},
            );
        });
        assert!(
            tried.is_err(),
            "the failure is told, and nothing waits for ever"
        );
    }
}
