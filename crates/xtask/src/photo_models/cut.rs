//! The recognizer's last layer cut to the characters of a table, and the weights of both models stored as bytes.

use super::graph::{Graph, Node, Tensor};
use anyhow::{Context, Result, ensure};

/// What can stand in a table of numbers, its headings and its clubs' names.
const KEPT: &str = "0123456789.,+-°%()/#:' ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";

/// Other characters that look the same, and are read as them.
const ALIKE: [(char, &str); 8] = [
    ('-', "\u{2212}\u{2013}\u{2014}\u{4e00}\u{30fc}_"),
    ('.', "\u{3002}\u{b7}"),
    (',', "\u{ff0c}"),
    ('°', "\u{ba}\u{2da}"),
    ('(', "\u{ff08}"),
    (')', "\u{ff09}"),
    ('+', "\u{ff0b}"),
    ('/', "\u{ff0f}"),
];

/// Fewer numbers than this stay as they are: what they would save is lost on their scales.
const FEWEST: usize = 512;

/// Cuts the last layer of a recognizer; beside it the character of each class that is left, the first being none.
pub(super) fn to_characters(graph: &mut Graph) -> Result<Vec<String>> {
    const ALL: usize = 5000;
    let mut table = vec![String::new()];
    table.extend(graph.metadata("character")?.split('\n').map(str::to_owned));
    let (mut classes, mut characters) = (vec![0], vec![String::new()]);
    let (mut weights, mut biases) = (None, None);
    for (at, node) in graph.nodes.iter().enumerate() {
        for (input, name) in node.inputs.iter().enumerate() {
            let Some(found) = graph.constant(&graph.root(name))? else { continue };
            if found.dimensions.last().is_some_and(|size| *size > ALL) {
                let place = if node.kind == "MatMul" { &mut weights } else { &mut biases };
                *place = Some((at, input, found));
            }
        }
    }
    let ((weights_at, weights_in, weights), (biases_at, biases_in, biases)) =
        weights.zip(biases).context("the last layer was not found")?;
    let all = biases.values.len();
    // The last class of all is the blank between words, which the list leaves out.
    table.resize(all, " ".into());
    for kept in KEPT.chars() {
        let alike = ALIKE.iter().find(|(of, _)| *of == kept).map_or("", |(_, alike)| alike);
        for looks in std::iter::once(kept).chain(alike.chars()) {
            for class in (1..all).filter(|class| table[*class] == looks.to_string()) {
                classes.push(class);
                characters.push(kept.to_string());
            }
        }
    }
    ensure!(KEPT.chars().all(|it| characters.contains(&it.to_string())), "a character is not known");
    let pick = |row: &[f32]| classes.iter().map(|class| row[*class]).collect::<Vec<_>>();
    let cut = Tensor {
        dimensions: vec![weights.dimensions[0], classes.len()],
        values: weights.values.chunks(all).flat_map(pick).collect(),
    };
    graph.put("head_weights", &cut);
    graph.put("head_biases", &Tensor { dimensions: vec![classes.len()], values: pick(&biases.values) });
    graph.nodes[weights_at].inputs[weights_in] = "head_weights".into();
    graph.nodes[biases_at].inputs[biases_in] = "head_biases".into();
    graph.prune()?;
    Ok(characters)
}

/// Stores weights as bytes with a scale for each channel; the arithmetic stays that of decimal numbers.
pub(super) fn to_bytes(graph: &mut Graph) -> Result<()> {
    const DECIMAL: u64 = 1;
    let mut unpacking = Vec::new();
    let mut done: Vec<String> = Vec::new();
    for at in 0..graph.nodes.len() {
        let kind = graph.nodes[at].kind.clone();
        if !["Conv", "MatMul", "ConvTranspose", "Gemm"].contains(&kind.as_str()) {
            continue;
        }
        for input in 0..graph.nodes[at].inputs.len().min(2) {
            let root = graph.root(&graph.nodes[at].inputs[input]);
            let Some(weights) = graph.constant(&root)? else { continue };
            if weights.dimensions.len() < 2 || weights.values.len() < FEWEST {
                continue;
            }
            let [bytes, scale, decimals, unpacked] =
                ["bytes", "scale", "decimals", "unpacked"].map(|what| format!("{root}_{what}"));
            if !done.contains(&root) {
                let channel = match kind.as_str() {
                    "Conv" => 0,
                    "ConvTranspose" => 1,
                    _ => weights.dimensions.len() - 1,
                };
                let (small, scales) = quantized(&weights, channel);
                graph.put_bytes(&bytes, &weights.dimensions, &small);
                graph.put(&scale, &scales);
                unpacking.push(Node::new("Cast", &[&bytes], &decimals).with("to", DECIMAL));
                unpacking.push(Node::new("Mul", &[&decimals, &scale], &unpacked));
                done.push(root);
            }
            graph.nodes[at].inputs[input] = unpacked;
        }
    }
    graph.nodes.splice(0..0, unpacking);
    graph.prune()
}

/// Weights as bytes, and what each channel's are to be multiplied by.
fn quantized(weights: &Tensor, channel: usize) -> (Vec<i8>, Tensor) {
    const LARGEST: f32 = 127.0;
    let channels = weights.dimensions[channel];
    let below: usize = weights.dimensions[channel + 1..].iter().product();
    let of = |at: usize| at / below % channels;
    let mut scales = vec![1e-12_f32; channels];
    for (at, weight) in weights.values.iter().enumerate() {
        scales[of(at)] = scales[of(at)].max(weight.abs());
    }
    scales.iter_mut().for_each(|scale| *scale /= LARGEST);
    let small = weights.values.iter().enumerate().map(|(at, weight)| {
        #[allow(clippy::cast_possible_truncation, reason = "between -127 and 127")]
        let small = (weight / scales[of(at)]).round_ties_even().clamp(-LARGEST, LARGEST) as i8;
        small
    });
    let mut dimensions = vec![1; weights.dimensions.len()];
    dimensions[channel] = channels;
    (small.collect(), Tensor { dimensions, values: scales })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_channel_has_a_scale_of_its_own() {
        let weights = Tensor { dimensions: vec![2, 3], values: vec![1.0, -2.0, 0.5, 10.0, 20.0, -5.0] };
        let (small, scales) = quantized(&weights, 1);
        assert_eq!(scales.dimensions, [1, 3]);
        assert_eq!(small, [13, -13, 13, 127, 127, -127]);
        let (small, scales) = quantized(&weights, 0);
        assert_eq!(scales.dimensions, [2, 1]);
        assert_eq!(small, [64, -127, 32, 64, 127, -32]);
    }
}
