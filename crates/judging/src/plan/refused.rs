//! Why there is no plan, and why shots do not belong to one: values with their numbers.

/// A count of a plan that has a least and a most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlanPart {
    /// Shots with one build in a row.
    Set,
    /// Passes through the builds.
    Rounds,
    /// Shots before the first that counts.
    WarmUp,
}

/// Why a plan cannot be made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PlanRefused {
    /// A build without a name.
    NoName {
        /// Which one.
        build: usize,
    },
    /// Too few builds or too many.
    NumberOfBuilds {
        /// How many.
        got: usize,
    },
    /// Two builds of one name.
    SameName,
    /// The measure is not one of the trade's list.
    NoSuchMeasure,
    /// A count below its least or above its most.
    OutOfRange {
        /// Which count.
        part: PlanPart,
        /// Its least.
        least: u32,
        /// Its most.
        most: u32,
        /// What it is.
        got: u32,
    },
    /// A margin that is not above nothing, or a ratio that is not above 1.
    NotAMargin,
    /// A look that is not in the plan.
    NotALook {
        /// Rounds of the plan.
        rounds: u32,
    },
    /// A spread that is not above zero.
    NotASpread,
}

/// What names a set of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TurnPlace {
    /// The shot at this position of the log.
    Shot(usize),
    /// The end at this position of the list.
    Ended(usize),
}

/// Why a test under way cannot be followed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum FollowRefused {
    /// Its plan is none.
    Plan(PlanRefused),
    /// A set that is not in the plan.
    NoSuchTurn {
        /// What names it.
        place: TurnPlace,
        /// The index it names.
        turn: usize,
        /// Sets of the plan.
        turns: usize,
    },
}

impl From<PlanRefused> for FollowRefused {
    fn from(refused: PlanRefused) -> Self {
        Self::Plan(refused)
    }
}
