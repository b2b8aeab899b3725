//! Values on their way to the page.

use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;

/// A value as its TypeScript type promises: absent is `null`, a map is an object, however deep inside.
///
/// tsify's own conversion would take these two from the outermost type alone, and each type's declaration from its own.
pub(crate) fn view<T: Serialize + Tsify>(value: &T) -> Result<Ts<T>, JsError>
where
    T::JsType: JsCast,
{
    let serializer = Serializer::new().serialize_missing_as_null(true).serialize_maps_as_objects(true);
    Ok(Ts::new_unchecked(value.serialize(&serializer)?))
}
