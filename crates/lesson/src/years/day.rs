//! Days of the year, to put casts of the same season beside one another.

/// A day, as a calendar has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Day {
    /// Year.
    pub year: u16,
    /// Day of that year, from 1.
    pub of_year: u16,
    /// The same in a year of 365 days, so that a date has one number in every year; 29 February counts as 1 March.
    pub of_season: u16,
}

/// Days of a year that a season is counted in.
const YEAR_DAYS: u16 = 365;

impl Day {
    /// Reads "2025-10-12" (ISO 8601, calendar date); `None` when it is no day.
    ///
    /// ```
    /// use layercast_lesson::years::Day;
    /// assert_eq!(Day::read("2024-03-01"), Some(Day { year: 2024, of_year: 61, of_season: 60 }));
    /// assert_eq!(Day::read("2025-02-29"), None);
    /// ```
    pub fn read(text: &str) -> Option<Self> {
        let mut parts = text.trim().split('-');
        let mut number = |digits: usize| {
            let part = parts.next()?;
            (part.len() == digits && part.bytes().all(|b| b.is_ascii_digit()))
                .then(|| part.parse::<u16>().ok())?
        };
        let (year, month, day) = (number(4)?, number(2)?, number(2)?);
        if parts.next().is_some() || month == 0 || day == 0 {
            return None;
        }
        let is_leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
        let lengths = [31, if is_leap { 29 } else { 28 }, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
        let before = usize::from(month - 1);
        let length = *lengths.get(before)?;
        let of_year = lengths.iter().take(before).sum::<u16>() + day;
        let of_season = of_year - u16::from(is_leap && month > 2);
        (day <= length).then_some(Self { year, of_year, of_season })
    }
}

/// How many days apart two days are in the season, whatever their years: at most 182.
///
/// ```
/// use layercast_lesson::years::{Day, days_apart_in_season};
/// let day = |text| Day::read(text).expect("a day");
/// assert_eq!(days_apart_in_season(day("2023-12-30"), day("2025-01-02")), 3);
/// assert_eq!(days_apart_in_season(day("2024-10-12"), day("2025-10-12")), 0);
/// ```
pub fn days_apart_in_season(a: Day, b: Day) -> u16 {
    let straight = a.of_season.abs_diff(b.of_season);
    straight.min(YEAR_DAYS.saturating_sub(straight))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_days_of_the_calendar_are_read() {
        // ISO 8601 calendar dates; leap years by the Gregorian rule.
        assert_eq!(Day::read("2025-10-12"), Some(Day { year: 2025, of_year: 285, of_season: 285 }));
        assert_eq!(Day::read("2000-12-31"), Some(Day { year: 2000, of_year: 366, of_season: 365 }));
        assert_eq!(Day::read("1900-12-31"), Some(Day { year: 1900, of_year: 365, of_season: 365 }));
        for text in [
            "",
            "2025-13-01",
            "2025-00-01",
            "2025-04-31",
            "25-10-12",
            "2025-10-12-1",
            "2025-1-2",
            "+025-10-12",
        ] {
            assert_eq!(Day::read(text), None, "{text}");
        }
    }

    #[test]
    fn a_season_goes_round() {
        let day = |of_season| Day { year: 2025, of_year: of_season, of_season };
        assert_eq!(days_apart_in_season(day(10), day(13)), 3);
        assert_eq!(days_apart_in_season(day(1), day(365)), 1);
        assert_eq!(days_apart_in_season(day(1), day(184)), 182);
    }
}
