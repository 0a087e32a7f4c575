//! Every parser on damaged input: it never panics, never calls the input's fault its own, and
//! takes neither memory nor time out of proportion. All content is invented.
//!
//! A target has sound samples and the inputs that once broke it (`corpus/TARGET`, which every
//! run reads first), and damages them at random: `FUZZ_CASES` cases, a few hundred without it.
//! A million cases of one target:
//!
//! ```sh
//! FUZZ_CASES=1000000 cargo test --release --test fuzz log_text
//! ```
//!
//! `FUZZ_SEED` gives other cases. What a target fails on is made as small as proptest can and
//! written below `target/tmp`; it goes into the corpus with the mending.
//!
//! The allocator counts for the whole process, so one case runs at a time.

mod damage;
mod limits;
mod memory;
mod pdf;
mod sheets;
mod target;
mod texts;

#[path = "../kit"]
mod kit {
    pub mod header;
}

use peak_alloc::PeakAlloc;

#[global_allocator]
static ALLOCATOR: PeakAlloc = PeakAlloc;
