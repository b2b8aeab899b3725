//! Which unit, when none is written: taken for granted where only one fits, asked where a guess could be wrong.

use super::depths::usual_step;
use crate::document::Unit;
use layercast_core::order::sort_numbers;

/// What a unit is, and how that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Scale {
    /// Written in the table or chosen by a person.
    Written(Unit),
    /// Nothing written, but only this fits.
    Taken(Unit),
    /// Must be asked.
    Ask,
    /// A unit is written that cannot be true: must be asked.
    Doubtful(Unit),
}

impl Scale {
    /// The unit, if it is settled.
    pub fn unit(self) -> Option<Unit> {
        match self {
            Self::Written(unit) | Self::Taken(unit) => Some(unit),
            Self::Ask | Self::Doubtful(_) => None,
        }
    }
}

/// Lowest and highest temperature of liquid lake water that needs no question, °C: the gross range that raises no
/// suspicion (0 to 32), with half a degree for the probe below zero.
const WATER_C: std::ops::RangeInclusive<f64> = -0.5..=32.0;

/// Above this the median of temperatures written as °C is asked about: beyond what any lake water fails at.
const SCALDING_C: f64 = 40.0;

/// Temperatures without a unit: within −0.5 to 32 they are °C; with any above 32 and the median above 32, a question.
///
/// Written units are believed unless the median could not be lake water by any means.
pub(super) fn temperature(values: &[f64], written: Option<Unit>) -> Scale {
    let median = median(values);
    match written {
        Some(Unit::F) if median.is_some_and(|median| *WATER_C.start() <= median && median < 30.0) => {
            Scale::Doubtful(Unit::F)
        }
        Some(Unit::C) if median.is_some_and(|median| median > SCALDING_C) => Scale::Doubtful(Unit::C),
        Some(unit) => Scale::Written(unit),
        None if median.is_some_and(|median| median > *WATER_C.end()) => Scale::Ask,
        None => Scale::Taken(Unit::C),
    }
}

/// Depths without a unit: at most 30, in usual steps of 0.25, 0.5, 1 or 2, they are metres; else a question.
///
/// `depths`: in the order of the table, downward positive, without the cells that are off.
pub(super) fn depth(depths: &[f64], written: Option<Unit>) -> Scale {
    if let Some(unit) = written {
        return Scale::Written(unit);
    }
    if looks_like_metres(depths) { Scale::Taken(Unit::M) } else { Scale::Ask }
}

/// The rule of [`depth`], also used to name the likeliest unit of a column nobody has named.
pub(super) fn looks_like_metres(depths: &[f64]) -> bool {
    let deepest = depths.iter().copied().filter(|depth| depth.is_finite()).fold(0.0, f64::max);
    let usual = [0.25, 0.5, 1.0, 2.0];
    deepest <= 30.0 + 1e-9
        && usual_step(depths).is_some_and(|step| usual.iter().any(|usual| (step - usual).abs() <= 1e-6))
}

fn median(values: &[f64]) -> Option<f64> {
    let mut finite: Vec<f64> = values.iter().copied().filter(|value| value.is_finite()).collect();
    sort_numbers(&mut finite);
    let upper = finite.get(finite.len() / 2)?;
    let lower = finite.get((finite.len() - 1) / 2)?;
    Some(lower + (upper - lower) / 2.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn temperatures_without_a_unit() {
        assert_eq!(temperature(&[-0.5, 32.0], None), Scale::Taken(Unit::C));
        assert_eq!(temperature(&[20.0, 21.0, 177.0], None), Scale::Taken(Unit::C));
        assert_eq!(temperature(&[48.0, 60.0, 74.3], None), Scale::Ask);
        assert_eq!(temperature(&[31.9, 32.1], None), Scale::Taken(Unit::C));
        assert_eq!(temperature(&[32.1], None), Scale::Ask);
        assert_eq!(temperature(&[], None), Scale::Taken(Unit::C));
    }

    #[test]
    fn a_written_unit_is_believed_unless_it_cannot_be_true() {
        assert_eq!(temperature(&[74.0, 60.0, 48.0], Some(Unit::F)), Scale::Written(Unit::F));
        assert_eq!(temperature(&[33.0, 34.0], Some(Unit::C)), Scale::Written(Unit::C));
        assert_eq!(temperature(&[74.0, 60.0, 48.0], Some(Unit::C)), Scale::Doubtful(Unit::C));
        assert_eq!(temperature(&[23.5, 12.0, 8.9], Some(Unit::F)), Scale::Doubtful(Unit::F));
    }

    #[test]
    fn depths_without_a_unit() {
        assert_eq!(depth(&[0.0, 0.5, 1.0], None), Scale::Taken(Unit::M));
        assert_eq!(depth(&[0.0, 2.0, 4.0, 30.0], None), Scale::Taken(Unit::M));
        assert_eq!(depth(&[0.0, 10.0, 20.0, 30.0], None), Scale::Ask);
        assert_eq!(depth(&[0.0, 0.3, 0.6], None), Scale::Ask);
        assert_eq!(depth(&[0.0, 50.0, 100.0], None), Scale::Ask);
        assert_eq!(depth(&[3.0], None), Scale::Ask);
        assert_eq!(depth(&[0.0, 50.0], Some(Unit::Cm)), Scale::Written(Unit::Cm));
    }
}
