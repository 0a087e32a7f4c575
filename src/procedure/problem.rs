//! Where in the campaign file a run is at fault.

use std::path::Path;

use crate::campaign::model::RunPlan;
use crate::error::Problem;

/// A problem with a run in a campaign file.
pub fn run_problem(file: &Path, plan: &RunPlan, what: &str, hint: &str) -> Problem {
    let problem = Problem::at(file, what)
        .item(format!("[[run]] with log \"{}\"", plan.log))
        .hint(hint);
    match plan.line {
        Some(line) => problem.line(line),
        None => problem,
    }
}
