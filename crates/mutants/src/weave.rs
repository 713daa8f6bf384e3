//! Every fault of a file in one text, each behind a switch that is thrown when the program runs.
//!
//! An expression `a + b` becomes one that asks the switch which of the listed operators it shall use; operands
//! stand in the text once, so that faults nest without the text growing by powers.

use crate::listed::{Genre, Mutant, Place};
use proc_macro2::Span;
use std::collections::{BTreeMap, BTreeSet};
use syn::spanned::Spanned;
use syn::visit::{self, Visit};

/// How the switch is called; the number of the fault follows.
pub(crate) const SWITCH: &str = "crate::mutant_switch::on";

/// The text of a file with its faults, and the numbers of those that are in it.
pub(crate) struct Woven {
    pub(crate) text: String,
    pub(crate) numbers: BTreeSet<usize>,
}

/// Weaves the faults of one file; `faults` are its faults by number.
pub(crate) fn weave(text: &str, faults: &BTreeMap<usize, &Mutant>) -> syn::Result<Woven> {
    let file = syn::parse_file(text)?;
    let lines = line_starts(text);
    let mut finder = Finder { text, lines, faults, nodes: Vec::new(), constants: Vec::new() };
    finder.visit_file(&file);
    finder.add_values();
    let Finder { mut nodes, constants, .. } = finder;
    // What is worked out while the program is built has no switch.
    nodes.retain(|node| !constants.iter().any(|range| range.0 <= node.range.0 && node.range.1 <= range.1));
    // The outer one first, and what stands for a whole body or condition around the expression that makes it up.
    let whole = |kind: &Kind| matches!(kind, Kind::Value(_) | Kind::Guard(_));
    let order = |node: &Node| (node.range.0, usize::MAX - node.range.1, !whole(&node.kind));
    nodes.sort_by_key(order);
    let numbers = nodes.iter().flat_map(Node::numbers).collect();
    Ok(Woven { text: render(text, &nodes, (0, text.len()), 0), numbers })
}

type Range = (usize, usize);

struct Node {
    range: Range,
    kind: Kind,
}

enum Kind {
    /// Operands and what may stand between them.
    Binary { left: Range, right: Range, usual: String, others: Vec<(usize, String)> },
    /// What the operator stands before.
    Unary { operand: Range, usual: String, number: usize },
    /// Fields, each with the comma after it, that may be left out.
    Fields(Vec<(usize, Range)>),
    /// What a function may return at once.
    Value(Vec<(usize, String)>),
    /// What the condition of a branch may be instead.
    Guard(Vec<(usize, String)>),
    /// After the pattern of a branch without a condition: whether it is there.
    Arm(usize),
}

impl Node {
    fn numbers(&self) -> Vec<usize> {
        match &self.kind {
            Kind::Binary { others, .. } | Kind::Value(others) | Kind::Guard(others) => {
                others.iter().map(|(n, _)| *n).collect()
            }
            Kind::Unary { number, .. } | Kind::Arm(number) => vec![*number],
            Kind::Fields(fields) => fields.iter().map(|(n, _)| *n).collect(),
        }
    }
}

struct Finder<'a> {
    text: &'a str,
    lines: Vec<usize>,
    faults: &'a BTreeMap<usize, &'a Mutant>,
    nodes: Vec<Node>,
    constants: Vec<Range>,
}

impl Finder<'_> {
    fn range(&self, span: Span) -> Range {
        (self.offset(span.start()), self.offset(span.end()))
    }

    fn offset(&self, at: proc_macro2::LineColumn) -> usize {
        offset(self.text, &self.lines, Place { line: at.line, column: at.column + 1 })
    }

    /// Faults of a kind that begin at a place.
    fn at(&self, genre: Genre, start: usize) -> Vec<(usize, String)> {
        let here = |mutant: &Mutant| {
            mutant.genre == genre && offset(self.text, &self.lines, mutant.span.start) == start
        };
        let found = self.faults.iter().filter(|(_, mutant)| here(mutant));
        found.map(|(&number, mutant)| (number, mutant.replacement.clone())).collect()
    }

    /// Functions that return at once; one node holds all values of a function.
    fn add_values(&mut self) {
        let mut bodies: BTreeMap<Range, Vec<(usize, String)>> = BTreeMap::new();
        for (&number, mutant) in self.faults.iter().filter(|(_, mutant)| mutant.genre == Genre::FnValue) {
            let start = offset(self.text, &self.lines, mutant.span.start);
            let end = offset(self.text, &self.lines, mutant.span.end);
            bodies.entry((start, end)).or_default().push((number, mutant.replacement.clone()));
        }
        self.nodes
            .extend(bodies.into_iter().map(|(range, values)| Node { range, kind: Kind::Value(values) }));
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_expr_binary(&mut self, node: &'ast syn::ExprBinary) {
        let operator = self.range(node.op.span());
        let others = self.at(Genre::BinaryOperator, operator.0);
        let binds = |side: &syn::Expr| matches!(side, syn::Expr::Let(_)) || has_let(side);
        let chained = binds(&node.left) || binds(&node.right);
        if !others.is_empty() && !chained {
            let kind = Kind::Binary {
                left: self.range(node.left.span()),
                right: self.range(node.right.span()),
                usual: self.text[operator.0..operator.1].to_owned(),
                others,
            };
            let range = self.range(node.span());
            self.nodes.push(Node { range, kind });
        }
        visit::visit_expr_binary(self, node);
    }

    fn visit_expr_unary(&mut self, node: &'ast syn::ExprUnary) {
        let operator = self.range(node.op.span());
        if let [(number, _)] = self.at(Genre::UnaryOperator, operator.0)[..] {
            let usual = self.text[operator.0..operator.1].to_owned();
            let kind = Kind::Unary { operand: self.range(node.expr.span()), usual, number };
            let range = self.range(node.span());
            self.nodes.push(Node { range, kind });
        }
        visit::visit_expr_unary(self, node);
    }

    fn visit_expr_struct(&mut self, node: &'ast syn::ExprStruct) {
        let mut fields = Vec::new();
        for field in &node.fields {
            let (start, end) = self.range(field.span());
            let comma = self.text[end..].find(',').map_or(end, |comma| end + comma + 1);
            fields.extend(self.at(Genre::StructField, start).iter().map(|&(n, _)| (n, (start, comma))));
        }
        if !fields.is_empty() {
            let range = self.range(node.span());
            self.nodes.push(Node { range, kind: Kind::Fields(fields) });
        }
        visit::visit_expr_struct(self, node);
    }

    fn visit_arm(&mut self, node: &'ast syn::Arm) {
        if let Some((_, guard)) = &node.guard {
            let range = self.range(guard.span());
            let others = self.at(Genre::MatchArmGuard, range.0);
            if !others.is_empty() && !has_let(guard) {
                self.nodes.push(Node { range, kind: Kind::Guard(others) });
            }
        } else if let [(number, _)] = self.at(Genre::MatchArm, self.range(node.span()).0)[..] {
            let end = self.range(node.pat.span()).1;
            self.nodes.push(Node { range: (end, end), kind: Kind::Arm(number) });
        }
        visit::visit_arm(self, node);
    }

    fn visit_item_const(&mut self, node: &'ast syn::ItemConst) {
        self.constants.push(self.range(node.span()));
    }

    fn visit_impl_item_const(&mut self, node: &'ast syn::ImplItemConst) {
        self.constants.push(self.range(node.span()));
    }

    fn visit_item_static(&mut self, node: &'ast syn::ItemStatic) {
        self.constants.push(self.range(node.span()));
    }

    fn visit_signature(&mut self, _: &'ast syn::Signature) {}

    fn visit_item_fn(&mut self, node: &'ast syn::ItemFn) {
        match node.sig.constness {
            Some(_) => self.constants.push(self.range(node.span())),
            None => visit::visit_item_fn(self, node),
        }
    }

    fn visit_impl_item_fn(&mut self, node: &'ast syn::ImplItemFn) {
        match node.sig.constness {
            Some(_) => self.constants.push(self.range(node.span())),
            None => visit::visit_impl_item_fn(self, node),
        }
    }
}

/// Whether names are bound on the way (`a && let Some(b) = c`): such a chain cannot stand apart.
fn has_let(side: &syn::Expr) -> bool {
    match side {
        syn::Expr::Let(_) => true,
        syn::Expr::Binary(inner) => has_let(&inner.left) || has_let(&inner.right),
        _ => false,
    }
}

/// The text of a range with everything woven in that lies inside it, among the nodes from `from` on.
fn render(text: &str, nodes: &[Node], range: Range, from: usize) -> String {
    let mut woven = String::new();
    let mut at = range.0;
    for (index, node) in nodes.iter().enumerate().skip(from) {
        if node.range.0 >= at && node.range.1 <= range.1 {
            woven.push_str(&text[at..node.range.0]);
            woven.push_str(&render_node(text, nodes, index));
            at = node.range.1;
        }
    }
    woven.push_str(&text[at..range.1]);
    woven
}

fn render_node(text: &str, nodes: &[Node], index: usize) -> String {
    let inner = |range: Range| render(text, nodes, range, index + 1);
    match &nodes[index].kind {
        Kind::Binary { left, right, usual, others } => {
            let (left, right) = (inner(*left), inner(*right));
            let number = others[0].0;
            let choose = |l: &str, r: &str| {
                let other = |(number, other): &(usize, String)| {
                    format!("if {SWITCH}({number}) {{ {l} {other} {r} }} else ")
                };
                let all: String = others.iter().map(other).collect();
                format!("{all}{{ {l} {usual} {r} }}")
            };
            match usual.as_str() {
                "&&" => format!(
                    "(match ({left}) {{ l => if l == {SWITCH}({number}) {{ l }} else {{ {right} }} }})"
                ),
                "||" => format!(
                    "(match ({left}) {{ l => if l != {SWITCH}({number}) {{ l }} else {{ {right} }} }})"
                ),
                "==" | "!=" | "<" | ">" | "<=" | ">=" => {
                    format!("(match (&({left}), &({right})) {{ (l, r) => {} }})", choose("l", "r"))
                }
                _ if usual.ends_with('=') => format!("{{ let r = {right}; {} }}", choose(&left, "r")),
                _ => format!("(match ({left}, {right}) {{ (l, r) => {} }})", choose("l", "r")),
            }
        }
        Kind::Unary { operand, usual, number } => {
            let operand = inner(*operand);
            format!("(match ({operand}) {{ v => if {SWITCH}({number}) {{ v }} else {{ {usual}v }} }})")
        }
        Kind::Fields(fields) => {
            let range = nodes[index].range;
            let without = |(number, field): &(usize, Range)| {
                let (before, after) = (inner((range.0, field.0)), inner((field.1, range.1)));
                format!("if {SWITCH}({number}) {{ {before}{after} }} else ")
            };
            let all: String = fields.iter().map(without).collect();
            format!("({all}{{ {} }})", inner(range))
        }
        Kind::Guard(others) => {
            let other =
                |(number, other): &(usize, String)| format!("if {SWITCH}({number}) {{ {other} }} else ");
            let all: String = others.iter().map(other).collect();
            format!("({all}{{ {} }})", inner(nodes[index].range))
        }
        Kind::Arm(number) => format!(" if !{SWITCH}({number})"),
        Kind::Value(values) => {
            let value =
                |(number, value): &(usize, String)| format!("if {SWITCH}({number}) {{ return {value}; }}\n");
            let all: String = values.iter().map(value).collect();
            all + &inner(nodes[index].range)
        }
    }
}

/// Offsets at which lines begin.
fn line_starts(text: &str) -> Vec<usize> {
    std::iter::once(0).chain(text.match_indices('\n').map(|(at, _)| at + 1)).collect()
}

fn offset(text: &str, lines: &[usize], at: Place) -> usize {
    let start = lines[at.line - 1];
    let column = text[start..].char_indices().nth(at.column - 1);
    column.map_or(text.len(), |(bytes, _)| start + bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::listed::Span;

    fn fault(genre: Genre, replacement: &str, from: (usize, usize), to: (usize, usize)) -> Mutant {
        let place = |(line, column)| Place { line, column };
        let span = Span { start: place(from), end: place(to) };
        Mutant { file: String::new(), name: String::new(), genre, replacement: replacement.into(), span }
    }

    #[test]
    fn operands_stand_in_the_text_once() {
        let text = "fn f(a: f64, b: f64) -> f64 {\n    a + b * 2.0\n}\n";
        let plus = fault(Genre::BinaryOperator, "-", (2, 7), (2, 8));
        let times = fault(Genre::BinaryOperator, "/", (2, 11), (2, 12));
        let value = fault(Genre::FnValue, "0.0", (2, 5), (2, 16));
        let faults = BTreeMap::from([(1, &plus), (2, &times), (3, &value)]);
        let woven = weave(text, &faults).expect("parses");
        assert_eq!(woven.numbers, BTreeSet::from([1, 2, 3]));
        assert_eq!(woven.text.matches("2.0").count(), 1);
        let value = woven.text.find("return 0.0").expect("woven");
        assert!(value < woven.text.find("l - r").expect("woven"));
        assert!(syn::parse_file(&woven.text).is_ok(), "{}", woven.text);
    }

    #[test]
    fn branches_are_taken_always_or_never() {
        let text = "fn f(a: f64) -> f64 {\n    match a {\n        b if b > 1.0 => b,\n        0.5 => 2.0,\n        _ => 3.0,\n    }\n}\n";
        let always = fault(Genre::MatchArmGuard, "true", (3, 14), (3, 21));
        let never = fault(Genre::MatchArmGuard, "false", (3, 14), (3, 21));
        let less = fault(Genre::BinaryOperator, "<", (3, 16), (3, 17));
        let gone = fault(Genre::MatchArm, "", (4, 9), (4, 19));
        let faults = BTreeMap::from([(1, &always), (2, &never), (3, &less), (4, &gone)]);
        let woven = weave(text, &faults).expect("parses");
        assert_eq!(woven.numbers, BTreeSet::from([1, 2, 3, 4]));
        let guard = woven.text.find("(1) { true }").expect("woven");
        assert!(guard < woven.text.find("l < r").expect("woven"), "{}", woven.text);
        assert!(woven.text.contains("0.5 if !crate::mutant_switch::on(4) => 2.0"), "{}", woven.text);
        assert!(syn::parse_file(&woven.text).is_ok(), "{}", woven.text);
    }

    #[test]
    fn constants_and_chains_that_bind_are_left_alone() {
        let text = "const A: f64 = 1.0 + 2.0;\nfn f(a: Option<bool>) -> bool {\n    if 1 < 2 && let Some(b) = a { b } else { false }\n}\n";
        let plus = fault(Genre::BinaryOperator, "-", (1, 20), (1, 21));
        let and = fault(Genre::BinaryOperator, "||", (3, 14), (3, 16));
        let less = fault(Genre::BinaryOperator, ">", (3, 10), (3, 11));
        let woven = weave(text, &BTreeMap::from([(1, &plus), (2, &and), (3, &less)])).expect("parses");
        assert_eq!(woven.numbers, BTreeSet::from([3]));
    }
}
