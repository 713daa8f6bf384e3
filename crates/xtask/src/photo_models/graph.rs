//! A model's graph by its nodes and constants: reading them, giving a node another input, dropping what nothing uses.

use super::protobuf::Message;
use anyhow::{Context, Result, ensure};
use std::collections::{BTreeMap, BTreeSet};

// The numbers of the fields, as ONNX names them.
const MODEL_GRAPH: u32 = 7;
const MODEL_METADATA: u32 = 14;
const GRAPH_NODE: u32 = 1;
const GRAPH_INITIALIZER: u32 = 5;
const GRAPH_OUTPUT: u32 = 12;
const GRAPH_VALUE_INFO: u32 = 13;
const NODE_INPUT: u32 = 1;
const NODE_OUTPUT: u32 = 2;
const NODE_KIND: u32 = 4;
const NODE_ATTRIBUTE: u32 = 5;
const TENSOR_DIMENSIONS: u32 = 1;
const TENSOR_KIND: u32 = 2;
const TENSOR_NAME: u32 = 8;
const TENSOR_RAW: u32 = 9;
const FLOAT: u64 = 1;
const INT8: u64 = 3;

/// An operation.
pub(super) struct Node {
    pub(super) kind: String,
    pub(super) inputs: Vec<String>,
    pub(super) outputs: Vec<String>,
    /// Its name and its attributes, as they came.
    rest: Message,
}

/// Numbers of several dimensions.
#[derive(Clone)]
pub(super) struct Tensor {
    pub(super) dimensions: Vec<usize>,
    pub(super) values: Vec<f32>,
}

/// A model taken apart.
pub(super) struct Graph {
    model: Message,
    graph: Message,
    pub(super) nodes: Vec<Node>,
    /// By name, as they came.
    constants: BTreeMap<String, Message>,
}

impl Graph {
    pub(super) fn parse(bytes: &[u8]) -> Result<Self> {
        let mut model = Message::parse(bytes)?;
        let mut graph = Message::parse(model.get(MODEL_GRAPH).context("no graph")?)?;
        let nodes = graph.messages(GRAPH_NODE)?.into_iter().map(Node::from).collect();
        let constants = graph.messages(GRAPH_INITIALIZER)?;
        let constants = constants.into_iter().map(|it| (it.text(TENSOR_NAME), it)).collect();
        model.remove(MODEL_GRAPH);
        [GRAPH_NODE, GRAPH_INITIALIZER, GRAPH_VALUE_INFO].iter().for_each(|field| graph.remove(*field));
        Ok(Self { model, graph, nodes, constants })
    }

    /// A text beside the graph, by its key.
    pub(super) fn metadata(&self, key: &str) -> Result<String> {
        let found = self.model.messages(MODEL_METADATA)?;
        let found = found.iter().find(|it| it.text(1) == key).with_context(|| format!("no `{key}`"))?;
        Ok(found.text(2))
    }

    /// Where the constant behind an input stands, seen through what only hands it on.
    pub(super) fn root(&self, input: &str) -> String {
        let handed_on = self.nodes.iter().find(|it| it.kind == "Identity" && it.outputs[0] == input);
        handed_on.map_or_else(|| input.to_owned(), |it| self.root(&it.inputs[0]))
    }

    /// A constant of decimal numbers; nothing when there is none of that name, or of another kind.
    pub(super) fn constant(&self, name: &str) -> Result<Option<Tensor>> {
        let Some(found) = self.constants.get(name) else { return Ok(None) };
        if found.integers(TENSOR_KIND)? != [FLOAT] {
            return Ok(None);
        }
        let raw = found.get(TENSOR_RAW).with_context(|| format!("{name} has no raw numbers"))?;
        let values: Vec<f32> =
            raw.as_chunks::<4>().0.iter().map(|bytes| f32::from_le_bytes(*bytes)).collect();
        let dimensions = found.integers(TENSOR_DIMENSIONS)?;
        let dimensions = dimensions.into_iter().map(usize::try_from).collect::<Result<Vec<_>, _>>()?;
        ensure!(
            dimensions.iter().product::<usize>() == values.len(),
            "{name} has not as many numbers as it says"
        );
        Ok(Some(Tensor { dimensions, values }))
    }

    pub(super) fn put(&mut self, name: &str, tensor: &Tensor) {
        let raw = tensor.values.iter().flat_map(|it| it.to_le_bytes()).collect();
        self.put_raw(name, FLOAT, &tensor.dimensions, raw);
    }

    pub(super) fn put_bytes(&mut self, name: &str, dimensions: &[usize], values: &[i8]) {
        self.put_raw(name, INT8, dimensions, values.iter().map(|it| it.cast_unsigned()).collect());
    }

    fn put_raw(&mut self, name: &str, kind: u64, dimensions: &[usize], raw: Vec<u8>) {
        let mut tensor = Message::default();
        dimensions.iter().for_each(|it| tensor.add_integer(TENSOR_DIMENSIONS, *it as u64));
        tensor.add_integer(TENSOR_KIND, kind);
        tensor.add(TENSOR_NAME, name);
        tensor.add(TENSOR_RAW, raw);
        self.constants.insert(name.to_owned(), tensor);
    }

    /// The names of the graph's outputs.
    pub(super) fn outputs(&self) -> Result<Vec<String>> {
        Ok(self.graph.messages(GRAPH_OUTPUT)?.iter().map(|it| it.text(1)).collect())
    }

    /// Drops what no output comes of, and what was said of the model for people.
    pub(super) fn prune(&mut self) -> Result<()> {
        let outputs = self.outputs()?;
        loop {
            let used: BTreeSet<String> =
                self.nodes.iter().flat_map(|it| it.inputs.iter().cloned()).chain(outputs.clone()).collect();
            let before = self.nodes.len();
            self.nodes.retain(|it| it.outputs.iter().any(|output| used.contains(output)));
            if self.nodes.len() == before {
                self.constants.retain(|name, _| used.contains(name));
                self.model.remove(MODEL_METADATA);
                return Ok(());
            }
        }
    }

    pub(super) fn bytes(mut self) -> Vec<u8> {
        for node in &self.nodes {
            self.graph.add(GRAPH_NODE, node.message().bytes());
        }
        for tensor in self.constants.values() {
            self.graph.add(GRAPH_INITIALIZER, tensor.bytes());
        }
        // What it says of its outputs' sizes is no longer true, and nobody asks.
        let outputs: Vec<String> =
            self.graph.messages(GRAPH_OUTPUT).unwrap_or_default().iter().map(|it| it.text(1)).collect();
        self.graph.remove(GRAPH_OUTPUT);
        for name in outputs {
            let [mut output, mut kind, mut tensor] = std::array::from_fn(|_| Message::default());
            tensor.add_integer(1, FLOAT);
            kind.add(1, tensor.bytes());
            output.add(1, name);
            output.add(2, kind.bytes());
            self.graph.add(GRAPH_OUTPUT, output.bytes());
        }
        self.model.add(MODEL_GRAPH, self.graph.bytes());
        self.model.bytes()
    }
}

impl Node {
    pub(super) fn new(kind: &str, inputs: &[&str], output: &str) -> Self {
        let inputs = inputs.iter().map(|it| (*it).to_owned()).collect();
        Self { kind: kind.into(), inputs, outputs: vec![output.into()], rest: Message::default() }
    }

    /// With a whole number as an attribute.
    pub(super) fn with(mut self, name: &str, value: u64) -> Self {
        const INTEGER: u64 = 2;
        let mut attribute = Message::default();
        attribute.add(1, name);
        attribute.add_integer(3, value);
        attribute.add_integer(20, INTEGER);
        self.rest.add(NODE_ATTRIBUTE, attribute.bytes());
        self
    }

    fn from(mut message: Message) -> Self {
        let texts = |field| message.all(field).map(|it| String::from_utf8_lossy(it).into_owned()).collect();
        let (inputs, outputs, kind) = (texts(NODE_INPUT), texts(NODE_OUTPUT), message.text(NODE_KIND));
        [NODE_INPUT, NODE_OUTPUT, NODE_KIND].iter().for_each(|field| message.remove(*field));
        Self { kind, inputs, outputs, rest: message }
    }

    fn message(&self) -> Message {
        let mut message = Message::default();
        self.inputs.iter().for_each(|it| message.add(NODE_INPUT, it.as_str()));
        self.outputs.iter().for_each(|it| message.add(NODE_OUTPUT, it.as_str()));
        message.add(NODE_KIND, self.kind.as_str());
        message.fields.extend(self.rest.fields.iter().cloned());
        message
    }
}
