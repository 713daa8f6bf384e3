//! What is built for the web: which crates, and for which target.

/// The one target besides the native one.
pub(crate) const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// The files of the core.
pub(crate) const CORE: &str = "straight_answer";

/// What the web side loads from `web/pkg/`: a crate, and what its files are called.
pub(crate) struct Package {
    pub(crate) of: &'static str,
    pub(crate) name: &'static str,
}

/// The core, then what opens workbooks.
pub(crate) const PACKAGES: [Package; 2] = [
    Package { of: "straight-answer", name: CORE },
    Package { of: "straight-answer-workbook", name: "straight_answer_workbook" },
];

/// The crates that the packages are built from.
pub(crate) fn crates() -> impl Iterator<Item = &'static str> {
    PACKAGES.iter().map(|package| package.of)
}
