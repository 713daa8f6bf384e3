//! What can be said on the command line.

use clap::{Args, Parser, Subcommand, ValueEnum};
use clap_complete::Shell;
use files::Asking;
use judging::many::Sent;
use session::question::{Goal, Stopping, StoppingWord};
use std::num::NonZero;
use std::path::PathBuf;
use telling::units::shown;
use text::{Language, Units, Voice};

/// Whether two golf clubs really perform differently, or whether the session cannot say.
#[derive(Debug, Parser)]
#[command(name = "straight-answer", version, after_help = ENDS)]
pub(crate) struct Options {
    #[command(subcommand)]
    pub(crate) command: Command,
    /// The language of all words
    #[arg(long, global = true, value_enum, default_value_t)]
    language: LanguageOf,
    /// The units of words and of margins and promises given here; numbers in JSON and CSV are yards and mph
    #[arg(long, global = true, value_enum, default_value_t)]
    unit: UnitsOf,
}

const ENDS: &str = "Ends with 0 when everything was answered, 2 when something was read that cannot be answered, \
3 when something was not read, 64 when called in a way that it does not know.";

#[derive(Debug, Clone, Copy, Default, ValueEnum)]
enum LanguageOf {
    #[default]
    En,
    Es,
}

#[derive(Debug, Clone, Copy, Default, ValueEnum)]
enum UnitsOf {
    #[default]
    Yards,
    Meters,
    /// Meters and miles an hour
    Mixed,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Answer sessions, each alone
    Check(Check),
    /// Answer what many sessions bring together
    Many(Many),
    /// Plan a fair test
    Plan(Plan),
    /// Print completions for a shell
    Completions {
        /// Which one
        shell: Shell,
    },
}

/// The form in which answers are written.
#[derive(Debug, Clone, Copy, Args)]
#[group(multiple = false)]
pub(crate) struct Form {
    /// One JSON object on each line
    #[arg(long)]
    pub(crate) json: bool,
    /// Comma-separated values, a row for each session
    #[arg(long)]
    pub(crate) csv: bool,
}

#[derive(Debug, Args)]
pub(crate) struct Check {
    /// Files of sessions; `-`, or none, is standard input
    pub(crate) files: Vec<PathBuf>,
    /// Name of the club that the others are held against
    #[arg(long)]
    baseline: Option<String>,
    /// Name of the club in question
    #[arg(long)]
    candidate: Option<String>,
    /// The measure, such as carry or ball_speed
    #[arg(long)]
    measure: Option<String>,
    /// The smallest difference that matters
    #[arg(long)]
    margin: Option<f64>,
    /// What better means
    #[arg(long, value_enum)]
    goal: Option<GoalOf>,
    /// How it was decided when to stop
    #[arg(long, value_enum)]
    stopping: Option<StoppingOf>,
    /// A file of JSON with what is known of the text, doubts settled in it
    #[arg(long)]
    pub(crate) hints: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) form: Form,
}

#[derive(Debug, Args)]
pub(crate) struct Many {
    /// Files and folders; `-` reads their names from standard input, one a line
    #[arg(required = true)]
    pub(crate) paths: Vec<PathBuf>,
    /// The measure
    #[arg(long, default_value = "carry")]
    pub(crate) measure: String,
    /// The smallest gain that matters
    #[arg(long)]
    pub(crate) margin: Option<f64>,
    /// What better means
    #[arg(long, value_enum)]
    pub(crate) goal: Option<GoalOf>,
    /// How the sessions came to be sent
    #[arg(long, value_enum)]
    pub(crate) sent: Option<SentOf>,
    /// Of the sessions listed as different, the part that may be luck
    #[arg(long, default_value_t = judging::many::USUAL_RATE)]
    pub(crate) rate: f64,
    /// A table of names: name,own or name,new or name,tried
    #[arg(long)]
    pub(crate) names: Option<PathBuf>,
    /// A table of promises: file,gain
    #[arg(long)]
    pub(crate) claims: Option<PathBuf>,
    /// A file of JSON with what is known of every text
    #[arg(long)]
    pub(crate) hints: Option<PathBuf>,
    /// Threads to work on; all cores where it is left open
    #[arg(long)]
    pub(crate) threads: Option<NonZero<usize>>,
    #[command(flatten)]
    pub(crate) form: Form,
}

#[derive(Debug, Args)]
pub(crate) struct Plan {
    /// Names of the clubs, the golfer's own first
    #[arg(required_unless_present = "request", num_args = 1..)]
    pub(crate) builds: Vec<String>,
    /// The measure
    #[arg(long, default_value = "carry")]
    pub(crate) measure: String,
    /// The smallest difference that matters
    #[arg(long)]
    pub(crate) margin: Option<f64>,
    /// Passes through the clubs
    #[arg(long)]
    pub(crate) rounds: Option<u32>,
    /// Shots with one club in a row
    #[arg(long)]
    pub(crate) set: Option<u32>,
    /// The whole request as a file of JSON, in the place of all else
    #[arg(long, conflicts_with_all = ["builds", "margin", "rounds", "set"])]
    pub(crate) request: Option<PathBuf>,
    /// The plan as JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum GoalOf {
    Higher,
    Lower,
    NearerZero,
    Tighter,
    Different,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum StoppingOf {
    Fixed,
    NotFixed,
    Unknown,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum SentOf {
    /// Every session that there was
    All,
    /// Some, picked by how they came out
    Picked,
}

impl Options {
    pub(crate) fn voice(&self) -> Voice {
        let language = match self.language {
            LanguageOf::En => Language::english(),
            // The table is of this very build.
            LanguageOf::Es => Language::from_table(text::SPANISH).unwrap_or_default(),
        };
        let units = match self.unit {
            UnitsOf::Yards => Units::Yards,
            UnitsOf::Meters => Units::Meters,
            UnitsOf::Mixed => Units::MetersAndMph,
        };
        Voice::new(language, units)
    }
}

impl From<GoalOf> for Goal {
    fn from(goal: GoalOf) -> Self {
        match goal {
            GoalOf::Higher => Self::Higher,
            GoalOf::Lower => Self::Lower,
            GoalOf::NearerZero => Self::NearerZero,
            GoalOf::Tighter => Self::Tighter,
            GoalOf::Different => Self::Different,
        }
    }
}

impl From<SentOf> for Sent {
    fn from(sent: SentOf) -> Self {
        match sent {
            SentOf::All => Self::All,
            SentOf::Picked => Self::Picked,
        }
    }
}

impl Check {
    pub(crate) fn asking(&self, voice: &Voice) -> Asking {
        let stopping = self.stopping.map(|stopping| match stopping {
            StoppingOf::Fixed => StoppingWord::Fixed,
            StoppingOf::NotFixed => StoppingWord::NotFixed,
            StoppingOf::Unknown => StoppingWord::Unknown,
        });
        // A ratio of scatters has no unit.
        let is_ratio = matches!(self.goal, Some(GoalOf::Tighter));
        let scale =
            if is_ratio { 1.0 } else { in_canonical(self.measure.as_deref().unwrap_or("carry"), voice) };
        Asking {
            baseline: self.baseline.clone(),
            candidate: self.candidate.clone(),
            measure: self.measure.as_deref().map(Into::into),
            goal: self.goal.map(Into::into),
            margin: self.margin.map(|margin| margin * scale),
            stopping: stopping.map(Stopping::Word),
        }
    }
}

/// What one unit shown of a measure is in its canonical one.
pub(crate) fn in_canonical(measure: &str, voice: &Voice) -> f64 {
    let known = session::known::Known::of(measure);
    known.map_or(1.0, |known| 1.0 / shown(known.facts().unit, voice).1)
}
