//! Answers that are choices: pictures, readings, lines to tick.

use super::super::answers::{apart, at, fact_ids, read_again_lines, two_ways, warming_w_m2};
use super::super::why::{
    as_much_heat, changes, changes_of, cooled_from_above, degrees, layer_mj, pictures, says,
};
use super::super::{By, Fields, Pond, fields, one};
use super::desk::{Rule, chosen};
use super::told;
use super::work::Hand;
use layercast_core::practice::{Kind, Probe, Water, whole_cast};
use layercast_core::water::density::density_kg_m3;
use layercast_core::{Method, State};
use layercast_lesson::questions::Asked;
use std::cell::OnceCell;

thread_local! {
    static PRACTICE: OnceCell<Vec<&'static str>> = const { OnceCell::new() };
}

/// The answer of a student to a question of choices.
pub fn choice(hand: &Hand, asked: &Asked) -> Fields {
    let pond = hand.pond;
    match asked.kind {
        14 => {
            let [side, place, why] = match hand.student.rule {
                Rule::FirstSteepTop | Rule::FirstSteepMiddle => by_signs(pond),
                _ => two_ways(pond),
            };
            fields(&[("side", side), ("place", place), ("why", why)])
        }
        15 => {
            let lines = read_again_lines(pond);
            let mut pointed = lines.iter().filter(|l| l.2);
            let one = if hand.student.by == By::Up { pointed.next_back() } else { pointed.next() };
            chosen("reading", one.map_or("none", |l| l.0.as_str()))
        }
        17 => {
            // Of the two waters on the page the denser one.
            let waters = told::choices(pond, 17);
            let temp = |value: &str| {
                let label = waters.iter().find(|w| w.0 == value).map(|w| &w.1)?;
                match label.args.get("temp") {
                    Some(layercast_lesson::view::SaidArg::Number { value, .. }) => Some(*value),
                    _ => None,
                }
            };
            let (colder, warmer) = (temp("colder").unwrap(), temp("warmer").unwrap());
            let sinks = if density_kg_m3(warmer) > density_kg_m3(colder) { "warmer" } else { "colder" };
            chosen("sinks", sinks)
        }
        18 => {
            let (_, _, times) = degrees(pond);
            let written = if hand.student.rounds { format!("{times:.0}") } else { one(times) };
            fields(&[("side", "upper"), ("times", &written)])
        }
        20 => {
            let shown = pictures(pond, asked);
            let right = cooled_from_above(&shown).first().copied().unwrap_or("");
            fields(&[("picture", right), ("why", "Heat leaves through the surface.")])
        }
        21 => {
            let shown = pictures(pond, asked);
            chosen("picture", as_much_heat(&shown).first().copied().unwrap_or(""))
        }
        22 => oxygen(pond),
        // Two ranges of the page that share a depth, or not.
        23 => chosen("say", if told::ranges_share(pond, 23) { "share" } else { "apart" }),
        24 => {
            let (mean_c, deep_m) = apart(pond);
            let power = warming_w_m2(mean_c, deep_m);
            let sun = if power <= 1000.0 { "could" } else { "could_not" };
            let written = if hand.student.rounds { format!("{power:.0}") } else { one(power) };
            fields(&[
                ("cause", pond.planted),
                ("evidence", "At every mark alike."),
                ("power", &written),
                ("sun", sun),
            ])
        }
        26 => chosen("change", best_change(pond, hand.student.by)),
        27 => fields(&[("words", "Below my last reading nobody knows."), ("below", "1")]),
        104 => {
            // Of the lines on the page those that a layered water would not have.
            let also = ["surface", "legs", "deepest", "count"];
            let ids = fact_ids(pond);
            let ticks: Vec<(&str, &str)> =
                ids.iter().filter(|id| !also.contains(&id.as_str())).map(|id| (id.as_str(), "1")).collect();
            fields(&ticks)
        }
        105 => {
            let means = pond.means();
            let rho = |z: &str| density_kg_m3(at(&means, z.parse().unwrap()).unwrap());
            let heavier = |value: &str| {
                let (a, b) = value.split_once('-').unwrap();
                rho(a) - rho(b)
            };
            let pairs = told::choices(pond, 105);
            let most = pairs.iter().max_by(|a, b| heavier(&a.0).total_cmp(&heavier(&b.0))).unwrap();
            chosen("pair", &most.0)
        }
        107 => chosen("says", says(pond)),
        // Two to eleven MJ in a night: gone, or it hangs on the night.
        108 => chosen("morning", if layer_mj(pond) <= 2.16 { "gone" } else { "depends" }),
        _ => Fields::new(),
    }
}

/// Which way was warmer by counting marks: four in five of them.
fn by_signs(pond: &Pond) -> [&'static str; 3] {
    let d: Vec<f64> = pond.rows.iter().filter_map(|r| Some(r.1 - r.2?)).collect();
    let n = d.len() as f64;
    let count = |sign: f64| d.iter().filter(|d| sign * **d > 1e-9).count() as f64;
    let (down, up) = (count(1.0), count(-1.0));
    // Where, and why, is a matter of sizes again; and so is the side where the signs show none.
    match two_ways(pond) {
        ["small", ..] if down.max(up) >= 0.8 * n => {
            [if down > up { "down" } else { "up" }, "everywhere", "drift"]
        }
        found => found,
    }
}

/// A line of kind 103, by the means and a limit.
pub fn any_step(means: &[(f64, f64)], limit: f64) -> &'static str {
    let drops: Vec<f64> =
        means.windows(2).map(|w| w[0].1 - w[1].1).filter(|d| d.abs() > limit + 1e-9).collect();
    match (drops.is_empty(), drops.iter().any(|d| *d < 0.0)) {
        (true, _) => "none",
        (false, true) => "by_turns",
        (false, false) => "colder",
    }
}

/// Where oxygen falls below 5 and 2 mg/L, else where the least is; without a column a guess.
fn oxygen(pond: &Pond) -> Fields {
    let column = &pond.oxygen_mg_l;
    let mut all = fields(&[("why", "Nobody brings it down there."), ("brings", "1")]);
    if column.is_empty() {
        all.insert("where".into(), "bottom".into());
        return all;
    }
    let least = column.iter().min_by(|a, b| a.1.total_cmp(&b.1)).unwrap();
    all.insert("depth".into(), format!("{:.2}", least.0));
    let mut ids = [("from", "to"), ("from2", "to2")].into_iter();
    for limit in [5.0, 2.0] {
        if let Some(w) = column.windows(2).find(|w| w[0].1 >= limit && w[1].1 < limit) {
            let (from, to) = ids.next().unwrap();
            all.insert(from.into(), format!("{:.2}", w[0].0));
            all.insert(to.into(), format!("{:.2}", w[1].0));
        }
    }
    all
}

/// The change that narrows the range most, by the trials of core; students who differ take another of those that tie.
fn best_change(pond: &Pond, by: By) -> &'static str {
    let best = if pond.analysis.state == State::Mixed {
        PRACTICE.with(|cell| cell.get_or_init(practice).clone())
    } else {
        changes(pond)
    };
    let found = if by == By::Up { best.last() } else { best.first() };
    found.copied().unwrap_or("none")
}

/// The pond that is practised on where the own has no layers: every half metre, 90 s a mark.
fn practice() -> Vec<&'static str> {
    let pond = Water::seeded(Kind::Layered, 4);
    let marks: Vec<f64> = (0..).map(|i| f64::from(i) * 0.5).take_while(|z| *z < pond.bed_m()).collect();
    let cast = whole_cast(&pond, &Probe::default(), &marks, 90.0, 4);
    changes_of(&cast, &Method::default())
}
