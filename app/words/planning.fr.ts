import { formats } from './format.ts';
import type { PlanningWords } from './planning-words.ts';

/** French, for the screens that plan. */

const { number, count } = formats('fr');

export const planning: PlanningWords = {
  coverage: {
    title: 'Travail des semaines',
    whose: 'De qui',
    squad: 'Tout le groupe',
    of: (whose) => `Frappes des séries complètes, ${whose}, par semaine`,
    ofSquad: 'tout le groupe',
    line: 'Travaillé',
    week: (week) => `S ${number.format(week)}`,
    weekLong: (week) => `Semaine ${number.format(week)}`,
    days: 'Il y a (j)',
    strokes: {
      groundstroke: 'Fond de court',
      volley: 'Volée',
      overhead: 'Smash',
      lob: 'Lob',
      serve: 'Service',
      return: 'Retour',
    },
    never: 'jamais',
    due: { no: '', overdue: 'à retravailler', 'long-overdue': 'à retravailler vite' },
    noRound: 'pas de séance',
    cell: (line, week, touches) =>
      `${line}, semaine ${number.format(week)} : ${count(touches, 'frappe', 'frappes')}`,
    key: (after, long) =>
      `▲ pas depuis plus de ${number.format(after)} jours ; ▲▲ sur fond foncé, plus de ${number.format(long)}. Une case vide est une semaine sans séance.`,
    behind: 'Les passages derrière ce nombre',
    touch: 'Toucher un nombre pour voir les passages qui le composent.',
    none: 'Aucun passage de ce genre cette semaine-là.',
    nothing: 'Rien n’a encore été travaillé. Le tableau se remplit au fil des passages.',
  },
  block: {
    title: 'Le bloc',
    empty: 'Toucher les exercices plus bas pour les ajouter au bloc.',
    length: 'Un passage dure',
    changeover: 'Entre les passages',
    seconds: (seconds) => (seconds % 60 === 0 ? `${seconds / 60}\u00a0min` : `${seconds}\u00a0s`),
    rounds: (drill) => `Passages de ${drill}`,
    earlier: (drill) => `Monter ${drill}`,
    remove: (drill) => `Retirer ${drill}`,
    add: (drill) => `Ajouter ${drill}`,
    inBlock: (times) => count(times, 'passage prévu', 'passages prévus'),
    partners: 'Partenaires',
    keep: 'les mêmes',
    turn: 'tournent',
    partnersOf: (drill) => `Partenaires à ${drill}`,
    keepAs: 'Enregistrer ce bloc sous le nom',
    keepIt: 'Enregistrer',
    useIt: 'Prendre',
    kept: 'Blocs enregistrés',
    use: (name) => `Prendre ${name}`,
    drop: (name) => `Supprimer ${name}`,
    nameNeeded: 'Donner au bloc un nom de 40 lettres au plus.',
    ownDrills: 'Écrire un exercice à soi',
    planned: 'Prévu',
  },
  propose: {
    title: 'Proposer un bloc',
    minutes: 'Minutes',
    why: {
      never: (family) => `${family} : encore jamais travaillé`,
      overdue: (family, days) => `${family} : il y a ${count(days, 'jour', 'jours')}`,
      slipping: (question) => `point clé en baisse ces temps-ci : ${question}`,
      hard: (without, counts) =>
        `trop dur ces temps-ci : ${count(without, 'compte', 'comptes')} sur ${number.format(counts)} sans série`,
      role: (stroke, players, days) => {
        const since = `${count(players, 'joueur n’en a pas joué', 'joueurs n’en ont pas joué')} depuis longtemps`;
        return days === undefined
          ? `${stroke} : ${since}`
          : `${stroke} : ${since} (la dernière fois il y a ${count(days, 'jour', 'jours')})`;
      },
      balance: (family, days) =>
        days === undefined
          ? `${family} : pour l’équilibre`
          : days === 0
            ? `${family} : déjà aujourd’hui, pour l’équilibre`
            : `${family} : il y a ${count(days, 'jour', 'jours')}, pour l’équilibre`,
    },
    sized: (size, own) =>
      `${number.format(size)} d’affilée conviennent mieux à ceux qui jouent que ${number.format(own)}.`,
    take: 'Prendre ce bloc',
    another: 'Un autre',
    first: 'Retour au premier',
    number: (n) => `Proposition ${number.format(n)}`,
    takeMeans:
      'Il devient le programme du jour à la place de l’actuel. Vous pourrez le modifier librement.',
    nothing: 'Aucun bloc ne convient : accorder plus de minutes ou cocher plus d’exercices.',
    noMore: 'Il n’y a pas d’autre bloc. Accorder plus de minutes ou cocher plus d’exercices.',
    drills: 'Exercices possibles',
    drillsMean: 'Ce qui est décoché reste dans la collection et n’est pas proposé.',
    drillsOn: (on, all) => `${number.format(on)} sur ${number.format(all)}`,
  },
  sheet: {
    title: 'Le bloc sur papier',
    print: 'Imprimer cette feuille',
    empty: 'Choisir d’abord les exercices du bloc.',
    pairs: 'Paires pour commencer',
    rounds: (rounds, seconds) => `${number.format(rounds)} × ${seconds}`,
    turn: 'les partenaires tournent',
    keep: 'les partenaires restent',
    tally: 'Pour pointer à la main',
    tallyMeans:
      'Un trait par série dans la case de la paire ; dans la cible, chaque joueur a sa part. Saisir les nombres ensuite.',
    perCourt: (pairs) => `${count(pairs, 'paire', 'paires')} par court`,
  },
  wishes: {
    title: 'Qui joue avec qui',
    means:
      'Les paires sont proposées selon qui s’est le moins rencontré dernièrement et selon le niveau. Un souhait passe avant les deux.',
    one: 'Un joueur',
    other: 'L’autre joueur',
    together: 'Garder ensemble',
    apart: 'Séparer',
    is: { together: 'ensemble', apart: 'séparés' },
    takeBack: (a, b) => `Retirer le souhait pour ${a} et ${b}`,
    choose: 'choisir',
  },
  courts: {
    title: 'Les courts',
    count: 'Combien',
    countMeans:
      'Les courts dont le groupe dispose. S’ils ne suffisent pas, les paires se relaient.',
    notSet: 'non précisé',
    size: 'Taille',
    sizes: {
      small: 'petit (balle rouge), 10,97 sur 5,49 m',
      middle: 'moyen (balle orange), 18,29 sur 6,40 m',
      full: 'entier',
    },
    sizeMeans: 'Les exercices y sont dessinés et mesurés. Un petit court accueille une paire.',
    units: 'Longueurs en',
    unitNames: { metres: 'mètres', feet: 'pieds' },
  },
};
