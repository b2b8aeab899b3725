//! Water to practise on, of our own invention, and a virtual probe in it.
