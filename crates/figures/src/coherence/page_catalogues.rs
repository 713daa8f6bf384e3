//! The messages of the page's own catalogues, as those of the core are known by `text::traced`.

use crate::folder::root;
use anyhow::Result;
use std::fs;
use std::sync::OnceLock;
use text::traced::Message;

/// The room of every message of the page.
pub(crate) const ROOM: &str = "web";

/// Every message of the page's catalogues.
pub(crate) fn messages() -> &'static [Message] {
    static MESSAGES: OnceLock<Vec<Message>> = OnceLock::new();
    MESSAGES.get_or_init(|| catalogues().unwrap_or_default())
}

/// In English, which says every argument (`web/test/catalogues.test.ts` holds the others to it).
fn catalogues() -> Result<Vec<Message>> {
    let mut messages = Vec::new();
    for file in fs::read_dir(root().join("web/src/text/en"))? {
        let text: &'static str = Box::leak(fs::read_to_string(file?.path())?.into_boxed_str());
        let mut of_file: Vec<(&'static str, Vec<&'static str>)> = Vec::new();
        for line in text.lines().filter(|line| !line.starts_with('#')) {
            if let Some((id, _)) = line.split_once(" =").filter(|(id, _)| is_name(id)) {
                of_file.push((id, Vec::new()));
            }
            let Some((_, arguments)) = of_file.last_mut() else { continue };
            for after in line.split('$').skip(1) {
                let end = after.find(|c: char| !c.is_ascii_alphanumeric() && c != '_' && c != '-');
                let name = &after[..end.unwrap_or(after.len())];
                if !arguments.contains(&name) {
                    arguments.push(name);
                }
            }
        }
        messages.extend(of_file.into_iter().map(|(id, arguments)| Message {
            room: ROOM,
            id,
            arguments: Vec::leak(arguments),
        }));
    }
    Ok(messages)
}

fn is_name(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_alphabetic())
        && text.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_'))
}
