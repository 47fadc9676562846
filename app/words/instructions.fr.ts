import type { StarterDrillId } from '../../core/drill/starter-drills.ts';
import type { StarterInstructions } from './drill-instructions.ts';

/*
 * How the starter drills are run, in French, for an assistant who never saw them. The distances are
 * those of the markers.
 */

const both = (task: string): [string, string] => [task, task];

const rally =
  '1 laisse tomber une balle et la joue doucement ; après une faute, qui l’a commise remet en jeu une balle de sa poche.';
const fromBaseline =
  '1 met chaque balle en jeu doucement du fond, la première et de nouveau après chaque faute.';
const atNet =
  '1 donne une balle douce à hauteur de poitrine ; après une faute, qui l’a commise remet en jeu une balle de sa poche.';
const drop =
  '1 laisse tomber une balle et la joue : c’est la balle un ; après une faute, ou une série finie, 1 recommence quand les deux sont prêts.';
const lob =
  '1 laisse tomber une balle et la lobe : c’est la balle un ; après une faute, ou une série finie, 1 lobe de nouveau quand 2 est en place et regarde.';
const lobs =
  '1 laisse tomber une balle et la lobe : c’est la balle un ; de même après chaque faute, quand 2 est en place et regarde.';
const serve =
  'Commencer côté égalité, comme dessiné, et changer de côté après chaque série. Après une faute, 1 sert de nouveau du même côté quand 2 est prêt.';
const oneSide = (side: string, other: string) =>
  `Ce passage du côté ${side}, comme dessiné ; le suivant en miroir, du côté ${other}. Après une faute, 1 sert de nouveau quand 2 est prêt.`;

const own = 'Chaque balle qui rebondit dans votre demi-court ; la mise en jeu ne compte pas.';
const diagonal =
  'Chaque balle qui rebondit dans la moitié opposée en diagonale ; la mise en jeu ne compte pas.';
const inTheAir =
  'Chaque volée que le partenaire peut atteindre ; une balle qui rebondit est une faute, et la mise en jeu ne compte pas.';
const onTarget =
  'Chaque balle qui rebondit dans la cible, lignes comprises ; l’échange continue dans tous les cas. La mise en jeu ne compte pas.';

export const instructions: Record<StarterDrillId, StarterInstructions> = {
  'mini-rally': {
    roles: ['Échange', 'Échange'],
    tasks: both('un pas derrière la ligne de service, la balle rebondit une fois devant elle'),
    feed: rally,
    counts:
      'Chaque balle qui rebondit une fois dans votre couloir, devant la ligne de service ; la mise en jeu ne compte pas.',
    setup:
      'Plots de séparation sur les deux lignes de service, à 1,83 m de la ligne médiane, pour trois paires.',
  },
  'cross-court-deuce': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('au fond, seulement croisé, retour au plot après chaque balle'),
    feed: rally,
    counts: diagonal,
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 0,60 m de la marque centrale, du côté où l’on joue.',
  },
  'cross-court-ad': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('au fond, seulement croisé, retour au plot après chaque balle'),
    feed: rally,
    counts: diagonal,
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 0,60 m de la marque centrale, du côté où l’on joue.',
  },
  'half-court-rally': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('au fond, seulement tout droit, dans votre demi-court'),
    feed: rally,
    counts: own,
    setup:
      'Plots de séparation dans le prolongement de la ligne médiane, à 9,00 m du filet, des deux côtés.',
  },
  'long-rally': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('au fond, chaque balle au milieu et aucune pour gagner le point'),
    feed: rally,
    counts:
      'Chaque balle dans le court de simple : le couloir entre les plots est visé, pas exigé. La mise en jeu ne compte pas.',
    setup:
      'Plots de séparation à 9,00 m du filet et à 2,00 m de la ligne médiane, des deux côtés, pour jouer au milieu.',
  },
  'crosses-and-lines': {
    roles: ['Croisé', 'Long de ligne'],
    tasks: ['joue toutes ses balles croisées', 'joue toutes ses balles long de ligne'],
    feed: '1 met en jeu doucement, croisé depuis le milieu, la première balle et de nouveau après chaque faute.',
    counts:
      'Chaque balle dans le court de simple et dans sa direction : quatre font un tour. La mise en jeu ne compte pas.',
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, dans le prolongement de la marque centrale.',
  },
  'slice-and-drive': {
    roles: ['Slice', 'Lift'],
    tasks: ['slice toutes ses balles, bas au-dessus du filet', 'répond à chaque balle par un lift'],
    feed: rally,
    counts: own,
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 2,00 m de la marque centrale.',
  },
  'third-ball-down-the-line': {
    roles: ['Long de ligne', 'Croisé'],
    tasks: ['joue la balle un croisée et la balle trois long de ligne', 'ne joue que croisé'],
    feed: drop,
    counts:
      'Une série : les quatre balles dans le court de simple ; la balle trois vise la cible sans devoir la toucher.',
    setup:
      'Plot de cible à 9,00 m du filet et à 1,50 m de la ligne latérale de simple, dans le coin de la troisième balle.',
  },
  'deep-past-the-markers': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('au fond, haut et long dans votre demi-court, derrière les plots d’en face'),
    feed: rally,
    counts: onTarget,
    setup:
      'Plots de cible à 9,40 m du filet, des deux côtés, dans le prolongement de la ligne médiane et sur la ligne latérale de simple.',
  },
  'wide-past-the-markers': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('au fond, croisé entre les plots et la ligne latérale'),
    feed: rally,
    counts: onTarget,
    setup:
      'Plots de cible sur les lignes de service et les lignes de fond, à 1,50 m de la ligne latérale de simple, là où arrive le croisé.',
  },
  'inside-out-forehand': {
    roles: ['Fond de court', 'Fond de court'],
    tasks: both('contourne son revers et joue le coup droit dans le coin avantage d’en face'),
    feed: rally,
    counts:
      'Chaque coup droit qui rebondit dans la moitié opposée en diagonale ; celui d’un gaucher est un simple croisé. La mise en jeu ne compte pas.',
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 0,80 m de la marque centrale.',
  },
  'short-ball-then-deep': {
    roles: ['Relance', 'Déplacement'],
    tasks: [
      'joue la balle un courte et la balle trois haute et longue, pour laisser du temps à 2',
      'avance pour la balle deux, se tourne, repart en courant et joue la quatre ; les deux longues',
    ],
    feed: drop,
    counts:
      'Une série : les quatre balles dans votre demi-court, les balles deux et quatre derrière la ligne de service.',
    setup:
      'Plots de séparation dans le prolongement de la ligne médiane, à 9,00 m du filet, des deux côtés.',
  },
  'drop-shot-and-chase': {
    roles: ['Poursuite', 'Amortie'],
    tasks: [
      'part du plot, court vers l’amortie, s’arrête avant le filet et la joue longue',
      'joue la balle deux en amortie, que 1 peut juste atteindre',
    ],
    feed: drop,
    counts:
      'Une série : les trois balles dans votre demi-court, l’amortie devant la ligne de service et reprise avant un second rebond.',
    setup:
      'Plots de départ à 10,40 m du filet et à 2,00 m de la ligne médiane, pour la poursuite ; plots de départ à 9,60 m du filet et à 2,00 m de la ligne médiane, pour l’amortie.',
  },
  'volley-to-volley': {
    roles: ['Filet', 'Filet'],
    tasks: both('au filet, chaque volée vers la poitrine du partenaire, pas plus fort'),
    feed: atNet,
    counts: inTheAir,
    setup:
      'Plots de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, des deux côtés.',
  },
  'soft-volleys': {
    roles: ['Filet', 'Filet'],
    tasks: both('près du filet, sans élan, la balle juste au-dessus du filet'),
    feed: atNet,
    counts: inTheAir,
    setup: 'Plots de replacement sur la ligne médiane, à 2,40 m du filet, des deux côtés.',
  },
  'baseline-to-net': {
    roles: ['Fond de court', 'Filet'],
    tasks: [
      'au fond, chaque balle à hauteur de poitrine vers 2',
      'au filet, chaque volée longue vers 1',
    ],
    feed: fromBaseline,
    counts:
      'Chaque balle qui continue : 2 la joue de volée, 1 après un rebond dans votre demi-court. La mise en jeu ne compte pas.',
    setup:
      'Plot de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, pour qui est au filet.',
  },
  'volleys-left-and-right': {
    roles: ['Fond de court', 'Filet'],
    tasks: [
      'court d’un côté à l’autre et rejoue chaque balle vers 2',
      'au filet, volleye d’un côté, puis de l’autre',
    ],
    feed: fromBaseline,
    counts:
      'Chaque balle qui continue : la volée change de côté à chaque fois et 1 peut l’atteindre. La mise en jeu ne compte pas.',
    setup:
      'Plot de replacement sur la ligne médiane, à 3,20 m du filet ; plot de replacement 0,50 m derrière la ligne de fond, dans le prolongement de la marque centrale.',
  },
  'approach-pass-volley': {
    roles: ['Attaque', 'Passing'],
    tasks: [
      'part du plot : approche long de ligne, puis volée dans le court ouvert',
      'au fond, joue la balle deux de façon que 1 puisse volleyer',
    ],
    feed: drop,
    counts: 'Une série : les trois balles dans le court de simple, la troisième de volée.',
    setup:
      'Plot de départ à 8,20 m du filet et à 2,00 m de la ligne médiane ; plot de replacement à 3,20 m du filet et à 1,20 m de la ligne médiane.',
  },
  'closing-in': {
    roles: ['Filet', 'Filet'],
    tasks: both(
      'part de la ligne de service, un pas en avant après chaque volée, doux, à hauteur de poitrine',
    ),
    feed: '1 lance une balle en l’air et la volleye : c’est la balle un ; après une faute, ou une série finie, retour à la ligne de service.',
    counts: 'Une série : six volées sans rebond ; une balle qui rebondit est une faute.',
    setup:
      'Plots de départ sur les lignes de service, à 2,00 m de la ligne médiane ; plots de replacement à 4,00 m du filet et à 2,00 m de la ligne médiane.',
  },
  'baseline-to-net-across': {
    roles: ['Fond de court', 'Filet'],
    tasks: [
      'dans le coin égalité, chaque balle croisée à hauteur de poitrine vers 2',
      'au filet dans la diagonale, chaque volée longue et croisée vers 1',
    ],
    feed: fromBaseline,
    counts:
      'Chaque balle qui continue dans la diagonale : 2 la joue de volée, 1 après un rebond. La mise en jeu ne compte pas.',
    setup:
      'Plot de replacement à 3,20 m du filet et à 1,60 m de la ligne médiane, pour qui est au filet.',
  },
  'half-volley-pick-up': {
    roles: ['Filet', 'Demi-volée'],
    tasks: [
      'au filet, volleye doucement dans les pieds de 2, jamais vers le corps',
      'à la ligne de service, prend la balle à un pas du rebond et la relève vers 1',
    ],
    feed: '1 met chaque balle en jeu doucement dans les pieds de 2, la première et de nouveau après chaque faute.',
    counts:
      'Chaque balle qui continue : 2 la joue juste après le rebond, 1 de volée. La mise en jeu ne compte pas.',
    setup:
      'Plot de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, pour qui est au filet ; plot de départ à 6,60 m du filet et à 2,00 m de la ligne médiane, pour la demi-volée.',
  },
  'target-volleys': {
    roles: ['Fond de court', 'Filet'],
    tasks: [
      'au fond, joue la balle un à hauteur de poitrine vers 2',
      'au filet, la volleye derrière les plots',
    ],
    feed: drop,
    counts: 'Une série seulement si la volée rebondit dans la cible, lignes comprises.',
    setup:
      'Plot de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, pour qui est au filet ; plots de cible à 8,60 m du filet, dans le prolongement de la ligne médiane et sur la ligne latérale de simple.',
  },
  'lob-and-overhead': {
    roles: ['Lob', 'Smash'],
    tasks: [
      'derrière la ligne de fond, lobe haut, assez court pour un smash',
      'au filet, se met de profil et smashe avec contrôle vers 1',
    ],
    feed: lob,
    counts:
      'Une série : un lob et son smash, frappé avant le rebond et dans le court de simple ; la force ne compte pas.',
    setup:
      'Plot de replacement sur la ligne médiane, à 3,20 m du filet ; plot de départ 1,00 m derrière la ligne de fond, dans le prolongement de la marque centrale.',
  },
  'volley-then-overhead': {
    roles: ['Fond de court', 'Filet'],
    tasks: [
      'au fond, d’abord une balle à hauteur de poitrine, puis un lob',
      'au filet, d’abord une volée vers 1, puis un smash',
    ],
    feed: drop,
    counts: 'Une série : les quatre balles dans le court de simple, les deux de 2 sans rebond.',
    setup: 'Plot de replacement sur la ligne médiane, à 3,20 m du filet, pour qui est au filet.',
  },
  'all-the-way-in': {
    roles: ['Attaque', 'Défense'],
    tasks: [
      'part du plot : approche, volée, smash',
      'au fond, d’abord une balle que 1 peut volleyer, puis un lob',
    ],
    feed: drop,
    counts:
      'Une série : les cinq balles dans le court de simple, la deuxième et la troisième de 1 sans rebond.',
    setup:
      'Plot de départ à 8,20 m du filet et à 2,00 m de la ligne médiane ; plot de replacement sur la ligne médiane, à 3,20 m du filet.',
  },
  'back-to-the-lobber': {
    roles: ['Lob', 'Smash'],
    tasks: [
      'derrière la ligne de fond, lobe toutes les balles',
      'au filet, smashe du côté de 1, qui doit pouvoir lober de nouveau',
    ],
    feed: lobs,
    counts:
      'Chaque lob qui est smashé et chaque smash qui est relobé ; la cible est visée, pas exigée.',
    setup:
      'Plot de cible à 8,60 m du filet et à 2,50 m de la ligne latérale de simple ; plot de replacement à 3,20 m du filet et à 1,20 m de la ligne médiane.',
  },
  'let-it-bounce': {
    roles: ['Lob', 'Smash'],
    tasks: [
      'derrière la ligne de fond, lobe très haut et long',
      'se met de profil, laisse rebondir, passe derrière la balle et la smashe vers 1',
    ],
    feed: lobs,
    counts:
      'Chaque lob qui retombe dans le court de simple et chaque smash après un rebond qui y arrive.',
    setup: 'Plot de replacement sur la ligne médiane, à 8,00 m du filet, pour qui smashe.',
  },
  'lob-and-follow': {
    roles: ['Lob', 'Défense'],
    tasks: [
      'lobe par-dessus 2, court jusqu’au plot et smashe la balle trois',
      'part du filet, se tourne et court après le lob, le laisse rebondir et le relobe',
    ],
    feed: lob,
    counts:
      'Une série : les deux lobs et le smash dans le court de simple ; seule la balle deux est jouée après un rebond.',
    setup:
      'Plot de départ à 3,20 m du filet et à 1,00 m de la ligne médiane ; plot de replacement sur la ligne médiane, à 4,20 m du filet.',
  },
  'lobs-past-the-markers': {
    roles: ['Lob', 'Lob'],
    tasks: both(
      'derrière la ligne de fond, lobe derrière les plots ; un lob hors de votre demi-court, on le laisse',
    ),
    feed: rally,
    counts: onTarget,
    setup:
      'Plots de cible à 8,60 m du filet, des deux côtés, dans le prolongement de la ligne médiane et sur la ligne latérale de simple.',
  },
  'target-overheads': {
    roles: ['Lob', 'Smash'],
    tasks: [
      'derrière la ligne de fond dans un coin, lobe au milieu et reste là',
      'au filet, se met de profil et smashe dans l’autre coin',
    ],
    feed: lob,
    counts: 'Une série seulement si le smash rebondit dans la cible, lignes comprises.',
    setup:
      'Plot de replacement sur la ligne médiane, à 3,20 m du filet ; plot de cible à 8,00 m du filet et à 2,50 m de la ligne latérale de simple, dans le coin vide.',
  },
  'second-serve-deep-return': {
    roles: ['Service', 'Retour'],
    tasks: ['ne sert que des deuxièmes balles', 'retourne long au centre'],
    feed: serve,
    counts:
      'Six balles sont trois services et trois retours. Le retour vise derrière les plots : partout dans le court de simple, il compte.',
    setup:
      'Plots de cible à 7,40 m du filet et à 2,00 m de la ligne médiane, de part et d’autre, pour le retour long.',
  },
  'serve-return-next': {
    roles: ['Service', 'Retour'],
    tasks: [
      'sert, puis joue le retour dans le court ouvert',
      'retourne de façon que 1 puisse continuer',
    ],
    feed: serve,
    counts:
      'Une série : un service dans le carré, le retour et la balle suivante de 1 dans le court de simple.',
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, dans le prolongement de la marque centrale.',
  },
  'wide-serve-four-balls': {
    roles: ['Service', 'Retour'],
    tasks: [
      'sert à l’extérieur, puis joue dans le court ouvert',
      'retourne croisé, traverse le court et joue la balle quatre croisée',
    ],
    feed: 'Toujours du côté avantage : le service extérieur côté égalité est un exercice à part. Après une faute, 1 sert de nouveau quand 2 est prêt.',
    counts:
      'Une série : un service dans le carré et trois balles dans le court de simple ; le service vise la cible sans devoir la toucher.',
    setup:
      'Plot de cible sur la ligne de service, à 1,50 m de la ligne latérale de simple, dans le carré de service visé.',
  },
  'serves-to-the-middle': {
    roles: ['Service', 'Service'],
    tasks: both('sert au T quand le partenaire regarde et se tient prêt'),
    feed: 'Une balle par paire : le partenaire l’arrête avec la raquette après le rebond et sert à son tour. Commencer côté égalité, comme dessiné ; changer de côté après quatre services chacun.',
    counts: 'Chaque service qui rebondit dans son carré, entre le plot et le T, lignes comprises.',
    setup:
      'Plots de cible sur les deux lignes de service, à 1,20 m de la ligne médiane, de part et d’autre, dans les quatre carrés.',
  },
  'straight-serves': {
    roles: ['Service', 'Retour'],
    tasks: ['sert tout droit à 70 pour cent, pour le rythme seul', 'retourne doucement tout droit'],
    feed: '1 sert quand 2 est prêt, et de nouveau après chaque retour ou chaque faute.',
    counts:
      'Services et retours qui tombent dans votre demi-court, dix en tout ; un service, partout devant la ligne de service.',
    setup:
      'Plots de séparation dans le prolongement de la ligne médiane, à 9,00 m du filet, des deux côtés.',
  },
  'serve-and-volley': {
    roles: ['Service', 'Retour'],
    tasks: [
      'sert, avance, s’arrête en équilibre et volleye long',
      'retourne de façon que 1 puisse volleyer',
    ],
    feed: oneSide('égalité', 'avantage'),
    counts:
      'Une série : un service dans le carré, le retour que 1 prend sans rebond, et la volée dans le court de simple.',
    setup:
      'Plot de replacement sur la ligne de service, à 0,60 m de la ligne médiane, pour la reprise d’appuis.',
  },
  'return-and-come-in': {
    roles: ['Service', 'Retour'],
    tasks: [
      'ne sert que des deuxièmes balles, puis joue la balle trois de façon que 2 puisse volleyer',
      'retourne long de ligne, monte jusqu’au plot et volleye dans le court ouvert',
    ],
    feed: oneSide('avantage', 'égalité'),
    counts:
      'Une série : un service dans le carré et trois balles dans le court de simple, la quatrième de volée.',
    setup:
      'Plot de replacement à 3,20 m du filet et à 1,40 m de la ligne médiane, pour qui retourne.',
  },
  'wide-serve-deuce-side': {
    roles: ['Service', 'Retour'],
    tasks: [
      'premières balles, à l’extérieur ; puis joue la balle trois dans le court ouvert',
      'retourne de façon que 1 puisse continuer, et se replace au milieu',
    ],
    feed: 'Toujours du côté égalité : le service extérieur côté avantage est un exercice à part. Après une faute, 1 sert une nouvelle première balle quand 2 est prêt.',
    counts:
      'Une série : un service dans le carré et deux balles dans le court de simple ; le service vise la cible sans devoir la toucher.',
    setup:
      'Plot de cible sur la ligne de service, à 1,50 m de la ligne latérale de simple, dans le carré de service visé.',
  },
};
