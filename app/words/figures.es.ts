import type { FigureWords } from './figure-words.ts';
import { at, formats } from './format.ts';

/** Spanish, for the screens of figures only; which word stands for which is told with the app's. */

const { one, number, tenths, hundredths, percent, shortDay, isOne, count } = formats('es');

/** A number to one place with what it counts. */
const count1 = (n: number, single: string, many: string) =>
  `${one.format(n)} ${isOne(n) ? single : many}`;
const rate = (n: number) => (n < 10 ? hundredths : tenths).format(n);

export const figures: FigureWords = {
  number: (n) => number.format(n),
  rounded: (n) => number.format(Math.round(n)),
  rate,
  seconds: (n) => `${hundredths.format(n)} s`,
  percent: (share) => percent.format(share),
  shortDate: (date) => shortDay.format(at(date)),
  span: (low, high) => `(de ${low} a ${high})`,
  close: 'Cerrar',
  forStatisticians: 'Para estadísticos',

  atLeast: 'al menos',
  about: 'unos',
  beingWorkedOut: (rounds) =>
    `Todavía se están calculando todos los golpes de ${count(rounds, 'ronda de una pareja', 'rondas de parejas')}. Aparecen solos.`,
  afterSettle: 'Tu total aparece cuando el entrenador haya revisado la ronda.',
  doubted: (rounds) =>
    `${count(rounds, 'ronda tiene', 'rondas tienen')} más series de las que permite el reloj: comprobar el recuento.`,

  comesBack: 'Bolas que vuelven',
  meetsTarget: 'Bolas en el objetivo',
  onTarget: 'en el objetivo',
  trendWords: {
    rising: 'sube',
    steady: 'estable',
    falling: 'baja',
    unclear: 'aún no está claro',
    'too-few': 'aún son pocos',
  },
  practices: (n) => count(n, 'entrenamiento', 'entrenamientos'),
  noPoint: 'Todavía no hay ningún entrenamiento con una estimación.',
  plot: (practices, low, high) =>
    `${count(practices, 'entrenamiento', 'entrenamientos')}, de ${low} a ${high}`,
  sized: {
    'in-a-row': (size) => `${number.format(size)} seguidas`,
    'in-total': (size) => `${number.format(size)} en total`,
    sequence: (size) => `secuencia de ${number.format(size)}`,
    'on-target': () => 'en el objetivo',
  },

  trends: 'A lo largo de los entrenamientos',
  player: {
    trendsNote:
      'Cada punto es un entrenamiento de las últimas doce semanas: cuántas de las bolas volvieron, o dieron en el objetivo.',
  },

  review: {
    title: 'El grupo en cifras',
    openPlayer: (name) => `Análisis de ${name}`,
    toSquad: 'Ir al grupo',
    nothing: 'Todavía no se jugó ninguna ronda. Las cifras aparecen aquí después de la primera.',
    notHere: 'Este jugador no está en este teléfono.',
    nothingOf: (name) => `${name} todavía no jugó ninguna ronda.`,
    noneInSpan: 'En estas semanas no se jugó ninguna ronda.',
    span: 'Semanas que se miran',
    weeks: (weeks) => count(weeks, 'semana', 'semanas'),
    spanIs: (first, last) => `del ${first} al ${last}`,
    players: 'Jugadores',
    playersNote: 'En el orden del grupo. No se clasifica a nadie.',
    byKind: 'Por tipo de trabajo',
    byDrill: 'Por ejercicio',
    byKindNote:
      'De una pareja: lo que dos jugadores hacen juntos en un minuto del reloj de la ronda.',
    byKindNoteOwn: 'Aquello en lo que participó este jugador, con todos sus compañeros.',
    setsPerMinute: 'Series por minuto',
    inMinutes: (minutes) => `en ${count1(minutes, 'minuto', 'minutos')}`,
    touchesPerMinute: 'Golpes por minuto',
    touches: 'Golpes',
    change: 'Comparado con las semanas anteriores',
    changeNote: (weeks) =>
      isOne(weeks)
        ? 'La última semana junto a la anterior, en los mismos ejercicios y tamaños.'
        : `Las últimas ${number.format(weeks)} semanas junto a las ${number.format(weeks)} anteriores, en los mismos ejercicios y tamaños.`,
    changeIs: (ratio, low, high) =>
      `${hundredths.format(ratio)} veces las series (de ${hundredths.format(low)} a ${hundredths.format(high)} veces)`,
    changeWords: {
      more: 'más que antes',
      fewer: 'menos que antes',
      open: 'sin cambio claro',
      'too-little': 'muy pocas series para comparar',
    },
    noChange:
      'Nada que comparar: uno de los dos periodos no tiene ninguna ronda, o ninguna serie, del mismo trabajo.',
    trendsNote:
      'Los entrenamientos de las últimas doce semanas, cada uno un punto. La palabra dice lo que los puntos permiten decir.',
    levels: 'Nivel, con un compañero medio',
    levelsNote:
      'Una cuenta es de dos. Esto es lo que cada uno hace con una bola ahora, con un compañero medio en un ejercicio medio. Mira primero el margen entero. Sirve para elegir parejas y trabajo, y no es un juicio sobre nadie.',
    noLevel: 'Ninguna ronda de las últimas doce semanas lo dice.',
    above: (names) => `seguro que más que ${names}`,
    below: (names) => `seguro que menos que ${names}`,
    alone: (player) => `Solo se vio a ${player}: no hay con quién comparar.`,
    neverPartedBoth: (one, other) =>
      `${one} y ${other} nunca se separaron: no se puede saber de quién son las series.`,
    groups: (groups) =>
      `Estos nunca coincidieron, así que no se pueden comparar: ${groups.join(' / ')}.`,
    classes: (classes) => `Estos solo se pueden comparar entre sí: ${classes.join(' / ')}.`,
    overall: 'Todos los tipos de trabajo juntos',
    roseWith: (chance) =>
      `mejor que hace ocho semanas con una probabilidad de ${percent.format(chance)}`,
    squadNote: 'Para el entrenador. No enseñar a los jugadores.',
  },

  block: {
    title: 'El bloque en cifras',
    touches: 'golpes de todos',
    sets: (sets) => count(sets, 'serie', 'series'),
  },

  size: {
    fit: 'Tamaños para estas parejas',
    line: (names, size, expected, larger, smaller) =>
      `${names}: ${size} seguidas darían unas ${one.format(expected)} series (${size + 1}: ${one.format(larger)}, ${size - 1}: ${one.format(smaller)})`,
    apart: 'según sus rondas con otros',
    unknown: (names) => `${names}: aún no se sabe, no jugaron este ejercicio.`,
    set: (size) => `Poner ${size}`,
    own: (size) => `Volver a ${size}, lo propio del ejercicio`,
    now: (size) => `Ahora ${size} seguidas.`,
    none: 'Ninguna serie en esta ronda.',
    many: (sets) => `${count(sets, 'serie', 'series')} en esta ronda.`,
    instead: (size, expected) => `${size} seguidas darían unas ${one.format(expected)}.`,
    next: (size) => `Usar ${size} desde la siguiente ronda`,
    taken: (size) => `Desde la siguiente ronda son ${size}.`,
  },

  tempo: {
    title: 'Medir el ritmo',
    of: (drill) => `Ritmo en ${drill}`,
    noPractice: 'Se mide dentro de un entrenamiento. Decir antes en Hoy quién está.',
    tempo: 'De golpe a golpe',
    tempoFor:
      'Diez toques afinan el número de todos los golpes: nada lo falsea tanto como un ritmo equivocado.',
    tempoHow: 'Tocar al compás de diez golpes de un peloteo cualquiera de este ejercicio.',
    tempoTap: 'Tocar en cada golpe',
    refeed: 'De un fallo al siguiente golpe',
    refeedFor:
      'Afina el número de todos los golpes: después del ritmo, lo que más lo falsea es el tiempo de poner otra bola.',
    refeedHow: 'Tocar en un fallo, y otra vez en el siguiente golpe. Cinco veces.',
    missTap: 'Tocar en el fallo',
    hitTap: 'Ahora, en el siguiente golpe',
    tapped: (taps, of) => `${number.format(taps)} de ${number.format(of)}`,
    known: (seconds) => `Conocido: ${seconds}. Una medición nueva lo sustituye.`,
    usual: 'Todavía sin medir: se toma el tiempo usual de jugadores jóvenes.',
    keep: 'Guardarlo',
    kept: 'Guardado. Vale para todas las rondas de este ejercicio desde este entrenamiento.',
    again: 'Otra vez',
    why: {
      gap: 'Un intervalo duró más del doble que los otros: faltó tocar un golpe, o se cortó el peloteo. Hay que repetirlo.',
      fast: 'Eso es más rápido de lo que nadie golpea. Hay que repetirlo.',
    },
  },

  explanations: {
    counted: {
      title: 'Golpes, al menos',
      means: 'Las bolas que se golpearon con seguridad, si los toques y los papeles son correctos.',
      from: 'Sale de las anotaciones: todas las series completas, y nada de una serie sin terminar.',
      how: 'Series por los golpes que da el jugador en una serie del ejercicio.',
    },
    touches: {
      title: 'Todos los golpes',
      means:
        'Cuántas bolas se golpearon de verdad, con un intervalo que contiene el número verdadero cuatro de cada cinco veces; el golpe que acaba en error cuenta, una bola a la que no se llega no.',
      from: 'Sale de las series y sus tiempos, el tamaño de una serie, hasta dónde llegó la última, el reloj de la ronda y el ritmo, donde se midió.',
      how: 'Se pesan todas las maneras en que pudieron darse estas anotaciones según lo bien que encajan con el reloj; a cada jugador de una pareja le toca la mitad (quien siempre pone la bola tiene unos dos más), los intervalos de varias rondas se suman por sus cuadrados, y lo que más daño hace es un ritmo o un tiempo de poner otra bola equivocado.',
    },
    touchRate: {
      title: 'Golpes por minuto',
      means: 'Cuántas bolas se golpearon de verdad en un minuto del reloj de la ronda.',
      from: 'Sale de todos los golpes y del reloj de la ronda.',
      how: 'Lo uno dividido por lo otro; el intervalo es el de todos los golpes, que contiene el número verdadero cuatro de cada cinco veces.',
    },
    sets: {
      title: 'Series',
      means: 'Cuántas unidades de un ejercicio se completaron.',
      from: 'Sale de las anotaciones, con lo que corrigió la revisión.',
      how: 'Las anotaciones que cuentan, más y menos las correcciones; una serie cuenta para todos los que jugaron en ella.',
    },
    rate: {
      title: 'Series por minuto',
      means:
        'Cuántas series se hicieron en un minuto del reloj de la ronda, con un intervalo que contiene el ritmo a la larga 19 de cada 20 veces.',
      from: 'Sale de las series y del reloj de la ronda de las rondas en que se participó.',
      how: 'Series divididas por minutos, con el intervalo exacto de Poisson (Garwood); series de distinto tamaño duran distinto, así que solo se comparan las del mismo tamaño.',
    },
    minutes: {
      title: 'Minutos',
      means: 'Cuánto tiempo corrió el reloj de la ronda, incluido el tiempo de recoger bolas.',
      from: 'Sale del reloj de cada ronda, sin sus pausas.',
      how: 'Se suman los relojes de las rondas; a un jugador de un trío le tocan dos tercios de una ronda.',
    },
    rounds: {
      title: 'Rondas',
      means: 'Cuántas rondas del ejercicio se jugaron.',
      from: 'Sale de las rondas cuyo reloj se puso en marcha.',
      how: 'Se cuenta cada una una vez, jueguen las parejas que jueguen.',
    },
    days: {
      title: 'Días',
      means: 'En cuántos días de la semana estuvo el jugador.',
      from: 'Sale de quién se marcó como presente.',
      how: 'Se cuenta cada fecha una vez, tenga los entrenamientos que tenga.',
    },
    usual: {
      title: 'Lo habitual',
      means: 'Cuántas series hace este jugador en el mismo tiempo en un día habitual.',
      from: 'Sale de los entrenamientos anteriores del propio jugador, con el mismo ejercicio y tamaño.',
      how: 'El valor central de sus series por minuto, por los minutos de hoy.',
    },
    best: {
      title: 'Lo mejor',
      means:
        'Cuántas series haría este jugador en el mismo tiempo al ritmo de su mejor día hasta ahora.',
      from: 'Sale de los entrenamientos anteriores del propio jugador, con el mismo ejercicio y tamaño.',
      how: 'El valor mayor de sus series por minuto, por los minutos de hoy.',
    },
    consistency: {
      title: 'Bolas que vuelven',
      means:
        'De cien bolas, cuántas vuelven como pide el ejercicio, con un intervalo que lo contiene cuatro de cada cinco veces; se puede comparar entre tamaños de serie y duraciones de ronda, cosa que el número de series no permite.',
      from: 'Sale de las mismas anotaciones y el mismo reloj que todos los golpes, y es de la pareja: de los dos jugadores juntos, también en la página de uno solo.',
      how: 'El modelo de todos los golpes lo da para cada ronda, tomando cada bola de la ronda como igual de probable que vuelva; entre varias rondas se suma lo que cada una indica, partiendo de lo que dirían cuatro bolas de cada cinco.',
    },
    target: {
      title: 'Bolas en el objetivo',
      means:
        'De cien bolas, cuántas dan en el objetivo, con un intervalo que lo contiene cuatro de cada cinco veces.',
      from: 'Sale de las bolas en el objetivo del propio jugador y del reloj de la ronda.',
      how: 'Bolas en el objetivo divididas por las bolas golpeadas en ese tiempo a este ritmo, que no se cuentan sino que se estiman.',
    },
    trend: {
      title: 'La palabra de la tendencia',
      means:
        'Si mejora a lo largo de los entrenamientos, y si es más que suerte: sube, estable, baja, aún no está claro, o aún son pocos.',
      from: 'Sale de cuántas bolas volvieron en cada entrenamiento de las últimas doce semanas; cada entrenamiento es un punto, sean cuales sean sus ejercicios, así que un ejercicio más difícil parece una bajada.',
      how: 'La mediana de todas las pendientes entre dos puntos (Theil y Sen) y la prueba de Mann-Kendall: sube o baja exige seis entrenamientos, y sin un cambio real la suerte sola da esa palabra hasta una vez de cada diez; estable, un intervalo de menos de cinco en cien en cuatro semanas.',
    },
    change: {
      title: 'Comparado con antes',
      means:
        'Cuántas veces se hicieron las series de las semanas anteriores en el mismo tiempo, con un intervalo que lo contiene 19 de cada 20 veces; 1 es ningún cambio, y no se da ningún número cuando el margen llegaría a más de cuatro veces su comienzo.',
      from: 'Sale de las series y el reloj de la ronda del jugador en los dos periodos.',
      how: 'La razón de los dos ritmos con su intervalo exacto (Clopper y Pearson); un minuto cuenta según lo que hace en él todo el grupo con el mismo ejercicio y tamaño, para que un bloque más fácil no parezca un progreso.',
    },
    level: {
      title: 'Nivel',
      means:
        'De cien bolas, cuántas vuelven con este jugador y un compañero medio del grupo en un ejercicio medio, el día del último entrenamiento, con un margen que acierta cuatro de cada cinco veces; al objetivo, las suyas.',
      from: 'Sale de todas las rondas de las últimas doce semanas, de todos y de todos los tipos de trabajo a la vez.',
      how: 'Una regresión toma cada ronda como lo que aportan el tipo, el ejercicio y los jugadores, cada jugador sobre una recta a lo largo de las semanas (regresión logística penalizada); pocas rondas se acercan a la media del grupo, y un reloj habitual equivocado mueve todos los niveles por igual.',
    },
    overall: {
      title: 'La palabra sobre todos los tipos',
      means:
        'Si el jugador mejoró en ocho semanas en todos los tipos de trabajo juntos: sube y baja se dicen cuando la probabilidad es de nueve entre diez.',
      from: 'Sale de todas las rondas de las últimas doce semanas, teniendo en cuenta el compañero y el ejercicio.',
      how: 'La misma regresión que el nivel da la pendiente de la recta del jugador y lo segura que es; donde nada cambia, aún dice sube o baja de más o menos un jugador de cada nueve.',
    },
    size: {
      title: 'Tamaño de la serie',
      means: 'Cuánto debería durar una serie para que salgan unas cuatro en una ronda.',
      from: 'Sale de cuántas bolas de esta pareja vuelven en este ejercicio, y del ritmo.',
      how: 'Para cada tamaño de 2 a 30 se calculan las series que cabe esperar, sobre todo lo que es posible para esta pareja, y se toma el más cercano a cuatro.',
    },
    practices: {
      title: 'Entrenamientos',
      means: 'En cuántos entrenamientos se apoya la palabra.',
      from: 'Sale de los entrenamientos de las últimas doce semanas en que se hizo este tipo de trabajo.',
      how: 'Se cuenta cada uno una vez.',
    },
  },
};
