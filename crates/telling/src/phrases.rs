//! How each measure is spoken of: what a build does when it has more of it, and when it has less.

use crate::format::Subject;
use judging::verdict::Direction;
use session::known::Known;
use session::measure::MeasureId;
use text::Voice;
use text::phrases as say;

/// The turns of speech for one measure.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Phrase {
    /// What the candidate does when its average is higher: `carries farther`.
    pub(crate) higher: String,
    /// What it does when its average is lower.
    pub(crate) lower: String,
    /// A size said of a higher average: `8 yd` + `more`.
    pub(crate) more: String,
    /// A size said of a lower average.
    pub(crate) less: String,
    /// Sides for measures that run left and right (or toe and heel, up and down) of zero.
    pub(crate) sides: Option<Sides>,
}

/// The two sides of zero.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Sides {
    /// Said of a value above zero.
    pub(crate) above: String,
    /// Said of a value below zero.
    pub(crate) below: String,
}

impl Sides {
    /// A size and its side: `4 yd right`.
    pub(crate) fn of(&self, subject: &Subject<'_>, x: f64) -> String {
        let side = if x > 0.0 { &self.above } else { &self.below };
        text::case::on_a_side(subject.voice, &subject.amount(x), side)
    }
}

/// `Driver B carries farther`, or `Weight with trt2 is higher` for a column of the golfer's own.
pub(crate) fn does(subject: &Subject<'_>, club: &str, direction: Direction) -> String {
    let phrase = phrase_for(&subject.id, subject.voice);
    let verb = if direction == Direction::Higher { &phrase.higher } else { &phrase.lower };
    if subject.id.known().is_some() {
        text::case::does(subject.voice, club, verb)
    } else {
        text::case::measure_of_does(subject.voice, &text::capital(&subject.name), club, verb)
    }
}

/// The phrase for a measure; a column of the golfer's own is spoken of by its name, see [`Phrase`].
pub(crate) fn phrase_for(id: &MeasureId, voice: &Voice) -> Phrase {
    let (higher, lower, (more, less), sides) = match id.known() {
        Some(Known::Carry) => (say::carry_higher(voice), say::carry_lower(voice), more(voice), None),
        Some(Known::Total) => (say::total_higher(voice), say::total_lower(voice), more(voice), None),
        Some(Known::Offline) => (
            say::offline_higher(voice),
            say::offline_lower(voice),
            right(voice),
            Some(sides(say::side_lr_above(voice), say::side_lr_below(voice))),
        ),
        Some(Known::BallSpeed) => {
            (say::ball_speed_higher(voice), say::ball_speed_lower(voice), more(voice), None)
        }
        Some(Known::ClubSpeed) => {
            (say::club_speed_higher(voice), say::club_speed_lower(voice), more(voice), None)
        }
        Some(Known::LaunchAngle) => {
            (say::launch_angle_higher(voice), say::launch_angle_lower(voice), higher(voice), None)
        }
        Some(Known::LaunchDirection) => (
            say::launch_direction_higher(voice),
            say::launch_direction_lower(voice),
            right(voice),
            Some(sides(say::side_lr_above(voice), say::side_lr_below(voice))),
        ),
        Some(Known::SpinRate) => {
            (say::spin_rate_higher(voice), say::spin_rate_lower(voice), more(voice), None)
        }
        Some(Known::SpinAxis) => (
            say::spin_axis_higher(voice),
            say::spin_axis_lower(voice),
            right(voice),
            Some(sides(say::side_lr_above(voice), say::side_lr_below(voice))),
        ),
        Some(Known::Apex) => (say::apex_higher(voice), say::apex_lower(voice), higher(voice), None),
        Some(Known::DescentAngle) => {
            (say::descent_angle_higher(voice), say::descent_angle_lower(voice), steeper(voice), None)
        }
        Some(Known::HangTime) => {
            (say::hang_time_higher(voice), say::hang_time_lower(voice), longer(voice), None)
        }
        Some(Known::Smash) => (say::smash_higher(voice), say::smash_lower(voice), higher(voice), None),
        Some(Known::AttackAngle) => (
            say::attack_angle_higher(voice),
            say::attack_angle_lower(voice),
            upward(voice),
            Some(sides(say::side_ud_above(voice), say::side_ud_below(voice))),
        ),
        Some(Known::ClubPath) => (
            say::club_path_higher(voice),
            say::club_path_lower(voice),
            right(voice),
            Some(sides(say::side_lr_above(voice), say::side_lr_below(voice))),
        ),
        Some(Known::FaceAngle) => (
            say::face_angle_higher(voice),
            say::face_angle_lower(voice),
            right(voice),
            Some(sides(say::side_lr_above(voice), say::side_lr_below(voice))),
        ),
        Some(Known::FaceToPath) => (
            say::face_to_path_higher(voice),
            say::face_to_path_lower(voice),
            right(voice),
            Some(sides(say::side_lr_above(voice), say::side_lr_below(voice))),
        ),
        Some(Known::DynamicLoft) => {
            (say::dynamic_loft_higher(voice), say::dynamic_loft_lower(voice), more(voice), None)
        }
        Some(Known::SpinLoft) => {
            (say::spin_loft_higher(voice), say::spin_loft_lower(voice), more(voice), None)
        }
        Some(Known::StrikeHeight) => (
            say::strike_height_higher(voice),
            say::strike_height_lower(voice),
            higher(voice),
            Some(sides(say::side_hl_above(voice), say::side_hl_below(voice))),
        ),
        Some(Known::StrikeOffset) => (
            say::strike_offset_higher(voice),
            say::strike_offset_lower(voice),
            toe(voice),
            Some(sides(say::side_th_above(voice), say::side_th_below(voice))),
        ),
        None => (say::other_higher(voice), say::other_lower(voice), higher(voice), None),
    };
    Phrase { higher, lower, more, less, sides }
}

fn sides(above: String, below: String) -> Sides {
    Sides { above, below }
}

fn more(voice: &Voice) -> (String, String) {
    (say::gap_more_above(voice), say::gap_more_below(voice))
}

fn higher(voice: &Voice) -> (String, String) {
    (say::gap_higher_above(voice), say::gap_higher_below(voice))
}

fn right(voice: &Voice) -> (String, String) {
    (say::gap_right_above(voice), say::gap_right_below(voice))
}

fn steeper(voice: &Voice) -> (String, String) {
    (say::gap_steeper_above(voice), say::gap_steeper_below(voice))
}

fn longer(voice: &Voice) -> (String, String) {
    (say::gap_longer_above(voice), say::gap_longer_below(voice))
}

fn upward(voice: &Voice) -> (String, String) {
    (say::gap_upward_above(voice), say::gap_upward_below(voice))
}

fn toe(voice: &Voice) -> (String, String) {
    (say::gap_toe_above(voice), say::gap_toe_below(voice))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_measure_of_the_trade_has_words_of_its_own() {
        let voice = Voice::english();
        let other = phrase_for(&"a column of the golfer's own".into(), &voice);
        for known in Known::ALL {
            assert_ne!(phrase_for(&known.into(), &voice), other, "{known:?}");
        }
    }
}
