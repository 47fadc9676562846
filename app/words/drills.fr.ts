import type { DrillText } from '../../core/drill/drill.ts';
import type { StarterDrillId } from '../../core/drill/starter-drills.ts';

/** What people read of the starter drills, in French. The distances are those of the markers. */
export const drills: Record<StarterDrillId, DrillText & { setup: string }> = {
  'mini-rally': {
    name: 'Mini-échange',
    intention:
      'Réveiller l’œil, les jambes et le toucher, quatre paires côte à côte, avec des balles courtes et basses.',
    cue: 'Geste lent, fin de geste longue.',
    roles: ['Échange', 'Échange'],
    setup:
      'Plots de séparation sur les deux lignes de service, à 2,74 m de la ligne médiane, pour quatre paires.',
  },
  'cross-court-deuce': {
    name: 'Croisé, côté égalité',
    intention:
      'S’approprier la trajectoire la plus sûre : au-dessus du milieu du filet, dans la diagonale, là où le court est le plus long.',
    cue: 'Vise haut, au-dessus du milieu du filet.',
    roles: ['Fond de court', 'Fond de court'],
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 0,60 m de la marque centrale, du côté où l’on joue.',
  },
  'cross-court-ad': {
    name: 'Croisé, côté avantage',
    intention:
      'Tenir la diagonale côté avantage jusqu’à s’y sentir chez soi, sans se laisser bousculer.',
    cue: 'Tourne les épaules avant le rebond.',
    roles: ['Fond de court', 'Fond de court'],
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 0,60 m de la marque centrale, du côté où l’on joue.',
  },
  'half-court-rally': {
    name: 'Échange en demi-court',
    intention:
      'Garder une balle droite dans son demi-court, pour que le long de ligne soit un choix et non un pari.',
    cue: 'Traverse bien la balle, vers ton partenaire.',
    roles: ['Fond de court', 'Fond de court'],
    setup: 'Plots de séparation dans l’axe de la ligne médiane, à 9,00 m du filet, des deux côtés.',
  },
  'long-rally': {
    name: 'Le long échange',
    intention: 'Apprendre la patience en jouant toujours une balle de plus que prévu.',
    cue: 'Souffle au moment de la frappe.',
    roles: ['Fond de court', 'Fond de court'],
    setup:
      'Plots de séparation à 9,00 m du filet et à 2,00 m de la ligne médiane, des deux côtés, pour jouer au milieu.',
  },
  'crosses-and-lines': {
    name: 'Croisés et longs de ligne',
    intention:
      'Lire tôt la balle suivante et couvrir toute la ligne de fond, l’un en croisé, l’autre long de ligne.',
    cue: 'Repars dès que ta balle est partie.',
    roles: ['Croisé', 'Long de ligne'],
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, dans l’axe de la marque centrale.',
  },
  'slice-and-drive': {
    name: 'Slice et lift',
    intention:
      'Répondre à une balle basse et fusante par une balle liftée, et apprendre à changer le rythme de l’échange.',
    cue: 'Plie les genoux, pas le dos.',
    roles: ['Slice', 'Lift'],
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, à 2,00 m de la marque centrale.',
  },
  'third-ball-down-the-line': {
    name: 'Troisième long de ligne',
    intention:
      'Ne changer de direction qu’en équilibre : deux balles croisées, la troisième long de ligne, la quatrième croisée.',
    cue: 'Pose tes appuis avant de changer de direction.',
    roles: ['Long de ligne', 'Croisé'],
    setup:
      'Plot de cible à 9,00 m du filet et à 1,50 m de la ligne latérale de simple, dans le coin de la troisième balle.',
  },
  'deep-past-the-markers': {
    name: 'Long, après les plots',
    intention:
      'Faire reculer son partenaire avec de la longueur et de la hauteur plutôt qu’avec de la force.',
    cue: 'Monte la balle : deux raquettes au-dessus du filet.',
    roles: ['Fond de court', 'Fond de court'],
    setup:
      'Plots de cible à 9,40 m du filet, des deux côtés, dans l’axe de la ligne médiane et sur la ligne latérale de simple.',
  },
  'wide-past-the-markers': {
    name: 'Large, après les plots',
    intention:
      'Ouvrir le court avec un angle croisé qui emmène son partenaire au-delà de la ligne latérale.',
    cue: 'Brosse l’extérieur de la balle.',
    roles: ['Fond de court', 'Fond de court'],
    setup:
      'Plots de cible sur les lignes de service et les lignes de fond, à 1,50 m de la ligne latérale de simple, là où arrive le croisé.',
  },
  'volley-to-volley': {
    name: 'Volée contre volée',
    intention: 'Garder la balle en l’air à deux au filet, les pieds vifs et les mains calmes.',
    cue: 'Mains devant, tête de raquette haute.',
    roles: ['Filet', 'Filet'],
    setup:
      'Plots de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, des deux côtés.',
  },
  'soft-volleys': {
    name: 'Volées douces',
    intention: 'Casser la vitesse de la balle, pour avoir une volée amortie quand il en faut une.',
    cue: 'Doigts souples : accueille la balle dans le tamis.',
    roles: ['Filet', 'Filet'],
    setup:
      'Plots de replacement à 2,40 m du filet et à 1,37 m de la ligne médiane, des deux côtés.',
  },
  'baseline-to-net': {
    name: 'Du fond au filet',
    intention:
      'Bloquer volée après volée en longueur, pendant que le partenaire donne du fond une balle facile à volleyer.',
    cue: 'Allège-toi à chaque frappe de ton partenaire.',
    roles: ['Fond de court', 'Filet'],
    setup:
      'Plot de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, pour qui est au filet.',
  },
  'volleys-left-and-right': {
    name: 'Volées à gauche, à droite',
    intention:
      'Diriger la volée d’un côté puis de l’autre avec les épaules, et faire courir son partenaire sans perdre la balle.',
    cue: 'Tourne les épaules, puis croise le pas.',
    roles: ['Fond de court', 'Filet'],
    setup:
      'Plot de replacement sur la ligne médiane, à 3,20 m du filet ; plot de replacement 0,50 m derrière la ligne de fond, dans l’axe de la marque centrale.',
  },
  'approach-pass-volley': {
    name: 'Approche, passing, volée',
    intention:
      'Monter derrière une balle longue jouée long de ligne, se rapprocher du filet et volleyer dans le court ouvert.',
    cue: 'Reprise d’appuis avant le passing, puis bouge.',
    roles: ['Attaque', 'Passing'],
    setup:
      'Plot de départ à 8,20 m du filet et à 2,00 m de la ligne médiane ; plot de replacement à 3,20 m du filet et à 1,20 m de la ligne médiane.',
  },
  'closing-in': {
    name: 'De plus en plus près',
    intention:
      'Gagner du terrain à chaque volée, de la ligne de service vers le filet, un pas après chaque balle.',
    cue: 'Avance après chaque volée, ne recule jamais.',
    roles: ['Filet', 'Filet'],
    setup:
      'Plots de départ sur les lignes de service, à 2,00 m de la ligne médiane ; plots de replacement à 4,00 m du filet et à 2,00 m de la ligne médiane.',
  },
  'lob-and-overhead': {
    name: 'Lob et smash',
    intention:
      'Donner un lob haut mais jouable, et le smasher avec contrôle dans le même demi-court.',
    cue: 'Mets-toi de profil et montre la balle du doigt.',
    roles: ['Lob', 'Smash'],
    setup:
      'Plot de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane ; plot de départ 1,00 m derrière la ligne de fond, à 2,00 m de la marque centrale.',
  },
  'volley-then-overhead': {
    name: 'Volée, puis smash',
    intention:
      'Être prêt au filet pour les deux réponses, d’abord la balle basse, puis aussitôt la balle haute.',
    cue: 'Recule d’abord le pied côté raquette.',
    roles: ['Fond de court', 'Filet'],
    setup:
      'Plot de replacement à 3,20 m du filet et à 2,00 m de la ligne médiane, pour qui est au filet.',
  },
  'all-the-way-in': {
    name: 'La montée complète',
    intention:
      'Jouer toute l’attaque au filet d’un seul élan : approche, volée, réponse au lob et smash pour finir.',
    cue: 'Arrête-toi en équilibre avant chaque frappe.',
    roles: ['Attaque', 'Défense'],
    setup:
      'Plot de départ à 8,20 m du filet et à 2,00 m de la ligne médiane ; plot de replacement sur la ligne médiane, à 3,20 m du filet.',
  },
  'back-to-the-lobber': {
    name: 'Lob, smash, encore',
    intention:
      'Placer le smash là où le partenaire peut lober de nouveau, car le contrôle passe avant la puissance.',
    cue: 'Frappe la balle au plus haut.',
    roles: ['Lob', 'Smash'],
    setup:
      'Plot de cible à 8,60 m du filet et à 2,50 m de la ligne latérale de simple ; plot de replacement à 3,20 m du filet et à 1,20 m de la ligne médiane.',
  },
  'let-it-bounce': {
    name: 'Smash après rebond',
    intention:
      'Juger un lob très haut, se placer derrière le rebond et frapper quand même au-dessus de la tête.',
    cue: 'Petits pas jusqu’à ce que la balle redescende.',
    roles: ['Lob', 'Smash'],
    setup:
      'Plot de replacement à 8,00 m du filet et à 2,00 m de la ligne médiane, pour qui smashe.',
  },
  'lob-and-follow': {
    name: 'Lober et suivre',
    intention:
      'Passer de la défense à l’attaque : lober la personne au filet, suivre sa balle et prendre la réponse en l’air.',
    cue: 'Ouvre le tamis et finis haut.',
    roles: ['Lob', 'Course'],
    setup:
      'Plot de départ à 3,20 m du filet et à 1,00 m de la ligne médiane ; plot de replacement sur la ligne médiane, à 4,20 m du filet.',
  },
  'lobs-past-the-markers': {
    name: 'Lobs après les plots',
    intention: 'Jouer un lob si long que personne ne peut l’attaquer.',
    cue: 'Du bas vers le haut, finis au-dessus de la tête.',
    roles: ['Lob', 'Lob'],
    setup:
      'Plots de cible à 8,60 m du filet, des deux côtés, dans l’axe de la ligne médiane et sur la ligne latérale de simple.',
  },
  'second-serve-deep-return': {
    name: 'Deuxième balle, retour long',
    intention:
      'Avoir confiance en sa deuxième balle, et la retourner longue au centre, là où le service n’a plus d’angle.',
    cue: 'Brosse l’arrière de la balle vers le haut.',
    roles: ['Service', 'Retour'],
    setup:
      'Plots de cible à 7,40 m du filet et à 2,00 m de la ligne médiane, de part et d’autre, pour le retour long.',
  },
  'serve-return-next': {
    name: 'Service, retour, suite',
    intention:
      'Enchaîner les trois balles qui ouvrent la plupart des points : service, retour et coup suivant au service.',
    cue: 'Replace-toi dès que tu retombes.',
    roles: ['Service', 'Retour'],
    setup:
      'Plots de replacement 0,50 m derrière les lignes de fond, dans l’axe de la marque centrale.',
  },
  'wide-serve-four-balls': {
    name: 'Service extérieur et suite',
    intention:
      'Servir à l’extérieur pour ouvrir le court, puis jouer dans l’espace et tenir l’échange à partir de là.',
    cue: 'Frappe vers le haut, puis vers la cible.',
    roles: ['Service', 'Retour'],
    setup:
      'Plot de cible sur la ligne de service, à 1,50 m de la ligne latérale de simple, dans le carré du service.',
  },
  'serves-to-the-middle': {
    name: 'Services au centre',
    intention:
      'Servir au centre, là où le filet est le plus bas, pendant que le partenaire attrape la balle et sert à son tour.',
    cue: 'Le même lancer à chaque fois, bras bien tendu.',
    roles: ['Service', 'Service'],
    setup:
      'Plots de cible sur les deux lignes de service, à 1,20 m de la ligne médiane, dans les carrés où l’on sert.',
  },
  'straight-serves': {
    name: 'Services tout droit',
    intention: 'Servir beaucoup de balles d’un geste fluide, droit devant, dans son demi-court.',
    cue: 'Bras lent pour monter, rapide pour frapper.',
    roles: ['Service', 'Retour'],
    setup: 'Plots de séparation dans l’axe de la ligne médiane, à 9,00 m du filet, des deux côtés.',
  },
  'serve-and-volley': {
    name: 'Service-volée',
    intention:
      'Suivre son service jusqu’à la ligne de service, s’arrêter en équilibre et jouer une première volée longue.',
    cue: 'Retombe dans le court et continue d’avancer.',
    roles: ['Service', 'Retour'],
    setup:
      'Plot de replacement sur la ligne de service, à 0,60 m de la ligne médiane, pour la reprise d’appuis.',
  },
  'return-and-come-in': {
    name: 'Retour et montée',
    intention:
      'Prendre tôt une deuxième balle, retourner long de ligne et suivre sa balle au filet.',
    cue: 'Geste court, poids du corps vers l’avant.',
    roles: ['Service', 'Retour'],
    setup:
      'Plot de replacement à 3,20 m du filet et à 1,40 m de la ligne médiane, pour qui retourne.',
  },
};
