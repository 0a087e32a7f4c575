//! Many campaigns in one call: [`jobs`] says how many at once, [`record`] what the outputs of
//! each were made of, so that only what has changed is made again, [`causes`] what stops many
//! for one reason, [`alike`] what is said of many, and [`collection`] gathers what calls have
//! left in trees of outputs.

pub mod alike;
pub mod brief;
pub mod causes;
pub mod collection;
pub mod jobs;
pub mod record;
