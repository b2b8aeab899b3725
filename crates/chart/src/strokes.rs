//! Many equal strokes as one polygon: dashed lines, and the teeth of patterns.

use crate::pen::{Ink, Pen, Shape};

/// One stroke: foot, head, head, foot. Device pixels.
pub(crate) type Tooth = [(i32, i32); 4];

impl Pen {
    /// A dashed level line: `dash` is (on, off) in u.
    pub fn level_dashed(
        &mut self,
        x0: f64,
        x1: f64,
        y: f64,
        ink: impl Into<Ink>,
        width_u: f64,
        dash: (f64, f64),
    ) {
        let (top, bottom) = self.thick(y, width_u);
        let dashes = self.dashes(x0, x1, dash);
        let teeth: Vec<_> = dashes
            .map(|(left, right)| [(left, bottom), (left, top), (right, top), (right, bottom)])
            .collect();
        self.comb(&teeth, None, ink.into());
    }

    /// A dashed upright line.
    pub fn upright_dashed(
        &mut self,
        x: f64,
        y0: f64,
        y1: f64,
        ink: impl Into<Ink>,
        width_u: f64,
        dash: (f64, f64),
    ) {
        let (left, right) = self.thick(x, width_u);
        let dashes = self.dashes(y0, y1, dash);
        let teeth: Vec<_> = dashes
            .map(|(top, bottom)| [(left, top), (right, top), (right, bottom), (left, bottom)])
            .collect();
        self.comb(&teeth, None, ink.into());
    }

    fn dashes(
        &self,
        from: f64,
        to: f64,
        (on_u, off_u): (f64, f64),
    ) -> impl Iterator<Item = (i32, i32)> + use<> {
        let (from, to) = (self.px(from), self.px(to));
        let on = f64::from(self.weight(on_u));
        let period = (on_u + off_u) * self.u * self.scale;
        let period = if period > on { period } else { on + 1.0 };
        let count = if to > from { (f64::from(to - from) / period).ceil() as i32 } else { 0 };
        (0..count).map(move |place| {
            let start = f64::from(from) + f64::from(place) * period;
            (start.round() as i32, ((start + on).round() as i32).min(to))
        })
    }

    /// One polygon of many teeth on one spine, each (foot, head, head, foot): between the teeth it runs along the spine, and
    /// at the end back along it over `corner` if the spine bends there, so that it encloses nothing but the teeth. Four
    /// points a tooth. A few dozen together: a rasteriser is quick neither with very many shapes nor with very many edges
    /// side by side.
    pub(crate) fn comb(&mut self, teeth: &[Tooth], corner: Option<(i32, i32)>, ink: Ink) {
        const TOGETHER: usize = 32;
        for teeth in teeth.chunks(TOGETHER) {
            let start = self.points.len();
            let bends = |from: (i32, i32), to: (i32, i32)| {
                corner.filter(|corner| (from.0 == corner.0) != (to.0 == corner.0) && from.1 != to.1)
            };
            let mut last = None;
            for tooth in teeth {
                let [foot, .., end] = *tooth;
                self.points.extend(last.and_then(|last| bends(last, foot)));
                self.points.extend(tooth);
                last = Some(end);
            }
            if let (Some([first, ..]), Some(last)) = (teeth.first(), last) {
                self.points.extend(bends(last, *first));
            }
            self.shapes.push(Shape::Polygon { points: start..self.points.len(), ink });
        }
    }

    /// Teeth in rows, from left to right and downward: each row is a comb of its own that comes back to `left`, and the rows
    /// hang on one spine there.
    pub(crate) fn rows(&mut self, teeth: &[Tooth], left: i32, ink: Ink) {
        const TOGETHER: usize = 16;
        let same_row = |a: &Tooth, b: &Tooth| a[0].1 == b[0].1;
        let rows: Vec<&[Tooth]> = teeth.chunk_by(same_row).collect();
        for rows in rows.chunks(TOGETHER) {
            let start = self.points.len();
            for row in rows {
                let Some([(_, y), ..]) = row.first() else { continue };
                self.points.push((left, *y));
                self.points.extend(row.iter().flatten());
                self.points.push((left, *y));
            }
            self.shapes.push(Shape::Polygon { points: start..self.points.len(), ink });
        }
    }
}
