//! How each measure is spoken of: what a build does when it has more of it, and when it has less.

use crate::measure::MeasureId;

/// The turns of speech for one measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Phrase {
    /// What the candidate does when its average is higher: `carries farther`.
    pub(crate) higher: &'static str,
    /// What it does when its average is lower.
    pub(crate) lower: &'static str,
    /// A size said of a higher average: `8 yd` + `more`.
    pub(crate) more: &'static str,
    /// A size said of a lower average.
    pub(crate) less: &'static str,
    /// Sides for measures that run left and right (or toe and heel, up and down) of zero.
    pub(crate) sides: Option<Sides>,
}

/// The two sides of zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Sides {
    /// Said of a value above zero.
    pub(crate) above: &'static str,
    /// Said of a value below zero.
    pub(crate) below: &'static str,
}

const LEFT_RIGHT: Option<Sides> = Some(Sides { above: "right", below: "left" });

const fn phrase(
    higher: &'static str,
    lower: &'static str,
    gap: (&'static str, &'static str),
    sides: Option<Sides>,
) -> Phrase {
    Phrase { higher, lower, more: gap.0, less: gap.1, sides }
}

const MORE: (&str, &str) = ("more", "less");
const HIGHER: (&str, &str) = ("higher", "lower");
const RIGHT: (&str, &str) = ("farther right", "farther left");

/// The phrase for a measure; a column of the golfer's own is spoken of by its name, see [`Phrase`].
pub(crate) fn phrase_for(id: &MeasureId) -> Phrase {
    match id.0.as_str() {
        "carry" => phrase("carries farther", "carries less far", MORE, None),
        "total" => phrase("goes farther in total", "goes less far in total", MORE, None),
        "offline" => phrase("finishes farther right", "finishes farther left", RIGHT, LEFT_RIGHT),
        "ball_speed" => phrase("gives more ball speed", "gives less ball speed", MORE, None),
        "club_speed" => phrase("is swung faster", "is swung slower", MORE, None),
        "launch_angle" => phrase("launches higher", "launches lower", HIGHER, None),
        "launch_direction" => phrase("starts farther right", "starts farther left", RIGHT, LEFT_RIGHT),
        "spin_rate" => phrase("spins more", "spins less", MORE, None),
        "spin_axis" => phrase("curves more to the right", "curves more to the left", RIGHT, LEFT_RIGHT),
        "apex" => phrase("flies higher", "flies lower", HIGHER, None),
        "descent_angle" => {
            phrase("comes down steeper", "comes down shallower", ("steeper", "shallower"), None)
        }
        "hang_time" => phrase("stays up longer", "comes down sooner", ("longer", "shorter"), None),
        "smash" => phrase("has a higher smash factor", "has a lower smash factor", HIGHER, None),
        "attack_angle" => phrase(
            "is swung more upward",
            "is swung more downward",
            ("more upward", "more downward"),
            Some(Sides { above: "up", below: "down" }),
        ),
        "club_path" => {
            phrase("is swung on a path farther right", "is swung on a path farther left", RIGHT, LEFT_RIGHT)
        }
        "face_angle" => phrase(
            "comes in with the face farther right",
            "comes in with the face farther left",
            RIGHT,
            LEFT_RIGHT,
        ),
        "face_to_path" => phrase(
            "comes in with the face farther right of the path",
            "comes in with the face farther left of the path",
            RIGHT,
            LEFT_RIGHT,
        ),
        "dynamic_loft" => phrase("arrives with more loft", "arrives with less loft", MORE, None),
        "spin_loft" => phrase("has more spin loft", "has less spin loft", MORE, None),
        "strike_height" => phrase(
            "is struck higher on the face",
            "is struck lower on the face",
            HIGHER,
            Some(Sides { above: "high", below: "low" }),
        ),
        "strike_offset" => phrase(
            "is struck farther toward the toe",
            "is struck farther toward the heel",
            ("nearer the toe", "nearer the heel"),
            Some(Sides { above: "toward the toe", below: "toward the heel" }),
        ),
        _ => phrase("is higher", "is lower", HIGHER, None),
    }
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
