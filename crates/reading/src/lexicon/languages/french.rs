//! The trade's words in French. From memory, no source.

use crate::lexicon::languages::words::Words;

pub(crate) static WORDS: Words = Words::new(
    &[
        ("Club", "bâton montage"),
        ("Head", "tête"),
        ("Shaft", "manche shaftmanche"),
        ("Shot", "coup frappe n° nocoup"),
        ("Shots", "coups nombredecoups frappes"),
        ("Round", "série tour manchepartie"),
        ("Time", "heure"),
        ("Note", "remarque commentaire"),
        ("Carry", "portée porteedevol portéedevol distancedevol vol portee"),
        ("Total distance", "distancetotale totale distanceroulée"),
        ("Offline", "écart écartlatéral ecartlateral ecart déviationlatérale dispersionlatérale"),
        ("Ball speed", "vitessedeballe vitesseballe vitessedelaballe"),
        (
            "Club speed",
            "vitessedeclub vitesseclub vitesseduclub vitessedetête vitessedelatêtedeclub vitessedetêtedeclub vitessedeswing",
        ),
        ("Launch angle", "angledelancement anglededépart anglededécollage angledelancer"),
        ("Launch direction", "directiondelancement directiondedépart"),
        ("Spin rate", "tauxdespin vitessederotation effetrétro tauxderotation"),
        ("Spin axis", "axedespin axederotation"),
        ("Peak height", "hauteurmax hauteurmaximale hauteur flèche"),
        ("Descent angle", "angledatterrissage angledechute anglededescente"),
        ("Hang time", "tempsdevol duréedevol"),
        ("Smash factor", "facteursmash rendement efficacité"),
        ("Attack angle", "angledattaque"),
        ("Club path", "chemindeclub cheminduclub trajectoireduclub"),
        ("Face angle", "angledeface angledelaface faceduclub"),
        ("Face to path", "facecheminduclub"),
        ("Dynamic loft", "loftdynamique"),
        ("Average", "moyenne moyennes moy"),
        ("Standard deviation", "écarttype ecarttype"),
        ("Median", "médiane"),
        ("Minimum", "plusbas mini"),
        ("Maximum", "plushaut maxi"),
    ],
    ["g gauche gche", "d dr droite"],
);
