import { at, formats } from './format.ts';
import type { QualityWords } from './quality-words.ts';

/*
 * Spanish; see es.ts for the words that it keeps to. focus: foco · look: mirada · hold: cumplir ·
 * slipping: a la baja · watcher: observador.
 */

const { number, one, percent, shortDay, count } = formats('es');

export const quality: QualityWords = {
  focus: {
    none: 'ninguno',
    ofBlock: 'Foco del bloque',
    ofDrill: 'Foco de este ejercicio',
    ofDrillMeans: 'En sus rondas toma el lugar del foco del bloque.',
    checks: 'Miradas por ronda',
    checksMean: (tapped, called) =>
      `Mientras corre una ronda la pantalla de la cancha nombra a un jugador cada vez, y quien observa responde sí, no o no visto. Como mucho ${number.format(tapped)} en una ronda que se toca, ${number.format(called)} en una que se dice al final. Dejar una no cuesta nada y no es un no.`,
    yes: 'Sí es cuando',
    told: 'Dile al jugador',
    own: 'Focos propios',
    question: 'Una pregunta de sí o no, hasta 40 letras',
    yesField: 'Cómo se ve un sí, en una línea',
    toldField: 'Cómo se le dice al jugador',
    keep: 'Guardar este foco',
    faulty: 'Escribe una pregunta de 1 a 40 letras.',
    drop: (question) => `Quitar ${question}`,
  },
  means: {
    recovery: {
      yes: 'De vuelta en el lugar de recuperación antes del bote al otro lado.',
      told: 'Golpea y vuelve: en casa antes del bote.',
      held: 'en su sitio a tiempo',
    },
    stance: {
      yes: 'Rodillas flexionadas, peso en la punta de los pies, raqueta arriba.',
      told: 'Abajo, y sigue atento.',
      held: 'con las piernas flexionadas',
    },
    'split-step': {
      yes: 'Un saltito que cae cuando el otro golpea.',
      told: 'Salta cuando el otro golpea.',
      held: 'con el salto previo antes del golpe',
    },
    'set-up': {
      yes: 'De perfil y con la raqueta atrás cuando la pelota bota.',
      told: 'Primero gira, luego corre.',
      held: 'con la preparación a tiempo',
    },
    height: {
      yes: 'La pelota pasa bien por encima de la cinta: el largo de una raqueta, o lo acordado.',
      told: 'Levántala: margen sobre la red.',
      held: 'bastante alto sobre la red',
    },
    depth: {
      yes: 'La pelota bota detrás de la línea de saque, o donde se acordó.',
      told: 'Detrás de la línea de saque.',
      held: 'bastante profundo',
    },
    direction: {
      yes: 'La pelota va adonde se dijo.',
      told: 'Elige pronto y mantente.',
      held: 'en la dirección correcta',
    },
    speed: {
      yes: 'La velocidad acordada: ni empujada ni más fuerte de lo que se puede mantener.',
      told: 'La misma velocidad, pelota tras pelota.',
      held: 'a la velocidad correcta',
    },
    spin: {
      yes: 'La pelota cae o se queda baja, como se acordó.',
      told: 'Cepilla la pelota.',
      held: 'con bastante efecto',
    },
  },
  open: 'La calidad junto a la cantidad',
  title: 'Calidad',
  nothing:
    'Nadie ha mirado todavía. Elige un foco para el bloque: entonces la pantalla de la cancha pide unas miradas en cada ronda.',
  weeks: 'Las cuatro semanas hasta la última práctica, junto a las cuatro de antes.',
  looks: {
    times: (held, looks, what) => `${number.format(held)} de ${number.format(looks)} veces ${what}`,
    timesOwn: (held, looks, question) =>
      `${number.format(held)} de ${number.format(looks)} veces sí: ${question}`,
    few: (looks) => `muy pocas miradas (${number.format(looks)})`,
    fewOwn: 'Todavía muy pocas miradas para decir más.',
    share: (share, low, high) =>
      `${percent.format(share)} (de ${percent.format(low)} a ${percent.format(high)})`,
    of: (held, looks) => `${number.format(held)} de ${count(looks, 'mirada', 'miradas')}`,
    now: 'Ahora',
    before: 'Antes',
    change: {
      falling: '▼ a la baja',
      rising: '▲ mejor',
      open: 'sin cambio claro',
    },
    changeUnknown: 'todavía nada que comparar',
    shareMeans:
      'La parte de las miradas en que se cumplió el foco, con límites que contienen la verdadera 19 de cada 20 veces (Wilson). Desde ocho miradas. Lo que no se vio o no se respondió no cuenta.',
    changeMeans:
      'A la baja: una caída tan clara vendría por puro azar como mucho una vez de cada diez. A cada jugador se le compara solo con sus propias miradas.',
    players: 'Jugador por jugador',
    ownTitle: 'Lo que se miró',
  },
  watchers: {
    title: 'Dos observadores',
    means:
      'Dos teléfonos en una misma práctica piden las mismas miradas. Kappa es cuánto coinciden más allá del azar: 1 siempre, 0 no mejor que el azar.',
    none: 'Ninguna mirada se ha respondido todavía en dos teléfonos.',
    agreement: (agreement, looks) =>
      `${percent.format(agreement)} iguales, de ${count(looks, 'mirada compartida', 'miradas compartidas')}`,
    kappa: (kappa) => `kappa de ${one.format(kappa)}`,
    noKappa: 'sin kappa: ambos lo juzgaron todo igual',
    is: {
      'too-few': 'Muy pocas miradas compartidas para decir si entienden lo mismo.',
      agree: 'Entienden lo mismo.',
      differ: 'No entienden lo mismo: digan de nuevo, lado a lado, cómo se ve un sí.',
      'one-sided':
        'Casi siempre dicen lo mismo, pero casi todas las miradas salieron iguales, y eso enseña poco.',
    },
  },
  volume: {
    title: 'La calidad junto al volumen',
    focus: 'Foco elegido',
    means:
      'Una marca por práctica con ocho miradas o más: toques en series completas hacia la derecha, parte cumplida hacia arriba. La más nueva va enmarcada; marcas que van a la derecha y abajo son más pero peor.',
    none: 'Ninguna práctica tiene todavía ocho miradas para él.',
    picture: (practices, least, most) =>
      `${count(practices, 'práctica', 'prácticas')}, de ${least} a ${most} toques hacia la derecha, la calidad de 0 a 100 % hacia arriba`,
    touches: (touches) => count(touches, 'toque', 'toques'),
    date: (date) => shortDay.format(at(date)),
    percent: (share) => percent.format(share),
    rounds: 'Ronda por ronda',
    round: (ordinal, drill) => `${number.format(ordinal)}. ${drill}`,
    sets: (sets) => count(sets, 'serie', 'series'),
  },
  care: {
    title: 'Remates y saques',
    means:
      'Pelotas golpeadas por semana, las falladas hasta donde el modelo las conoce; la línea es la semana habitual del jugador.',
    caution:
      'Cuántas son demasiadas nadie lo sabe: los consejos publicados sobre los saques de los jóvenes no coinciden, y ninguna cifra de aquí predice una lesión. El dolor significa parar, y decide un profesional sanitario; las reglas de la federación y del país van primero.',
    strokes: { overhead: 'Remates', serve: 'Saques' },
    week: (week) => `Sem. ${number.format(week)}`,
    usual: (usual) => `semana habitual ${one.format(usual)}`,
    noUsual: 'todavía sin habitual: hacen falta tres semanas',
    inWeek: (week, struck) => `semana ${number.format(week)}: ${number.format(struck)}`,
    notInWeek: (week) => `semana ${number.format(week)}: ninguna ronda`,
    noRound: '–',
    unheard: (rounds) => `${count(rounds, 'ronda no se oyó', 'rondas no se oyeron')}: hubo más.`,
  },
  effort: {
    open: 'Esfuerzo y minutos',
    title: 'Esfuerzo y minutos',
    ask: '¿Qué tan dura fue esta práctica?',
    askMeans: '0 es descanso, 3 moderado, 5 duro, 10 lo más duro de todo. Opcional.',
    minutes: 'Minutos',
    column: 'Esfuerzo',
    minutesAll: 'Minutos para todos',
    effortOf: (name) => `Esfuerzo de ${name}`,
    minutesOf: (name) => `Minutos de ${name}`,
    notSaid: '–',
    nobody: 'Nadie estuvo en esta práctica.',
    none: 'Todavía no hay ninguna práctica.',
    kept: 'Cada elección se guarda al momento.',
    load: 'Carga de entrenamiento',
    week: (from, to) => `del ${shortDay.format(at(from))} al ${shortDay.format(at(to))}`,
    loadIs: (load) => `carga ${number.format(load)}`,
    untold: (practices) =>
      `no se sabe: ${count(practices, 'práctica no tiene', 'prácticas no tienen')} esfuerzo o minutos`,
    noPractice: 'sin práctica',
    monotony: (monotony, strain) =>
      `monotonía ${one.format(monotony)}, tensión ${number.format(strain)}`,
    noSpread: 'sin monotonía: todos los días son iguales, o la semana no ha acabado',
    loadMeans:
      'La carga es el esfuerzo por los minutos, sumado en la semana. Dice cuánto le costaron al jugador, según él, las prácticas de este grupo, y no sabe nada de partidos, de la escuela ni de otros clubes.',
    monotonyMeans:
      'La monotonía es la media de los siete días entre su desviación típica muestral (divisor 6; Foster 1998 no dice cuál), los días de descanso como 0; la tensión es la carga por la monotonía. Una monotonía alta dice que los días duros y los fáciles se parecen; ninguna dice quién se lesionará.',
  },
};
