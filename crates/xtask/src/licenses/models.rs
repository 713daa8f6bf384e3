//! The models that read photos: who made them, under which license, and what was changed.

use super::texts::Package;
use crate::photo_models::{self, VERSION};
use anyhow::Result;

/// What the license asks to be said of a changed file.
const CHANGED: &str = "Changed by Straight Answer: the last layer of the recognition model was cut to the characters of a table, \
     and the weights of both models are stored as bytes with a scale for each channel.";

/// The models, when the site has them.
pub(super) fn packages() -> Result<Vec<Package>> {
    if !photo_models::are_shipped() {
        return Ok(Vec::new());
    }
    let mut texts = photo_models::license_texts()?;
    texts.insert(0, CHANGED.to_owned());
    let (name, license) = ("PP-OCRv6-small-models-of-rapidocr".to_owned(), "Apache-2.0".to_owned());
    Ok(vec![Package { name, version: VERSION.to_owned(), license, texts }])
}
