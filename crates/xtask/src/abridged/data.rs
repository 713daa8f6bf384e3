//! The constant data of a core, and what of it an abridged core still refers to.
//!
//! Which address belongs to which constant, and which constant holds the address of another, the linker says
//! (`--emit-relocs`). What code refers to is found by the addresses in it.

use anyhow::{Context, Result};
use std::collections::{BTreeMap, BTreeSet, HashSet};
use walrus::ir::{self, Visitor};
use walrus::{ConstExpr, DataKind, Module};
use wasmparser::{
    DataKind as Placed, KnownCustom, Linking, Operator, Parser, Payload, RelocationEntry, RelocationType,
    SymbolInfo,
};

/// A piece of data under one name.
#[derive(Debug)]
struct Constant {
    start: u32,
    end: u32,
    /// The constants whose addresses it holds.
    refers_to: Vec<usize>,
}

/// Every constant of a linked core.
#[derive(Debug, Default)]
pub(super) struct Constants {
    all: Vec<Constant>,
    /// What an address may stand for: the constant it lies in or just behind, and one whose address the linker made it
    /// of, which may lie elsewhere. More rather than less: a number may look like an address.
    at: BTreeMap<u32, Vec<usize>>,
}

/// A segment of the data: where in the file it lies, and where in memory.
struct Segment {
    in_file: usize,
    address: u32,
    length: usize,
}

impl Constants {
    /// Of a core as the linker left it.
    pub(super) fn of(linked: &[u8]) -> Result<Self> {
        let file = File::parsed(linked)?;
        let mut constants = Self::default();
        let mut by_symbol = BTreeMap::new();
        for (symbol, (start, end)) in &file.symbols {
            let number = constants.all.len();
            by_symbol.insert(*symbol, number);
            constants.all.push(Constant { start: *start, end: *end, refers_to: Vec::new() });
            (*start..=*end).for_each(|address| constants.at.entry(address).or_default().push(number));
        }
        for (address, entry) in file.in_data()? {
            for holder in constants.at.get(&address).into_iter().flatten() {
                constants.all[*holder].refers_to.extend(by_symbol.get(&entry.index));
            }
        }
        for entry in &file.in_code {
            if let Some(&number) = by_symbol.get(&entry.index) {
                let address = i64::from(constants.all[number].start) + entry.addend;
                constants.at.entry(u32::try_from(address)?).or_default().push(number);
            }
        }
        Ok(constants)
    }

    /// Fills with zeros whatever a module cannot reach, and says how much that is.
    pub(super) fn clear_unreachable(&self, module: &mut Module) -> Result<usize> {
        let used = self.used_by(module);
        let addresses = |is_used: bool| {
            let some = self.all.iter().enumerate().filter(|(number, _)| used.contains(number) == is_used);
            some.flat_map(|(_, it)| it.start..it.end).collect::<HashSet<u32>>()
        };
        let (kept, unused) = (addresses(true), addresses(false));
        let mut cleared = 0;
        let segments: Vec<_> = module.data.iter().map(walrus::Data::id).collect();
        for id in segments {
            let data = module.data.get_mut(id);
            let DataKind::Active { offset: ConstExpr::Value(ir::Value::I32(start)), .. } = data.kind else {
                continue;
            };
            for (byte, address) in data.value.iter_mut().zip(u32::try_from(start)?..) {
                if *byte != 0 && unused.contains(&address) && !kept.contains(&address) {
                    *byte = 0;
                    cleared += 1;
                }
            }
        }
        Ok(cleared)
    }

    fn used_by(&self, module: &Module) -> BTreeSet<usize> {
        let mut addresses = Addresses::default();
        for (_, function) in module.funcs.iter_local() {
            ir::dfs_in_order(&mut addresses, function, function.entry_block());
        }
        let mut waiting: Vec<usize> =
            addresses.0.iter().filter_map(|it| self.at.get(it)).flatten().copied().collect();
        let mut used = BTreeSet::new();
        while let Some(number) = waiting.pop() {
            if used.insert(number) {
                waiting.extend(&self.all[number].refers_to);
            }
        }
        used
    }
}

/// Every number in code that may be an address.
#[derive(Default)]
struct Addresses(BTreeSet<u32>);

impl Visitor<'_> for Addresses {
    fn visit_const(&mut self, constant: &ir::Const) {
        if let ir::Value::I32(value) = constant.value {
            self.0.extend(u32::try_from(value));
        }
    }

    fn visit_load(&mut self, load: &ir::Load) {
        self.0.extend(u32::try_from(load.arg.offset));
    }

    fn visit_store(&mut self, store: &ir::Store) {
        self.0.extend(u32::try_from(store.arg.offset));
    }
}

/// What of a linked file is needed here.
#[derive(Default)]
struct File {
    segments: Vec<Segment>,
    /// Addresses of read-only symbols, by their index.
    symbols: BTreeMap<u32, (u32, u32)>,
    in_code: Vec<RelocationEntry>,
    in_data: Vec<RelocationEntry>,
    data_section: usize,
}

impl File {
    fn parsed(linked: &[u8]) -> Result<Self> {
        let mut file = Self::default();
        let (mut number, mut code, mut data) = (0, None, None);
        for payload in Parser::new(0).parse_all(linked) {
            match payload? {
                Payload::CodeSectionStart { .. } => {
                    code = Some(number);
                    number += 1;
                }
                Payload::DataSection(section) => {
                    data = Some(number);
                    number += 1;
                    file.data_section = section.range().start;
                    for segment in section {
                        file.segments.push(placed(&segment?, linked)?);
                    }
                }
                Payload::CustomSection(section) => {
                    number += 1;
                    match section.as_known() {
                        KnownCustom::Linking(linking) => {
                            for part in linking {
                                file.take(&part?)?;
                            }
                        }
                        KnownCustom::Reloc(relocations) => {
                            let of = Some(relocations.section_index());
                            let entries = relocations.entries().into_iter().collect::<Result<Vec<_>, _>>()?;
                            let entries = entries.into_iter().filter(|entry| is_address(entry.ty));
                            if of == code {
                                file.in_code.extend(entries);
                            } else if of == data {
                                file.in_data.extend(entries);
                            }
                        }
                        _ => {}
                    }
                }
                Payload::CodeSectionEntry(_) | Payload::Version { .. } | Payload::End(_) => {}
                _ => number += 1,
            }
        }
        Ok(file)
    }

    /// The symbols that lie in a read-only segment.
    fn take(&mut self, part: &Linking<'_>) -> Result<()> {
        let Linking::SymbolTable(symbols) = part else { return Ok(()) };
        for (index, symbol) in symbols.clone().into_iter().enumerate() {
            if let SymbolInfo::Data { symbol: Some(symbol), .. } = symbol? {
                let segment =
                    self.segments.get(symbol.index as usize).context("a symbol without its segment")?;
                let start = segment.address + symbol.offset;
                self.symbols.insert(u32::try_from(index)?, (start, start + symbol.size));
            }
        }
        Ok(())
    }

    /// The addresses in the data, with where in memory they stand.
    fn in_data(&self) -> Result<Vec<(u32, RelocationEntry)>> {
        let placed = |entry: &RelocationEntry| {
            let at = self.data_section + entry.offset as usize;
            let segment =
                self.segments.iter().find(|it| (it.in_file..it.in_file + it.length).contains(&at))?;
            Some((segment.address + u32::try_from(at - segment.in_file).ok()?, *entry))
        };
        self.in_data.iter().map(|entry| placed(entry).context("an address outside of the data")).collect()
    }
}

fn is_address(kind: RelocationType) -> bool {
    matches!(
        kind,
        RelocationType::MemoryAddrLeb | RelocationType::MemoryAddrSleb | RelocationType::MemoryAddrI32
    )
}

fn placed(segment: &wasmparser::Data<'_>, file: &[u8]) -> Result<Segment> {
    let Placed::Active { offset_expr, .. } = &segment.kind else {
        anyhow::bail!("data that is placed later")
    };
    let Operator::I32Const { value } = offset_expr.get_operators_reader().read()? else {
        anyhow::bail!("data without an address of its own")
    };
    let in_file = segment.data.as_ptr() as usize - file.as_ptr() as usize;
    Ok(Segment { in_file, address: u32::try_from(value)?, length: segment.data.len() })
}
