//! What each kind of question is called in lists for teachers.

use layercast_core::Message;

/// "Read a temperature from the picture". `None` for a number this page does not know, and for a teacher's own.
pub fn name(kind: u8) -> Option<Message> {
    Some(Message::new(match kind {
        1 => "lesson-kind-1",
        2 => "lesson-kind-2",
        3 => "lesson-kind-3",
        4 => "lesson-kind-4",
        5 => "lesson-kind-5",
        6 => "lesson-kind-6",
        7 => "lesson-kind-7",
        8 => "lesson-kind-8",
        9 => "lesson-kind-9",
        11 => "lesson-kind-11",
        12 => "lesson-kind-12",
        13 => "lesson-kind-13",
        14 => "lesson-kind-14",
        15 => "lesson-kind-15",
        16 => "lesson-kind-16",
        17 => "lesson-kind-17",
        18 => "lesson-kind-18",
        19 => "lesson-kind-19",
        20 => "lesson-kind-20",
        21 => "lesson-kind-21",
        22 => "lesson-kind-22",
        23 => "lesson-kind-23",
        24 => "lesson-kind-24",
        25 => "lesson-kind-25",
        26 => "lesson-kind-26",
        27 => "lesson-kind-27",
        29 => "lesson-kind-29",
        101 => "lesson-kind-101",
        102 => "lesson-kind-102",
        103 => "lesson-kind-103",
        104 => "lesson-kind-104",
        105 => "lesson-kind-105",
        106 => "lesson-kind-106",
        107 => "lesson-kind-107",
        108 => "lesson-kind-108",
        _ => return None,
    }))
}
