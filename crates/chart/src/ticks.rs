//! Choices of the axes, as pure functions.

/// What the axis of temperature spans, (left, right) in °C: room on both sides of the readings, at least 8 °C, and nothing
/// far below 0 °C, where there is no water. Without readings 0 to 30.
pub fn temperature_scale(coldest_c: f64, warmest_c: f64) -> (f64, f64) {
    const LEAST_C: f64 = 8.0;
    if !(coldest_c.is_finite() && warmest_c.is_finite() && coldest_c <= warmest_c) {
        return (0.0, 30.0);
    }
    let (low, high) = ((coldest_c - 0.5).floor(), warmest_c + 1.1);
    let missing = LEAST_C - (high - low);
    if missing <= 0.0 {
        return (low, high);
    }
    // Ice-cold water: the room goes to the warm side.
    let low = if low <= -1.0 { low } else { (low - missing / 2.0).floor().max(-1.0) };
    (low, low + LEAST_C.max((high - low).ceil()))
}

/// °C between two numbers of that axis: no closer than 37 u. On a narrow picture 4 is a step too, and 5 is not.
pub(crate) fn temperature_step(u_per_c: f64, narrow: bool) -> f64 {
    let steps: &[f64] = if narrow { &[1.0, 2.0, 4.0] } else { &[1.0, 2.0, 5.0] };
    coarse_enough(steps, u_per_c, 37.0)
}

/// Metres between two depth numbers: 0.5 from 100 u a metre on, 1 from 18, else 5, 10, 20, 50 …
pub(crate) fn depth_step(u_per_m: f64) -> f64 {
    if u_per_m > 100.0 {
        return 0.5;
    }
    if u_per_m >= 18.0 { 1.0 } else { coarse_enough(&[5.0, 10.0, 20.0], u_per_m, 18.0) }
}

/// The first of `steps`, or of ten times, a hundred times `steps` …, that is at least `least_u` long.
fn coarse_enough(steps: &[f64], u_per_one: f64, least_u: f64) -> f64 {
    let mut power = 1.0;
    while power < 1e300 {
        if let Some(step) = steps.iter().map(|step| step * power).find(|step| step * u_per_one >= least_u) {
            return step;
        }
        power *= 10.0;
    }
    f64::INFINITY
}

/// Upper end of the open strip's axis, °C per metre: a round number with a little room beside the longest bar. Where no
/// bar reaches 1 °C per metre the axis is not stretched for them, so that nothing looks steep.
pub fn strip_scale(longest_c_per_m: f64) -> f64 {
    if longest_c_per_m.is_nan() || longest_c_per_m < 1.0 {
        return 6.0;
    }
    let mut power = 1.0;
    while power < 1e300 {
        for end in [4.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 30.0] {
            if longest_c_per_m * 1.08 <= end * power {
                return end * power;
            }
        }
        power *= 10.0;
    }
    power
}

/// °C per metre between two numbers of the strip's axis: at most four steps, a divisor of the scale if there is one.
pub(crate) fn strip_step(scale_c_per_m: f64) -> f64 {
    let mut power = 1.0;
    while power < 1e300 {
        let steps = [1.0, 2.0, 4.0, 5.0].map(|step| step * power);
        let fits = |step: &f64| scale_c_per_m / step <= 4.0 + 1e-9;
        let divides = |step: &f64| (scale_c_per_m / step - (scale_c_per_m / step).round()).abs() < 1e-9;
        if let Some(step) = steps.into_iter().find(|step| fits(step) && divides(step)) {
            return step;
        }
        if let Some(step) = steps.into_iter().find(|step| fits(step) && *step * 2.0 >= scale_c_per_m / 2.0) {
            return step;
        }
        power *= 10.0;
    }
    f64::INFINITY
}

/// Multiples of `step` from `from` to `to`; never more than a thousand.
pub(crate) fn multiples(from: f64, to: f64, step: f64) -> impl Iterator<Item = f64> {
    let first = (from / step - 1e-9).ceil();
    let count = ((to / step + 1e-9).floor() - first + 1.0).clamp(0.0, 1000.0);
    let count = if count.is_finite() && step.is_finite() && step > 0.0 { count as u32 } else { 0 };
    // Adding zero turns −0 into 0.
    (0..count).map(move |place| (first + f64::from(place)) * step + 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_axis_of_temperature_leaves_room_and_spans_at_least_8() {
        let table = [
            ((8.9, 23.5), (8.0, 24.6), "summer"),
            ((14.1, 14.6), (10.0, 18.0), "mixed"),
            ((14.4, 17.6), (11.0, 19.0), "weak"),
            ((0.4, 4.3), (-1.0, 7.0), "under ice"),
            ((11.8, 13.2), (8.0, 16.0), "cooling"),
            ((-0.3, -0.3), (-1.0, 7.0), "one reading at the freezing point"),
            ((20.0, 20.0), (16.0, 24.0), "one reading"),
        ];
        for ((coldest, warmest), (low, high), name) in table {
            let scale = temperature_scale(coldest, warmest);
            assert!((scale.0 - low).abs() < 1e-9 && (scale.1 - high).abs() < 1e-9, "{name}: {scale:?}");
        }
    }

    #[test]
    fn every_reading_lies_inside_the_axis() {
        for tenths in -5..400 {
            for wide in 0..300 {
                let (coldest, warmest) = (f64::from(tenths) / 10.0, f64::from(tenths + wide) / 10.0);
                let (low, high) = temperature_scale(coldest, warmest);
                assert!(low < coldest && warmest < high && high - low >= 8.0 - 1e-9, "{coldest}..{warmest}");
            }
        }
    }

    #[test]
    fn no_axis_is_made_of_nonsense() {
        for (coldest, warmest) in
            [(f64::INFINITY, f64::NEG_INFINITY), (f64::NAN, 3.0), (3.0, f64::INFINITY), (5.0, 1.0)]
        {
            assert_eq!(temperature_scale(coldest, warmest), (0.0, 30.0));
        }
        assert_eq!(strip_scale(f64::NAN), 6.0);
        assert!(strip_scale(f64::INFINITY) >= 1e300);
        assert_eq!(multiples(0.0, f64::INFINITY, 1.0).count(), 1000);
        assert_eq!(multiples(f64::NAN, 3.0, 1.0).count(), 0);
        assert_eq!(multiples(0.0, 3.0, f64::INFINITY).count(), 0);
    }

    #[test]
    fn numbers_of_the_axes_keep_their_distance() {
        assert_eq!(temperature_step(22.7, false), 2.0);
        assert_eq!(temperature_step(47.0, false), 1.0);
        assert_eq!(temperature_step(14.3, true), 4.0);
        assert_eq!(temperature_step(9.0, false), 5.0);
        assert_eq!(temperature_step(1.0, false), 50.0);
        assert_eq!(temperature_step(0.0, false), f64::INFINITY);
        assert_eq!(depth_step(46.6), 1.0);
        assert_eq!(depth_step(201.0), 0.5);
        assert_eq!(depth_step(15.0), 5.0);
        assert_eq!(depth_step(2.0), 10.0);
    }

    #[test]
    fn the_open_strip_ends_on_a_round_number() {
        let table = [
            (5.0, 6.0),
            (1.6, 4.0),
            (3.0, 4.0),
            (6.8, 8.0),
            (0.9, 6.0),
            (0.0, 6.0),
            (9.0, 10.0),
            (35.0, 40.0),
        ];
        for (longest, end) in table {
            assert_eq!(strip_scale(longest), end, "{longest}");
        }
        let table = [
            (4.0, 1.0),
            (6.0, 2.0),
            (8.0, 2.0),
            (10.0, 5.0),
            (12.0, 4.0),
            (16.0, 4.0),
            (20.0, 5.0),
            (7.5, 2.0),
        ];
        for (scale, step) in table {
            assert_eq!(strip_step(scale), step, "{scale}");
        }
    }

    #[test]
    fn multiples_hold_both_ends() {
        assert_eq!(multiples(-1.0, 7.0, 2.0).collect::<Vec<_>>(), [0.0, 2.0, 4.0, 6.0]);
        assert_eq!(multiples(8.0, 24.6, 2.0).count(), 9);
        assert_eq!(multiples(0.0, 0.3, 0.1).count(), 4);
    }
}
