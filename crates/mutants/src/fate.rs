//! What became of a fault that was put in.

/// What became of a fault.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Fate {
    /// A test failed.
    Killed,
    /// The tests did not end in many times their usual time.
    TimedOut,
    /// Every test that reaches it passed.
    Survived,
    /// No test reaches it.
    Unreached,
    /// It does not compile: no fault that anybody could make.
    Unviable,
    /// In a constant, or in a chain that binds names: there is no switch for it.
    NotWoven,
}

impl Fate {
    pub(crate) fn is_noticed(&self) -> bool {
        matches!(self, Self::Killed | Self::TimedOut)
    }

    pub(crate) fn is_not_noticed(&self) -> bool {
        matches!(self, Self::Survived | Self::Unreached)
    }
}
