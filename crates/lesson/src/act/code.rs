//! The notebook's code: four signs of its own, with the group before them once it is named.

/// The code with the group's letter (or number of at most two signs) in front; without a group its own signs alone.
///
/// Of a longer name the last word counts ("group C"), and its first sign if the word is longer than two.
pub(super) fn of_group(code: &str, group: &str) -> String {
    let own = code.rsplit('-').next().unwrap_or(code);
    let word: Vec<char> = group
        .split_whitespace()
        .next_back()
        .unwrap_or_default()
        .chars()
        .filter(|c| c.is_alphanumeric())
        .collect();
    let letter: String =
        word.iter().take(if word.len() > 2 { 1 } else { 2 }).flat_map(|c| c.to_uppercase()).collect();
    if letter.is_empty() { own.to_owned() } else { format!("{letter}-{own}") }
}

#[cfg(test)]
mod tests {
    use super::of_group;

    #[test]
    fn the_code_begins_with_the_group() {
        for (code, group, expected) in [
            ("4T7K", "C", "C-4T7K"),
            ("4T7K", "c", "C-4T7K"),
            ("R-4T7K", "C", "C-4T7K"),
            ("C-4T7K", "", "4T7K"),
            ("C-4T7K", " - ", "4T7K"),
            ("4T7K", "group C", "C-4T7K"),
            ("4T7K", "12", "12-4T7K"),
            ("4T7K", "herons", "H-4T7K"),
            ("", "C", "C-"),
        ] {
            assert_eq!(of_group(code, group), expected, "{code} {group}");
        }
    }
}
