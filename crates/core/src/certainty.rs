//! How sure each depth is: the whole analysis again and again on readings as they might as well have been.
