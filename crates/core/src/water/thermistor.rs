//! Thermistors: temperature from resistance, by Steinhart and Hart's three terms and by the beta form.
//!
//! Resistances are ohm, temperatures °C (kelvin inside). A resistance that is not above 0, and a result outside
//! −50..150 °C, give no value.

/// Kelvin at 0 °C.
const ICE_K: f64 = 273.15;
/// Outside this no thermistor of a pond is, °C.
const BELIEVED_C: std::ops::RangeInclusive<f64> = -50.0..=150.0;

/// 1/T = A + B ln R + C (ln R)³, T in kelvin and R in ohm.
///
/// Source: [`SteinhartHart1968`](crate::bibliography::SteinhartHart1968).
///
/// ```
/// use layercast_core::water::thermistor::SteinhartHart;
/// // The 0, 20 and 50 °C rows of a printed table of a 10 kΩ thermistor.
/// let curve = SteinhartHart::through([(0.0, 32128.0), (20.0, 12262.0), (50.0, 3542.0)]).unwrap();
/// assert!((curve.temp_c(19549.0).unwrap() - 10.0).abs() < 0.001);
/// assert!((curve.resistance_ohm(20.0).unwrap() - 12262.0).abs() < 1e-3);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SteinhartHart {
    /// A, per kelvin.
    pub a: f64,
    /// B, per kelvin.
    pub b: f64,
    /// C, per kelvin.
    pub c: f64,
}

impl SteinhartHart {
    /// The curve through three pairs of temperature \[°C\] and resistance \[ohm\], in any order.
    ///
    /// `None` when two resistances are equal, one is not above 0, or a temperature is not above −273.15 °C.
    pub fn through(pairs: [(f64, f64); 3]) -> Option<Self> {
        let [(x1, y1), (x2, y2), (x3, y3)] =
            pairs.map(|(temp_c, ohm)| (libm::log(ohm), 1.0 / (temp_c + ICE_K)));
        let sensible = |&(temp_c, ohm): &(f64, f64)| ohm > 0.0 && ohm.is_finite() && temp_c > -ICE_K;
        let slope_12 = (y2 - y1) / (x2 - x1);
        let slope_13 = (y3 - y1) / (x3 - x1);
        let c = (slope_13 - slope_12) / (x3 - x2) / (x1 + x2 + x3);
        let b = slope_12 - c * (x1 * x1 + x1 * x2 + x2 * x2);
        let a = y1 - x1 * (b + x1 * x1 * c);
        let found = pairs.iter().all(sensible) && [a, b, c].iter().all(|x| x.is_finite());
        found.then_some(Self { a, b, c })
    }

    /// Temperature \[°C\] of a thermistor of `resistance_ohm`.
    pub fn temp_c(&self, resistance_ohm: f64) -> Option<f64> {
        let x = log_ohm(resistance_ohm)?;
        believed_c(1.0 / self.per_kelvin(x))
    }

    /// Resistance \[ohm\] at `temp_c` \[°C\], between a milliohm and a gigaohm.
    pub fn resistance_ohm(&self, temp_c: f64) -> Option<f64> {
        let want = 1.0 / (Some(temp_c).filter(|t| BELIEVED_C.contains(t))? + ICE_K);
        let (mut low, mut high) = (libm::log(1e-3), libm::log(1e9));
        for _ in 0..80 {
            let middle = 0.5 * (low + high);
            if self.per_kelvin(middle) < want {
                low = middle;
            } else {
                high = middle;
            }
        }
        let ohm = libm::exp(0.5 * (low + high));
        // A curve that is none of a thermistor (it turns, or lies elsewhere) has not been met.
        self.temp_c(ohm).filter(|back_c| (back_c - temp_c).abs() < 1e-6).map(|_| ohm)
    }

    fn per_kelvin(&self, x: f64) -> f64 {
        self.a + x * (self.b + x * x * self.c)
    }
}

/// 1/T = 1/T₀ + ln(R/R₀)/beta: one point and one constant. Errs by a quarter of a degree over 0–50 °C.
///
/// ```
/// use layercast_core::water::thermistor::Beta;
/// let curve = Beta { reference_c: 25.0, reference_ohm: 10_000.0, beta_k: 3950.0 };
/// assert!((curve.temp_c(20_000.0).unwrap() - 10.1765).abs() < 1e-4);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beta {
    /// Temperature of the reference point, °C.
    pub reference_c: f64,
    /// Resistance there, ohm.
    pub reference_ohm: f64,
    /// Beta, kelvin.
    pub beta_k: f64,
}

impl Beta {
    /// The curve anchored at `reference` with the beta of two other pairs, each temperature \[°C\] and resistance
    /// \[ohm\]: beta = ln(R₁/R₂)/(1/T₁ − 1/T₂).
    ///
    /// `None` when the two are equal in either, a resistance is not above 0, or a temperature is not above −273.15 °C.
    pub fn through(reference: (f64, f64), pairs: [(f64, f64); 2]) -> Option<Self> {
        let (reference_c, reference_ohm) = reference;
        log_ohm(reference_ohm)?;
        let [(t1, r1), (t2, r2)] = pairs;
        let warm_enough = [reference_c, t1, t2].iter().all(|t| *t > -ICE_K && t.is_finite());
        let beta_k = (log_ohm(r1)? - log_ohm(r2)?) / (1.0 / (t1 + ICE_K) - 1.0 / (t2 + ICE_K));
        (warm_enough && beta_k.is_finite() && beta_k != 0.0).then_some(Self {
            reference_c,
            reference_ohm,
            beta_k,
        })
    }

    /// Temperature \[°C\] of a thermistor of `resistance_ohm`.
    pub fn temp_c(&self, resistance_ohm: f64) -> Option<f64> {
        let x = log_ohm(resistance_ohm)? - log_ohm(self.reference_ohm)?;
        believed_c(1.0 / (1.0 / (self.reference_c + ICE_K) + x / self.beta_k))
    }

    /// Resistance \[ohm\] at `temp_c` \[°C\].
    pub fn resistance_ohm(&self, temp_c: f64) -> Option<f64> {
        let t = Some(temp_c).filter(|t| BELIEVED_C.contains(t))?;
        log_ohm(self.reference_ohm)?;
        let apart = 1.0 / (t + ICE_K) - 1.0 / (self.reference_c + ICE_K);
        let ohm = self.reference_ohm * libm::exp(self.beta_k * apart);
        (ohm > 0.0 && ohm.is_finite()).then_some(ohm)
    }
}

fn log_ohm(resistance_ohm: f64) -> Option<f64> {
    (resistance_ohm > 0.0 && resistance_ohm.is_finite()).then(|| libm::log(resistance_ohm))
}

fn believed_c(kelvin: f64) -> Option<f64> {
    Some(kelvin - ICE_K).filter(|t| BELIEVED_C.contains(t))
}

#[cfg(test)]
mod tests {
    use super::*;

    const TABLE: [(f64, f64); 3] = [(0.0, 32128.0), (20.0, 12262.0), (50.0, 3542.0)];

    #[test]
    fn a_curve_meets_its_own_points_in_any_order() {
        let [a, b, c] = TABLE;
        for pairs in [[a, b, c], [c, a, b], [b, a, c]] {
            let curve = SteinhartHart::through(pairs).unwrap();
            for (temp_c, ohm) in TABLE {
                assert!((curve.temp_c(ohm).unwrap() - temp_c).abs() < 1e-9);
                assert!((curve.resistance_ohm(temp_c).unwrap() / ohm - 1.0).abs() < 1e-9);
            }
        }
        let beta = Beta::through(b, [a, c]).unwrap();
        assert!((beta.temp_c(12262.0).unwrap() - 20.0).abs() < 1e-9);
        assert!((beta.resistance_ohm(beta.temp_c(5000.0).unwrap()).unwrap() - 5000.0).abs() < 1e-6);
    }

    #[test]
    fn no_value_where_there_is_none() {
        let curve = SteinhartHart::through(TABLE).unwrap();
        let beta = Beta { reference_c: 25.0, reference_ohm: 1e4, beta_k: 3950.0 };
        for ohm in [0.0, -5.0, f64::NAN, f64::INFINITY, 1e-300, 1e300] {
            assert_eq!((curve.temp_c(ohm), beta.temp_c(ohm)), (None, None), "{ohm}");
        }
        for temp_c in [-51.0, 151.0, f64::NAN, f64::INFINITY] {
            assert_eq!((curve.resistance_ohm(temp_c), beta.resistance_ohm(temp_c)), (None, None), "{temp_c}");
        }
        assert!(curve.resistance_ohm(-50.0).is_some() && beta.resistance_ohm(150.0).is_some());
        assert_eq!(SteinhartHart { a: 0.0, b: 0.0, c: 0.0 }.temp_c(1e4), None);
        assert_eq!(SteinhartHart { a: 1.0, b: 0.0, c: 0.0 }.resistance_ohm(20.0), None);
        assert_eq!(Beta { reference_ohm: 0.0, ..beta }.temp_c(1e4), None);
        assert_eq!(Beta { reference_ohm: -1.0, ..beta }.resistance_ohm(20.0), None);
        assert_eq!(Beta { beta_k: 0.0, ..beta }.temp_c(5e3), None);
    }

    #[test]
    fn no_curve_through_points_that_make_none() {
        let [a, b, c] = TABLE;
        assert_eq!(SteinhartHart::through([a, a, c]), None);
        assert_eq!(SteinhartHart::through([a, b, (50.0, 0.0)]), None);
        assert_eq!(SteinhartHart::through([a, b, (50.0, -3.0)]), None);
        assert_eq!(SteinhartHart::through([a, b, (-300.0, 3542.0)]), None);
        assert_eq!(SteinhartHart::through([a, b, (f64::NAN, 3542.0)]), None);
        assert_eq!(SteinhartHart::through([a, b, (50.0, f64::INFINITY)]), None);
        assert_eq!(Beta::through(b, [a, a]), None);
        assert_eq!(Beta::through((20.0, 0.0), [a, c]), None);
        assert_eq!(Beta::through(b, [a, (50.0, -1.0)]), None);
        assert_eq!(Beta::through(b, [a, (-300.0, 3542.0)]), None);
        assert_eq!(Beta::through(b, [a, (50.0, a.1)]), None);
    }
}
