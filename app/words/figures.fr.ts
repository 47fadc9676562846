import type { FigureWords } from './figure-words.ts';
import { at, formats } from './format.ts';

/** French, for the screens of figures. */

const { one, number, tenths, hundredths, percent, shortDay, isOne, count } = formats('fr');

/** A number to one place with what it counts. */
const count1 = (n: number, single: string, many: string) =>
  `${one.format(n)} ${isOne(n) ? single : many}`;
const rate = (n: number) => (n < 10 ? hundredths : tenths).format(n);

export const figures: FigureWords = {
  number: (n) => number.format(n),
  rounded: (n) => number.format(Math.round(n)),
  rate,
  seconds: (n) => `${hundredths.format(n)}\u00a0s`,
  percent: (share) => percent.format(share),
  shortDate: (date) => shortDay.format(at(date)),
  span: (low, high) => `(${low} à ${high})`,
  close: 'Fermer',
  forStatisticians: 'Pour statisticiens',

  atLeast: 'au moins',
  about: 'environ',
  beingWorkedOut: (rounds) =>
    `Toutes les frappes de ${count(rounds, 'passage d’une paire', 'passages de paires')} sont encore en cours de calcul. Elles viennent d’elles-mêmes.`,
  afterSettle: 'Ton total apparaît une fois que l’entraîneur a vérifié le passage.',
  doubted: (rounds) =>
    `${count(rounds, 'passage a', 'passages ont')} plus de séries que le chrono ne le permet : vérifier le décompte.`,

  comesBack: 'Revient',
  meetsTarget: 'Touche la cible',
  onTarget: 'dans la cible',
  trendWords: {
    rising: 'en hausse',
    steady: 'stable',
    falling: 'en baisse',
    unclear: 'pas encore clair',
    'too-few': 'encore trop peu',
  },
  practices: (n) => count(n, 'séance', 'séances'),
  noPoint: 'Pas encore de séance avec une estimation.',
  plot: (practices, low, high) => `${count(practices, 'séance', 'séances')}, de ${low} à ${high}`,
  sized: {
    'in-a-row': (size) => `${number.format(size)} d’affilée`,
    'in-total': (size) => `${number.format(size)} au total`,
    sequence: (size) => `enchaînement de ${number.format(size)}`,
    'on-target': () => 'dans la cible',
  },

  trends: 'Au fil des séances',
  player: {
    trendsNote:
      'Chaque point est une séance des douze dernières semaines : combien de balles sont revenues, ou ont touché la cible.',
  },

  review: {
    title: 'Le groupe en chiffres',
    openPlayer: (name) => `Bilan de ${name}`,
    toSquad: 'Vers le groupe',
    nothing: 'Aucun passage n’a encore été joué. Les chiffres seront ici après le premier.',
    notHere: 'Ce joueur n’est pas sur ce téléphone.',
    nothingOf: (name) => `${name} n’a pas encore joué de passage.`,
    noneInSpan: 'Aucun passage n’a été joué pendant ces semaines.',
    span: 'Semaines prises en compte',
    weeks: (weeks) => count(weeks, 'semaine', 'semaines'),
    spanIs: (first, last) => `du ${first} au ${last}`,
    players: 'Joueurs',
    playersNote: 'Dans l’ordre du groupe. Personne n’est classé.',
    byKind: 'Par genre de travail',
    byDrill: 'Par exercice',
    byKindNote: 'D’une paire : ce que deux joueurs font ensemble en une minute de chrono.',
    byKindNoteOwn: 'Ce à quoi ce joueur a pris part, tous partenaires confondus.',
    setsPerMinute: 'Séries par minute',
    inMinutes: (minutes) => `en ${count1(minutes, 'minute', 'minutes')}`,
    touchesPerMinute: 'Frappes par minute',
    touches: 'Frappes',
    change: 'Comparé aux semaines d’avant',
    changeNote: (weeks) =>
      isOne(weeks)
        ? 'La dernière semaine, à côté de celle d’avant, aux mêmes exercices et mêmes tailles.'
        : `Les ${number.format(weeks)} dernières semaines, à côté des ${number.format(weeks)} d’avant, aux mêmes exercices et mêmes tailles.`,
    changeIs: (ratio, low, high) =>
      `${hundredths.format(ratio)} fois les séries (${hundredths.format(low)} à ${hundredths.format(high)})`,
    changeWords: {
      more: 'plus qu’avant',
      fewer: 'moins qu’avant',
      open: 'pas de changement clair',
      'too-little': 'trop peu de séries pour comparer',
    },
    noChange:
      'Rien à comparer : l’une des deux périodes n’a pas de passage, ou pas de série, du même travail.',
    trendsNote:
      'Les séances des douze dernières semaines, un point chacune. Le mot dit ce que les points permettent de dire.',
    levels: 'Le niveau, avec un partenaire moyen',
    levelsNote:
      'Un compte appartient à deux personnes. Voici ce que chacun fait d’une balle en ce moment, avec un partenaire moyen à un exercice moyen. Regardez d’abord toute la fourchette. C’est pour choisir les paires et le travail, et ce n’est un jugement sur personne.',
    noLevel: 'Aucun passage des douze dernières semaines n’en parle.',
    above: (names) => `sûrement plus que ${names}`,
    below: (names) => `sûrement moins que ${names}`,
    alone: (player) => `Seul ${player} y a été vu : il n’y a personne à qui comparer.`,
    neverPartedBoth: (one, other) =>
      `${one} et ${other} n’ont jamais été séparés : personne ne peut dire de qui viennent les séries.`,
    groups: (groups) =>
      `Ceux-ci ne se sont jamais rencontrés et ne peuvent pas être comparés : ${groups.join(' / ')}.`,
    classes: (classes) => `Ceux-ci ne peuvent être comparés qu’entre eux : ${classes.join(' / ')}.`,
    overall: 'Tous genres de travail ensemble',
    roseWith: (chance) =>
      `mieux qu’il y a huit semaines avec une chance de ${percent.format(chance)}`,
    squadNote: 'Pour l’entraîneur. Ne pas montrer aux joueurs.',
  },

  block: {
    title: 'Le bloc en chiffres',
    touches: 'frappes de tous',
    sets: (sets) => count(sets, 'série', 'séries'),
  },

  size: {
    fit: 'Tailles qui conviennent à ces paires',
    line: (names, size, expected, larger, smaller) =>
      `${names} : ${size} d’affilée donneraient environ ${one.format(expected)} séries (${size + 1} : ${one.format(larger)}, ${size - 1} : ${one.format(smaller)})`,
    apart: 'd’après leurs passages avec d’autres',
    unknown: (names) => `${names} : pas encore connu, cet exercice n’a pas été joué.`,
    set: (size) => `Passer à ${size}`,
    own: (size) => `Revenir à ${size}, la taille de l’exercice`,
    now: (size) => `Maintenant ${size} d’affilée.`,
    none: 'Aucune série à ce passage.',
    many: (sets) => `${count(sets, 'série', 'séries')} à ce passage.`,
    instead: (size, expected) => `${size} d’affilée donneraient environ ${one.format(expected)}.`,
    next: (size) => `Prendre ${size} dès le prochain passage`,
    taken: (size) => `Dès le prochain passage, ce sera ${size}.`,
  },

  tempo: {
    title: 'Mesure de la cadence',
    of: (drill) => `Cadence à ${drill}`,
    noPractice: 'Une mesure appartient à une séance. Dire d’abord qui est là, dans Aujourd’hui.',
    tempo: 'D’une frappe à l’autre',
    tempoFor:
      'Dix touchers affinent le nombre de toutes les frappes : rien ne le fausse plus qu’une mauvaise cadence.',
    tempoHow: 'Toucher au rythme de dix frappes d’un échange de cet exercice.',
    tempoTap: 'Toucher à chaque frappe',
    refeed: 'D’une faute à la frappe suivante',
    refeedFor:
      'Cela affine le nombre de toutes les frappes : après la cadence, c’est le temps pour une nouvelle balle qui le fausse le plus.',
    refeedHow: 'Toucher à une faute, puis à la frappe suivante. Cinq fois.',
    missTap: 'Toucher à la faute',
    hitTap: 'Et maintenant à la frappe suivante',
    tapped: (taps, of) => `${number.format(taps)} sur ${number.format(of)}`,
    known: (seconds) => `Connu : ${seconds}. Une nouvelle mesure le remplace.`,
    usual: 'Pas encore mesuré : c’est le temps habituel des juniors qui est pris.',
    keep: 'Garder',
    kept: 'Gardé. Cela vaut pour tous les passages de cet exercice à partir de cette séance.',
    again: 'Recommencer',
    why: {
      gap: 'Un écart était plus de deux fois plus long que les autres : une frappe a été manquée, ou l’échange s’est arrêté. Encore une fois, s’il vous plaît.',
      fast: 'C’est plus rapide que personne ne frappe. Encore une fois, s’il vous plaît.',
    },
  },

  explanations: {
    counted: {
      title: 'Frappes, au moins',
      means: 'Les balles frappées à coup sûr, si les touchers et les rôles sont justes.',
      from: 'Calculé à partir des marques : chaque série complète, et rien d’une série inachevée.',
      how: 'Les séries, multipliées par les coups que le joueur frappe dans une série de l’exercice.',
    },
    touches: {
      title: 'Toutes les frappes',
      means:
        'Combien de balles ont vraiment été frappées, avec une fourchette qui contient le vrai nombre quatre fois sur cinq ; la frappe qui finit en faute compte, une balle non atteinte ne compte pas.',
      from: 'Calculées à partir des séries et de leurs heures, de la taille d’une série, de l’avancée de la dernière, du chrono, et de la cadence là où elle a été mesurée.',
      how: 'Toutes les façons dont ces marques ont pu se produire sont pesées selon leur accord avec le chrono ; chaque joueur d’une paire en reçoit la moitié (qui donne toujours la balle en a environ deux de plus), les fourchettes de plusieurs passages s’ajoutent par leurs carrés, et rien ne fausse plus qu’une mauvaise cadence ou un mauvais temps pour une nouvelle balle.',
    },
    touchRate: {
      title: 'Frappes par minute',
      means: 'Combien de balles ont vraiment été frappées en une minute de chrono.',
      from: 'Calculé à partir de toutes les frappes et du chrono.',
      how: 'L’un divisé par l’autre ; la fourchette est celle de toutes les frappes, qui contient le vrai nombre quatre fois sur cinq.',
    },
    sets: {
      title: 'Séries',
      means: 'Combien d’unités d’un exercice ont été complétées.',
      from: 'Calculé à partir des marques, avec ce que la vérification a corrigé.',
      how: 'Les marques qui comptent, plus et moins les corrections ; une série compte pour tous ceux qui l’ont jouée.',
    },
    rate: {
      title: 'Séries par minute',
      means:
        'Combien de séries ont été faites en une minute de chrono, avec une fourchette qui contient le rythme à long terme 19 fois sur 20.',
      from: 'Calculé à partir des séries et du chrono des passages joués.',
      how: 'Les séries divisées par les minutes, avec l’intervalle exact de Poisson (Garwood) ; des séries de tailles différentes prennent un temps différent, ne comparer donc qu’à taille égale.',
    },
    minutes: {
      title: 'Minutes',
      means: 'Combien de temps le chrono a tourné, ramassage des balles compris.',
      from: 'Calculé à partir du chrono de chaque passage, sans ses pauses.',
      how: 'Les chronos des passages s’additionnent ; un joueur d’un trio a les deux tiers d’un passage.',
    },
    rounds: {
      title: 'Passages',
      means: 'Combien de passages de l’exercice ont été joués.',
      from: 'Calculé à partir des passages dont le chrono a été lancé.',
      how: 'Chacun est compté une fois, quel que soit le nombre de paires.',
    },
    days: {
      title: 'Jours',
      means: 'Combien de jours de la semaine le joueur était là.',
      from: 'Calculé à partir de qui a été noté présent.',
      how: 'Chaque date est comptée une fois, quel que soit le nombre de séances.',
    },
    usual: {
      title: 'D’habitude',
      means: 'Combien de séries ce joueur fait dans le même temps un jour ordinaire.',
      from: 'Calculé à partir des séances passées du joueur, au même exercice et à la même taille.',
      how: 'La valeur du milieu de ses séries par minute, multipliée par les minutes du jour.',
    },
    best: {
      title: 'Record',
      means:
        'Combien de séries ce joueur ferait dans le même temps, au rythme de son meilleur jour.',
      from: 'Calculé à partir des séances passées du joueur, au même exercice et à la même taille.',
      how: 'La plus grande de ses séries par minute, multipliée par les minutes du jour.',
    },
    consistency: {
      title: 'Balles remises',
      means:
        'Sur cent balles, combien reviennent comme l’exercice le demande, avec une fourchette juste quatre fois sur cinq ; cela se compare d’une taille de série et d’une durée à l’autre, ce que le nombre de séries ne permet pas.',
      from: 'Calculé à partir des mêmes marques et du même chrono que toutes les frappes, et appartient à la paire : aux deux joueurs ensemble, même sur la page d’un seul.',
      how: 'Le modèle de toutes les frappes le donne pour chaque passage, en supposant que chaque balle du passage a la même chance de revenir ; d’un passage à l’autre, les indices s’ajoutent, en partant de ce que diraient quatre balles sur cinq.',
    },
    target: {
      title: 'Touche la cible',
      means:
        'Sur cent balles, combien touchent la cible, avec une fourchette juste quatre fois sur cinq.',
      from: 'Calculé à partir des balles du joueur dans la cible et du chrono.',
      how: 'Les balles dans la cible, divisées par les balles frappées dans ce temps à cette cadence, qui ne sont pas comptées mais estimées.',
    },
    trend: {
      title: 'Le mot d’une tendance',
      means:
        'Si cela s’améliore au fil des séances, et si c’est plus que de la chance : en hausse, stable, en baisse, pas encore clair, ou encore trop peu.',
      from: 'Calculé à partir de combien de balles sont revenues à chaque séance des douze dernières semaines ; chaque séance est un point, quels que soient ses exercices : un exercice plus dur ressemble donc à une baisse.',
      how: 'La pente du milieu entre deux points (Theil et Sen) et le test de Mann-Kendall : hausse ou baisse demandent six séances, et sans vrai changement la chance seule donne un tel mot jusqu’à une fois sur dix ; stable une fourchette de moins de cinq sur cent en quatre semaines.',
    },
    change: {
      title: 'Comparé à avant',
      means:
        'Par combien les séries des semaines d’avant ont été multipliées dans le même temps, avec une fourchette juste 19 fois sur 20 ; 1 veut dire sans changement, et aucun nombre n’est donné quand la fourchette irait à plus de quatre fois son début.',
      from: 'Calculé à partir des séries et du chrono du joueur dans les deux périodes.',
      how: 'Le rapport des deux rythmes avec son intervalle exact (Clopper et Pearson), une minute comptant selon ce qu’en fait tout le groupe au même exercice et à la même taille : un bloc plus facile n’est pas un progrès.',
    },
    level: {
      title: 'Niveau',
      means:
        'Sur cent balles, combien reviennent avec ce joueur et un partenaire moyen du groupe à un exercice moyen, le jour de la dernière séance, avec une fourchette juste quatre fois sur cinq ; à la cible, les siennes.',
      from: 'Calculé à partir de tous les passages des douze dernières semaines, de tout le monde et de tous les genres de travail à la fois.',
      how: 'Une régression prend chaque passage comme ce qu’apportent le genre, l’exercice et les joueurs, chaque joueur sur une droite au fil des semaines (régression logistique pénalisée) ; peu de passages sont ramenés vers la moyenne du groupe, et une mauvaise horloge habituelle déplace tous les niveaux de la même façon.',
    },
    overall: {
      title: 'Le mot sur tous les genres',
      means:
        'Si le joueur a progressé sur huit semaines, tous genres de travail ensemble : en hausse et en baisse se disent quand la chance est de neuf sur dix.',
      from: 'Calculé à partir de tous les passages des douze dernières semaines, en tenant compte du partenaire et de l’exercice.',
      how: 'La même régression que le niveau donne la pente de la droite du joueur et sa certitude ; là où rien ne change, elle dit quand même en hausse ou en baisse d’environ un joueur sur neuf.',
    },
    size: {
      title: 'Taille de série',
      means: 'Quelle longueur de série donnerait environ quatre séries par passage.',
      from: 'Calculée à partir de combien de balles de cette paire reviennent à cet exercice, et de la cadence.',
      how: 'Pour chaque taille de 2 à 30, les séries attendues sont calculées sur tout ce qui est possible pour cette paire, et la plus proche de quatre est prise.',
    },
    practices: {
      title: 'Séances',
      means: 'Sur combien de séances le mot repose.',
      from: 'Calculé à partir des séances des douze dernières semaines où ce genre de travail a été joué.',
      how: 'Chacune est comptée une fois.',
    },
  },
};
