//! `serve`: builds the page, serves it on this computer only, and builds again when a source changes.

use crate::page::{self, Kind};
use crate::tree::{self, Tree};
use anyhow::{Result, bail};
use std::time::{Duration, Instant, SystemTime};
use tiny_http::{Header, Response, Server};

const FIRST_PORT: u16 = 8046;

/// Serves until it is stopped.
pub fn serve(tree: &Tree) -> Result<()> {
    let (server, port) = listen()?;
    let mut shown = Shown { html: String::new(), build: 0 };
    let mut seen = None;
    loop {
        let newest = newest(tree)?;
        if seen != Some(newest) {
            seen = Some(newest);
            match shown.build {
                0 => println!("building the page: the first time some minutes …"),
                _ => println!("building …"),
            }
            let begun = Instant::now();
            match page::page(tree, Kind::Served, false) {
                Ok(html) => {
                    shown = Shown { html, build: shown.build + 1 };
                    let took_s = begun.elapsed().as_secs();
                    println!("ready after {took_s} s: http://localhost:{port}/  (Ctrl+C ends it)");
                }
                // The page of before stays; the next change tries again.
                Err(error) => eprintln!("{error:#}\nnot built: the next change tries again (Ctrl+C ends it)"),
            }
        }
        if let Some(request) = server.recv_timeout(Duration::from_millis(400))? {
            answer(request, &shown)?;
        }
    }
}

struct Shown {
    html: String,
    build: u32,
}

fn listen() -> Result<(Server, u16)> {
    for port in FIRST_PORT..FIRST_PORT + 20 {
        if let Ok(server) = Server::http(("127.0.0.1", port)) {
            return Ok((server, port));
        }
    }
    bail!("ports {FIRST_PORT} to {} are all in use", FIRST_PORT + 19);
}

fn answer(request: tiny_http::Request, shown: &Shown) -> Result<()> {
    let (body, kind, status) = match request.url() {
        "/" => (shown.html.clone(), "text/html; charset=utf-8", 200),
        "/build" => (shown.build.to_string(), "text/plain; charset=utf-8", 200),
        _ => ("nothing here\n".to_owned(), "text/plain; charset=utf-8", 404),
    };
    let mut response = Response::from_string(body).with_status_code(status);
    for (name, value) in [("Content-Type", kind), ("Cache-Control", "no-store")] {
        if let Ok(header) = Header::from_bytes(name, value) {
            response.add_header(header);
        }
    }
    // A browser that went away is no fault of ours.
    let _ = request.respond(response);
    Ok(())
}

/// Time of the newest source.
fn newest(tree: &Tree) -> Result<SystemTime> {
    let mut newest = SystemTime::UNIX_EPOCH;
    for folder in ["crates", "web", "static-data"] {
        for file in tree::files_below(&tree.root.join(folder))? {
            if let Ok(time) = std::fs::metadata(&file).and_then(|m| m.modified()) {
                newest = newest.max(time);
            }
        }
    }
    Ok(newest)
}
