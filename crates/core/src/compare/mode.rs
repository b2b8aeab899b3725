//! How far the water at each depth goes along when a layer rocks: nothing at the surface and the bed, most in the layer.

use crate::water::density::Density;

/// Rounds of inverse iteration; the second shape fades by about four each round.
const ROUNDS: usize = 16;
/// Less density than this gained downward leaves nothing that could rock, kg m⁻³.
const LEAST_GAIN_KG_M3: f64 = 0.02;

/// Shape of the gravest internal wave of a profile: displacement at each point, 1 at its largest; 0 at the surface and at
/// the bed. `None` where density hardly grows downward.
///
/// Solves φ″ + (N²/c²) φ = 0 for the fastest c by inverse iteration on the points.
///
/// * `points`: (metres, °C), depths increasing
/// * `bed_m`: depth of the bed \[m\]
/// * `density`: the formula that N² comes from
///
/// Source: textbook physics, see [`Gill1982`](crate::bibliography::Gill1982).
pub(super) fn rocking(points: &[(f64, f64)], bed_m: f64, density: Density) -> Option<Vec<f64>> {
    let densities: Vec<f64> = points.iter().map(|p| density.kg_m3(p.1)).collect();
    let gains: Vec<f64> = (densities.windows(2))
        .map(|pair| match pair {
            [above, below] => (below - above).max(0.0),
            _ => 0.0,
        })
        .collect();
    if gains.iter().sum::<f64>() < LEAST_GAIN_KG_M3 {
        return None;
    }
    let half = |i: Option<usize>| i.and_then(|i| gains.get(i)).map_or(0.0, |gain| gain / 2.0);
    let nodes: Vec<Node> = (points.iter().enumerate())
        .map(|(i, p)| {
            let above_m = match i.checked_sub(1).and_then(|i| points.get(i)) {
                Some(above) => p.0 - above.0,
                None => p.0,
            };
            let below_m = points.get(i + 1).map_or(bed_m, |below| below.0) - p.0;
            Node {
                // At the surface or on the bed the water stays: an interval of no width holds it.
                up: 1.0 / above_m.max(1e-6),
                down: 1.0 / below_m.max(1e-6),
                weight: half(i.checked_sub(1)) + half(Some(i)),
            }
        })
        .collect();
    let mut shape = vec![1.0; nodes.len()];
    for _ in 0..ROUNDS {
        let pushed: Vec<f64> = shape.iter().zip(&nodes).map(|(x, node)| x * node.weight).collect();
        shape = solved(&nodes, &pushed);
        let most = shape.iter().fold(0.0, |most: f64, x| most.max(x.abs()));
        if most.is_nan() || most <= 0.0 {
            return None;
        }
        shape.iter_mut().for_each(|x| *x /= most);
    }
    shape.iter().all(|x| x.is_finite()).then_some(shape)
}

struct Node {
    /// One over the distance to the node above, or to the surface.
    up: f64,
    /// One over the distance to the node below, or to the bed.
    down: f64,
    /// Density gained around the node: N² times its water, but for a constant.
    weight: f64,
}

/// Solves (up + down) xᵢ − up xᵢ₋₁ − down xᵢ₊₁ = bᵢ, zero beyond both ends.
fn solved(nodes: &[Node], b: &[f64]) -> Vec<f64> {
    let mut swept = Vec::with_capacity(nodes.len());
    let (mut factor, mut carried) = (0.0, 0.0);
    for (node, b) in nodes.iter().zip(b) {
        let pivot = node.up + node.down - node.up * factor;
        carried = (b + node.up * carried) / pivot;
        factor = node.down / pivot;
        swept.push((factor, carried));
    }
    let mut below = 0.0;
    let mut shape: Vec<f64> = (swept.iter().rev().enumerate())
        .map(|(i, (factor, carried))| {
            below = carried + if i == 0 { 0.0 } else { factor * below };
            below
        })
        .collect();
    shape.reverse();
    shape
}

#[cfg(test)]
mod tests {
    use super::Density::Tanaka;
    use super::*;
    use crate::water::density::density_kg_m3;

    #[test]
    fn even_stratification_rocks_as_a_sine() {
        // Density linear in depth between two temperatures found by bisection: φ = sin(π z/H) exactly.
        let at = |share: f64| {
            let (warm, cold) = (density_kg_m3(24.0), density_kg_m3(6.0));
            let (mut low, mut high) = (6.0, 24.0);
            for _ in 0..60 {
                let middle = (low + high) / 2.0;
                if density_kg_m3(middle) < warm + share * (cold - warm) {
                    high = middle
                } else {
                    low = middle
                }
            }
            (low + high) / 2.0
        };
        let points: Vec<(f64, f64)> =
            (0..=80).map(|i| (f64::from(i) * 0.1, at(f64::from(i) / 80.0))).collect();
        let shape = rocking(&points, 8.0, Tanaka).unwrap();
        for ((z, _), got) in points.iter().zip(&shape) {
            let want = libm::sin(std::f64::consts::PI * z / 8.0);
            assert!((got - want).abs() < 2e-3, "{z} m: {got}, not {want}");
        }
    }

    #[test]
    fn two_layers_rock_as_a_tent() {
        let points: Vec<(f64, f64)> =
            (0..17).map(|i| (f64::from(i) * 0.5, if i < 6 { 22.0 } else { 8.0 })).collect();
        let shape = rocking(&points, 8.5, Tanaka).unwrap();
        // Highest at the jump (2.5 to 3.0 m), straight above and below.
        assert!(shape[5].max(shape[6]) == 1.0 && shape[0].abs() < 1e-5);
        assert!((shape[2] / shape[4] - 0.5).abs() < 1e-4 && (shape[16] / shape[11] - 0.5 / 3.0).abs() < 1e-4);
        assert!(shape.iter().all(|x| (0.0..=1.0).contains(x)));
    }

    #[test]
    fn the_bed_holds_the_water() {
        let points: Vec<(f64, f64)> = (0..9).map(|i| (f64::from(i), 20.0 - f64::from(i))).collect();
        let (near, far) = (rocking(&points, 8.0, Tanaka).unwrap(), rocking(&points, 12.0, Tanaka).unwrap());
        assert!(near[8].abs() < 1e-5 && far[8] > 0.3, "{near:?} {far:?}");
    }

    #[test]
    fn even_or_heavy_water_does_not_rock() {
        assert_eq!(rocking(&[(0.0, 10.0), (1.0, 10.0), (2.0, 10.0)], 3.0, Tanaka), None);
        assert_eq!(rocking(&[(0.0, 8.0), (1.0, 12.0), (2.0, 20.0)], 3.0, Tanaka), None);
        assert_eq!(rocking(&[], 3.0, Tanaka), None);
        assert_eq!(rocking(&[(1.0, 10.0)], 3.0, Tanaka), None);
        assert!(
            rocking(&[(0.0, 0.5), (1.0, 2.0), (2.0, 4.0)], 3.0, Tanaka).is_some(),
            "ice: warmer is heavier"
        );
    }

    #[test]
    fn salt_lets_the_coldest_water_sink() {
        let points = [(0.0, 4.0), (1.0, 2.0), (2.0, 0.5)];
        assert_eq!(rocking(&points, 3.0, Tanaka), None, "fresh water is heaviest at 4 °C");
        assert!(rocking(&points, 3.0, Density::TanakaSalt { salinity: 30.0 }).is_some());
    }
}
