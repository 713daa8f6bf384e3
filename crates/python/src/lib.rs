//! The native half of the package `straight_answer`: plain texts and JSON across, no arithmetic and no wording here. Python's
//! lock is released while anything is read or judged.

mod refused;
mod said;
mod season;
mod session;

use pyo3::prelude::*;

#[pymodule]
fn _native(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("MOST_BYTES", files::MOST_BYTES)?;
    module.add_function(wrap_pyfunction!(session::read, module)?)?;
    module.add_class::<session::Session>()?;
    module.add_class::<season::Season>()
}
