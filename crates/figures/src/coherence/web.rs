//! What the page's own scripts say: they draw the answers to some of the sessions in Node (`web/coherence/`), and what was
//! said comes back, message by message, to be held against the same facts.

use super::fact::{Fact, Scope};
use super::heard::{Place, facts};
use super::number::Marks;
use super::page_catalogues::messages;
use super::sessions;
use super::table::Table;
use super::truth::scope;
use anyhow::{Context, Result};
use judging::Judged;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use telling::measures::{MeasureInWords, measures};
use telling::share::{ShareRequest, Shared, share};
use text::traced::{Said, Told};
use text::{Language, Units, Voice};

/// Sessions that are drawn.
const DRAWN: u64 = 720;

const PAGES: &str = "pages.json";
const SAID: &str = "said.json";

/// What the page is given of one session.
#[derive(Serialize)]
struct Page {
    number: u64,
    metric: bool,
    measures: Vec<MeasureInWords>,
    shared: Shared,
}

/// A message that the page said.
#[derive(Debug, Deserialize)]
pub(crate) struct Heard {
    number: u64,
    surface: String,
    /// The place of the finding that it is said of; the headline's where it is left open.
    finding: Option<usize>,
    id: String,
    told: BTreeMap<String, Value>,
    text: String,
}

/// Writes down what the page is given of the first sessions.
///
/// # Errors
/// A folder that cannot be written to.
pub(crate) fn write_pages(folder: &Path) -> Result<()> {
    fs::create_dir_all(folder)?;
    let pages: Vec<Page> = (0..DRAWN).filter_map(page).collect();
    fs::write(folder.join(PAGES), serde_json::to_string(&pages)?).context(PAGES)
}

fn page(number: u64) -> Option<Page> {
    let asked = sessions::asked(number);
    let metric = sessions::units(number) == Units::Meters;
    let voice = Voice::new(Language::english(), sessions::units(number));
    let request = ShareRequest {
        session: asked.session,
        question: asked.question,
        view: session::question::View::default(),
        address: "https://example.org/".into(),
    };
    let shared = share(&request, Some("packed"), &voice).ok()?;
    Some(Page { number, metric, measures: measures(&voice), shared })
}

/// What the page said of each session.
///
/// # Errors
/// Nothing was drawn, or what was said is not understood.
pub(crate) fn read_said(folder: &Path) -> Result<BTreeMap<u64, Vec<Heard>>> {
    let text = fs::read_to_string(folder.join(SAID)).context("the page was not drawn")?;
    let heard: Vec<Heard> = serde_json::from_str(&text).context(SAID)?;
    let mut by_session: BTreeMap<u64, Vec<Heard>> = BTreeMap::new();
    for one in heard {
        by_session.entry(one.number).or_default().push(one);
    }
    Ok(by_session)
}

/// The facts of what the page said of a session.
pub(crate) fn asserted(table: &Table, voice: &Voice, judged: &Judged<'_>, heard: &[Heard]) -> Vec<Fact> {
    let asked = judged.headline().map_or(Scope::Session, |headline| Scope::Pair(headline.candidate, 0));
    let said: Vec<Said> = heard.iter().filter_map(as_said).collect();
    let places = heard.iter().map(|one| Place {
        surface: surface(&one.surface),
        path: one.id.clone(),
        scope: one
            .finding
            .filter(|at| *at < judged.judgments.len())
            .map_or(asked.clone(), |at| scope(judged, at)),
        text: one.text.clone(),
    });
    facts(table, &Marks::of(voice), &said, &places.collect::<Vec<_>>())
}

fn as_said(heard: &Heard) -> Option<Said> {
    let message = messages().iter().find(|message| message.id == heard.id)?;
    let told = message.arguments.iter().map(|name| match heard.told.get(*name) {
        Some(Value::Number(count)) => Told::Count(usize::try_from(count.as_u64().unwrap_or(0)).unwrap_or(0)),
        Some(Value::String(text)) => Told::Text(text.clone()),
        _ => Told::Text(String::new()),
    });
    Some(Said { message: *message, told: told.collect(), text: heard.text.clone() })
}

fn surface(name: &str) -> &'static str {
    ["page", "picture", "numbers", "trust", "shots", "sent"]
        .into_iter()
        .find(|known| *known == name)
        .unwrap_or("page")
}
