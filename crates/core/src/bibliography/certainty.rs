//! Ranges and seeded chance.

/// JCGM 101:2008, Supplement 1 to the Guide to the expression of uncertainty in measurement: propagation of distributions
/// by a Monte Carlo method.
///
/// Read: title and contents.
pub enum GumSupplement1 {}

/// Wichura 1988: "Algorithm AS 241: The percentage points of the normal distribution", Applied Statistics 37, 477–484.
///
/// Read: the coefficients as the standard library of Python codes them.
pub enum Wichura1988 {}

/// O'Neill 2014: "PCG: a family of simple fast space-efficient statistically good algorithms for random number generation".
///
/// From memory; the generator is that of the crate `rand_pcg`.
pub enum Oneill2014 {}

/// Wilson & Hilferty 1931: "The distribution of chi-square", Proc. Natl. Acad. Sci. 17, 684–688: the cube root of χ²/n is
/// nearly normal, with mean 1 − 2/(9n) and variance 2/(9n).
///
/// From memory; held against scipy's quantiles in the test that uses it.
pub enum WilsonHilferty1931 {}
