//! The script of the core without what the abridged core does not ask of its host.

use anyhow::{Result, bail};
use std::collections::HashSet;
use walrus::Module;

/// How wasm-bindgen begins and ends a function that it hands to the core.
const BEGINS: &str = "        __wb";
const ENDS: &str = "        },";

/// Leaves out every function that the module does not import.
pub(super) fn for_module(script: &str, module: &Module) -> Result<String> {
    let imported: HashSet<&str> = module.imports.iter().map(|import| import.name.as_str()).collect();
    let (mut kept, mut given) = (String::with_capacity(script.len()), 0);
    let mut is_left_out = false;
    for line in script.lines() {
        if let Some((name, _)) = line.split_once(": function(").filter(|_| line.starts_with(BEGINS)) {
            is_left_out = !imported.contains(name.trim());
            given += usize::from(!is_left_out);
        }
        if !is_left_out {
            kept.push_str(line);
            kept.push('\n');
        }
        is_left_out &= line != ENDS;
    }
    if given == 0 {
        bail!("the script hands the core its functions in a form that is not known here");
    }
    Ok(kept)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_imported_stays_and_the_rest_goes() {
        let script = "start\n        __wbg_used_1: function(a) {\n            return a;\n        },\n        __wbg_other_2: function() {\n            if (b) {\n            }\n        },\nend\n";
        let mut module = Module::default();
        let ty = module.types.add(&[], &[]);
        module.add_import_func("./core.js", "__wbg_used_1", ty);
        let kept = for_module(script, &module).unwrap();
        assert_eq!(
            kept,
            "start\n        __wbg_used_1: function(a) {\n            return a;\n        },\nend\n"
        );
        assert!(for_module("start\nend\n", &module).is_err());
    }
}
