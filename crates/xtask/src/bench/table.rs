//! The tables that the README and the console show of `tests/bench.json`.

use anyhow::{Context, Result};
use serde_json::Value;
use std::fmt::Write;

/// What the product does, and what is promised of it in milliseconds: in wasm, where nothing else is said.
pub(crate) const PRODUCT: [(&str, &str, &str); 9] = [
    ("check_normal", "`check`, 2 clubs × 30 shots × 6 measures", ""),
    ("check", "`check`, 4 clubs × 60 shots × 8 measures", "20"),
    ("read", "`read`, 100,000 rows of 8 measures", "1000"),
    ("luck", "`luck`, 2 clubs × 30 shots, all shown", ""),
    ("pack", "`pack`, 2 clubs × 30 shots × 6 measures", ""),
    ("potential", "carry map and best of 4 clubs × 60 shots", "100"),
    ("cause", "a gap split into its causes, 60 + 60 shots", ""),
    ("landing", "fairway chances, 4 clubs × 60 shots", ""),
    ("fly", "one flight, steps of 0.02 s", "0.06 native"),
];

/// What other packages do too, on 30 + 30 shots of carry, and what is aimed at, as ratios.
pub(crate) const COMPARED: [(&str, &str); 5] = [
    ("permutation", "permutation test, 9,999 deals"),
    ("bootstrap", "accelerated bootstrap, 9,999 resamples"),
    ("welch", "Welch's test with its interval"),
    ("ols", "least squares on club and rounds"),
    ("ols_formula", "the same from a formula and a table"),
];

/// Packages beside ours: their name in the file, and in a heading.
const PACKAGES: [(&str, &str); 3] =
    [("scipy", "scipy, statsmodels"), ("simple-statistics", "simple-statistics"), ("jstat", "jStat")];

/// Everything, as Markdown.
pub(crate) fn markdown(found: &Value) -> Result<String> {
    let mut text =
        String::from("| milliseconds, median | wasm | native | promised |\n|---|---:|---:|---:|\n");
    for (name, what, promised) in PRODUCT {
        let of = |place: &str| time(found, &format!("/product/{name}/{place}"));
        writeln!(text, "| {what} | {} | {} | {promised} |", shown(of("wasm")?), shown(of("native")?))?;
    }
    compared(found, &mut text)?;
    growth(found, &mut text)?;
    Ok(text)
}

/// Times of other packages, and in brackets how many of ours fit into one of theirs.
fn compared(found: &Value, text: &mut String) -> Result<()> {
    let beside: Vec<_> =
        PACKAGES.iter().filter(|(name, _)| found["made_with"][name] != Value::Null).collect();
    write!(text, "\n| 30 + 30 shots, milliseconds | wasm | native |")?;
    beside.iter().try_for_each(|(_, heading)| write!(text, " {heading} |"))?;
    write!(text, "\n|---|---:|---:|{}", "---:|".repeat(beside.len()))?;
    for (name, what) in COMPARED {
        let of = |place: &str| time(found, &format!("/compared/{name}/{place}"));
        let (wasm, native) = (of("wasm")?, of("native")?);
        write!(text, "\n| {what} | {} | {} |", shown(wasm), shown(native))?;
        for (package, _) in &beside {
            match of(package) {
                Ok(theirs) => write!(
                    text,
                    " {} ({}× wasm, {}× native) |",
                    shown(theirs),
                    shown(theirs / wasm),
                    shown(theirs / native)
                )?,
                Err(_) => write!(text, " – |")?,
            }
        }
    }
    text.push('\n');
    let of = |place: &str| time(found, place).ok();
    let fit = |name: &str| Some(of("/compared/welch/scipy")? + of(&format!("/compared/{name}/scipy"))?);
    if let Some((formula, bare)) = fit("ols_formula").zip(fit("ols")) {
        let of = |place: &str| time(found, &format!("/product/check_normal/{place}"));
        let (formula, bare) = (shown(formula), shown(bare));
        let (wasm, native) = (shown(of("wasm")?), shown(of("native")?));
        writeln!(
            text,
            "\nOne scipy Welch test plus one statsmodels fit: {formula} ms from a formula, {bare} ms from a ready matrix; \
             `check` of that session, of all its measures: {wasm} ms in wasm, {native} natively."
        )?;
    }
    Ok(())
}

fn growth(found: &Value, text: &mut String) -> Result<()> {
    let list = |place: &str| found.pointer(place).and_then(Value::as_array).with_context(|| place.to_owned());
    let headings = |name: &str| -> Result<Vec<String>> {
        let sizes = list(&format!("/growth/{name}"))?.iter();
        Ok(sizes.map(|size| size.to_string().trim_matches(['[', ']']).replace(',', " × ")).collect())
    };
    let tables = [
        ("rows, 4 clubs × 8 measures", headings("shots")?, vec![("read", "`read`"), ("check", "`check`")]),
        ("clubs × measures, 60 shots each", headings("builds_and_measures")?, vec![("findings", "`check`")]),
    ];
    for (what, headings, rows) in tables {
        let cells = headings.join(" | ");
        writeln!(text, "\n| {what} | {cells} | slope |\n|---|{}---:|", "---:|".repeat(headings.len()))?;
        for (name, title) in rows {
            for place in ["wasm", "native"] {
                let at = format!("/growth/{name}/{place}");
                let times = list(&format!("{at}/times"))?.iter();
                let times: Vec<String> = times.map(|time| shown(time.as_f64().unwrap_or(f64::NAN))).collect();
                let slopes = [
                    time(found, &format!("{at}/slope"))?,
                    time(found, &format!("{at}/slope_of_larger_half"))?,
                ];
                let [slope, larger] = slopes.map(|slope| format!("{slope:.2}"));
                writeln!(text, "| {title}, {place} | {} | {slope}, {larger} |", times.join(" | "))?;
            }
        }
    }
    Ok(())
}

fn time(found: &Value, place: &str) -> Result<f64> {
    found.pointer(place).and_then(Value::as_f64).with_context(|| place.to_owned())
}

/// Two or three digits; more would be the machine's mood.
fn shown(number: f64) -> String {
    match number {
        n if n >= 100.0 => format!("{n:.0}"),
        n if n >= 10.0 => format!("{n:.1}"),
        n if n >= 1.0 => format!("{n:.2}"),
        n if n >= 0.1 => format!("{n:.3}"),
        n => format!("{n:.4}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_have_the_digits_that_hold() {
        assert_eq!(
            [1234.5, 12.34, 1.234, 0.1234, 0.01234].map(shown),
            ["1234", "12.3", "1.23", "0.123", "0.0123"]
        );
    }
}
