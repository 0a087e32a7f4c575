//! What a piece of work may take.

use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use crate::ALLOCATOR;

pub const MIB: usize = 1 << 20;
/// What reading a text or a spreadsheet may take in any case: tables of names, buffers, and
/// what a small compressed file may unpack to.
pub const TEXT: usize = 96 * MIB;
/// The same of a PDF, whose pages may unpack to 256 MiB.
pub const PDF: usize = 320 * MIB;
/// Times the size of the input, besides.
const PER_BYTE: usize = 16;
/// Thousands of times what the inputs of these tests need, as the machine may be busy.
const LONGEST: Duration = Duration::from_secs(20);

static ALONE: Mutex<()> = Mutex::new(());

/// Held by a test from its beginning: the allocator counts for the whole process, so what
/// another test builds would be put on it.
pub fn one_at_a_time() -> MutexGuard<'static, ()> {
    static ONE: Mutex<()> = Mutex::new(());
    // Whoever panicked before has said so.
    ONE.lock().unwrap_or_else(PoisonError::into_inner)
}

/// What the work gives.
///
/// # Errors
/// In words, where the work on so many bytes took too much memory or too long; `always` is
/// what it may take in any case.
pub fn within_limits<T>(
    always: usize,
    bytes: usize,
    work: impl FnOnce() -> T,
) -> Result<T, String> {
    // Whoever panicked before has said so.
    let _alone = ALONE.lock().unwrap_or_else(PoisonError::into_inner);
    let before = ALLOCATOR.current_usage();
    ALLOCATOR.reset_peak_usage();
    let start = Instant::now();
    let done = work();
    let (peak, took) = (ALLOCATOR.peak_usage(), start.elapsed());
    let peak = peak.saturating_sub(before);
    if peak > always + PER_BYTE * bytes {
        return Err(format!("{} MiB for {bytes} bytes", peak / MIB));
    }
    if took > LONGEST {
        return Err(format!("{took:?} for {bytes} bytes"));
    }
    Ok(done)
}
