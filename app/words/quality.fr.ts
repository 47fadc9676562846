import { at, formats } from './format.ts';
import type { QualityWords } from './quality-words.ts';

/*
 * French; see fr.ts for the words that it keeps to. focus: point clé · look: coup d’œil ·
 * hold: tenir · slipping: en baisse · watcher: observateur.
 */

const { number, one, percent, shortDay, count } = formats('fr');

export const quality: QualityWords = {
  focus: {
    none: 'aucun',
    ofBlock: 'Point clé du bloc',
    ofDrill: 'Point clé de cet exercice',
    ofDrillMeans: 'Dans ses passages, il prend la place de celui du bloc.',
    checks: 'Coups d’œil par passage',
    checksMean: (tapped, called) =>
      `Pendant un passage, l’écran du court nomme un joueur à la fois, et qui observe répond oui, non ou pas vu. Au plus ${number.format(tapped)} dans un passage touché, ${number.format(called)} dans un passage annoncé. En laisser un ne coûte rien et n’est pas un non.`,
    yes: 'Oui, c’est quand',
    told: 'À dire au joueur',
    own: 'Vos propres points clés',
    question: 'Une question à répondre par oui ou non, 40 lettres au plus',
    yesField: 'À quoi ressemble un oui, en une ligne',
    toldField: 'Comment le dire au joueur',
    keep: 'Garder ce point clé',
    faulty: 'Écrivez une question de 1 à 40 lettres.',
    drop: (question) => `Retirer ${question}`,
  },
  means: {
    recovery: {
      yes: 'De retour à la place de replacement avant le rebond de l’autre côté.',
      told: 'Frappe, puis rentre avant le rebond.',
      held: 'en place à temps',
    },
    stance: {
      yes: 'Genoux fléchis, poids sur l’avant des pieds, raquette haute.',
      told: 'Reste bas, reste prêt.',
      held: 'bas sur les appuis',
    },
    'split-step': {
      yes: 'Un petit saut qui retombe quand l’autre frappe.',
      told: 'Allège-toi quand l’autre frappe.',
      held: 'avec l’allègement avant la frappe',
    },
    'set-up': {
      yes: 'De profil et raquette en arrière au moment du rebond.',
      told: 'Tourne d’abord, cours ensuite.',
      held: 'avec une préparation faite tôt',
    },
    height: {
      yes: 'La balle passe nettement au-dessus de la bande : une longueur de raquette, ou comme convenu.',
      told: 'Monte la balle, de la marge au filet.',
      held: 'assez haut au-dessus du filet',
    },
    depth: {
      yes: 'La balle rebondit derrière la ligne de service, ou là où c’était convenu.',
      told: 'Derrière la ligne de service.',
      held: 'assez long',
    },
    direction: {
      yes: 'La balle va là où elle était annoncée.',
      told: 'Choisis tôt et tiens-t’y.',
      held: 'dans la bonne direction',
    },
    speed: {
      yes: 'La vitesse convenue : ni poussée, ni plus forte que ce qui peut durer.',
      told: 'La même vitesse, balle après balle.',
      held: 'à la bonne vitesse',
    },
    spin: {
      yes: 'La balle plonge ou reste basse, comme convenu.',
      told: 'Brosse la balle.',
      held: 'avec assez d’effet',
    },
  },
  open: 'La qualité à côté de la quantité',
  title: 'Qualité',
  nothing:
    'Personne n’a encore regardé. Choisissez un point clé pour le bloc : l’écran du court demandera alors quelques coups d’œil par passage.',
  weeks: 'Les quatre semaines jusqu’à la dernière séance, à côté des quatre d’avant.',
  looks: {
    times: (held, looks, what) => `${number.format(held)} fois sur ${number.format(looks)} ${what}`,
    timesOwn: (held, looks, question) =>
      `${number.format(held)} fois oui sur ${number.format(looks)} : ${question}`,
    few: (looks) => `trop peu de coups d’œil (${number.format(looks)})`,
    fewOwn: 'Trop peu de coups d’œil pour en dire plus.',
    share: (share, low, high) =>
      `${percent.format(share)} (${percent.format(low)} à ${percent.format(high)})`,
    of: (held, looks) => `${number.format(held)} sur ${count(looks, 'coup d’œil', 'coups d’œil')}`,
    now: 'Maintenant',
    before: 'Avant',
    change: {
      falling: '▼ en baisse',
      rising: '▲ en hausse',
      open: 'pas de changement net',
    },
    changeUnknown: 'rien à comparer encore',
    shareMeans:
      'La part des coups d’œil où le point clé était tenu, avec des limites qui contiennent la vraie part 19 fois sur 20 (Wilson). À partir de huit. Ce qui n’a pas été vu ou pas répondu ne compte pour rien.',
    changeMeans:
      'En baisse : une baisse aussi nette viendrait du seul hasard au plus une fois sur dix. Chaque joueur est comparé à ses propres coups d’œil seulement.',
    players: 'Joueur par joueur',
    ownTitle: 'Ce qui a été observé',
  },
  watchers: {
    title: 'Deux observateurs',
    means:
      'Deux téléphones dans une même séance demandent les mêmes coups d’œil. Kappa dit de combien ils s’accordent au-delà du hasard : 1 toujours, 0 pas mieux que le hasard.',
    none: 'Aucun coup d’œil n’a encore été répondu sur deux téléphones.',
    agreement: (agreement, looks) =>
      `${percent.format(agreement)} pareils, sur ${count(looks, 'coup d’œil commun', 'coups d’œil communs')}`,
    kappa: (kappa) => `kappa de ${one.format(kappa)}`,
    noKappa: 'pas de kappa : les deux ont tout jugé pareil',
    is: {
      'too-few': 'Trop peu de coups d’œil communs pour dire si vous entendez la même chose.',
      agree: 'Vous entendez la même chose.',
      differ: 'Vous n’entendez pas la même chose : redites côte à côte à quoi ressemble un oui.',
      'one-sided':
        'Vous dites presque toujours pareil, mais presque tous les coups d’œil se ressemblent, ce qui apprend peu.',
    },
  },
  volume: {
    title: 'La qualité à côté du volume',
    focus: 'Point clé',
    means:
      'Une marque par séance d’au moins huit coups d’œil : les frappes des séries complètes vers la droite, la part tenue vers le haut. La plus récente est encadrée ; des marques qui vont à droite et vers le bas, c’est plus mais moins bien.',
    none: 'Aucune séance n’a encore huit coups d’œil pour lui.',
    picture: (practices, least, most) =>
      `${count(practices, 'séance', 'séances')}, de ${least} à ${most} frappes vers la droite, la qualité de 0 à 100 % vers le haut`,
    touches: (touches) => count(touches, 'frappe', 'frappes'),
    date: (date) => shortDay.format(at(date)),
    percent: (share) => percent.format(share),
    rounds: 'Passage par passage',
    round: (ordinal, drill) => `${number.format(ordinal)}. ${drill}`,
    sets: (sets) => count(sets, 'série', 'séries'),
  },
  care: {
    title: 'Smashs et services',
    means:
      'Balles frappées par semaine, les fautes comprises autant que le modèle les connaît ; la ligne est la semaine habituelle du joueur.',
    caution:
      'Combien sont de trop, personne ne le sait : les conseils publiés sur les services des jeunes se contredisent, et aucun chiffre ici ne prédit une blessure. Douleur veut dire arrêt, et un professionnel de santé décide ; les règles de la fédération et du pays passent d’abord.',
    strokes: { overhead: 'Smashs', serve: 'Services' },
    week: (week) => `Sem. ${number.format(week)}`,
    usual: (usual) => `semaine habituelle ${one.format(usual)}`,
    noUsual: 'pas encore d’habitude : il faut trois semaines',
    inWeek: (week, struck) => `semaine ${number.format(week)} : ${number.format(struck)}`,
    notInWeek: (week) => `semaine ${number.format(week)} : aucun passage`,
    noRound: '–',
    unheard: (rounds) =>
      `${count(rounds, 'passage n’a pas été entendu', 'passages n’ont pas été entendus')} : il y en a eu davantage.`,
  },
  effort: {
    open: 'Effort et minutes',
    title: 'Effort et minutes',
    ask: 'Cette séance était-elle dure ?',
    askMeans: '0 est le repos, 3 modéré, 5 dur, 10 le plus dur de tous. Facultatif.',
    minutes: 'Durée en min',
    column: 'Ressenti',
    minutesAll: 'Minutes pour tout le monde',
    effortOf: (name) => `Ressenti de ${name}`,
    minutesOf: (name) => `Minutes de ${name}`,
    notSaid: '–',
    nobody: 'Personne n’était à cette séance.',
    none: 'Il n’y a pas encore de séance.',
    kept: 'Chaque choix est gardé aussitôt.',
    load: 'Charge d’entraînement',
    week: (from, to) => `du ${shortDay.format(at(from))} au ${shortDay.format(at(to))}`,
    loadIs: (load) => `charge ${number.format(load)}`,
    untold: (practices) =>
      `inconnue : ${count(practices, 'séance est', 'séances sont')} sans effort ou sans minutes`,
    noPractice: 'pas de séance',
    monotony: (monotony, strain) =>
      `monotonie ${one.format(monotony)}, contrainte ${number.format(strain)}`,
    noSpread: 'pas de monotonie : tous les jours sont égaux, ou la semaine n’est pas finie',
    loadMeans:
      'La charge est l’effort fois les minutes, additionné sur la semaine. Elle dit ce que les séances de ce groupe ont coûté au joueur selon lui, et ne sait rien des matchs, de l’école ni d’autres clubs.',
    monotonyMeans:
      'La monotonie est la moyenne des sept jours divisée par leur écart type d’échantillon (diviseur 6 ; Foster 1998 ne dit pas lequel), les jours de repos à 0 ; la contrainte est la charge fois la monotonie. Une monotonie élevée dit que jours durs et faciles se ressemblent ; aucune ne dit qui se blessera.',
  },
};
