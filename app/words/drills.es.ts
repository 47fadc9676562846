import type { StarterDrillId } from '../../core/drill/starter-drills.ts';
import type { DrillHead } from './drill-text.ts';

/** What is said of the starter drills wherever they come up, in Spanish. */
export const drills: Record<StarterDrillId, DrillHead> = {
  'mini-rally': {
    name: 'Mini peloteo',
    intention: 'Despertar ojos, pies y tacto, tres parejas a la vez, con bolas cortas y bajas.',
    cue: 'Gesto lento y final largo.',
  },
  'cross-court-deuce': {
    name: 'Cruzado, lado de iguales',
    intention:
      'Dominar la dirección más segura: por el centro de la red, su parte más baja, y en diagonal, donde la cancha es más larga.',
    cue: 'Apunta alto, por el centro de la red.',
  },
  'cross-court-ad': {
    name: 'Cruzado, lado de ventaja',
    intention:
      'Sostener la diagonal de ventaja hasta sentirse como en casa, sin dejarse presionar.',
    cue: 'Gira los hombros antes del rebote.',
  },
  'half-court-rally': {
    name: 'Peloteo a media cancha',
    intention:
      'Mantener la bola recta en la propia mitad, para que el paralelo sea una elección y no una apuesta.',
    cue: 'Acompaña la bola hacia tu compañero.',
  },
  'long-rally': {
    name: 'El peloteo largo',
    intention: 'Aprender paciencia jugando siempre una bola más de las previstas.',
    cue: 'Suelta el aire al golpear.',
  },
  'crosses-and-lines': {
    name: 'Cruzados y paralelos',
    intention:
      'Leer pronto la bola siguiente y cubrir todo el fondo, con cruzados de un lado y paralelos del otro.',
    cue: 'Arranca en cuanto salga tu bola.',
  },
  'slice-and-drive': {
    name: 'Cortado y liftado',
    intention:
      'Responder a una bola baja que resbala con una liftada, y aprender a cambiar el ritmo del peloteo.',
    cue: 'Dobla las rodillas, no la espalda.',
  },
  'third-ball-down-the-line': {
    name: 'Tercera bola en paralelo',
    intention:
      'Cambiar de dirección solo en equilibrio: dos bolas cruzadas, la tercera en paralelo y la cuarta otra vez cruzada.',
    cue: 'Asienta los pies antes de cambiar de dirección.',
  },
  'deep-past-the-markers': {
    name: 'Profundas tras los conos',
    intention: 'Hacer retroceder al compañero con profundidad y altura, en lugar de fuerza.',
    cue: 'Levántala: dos raquetas por encima de la red.',
  },
  'wide-past-the-markers': {
    name: 'Abiertas tras los conos',
    intention:
      'Abrir la cancha con un ángulo cruzado que saque al compañero más allá de la línea lateral.',
    cue: 'Que la bola se incline en la curva, como una bici.',
  },
  'inside-out-forehand': {
    name: 'Derecha invertida',
    intention:
      'Hacer de la derecha la respuesta también desde la esquina del revés, y fijar con ella al compañero en la esquina opuesta.',
    cue: 'Pasos cortos y rápidos para rodear la bola.',
  },
  'short-ball-then-deep': {
    name: 'Bola corta y luego profunda',
    intention:
      'Entrar a una bola corta y jugarla profunda, y volver a tiempo para la siguiente, también profunda.',
    cue: 'Busca la bola corta delante de ti.',
  },
  'drop-shot-and-chase': {
    name: 'Dejada y carrera',
    intention:
      'Jugar una dejada con el mismo gesto que una bola profunda, y aprender a llegar a una en plena carrera, con control.',
    cue: 'Mira pronto y sal al instante.',
  },
  'volley-to-volley': {
    name: 'Volea contra volea',
    intention:
      'Mantener la bola en el aire entre dos en la red, con pies vivos y manos tranquilas.',
    cue: 'Manos delante, cabeza de la raqueta arriba.',
  },
  'soft-volleys': {
    name: 'Voleas suaves',
    intention: 'Quitarle velocidad a la bola, para tener una volea de toque cuando haga falta.',
    cue: 'Dedos blandos: recoge la bola con las cuerdas.',
  },
  'baseline-to-net': {
    name: 'Fondo y red',
    intention:
      'Bloquear volea tras volea con profundidad, mientras desde el fondo llega una bola fácil de volear.',
    cue: 'Split step cada vez que golpee tu compañero.',
  },
  'volleys-left-and-right': {
    name: 'Voleas a los dos lados',
    intention:
      'Dirigir la volea a un lado y al otro con los hombros, y hacer correr al compañero sin perder la bola.',
    cue: 'Gira los hombros y luego cruza el pie.',
  },
  'approach-pass-volley': {
    name: 'Subida, passing, volea',
    intention:
      'Subir detrás de una bola profunda en paralelo, cerrar la red y volear al espacio libre.',
    cue: 'Split step antes del passing, y a moverse.',
  },
  'closing-in': {
    name: 'Cada vez más cerca',
    intention:
      'Ganar terreno con cada volea, de la línea de saque hacia la red, un paso después de cada bola.',
    cue: 'Da un paso adelante tras cada volea, nunca atrás.',
  },
  'baseline-to-net-across': {
    name: 'Fondo y red en diagonal',
    intention:
      'Volear en la diagonal larga, donde la red es baja, y aprender a cubrir el ángulo desde ahí.',
    cue: 'Enseña las cuerdas a donde debe ir la bola.',
  },
  'half-volley-pick-up': {
    name: 'Media volea',
    intention: 'Salvar la bola en los pies al subir, para que una bola baja no haga retroceder.',
    cue: 'Quédate abajo hasta que salga la bola.',
  },
  'target-volleys': {
    name: 'Voleas al objetivo',
    intention:
      'Dar un destino a la volea: profunda tras los conos, donde el compañero tiene que ceder terreno.',
    cue: 'Termina con las cuerdas hacia el objetivo.',
  },
  'lob-and-overhead': {
    name: 'Globo y remate',
    intention: 'Tirar un globo alto pero alcanzable, y rematarlo con control hacia quien lo tiró.',
    cue: 'Ponte de lado y señala la bola con la mano libre.',
  },
  'volley-then-overhead': {
    name: 'Volea y luego remate',
    intention:
      'Estar listo en la red para las dos respuestas, primero la bola baja y enseguida la alta.',
    cue: 'Atrasa primero el pie del lado de la raqueta.',
  },
  'all-the-way-in': {
    name: 'La subida completa',
    intention:
      'Jugar todo el ataque en la red de una vez: aproximación, volea, respuesta al globo y remate para cerrar.',
    cue: 'Frena en equilibrio antes de cada golpe.',
  },
  'back-to-the-lobber': {
    name: 'Globo, remate y otra vez',
    intention:
      'Colocar el remate donde el compañero pueda volver a tirar un globo, porque el control va antes que la potencia.',
    cue: 'Golpea la bola en lo más alto.',
  },
  'let-it-bounce': {
    name: 'Remate tras el rebote',
    intention:
      'Calcular un globo muy alto, ponerse detrás del rebote y golpearlo aun así por encima de la cabeza.',
    cue: 'Pasos cortos hasta que la bola baje.',
  },
  'lob-and-follow': {
    name: 'Globo y a la red',
    intention:
      'Pasar de la defensa al ataque: globo por encima de quien está en la red, seguir la bola y tomar la respuesta en el aire.',
    cue: 'Abre la cara de la raqueta y termina arriba.',
  },
  'lobs-past-the-markers': {
    name: 'Globos tras los conos',
    intention: 'Tirar un globo tan profundo que nadie pueda atacarlo.',
    cue: 'De abajo arriba, termina por encima de la cabeza.',
  },
  'target-overheads': {
    name: 'Remates al objetivo',
    intention:
      'Colocar el remate en la esquina vacía, porque uno bien colocado no necesita fuerza.',
    cue: 'Elige la esquina antes de golpear.',
  },
  'second-serve-deep-return': {
    name: 'Segundo saque y devolución',
    intention:
      'Confiar en el segundo saque; enfrente, devolver profundo al centro, donde quien saca no tiene ángulo.',
    cue: 'Cepilla la bola por detrás, hacia arriba.',
  },
  'serve-return-next': {
    name: 'Saque, devolución y una más',
    intention:
      'Encadenar las tres bolas con que empieza la mayoría de los puntos: saque, devolución y siguiente golpe de quien saca.',
    cue: 'Prepárate otra vez en cuanto caigas.',
  },
  'wide-serve-four-balls': {
    name: 'Saque abierto y tres más',
    intention:
      'Sacar abierto para abrir la cancha, jugar al espacio y sostener el peloteo desde ahí.',
    cue: 'Golpea hacia arriba y luego hacia el objetivo.',
  },
  'serves-to-the-middle': {
    name: 'Saques a la T',
    intention:
      'Sacar a la T, por la parte baja de la red, mientras el compañero para la bola y la saca de vuelta.',
    cue: 'Lanza la bola siempre igual, con el brazo estirado.',
  },
  'straight-serves': {
    name: 'Saques rectos',
    intention:
      'Encontrar un ritmo fácil de saque sin preocuparse de apuntar, que se entrena en diagonal.',
    cue: 'Brazo lento al subir, rápido al golpear.',
  },
  'serve-and-volley': {
    name: 'Saque y volea',
    intention:
      'Seguir el saque hasta la línea de saque, frenar en equilibrio y jugar profunda la primera volea.',
    cue: 'Cae dentro de la cancha y sigue adelante.',
  },
  'return-and-come-in': {
    name: 'Devolución y subida',
    intention: 'Tomar pronto un segundo saque, devolver en paralelo y seguir la bola hasta la red.',
    cue: 'Golpe corto, el peso hacia delante.',
  },
  'wide-serve-deuce-side': {
    name: 'Saque abierto, iguales',
    intention:
      'Sacar de la cancha a quien devuelve con un primer saque abierto, y jugar al espacio que queda.',
    cue: 'Lanza un poco más hacia el lado de la raqueta.',
  },
};
