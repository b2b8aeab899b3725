//! Doubts that need the profile: legs that disagree, and heavier water above lighter.

use super::overturn::Overturn;
use crate::analysis::{Checked, Doubt, Level, Step};
use crate::cast::pair_verdicts::slope_c_per_m;
use crate::cast::pairs::read_again;
use crate::cast::station::{SAME_DEPTH_M, depth_of};
use crate::cast::{Cast, Leg, Switch};

/// Adds to readings that have no doubt yet: a pair too far apart, and the pair behind an overturn of the profile.
/// Readings a person has switched or kept, and those left out, are not doubted again.
///
/// * `levels`, `steps`: the profile of `cast` and its gradient table; the steeper neighbouring step is the local slope
/// * `overturn`: the overturn beyond 0.03 kg m⁻³, if there is one
pub fn doubts(
    cast: &Cast,
    checked: &mut [Checked],
    levels: &[Level],
    steps: &[Step],
    overturn: Option<Overturn>,
) {
    let depth_at = |place: usize| levels.get(place).map(|l| l.depth_m);
    for (reading, c) in cast.readings.iter().zip(checked) {
        if !c.used || c.doubt.is_some() || reading.switch != Switch::Auto {
            continue;
        }
        let Some(depth_m) = depth_of(reading) else { continue };
        let place = levels.partition_point(|l| l.depth_m <= depth_m).saturating_sub(1);
        let Some(level) = levels.get(place) else { continue };
        if (depth_m - level.depth_m).abs() >= SAME_DEPTH_M {
            continue;
        }
        let pair = level
            .down_c
            .zip(level.up_c)
            .filter(|(down, up)| read_again(down - up, slope_c_per_m(steps, place)));
        let other_c = match (pair, reading.leg) {
            (Some((_, up_c)), Leg::Down) => Some(up_c),
            (Some((down_c, _)), Leg::Up) => Some(down_c),
            _ => None,
        };
        let other_depth_m = match overturn {
            Some(o) if o.upper == place => depth_at(o.lower),
            Some(o) if o.lower == place => depth_at(o.upper),
            _ => None,
        };
        c.doubt = other_c
            .map(|other_c| Doubt::Pair { other_c })
            .or(other_depth_m.map(|other_depth_m| Doubt::Inversion { other_depth_m }));
    }
}
