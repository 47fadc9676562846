import { formats } from './format.ts';

/** English, for what passes between phones: these words come with those screens and not with the app. */

const { number, count } = formats('en');

export const handover = {
  title: 'Other phones',
  means:
    'What one phone counted comes to another by code or by file. There is no account, and nothing leaves this phone unless you share it.',
  open: 'Other phones, erasing',
  back: 'Other phones',
  phone: {
    this: 'this phone',
    other: (name: string) => `phone ${name}`,
    earlier: 'a phone with an earlier version',
  },
  code: {
    title: 'By code',
    means: 'This practice as a code for the other phone’s camera: no network is needed.',
    part: (part: number, parts: number) => `${number.format(part)} of ${number.format(parts)}`,
  },
  show: {
    title: 'Show a code',
    share: 'What is shown',
    shares: {
      whole: 'This practice: who is here, pairs, block, and every count',
      own: 'Only what this phone wrote: the counts for whoever has the rest',
    },
    label: 'Code of this practice',
    how: 'On the other phone: Settings, Other phones, Read a code. Hold both phones still until it says that all is there.',
    holds: 'It holds the nicknames of the squad. What is counted from now on needs a new code.',
    tooLong: 'This is too long for a code. Share it by file.',
  },
  read: {
    title: 'Read a code',
    starting: 'The camera is starting …',
    how: 'Hold the camera so that the whole code of the other phone is seen.',
    have: (have: number, total: number) =>
      `${number.format(have)} of ${number.format(total)} parts seen. Hold still.`,
    another: 'Read another code',
    noCamera: {
      none: 'This phone gives the app no camera. Let the practice be shared by file.',
      refused:
        'The camera was not allowed. Allow it for this app in the phone’s settings, or let the practice be shared by file.',
    },
    strange: {
      foreign: 'This is no code of this app. Show the code of the other phone.',
      version: 'A newer version of the app made this code. Update the app first.',
      damaged: 'A part of the code was read wrongly. It is left out; go on holding the camera.',
      endless: 'This code claims more parts than any practice has. It is left out.',
    },
    spoilt: {
      damaged: 'What was read does not unpack. Nothing was imported; read the code again.',
      large: 'What was read would grow beyond any practice. Nothing was imported.',
    },
    refused: (why: string) => `Nothing of that code was imported: ${why}`,
  },
  card: {
    title: 'A player’s card',
    give: 'Card to take home',
    means:
      'The player’s own figures of the last day, under the nickname. The link holds them itself: no server sees them. Whoever has it can read it.',
    touches: 'touches',
    code: 'Code of this card',
    codeMeans: 'The camera of any phone opens it.',
    link: 'Link of this card',
    copy: 'Copy the link',
    copied: 'Copied.',
    picture: 'Share as a picture',
    noPicture: 'This phone makes no picture. Copy the link, or print the card.',
    print: 'Print',
    onlyHere:
      'This card stands in its link alone: keep the link, and it opens again, also without a network once the app is installed.',
    damaged: 'This is no whole card. Copy the link again from its first letter to its last.',
    newer: 'A newer version of the app made this card. Update the app first.',
    toApp: 'To the app',
  },
  copy: {
    due: 'More than a week of practice is in no backup. A lost phone would take it along.',
    make: 'Make a backup',
    passphrase: 'Passphrase, if wanted',
    passphraseMeans:
      'Only who knows it opens the backup, here or with any tool for age files. Write it down: nobody can find it again. Several words are better than one.',
    sealed: 'This backup is shut. Its passphrase',
    open: 'Open it',
    shut: {
      passphrase:
        'This passphrase does not open it, or the beginning of the file was changed. Nothing was imported.',
      damaged: 'The file was cut or changed: it does not open. Nothing was imported.',
      slow: 'It was shut so hard that this phone would take minutes to open it. Open it on a computer with an age tool.',
      key: 'A key opens this file, not a passphrase. Open it on a computer with an age tool.',
    },
  },
  analyst: {
    title: 'For analysts',
    means:
      'Tables with a description of every column (a Data Package), for programs that read many coaches’ files at once. Players are called as chosen in Settings: nicknames or initials.',
    span: 'Which practices',
    spans: { week: 'this week', month: 'this month', season: 'all there are' },
    none: 'No practice was held then.',
    handOver: 'Share the tables (ZIP)',
  },
  club: {
    title: 'A shared place',
    means:
      'The phones of a club meet in a folder: each writes one file of its own and reads those of the others. Never while a clock runs, and everything works without.',
    notInDemo: 'While the invented squad is shown, nobody is met.',
    open: 'Set up, or look',
    server: 'On the club’s web server',
    serverMeans:
      'A folder on the server that this app comes from, by WebDAV. No other server is asked.',
    at: (path: string) => `On the club’s web server: ${path}`,
    path: 'Folder, from this app’s address',
    user: 'Name',
    password: 'Password',
    passwordMeans:
      'Both stay on this phone, readable to whoever can read its storage. Take a name that opens nothing else.',
    join: 'Meet there',
    folder: 'In a folder of this device',
    folderMeans: 'A folder that a service of yours syncs with the other devices.',
    chooseFolder: 'Choose the folder',
    now: 'Meeting the others …',
    never: 'Not met yet.',
    met: (date: string) => `Last met on ${date}.`,
    round: 'A round is being played: the others are met after it.',
    waits: (practices: number) =>
      `Not there yet: ${count(practices, 'practice', 'practices')} of this phone. Nothing is lost; it goes there with the next meeting.`,
    unread: (phone: string) =>
      `The file of ${phone} cannot be read as it is. It is left out, and read again once that phone has written it anew.`,
    shared:
      'Another device wrote the same file as this phone. What it wrote was imported, and this phone now has a file of its own.',
    keep: (what: string) => `Keep ${what}`,
    meet: 'Meet now',
    leave: 'Leave this place',
    leaveMeans:
      'What was imported stays here. This phone’s file stays there until somebody deletes it.',
    faults: {
      unreachable: 'The place cannot be reached now. Counting goes on; it is tried again.',
      refused:
        'The place does not let this phone in: the name, the password or the permission is wrong.',
      missing: 'There is no such folder.',
      full: 'There is no room left at the place. Nothing there was changed; nothing here is lost.',
      elsewhere: 'That leads to another server. It is not followed.',
      strange:
        'What answers there is no shared place: it gave something else than a list of files.',
    },
  },
  file: {
    title: 'By file',
    means: 'This practice as a file, for a phone that goes on with it or joins what it counted.',
    none: 'No practice is under way that could be shared.',
  },
  counts: {
    two: 'Two phones counted this pair. The counts are not added up; say which one holds.',
    of: (phone: string, sets: number) => `${phone}: ${count(sets, 'set', 'sets')}`,
    holds: 'This one holds',
    aside: 'Counted with other pairs at the same time, and in no figure:',
    asideOf: (names: string, sets: number) => `${names}: ${count(sets, 'set', 'sets')}`,
  },
  arriving: {
    title: 'This is what comes',
    looking: 'Looking at what is new …',
    failed: 'The phone did not let the ledger be read. Nothing was imported; try again.',
    nothing: 'Everything in it was here already.',
    entries: (entries: number) => count(entries, 'new entry', 'new entries'),
    practices: (practices: number, rounds: number, marks: number) =>
      `${count(practices, 'practice', 'practices')}, ${count(rounds, 'round', 'rounds')}, ${count(marks, 'mark', 'marks')}`,
    from: 'From',
    fromPhone: (phone: string, rounds: number, marks: number, entries: number) =>
      `${phone}: ${count(rounds, 'round', 'rounds')}, ${count(marks, 'mark', 'marks')}, ${count(entries, 'entry', 'entries')}`,
    players: (names: string) => `New players: ${names}.`,
    stays: 'What is here stays as it is; what comes is added once.',
    erases:
      'Another phone has erased what is still here. It stays here unless you say that it goes:',
    erase: (what: string) => `Erase here too: ${what}`,
    take: 'Import it',
    leave: 'Leave it',
    left: 'Nothing was imported.',
    kept: (entries: number) => `${count(entries, 'new entry', 'new entries')} imported.`,
    notKept: 'The phone did not let it be saved. Nothing was imported.',
  },
  players: {
    title: 'One child or two',
    means:
      'Squads that were typed on two phones hold the same child twice. Say who is one child: the counts then stand together, and you can take it back at any time.',
    none: 'Nobody is called like somebody else.',
    ask: (one: string, other: string) => `Are ${one} and ${other} one child?`,
    since: (days: number) => count(days, 'practice', 'practices'),
    one: 'One child',
    two: 'Two children',
    merged: 'Taken for one child',
    takeBack: (name: string) => `Two after all: ${name}`,
  },
  erase: {
    title: 'Erase',
    means:
      'Erased here is gone from this phone for good, and does not come back with an older file. Copies that were shared keep it: ask whoever has one to erase it too.',
    player: 'A player',
    playerMeans:
      'Name, level, hand and wishes go. What was counted stays for the partners, without a name.',
    practice: 'A practice',
    practiceMeans: 'The practice goes with every count in it.',
    choose: 'choose',
    erase: (what: string) => `Erase ${what}`,
    sure: (what: string) => `Erase ${what} now? It cannot be taken back.`,
    done: (what: string) => `${what}: erased from this phone.`,
    doneMeans: 'In files, codes and cards that were shared it stays until they are deleted.',
    failed:
      'The phone did not let it be erased yet. It is out of sight, and is erased when the app is opened again.',
    everything: 'Everything',
    everythingMeans:
      'The whole ledger of this phone: squad, drills, practices. Hold the button for two seconds.',
    eraseEverything: 'Erase everything',
    notEverything: 'The phone did not let the ledger be erased. Try again.',
    cancel: 'Cancel',
  },
  practiceOf: (date: string) => `practice of ${date}`,
};
