//! Two casts of one place: what differs, and whether these readings can show it.

use super::look::{Read, shared_m};
use crate::numbers::{Range, WithNum, computed, rounded};
use crate::view::Num;
use layercast_core::compare::extra_heat_j_m2;
use layercast_core::stability::whole::HEAT_J_M3_K;
use layercast_core::{Level, Message, Thermocline};

/// What a field thermometer may be off, °C, where nobody checked it.
///
/// Source: USGS memorandum 79.16 (1979), read: within ±0.5 °C at two points, ice water and room water.
const PROBE_C: f64 = 0.5;
/// Least depth over which heat is compared, metres (our choice).
const LEAST_HEAT_M: f64 = 1.0;

/// Two probes of [`PROBE_C`], independent of each other, °C.
fn two_probes_c() -> f64 {
    libm::sqrt(2.0) * PROBE_C
}

/// What is to be said of two casts, the earlier one first.
pub(super) fn said(earlier: &Read, later: &Read, days_apart: u16) -> Vec<Message> {
    let season = Message::new("years-pair-season").count("days", usize::from(days_apart));
    let mut lines = vec![season, thermocline(earlier, later)];
    lines.extend(heat(earlier, later));
    lines
}

fn thermocline(earlier: &Read, later: &Read) -> Message {
    let (a, b) = match (earlier.found(), later.found()) {
        (Some(a), Some(b)) => (a, b),
        (None, None) => return Message::new("years-pair-none"),
        _ => return Message::new("years-pair-one"),
    };
    let range = |found: &Thermocline| Range::of_marks(found.span_top_m, found.span_bottom_m);
    let told = |id: &'static str| {
        Message::new(id).message("earlier", range(a).said()).message("later", range(b).said())
    };
    let meet = a.span_top_m.max(b.span_top_m) <= a.span_bottom_m.min(b.span_bottom_m) + 1e-9;
    if meet {
        // Ranges as wide as these no longer meet when their middles are this far apart.
        let smallest_m = (a.span_bottom_m - a.span_top_m + b.span_bottom_m - b.span_top_m) / 2.0;
        return told("years-pair-same").num("smallest", computed(smallest_m));
    }
    let deeper = b.value_m > a.value_m;
    let by = computed((b.value_m - a.value_m).abs());
    told(if deeper { "years-pair-deeper" } else { "years-pair-shallower" }).num("by", by)
}

/// How much more heat the later one holds, over the depths both share.
fn heat(earlier: &Read, later: &Read) -> Option<Message> {
    let (from_m, to_m) = shared_m([earlier, later])?;
    if to_m - from_m < LEAST_HEAT_M - 1e-9 {
        return None;
    }
    let of = |read: &Read| heat_j_m2(&read.analysis.profile, from_m, to_m);
    let more_j_m2 = of(later) - of(earlier);
    let mean_c = more_j_m2 / (HEAT_J_M3_K * (to_m - from_m));
    let id = match (mean_c.abs() >= two_probes_c() - 1e-9, mean_c >= 0.0) {
        (true, true) => "years-pair-warmer",
        (true, false) => "years-pair-colder",
        (false, _) => "years-pair-alike",
    };
    Some(
        Message::new(id)
            .num("to", computed(to_m))
            .num("heat", megajoules(more_j_m2.abs()))
            .num("mean", Num { value: rounded(mean_c.abs(), 1), decimals: 1 })
            .num("probes", Num { value: rounded(two_probes_c(), 1), decimals: 1 }),
    )
}

/// Heat of a profile above 0 °C between two depths it reaches \[J/m²\], straight between its depths.
pub(super) fn heat_j_m2(profile: &[Level], from_m: f64, to_m: f64) -> f64 {
    let at = |depth_m: f64| {
        let below = profile.iter().find(|level| level.depth_m >= depth_m)?;
        let above = profile.iter().rfind(|level| level.depth_m <= depth_m)?;
        let step_m = below.depth_m - above.depth_m;
        let part = if step_m > 0.0 { (depth_m - above.depth_m) / step_m } else { 0.0 };
        Some((depth_m, above.temp_c + part * (below.temp_c - above.temp_c)))
    };
    let inside = profile.iter().filter(|level| level.depth_m > from_m && level.depth_m < to_m);
    let points: Vec<(f64, f64)> = at(from_m)
        .into_iter()
        .chain(inside.map(|level| (level.depth_m, level.temp_c)))
        .chain(at(to_m))
        .collect();
    extra_heat_j_m2(&points)
}

/// Joules as whole megajoules.
pub(super) fn megajoules(joules: f64) -> Num {
    Num { value: rounded(joules / 1e6, 0), decimals: 0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn level(depth_m: f64, temp_c: f64) -> Level {
        Level::bare(depth_m, temp_c, 0.1)
    }

    #[test]
    fn heat_of_even_water_is_its_temperature_times_its_depth() {
        // 4.18e6 J/(m³ K) · 10 K · 2 m, cut out of 3 m.
        let profile = [level(0.0, 10.0), level(1.5, 10.0), level(3.0, 10.0)];
        assert!((heat_j_m2(&profile, 0.5, 2.5) - 83.6e6).abs() < 1.0);
    }

    #[test]
    fn heat_is_cut_straight_between_depths() {
        // From 20 to 10 °C over 2 m; the upper metre has a mean of 17.5 °C.
        let profile = [level(0.0, 20.0), level(2.0, 10.0)];
        assert!((heat_j_m2(&profile, 0.0, 1.0) - 4.18e6 * 17.5).abs() < 1.0);
    }
}
