import { formats } from './format.ts';
import type { HandoverWords } from './handover-words.ts';

/** French, for what passes between phones. */

const { number, count } = formats('fr');

export const handover: HandoverWords = {
  title: 'Autres téléphones',
  means:
    'Ce qu’un téléphone a compté passe à un autre par code ou par fichier. Il n’y a pas de compte, et rien ne quitte ce téléphone sans que vous le partagiez.',
  open: 'Autres téléphones, effacer',
  back: 'Autres téléphones',
  phone: {
    this: 'ce téléphone',
    other: (name) => `téléphone ${name}`,
    earlier: 'un téléphone avec une version antérieure',
  },
  code: {
    title: 'Par code',
    means: 'Cette séance en code pour l’appareil photo de l’autre téléphone : sans réseau.',
    part: (part, parts) => `${number.format(part)} sur ${number.format(parts)}`,
  },
  show: {
    title: 'Montrer un code',
    share: 'Ce qui est montré',
    shares: {
      whole: 'Cette séance : qui est là, paires, bloc, et tous les comptes',
      own: 'Seulement ce que ce téléphone a écrit : les comptes, pour qui a le reste',
    },
    label: 'Code de cette séance',
    how: 'Sur l’autre téléphone : Réglages, Autres téléphones, Lire un code. Tenir les deux téléphones immobiles jusqu’à ce que tout soit là.',
    holds:
      'Il contient les surnoms du groupe. Ce qui est compté à partir de maintenant demande un nouveau code.',
    tooLong: 'C’est trop long pour un code. Partagez-le par fichier.',
  },
  read: {
    title: 'Lire un code',
    starting: 'L’appareil photo démarre…',
    how: 'Tenir l’appareil photo de façon à voir tout le code de l’autre téléphone.',
    have: (have, total) =>
      `${number.format(have)} parties vues sur ${number.format(total)}. Ne pas bouger.`,
    another: 'Lire un autre code',
    noCamera: {
      none: 'Ce téléphone ne donne pas d’appareil photo à l’appli. Faites partager la séance par fichier.',
      refused:
        'L’appareil photo n’a pas été autorisé. Autorisez-le pour cette appli dans les réglages du téléphone, ou faites partager la séance par fichier.',
    },
    strange: {
      foreign: 'Ce n’est pas un code de cette appli. Montrez le code de l’autre téléphone.',
      version: 'Une version plus récente de l’appli a fait ce code. Mettez d’abord l’appli à jour.',
      damaged:
        'Une partie du code a été mal lue. Elle est laissée de côté ; continuez à tenir l’appareil.',
      endless: 'Ce code annonce plus de parties qu’aucune séance n’en a. Il est laissé de côté.',
    },
    spoilt: {
      damaged: 'Ce qui a été lu ne se déplie pas. Rien n’a été importé ; relisez le code.',
      large: 'Ce qui a été lu dépasserait toute séance. Rien n’a été importé.',
    },
    refused: (why) => `Rien de ce code n’a été importé : ${why}`,
  },
  card: {
    title: 'La carte d’un joueur',
    give: 'Carte à emporter',
    means:
      'Les chiffres du joueur pour sa dernière journée, sous son surnom. Le lien les contient lui-même : aucun serveur ne les voit. Qui l’a peut la lire.',
    touches: 'frappes',
    code: 'Code de cette carte',
    codeMeans: 'L’appareil photo de n’importe quel téléphone l’ouvre.',
    link: 'Lien de cette carte',
    copy: 'Copier le lien',
    copied: 'Copié.',
    picture: 'Partager en image',
    noPicture: 'Ce téléphone ne fait pas d’image. Copiez le lien, ou imprimez la carte.',
    print: 'Imprimer',
    onlyHere:
      'Cette carte tient dans son seul lien : gardez-le, et elle s’ouvre de nouveau, même sans réseau une fois l’appli installée.',
    damaged: 'Ce n’est pas une carte entière. Copiez le lien de la première à la dernière lettre.',
    newer: 'Une version plus récente de l’appli a fait cette carte. Mettez d’abord l’appli à jour.',
    toApp: 'Vers l’appli',
  },
  copy: {
    due: 'Plus d’une semaine de séances n’est dans aucune sauvegarde. Un téléphone perdu l’emporterait.',
    make: 'Faire une sauvegarde',
    passphrase: 'Phrase secrète, si voulu',
    passphraseMeans:
      'Seul qui la connaît ouvre la sauvegarde, ici ou avec tout outil pour fichiers age. Notez-la : personne ne peut la retrouver. Plusieurs mots valent mieux qu’un.',
    sealed: 'Cette sauvegarde est fermée. Sa phrase secrète',
    open: 'L’ouvrir',
    shut: {
      passphrase:
        'Cette phrase ne l’ouvre pas, ou le début du fichier a été changé. Rien n’a été importé.',
      damaged: 'Le fichier a été coupé ou changé : il ne s’ouvre pas. Rien n’a été importé.',
      slow: 'Elle est fermée si fort que ce téléphone mettrait des minutes à l’ouvrir. Ouvrez-la sur un ordinateur avec un outil age.',
      key: 'Une clé ouvre ce fichier, pas une phrase. Ouvrez-le sur un ordinateur avec un outil age.',
    },
  },
  analyst: {
    title: 'Pour les analystes',
    means:
      'Des tableaux avec la description de chaque colonne (un Data Package), pour des programmes qui lisent les fichiers de plusieurs entraîneurs à la fois. Les joueurs y portent le nom choisi dans Réglages : surnoms ou initiales.',
    span: 'Quelles séances',
    spans: { week: 'cette semaine', month: 'ce mois', season: 'toutes' },
    none: 'Aucune séance dans cette période.',
    handOver: 'Partager les tableaux (ZIP)',
  },
  club: {
    title: 'Un lieu partagé',
    means:
      'Les téléphones d’un club se retrouvent dans un dossier : chacun y écrit son propre fichier et lit ceux des autres. Jamais pendant un chrono, et tout marche sans.',
    notInDemo: 'Tant que le groupe inventé est affiché, personne n’est rencontré.',
    open: 'Régler ou regarder',
    server: 'Sur le serveur web du club',
    serverMeans:
      'Un dossier sur le serveur d’où vient cette appli, par WebDAV. Aucun autre serveur n’est appelé.',
    at: (path) => `Sur le serveur web du club : ${path}`,
    path: 'Dossier, à partir de l’adresse de l’appli',
    user: 'Nom',
    password: 'Mot de passe',
    passwordMeans:
      'Les deux restent sur ce téléphone, lisibles par qui peut lire son stockage. Prenez un nom qui n’ouvre rien d’autre.',
    join: 'S’y retrouver',
    folder: 'Dans un dossier de cet appareil',
    folderMeans: 'Un dossier qu’un service à vous synchronise avec les autres appareils.',
    chooseFolder: 'Choisir le dossier',
    now: 'Rencontre des autres…',
    never: 'Pas encore de rencontre.',
    met: (date) => `Dernière rencontre : ${date}.`,
    round: 'Un passage se joue : la rencontre a lieu après.',
    waits: (practices) =>
      `Pas encore là-bas : ${count(practices, 'séance', 'séances')} de ce téléphone. Rien n’est perdu ; cela part à la prochaine rencontre.`,
    unread: (phone) =>
      `Le fichier de « ${phone} » ne peut pas être lu tel quel. Il est laissé de côté, et relu quand ce téléphone l’aura récrit.`,
    shared:
      'Un autre appareil a écrit le même fichier que ce téléphone. Ce qu’il a écrit a été importé, et ce téléphone a maintenant son propre fichier.',
    keep: (what) => `Garder ${what}`,
    meet: 'Rencontrer maintenant',
    leave: 'Quitter ce lieu',
    leaveMeans:
      'Ce qui a été importé reste ici. Le fichier de ce téléphone reste là-bas tant que personne ne le supprime.',
    faults: {
      unreachable: 'Le lieu n’est pas joignable. Le comptage continue ; nouvel essai plus tard.',
      refused:
        'Le lieu ne laisse pas entrer ce téléphone : le nom, le mot de passe ou l’autorisation ne va pas.',
      missing: 'Ce dossier n’existe pas.',
      full: 'Il n’y a plus de place là-bas. Rien n’y a été changé ; rien n’est perdu ici.',
      elsewhere: 'Cela mène à un autre serveur. Il n’est pas suivi.',
      strange: 'Ce qui répond n’est pas un lieu partagé : autre chose qu’une liste de fichiers.',
    },
  },
  file: {
    title: 'Par fichier',
    means:
      'Cette séance en fichier, pour un téléphone qui la continue ou qui réunit ce qu’il a compté.',
    none: 'Aucune séance en cours à partager.',
  },
  counts: {
    two: 'Deux téléphones ont compté cette paire. Les comptes ne s’ajoutent pas ; dites lequel vaut.',
    of: (phone, sets) => `${phone} : ${count(sets, 'série', 'séries')}`,
    holds: 'Celui-ci vaut',
    aside: 'Compté au même moment avec d’autres paires, et dans aucun chiffre :',
    asideOf: (names, sets) => `${names} : ${count(sets, 'série', 'séries')}`,
  },
  arriving: {
    title: 'Voici ce qui arrive',
    looking: 'Recherche de ce qui est nouveau…',
    failed: 'Le téléphone n’a pas laissé lire le carnet. Rien n’a été importé ; réessayez.',
    nothing: 'Tout ce qu’il contient était déjà là.',
    entries: (entries) => count(entries, 'nouvelle entrée', 'nouvelles entrées'),
    practices: (practices, rounds, marks) =>
      `${count(practices, 'séance', 'séances')}, ${count(rounds, 'passage', 'passages')}, ${count(marks, 'pointage', 'pointages')}`,
    from: 'De',
    fromPhone: (phone, rounds, marks, entries) =>
      `${phone} : ${count(rounds, 'passage', 'passages')}, ${count(marks, 'pointage', 'pointages')}, ${count(entries, 'entrée', 'entrées')}`,
    players: (names) => `Nouveaux joueurs : ${names}.`,
    stays: 'Ce qui est ici reste tel quel ; ce qui arrive est ajouté une fois.',
    erases:
      'Un autre téléphone a effacé ce qui est encore ici. Cela reste, sauf si vous dites que cela part :',
    erase: (what) => `Effacer ici aussi : ${what}`,
    take: 'Importer',
    leave: 'Laisser',
    left: 'Rien n’a été importé.',
    kept: (entries) => count(entries, 'nouvelle entrée importée.', 'nouvelles entrées importées.'),
    notKept: 'Le téléphone n’a pas laissé enregistrer. Rien n’a été importé.',
  },
  players: {
    title: 'Un enfant ou deux',
    means:
      'Des groupes saisis sur deux téléphones contiennent deux fois le même enfant. Dites qui est le même : les comptes sont alors réunis, et vous pouvez revenir dessus à tout moment.',
    none: 'Personne ne porte le nom d’un autre.',
    ask: (one, other) => `${one} et ${other} : un seul enfant ?`,
    since: (days) => count(days, 'séance', 'séances'),
    one: 'Un enfant',
    two: 'Deux enfants',
    merged: 'Pris pour un seul enfant',
    takeBack: (name) => `Deux finalement : ${name}`,
  },
  erase: {
    title: 'Effacer',
    means:
      'Ce qui est effacé ici disparaît pour de bon de ce téléphone, et ne revient pas avec un ancien fichier. Les copies partagées le gardent : demandez à qui en a une de l’effacer aussi.',
    player: 'Un joueur',
    playerMeans:
      'Nom, niveau, main et souhaits partent. Ce qui a été compté reste pour les partenaires, sans nom.',
    practice: 'Une séance',
    practiceMeans: 'La séance part avec tous ses comptes.',
    choose: 'choisir',
    erase: (what) => `Effacer ${what}`,
    sure: (what) => `Effacer ${what} maintenant ? On ne peut pas revenir en arrière.`,
    done: (what) => `${what} : effacé de ce téléphone.`,
    doneMeans:
      'Dans les fichiers, codes et cartes qui ont été partagés, cela reste tant qu’ils ne sont pas supprimés.',
    failed:
      'Le téléphone n’a pas encore laissé effacer. Ce n’est plus visible, et ce sera effacé à la prochaine ouverture.',
    everything: 'Tout',
    everythingMeans:
      'Tout le carnet de ce téléphone : groupe, exercices, séances. Tenez le bouton deux secondes.',
    eraseEverything: 'Tout effacer',
    notEverything: 'Le téléphone n’a pas laissé effacer le carnet. Réessayez.',
    cancel: 'Annuler',
  },
  practiceOf: (date) => `séance du ${date}`,
};
