//! Kind 9: where does your mixed layer end, by the 1.0 °C rule? Three parts: the temperature looked for, the two
//! marks it lies between, the depth in that step.
//!
//! Temperature: within 0.1 °C of the reference less the drop, by the mean, going down or coming up. Marks: the pair that
//! holds it by any of these, or by the temperature accepted before. Depth: the straight way from mark to mark, within
//! ± max(0.05 m, the uncertainty of methods 8.2), in the step given before. Another published rule is right if named.
//!
//! The depth is asked only where the nearest mark would not pass for right. An idea that leads to the same temperature,
//! marks and depth on this water changes nothing and is let be; one that would pass for right with another meaning (the
//! thermocline lies in the same step, its middle at the crossing) drops the question.

mod crossing;
mod judge;
mod sums;

use self::crossing::{
    Crossing, asks_depth, class_crossing, crossings, depths, drop_c, ends_at_a_mark, reference_m, same,
    targets,
};
use self::sums::{pair_lines, split};
use super::colder_by::elsewhere;
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, LAYERED, Line, Plan, Question, Uncovers,
};
use crate::questions::ranges::{accepted, fits_c, span};
use crate::questions::say::{Numbers, bare, in_c, minus, result, rounded, stretch};
use crate::questions::text::Fields;
use crate::questions::water::{Source, Water};
use layercast_core::{Message, MixedLayer, Sought, State};

const SURFACE: &str = "from_the_surface";
const PREVIOUS: &str = "below_the_previous_mark";
const THERMOCLINE: &str = "the_thermocline";
const NEAREST: &str = "nearest_mark";

/// Least give of the depth, metres.
const LEAST_M: f64 = 0.05;
/// Give of a depth by another rule, metres.
const OTHER_RULE_M: f64 = 0.1;

/// A step of another, deeper water, where this one has none to show it on.
const ANOTHER_WATER: Crossing = Crossing { marks_m: (40.0, 41.0), temps_c: (14.8, 13.5) };

/// Kind 9.
pub(crate) struct MixedLayerEnd;

impl MixedLayerEnd {
    fn own_target(q: &Question) -> Option<f64> {
        q.part(0).and_then(|a| a.value)
    }

    /// The class's own end, where the sum by the student's temperature gives another depth: that is what the picture shows.
    fn class_too(q: &Question, shown_m: f64) -> Vec<Message> {
        let Some((target, at)) = class_crossing(q.water) else { return Vec::new() };
        let value_m = at.depth_m(target);
        if (rounded(value_m, 2) - rounded(shown_m, 2)).abs() < 0.005 {
            return Vec::new();
        }
        vec![stretch(Message::new("ask-9-class"), "from", "to", at.marks_m, 1).m("value", value_m)]
    }

    /// The temperature and crossing that an explanation goes by: those of the accepted pair, else the class's.
    fn by(q: &Question) -> Option<(f64, Crossing)> {
        let given = q.part(1).and_then(|a| a.stretch_m);
        let own = given.and_then(|given| {
            crossings(q.water, Self::own_target(q)).into_iter().find(|(_, _, at)| same(at.marks_m, given))
        });
        own.map(|(_, target, at)| (target, at)).or_else(|| class_crossing(q.water))
    }
}

impl Kind for MixedLayerEnd {
    fn routes(&self) -> &'static [State] {
        LAYERED
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: SURFACE, part: 0 },
            Idea { key: PREVIOUS, part: 0 },
            Idea { key: SURFACE, part: 1 },
            Idea { key: PREVIOUS, part: 1 },
            Idea { key: THERMOCLINE, part: 1 },
            Idea { key: NEAREST, part: 2 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let Some(MixedLayer::At { target_c, .. }) = water.analysis().mixed_layer else {
            return Err(Dropped::telling("ask-dropped-9-deep"));
        };
        if water.between(reference_m(water), Source::Mean).is_some_and(|c| target_c > c) {
            return Err(Dropped::telling("ask-dropped-9-warmer"));
        }
        let Some((_, at)) = class_crossing(water) else { return Err(Dropped::telling("ask-dropped-9-deep")) };
        // The thermocline in the same step: only the depth in it can tell, and only away from the middle.
        let in_one_step = water.steep().is_some_and(|s| same(s.step_m, at.marks_m));
        if in_one_step {
            let middle = f64::midpoint(at.marks_m.0, at.marks_m.1);
            let passes = depths(water, at.marks_m, None).iter().any(|r| r.holds(middle));
            if !asks_depth(water) || passes {
                return Err(Dropped::telling("ask-dropped-9-same"));
            }
        }
        Ok(Vec::new())
    }

    fn plan(&self, q: &Question) -> Plan {
        let (drop, z) = (drop_c(q.water), reference_m(q.water));
        let metres = || Some(Message::new("ask-after-m"));
        let temp = Line::new(
            Message::new("ask-9-label-temp"),
            vec![Field::number("temp", Message::new("ask-name-temp"), Some(Message::new("ask-after-c")))],
        );
        let pair = Line::new(
            Message::new("ask-9-label-pair"),
            vec![
                Field::number("from", Message::new("ask-name-from"), Some(Message::new("ask-after-m-and"))),
                Field::number("to", Message::new("ask-name-to"), metres()),
            ],
        );
        let depth = Line::new(
            Message::new("ask-9-label-depth"),
            vec![Field::number("depth", Message::new("ask-name-depth"), metres())],
        );
        let mut parts = vec![vec![temp], vec![pair]];
        let three = asks_depth(q.water);
        if three {
            parts.push(vec![depth]);
        }
        Plan {
            ask: Message::new("ask-9").number("drop", drop, 1),
            lead: vec![Message::new("ask-9-lead").number("drop", drop, 1).m("depth", z)],
            parts,
            notes: vec![Message::new(match (three, ends_at_a_mark(q.water)) {
                (true, _) => "ask-9-note",
                (false, true) => "ask-9-note-two",
                (false, false) => "ask-9-note-near",
            })],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        match part {
            0 => Self::judge_temp(q, fields),
            1 => Self::judge_pair(q, fields),
            _ => Self::judge_depth(q, fields),
        }
    }

    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        let (drop, z) = (drop_c(q.water), reference_m(q.water));
        match (part, level) {
            (0, 1) => Hint::Words(Message::new("ask-9-temp-hint-1").m("depth", z)),
            (0, 2) => Hint::Words(Message::new("ask-9-temp-hint-2").number("drop", drop, 1)),
            (0, _) => {
                let right = targets(q.water);
                let other = (q.water.levels().iter().filter(|l| l.depth_m > z))
                    .find(|l| !right.iter().any(|r| r.holds(l.temp_c - drop)));
                let own = other.map(|l| {
                    let gloss = Message::new("ask-9-temp-worked").m("depth", l.depth_m);
                    result(minus(l.temp_c, drop, 1), in_c(l.temp_c - drop), gloss)
                });
                let far = |t: &f64| !right.iter().any(|r| r.holds(t - drop));
                let elsewhere = [30.2, 15.2]
                    .into_iter()
                    .find(far)
                    .map(|t| result(minus(t, drop, 1), in_c(t - drop), Message::new("ask-made-up")));
                Hint::Worked(own.or(elsewhere).into_iter().collect())
            }
            (1, 1) => Hint::Words(Message::new("ask-9-pair-hint-1")),
            (1, 2) => Hint::Words(Message::new("ask-9-pair-hint-2")),
            (2, 1) => Hint::Words(Message::new("ask-9-depth-hint-1")),
            (2, 2) => Hint::Words(Message::new("ask-9-depth-hint-2")),
            (part, _) => {
                let at = self.elsewhere_m(q).and_then(|(a, b)| {
                    let temps_c = (q.water.temp(a, Source::Mean)?, q.water.temp(b, Source::Mean)?);
                    Some(Crossing { marks_m: (a, b), temps_c })
                });
                let at = at.unwrap_or(ANOTHER_WATER);
                // A temperature a third of the way down that step.
                let third = at.temps_c.0 + (at.temps_c.1 - at.temps_c.0) / 3.0;
                let target = rounded(third, if (at.temps_c.0 - at.temps_c.1) > 0.5 { 1 } else { 2 });
                if part == 1 {
                    Hint::Worked(pair_lines(&at, Some(target)))
                } else {
                    Hint::Worked(split(&at, target))
                }
            }
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        let Some((target, at)) = Self::by(q) else { return Accepted::default() };
        let marks = Some(at.marks_m);
        match part {
            0 => targets(q.water).first().map(accepted).unwrap_or_default(),
            1 => Accepted { stretch_m: marks, source: Some(Source::Mean), ..Accepted::default() },
            _ => Accepted { value: Some(at.depth_m(target)), stretch_m: marks, ..Accepted::default() },
        }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let drop = drop_c(q.water);
        let own_words = Message::new("ask-9-own-words");
        let nothing = Explained {
            shown: Message::new("ask-sum-nothing"),
            sum: Vec::new(),
            fits: None,
            notes: Vec::new(),
            own_words: own_words.clone(),
        };
        if part == 0 {
            // By the readings the student took, else by the mean.
            let by = q.part(0).and_then(|a| a.source);
            let all = targets(q.water);
            let own = all.iter().find(|r| Some(r.source) == by).or(all.first());
            let Some(range) = own.copied() else { return nothing };
            let gloss = Message::new("ask-9-sum-target");
            let fits = span(&all).map(|(low, high)| fits_c(q.water, low, high));
            let sum = vec![result(minus(range.value + drop, drop, 1), in_c(range.value), gloss)];
            return Explained {
                shown: Message::new("ask-value-c").message("value", bare(range.value)),
                sum,
                fits,
                ..nothing
            };
        }
        let Some((target, at)) = Self::by(q) else { return nothing };
        if q.part(1).is_some_and(|a| a.rule.is_some()) {
            let class = stretch(Message::new("ask-9-class"), "from", "to", at.marks_m, 1).number(
                "value",
                rounded(at.depth_m(target), 2),
                2,
            );
            return Explained { notes: vec![class], ..nothing };
        }
        if part == 1 {
            let shown = stretch(Message::new("ask-value-from-to"), "from", "to", at.marks_m, 1);
            // The temperature is not told before its own part is settled. Where the depth is not asked, it is said.
            let said = q.part(0).map(|_| target);
            let depth = Message::new("ask-9-ends").m("value", at.depth_m(target));
            let notes = if asks_depth(q.water) { Vec::new() } else { vec![depth] };
            return Explained { shown, sum: pair_lines(&at, said), notes, ..nothing };
        }
        let notes = Self::class_too(q, at.depth_m(target));
        let fits = span(&depths(q.water, at.marks_m, Self::own_target(q)))
            .map(|(low, high)| Message::new("ask-9-fits").number("low", low, 2).number("high", high, 2));
        Explained {
            shown: Message::new("ask-value-m").m("value", at.depth_m(target)),
            sum: if q.part(0).is_some() { split(&at, target) } else { Vec::new() },
            fits,
            notes,
            ..nothing
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn step_m(&self, q: &Question, _fields: &Fields) -> Option<(f64, f64)> {
        q.part(1).and_then(|a| a.stretch_m)
    }

    fn elsewhere_m(&self, q: &Question) -> Option<(f64, f64)> {
        let (_, at) = Self::by(q)?;
        elsewhere(q.water, at.marks_m, |_| false, |_, _| 0.0)
    }

    fn shows_means(&self) -> bool {
        true
    }

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { mixed_layer: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::MixedLayer)
    }

    fn seeks(&self) -> Option<Sought> {
        Some(Sought::MixedLayerEnd)
    }
}
