//! The files of folders, in the order of their names.

use crate::unread::Unread;
use std::fs;
use std::path::{Path, PathBuf};
use text::Voice;
use text::files as say;

/// Every file that a path names: itself, or what lies in it at any depth. What cannot be looked into is listed beside.
#[must_use]
pub fn walk(paths: &[PathBuf], voice: &Voice) -> (Vec<PathBuf>, Vec<Unread>) {
    let (mut files, mut unread) = (Vec::new(), Vec::new());
    paths.iter().for_each(|path| one(path, true, &mut files, &mut unread, voice));
    (files, unread)
}

fn one(path: &Path, is_named: bool, files: &mut Vec<PathBuf>, unread: &mut Vec<Unread>, voice: &Voice) {
    let place = path.display().to_string();
    let is_link = fs::symlink_metadata(path).is_ok_and(|found| found.is_symlink());
    if !path.is_dir() {
        files.push(path.to_owned());
    } else if is_link && !is_named {
        // It may lead back to where it lies.
        let message = say::linked_folder(voice);
        unread.push(Unread::new(&place, "linked_folder", message, say::linked_folder_remedy(voice)));
    } else if let Ok(entries) = fs::read_dir(path) {
        let mut inside: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
        inside.sort();
        inside.iter().for_each(|path| one(path, false, files, unread, voice));
    } else {
        let message = say::cannot_open(voice);
        unread.push(Unread::new(&place, "cannot_open", message, say::cannot_open_remedy(voice)));
    }
}
