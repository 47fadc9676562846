import type { StarterDrillId } from '../../core/drill/starter-drills.ts';
import type { StarterInstructions } from './drill-instructions.ts';

/*
 * How the starter drills are run, in Spanish, for an assistant who never saw them. The distances are
 * those of the markers.
 */

const both = (task: string): [string, string] => [task, task];

const rally =
  '1 deja caer una bola y la juega suave; tras un fallo, quien falló pone en juego una bola del bolsillo.';
const fromBaseline =
  '1 pone cada bola en juego suave desde el fondo, la primera y otra vez tras cada fallo.';
const atNet =
  '1 da una bola suave a la altura del pecho; tras un fallo, quien falló pone en juego una bola del bolsillo.';
const drop =
  '1 deja caer una bola y la juega: es la bola uno; tras un fallo, o una serie completa, 1 empieza de nuevo cuando los dos están listos.';
const lob =
  '1 deja caer una bola y tira un globo: es la bola uno; tras un fallo, o una serie completa, 1 tira otro cuando 2 está en su lugar y mira.';
const lobs =
  '1 deja caer una bola y tira un globo: es la bola uno; igual tras cada fallo, cuando 2 está en su lugar y mira.';
const serve =
  'Empezar en el lado de iguales, como en el dibujo, y cambiar de lado tras cada serie. Tras un fallo, 1 saca otra vez del mismo lado cuando 2 está listo.';
const oneSide = (side: string, other: string) =>
  `Esta ronda desde el lado de ${side}, como en el dibujo; la siguiente en espejo, desde el lado de ${other}. Tras un fallo, 1 saca otra vez cuando 2 está listo.`;

const own = 'Cada bola que cae en la propia mitad de la cancha; la puesta en juego no cuenta.';
const diagonal = 'Cada bola que cae en la mitad opuesta en diagonal; la puesta en juego no cuenta.';
const inTheAir =
  'Cada volea que el compañero puede alcanzar; una bola que rebota es un fallo, y la puesta en juego no cuenta.';
const onTarget =
  'Cada bola que cae en el objetivo, líneas incluidas; el peloteo sigue en todo caso. La puesta en juego no cuenta.';

export const instructions: Record<StarterDrillId, StarterInstructions> = {
  'mini-rally': {
    roles: ['Peloteo', 'Peloteo'],
    tasks: both('un paso detrás de la línea de saque, la bola rebota una vez delante de ella'),
    feed: rally,
    counts:
      'Cada bola que rebota una vez en el propio carril, delante de la línea de saque; la puesta en juego no cuenta.',
    setup:
      'Conos de carril sobre las dos líneas de saque, a 1,83 m de la línea central, para tres parejas.',
  },
  'cross-court-deuce': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('en el fondo, solo cruzado, vuelta al cono después de cada bola'),
    feed: rally,
    counts: diagonal,
    setup:
      'Conos de recuperación 0,50 m tras las líneas de fondo, a 0,60 m de la marca central, en el lado en que se juega.',
  },
  'cross-court-ad': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('en el fondo, solo cruzado, vuelta al cono después de cada bola'),
    feed: rally,
    counts: diagonal,
    setup:
      'Conos de recuperación 0,50 m tras las líneas de fondo, a 0,60 m de la marca central, en el lado en que se juega.',
  },
  'half-court-rally': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('en el fondo, solo recto, dentro de la propia mitad'),
    feed: rally,
    counts: own,
    setup:
      'Conos de carril en la prolongación de la línea central, a 9,00 m de la red, en los dos lados.',
  },
  'long-rally': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('en el fondo, cada bola por el medio y ninguna para ganar el punto'),
    feed: rally,
    counts:
      'Cada bola en la cancha de individuales: el carril entre los conos se busca, no se exige. La puesta en juego no cuenta.',
    setup:
      'Conos de carril a 9,00 m de la red y a 2,00 m de la línea central, en los dos lados, para jugar por el medio.',
  },
  'crosses-and-lines': {
    roles: ['Cruzado', 'Paralelo'],
    tasks: ['juega todas sus bolas cruzadas', 'juega todas sus bolas en paralelo'],
    feed: '1 pone en juego suave y cruzado desde el medio, la primera bola y otra vez tras cada fallo.',
    counts:
      'Cada bola en la cancha de individuales y en su dirección: cuatro son una vuelta. La puesta en juego no cuenta.',
    setup:
      'Conos de recuperación 0,50 m tras las líneas de fondo, en la prolongación de la marca central.',
  },
  'slice-and-drive': {
    roles: ['Cortado', 'Liftado'],
    tasks: ['corta todas sus bolas, bajas sobre la red', 'responde a cada bola con una liftada'],
    feed: rally,
    counts: own,
    setup: 'Conos de recuperación 0,50 m tras las líneas de fondo, a 2,00 m de la marca central.',
  },
  'third-ball-down-the-line': {
    roles: ['Paralelo', 'Cruzado'],
    tasks: ['juega la bola uno cruzada y la bola tres en paralelo', 'juega solo cruzado'],
    feed: drop,
    counts:
      'Una serie: las cuatro bolas en la cancha de individuales; la bola tres busca el objetivo, sin tener que darle.',
    setup:
      'Cono de objetivo a 9,00 m de la red y a 1,50 m de la línea lateral de individuales, en la esquina de la tercera bola.',
  },
  'deep-past-the-markers': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('en el fondo, alto y profundo en la propia mitad, tras los conos de enfrente'),
    feed: rally,
    counts: onTarget,
    setup:
      'Conos de objetivo a 9,40 m de la red, en los dos lados, en la prolongación de la línea central y sobre la línea lateral de individuales.',
  },
  'wide-past-the-markers': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('en el fondo, cruzado entre los conos y la línea lateral'),
    feed: rally,
    counts: onTarget,
    setup:
      'Conos de objetivo sobre las líneas de saque y las líneas de fondo, a 1,50 m de la línea lateral de individuales, donde cae el cruzado.',
  },
  'inside-out-forehand': {
    roles: ['Fondo', 'Fondo'],
    tasks: both('rodea su revés y juega la derecha a la esquina de ventaja de enfrente'),
    feed: rally,
    counts:
      'Cada derecha que cae en la mitad opuesta en diagonal; la de un zurdo es un simple cruzado. La puesta en juego no cuenta.',
    setup: 'Conos de recuperación 0,50 m tras las líneas de fondo, a 0,80 m de la marca central.',
  },
  'short-ball-then-deep': {
    roles: ['Ayuda', 'Recorrido'],
    tasks: [
      'juega corta la bola uno, y alta y profunda la tres, para dar tiempo a 2',
      'entra a la bola dos, se gira, vuelve corriendo y juega la cuatro; las dos profundas',
    ],
    feed: drop,
    counts:
      'Una serie: las cuatro bolas en la propia mitad, la dos y la cuatro detrás de la línea de saque.',
    setup:
      'Conos de carril en la prolongación de la línea central, a 9,00 m de la red, en los dos lados.',
  },
  'drop-shot-and-chase': {
    roles: ['Rescate', 'Dejada'],
    tasks: [
      'sale del cono, corre a la dejada, frena antes de la red y la juega profunda',
      'juega la bola dos como dejada que 1 alcance justo',
    ],
    feed: drop,
    counts:
      'Una serie: las tres bolas en la propia mitad, la dejada delante de la línea de saque y tomada antes del segundo rebote.',
    setup:
      'Conos de salida a 10,40 m de la red y a 2,00 m de la línea central, para el rescate; conos de salida a 9,60 m de la red y a 2,00 m de la línea central, para la dejada.',
  },
  'volley-to-volley': {
    roles: ['Red', 'Red'],
    tasks: both('en la red, cada volea al pecho del compañero y no más fuerte'),
    feed: atNet,
    counts: inTheAir,
    setup:
      'Conos de recuperación a 3,20 m de la red y a 2,00 m de la línea central, en los dos lados.',
  },
  'soft-volleys': {
    roles: ['Red', 'Red'],
    tasks: both('cerca de la red, sin impulso, la bola apenas por encima de la red'),
    feed: atNet,
    counts: inTheAir,
    setup: 'Conos de recuperación sobre la línea central, a 2,40 m de la red, en los dos lados.',
  },
  'baseline-to-net': {
    roles: ['Fondo', 'Red'],
    tasks: [
      'en el fondo, cada bola a la altura del pecho de 2',
      'en la red, cada volea profunda hacia 1',
    ],
    feed: fromBaseline,
    counts:
      'Cada bola que sigue: 2 la juega de volea, 1 tras un rebote en la propia mitad. La puesta en juego no cuenta.',
    setup:
      'Cono de recuperación a 3,20 m de la red y a 2,00 m de la línea central, para quien está en la red.',
  },
  'volleys-left-and-right': {
    roles: ['Fondo', 'Red'],
    tasks: [
      'corre de lado a lado y devuelve cada bola a 2',
      'en la red, volea a un lado y luego al otro',
    ],
    feed: fromBaseline,
    counts:
      'Cada bola que sigue: la volea cambia de lado cada vez y 1 puede alcanzarla. La puesta en juego no cuenta.',
    setup:
      'Cono de recuperación sobre la línea central, a 3,20 m de la red; cono de recuperación 0,50 m tras la línea de fondo, a la altura de la marca central.',
  },
  'approach-pass-volley': {
    roles: ['Ataque', 'Passing'],
    tasks: [
      'sale del cono: aproximación en paralelo y volea al espacio libre',
      'en el fondo, juega la bola dos de modo que 1 pueda volear',
    ],
    feed: drop,
    counts: 'Una serie: las tres bolas en la cancha de individuales, la tercera de volea.',
    setup:
      'Cono de salida a 8,20 m de la red y a 2,00 m de la línea central; cono de recuperación a 3,20 m de la red y a 1,20 m de la línea central.',
  },
  'closing-in': {
    roles: ['Red', 'Red'],
    tasks: both(
      'sale de la línea de saque, un paso adelante tras cada volea, suave y a la altura del pecho',
    ),
    feed: '1 lanza una bola al aire y la volea: es la bola uno; tras un fallo, o una serie completa, los dos vuelven a su línea de saque.',
    counts: 'Una serie: seis voleas sin rebote; una bola que rebota es un fallo.',
    setup:
      'Conos de salida sobre las líneas de saque, a 2,00 m de la línea central; conos de recuperación a 4,00 m de la red y a 2,00 m de la línea central.',
  },
  'baseline-to-net-across': {
    roles: ['Fondo', 'Red'],
    tasks: [
      'en la esquina de iguales, cada bola cruzada a la altura del pecho de 2',
      'en la red, en la diagonal, cada volea profunda y cruzada hacia 1',
    ],
    feed: fromBaseline,
    counts:
      'Cada bola que sigue en la diagonal: 2 la juega de volea, 1 tras un rebote. La puesta en juego no cuenta.',
    setup:
      'Cono de recuperación a 3,20 m de la red y a 1,60 m de la línea central, para quien está en la red.',
  },
  'half-volley-pick-up': {
    roles: ['Red', 'Media volea'],
    tasks: [
      'en la red, volea suave a los pies de 2, nunca al cuerpo',
      'en la línea de saque, toma la bola a un paso del rebote y la levanta hacia 1',
    ],
    feed: '1 pone cada bola en juego suave a los pies de 2, la primera y otra vez tras cada fallo.',
    counts:
      'Cada bola que sigue: 2 la juega justo después del rebote, 1 de volea. La puesta en juego no cuenta.',
    setup:
      'Cono de recuperación a 3,20 m de la red y a 2,00 m de la línea central, para quien está en la red; cono de salida a 6,60 m de la red y a 2,00 m de la línea central, para la media volea.',
  },
  'target-volleys': {
    roles: ['Fondo', 'Red'],
    tasks: [
      'en el fondo, juega la bola uno a la altura del pecho de 2',
      'en la red, la volea tras los conos',
    ],
    feed: drop,
    counts: 'Una serie solo si la volea cae en el objetivo, líneas incluidas.',
    setup:
      'Cono de recuperación a 3,20 m de la red y a 2,00 m de la línea central, para quien está en la red; conos de objetivo a 8,60 m de la red, en la prolongación de la línea central y sobre la línea lateral de individuales.',
  },
  'lob-and-overhead': {
    roles: ['Globo', 'Remate'],
    tasks: [
      'detrás de la línea de fondo, tira globos altos y bastante cortos para rematar',
      'en la red, se pone de lado y remata con control hacia 1',
    ],
    feed: lob,
    counts:
      'Una serie: un globo y su remate, golpeado antes del rebote y a la cancha de individuales; la fuerza no cuenta.',
    setup:
      'Cono de recuperación sobre la línea central, a 3,20 m de la red; cono de salida 1,00 m tras la línea de fondo, a la altura de la marca central.',
  },
  'volley-then-overhead': {
    roles: ['Fondo', 'Red'],
    tasks: [
      'en el fondo, primero una bola a la altura del pecho y luego un globo',
      'en la red, primero una volea hacia 1 y luego un remate',
    ],
    feed: drop,
    counts: 'Una serie: las cuatro bolas en la cancha de individuales, las dos de 2 sin rebote.',
    setup:
      'Cono de recuperación sobre la línea central, a 3,20 m de la red, para quien está en la red.',
  },
  'all-the-way-in': {
    roles: ['Ataque', 'Defensa'],
    tasks: [
      'sale del cono: aproximación, volea, remate',
      'en el fondo, primero una bola que 1 pueda volear y luego un globo',
    ],
    feed: drop,
    counts:
      'Una serie: las cinco bolas en la cancha de individuales, la segunda y la tercera de 1 sin rebote.',
    setup:
      'Cono de salida a 8,20 m de la red y a 2,00 m de la línea central; cono de recuperación sobre la línea central, a 3,20 m de la red.',
  },
  'back-to-the-lobber': {
    roles: ['Globo', 'Remate'],
    tasks: [
      'detrás de la línea de fondo, juega todo de globo',
      'en la red, remata al lado de 1, que debe poder tirar otro globo',
    ],
    feed: lobs,
    counts:
      'Cada globo que se remata y cada remate que vuelve como globo; el objetivo se busca, no se exige.',
    setup:
      'Cono de objetivo a 8,60 m de la red y 2,50 m de la línea lateral de individuales; cono de recuperación a 3,20 m de la red y 1,20 m de la línea central.',
  },
  'let-it-bounce': {
    roles: ['Globo', 'Remate'],
    tasks: [
      'detrás de la línea de fondo, tira globos muy altos y profundos',
      'se pone de lado, deja rebotar, pasa detrás de la bola y la remata hacia 1',
    ],
    feed: lobs,
    counts:
      'Cada globo que cae en la cancha de individuales y cada remate tras un rebote que llega a ella.',
    setup: 'Cono de recuperación sobre la línea central, a 8,00 m de la red, para quien remata.',
  },
  'lob-and-follow': {
    roles: ['Globo', 'Defensa'],
    tasks: [
      'tira un globo por encima de 2, corre hasta el cono y remata la bola tres',
      'empieza en la red, se gira y corre tras el globo, lo deja rebotar y lo devuelve de globo',
    ],
    feed: lob,
    counts:
      'Una serie: los dos globos y el remate en la cancha de individuales; solo la bola dos se juega tras un rebote.',
    setup:
      'Cono de salida a 3,20 m de la red y a 1,00 m de la línea central; cono de recuperación sobre la línea central, a 4,20 m de la red.',
  },
  'lobs-past-the-markers': {
    roles: ['Globo', 'Globo'],
    tasks: both(
      'detrás de la línea de fondo, tira globos tras los conos; uno fuera de la propia mitad se deja pasar',
    ),
    feed: rally,
    counts: onTarget,
    setup:
      'Conos de objetivo a 8,60 m de la red, en los dos lados, en la prolongación de la línea central y sobre la línea lateral de individuales.',
  },
  'target-overheads': {
    roles: ['Globo', 'Remate'],
    tasks: [
      'detrás de la línea de fondo en una esquina, tira el globo al medio y se queda ahí',
      'en la red, se pone de lado y remata a la otra esquina',
    ],
    feed: lob,
    counts: 'Una serie solo si el remate cae en el objetivo, líneas incluidas.',
    setup:
      'Cono de recuperación sobre la línea central, a 3,20 m de la red; cono de objetivo a 8,00 m de la red y a 2,50 m de la línea lateral de individuales, en la esquina vacía.',
  },
  'second-serve-deep-return': {
    roles: ['Saque', 'Devolución'],
    tasks: ['solo segundos saques', 'devuelve profundo al centro'],
    feed: serve,
    counts:
      'Seis bolas son tres saques y tres devoluciones. La devolución busca pasar los conos: en toda la cancha de individuales cuenta.',
    setup:
      'Conos de objetivo a 7,40 m de la red y a 2,00 m de la línea central, a un lado y al otro, para la devolución profunda.',
  },
  'serve-return-next': {
    roles: ['Saque', 'Devolución'],
    tasks: ['saca y juega la devolución al espacio libre', 'devuelve de modo que 1 pueda seguir'],
    feed: serve,
    counts:
      'Una serie: un saque en el cuadro, la devolución y la bola siguiente de 1 en la cancha de individuales.',
    setup:
      'Conos de recuperación 0,50 m tras las líneas de fondo, en la prolongación de la marca central.',
  },
  'wide-serve-four-balls': {
    roles: ['Saque', 'Devolución'],
    tasks: [
      'saca abierto y juega al espacio libre',
      'devuelve cruzado, cruza la cancha y juega cruzada la bola cuatro',
    ],
    feed: 'Siempre desde el lado de ventaja: el saque abierto desde el lado de iguales es otro ejercicio. Tras un fallo, 1 saca otra vez cuando 2 está listo.',
    counts:
      'Una serie: un saque en el cuadro y tres bolas en la cancha de individuales; el saque busca el objetivo, sin tener que darle.',
    setup:
      'Cono de objetivo sobre la línea de saque, a 1,50 m de la línea lateral de individuales, en el cuadro de saque al que se saca.',
  },
  'serves-to-the-middle': {
    roles: ['Saque', 'Saque'],
    tasks: both('saca a la T cuando el compañero mira y está listo'),
    feed: 'Una bola por pareja: el compañero la para con la raqueta tras el rebote y la saca de vuelta. Empezar en el lado de iguales, como en el dibujo; cambiar de lado tras cuatro saques de cada uno.',
    counts: 'Cada saque que cae en su cuadro, entre el cono y la T, líneas incluidas.',
    setup:
      'Conos de objetivo sobre las dos líneas de saque, a 1,20 m de la línea central, a un lado y al otro, en los cuatro cuadros.',
  },
  'straight-serves': {
    roles: ['Saque', 'Devolución'],
    tasks: ['saca recto al 70 por ciento, solo por el ritmo', 'devuelve recto y suave'],
    feed: '1 saca cuando 2 está listo, y otra vez tras cada devolución o fallo.',
    counts:
      'Saques y devoluciones que caen en la propia mitad, diez en total; un saque, en cualquier sitio delante de la línea de saque.',
    setup:
      'Conos de carril en la prolongación de la línea central, a 9,00 m de la red, en los dos lados.',
  },
  'serve-and-volley': {
    roles: ['Saque', 'Devolución'],
    tasks: [
      'saca, avanza, frena en equilibrio y volea profundo',
      'devuelve de modo que 1 pueda volear',
    ],
    feed: oneSide('iguales', 'ventaja'),
    counts:
      'Una serie: un saque en el cuadro, la devolución que 1 toma sin rebote y la volea en la cancha de individuales.',
    setup:
      'Cono de recuperación sobre la línea de saque, a 0,60 m de la línea central, para el split step.',
  },
  'return-and-come-in': {
    roles: ['Saque', 'Devolución'],
    tasks: [
      'solo segundos saques, y juega la bola tres de modo que 2 pueda volear',
      'devuelve en paralelo, sube hasta el cono y volea al espacio libre',
    ],
    feed: oneSide('ventaja', 'iguales'),
    counts:
      'Una serie: un saque en el cuadro y tres bolas en la cancha de individuales, la cuarta de volea.',
    setup:
      'Cono de recuperación a 3,20 m de la red y a 1,40 m de la línea central, para quien devuelve.',
  },
  'wide-serve-deuce-side': {
    roles: ['Saque', 'Devolución'],
    tasks: [
      'primeros saques, abiertos; luego juega la bola tres al espacio libre',
      'devuelve de modo que 1 pueda seguir, y vuelve al medio',
    ],
    feed: 'Siempre desde el lado de iguales: el saque abierto desde el lado de ventaja es otro ejercicio. Tras un fallo, 1 tira otro primer saque cuando 2 está listo.',
    counts:
      'Una serie: un saque en el cuadro y dos bolas en la cancha de individuales; el saque busca el objetivo, sin tener que darle.',
    setup:
      'Cono de objetivo sobre la línea de saque, a 1,50 m de la línea lateral de individuales, en el cuadro de saque al que se saca.',
  },
};
