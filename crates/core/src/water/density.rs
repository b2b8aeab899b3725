//! Density of water at one atmosphere: the choice of a formula. Never at the pressure of its depth: ten metres of water
//! press it together as much as real differences between layers (methods 1.9).

mod chen_millero;
mod eos80;
mod kell;
mod tanaka;

pub use chen_millero::{SALTIEST_G_KG, chen_millero_kg_m3};
pub use eos80::{SALTIEST, eos80_kg_m3};
pub use kell::kell_kg_m3;
pub use tanaka::{GREATEST_C, density_kg_m3};

use super::scales::to_ipts_68_c;

/// Lowest temperature a formula is used at, °C: the low end of the gross range. Water that a probe reads a little
/// below zero is water at zero read by a probe a little off.
pub const LOWEST_C: f64 = -0.5;
/// Highest temperature a formula is used at, °C: the end of the range the authors of most state.
pub const HIGHEST_C: f64 = 40.0;

/// A density formula, with the salt of the water where it takes any.
///
/// Temperatures are °C of today's scale (ITS-90); [`Kell`](Self::Kell) and [`Eos80`](Self::Eos80) were made on the scale
/// of 1968 and get it converted. None of them can change the result of a class: without salt they differ by less than
/// 0.002 kg m⁻³ within a profile, and the smallest threshold is 0.03.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Density {
    /// [`density_kg_m3`], fresh water: the class's own.
    #[default]
    Tanaka,
    /// The same and what salt adds by EOS-80, for a brackish pond: Tanaka(t) + EOS80(t, S) − EOS80(t, 0), so that no
    /// salt is exactly [`Tanaka`](Self::Tanaka) (a convention of ours).
    TanakaSalt {
        /// Practical salinity, 0 to 42.
        salinity: f64,
    },
    /// [`kell_kg_m3`], fresh water.
    Kell,
    /// [`eos80_kg_m3`].
    Eos80 {
        /// Practical salinity, 0 to 42.
        salinity: f64,
    },
    /// [`chen_millero_kg_m3`].
    ChenMillero {
        /// g of salt per kg, 0 to 0.6.
        salinity: f64,
    },
}

/// Why a salinity makes no sense with a formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SalinityProblem {
    /// No finite number.
    NotANumber,
    /// Below zero.
    Negative,
    /// Saltier than the formula is stated for.
    TooSalty {
        /// The most it is stated for.
        most: f64,
    },
}

impl Density {
    /// Density \[kg m⁻³\] at `temp_c` \[°C, ITS-90\] and one atmosphere.
    ///
    /// Outside −0.5..40 °C the nearer end is used, as is the nearer salinity the formula takes (one that is no number
    /// counts as none; [`salinity_problem`](Self::salinity_problem) tells). A temperature that is no number gives NaN.
    ///
    /// ```
    /// use layercast_core::water::density::{Density, density_kg_m3};
    /// assert_eq!(Density::Tanaka.kg_m3(12.0), density_kg_m3(12.0));
    /// assert_eq!(Density::TanakaSalt { salinity: 0.0 }.kg_m3(12.0), density_kg_m3(12.0));
    /// let brackish = Density::TanakaSalt { salinity: 5.0 };
    /// assert!(brackish.kg_m3(12.0) - density_kg_m3(12.0) > 3.0);
    /// ```
    pub fn kg_m3(self, temp_c: f64) -> f64 {
        let t = temp_c.clamp(LOWEST_C, HIGHEST_C);
        match self {
            Self::Tanaka => density_kg_m3(t),
            Self::TanakaSalt { salinity } => {
                let t68_c = to_ipts_68_c(t);
                density_kg_m3(t) + (eos80_kg_m3(t68_c, salinity) - eos80_kg_m3(t68_c, 0.0))
            }
            Self::Kell => kell_kg_m3(to_ipts_68_c(t)),
            Self::Eos80 { salinity } => eos80_kg_m3(to_ipts_68_c(t), salinity),
            Self::ChenMillero { salinity } => chen_millero_kg_m3(t, salinity),
        }
    }

    /// Salinity the formula is used with; `None` where it takes none.
    pub fn salinity(self) -> Option<f64> {
        match self {
            Self::Tanaka | Self::Kell => None,
            Self::TanakaSalt { salinity } | Self::Eos80 { salinity } | Self::ChenMillero { salinity } => {
                Some(salinity)
            }
        }
    }

    /// Why the salinity makes no sense with this formula; `None` when it does, or when it takes none.
    ///
    /// ```
    /// use layercast_core::water::density::{Density, SalinityProblem};
    /// let got = Density::ChenMillero { salinity: 2.0 }.salinity_problem();
    /// assert_eq!(got, Some(SalinityProblem::TooSalty { most: 0.6 }));
    /// assert_eq!(Density::Eos80 { salinity: 2.0 }.salinity_problem(), None);
    /// ```
    pub fn salinity_problem(self) -> Option<SalinityProblem> {
        let salinity = self.salinity()?;
        let most = if matches!(self, Self::ChenMillero { .. }) { SALTIEST_G_KG } else { SALTIEST };
        if !salinity.is_finite() {
            Some(SalinityProblem::NotANumber)
        } else if salinity < 0.0 {
            Some(SalinityProblem::Negative)
        } else {
            (salinity > most).then_some(SalinityProblem::TooSalty { most })
        }
    }

    /// Temperature of greatest density \[°C, ITS-90\]: about 4 °C in fresh water, colder with salt. `None` where the water
    /// is so salty (about 21) that it only gets denser down to −0.5 °C, the coldest the formulas are used at.
    ///
    /// Found where the density stops changing, to a millionth of a degree.
    ///
    /// ```
    /// use layercast_core::water::density::Density;
    /// assert_eq!(Density::Tanaka.greatest_c(), Some(3.983035));
    /// assert_eq!(Density::Eos80 { salinity: 35.0 }.greatest_c(), None);
    /// ```
    pub fn greatest_c(self) -> Option<f64> {
        /// Half the width over which the change is taken, °C.
        const HALF_C: f64 = 1e-3;
        if self == Self::Tanaka {
            return Some(GREATEST_C);
        }
        let rises = |t: f64| self.kg_m3(t + HALF_C) > self.kg_m3(t - HALF_C);
        let (mut low, mut high) = (LOWEST_C + HALF_C, 10.0);
        if !rises(low) {
            return None;
        }
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if rises(middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(0.5 * (low + high))
    }
}

/// The nearest salinity from 0 to `most`; none for what is no number.
fn salt_within(salinity: f64, most: f64) -> f64 {
    if salinity.is_nan() { 0.0 } else { salinity.clamp(0.0, most) }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Density; 5] = [
        Density::Tanaka,
        Density::TanakaSalt { salinity: 2.0 },
        Density::Kell,
        Density::Eos80 { salinity: 2.0 },
        Density::ChenMillero { salinity: 0.3 },
    ];

    #[test]
    fn beyond_lake_water_every_formula_takes_the_end_of_the_range() {
        for formula in ALL {
            assert_eq!(formula.kg_m3(-60.0), formula.kg_m3(-0.5), "{formula:?}");
            assert_eq!(formula.kg_m3(1e308), formula.kg_m3(40.0), "{formula:?}");
            assert!(formula.kg_m3(40.0) < formula.kg_m3(39.9), "{formula:?}");
            assert!(formula.kg_m3(f64::NAN).is_nan(), "{formula:?}");
        }
    }

    #[test]
    fn salinities_that_make_no_sense() {
        use SalinityProblem::{Negative, NotANumber, TooSalty};
        let eos = |salinity| Density::Eos80 { salinity }.salinity_problem();
        assert_eq!(eos(f64::NAN), Some(NotANumber));
        assert_eq!(eos(f64::INFINITY), Some(NotANumber));
        assert_eq!(eos(-0.1), Some(Negative));
        assert_eq!((eos(0.0), eos(42.0)), (None, None));
        assert_eq!(eos(42.1), Some(TooSalty { most: 42.0 }));
        assert_eq!(Density::TanakaSalt { salinity: 43.0 }.salinity_problem(), Some(TooSalty { most: 42.0 }));
        assert_eq!(Density::ChenMillero { salinity: 0.6 }.salinity_problem(), None);
        assert_eq!(Density::Kell.salinity_problem(), None);
    }

    #[test]
    fn a_senseless_salinity_is_the_nearest_that_makes_sense() {
        let at = |salinity| Density::TanakaSalt { salinity }.kg_m3(15.0);
        assert_eq!(at(-4.0), at(0.0));
        assert_eq!(at(f64::NAN), at(0.0));
        assert_eq!(at(f64::INFINITY), at(42.0));
    }

    #[test]
    fn greatest_density_is_where_either_side_is_lighter() {
        for formula in ALL {
            let t = formula.greatest_c().unwrap();
            let there = formula.kg_m3(t);
            assert!(formula.kg_m3(t - 0.01) < there && formula.kg_m3(t + 0.01) < there, "{formula:?}");
        }
        assert!(Density::Eos80 { salinity: 20.0 }.greatest_c().is_some());
        assert!(Density::Eos80 { salinity: 22.0 }.greatest_c().is_none());
    }
}
