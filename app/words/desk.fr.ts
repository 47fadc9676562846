import type { DeskWords } from './desk-words.ts';
import { at, formats } from './format.ts';

const { number, one, span, count, decimalSign, list, weekday } = formats('fr');

/** What screens away from the court say: settings, the squad, the week. */
export const desk: DeskWords = {
  settings: {
    title: 'Réglages',
    squad: 'Le groupe',
    drills: 'Écrire un exercice à soi',
    looks: 'Sur ce téléphone',
    language: 'Langue',
    languageOfPhone: 'comme le téléphone',
    theme: 'Clair ou sombre',
    themes: { phone: 'comme le téléphone', light: 'clair, pour le soleil', dark: 'sombre' },
    initials: 'Des initiales au lieu des surnoms dans tout ce qui sort de ce téléphone',
    initialsMean: 'Pour les tableaux, fiches et pages que vous exportez ou partagez.',
    atCourt: 'Au bord du court',
    sound: 'Son',
    sounds: { off: 'aucun', quiet: 'doux', loud: 'fort' },
    soundMeans:
      'Au départ, à 30 secondes, aux cinq dernières et à la fin. Certains téléphones restent muets en mode silencieux ; l’écran montre chaque signal de toute façon.',
    tryIt: 'Faire entendre',
    click: 'Un clic discret à chaque marque',
    sayPairs: 'Annoncer les prochaines paires',
    noVoice:
      'Ce téléphone n’a pas de voix à lui dans cette langue pour annoncer les prochaines paires.',
    hand: 'Le pouce qui compte',
    hands: { right: 'droit', left: 'gauche' },
    keys: 'Compter au clavier',
    keysMean:
      'Pour un clavier ou une télécommande : 1 à 9 comptent sur les cases dans l’ordre, A à L pour la paire de cette lettre ; avec Maj, la dernière série est retirée. Espace lance, met en pause et reprend.',
    homeScreen: 'Sur l’écran d’accueil',
    installed: 'L’appli est sur votre écran d’accueil. Elle s’y ouvre sans réseau.',
    whyInstall:
      'Depuis l’écran d’accueil, l’appli s’ouvre comme toute autre, en grand et sans réseau. Le mieux est de l’y mettre avant la première séance.',
    install: 'La mettre sur l’écran d’accueil',
    apple: 'iPhone et iPad',
    appleHow:
      'Ouvrez cette page dans Safari, touchez Partager (le carré avec une flèche), puis « Sur l’écran d’accueil ».',
    appleWhy:
      'Safari efface les données d’une page qui n’a pas été ouverte pendant sept jours ; une appli sur l’écran d’accueil n’est pas concernée. Elle y commence avec un carnet vide à elle.',
    android: 'Android',
    androidHow:
      'Ouvrez le menu du navigateur (les trois points), puis « Installer l’application » ou « Ajouter à l’écran d’accueil ».',
    keeping: 'Vos données',
    promises: [
      'Chaque marque reste sur ce téléphone. Rien n’est envoyé à personne ; rien n’en sort que ce que vous partagez.',
      'Il n’y a ni compte ni mesure de ce que vous faites, et rien n’est cherché ailleurs que là d’où vient l’appli.',
      'Les joueurs n’apparaissent que sous un surnom, et ne sont jamais classés.',
    ],
    space: 'Quand le téléphone manque de place',
    kept: {
      yes: 'Ce navigateur a promis de garder le carnet, même quand la place manque.',
      no: 'Ce navigateur n’a pas promis de garder le carnet quand la place manque. C’est normal : la plupart ne le promettent qu’à une appli mise sur l’écran d’accueil ou souvent ouverte. Rien ne se perd tant qu’il y a de la place.',
      unknown: 'Ce navigateur ne dit pas s’il garde le carnet quand la place manque.',
    },
    askToPersist: 'Lui demander de promettre',
    demo: 'La démo',
    demoMeans:
      'Un groupe inventé avec une saison de douze semaines, pour découvrir. Elle est tenue à part : votre propre carnet reste tel quel.',
    loadDemo: 'Charger la démo',
    backup: 'Sauvegarde',
    backupMeans:
      'Un seul fichier avec tout ce carnet, pour un autre téléphone ou si celui-ci se perd. Il contient les surnoms.',
    makeBackup: 'Faire une sauvegarde',
    making: 'La sauvegarde est en cours…',
    made: (entries, kilobytes) =>
      `Prêt : ${count(entries, 'entrée', 'entrées')}, ${number.format(kilobytes)}\u00a0ko.`,
    handBackup: 'Partager la sauvegarde',
    notMade: 'Le téléphone n’a pas laissé lire le carnet. Réessayez.',
    withoutHurt: 'Ce qui ne peut plus être lu n’y est pas.',
    takeIn: 'Importer un fichier de cette appli',
    takeInMeans:
      'Une sauvegarde, ou une séance d’un autre téléphone. Ce qui est ici reste : seul le nouveau s’ajoute.',
    takingIn: 'Le fichier est en cours de lecture…',
    refused: (line, why) => `Rien n’a été importé. Ligne ${number.format(line)} : ${why}`,
    refusals: {
      heading: () => 'ce fichier ne vient pas de cette appli.',
      version: () =>
        'une version plus récente de l’appli a fait ce fichier. Mettez d’abord l’appli à jour.',
      long: () => 'la ligne est beaucoup trop longue.',
      json: () => 'la ligne ne peut pas être lue.',
      reserved: (field) => `le champ « ${field} » porte un nom qu’aucune entrée ne peut prendre.`,
      deep: (field) => `il y a trop de choses dans « ${field} ».`,
      entry: (field) => `le champ « ${field} » manque ou est faux.`,
      many: () => 'le fichier a plus d’entrées qu’aucun carnet.',
      cut: () => 'le fichier est coupé ici.',
      count: () => 'le fichier a perdu une partie de ses entrées.',
      after: () => 'quelque chose suit la fin du fichier.',
      large: () => 'le fichier est plus gros qu’aucun carnet.',
      packing: () =>
        'le fichier ne se décompresse pas ; il est abîmé, ou ce téléphone ne sait pas le faire.',
      letters: () => 'à partir d’ici, ce n’est plus du texte.',
      slow: () => 'le téléphone a mis trop longtemps.',
      unread: () => 'le téléphone n’a pas laissé lire le fichier.',
    },
    damaged: 'Enregistrements abîmés',
    damagedMeans:
      'Ils ne peuvent plus être lus. Partagez-les avec quelqu’un qui saura peut-être les réparer, ou importez une sauvegarde ; ensuite, ils peuvent être retirés.',
    handDamaged: 'Partager ce qui est abîmé',
    removeDamaged: 'Retirer de ce téléphone',
    removeHanded: (records) =>
      `Retirer ${count(records, 'enregistrement partagé', 'enregistrements partagés')}`,
    removeSure: 'Oui, retirer ?',
    notHanded: (records) =>
      `Rien n’a été partagé : ${count(records, 'enregistrement sera perdu', 'enregistrements seront perdus')} pour de bon.`,
    damagedSince: (records) =>
      `${count(records, 'enregistrement trouvé ou changé', 'enregistrements trouvés ou changés')} depuis : ni partagé, ni retiré.`,
    removed: (records) => `${count(records, 'enregistrement retiré', 'enregistrements retirés')}.`,
    stayed: (records) =>
      `${count(records, 'enregistrement a changé', 'enregistrements ont changé')} depuis, et rien n’en a été retiré : partager à nouveau ce qui est abîmé.`,
    notRemoved: 'Le téléphone ne les a pas laissé retirer. Réessayer.',
    about: 'Cette appli',
    version: (version) => `Rally Ledger ${version}`,
  },
  nowhere: {
    title: 'Il n’y a rien ici',
    means:
      'Cette adresse ne mène à rien dans cette version de l’appli. Vos résultats sont là où ils étaient.',
  },
  squad: {
    title: 'Groupe',
    players: (players) => count(players, 'joueur', 'joueurs'),
    nickname: 'Surnom',
    nicknamesOnly: 'Des surnoms seulement : ni date de naissance, ni photo, ni coordonnées.',
    add: 'Ajouter',
    added: (name) => `${name} est dans le groupe. Au suivant ?`,
    oneMore: 'Il faut être deux pour une paire : ajouter encore un nom.',
    toToday: 'Passer à la séance du jour',
    list: 'Joueurs',
    resting: 'Inactifs',
    restingMeans: 'Ils gardent tous leurs résultats, et Aujourd’hui ne les propose plus.',
    level: 'Niveau, de 1 à 10',
    levelIs: (level) => `niveau ${one.format(level)}`,
    levelMeans:
      'Niveau et main peuvent rester vides. Le niveau est votre propre avis, 1 pour qui débute ; seules comptent les différences entre joueurs.',
    hand: 'Main',
    hands: { right: 'droite', left: 'gauche' },
    handIs: { right: 'main droite', left: 'main gauche' },
    notGiven: 'non précisé',
    save: 'Enregistrer',
    rest: 'Rendre inactif',
    restMeans:
      'Inactif, un joueur garde tous ses résultats et n’est plus proposé. Retour possible à tout moment.',
    bringBack: 'Rendre actif',
    nameFaults: {
      empty: () => 'Écrire d’abord un surnom.',
      long: () => 'C’est trop long : un surnom a 40 lettres au plus.',
      hidden: () => 'Il y a là un caractère invisible. Le taper plutôt à la main.',
      taken: (name) =>
        `${name} est déjà dans le groupe, peut-être inactif. Ajouter une lettre pour les distinguer.`,
    },
    fromList: 'Toute une liste d’un coup',
    listShape: 'Un surnom par ligne. Pour les niveaux et les mains, mettre un titre en haut :',
    listExample: 'nom,niveau,main\nPip,6,droite\nJuno,,gauche',
    pasted: 'Coller la liste ici',
    takePasted: 'Prendre ces noms',
    chooseFile: 'Ou choisir un fichier (CSV ou texte)',
    addedMany: (players) => `${count(players, 'joueur ajouté', 'joueurs ajoutés')}.`,
    fileTooLarge: 'Ce fichier est trop gros pour une liste de noms. Rien n’a été pris.',
    fileUnread: 'Le téléphone n’a pas pu lire ce fichier. Rien n’a été pris.',
    guessed:
      'Le fichier ne dit pas comment ses lettres sont écrites. Lus comme un ancien tableur les écrit, voici les noms :',
    rightLetters: 'Prendre ces noms tels quels',
    noLetters: 'Les lettres sont fausses',
    wrongLetters:
      'Rien n’a été pris. Enregistrer le fichier en UTF-8, ou coller la liste ci-dessus.',
    nothingTaken: 'Rien n’a été pris. Corriger ceci et réessayer :',
    row: (row) => `Ligne ${number.format(row)} :`,
    rosterFaults: {
      'no-name': () => 'le nom manque.',
      'long-name': (value) => `« ${value}… » dépasse 40 lettres.`,
      'hidden-character': (value) => `« ${value} » contient un caractère invisible.`,
      taken: (value) => `${value} est déjà dans le groupe.`,
      twice: (value) => `« ${value} » est deux fois dans la liste.`,
      level: (value) => `« ${value} » n’est pas un niveau ; donner 1 à 10, ou laisser vide.`,
      hand: (value) =>
        `« ${value} » n’est pas une main ; donner droite ou gauche, ou laisser vide.`,
      ragged: (value) =>
        `« ${value} » n’a pas autant de cases que le titre. Un nom avec une virgule demande des guillemets.`,
      quote: () => 'un guillemet est ouvert sans être fermé, ou fermé trop tôt.',
      'no-header-name': (value) =>
        `aucun titre ne dit « nom » ; on y lit « ${value} ». Appeler une colonne « nom ».`,
      'too-many': (value) => `la liste va jusqu’à ${value} lignes ; 200 au plus.`,
      encoding: () => 'l’appli ne peut pas lire ces lettres. Enregistrer le fichier en UTF-8.',
      empty: () => 'il ne contient aucun nom.',
    },
  },
  practice: {
    title: (date) => `Séance du ${date}`,
    notHere: 'Cette séance n’est pas sur ce téléphone.',
    toWeek: 'Vers sa semaine',
    means: 'Chaque correction est une entrée de plus : semaine, joueurs et bilan suivent aussitôt.',
    there: 'Qui était là',
    rounds: 'Passages',
    noRounds: 'Aucun passage n’a été joué.',
    settled: 'vérifié',
    toSettle: 'à vérifier',
    struckRound: 'ne compte pas',
    struck: 'Retirée : cette séance ne compte dans aucun chiffre.',
    strike: 'Ne pas compter cette séance',
    restore: 'Compter de nouveau cette séance',
  },
  week: {
    title: (week) => `Semaine ${number.format(week)}`,
    span: (first, last) => span.formatRange(at(first), at(last)),
    weeks: 'Semaines',
    before: 'La semaine d’avant',
    after: 'La semaine d’après',
    now: 'Cette semaine',
    empty: 'Aucune séance n’a eu lieu cette semaine-là.',
    emptyNow: 'Pas encore de séance cette semaine. Elle commence dans Aujourd’hui, par qui est là.',
    toLast: 'Vers la semaine de la dernière séance',
    dayAtOnce: (there, away) =>
      away.length === 0
        ? 'Tout le monde était là.'
        : `${count(there, 'présent', 'présents')}. Absents : ${list.format(away)}.`,
    day: (date) => weekday.format(at(date)),
    workAtOnce: 'Balles, et la semaine d’habitude',
    playersAtOnce: 'Jours, balles, semaine d’habitude',
    thereOf: (there, days) => `présent ${number.format(there)} sur ${count(days, 'jour', 'jours')}`,
    ballsBeside: (balls, usual) =>
      usual === undefined
        ? count(balls, 'balle', 'balles')
        : `${count(balls, 'balle', 'balles')}, d’habitude ${number.format(usual)}`,
    everything: 'Tout de cette semaine',
    there: 'Qui était là',
    thereNames: (players, names) => `${count(players, 'joueur', 'joueurs')} : ${names}.`,
    nobody: 'Personne n’a été noté présent.',
    away: (names) => `Pas là cette semaine : ${names}.`,
    putRight: 'Corriger',
    putRightOf: (date, practice) => `Corriger la séance ${practice} du ${date}`,
    byPlayer: 'Par joueur',
    allTouches: 'Toutes les frappes',
    byPlayerNote:
      'Une série compte pour tous ceux qui l’ont jouée. Les frappes sont celles des séries complètes ; toutes les frappes comprennent aussi les inachevées, autant que le chrono le dit ; les minutes sont le chrono propre du joueur.',
    byDrill: 'Par exercice',
    unheard: (counts) =>
      `${count(counts, 'décompte non entendu', 'décomptes non entendus')} : dans les minutes, et dans aucune autre somme.`,
    byDrillNote: 'Ici, une série d’une paire compte une fois, et le chrono d’un passage aussi.',
    noRounds: 'Aucun passage n’a été joué.',
    player: 'Joueur',
    drill: 'Exercice',
    days: 'Jours',
    rounds: 'Passages',
    sets: 'Séries',
    touches: 'Frappes',
    minutes: 'Min',
    inMinutes: (seconds) => one.format(seconds / 60),
    export: 'Partager la semaine',
    exportNote: 'Une ligne par joueur et par passage, pour n’importe quel tableur.',
    called: 'Les joueurs y figurent par',
    nicknames: 'Surnoms',
    initials: 'Initiales',
    decimalSign,
    decimals: 'Les nombres s’écrivent',
    decimalComma: 'avec une virgule, 1,5, et des points-virgules entre les colonnes',
    decimalPoint: 'avec un point, 1.5, et des virgules entre les colonnes',
    handOver: 'Partager la semaine en tableau (CSV)',
    print: 'Imprimer cette semaine',
    shared: 'Partagé.',
    saved: (file) => `Enregistré sous ${file}.`,
    asText: 'Pas de fichier ? L’afficher en texte',
    text: 'Aucun fichier n’a été partagé. Copier le tableau d’ici :',
    textLabel: 'La semaine en tableau',
    copy: 'Copier',
    copied: 'Copié.',
    marked: 'Le tableau est sélectionné : le copier par le menu du téléphone.',
  },
  help: {
    title: 'Aide',
    steps: 'Une séance en sept étapes',
    here: 'Toucher le nom de chaque présent. Qui arrive plus tard ou part plus tôt : un toucher de plus, à tout moment.',
    block: 'Choisir les exercices, ou prendre le bloc proposé. La durée prévue s’affiche aussitôt.',
    pairs:
      'Regarder les paires. Toucher deux noms les échange ; à nombre impair, un trio se relaie.',
    card: 'Lire la fiche aux joueurs : d’où part chacun, la consigne, ce qui fait une série. Puis Lancer.',
    count:
      'Toucher la case d’une paire à chaque série complète : une unité entière de l’exercice, par exemple dix d’affilée. N’importe quel doigt, plusieurs à la fois.',
    settle:
      'Après le signal, vérifier le décompte et dire jusqu’où était allée chaque série inachevée.',
    after:
      'Passer le téléphone à un joueur pour qu’il voie ses résultats, puis tenir « Pour l’entraîneur » appuyé deux secondes pour le reprendre ; partager la semaine en tableau.',
    tile: 'Une case',
    tileMeans: 'Le nombre est celui des séries. Le coin −1 retire la dernière.',
    waits: 'La marque est affichée, mais pas encore enregistrée.',
    saved:
      'Toutes les marques de la case sont enregistrées : elles survivent à une panne ou à un redémarrage.',
    late: 'Touché après le signal : ne compte que si vous le dites.',
    doubtful:
      'Touché plus tôt qu’une série n’est possible : compte, sauf si vous touchez « Ne compte pas ».',
    court: 'La fiche',
    cardMeans:
      'Les disques 1 et 2 montrent d’où partent les deux rôles, les anneaux en pointillés où ils se replacent, les triangles les plots, la zone hachurée la cible.',
    keys: 'Le clavier compte aussi : 1 à 9, ou A à L, pour les paires ; Maj retire ; Espace lance et met en pause.',
  },
};
