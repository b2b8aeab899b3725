//! The profile picture: cable, the student's column, the rules' column, plot and strip on one depth axis.

mod axes;
mod cover;
pub(crate) mod frame;
mod key;
mod labels;
pub(crate) mod layers;
mod means;
mod plot;
mod rules;
mod strip;
mod yours;

use crate::pen::Pen;
use crate::picture::{Picture, Placement, Size, Words};
use crate::theme::Theme;
use frame::{Frame, drawable};
use layers::Layers;

/// Composes the picture and says where things stand. A size without room for a picture gives blank paper.
pub(crate) fn compose(picture: &Picture, theme: Theme, size: Size, words: &Words) -> (Pen, Placement) {
    let size = sane(size);
    let roles = theme.roles();
    let mut pen = Pen::new(roles, size.root_px / 16.0, size.scale);
    pen.rect(0.0, 0.0, size.width_px, size.height_px, roles.sheet);
    let Some(mut frame) = Frame::new(picture, size, words, &pen, false) else {
        return (pen, Placement::default());
    };
    let look = pen.plain();
    let mut key_place = key::place(&frame, picture, words, look);
    if key_place == key::Place::Row {
        // The row needs a deeper margin; it stays a row even if the curve would then leave room.
        match Frame::new(picture, size, words, &pen, true) {
            Some(with_row) => frame = with_row,
            None => key_place = key::Place::Plot(frame.plot.0 + 16.0 * frame.u),
        }
    }
    let grips = yours::grips(&frame, picture);
    draw(&mut pen, &frame, picture, words, key_place, &grips);
    let placement = placement(&frame, picture, &grips);
    (pen, placement)
}

fn draw(
    pen: &mut Pen,
    frame: &Frame,
    picture: &Picture,
    words: &Words,
    key_place: key::Place,
    grips: &yours::Grips,
) {
    let layers = picture.found.as_ref().map(|found| Layers::new(found, frame.floor_m));
    if let Some(layers) = &layers {
        for column in [Some(frame.plot), frame.strip].into_iter().flatten() {
            layers.tint(pen, frame, column);
        }
    }
    axes::draw(pen, frame, picture, words);
    if picture.axes_only {
        plot::guess(pen, frame, picture);
        return;
    }
    yours::column(pen, frame, picture, words);
    rules::draw(pen, frame, picture, layers.as_ref(), words);
    means::draw(pen, frame, picture);
    strip::draw(pen, frame, picture, layers.as_ref(), words);
    if let Some(layers) = &layers {
        plot::found(pen, frame, layers);
    }
    plot::rules(pen, frame, picture);
    plot::step(pen, frame, picture);
    plot::lit(pen, frame, picture);
    if picture.step.is_none() && picture.lit_m.is_empty() {
        yours::lines(pen, frame, picture);
    }
    plot::guess(pen, frame, picture);
    plot::profile(pen, frame);
    plot::readings(pen, frame, picture);
    plot::otherwise(pen, frame, picture);
    let mut labels = labels::Labels::new(frame, picture, layers.as_ref());
    for tick in &picture.rules {
        if let Some(text) = &tick.in_hand {
            labels.rule(pen, tick.depth_m, text, words);
        }
    }
    if let Some(layers) = &layers {
        labels.found(pen, layers, words);
    }
    plot::step_words(pen, frame, picture);
    plot::letters(pen, frame, picture);
    let has_readings = picture.points.iter().any(|point| drawable(point.depth_m, point.temp_c));
    if has_readings {
        key::draw(pen, frame, picture, words, key_place);
    } else if picture.guess.is_empty() {
        plot::empty(pen, frame, words);
    }
    plot::cursor(pen, frame, picture);
    plot::doubts(pen, frame, picture, words);
    yours::leaders(pen, frame, picture, grips);
    yours::draw_grips(pen, frame, picture, words, grips);
}

/// Sizes that make sense: no NaN, no picture larger than a backend can hold.
pub(crate) fn sane(size: Size) -> Size {
    let within =
        |value: f64, low: f64, high: f64| if value.is_finite() { value.clamp(low, high) } else { low };
    Size {
        width_px: within(size.width_px, 0.0, 8000.0),
        height_px: within(size.height_px, 0.0, 8000.0),
        root_px: within(size.root_px, 4.0, 256.0),
        scale: within(size.scale, 0.25, 16.0),
        layout: size.layout,
    }
}

fn placement(frame: &Frame, picture: &Picture, grips: &yours::Grips) -> Placement {
    let pixel = |point: &crate::picture::Point| {
        if drawable(point.depth_m, point.temp_c) {
            (frame.temp_x(point.temp_c), frame.y(point.depth_m))
        } else {
            (f64::NAN, f64::NAN)
        }
    };
    let none_at = |x: f64| (x, x);
    Placement {
        surface_y_px: frame.surface_y,
        px_per_m: frame.px_per_m,
        max_depth_m: frame.max_depth_m,
        yours_x_px: frame.yours.unwrap_or(none_at(frame.plot.0)),
        plot_x_px: frame.plot,
        strip_x_px: frame.strip.unwrap_or(none_at(frame.plot.1)),
        middle_x_px: frame.rules.or(frame.means).unwrap_or(none_at(frame.plot.0)),
        temp_c: frame.temp_c,
        points_px: picture.points.iter().map(pixel).collect(),
        grips_y_px: grips.marks,
        from_to_y_px: grips.from_to,
    }
}
