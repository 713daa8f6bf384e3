//! The words of the trade for the columns of a session, and their usual shortenings.
//!
//! Written without spaces, so that "Ball Speed", "ball_speed" and "BallSpeed" are one word.
//! The names and ids of [`Known`] are understood without standing here.

use crate::lexicon::word::{Claim, Word};
use crate::outcome::Statistic;
use session::known::Known;
use std::borrow::Cow;
use std::sync::OnceLock;

pub(crate) static WORDS: [(Word, &str); 33] = [
    (Word::Measure(Known::Carry), "carrydistance carrydist carrylength carryyardage carr"),
    (Word::Measure(Known::Total), "totaldist distancetotal totallength totalyardage distance dist overall"),
    (
        Word::Measure(Known::Offline),
        "offlinedistance offlinedist offlinecarry offlinetotal side sidedistance sidecarry carryside \
         sidetotal totalside lateral lateraldistance lateralcarry leftright lr rl deviationfromtarget \
         distanceoffline distoffline offcenter offcentre fromtarget offtarget deviationdistance \
         sideways directionmiss sidedev",
    ),
    (
        Word::Measure(Known::BallSpeed),
        "ballspd ballvelocity ballspeeds bs ballsp bspd vball velocity speedball",
    ),
    (
        Word::Measure(Known::ClubSpeed),
        "clubheadspeed headspeed swingspeed clubspd chs clubvelocity clubheadspd cs hs swingspd \
         clubsp headspd vclub ss swspeed clubheadvelocity",
    ),
    (
        Word::Measure(Known::LaunchAngle),
        "launch launchang verticallaunch verticallaunchangle vla vlaunch launchv la launchvertical \
         launchanglevertical vertlaunch lang",
    ),
    (
        Word::Measure(Known::LaunchDirection),
        "launchdir horizontallaunch horizontallaunchangle hla hlaunch launchh azimuth startdirection \
         startline startdir ld launchhorizontal sideangle direction horizlaunch launchazimuth \
         startingdirection startingline dir horizontalangle",
    ),
    (
        Word::Measure(Known::SpinRate),
        "spin totalspin sr spn backspin backspinrate ballspin spinratetotal spintotal",
    ),
    (
        Word::Measure(Known::SpinAxis),
        "axis axistilt tiltaxis spintilt spinaxisangle spinaxistilt sa axisangle",
    ),
    (
        Word::Measure(Known::Apex),
        "peakheight maxheight maximumheight height apexheight peak maxht maxheigth hmax heightmax peakht \
         apexht maxelevation",
    ),
    (
        Word::Measure(Known::DescentAngle),
        "landangle landingangle angleofdescent descent landang landing angledescent impactangleground da \
         descang decentangle landingang",
    ),
    (Word::Measure(Known::HangTime), "flighttime airtime timeofflight hang timeinair hangt"),
    (Word::Measure(Known::Smash), "smashfactor smashratio sf smashfact efficiency speedratio"),
    (
        Word::Measure(Known::AttackAngle),
        "angleofattack aoa attack aa attackang attang verticalattack attackanglevertical",
    ),
    (Word::Measure(Known::ClubPath), "path swingpath clubheadpath cp pathangle clubpathangle headpath"),
    (
        Word::Measure(Known::FaceAngle),
        "face facetotarget clubface clubfaceangle fa faceang facetarget clubfacetotarget ftt",
    ),
    (Word::Measure(Known::FaceToPath), "ftp f2p facepath facetopathangle facevspath fp facepathangle"),
    (
        Word::Measure(Known::DynamicLoft),
        "dynloft deliveredloft loftdelivered dl loftatimpact dynamicloftangle impactloft",
    ),
    (Word::Measure(Known::SpinLoft), "spinloftangle spl sploft"),
    (
        Word::Measure(Known::StrikeHeight),
        "impactheight verticalimpact impactvertical highlow strikey impacty verticalstrike \
         strikevertical lowhigh facehighlow impactv strikev heightonface vertimpact verticalstrikelocation",
    ),
    (
        Word::Measure(Known::StrikeOffset),
        "impactoffset horizontalimpact impacthorizontal heeltoe toeheel strikex impactx lateralimpact \
         strikeside impactlateral horizontalstrike strikehorizontal impacth strikeh offsetonface horizimpact",
    ),
    (
        Word::Build(Claim::Whole),
        "build builds buildname club clubs clubname setup combo combination configuration config bagitem \
         clubbuild clubused assembly spec",
    ),
    (
        Word::Build(Claim::Part),
        "head heads clubhead shaft shafts headshaft shaftname headname shafttype flex driver hosel \
         setting settings clubtype tip model",
    ),
    (
        Word::Build(Claim::Group),
        "group groups species supp feed treatment treatments trt arm condition conditions batch lot supplement \
         state variety cohort variant category class level factor sample team",
    ),
    (Word::Build(Claim::Label), "name label type kind tag id1"),
    (
        Word::Round,
        "round rounds rd rnd set sets pass block blocks series roundno roundnumber rotation cycle lap bout",
    ),
    (
        Word::Number,
        "shot shotno shotnumber shotnr shotnum number no nr num # id shotid index hit ball# ballno ballnumber stroke \
         shot# strokeno sequence seq order shotorder idx",
    ),
    (
        Word::Time,
        "time timestamp datetime date clock timeofday hittime shottime recorded recordedat when dateandtime",
    ),
    (
        Word::Count,
        "n shots count ofshots numberofshots shotcount noofshots #shots nshots balls numshots samplesize \
         shotshit ballshit hits noshots nrofshots swings",
    ),
    (
        Word::LeftOut,
        "leftout excluded excludedbecause leftoutbecause reasonleftout include included use used keep valid counted",
    ),
    (Word::Statistic, "stat statistic statistics summary figure measurekind"),
    (
        Word::Remark,
        "note notes comment comments remark remarks ball balltype golfball player golfer user session day \
         location venue weather wind tee bay shape shotshape shottype result quality feel feeling strike \
         lie target operator coach fitter device unit units",
    ),
    (Word::Remark, "tags mark marks video file source"),
];

/// Words that name a figure of a summary; written without spaces.
pub(crate) static STATISTICS: [(Statistic, &str); 7] = [
    (Statistic::Mean, "average averages avg avgs ave mean means ø Ø avrg averaged"),
    (Statistic::Median, "median med"),
    (
        Statistic::Deviation,
        "sd std stdev stddev standarddeviation deviation dev stdv σ stdeviation standarddev sdev stdevs \
         deviations consistency",
    ),
    (Statistic::Low, "min minimum lowest smallest shortest low"),
    (Statistic::High, "max maximum highest largest longest high best"),
    (Statistic::Range, "range span spread"),
    (Statistic::Count, "count n shots numberofshots shotcount noofshots #shots ofshots"),
];

/// Whether one of the words in a list, set apart by spaces, is this one. For short lists.
pub(crate) fn lists(words: &str, word: &str) -> bool {
    words.split(' ').any(|w| w == word)
}

/// Longest word that is looked up.
const LONGEST: usize = 28;

/// Every word that is understood, with what it stands for.
pub(crate) fn all_words() -> impl Iterator<Item = (&'static str, Word)> {
    let lists = WORDS.iter().chain(&crate::lexicon::spanish::WORDS);
    lists.flat_map(|(word, list)| list.split_whitespace().map(|w| (w, *word)))
}

/// What a word, in lower case and without spaces, stands for as a heading.
pub(crate) fn look_up(word: &str) -> Option<Word> {
    static INDEX: OnceLock<Vec<(String, Word)>> = OnceLock::new();
    find(INDEX.get_or_init(index_words), &without_accents(word))
}

/// The figure of a summary that a word names.
pub(crate) fn statistic(word: &str) -> Option<Statistic> {
    static INDEX: OnceLock<Vec<(String, Statistic)>> = OnceLock::new();
    let index = || {
        let lists = STATISTICS.iter().chain(&crate::lexicon::spanish::STATISTICS);
        sorted(lists.flat_map(|(s, list)| list.split(' ').map(|w| (w.to_owned(), *s))).collect())
    };
    find(INDEX.get_or_init(index), &without_accents(word))
}

/// Letters with the accents of Spanish as the letters without, of either case: headings are written both ways.
fn without_accents(word: &str) -> Cow<'_, str> {
    if word.is_ascii() {
        return word.into();
    }
    let plain = |c: char| match c {
        'á' | 'Á' => 'a',
        'é' | 'É' => 'e',
        'í' | 'Í' => 'i',
        'ó' | 'Ó' | 'º' => 'o',
        'ú' | 'Ú' | 'ü' | 'Ü' => 'u',
        'ñ' | 'Ñ' => 'n',
        other => other,
    };
    word.chars().map(plain).collect::<String>().into()
}

fn index_words() -> Vec<(String, Word)> {
    let squashed = |name: &str| -> String {
        name.chars().filter(char::is_ascii_alphanumeric).map(|c| c.to_ascii_lowercase()).collect()
    };
    let measures = Known::ALL
        .map(Known::facts)
        .into_iter()
        .flat_map(|m| [m.id, m.name].map(|name| (squashed(name), Word::Measure(m.known))));
    sorted(measures.chain(all_words().map(|(name, word)| (name.to_owned(), word))).collect())
}

/// By word; of equal words the first stays first.
fn sorted<T>(mut index: Vec<(String, T)>) -> Vec<(String, T)> {
    arrange::sort_by(&mut index, |a, b| a.0.cmp(&b.0));
    index
}

fn find<T: Copy>(index: &[(String, T)], word: &str) -> Option<T> {
    if word.is_empty() || word.len() > LONGEST {
        return None;
    }
    let at = index.partition_point(|(known, _)| known.as_str() < word);
    index.get(at).filter(|(known, _)| known == word).map(|(_, value)| *value)
}
