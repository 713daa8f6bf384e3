//! The words of the trade in Spanish, without spaces and accents: "Velocidad de bola" is "velocidaddebola".
//!
//! "Desviación" is a spread beside averages; among single shots, where nothing has a spread, the miss to the side.

use crate::lexicon::word::{Claim, Word};
use crate::outcome::Statistic;
use session::known::Known;

pub(crate) static WORDS: [(Word, &str); 29] = [
    (Word::Measure(Known::Carry), "distanciadevuelo vuelo"),
    (Word::Measure(Known::Total), "distanciatotal distancia"),
    (
        Word::Measure(Known::Offline),
        "desvio desviolateral desviacionlateral distancialateral dispersionlateral",
    ),
    (Word::Measure(Known::BallSpeed), "velocidaddebola velocidadbola velbola"),
    (
        Word::Measure(Known::ClubSpeed),
        "velocidaddepalo velocidadpalo velocidaddelpalo velpalo velocidaddeswing velocidaddelacabeza velocidaddecabeza velocidadcabeza",
    ),
    (
        Word::Measure(Known::LaunchAngle),
        "angulodesalida angulosalida angulodevuelo angulodelanzamiento angulodedespegue lanzamiento despegue",
    ),
    (Word::Measure(Known::LaunchDirection), "direcciondesalida direccion direcciondelanzamiento"),
    (Word::Measure(Known::SpinRate), "giro efecto velocidaddegiro"),
    (Word::Measure(Known::SpinAxis), "ejedespin ejedegiro"),
    (Word::Measure(Known::Apex), "altura alturamaxima apice"),
    (Word::Measure(Known::DescentAngle), "angulodecaida angulodedescenso angulodeaterrizaje caida"),
    (Word::Measure(Known::HangTime), "tiempoenelaire tiempodevuelo"),
    (Word::Measure(Known::Smash), "factorsmash eficiencia"),
    (Word::Measure(Known::AttackAngle), "angulodeataque ataque"),
    (Word::Measure(Known::ClubPath), "trayectoriadelpalo trayectoria"),
    (Word::Measure(Known::FaceAngle), "angulodelacara angulodecara cara"),
    (Word::Measure(Known::FaceToPath), "cararespectoalatrayectoria caratrayectoria"),
    (Word::Measure(Known::DynamicLoft), "loftdinamico"),
    (Word::Measure(Known::StrikeHeight), "alturadelimpacto impactovertical"),
    (Word::Measure(Known::StrikeOffset), "impactopuntatalon impactohorizontal"),
    (Word::Build(Claim::Whole), "palo palos combinacion montaje configuracion"),
    (Word::Build(Claim::Part), "cabeza cabezas vara varas cabezayvara modelo"),
    (Word::Build(Claim::Group), "grupo grupos"),
    (Word::Build(Claim::Label), "nombre tipo etiqueta"),
    (Word::Round, "ciclo ciclos ronda rondas tanda tandas vuelta bloque"),
    (Word::Number, "golpe golpeno numero num numerodegolpe"),
    (Word::Count, "golpes bolas numerodegolpes cantidad"),
    (Word::Time, "hora fecha fechayhora fechahora"),
    (
        Word::Remark,
        "nota notas comentario comentarios observacion observaciones jugador bola viento lugar dia sesion",
    ),
];

pub(crate) static STATISTICS: [(Statistic, &str); 6] = [
    (Statistic::Mean, "media promedio medias promedios"),
    (Statistic::Median, "mediana"),
    (Statistic::Deviation, "desviacionestandar desviaciontipica desvest desviacion"),
    (Statistic::Low, "minimo minima"),
    (Statistic::High, "maximo maxima"),
    (Statistic::Count, "golpes bolas numerodegolpes cantidad"),
];
