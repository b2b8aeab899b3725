//! Small pictures to choose from: on the same axes, in an order that tells nothing, each in words as well.

use super::kind::{Curve, Pictures};
use super::say::{Numbers, rounded, said};
use super::water::Water;
use crate::view::{FieldKind, PictureOption, SmallPictures};
use layercast_core::order::sort_by;
use layercast_core::random::Random;
use layercast_core::{Level, Message};

/// Depths at which a picture is put in words, as shares of the whole.
const TOLD: [f64; 5] = [0.0, 0.25, 0.5, 0.75, 1.0];
/// What two pictures must differ by to be told apart, °C on average over the depth.
pub(crate) const APART_C: f64 = 0.6;
/// Fewest °C that the axis spans.
const LEAST_SPAN_C: f64 = 6.0;
/// Points a drawn curve has at most.
const MOST_POINTS: usize = 200;

/// The pictures to choose from as the page shows them.
pub(crate) fn view(pictures: &Pictures) -> FieldKind {
    FieldKind::Pictures { pictures: small(pictures) }
}

/// The pictures on their common axes, each with its letter.
pub(crate) fn small(pictures: &Pictures) -> SmallPictures {
    let all = || pictures.options.iter().map(|o| &o.1).chain([&pictures.own]).flatten();
    let depth_m = all().map(|p| p.0).fold(0.0, f64::max);
    let (low_c, high_c) = axis_c(
        all().map(|p| p.1).fold(f64::INFINITY, f64::min),
        all().map(|p| p.1).fold(f64::NEG_INFINITY, f64::max),
    );
    let letters = ["A", "B", "C", "D", "E", "F"];
    let options = pictures.options.iter().zip(letters).map(|((value, curve), letter)| PictureOption {
        value: (*value).to_owned(),
        label: said(Message::new("ask-why-picture").text("letter", letter)),
        alt: said(in_words(curve, depth_m)),
        curve: curve.clone(),
    });
    SmallPictures { options: options.collect(), own: pictures.own.clone(), depth_m, low_c, high_c }
}

/// Whole degrees around all curves, at least six.
fn axis_c(coldest_c: f64, warmest_c: f64) -> (f64, f64) {
    if coldest_c.is_nan() || warmest_c.is_nan() || coldest_c > warmest_c {
        return (0.0, 30.0);
    }
    let (low, high) = ((coldest_c - 0.5).floor(), (warmest_c + 0.5).ceil());
    let room = ((LEAST_SPAN_C - (high - low)) / 2.0).max(0.0).ceil();
    (low - room, high + room)
}

/// A curve in words: its temperature at five depths.
fn in_words(curve: &Curve, depth_m: f64) -> Message {
    let names = [("z1", "t1"), ("z2", "t2"), ("z3", "t3"), ("z4", "t4"), ("z5", "t5")];
    names.into_iter().zip(TOLD).fold(Message::new("ask-why-picture-alt"), |message, ((z, t), share)| {
        let at_m = rounded(depth_m * share, 1);
        message.m(z, at_m).number(t, rounded(at(curve, at_m), 1), 1)
    })
}

/// Temperature of a curve at a depth, °C: straight between its points, held at its ends.
pub(crate) fn at(curve: &[(f64, f64)], depth_m: f64) -> f64 {
    let below = curve.partition_point(|p| p.0 < depth_m);
    match (below.checked_sub(1).and_then(|i| curve.get(i)), curve.get(below)) {
        (Some(a), Some(b)) => a.1 + (b.1 - a.1) * (depth_m - a.0) / (b.0 - a.0),
        (Some(end), None) | (None, Some(end)) => end.1,
        (None, None) => 0.0,
    }
}

/// Mean distance of two curves over the depth, °C.
pub(crate) fn apart_c(a: &Curve, b: &Curve) -> f64 {
    let depth_m = a.last().map_or(0.0, |p| p.0);
    let places = 40;
    let off = |i: i32| {
        let z = depth_m * (f64::from(i) + 0.5) / f64::from(places);
        (at(a, z) - at(b, z)).abs()
    };
    (0..places).map(off).sum::<f64>() / f64::from(places)
}

/// All of them can be told apart by eye.
pub(crate) fn all_apart(options: &[(&'static str, Curve)]) -> bool {
    let pairs =
        || options.iter().enumerate().flat_map(|(i, a)| options.iter().skip(i + 1).map(move |b| (a, b)));
    pairs().all(|(a, b)| apart_c(&a.1, &b.1) >= APART_C)
}

/// In an order that tells nothing of which is right and stays as long as the water's marks do.
pub(crate) fn shuffled(
    water: &Water,
    kind: u8,
    options: Vec<(&'static str, Curve)>,
) -> Vec<(&'static str, Curve)> {
    let mut random = Random::seeded(seed(water), u64::from(kind));
    let mut drawn: Vec<(f64, (&'static str, Curve))> =
        options.into_iter().map(|option| (random.uniform(), option)).collect();
    sort_by(&mut drawn, |a, b| a.0.total_cmp(&b.0));
    drawn.into_iter().map(|(_, option)| option).collect()
}

/// A number of the water that one mended reading does not change: where it was read.
pub(crate) fn seed(water: &Water) -> u64 {
    let marks = water.levels().len() as u64;
    marks.wrapping_mul(1_000_003) ^ (water.last_m() * 100.0).round() as u64
}

/// A profile as a curve from the surface to the bed, in not too many points.
pub(crate) fn of_levels(levels: &[Level], bed_m: f64) -> Curve {
    let stride = levels.len().div_ceil(MOST_POINTS).max(1);
    let (Some(first), Some(last)) = (levels.first(), levels.last()) else { return Vec::new() };
    let mut curve: Curve = vec![(0.0, first.temp_c)];
    curve.extend(levels.iter().step_by(stride).filter(|l| l.depth_m > 0.0).map(|l| (l.depth_m, l.temp_c)));
    if curve.last().is_some_and(|p| p.0 < bed_m) {
        curve.push((last.depth_m.max(bed_m), last.temp_c));
    }
    curve
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_axis_of_whole_degrees() {
        assert_eq!(axis_c(8.3, 22.1), (7.0, 23.0));
        assert_eq!(axis_c(12.0, 12.3), (9.0, 15.0));
        assert_eq!(axis_c(f64::INFINITY, f64::NEG_INFINITY), (0.0, 30.0));
    }

    #[test]
    fn curves_between_their_points() {
        let curve = vec![(0.0, 20.0), (2.0, 20.0), (4.0, 10.0)];
        assert_eq!(
            [-1.0, 0.0, 1.0, 3.0, 4.0, 9.0].map(|z| at(&curve, z)),
            [20.0, 20.0, 20.0, 15.0, 10.0, 10.0]
        );
        let colder = vec![(0.0, 18.0), (2.0, 18.0), (4.0, 8.0)];
        assert!((apart_c(&curve, &colder) - 2.0).abs() < 1e-9);
        assert!(
            all_apart(&[("a", curve.clone()), ("b", colder)])
                && !all_apart(&[("a", curve.clone()), ("b", curve)])
        );
    }
}
