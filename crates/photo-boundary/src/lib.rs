//! A photo of a table, read in a host that has `WebAssembly` with vectors.
//!
//! A package of its own, loaded only when somebody chooses a photo. The models are a file beside it, handed in unpacked.

use js_sys::{Function, Reflect, Uint8Array};
use photo::{FINDER_LONGEST, FINDER_SMALL, Models, Picture, Progress, Refused};
use serde::Serialize;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

/// Both models, ready to read any number of photos.
#[wasm_bindgen]
#[derive(Debug)]
pub struct PhotoReader {
    models: Models,
}

/// Why nothing is taken over.
#[derive(Debug, Serialize)]
struct Refusal {
    kind: &'static str,
    doubtful: usize,
    of: usize,
}

#[wasm_bindgen]
impl PhotoReader {
    /// Takes the models, unpacked.
    ///
    /// # Errors
    /// When they are damaged, or those of another version.
    #[wasm_bindgen(constructor)]
    pub fn new(models: &[u8]) -> Result<PhotoReader, JsError> {
        let models = Models::load(models).map_err(|_| JsError::new("not the models of this version"))?;
        Ok(Self { models })
    }

    /// Reads the pixels of a photo, four bytes each. With `small` it takes a third less memory, and sees less.
    ///
    /// # Errors
    /// A `PhotoRefusal`.
    #[wasm_bindgen(unchecked_return_type = "PhotoReading")]
    pub fn read(
        &self,
        pixels: &[u8],
        width: usize,
        height: usize,
        small: bool,
        #[wasm_bindgen(unchecked_param_type = "PhotoProgress")] progress: &Function,
    ) -> Result<JsValue, JsValue> {
        let Some(picture) = Picture::from_rgba(width, height, pixels) else {
            return Err(refusal("no_picture", 0, 0)?);
        };
        let longest = if small { FINDER_SMALL } else { FINDER_LONGEST };
        let tell = |done: usize, of: usize| {
            // Nobody who listens can stop the reading.
            let _ = progress.call2(&JsValue::NULL, &JsValue::from(done), &JsValue::from(of));
        };
        let mut told = |it: Progress| match it {
            Progress::Finding => tell(0, 0),
            Progress::Reading { done, of } => tell(done, of),
        };
        match photo::read(&self.models, picture, longest, &mut told) {
            Ok(reading) => {
                let value = to_js(&reading)?;
                Reflect::set(&value, &JsValue::from("cuts"), &Uint8Array::from(reading.cuts.as_slice()))?;
                Ok(value)
            }
            Err(refused) => Err(match refused {
                Refused::NoText => refusal("no_text", 0, 0),
                Refused::NoTable => refusal("no_table", 0, 0),
                Refused::TooMuch => refusal("too_much", 0, 0),
                Refused::TooPoor { doubtful, of } => refusal("too_poor", doubtful, of),
            }?),
        }
    }
}

fn refusal(kind: &'static str, doubtful: usize, of: usize) -> Result<JsValue, JsValue> {
    to_js(&Refusal { kind, doubtful, of })
}

fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}
