//! What is built for the web: which crates, and for which target.

/// The one target besides the native one.
pub(crate) const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// The files of the core.
pub(crate) const CORE: &str = "straight_answer";

/// How a package is compiled.
pub(crate) struct Compiled {
    pub(crate) profile: &'static str,
    pub(crate) flags: &'static str,
}

/// What the web side loads from `web/pkg/`: a crate, what its files are called, and how it is compiled.
pub(crate) struct Package {
    pub(crate) of: &'static str,
    pub(crate) name: &'static str,
    pub(crate) compiled: &'static Compiled,
}

/// For the size of a download. The linker leaves in which addresses stand where: of the core the abridged one is made by them.
pub(crate) static SMALL: Compiled = Compiled { profile: "wasm", flags: "-Clink-arg=--emit-relocs" };

/// For speed, with vectors: arithmetic on millions of numbers, which nobody loads who gives no photo.
static FAST: Compiled = Compiled { profile: "wasm-fast", flags: "-Ctarget-feature=+simd128" };

/// The core, then what opens workbooks.
pub(crate) static PACKAGES: [Package; 2] = [
    Package { of: "straight-answer", name: CORE, compiled: &SMALL },
    Package { of: "straight-answer-workbook", name: "straight_answer_workbook", compiled: &SMALL },
];

/// What reads photos, where its models can be had.
pub(crate) static PHOTO: Package =
    Package { of: "straight-answer-photo", name: "straight_answer_photo", compiled: &FAST };

/// The crates that the packages are built from.
pub(crate) fn crates() -> impl Iterator<Item = &'static str> {
    PACKAGES.iter().chain([&PHOTO]).map(|package| package.of)
}
