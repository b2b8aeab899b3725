//! Precision from readings taken twice, going down and coming up.

use crate::analysis::Pairs;
use crate::slack::more_than;

/// Standard deviation taken for a reading when nothing was read twice, °C.
pub const UNTESTED_C: f64 = 0.1;
/// With fewer pairs than this, s is taken as at least [`UNTESTED_C`].
pub const ENOUGH_PAIRS: usize = 5;
/// Repeatability limit over s: √2 times 1.959964, within which 95 % of a normal distribution lie.
const REPEATABILITY: f64 = 2.771_807_648_699_632;
/// With fewer pairs than this nothing is called systematic.
pub const ENOUGH_FOR_SYSTEMATIC: usize = 4;
/// A pair further apart than this deserves another reading, °C, before the allowance for the slope.
pub const REPEAT_C: f64 = 0.5;
/// Metres a swinging cable may move a mark: the slope times this is allowed on top of [`REPEAT_C`].
pub const CABLE_WOBBLE_M: f64 = 0.1;
/// The last decimal place taken seriously at most, °C.
const COARSEST_DIGIT_C: f64 = 10.0;

/// Agreement of pairs: s = √(Σd²/2n), the pooled within-pair standard deviation of one reading \[°C\].
///
/// * `differences_c`: d = down − up, one a depth \[°C\]
/// * `digit_c`: last decimal place written \[°C\], 0 if unknown
///
/// No pair: no s. Two legs differ *systematically* when |mean d| > 2 s_d/√n with n ≥ 4 (s_d the ordinary standard
/// deviation of the d's): lag, drift or time rather than noise. For ranges s is floored at digit/√12, at 0.1 °C with
/// fewer than five pairs, and is 0.1 °C without any (conventions of ours).
///
/// Sources: [`Duplicates`](crate::bibliography::Duplicates), [`Gum`](crate::bibliography::Gum) for digit/√12,
/// [`Iso5725`](crate::bibliography::Iso5725) for the repeatability limit.
///
/// ```
/// use layercast_core::cast::pairs::pairs;
/// let got = pairs(&[-0.2, 0.2, 0.0, -0.4, 0.1], 0.1);
/// assert!((got.s_c.unwrap() - 0.158_114).abs() < 1e-6);
/// assert_eq!(pairs(&[], 0.1).s_used_c, 0.1);
/// ```
pub fn pairs(differences_c: &[f64], digit_c: f64) -> Pairs {
    let count = differences_c.len();
    let n = count as f64;
    let mean =
        |f: &dyn Fn(f64) -> f64| (count > 0).then(|| differences_c.iter().map(|d| f(*d)).sum::<f64>() / n);
    let s_c = mean(&|d| d * d / 2.0).map(f64::sqrt);
    let mean_c = mean(&|d| d);
    let sd_c = mean_c.filter(|_| count > 1).map(|m| {
        let scatter = differences_c.iter().map(|d| (d - m) * (d - m)).sum::<f64>();
        (scatter / (n - 1.0)).sqrt()
    });
    let systematic = (mean_c.zip(sd_c))
        .is_some_and(|(m, sd)| count >= ENOUGH_FOR_SYSTEMATIC && more_than(m.abs(), 2.0 * sd / n.sqrt()));
    let digit = if digit_c.is_finite() { digit_c.clamp(0.0, COARSEST_DIGIT_C) } else { 0.0 };
    let s_or_untested = match s_c {
        Some(s) if count >= ENOUGH_PAIRS => s,
        Some(s) => s.max(UNTESTED_C),
        None => UNTESTED_C,
    };
    Pairs {
        count,
        s_c,
        mean_abs_c: mean(&f64::abs),
        mean_c,
        sd_c,
        repeatability_c: s_c.map(|s| REPEATABILITY * s),
        max_abs_c: differences_c.iter().map(|d| d.abs()).reduce(f64::max),
        systematic,
        s_used_c: s_or_untested.max(digit / 12_f64.sqrt()),
    }
}

/// s told from the mean of |d| \[°C\]: √π/2 = 0.886 of it (the mean range of two is 1.128 standard deviations). The same
/// thing as s by a road that one wild pair moves less.
///
/// Source: [`Snedecor1967`](crate::bibliography::Snedecor1967).
pub fn s_from_mean_range_c(mean_abs_c: f64) -> f64 {
    mean_abs_c * 0.886_226_925_452_758
}

/// Whether a pair is far enough apart to be read again: beyond 0.5 °C, and beyond what a cable that swings by 0.1 m
/// explains where the water changes by `slope_c_per_m` \[°C/m\].
///
/// A convention of ours on published field limits, see [`UsgsField`](crate::bibliography::UsgsField).
pub fn read_again(difference_c: f64, slope_c_per_m: f64) -> bool {
    more_than(difference_c.abs(), REPEAT_C + slope_c_per_m.abs() * CABLE_WOBBLE_M)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check_used(differences_c: &[f64], digit_c: f64, want_c: f64) {
        let got = pairs(differences_c, digit_c).s_used_c;
        assert!((got - want_c).abs() < 1e-12, "{got}");
    }

    #[test]
    fn what_stands_for_s_in_ranges() {
        check_used(&[], 0.0, 0.1);
        check_used(&[], 5.0 / 9.0, 5.0 / 9.0 / 12_f64.sqrt());
        check_used(&[0.0; 4], 0.1, 0.1);
        check_used(&[0.0; 5], 0.1, 0.1 / 12_f64.sqrt());
        check_used(&[0.0; 5], 0.0, 0.0);
        check_used(&[0.4; 5], 0.1, 0.4 / 2_f64.sqrt());
        check_used(&[0.0; 5], f64::NAN, 0.0);
        check_used(&[0.0; 5], -3.0, 0.0);
        check_used(&[0.0; 5], 1e308, 10.0 / 12_f64.sqrt());
    }

    #[test]
    fn a_lag_is_told_from_noise_only_with_four_pairs() {
        assert!(pairs(&[0.3, 0.4, 0.3, 0.4], 0.1).systematic);
        assert!(!pairs(&[0.3, 0.4, 0.3], 0.1).systematic);
        assert!(!pairs(&[0.3, -0.4, 0.3, -0.4], 0.1).systematic);
        assert!(pairs(&[0.2; 4], 0.1).systematic, "all alike: no noise explains it");
        assert!(!pairs(&[0.0; 4], 0.1).systematic);
    }

    #[test]
    fn a_steep_stretch_excuses_a_swinging_cable() {
        assert!(!read_again(0.5, 0.0) && read_again(0.6, 0.0));
        assert!(!read_again(0.9, 5.0) && read_again(-1.1, -5.0));
    }

    #[test]
    fn adding_one_offset_to_a_leg_moves_the_mean_only() {
        let noise = [0.1, -0.2, 0.0, 0.1, -0.1];
        let shifted = noise.map(|d| d + 0.5);
        let (a, b) = (pairs(&noise, 0.1), pairs(&shifted, 0.1));
        assert!((b.mean_c.unwrap() - a.mean_c.unwrap() - 0.5).abs() < 1e-12);
        assert!(!a.systematic && b.systematic);
    }
}
