//! The profile as a sound: pitch is temperature, time is depth. The page plays it; nothing but numbers is made here.
//!
//! It tells what the curve shows, which is never covered: readings, no layer.

/// Pitch of 0 °C, hertz. With a semitone a degree 12 °C sounds as the A of 440 Hz (ISO 16).
const ZERO_HZ: f64 = 220.0;
/// Degrees in an octave: a semitone each.
const OCTAVE_C: f64 = 12.0;
/// Warmest and coldest that are told apart, °C: beyond them the pitch stays.
const HEARD_C: (f64, f64) = (-2.0, 40.0);
/// How long a metre sounds, seconds, where the whole is neither too short to follow nor too long to wait for.
const SECONDS_A_METRE: f64 = 1.0;
/// Shortest and longest sound of a cast, seconds.
const SOUND_S: (f64, f64) = (4.0, 20.0);

/// One reading as it is passed on the way down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tone {
    /// Seconds from the start.
    pub at_s: f64,
    /// Pitch, hertz. Between two tones it glides by equal steps of pitch, as the curve runs straight between two readings.
    pub hz: f64,
    /// Row of the readings' table.
    pub row: usize,
}

/// The tones of a profile, (depth in metres, °C) from the top down. None for fewer than two depths.
///
/// ```
/// use layercast_lesson::sound::tones;
/// let heard = tones(&[(0.0, 24.0), (8.0, 12.0)]);
/// assert_eq!((heard[0].hz.round(), heard[1].hz.round()), (880.0, 440.0));
/// assert_eq!(heard[1].at_s, 8.0);
/// ```
pub fn tones(profile: &[(f64, f64)]) -> Vec<Tone> {
    let (Some(first), Some(last)) = (profile.first(), profile.last()) else { return Vec::new() };
    let long_m = last.0 - first.0;
    if !(long_m.is_finite() && long_m > 0.0) {
        return Vec::new();
    }
    let seconds = (long_m * SECONDS_A_METRE).clamp(SOUND_S.0, SOUND_S.1);
    (profile.iter().enumerate())
        .filter(|(_, (_, temp_c))| temp_c.is_finite())
        .map(|(row, (depth_m, temp_c))| Tone {
            at_s: (depth_m - first.0) / long_m * seconds,
            hz: ZERO_HZ * libm::exp2(temp_c.clamp(HEARD_C.0, HEARD_C.1) / OCTAVE_C),
            row,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn twelve_degrees_is_the_tuning_tone_and_twelve_more_its_octave() {
        // ISO 16:1975: the A above middle c is tuned to 440 Hz; twelve equal semitones are an octave, a ratio of 2.
        let heard = tones(&[(0.0, 24.0), (4.0, 12.0), (8.0, 0.0)]);
        for (tone, hz) in heard.iter().zip([880.0, 440.0, 220.0]) {
            assert!((tone.hz - hz).abs() < 1e-9, "{} {hz}", tone.hz);
        }
    }

    #[test]
    fn a_short_cast_is_not_over_before_it_is_heard_and_a_deep_one_ends() {
        let whole = |last_m: f64| tones(&[(0.0, 20.0), (last_m, 8.0)]).last().map(|t| t.at_s);
        assert_eq!(whole(1.0), Some(4.0));
        assert_eq!(whole(9.5), Some(9.5));
        assert_eq!(whole(300.0), Some(20.0));
    }

    #[test]
    fn nothing_is_heard_of_nothing() {
        assert!(tones(&[]).is_empty());
        assert!(tones(&[(1.0, 12.0)]).is_empty());
        assert!(tones(&[(1.0, 12.0), (1.0, 12.0)]).is_empty());
        assert!(tones(&[(0.0, f64::NAN), (f64::NAN, 12.0)]).is_empty());
    }

    #[test]
    fn the_steepest_water_glides_fastest() {
        let heard = tones(&[(0.0, 22.0), (1.0, 21.0), (2.0, 14.0), (3.0, 13.0)]);
        let glides: Vec<f64> = heard.windows(2).map(|w| w[0].hz / w[1].hz).collect();
        assert!(glides[1] > glides[0] && glides[1] > glides[2], "{glides:?}");
    }
}
