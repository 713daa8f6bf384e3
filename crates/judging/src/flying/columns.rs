//! Which of a session's columns describe the flight, and the shots that have them all.

use super::forward_yd;
use session::known::Known;
use session::{Session, Shot};

/// How many numbers describe a launch.
pub(crate) const VALUES: usize = 5;

/// What a launch is made of; without [`NEEDED`], the first three, there is no flight.
pub(crate) const FACTORS: [Known; VALUES] =
    [Known::BallSpeed, Known::LaunchAngle, Known::SpinRate, Known::LaunchDirection, Known::SpinAxis];

/// What of [`FACTORS`] must be there.
pub(crate) const NEEDED: [Known; 3] = [FACTORS[0], FACTORS[1], FACTORS[2]];

/// Share of the shots that can be flown which must have an optional column, before it counts as measured.
const MOSTLY: f64 = 0.8;

/// Where the numbers of a launch stand in a shot's values.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Columns {
    /// `None` for one that was not measured, which then counts as zero.
    places: [Option<usize>; VALUES],
    carry: Option<usize>,
    club_speed: Option<usize>,
}

/// A shot that can be flown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Flown {
    /// Place of the shot in the session.
    pub(crate) shot: usize,
    /// Index of the build.
    pub(crate) build: usize,
    /// In the order of [`FACTORS`], canonical units.
    pub(crate) values: [f64; VALUES],
    /// Carry as measured, yd.
    pub(crate) carry: f64,
    /// Carry of the model along the target line in standard air, yd.
    pub(crate) modeled: f64,
    /// Club speed where it was measured, mph.
    pub(crate) club_speed: Option<f64>,
}

/// Whether all of these carry the same: no shots do that, numbers that were rounded or copied do.
pub(crate) fn all_carry_the_same(shots: &[Flown]) -> bool {
    shots.windows(2).all(|two| (two[0].carry - two[1].carry).abs() <= 0.0)
}

impl Columns {
    /// Looks the columns up; optional ones count when four in five of the shots that can be flown have them.
    pub(crate) fn of(session: &Session) -> Self {
        let place = |known: Known| session.measure_index(&known.into());
        let mut columns = Self {
            places: FACTORS.map(place),
            carry: place(Known::Carry),
            club_speed: place(Known::ClubSpeed),
        };
        let basic = Self { places: without_optional(columns.places), ..columns };
        let flying: Vec<&Shot> = session.shots.iter().filter(|shot| basic.values(shot).is_some()).collect();
        let mostly = |place: &usize| {
            let has = flying.iter().filter(|shot| value(shot, *place).is_some()).count();
            has > 0 && has as f64 >= MOSTLY * flying.len() as f64
        };
        for optional in columns.places.iter_mut().skip(NEEDED.len()) {
            *optional = optional.filter(mostly);
        }
        columns.club_speed = columns.club_speed.filter(mostly);
        columns
    }

    /// Whether a factor was measured.
    pub(crate) fn has(&self, factor: usize) -> bool {
        self.places.get(factor).is_some_and(Option::is_some)
    }

    /// Whether club speed was measured.
    pub(crate) fn has_club_speed(&self) -> bool {
        self.club_speed.is_some()
    }

    /// Whether everything that a flight needs, and the carry, has a column.
    pub(crate) fn can_fly(&self) -> bool {
        self.places.iter().take(NEEDED.len()).all(Option::is_some) && self.carry.is_some()
    }

    fn values(&self, shot: &Shot) -> Option<[f64; VALUES]> {
        let mut values = [0.0; VALUES];
        for (factor, (to, place)) in values.iter_mut().zip(self.places).enumerate() {
            match place {
                Some(place) => *to = value(shot, place)?,
                None if factor < NEEDED.len() => return None,
                None => {}
            }
        }
        Some(values)
    }

    fn fly(&self, place: usize, shot: &Shot) -> Option<Flown> {
        let values = self.values(shot)?;
        let club_speed = match self.club_speed {
            Some(place) => Some(value(shot, place)?),
            None => None,
        };
        let carry = value(shot, self.carry?)?;
        let modeled = forward_yd(&values)?;
        Some(Flown { shot: place, build: shot.build, values, carry, modeled, club_speed })
    }
}

/// Every shot that has all that was measured and leaves the ground, in the order hit.
pub(crate) fn flown(session: &Session, columns: &Columns) -> Vec<Flown> {
    session.shots.iter().enumerate().filter_map(|(place, shot)| columns.fly(place, shot)).collect()
}

fn without_optional(mut places: [Option<usize>; VALUES]) -> [Option<usize>; VALUES] {
    places.iter_mut().skip(NEEDED.len()).for_each(|place| *place = None);
    places
}

fn value(shot: &Shot, place: usize) -> Option<f64> {
    shot.values.get(place).copied().flatten()
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::measure::MeasureId;

    /// Ten shots that can be flown and two that cannot, with an optional column that so many of the ten have.
    fn session(optional: Known, have: usize) -> Session {
        let measures = [Known::Carry, Known::BallSpeed, Known::LaunchAngle, Known::SpinRate, optional];
        let shot = |at: usize| {
            let spin = (at < 10).then_some(2600.0);
            let values = vec![Some(240.0), Some(150.0), Some(12.0), spin, (at < have).then_some(2.0)];
            Shot { values, ..Shot::default() }
        };
        Session {
            measures: measures.map(MeasureId::from).to_vec(),
            shots: (0..12).map(shot).collect(),
            ..Session::default()
        }
    }

    #[test]
    fn an_optional_number_counts_where_four_in_five_flights_have_it() {
        for (have, counts) in [(0, false), (7, false), (8, true), (10, true)] {
            for (optional, factor) in [(Known::LaunchDirection, 3), (Known::SpinAxis, 4)] {
                let session = session(optional, have);
                let columns = Columns::of(&session);
                assert_eq!(columns.has(factor), counts, "{have} of {optional:?}");
                assert!(!columns.has(7 - factor) && !columns.has_club_speed());
                // What counts must be there; what does not is taken as zero.
                let flown = flown(&session, &columns);
                assert_eq!(flown.len(), if counts { have } else { 10 });
                assert!(flown.iter().all(|shot| (shot.values[factor] > 0.0) == counts));
            }
            let session = session(Known::ClubSpeed, have);
            let columns = Columns::of(&session);
            assert_eq!(columns.has_club_speed(), counts, "{have}");
            assert_eq!(flown(&session, &columns)[0].club_speed.is_some(), counts);
        }
    }

    #[test]
    fn without_a_shot_that_flies_nothing_optional_counts() {
        let mut session = session(Known::SpinAxis, 10);
        session.shots.retain(|shot| shot.values[3].is_none());
        assert!(!Columns::of(&session).has(4));
    }
}
