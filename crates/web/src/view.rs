//! Values on their way to the page.

use js_sys::{JSON, Object, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;

/// A large value as its TypeScript type promises: absent is `null`, a map is an object, however deep inside.
///
/// It crosses as one JSON text that the browser reads: one call instead of several for each field. Numbers are finite.
pub(crate) fn large_view<T: Serialize + Tsify>(value: &T) -> Result<Ts<T>, JsError>
where
    T::JsType: JsCast,
{
    Ok(Ts::new_unchecked(json(value)?))
}

/// A notebook's text beside a large value: `{ notebook, [name]: value }`.
pub(crate) fn beside<T: Serialize, V: Tsify>(notebook: &str, name: &str, value: &T) -> Result<Ts<V>, JsError>
where
    V::JsType: JsCast,
{
    let both = Object::new();
    let set = |name: &str, value: &JsValue| Reflect::set(&both, &name.into(), value).map_err(|_| fault());
    set("notebook", &notebook.into())?;
    set(name, &json(value)?)?;
    Ok(Ts::new_unchecked(both.into()))
}

fn json<T: Serialize>(value: &T) -> Result<JsValue, JsError> {
    JSON::parse(&serde_json::to_string(value)?).map_err(|_| fault())
}

/// What cannot happen to values of ours.
fn fault() -> JsError {
    JsError::new("a view did not cross")
}

/// A value as its TypeScript type promises: absent is `null`, a map is an object, however deep inside; NaN stays NaN.
///
/// tsify's own conversion would take these two from the outermost type alone, and each type's declaration from its own.
pub(crate) fn view<T: Serialize + Tsify>(value: &T) -> Result<Ts<T>, JsError>
where
    T::JsType: JsCast,
{
    let serializer = Serializer::new().serialize_missing_as_null(true).serialize_maps_as_objects(true);
    Ok(Ts::new_unchecked(value.serialize(&serializer)?))
}
