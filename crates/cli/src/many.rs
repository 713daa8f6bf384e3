//! `many`: what sessions bring together.

use crate::options::{Many, in_canonical};
use crate::write::{Ends, complain, csv, json, out, settings, settings_of, standard_input, word};
use files::{AboutSeason, Season, SeasonAnswered, Unread, claims_of, names_of, walk};
use judging::many::{ManyQuestion, OneOfMany, Sent};
use std::io::{self, IsTerminal, Write};
use std::path::PathBuf;
use std::sync::Mutex;
use std::time::{Duration, Instant};
use text::Voice;

/// A terminal is told so often how far it is.
const TOLD_EVERY: Duration = Duration::from_millis(200);

pub(crate) fn run(options: &Many, voice: &Voice) -> Ends {
    match season(options, voice) {
        Ok(answered) => written(&answered, options),
        Err(unread) => {
            complain(&unread);
            Ends::NotRead
        }
    }
}

fn season(options: &Many, voice: &Voice) -> Result<SeasonAnswered, Unread> {
    let scale = in_canonical(&options.measure, voice);
    let question = ManyQuestion {
        goal: options.goal.map(Into::into),
        margin: options.margin.map(|margin| margin * scale),
        sent: options.sent.map_or(Sent::NotSaid, Into::into),
        rate: options.rate,
        ..ManyQuestion::of(options.measure.as_str().into())
    };
    let about = about(options, scale, voice)?;
    let mut season = Season::new(question, voice).map_err(|refusal| {
        let place = refusal.place.clone();
        Unread::of(&place, refusal)
    })?;
    let (mut files, unread) = walk(&paths(options), voice);
    // Tables that lie in the same folder are no sessions.
    let own: Vec<PathBuf> = [&options.names, &options.claims, &options.hints]
        .into_iter()
        .filter_map(|path| path.as_ref()?.canonicalize().ok())
        .collect();
    files.retain(|file| own.is_empty() || file.canonicalize().map_or(true, |file| !own.contains(&file)));
    season.take_unread(unread);
    let shown = Progress::of(files.len());
    season.take_files(&files, &about, options.threads, voice, &|done| shown.tell(done));
    shown.end();
    Ok(season.answer(voice))
}

fn about(options: &Many, scale: f64, voice: &Voice) -> Result<AboutSeason, Unread> {
    let mut about = AboutSeason::default();
    if let Some(path) = &options.names {
        about.names = names_of(&settings(path, voice)?, &path.display().to_string(), voice)?;
    }
    if let Some(path) = &options.claims {
        about.claims = claims_of(&settings(path, voice)?, &path.display().to_string(), scale, voice)?;
    }
    about.hints = options.hints.as_deref().map(|path| settings_of(path, voice)).transpose()?;
    Ok(about)
}

/// As given; a dash stands for names on standard input.
fn paths(options: &Many) -> Vec<PathBuf> {
    let mut paths = Vec::new();
    for path in &options.paths {
        if path.as_os_str() == "-" {
            let names = standard_input().unwrap_or_default();
            let names = String::from_utf8_lossy(&names).into_owned();
            paths.extend(names.lines().filter(|line| !line.trim().is_empty()).map(PathBuf::from));
        } else {
            paths.push(path.clone());
        }
    }
    paths
}

fn written(answered: &SeasonAnswered, options: &Many) -> Ends {
    let many = &answered.answered.found;
    if options.form.json {
        out(&json(answered));
    } else if options.form.csv {
        let rows: Vec<Vec<String>> =
            std::iter::once(HEADINGS.map(str::to_owned).to_vec()).chain(many.each.iter().map(row)).collect();
        out(&csv(&rows));
    } else {
        let words = &answered.answered.words;
        let lines = [&words.headline, &words.brings, &words.luck, &words.promised, &words.sent];
        let lines = lines.into_iter().chain(&words.not_pooled).filter(|line| !line.is_empty());
        out(&(lines.cloned().collect::<Vec<_>>().join("\n") + "\n"));
    }
    answered.unread.iter().for_each(complain);
    match () {
        () if !answered.unread.is_empty() => Ends::NotRead,
        () if many.brings.is_none() => Ends::CannotAnswer,
        () => Ends::Answered,
    }
}

const HEADINGS: [&str; 16] = [
    "file",
    "copies",
    "baseline",
    "candidate",
    "decision",
    "direction",
    "matters",
    "value",
    "low",
    "high",
    "pulled",
    "pulled_low",
    "pulled_high",
    "listed_from",
    "claimed",
    "not_pooled",
];

fn row(one: &OneOfMany) -> Vec<String> {
    let number = |value: Option<f64>| value.map_or_else(String::new, |value| value.to_string());
    let decision = one.decision.as_ref();
    vec![
        one.places.first().cloned().unwrap_or_default(),
        one.places.len().saturating_sub(1).to_string(),
        one.baseline.clone(),
        one.candidate.clone(),
        word(&decision.map(|decision| decision.kind)),
        word(&decision.and_then(|decision| decision.direction)),
        word(&decision.and_then(|decision| decision.matters)),
        number(one.gap.map(|gap| gap.value)),
        number(one.gap.map(|gap| gap.interval.low)),
        number(one.gap.map(|gap| gap.interval.high)),
        number(one.pulled.map(|pulled| pulled.value)),
        number(one.pulled.map(|pulled| pulled.interval.low)),
        number(one.pulled.map(|pulled| pulled.interval.high)),
        number(one.listed_from),
        number(one.claimed),
        word(&one.not_pooled),
    ]
}

/// How far it is, on a terminal alone.
struct Progress {
    of: usize,
    told: Option<Mutex<Instant>>,
}

impl Progress {
    fn of(of: usize) -> Self {
        Self { of, told: io::stderr().is_terminal().then(|| Mutex::new(Instant::now())) }
    }

    fn tell(&self, done: usize) {
        let Some(mut last) = self.told.as_ref().and_then(|told| told.lock().ok()) else { return };
        if last.elapsed() > TOLD_EVERY {
            *last = Instant::now();
            eprint!("\r{done} / {}", self.of);
            let _ = io::stderr().flush();
        }
    }

    fn end(&self) {
        if self.told.is_some() {
            eprint!("\r\u{1b}[K");
        }
    }
}
