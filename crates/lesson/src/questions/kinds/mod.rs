//! The kinds, one file each.

pub(crate) mod any_step;
pub(crate) mod believable;
pub(crate) mod best_explanation;
pub(crate) mod colder_by;
pub(crate) mod depth_of;
pub(crate) mod every_two_metres;
pub(crate) mod fastest_stretch;
pub(crate) mod heat_to_mix;
pub(crate) mod heavier_on_top;
pub(crate) mod how_sure;
pub(crate) mod layer_shares;
pub(crate) mod legs_agree;
pub(crate) mod means_nothing;
pub(crate) mod mixed_layer;
pub(crate) mod next_month;
pub(crate) mod one_change;
pub(crate) mod other_units;
pub(crate) mod own;
pub(crate) mod oxygen_low;
pub(crate) mod per_metre;
pub(crate) mod read_again;
pub(crate) mod really_disagree;
pub(crate) mod same_degree;
pub(crate) mod steep_layer;
pub(crate) mod steepest_step;
pub(crate) mod sun_needed;
pub(crate) mod temperature_at;
pub(crate) mod thermocline_depth;
pub(crate) mod three_bars;
pub(crate) mod three_facts;
pub(crate) mod tomorrow;
pub(crate) mod warmest_coldest;
pub(crate) mod which_sinks;
pub(crate) mod which_way_warmer;
pub(crate) mod windy_night;
pub(crate) mod wrong_or_cooling;

use super::kind::Kind;

/// Every kind with its number, in their order. Lessons and notebooks name kinds by these, so they never change; those that a
/// water brings itself begin at [`FIRST_OF_A_WATER`](crate::document::FIRST_OF_A_WATER).
pub(crate) const KINDS: &[(u8, &dyn Kind)] = &[
    (1, &temperature_at::TemperatureAt),
    (2, &depth_of::DepthOf),
    (3, &fastest_stretch::FastestStretch),
    (4, &colder_by::ColderBy),
    (5, &per_metre::PerMetre),
    (6, &steepest_step::SteepestStep),
    (7, &thermocline_depth::ThermoclineDepth),
    (8, &how_sure::HowSure),
    (9, &mixed_layer::MixedLayerEnd),
    (11, &steep_layer::SteepLayer),
    (12, &layer_shares::LayerShares),
    (13, &legs_agree::LegsAgree),
    (14, &which_way_warmer::WhichWayWarmer),
    (15, &read_again::ReadAgain),
    (16, &other_units::OtherUnits),
    (17, &which_sinks::WhichSinks),
    (18, &same_degree::SameDegree),
    (19, &heat_to_mix::HeatToMix),
    (20, &next_month::NextMonth),
    (21, &windy_night::WindyNight),
    (22, &oxygen_low::OxygenLow),
    (23, &really_disagree::ReallyDisagree),
    (24, &best_explanation::BestExplanation),
    (25, &every_two_metres::EveryTwoMetres),
    (26, &one_change::OneChange),
    (27, &means_nothing::MeansNothing),
    (29, &three_bars::ThreeBars),
    (101, &warmest_coldest::WarmestColdest),
    (102, &believable::Believable),
    (103, &any_step::AnyStep),
    (104, &three_facts::ThreeFacts),
    (105, &heavier_on_top::HeavierOnTop),
    (106, &sun_needed::SunNeeded),
    (107, &wrong_or_cooling::WrongOrCooling),
    (108, &tomorrow::Tomorrow),
];

/// The kind of a number.
pub(crate) fn kind(number: u8) -> Option<&'static dyn Kind> {
    KINDS.iter().find(|(n, _)| *n == number).map(|(_, kind)| *kind).or_else(|| own::kind(number))
}
