import { drills } from './drills.en.ts';
import { at, formats } from './format.ts';

/** English. Every other language is a file of the same shape. */

const { number, one, two, day, list, isOne, count } = formats('en');

export const en = {
  language: 'en',
  direction: 'ltr' as 'ltr' | 'rtl',
  drills,
  unknownPlayer: 'unknown player',
  number: (n: number) => number.format(n),
  decimal: (n: number) => one.format(n),
  /** Lengths whose number and unit stay on one line. */
  lengths: {
    metres: (m: number) => `${two.format(m)}\u00a0m`,
    feet: (feet: number) => `${one.format(feet)}\u00a0ft`,
  },
  hundredths: (n: number) => two.format(n),
  /** A date YYYY-MM-DD as people say it. */
  date: (date: string) => day.format(at(date)),
  list: (items: string[]) => list.format(items),
  /** What there is to say of something, after its name. */
  named: (name: string, said: string) => `${name}: ${said}`,
  clock: (seconds: number) => {
    const whole = Math.ceil(seconds - 1e-9);
    return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
  },
  minutes: (minutes: number) => `${one.format(minutes)} min`,
  bar: {
    label: 'Parts of the app',
    today: 'Today',
    players: 'Players',
    week: 'Week',
    settings: 'Settings',
  },
  families: {
    groundstrokes: 'Groundstrokes',
    volleys: 'Volleys',
    'overheads-and-lobs': 'Overheads and lobs',
    'serves-and-returns': 'Serves and returns',
  },
  rules: {
    'in-a-row': 'in a row',
    'in-total': 'in total',
    sequence: 'sequence',
    'on-target': 'on target',
  },
  /** How a set of a drill is counted, in one line. */
  setCounts: (rule: 'in-a-row' | 'in-total' | 'sequence' | 'on-target', size: number) =>
    ({
      'in-a-row': `A set is ${size} in a row; a miss starts again`,
      'in-total': `A set is ${size} in total; a miss does not start again`,
      sequence: `A set is the whole sequence of ${size} shots`,
      'on-target': 'Each ball on target counts for the player who struck it',
    })[rule],
  trouble: {
    full: 'Phone full: new counts aren’t saved yet. Free some space and keep this page open; they are saved as soon as there is room.',
    refused:
      'This phone does not let the app save: new counts aren’t saved yet. Keep this page open. A private window often refuses; open the app in an ordinary one.',
    slow: 'This phone has not answered yet: new counts aren’t saved yet. Keep this page open; the app goes on asking.',
  },
  handPractice: 'Share this practice as a file',
  handed: {
    shared: 'Shared.',
    closed: 'Nothing was shared.',
    saved: (file: string) => `Saved as ${file}.`,
    text: 'This phone can’t share or save a file.',
  },
  damaged: (records: number, places: string[]) =>
    `${count(records, 'saved record', 'saved records')} can no longer be read: ${list.format(places)}. Everything else is here, and the damaged ones are kept as they are; Settings can share them.`,
  damagedPlaces: {
    practice: (date: string) => `in the practice of ${day.format(at(date))}`,
    undated: 'in a practice whose date is not known',
    standing: 'in the squad or the drills',
  },
  newVersion: 'A new version is on this phone.',
  takeNewVersion: 'Update now',
  demoBanner: 'Demo: an invented squad.',
  removeDemo: 'Remove the demo',
  demoStates: {
    coming: 'A squad and its season are being invented …',
    unsaved:
      'Some marks are not saved yet. The demo can be loaded as soon as they are; keep this page open.',
    failed:
      'The demo could not be loaded: the phone refused to save it, or a part of the app was not there yet. Your own ledger is untouched.',
    stays:
      'The phone did not let the demo be removed. Close other windows of the app and try again.',
  },
  notLoaded:
    'This part of the app could not be loaded. Your counts are safe; open the app again with a network.',
  back: 'Back',
  done: 'Done',
  cancel: 'Cancel',
  forCoach: 'For the coach',
  today: {
    title: 'Today',
    noSquad: 'Add the players of your squad first: nicknames are enough.',
    addPlayers: 'Add players',
    tryDemo: 'Look around with an invented squad',
    takeIn: 'Import a backup',
    here: 'Who is here',
    hereNext: 'Tap everyone who is here.',
    allHere: 'Everyone is here',
    hereCount: (here: number, all: number) => `${number.format(here)} of ${number.format(all)}`,
    onePlayer: 'A pair needs two: tap a second player.',
    block: 'Block',
    blockNext: 'Choose the drills of the block.',
    chooseDrills: 'Choose drills',
    changeBlock: 'Change',
    rounds: (rounds: number) => count(rounds, 'round', 'rounds'),
    mayBeEvicted:
      'This phone may clear what a page keeps after some days without a visit. Put the app on the home screen first: Settings says how.',
    usualLength: {
      short: 'shorter than the usual 20 to 30 minutes',
      usual: 'within the usual 20 to 30 minutes',
      long: 'longer than the usual 20 to 30 minutes',
    },
    pairs: 'Pairs',
    turnPair: (letter: string) => `Turn the roles of pair ${letter}`,
    turnAll: 'Turn the roles of all pairs',
    swapHint: 'Tap two players to swap them.',
    swapWith: (name: string) => `Now tap who swaps with ${name}.`,
    notKept: {
      together: (a: string, b: string) => `Couldn’t keep ${a} and ${b} together.`,
      apart: (a: string, b: string) => `Couldn’t keep ${a} and ${b} apart.`,
    },
    trio: (resting: string) =>
      `Three take turns: ${resting} rests first. After each set the one who hit first steps out and the one who rested steps in.`,
    trioOnTarget: (resting: string) =>
      `Three take turns: ${resting} rests first. Change at each third of the round: the one who hit first steps out and the one who rested steps in. So all three strike as many balls.`,
    toCourt: 'Go to the court',
    backToCourt: 'Back to the court',
    played: 'Rounds of today',
    toSettle: 'to settle',
    settled: 'settled',
    close: 'Close this practice',
    closed: 'This practice is closed.',
    evening: 'After practice',
    reopen: 'Open it again',
    newPractice: 'Start another practice',
    stillOpen: 'Still open in this practice:',
    openRound: (round: string) => `${round} is to be settled`,
    openMarks: (marks: number) =>
      count(marks, 'late or doubtful mark to decide', 'late or doubtful marks to decide'),
    closeAnyway: 'Close all the same',
    struck: 'struck out',
    propose: 'Propose a block',
    coverage: 'What is overdue',
    sheet: 'The block on paper',
    tooMany: 'Twenty-four players are the most that the court screen holds; leave some out.',
    roundNumber: (n: number) => `Round ${number.format(n)}`,
  },
  courts: {
    howMany: 'How many courts do you have?',
    howManyMeans:
      'Then it is known who plays where, and who waits for a court. Settings can change it.',
    so: (courts: number) => count(courts, 'court', 'courts'),
    wait: (pairs: number) => count(pairs, 'pair waits', 'pairs wait'),
    at: (court: number) => `Court ${number.format(court + 1)}`,
    /** Lanes from 0, of so many, as role 1 sees them who faces the net. */
    lane: (lane: number, lanes: number) =>
      lanes === 3
        ? (['in the middle', 'right', 'left'][lane] ?? '')
        : lanes > 2
          ? (['right of the middle', 'left of the middle', 'far right', 'far left'][lane] ?? '')
          : (['right half', 'left half'][lane] ?? ''),
    turnIn: 'Next on court',
    turnInMeans: 'No court is free for them in this round: they wait off the court.',
  },
  cautions: {
    title: 'Take care',
    block: [
      'Loose balls off the court, markers flat, room between pairs.',
      'In heat: water and shade between rounds.',
      'Pain: stop, and have it looked at by a licensed clinician.',
      'The rules of club, federation and country come first.',
    ],
    overhead:
      'Overheads: turn sideways, never run backwards; no ball underfoot, nobody close behind. A lob that goes too far back or outside your half: let it drop. Indoors, mind the ceiling.',
    serve:
      'Serves: only when the partner looks and is ready; nobody crosses in front of the server.',
  },
  court: {
    drawn: (name: string) => `The court for ${name}; its places are told below.`,
    title: 'Court',
    nothing: 'No round is planned. Choose who is here and the drills first.',
    toToday: 'To Today',
    before: 'Next round',
    of: (round: number, rounds: number) => `${number.format(round)} of ${number.format(rounds)}`,
    start: 'Start',
    intention: 'Tactical intention',
    cue: 'Cue',
    counting: 'A set',
    pause: 'Pause',
    resume: 'Go on',
    more: '+30 s',
    moreLabel: '+30 s: thirty more seconds',
    stop: 'Stop',
    stopSure: 'Stop now?',
    paused: 'Paused',
    over: 'Time’s up',
    stopped: 'Stopped',
    settle: 'Put counts right',
    takeBack: '−1',
    takeBackOf: (names: string) => `−1: take back the last set of ${names}`,
    sets: (sets: number): string => (isOne(sets) ? 'set' : 'sets'),
    saved: 'saved',
    saving: 'not saved yet',
    rests: (name: string) => `${name} rests`,
    usual: (sets: number) => `usual ${one.format(sets)}`,
    ahead: (sets: number) => `▲ usual ${one.format(sets)}`,
    late: (marks: number) => `${number.format(marks)} late`,
    doubtful: (marks: number) => `${number.format(marks)} doubtful`,
    sign30: '30 seconds',
    counted: 'How it is counted',
    ways: { tapped: 'As they happen', called: 'Called at the horn' },
    callsOf: (letter: string) => `Pair ${letter} counts for itself`,
    calledMeans: 'They count for themselves and call their number after the horn.',
    someTapped: 'Tap a pair that you count yourself.',
    allTiles: 'Show all tiles',
    calledOnly: 'Hide these tiles',
    notHeard: 'not heard',
    tooMany: (names: string, sets: number) =>
      `${names}: ${number.format(sets)} is more than can be struck in this time. It is kept; tap the name to change it.`,
    turns: 'Roles turn at half-time',
    turnNow: 'Turn roles',
    strikes: {
      groundstroke: 'groundstrokes',
      volley: 'volleys',
      overhead: 'overheads',
      lob: 'lobs',
      serve: 'serves',
      return: 'returns',
    },
    joins: (name: string, pair: string) => `${name} joins ${pair}`,
    withoutPartner: (name: string) => `${name} has no partner now. Tap a pair to make it a trio.`,
    newName: 'Somebody new: nickname',
    addName: 'Add',
    nameFaulty: 'A nickname must have 1 to 40 letters and be no one else’s.',
    here: 'Who is here',
    hereLater: 'This round goes on with the pairs it began with; the next one takes the change in.',
    tempoCheck: 'Tempo check',
    blockDone: 'The block is done',
    blockDoneNext: 'Show the players their counts, or close the practice.',
    players: 'Players and their counts',
    left: 'left',
    otherScreens: 'Other screens',
    wall: 'Wall view',
    wallMeans:
      'Clock and counts for a television or a tablet beside the court. It opens in a window of its own and follows this one.',
    pairScreenMeans:
      'A pair’s own screen, for a phone at the fence on which it counts itself. What is the coach’s there wants to be held for two seconds: “Start”, “Go on”, and “For the coach”, which leads back. Open the screen of pair:',
    pairScreenOf: (letter: string, names: string) => `${letter}: the own screen of ${names}`,
    sayPairs: 'Call out the pairs',
    saidPairs: (pairs: { letter: string; names: string[] }[]) =>
      pairs.map(({ letter, names }) => `${letter}: ${list.format(names)}.`).join(' '),
    sleeps: {
      unable:
        'This phone can’t keep its screen on: set a longer screen timeout in the phone’s settings.',
      refused:
        'This phone does not want to keep its screen on, perhaps to save power. Touch it now and then; the clock is right in any case.',
    },
  },
  /** What is looked at, as a question for yes or no; at most 40 letters, so that the court screen holds it. */
  foci: {
    recovery: 'Back in place in time?',
    stance: 'Low and ready?',
    'split-step': 'Split step before the shot?',
    'set-up': 'Set up early?',
    height: 'High enough over the net?',
    depth: 'Deep enough?',
    direction: 'In the right direction?',
    speed: 'At the right speed?',
    spin: 'With enough spin?',
  },
  looks: {
    title: 'Focus',
    is: { yes: 'Yes', no: 'No', unseen: 'Not seen' },
  },
  pads: { more: 'More than these', fewer: 'Back to the smaller numbers' },
  settle: {
    title: 'Put counts right',
    late: (second: string) => `After the horn, ${second}`,
    doubtful: (second: string) => `Too soon for a set, ${second}`,
    keep: 'Counts',
    strike: 'Doesn’t count',
    fewer: (names: string) => `One set fewer for ${names}`,
    more: (names: string) => `One set more for ${names}`,
    showing: 'Unfinished set, shots',
    showingOf: (names: string) => `Shots of the unfinished set of ${names}`,
    notSeen: 'not seen',
    best: 'Longest run',
    bestOf: (names: string) => `Longest run of ${names}`,
    next: 'Next round',
    finish: 'Done',
    skip: 'Skip, settle later today',
    clockJumped: (seconds: number) =>
      `The phone's clock jumped by ${one.format(Math.abs(seconds))} s in this round. Its length may be wrong.`,
    live: (seconds: number) => `${one.format(seconds)} s on the round clock`,
    none: 'This round is not on this phone, or was not played yet.',
    sets: 'sets',
    struck: 'Struck out: no figure counts this round.',
    strikeRound: 'Strike this round out',
    restoreRound: 'Count this round again',
    tooShort: (seconds: number) =>
      `This round lasted only ${one.format(seconds)} s. If it was a trial, strike it out: no figure will count it, and its drill is still to be played.`,
    wrongNames: 'Wrong names?',
    change: 'Change the count',
    changeOf: (names: string) => `Change the count of ${names}`,
    putRight: 'Put more right',
    turnedAt: (second: string) => `Roles turned at ${second}.`,
    notTurned: 'Roles did not turn in this round.',
    didTurn: 'They turned at half-time',
    didNotTurn: 'They did not turn',
    shared:
      'Nobody saw which of the called sets came before the turn: they are shared by the clock.',
    unwatched: 'Did nobody watch for a while? What was not counted then is not none.',
    from: 'from',
    to: 'to',
    strikeStretch: 'Leave it out',
    wasWatched: 'Was watched',
    plays: (letter: string, place: number) => `Pair ${letter}, player ${place}`,
  },
  reading: 'Reading earlier practices…',
  notRead:
    'Earlier practices could not be read just now. They are safe on this phone; open the app again.',
  pair: {
    title: (letter: string) => `Pair ${letter}`,
    notIn: (letter: string) => `No pair ${letter} plays in this round.`,
    nothing: 'No round is planned.',
    waits: 'Waits for the start.',
  },
  wall: {
    title: 'Wall view',
    waits: 'The next round stands here as soon as it is planned.',
    fullScreen: 'Full screen',
    leave: 'Leave',
  },
  help: 'Help',
};
