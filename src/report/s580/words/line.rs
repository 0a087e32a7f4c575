//! The line as an equation, and its R².

use crate::language::{Message, Phrase, fixed};
use crate::message;
use crate::stats::line::Line;
use crate::units::decimals_for;

/// The line's equation, rounded to what its errors deserve.
pub fn equation(line: &Line) -> Message {
    let equation = if line.slope < 0.0 {
        message!("equation-falling")
    } else {
        message!("equation-rising")
    };
    let intercept_decimals = decimals_for(line.intercept_standard_error);
    let slope_decimals = decimals_for(line.slope_standard_error).max(2);
    equation
        .with("intercept", fixed(line.intercept, intercept_decimals))
        .with("slope", fixed(line.slope.abs(), slope_decimals))
}

/// R² with so many decimals, or that it is undefined.
pub fn spoken_r_squared(line: &Line, decimals: usize) -> Phrase {
    let r_squared = line.r_squared.map(|r_squared| fixed(r_squared, decimals));
    r_squared.unwrap_or_else(|| message!("undefined").into())
}
