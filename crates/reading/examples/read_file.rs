//! Prints what is read from a file, as JSON: `cargo run -p reading --example read_file -- FILE [HINTS]`.

#[path = "../tests/reading/support/decoded.rs"]
mod decoded;

fn main() {
    let mut arguments = std::env::args().skip(1);
    let Some(path) = arguments.next() else {
        eprintln!("Name a file, and if you like hints as JSON.");
        return;
    };
    let hints =
        arguments.next().map(|h| serde_json::from_str(&h).expect("hints are JSON")).unwrap_or_default();
    let bytes = std::fs::read(&path).expect("the file can be read");
    let result = reading::read(&decoded::decoded(&bytes), &hints, &text::Voice::english());
    println!("{}", serde_json::to_string_pretty(&result).expect("the result is plain data"));
}
