//! The trade's words in Portuguese. From memory, no source.

use crate::lexicon::languages::Words;

pub(crate) static WORDS: Words = Words {
    headings: &[
        ("Club", "taco tacos conjunto montagem"),
        ("Head", "cabeça"),
        ("Shaft", "haste vareta"),
        ("Shot", "tacada batida pancada"),
        ("Shots", "tacadas númerodetacadas batidas pancadas"),
        ("Round", "volta série rodada"),
        ("Time", "hora"),
        ("Date", ""),
        ("Note", "nota observação comentário"),
        ("Carry", "voo distânciadevoo vôo distânciacarry"),
        ("Total distance", "distânciatotal distância distanciatotal"),
        ("Offline", "desviolateral desvio lateral"),
        ("Ball speed", "velocidadedabola velocidadebola velbola"),
        (
            "Club speed",
            "velocidadedotaco velocidadetaco velocidadedacabeça velocidadedacabeçadotaco velocidadedoswing",
        ),
        ("Launch angle", "ângulodelançamento ângulolançamento angulodelançamento ângulodesaída"),
        ("Launch direction", "direçãodelançamento direcçãodelançamento direçãodesaída"),
        ("Spin rate", "rotação rotações taxaderotação velocidadederotação"),
        ("Spin axis", "eixoderotação eixodospin"),
        ("Peak height", "alturamáxima altura ápice"),
        ("Descent angle", "ângulodedescida ângulodequeda ângulodeaterragem ângulodeaterrissagem"),
        ("Hang time", "tempodevoo"),
        ("Smash factor", "fatorsmash factorsmash eficiência"),
        ("Attack angle", "ângulodeataque"),
        ("Club path", "caminhodotaco trajetóriadotaco trajectóriadotaco"),
        ("Face angle", "ângulodaface"),
        ("Dynamic loft", "loftdinâmico"),
        ("Average", "média médias"),
        ("Standard deviation", "desviopadrão"),
        ("Median", "mediana"),
        ("Minimum", "mínimo"),
        ("Maximum", "máximo"),
    ],
    sides: ["e esq esquerda", "d dir direita"],
};
