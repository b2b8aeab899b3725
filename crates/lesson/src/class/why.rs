//! Why two casts of the class differ, or one and the rest, in words: `core::compare`, with what cannot be told apart.

use super::room::Room;
use super::wall::{Core, cores, middle};
use crate::numbers::{WithNum, rounded};
use crate::view::Said;
use layercast_core::compare::{
    Cause, Comparison, Fit, NotTried, Options, Pair, Refusal, Side, Sun, TRIALS, Verdict,
};
use layercast_core::{Level, Message};
use layercast_exchange::number::{Quantity, quantity};
use serde::Serialize;

/// Why two casts differ.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct WhyView {
    /// "A and the rest", "A and B".
    pub title: Said,
    /// What the readings say, most important first.
    pub said: Vec<Said>,
    /// The one of them that a room needs: the cause, or that there is none.
    pub short: Option<Said>,
    /// Each cause that was tried.
    pub causes: Vec<CauseView>,
}

/// One cause.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct CauseView {
    /// "the probe reads otherwise".
    pub name: Said,
    /// How large it would be, and what it leaves; or why it was not tried.
    pub said: Said,
    /// The readings say it, or cannot tell it from the one they say.
    pub possible: bool,
}

/// What is compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Against<'a> {
    /// Content id of one cast.
    pub one: &'a str,
    /// Content id of the other; `None`: the middle of the rest.
    pub other: Option<&'a str>,
    /// How many minutes lie between them, as it was typed; empty where nobody knows. Against the rest it says nothing.
    pub minutes: &'a str,
    /// The one was read after the other.
    pub later: bool,
}

impl Against<'_> {
    /// Minutes from the other to the one; an error where something else was typed.
    fn minutes(&self) -> Result<Option<f64>, Message> {
        if self.other.is_none() || self.minutes.trim().is_empty() {
            return Ok(None);
        }
        match quantity(self.minutes) {
            Some(Quantity { value, to: None, unit: None, .. }) if value > 0.0 && value <= MOST_MINUTES => {
                Ok(Some(if self.later { value } else { -value }))
            }
            _ => Err(Message::new("class-why-minutes-not").text("text", self.minutes.trim())),
        }
    }
}

/// Over more than a week the weather decides, not one number of watts.
const MOST_MINUTES: f64 = 7.0 * 24.0 * 60.0;

/// Why they differ; `None` for casts that are not there. Values are those of the one less the other.
pub fn why(class: &super::Class, against: Against) -> Option<WhyView> {
    let room = Room::of(class);
    let cores = cores(&room);
    let (one, one_core) = side(&room, &cores, against.one)?;
    let (other, other_core) = match against.other {
        Some(id) => {
            let (side, core) = side(&room, &cores, id)?;
            (side, Some(core))
        }
        None => (rest(&room, &cores, against.one), None),
    };
    let names = Names { one: &one_core.name, other: other_core.map(|core| core.name.as_str()) };
    let title = Message::new("class-why-title")
        .text("one", names.one)
        .message("other", names.other("class-why-group"));
    let mut before = before(&cores, one_core, against.other);
    let minutes_apart = against.minutes().unwrap_or_else(|not| {
        before.insert(0, not);
        None
    });
    let options = Options { minutes_apart, ..Options::default() };
    // b less a: the other is a, so that the values are those of the one.
    let view = match Pair::new(&other, &one, &options) {
        Err(refusal) => {
            let id = match refusal {
                Refusal::TooFewDepths => "class-why-too-few",
                Refusal::TooLittleWater => "class-why-too-little",
            };
            let said = before.into_iter().chain([Message::new(id)]).map(Into::into).collect();
            WhyView { title: title.into(), said, short: Some(Message::new(id).into()), causes: Vec::new() }
        }
        Ok(pair) => {
            let found = pair.comparison(&pair.chance(0, TRIALS));
            let sentences = sentences(&found, names);
            // How far apart they are stands first, what it comes to behind it.
            let short = sentences.get(1).cloned().map(Into::into);
            let said = before.into_iter().chain(sentences).map(Into::into).collect();
            WhyView { title: title.into(), said, short, causes: causes(&found, names) }
        }
    };
    Some(view)
}

/// What holds before any cause is tried: another place, and whether their thermoclines contradict each other at all.
fn before(cores: &[Core], one: &Core, other: Option<&str>) -> Vec<Message> {
    let others: Vec<&Core> = match other {
        Some(id) => cores.iter().filter(|core| core.cast_id == id).collect(),
        None => cores.iter().filter(|core| core.cast_id != one.cast_id && !core.other_station).collect(),
    };
    let named = if other.is_some() { others.as_slice() } else { &[] };
    let elsewhere = [one].into_iter().chain(named.iter().copied()).filter(|core| core.other_station);
    let mut said: Vec<Message> =
        elsewhere.map(|core| Message::new("class-why-station").text("group", core.name.clone())).collect();
    let share = |core: &&Core| {
        let ((_, top, bottom), (_, from, to)) = (one.found_m?, core.found_m?);
        Some(top <= to + 1e-9 && from <= bottom + 1e-9)
    };
    let shares: Vec<bool> = others.iter().filter_map(share).collect();
    if !shares.is_empty() && shares.iter().all(|share| *share) {
        said.push(Message::new("class-why-overlap"));
    } else if !shares.is_empty() && !shares.contains(&true) {
        said.push(Message::new("class-why-no-overlap"));
    }
    said
}

fn side<'c>(room: &Room, cores: &'c [Core], id: &str) -> Option<(Side, &'c Core)> {
    let core = cores.iter().find(|core| core.cast_id == id)?;
    let work = core.of(room)?;
    Some((Side::of(&work.cast, &work.analysis), core))
}

/// The middle of the others as one cast. Its spread is that of one of them, not of their mean: whoever differs from the
/// rest differs from groups, not from a truth.
fn rest(room: &Room, cores: &[Core], id: &str) -> Side {
    let others = cores.iter().filter(|core| core.cast_id != id && !core.other_station);
    let sd_c = others
        .filter_map(|core| core.of(room))
        .map(|work| work.analysis.pairs.s_used_c)
        .fold(0.0, f64::max)
        .max(0.05);
    let levels = middle(room, cores, Some(id));
    Side::bare(levels.iter().map(|level| Level::bare(level.depth_m, level.middle_c, sd_c)).collect())
}

/// Whose casts are compared, as they stand over the cores: a difference never says which of the two is off.
#[derive(Clone, Copy)]
struct Names<'c> {
    one: &'c str,
    /// `None`: the rest.
    other: Option<&'c str>,
}

impl Names<'_> {
    /// The other one, by a message that names a group.
    fn other(self, id: &'static str) -> Message {
        self.other
            .map_or_else(|| Message::new("class-why-the-rest"), |name| Message::new(id).text("group", name))
    }
}

/// What the readings say.
fn sentences(found: &Comparison, names: Names) -> Vec<Message> {
    let mut said = vec![Message::new("class-why-apart").temp("apart", rounded(found.rms_c, 2))];
    match found.verdict {
        Some(Verdict::Chance) | None => said.push(Message::new("class-why-chance")),
        Some(Verdict::NoneAlone) => said.push(Message::new("class-why-none-alone")),
        Some(Verdict::Cause(cause)) => {
            let fit = found.fit(cause);
            let best = fit.map_or_else(|| name(cause), |fit| sized(cause, fit, names));
            said.push(Message::new("class-why-best").message("cause", best));
            if let Some(more) = explains_more(found, cause) {
                said.push(Message::new("class-why-simpler").message("cause", name(more)));
            }
            for other in &found.cannot_be_told_from {
                said.push(Message::new("class-why-cannot-be-told").message("cause", name(*other)));
            }
            if cause == Cause::WarmTop
                && let Some(heat) = fit.and_then(|fit| fit.heat)
            {
                let id = match heat.sun {
                    Sun::Could => "class-why-sun-could",
                    Sun::Cannot => "class-why-sun-cannot",
                    Sun::Unsure => "class-why-sun-unsure",
                    Sun::Cooled => "class-why-sun-cooled",
                };
                said.push(Message::new(id).number("power", heat.power_w_m2.round(), 0));
            }
        }
    }
    if let Some(heat) = found.heat.filter(|heat| heat.sun == Sun::Cannot)
        && !matches!(found.verdict, Some(Verdict::Cause(Cause::WarmTop) | Verdict::Chance) | None)
    {
        said.push(Message::new("class-why-sun-whole").number("power", heat.power_w_m2.round(), 0));
    }
    if let (None, true) = (found.heat, found.verdict == Some(Verdict::Cause(Cause::WarmTop))) {
        let id = if names.other.is_some() { "class-why-no-clock" } else { "class-why-no-clock-rest" };
        said.push(Message::new(id));
    }
    said
}

/// The cause that explains clearly more than the one that is named, and is not named for what it needs to do so.
fn explains_more(found: &Comparison, named: Cause) -> Option<Cause> {
    let explains = |cause| found.fit(cause).map_or(0.0, |fit| (100.0 * fit.explains).round());
    let others = found.explanations.iter().map(|one| one.cause).filter(|cause| *cause != named);
    let (best, most) = others
        .map(|cause| (cause, explains(cause)))
        .fold((named, explains(named)), |a, b| if b.1 > a.1 { b } else { a });
    (best != named && most >= explains(named) + 1.0).then_some(best)
}

fn causes(found: &Comparison, names: Names) -> Vec<CauseView> {
    let named = match found.verdict {
        Some(Verdict::Cause(cause)) => Some(cause),
        _ => None,
    };
    let view = |explanation: &layercast_core::compare::Explanation| {
        let cause = explanation.cause;
        let said = match &explanation.fit {
            Ok(fit) => sized(cause, fit, names),
            Err(NotTried::EvenWater) => Message::new("class-why-not-even"),
            Err(NotTried::TopNotRead) => Message::new("class-why-not-top"),
            Err(NotTried::NoLayer) => Message::new("class-why-not-layer"),
        };
        let possible =
            named.is_some() && (named == Some(cause) || found.cannot_be_told_from.contains(&cause));
        CauseView { name: name(cause).into(), said: said.into(), possible }
    };
    found.explanations.iter().map(view).collect()
}

/// A cause without its size.
fn name(cause: Cause) -> Message {
    Message::new(match cause {
        Cause::Offset => "class-cause-offset",
        Cause::Zero => "class-cause-zero",
        Cause::Stretch => "class-cause-stretch",
        Cause::WarmTop => "class-cause-top",
        Cause::MovedWater => "class-cause-moved",
    })
}

/// A cause with its size and how much it explains.
fn sized(cause: Cause, fit: &Fit, names: Names) -> Message {
    let size = fit.value.abs();
    let more = fit.value >= 0.0;
    let explains = (100.0 * fit.explains).round().clamp(0.0, 100.0);
    // In its unit as it is shown, with the fewest decimals, and the most where it would look like nothing.
    let (size, fewest, most) = match cause {
        Cause::Offset | Cause::Zero => (size, 2, 2),
        Cause::Stretch => (100.0 * size, 0, 1),
        Cause::WarmTop | Cause::MovedWater => (size, 1, 2),
    };
    let Some(decimals) = (fewest..=most).find(|decimals| rounded(size, *decimals) > 0.0) else {
        return Message::new("class-fit-too-small");
    };
    let id = match (cause, more) {
        (Cause::Offset, true) => "class-fit-offset-more",
        (Cause::Offset, false) => "class-fit-offset-less",
        (Cause::Zero, true) => "class-fit-zero-deeper",
        (Cause::Zero, false) => "class-fit-zero-shallower",
        (Cause::Stretch, true) => "class-fit-stretch-longer",
        (Cause::Stretch, false) => "class-fit-stretch-shorter",
        (Cause::WarmTop, true) => "class-fit-top-warmer",
        (Cause::WarmTop, false) => "class-fit-top-colder",
        (Cause::MovedWater, true) => "class-fit-moved-deeper",
        (Cause::MovedWater, false) => "class-fit-moved-shallower",
    };
    Message::new(id)
        .text("one", names.one)
        .message("other", names.other("class-fit-group"))
        .number("size", size, decimals)
        .number("explains", explains, 0)
}
