//! Makes a typed Rust function of every message of the catalogues, and of every other language one text to be
//! fetched. A message that lacks in a language, or takes other arguments there, stops the build with its place.

mod catalogue;
mod code;
mod pattern;
mod plural;
mod words;

use catalogue::{Catalogue, read};
use std::path::Path;
use std::{env, fs};

/// What is compiled in; its catalogue says what each message takes.
const FIRST: &str = "en";
/// What is fetched by who wants it.
const OTHERS: [&str; 1] = ["es"];

fn main() {
    let output = env::var("OUT_DIR").expect("cargo names the folder");
    let first = read(FIRST);
    let others: Vec<Catalogue> = OTHERS.iter().map(|language| read(language)).collect();
    for other in &others {
        stop_where_different(&first, other);
    }
    let stamp = code::stamp(&first);
    write(&output, "messages.rs", &code::messages(&first, &stamp));
    // The first one too, for tests to hold the others against.
    for other in others.iter().chain([&first]) {
        write(&output, &format!("{}.txt", other.language), &code::table(&first, other, &stamp));
    }
    println!("cargo::rerun-if-changed=build");
    for language in OTHERS.iter().chain([&FIRST]) {
        println!("cargo::rerun-if-changed={language}");
    }
}

fn write(folder: &str, name: &str, text: &str) {
    fs::write(Path::new(folder).join(name), text).expect("the folder can be written to");
}

fn stop_where_different(first: &Catalogue, other: &Catalogue) {
    let mut faults = Vec::new();
    for (id, message) in &first.messages {
        match other.messages.get(id) {
            None => faults.push(format!("{}/{}: `{}` is not there", other.language, id.0, id.1)),
            Some(there) => {
                let unknown = there.arguments.iter().filter(|found| !message.takes(found));
                faults.extend(unknown.map(|a| {
                    format!("{}/{}: `{}` has no such argument `{}`", other.language, id.0, id.1, a.name)
                }));
            }
        }
    }
    let more = other.messages.keys().filter(|id| !first.messages.contains_key(id));
    faults.extend(more.map(|id| format!("{}/{}: `{}` is not in {FIRST}", other.language, id.0, id.1)));
    assert!(faults.is_empty(), "\n{}\n", faults.join("\n"));
}
