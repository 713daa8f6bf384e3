//! temporary
use super::sessions::{Design, Kind};
use crate::simulate::model::{NONE, Parameters, STRONG, TYPICAL};
use crate::simulate::{Effects, Turns};
use std::io::Write;
pub(crate) fn run() {
    let plain = Parameters { mishits: 0.0, ..NONE };
    let mut seed = 7_100_000;
    for (name, level) in [("typical", TYPICAL), ("strong", STRONG)] {
        for counts in [[5usize, 5], [10, 10], [15, 15], [20, 20], [30, 30], [5, 30], [10, 30], [30, 10]] {
            seed += 1;
            let kind = Kind::blocked(level, &counts, seed);
            let name = format!("blk-{name}-{}-{}", counts[0], counts[1]);
            let mut file =
                std::io::BufWriter::new(std::fs::File::create(format!("/tmp/l1/{name}.bin")).unwrap());
            for number in 0..6000u64 {
                let s = kind.session(number, &[0, 2, 5]);
                if number == 0 {
                    let mut d = std::fs::File::create(format!("/tmp/l1/{name}.txt")).unwrap();
                    for shot in &s.shots {
                        writeln!(d, "{} {}", shot.build, shot.round.unwrap_or(0)).unwrap();
                    }
                }
                for shot in &s.shots {
                    for v in &shot.values {
                        file.write_all(&v.unwrap().to_le_bytes()).unwrap();
                    }
                }
            }
        }
    }
    let _ = (NONE, Effects::default(), Turns::Fixed, |d: Design, p: Parameters| (d, p));
}
