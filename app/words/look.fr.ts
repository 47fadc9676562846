import { at, formats } from './format.ts';
import type { LookWords } from './look-words.ts';

/** French. */

const { number, one, percent, count, list, isOne, month } = formats('fr');

/** A number of sets to one place, as it is shown. */
const setsOf = (sets: number) => {
  const shown = Math.round(10 * sets) / 10;
  return `${one.format(shown)} ${isOne(shown) ? 'série' : 'séries'}`;
};

export const look: LookWords = {
  evening: {
    nothing: 'Rien n’a encore été joué. Après la première séance, on lit ici quoi faire ensuite.',
    leftOut: (stroke, players, days) =>
      `${stroke} : ${count(players, 'joueur s’en passe', 'joueurs s’en passent')} depuis plus de ${count(days, 'jour', 'jours')}.`,
    size: {
      hard: (drill, size, sets) =>
        `${drill} est trop dur à ${number.format(size)} : une paire fait environ ${setsOf(sets)} par passage.`,
      easy: (drill, size, sets) =>
        `${drill} est trop facile à ${number.format(size)} : une paire fait environ ${setsOf(sets)} par passage.`,
    },
    partners: (a, b, days) =>
      days === undefined
        ? `${a} et ${b} n’ont jamais joué ensemble.`
        : `${a} et ${b} n’ont pas joué ensemble depuis ${count(days, 'jour', 'jours')}.`,
    need: (player, kind) =>
      `${kind} : c’est là que ${player} est le plus en retard sur ses autres genres de travail.`,
    change: {
      rising: (now, before, weeks) =>
        `Le groupe progresse : ${now} des balles reviennent, ${before} il y a ${count(weeks, 'semaine', 'semaines')}.`,
      steady: (now) => `Le groupe garde son niveau : ${now} des balles reviennent.`,
      falling: (now, before, weeks) =>
        `Le groupe en remet moins : ${now} des balles, ${before} il y a ${count(weeks, 'semaine', 'semaines')}.`,
      unclear: (now) =>
        `${now} des balles du groupe reviennent ; on ne sait pas encore si cela change.`,
    },
    up: (names) => `En hausse : ${list.format(names)}.`,
    down: (names) => `En baisse : ${list.format(names)}.`,
    putIn: (drill) => `Mettre au prochain bloc : ${drill}`,
    inNext: (drill) => `Au prochain bloc : ${drill}`,
    pairThem: 'Les mettre ensemble la prochaine fois',
    paired: 'Ensemble la prochaine fois',
    setSize: (size, from) => `Séries de ${number.format(size)} au lieu de ${number.format(from)}`,
    sizeIsSet: (size) => `Désormais des séries de ${number.format(size)}`,
    silent: (questions) => `Rien à signaler sur : ${list.format(questions)}.`,
    questions: {
      'left-out': 'ce qui a manqué',
      size: 'trop dur ou trop facile',
      pair: 'qui avec qui',
      need: 'qui a besoin de quoi',
      change: 'les progrès',
    },
    more: 'Tout ce qu’il y a derrière',
    players: 'Un joueur en chiffres',
  },
  pictures: {
    leftOut: (without, all) =>
      `${number.format(without)} cases sur ${number.format(all)} sont vides, une pour chaque joueur qui s’en est passé.`,
    size: (sets, least, most) =>
      `Une barre de ${setsOf(sets)} à côté d’un cadre de ${number.format(least)} à ${number.format(most)}.`,
    pair: 'Deux disques et une ligne brisée entre eux.',
    need: (kinds, lowest) =>
      `${number.format(kinds)} marques, une par genre de travail ; la plus basse : ${lowest}.`,
    line: (from, to, weeks) =>
      `Une ligne de ${from} à ${to} sur ${count(weeks, 'semaine', 'semaines')}, dans une bande qui montre sa certitude.`,
    dots: (practices) => `${count(practices, 'point', 'points')}, un par séance.`,
  },
  glance: {
    title: 'Coup d’œil',
    player: 'Joueur',
    all: 'Tout',
    allLong: 'Tous les genres de travail',
    kinds: {
      groundstrokes: 'Fond',
      volleys: 'Volée',
      'overheads-and-lobs': 'Haut',
      'serves-and-returns': 'Serv.',
    },
    cell: (player, kind, level, low, high, word) =>
      `${player}, ${kind} : ${level} reviennent (${low} à ${high}), ${word}`,
    overall: (player, word) => `${player}, tous les genres de travail : ${word}`,
    unseen: (player, kind) => `${player}, ${kind} : pas vu depuis douze semaines`,
    key: 'Plus haut : plus de balles reviennent avec un partenaire moyen. La ligne en travers est la moyenne du groupe ; le trait debout contient le niveau quatre fois sur cinq. La marque :',
    nothing: 'Aucun passage des douze dernières semaines n’en dit encore rien.',
  },
  line: {
    kinds: 'Genres de travail',
    says: (level, low, high) =>
      `${level} reviennent maintenant avec un partenaire moyen, quatre fois sur cinq entre ${low} et ${high}.`,
    saysOnTarget: (level, low, high) =>
      `${level} touchent la cible maintenant, quatre fois sur cinq entre ${low} et ${high}.`,
    word: (word, practices) => `Sur ${count(practices, 'séance', 'séances')} : ${word}.`,
    wordOverall: (word, practices) =>
      `Tous genres de travail ensemble, ${count(practices, 'séance', 'séances')} : ${word}.`,
    means:
      'La ligne est la part du joueur, avec un partenaire moyen ; chaque point est une séance avec les partenaires qu’il y avait. La bande contient la ligne quatre fois sur cinq.',
    unseen: 'Aucun passage des douze dernières semaines n’en parle.',
  },
  asked: {
    putIn: (drill) => `Demandé : mettre ${drill}`,
    pairs: (pairs) => `Demandés ensemble : ${list.format(pairs)}.`,
  },
  neglected: {
    title: 'Qui s’est passé de quoi',
    means: (after) =>
      `Jours depuis que chacun l’a frappé. Un cadre : plus de ${count(after, 'jour', 'jours')} ; en encre : depuis longtemps.`,
    cell: (player, stroke, days) =>
      days === undefined
        ? `${player}, ${stroke} : jamais`
        : `${player}, ${stroke} : il y a ${count(days, 'jour', 'jours')}`,
  },
  together: {
    title: 'Qui avec qui ensuite',
    means:
      'Si tout le monde vient : qui s’est le moins rencontré, de niveau proche, et vos souhaits avant les deux.',
    never: 'jamais joué ensemble',
    days: (days) =>
      days === 0
        ? 'ont joué ensemble aujourd’hui'
        : `ensemble il y a ${count(days, 'jour', 'jours')}`,
    few: 'Une paire demande deux joueurs dans le groupe.',
  },
  sizes: {
    title: 'Trop dur, trop facile',
    means: (least, most) =>
      `Ce qu’une paire de ceux qui l’ont joué en dernier peut attendre d’un passage. Le cadre : ${number.format(least)} à ${number.format(most)} séries.`,
    verdicts: { hard: 'trop dur', easy: 'trop facile', fits: 'convient' },
    line: (size, sets) => `À ${number.format(size)}, environ ${setsOf(sets)}`,
    fitting: (size, sets) => `${number.format(size)} convient : environ ${setsOf(sets)}`,
    nearer: (size, sets) =>
      `${number.format(size)} est plus près de quatre : environ ${setsOf(sets)}`,
    others: 'Sans taille à choisir',
    perRound: (sets) => `${one.format(sets)} par passage d’une paire`,
    none: 'Aucun exercice d’affilée n’a été joué ces quatre dernières semaines.',
  },
  season: {
    title: 'La saison',
    nothing: 'Rien n’a encore été joué. Les mois se remplissent au fil des passages.',
    term: (weeks) => `Ce que font ${number.format(weeks)} semaines`,
    termMeans:
      'Balles par coup, au moins : celles des séries complètes jusqu’à la dernière séance.',
    months: (whose) => (whose === '' ? 'Mois par mois' : `Mois par mois : ${whose}`),
    monthsMean:
      'La ligne et son nombre : les balles frappées. Au bout de la rangée : combien sont revenues.',
    month: (date) => month.format(at(date)),
    balls: (balls) => number.format(Math.round(balls)),
  },
  players: {
    title: 'Joueurs',
    pick: 'Touche ton nom pour voir ce que tu as fait.',
    none: 'Pas encore de joueurs : créer d’abord le groupe.',
    toSquad: 'Vers le groupe',
    resting: 'En retrait',
    review: 'Après la séance, pour l’entraîneur',
  },
  player: {
    today: 'Aujourd’hui',
    notHere: 'Ce joueur n’est pas sur ce téléphone.',
    nothing: 'Rien n’est encore compté pour toi. Tes séries seront ici après ton premier passage.',
    touches: 'Balles frappées',
    countedNote:
      'Au moins : ce que prouvent les séries complètes. Environ : avec les balles des séries inachevées, autant que le chrono le dit ; la fourchette contient le vrai nombre quatre fois sur cinq. Touche un chiffre pour voir d’où il vient.',
    sets: (sets) => (isOne(sets) ? 'série' : 'séries'),
    onTarget: 'dans la cible',
    noSet: 'Aucune série complète.',
    noneOnTarget: 'Aucune dans la cible.',
    usual: (sets) => `d’habitude ${one.format(sets)}`,
    best: (sets) => `record ${one.format(sets)}`,
    newBest: 'Nouveau record personnel !',
    first: 'Première fois à cet exercice, compté ainsi.',
    besideNote: 'Comparé à tes propres séances passées, pour le même temps.',
    hand: (name) => `Passer le téléphone à ${name}`,
    handNote:
      'Le téléphone ne montre alors que cette page. Pour le reprendre, tenir « Pour l’entraîneur » appuyé deux secondes au bas de la page.',
    well: {
      best: (drill, made) => `Nouveau record personnel à ${drill} : ${made} !`,
      usual: (drill, made, usual) =>
        `À ${drill}, tu as fait ${made} ; d’habitude c’est ${one.format(usual)}.`,
      first: (drill, made) => `Première fois à ${drill} : ${made}.`,
      made: (drill, made) => `À ${drill}, tu as fait ${made}.`,
    },
    played: 'Tu étais sur le court et tu as travaillé.',
    balls: (balls) => `Tu as frappé environ ${count(Math.round(balls), 'balle', 'balles')}.`,
    ballsAtLeast: (balls) => `Tu as frappé au moins ${count(balls, 'balle', 'balles')}.`,
    goal: (drill, made) => `La prochaine fois à ${drill} : ${made}.`,
    madeSets: (sets) => count(sets, 'série', 'séries'),
    madeOnTarget: (balls) => `${number.format(balls)} dans la cible`,
    beside: (usual, best) =>
      usual === undefined || best === undefined
        ? 'la première fois'
        : `d’habitude ${one.format(usual)}, record ${one.format(best)}`,
    usualSign: 'ton habitude',
    bestSign: 'ton record',
    forCoach: 'Tous les chiffres du jour',
  },
  percent: (share) => percent.format(share),
};
