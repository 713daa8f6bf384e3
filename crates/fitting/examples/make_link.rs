//! Makes a case for `tests/links`: `cargo run -p fitting --example make_link -- 'WHAT IT SHOWS' < request.json`.
//!
//! Such a file is written once and never made anew: it is there to fail when old links no longer open.

use fitting::link::{PackRequest, pack, unpack};
use serde_json::json;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let shows = std::env::args().nth(1).ok_or("say what the link shows")?;
    let request: PackRequest = serde_json::from_reader(std::io::stdin())?;
    let link = pack(&request).map_err(|refusal| refusal.message)?;
    let holds = unpack(&link)?;
    println!("{}", serde_json::to_string_pretty(&json!({ "shows": shows, "link": link, "holds": holds }))?);
    Ok(())
}
