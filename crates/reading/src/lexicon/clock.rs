//! Times of day and dates, only as far as they tell which shot came first.

use crate::trim::has;

/// A moment that can be compared with others of the same column.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Moment {
    /// Days in an order that is right for dates written year first; 0 without a date.
    day: u32,
    /// Milliseconds since midnight.
    milliseconds: u32,
}

/// Understands "14:03", "14:03:22.5", "2:03 pm", with a date before it or after it.
///
/// A date written year first is compared; any other is only good for telling that all shots are
/// of one day, so its digits are read as year, month and day in the order written last to first.
pub(crate) fn parse(text: &str) -> Option<Moment> {
    if text.len() > 40 || !has(text, ':') {
        return None;
    }
    let mut day = 0;
    let mut time = None;
    let mut afternoon = None;
    for part in text.split([' ', 'T', '\u{a0}', '\u{202f}']).filter(|p| !p.is_empty()) {
        let part = part.trim_end_matches(['Z', ',']);
        let lower = part.to_ascii_lowercase();
        let (clock, half) = match lower.trim_end_matches('.') {
            l if l.ends_with("am") || l.ends_with("a.m") => {
                (l.trim_end_matches(['a', 'm', '.']), Some(false))
            }
            l if l.ends_with("pm") || l.ends_with("p.m") => (l.trim_end_matches(['p', 'm', '.']), Some(true)),
            l => (l, None),
        };
        afternoon = half.or(afternoon);
        if clock.is_empty() {
            continue;
        }
        if has(clock, ':') {
            time = Some(time_of_day(clock)?);
        } else {
            day = date(clock)?;
        }
    }
    let mut milliseconds = time?;
    let noon = 12 * 3_600_000;
    match afternoon {
        Some(true) if milliseconds < noon => milliseconds += noon,
        Some(false) if milliseconds >= noon => milliseconds -= noon,
        _ => {}
    }
    Some(Moment { day, milliseconds })
}

fn time_of_day(text: &str) -> Option<u32> {
    // "14:03:22+02:00": the offset is the same for all shots.
    let text = text.split('+').next()?;
    let mut parts = text.split(':');
    let hours: u32 = number(parts.next()?)?;
    let minutes: u32 = number(parts.next()?)?;
    let (seconds, thousandths) = match parts.next() {
        None => (0, 0),
        Some(text) => {
            let (whole, fraction) = text.split_once(['.', ',']).unwrap_or((text, ""));
            let digits: String = fraction.chars().chain("000".chars()).take(3).collect();
            (number(whole)?, number(&digits)?)
        }
    };
    let good = hours < 25 && minutes < 60 && seconds < 61 && parts.next().is_none();
    good.then(|| ((hours * 60 + minutes) * 60 + seconds) * 1000 + thousandths)
}

fn date(text: &str) -> Option<u32> {
    let mut parts = text.split(['-', '/', '.']);
    let (one, two, three) = (parts.next()?, parts.next()?, parts.next()?);
    if parts.next().is_some() {
        return None;
    }
    let (year, month, day) = if one.len() == 4 { (one, two, three) } else { (three, two, one) };
    Some(number(year)? * 10_000 + number(month)?.min(99) * 100 + number(day)?.min(99))
}

fn number(text: &str) -> Option<u32> {
    if text.is_empty() || text.len() > 4 || !text.bytes().all(|b| b.is_ascii_digit()) {
        return None;
    }
    text.parse().ok()
}
