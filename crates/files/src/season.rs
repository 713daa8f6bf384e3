//! A pile with what was not read beside it: files in, on every core, and put together from processes that know nothing of
//! each other.

use crate::asking::waits;
use crate::open::{SessionRead, read_file};
use crate::tables::Claims;
use crate::unread::Unread;
use judging::many::{ManyQuestion, Names, Pile, PilesDiffer, line};
use reading::Hints;
use serde::{Deserialize, Serialize};
use session::refusal::Refusal;
use std::collections::BTreeSet;
use std::num::NonZero;
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;
use telling::many::{ManyAnswered, fits, many};
use telling::refusals;
use text::Voice;

/// What is known of all files together.
#[derive(Debug, Clone, Default)]
pub struct AboutSeason {
    /// Which name is whose club.
    pub names: Names,
    /// What was promised.
    pub claims: Claims,
    /// What is known of every text.
    pub hints: Option<Hints>,
}

/// A pile, and what was not read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Season {
    pile: Pile,
    unread: BTreeSet<Unread>,
}

/// A season answered and told.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SeasonAnswered {
    /// The pile's answer.
    #[serde(flatten)]
    pub answered: ManyAnswered,
    /// What was not read, with place and remedy.
    pub unread: Vec<Unread>,
}

impl Season {
    /// An empty one.
    ///
    /// # Errors
    /// The [`Refusal`] of a question that no pile can answer.
    pub fn new(question: ManyQuestion, voice: &Voice) -> Result<Self, Refusal> {
        fits(&question, voice)?;
        Ok(Self { pile: Pile::new(question), unread: BTreeSet::new() })
    }

    /// Judges what was read, and keeps what was judged; what was not read is kept with its reason.
    pub fn take(&mut self, read: Result<SessionRead, Unread>, about: &AboutSeason, voice: &Voice) {
        let judged = read.and_then(|read| {
            let claimed = about.claims.of(&read.place);
            self.judge(&read, about, claimed, voice)
        });
        if let Err(unread) = judged {
            self.unread.insert(unread);
        }
    }

    /// The same of a session that came with its own promise.
    pub fn take_promised(&mut self, read: &SessionRead, about: &AboutSeason, claimed: f64, voice: &Voice) {
        if let Err(unread) = self.judge(read, about, Some(claimed), voice) {
            self.unread.insert(unread);
        }
    }

    fn judge(
        &mut self,
        read: &SessionRead,
        about: &AboutSeason,
        claimed: Option<f64>,
        voice: &Voice,
    ) -> Result<(), Unread> {
        let question = self.pile.question();
        waits(read, &question.measure, voice)?;
        let line = line(&read.session, question, &about.names, read.question.as_ref(), claimed)
            .map_err(|misfit| Unread::of(&read.place, refusals::misfit(&misfit, voice)))?;
        self.pile.add(&read.place, line);
        Ok(())
    }

    /// Reads and judges files on so many threads; `done` hears how many are. What stands here does not hang on the threads.
    pub fn take_files(
        &mut self,
        files: &[PathBuf],
        about: &AboutSeason,
        threads: Option<NonZero<usize>>,
        voice: &Voice,
        done: &(dyn Fn(usize) + Sync),
    ) {
        let threads = threads.or_else(|| thread::available_parallelism().ok()).map_or(1, NonZero::get);
        let next = AtomicUsize::new(0);
        let empty = Self { pile: Pile::new(self.pile.question().clone()), unread: BTreeSet::new() };
        let parts: Vec<Self> = thread::scope(|scope| {
            let work = || {
                let mut part = empty.clone();
                loop {
                    let at = next.fetch_add(1, Ordering::Relaxed);
                    let Some(path) = files.get(at) else { return part };
                    part.take(read_file(path, about.hints.as_ref(), voice), about, voice);
                    done(at + 1);
                }
            };
            let workers: Vec<_> = (0..threads.min(files.len().max(1))).map(|_| scope.spawn(work)).collect();
            let join = |worker: thread::ScopedJoinHandle<'_, Self>| {
                worker.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic))
            };
            workers.into_iter().map(join).collect()
        });
        for part in parts {
            // Of one question: they were made of it.
            let _ = self.put_together(part);
        }
    }

    /// Keeps what was not read elsewhere.
    pub fn take_unread(&mut self, unread: Vec<Unread>) {
        self.unread.extend(unread);
    }

    /// Puts another one in; twice is the same as once.
    ///
    /// # Errors
    /// The [`Refusal`] of piles that were asked different things.
    pub fn merge(&mut self, other: Self, voice: &Voice) -> Result<(), Refusal> {
        self.put_together(other).map_err(|differ| refusals::piles_differ(differ, voice))
    }

    fn put_together(&mut self, other: Self) -> Result<(), PilesDiffer> {
        self.pile.merge(other.pile)?;
        self.unread.extend(other.unread);
        Ok(())
    }

    /// Sessions, copies counted once.
    #[must_use]
    pub fn len(&self) -> usize {
        self.pile.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.pile.is_empty()
    }

    /// The answer.
    #[must_use]
    pub fn answer(&self, voice: &Voice) -> SeasonAnswered {
        SeasonAnswered { answered: many(&self.pile, voice), unread: self.unread.iter().cloned().collect() }
    }
}
