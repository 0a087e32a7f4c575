//! What the README shows on a terminal is what the program prints.

#[test]
fn readme_shows_what_the_program_prints() {
    trycmd::TestCases::new().case("README.md");
}
