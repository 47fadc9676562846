import { at, formats } from './format.ts';
import type { LookWords } from './look-words.ts';

/** Spanish. */

const { number, one, percent, count, list, isOne, month } = formats('es');

/** A number of sets to one place, as it is shown. */
const setsOf = (sets: number) => {
  const shown = Math.round(10 * sets) / 10;
  return `${one.format(shown)} ${isOne(shown) ? 'serie' : 'series'}`;
};

export const look: LookWords = {
  evening: {
    nothing: 'Aún no se ha jugado nada. Tras el primer entrenamiento, aquí dirá qué hacer.',
    leftOut: (stroke, players, days) =>
      `${stroke}: ${count(players, 'jugador lleva', 'jugadores llevan')} más de ${count(days, 'día', 'días')} sin ello.`,
    size: {
      hard: (drill, size, sets) =>
        `${drill} es demasiado difícil a ${number.format(size)}: una pareja hace cerca de ${setsOf(sets)} por ronda.`,
      easy: (drill, size, sets) =>
        `${drill} es demasiado fácil a ${number.format(size)}: una pareja hace cerca de ${setsOf(sets)} por ronda.`,
    },
    partners: (a, b, days) =>
      days === undefined
        ? `${a} y ${b} nunca han jugado juntos.`
        : `${a} y ${b} no juegan juntos desde hace ${count(days, 'día', 'días')}.`,
    need: (player, kind) =>
      `${kind}: ahí es donde ${player} va más por detrás de sus otros tipos de trabajo.`,
    change: {
      rising: (now, before, weeks) =>
        `El grupo mejora: vuelven ${now} de las bolas, ${before} hace ${count(weeks, 'semana', 'semanas')}.`,
      steady: (now) => `El grupo mantiene su nivel: vuelven ${now} de las bolas.`,
      falling: (now, before, weeks) =>
        `El grupo devuelve menos: ${now} de las bolas, ${before} hace ${count(weeks, 'semana', 'semanas')}.`,
      unclear: (now) => `Vuelven ${now} de las bolas del grupo; aún no está claro si eso cambia.`,
    },
    up: (names) => `Suben: ${list.format(names)}.`,
    down: (names) => `Bajan: ${list.format(names)}.`,
    putIn: (drill) => `Poner en el próximo bloque: ${drill}`,
    inNext: (drill) => `En el próximo bloque: ${drill}`,
    pairThem: 'Juntarlos la próxima vez',
    paired: 'Juntos la próxima vez',
    setSize: (size, from) => `Series de ${number.format(size)} en vez de ${number.format(from)}`,
    sizeIsSet: (size) => `Desde ahora series de ${number.format(size)}`,
    silent: (questions) => `Nada que destacar en: ${list.format(questions)}.`,
    questions: {
      'left-out': 'lo que faltó',
      size: 'demasiado difícil o fácil',
      pair: 'quién con quién',
      need: 'quién necesita qué',
      change: 'si se mejora',
    },
    more: 'Todo lo que hay detrás',
    players: 'Un jugador en cifras',
  },
  pictures: {
    leftOut: (without, all) =>
      `${number.format(without)} de ${number.format(all)} casillas están vacías, una por cada jugador que ha ido sin ello.`,
    size: (sets, least, most) =>
      `Una barra de ${setsOf(sets)} junto a un marco de ${number.format(least)} a ${number.format(most)}.`,
    pair: 'Dos discos con una línea rota entre ellos.',
    need: (kinds, lowest) =>
      `${number.format(kinds)} marcas, una por tipo de trabajo; la más baja es ${lowest}.`,
    line: (from, to, weeks) =>
      `Una línea de ${from} a ${to} en ${count(weeks, 'semana', 'semanas')}, en una banda que muestra lo segura que es.`,
    dots: (practices) => `${count(practices, 'punto', 'puntos')}, uno por entrenamiento.`,
  },
  glance: {
    title: 'De un vistazo',
    player: 'Jugador',
    all: 'Todo',
    allLong: 'Todos los tipos de trabajo',
    kinds: {
      groundstrokes: 'Fondo',
      volleys: 'Volea',
      'overheads-and-lobs': 'Alto',
      'serves-and-returns': 'Saque',
    },
    cell: (player, kind, level, low, high, word) =>
      `${player}, ${kind}: vuelven ${level} (de ${low} a ${high}), ${word}`,
    overall: (player, word) => `${player}, todos los tipos de trabajo: ${word}`,
    unseen: (player, kind) => `${player}, ${kind}: sin verse en doce semanas`,
    key: 'Más alto: vuelven más bolas con un compañero medio. La línea que cruza es la media del grupo; el trazo de pie contiene el nivel cuatro de cada cinco veces. La marca:',
    nothing: 'Ninguna ronda de las últimas doce semanas dice nada todavía.',
  },
  line: {
    kinds: 'Tipos de trabajo',
    says: (level, low, high) =>
      `Ahora vuelven ${level} con un compañero medio, cuatro de cada cinco veces entre ${low} y ${high}.`,
    saysOnTarget: (level, low, high) =>
      `Ahora dan en el objetivo ${level}, cuatro de cada cinco veces entre ${low} y ${high}.`,
    word: (word, practices) =>
      `En ${count(practices, 'entrenamiento', 'entrenamientos')}: ${word}.`,
    wordOverall: (word, practices) =>
      `Todos los tipos de trabajo juntos, ${count(practices, 'entrenamiento', 'entrenamientos')}: ${word}.`,
    means:
      'La línea es la parte del jugador, con un compañero medio; cada punto es un entrenamiento con los compañeros que hubo. La banda contiene la línea cuatro de cada cinco veces.',
    unseen: 'Ninguna ronda de las últimas doce semanas lo dice.',
  },
  asked: {
    putIn: (drill) => `Pedido: poner ${drill}`,
    pairs: (pairs) => `Pedidos como pareja: ${list.format(pairs)}.`,
  },
  neglected: {
    title: 'A quién le faltó qué',
    means: (after) =>
      `Días desde que cada uno lo golpeó. Un marco: más de ${count(after, 'día', 'días')}; en tinta: desde hace mucho.`,
    cell: (player, stroke, days) =>
      days === undefined
        ? `${player}, ${stroke}: nunca`
        : `${player}, ${stroke}: hace ${count(days, 'día', 'días')}`,
  },
  together: {
    title: 'Quién con quién ahora',
    means: 'Si vienen todos: quienes menos han coincidido, de nivel parecido, y antes tus deseos.',
    never: 'nunca han jugado juntos',
    days: (days) =>
      days === 0 ? 'hoy jugaron juntos' : `juntos hace ${count(days, 'día', 'días')}`,
    few: 'Una pareja necesita dos jugadores en el grupo.',
  },
  sizes: {
    title: 'Demasiado difícil o fácil',
    means: (least, most) =>
      `Lo que puede esperar en una ronda una pareja de las que lo jugaron por última vez. El marco: de ${number.format(least)} a ${number.format(most)} series.`,
    verdicts: { hard: 'demasiado difícil', easy: 'demasiado fácil', fits: 'conviene' },
    line: (size, sets) => `A ${number.format(size)}, cerca de ${setsOf(sets)}`,
    fitting: (size, sets) => `${number.format(size)} conviene: cerca de ${setsOf(sets)}`,
    nearer: (size, sets) =>
      `${number.format(size)} se acerca más a cuatro: cerca de ${setsOf(sets)}`,
    others: 'Sin tamaño que elegir',
    perRound: (sets) => `${one.format(sets)} por ronda de una pareja`,
    none: 'En las últimas cuatro semanas no se jugó ningún ejercicio de bolas seguidas.',
  },
  season: {
    title: 'La temporada',
    nothing: 'Aún no se ha jugado nada. Los meses se llenan con las rondas.',
    term: (weeks) => `Lo que suman ${number.format(weeks)} semanas`,
    termMeans:
      'Bolas por golpe, al menos: las de las series completas hasta el último entrenamiento.',
    months: (whose) => (whose === '' ? 'Mes a mes' : `Mes a mes: ${whose}`),
    monthsMean: 'La línea y su número: bolas golpeadas. Al final de la fila: cuántas volvieron.',
    month: (date) => month.format(at(date)),
    balls: (balls) => number.format(Math.round(balls)),
  },
  players: {
    title: 'Jugadores',
    pick: 'Toca tu nombre y mira lo que hiciste.',
    none: 'Todavía no hay jugadores: añadir antes el grupo.',
    toSquad: 'Ir al grupo',
    resting: 'Inactivo',
    review: 'Tras el entreno, para el entrenador',
  },
  player: {
    today: 'Hoy',
    notHere: 'Este jugador no está en este teléfono.',
    nothing: 'Todavía no hay nada contado. Tus series aparecen aquí tras tu primera ronda.',
    touches: 'Bolas golpeadas',
    countedNote:
      'Al menos: lo que prueban las series completas. Unos: con las bolas de las series sin terminar, hasta donde lo dice el reloj; el intervalo contiene el número verdadero cuatro de cada cinco veces. Toca una cifra para ver de dónde sale.',
    sets: (sets) => (isOne(sets) ? 'serie' : 'series'),
    onTarget: 'en el objetivo',
    noSet: 'Ninguna serie completa.',
    noneOnTarget: 'Ninguna en el objetivo.',
    usual: (sets) => `habitual ${one.format(sets)}`,
    best: (sets) => `récord ${one.format(sets)}`,
    newBest: '¡Nuevo récord personal!',
    first: 'Primera vez en este ejercicio contado así.',
    besideNote: 'Se compara con tus entrenamientos anteriores, con el mismo tiempo.',
    hand: (name) => `Pasar el teléfono a ${name}`,
    handNote:
      'El teléfono muestra entonces esta página y nada más. Para recuperarlo, mantener pulsado «Para el entrenador» al pie de la página durante dos segundos.',
    well: {
      best: (drill, made) => `¡Nuevo récord personal en ${drill}: ${made}!`,
      usual: (drill, made, usual) =>
        `En ${drill} hiciste ${made}; lo habitual es ${one.format(usual)}.`,
      first: (drill, made) => `Primera vez en ${drill}: ${made}.`,
      made: (drill, made) => `En ${drill} hiciste ${made}.`,
    },
    played: 'Estuviste en la cancha y trabajando.',
    balls: (balls) => `Golpeaste unas ${count(Math.round(balls), 'bola', 'bolas')}.`,
    ballsAtLeast: (balls) => `Golpeaste al menos ${count(balls, 'bola', 'bolas')}.`,
    goal: (drill, made) => `La próxima vez en ${drill}: ${made}.`,
    madeSets: (sets) => count(sets, 'serie', 'series'),
    madeOnTarget: (balls) => `${number.format(balls)} en el objetivo`,
    beside: (usual, best) =>
      usual === undefined || best === undefined
        ? 'la primera vez'
        : `lo habitual ${one.format(usual)}, récord ${one.format(best)}`,
    usualSign: 'lo habitual',
    bestSign: 'tu récord',
    forCoach: 'Todas las cifras del día',
  },
  percent: (share) => percent.format(share),
};
