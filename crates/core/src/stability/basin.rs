//! The shape of a basin: how much area and volume lies at which depth.

/// No water on Earth is deeper, metres.
pub const DEEPEST_M: f64 = 20_000.0;
/// No lake or sea is larger, square metres: the whole surface of the Earth.
pub const LARGEST_M2: f64 = 5.2e14;

/// A basin by its depth contours: depths increasing, areas never growing downward, every number finite, the uppermost
/// area more than nothing.
///
/// Between two contours the *square root* of area is linear in depth (a cone's is); above the uppermost contour its area
/// holds, below the lowest there is nothing.
#[derive(Clone, Debug, PartialEq)]
pub struct Basin {
    contours: Vec<(f64, f64)>,
}

/// Why contours make no basin. Places count from 0, in the order the contours were given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BasinFault {
    /// Fewer than two contours.
    TooFew,
    /// A depth or an area is not a number.
    NotANumber {
        /// Place of the contour.
        at: usize,
    },
    /// A depth above the surface, or deeper than any water.
    DepthOutOfRange {
        /// Place of the contour.
        at: usize,
    },
    /// An area below zero, or larger than the Earth.
    AreaOutOfRange {
        /// Place of the contour.
        at: usize,
    },
    /// A contour that is not deeper than the one before it.
    NotDeeper {
        /// Place of the contour.
        at: usize,
    },
    /// A contour with more area than the one above it: no basin widens downward.
    Growing {
        /// Place of the contour.
        at: usize,
    },
    /// The uppermost contour has no area.
    NoSurface,
}

impl Basin {
    /// A basin from contours as (depth \[m\], area \[m²\]), uppermost first.
    ///
    /// # Errors
    /// [`BasinFault`]: the first thing wrong, contour by contour.
    ///
    /// ```
    /// use layercast_core::stability::basin::{Basin, BasinFault};
    /// let pond = Basin::from_contours(&[(0.0, 9000.0), (3.0, 1000.0)]).unwrap();
    /// assert_eq!(pond.deepest_m(), 3.0);
    /// let wrong = Basin::from_contours(&[(0.0, 9000.0), (1.0, 9500.0)]);
    /// assert_eq!(wrong, Err(BasinFault::Growing { at: 1 }));
    /// ```
    pub fn from_contours(contours: &[(f64, f64)]) -> Result<Self, BasinFault> {
        let mut above: Option<(f64, f64)> = None;
        for (at, (depth_m, area_m2)) in contours.iter().copied().enumerate() {
            if !depth_m.is_finite() || !area_m2.is_finite() {
                return Err(BasinFault::NotANumber { at });
            }
            if !(0.0..=DEEPEST_M).contains(&depth_m) {
                return Err(BasinFault::DepthOutOfRange { at });
            }
            if !(0.0..=LARGEST_M2).contains(&area_m2) {
                return Err(BasinFault::AreaOutOfRange { at });
            }
            match above {
                None if area_m2 <= 0.0 => return Err(BasinFault::NoSurface),
                Some((z, _)) if depth_m <= z => return Err(BasinFault::NotDeeper { at }),
                Some((_, a)) if area_m2 > a => return Err(BasinFault::Growing { at }),
                _ => above = Some((depth_m, area_m2)),
            }
        }
        if contours.len() < 2 {
            return Err(BasinFault::TooFew);
        }
        Ok(Self { contours: contours.to_vec() })
    }

    /// A column of one square metre down to `depth_m` \[m\]: what stands for a basin without a map.
    ///
    /// # Errors
    /// [`BasinFault`] when the depth is no depth of water.
    pub fn unit_column(depth_m: f64) -> Result<Self, BasinFault> {
        Self::from_contours(&[(0.0, 1.0), (depth_m, 1.0)])
    }

    /// The contours, uppermost first.
    pub fn contours(&self) -> &[(f64, f64)] {
        &self.contours
    }

    /// Area of the surface, m².
    pub fn surface_area_m2(&self) -> f64 {
        self.contours.first().map_or(0.0, |c| c.1)
    }

    /// Depth of the lowest contour, metres.
    pub fn deepest_m(&self) -> f64 {
        self.contours.last().map_or(0.0, |c| c.0)
    }

    /// Area \[m²\] at `depth_m` \[m\]: nothing below the lowest contour, nothing for NaN.
    ///
    /// Source: a convention of ours; exact on a cone.
    ///
    /// ```
    /// use layercast_core::stability::basin::Basin;
    /// let cone = Basin::from_contours(&[(0.0, 40_000.0), (12.0, 0.0)]).unwrap();
    /// assert_eq!(cone.area_m2(6.0), 10_000.0);
    /// assert_eq!(cone.area_m2(12.1), 0.0);
    /// ```
    pub fn area_m2(&self, depth_m: f64) -> f64 {
        if depth_m.is_nan() || depth_m > self.deepest_m() {
            return 0.0;
        }
        let below = self.contours.partition_point(|c| c.0 < depth_m);
        let above = below.checked_sub(1).and_then(|i| self.contours.get(i));
        match (above, self.contours.get(below)) {
            (_, Some((z2, a2))) if depth_m == *z2 => *a2,
            (Some((z1, a1)), Some((z2, a2))) => {
                let share = (depth_m - z1) / (z2 - z1);
                let root = a1.sqrt() + (a2.sqrt() - a1.sqrt()) * share;
                root * root
            }
            (None, Some((_, a))) => *a,
            _ => 0.0,
        }
    }

    /// Volume \[m³\] between two depths \[m\]: frustum by frustum, h/3 (A₁ + A₂ + √(A₁A₂)). Nothing where the lower depth
    /// is not below the upper.
    ///
    /// Source: [`Frustum`](crate::bibliography::Frustum).
    ///
    /// ```
    /// use layercast_core::stability::basin::Basin;
    /// let cone = Basin::from_contours(&[(0.0, 40_000.0), (12.0, 0.0)]).unwrap();
    /// assert!((cone.volume_m3(0.0, 6.0) - 140_000.0).abs() < 1e-6);
    /// assert!((cone.volume_m3(0.0, 99.0) - 160_000.0).abs() < 1e-6);
    /// ```
    pub fn volume_m3(&self, from_m: f64, to_m: f64) -> f64 {
        let (from_m, to_m) = (from_m.max(0.0), to_m.min(self.deepest_m()));
        if from_m.is_nan() || to_m <= from_m {
            return 0.0;
        }
        let between = self.contours.iter().map(|c| c.0).filter(|z| *z > from_m && *z < to_m);
        let mut upper_m = from_m;
        let mut volume_m3 = 0.0;
        for lower_m in between.chain([to_m]) {
            let (a, b) = (self.area_m2(upper_m), self.area_m2(lower_m));
            volume_m3 += (lower_m - upper_m) / 3.0 * (a + b + (a * b).sqrt());
            upper_m = lower_m;
        }
        volume_m3
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(contours: &[(f64, f64)], want: BasinFault) {
        assert_eq!(Basin::from_contours(contours), Err(want));
    }

    #[test]
    fn every_fault_has_its_name_and_place() {
        check(&[], BasinFault::TooFew);
        check(&[(0.0, 100.0)], BasinFault::TooFew);
        check(&[(0.0, f64::NAN), (1.0, 1.0)], BasinFault::NotANumber { at: 0 });
        check(&[(0.0, 5.0), (f64::INFINITY, 1.0)], BasinFault::NotANumber { at: 1 });
        check(&[(-0.1, 5.0), (1.0, 1.0)], BasinFault::DepthOutOfRange { at: 0 });
        check(&[(0.0, 5.0), (20_000.1, 1.0)], BasinFault::DepthOutOfRange { at: 1 });
        check(&[(0.0, 5.0), (1.0, -1.0)], BasinFault::AreaOutOfRange { at: 1 });
        check(&[(0.0, 1e308), (1.0, 1.0)], BasinFault::AreaOutOfRange { at: 0 });
        check(&[(0.0, 0.0), (1.0, 0.0)], BasinFault::NoSurface);
        check(&[(0.0, 5.0), (1.0, 4.0), (1.0, 3.0)], BasinFault::NotDeeper { at: 2 });
        check(&[(0.0, 5.0), (1.0, 5.1)], BasinFault::Growing { at: 1 });
    }

    #[test]
    fn a_box_keeps_its_area_and_its_numbers() {
        let basin = Basin::from_contours(&[(0.0, 7.0), (4.0, 7.0)]).unwrap();
        assert_eq!((basin.surface_area_m2(), basin.deepest_m(), basin.contours().len()), (7.0, 4.0, 2));
        assert_eq!((basin.area_m2(-1.0), basin.area_m2(0.0), basin.area_m2(4.0)), (7.0, 7.0, 7.0));
        assert_eq!((basin.area_m2(4.1), basin.area_m2(f64::NAN)), (0.0, 0.0));
        assert!((basin.volume_m3(1.0, 3.5) - 17.5).abs() < 1e-12);
    }

    #[test]
    fn above_the_uppermost_contour_its_area_holds() {
        let basin = Basin::from_contours(&[(1.0, 9.0), (4.0, 0.0)]).unwrap();
        assert_eq!((basin.area_m2(0.5), basin.area_m2(2.0)), (9.0, 4.0));
        assert!((basin.volume_m3(0.0, 4.0) - 18.0).abs() < 1e-12); // 9 m³ of box, 9 m³ of cone
        assert!((basin.volume_m3(-5.0, 1.0) - 9.0).abs() < 1e-12);
    }

    #[test]
    fn depths_the_wrong_way_round_hold_nothing() {
        let basin = Basin::unit_column(3.0).unwrap();
        assert_eq!(basin.volume_m3(2.0, 1.0), 0.0);
        assert_eq!(basin.volume_m3(1.0, 1.0), 0.0);
        assert_eq!(basin.volume_m3(f64::NAN, 2.0), 2.0, "from the surface");
        assert_eq!(basin.volume_m3(0.0, f64::NAN), 3.0, "to the bottom");
        assert_eq!(Basin::unit_column(0.0), Err(BasinFault::NotDeeper { at: 1 }));
    }
}
