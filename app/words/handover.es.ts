import { formats } from './format.ts';
import type { HandoverWords } from './handover-words.ts';

/** Spanish, for what passes between phones. */

const { number, count } = formats('es');

export const handover: HandoverWords = {
  title: 'Otros teléfonos',
  means:
    'Lo que contó un teléfono pasa a otro por código o por archivo. No hay cuenta, y nada sale de este teléfono si nadie lo comparte.',
  open: 'Otros teléfonos, borrar',
  back: 'Otros teléfonos',
  phone: {
    this: 'este teléfono',
    other: (name) => `teléfono ${name}`,
    earlier: 'un teléfono con una versión anterior',
  },
  code: {
    title: 'Por código',
    means: 'Este entrenamiento en un código para la cámara del otro teléfono: sin red.',
    part: (part, parts) => `${number.format(part)} de ${number.format(parts)}`,
  },
  show: {
    title: 'Mostrar un código',
    share: 'Qué se muestra',
    shares: {
      whole: 'Este entrenamiento: quién está, parejas, bloque y todos los recuentos',
      own: 'Solo lo que escribió este teléfono: los recuentos, para quien tiene el resto',
    },
    label: 'Código de este entrenamiento',
    how: 'En el otro teléfono: Ajustes, Otros teléfonos, Leer un código. Mantener quietos los dos teléfonos hasta que diga que está todo.',
    holds: 'Contiene los apodos del grupo. Lo que se cuente desde ahora necesita un código nuevo.',
    tooLong: 'Es demasiado largo para un código. Compartirlo por archivo.',
  },
  read: {
    title: 'Leer un código',
    starting: 'La cámara se está iniciando…',
    how: 'Mantener la cámara de modo que se vea entero el código del otro teléfono.',
    have: (have, total) =>
      `${number.format(have)} partes vistas de ${number.format(total)}. No mover.`,
    another: 'Leer otro código',
    noCamera: {
      none: 'Este teléfono no da ninguna cámara a la app. Pedir el entrenamiento por archivo.',
      refused:
        'No se permitió la cámara. Permitirla para esta app en los ajustes del teléfono, o pedir el entrenamiento por archivo.',
    },
    strange: {
      foreign: 'Este no es un código de esta app. Mostrar el código del otro teléfono.',
      version: 'Una versión más nueva de la app hizo este código. Actualizar primero la app.',
      damaged: 'Una parte del código se leyó mal. Se deja aparte; seguir manteniendo la cámara.',
      endless: 'Este código anuncia más partes que ningún entrenamiento. Se deja aparte.',
    },
    spoilt: {
      damaged: 'Lo que se leyó no se desempaqueta. No se importó nada; leer el código otra vez.',
      large: 'Lo que se leyó sería más grande que ningún entrenamiento. No se importó nada.',
    },
    refused: (why) => `No se importó nada de ese código: ${why}`,
  },
  card: {
    title: 'La tarjeta de un jugador',
    give: 'Tarjeta para llevar a casa',
    means:
      'Las cifras propias del jugador en su último día, con su apodo. El enlace las lleva dentro: ningún servidor las ve. Quien lo tenga puede leerla.',
    touches: 'golpes',
    code: 'Código de esta tarjeta',
    codeMeans: 'La cámara de cualquier teléfono lo abre.',
    link: 'Enlace de esta tarjeta',
    copy: 'Copiar el enlace',
    copied: 'Copiado.',
    picture: 'Compartir como imagen',
    noPicture: 'Este teléfono no hace imágenes. Copiar el enlace o imprimir la tarjeta.',
    print: 'Imprimir',
    onlyHere:
      'Esta tarjeta está solo en su enlace: al guardarlo se abre otra vez, también sin red una vez instalada la app.',
    damaged: 'Esta tarjeta no está entera. Copiar el enlace de la primera letra a la última.',
    newer: 'Una versión más nueva de la app hizo esta tarjeta. Actualizar primero la app.',
    toApp: 'A la app',
  },
  copy: {
    due: 'Más de una semana de entrenamientos no está en ninguna copia. Con el teléfono perdido se iría.',
    make: 'Hacer una copia de seguridad',
    passphrase: 'Frase secreta, si se quiere',
    passphraseMeans:
      'Solo quien la sabe abre la copia, aquí o con cualquier herramienta para archivos age. Conviene anotarla: nadie puede recuperarla. Varias palabras son mejores que una.',
    sealed: 'Esta copia está cerrada. Su frase secreta',
    open: 'Abrirla',
    shut: {
      passphrase:
        'Esta frase no la abre, o se cambió el principio del archivo. No se importó nada.',
      damaged: 'El archivo se cortó o se cambió: no se abre. No se importó nada.',
      slow: 'Está cerrada con tanta fuerza que este teléfono tardaría minutos en abrirla. Abrirla en un ordenador o computadora con una herramienta age.',
      key: 'Este archivo lo abre una clave, no una frase. Abrirlo en un ordenador o computadora con una herramienta age.',
    },
  },
  analyst: {
    title: 'Para analistas',
    means:
      'Tablas con la descripción de cada columna (un Data Package), para programas que leen a la vez los archivos de muchos entrenadores. Los jugadores se llaman como se eligió en Ajustes: apodos o iniciales.',
    span: 'Qué entrenamientos',
    spans: { week: 'esta semana', month: 'este mes', season: 'todos los que hay' },
    none: 'No hubo ningún entrenamiento entonces.',
    handOver: 'Compartir las tablas (ZIP)',
  },
  club: {
    title: 'Un lugar compartido',
    means:
      'Los teléfonos de un club se encuentran en una carpeta: cada uno escribe un archivo propio y lee los de los otros. Nunca con un reloj en marcha, y todo funciona sin ello.',
    notInDemo: 'Mientras se muestra el grupo inventado, no hay encuentro con nadie.',
    open: 'Configurar o mirar',
    server: 'En el servidor web del club',
    serverMeans:
      'Una carpeta en el servidor del que viene esta app, por WebDAV. No se llama a ningún otro servidor.',
    at: (path) => `En el servidor web del club: ${path}`,
    path: 'Carpeta, desde la dirección de la app',
    user: 'Nombre',
    password: 'Contraseña',
    passwordMeans:
      'Ambos quedan en este teléfono, legibles para quien pueda leer su memoria. Conviene un nombre que no abra nada más.',
    join: 'Encontrarse allí',
    folder: 'En una carpeta de este dispositivo',
    folderMeans: 'Una carpeta que un servicio propio sincroniza con los otros dispositivos.',
    chooseFolder: 'Elegir la carpeta',
    now: 'Encuentro con los otros…',
    never: 'Aún sin encuentro.',
    met: (date) => `Último encuentro: ${date}.`,
    round: 'Se está jugando una ronda: el encuentro es después.',
    waits: (practices) =>
      `Aún no está allí: ${count(practices, 'entrenamiento', 'entrenamientos')} de este teléfono. No se pierde nada; va en el próximo encuentro.`,
    unread: (phone) =>
      `El archivo de «${phone}» no se puede leer como está. Se deja aparte, y se lee de nuevo cuando ese teléfono lo haya escrito otra vez.`,
    shared:
      'Otro dispositivo escribió el mismo archivo que este teléfono. Lo que escribió se importó, y este teléfono tiene ahora un archivo propio.',
    keep: (what) => `Conservar ${what}`,
    meet: 'Encontrarse ahora',
    leave: 'Dejar este lugar',
    leaveMeans:
      'Lo importado se queda aquí. El archivo de este teléfono sigue allí hasta que alguien lo elimine.',
    faults: {
      unreachable: 'Ahora no se llega al lugar. El recuento sigue; se intenta otra vez.',
      refused:
        'El lugar no deja entrar a este teléfono: falla el nombre, la contraseña o el permiso.',
      missing: 'No hay tal carpeta.',
      full: 'Allí no queda espacio. No se cambió nada allí; aquí no se pierde nada.',
      elsewhere: 'Eso lleva a otro servidor. No se sigue.',
      strange:
        'Lo que responde allí no es un lugar compartido: dio otra cosa que una lista de archivos.',
    },
  },
  file: {
    title: 'Por archivo',
    means:
      'Este entrenamiento en un archivo, para un teléfono que lo siga o que reúna lo que contó.',
    none: 'No hay ningún entrenamiento en curso que compartir.',
  },
  counts: {
    two: 'Dos teléfonos contaron esta pareja. Los recuentos no se suman; hay que elegir cuál vale.',
    of: (phone, sets) => `${phone}: ${count(sets, 'serie', 'series')}`,
    holds: 'Vale este',
    aside: 'Contado a la vez con otras parejas, y en ninguna cifra:',
    asideOf: (names, sets) => `${names}: ${count(sets, 'serie', 'series')}`,
  },
  arriving: {
    title: 'Esto es lo que llega',
    looking: 'Mirando qué hay de nuevo…',
    failed: 'El teléfono no dejó leer el registro. No se importó nada; intentarlo otra vez.',
    nothing: 'Todo lo que contiene ya estaba aquí.',
    entries: (entries) => count(entries, 'entrada nueva', 'entradas nuevas'),
    practices: (practices, rounds, marks) =>
      `${count(practices, 'entrenamiento', 'entrenamientos')}, ${count(rounds, 'ronda', 'rondas')}, ${count(marks, 'anotación', 'anotaciones')}`,
    from: 'De',
    fromPhone: (phone, rounds, marks, entries) =>
      `${phone}: ${count(rounds, 'ronda', 'rondas')}, ${count(marks, 'anotación', 'anotaciones')}, ${count(entries, 'entrada', 'entradas')}`,
    players: (names) => `Jugadores nuevos: ${names}.`,
    stays: 'Lo que hay aquí queda como está; lo que llega se añade una vez.',
    erases: 'Otro teléfono borró lo que aún está aquí. Se queda, salvo que se marque aquí:',
    erase: (what) => `Borrar aquí también: ${what}`,
    take: 'Importarlo',
    leave: 'Dejarlo',
    left: 'No se importó nada.',
    kept: (entries) => count(entries, 'entrada nueva importada.', 'entradas nuevas importadas.'),
    notKept: 'El teléfono no dejó guardarlo. No se importó nada.',
  },
  players: {
    title: 'Un niño o dos',
    means:
      'Los grupos escritos en dos teléfonos tienen dos veces al mismo niño. Al decir quién es el mismo, sus recuentos quedan juntos; se puede deshacer en cualquier momento.',
    none: 'Nadie se llama como otro.',
    ask: (one, other) => `¿${one} y ${other} son un solo niño?`,
    since: (days) => count(days, 'entrenamiento', 'entrenamientos'),
    one: 'Un niño',
    two: 'Dos niños',
    merged: 'Tomados por uno solo',
    takeBack: (name) => `Son dos al final: ${name}`,
  },
  erase: {
    title: 'Borrar',
    means:
      'Lo que se borra aquí se va para siempre de este teléfono, y no vuelve con un archivo más antiguo. Las copias compartidas lo conservan: hay que pedir a quien tenga una que también lo borre.',
    player: 'Un jugador',
    playerMeans:
      'Se van nombre, nivel, mano y deseos. Lo contado queda para los compañeros, sin nombre.',
    practice: 'Un entrenamiento',
    practiceMeans: 'El entrenamiento se va con todos sus recuentos.',
    choose: 'elegir',
    erase: (what) => `Borrar ${what}`,
    sure: (what) => `¿Borrar ${what} ahora? No se puede deshacer.`,
    done: (what) => `${what}: borrado de este teléfono.`,
    doneMeans: 'En los archivos, códigos y tarjetas compartidos sigue hasta que se eliminen.',
    failed:
      'El teléfono aún no dejó borrarlo. Ya no se ve, y se borra cuando se abra de nuevo la app.',
    everything: 'Todo',
    everythingMeans:
      'Todo el registro de este teléfono: grupo, ejercicios, entrenamientos. Mantener el botón dos segundos.',
    eraseEverything: 'Borrar todo',
    notEverything: 'El teléfono no dejó borrar el registro. Intentarlo otra vez.',
    cancel: 'Cancelar',
  },
  practiceOf: (date) => `entrenamiento del ${date}`,
};
