//! One cell as the text that a person would have typed for it.

use calamine::{Data, ExcelDateTime};

/// The cell's text; empty for an empty cell.
///
/// Numbers have a decimal point and the 15 digits that a spreadsheet keeps. Dates are written year
/// first. An error keeps its sign (`#DIV/0!`), so that the reader can say where it stands.
pub(crate) fn text(cell: &Data) -> String {
    match cell {
        Data::Empty => String::new(),
        Data::String(text) => text.clone(),
        Data::Int(value) => value.to_string(),
        Data::Float(value) => number(*value),
        Data::Bool(value) => if *value { "yes" } else { "no" }.to_owned(),
        Data::DateTime(value) => date_or_time(value),
        Data::DateTimeIso(text) => text.replace('T', " "),
        Data::DurationIso(text) => clock_of_duration(text).unwrap_or_else(|| text.clone()),
        Data::Error(error) => error.to_string(),
    }
}

/// Three decimals become four: `1.482` could be read as a thousand and more, `1.4820` cannot.
fn number(value: f64) -> String {
    // Back and forth through 15 digits takes away what adding in binary left: 0.30000000000000004.
    let rounded = format!("{value:.14e}").parse().unwrap_or(value);
    let text = format!("{rounded}");
    match text.split_once('.') {
        Some((_, decimals)) if decimals.len() == 3 => text + "0",
        _ => text,
    }
}

fn date_or_time(value: &ExcelDateTime) -> String {
    let days = value.as_f64();
    let (year, month, day, hour, minute, second, thousandth) = value.to_ymd_hms_milli();
    let date = format!("{year:04}-{month:02}-{day:02}");
    let seconds =
        if thousandth == 0 { format!("{second:02}") } else { format!("{second:02}.{thousandth:03}") };
    if value.is_duration() {
        return number(days);
    }
    if days < 1.0 {
        return format!("{hour:02}:{minute:02}:{seconds}");
    }
    if days.fract() == 0.0 {
        return date;
    }
    format!("{date} {hour:02}:{minute:02}:{seconds}")
}

/// `PT14H05M22.5S`, a time of day in the open document format, as `14:05:22.5`.
fn clock_of_duration(text: &str) -> Option<String> {
    let (hours, rest) = text.strip_prefix("PT")?.split_once('H')?;
    let (minutes, rest) = rest.split_once('M')?;
    let seconds = rest.strip_suffix('S')?;
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    let whole = seconds.split(['.', ',']).next()?;
    if !digits(hours) || !digits(minutes) || !digits(whole) {
        return None;
    }
    let fraction = seconds.trim_start_matches(whole).replace(',', ".");
    let fraction = if fraction.bytes().all(|b| b == b'0' || b == b'.') { "" } else { fraction.as_str() };
    Some(format!("{hours:0>2}:{minutes:0>2}:{whole:0>2}{fraction}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use calamine::{CellErrorType, ExcelDateTimeType};

    fn moment(days: f64) -> String {
        text(&Data::DateTime(ExcelDateTime::new(days, ExcelDateTimeType::DateTime, false)))
    }

    #[test]
    fn numbers_have_the_digits_that_a_spreadsheet_keeps() {
        let written: Vec<String> =
            [251.4, 0.1 + 0.2, 250.0, -8.5, 1.482, 1e20, 2480.0].map(|x| text(&Data::Float(x))).into();
        assert_eq!(written, ["251.4", "0.3", "250", "-8.5", "1.4820", "100000000000000000000", "2480"]);
    }

    #[test]
    fn dates_and_times_are_written_year_first() {
        assert_eq!(moment(46_145.0), "2026-05-03");
        assert_eq!(moment(46_145.5), "2026-05-03 12:00:00");
        assert_eq!(moment(0.75), "18:00:00");
        assert_eq!(text(&Data::DateTimeIso("2026-05-03T14:05:00".into())), "2026-05-03 14:05:00");
        assert_eq!(text(&Data::DurationIso("PT14H05M22.000000000S".into())), "14:05:22");
        assert_eq!(text(&Data::DurationIso("PT9H05M22.5S".into())), "09:05:22.5");
        assert_eq!(text(&Data::DurationIso("P3D".into())), "P3D");
    }

    #[test]
    fn what_is_no_number_keeps_its_sense() {
        assert_eq!(text(&Data::Bool(false)), "no");
        assert_eq!(text(&Data::Error(CellErrorType::Div0)), "#DIV/0!");
        assert_eq!(text(&Data::Empty), "");
    }
}
