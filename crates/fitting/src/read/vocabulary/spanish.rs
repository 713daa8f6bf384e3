//! The words of the trade in Spanish, without spaces and accents: "Velocidad de bola" is "velocidaddebola".
//!
//! "Desviación" stands for none of them alone: it is the miss to the side in one table, a spread in another.

use super::super::outcome::Statistic;
use super::{Claim, Word};

pub(super) static WORDS: [(Word, &str); 29] = [
    (Word::Measure("carry"), "distanciadevuelo vuelo"),
    (Word::Measure("total"), "distanciatotal distancia"),
    (Word::Measure("offline"), "desvio desviolateral desviacionlateral distancialateral"),
    (Word::Measure("ball_speed"), "velocidaddebola velocidadbola velbola"),
    (
        Word::Measure("club_speed"),
        "velocidaddepalo velocidadpalo velocidaddelpalo velpalo velocidaddeswing velocidaddelacabeza",
    ),
    (
        Word::Measure("launch_angle"),
        "angulodesalida angulosalida angulodelanzamiento angulodedespegue lanzamiento despegue",
    ),
    (Word::Measure("launch_direction"), "direcciondesalida direccion direcciondelanzamiento"),
    (Word::Measure("spin_rate"), "giro efecto velocidaddegiro"),
    (Word::Measure("spin_axis"), "ejedespin ejedegiro"),
    (Word::Measure("apex"), "altura alturamaxima apice"),
    (Word::Measure("descent_angle"), "angulodecaida angulodedescenso angulodeaterrizaje caida"),
    (Word::Measure("hang_time"), "tiempoenelaire tiempodevuelo"),
    (Word::Measure("smash"), "factorsmash eficiencia"),
    (Word::Measure("attack_angle"), "angulodeataque ataque"),
    (Word::Measure("club_path"), "trayectoriadelpalo trayectoria"),
    (Word::Measure("face_angle"), "angulodelacara angulodecara cara"),
    (Word::Measure("face_to_path"), "cararespectoalatrayectoria caratrayectoria"),
    (Word::Measure("dynamic_loft"), "loftdinamico"),
    (Word::Measure("strike_height"), "alturadelimpacto impactovertical"),
    (Word::Measure("strike_offset"), "impactopuntatalon impactohorizontal"),
    (Word::Build(Claim::Whole), "palo palos combinacion montaje configuracion"),
    (Word::Build(Claim::Part), "cabeza cabezas vara varas cabezayvara modelo"),
    (Word::Build(Claim::Group), "grupo grupos"),
    (Word::Build(Claim::Label), "nombre tipo etiqueta"),
    (Word::Round, "ronda rondas tanda tandas vuelta bloque"),
    (Word::Number, "golpe golpeno numero num numerodegolpe"),
    (Word::Count, "golpes bolas numerodegolpes cantidad"),
    (Word::Time, "hora fecha fechayhora fechahora"),
    (
        Word::Remark,
        "nota notas comentario comentarios observacion observaciones jugador bola viento lugar dia sesion",
    ),
];

pub(super) static STATISTICS: [(Statistic, &str); 6] = [
    (Statistic::Mean, "media promedio medias promedios"),
    (Statistic::Median, "mediana"),
    (Statistic::Deviation, "desviacionestandar desviaciontipica desvest"),
    (Statistic::Low, "minimo minima"),
    (Statistic::High, "maximo maxima"),
    (Statistic::Count, "golpes bolas numerodegolpes cantidad"),
];
