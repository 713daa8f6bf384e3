//! Prints the table of a language, as hosts fetch it: `cargo run --package text --example table es`.

use std::process::ExitCode;

fn main() -> ExitCode {
    match std::env::args().nth(1).as_deref() {
        Some("es") => {
            print!("{}", text::SPANISH);
            ExitCode::SUCCESS
        }
        _ => {
            eprintln!("name a language that is not compiled in: es");
            ExitCode::FAILURE
        }
    }
}
