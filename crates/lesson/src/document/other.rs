//! Another group's cast, kept beside the own to be compared with it.

use super::{Lesson, Sheet};
use layercast_exchange::document::CastDoc;

/// The other cast in use: the one the group brought, else the lesson's.
pub(crate) fn another_cast<'a>(sheet: &'a Sheet, lesson: &'a Lesson) -> Option<&'a CastDoc> {
    sheet.other.as_deref().or(lesson.other.as_deref())
}
