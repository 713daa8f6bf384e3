//! `cargo xtask test coherence`: no sentence that another contradicts, nor one that the session does not bear out.
//!
//! Invented sessions of every kind are told in both languages and both units; what the messages said assert, by the tables
//! beside the catalogues, is held against each other and against what is true of the session and was decided of it. The
//! page draws some of them, and what its scripts say is held against the same. `cargo run -p figures -- coherence --read 0 20`
//! prints some for a reader.

mod advice;
mod fact;
mod halfway;
mod heard;
mod intervals;
mod known;
mod number;
mod page_catalogues;
mod pairs;
#[cfg(test)]
mod put_back;
#[cfg(test)]
mod read_false;
mod rooms;
mod sessions;
mod table;
mod told;
mod truth;
mod web;

use crate::folder::root;
use anyhow::{Context, Result, bail};
use known::Found;
use std::collections::HashSet;
use std::thread;
use std::time::Instant;
use text::{Language, Voice};

/// Sessions that `test` tells.
const SESSIONS: u64 = 20_160;

const PAIRS: &str = include_str!("pairs.txt");
const KNOWN: &str = include_str!("known.txt");

/// Tells the sessions and prints what contradicts what; fails on what is not known.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let folder = root().join("target/coherence");
    let (sessions, heard) = match words {
        [] => (SESSIONS, web::read_said(&folder)?),
        ["--pages"] => return web::write_pages(&folder),
        ["--read", first, last] => return read_aloud(first.parse()?, last.parse()?),
        ["--sessions", count] => {
            (count.parse().context("--sessions takes a number")?, web::read_said(&folder).unwrap_or_default())
        }
        other => bail!("`{}` is not an option of coherence", other.join(" ")),
    };
    let started = Instant::now();
    let table = table::read()?;
    let missing = table::undeclared(&table);
    if !missing.is_empty() {
        bail!("say in the tables beside their catalogues what these assert: {}", missing.join(", "));
    }
    let pairs = pairs::read(PAIRS)?;
    let spanish = Language::from_table(text::SPANISH).map_err(|other| anyhow::anyhow!("{other}"))?;
    let threads = thread::available_parallelism().map_or(1, usize::from) as u64;
    let check = |first: u64| {
        let mut found = Found::default();
        for number in (first..sessions).step_by(usize::try_from(threads).unwrap_or(1)) {
            one(number, &table, &pairs, &spanish, heard.get(&number), &mut found);
        }
        found
    };
    let all = thread::scope(|scope| {
        let parts: Vec<_> = (0..threads).map(|first| scope.spawn(move || check(first))).collect();
        let mut all = Found::default();
        for part in parts {
            match part.join() {
                Ok(found) => all.add(found),
                Err(cause) => std::panic::resume_unwind(cause),
            }
        }
        all
    });
    println!("{sessions} sessions, {} facts, {:.0} s", all.facts, started.elapsed().as_secs_f64());
    println!("{} pairs, {} checks of sizes", pairs.pairs.len(), intervals::ALL.len());
    known::report(&all, &known::read(KNOWN)?)
}

/// Prints sessions and every text that is said of them, once each, for somebody who reads it.
fn read_aloud(first: u64, last: u64) -> Result<()> {
    let table = table::read()?;
    let spanish = Language::from_table(text::SPANISH).map_err(|other| anyhow::anyhow!("{other}"))?;
    for number in first..=last {
        let asked = sessions::asked(number);
        println!("\n=== session {number}: {:?}", asked.kind);
        println!("question: {}", serde_json::to_string(&asked.question)?);
        println!("session: {}", serde_json::to_string(&asked.session)?);
        let Ok(settled) = judging::settle(&asked.question, &asked.session) else { continue };
        let judged = judging::judge(settled);
        for language in [Language::english(), spanish.clone()] {
            let voice = Voice::new(language, sessions::units(number));
            let mut telling = told::Telling::new(&table, &voice);
            telling.answer(&judged);
            rooms::tell(number, &asked, &judged, &mut telling);
            println!("--- {}", voice.language().tag());
            let mut told = HashSet::new();
            for (place, text) in telling.texts {
                if told.insert(text.clone()) {
                    println!("{place}: {text}");
                }
            }
        }
    }
    Ok(())
}

/// One session, told in both languages; every second one in meters.
fn one(
    number: u64,
    table: &table::Table,
    pairs: &pairs::Pairs,
    spanish: &Language,
    heard: Option<&Vec<web::Heard>>,
    found: &mut Found,
) {
    let asked = sessions::asked(number);
    let Ok(settled) = judging::settle(&asked.question, &asked.session) else { return };
    let judged = judging::judge(settled);
    let mut truths = truth::truths(&judged);
    truths.extend(advice::truths(&judged));
    truths.extend(rooms::truths(number, &asked, &judged));
    truths.extend(pairs.always.iter().cloned());
    let units = sessions::units(number);
    let voices = [Language::english(), spanish.clone()].map(|language| Voice::new(language, units));
    let mut said: Vec<Vec<&'static str>> = Vec::new();
    for voice in &voices {
        let mut telling = told::Telling::new(table, voice);
        telling.answer(&judged);
        rooms::tell(number, &asked, &judged, &mut telling);
        let mut sizes = intervals::sizes(&judged, voice);
        sizes.extend(rooms::sizes(number, &asked, &judged, voice));
        let mut facts = telling.facts;
        // The page says in every language what it says in English, by the same numbers.
        if let Some(heard) = heard.filter(|_| voice.language().tag() == "en") {
            facts.extend(web::asserted(table, voice, &judged, heard));
        }
        found.facts += facts.len();
        facts.extend(truths.iter().cloned());
        let of_pairs = pairs.pairs.iter().flat_map(|pair| pairs::search(pair, &facts));
        let faults = of_pairs.chain(intervals::search(&sizes, &facts));
        faults.for_each(|fault| found.take(number, asked.kind, voice, fault));
        said.push(telling.said);
    }
    if said[0] != said[1] {
        found.languages_differ(number, asked.kind, &said);
    }
}
