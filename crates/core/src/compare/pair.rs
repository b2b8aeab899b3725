//! Two casts ready to be compared.

use super::MARGIN;
use super::causes::{Checked, Fitted, fitted, predicted_c, refined_top};
use super::chance::{ChanceLevel, Trial};
use super::field::Field;
use super::heat::{extra_heat_j_m2, heat, warm_top_heat_j_m2};
use super::result::{
    Cause, Comparison, Explanation, Fit, LEAST_EXPLAINED, NotTried, Recorded, Shared, Verdict,
};
use super::side::{Known, Options, Point, Side};
use crate::stability::whole::HEAT_J_M3_K;
use crate::water::density::Density;
use std::cmp::Ordering;

/// Why two casts cannot be compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// Fewer than 4 depths are shared: at fewer there is nothing to tell.
    TooFewDepths,
    /// Less than 1.5 m of water is shared.
    TooLittleWater,
}

/// Two casts ready to be compared: what [`compare`](super::compare) does, in steps that can show progress and stop.
///
/// Which cast comes first inside does not depend on which is a and which is b, so that changing them turns every sign and
/// changes no other bit.
pub struct Pair {
    pub(super) first: Vec<Point>,
    pub(super) second: Vec<Point>,
    pub(super) digits_c: (f64, f64),
    pub(super) bed_m: Option<f64>,
    pub(super) marks_m: f64,
    pub(super) density: Density,
    pub(super) seed: u64,
    pub(super) checked: Checked,
    pub(super) field: Field,
    /// b comes first inside.
    turned: bool,
    thinned: bool,
    minutes_apart: Option<f64>,
    recorded: Option<Recorded>,
}

impl Pair {
    /// Puts two casts side by side.
    ///
    /// # Errors
    /// [`Refusal`] where too few depths or too little water are shared.
    pub fn new(a: &Side, b: &Side, options: &Options) -> Result<Self, Refusal> {
        let ((a_points, a_thinned), (b_points, b_thinned)) = (a.points(), b.points());
        let turned = order(&b_points, &a_points).then(b.digit().total_cmp(&a.digit())).is_lt();
        let ((first, second), digits_c) = if turned {
            ((b_points, a_points), (b.digit(), a.digit()))
        } else {
            ((a_points, b_points), (a.digit(), b.digit()))
        };
        let bed_m = [a.bed(), b.bed()].into_iter().flatten().reduce(f64::max);
        let marks_m = options.marks_m();
        let field = Field::of(&first, &second, bed_m, marks_m, options.density)?;
        let recorded =
            if turned { recorded(b, a, &field).map(Recorded::turned) } else { recorded(a, b, &field) };
        Ok(Self {
            first,
            second,
            digits_c,
            bed_m,
            marks_m,
            density: options.density,
            seed: options.seed,
            checked: checked(&a.known.sensible(), &b.known.sensible()),
            field,
            turned,
            thinned: a_thinned || b_thinned,
            minutes_apart: options.minutes_apart.filter(|minutes| minutes.is_finite()),
            recorded,
        })
    }

    /// What the readings say, with thresholds from these trials of [`chance`](Self::chance).
    pub fn comparison(&self, trials: &[Trial]) -> Comparison {
        let field = &self.field;
        let level = ChanceLevel::of(trials);
        let fits = Cause::ALL.map(|cause| (cause, fitted(field, cause, self.checked)));
        let scores: Vec<(Cause, f64)> =
            fits.iter().filter_map(|(cause, fit)| Some((*cause, fit.as_ref().ok()?.score))).collect();
        let best = (scores.iter().copied()).reduce(|best, other| if other.1 < best.1 { other } else { best });
        let cannot_be_told_from = match best {
            Some((cause, score)) => {
                let near = scores.iter().filter(|other| other.0 != cause && other.1 - score < MARGIN);
                near.map(|other| other.0).collect()
            }
            None => Vec::new(),
        };
        let chance_score = field.chance_score();
        let explanations: Vec<Explanation> = (fits.into_iter())
            .map(|(cause, fit)| self.explanation(cause, fit, chance_score, level.as_ref()))
            .collect();
        let says_why = |cause: Cause| {
            let fit =
                explanations.iter().find(|one| one.cause == cause).and_then(|one| one.fit.as_ref().ok());
            fit.is_some_and(|fit| {
                fit.explains >= LEAST_EXPLAINED || fit.leaves_more_than_chance != Some(true)
            })
        };
        let verdict = level.map(|level| match best {
            Some((cause, score)) if chance_score - score > level.gain => {
                if says_why(cause) {
                    Verdict::Cause(cause)
                } else {
                    Verdict::NoneAlone
                }
            }
            _ => Verdict::Chance,
        });
        let shared: Vec<Shared> = field.shared.iter().map(|at| self.shared(at)).collect();
        let differences: Vec<(f64, f64)> = shared.iter().map(|at| (at.depth_m, at.difference_c)).collect();
        Comparison {
            thinned: self.thinned,
            rms_c: rms(shared.iter().map(|at| at.difference_c)),
            mean_c: shared.iter().map(|at| at.difference_c).sum::<f64>() / shared.len() as f64,
            recorded: self.recorded,
            chance_score,
            explanations,
            best: best.map(|best| best.0),
            cannot_be_told_from,
            chance: level,
            verdict,
            heat: heat(extra_heat_j_m2(&differences), heat_u_j_m2(&shared), self.minutes_apart),
            shared,
        }
    }

    /// A number seen from the first cast inside, seen from a.
    fn seen(&self, value: f64) -> f64 {
        if self.turned { -value } else { value }
    }

    fn shared(&self, at: &super::field::At) -> Shared {
        let (a_c, b_c) = if self.turned { (at.second_c, at.first_c) } else { (at.first_c, at.second_c) };
        Shared {
            depth_m: at.depth_m,
            a_c,
            b_c,
            difference_c: self.seen(at.difference_c),
            sd_c: at.variance.sqrt(),
        }
    }

    fn explanation(
        &self,
        cause: Cause,
        fit: Result<Fitted, NotTried>,
        chance_score: f64,
        level: Option<&ChanceLevel>,
    ) -> Explanation {
        let field = &self.field;
        let count = field.shared.len() as f64;
        let fit = fit.map(|fit| {
            let fit = if cause == Cause::WarmTop { refined_top(field, fit, self.checked) } else { fit };
            let predicted_c: Vec<f64> =
                predicted_c(field, cause, &fit).into_iter().map(|c| self.seen(c)).collect();
            let left_c: Vec<f64> = (field.shared.iter().zip(&predicted_c))
                .map(|(at, predicted)| self.seen(at.difference_c) - predicted)
                .collect();
            let value = self.seen(fit.value);
            let u = fit.u * (fit.misfit / (count - 1.0)).sqrt().max(1.0);
            Fit {
                value,
                u,
                fade_m: fit.fade_m,
                slant_deg: (cause == Cause::Stretch).then(|| slant_deg(value)),
                at_limit: fit.at_limit,
                rms_left_c: rms(left_c.iter().copied()),
                predicted_c,
                left_c,
                explains: if chance_score > 0.0 {
                    (1.0 - fit.misfit / chance_score).clamp(0.0, 1.0)
                } else {
                    0.0
                },
                leaves_more_than_chance: level.map(|level| fit.misfit / count > level.misfit),
                score: fit.score,
                heat: fit.fade_m.and_then(|fade_m| self.top_heat(value, u, fade_m)),
            }
        });
        Explanation { cause, fit }
    }

    /// Heat behind a warmed top over the shared depths.
    fn top_heat(&self, value_c: f64, u_c: f64, fade_m: f64) -> Option<super::heat::Heat> {
        let (top_m, end_m) = (self.field.shared.first()?.depth_m, self.field.shared.last()?.depth_m);
        let for_a_degree = warm_top_heat_j_m2(1.0, fade_m, top_m.max(0.0), end_m);
        heat(value_c * for_a_degree, u_c * for_a_degree, self.minutes_apart)
    }
}

/// An order of two profiles that does not depend on which stands first.
fn order(p: &[Point], q: &[Point]) -> Ordering {
    let each = p.iter().zip(q).map(|(p, q)| {
        let numbers = p.depth_m.total_cmp(&q.depth_m).then(p.temp_c.total_cmp(&q.temp_c));
        numbers.then(p.sd_c.total_cmp(&q.sd_c)).then(p.legs.cmp(&q.legs))
    });
    p.len().cmp(&q.len()).then_with(|| each.fold(Ordering::Equal, Ordering::then))
}

/// Which records both casts have.
fn checked(a: &Known, b: &Known) -> Checked {
    Checked {
        offset: a.ice_c.is_some() && b.ice_c.is_some(),
        zero: a.deeper_m.is_some() && b.deeper_m.is_some(),
        stretch: a.stretch.is_some() && b.stretch.is_some(),
    }
}

/// What the records took off; `None` where there are none.
fn recorded(a: &Side, b: &Side, field: &Field) -> Option<Recorded> {
    let (known_a, known_b) = (a.known.sensible(), b.known.sensible());
    let less = |a: Option<f64>, b: Option<f64>| {
        (a.is_some() || b.is_some()).then(|| b.unwrap_or(0.0) - a.unwrap_or(0.0))
    };
    let offset_c = less(known_a.ice_c, known_b.ice_c);
    let deeper_m = less(known_a.deeper_m, known_b.deeper_m);
    let any_stretch = known_a.stretch.is_some() || known_b.stretch.is_some();
    let stretch = any_stretch.then(|| known_b.stretch.unwrap_or(1.0) / known_a.stretch.unwrap_or(1.0) - 1.0);
    if offset_c.is_none() && deeper_m.is_none() && stretch.is_none() {
        return None;
    }
    let (raw_a, raw_b) = (a.unrecorded().points().0, b.unrecorded().points().0);
    let before = Field::of(&raw_a, &raw_b, None, 0.0, Density::default()).ok(); // only its differences are told
    let rms_of = |field: &Field| rms(field.shared.iter().map(|at| at.difference_c));
    Some(Recorded {
        offset_c,
        deeper_m,
        stretch,
        rms_before_c: before.as_ref().map(rms_of),
        rms_after_c: rms_of(field),
    })
}

/// Angle from the vertical at which a straight cable reaches as little deep as the factor says, degrees.
fn slant_deg(longer: f64) -> f64 {
    libm::acos((1.0 / (1.0 + longer.abs())).clamp(0.0, 1.0)).to_degrees()
}

fn rms(values: impl Iterator<Item = f64>) -> f64 {
    let (sum, count) = values.fold((0.0, 0.0), |(sum, count), value| (sum + value * value, count + 1.0));
    if count > 0.0 { f64::sqrt(sum / count) } else { 0.0 }
}

/// Standard uncertainty of the heat of differences: each depth stands for the water half-way to its neighbours.
fn heat_u_j_m2(shared: &[Shared]) -> f64 {
    let depth = |i: Option<usize>| i.and_then(|i| shared.get(i)).map(|at| at.depth_m);
    let squares = shared.iter().enumerate().map(|(i, at)| {
        let above_m = depth(i.checked_sub(1)).unwrap_or(at.depth_m);
        let below_m = depth(Some(i + 1)).unwrap_or(at.depth_m);
        let part = (below_m - above_m) / 2.0 * at.sd_c;
        part * part
    });
    HEAT_J_M3_K * squares.sum::<f64>().sqrt()
}
