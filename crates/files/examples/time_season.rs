//! What a season costs: `time_season N` reads, judges and pools N invented sessions of 2 × 30 shots × 6 measures on one thread,
//! and prints what it took and the most memory that was held; `time_season N FOLDER` writes them for others to time.

use files::{AboutSeason, Season, session_of};
use judging::many::ManyQuestion;
use std::fmt::Write;
use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};
use text::Voice;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let count: u64 = words.first().ok_or("say how many")?.parse()?;
    if let Some(folder) = words.get(1) {
        fs::create_dir_all(folder)?;
        for number in 0..count {
            fs::write(Path::new(folder).join(format!("{number:06}.csv")), invented(number))?;
        }
        return Ok(());
    }
    let (voice, about) = (Voice::english(), AboutSeason::default());
    let mut season =
        Season::new(ManyQuestion::of("carry".into()), &voice).map_err(|refusal| refusal.message)?;
    let (mut reading, mut judging) = (Duration::ZERO, Duration::ZERO);
    for number in 0..count {
        let text = invented(number);
        let start = Instant::now();
        let read = session_of(&text, &format!("{number:06}.csv"), None, &voice);
        let read_at = Instant::now();
        season.take(read, &about, &voice);
        reading += read_at - start;
        judging += read_at.elapsed();
    }
    let start = Instant::now();
    let answered = season.answer(&voice);
    let answering = start.elapsed();
    let milliseconds = |time: Duration| time.as_secs_f64() * 1e3;
    println!(
        "{{\"sessions\": {count}, \"pooled\": {}, \"read_ms\": {:.3}, \"judge_ms\": {:.3}, \"answer_ms\": {:.3}, \"most_kb\": {}}}",
        answered.answered.found.pooled,
        milliseconds(reading),
        milliseconds(judging),
        milliseconds(answering),
        most_memory_kb(),
    );
    Ok(())
}

/// Two clubs in turn, AB BA, ten laps of three; the gap differs from golfer to golfer.
fn invented(number: u64) -> String {
    let mut state = number.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0x5851_F42D_4C95_7F2D;
    let mut normal = || {
        // Nearly normal: the sum of four.
        let sum: f64 = (0..4)
            .map(|_| {
                state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
                (state >> 33) as f64 / f64::from(1_u32 << 31)
            })
            .sum();
        (sum - 2.0) * 3.0_f64.sqrt()
    };
    let (level, gap) = (235.0 + 12.0 * normal(), 4.0 + 4.0 * normal());
    let mut text = String::from(
        "Club,Lap,Carry (yd),Ball speed (mph),Launch angle (deg),Spin rate (rpm),Club speed (mph),Offline (yd)\n",
    );
    for lap in 1..=10_u32 {
        for turn in 0..2_u32 {
            let club = if lap % 2 == 1 { turn } else { 1 - turn };
            for _ in 0..3 {
                let carry = level + gap * f64::from(club) + 8.0 * normal();
                let ball = carry / 1.6 + normal();
                let _ = writeln!(
                    text,
                    "{},{lap},{carry:.1},{ball:.1},{:.1},{:.0},{:.1},{:.1}",
                    ["Own driver", "Driver B"][club as usize],
                    13.0 + 1.5 * normal(),
                    2700.0 + 250.0 * normal(),
                    ball / 1.46,
                    12.0 * normal(),
                );
            }
        }
    }
    text
}

/// The most that was held so far, where the system says it.
fn most_memory_kb() -> u64 {
    let status = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    line.and_then(|line| line.split_whitespace().next()?.parse().ok()).unwrap_or(0)
}
