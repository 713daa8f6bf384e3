//! The trade's words in German. From memory, no source.

use crate::lexicon::languages::words::Words;

pub(crate) static WORDS: Words = Words::new(
    &[
        ("Club", "schläger schlaeger kombination aufbau"),
        ("Head", "kopf schlägerkopf"),
        ("Shaft", "schaft"),
        ("Shot", "schlag schlagnr schlagnummer"),
        ("Shots", "schläge schlaege anzahl schlagzahl anzahlschläge"),
        ("Round", "runde durchgang"),
        ("Time", "zeit uhrzeit"),
        ("Date", "datum"),
        ("Note", "bemerkung notiz kommentar"),
        ("Carry", "carryweite carrydistanz carrylänge flugweite fluglänge"),
        ("Total distance", "gesamtweite gesamtdistanz gesamtlänge totaldistanz gesamt weite distanz"),
        ("Offline", "seitenabweichung seitlicheabweichung abweichung seite seitlich"),
        ("Ball speed", "ballgeschwindigkeit ballgeschw"),
        (
            "Club speed",
            "schlägerkopfgeschwindigkeit schlägergeschwindigkeit schlaegerkopfgeschwindigkeit schwunggeschwindigkeit kopfgeschwindigkeit schlägerkopfgeschw",
        ),
        ("Launch angle", "abflugwinkel startwinkel abschlagwinkel"),
        ("Launch direction", "abflugrichtung startrichtung"),
        ("Spin rate", "drall drehzahl rückwärtsdrall"),
        ("Spin axis", "spinachse drallachse drehachse"),
        ("Peak height", "flughöhe scheitelhöhe maxhöhe maximalehöhe höhe scheitelpunkt"),
        ("Descent angle", "landewinkel eintreffwinkel auftreffwinkel"),
        ("Hang time", "flugzeit flugdauer"),
        ("Smash factor", "smashfaktor effizienz"),
        ("Attack angle", "angriffswinkel treffwinkel"),
        ("Club path", "schlägerweg schwungpfad schwungbahn schlägerbahn"),
        ("Face angle", "schlagflächenwinkel blattstellung schlägerblattwinkel schlagfläche"),
        ("Face to path", "schlagflächezumweg blattzubahn"),
        ("Dynamic loft", "dynamischerloft"),
        ("Average", "mittelwert mittel durchschnitt schnitt mw"),
        ("Standard deviation", "standardabweichung stdabw streuung stabw"),
        ("Median", "zentralwert"),
        ("Minimum", "kleinster niedrigster kleinsterwert"),
        ("Maximum", "größter höchster größterwert"),
    ],
    ["l li links", "r re rechts"],
);
