//! Throws hostile texts at `unpack`: `cargo run --release -p straight-answer --example fuzz_link -- CASES SEED`.
//!
//! Three kinds in turn: links cut, flipped, repeated and spliced as text; links whose bytes were changed and whose
//! check sum was made right again, so that the damage reaches what reads them; and text that never was a link. What
//! opens must be whole, answer the question and pack again. A panic, a case over 50 ms or one that takes more than
//! 16 MB at once ends the run with the text that did it.

#[path = "../../reading/examples/support/random.rs"]
mod random;

use random::Random;
use reading::link::{PackRequest, Unpacked, pack, unpack};
use session::known::Known;
use session::question::{Question, Stopping, View};
use session::{Build, Session, Shot};
use std::alloc::{GlobalAlloc, Layout, System};
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};
use telling::check::{CheckRequest, check};
use text::Voice;

const LONGEST: Duration = Duration::from_millis(50);
const MOST_MEMORY: usize = 16_000_000;
const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Counts what is taken at once.
struct Counting;
static TAKEN: AtomicUsize = AtomicUsize::new(0);
static MOST_TAKEN: AtomicUsize = AtomicUsize::new(0);

#[expect(unsafe_code, reason = "an allocator that counts is unsafe by its trait; it only passes on")]
// SAFETY: every call goes to the system's allocator unchanged.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let now = TAKEN.fetch_add(layout.size(), Ordering::Relaxed) + layout.size();
        MOST_TAKEN.fetch_max(now, Ordering::Relaxed);
        // SAFETY: the caller keeps the contract of `alloc`.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, place: *mut u8, layout: Layout) {
        TAKEN.fetch_sub(layout.size(), Ordering::Relaxed);
        // SAFETY: `place` came from `alloc` above with this layout.
        unsafe { System.dealloc(place, layout) }
    }
}

#[global_allocator]
static ALLOCATOR: Counting = Counting;

fn decoded(link: &str) -> Vec<u8> {
    let six = |b: u8| LETTERS.iter().position(|l| *l == b).unwrap_or(0);
    let bits: Vec<bool> =
        link.bytes().skip(2).flat_map(|b| (0..6).rev().map(move |i| six(b) >> i & 1 == 1)).collect();
    bits.chunks_exact(8).map(|byte| byte.iter().fold(0, |all, &bit| all << 1 | u8::from(bit))).collect()
}

fn encoded(bytes: &[u8]) -> String {
    let bits: Vec<bool> = bytes.iter().flat_map(|b| (0..8).rev().map(move |i| b >> i & 1 == 1)).collect();
    let letter = |six: &[bool]| {
        let value = (0..6).fold(0, |all, at| all << 1 | usize::from(six.get(at).copied().unwrap_or(false)));
        char::from(LETTERS[value])
    };
    std::iter::once("1.".to_owned()).chain(bits.chunks(6).map(|six| letter(six).to_string())).collect()
}

/// ISO 3309, as links carry it.
fn check_sum(bytes: &[u8]) -> [u8; 4] {
    let step = |sum: u32| (sum >> 1) ^ (0xEDB8_8320 & (sum & 1).wrapping_neg());
    let sum =
        bytes.iter().fold(u32::MAX, |sum, &byte| (0..8).fold(sum ^ u32::from(byte), |sum, _| step(sum)));
    (!sum).to_le_bytes()
}

/// Changes of any kind, in place.
fn mutate(random: &mut Random, bytes: &mut Vec<u8>, other: &[u8], most: usize) {
    for _ in 0..=random.below(6) {
        let at = random.below(bytes.len() + 1);
        let end = (at + random.below(12)).min(bytes.len());
        match random.below(8) {
            0 => bytes.truncate(at),
            1 => drop(bytes.drain(at..end)),
            2 => {
                let from = random.below(other.len() + 1);
                let until = (from + random.below(40)).min(other.len());
                drop(bytes.splice(at..end, other[from..until].iter().copied()));
            }
            3 => {
                let copied = bytes[at..end].repeat(1 + random.below(9));
                drop(bytes.splice(at..at, copied));
            }
            4 => bytes.insert(at, [0, 1, 127, 128, 254, 255][random.below(6)]),
            5 => (0..random.below(10)).for_each(|_| bytes.insert(at, 0xff)),
            _ => {
                let (new, bit) = (random.byte(), 1 << random.below(8));
                if let Some(byte) = bytes.get_mut(at) {
                    *byte = if random.below(2) == 0 { new } else { *byte ^ bit };
                }
            }
        }
    }
    bytes.truncate(most);
}

fn case(random: &mut Random, seeds: &[Vec<u8>]) -> String {
    let (seed, other) = (&seeds[random.below(seeds.len())], &seeds[random.below(seeds.len())]);
    match random.below(4) {
        0 => {
            let mut text = encoded(seed).into_bytes();
            mutate(random, &mut text, &encoded(other).into_bytes(), 3_000);
            String::from_utf8_lossy(&text).into_owned()
        }
        1 if random.below(8) == 0 => {
            let mut text: Vec<u8> = (0..random.below(300)).map(|_| random.byte()).collect();
            mutate(random, &mut text, b"1.#https://example.org/<b>&", 3_000);
            String::from_utf8_lossy(&text).into_owned()
        }
        kind => {
            let mut bytes = seed[..seed.len() - 4].to_vec();
            if kind == 2 {
                // Where nothing moves, damage reaches deepest.
                for _ in 0..=random.below(3) {
                    let at = random.below(bytes.len());
                    bytes[at] = random.byte();
                }
            } else {
                mutate(random, &mut bytes, other, 2_000);
            }
            let sum = check_sum(&bytes);
            bytes.extend(sum);
            encoded(&bytes)
        }
    }
}

/// What must hold of everything that opens.
fn assert_whole(opened: Unpacked) {
    let Unpacked { session, question, view, .. } = opened;
    let width = session.measures.len();
    assert!(session.shots.iter().all(|s| s.build < session.builds.len() && s.values.len() == width));
    assert!(session.shots.iter().flat_map(|s| &s.values).flatten().all(|v| v.is_finite()));
    assert!(session.summaries.iter().all(|s| s.build < session.builds.len()));
    if session.shots.len() > 300 || width > 12 {
        return;
    }
    let request = CheckRequest { session: session.clone(), question: question.clone() };
    assert!(check(&request, &Voice::english()).is_ok(), "opens but cannot be checked");
    // Damage may have made columns that no longer fit the longest link; everything else packs again.
    if let Ok(text) = pack(&PackRequest { session: session.clone(), question, view }) {
        let again = unpack(&text, &Voice::english()).expect("what opened packs and opens");
        assert_eq!(again.session.shots.len(), session.shots.len());
    }
}

fn seeds() -> Vec<Vec<u8>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/links");
    let files = std::fs::read_dir(folder).expect("tests/links is there");
    let texts = files.filter_map(|entry| std::fs::read_to_string(entry.ok()?.path()).ok());
    let cases = texts.filter_map(|text| serde_json::from_str::<serde_json::Value>(&text).ok());
    let links = cases.filter_map(|case| case["link"].as_str().map(decoded));
    links.chain([decoded(&pack(&large()).expect("few bytes"))]).collect()
}

/// As many shots as a link may hold, in a few bytes: all of them the same.
fn large() -> PackRequest {
    let ids = &Known::ALL[..20];
    let shot =
        Shot { build: 0, round: None, number: None, values: vec![Some(250.0); ids.len()], ..Shot::default() };
    let session = Session {
        builds: ["A", "B"].map(|name| Build { name: name.into() }).to_vec(),
        measures: ids.iter().map(|&measure| measure.into()).collect(),
        shots: vec![shot; 700],
        ..Session::default()
    };
    let question = Question {
        baseline: 0,
        candidate: None,
        measure: "carry".into(),
        goal: None,
        margin: None,
        first_margin: None,
        stopping: Stopping::default(),
        differs: None,
    };
    PackRequest { session, question, view: View::default() }
}

static CURRENT: Mutex<String> = Mutex::new(String::new());

fn main() {
    let mut numbers = std::env::args().skip(1).map(|a| a.parse::<u64>().expect("a number"));
    let (cases, seed) = (numbers.next().unwrap_or(100_000), numbers.next().unwrap_or(1));
    let seeds = seeds();
    std::panic::set_hook(Box::new(|info| {
        eprintln!("{info}\ntext {:?}", CURRENT.lock().unwrap_or_else(std::sync::PoisonError::into_inner));
    }));
    let mut random = Random(seed);
    let (start, mut slowest, mut most, mut opened) = (Instant::now(), Duration::ZERO, 0, 0_u64);
    for _ in 0..cases {
        let text = case(&mut random, &seeds);
        if let Ok(mut current) = CURRENT.lock() {
            current.clone_from(&text);
        }
        let before = TAKEN.load(Ordering::Relaxed);
        MOST_TAKEN.store(before, Ordering::Relaxed);
        let began = Instant::now();
        let result = unpack(&text, &Voice::english());
        let (took, taken) = (began.elapsed(), MOST_TAKEN.load(Ordering::Relaxed) - before);
        assert!(taken < MOST_MEMORY, "{taken} bytes");
        // Again: another program may have had the processor.
        assert!(took < LONGEST || (0..3).any(|_| time_again(&text) < LONGEST), "{took:?}");
        (slowest, most) = (slowest.max(took), most.max(taken));
        if let Ok(whole) = result {
            opened += 1;
            assert_whole(whole);
        }
    }
    println!(
        "{cases} cases from seed {seed}: no panic, {opened} opened whole, slowest {slowest:?}, most memory {most} bytes, {:?} in all",
        start.elapsed()
    );
}

fn time_again(text: &str) -> Duration {
    let began = Instant::now();
    drop(std::hint::black_box(unpack(text, &Voice::english())));
    began.elapsed()
}
