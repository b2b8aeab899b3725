//! What the program prints and how it ends.

use crate::opened::Opened;
use crate::render::Words;
use layercast_core::compare::{
    Cause, Comparison, Explanation, Heat, NotTried, Options, Refusal, Side, Sun, Verdict, compare,
};
use layercast_core::{Method, analyse};
use layercast_exchange::document::to_cast;
use serde_json::{Map, Value, json};

/// Compares the two files that the arguments name. Returns what goes to standard output, what goes to standard error, and
/// the exit code.
pub fn run(arguments: &[&str]) -> (String, String, u8) {
    let (files, minutes) = match arguments {
        [a, b] => ([*a, *b], None),
        [a, b, "--minutes", minutes] | ["--minutes", minutes, a, b] => ([*a, *b], Some(*minutes)),
        _ => return (String::new(), "compare FILE FILE [--minutes N]".to_owned(), 1),
    };
    let minutes_apart = match minutes.map(str::parse::<f64>) {
        None => None,
        Some(Ok(minutes)) if minutes.is_finite() => Some(minutes),
        Some(_) => return (String::new(), "--minutes takes a number".to_owned(), 1),
    };
    let (a, b) = match (Opened::file(files[0]), Opened::file(files[1])) {
        (Ok(a), Ok(b)) => (a, b),
        (Err(error), _) | (_, Err(error)) => return (String::new(), error, 1),
    };
    let options = Options { minutes_apart, ..Options::default() };
    let compared = side(&a).zip(side(&b)).map(|(a, b)| compare(&a, &b, &options));
    let code = match &compared {
        Some(Ok(_)) => 0,
        Some(Err(_)) => 1,
        // An error that cannot be mended comes before a question.
        None => [a.code(), b.code()].into_iter().filter(|code| *code > 0).min().unwrap_or(1),
    };
    let found = compared.as_ref().and_then(|compared| compared.as_ref().ok());
    let refused = compared.as_ref().and_then(|compared| compared.as_ref().err());
    let words = Words::load("en");
    let mut report = Map::new();
    let mut put = |key: &str, value: Value| report.insert(key.to_owned(), value);
    put("a", json!({ "outcome": a.outcome(), "messages": a.messages(&words) }));
    put("b", json!({ "outcome": b.outcome(), "messages": b.messages(&words) }));
    put("refused", json!(refused.map(refusal)));
    put("verdict", json!(found.and_then(|found| found.verdict).map(verdict)));
    put("best", json!(found.and_then(|found| found.best).map(cause)));
    let ties = found.map(|found| found.cannot_be_told_from.iter().copied().map(cause).collect::<Vec<_>>());
    put("cannot_be_told_from", json!(ties));
    put("rms_c", json!(found.map(|found| found.rms_c)));
    put("mean_c", json!(found.map(|found| found.mean_c)));
    put("chance", json!(found.map(chance)));
    put(
        "explanations",
        json!(found.map(|found| found.explanations.iter().map(explanation).collect::<Vec<_>>())),
    );
    put("heat", json!(found.and_then(|found| found.heat.as_ref()).map(heat)));
    put("shared", json!(found.map(shared)));
    (Value::Object(report).to_string(), String::new(), code)
}

fn side(opened: &Opened) -> Option<Side> {
    let cast = to_cast(opened.doc.as_ref()?);
    Some(Side::of(&cast, &analyse(&cast, &Method::default())))
}

fn refusal(refused: &Refusal) -> &'static str {
    match refused {
        Refusal::TooFewDepths => "too_few_depths",
        Refusal::TooLittleWater => "too_little_water",
    }
}

fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Chance => "chance",
        Verdict::Cause(named) => cause(named),
        Verdict::NoneAlone => "none_alone",
    }
}

fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Offset => "offset",
        Cause::Zero => "zero",
        Cause::Stretch => "stretch",
        Cause::WarmTop => "warm_top",
        Cause::MovedWater => "moved_water",
    }
}

fn unit(cause: Cause) -> &'static str {
    match cause {
        Cause::Offset | Cause::WarmTop => "degC",
        Cause::Zero | Cause::MovedWater => "m",
        Cause::Stretch => "1",
    }
}

fn not_tried(reason: &NotTried) -> &'static str {
    match reason {
        NotTried::EvenWater => "even_water",
        NotTried::TopNotRead => "top_not_read",
        NotTried::NoLayer => "no_layer",
    }
}

fn chance(found: &Comparison) -> Value {
    json!({
        "score": found.chance_score,
        "trials": found.chance.map(|level| level.trials),
        "gain_needed": found.chance.map(|level| level.gain),
        "false_alarms": found.chance.map(|level| level.false_alarms),
    })
}

fn explanation(tried: &Explanation) -> Value {
    let fit = tried.fit.as_ref().ok();
    json!({
        "cause": cause(tried.cause),
        "unit": unit(tried.cause),
        "not_tried": tried.fit.as_ref().err().map(not_tried),
        "value": fit.map(|fit| fit.value),
        "u": fit.map(|fit| fit.u),
        "fade_m": fit.and_then(|fit| fit.fade_m),
        "slant_deg": fit.and_then(|fit| fit.slant_deg),
        "at_limit": fit.map(|fit| fit.at_limit),
        "explains": fit.map(|fit| fit.explains),
        "rms_left_c": fit.map(|fit| fit.rms_left_c),
        "leaves_more_than_chance": fit.and_then(|fit| fit.leaves_more_than_chance),
        "score": fit.map(|fit| fit.score),
        "predicted_c": fit.map(|fit| &fit.predicted_c),
        "left_c": fit.map(|fit| &fit.left_c),
        "heat": fit.and_then(|fit| fit.heat.as_ref()).map(heat),
    })
}

fn heat(heat: &Heat) -> Value {
    json!({
        "gained_j_m2": heat.gained_j_m2,
        "power_w_m2": heat.power_w_m2,
        "u_w_m2": heat.u_w_m2,
        "sun": match heat.sun {
            Sun::Could => "could",
            Sun::Cannot => "cannot",
            Sun::Unsure => "unsure",
            Sun::Cooled => "cooled",
        },
    })
}

fn shared(found: &Comparison) -> Value {
    let depths = found.shared.iter().map(|at| {
        json!({
            "depth_m": at.depth_m,
            "a_c": at.a_c,
            "b_c": at.b_c,
            "difference_c": at.difference_c,
            "sd_c": at.sd_c,
        })
    });
    depths.collect()
}
