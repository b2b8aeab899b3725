//! Another group's cast beside the own: brought by the group, or by its lesson. It is analysed by the same rules.

use super::Context;
use super::kind::Dropped;
use super::water::Water;
use crate::document::another_cast;
use layercast_core::compare::{Cause, Comparison, FEWEST_TRIALS, Options, Pair, Side, Verdict};
use layercast_core::{Analysis, Thermocline, analyse};
use layercast_exchange::document::{content_id, corrected};
use std::cell::RefCell;
use std::sync::{Arc, OnceLock};

/// Seeded pairs without a cause: so few set a threshold already, and it is drawn at every look once there is a try.
const TRIALS: usize = 2 * FEWEST_TRIALS;

/// The other cast, analysed.
#[derive(Clone, Debug)]
pub(crate) struct Other {
    /// Whose it is; may be empty.
    pub group: String,
    /// Its analysis.
    pub analysis: Analysis,
    /// The other and the own, to be set side by side.
    sides: (Side, Side),
    /// How they differ, the own less the other, without a threshold: quick. `None` where too little is shared.
    pub apart: Option<Comparison>,
    why: OnceLock<Comparison>,
}

/// Others that were worked out so far, by content.
pub(crate) type Others = RefCell<Vec<(String, Arc<Other>)>>;

impl Other {
    /// The one beside this water, worked out once; `None` where there is none.
    pub fn of(water: &Water) -> Option<Arc<Self>> {
        let Context { sheet, lesson, memo, .. } = water.context;
        let doc = another_cast(sheet, lesson)?;
        let id = content_id(doc);
        if id == water.context.cast_id {
            return None;
        }
        let mut others = memo.others.borrow_mut();
        if let Some((_, other)) = others.iter().find(|(known, _)| *known == id) {
            return Some(Arc::clone(other));
        }
        let cast = corrected(doc).cast;
        let analysis = analyse(&cast, &lesson.method.to_method());
        let sides = (Side::of(&cast, &analysis), Side::of(water.context.cast, water.analysis()));
        let apart = pair(&sides).map(|pair| pair.comparison(&[]));
        let group = doc.group.trim().to_owned();
        let other = Arc::new(Self { group, analysis, sides, apart, why: OnceLock::new() });
        others.push((id, Arc::clone(&other)));
        Some(other)
    }

    /// Why they differ, with a threshold of seeded chance: slow, and worked out once.
    pub fn why(&self) -> Option<&Comparison> {
        let pair = pair(&self.sides)?;
        Some(self.why.get_or_init(|| pair.comparison(&pair.chance(0, TRIALS))))
    }

    /// The one beside this water, or the reason of a question that needs it.
    pub fn wanted(water: &Water, why: &'static str) -> Result<Arc<Self>, Dropped> {
        Self::of(water).ok_or_else(|| Dropped::plain(why))
    }
}

fn pair((other, own): &(Side, Side)) -> Option<Pair> {
    Pair::new(other, own, &Options::default()).ok()
}

/// The depth of fastest change of an analysis.
pub(crate) fn steepest(analysis: &Analysis) -> Option<&Thermocline> {
    analysis.thermocline.as_ref().or(analysis.fastest_warming.as_ref())
}

/// Causes that the readings do not tell from the best one, that one first; none where chance does, or no cause by itself.
pub(crate) fn causes(why: &Comparison) -> Vec<Cause> {
    match why.verdict {
        Some(Verdict::Cause(cause)) => {
            std::iter::once(cause).chain(why.cannot_be_told_from.iter().copied()).collect()
        }
        _ => Vec::new(),
    }
}
