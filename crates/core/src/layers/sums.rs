//! Running sums over levels, so that a fit to any stretch of them costs no more than a fit to two.

use crate::analysis::Level;

/// Sums over a stretch of levels, depths and temperatures counted from the first level's.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Sums {
    pub n: f64,
    pub z: f64,
    pub zz: f64,
    pub t: f64,
    pub zt: f64,
    pub tt: f64,
}

impl Sums {
    /// Every sum from the first level on: entry k covers the first k levels.
    pub fn running(levels: &[Level]) -> Vec<Self> {
        let mut so_far = Self::default();
        let first = levels.first().map_or((0.0, 0.0), |l| (l.depth_m, l.temp_c));
        let mut all = Vec::with_capacity(levels.len() + 1);
        all.push(so_far);
        for level in levels {
            let (z, t) = (level.depth_m - first.0, level.temp_c - first.1);
            so_far = Self {
                n: so_far.n + 1.0,
                z: so_far.z + z,
                zz: so_far.zz + z * z,
                t: so_far.t + t,
                zt: so_far.zt + z * t,
                tt: so_far.tt + t * t,
            };
            all.push(so_far);
        }
        all
    }

    /// What is in `self` and not in `above`.
    pub fn beyond(&self, above: &Self) -> Self {
        Self {
            n: self.n - above.n,
            z: self.z - above.z,
            zz: self.zz - above.zz,
            t: self.t - above.t,
            zt: self.zt - above.zt,
            tt: self.tt - above.tt,
        }
    }
}

/// What a line T = c₁ + c₂ w, fitted by least squares, leaves of the sum of squares of T; `None` where w does not vary.
///
/// * `n`, `t`, `tt`: number of readings, ΣT, ΣT²
/// * `w`, `ww`, `wt`: Σw, Σw², ΣwT
pub(super) fn left_over(all: &Sums, w: f64, ww: f64, wt: f64) -> Option<f64> {
    let about_w = ww - w * w / all.n;
    let about_wt = wt - w * all.t / all.n;
    let about_t = all.tt - all.t * all.t / all.n;
    let left = about_t - about_wt * about_wt / about_w;
    (about_w > 1e-12 && left.is_finite()).then_some(left.max(0.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_count_from_the_first_level() {
        let levels = [Level::bare(1.0, 20.0, 0.0), Level::bare(2.0, 19.0, 0.0), Level::bare(4.0, 16.0, 0.0)];
        let running = Sums::running(&levels);
        let all = Sums { n: 3.0, z: 4.0, zz: 10.0, t: -5.0, zt: -13.0, tt: 17.0 };
        assert_eq!((running.len(), running[3]), (4, all));
        let last = Sums { n: 1.0, z: 3.0, zz: 9.0, t: -4.0, zt: -12.0, tt: 16.0 };
        assert_eq!(running[3].beyond(&running[2]), last);
        assert_eq!(Sums::running(&[]), [Sums::default()]);
    }

    #[test]
    fn a_line_leaves_what_it_cannot_tell() {
        // T = 0, −1, −4 at z = 0, 1, 3: slope −1.357143, left 0.214286 (numbers by hand: Szz 14/3, Szt −19/3, Stt 26/3).
        let all = Sums { n: 3.0, z: 4.0, zz: 10.0, t: -5.0, zt: -13.0, tt: 17.0 };
        let left = left_over(&all, all.z, all.zz, all.zt).unwrap();
        assert!((left - (26.0 / 3.0 - (19.0 / 3.0) * (19.0 / 3.0) / (14.0 / 3.0))).abs() < 1e-12, "{left}");
        assert_eq!(left_over(&all, 3.0, 3.0, -5.0), None);
    }
}
