//! Any session at all, for properties: names that have broken readers, values of any size, gaps, averages.

#![allow(dead_code, reason = "each test file uses its own part")]

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use session::measure::MeasureId;
use session::{
    Build, Conditions, CustomMeasure, Order, SecondFactor, Session, Shot, Summary, SummaryOf, SummaryValue,
    TemperatureUnit,
};

/// Any characters, half of them those that texts are made of.
pub(crate) fn characters(most: usize) -> impl Strategy<Value = String> {
    vec(prop_oneof![any::<char>(), (0x20_u8..0x7F).prop_map(char::from)], 0..most)
        .prop_map(|all| all.into_iter().collect())
}

/// One of the letters that links are made of.
pub(crate) fn letter() -> impl Strategy<Value = char> {
    let plain = ('A'..='Z').chain('a'..='z').chain('0'..='9');
    prop::sample::select(plain.chain(['-', '_']).collect::<Vec<_>>())
}

/// So many of them.
pub(crate) fn letters(count: std::ops::Range<usize>) -> impl Strategy<Value = String> {
    vec(letter(), count).prop_map(|all| all.into_iter().collect())
}

/// Names that have broken readers: markup, formulas, marks, quotes, line ends, words of the trade.
pub(crate) fn name() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => vec(prop::sample::select(('A'..='Z').chain('0'..='9').chain([' ']).collect::<Vec<_>>()), 1..12)
            .prop_map(|all| all.into_iter().collect::<String>()),
        2 => characters(40),
        2 => prop::sample::select(vec![
            "", " ", "=1+1", "+A1", "-5", "@x", "'", "''", "'=1", "\t", "\r\n", "a\nb", "a,b", "a;b", "\"", "\"\"",
            "Average", "Carry", "shot", "build", "columns", "id", "?", "N/A", "<b>x</b>", "\u{202e}abc", "\u{feff}",
            "\u{a0}", "Straight Answer session", "12", "L 5", "－1", " =2", "ｶ",
        ])
        .prop_map(str::to_owned),
        1 => Just("x".repeat(10_000)),
    ]
}

fn value() -> impl Strategy<Value = Option<f64>> {
    option::of(prop_oneof![
        4 => (-4000_i32..40_000).prop_map(|v| f64::from(v) / 10.0),
        2 => any::<f64>().prop_filter("finite", |v| v.is_finite()),
        1 => Just(-0.0),
    ])
}

fn summary_value() -> impl Strategy<Value = SummaryValue> {
    (value(), value(), value(), value()).prop_map(|(mean, sd, low, high)| SummaryValue {
        mean,
        sd,
        low,
        high,
    })
}

/// What else changed: a name, and each value once.
fn second() -> impl Strategy<Value = Option<SecondFactor>> {
    option::of((name(), vec(name(), 0..5)).prop_map(|(name, all)| {
        let mut values: Vec<String> = Vec::new();
        for value in all {
            if !values.contains(&value) {
                values.push(value);
            }
        }
        SecondFactor { name, values }
    }))
}

/// Weather that says at least something.
fn weather() -> impl Strategy<Value = Option<Conditions>> {
    let told = (-50..50_i32, any::<bool>(), value(), value(), value(), value());
    option::of(told.prop_map(|(degrees, fahrenheit, altitude_ft, humidity_percent, helping, right)| {
        Conditions {
            temperature: Some(f64::from(degrees) / 2.0),
            temperature_unit: if fahrenheit { TemperatureUnit::Fahrenheit } else { TemperatureUnit::Celsius },
            altitude_ft,
            humidity_percent,
            wind_helping_mph: helping,
            wind_to_right_mph: right,
        }
    }))
}

prop_compose! {
    /// Any session.
    pub(crate) fn session()(
        names in vec(name(), 1..5),
        known in prop::sample::subsequence(vec!["carry", "offline", "ball_speed", "smash"], 0..4),
        own in vec((name(), name(), name()), 0..3),
    )(
        shots in vec((0..names.len(), option::of(any::<u32>()), option::of(any::<u32>()), vec(value(), known.len() + own.len()), option::of(name()), option::of(name()), any::<u32>()), 0..12),
        summaries in vec((0..names.len(), option::of(any::<u32>()), 0..3_u8, vec(option::of(summary_value()), known.len() + own.len()), option::of(any::<u32>())), 0..4),
        order in 0..3_u8, second in second(), weather in weather(),
        names in Just(names), known in Just(known), own in Just(own),
    ) -> Session {
        let mut measures: Vec<MeasureId> = known.iter().map(|id| MeasureId::from(*id)).collect();
        // Ids are unique; names need not be.
        let custom: Vec<CustomMeasure> = own.into_iter().enumerate().map(|(at, (id, name, unit))| {
            CustomMeasure { id: MeasureId::from(format!("{id}{at}")), name, unit }
        }).collect();
        measures.extend(custom.iter().map(|c| c.id.clone()));
        let shots = shots.into_iter()
            .map(|(build, round, number, values, left_out, note, any)| {
                let count = second.as_ref().map_or(0, |second| u32::try_from(second.values.len()).expect("a few"));
                // One more than there are: none of them.
                let second = Some(any % (count + 1)).filter(|&at| at < count);
                Shot { build, round, number, values, left_out, note: note.filter(|text| !text.is_empty()), second }
            })
            .collect();
        let summaries = summaries.into_iter().map(|(build, n, of, values, line)| Summary {
            build, n, line,
            of: [SummaryOf::All, SummaryOf::Best, SummaryOf::Chosen][usize::from(of)],
            values: measures.iter().cloned().zip(values).filter_map(|(id, v)| Some((id, v?))).collect(),
        }).collect();
        let order = [Order::Interleaved, Order::Blocked, Order::Unknown][usize::from(order)];
        Session { builds: names.into_iter().map(|name| Build { name }).collect(), measures, custom, shots, summaries, order, second, weather }
    }
}
