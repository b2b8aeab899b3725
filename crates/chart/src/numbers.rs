//! Numbers as a reader writes them.

/// `value` with `decimals` places, the reader's decimal sign and a true minus; zero has no sign.
pub(crate) fn number(value: f64, decimals: usize, decimal: char) -> String {
    let mut text = format!("{:.decimals$}", value.abs());
    if decimal != '.' {
        text = text.replace('.', decimal.encode_utf8(&mut [0; 4]));
    }
    if value < 0.0 && text.bytes().any(|sign| (b'1'..=b'9').contains(&sign)) {
        text.insert(0, '−');
    }
    text
}

/// A depth to 0.1 m, or as the cable has it (1.25 m).
pub(crate) fn mark(depth_m: f64, decimal: char) -> String {
    let tenths = depth_m * 10.0;
    number(depth_m, if (tenths - tenths.round()).abs() > 1e-6 { 2 } else { 1 }, decimal)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_as_read() {
        let table = [
            (1.25, 1, '.', "1.2"),
            (-0.2, 1, '.', "−0.2"),
            (-0.04, 1, '.', "0.0"),
            (3.75, 2, ',', "3,75"),
            (12.0, 0, ',', "12"),
            (f64::NAN, 1, '.', "NaN"),
        ];
        for (value, decimals, decimal, text) in table {
            assert_eq!(number(value, decimals, decimal), text);
        }
    }

    #[test]
    fn marks_keep_what_the_cable_has() {
        assert_eq!(mark(2.5, '.'), "2.5");
        assert_eq!(mark(4.0, ','), "4,0");
        assert_eq!(mark(1.25, '.'), "1.25");
    }
}
