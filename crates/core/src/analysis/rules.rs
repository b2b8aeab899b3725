//! The published rules by name: which depth each looks for, and what it says.

use super::Method;

/// A published rule beside the class's own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// Thermocline: middle of the steepest step (class rule; methods 5.3).
    SteepestMiddle,
    /// Thermocline: where density changes fastest (methods 5.4).
    DensestStep,
    /// Thermocline: balance point of the steepest step and its neighbours (5.3).
    Centroid,
    /// Thermocline: top of a parabola through their cooling (5.3).
    Parabola,
    /// Thermocline: steepest place of a smooth curve through every value (5.3).
    MonotoneCurve,
    /// Mixed layer: 1.0 °C colder than at the reference depth (class rule; 6.1).
    TempDrop,
    /// Mixed layer: 0.2 °C colder (6.1); source: [`Montegut2004`](crate::bibliography::Montegut2004).
    TempDrop02,
    /// Mixed layer: 0.5 °C colder (6.1); source: [`Levitus1982`](crate::bibliography::Levitus1982).
    TempDrop05,
    /// Mixed layer: 0.8 °C colder (6.1); source: [`Kara2000`](crate::bibliography::Kara2000).
    TempDrop08,
    /// Mixed layer: 1.0 °C colder (6.1), beside a class rule of another step.
    TempDrop10,
    /// Mixed layer: 0.03 kg m⁻³ denser than at the reference depth (6.1); source:
    /// [`Montegut2004`](crate::bibliography::Montegut2004).
    DensityRise003,
    /// Mixed layer: 0.1 kg m⁻³ denser than at the reference depth (6.1); source:
    /// [`Wilson2020`](crate::bibliography::Wilson2020).
    DensityRise,
    /// Mixed layer: 0.125 kg m⁻³ denser than at the reference depth (6.1); source:
    /// [`Levitus1982`](crate::bibliography::Levitus1982).
    DensityRise0125,
    /// Mixed layer: top of the first step of at least 1 °C per metre (6.2).
    FirstSteepTop,
    /// Mixed layer: middle of that step (6.2).
    FirstSteepMiddle,
    /// Mixed layer: top of the first step that gains at least 0.1 kg m⁻³ per metre (6.2).
    FirstDenseTop,
    /// Mixed layer: the sharpest bend (6.3).
    SharpestBend,
    /// Mixed layer: the greatest angle between lines above and below (6.4).
    GreatestAngle,
    /// Mixed layer: corner of an even layer over a straight slope (6.5).
    BrokenStick,
    /// Mixed layer: upper corner of even, slope, even (6.5).
    ThreeLayers,
}

/// The depth a rule looks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sought {
    /// Of the thermocline.
    Thermocline,
    /// Of the mixed layer's end.
    MixedLayerEnd,
}

impl Rule {
    /// Every rule; of each depth sought the class's own first.
    pub const ALL: [Self; 20] = [
        Self::SteepestMiddle,
        Self::DensestStep,
        Self::Centroid,
        Self::Parabola,
        Self::MonotoneCurve,
        Self::TempDrop,
        Self::TempDrop02,
        Self::TempDrop05,
        Self::TempDrop08,
        Self::TempDrop10,
        Self::DensityRise003,
        Self::DensityRise,
        Self::DensityRise0125,
        Self::FirstSteepTop,
        Self::FirstSteepMiddle,
        Self::FirstDenseTop,
        Self::SharpestBend,
        Self::GreatestAngle,
        Self::BrokenStick,
        Self::ThreeLayers,
    ];

    /// The rules that every [`Analysis`](super::Analysis) tells; a lesson's lists offer these.
    pub const QUICK: [Self; 6] = [
        Self::SteepestMiddle,
        Self::DensestStep,
        Self::TempDrop,
        Self::DensityRise,
        Self::FirstSteepTop,
        Self::FirstSteepMiddle,
    ];

    /// Which depth the rule looks for.
    ///
    /// ```
    /// use layercast_core::{Rule, Sought};
    /// assert_eq!(Rule::DensestStep.seeks(), Sought::Thermocline);
    /// assert_eq!(Rule::BrokenStick.seeks(), Sought::MixedLayerEnd);
    /// ```
    pub fn seeks(self) -> Sought {
        match self {
            Self::SteepestMiddle
            | Self::DensestStep
            | Self::Centroid
            | Self::Parabola
            | Self::MonotoneCurve => Sought::Thermocline,
            Self::TempDrop
            | Self::TempDrop02
            | Self::TempDrop05
            | Self::TempDrop08
            | Self::TempDrop10
            | Self::DensityRise003
            | Self::DensityRise
            | Self::DensityRise0125
            | Self::FirstSteepTop
            | Self::FirstSteepMiddle
            | Self::FirstDenseTop
            | Self::SharpestBend
            | Self::GreatestAngle
            | Self::BrokenStick
            | Self::ThreeLayers => Sought::MixedLayerEnd,
        }
    }

    /// The step of temperature \[°C\] a mixed-layer rule looks for; `None` for rules of another kind.
    ///
    /// ```
    /// use layercast_core::{Method, Rule};
    /// let class = Method { mixed_drop_c: 0.7, ..Method::default() };
    /// assert_eq!(Rule::TempDrop.temp_step_c(&class), Some(0.7));
    /// assert_eq!(Rule::TempDrop02.temp_step_c(&class), Some(0.2));
    /// assert_eq!(Rule::DensityRise.temp_step_c(&class), None);
    /// ```
    pub fn temp_step_c(self, method: &Method) -> Option<f64> {
        match self {
            Self::TempDrop => Some(method.mixed_drop_c),
            Self::TempDrop02 => Some(0.2),
            Self::TempDrop05 => Some(0.5),
            Self::TempDrop08 => Some(0.8),
            Self::TempDrop10 => Some(1.0),
            _ => None,
        }
    }

    /// The rise of density \[kg m⁻³\] a mixed-layer rule looks for; `None` for rules of another kind.
    ///
    /// ```
    /// use layercast_core::Rule;
    /// assert_eq!(Rule::DensityRise0125.density_rise_kg_m3(), Some(0.125));
    /// assert_eq!(Rule::FirstDenseTop.density_rise_kg_m3(), None);
    /// ```
    pub fn density_rise_kg_m3(self) -> Option<f64> {
        match self {
            Self::DensityRise003 => Some(0.03),
            Self::DensityRise => Some(crate::layers::mixed_layer::DENSITY_RISE_KG_M3),
            Self::DensityRise0125 => Some(0.125),
            _ => None,
        }
    }
}

/// What one rule says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RuleValue {
    /// The rule.
    pub rule: Rule,
    /// Its depth, metres; `None` when it finds none.
    pub value_m: Option<f64>,
}
