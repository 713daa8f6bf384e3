//! The two models: one finds texts in a picture, the other reads them.

use rten::{Model, ModelOptions, op_registry};
use rten_tensor::NdTensor;
use std::fmt;

/// Both models, ready to run, and what each class of the second stands for.
pub struct Models {
    finder: Model,
    reader: Model,
    /// For each class its place among the characters; several classes may look alike.
    pub(crate) places: Vec<usize>,
    /// Every character once; the first is none.
    pub(crate) characters: Vec<char>,
}

/// The models are damaged, or not those that this reader knows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct BadModels;

impl fmt::Debug for Models {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Models").field("characters", &self.characters).finish_non_exhaustive()
    }
}

impl Models {
    /// Takes the file apart that `cargo xtask photo-models` makes: characters, what finds, what reads, each after its length.
    ///
    /// # Errors
    /// [`BadModels`] for anything else.
    pub fn load(bytes: &[u8]) -> Result<Self, BadModels> {
        let mut rest = bytes;
        let mut part = || -> Option<&[u8]> {
            let (length, behind) = rest.split_first_chunk::<4>()?;
            let (part, behind) = behind.split_at_checked(u32::from_le_bytes(*length) as usize)?;
            rest = behind;
            Some(part)
        };
        let (characters, finder, reader) =
            part().zip(part()).zip(part()).map(|((one, two), three)| (one, two, three)).ok_or(BadModels)?;
        let classes: Vec<Option<char>> = std::str::from_utf8(characters)
            .map_err(|_| BadModels)?
            .split('\n')
            .map(|it| it.chars().next())
            .collect();
        let mut known: Vec<char> = classes.iter().flatten().copied().collect();
        known.sort_unstable();
        known.dedup();
        known.insert(0, '\0');
        let place = |class: &Option<char>| {
            class.and_then(|it| known.iter().position(|known| *known == it)).unwrap_or(0)
        };
        let places = classes.iter().map(place).collect();
        Ok(Self { finder: loaded(finder)?, reader: loaded(reader)?, places, characters: known })
    }

    /// How likely each place of a picture belongs to a text; three planes in, one out.
    pub(crate) fn find(&self, planes: Vec<f32>, width: usize, height: usize) -> Vec<f32> {
        let found = run(&self.finder, planes, [1, 3, height, width]);
        if found.len() == width * height { found } else { vec![0.0; width * height] }
    }

    /// For each strip, at each step from left to right, how likely each class is.
    pub(crate) fn read(&self, strips: Vec<f32>, count: usize, height: usize, width: usize) -> Vec<f32> {
        run(&self.reader, strips, [count, 3, height, width])
    }
}

fn loaded(bytes: &[u8]) -> Result<Model, BadModels> {
    // Only what the two models use: half of the program is operators.
    let operators = op_registry!(
        Add,
        AveragePool,
        BatchNormalization,
        Cast,
        Concat,
        Conv,
        ConvTranspose,
        Div,
        Erf,
        GlobalAveragePool,
        HardSigmoid,
        Identity,
        MatMul,
        MaxPool,
        Mul,
        Pow,
        ReduceMean,
        Relu,
        Reshape,
        Resize,
        Shape,
        Sigmoid,
        Slice,
        Softmax,
        Sqrt,
        Squeeze,
        Sub,
        Transpose,
        Unsqueeze
    );
    ModelOptions::with_ops(operators).load(bytes.to_vec()).map_err(|_| BadModels)
}

/// What a model makes of numbers; nothing where it fails, which the caller takes for nothing found.
fn run(model: &Model, values: Vec<f32>, shape: [usize; 4]) -> Vec<f32> {
    let input = NdTensor::from_data(shape, values);
    let Ok(found) = model.run_one(input.into(), None) else { return Vec::new() };
    found.into_tensor::<f32>().map(|it| it.into_data()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn damaged_models_are_refused() {
        for bytes in [&[][..], &[1, 0, 0], &[1, 0, 0, 0, 65], &[255; 64], &[0; 12]] {
            assert_eq!(Models::load(bytes).err(), Some(BadModels));
        }
    }
}
