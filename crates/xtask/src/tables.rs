//! Every table of the README that quotes a file of figures; `tidy` finds those that no longer say the same.

use crate::quoted::Quote;
use crate::{bench, calibrated, lighthouse, seasons, sizes};
use anyhow::Result;

const ALL: [Quote; 5] = [bench::QUOTE, lighthouse::QUOTE, calibrated::QUOTE, sizes::QUOTE, seasons::QUOTE];

/// Writes every table anew.
pub(crate) fn write_all() -> Result<()> {
    ALL.iter().try_for_each(Quote::write)
}

/// What is wrong with the README's tables.
pub(crate) fn faults() -> Result<Vec<String>> {
    let faults: Vec<Option<String>> = ALL.iter().map(Quote::fault).collect::<Result<_>>()?;
    Ok(faults.into_iter().flatten().collect())
}
