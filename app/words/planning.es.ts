import { formats } from './format.ts';
import type { PlanningWords } from './planning-words.ts';

/** Spanish, for the screens that plan; which word stands for which is told with the app's. */

const { number, count } = formats('es');

const ago = (days: number) => `hace ${count(days, 'día', 'días')}`;

export const planning: PlanningWords = {
  coverage: {
    title: 'Lo trabajado',
    whose: 'De quién',
    squad: 'Todo el grupo',
    of: (whose) => `Golpes en series completas, ${whose}, por semana`,
    ofSquad: 'todo el grupo',
    line: 'Trabajado',
    week: (week) => `S${number.format(week)}`,
    weekLong: (week) => `Semana ${number.format(week)}`,
    days: 'Días sin',
    strokes: {
      groundstroke: 'Golpe de fondo',
      volley: 'Volea',
      overhead: 'Remate',
      lob: 'Globo',
      serve: 'Saque',
      return: 'Devolución',
    },
    never: 'aún no',
    due: { no: '', overdue: '(pendiente)', 'long-overdue': '(muy pendiente)' },
    noRound: 'sin entrenamiento',
    cell: (line, week, touches) =>
      `${line}, semana ${number.format(week)}: ${count(touches, 'golpe', 'golpes')}`,
    key: (after, long) =>
      `▲ más de ${number.format(after)} días sin ello; ▲▲ sobre fondo oscuro, más de ${number.format(long)}. Una casilla vacía es una semana sin entrenamiento.`,
    behind: 'Las rondas de donde sale',
    touch: 'Tocar un número para ver las rondas de donde sale.',
    none: 'Ninguna ronda de esto en esta semana.',
    nothing: 'Todavía no se trabajó nada. Se llena a medida que se juegan rondas.',
  },
  block: {
    title: 'El bloque',
    empty: 'Tocar los ejercicios de abajo para añadirlos al bloque.',
    length: 'Una ronda dura',
    changeover: 'Entre rondas',
    seconds: (seconds) => (seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`),
    rounds: (drill) => `Rondas de ${drill}`,
    earlier: (drill) => `Subir ${drill}`,
    remove: (drill) => `Quitar ${drill}`,
    add: (drill) => `Añadir ${drill}`,
    inBlock: (times) => count(times, 'ronda puesta', 'rondas puestas'),
    partners: 'Parejas',
    keep: 'fijas',
    turn: 'rotan',
    partnersOf: (drill) => `Parejas en ${drill}`,
    keepAs: 'Guardar este bloque como',
    keepIt: 'Guardar',
    useIt: 'Usar',
    kept: 'Bloques guardados',
    use: (name) => `Usar ${name}`,
    drop: (name) => `Eliminar ${name}`,
    nameNeeded: 'El bloque necesita un nombre de hasta 40 letras.',
    ownDrills: 'Escribir un ejercicio propio',
    planned: 'Previsto',
  },
  propose: {
    title: 'Proponer un bloque',
    minutes: 'Minutos',
    why: {
      never: (family) => `${family}: todavía sin trabajar`,
      overdue: (family, days) => `${family}: ${ago(days)}`,
      slipping: (question) => `foco a la baja últimamente: ${question}`,
      hard: (without, counts) =>
        `demasiado difícil últimamente: ${number.format(without)} de ${count(counts, 'cuenta', 'cuentas')} sin serie`,
      role: (stroke, players, days) =>
        `${stroke}: ${count(players, 'jugador lleva', 'jugadores llevan')} mucho sin ello${days === undefined ? '' : ` (la última vez, ${ago(days)})`}`,
      balance: (family, days) =>
        days === undefined
          ? `${family}: por equilibrio`
          : days === 0
            ? `${family}: ya hoy, por equilibrio`
            : `${family}: ${ago(days)}, por equilibrio`,
    },
    sized: (size, own) =>
      `${number.format(size)} seguidas convienen más a quienes juegan que ${number.format(own)}.`,
    take: 'Usar este bloque',
    another: 'Otro',
    first: 'Volver al primero',
    number: (n) => `Propuesta ${number.format(n)}`,
    takeMeans: 'Pasa a ser el plan de hoy en lugar del actual. Después se puede cambiar a gusto.',
    nothing: 'No cabe ningún bloque: dar más minutos, o activar más ejercicios.',
    noMore: 'No hay otro bloque. Dar más minutos, o activar más ejercicios.',
    drills: 'Ejercicios a elegir',
    drillsMean: 'Lo desactivado se queda en la colección y no se propone.',
    drillsOn: (on, all) => `${number.format(on)} de ${number.format(all)}`,
  },
  sheet: {
    title: 'El bloque en papel',
    print: 'Imprimir esta hoja',
    empty: 'Elegir antes los ejercicios del bloque.',
    pairs: 'Parejas para empezar',
    rounds: (rounds, seconds) => `${number.format(rounds)} × ${seconds}`,
    turn: 'parejas que rotan',
    keep: 'parejas fijas',
    tally: 'Para anotar a mano',
    tallyMeans:
      'Una raya por serie en la casilla de la pareja; en el objetivo, cada jugador tiene su parte. Los números se pasan después a la app.',
    perCourt: (pairs) => `${count(pairs, 'pareja', 'parejas')} en una cancha`,
  },
  wishes: {
    title: 'Quién juega con quién',
    means:
      'Las parejas se proponen según quién coincidió menos últimamente y según el nivel. Una preferencia va antes que las dos cosas.',
    one: 'Un jugador',
    other: 'El otro jugador',
    together: 'Juntarlos',
    apart: 'Separarlos',
    is: { together: 'juntos', apart: 'separados' },
    takeBack: (a, b) => `Retirar la preferencia para ${a} y ${b}`,
    choose: 'elegir',
  },
  courts: {
    title: 'Las canchas',
    count: 'Cuántas',
    countMeans: 'Tantas canchas tiene el grupo. Donde no caben todas las parejas, se turnan.',
    notSet: 'sin indicar',
    size: 'Tamaño',
    sizes: {
      small: 'pequeña (bola roja), 10,97 por 5,49 m',
      middle: 'mediana (bola naranja), 18,29 por 6,40 m',
      full: 'completa',
    },
    sizeMeans:
      'Los ejercicios se dibujan y miden para ella. En una cancha más pequeña cabe una pareja.',
    units: 'Longitudes en',
    unitNames: { metres: 'metros', feet: 'pies' },
  },
};
