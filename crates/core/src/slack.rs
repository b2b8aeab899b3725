//! Comparisons with thresholds: inclusive, with room for the last bits of decimal numbers (15.2 − 15.0 is 0.19999…).

/// The slack of every comparison, in the unit of the numbers compared.
pub(crate) const SLACK: f64 = 1e-9;

/// `value` reaches `limit`.
pub(crate) fn at_least(value: f64, limit: f64) -> bool {
    value >= limit - SLACK
}

/// `value` stays at or below `limit`.
pub(crate) fn at_most(value: f64, limit: f64) -> bool {
    value <= limit + SLACK
}

/// `value` goes beyond `limit`; a value that only equals it does not.
pub(crate) fn more_than(value: f64, limit: f64) -> bool {
    value > limit + SLACK
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_bit_of_a_decimal_decides_nothing() {
        assert!(at_least(15.2 - 15.0, 0.2));
        assert!(at_most(0.1 + 0.2, 0.3));
        assert!(!more_than(0.1 + 0.2, 0.3));
        assert!(more_than(0.31, 0.3));
        assert!(!at_least(0.19, 0.2));
    }
}
