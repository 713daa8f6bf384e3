//! The trade's words in Portuguese. From memory, no source.

use crate::lexicon::languages::words::Words;

pub(crate) static WORDS: Words = Words::new(
    &[
        ("Club", "taco tacos conjunto montagem"),
        ("Head", "cabeça"),
        ("Shaft", "haste vareta"),
        ("Shot", "tacada batida pancada"),
        ("Shots", "tacadas númerodetacadas batidas pancadas"),
        ("Round", "volta série rodada"),
        ("Note", "observação"),
        ("Carry", "voo distânciadevoo vôo distânciacarry"),
        ("Total distance", "distânciatotal distância"),
        ("Ball speed", "velocidadedabola velocidadebola"),
        (
            "Club speed",
            "velocidadedotaco velocidadetaco velocidadedacabeça velocidadedacabeçadotaco velocidadedoswing",
        ),
        ("Launch angle", "ângulodelançamento ângulolançamento angulodelançamento ângulodesaída"),
        ("Launch direction", "direçãodelançamento direcçãodelançamento direçãodesaída"),
        ("Spin rate", "rotação rotações taxaderotação velocidadederotação"),
        ("Spin axis", "eixoderotação eixodospin"),
        ("Descent angle", "ângulodedescida ângulodequeda ângulodeaterragem ângulodeaterrissagem"),
        ("Hang time", "tempodevoo"),
        ("Smash factor", "fatorsmash eficiência"),
        ("Attack angle", "ângulodeataque"),
        ("Club path", "caminhodotaco trajetóriadotaco trajectóriadotaco"),
        ("Face angle", "ângulodaface"),
        ("Dynamic loft", "loftdinâmico"),
        ("Standard deviation", "desviopadrão"),
    ],
    ["e esq esquerda", "d dir direita"],
);
