import { card } from './card.es.ts';
import { desk } from './desk.es.ts';
import { drills } from './drills.es.ts';
import { figures } from './figures.es.ts';
import { at, formats } from './format.ts';
import { handover } from './handover.es.ts';
import { inSpain, saidBy } from './in-spain.ts';
import type { Language } from './languages.ts';
import { localeOf } from './locale.ts';
import { look } from './look.es.ts';
import { planning } from './planning.es.ts';
import { quality } from './quality.es.ts';
import type { Words } from './words.ts';

/*
 * Spanish for any country: words that a coach in Spain and one in Latin America both say or at least
 * both understand. Buttons and hints are infinitives; nobody is called "tú", "vos" or "usted". Only
 * the cues of the drills, which a coach calls to a child, say "tú".
 *
 * ball, bola · baseline, línea de fondo · block, bloque · counts, recuento · court, cancha (a pista
 * is a running track in half of the countries) · cue, consigna · drill, ejercicio · entry, entrada ·
 * file, archivo · groundstroke, golpe de fondo · share, compartir · horn, bocina · in a row,
 * seguidas · ledger, registro · round clock, reloj de la ronda · lob, globo · mark, anotación · marker,
 * cono plano · miss, fallo · on target, en el objetivo · overhead, remate · pair, pareja · partner,
 * compañero · phone, teléfono · practice, entrenamiento · rally, peloteo · return, devolución (resto
 * is said in Spain only) · review, análisis · role, rol · round, ronda · serve, saque · service line,
 * línea de saque · set, serie (a set is counted in games) · settle, revisar · split step, split step ·
 * squad, grupo · tap, tocar · tile, casilla · touch and shot and stroke, golpe · trio, trío · habitual · volley, volea
 */

const { number, one, two, day, list, isOne, count } = formats('es');

export const es: Words = {
  language: 'es',
  direction: 'ltr',
  drills,
  unknownPlayer: 'jugador desconocido',
  number: (n) => number.format(n),
  decimal: (n) => one.format(n),
  lengths: {
    metres: (m) => `${two.format(m)}\u00a0m`,
    feet: (feet) => `${one.format(feet)}\u00a0${isOne(feet) ? 'pie' : 'pies'}`,
  },
  hundredths: (n) => two.format(n),
  date: (date) => day.format(at(date)),
  list: (items) => list.format(items),
  named: (name, said) => `${name}: ${said}`,
  clock: (seconds) => {
    const whole = Math.ceil(seconds - 1e-9);
    return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
  },
  minutes: (minutes) => `${one.format(minutes)} min`,
  bar: {
    label: 'Partes de la app',
    today: 'Hoy',
    players: 'Jugadores',
    week: 'Semana',
    settings: 'Ajustes',
  },
  families: {
    groundstrokes: 'Golpes de fondo',
    volleys: 'Voleas',
    'overheads-and-lobs': 'Remates y globos',
    'serves-and-returns': 'Saques y devoluciones',
  },
  rules: {
    'in-a-row': 'seguidas',
    'in-total': 'en total',
    sequence: 'secuencia',
    'on-target': 'en el objetivo',
  },
  setCounts: (rule, size) =>
    ({
      'in-a-row': `Una serie son ${size} seguidas; tras un fallo se empieza de nuevo`,
      'in-total': `Una serie son ${size} en total; un fallo no la interrumpe`,
      sequence: `Una serie es la secuencia completa de ${size} golpes`,
      'on-target': 'Cada bola en el objetivo cuenta para quien la golpeó',
    })[rule],
  trouble: {
    full: 'Teléfono lleno: las anotaciones nuevas todavía no se guardan. Liberar espacio y dejar abierta esta página; se guardan en cuanto haya sitio.',
    refused:
      'Este teléfono no deja guardar a la app: las anotaciones nuevas todavía no se guardan. Dejar abierta esta página. Una ventana privada suele impedirlo; abrir la app en una normal.',
    slow: 'Este teléfono todavía no responde: las anotaciones nuevas todavía no se guardan. Dejar abierta esta página; la app lo sigue intentando.',
  },
  handPractice: 'Compartir este entrenamiento como archivo',
  handed: {
    shared: 'Compartido.',
    closed: 'No se compartió nada.',
    saved: (file) => `Guardado como ${file}.`,
    text: 'Este teléfono no puede compartir ni guardar archivos.',
  },
  damaged: (records, places) =>
    `Ya no se ${isOne(records) ? 'puede' : 'pueden'} leer ${count(records, 'entrada guardada', 'entradas guardadas')}: ${list.format(places)}. Todo lo demás está aquí, y lo dañado se conserva tal cual; en Ajustes se puede compartir.`,
  damagedPlaces: {
    practice: (date) => `en el entrenamiento del ${day.format(at(date))}`,
    undated: 'en un entrenamiento de fecha desconocida',
    standing: 'en el grupo o en los ejercicios',
  },
  newVersion: 'Hay una versión nueva en este teléfono.',
  takeNewVersion: 'Actualizar',
  demoBanner: 'Demo: un grupo inventado.',
  removeDemo: 'Quitar la demo',
  demoStates: {
    coming: 'Se están inventando un grupo y su temporada…',
    unsaved:
      'Quedan anotaciones sin guardar. La demo se podrá cargar en cuanto se guarden; dejar abierta esta página.',
    failed:
      'No se pudo cargar la demo: el teléfono no la dejó guardar, o faltaba todavía una parte de la app. El registro propio no se toca.',
    stays:
      'El teléfono no dejó quitar la demo. Cerrar las demás ventanas de la app y probar otra vez.',
  },
  notLoaded:
    'No se pudo cargar esta parte de la app. Los recuentos están a salvo; volver a abrir la app con conexión.',
  back: 'Atrás',
  done: 'Listo',
  cancel: 'Cancelar',
  forCoach: 'Para el entrenador',
  today: {
    title: 'Hoy',
    noSquad: 'Primero hay que añadir a los jugadores del grupo: basta con un apodo.',
    addPlayers: 'Añadir jugadores',
    tryDemo: 'Explorar con un grupo inventado',
    takeIn: 'Importar una copia de seguridad',
    here: 'Quién está',
    hereNext: 'Tocar a todos los que están.',
    allHere: 'Están todos',
    hereCount: (here, all) => `${number.format(here)} de ${number.format(all)}`,
    onePlayer: 'Una pareja es de dos: tocar a otro jugador.',
    block: 'Bloque',
    blockNext: 'Elegir los ejercicios del bloque.',
    chooseDrills: 'Elegir ejercicios',
    changeBlock: 'Cambiar',
    rounds: (rounds) => count(rounds, 'ronda', 'rondas'),
    mayBeEvicted:
      'Este teléfono puede borrar lo que guarda una página que no se abre en varios días. Conviene poner antes la app en la pantalla de inicio: en Ajustes se explica cómo.',
    usualLength: {
      short: 'más corto que los 20 a 30 minutos habituales',
      usual: 'dentro de los 20 a 30 minutos habituales',
      long: 'más largo que los 20 a 30 minutos habituales',
    },
    pairs: 'Parejas',
    turnPair: (letter) => `Cambiar los papeles de la pareja ${letter}`,
    turnAll: 'Cambiar los papeles de todas las parejas',
    swapHint: 'Tocar a dos jugadores para intercambiarlos.',
    swapWith: (name) => `Tocar ahora a quien se cambia con ${name}.`,
    notKept: {
      together: (a, b) => `No se pudo dejar juntos a ${a} y ${b}.`,
      apart: (a, b) => `No se pudo separar a ${a} y ${b}.`,
    },
    trio: (resting) =>
      `Tres se turnan: primero descansa ${resting}. Tras cada serie sale quien golpeó primero y entra quien descansaba.`,
    trioOnTarget: (resting) =>
      `Tres se turnan: primero descansa ${resting}. Cambiar a cada tercio de la ronda: sale quien golpeó primero y entra quien descansaba. Así los tres golpean las mismas bolas.`,
    toCourt: 'Ir a la cancha',
    backToCourt: 'Volver a la cancha',
    played: 'Rondas de hoy',
    toSettle: 'por revisar',
    settled: 'revisada',
    close: 'Cerrar este entrenamiento',
    closed: 'Este entrenamiento está cerrado.',
    evening: 'Tras el entreno',
    reopen: 'Abrirlo de nuevo',
    newPractice: 'Empezar otro entrenamiento',
    stillOpen: 'Queda pendiente en este entrenamiento:',
    openRound: (round) => `${round}: por revisar`,
    openMarks: (marks) =>
      count(marks, 'marca tardía o dudosa por decidir', 'marcas tardías o dudosas por decidir'),
    closeAnyway: 'Cerrar de todos modos',
    struck: 'anulada',
    propose: 'Proponer un bloque',
    coverage: 'Qué falta por trabajar',
    sheet: 'El bloque en papel',
    tooMany:
      'En la pantalla de la cancha caben veinticuatro jugadores como máximo; hay que dejar fuera a alguno.',
    roundNumber: (n) => `Ronda ${number.format(n)}`,
  },
  courts: {
    howMany: '¿Cuántas canchas hay?',
    howManyMeans: 'Así se sabe quién juega dónde y quién espera. Se puede cambiar en los ajustes.',
    so: (courts) => count(courts, 'cancha', 'canchas'),
    wait: (pairs) => count(pairs, 'pareja espera', 'parejas esperan'),
    at: (court) => `Cancha ${number.format(court + 1)}`,
    lane: (lane, lanes) =>
      lanes === 3
        ? (['en el centro', 'a la derecha', 'a la izquierda'][lane] ?? '')
        : lanes > 2
          ? ([
              'a la derecha del centro',
              'a la izquierda del centro',
              'extremo derecho',
              'extremo izquierdo',
            ][lane] ?? '')
          : (['mitad derecha', 'mitad izquierda'][lane] ?? ''),
    turnIn: 'Entran después',
    turnInMeans: 'En esta ronda no hay cancha libre: esperan fuera.',
  },
  cautions: {
    title: 'Con cuidado',
    block: [
      'Bolas sueltas fuera de la cancha, conos planos, espacio entre las parejas.',
      'Con calor: agua y sombra entre las rondas.',
      'Si algo duele: parar y consultar a un profesional de la salud.',
      'Las normas del club, la federación y el país van primero.',
    ],
    overhead:
      'Remates: ponerse de lado, nunca correr hacia atrás; ninguna bola bajo los pies, nadie cerca por detrás. Un globo que va demasiado atrás o fuera de la propia mitad se deja caer; bajo techo, cuidado con su altura.',
    serve:
      'Saques: solo cuando el compañero mira y está listo; nadie cruza por delante de quien saca.',
  },
  court: {
    drawn: (name) => `La cancha para ${name}; los lugares se dicen debajo.`,
    title: 'Cancha',
    nothing: 'No hay ninguna ronda preparada. Indicar antes quién está y elegir los ejercicios.',
    toToday: 'Ir a Hoy',
    before: 'Siguiente ronda',
    of: (round, rounds) => `${number.format(round)} de ${number.format(rounds)}`,
    start: 'Empezar',
    intention: 'Intención táctica',
    cue: 'Consigna',
    counting: 'Una serie',
    pause: 'Pausa',
    resume: 'Seguir',
    more: '+30 s',
    moreLabel: '+30 s: treinta segundos más',
    stop: 'Parar',
    stopSure: '¿Parar?',
    paused: 'En pausa',
    over: 'Se acabó',
    stopped: 'Parada',
    settle: 'Corregir el recuento',
    takeBack: '−1',
    takeBackOf: (names) => `−1: quitar la última serie de ${names}`,
    sets: (sets) => (isOne(sets) ? 'serie' : 'series'),
    saved: 'guardado',
    saving: 'sin guardar',
    rests: (name) => `descansa ${name}`,
    usual: (sets) => `habitual ${one.format(sets)}`,
    ahead: (sets) => `▲ habitual ${one.format(sets)}`,
    late: (marks) => count(marks, 'tardía', 'tardías'),
    doubtful: (marks) => count(marks, 'dudosa', 'dudosas'),
    sign30: '30 segundos',
    counted: 'Cómo se cuenta',
    ways: { tapped: 'Sobre la marcha', called: 'Cantado al final' },
    callsOf: (letter) => `La pareja ${letter} cuenta por sí misma`,
    calledMeans: 'Cuentan ellas mismas y dicen su número tras la señal.',
    someTapped: 'Toca una pareja que cuentes tú.',
    allTiles: 'Todas las casillas',
    calledOnly: 'Ocultar casillas',
    notHeard: 'no oído',
    tooMany: (names, sets) =>
      `${names}: ${number.format(sets)} es más de lo que se puede golpear en ese tiempo. Queda guardado; toca el nombre para cambiarlo.`,
    turns: 'Cambio de papeles a media ronda',
    turnNow: 'Cambio de papel',
    strikes: {
      groundstroke: 'golpes de fondo',
      volley: 'voleas',
      overhead: 'remates',
      lob: 'globos',
      serve: 'saques',
      return: 'devoluciones',
    },
    joins: (name, pair) => `${name} se une a ${pair}`,
    withoutPartner: (name) => `${name} se quedó sin pareja. Toca una pareja para hacer un trío.`,
    newName: 'Alguien nuevo: apodo',
    addName: 'Añadir',
    nameFaulty: 'Un apodo tiene de 1 a 40 letras y no es el de nadie más.',
    here: 'Quién está',
    hereLater: 'Esta ronda sigue con las parejas con que empezó; el cambio entra en la siguiente.',
    tempoCheck: 'Medir el ritmo',
    blockDone: 'Bloque terminado',
    blockDoneNext: 'Enseñar a los jugadores sus recuentos, o cerrar el entrenamiento.',
    players: 'Los jugadores y sus recuentos',
    left: 'tiempo que queda',
    otherScreens: 'Otras pantallas',
    wall: 'Vista de pared',
    wallMeans:
      'Reloj y recuentos para un televisor o una tableta junto a la cancha. Se abre en una ventana propia y sigue a esta.',
    pairScreenMeans:
      'La pantalla propia de una pareja, para un teléfono en la valla en el que ella misma cuenta. Lo que ahí es del entrenador se mantiene pulsado dos segundos: «Empezar», «Seguir» y «Para el entrenador», que lleva de vuelta. Abrir la pantalla de la pareja:',
    pairScreenOf: (letter, names) => `${letter}: la pantalla propia de ${names}`,
    sayPairs: 'Anunciar las parejas',
    saidPairs: (pairs) =>
      pairs.map(({ letter, names }) => `${letter}: ${list.format(names)}.`).join(' '),
    sleeps: {
      unable:
        'Este teléfono no puede mantener encendida la pantalla: alargar el tiempo de espera de la pantalla en los ajustes del teléfono.',
      refused:
        'Este teléfono no quiere mantener encendida la pantalla, quizá para ahorrar batería. Tocarla de vez en cuando; el reloj va bien en cualquier caso.',
    },
  },
  foci: {
    recovery: '¿En su sitio a tiempo?',
    stance: '¿Piernas flexionadas?',
    'split-step': '¿Salto previo antes del golpe?',
    'set-up': '¿Preparación a tiempo?',
    height: '¿Bastante alto sobre la red?',
    depth: '¿Bastante profundo?',
    direction: '¿En la dirección correcta?',
    speed: '¿A la velocidad correcta?',
    spin: '¿Con bastante efecto?',
  },
  looks: {
    title: 'Foco',
    is: { yes: 'Sí', no: 'No', unseen: 'No visto' },
  },
  pads: { more: 'Más que estos', fewer: 'Volver a los números menores' },
  settle: {
    title: 'Corregir el recuento',
    late: (second) => `Tras la señal, ${second}`,
    doubtful: (second) => `Demasiado pronto para una serie, ${second}`,
    keep: 'Cuenta',
    strike: 'No cuenta',
    fewer: (names) => `Una serie menos para ${names}`,
    more: (names) => `Una serie más para ${names}`,
    showing: 'Serie sin terminar, golpes',
    showingOf: (names) => `Golpes de la serie sin terminar de ${names}`,
    notSeen: 'no visto',
    best: 'Racha más larga',
    bestOf: (names) => `Racha más larga de ${names}`,
    next: 'Siguiente ronda',
    finish: 'Listo',
    skip: 'Saltar y revisar luego, hoy',
    clockJumped: (seconds) =>
      `El reloj del teléfono saltó ${one.format(Math.abs(seconds))} s en esta ronda. Su duración puede estar mal.`,
    live: (seconds) => `${one.format(seconds)} s del reloj de la ronda`,
    none: 'Esta ronda no está en este teléfono, o todavía no se ha jugado.',
    sets: 'series',
    struck: 'Anulada: ninguna cifra cuenta esta ronda.',
    strikeRound: 'Anular esta ronda',
    restoreRound: 'Volver a contar esta ronda',
    tooShort: (seconds) =>
      `Esta ronda duró solo ${one.format(seconds)} s. Si fue una prueba, anúlala: ninguna cifra la contará y su ejercicio queda por jugar.`,
    wrongNames: '¿Nombres equivocados?',
    change: 'Cambiar el recuento',
    changeOf: (names) => `Cambiar el recuento de ${names}`,
    putRight: 'Corregir algo más',
    turnedAt: (second) => `Los papeles cambiaron en ${second}.`,
    notTurned: 'Los papeles no cambiaron en esta ronda.',
    didTurn: 'Cambiaron a media ronda',
    didNotTurn: 'No cambiaron',
    shared: 'Nadie vio qué series cantadas fueron antes del cambio: se reparten según el reloj.',
    unwatched: '¿Nadie miró durante un rato? Lo que no se contó entonces no es cero.',
    from: 'de',
    to: 'a',
    strikeStretch: 'No tenerlo en cuenta',
    wasWatched: 'Se miró',
    plays: (letter, place) => `Pareja ${letter}, jugador ${place}`,
  },
  reading: 'Leyendo entrenamientos anteriores…',
  notRead:
    'Ahora mismo no se pudieron leer los entrenamientos anteriores. Están a salvo en este teléfono; volver a abrir la app.',
  pair: {
    title: (letter) => `Pareja ${letter}`,
    notIn: (letter) => `En esta ronda no juega ninguna pareja ${letter}.`,
    nothing: 'No hay ninguna ronda preparada.',
    waits: 'Esperando el comienzo.',
  },
  wall: {
    title: 'Vista de pared',
    waits: 'La siguiente ronda aparece aquí en cuanto esté preparada.',
    fullScreen: 'Pantalla completa',
    leave: 'Salir',
  },
  help: 'Ayuda',
};

const anywhere: Language = { words: es, figures, planning, desk, card, handover, quality, look };

export const language: Language =
  localeOf('es', globalThis.navigator?.languages ?? []) === 'es-ES'
    ? saidBy(inSpain, anywhere)
    : anywhere;
