//! What the columns of the table of readings mean, for machines: metadata for tabular data on the web (W3C
//! Recommendation "Metadata Vocabulary for Tabular Data", 2015; keys from memory).

use super::columns::{COLUMNS, Column, Holds};
use serde_json::{Map, Value, json};

/// The description of a table that is kept under a file name.
pub fn sidecar(file_name: &str) -> String {
    let described = json!({
        "@context": ["http://www.w3.org/ns/csvw", { "@language": "en" }],
        "url": file_name,
        "dc:title": "Temperatures read down and up a lake, one row a reading",
        "dc:description": "One cast: a probe let down a lake and pulled up again. Readings that are left out are in it too, with their flag and the reason.",
        "dialect": { "encoding": "utf-8", "delimiter": ",", "header": true, "lineTerminators": ["\r\n", "\n"] },
        "tableSchema": {
            "columns": COLUMNS.iter().map(column).collect::<Vec<Value>>(),
            "primaryKey": "number"
        }
    });
    let text = serde_json::to_string_pretty(&described).unwrap_or_default();
    text + "\n"
}

fn column(column: &Column) -> Value {
    let mut described = Map::new();
    let mut put = |key: &str, value: Value| described.insert(key.to_owned(), value);
    put("name", column.name.into());
    put("titles", column.name.into());
    put("datatype", datatype(column.holds));
    put("dc:description", column.about.into());
    if column.required {
        put("required", true.into());
    }
    if let Holds::AnyOf(_) = column.holds {
        put("separator", ";".into());
    }
    if let Some((sign, code)) = column.unit {
        put("schema:unitText", sign.into());
        put("schema:unitCode", code.into());
    }
    if let Some(property) = column.property {
        put("propertyUrl", property.into());
    }
    Value::Object(described)
}

fn datatype(holds: Holds) -> Value {
    match holds {
        Holds::Count => json!({ "base": "integer", "minimum": 1 }),
        Holds::Decimal => json!("decimal"),
        Holds::Amount => json!({ "base": "decimal", "minimum": 0 }),
        Holds::Text => json!("string"),
        Holds::OneOf(words) | Holds::AnyOf(words) => json!({ "base": "string", "format": words.join("|") }),
        Holds::Flag => json!({ "base": "string", "format": "1|2|3|4|9" }),
        Holds::Truth => json!({ "base": "boolean", "format": "true|false" }),
    }
}
