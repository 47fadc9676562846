import type { DeskWords } from './desk-words.ts';
import { at, formats } from './format.ts';

const { number, one, span, count, decimalSign, list, weekday } = formats('es');

/** What screens away from the court say: settings, the squad, the week. */
export const desk: DeskWords = {
  settings: {
    title: 'Ajustes',
    squad: 'El grupo',
    drills: 'Escribir un ejercicio propio',
    looks: 'En este teléfono',
    language: 'Idioma',
    languageOfPhone: 'como el teléfono',
    theme: 'Claro u oscuro',
    themes: { phone: 'como el teléfono', light: 'claro, para el sol', dark: 'oscuro' },
    initials: 'Iniciales en vez de apodos en todo lo que sale de este teléfono',
    initialsMean: 'En las tablas, tarjetas y páginas que se exportan o comparten.',
    atCourt: 'En la cancha',
    sound: 'Sonido',
    sounds: { off: 'sin sonido', quiet: 'bajo', loud: 'alto' },
    soundMeans:
      'Al empezar, a los 30 segundos, en los cinco últimos y al final. Algunos teléfonos callan mientras están en silencio; la pantalla muestra todas las señales en cualquier caso.',
    tryIt: 'Escucharlo',
    click: 'Un clic suave en cada anotación',
    sayPairs: 'Anunciar las siguientes parejas',
    noVoice:
      'Este teléfono no tiene una voz propia en este idioma que pueda anunciar las siguientes parejas.',
    hand: 'El pulgar que cuenta',
    hands: { right: 'derecho', left: 'izquierdo' },
    keys: 'Contar con teclas',
    keysMean:
      'Para un teclado o un mando: de 1 a 9 cuentan en las casillas por su orden, de A a L para la pareja de esa letra; con Mayúsculas se quita la última serie. La barra espaciadora empieza, hace pausa y sigue.',
    homeScreen: 'En la pantalla de inicio',
    installed: 'La app está en la pantalla de inicio. Desde ahí se abre sin conexión.',
    whyInstall:
      'Desde la pantalla de inicio la app se abre como cualquier otra, a pantalla completa y sin conexión. Lo mejor es ponerla antes del primer entrenamiento.',
    install: 'Ponerla en la pantalla de inicio',
    apple: 'iPhone y iPad',
    appleHow:
      'Abrir esta página en Safari, tocar Compartir (el cuadrado con una flecha) y luego «Añadir a pantalla de inicio» o «Agregar a Inicio».',
    appleWhy:
      'Safari borra los datos de una página que no se abre en siete días; una app de la pantalla de inicio se deja en paz. Allí empieza con un registro propio, vacío.',
    android: 'Android',
    androidHow:
      'Abrir el menú del navegador (los tres puntos) y luego «Instalar aplicación», «Añadir a pantalla de inicio» o «Agregar a la pantalla principal».',
    keeping: 'Los datos',
    promises: [
      'Cada recuento se queda en este teléfono. No se envía nada a nadie; algo sale solo cuando alguien lo comparte.',
      'No hay cuenta de usuario ni se mide lo que se hace, y nada se carga de otro sitio que aquel de donde vino la app.',
      'Los jugadores son apodos, y nunca se clasifican.',
    ],
    space: 'Si al teléfono le falta espacio',
    kept: {
      yes: 'Este navegador ha prometido conservar el registro, también cuando falte espacio.',
      no: 'Este navegador no ha prometido conservar el registro cuando falte espacio. Es normal: casi todos lo prometen solo a una app que está en la pantalla de inicio o se abre a menudo. No se pierde nada mientras haya sitio.',
      unknown: 'Este navegador no dice si conserva el registro cuando falta espacio.',
    },
    askToPersist: 'Pedirle que lo prometa',
    demo: 'La demo',
    demoMeans:
      'Un grupo inventado con una temporada de doce semanas, para explorar. Se guarda aparte: el registro propio queda como está.',
    loadDemo: 'Cargar la demo',
    backup: 'Copia de seguridad',
    backupMeans:
      'Un archivo con todas las entradas de este registro, para otro teléfono o por si este se pierde. Contiene los apodos.',
    makeBackup: 'Hacer una copia de seguridad',
    making: 'Se está haciendo la copia…',
    made: (entries, kilobytes) =>
      `Copia lista: ${count(entries, 'entrada', 'entradas')}, ${number.format(kilobytes)} kB.`,
    handBackup: 'Compartir la copia',
    notMade: 'El teléfono no dejó leer el registro. Probar otra vez.',
    withoutHurt: 'Lo que ya no se puede leer no va en ella.',
    takeIn: 'Importar un archivo de esta app',
    takeInMeans:
      'Una copia de seguridad, o un entrenamiento de otro teléfono. Lo que hay aquí se queda: solo se añade lo nuevo.',
    takingIn: 'Se está leyendo el archivo…',
    refused: (line, why) => `No se importó nada. Línea ${number.format(line)}: ${why}`,
    refusals: {
      heading: () => 'este archivo no es de esta app.',
      version: () =>
        'este archivo lo hizo una versión más nueva de la app. Actualizar antes la app.',
      long: () => 'la línea es larguísima.',
      json: () => 'la línea no se puede leer.',
      reserved: (field) => `el campo «${field}» tiene un nombre que ninguna entrada puede usar.`,
      deep: (field) => `hay demasiado dentro de «${field}».`,
      entry: (field) => `el campo «${field}» falta o está mal.`,
      many: () => 'el archivo tiene más entradas que cualquier registro.',
      cut: () => 'el archivo se cortó aquí.',
      count: () => 'al archivo le faltan algunas de sus entradas.',
      after: () => 'hay algo después del final del archivo.',
      large: () => 'el archivo es más grande que cualquier registro.',
      packing: () =>
        'el archivo no se descomprime; está dañado, o este teléfono no puede descomprimirlo.',
      letters: () => 'a partir de aquí no es texto.',
      slow: () => 'el teléfono tardó demasiado con él.',
      unread: () => 'el teléfono no dejó leer el archivo.',
    },
    damaged: 'Entradas dañadas',
    damagedMeans:
      'Ya no se pueden leer. Compartirlas con alguien que quizá las repare, o importar una copia de seguridad; después se pueden quitar.',
    handDamaged: 'Compartir las entradas dañadas',
    removeDamaged: 'Quitarlas de este teléfono',
    removeHanded: (records) =>
      `Quitar ${count(records, 'entrada compartida', 'entradas compartidas')}`,
    removeSure: '¿Quitarlas ya?',
    notHanded: (records) =>
      `No se compartió nada: ${count(records, 'entrada se pierde', 'entradas se pierden')} para siempre.`,
    damagedSince: (records) =>
      `${count(records, 'entrada encontrada o cambiada', 'entradas encontradas o cambiadas')} desde entonces: ni compartida ni quitada.`,
    removed: (records) => `${count(records, 'entrada quitada', 'entradas quitadas')}.`,
    stayed: (records) =>
      `${count(records, 'entrada cambió', 'entradas cambiaron')} desde entonces y no se quitó nada de eso: compartir otra vez lo dañado.`,
    notRemoved: 'El teléfono no dejó quitarlas. Se puede probar otra vez.',
    about: 'Esta app',
    version: (version) => `Rally Ledger ${version}`,
  },
  nowhere: {
    title: 'Aquí no hay nada',
    means:
      'Esta dirección no lleva a nada en esta versión de la app. El recuento sigue donde estaba.',
  },
  squad: {
    title: 'Grupo',
    players: (players) => count(players, 'jugador', 'jugadores'),
    nickname: 'Apodo',
    nicknamesOnly: 'Solo apodos: sin fechas de nacimiento, fotos ni contactos.',
    add: 'Añadir',
    added: (name) => `${name} ya está. ¿Quién más?`,
    oneMore: 'Una pareja es de dos: añadir a otro.',
    toToday: 'Entrenamiento de hoy',
    list: 'Jugadores',
    resting: 'Inactivos',
    restingMeans: 'Conservan todos sus recuentos, y Hoy no pregunta por ellos.',
    level: 'Nivel, de 1 a 10',
    levelIs: (level) => `nivel ${one.format(level)}`,
    levelMeans:
      'El nivel y la mano pueden quedar abiertos. El nivel lo estima el entrenador, 1 para quien empieza; solo se usan las diferencias entre jugadores.',
    hand: 'Mano',
    hands: { right: 'derecha', left: 'izquierda' },
    handIs: { right: 'mano derecha', left: 'mano izquierda' },
    notGiven: 'sin indicar',
    save: 'Guardar',
    rest: 'Dejar inactivo',
    restMeans:
      'Un jugador inactivo conserva todos sus recuentos y no se pregunta por él. Puede volver cuando sea.',
    bringBack: 'Activar',
    nameFaults: {
      empty: () => 'Escribir antes un apodo.',
      long: () => 'Demasiado largo: un apodo tiene hasta 40 letras.',
      hidden: () => 'Contiene un carácter que no se ve. Escribirlo a mano.',
      taken: (name) =>
        `${name} ya está en el grupo, quizá inactivo. Añadir una letra para distinguirlos.`,
    },
    fromList: 'Una lista entera de una vez',
    listShape: 'Un apodo por línea. Para niveles y manos, poner un encabezado arriba:',
    listExample: 'nombre,nivel,mano\nPip,6,derecha\nJuno,,izquierda',
    pasted: 'Pegar la lista aquí',
    takePasted: 'Añadir estos nombres',
    chooseFile: 'O elegir un archivo (CSV o texto)',
    addedMany: (players) => `${count(players, 'jugador añadido', 'jugadores añadidos')}.`,
    fileTooLarge: 'Ese archivo es demasiado grande para una lista de nombres. No se añadió nada.',
    fileUnread: 'El teléfono no pudo leer ese archivo. No se añadió nada.',
    guessed:
      'El archivo no dice cómo están escritas sus letras. Leídos como los escribe una hoja de cálculo antigua, estos son los nombres:',
    rightLetters: 'Tomar estos nombres tal cual',
    noLetters: 'Las letras no son correctas',
    wrongLetters: 'No se tomó nada. Guardar el archivo como UTF-8, o pegar la lista arriba.',
    nothingTaken: 'No se añadió nada. Corregir esto y probar otra vez:',
    row: (row) => `Fila ${number.format(row)}:`,
    rosterFaults: {
      'no-name': () => 'falta el nombre.',
      'long-name': (value) => `«${value}…» pasa de 40 letras.`,
      'hidden-character': (value) => `«${value}» contiene un carácter que no se ve.`,
      taken: (value) => `${value} ya está en el grupo.`,
      twice: (value) => `«${value}» está dos veces en la lista.`,
      level: (value) => `«${value}» no es un nivel; dar de 1 a 10, o dejarlo vacío.`,
      hand: (value) => `«${value}» no es una mano; dar derecha o izquierda, o dejarlo vacío.`,
      ragged: (value) =>
        `«${value}» no tiene tantas celdas como el encabezado. Un nombre con coma va entre comillas.`,
      quote: () => 'unas comillas se abren y no se cierran, o se cierran antes de tiempo.',
      'no-header-name': (value) =>
        `ningún encabezado dice «nombre»; dice «${value}». Una columna debe llamarse «nombre».`,
      'too-many': (value) => `la lista llega a ${value} filas; el máximo son 200.`,
      encoding: () => 'estas letras no las puede leer la app. Guardar el archivo como UTF-8.',
      empty: () => 'no contiene ningún nombre.',
    },
  },
  practice: {
    title: (date) => `Entrenamiento del ${date}`,
    notHere: 'Este entrenamiento no está en este teléfono.',
    toWeek: 'A su semana',
    means: 'Cada corrección es una entrada más: semana, jugadores y análisis la siguen al momento.',
    there: 'Quién estuvo',
    rounds: 'Rondas',
    noRounds: 'No se jugó ninguna ronda.',
    settled: 'revisada',
    toSettle: 'por revisar',
    struckRound: 'anulada',
    struck: 'Anulado: ninguna cifra cuenta este entrenamiento.',
    strike: 'Anular este entrenamiento',
    restore: 'Volver a contar este entrenamiento',
  },
  week: {
    title: (week) => `Semana ${number.format(week)}`,
    span: (first, last) => span.formatRange(at(first), at(last)),
    weeks: 'Semanas',
    before: 'La semana anterior',
    after: 'La semana siguiente',
    now: 'Esta semana',
    empty: 'En esta semana no hubo ningún entrenamiento.',
    emptyNow: 'Todavía no hay entrenamientos esta semana. Se empieza en Hoy, con quién está.',
    toLast: 'Ir a la semana del último entrenamiento',
    dayAtOnce: (there, away) =>
      away.length === 0
        ? 'Estuvieron todos.'
        : `${count(there, 'presente', 'presentes')}. Faltaron: ${list.format(away)}.`,
    day: (date) => weekday.format(at(date)),
    workAtOnce: 'Bolas, y la semana habitual',
    playersAtOnce: 'Días, bolas y su semana habitual',
    thereOf: (there, days) => `presente ${number.format(there)} de ${count(days, 'día', 'días')}`,
    ballsBeside: (balls, usual) =>
      usual === undefined
        ? count(balls, 'bola', 'bolas')
        : `${count(balls, 'bola', 'bolas')}, lo habitual ${number.format(usual)}`,
    everything: 'Todo lo de esta semana',
    there: 'Quién estuvo',
    thereNames: (players, names) => `${count(players, 'jugador', 'jugadores')}: ${names}.`,
    nobody: 'No se marcó a nadie como presente.',
    away: (names) => `No estuvieron esta semana: ${names}.`,
    putRight: 'Corregir',
    putRightOf: (date, practice) => `Corregir el entrenamiento ${practice} del ${date}`,
    byPlayer: 'Por jugador',
    allTouches: 'Todos los golpes',
    byPlayerNote:
      'Una serie cuenta para todos los que jugaron en ella. Los golpes son los de series completas; todos los golpes incluyen también las series sin terminar, hasta donde lo dice el reloj; los minutos son los de cada jugador en el reloj de la ronda.',
    byDrill: 'Por ejercicio',
    unheard: (counts) =>
      `${count(counts, 'recuento no oído', 'recuentos no oídos')}: en los minutos y en ninguna otra suma.`,
    byDrillNote: 'Aquí la serie de una pareja cuenta una vez, igual que el reloj de una ronda.',
    noRounds: 'No se jugó ninguna ronda.',
    player: 'Jugador',
    drill: 'Ejercicio',
    days: 'Días',
    rounds: 'Rondas',
    sets: 'Series',
    touches: 'Golpes',
    minutes: 'Min',
    inMinutes: (seconds) => one.format(seconds / 60),
    export: 'Compartir la semana',
    exportNote: 'Una fila por jugador y ronda, para cualquier hoja de cálculo.',
    called: 'Los jugadores aparecen con',
    nicknames: 'Apodos',
    initials: 'Iniciales',
    decimalSign,
    decimals: 'Los números se escriben',
    decimalComma: 'con coma, 1,5, y punto y coma entre las columnas',
    decimalPoint: 'con punto, 1.5, y comas entre las columnas',
    handOver: 'Compartir la semana como tabla (CSV)',
    print: 'Imprimir esta semana',
    shared: 'Compartida.',
    saved: (file) => `Guardada como ${file}.`,
    asText: '¿No hay archivo? Mostrarla como texto',
    text: 'No se compartió ningún archivo. La tabla se puede copiar de aquí:',
    textLabel: 'La semana como tabla',
    copy: 'Copiar',
    copied: 'Copiada.',
    marked: 'La tabla está seleccionada: copiarla con el menú del propio teléfono.',
  },
  help: {
    title: 'Ayuda',
    steps: 'Un entrenamiento en siete pasos',
    here: 'Tocar a todos los que están. Si alguien llega tarde o se va antes, basta otro toque, cuando sea.',
    block:
      'Elegir los ejercicios, o usar el bloque que se propone. La duración prevista se ve al momento.',
    pairs:
      'Mirar las parejas. Dos toques intercambian a dos jugadores; si sobra uno, se forma un trío que se turna.',
    card: 'Leer la ficha a los jugadores: dónde empieza cada uno, la consigna, qué completa una serie. Y Empezar.',
    count:
      'Tocar la casilla de una pareja cada vez que completa una serie: una unidad entera del ejercicio, por ejemplo diez seguidas. Con cualquier dedo, y varios a la vez.',
    settle:
      'Tras la bocina, corregir el recuento y decir hasta dónde llegó cada serie sin terminar.',
    after:
      'Pasar el teléfono a un jugador para que vea sus recuentos y mantener pulsado «Para el entrenador» dos segundos para recuperarlo; compartir la semana como tabla.',
    tile: 'Una casilla',
    tileMeans: 'El número son las series hasta ahora. La esquina con −1 quita la última.',
    waits: 'La anotación se ve, pero todavía no está guardada.',
    saved:
      'Todas las anotaciones de esta casilla están guardadas: aguantan un fallo o un reinicio del teléfono.',
    late: 'Tocada después de la bocina: solo cuenta si se confirma.',
    doubtful:
      'Tocada antes de lo que se tarda en una serie: cuenta, salvo que se toque «No cuenta».',
    court: 'La ficha',
    cardMeans:
      'Los discos 1 y 2 son donde empiezan los dos roles; los aros de trazos, adonde vuelven; los triángulos, conos planos; la zona rayada, el objetivo.',
    keys: 'Las teclas también cuentan: de 1 a 9, o de A a L, para las parejas; Mayúsculas quita; la barra espaciadora empieza y hace pausa.',
  },
};
