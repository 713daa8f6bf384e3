//! The trade's words in Italian. From memory, no source.

use crate::lexicon::languages::words::Words;

pub(crate) static WORDS: Words = Words::new(
    &[
        ("Club", "bastone bastoni mazza assetto"),
        ("Head", "testa"),
        ("Shaft", "canna"),
        ("Shot", "colpo colpon ncolpo"),
        ("Shots", "colpi numerocolpi numerodicolpi ncolpi"),
        ("Round", "serie"),
        ("Time", "ora orario"),
        ("Note", "commento"),
        ("Carry", "volo distanzavolo distanzadivolo distanzacarry"),
        ("Total distance", "distanzatotale totale distanza"),
        ("Offline", "deviazionelaterale deviazione scarto scartolaterale laterale dispersionelaterale"),
        ("Ball speed", "velocitàpalla velocitàdellapalla velocitapalla velpalla"),
        (
            "Club speed",
            "velocitàbastone velocitàdelbastone velocitàtesta velocitàtestabastone velocitàswing velocitabastone velbastone",
        ),
        ("Launch angle", "angolodilancio angololancio angolodipartenza"),
        ("Launch direction", "direzionedilancio direzionelancio direzionedipartenza"),
        ("Spin rate", "rotazione velocitàdirotazione giri"),
        ("Spin axis", "assedirotazione assespin"),
        ("Peak height", "altezzamassima altezzamax altezza"),
        ("Descent angle", "angolodiatterraggio angolodidiscesa angolodicaduta"),
        ("Hang time", "tempodivolo"),
        ("Smash factor", "fattoresmash efficienza"),
        ("Attack angle", "angolodattacco angolodiattacco"),
        ("Club path", "traiettoriabastone percorsobastone pathbastone"),
        ("Face angle", "angolofaccia angolodellafaccia faccia"),
        ("Average", "medio mediavalori"),
        ("Standard deviation", "deviazionestandard scartotipo"),
        ("Maximum", "massimo"),
    ],
    ["s sx sinistra sin", "d dx destra"],
);
