//! In which units distances and speeds are shown; inside, and in every number of a report, they stay canonical.

use session::measure::Unit;
use session::units::{KM_PER_MILE, M_PER_YD};
use text::{Units, Voice};

/// A unit as it is shown: the label, and what one canonical unit is in it. Exact factors, as in [`session::units`].
#[must_use]
pub fn shown(unit: Unit, voice: &Voice) -> (&'static str, f64) {
    match (unit, voice.units) {
        (Unit::Yd, Units::Meters | Units::MetersAndMph) => ("m", M_PER_YD),
        (Unit::Mph, Units::Meters) => ("km/h", KM_PER_MILE),
        _ => (unit.label(), 1.0),
    }
}

/// What a form offers where this size is usual in canonical units: as round a number in the units shown, so that nobody is
/// asked whether a difference starts to matter at 4.572 m. It is the golfer's once the question is asked; a margin that
/// nobody chose stays the canonical one.
#[must_use]
pub fn offered(unit: Unit, size: f64, voice: &Voice) -> f64 {
    let (_, scale) = shown(unit, voice);
    match (unit, voice.units) {
        (Unit::Mph, Units::Meters) => (size * scale * 2.0).round() / 2.0 / scale,
        (Unit::Yd, Units::Meters | Units::MetersAndMph) => size / scale,
        _ => size,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::known::Known;
    use text::Language;

    #[test]
    fn meters_are_shown_only_when_asked_for() {
        let (yards, meters) = (Voice::english(), Voice::new(Language::english(), Units::Meters));
        assert_eq!((shown(Unit::Yd, &yards), shown(Unit::Yd, &meters)), (("yd", 1.0), ("m", 0.9144)));
        assert_eq!((shown(Unit::Rpm, &meters), shown(Unit::Mph, &yards)), (("rpm", 1.0), ("mph", 1.0)));
    }

    #[test]
    fn where_meters_go_with_miles_an_hour_speeds_stay() {
        let there = Voice::new(Language::english(), Units::MetersAndMph);
        assert_eq!((shown(Unit::Yd, &there), shown(Unit::Mph, &there)), (("m", 0.9144), ("mph", 1.0)));
        assert!((offered(Unit::Yd, 5.0, &there) * 0.9144 - 5.0).abs() < 1e-12);
        assert!((offered(Unit::Mph, 1.5, &there) - 1.5).abs() < 1e-12);
    }

    #[test]
    fn a_form_offers_round_numbers_in_either() {
        let meters = Voice::new(Language::english(), Units::Meters);
        for facts in Known::ALL.map(Known::facts) {
            let offered = offered(facts.unit, facts.margin, &meters) * shown(facts.unit, &meters).1 * 200.0;
            assert!((offered - offered.round()).abs() < 1e-9, "{}: {offered}", facts.id);
        }
    }
}
