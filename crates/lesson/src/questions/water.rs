//! The water a question is asked about: the cast's own values, by which readings, and what counts as its steepest part.

use super::Context;
use layercast_core::{Analysis, Level, State, Step};

/// Room for the last bits of decimal numbers in every comparison, in the unit compared.
pub(crate) const SLACK: f64 = 1e-9;
/// Nobody places a mark finer than this, metres: a range's end given in feet or rounded is still the end.
pub(crate) const FINEST_M: f64 = 0.02;
/// A reading rounded to one decimal, °C: how students may always work (convention of ours).
pub(crate) const ROUNDING_C: f64 = 0.1;
/// No last place is taken for coarser than this, °C.
const COARSEST_DIGIT_C: f64 = 1.0;
/// Two depths closer than this are the same mark, metres.
const SAME_MARK_M: f64 = 1e-6;

/// Which readings an answer was taken from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// The mean of both.
    Mean,
    /// Going down.
    Down,
    /// Coming up.
    Up,
}

/// The place of fastest change that kinds 6, 7 and 8 ask for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Steep {
    /// Middle of the steepest step, metres.
    pub value_m: f64,
    /// The steepest step (or run of equal ones), metres.
    pub step_m: (f64, f64),
    /// Everything that cannot be told from it, metres.
    pub span_m: (f64, f64),
    /// False when the span is over half of the cast.
    pub tellable: bool,
    /// It is today's warm layer, the only one there is.
    pub today: bool,
}

/// A cast with the questions' view of it. Built once per call: everything asked of it later is quick, also for casts of
/// many thousand depths.
#[derive(Clone, Debug)]
pub(crate) struct Water<'a> {
    /// What the caller gave.
    pub context: Context<'a>,
    steep: Option<Steep>,
    members: Vec<&'a Step>,
}

impl<'a> Water<'a> {
    /// Wraps a context.
    pub fn new(context: &Context<'a>) -> Self {
        let mut water = Self { context: *context, steep: None, members: Vec::new() };
        water.steep = water.find_steep();
        water.members = water.find_members();
        water
    }

    /// The analysis.
    pub fn analysis(&self) -> &'a Analysis {
        self.context.analysis
    }

    /// The profile.
    pub fn levels(&self) -> &'a [Level] {
        &self.context.analysis.profile
    }

    /// Its intervals.
    pub fn steps(&self) -> &'a [Step] {
        &self.context.analysis.steps
    }

    /// State of the water.
    pub fn state(&self) -> State {
        self.context.analysis.state
    }

    /// Depth of the first reading, metres.
    pub fn first_m(&self) -> f64 {
        self.levels().first().map_or(0.0, |l| l.depth_m)
    }

    /// Depth of the last reading, metres.
    pub fn last_m(&self) -> f64 {
        self.levels().last().map_or(0.0, |l| l.depth_m)
    }

    /// Every depth of the profile, metres.
    pub fn marks_m(&self) -> Vec<f64> {
        self.levels().iter().map(|l| l.depth_m).collect()
    }

    /// The level at a mark.
    pub fn level(&self, depth_m: f64) -> Option<&'a Level> {
        let at = self.levels().partition_point(|l| l.depth_m < depth_m - SAME_MARK_M);
        self.levels().get(at).filter(|l| (l.depth_m - depth_m).abs() < SAME_MARK_M)
    }

    /// Temperature of a level by some of its readings, °C.
    pub fn of(level: &Level, source: Source) -> Option<f64> {
        match source {
            Source::Mean => Some(level.temp_c),
            Source::Down => level.down_c,
            Source::Up => level.up_c,
        }
    }

    /// Temperature at a mark, °C.
    pub fn temp(&self, depth_m: f64, source: Source) -> Option<f64> {
        Self::of(self.level(depth_m)?, source)
    }

    /// Temperature anywhere between the readings, straight from one to the next, °C.
    pub fn between(&self, depth_m: f64, source: Source) -> Option<f64> {
        if let Some(at) = self.temp(depth_m, source) {
            return Some(at);
        }
        let below = self.levels().partition_point(|l| l.depth_m <= depth_m);
        let (p, q) = (self.levels().get(below.checked_sub(1)?)?, self.levels().get(below)?);
        let (tp, tq) = (Self::of(p, source)?, Self::of(q, source)?);
        Some(tp + (tq - tp) * (depth_m - p.depth_m) / (q.depth_m - p.depth_m))
    }

    /// Readings an answer about these marks can be taken from; the mean first.
    pub fn sources(&self, depths_m: &[f64]) -> &'static [Source] {
        let both = |z: &f64| self.level(*z).is_some_and(|l| l.down_c.is_some() && l.up_c.is_some());
        if !depths_m.is_empty() && depths_m.iter().all(both) {
            &[Source::Mean, Source::Down, Source::Up]
        } else {
            &[Source::Mean]
        }
    }

    /// Warmest and coldest a mark was read on either leg, °C.
    pub fn legs_range_c(&self, depth_m: f64) -> Option<(f64, f64)> {
        let level = self.level(depth_m)?;
        let all = [Some(level.temp_c), level.down_c, level.up_c];
        let low = all.iter().flatten().copied().fold(f64::INFINITY, f64::min);
        let high = all.iter().flatten().copied().fold(f64::NEG_INFINITY, f64::max);
        Some((low, high))
    }

    /// Last written place of the cast's temperatures, °C; `None` if it is not known.
    pub fn digit_c(&self) -> Option<f64> {
        let digit_c = self.context.cast.digit_c;
        (digit_c.is_finite() && digit_c > SLACK).then_some(digit_c.min(COARSEST_DIGIT_C))
    }

    /// What rounding two readings can do to their difference, °C: to 0.1 °C, or to the cast's own last place where that is
    /// coarser.
    pub fn rounding_c(&self) -> f64 {
        self.digit_c().unwrap_or_default().max(ROUNDING_C)
    }

    /// Decimals that a reading of this cast carries.
    pub fn reading_decimals(&self) -> u8 {
        match self.digit_c() {
            Some(digit_c) if digit_c >= 1.0 - SLACK => 0,
            digit_c => crate::numbers::reading_decimals(digit_c.unwrap_or_default()),
        }
    }

    /// Decimals that a number from these readings carries: a mean of two may have one more.
    pub fn decimals_by(&self, source: Source) -> u8 {
        self.reading_decimals() + u8::from(source == Source::Mean)
    }

    /// Colder on top, as under ice: questions speak of warming.
    pub fn warms(&self) -> bool {
        self.state() == State::Inverse
    }

    /// °C lost (gained, where the water warms downward) per metre over a step.
    pub fn rate(&self, step: &Step) -> f64 {
        if self.warms() { -step.cooling_c_per_m } else { step.cooling_c_per_m }
    }

    /// The place of fastest change, where there is one.
    pub fn steep(&self) -> Option<Steep> {
        self.steep
    }

    fn find_steep(&self) -> Option<Steep> {
        let found = self.analysis();
        if let Some(t) = found.thermocline.or(found.fastest_warming) {
            return Some(Steep {
                value_m: t.value_m,
                step_m: (t.step_top_m, t.step_bottom_m),
                span_m: (t.span_top_m, t.span_bottom_m),
                tellable: t.tellable,
                today: false,
            });
        }
        let today = found.warm_layer_today.filter(|w| w.only)?;
        let step =
            self.steps().iter().find(|s| s.top_m < today.value_m && today.value_m < s.bottom_m + SLACK)?;
        Some(Steep {
            value_m: today.value_m,
            step_m: (step.top_m, step.bottom_m),
            span_m: (today.span_top_m, today.span_bottom_m),
            tellable: true,
            today: true,
        })
    }

    /// Steps that cannot be told from the steepest one (methods 5.8), top to bottom.
    pub fn members(&self) -> &[&'a Step] {
        &self.members
    }

    fn find_members(&self) -> Vec<&'a Step> {
        let Some(steep) = self.steep() else { return Vec::new() };
        if !steep.today {
            return self.steps().iter().filter(|s| s.in_span).collect();
        }
        let run: Vec<&Step> = self.steps().iter().filter(|s| s.in_warm_layer_today).collect();
        let Some(k) = run.iter().max_by(|a, b| a.cooling_c_per_m.total_cmp(&b.cooling_c_per_m)) else {
            return Vec::new();
        };
        let near = |s: &&&Step| {
            s.cooling_c_per_m > 0.0 && s.cooling_c_per_m + SLACK >= k.cooling_c_per_m - self.apart(k, s)
        };
        run.iter().filter(near).copied().collect()
    }

    /// From how many °C per metre on two steps can be told apart.
    pub fn apart(&self, a: &Step, b: &Step) -> f64 {
        2.0 * ((a.u_c_per_m * a.u_c_per_m + b.u_c_per_m * b.u_c_per_m) / 2.0).sqrt()
    }

    /// Whether a stretch holds the steepest step (or all of a run of equal ones touches it).
    pub fn holds_steepest(&self, stretch_m: (f64, f64)) -> bool {
        self.steep().is_some_and(|s| overlaps(stretch_m, s.step_m))
    }

    /// Whether the readings cannot tell which step changes fastest.
    pub fn is_untellable(&self) -> bool {
        self.steep().is_some_and(|steep| !steep.tellable)
    }

    /// Ends of the step that changes fastest of those apart from the steepest step and whatever ties with it, metres.
    pub fn fastest_elsewhere_m(&self) -> Option<(f64, f64)> {
        let away = |step: &&Step| !self.holds_member((step.top_m, step.bottom_m));
        let best = self.steps().iter().filter(away).max_by(|a, b| self.rate(a).total_cmp(&self.rate(b)))?;
        Some((best.top_m, best.bottom_m))
    }

    /// Whether a stretch holds a step that counts as steepest.
    pub fn holds_member(&self, stretch_m: (f64, f64)) -> bool {
        let first = self.members.partition_point(|s| s.bottom_m <= stretch_m.0 + SAME_MARK_M);
        self.members.get(first).is_some_and(|s| overlaps(stretch_m, (s.top_m, s.bottom_m)))
    }

    /// The steps of a stretch, as indices.
    pub fn steps_in(&self, stretch_m: (f64, f64)) -> Vec<usize> {
        let inside = |s: &Step| overlaps(stretch_m, (s.top_m, s.bottom_m));
        self.steps().iter().enumerate().filter(|(_, s)| inside(s)).map(|(i, _)| i).collect()
    }

    /// The mark a typed depth means: the nearest, if it is near enough to be meant (half a digit, or a tenth of a step).
    pub fn meant_mark(&self, depth_m: f64) -> Option<f64> {
        let nearest = (self.levels().iter().map(|l| l.depth_m))
            .min_by(|a, b| (a - depth_m).abs().total_cmp(&(b - depth_m).abs()))?;
        ((nearest - depth_m).abs() <= 0.05 + SLACK).then_some(nearest)
    }

    /// The step around a depth, else the last one.
    pub fn step_around(&self, depth_m: f64) -> Option<&'a Step> {
        let at = self.steps().partition_point(|s| s.bottom_m + SLACK < depth_m);
        self.steps().get(at).or(self.steps().last())
    }

    /// All three marks are placed or refused, or were checked once.
    pub fn marks_are_in(&self) -> bool {
        let sheet = self.context.sheet;
        let marks = &sheet.marks;
        sheet.first_marks.is_some()
            || (marks.mixed.is_settled() && marks.thermocline.is_settled() && marks.deep.is_settled())
    }
}

/// Whether two stretches share more than a point.
pub(crate) fn overlaps(a: (f64, f64), b: (f64, f64)) -> bool {
    a.0 < b.1 - SAME_MARK_M && b.0 < a.1 - SAME_MARK_M
}

/// A whole metre.
pub(crate) fn whole(depth_m: f64) -> bool {
    (depth_m - depth_m.round()).abs() < SAME_MARK_M
}
