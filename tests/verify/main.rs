//! Reports against the data that they carry: sound ones, ones with one thing changed, and
//! files that were made to do harm.

#[path = "../kit"]
mod kit {
    pub mod campaign;
    pub mod files;
    pub mod header;
    pub mod heating;
    pub mod samples;
}

mod accepted;
mod agrees;
mod bench;
mod changed;
mod crafted;
mod forged;
mod hostile;
mod kept_beside;
mod named_elsewhere;
mod other_documents;
mod shared;
mod two_readings;
mod unseen;

use peak_alloc::PeakAlloc;

#[global_allocator]
static ALLOCATOR: PeakAlloc = PeakAlloc;
