//! How each measure is spoken of: what a build does when it has more of it, and when it has less.

use crate::measure::MeasureId;
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

/// The phrase for a measure; a column of the golfer's own is spoken of by its name, see [`Phrase`].
pub(crate) fn phrase_for(id: &MeasureId) -> Phrase {
    let (higher, lower, (more, less), sides) = match id.0.as_str() {
        "carry" => (say::carry_higher(), say::carry_lower(), more(), None),
        "total" => (say::total_higher(), say::total_lower(), more(), None),
        "offline" => (
            say::offline_higher(),
            say::offline_lower(),
            right(),
            Some(sides(say::side_lr_above(), say::side_lr_below())),
        ),
        "ball_speed" => (say::ball_speed_higher(), say::ball_speed_lower(), more(), None),
        "club_speed" => (say::club_speed_higher(), say::club_speed_lower(), more(), None),
        "launch_angle" => (say::launch_angle_higher(), say::launch_angle_lower(), higher(), None),
        "launch_direction" => (
            say::launch_direction_higher(),
            say::launch_direction_lower(),
            right(),
            Some(sides(say::side_lr_above(), say::side_lr_below())),
        ),
        "spin_rate" => (say::spin_rate_higher(), say::spin_rate_lower(), more(), None),
        "spin_axis" => (
            say::spin_axis_higher(),
            say::spin_axis_lower(),
            right(),
            Some(sides(say::side_lr_above(), say::side_lr_below())),
        ),
        "apex" => (say::apex_higher(), say::apex_lower(), higher(), None),
        "descent_angle" => (say::descent_angle_higher(), say::descent_angle_lower(), steeper(), None),
        "hang_time" => (say::hang_time_higher(), say::hang_time_lower(), longer(), None),
        "smash" => (say::smash_higher(), say::smash_lower(), higher(), None),
        "attack_angle" => (
            say::attack_angle_higher(),
            say::attack_angle_lower(),
            upward(),
            Some(sides(say::side_ud_above(), say::side_ud_below())),
        ),
        "club_path" => (
            say::club_path_higher(),
            say::club_path_lower(),
            right(),
            Some(sides(say::side_lr_above(), say::side_lr_below())),
        ),
        "face_angle" => (
            say::face_angle_higher(),
            say::face_angle_lower(),
            right(),
            Some(sides(say::side_lr_above(), say::side_lr_below())),
        ),
        "face_to_path" => (
            say::face_to_path_higher(),
            say::face_to_path_lower(),
            right(),
            Some(sides(say::side_lr_above(), say::side_lr_below())),
        ),
        "dynamic_loft" => (say::dynamic_loft_higher(), say::dynamic_loft_lower(), more(), None),
        "spin_loft" => (say::spin_loft_higher(), say::spin_loft_lower(), more(), None),
        "strike_height" => (
            say::strike_height_higher(),
            say::strike_height_lower(),
            higher(),
            Some(sides(say::side_hl_above(), say::side_hl_below())),
        ),
        "strike_offset" => (
            say::strike_offset_higher(),
            say::strike_offset_lower(),
            toe(),
            Some(sides(say::side_th_above(), say::side_th_below())),
        ),
        _ => (say::other_higher(), say::other_lower(), higher(), None),
    };
    Phrase { higher, lower, more, less, sides }
}

fn sides(above: String, below: String) -> Sides {
    Sides { above, below }
}

fn more() -> (String, String) {
    (say::gap_more_above(), say::gap_more_below())
}

fn higher() -> (String, String) {
    (say::gap_higher_above(), say::gap_higher_below())
}

fn right() -> (String, String) {
    (say::gap_right_above(), say::gap_right_below())
}

fn steeper() -> (String, String) {
    (say::gap_steeper_above(), say::gap_steeper_below())
}

fn longer() -> (String, String) {
    (say::gap_longer_above(), say::gap_longer_below())
}

fn upward() -> (String, String) {
    (say::gap_upward_above(), say::gap_upward_below())
}

fn toe() -> (String, String) {
    (say::gap_toe_above(), say::gap_toe_below())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::MEASURES;

    #[test]
    fn every_measure_of_the_trade_has_words_of_its_own() {
        let other = phrase_for(&"a column of the golfer's own".into());
        for measure in &MEASURES {
            assert_ne!(phrase_for(&measure.id.into()), other, "{}", measure.id);
        }
    }
}
