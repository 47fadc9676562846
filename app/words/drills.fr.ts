import type { StarterDrillId } from '../../core/drill/starter-drills.ts';
import type { DrillHead } from './drill-text.ts';

/** What is said of the starter drills wherever they come up, in French. */
export const drills: Record<StarterDrillId, DrillHead> = {
  'mini-rally': {
    name: 'Mini-échange',
    intention:
      'Réveiller l’œil, les jambes et le toucher, trois paires côte à côte, avec des balles courtes et basses.',
    cue: 'Geste lent, fin de geste longue.',
  },
  'cross-court-deuce': {
    name: 'Croisé, côté égalité',
    intention:
      'S’approprier la trajectoire la plus sûre : au-dessus du milieu du filet, dans la diagonale, là où le court est le plus long.',
    cue: 'Vise haut, au-dessus du milieu du filet.',
  },
  'cross-court-ad': {
    name: 'Croisé, côté avantage',
    intention:
      'Tenir la diagonale côté avantage jusqu’à s’y sentir chez soi, sans se laisser bousculer.',
    cue: 'Tourne les épaules avant le rebond.',
  },
  'half-court-rally': {
    name: 'Échange en demi-court',
    intention:
      'Garder la balle tout droit dans son demi-court, pour que le long de ligne soit un choix et non un pari.',
    cue: 'Traverse bien la balle, vers ton partenaire.',
  },
  'long-rally': {
    name: 'Le long échange',
    intention: 'Apprendre la patience en jouant toujours une balle de plus que prévu.',
    cue: 'Souffle au moment de la frappe.',
  },
  'crosses-and-lines': {
    name: 'Croisés et longs de ligne',
    intention:
      'Lire tôt la balle suivante et couvrir toute la ligne de fond, l’un en croisé, l’autre long de ligne.',
    cue: 'Repars dès que ta balle est partie.',
  },
  'slice-and-drive': {
    name: 'Slice et lift',
    intention:
      'Répondre à une balle basse et fusante par une balle liftée, et apprendre à changer le rythme de l’échange.',
    cue: 'Plie les genoux, pas le dos.',
  },
  'third-ball-down-the-line': {
    name: 'Troisième long de ligne',
    intention:
      'Ne changer de direction qu’en équilibre : deux balles croisées, la troisième long de ligne, la quatrième croisée.',
    cue: 'Pose tes appuis avant de changer de direction.',
  },
  'deep-past-the-markers': {
    name: 'Long, derrière les plots',
    intention:
      'Faire reculer son partenaire avec de la longueur et de la hauteur plutôt qu’avec de la force.',
    cue: 'Monte la balle : deux raquettes au-dessus du filet.',
  },
  'wide-past-the-markers': {
    name: 'Angle croisé, hors des plots',
    intention:
      'Ouvrir le court avec un angle croisé qui emmène son partenaire au-delà de la ligne latérale.',
    cue: 'Fais pencher la balle dans le virage, comme un vélo.',
  },
  'inside-out-forehand': {
    name: 'Coup droit décroisé',
    intention:
      'Faire du coup droit sa réponse aussi depuis le coin revers, et y tenir le partenaire dans le coin opposé.',
    cue: 'Petits pas rapides pour contourner la balle.',
  },
  'short-ball-then-deep': {
    name: 'Balle courte, puis longue',
    intention:
      'Entrer dans une balle courte et la jouer longue, puis être de retour à temps pour la suivante, longue aussi.',
    cue: 'Va chercher la balle courte devant toi.',
  },
  'drop-shot-and-chase': {
    name: 'Amortie et course',
    intention:
      'Jouer une amortie avec le même geste qu’une balle longue, et apprendre à en reprendre une en bout de course, avec contrôle.',
    cue: 'Lève les yeux tôt et pars aussitôt.',
  },
  'volley-to-volley': {
    name: 'Volée contre volée',
    intention: 'Garder la balle en l’air à deux au filet, les pieds vifs et les mains calmes.',
    cue: 'Mains devant, tête de raquette haute.',
  },
  'soft-volleys': {
    name: 'Volées douces',
    intention: 'Casser la vitesse de la balle, pour avoir une volée amortie quand il en faut une.',
    cue: 'Doigts souples : accueille la balle dans le tamis.',
  },
  'baseline-to-net': {
    name: 'Du fond au filet',
    intention:
      'Bloquer volée après volée en longueur, pendant que le partenaire donne du fond une balle facile à volleyer.',
    cue: 'Reprise d’appuis à chaque frappe de ton partenaire.',
  },
  'volleys-left-and-right': {
    name: 'Volées à gauche, à droite',
    intention:
      'Diriger la volée d’un côté puis de l’autre avec les épaules, et faire courir son partenaire sans perdre la balle.',
    cue: 'Tourne les épaules, puis croise le pas.',
  },
  'approach-pass-volley': {
    name: 'Approche, passing, volée',
    intention:
      'Monter derrière une balle longue jouée long de ligne, se rapprocher du filet et volleyer dans le court ouvert.',
    cue: 'Reprise d’appuis avant le passing, puis bouge.',
  },
  'closing-in': {
    name: 'De plus en plus près',
    intention:
      'Gagner du terrain à chaque volée, de la ligne de service vers le filet, un pas après chaque balle.',
    cue: 'Avance après chaque volée, ne recule jamais.',
  },
  'baseline-to-net-across': {
    name: 'Du fond au filet, en croisé',
    intention:
      'Volleyer dans la longue diagonale, là où le filet est bas, et apprendre à couvrir l’angle de cette place.',
    cue: 'Montre le tamis là où la balle doit aller.',
  },
  'half-volley-pick-up': {
    name: 'Demi-volée',
    intention:
      'Sauver la balle dans ses pieds en montant, pour qu’une balle basse ne fasse pas reculer.',
    cue: 'Reste bas jusqu’au départ de la balle.',
  },
  'target-volleys': {
    name: 'Volées en cible',
    intention:
      'Donner un but à la volée : loin derrière les plots, là où le partenaire doit céder du terrain.',
    cue: 'Finis le tamis vers la cible.',
  },
  'lob-and-overhead': {
    name: 'Lob et smash',
    intention: 'Donner un lob haut mais jouable, et le smasher avec contrôle vers qui a lobé.',
    cue: 'Mets-toi de profil et montre la balle du doigt.',
  },
  'volley-then-overhead': {
    name: 'Volée, puis smash',
    intention:
      'Être prêt au filet pour les deux réponses, d’abord la balle basse, puis aussitôt la balle haute.',
    cue: 'Recule d’abord le pied côté raquette.',
  },
  'all-the-way-in': {
    name: 'La montée complète',
    intention:
      'Jouer toute l’attaque au filet d’un seul élan : approche, volée, réponse au lob et smash pour finir.',
    cue: 'Arrête-toi en équilibre avant chaque frappe.',
  },
  'back-to-the-lobber': {
    name: 'Lob, smash, encore',
    intention:
      'Placer le smash là où le partenaire peut lober de nouveau, car le contrôle passe avant la puissance.',
    cue: 'Frappe la balle au plus haut.',
  },
  'let-it-bounce': {
    name: 'Smash après rebond',
    intention:
      'Juger un lob très haut, se placer derrière le rebond et frapper quand même au-dessus de la tête.',
    cue: 'Petits pas jusqu’à ce que la balle redescende.',
  },
  'lob-and-follow': {
    name: 'Lober et suivre',
    intention:
      'Passer de la défense à l’attaque : lober la personne au filet, suivre sa balle et prendre la réponse en l’air.',
    cue: 'Ouvre le tamis et finis haut.',
  },
  'lobs-past-the-markers': {
    name: 'Lobs derrière les plots',
    intention: 'Jouer un lob si long que personne ne peut l’attaquer.',
    cue: 'Du bas vers le haut, finis au-dessus de la tête.',
  },
  'target-overheads': {
    name: 'Smashs en cible',
    intention: 'Placer le smash dans le coin vide, car un smash bien placé se passe de force.',
    cue: 'Choisis le coin avant de frapper.',
  },
  'second-serve-deep-return': {
    name: 'Deuxième balle, retour long',
    intention:
      'Avoir confiance en sa deuxième balle ; en face, retourner long au centre, là où le service n’a plus d’angle.',
    cue: 'Brosse l’arrière de la balle vers le haut.',
  },
  'serve-return-next': {
    name: 'Service, retour, suite',
    intention:
      'Enchaîner les trois balles qui ouvrent la plupart des points : service, retour et premier coup du serveur après le retour.',
    cue: 'Replace-toi dès que tu retombes.',
  },
  'wide-serve-four-balls': {
    name: 'Service extérieur et suite',
    intention:
      'Servir à l’extérieur pour ouvrir le court, puis jouer dans l’espace et tenir l’échange à partir de là.',
    cue: 'Frappe vers le haut, puis vers la cible.',
  },
  'serves-to-the-middle': {
    name: 'Services au T',
    intention:
      'Servir au T, là où le filet est le plus bas, pendant que le partenaire arrête la balle et sert à son tour.',
    cue: 'Le même lancer à chaque fois, bras bien tendu.',
  },
  'straight-serves': {
    name: 'Services tout droit',
    intention:
      'Trouver un rythme de service fluide sans souci de viser, ce qui se travaille en diagonale.',
    cue: 'Bras lent pour monter, rapide pour frapper.',
  },
  'serve-and-volley': {
    name: 'Service-volée',
    intention:
      'Suivre son service jusqu’à la ligne de service, s’arrêter en équilibre et jouer une première volée longue.',
    cue: 'Retombe dans le court et continue d’avancer.',
  },
  'return-and-come-in': {
    name: 'Retour et montée',
    intention:
      'Prendre tôt une deuxième balle, retourner long de ligne et suivre sa balle au filet.',
    cue: 'Geste court, poids du corps vers l’avant.',
  },
  'wide-serve-deuce-side': {
    name: 'Service extérieur, égalité',
    intention:
      'Sortir qui retourne du court avec une première balle extérieure, puis jouer dans l’espace ouvert.',
    cue: 'Lance un peu plus du côté de la raquette.',
  },
};
