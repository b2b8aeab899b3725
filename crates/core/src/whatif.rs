//! The same cast read otherwise: other marks, one leg, a shorter wait, coarser digits.
