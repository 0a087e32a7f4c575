//! What must hold whatever the readings are. All readings are invented, by proptest
//! from a fixed seed: the same cases on every machine.

mod bad_input;
mod finite;
mod invariants;
mod made;
