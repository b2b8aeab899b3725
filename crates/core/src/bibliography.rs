//! Sources, one item each. *Read*: the passage used was seen in the source or in the page named. *From memory*: recalled,
//! not verified here.

mod cast;
mod certainty;
mod compare;
mod layers;
mod stability;
mod water;

pub use cast::*;
pub use certainty::*;
pub use compare::*;
pub use layers::*;
pub use stability::*;
pub use water::*;
