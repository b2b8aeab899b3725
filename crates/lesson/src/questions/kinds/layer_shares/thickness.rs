//! Thicknesses of the three layers: by the student's own ends and by the class's, and as typed.

use super::super::steep_layer::{class_layer_m, is_cut_off};
use crate::questions::Asked;
use crate::questions::kind::Judged;
use crate::questions::ranges::number;
use crate::questions::replay::first_round;
use crate::questions::text::{Fields, Measure};
use crate::questions::water::{SLACK, Water};
use layercast_core::MixedLayer;
use layercast_exchange::number::quantity;

/// A layer thinner than this is not asked for, metres.
pub(super) const LEAST_M: f64 = 0.2;
/// Give of a thickness, metres.
const GIVE_M: f64 = 0.1;

/// Three thicknesses, metres; without the deep one where the cast ends above it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Thick {
    pub mixed_m: f64,
    pub steep_m: f64,
    pub deep_m: Option<f64>,
}

/// Ends of the layers, the student's own before the class's.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Layers {
    /// End of the mixed layer, metres.
    ends_m: Vec<f64>,
    /// The marks it lies between by the own answer, where no depth was asked, metres.
    end_between_m: Option<(f64, f64)>,
    /// Upper edge of the steep layer, metres.
    tops_m: Vec<f64>,
    /// Lower edge of the steep layer, metres.
    bottoms_m: Vec<f64>,
    /// Depth of the whole: of the last reading, and of the bed.
    pub depths_m: Vec<f64>,
    /// The steep layer goes on below.
    pub cut_off: bool,
}

impl Layers {
    /// Of a water and its sheet.
    pub fn of(water: &Water) -> Self {
        let class_end = match water.analysis().mixed_layer {
            Some(MixedLayer::At { value_m, .. }) => Some(value_m),
            _ => None,
        };
        let own_end = settled(water, 9, Some);
        let own_layer = settled(water, 11, |a| a.stretch_m);
        let layers = || own_layer.into_iter().chain(class_layer_m(water));
        let last_m = water.last_m();
        Self {
            ends_m: own_end.and_then(|a| a.value).into_iter().chain(class_end).collect(),
            end_between_m: own_end.filter(|a| a.value.is_none()).and_then(|a| a.stretch_m),
            tops_m: layers().map(|l| l.0).collect(),
            bottoms_m: layers().map(|l| l.1).collect(),
            depths_m: std::iter::once(last_m)
                .chain(water.context.cast.bed_m.filter(|bed_m| *bed_m > last_m))
                .collect(),
            // By the own lower edge, where there is one.
            cut_off: own_layer.map_or(is_cut_off(water), |l| l.1 >= last_m - SLACK),
        }
    }

    /// The thicknesses that are shown: by the own ends where there are some.
    pub fn class(&self) -> Thick {
        let first = |list: &[f64]| list.first().copied().unwrap_or_default();
        let (end_m, bottom_m, depth_m) = (first(&self.ends_m), first(&self.bottoms_m), first(&self.depths_m));
        Thick {
            mixed_m: end_m,
            steep_m: bottom_m - end_m,
            deep_m: (!self.cut_off).then_some(depth_m - bottom_m),
        }
    }

    /// A thickness of the mixed layer is right.
    pub fn mixed(&self, x: f64) -> bool {
        let between = |(a, b): (f64, f64)| x >= a - SLACK && x <= b + SLACK;
        self.ends_m.iter().any(|end| near(x, *end)) || self.end_between_m.is_some_and(between)
    }

    /// A thickness of the steep layer is right, also below an own mixed layer that is right.
    pub fn steep(&self, x: f64, own_end_m: Option<f64>) -> bool {
        let ends = || self.ends_m.iter().copied().chain(own_end_m);
        self.bottoms_m.iter().any(|bottom| ends().any(|end| near(x, bottom - end)))
    }

    /// A thickness of the deep layer is right.
    pub fn deep(&self, x: f64) -> bool {
        self.depths_m.iter().any(|depth| self.bottoms_m.iter().any(|bottom| near(x, depth - bottom)))
    }

    /// A thickness of the steep layer counts water of the mixed layer again: all down to its lower edge, or from its own
    /// top where that lies above the mixed layer's end.
    pub fn overlap(&self, x: f64) -> bool {
        let from_its_top =
            self.bottoms_m.iter().zip(&self.tops_m).any(|(bottom, top)| {
                self.ends_m.iter().all(|end| *top < end - GIVE_M) && near(x, bottom - top)
            });
        from_its_top || self.bottoms_m.iter().any(|bottom| near(x, *bottom))
    }

    /// A thickness of the deep layer is the whole depth.
    pub fn whole(&self, x: f64) -> bool {
        self.depths_m.iter().any(|depth| near(x, *depth))
    }
}

fn near(x: f64, value: f64) -> bool {
    (x - value).abs() <= GIVE_M + SLACK
}

/// What was taken as right in the last part of a question, if it was.
fn settled<T>(
    water: &Water,
    kind: u8,
    of: impl Fn(crate::questions::kind::Accepted) -> Option<T>,
) -> Option<T> {
    let asked = Asked { id: kind.to_string(), kind, depths_m: Vec::new() };
    let answer = water.context.sheet.answers.get(&asked.id)?;
    of(first_round(water, &asked, Some(answer))?.parts.last()?.accepted?)
}

/// The three numbers as typed, or the slip one of them is.
pub(super) fn thick(fields: &Fields, with_deep: bool) -> Result<Thick, Box<Judged>> {
    let metres = |id: &str| match number(fields, id, Measure::Length)? {
        typed if typed.unit_is_wrong => Err(Box::new(Judged::slip(
            layercast_core::Message::new("ask-12-slip-unit")
                .text("yours", crate::questions::text::short(crate::questions::text::field(fields, id))),
        ))),
        typed => Ok(typed.value),
    };
    let (mixed_m, steep_m) = (metres("mixed")?, metres("steep")?);
    let deep_m = if with_deep { Some(metres("deep")?) } else { None };
    Ok(Thick { mixed_m, steep_m, deep_m })
}

/// A share in hundredths: "32", "32 %".
pub(super) fn percent(text: &str) -> Option<f64> {
    let plain = text.trim().trim_end_matches('%');
    quantity(plain).filter(|q| q.unit.is_none() && q.to.is_none()).map(|q| q.value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_share_with_or_without_its_sign() {
        assert_eq!(percent("32"), Some(32.0));
        assert_eq!(percent(" 32,5 % "), Some(32.5));
        assert_eq!(percent("32 m"), None);
        assert_eq!(percent("30–35"), None);
    }

    #[test]
    fn what_is_counted_twice() {
        let layers = Layers {
            ends_m: vec![3.0],
            end_between_m: None,
            tops_m: vec![2.5],
            bottoms_m: vec![5.0],
            depths_m: vec![8.0],
            cut_off: false,
        };
        assert!(layers.steep(2.0, None) && layers.steep(2.1, None) && !layers.steep(2.5, None));
        assert!(layers.overlap(2.5) && layers.overlap(5.0) && !layers.overlap(2.0));
        assert!(layers.deep(3.0) && layers.whole(8.0));
        assert_eq!(layers.class(), Thick { mixed_m: 3.0, steep_m: 2.0, deep_m: Some(3.0) });
    }
}
