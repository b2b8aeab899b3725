//! One flag from several tests.

use crate::analysis::Flag;

/// The worst of several flags, in the order fail, suspect, pass, not evaluated, missing: a pass outranks a test that
/// could not be made. No flag at all is "not evaluated".
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016), as the library of
/// [`IoosQc`](crate::bibliography::IoosQc) combines them.
///
/// ```
/// use layercast_core::{Flag, cast::roll_up::roll_up};
/// assert_eq!(roll_up(&[Flag::NotEvaluated, Flag::Pass, Flag::Suspect]), Flag::Suspect);
/// assert_eq!(roll_up(&[Flag::Pass, Flag::Missing]), Flag::Pass);
/// ```
pub fn roll_up(flags: &[Flag]) -> Flag {
    [Flag::Fail, Flag::Suspect, Flag::Pass, Flag::NotEvaluated, Flag::Missing]
        .into_iter()
        .find(|flag| flags.contains(flag))
        .unwrap_or(Flag::NotEvaluated)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn worst_wins_and_a_pass_outranks_what_was_not_tested() {
        use Flag::{Fail, Missing, NotEvaluated, Pass, Suspect};
        assert_eq!(roll_up(&[Suspect, Fail, Pass]), Fail);
        assert_eq!(roll_up(&[NotEvaluated, Pass]), Pass);
        assert_eq!(roll_up(&[NotEvaluated, Missing]), NotEvaluated);
        assert_eq!(roll_up(&[Missing, Missing]), Missing);
        assert_eq!(roll_up(&[]), NotEvaluated);
    }
}
