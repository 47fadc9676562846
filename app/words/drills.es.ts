import type { DrillText } from '../../core/drill/drill.ts';
import type { StarterDrillId } from '../../core/drill/starter-drills.ts';

/** What people read of the starter drills, in Spanish. The distances are those of the markers. */
export const drills: Record<StarterDrillId, DrillText & { setup: string }> = {
  'mini-rally': {
    name: 'Mini peloteo',
    intention: 'Despertar ojos, pies y tacto, cuatro parejas a la vez, con bolas cortas y bajas.',
    cue: 'Gesto lento y final largo.',
    roles: ['Peloteo', 'Peloteo'],
    setup:
      'Marcadores de carril sobre las dos líneas de saque, a 2,74 m de la línea central, para cuatro parejas.',
  },
  'cross-court-deuce': {
    name: 'Cruzado, lado de iguales',
    intention:
      'Dominar la dirección más segura: por el centro de la red, su parte más baja, y en diagonal, donde la cancha es más larga.',
    cue: 'Apunta alto, por el centro de la red.',
    roles: ['Fondo', 'Fondo'],
    setup:
      'Marcadores de recuperación 0,50 m tras las líneas de fondo, a 0,60 m de la marca central, en el lado en que se juega.',
  },
  'cross-court-ad': {
    name: 'Cruzado, lado de ventaja',
    intention:
      'Sostener la diagonal de ventaja hasta sentirse como en casa, sin dejarse meter prisa.',
    cue: 'Gira los hombros antes del bote.',
    roles: ['Fondo', 'Fondo'],
    setup:
      'Marcadores de recuperación 0,50 m tras las líneas de fondo, a 0,60 m de la marca central, en el lado en que se juega.',
  },
  'half-court-rally': {
    name: 'Peloteo a media cancha',
    intention:
      'Mantener la bola recta en la propia mitad, para que el paralelo sea una elección y no una apuesta.',
    cue: 'Acompaña la bola hacia tu compañero.',
    roles: ['Fondo', 'Fondo'],
    setup:
      'Marcadores de carril en la prolongación de la línea central, a 9,00 m de la red, en los dos lados.',
  },
  'long-rally': {
    name: 'El peloteo largo',
    intention: 'Aprender paciencia jugando siempre una bola más de las previstas.',
    cue: 'Suelta el aire al golpear.',
    roles: ['Fondo', 'Fondo'],
    setup:
      'Marcadores de carril a 9,00 m de la red y a 2,00 m de la línea central, en los dos lados, para jugar por el medio.',
  },
  'crosses-and-lines': {
    name: 'Cruzados y paralelos',
    intention:
      'Leer pronto la bola siguiente y cubrir todo el fondo, con cruzados de un lado y paralelos del otro.',
    cue: 'Arranca en cuanto salga tu bola.',
    roles: ['Cruzado', 'Paralelo'],
    setup:
      'Marcadores de recuperación 0,50 m tras las líneas de fondo, en la prolongación de la marca central.',
  },
  'slice-and-drive': {
    name: 'Cortado y liftado',
    intention:
      'Responder a una bola baja que resbala con una liftada, y aprender a cambiar el ritmo del peloteo.',
    cue: 'Dobla las rodillas, no la espalda.',
    roles: ['Cortado', 'Liftado'],
    setup:
      'Marcadores de recuperación 0,50 m tras las líneas de fondo, a 2,00 m de la marca central.',
  },
  'third-ball-down-the-line': {
    name: 'Tercera bola en paralelo',
    intention:
      'Cambiar de dirección solo en equilibrio: dos bolas cruzadas, la tercera en paralelo y la cuarta otra vez cruzada.',
    cue: 'Asienta los pies antes de cambiar de dirección.',
    roles: ['Paralelo', 'Cruzado'],
    setup:
      'Marcador de objetivo a 9,00 m de la red y a 1,50 m de la línea lateral de individuales, en la esquina de la tercera bola.',
  },
  'deep-past-the-markers': {
    name: 'Profundas tras la marca',
    intention: 'Hacer retroceder al compañero con profundidad y altura, en lugar de fuerza.',
    cue: 'Levántala: dos raquetas por encima de la red.',
    roles: ['Fondo', 'Fondo'],
    setup:
      'Marcadores de objetivo a 9,40 m de la red, en los dos lados, en la prolongación de la línea central y sobre la línea lateral de individuales.',
  },
  'wide-past-the-markers': {
    name: 'Abiertas tras la marca',
    intention:
      'Abrir la cancha con un ángulo cruzado que saque al compañero más allá de la línea lateral.',
    cue: 'Cepilla la bola por fuera.',
    roles: ['Fondo', 'Fondo'],
    setup:
      'Marcadores de objetivo sobre las líneas de saque y las líneas de fondo, a 1,50 m de la línea lateral de individuales, donde cae el cruzado.',
  },
  'volley-to-volley': {
    name: 'Volea contra volea',
    intention:
      'Mantener la bola en el aire entre dos en la red, con pies vivos y manos tranquilas.',
    cue: 'Manos delante, cabeza de la raqueta arriba.',
    roles: ['Red', 'Red'],
    setup:
      'Marcadores de recuperación a 3,20 m de la red y a 2,00 m de la línea central, en los dos lados.',
  },
  'soft-volleys': {
    name: 'Voleas suaves',
    intention: 'Quitarle velocidad a la bola, para tener una volea de toque cuando haga falta.',
    cue: 'Dedos blandos: recoge la bola con las cuerdas.',
    roles: ['Red', 'Red'],
    setup:
      'Marcadores de recuperación a 2,40 m de la red y a 1,37 m de la línea central, en los dos lados.',
  },
  'baseline-to-net': {
    name: 'Fondo y red',
    intention:
      'Bloquear volea tras volea con profundidad, mientras desde el fondo llega una bola fácil de volear.',
    cue: 'Split step cada vez que golpee tu compañero.',
    roles: ['Fondo', 'Red'],
    setup:
      'Marcador de recuperación a 3,20 m de la red y a 2,00 m de la línea central, para quien está en la red.',
  },
  'volleys-left-and-right': {
    name: 'Voleas a los dos lados',
    intention:
      'Dirigir la volea a un lado y al otro con los hombros, y hacer correr al compañero sin perder la bola.',
    cue: 'Gira los hombros y luego cruza el pie.',
    roles: ['Fondo', 'Red'],
    setup:
      'Marcador de recuperación sobre la línea central, a 3,20 m de la red; marcador de recuperación 0,50 m tras la línea de fondo, ante la marca central.',
  },
  'approach-pass-volley': {
    name: 'Subida, passing, volea',
    intention:
      'Subir detrás de una bola profunda en paralelo, cerrar la red y volear al espacio libre.',
    cue: 'Split step antes del passing, y a moverse.',
    roles: ['Ataque', 'Passing'],
    setup:
      'Marcador de salida a 8,20 m de la red y a 2,00 m de la línea central; marcador de recuperación a 3,20 m de la red y a 1,20 m de la línea central.',
  },
  'closing-in': {
    name: 'Cada vez más cerca',
    intention:
      'Ganar terreno con cada volea, de la línea de saque hacia la red, un paso después de cada bola.',
    cue: 'Da un paso adelante tras cada volea, nunca atrás.',
    roles: ['Red', 'Red'],
    setup:
      'Marcadores de salida sobre las líneas de saque, a 2,00 m de la línea central; marcadores de recuperación a 4,00 m de la red y a 2,00 m de la línea central.',
  },
  'lob-and-overhead': {
    name: 'Globo y remate',
    intention:
      'Tirar un globo alto pero alcanzable, y rematarlo con control a la misma mitad de la cancha.',
    cue: 'Ponte de lado y señala la bola con la mano libre.',
    roles: ['Globo', 'Remate'],
    setup:
      'Marcador de recuperación a 3,20 m de la red y a 2,00 m de la línea central; marcador de salida 1,00 m tras la línea de fondo, a 2,00 m de la marca central.',
  },
  'volley-then-overhead': {
    name: 'Volea y luego remate',
    intention:
      'Estar listo en la red para las dos respuestas, primero la bola baja y enseguida la alta.',
    cue: 'Atrasa primero el pie del lado de la raqueta.',
    roles: ['Fondo', 'Red'],
    setup:
      'Marcador de recuperación a 3,20 m de la red y a 2,00 m de la línea central, para quien está en la red.',
  },
  'all-the-way-in': {
    name: 'La subida completa',
    intention:
      'Jugar todo el ataque en la red de una vez: aproximación, volea, respuesta al globo y remate para cerrar.',
    cue: 'Frena en equilibrio antes de cada golpe.',
    roles: ['Ataque', 'Defensa'],
    setup:
      'Marcador de salida a 8,20 m de la red y a 2,00 m de la línea central; marcador de recuperación sobre la línea central, a 3,20 m de la red.',
  },
  'back-to-the-lobber': {
    name: 'Globo, remate y otra vez',
    intention:
      'Colocar el remate donde el compañero pueda volver a tirar un globo, porque el control va antes que la potencia.',
    cue: 'Golpea la bola en lo más alto.',
    roles: ['Globo', 'Remate'],
    setup:
      'Marcador de objetivo a 8,60 m de la red y 2,50 m de la línea lateral de individuales; marcador de recuperación a 3,20 m de la red y 1,20 m de la línea central.',
  },
  'let-it-bounce': {
    name: 'Remate tras el bote',
    intention:
      'Calcular un globo muy alto, ponerse detrás del bote y golpearlo aun así por encima de la cabeza.',
    cue: 'Pasos cortos hasta que la bola baje.',
    roles: ['Globo', 'Remate'],
    setup:
      'Marcador de recuperación a 8,00 m de la red y a 2,00 m de la línea central, para quien remata.',
  },
  'lob-and-follow': {
    name: 'Globo y a la red',
    intention:
      'Pasar de la defensa al ataque: globo por encima de quien está en la red, seguir la bola y tomar la respuesta en el aire.',
    cue: 'Abre la cara de la raqueta y termina arriba.',
    roles: ['Globo', 'Carrera'],
    setup:
      'Marcador de salida a 3,20 m de la red y a 1,00 m de la línea central; marcador de recuperación sobre la línea central, a 4,20 m de la red.',
  },
  'lobs-past-the-markers': {
    name: 'Globos tras la marca',
    intention: 'Tirar un globo tan profundo que nadie pueda atacarlo.',
    cue: 'De abajo arriba, termina por encima de la cabeza.',
    roles: ['Globo', 'Globo'],
    setup:
      'Marcadores de objetivo a 8,60 m de la red, en los dos lados, en la prolongación de la línea central y sobre la línea lateral de individuales.',
  },
  'second-serve-deep-return': {
    name: 'Segundo saque y devolución',
    intention:
      'Confiar en el segundo saque, y devolverlo profundo al centro, donde quien saca no tiene ángulo.',
    cue: 'Cepilla la bola por detrás, hacia arriba.',
    roles: ['Saque', 'Devolución'],
    setup:
      'Marcadores de objetivo a 7,40 m de la red y a 2,00 m de la línea central, a un lado y al otro, para la devolución profunda.',
  },
  'serve-return-next': {
    name: 'Saque, devolución y una más',
    intention:
      'Encadenar las tres bolas con que empieza la mayoría de los puntos: saque, devolución y siguiente golpe de quien saca.',
    cue: 'Prepárate otra vez en cuanto caigas.',
    roles: ['Saque', 'Devolución'],
    setup:
      'Marcadores de recuperación 0,50 m tras las líneas de fondo, en la prolongación de la marca central.',
  },
  'wide-serve-four-balls': {
    name: 'Saque abierto y tres más',
    intention:
      'Sacar abierto para abrir la cancha, jugar al espacio y sostener el peloteo desde ahí.',
    cue: 'Golpea hacia arriba y luego hacia el objetivo.',
    roles: ['Saque', 'Devolución'],
    setup:
      'Marcador de objetivo sobre la línea de saque, a 1,50 m de la línea lateral de individuales, en el cuadro del saque.',
  },
  'serves-to-the-middle': {
    name: 'Saques a la T',
    intention:
      'Sacar a la T, por la parte baja de la red, mientras el compañero atrapa la bola y saca de vuelta.',
    cue: 'Lanza la bola siempre igual, con el brazo estirado.',
    roles: ['Saque', 'Saque'],
    setup:
      'Marcadores de objetivo sobre las dos líneas de saque, a 1,20 m de la línea central, en los cuadros a los que se saca.',
  },
  'straight-serves': {
    name: 'Saques rectos',
    intention:
      'Sacar muchas bolas con un ritmo fácil, de frente, dentro de la propia mitad de la cancha.',
    cue: 'Brazo lento al subir, rápido al golpear.',
    roles: ['Saque', 'Devolución'],
    setup:
      'Marcadores de carril en la prolongación de la línea central, a 9,00 m de la red, en los dos lados.',
  },
  'serve-and-volley': {
    name: 'Saque y volea',
    intention:
      'Seguir el saque hasta la línea de saque, frenar en equilibrio y jugar profunda la primera volea.',
    cue: 'Cae dentro de la cancha y sigue adelante.',
    roles: ['Saque', 'Devolución'],
    setup:
      'Marcador de recuperación sobre la línea de saque, a 0,60 m de la línea central, para el split step.',
  },
  'return-and-come-in': {
    name: 'Devolución y subida',
    intention: 'Tomar pronto un segundo saque, devolver en paralelo y seguir la bola hasta la red.',
    cue: 'Golpe corto, el peso hacia delante.',
    roles: ['Saque', 'Devolución'],
    setup:
      'Marcador de recuperación a 3,20 m de la red y a 1,40 m de la línea central, para quien devuelve.',
  },
};
