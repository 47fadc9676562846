import { card } from './card.fr.ts';
import { desk } from './desk.fr.ts';
import { drills } from './drills.fr.ts';
import { figures } from './figures.fr.ts';
import { at, formats } from './format.ts';
import { handover } from './handover.fr.ts';
import type { Language } from './languages.ts';
import { look } from './look.fr.ts';
import { planning } from './planning.fr.ts';
import { quality } from './quality.fr.ts';
import type { Words } from './words.ts';

/*
 * French, as a coach of juniors says it. Buttons and steps are infinitives, sentences to the coach
 * say « vous »; cues and what a player reads say « tu », as on the court. Narrow no-break spaces
 * stand before : ; ! ? and within guillemets.
 *
 * set: série (the unit that is counted; a set of a match is never meant) · touch: frappe ·
 * mark: marque · shot: coup · miss: faute · in a row: d’affilée ·
 * in total: au total · sequence: enchaînement · on target: dans la cible · round: passage ·
 * block: bloc · drill: exercice · pair: paire · trio: trio · practice: séance · squad: groupe ·
 * court: court · live clock: chrono · settle: vérifier · usual: d’habitude · marker: plot ·
 * cue: consigne · overhead: smash · groundstroke: coup de fond de court · ledger: carnet ·
 * backup: sauvegarde · wall view: affichage mural · overdue: à retravailler · review: bilan
 */

const { number, one, two, day, list, isOne, count } = formats('fr');

export const fr: Words = {
  language: 'fr',
  direction: 'ltr',
  drills,
  unknownPlayer: 'joueur inconnu',
  number: (n) => number.format(n),
  decimal: (n) => one.format(n),
  lengths: {
    metres: (m) => `${two.format(m)}\u00a0m`,
    feet: (feet) => `${one.format(feet)}\u00a0${isOne(feet) ? 'pied' : 'pieds'}`,
  },
  hundredths: (n) => two.format(n),
  date: (date) => day.format(at(date)),
  list: (items) => list.format(items),
  named: (name, said) => `${name} : ${said}`,
  clock: (seconds) => {
    const whole = Math.ceil(seconds - 1e-9);
    return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
  },
  minutes: (minutes) => `${one.format(minutes)}\u00a0min`,
  bar: {
    label: 'Parties de l’appli',
    today: 'Aujourd’hui',
    players: 'Joueurs',
    week: 'Semaine',
    settings: 'Réglages',
  },
  families: {
    groundstrokes: 'Fond de court',
    volleys: 'Volées',
    'overheads-and-lobs': 'Smashs et lobs',
    'serves-and-returns': 'Services et retours',
  },
  rules: {
    'in-a-row': 'd’affilée',
    'in-total': 'au total',
    sequence: 'enchaînement',
    'on-target': 'dans la cible',
  },
  setCounts: (rule, size) =>
    ({
      'in-a-row': `Une série : ${size} d’affilée ; une faute remet à zéro`,
      'in-total': `Une série : ${size} au total ; une faute ne remet pas à zéro`,
      sequence: `Une série : l’enchaînement complet de ${size} coups`,
      'on-target': 'Chaque balle dans la cible compte pour qui l’a frappée',
    })[rule],
  trouble: {
    full: 'Téléphone plein : les nouvelles marques ne sont pas encore enregistrées. Libérez de la place et laissez cette page ouverte ; elles le seront dès qu’il y en aura.',
    refused:
      'Ce téléphone ne laisse pas l’appli enregistrer : les nouvelles marques ne sont pas encore enregistrées. Laissez cette page ouverte. Une fenêtre privée refuse souvent ; ouvrez l’appli dans une fenêtre ordinaire.',
    slow: 'Ce téléphone n’a pas encore répondu : les nouvelles marques ne sont pas encore enregistrées. Laissez cette page ouverte ; l’appli continue de demander.',
  },
  handPractice: 'Partager cette séance par fichier',
  handed: {
    shared: 'Partagé.',
    closed: 'Rien n’a été partagé.',
    saved: (file) => `Enregistré sous ${file}.`,
    text: 'Ce téléphone ne peut ni partager ni enregistrer de fichier.',
  },
  damaged: (records, places) =>
    `${count(records, 'enregistrement ne peut plus être lu', 'enregistrements ne peuvent plus être lus')} : ${list.format(places)}. Tout le reste est là, et ce qui est abîmé est gardé tel quel ; les Réglages permettent de le partager.`,
  damagedPlaces: {
    practice: (date) => `dans la séance du ${day.format(at(date))}`,
    undated: 'dans une séance dont la date est inconnue',
    standing: 'dans le groupe ou les exercices',
  },
  newVersion: 'Une nouvelle version est sur ce téléphone.',
  takeNewVersion: 'Mettre à jour',
  demoBanner: 'Démo : un groupe inventé.',
  removeDemo: 'Retirer la démo',
  demoStates: {
    coming: 'Un groupe et sa saison sont en train d’être inventés…',
    unsaved:
      'Certaines marques ne sont pas encore enregistrées. La démo pourra être chargée dès qu’elles le seront ; laissez cette page ouverte.',
    failed:
      'La démo n’a pas pu être chargée : le téléphone a refusé de l’enregistrer, ou une partie de l’appli n’était pas encore là. Votre propre carnet n’est pas touché.',
    stays:
      'Le téléphone n’a pas laissé retirer la démo. Fermez les autres fenêtres de l’appli et réessayez.',
  },
  notLoaded:
    'Cette partie de l’appli n’a pas pu être chargée. Vos résultats sont en sûreté ; rouvrez l’appli avec du réseau.',
  back: 'Retour',
  done: 'Terminé',
  cancel: 'Annuler',
  forCoach: 'Pour l’entraîneur',
  today: {
    title: 'Aujourd’hui',
    noSquad: 'Ajoutez d’abord les joueurs du groupe : des surnoms suffisent.',
    addPlayers: 'Ajouter des joueurs',
    tryDemo: 'Découvrir avec un groupe inventé',
    takeIn: 'Importer une sauvegarde',
    here: 'Qui est là',
    hereNext: 'Toucher le nom de chaque présent.',
    allHere: 'Tout le monde est là',
    hereCount: (here, all) => `${number.format(here)} sur ${number.format(all)}`,
    onePlayer: 'Il faut être deux pour une paire : toucher un deuxième nom.',
    block: 'Bloc',
    blockNext: 'Choisir les exercices du bloc.',
    chooseDrills: 'Choisir les exercices',
    changeBlock: 'Modifier',
    rounds: (rounds) => count(rounds, 'passage', 'passages'),
    mayBeEvicted:
      'Ce téléphone peut effacer ce que garde une page après quelques jours sans visite. Mettez d’abord l’appli sur l’écran d’accueil : les Réglages disent comment.',
    usualLength: {
      short: 'plus court que les 20 à 30 minutes d’usage',
      usual: 'dans les 20 à 30 minutes d’usage',
      long: 'plus long que les 20 à 30 minutes d’usage',
    },
    pairs: 'Paires',
    turnPair: (letter) => `Inverser les rôles de la paire ${letter}`,
    turnAll: 'Inverser les rôles de toutes les paires',
    swapHint: 'Toucher deux noms pour les échanger.',
    swapWith: (name) => `Toucher le nom à échanger avec ${name}.`,
    notKept: {
      together: (a, b) => `Impossible de garder ${a} et ${b} ensemble.`,
      apart: (a, b) => `Impossible de séparer ${a} et ${b}.`,
    },
    trio: (resting) =>
      `Trois se relaient : ${resting} commence par se reposer. Après chaque série, qui a frappé en premier sort et qui se reposait entre.`,
    trioOnTarget: (resting) =>
      `Trois se relaient : ${resting} commence par se reposer. Changer à chaque tiers du passage : qui a frappé en premier sort et qui se reposait entre. Ainsi tous trois frappent autant de balles.`,
    toCourt: 'Aller sur le court',
    backToCourt: 'Retour au court',
    played: 'Passages du jour',
    toSettle: 'à vérifier',
    settled: 'vérifié',
    close: 'Clore cette séance',
    closed: 'Cette séance est close.',
    evening: 'Après la séance',
    reopen: 'La rouvrir',
    newPractice: 'Commencer une autre séance',
    stillOpen: 'Encore en suspens dans cette séance :',
    openRound: (round) => `${round} : à vérifier`,
    openMarks: (marks) =>
      count(
        marks,
        'marque tardive ou douteuse à trancher',
        'marques tardives ou douteuses à trancher',
      ),
    closeAnyway: 'Clore quand même',
    struck: 'ne compte pas',
    propose: 'Proposer un bloc',
    coverage: 'Ce qui est à retravailler',
    sheet: 'Le bloc sur papier',
    tooMany: 'L’écran du court a de la place pour vingt-quatre joueurs ; en laisser de côté.',
    roundNumber: (n) => `Passage ${number.format(n)}`,
  },
  courts: {
    howMany: 'Combien de courts avez-vous ?',
    howManyMeans:
      'Alors on sait qui joue où, et qui attend un court. Les réglages peuvent le changer.',
    so: (courts) => count(courts, 'court', 'courts'),
    wait: (pairs) => count(pairs, 'paire attend', 'paires attendent'),
    at: (court) => `Court ${number.format(court + 1)}`,
    lane: (lane, lanes) =>
      lanes === 3
        ? (['au milieu', 'à droite', 'à gauche'][lane] ?? '')
        : lanes > 2
          ? (['à droite du milieu', 'à gauche du milieu', 'tout à droite', 'tout à gauche'][lane] ??
            '')
          : (['moitié droite', 'moitié gauche'][lane] ?? ''),
    turnIn: 'Entrent ensuite',
    turnInMeans: 'Aucun court n’est libre pour ces paires à ce passage : elles attendent à côté.',
  },
  cautions: {
    title: 'Attention',
    block: [
      'Pas de balle qui traîne sur le court, plots plats, de la place entre les paires.',
      'Par forte chaleur : de l’eau et de l’ombre entre les passages.',
      'Une douleur : arrêter, et consulter un professionnel de santé.',
      'Les règles du club, de la fédération et du pays passent avant tout.',
    ],
    overhead:
      'Smashs : se mettre de profil, ne jamais courir à reculons ; pas de balle sous les pieds, personne juste derrière. Un lob trop loin en arrière ou hors de son demi-court, on le laisse tomber ; en salle, attention au plafond.',
    serve:
      'Services : seulement quand le partenaire regarde et se tient prêt ; personne ne passe devant qui sert.',
  },
  court: {
    drawn: (name) => `Le court pour ${name} ; ses emplacements sont dits plus bas.`,
    title: 'Court',
    nothing: 'Aucun passage n’est prévu. Choisir d’abord qui est là et les exercices.',
    toToday: 'Vers Aujourd’hui',
    before: 'Prochain passage',
    of: (round, rounds) => `${number.format(round)} sur ${number.format(rounds)}`,
    start: 'Lancer',
    intention: 'Intention tactique',
    cue: 'Consigne',
    counting: 'Une série',
    pause: 'Pause',
    resume: 'Reprendre',
    more: '+30 s',
    moreLabel: '+30 s : trente secondes de plus',
    stop: 'Arrêter',
    stopSure: 'Oui, arrêter ?',
    paused: 'En pause',
    over: 'Terminé',
    stopped: 'Arrêté',
    settle: 'Vérifier le décompte',
    takeBack: '−1',
    takeBackOf: (names) => `−1 : retirer la dernière série de ${names}`,
    sets: (sets) => (isOne(sets) ? 'série' : 'séries'),
    saved: 'enregistré',
    saving: 'pas encore enregistré',
    rests: (name) => `${name} se repose`,
    usual: (sets) => `d’habitude ${one.format(sets)}`,
    ahead: (sets) => `▲ d’habitude ${one.format(sets)}`,
    late: (marks) => `${number.format(marks)} après le signal`,
    doubtful: (marks) => `${number.format(marks)} à vérifier`,
    sign30: '30 secondes',
    counted: 'Comment on compte',
    ways: { tapped: 'Au fur et à mesure', called: 'Annoncé au signal' },
    callsOf: (letter) => `La paire ${letter} compte elle-même`,
    calledMeans: 'Elles comptent elles-mêmes et annoncent leur nombre après le signal.',
    someTapped: 'Touchez une paire que vous comptez vous-même.',
    allTiles: 'Toutes les cases',
    calledOnly: 'Cacher ces cases',
    notHeard: 'pas entendu',
    tooMany: (names, sets) =>
      `${names} : ${number.format(sets)}, c’est plus qu’on ne peut jouer dans ce temps. Le nombre est gardé ; touchez le nom pour le changer.`,
    turns: 'Changement de rôles à la mi-temps',
    turnNow: 'Changez !',
    strikes: {
      groundstroke: 'coups de fond de court',
      volley: 'volées',
      overhead: 'smashs',
      lob: 'lobs',
      serve: 'services',
      return: 'retours',
    },
    joins: (name, pair) => `${name} rejoint ${pair}`,
    withoutPartner: (name) =>
      `${name} n’a plus de partenaire. Touchez une paire pour en faire un trio.`,
    newName: 'Quelqu’un de nouveau : surnom',
    addName: 'Ajouter',
    nameFaulty: 'Un surnom a de 1 à 40 lettres et n’est celui de personne d’autre.',
    here: 'Qui est là',
    hereLater:
      'Ce passage continue avec les paires du début ; le changement vaut à partir du suivant.',
    tempoCheck: 'Mesurer la cadence',
    blockDone: 'Le bloc est fini',
    blockDoneNext: 'Montrer aux joueurs leurs résultats, ou clore la séance.',
    players: 'Les joueurs et leurs résultats',
    left: 'restant',
    otherScreens: 'Autres écrans',
    wall: 'Affichage mural',
    wallMeans:
      'Chrono et décompte pour un téléviseur ou une tablette au bord du court. Il s’ouvre dans sa propre fenêtre et suit celle-ci.',
    pairScreenMeans:
      'L’écran d’une seule paire, pour un téléphone au grillage où elle compte elle-même. Ce qui y revient à l’entraîneur se tient appuyé deux secondes : « Lancer », « Reprendre » et « Pour l’entraîneur », qui ramène ici. Ouvrir l’écran de la paire :',
    pairScreenOf: (letter, names) => `${letter} : l’écran de ${names}`,
    sayPairs: 'Annoncer les paires',
    saidPairs: (pairs) =>
      pairs.map(({ letter, names }) => `${letter} : ${list.format(names)}.`).join(' '),
    sleeps: {
      unable:
        'Ce téléphone ne peut pas garder son écran allumé : allongez le délai de mise en veille dans ses réglages.',
      refused:
        'Ce téléphone ne veut pas garder son écran allumé, peut-être pour économiser la batterie. Touchez-le de temps en temps ; le chrono reste juste de toute façon.',
    },
  },
  foci: {
    recovery: 'En place à temps ?',
    stance: 'Bas sur les appuis ?',
    'split-step': 'Allègement avant la frappe ?',
    'set-up': 'Préparation faite tôt ?',
    height: 'Assez haut au-dessus du filet ?',
    depth: 'Assez long ?',
    direction: 'Dans la bonne direction ?',
    speed: 'À la bonne vitesse ?',
    spin: 'Avec assez d’effet ?',
  },
  looks: {
    title: 'Point clé',
    is: { yes: 'Oui', no: 'Non', unseen: 'Pas vu' },
  },
  pads: { more: 'Plus que cela', fewer: 'Retour aux petits nombres' },
  settle: {
    title: 'Vérifier le décompte',
    late: (second) => `Après le signal, ${second}`,
    doubtful: (second) => `Trop tôt pour une série, ${second}`,
    keep: 'Compte',
    strike: 'Ne compte pas',
    fewer: (names) => `Une série de moins pour ${names}`,
    more: (names) => `Une série de plus pour ${names}`,
    showing: 'Série inachevée, coups',
    showingOf: (names) => `Coups de la série inachevée de ${names}`,
    notSeen: 'pas vu',
    best: 'Plus longue suite',
    bestOf: (names) => `Plus longue suite de ${names}`,
    next: 'Prochain passage',
    finish: 'Terminé',
    skip: 'Passer, vérifier plus tard',
    clockJumped: (seconds) =>
      `L’horloge du téléphone a sauté de ${one.format(Math.abs(seconds))}\u00a0s pendant ce passage. Sa durée peut être fausse.`,
    live: (seconds) => `${one.format(seconds)}\u00a0s de chrono`,
    none: 'Ce passage n’est pas sur ce téléphone, ou n’a pas encore été joué.',
    sets: 'séries',
    struck: 'Retiré : ce passage ne compte dans aucun chiffre.',
    strikeRound: 'Ne pas compter ce passage',
    restoreRound: 'Compter de nouveau ce passage',
    tooShort: (seconds) =>
      `Ce passage n’a duré que ${one.format(seconds)}\u00a0s. Si c’était un essai, ne le comptez pas : aucun chiffre ne le comptera, et son exercice reste à jouer.`,
    wrongNames: 'Mauvais noms ?',
    change: 'Changer le décompte',
    changeOf: (names) => `Changer le décompte de ${names}`,
    putRight: 'Corriger autre chose',
    turnedAt: (second) => `Les rôles ont changé à ${second}.`,
    notTurned: 'Les rôles n’ont pas changé pendant ce passage.',
    didTurn: 'Ils ont changé à la mi-temps',
    didNotTurn: 'Ils n’ont pas changé',
    shared:
      'Personne n’a vu quelles séries annoncées sont venues avant le changement : elles sont partagées selon le chrono.',
    unwatched:
      'Personne n’a regardé pendant un moment ? Ce qui n’a pas été compté alors n’est pas zéro.',
    from: 'de',
    to: 'à',
    strikeStretch: 'Ne pas en tenir compte',
    wasWatched: 'A été regardé',
    plays: (letter, place) => `Paire ${letter}, joueur ${place}`,
  },
  reading: 'Lecture des séances passées…',
  notRead:
    'Les séances passées n’ont pas pu être lues à l’instant. Elles sont en sûreté sur ce téléphone ; rouvrez l’appli.',
  pair: {
    title: (letter) => `Paire ${letter}`,
    notIn: (letter) => `Aucune paire ${letter} ne joue ce passage.`,
    nothing: 'Aucun passage n’est prévu.',
    waits: 'En attente du départ.',
  },
  wall: {
    title: 'Affichage mural',
    waits: 'Le prochain passage sera ici dès qu’il sera prévu.',
    fullScreen: 'Plein écran',
    leave: 'Quitter',
  },
  help: 'Aide',
};

export const language: Language = {
  words: fr,
  figures,
  planning,
  desk,
  card,
  handover,
  quality,
  look,
};
