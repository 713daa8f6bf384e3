//! Makes a case for `tests/links`: `cargo run -p straight-answer --example make_link -- 'WHAT IT SHOWS' < request.json`.
//!
//! A request with a plan makes one for `tests/links/plans`, with the order and the looks that it must have forever.
//! Such a file is written once and never made anew: it is there to fail when old links no longer open.

use reading::link::{PackRequest, PlanToShare};
use serde_json::{Value, json};
use straight_answer::whole::{pack, pack_plan, unpack, unpack_plan};
use telling::plan::plan;
use text::Voice;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let shows = std::env::args().nth(1).ok_or("say what the link shows")?;
    let request: Value = serde_json::from_reader(std::io::stdin())?;
    let case = if request.get("plan").is_some() { plan_case(request)? } else { session_case(request)? };
    let mut case = case;
    case["shows"] = shows.into();
    println!("{}", serde_json::to_string_pretty(&case)?);
    Ok(())
}

fn session_case(request: Value) -> Result<Value, Box<dyn std::error::Error>> {
    let request: PackRequest = serde_json::from_value(request)?;
    let link = pack(&request, &Voice::english()).map_err(|refusal| refusal.message)?;
    let holds = unpack(&link, &Voice::english()).map_err(|refusal| refusal.message)?;
    Ok(json!({ "link": link, "holds": holds }))
}

fn plan_case(request: Value) -> Result<Value, Box<dyn std::error::Error>> {
    let request: PlanToShare = serde_json::from_value(request)?;
    let link = pack_plan(&request, &Voice::english()).map_err(|refusal| refusal.message)?;
    let holds = unpack_plan(&link, &Voice::english()).map_err(|refusal| refusal.message)?;
    let made = plan(&holds.plan, &Voice::english()).map_err(|refusal| refusal.message)?;
    let order: Vec<usize> = made.facts.turns.iter().map(|turn| turn.build).collect();
    let looks: Vec<u32> = made.facts.looks.iter().map(|look| look.after_round).collect();
    Ok(json!({ "link": link, "holds": holds, "order": order, "looks": looks }))
}
