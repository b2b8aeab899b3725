//! The three marks as text, as depths, and in their order: what both the actions and the screens need.

use crate::document::{MarkDoc, MarkDocs, MarkName};
use crate::numbers::{mark_decimals, rounded};
use layercast_core::Analysis;
use layercast_core::order::sort_numbers;
use layercast_exchange::document::typed_depth;

/// All marks, top to bottom.
pub const ALL: [MarkName; 3] = [MarkName::Mixed, MarkName::Thermocline, MarkName::Deep];

/// Slack of comparisons between depths, metres.
const SLACK_M: f64 = 1e-9;

impl MarkDocs {
    /// One mark.
    pub fn get(&self, mark: MarkName) -> &MarkDoc {
        match mark {
            MarkName::Mixed => &self.mixed,
            MarkName::Thermocline => &self.thermocline,
            MarkName::Deep => &self.deep,
        }
    }

    /// One mark, to change it.
    pub fn get_mut(&mut self, mark: MarkName) -> &mut MarkDoc {
        match mark {
            MarkName::Mixed => &mut self.mixed,
            MarkName::Thermocline => &mut self.thermocline,
            MarkName::Deep => &mut self.deep,
        }
    }

    /// Each is placed or refused.
    pub fn all_settled(&self) -> bool {
        ALL.iter().all(|mark| self.get(*mark).is_settled())
    }

    /// Each is refused: "I see no layers".
    pub fn all_refused(&self) -> bool {
        ALL.iter().all(|mark| self.get(*mark).refused)
    }
}

/// The depths a mark may have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reach {
    /// First reading, metres.
    pub first_m: f64,
    /// Last reading, metres.
    pub last_m: f64,
    /// One mark of the cable: the usual step of the cast, metres.
    pub step_m: f64,
}

/// First and last reading and the usual step of a cast; `None` without a reading.
pub fn reach(analysis: &Analysis) -> Option<Reach> {
    let first = analysis.profile.first()?;
    let last = analysis.profile.last()?;
    let mut steps: Vec<f64> = analysis.steps.iter().map(|step| step.bottom_m - step.top_m).collect();
    sort_numbers(&mut steps);
    let step_m = steps.get(steps.len() / 2).copied().filter(|step| *step > 0.0).unwrap_or(0.5);
    Some(Reach { first_m: first.depth_m, last_m: last.depth_m.max(0.0), step_m })
}

/// What keeps a typed depth from being a mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Problem {
    /// Not one depth.
    Unreadable,
    /// Above the surface.
    AboveSurface,
    /// Deeper than the last reading, metres.
    TooDeep(f64),
    /// Above a mark that belongs above it: which, and its depth in metres.
    AboveNeighbour(MarkName, f64),
    /// Below a mark that belongs below it: which, and its depth in metres.
    BelowNeighbour(MarkName, f64),
}

/// The depth a person typed, metres; `None` when it is not one depth.
pub fn typed_depth_m(text: &str) -> Option<f64> {
    typed_depth(text).value.filter(|value| value.is_finite())
}

/// The give or take a person typed, metres; `None` when it is none. A plus-minus sign before it is understood.
pub fn typed_give_m(text: &str) -> Option<f64> {
    let text = text.trim_start();
    let text = text.strip_prefix('±').or_else(|| text.strip_prefix("+-")).unwrap_or(text);
    typed_depth_m(text).filter(|value| *value >= 0.0)
}

/// A placed neighbour: which, and its depth in metres.
type Neighbour = Option<(MarkName, f64)>;

/// The neighbours above and below that are placed.
fn neighbours(marks: &MarkDocs, mark: MarkName) -> (Neighbour, Neighbour) {
    let at = |name: MarkName| {
        let doc = marks.get(name);
        doc.depth_m.filter(|_| !doc.refused).map(|depth_m| (name, depth_m))
    };
    match mark {
        MarkName::Mixed => (None, at(MarkName::Thermocline).or_else(|| at(MarkName::Deep))),
        MarkName::Thermocline => (at(MarkName::Mixed), at(MarkName::Deep)),
        MarkName::Deep => (at(MarkName::Thermocline).or_else(|| at(MarkName::Mixed)), None),
    }
}

/// Shallowest and deepest depth of a mark: its neighbours, the surface, the last reading.
pub fn bounds_m(marks: &MarkDocs, mark: MarkName, last_m: f64) -> (f64, f64) {
    let (above, below) = neighbours(marks, mark);
    let most = below.map_or(last_m, |(_, depth_m)| depth_m).min(last_m).max(0.0);
    let least = above.map_or(0.0, |(_, depth_m)| depth_m).max(0.0).min(most);
    (least, most)
}

/// What is wrong with the text of a mark, or the depth it stands for.
pub fn judge(marks: &MarkDocs, mark: MarkName, last_m: f64) -> Result<f64, Problem> {
    let depth_m = typed_depth_m(&marks.get(mark).depth_text).ok_or(Problem::Unreadable)?;
    if depth_m < -SLACK_M {
        return Err(Problem::AboveSurface);
    }
    if depth_m > last_m + SLACK_M {
        return Err(Problem::TooDeep(last_m));
    }
    match neighbours(marks, mark) {
        (Some((name, above_m)), _) if depth_m < above_m - SLACK_M => {
            Err(Problem::AboveNeighbour(name, above_m))
        }
        (_, Some((name, below_m))) if depth_m > below_m + SLACK_M => {
            Err(Problem::BelowNeighbour(name, below_m))
        }
        _ => Ok(depth_m.max(0.0)),
    }
}

/// Places every mark whose text allows it. Marks that stand keep their place; `latest` gives way to all others.
///
/// Without a reading (`last_m` is `None`) nothing changes: the texts wait for their cast.
pub fn settle(marks: &mut MarkDocs, latest: Option<MarkName>, last_m: Option<f64>) {
    let Some(last_m) = last_m else { return };
    if let Some(mark) = latest {
        marks.get_mut(mark).depth_m = None;
    }
    for mark in ALL {
        let too_deep = matches!(judge(marks, mark, last_m), Err(Problem::TooDeep(_)));
        if too_deep || marks.get(mark).refused {
            marks.get_mut(mark).depth_m = None;
        }
    }
    for mark in latest.into_iter().chain(ALL) {
        let doc = marks.get(mark);
        if doc.depth_m.is_none() && !doc.refused && !doc.depth_text.trim().is_empty() {
            let placed = judge(marks, mark, last_m).ok();
            marks.get_mut(mark).depth_m = placed;
        }
    }
}

/// Text of a depth set by grip or key.
pub fn depth_text(depth_m: f64) -> String {
    let decimals = usize::from(mark_decimals(depth_m));
    format!("{:.decimals$}", rounded(depth_m, 2))
}

/// A dragged depth: 0.1 m, 0.05 m in casts shallower than 3 m, kept between `least` and `most`.
pub fn dragged_m(
    y_px: f64,
    surface_y_px: f64,
    px_per_m: f64,
    last_m: f64,
    bounds: (f64, f64),
) -> Option<f64> {
    let depth_m = (y_px - surface_y_px) / px_per_m;
    if !depth_m.is_finite() || px_per_m <= 0.0 {
        return None;
    }
    let grid = if last_m < 3.0 { 20.0 } else { 10.0 };
    let depth_m = depth_m.clamp(-1e6, 1e6);
    Some(rounded((depth_m * grid).round() / grid, 2).max(bounds.0).min(bounds.1))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn marks(texts: [&str; 3]) -> MarkDocs {
        let doc = |text: &str| MarkDoc { depth_text: text.to_owned(), ..MarkDoc::default() };
        let mut marks = MarkDocs { mixed: doc(texts[0]), thermocline: doc(texts[1]), deep: doc(texts[2]) };
        settle(&mut marks, None, Some(9.5));
        marks
    }

    fn depths(marks: &MarkDocs) -> [Option<f64>; 3] {
        ALL.map(|mark| marks.get(mark).depth_m)
    }

    #[test]
    fn marks_in_order_are_placed() {
        assert_eq!(depths(&marks(["2,5", "4 m", "600 cm"])), [Some(2.5), Some(4.0), Some(6.0)]);
    }

    #[test]
    fn marks_at_one_depth_are_in_order() {
        assert_eq!(depths(&marks(["4", "4", "4"])), [Some(4.0); 3]);
    }

    #[test]
    fn the_latest_gives_way_and_comes_back_when_the_way_is_free() {
        let mut marks = marks(["2.5", "4", "6"]);
        marks.thermocline.depth_text = "7".to_owned();
        settle(&mut marks, Some(MarkName::Thermocline), Some(9.5));
        assert_eq!(depths(&marks), [Some(2.5), None, Some(6.0)]);
        assert_eq!(
            judge(&marks, MarkName::Thermocline, 9.5),
            Err(Problem::BelowNeighbour(MarkName::Deep, 6.0))
        );
        marks.deep.depth_text = "8".to_owned();
        settle(&mut marks, Some(MarkName::Deep), Some(9.5));
        assert_eq!(depths(&marks), [Some(2.5), Some(7.0), Some(8.0)]);
    }

    #[test]
    fn what_cannot_be_a_mark_is_kept_as_text() {
        let judged = |text: &str| judge(&marks([text, "", ""]), MarkName::Mixed, 9.5);
        assert_eq!(judged("4-5"), Err(Problem::Unreadable));
        assert_eq!(judged("18 °C"), Err(Problem::Unreadable));
        assert_eq!(judged("-2"), Err(Problem::AboveSurface));
        assert_eq!(judged("12"), Err(Problem::TooDeep(9.5)));
        assert_eq!(judged("9.5"), Ok(9.5));
    }

    #[test]
    fn a_refused_mark_holds_nobody_back() {
        let mut marks = marks(["5", "", ""]);
        marks.mixed.refused = true;
        settle(&mut marks, None, Some(9.5));
        assert_eq!(depths(&marks), [None, None, None]);
        assert_eq!(bounds_m(&marks, MarkName::Thermocline, 9.5), (0.0, 9.5));
        marks.mixed.refused = false;
        settle(&mut marks, Some(MarkName::Mixed), Some(9.5));
        assert_eq!(marks.mixed.depth_m, Some(5.0));
    }

    #[test]
    fn a_shallower_cast_lets_marks_wait() {
        let mut marks = marks(["2.5", "4", "9"]);
        settle(&mut marks, None, Some(7.0));
        assert_eq!(depths(&marks), [Some(2.5), Some(4.0), None]);
        settle(&mut marks, None, Some(9.5));
        assert_eq!(marks.deep.depth_m, Some(9.0));
    }

    #[test]
    fn dragging_rounds_and_stays_between_neighbours() {
        assert_eq!(dragged_m(246.0, 50.0, 46.6, 9.5, (0.0, 9.5)), Some(4.2));
        assert_eq!(dragged_m(246.0, 50.0, 46.6, 9.5, (0.0, 3.75)), Some(3.75));
        assert_eq!(dragged_m(246.0, 50.0, 150.0, 2.0, (0.0, 2.0)), Some(1.3));
        assert_eq!(dragged_m(0.0, 50.0, 46.6, 9.5, (0.0, 9.5)), Some(0.0));
        assert_eq!(dragged_m(f64::NAN, 50.0, 46.6, 9.5, (0.0, 9.5)), None);
        assert_eq!(dragged_m(10.0, 50.0, 0.0, 9.5, (0.0, 9.5)), None);
    }

    #[test]
    fn a_give_may_carry_its_sign() {
        assert_eq!(typed_give_m("± 0,5 m"), Some(0.5));
        assert_eq!(typed_give_m("-1"), None);
        assert_eq!(typed_give_m(""), None);
    }
}
