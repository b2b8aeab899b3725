//! The wrong ideas of the catalogue by name: a few words for teachers. What a student is told stands with each kind.

use layercast_core::Message;

/// An idea in a few words; `None` for a key that is in no catalogue.
pub fn idea_name(key: &str) -> Option<Message> {
    let id = match key {
        "depth_as_height" => "idea-depth-as-height",
        "axes_swapped" => "idea-axes-swapped",
        "next_mark" => "idea-next-mark",
        "graph_as_picture" => "idea-graph-as-picture",
        "sum" => "idea-sum",
        "one_temperature" => "idea-one-temperature",
        "not_divided" => "idea-not-divided",
        "multiplied" => "idea-multiplied",
        "metres_per_degree" => "idea-metres-per-degree",
        "divided_by_depth" => "idea-divided-by-depth",
        "biggest_drop_over_a_longer_step" => "idea-biggest-drop-over-a-longer-step",
        "coldest_place" => "idea-coldest-place",
        "bottom" => "idea-bottom",
        "first_steep_step" => "idea-first-steep-step",
        "a_temperature" => "idea-a-temperature",
        "near_surface_layer" => "idea-near-surface-layer",
        "as_sure_as_the_digits" => "idea-as-sure-as-the-digits",
        "the_whole_lake" => "idea-the-whole-lake",
        "from_the_surface" => "idea-from-the-surface",
        "below_the_previous_mark" => "idea-below-the-previous-mark",
        "the_thermocline" => "idea-the-thermocline",
        "nearest_mark" => "idea-nearest-mark",
        "one_degree_in_a_step" => "idea-one-degree-in-a-step",
        "layers_overlap" => "idea-layers-overlap",
        "bottom_forgotten" => "idea-bottom-forgotten",
        "mean_with_signs" => "idea-mean-with-signs",
        "one_leg_is_wrong" => "idea-one-leg-is-wrong",
        "shoulder_of_the_layer" => "idea-shoulder-of-the-layer",
        "still_per_metre" => "idea-still-per-metre",
        "feet_upside_down" => "idea-feet-upside-down",
        "thirty_two_in_a_difference" => "idea-thirty-two-in-a-difference",
        "colder_always_sinks" => "idea-colder-always-sinks",
        "a_degree_is_a_degree" => "idea-a-degree-is-a-degree",
        "colder_is_harder" => "idea-colder-is-harder",
        "upside_down" => "idea-upside-down",
        "zero_or_four" => "idea-zero-or-four",
        "degrees_without_heat" => "idea-degrees-without-heat",
        "hours" => "idea-hours",
        "watts_alone" => "idea-watts-alone",
        "all_depths_cool_alike" => "idea-all-depths-cool-alike",
        "bottom_cools_first" => "idea-bottom-cools-first",
        "cold_stays_on_top" => "idea-cold-stays-on-top",
        "all_colder" => "idea-all-colder",
        "colder_wins" => "idea-colder-wins",
        "warmer_wins" => "idea-warmer-wins",
        "cold_holds_more" => "idea-cold-holds-more",
        "one_is_wrong" => "idea-one-is-wrong",
        "degrees_without_depth" => "idea-degrees-without-depth",
        "heat_without_time" => "idea-heat-without-time",
        "the_same" => "idea-the-same",
        "the_whole_step" => "idea-the-whole-step",
        "more_decimals" => "idea-more-decimals",
        "the_typical_difference" => "idea-the-typical-difference",
        "any_difference" => "idea-any-difference",
        "every_difference_is_a_step" => "idea-every-difference-is-a-step",
        "no_difference_counts" => "idea-no-difference-counts",
        "true_of_layered_water_too" => "idea-true-of-layered-water-too",
        "warm_on_top_is_heavier" => "idea-warm-on-top-is-heavier",
        "one_degree_only" => "idea-one-degree-only",
        "seconds_taken_for_hours" => "idea-seconds-taken-for-hours",
        "what_is_odd_is_wrong" => "idea-what-is-odd-is-wrong",
        "one_reading_is_enough" => "idea-one-reading-is-enough",
        "layers_stay" => "idea-layers-stay",
        _ => return None,
    };
    Some(Message::new(id))
}

#[cfg(test)]
mod tests {
    use super::super::{all_kinds, ideas};
    use super::*;

    #[test]
    fn every_idea_has_a_name() {
        for kind in all_kinds() {
            for idea in ideas(kind) {
                assert!(idea_name(idea.key).is_some(), "kind {kind}: {}", idea.key);
            }
        }
        assert_eq!(idea_name("no such idea"), None);
    }
}
