//! A small static server for the finished site: this machine only, GET and HEAD only.
//!
//! It is for looking and for the browser tests. Any static host serves `dist/` as well.

use crate::build;
use crate::shell::root;
use anyhow::{Context, Result, bail};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::time::Duration;

/// Tried first; when it is taken, the ones after it, then any.
const PORT: u16 = 8460;
const LONGEST_REQUEST: u64 = 16 * 1024;

/// Builds the site and serves it until stopped.
pub(crate) fn serve(options: &[&str]) -> Result<()> {
    let listener = match options {
        [] => listen()?,
        ["--port", port] => {
            let port: u16 = port.parse().with_context(|| format!("`{port}` is no port"))?;
            TcpListener::bind((Ipv4Addr::LOCALHOST, port)).with_context(|| format!("port {port}"))?
        }
        other => bail!("serve takes `--port N`, not `{}`", other.join(" ")),
    };
    build::site()?;
    let port = listener.local_addr()?.port();
    println!("\nStraight Answer is at   http://localhost:{port}/#example=fair\nStop it with Ctrl-C.");
    answer_all(&listener, &Site::new(root().join("dist"), "/")?);
    Ok(())
}

/// Serves `dist/` under a sub-path in the background, for tests, until the program ends; returns the address.
pub(crate) fn in_background(sub_path: &'static str) -> Result<String> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
    let address = format!("http://localhost:{}{sub_path}", listener.local_addr()?.port());
    let site = Site::new(root().join("dist"), sub_path)?;
    std::thread::spawn(move || answer_all(&listener, &site));
    Ok(address)
}

fn listen() -> Result<TcpListener> {
    (PORT..PORT + 20)
        .chain([0])
        .find_map(|port| TcpListener::bind((Ipv4Addr::LOCALHOST, port)).ok())
        .context("no port on this machine is free")
}

fn answer_all(listener: &TcpListener, site: &Site) {
    std::thread::scope(|scope| {
        for stream in listener.incoming().flatten() {
            // A visitor that hangs up early is no error of ours.
            scope.spawn(move || answer(stream, site).ok());
        }
    });
}

/// A folder and the path it is served under.
#[derive(Debug)]
struct Site {
    folder: PathBuf,
    sub_path: &'static str,
}

/// What a request gets.
#[derive(Debug, PartialEq, Eq)]
enum Reply {
    File(PathBuf),
    NotFound,
    NotAllowed,
}

impl Site {
    fn new(folder: PathBuf, sub_path: &'static str) -> Result<Self> {
        Ok(Self { folder: folder.canonicalize().context("dist/ is not built")?, sub_path })
    }

    /// What the first line of a request asks for.
    fn reply(&self, request_line: &str) -> Reply {
        let mut words = request_line.split_ascii_whitespace();
        let (Some("GET" | "HEAD"), Some(target)) = (words.next(), words.next()) else {
            return Reply::NotAllowed;
        };
        let path = target.split(['?', '#']).next().unwrap_or_default();
        let Some(path) = path.strip_prefix(self.sub_path) else { return Reply::NotFound };
        let Some(path) = percent_decoded(path) else { return Reply::NotFound };
        let inside = Path::new(&path).components().all(|part| matches!(part, Component::Normal(_)));
        let mut file = self.folder.join(&path);
        if path.is_empty() || path.ends_with('/') {
            file.push("index.html");
        }
        // Links are followed before the second look: nothing outside the folder leaves it.
        match file.canonicalize() {
            Ok(file) if inside && file.is_file() && file.starts_with(&self.folder) => Reply::File(file),
            _ => Reply::NotFound,
        }
    }
}

fn answer(stream: TcpStream, site: &Site) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(10)))?;
    let mut request = BufReader::new(stream.try_clone()?);
    // One after the other on one connection, until the visitor hangs up or says nothing.
    while answer_one(&mut request, &stream, site)? {}
    Ok(())
}

/// Answers one request; whether there was one.
fn answer_one(from: &mut impl BufRead, mut stream: &TcpStream, site: &Site) -> std::io::Result<bool> {
    let mut request = from.take(LONGEST_REQUEST);
    let mut request_line = String::new();
    if request.read_line(&mut request_line)? == 0 {
        return Ok(false);
    }
    let (mut header, mut accepted) = (String::new(), String::new());
    while request.read_line(&mut header)? > 2 {
        header.make_ascii_lowercase();
        if let Some(encodings) = header.strip_prefix("accept-encoding:") {
            encodings.clone_into(&mut accepted);
        }
        header.clear();
    }
    let (status, kind, encoding, body) = match site.reply(&request_line) {
        Reply::File(file) => {
            let (encoding, smaller) = compressed(&file, &accepted);
            ("200 OK", media_type(&file), encoding, std::fs::read(smaller)?)
        }
        Reply::NotFound => ("404 Not Found", "text/plain; charset=utf-8", "", b"not here\n".to_vec()),
        Reply::NotAllowed => {
            ("405 Method Not Allowed", "text/plain; charset=utf-8", "", b"GET and HEAD only\n".to_vec())
        }
    };
    write!(
        stream,
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {}\r\nCache-Control: no-cache\r\n\
         {encoding}Vary: Accept-Encoding\r\nX-Content-Type-Options: nosniff\r\n\r\n",
        body.len()
    )?;
    if !request_line.starts_with("HEAD") {
        stream.write_all(&body)?;
    }
    stream.flush()?;
    Ok(true)
}

/// What lies compressed beside a file and is accepted, and the header that says so; else the file itself.
fn compressed(file: &Path, accepted: &str) -> (&'static str, PathBuf) {
    for (name, ending, header) in
        [("br", "br", "Content-Encoding: br\r\n"), ("gzip", "gz", "Content-Encoding: gzip\r\n")]
    {
        let beside = PathBuf::from(format!("{}.{ending}", file.display()));
        if accepted.split(',').any(|one| one.trim() == name) && beside.is_file() {
            return (header, beside);
        }
    }
    ("", file.to_owned())
}

fn media_type(file: &Path) -> &'static str {
    match file.extension().and_then(|ending| ending.to_str()).unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "json" | "map" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "ico" => "image/x-icon",
        "csv" => "text/csv; charset=utf-8",
        "txt" | "md" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// `None` for anything that is not valid percent-encoded UTF-8.
fn percent_decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        if byte != b'%' {
            bytes.push(byte);
            continue;
        }
        let digits = [rest.next()?, rest.next()?];
        bytes.push(u8::from_str_radix(std::str::from_utf8(&digits).ok()?, 16).ok()?);
    }
    String::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn site(sub_path: &'static str) -> Site {
        Site::new(Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), sub_path).unwrap()
    }

    #[test]
    fn a_file_inside_the_folder_is_served_and_nothing_else() {
        let site = site("/club/");
        let file = site.folder.join("serve.rs");
        assert_eq!(site.reply("GET /club/serve.rs?x=1 HTTP/1.1"), Reply::File(file.clone()));
        assert_eq!(site.reply("HEAD /club/ser%76e.rs HTTP/1.1"), Reply::File(file));
        for outside in [
            "/serve.rs",
            "/club/",
            "/club/../Cargo.toml",
            "/club/%2e%2e/Cargo.toml",
            "/club//etc/passwd",
            "/club/%",
        ] {
            assert_eq!(site.reply(&format!("GET {outside} HTTP/1.1")), Reply::NotFound, "{outside}");
        }
        assert_eq!(site.reply("POST /club/serve.rs HTTP/1.1"), Reply::NotAllowed);
        assert_eq!(site.reply(""), Reply::NotAllowed);
    }

    #[test]
    fn what_lies_compressed_beside_a_file_is_sent_to_who_accepts_it() {
        let folder = std::env::temp_dir().join(format!("xtask-serve-{}", std::process::id()));
        std::fs::create_dir_all(&folder).unwrap();
        let file = |name: &str| folder.join(name);
        ["a.js", "a.js.gz", "a.js.br", "b.js"]
            .iter()
            .for_each(|name| std::fs::write(file(name), name).unwrap());
        let sent = |name: &str, accepted: &str| compressed(&file(name), accepted).1;
        assert_eq!(sent("a.js", "gzip, deflate, br"), file("a.js.br"));
        assert_eq!(sent("a.js", "gzip"), file("a.js.gz"));
        assert_eq!(sent("a.js", "brotli"), file("a.js"));
        assert_eq!(sent("b.js", "gzip, br"), file("b.js"));
        std::fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn wasm_has_the_media_type_that_streaming_compilation_needs() {
        assert_eq!(media_type(Path::new("a_bg.wasm")), "application/wasm");
    }
}
