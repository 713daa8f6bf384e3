//! Prints the TypeScript declarations of everything that crosses the boundary.
//!
//! Run by `cargo xtask types`, which keeps `crates/boundary/types.d.ts` equal to this output.

use judging::fitting::FittingSeen;
use judging::flying::FlightOf;
use judging::plan::{FollowRequest, PlanLimits};
use judging::second::SecondRequest;
use reading::link;
use session::plan::PlanRequest;
use session::refusal::Refusal;
use std::collections::BTreeMap;
use telling::{
    bet, cause, check, claim, consistency, feel, fitting, flying, landing, luck, measures, plan, potential,
    report, second, share, together, typical,
};
use ts_rs::{Config, TS, TypeVisitor};

/// Declarations by name, so that the output does not depend on the order of the visit.
struct Declarations {
    config: Config,
    found: BTreeMap<String, String>,
}

impl TypeVisitor for Declarations {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        // Only the crate's own types have a path to be exported to; strings and lists do not.
        if T::output_path().is_some() {
            let name = T::ident(&self.config);
            let docs = T::docs().unwrap_or_default();
            let declaration = indented(&format!("{docs}export {}", T::decl(&self.config)));
            if let Some(earlier) = self.found.get(&name) {
                assert_eq!(*earlier, declaration, "two types share the name {name}");
                return;
            }
            self.found.insert(name, declaration);
        }
        T::visit_dependencies(self);
        T::visit_generics(self);
    }
}

/// Members on lines of their own, indented; no blanks at line ends.
fn indented(declaration: &str) -> String {
    let mut text = String::new();
    let mut inside = false;
    for line in declaration.lines().map(str::trim_end) {
        let (line, last) = match line.strip_suffix(", };") {
            Some(member) if inside => (format!("{member},"), true),
            _ => (line.to_owned(), false),
        };
        text += if inside { "  " } else { "" };
        text += &line;
        text += if last { "\n};\n" } else { "\n" };
        inside = !last && (inside || line.ends_with('{'));
    }
    text
}

fn main() {
    let config = Config::default().with_large_int("number");
    let mut declarations = Declarations { config, found: BTreeMap::new() };
    declarations.visit::<measures::MeasureInWords>();
    declarations.visit::<reading::Hints>();
    declarations.visit::<reading::ReadResult>();
    declarations.visit::<check::CheckRequest>();
    declarations.visit::<Refusal>();
    declarations.visit::<report::Report>();
    declarations.visit::<bet::Bet>();
    declarations.visit::<typical::Typical>();
    declarations.visit::<luck::LuckRequest>();
    declarations.visit::<luck::Luck>();
    declarations.visit::<link::PackRequest>();
    declarations.visit::<link::Unpacked>();
    declarations.visit::<link::PlanToShare>();
    declarations.visit::<link::SharedPlan>();
    declarations.visit::<share::ShareRequest>();
    declarations.visit::<share::Shared>();
    declarations.visit::<flying::FlyRequest>();
    declarations.visit::<FlightOf>();
    declarations.visit::<flying::AirRequest>();
    declarations.visit::<flying::InStandardAir>();
    declarations.visit::<landing::LandingRequest>();
    declarations.visit::<landing::Landing>();
    declarations.visit::<cause::CauseRequest>();
    declarations.visit::<cause::Cause>();
    declarations.visit::<potential::PotentialRequest>();
    declarations.visit::<potential::Potential>();
    declarations.visit::<consistency::ConsistencyRequest>();
    declarations.visit::<consistency::Consistency>();
    declarations.visit::<SecondRequest>();
    declarations.visit::<second::Second>();
    declarations.visit::<PlanRequest>();
    declarations.visit::<PlanLimits>();
    declarations.visit::<plan::Plan>();
    declarations.visit::<FollowRequest>();
    declarations.visit::<plan::Progress>();
    declarations.visit::<claim::ClaimRequest>();
    declarations.visit::<claim::ClaimReport>();
    declarations.visit::<together::TogetherRequest>();
    declarations.visit::<together::TogetherPair>();
    declarations.visit::<feel::FeelRequest>();
    declarations.visit::<feel::Feel>();
    declarations.visit::<FittingSeen>();
    declarations.visit::<fitting::FittingReport>();
    println!("// Generated from the Rust structs by `cargo xtask types`. Do not edit.");
    for declaration in declarations.found.values() {
        print!("\n{declaration}");
    }
}
