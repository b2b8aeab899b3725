//! Seeded chance: the same seed and stream give the same numbers on every machine.

use rand_pcg::Pcg32;
use rand_pcg::rand_core::Rng;

/// A stream of random numbers. It is made from a seed and a stream number, so that trial 7,001 can be drawn without
/// drawing the 7,000 before it.
///
/// Sources: [`Oneill2014`](crate::bibliography::Oneill2014) for the generator (PCG, 64 bits of state),
/// [`Wichura1988`](crate::bibliography::Wichura1988) for normal numbers.
///
/// ```
/// use layercast_core::random::Random;
/// let (mut a, mut b) = (Random::seeded(7, 3), Random::seeded(7, 3));
/// assert_eq!(a.normal(), b.normal());
/// assert_ne!(Random::seeded(7, 4).normal(), Random::seeded(7, 3).normal());
/// ```
#[derive(Clone, Debug)]
pub struct Random(Pcg32);

impl Random {
    /// The numbers of a seed and a stream. Neighbouring seeds and streams are unlike one another.
    pub fn seeded(seed: u64, stream: u64) -> Self {
        Self(Pcg32::new(mixed(seed ^ mixed(stream)), stream))
    }

    /// Even between 0 and 1, both ends left out.
    pub fn uniform(&mut self) -> f64 {
        (f64::from(self.0.next_u32()) + 0.5) / 4_294_967_296.0
    }

    /// Even between −half and +half.
    pub fn within(&mut self, half: f64) -> f64 {
        (2.0 * self.uniform() - 1.0) * half
    }

    /// Standard normal: mean 0, standard deviation 1. Never infinite (within ±6.4).
    pub fn normal(&mut self) -> f64 {
        normal_quantile(self.uniform())
    }

    /// One of the whole numbers 0..count; 0 when count is 0.
    pub fn below(&mut self, count: u32) -> u32 {
        ((u64::from(self.0.next_u32()) * u64::from(count)) >> 32) as u32
    }
}

/// Bits well mixed (the finaliser of splitmix64), so that seeds 1, 2, 3 … begin far apart.
fn mixed(seed: u64) -> u64 {
    let x = seed.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let x = (x ^ (x >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    let x = (x ^ (x >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    x ^ (x >> 31)
}

/// The number below which a standard normal number lies with probability `p` (0 < p < 1), to about 1 part in 10¹⁶.
///
/// NaN outside 0..1; infinite at 0 and 1. Source: [`Wichura1988`](crate::bibliography::Wichura1988).
///
/// ```
/// use layercast_core::random::normal_quantile;
/// assert!((normal_quantile(0.975) - 1.959_963_984_540_054).abs() < 1e-14);
/// ```
pub fn normal_quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180625 - q * q;
        return q * ratio(r, &MIDDLE);
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = (-libm::log(tail)).sqrt();
    let size = if r <= 5.0 { ratio(r - 1.6, &TAIL) } else { ratio(r - 5.0, &FAR_TAIL) };
    match tail {
        tail if tail > 0.0 => size.copysign(q),
        0.0 => f64::INFINITY.copysign(q),
        _ => f64::NAN,
    }
}

/// Coefficients of a numerator and a denominator, highest power first.
type Ratio = [[f64; 8]; 2];

fn ratio(r: f64, [above, below]: &Ratio) -> f64 {
    let polynomial = |c: &[f64; 8]| c.iter().fold(0.0, |sum, c| sum * r + c);
    polynomial(above) / polynomial(below)
}

/// |p − 0.5| up to 0.425.
const MIDDLE: Ratio = [
    [
        2509.0809287301227,
        33430.57558358813,
        67265.7709270087,
        45921.95393154987,
        13731.69376550946,
        1971.5909503065513,
        133.14166789178438,
        3.3871328727963665,
    ],
    [
        5226.495278852854,
        28729.085735721943,
        39307.89580009271,
        21213.794301586597,
        5394.196021424751,
        687.1870074920579,
        42.31333070160091,
        1.0,
    ],
];

/// Beyond that.
const TAIL: Ratio = [
    [
        0.0007745450142783414,
        0.022723844989269184,
        0.2417807251774506,
        1.2704582524523684,
        3.6478483247632045,
        5.769497221460691,
        4.630337846156546,
        1.4234371107496835,
    ],
    [
        1.0507500716444169e-09,
        0.0005475938084995345,
        0.015198666563616457,
        0.14810397642748008,
        0.6897673349851,
        1.6763848301838038,
        2.053191626637759,
        1.0,
    ],
];

/// Where p or 1 − p is below 1.4e-11.
const FAR_TAIL: Ratio = [
    [
        2.0103343992922881e-07,
        2.7115555687434876e-05,
        0.0012426609473880784,
        0.026532189526576124,
        0.29656057182850487,
        1.7848265399172913,
        5.463784911164114,
        6.657904643501103,
    ],
    [
        2.0442631033899397e-15,
        1.421511758316446e-07,
        1.8463183175100548e-05,
        0.0007868691311456133,
        0.014875361290850615,
        0.1369298809227358,
        0.599832206555888,
        1.0,
    ],
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_undo_the_error_function() {
        // The distribution by libm's erfc, itself tested by its authors.
        for p in [1e-15, 1e-12, 1e-9, 1e-6, 0.001, 0.025, 0.074, 0.076, 0.3, 0.5, 0.7, 0.925, 0.975, 0.999] {
            let back = 0.5 * libm::erfc(-normal_quantile(p) / std::f64::consts::SQRT_2);
            assert!((back / p - 1.0).abs() < 1e-12, "{p}: {back}");
        }
    }

    #[test]
    fn beyond_0_and_1_there_is_none() {
        assert_eq!(normal_quantile(0.0), f64::NEG_INFINITY);
        assert_eq!(normal_quantile(1.0), f64::INFINITY);
        assert!(
            normal_quantile(-0.1).is_nan()
                && normal_quantile(1.1).is_nan()
                && normal_quantile(f64::NAN).is_nan()
        );
    }

    #[test]
    fn moments_of_a_long_stream() {
        let mut random = Random::seeded(1, 0);
        let n = 200_000;
        let drawn: Vec<f64> = (0..n).map(|_| random.normal()).collect();
        let moment = |k: i32| drawn.iter().map(|x| x.powi(k)).sum::<f64>() / f64::from(n);
        // Four standard errors of each: 1, √2, √15, √96 over √n.
        assert!(moment(1).abs() < 0.009, "{}", moment(1));
        assert!((moment(2) - 1.0).abs() < 0.0127, "{}", moment(2));
        assert!(moment(3).abs() < 0.035, "{}", moment(3));
        assert!((moment(4) - 3.0).abs() < 0.088, "{}", moment(4));
    }

    #[test]
    fn neighbouring_streams_and_seeds_are_unlike() {
        let n = 20_000;
        let link = |a: &dyn Fn(u64) -> f64, b: &dyn Fn(u64) -> f64| {
            (0..n).map(|i| a(i) * b(i)).sum::<f64>() / n as f64
        };
        let at = |seed, stream| Random::seeded(seed, stream).normal();
        assert!(link(&|i| at(5, i), &|i| at(5, i + 1)).abs() < 0.03);
        assert!(link(&|i| at(i, 0), &|i| at(i + 1, 0)).abs() < 0.03);
        assert!(link(&|i| at(i, 1), &|i| at(i, 2)).abs() < 0.03);
    }

    #[test]
    fn whole_numbers_are_even_and_stay_below() {
        let mut random = Random::seeded(9, 9);
        let mut seen = [0; 6];
        for _ in 0..60_000 {
            seen[random.below(6) as usize] += 1;
        }
        assert!(seen.iter().all(|n| (9_600..10_400).contains(n)), "{seen:?}");
        assert_eq!(random.below(0), 0);
        assert!((0..1000).all(|_| random.within(0.25).abs() < 0.25));
    }

    #[test]
    fn the_numbers_of_a_seed_stay_as_they_are() {
        let mut random = Random::seeded(20_260_715, 4);
        let got = [random.uniform(), random.normal(), random.within(1.0)];
        // As first drawn: ranges on paper must come out again.
        assert_eq!(got, [0.694864421733655, 0.31331645060864205, -0.37547196564264596]);
    }
}
