//! The points of a module at which it can be seen what runs, and the module without what did not.

use anyhow::Result;
use std::cmp::Reverse;
use std::collections::{BTreeSet, HashSet};
use walrus::ir::{self, Instr, InstrLocId, InstrSeq, InstrSeqId, Visitor};
use walrus::{ConstExpr, ExportItem, FunctionId, LocalFunction, Module, ValType};

/// What a noting module exports for each point, before its number: 1 once the point was reached.
pub(super) const MARK: &str = "ran ";

/// Functions that stay whole, by what their names hold: which way they take hangs on what was asked before, or on the very
/// numbers, and no list of answers takes every way.
const WHOLE: [&str; 7] =
    ["dlmalloc", "__rdl_", "__rust_", "__wbindgen_", "raw_vec", "hashbrown", "slice::sort"];

/// A place in a function: a sequence of instructions, and how far into it.
type Point = (InstrSeqId, usize);

/// Makes a module note which points it reaches.
pub(super) fn note(module: &mut Module) {
    let mut number = 0;
    for (id, points) in points_of(module) {
        let mut marks = Vec::with_capacity(points.len());
        for (seq, at) in points {
            let mark =
                module.globals.add_local(ValType::I32, true, false, ConstExpr::Value(ir::Value::I32(0)));
            module.exports.add(&format!("{MARK}{number}"), mark);
            marks.push((seq, at, mark));
            number += 1;
        }
        // From the end, so that what is put in moves no point that is still to come.
        marks.sort_by_key(|(_, at, _)| Reverse(*at));
        let function = module.funcs.get_mut(id).kind.unwrap_local_mut().builder_mut();
        for (seq, at, mark) in marks {
            let mut seq = function.instr_seq(seq);
            seq.instr_at(at, ir::GlobalSet { global: mark });
            seq.instr_at(at, ir::Const { value: ir::Value::I32(1) });
        }
    }
}

/// Ends every sequence with a trap at its first point that was not reached, and exports no function that never ran.
pub(super) fn keep_what_ran(module: &mut Module, ran: &BTreeSet<usize>) -> Result<()> {
    let mut number = 0;
    let mut never = HashSet::new();
    for (id, points) in points_of(module) {
        let is_whole = stays_whole(module.funcs.get(id).name.as_deref());
        if !is_whole && !ran.contains(&number) {
            never.insert(id);
        }
        let function = module.funcs.get_mut(id);
        let name = function.name.clone().unwrap_or_default();
        let is_whole = WHOLE.iter().any(|part| name.contains(part));
        let function = function.kind.unwrap_local_mut();
        for (seq, at) in points {
            if !is_whole && !ran.contains(&number) {
                end(&mut function.block_mut(seq).instrs, at);
            }
            number += 1;
        }
    }
    let is_never = |item: &ExportItem| matches!(item, ExportItem::Function(id) if never.contains(id));
    let exports: Vec<_> =
        module.exports.iter().filter(|it| is_never(&it.item)).map(walrus::Export::id).collect();
    exports.into_iter().for_each(|id| module.exports.delete(id));
    walrus::passes::gc::run(module);
    Ok(())
}

/// Whether a function is the allocator's: which way it takes hangs on all that was asked before, in whatever order.
fn stays_whole(name: Option<&str>) -> bool {
    name.is_some_and(|name| ["dlmalloc", "__rdl_"].iter().any(|part| name.contains(part)))
}

fn end(instrs: &mut Vec<(Instr, InstrLocId)>, at: usize) {
    if at <= instrs.len() {
        instrs.truncate(at);
        instrs.push((ir::Unreachable {}.into(), InstrLocId::default()));
    }
}

/// The points of every function, in the order of the module: the same in each copy of it.
fn points_of(module: &Module) -> Vec<(FunctionId, Vec<Point>)> {
    module.funcs.iter_local().map(|(id, function)| (id, points(function))).collect()
}

/// Where a function may take another way: the start of each sequence, and behind whatever need not come back.
fn points(function: &LocalFunction) -> Vec<Point> {
    struct Points(Vec<Point>);
    impl Visitor<'_> for Points {
        fn start_instr_seq(&mut self, seq: &InstrSeq) {
            self.0.push((seq.id(), 0));
            for (at, (instr, _)) in seq.instrs.iter().enumerate() {
                if matches!(instr, Instr::BrIf(_) | Instr::Block(_) | Instr::Loop(_) | Instr::IfElse(_)) {
                    self.0.push((seq.id(), at + 1));
                }
            }
        }
    }
    let mut points = Points(Vec::new());
    ir::dfs_in_order(&mut points, function, function.entry_block());
    points.0
}
