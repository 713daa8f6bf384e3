//! Long and hostile texts: what they cost in time and memory, and what is said of their end.
//!
//! Memory is counted by the allocator of these tests, for each thread by itself. The allowance beside ten times the text is what 100,000 shots of one value and build each cost however
//! short their lines are: a shot has room for its numbers and reason whether given or not.

use reading::limits::{MAX_BYTES, MAX_ROWS};
use reading::{Hints, ProblemKind, ReadResult, read};
use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;
use std::time::{Duration, Instant};
use text::Voice;

struct Counting;

// Of each thread by itself: other tests run beside this one.
thread_local! {
    static NOW: Cell<usize> = const { Cell::new(0) };
    static PEAK: Cell<usize> = const { Cell::new(0) };
}

#[expect(
    unsafe_code,
    reason = "an allocator can only be counted by being one; it only passes on and adds up"
)]
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let now = NOW.get().wrapping_add(layout.size());
        NOW.set(now);
        PEAK.set(PEAK.get().max(now));
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, pointer: *mut u8, layout: Layout) {
        NOW.set(NOW.get().wrapping_sub(layout.size()));
        unsafe { System.dealloc(pointer, layout) }
    }
}

#[global_allocator]
static COUNTING: Counting = Counting;

/// Memory beside ten times the text.
const ALLOWANCE: usize = 32 << 20;

/// Longer than this is a hang, even on a busy machine without optimization to speak of.
const LONGEST: Duration = Duration::from_secs(30);

fn measured(name: &str, text: &str) -> ReadResult {
    let before = NOW.get();
    PEAK.set(before);
    let start = Instant::now();
    let result = read(text, &Hints::default(), &Voice::english());
    let took = start.elapsed();
    let peak = PEAK.get() - before;
    println!(
        "{name:24} {:9} bytes {:6} shots {:8.1?} {:5.1} MB ({:.1} times)",
        text.len(),
        result.session.shots.len(),
        took,
        peak as f64 / 1e6,
        peak as f64 / text.len() as f64
    );
    assert!(peak <= 10 * text.len() + ALLOWANCE, "{name}: {peak} bytes for a text of {}", text.len());
    assert!(took < LONGEST, "{name} took {took:?}");
    assert!(result.problems.len() <= 202 && result.notices.len() <= 202, "{name}: lists without an end");
    result
}

fn filled(piece: &str, bytes: usize) -> String {
    piece.repeat(bytes / piece.len())
}

fn rows(n: usize, row: impl Fn(usize) -> String) -> String {
    (0..n).map(row).collect()
}

#[test]
fn no_text_costs_more_than_it_may() {
    let session = |n: usize| {
        let row = |at: usize| {
            let (build, drift) = (["Driver A", "Driver B"][at / 3 % 2], (at * 7919 % 1000) as f64 / 40.0);
            format!(
                "{build},{},{:.1},{:.1},{:.1},{}\n",
                at + 1,
                240.0 + drift,
                drift - 12.0,
                155.0 + drift / 5.0,
                2300 + at % 500
            )
        };
        format!("Club,Shot,Carry (yd),Offline (yd),Ball speed (mph),Spin rate (rpm)\n{}", rows(n, row))
    };
    let whole = measured("a long session", &session(MAX_ROWS - 1));
    assert_eq!(whole.session.shots.len(), MAX_ROWS - 1);
    assert_eq!(whole.problems, vec![]);

    let long = measured("one row too many", &session(MAX_ROWS));
    assert_eq!(long.session.shots.len(), MAX_ROWS - 1);
    assert_eq!((long.problems[0].kind, long.problems[0].place.line), (ProblemKind::TooLong, 100_001));

    let line = filled("12345678901234567890,", 2000);
    let large =
        measured("more than ten megabytes", &format!("{line}\n").repeat(MAX_BYTES / line.len() + 600));
    assert!(large.problems.iter().any(|p| p.kind == ProblemKind::TooLong));

    let megabytes = 4 << 20;
    let kinds: Vec<(&str, String)> = vec![
        ("dense", filled("1,2,3,4,5,6,7,8,9,0,1,2,3,4,5,6,7,8,9,0\n", megabytes)),
        ("narrow", format!("Build,Carry\n{}", "a,1\n".repeat(MAX_ROWS))),
        ("bad cells", format!("Build,Carry,Spin\n{}", "A,x,y\n".repeat(MAX_ROWS))),
        ("absurd values", format!("Build,Carry,Spin\n{}", "A,1e9,250\n".repeat(MAX_ROWS))),
        ("a name for each row", format!("Build,Carry\n{}", rows(MAX_ROWS, |at| format!("b{at},{at}\n")))),
        ("one line", filled("ab 12,", megabytes)),
        ("one word", filled("a", megabytes)),
        ("one number", filled("1", megabytes)),
        ("quotes", filled("\"", megabytes)),
        ("odd quotes", filled("\"a\n", megabytes)),
        ("commas", filled(",", megabytes)),
        ("line ends", filled("\n", megabytes)),
        ("returns", filled("\r", megabytes)),
        ("angles", filled("<", megabytes)),
        ("cells", filled("<td>", megabytes)),
        ("table rows", filled("<tr><td>1<td>2", megabytes)),
        ("comments", filled("<table><!--", megabytes)),
        ("spans", filled("<tr><td colspan=50>1", megabytes)),
        ("references", format!("<table>{}", filled("&#", megabytes))),
        ("brackets", filled("[", megabytes)),
        ("nested objects", filled("{\"a\":", megabytes)),
        ("objects", format!("[{}]", filled("{\"a\":1},", megabytes))),
        ("keys", format!("[{{{}}}]", rows(200_000, |at| format!("\"k{at}\":{at},")))),
        ("headings", filled("Carry\n", megabytes)),
        ("units", filled("yd\n", megabytes)),
        ("stacked", filled("Carry\n5\n", megabytes)),
        ("titles", filled("Driver A\n\n", megabytes)),
        ("blocks", filled("A,\nCarry,Spin\n1,2\n", megabytes)),
        ("new headings", rows(50_000, |at| format!("Build,Carry{at},b\nA,{at},1\n"))),
        ("new own columns", rows(50_000, |at| format!("h{at},x{at}\n{at},1\n"))),
        ("averages", format!("Build,Carry\nA,1\n{}", "Average,5\n".repeat(MAX_ROWS))),
        ("averages between", format!("Build,Carry\n{}", "A,1\nAverage,5\n".repeat(MAX_ROWS / 2))),
        ("lined up", filled("Driver A     250    12.5   3 R\n", megabytes)),
        ("words", filled("carry spin ball speed 12 13 ", megabytes)),
        ("pipes", filled("|", megabytes)),
        ("piped rows", filled("| a | 1 | 2 |\n", megabytes)),
        ("wide and empty", format!("{}\n{}", filled("h,", 400), filled("1\n", megabytes / 8))),
        ("wide, last filled", rows(20_000, |_| format!("1{}1\n", ",".repeat(190)))),
        (
            "own",
            format!(
                "Straight Answer session,1,blocked\nbuild,1,A\nid,,,,,,carry\n{}",
                filled("shot,1,A,1,1,,5\n", megabytes)
            ),
        ),
        (
            "own, wide",
            format!(
                "Straight Answer session,1,blocked\nbuild,1,A\nid,,,,,,{}\n{}",
                filled("a,", 4000),
                filled("shot,1\n", megabytes)
            ),
        ),
        ("marks", filled("\u{202e}\u{feff}", megabytes)),
        ("wide letters", filled("𝟙𝟚,", megabytes)),
    ];
    for (name, text) in &kinds {
        measured(name, text);
    }
}

#[test]
fn the_end_of_what_was_read_is_said_with_its_line() {
    let text = format!("Carry\n{}", "250\n".repeat(MAX_ROWS + 10));
    let result = read(&text, &Hints::default(), &Voice::english());
    let said: Vec<_> = result.problems.iter().filter(|p| p.kind == ProblemKind::TooLong).collect();
    assert_eq!(said.len(), 1);
    assert_eq!(said[0].place.line, 100_001);
    assert!(said[0].remedy.contains("100,000 rows"));
}
