//! Why a workbook cannot be read, as a value and in words.

use serde::Serialize;
use text::Voice;
use text::workbook as say;

/// Why a workbook cannot be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unreadable {
    /// Larger than any session, or it would unpack to that.
    TooLarge {
        /// The sheet it is about; `None` when it is the file.
        sheet: Option<String>,
    },
    /// Behind a password.
    Locked,
    /// An older format.
    OldFormat,
    /// Packed, but no workbook.
    NoWorkbook,
    /// Damaged or cut off.
    Broken,
}

/// The same in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Refusal {
    /// Stable name of the kind, `snake_case`.
    pub kind: &'static str,
    /// The sheet it is about; empty when it is the file.
    pub place: String,
    /// What is wrong, in plain words.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

impl Unreadable {
    /// As whoever chose the file is told.
    #[must_use]
    pub fn words(self, voice: &Voice) -> Refusal {
        let (kind, message, remedy) = match &self {
            Self::TooLarge { .. } => ("too_large", say::too_large(voice), say::too_large_remedy(voice)),
            Self::Locked => ("locked", say::locked(voice), say::locked_remedy(voice)),
            Self::OldFormat => ("old_format", say::old_format(voice), say::old_format_remedy(voice)),
            Self::NoWorkbook => ("no_workbook", say::no_workbook(voice), say::no_workbook_remedy(voice)),
            Self::Broken => ("broken", say::broken(voice), say::broken_remedy(voice)),
        };
        let place = if let Self::TooLarge { sheet: Some(name) } = self { name } else { String::new() };
        Refusal { kind, place, message, remedy }
    }
}
