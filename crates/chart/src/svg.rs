//! The picture as an SVG document of its own, for saving.

use plotters::backend::SVGBackend;

use crate::picture::{Picture, Placement, Size, Surface, Words};
use crate::{DrawError, Theme, draw, profile};

/// Steps of a CSS pixel in a saved picture: lines of 1.25 and 1.5 px keep their weight.
const SCALE: f64 = 4.0;

/// Draws the picture as an SVG document with a title; `size.scale` is not used.
///
/// Its texts stay texts, in the families of [`crate::fonts`] with their weights.
pub fn svg(
    picture: &Picture,
    theme: Theme,
    size: Size,
    words: &Words,
    title: &str,
) -> Result<(String, Placement), DrawError> {
    as_svg(size, title, |backend, size| draw(backend, picture, theme, size, words, Surface::Svg))
}

/// Draws any picture as an SVG document with a title, by what draws it on a backend, as [`svg`] does the profile.
pub fn as_svg<T>(
    size: Size,
    title: &str,
    draw: impl FnOnce(SVGBackend, Size) -> Result<T, DrawError>,
) -> Result<(String, T), DrawError> {
    let size = profile::sane(Size { scale: SCALE, ..size });
    let device = |css: f64| (css * SCALE).round() as u32;
    let mut raw = String::new();
    let backend = SVGBackend::with_string(&mut raw, (device(size.width_px), device(size.height_px)));
    let placement = draw(backend, size)?;
    Ok((finish(&raw, title), placement))
}

/// Makes the backend's document fit to be saved: its size in CSS pixels, a role and a title, real weights instead of
/// alias families, no digits beyond the third.
fn finish(raw: &str, title: &str) -> String {
    let mut out = String::with_capacity(raw.len());
    let (head, body) = raw.split_once('>').unwrap_or(("", raw));
    let side = |name: &str| attribute(head, name).and_then(|text| text.parse::<f64>().ok()).unwrap_or(0.0);
    let (width, height) = (side(" width"), side(" height"));
    out.push_str(&format!(
        "<svg width=\"{}\" height=\"{}\" viewBox=\"0 0 {width} {height}\" role=\"img\" \
         xmlns=\"http://www.w3.org/2000/svg\">\n<title>",
        width / SCALE,
        height / SCALE
    ));
    escape(&mut out, title);
    out.push_str("</title>");
    let mut rest = body;
    // Attribute by attribute: a quote cannot stand in a text, there it is an entity.
    while let Some((before, after)) = rest.split_once("=\"") {
        let Some((value, after)) = after.split_once('"') else { break };
        let name = before.rsplit([' ', '\n']).next().unwrap_or("");
        let kept = before.get(..before.len() - name.len()).unwrap_or("");
        out.push_str(kept);
        push_attribute(&mut out, name, value);
        rest = after;
    }
    out.push_str(rest);
    out
}

fn push_attribute(out: &mut String, name: &str, value: &str) {
    match (name, value) {
        // What an attribute means when it is not there.
        ("opacity", "1") | ("text-anchor", "start") | ("stroke", "none") => {
            out.truncate(out.trim_end_matches(' ').len());
        }
        ("font-family", _) => {
            let (families, weight) = real_family(value);
            out.push_str(&format!("font-family=\"{families}\" font-weight=\"{weight}\""));
        }
        ("points", _) => out.push_str(&format!("points=\"{}\"", value.trim_end())),
        _ => {
            out.push_str(name);
            out.push_str("=\"");
            match value.parse::<f64>() {
                Ok(number) if value.contains('.') => {
                    out.push_str(&format!("{}", (number * 1000.0).round() / 1000.0))
                }
                _ => out.push_str(value),
            }
            out.push('"');
        }
    }
}

/// The font's own name and its weight for a list that begins with an alias.
fn real_family(aliases: &str) -> (&'static str, &'static str) {
    use crate::fonts::{PLEX_SANS_500, PLEX_SANS_600, PLEX_SANS_700, SOURCE_SERIF, SOURCE_SERIF_600};
    const SANS: &str = "'Plex Sans', system-ui, sans-serif";
    let begins = |name: &str| aliases.starts_with(&format!("&apos;{name}&apos;"));
    match aliases {
        _ if begins(SOURCE_SERIF_600) => ("'Source Serif', Georgia, serif", "600"),
        _ if begins(SOURCE_SERIF) => ("'Source Serif', Georgia, serif", "400"),
        _ if begins(PLEX_SANS_500) => (SANS, "500"),
        _ if begins(PLEX_SANS_600) => (SANS, "600"),
        _ if begins(PLEX_SANS_700) => (SANS, "700"),
        _ => (SANS, "400"),
    }
}

fn attribute<'a>(head: &'a str, name: &str) -> Option<&'a str> {
    let (_, after) = head.split_once(&format!("{name}=\""))?;
    after.split_once('"').map(|(value, _)| value)
}

pub(crate) fn escape(out: &mut String, text: &str) {
    for sign in text.chars() {
        match sign {
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '&' => out.push_str("&amp;"),
            // Not allowed in a document, even as entities.
            sign if sign.is_control() && !matches!(sign, '\n' | '\t') => {}
            sign => out.push(sign),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_raw_document_is_made_fit_to_save() {
        let raw = "<svg width=\"400\" height=\"80\" viewBox=\"0 0 400 80\" xmlns=\"http://www.w3.org/2000/svg\">\n\
                   <rect x=\"0\" y=\"0\" width=\"400\" height=\"80\" opacity=\"1\" fill=\"#FFFFFF\" stroke=\"none\"/>\n\
                   <text x=\"1\" y=\"2\" dy=\"0.76em\" text-anchor=\"start\" \
                   font-family=\"&apos;Plex Sans 600&apos;, &apos;Plex Sans&apos;, system-ui, sans-serif\" \
                   font-size=\"52.00000000000001\" opacity=\"1\" fill=\"#12232C\">\na=&quot;b\n</text>\n</svg>\n";
        let expected = "<svg width=\"100\" height=\"20\" viewBox=\"0 0 400 80\" role=\"img\" \
                        xmlns=\"http://www.w3.org/2000/svg\">\n<title>Pond &lt;C&gt; &amp; more</title>\n\
                        <rect x=\"0\" y=\"0\" width=\"400\" height=\"80\" fill=\"#FFFFFF\"/>\n\
                        <text x=\"1\" y=\"2\" dy=\"0.76em\" \
                        font-family=\"'Plex Sans', system-ui, sans-serif\" font-weight=\"600\" font-size=\"52\" \
                        fill=\"#12232C\">\na=&quot;b\n</text>\n</svg>\n";
        assert_eq!(finish(raw, "Pond <C> & more"), expected);
    }

    #[test]
    fn nothing_is_made_of_nothing() {
        assert!(finish("", "").starts_with("<svg "));
        assert!(finish("<svg width=\"", "").contains("<title></title>"));
    }
}
