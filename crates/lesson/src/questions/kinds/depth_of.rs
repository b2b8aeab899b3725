//! Kind 2: how deep is 12 °C? Read from the picture: right within half of the interval in which the water has that
//! temperature, by the mean, going down or coming up; a range counts by its middle.
//!
//! Asked of a temperature that the water has at one depth only, on either way, where neither idea could pass for right:
//! depth read as height from the bottom, or the next mark below instead of the line.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, depth, quoted, right_said, span, stand, tellable,
};
use crate::questions::say::{Numbers, in_c, in_m, line, result, rounded};
use crate::questions::text::{Fields, field, in_metres};
use crate::questions::water::{FINEST_M, SLACK, Source, Water, whole};
use layercast_core::{Level, Message, State};

const HEIGHT: &str = "depth_as_height";
const NEXT: &str = "next_mark";

/// Temperatures are sought in these steps, °C: whole ones first.
const STEPS_C: [f64; 3] = [1.0, 0.5, 0.1];
/// Most temperatures of one step that are looked at.
const MOST: usize = 400;
/// A step counts as sloping from this share of the steepest on.
const SLOPING: f64 = 0.25;
/// A range given for a depth may be this many intervals wide.
const WIDEST: f64 = 1.5;
/// How far from the next mark an answer still shows that idea, metres.
const AT_A_MARK_M: f64 = 0.05;
/// A number so near to the temperature is the temperature, °C.
const GIVE_C: f64 = 0.05;

/// Kind 2.
pub(crate) struct DepthOf;

/// Where the line has a temperature: between these two levels.
#[derive(Clone, Copy, Debug)]
struct Crossing {
    upper: (f64, f64),
    lower: (f64, f64),
}

impl Crossing {
    fn length_m(&self) -> f64 {
        self.lower.0 - self.upper.0
    }

    fn depth_m(&self, temp_c: f64) -> f64 {
        let drop = self.upper.1 - self.lower.1;
        self.upper.0 + self.length_m() * (self.upper.1 - temp_c) / drop
    }
}

/// The one place where the water has a temperature by some readings; `None` where there are several or none.
fn crossing(water: &Water, temp_c: f64, source: Source) -> Option<Crossing> {
    let at = |l: &Level| Some((l.depth_m, Water::of(l, source)?));
    let mut found = None;
    let mut before: Option<(f64, f64)> = None;
    for here in water.levels().iter().filter_map(at) {
        if let Some(upper) = before {
            let (low, high) = (upper.1.min(here.1), upper.1.max(here.1));
            if temp_c >= low - SLACK && temp_c <= high + SLACK && high - low > SLACK {
                // A reading of just that temperature ends two intervals.
                let at_its_top = (temp_c - upper.1).abs() <= SLACK;
                if found.is_some() && !at_its_top {
                    return None;
                }
                found = found.or(Some(Crossing { upper, lower: here }));
            } else if (temp_c - here.1).abs() <= SLACK {
                return None;
            }
        }
        before = Some(here);
    }
    found
}

/// What is right for a temperature: by the mean first; `None` where a way of reading has it at several depths or at none.
fn ranges(water: &Water, temp_c: f64) -> Option<Vec<Range>> {
    let both = water.analysis().pairs.count > 0;
    let sources: &[Source] = if both { &[Source::Mean, Source::Down, Source::Up] } else { &[Source::Mean] };
    let range = |source: &Source| {
        let at = crossing(water, temp_c, *source)?;
        Some(Range { source: *source, value: at.depth_m(temp_c), give: at.length_m() / 2.0 })
    };
    sources.iter().map(range).collect()
}

fn wrongs(water: &Water, temp_c: f64) -> Vec<Wrong> {
    let Some(at) = crossing(water, temp_c, Source::Mean) else { return Vec::new() };
    let right_m = at.depth_m(temp_c);
    // Height counted from the last reading, or from the bed if it is known.
    let foots = [Some(water.last_m()), water.context.cast.bed_m];
    let mirrored = foots.into_iter().flatten().map(|foot_m| Wrong {
        key: HEIGHT,
        value: foot_m - right_m,
        give: at.length_m() / 2.0,
    });
    mirrored.chain([Wrong { key: NEXT, value: at.lower.0, give: AT_A_MARK_M }]).collect()
}

/// What makes a temperature a good one to ask for: away from the steepest, in a sloping part, a whole degree; then how
/// far the nearest idea is from what is right, in intervals.
fn rank(water: &Water, temp_c: f64, steepest: f64) -> Option<([bool; 3], f64)> {
    let (ranges, wrongs) = (ranges(water, temp_c)?, wrongs(water, temp_c));
    if !tellable(&ranges, &wrongs) {
        return None;
    }
    let at = crossing(water, temp_c, Source::Mean)?;
    let slope = ((at.upper.1 - at.lower.1) / at.length_m()).abs();
    let away =
        |w: &Wrong| ranges.iter().map(|r| (w.value - r.value).abs() - r.give).fold(f64::INFINITY, f64::min);
    let margin = wrongs.iter().map(away).fold(f64::INFINITY, f64::min) / at.length_m();
    let stretch = (at.upper.0, at.lower.0);
    let good = [!water.holds_member(stretch), slope >= SLOPING * steepest, whole(temp_c)];
    Some((good, margin))
}

fn chosen(water: &Water) -> Option<f64> {
    let temps = || water.levels().iter().map(|l| l.temp_c);
    let (low, high) = (temps().fold(f64::INFINITY, f64::min), temps().fold(f64::NEG_INFINITY, f64::max));
    let steepest = water.steps().iter().map(|s| s.cooling_c_per_m.abs()).fold(0.0, f64::max);
    for step in STEPS_C {
        let first = (low / step).ceil();
        let temps = (0..MOST).map(|i| rounded((first + i as f64) * step, 1)).take_while(|t| *t <= high);
        let ranked = temps.filter_map(|t| Some((rank(water, t, steepest)?, t)));
        let best =
            ranked.max_by(|(a, x), (b, y)| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(y.total_cmp(x)));
        if let Some((_, temp_c)) = best {
            return Some(temp_c);
        }
    }
    None
}

/// The temperature that is asked for, kept among the depths of the question.
fn asked_c(q: &Question) -> f64 {
    q.depth(0)
}

impl Kind for DepthOf {
    fn routes(&self) -> &'static [State] {
        &[State::TooFew, State::Weak, State::Stratified, State::Inverse, State::Unstable]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: HEIGHT, part: 0 }, Idea { key: NEXT, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        chosen(water).map(|temp_c| vec![temp_c]).ok_or_else(|| Dropped::plain("ask-dropped-2"))
    }

    fn plan(&self, q: &Question) -> Plan {
        let field = Field::number("depth", Message::new("ask-name-depth"), Some(Message::new("ask-after-m")));
        Plan {
            ask: Message::new("ask-2").mark("temp", asked_c(q)),
            lead: Vec::new(),
            parts: vec![vec![Line::new(Message::new("ask-2-label").mark("temp", asked_c(q)), vec![field])]],
            notes: vec![Message::new("ask-2-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let given = match depth(fields, "depth") {
            Ok(given) => given,
            Err(slip) => return *slip,
        };
        let text = field(fields, "depth");
        let temp_c = asked_c(q);
        let told = |id: &'static str| Message::new(id).message("yours", in_metres(text)).mark("temp", temp_c);
        let ranges = ranges(q.water, temp_c).unwrap_or_default();
        let x = given.typed.value;
        match stand(text, &given.typed, x, &ranges, &wrongs(q.water, temp_c), None) {
            Stand::Right(range) if given.width_m > 2.0 * WIDEST * range.give + FINEST_M => {
                almost(told("ask-2-wide"))
            }
            Stand::Right(range) => {
                let yes = told("ask-2-yes");
                let in_words = in_m(rounded(range.value, 1));
                // A depth from the picture is said to a tenth.
                let value = rounded(range.value, 1);
                let said = if given.width_m > 0.0 {
                    yes
                } else {
                    right_said(yes, quoted(text), (x, &given.typed), value, in_words, 1)
                };
                Judged::yes(said, Accepted { value: Some(x), ..accepted(&range) })
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-2-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(HEIGHT) => Judged::idea(HEIGHT, told("ask-2-height")),
                Some(NEXT) => Judged::idea(NEXT, told("ask-2-next")),
                // The temperature itself, deeper than anything that was read.
                _ if x > q.water.last_m() + SLACK && (x - temp_c).abs() <= GIVE_C => {
                    Judged::not_yet(told("ask-2-temperature"))
                }
                _ => Judged::not_yet(told("ask-2-no")),
            },
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        let temp_c = asked_c(q);
        match level {
            1 => Hint::Words(Message::new("ask-2-hint-1").mark("temp", temp_c)),
            2 => Hint::Words(Message::new("ask-2-hint-2").mark("temp", temp_c)),
            _ => {
                // A reading whose depth is not right here, as far from the asked temperature as can be.
                let right = ranges(q.water, temp_c).unwrap_or_default();
                let far = |l: &&Level| (l.temp_c - temp_c).abs();
                let quiet = |l: &&Level| {
                    let once = crossing(q.water, l.temp_c, Source::Mean).is_some();
                    once && !right.iter().any(|r| r.holds(l.depth_m))
                };
                let other = q.water.levels().iter().filter(quiet).max_by(|a, b| far(a).total_cmp(&far(b)));
                let sum = other.map_or_else(made_up, |l| {
                    let place = Message::new("ask-2-worked").c("temp", l.temp_c);
                    line(place, in_m(l.depth_m), Message::new("ask-2-worked-gloss"))
                });
                Hint::Worked(vec![sum])
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        ranges(q.water, asked_c(q)).and_then(|r| r.first().map(accepted)).unwrap_or_default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let temp_c = asked_c(q);
        let by = q.part(0).and_then(|a| a.source).unwrap_or(Source::Mean);
        let ranges = ranges(q.water, temp_c).unwrap_or_default();
        let value = ranges.iter().find(|r| r.source == by).or(ranges.first()).map_or(0.0, |r| r.value);
        let place = |z: f64| Message::new("ask-2-sum-at").m("depth", z);
        let nothing = || Message::new("ask-sum-nothing");
        let sum = crossing(q.water, temp_c, by).map(|at| {
            let between = Message::new("ask-2-sum-between").mark("temp", temp_c);
            vec![
                line(place(at.upper.0), in_c(at.upper.1), nothing()),
                line(place(at.lower.0), in_c(at.lower.1), nothing()),
                result(between, in_m(rounded(value, 1)), Message::new("ask-2-sum-gloss")),
            ]
        });
        let fits = span(&ranges)
            .map(|(low, high)| Message::new("ask-2-fits").number("low", low, 1).number("high", high, 1));
        Explained {
            shown: Message::new("ask-value-m").m("value", rounded(value, 1)),
            sum: sum.unwrap_or_default(),
            fits,
            notes: Vec::new(),
            own_words: Message::new("ask-2-own-words").mark("temp", temp_c),
        }
    }
}

/// Where this water has no second place to show it on.
fn made_up() -> crate::view::SumLine {
    line(Message::new("ask-2-worked").c("temp", 12.0), in_m(40.5), Message::new("ask-made-up"))
}
