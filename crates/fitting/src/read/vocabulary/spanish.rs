//! The words of the trade in Spanish, without spaces and accents: "Velocidad de bola" is "velocidaddebola".
//!
//! "Desviación" stands for none of them alone: it is the miss to the side in one table, a spread in another.

use super::super::outcome::Statistic;
use super::{Claim, Word};

pub(super) static WORDS: [(Word, &str); 29] = [
    (Word::Measure("carry"), "distanciadevuelo distanciacarry vuelo distanciadecarry"),
    (Word::Measure("total"), "distanciatotal distancia"),
    (
        Word::Measure("offline"),
        "desvio desviolateral desviacionlateral distancialateral dispersionlateral izqder izquierdaderecha",
    ),
    (Word::Measure("ball_speed"), "velocidaddebola velocidadbola velbola veldebola velocidaddelabola"),
    (
        Word::Measure("club_speed"),
        "velocidaddepalo velocidadpalo velocidaddelpalo velpalo velocidaddeswing velocidadswing \
         velocidaddelacabeza velocidaddecabeza velcabeza",
    ),
    (
        Word::Measure("launch_angle"),
        "angulodesalida angulosalida angulodelanzamiento angulolanzamiento angulodedespegue lanzamiento despegue \
         angulovertical",
    ),
    (
        Word::Measure("launch_direction"),
        "direcciondesalida direccionsalida direccion direcciondelanzamiento angulohorizontal",
    ),
    (Word::Measure("spin_rate"), "giro efecto velocidaddegiro spintotal retroceso"),
    (Word::Measure("spin_axis"), "ejedespin ejespin ejedegiro ejegiro ejedeefecto"),
    (Word::Measure("apex"), "altura alturamaxima alturamax apice alturadevuelo alturapico"),
    (
        Word::Measure("descent_angle"),
        "angulodecaida angulocaida angulodedescenso angulodescenso angulodeaterrizaje aterrizaje caida",
    ),
    (Word::Measure("hang_time"), "tiempoenelaire tiempodevuelo tiempovuelo"),
    (Word::Measure("smash"), "factorsmash factordegolpeo eficiencia"),
    (Word::Measure("attack_angle"), "angulodeataque anguloataque ataque"),
    (Word::Measure("club_path"), "trayectoriadelpalo trayectoriapalo trayectoriadepalo trayectoria"),
    (Word::Measure("face_angle"), "angulodelacara angulodecara angulocara cara caradelpalo"),
    (Word::Measure("face_to_path"), "cararespectoalatrayectoria caraatrayectoria caratrayectoria"),
    (Word::Measure("dynamic_loft"), "loftdinamico"),
    (Word::Measure("strike_height"), "alturadelimpacto alturadeimpacto alturaimpacto impactovertical"),
    (Word::Measure("strike_offset"), "impactopuntatalon puntatalon talonpunta impactohorizontal"),
    (Word::Build(Claim::Whole), "palo palos combinacion conjunto montaje configuracion"),
    (Word::Build(Claim::Part), "cabeza cabezas vara varas cabezayvara modelo"),
    (Word::Build(Claim::Group), "grupo grupos"),
    (Word::Build(Claim::Label), "nombre tipo etiqueta"),
    (Word::Round, "ronda rondas tanda tandas vuelta bloque"),
    (Word::Number, "golpe golpeno numero num numerodegolpe bola"),
    (Word::Count, "golpes bolas numerodegolpes cantidad"),
    (Word::Time, "hora fecha fechayhora fechahora"),
    (
        Word::Remark,
        "nota notas comentario comentarios observacion observaciones jugador viento lugar dia sesion",
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
