import { at, formats } from './format.ts';

const { number, one, span, count, decimalSign, list, weekday } = formats('en');

/** What screens away from the court say: settings, the squad, the week. */
export const desk = {
  settings: {
    title: 'Settings',
    squad: 'The squad',
    drills: 'Write a drill of your own',
    looks: 'On this phone',
    language: 'Language',
    languageOfPhone: 'as the phone has it',
    theme: 'Light or dark',
    themes: { phone: 'as the phone has it', light: 'light, for the sun', dark: 'dark' },
    initials: 'Initials in place of nicknames in everything that leaves this phone',
    initialsMean: 'For tables, cards and pages that you export or share.',
    atCourt: 'At the court',
    sound: 'Sound',
    sounds: { off: 'off', quiet: 'quiet', loud: 'loud' },
    soundMeans:
      'At the start, at 30 seconds, in the last five and at the end. Some phones stay mute while their ring switch is off; the screen shows every sign in any case.',
    tryIt: 'Let me hear it',
    click: 'A quiet click at each count',
    sayPairs: 'Call out the next pairs',
    noVoice:
      'This phone has no voice of its own in this language that could call out the next pairs.',
    hand: 'The thumb that counts',
    hands: { right: 'right', left: 'left' },
    keys: 'Keys count',
    keysMean:
      'For a keyboard or a clicker: 1 to 9 count on the tiles in their order, A to L for the pair of that letter; with Shift the last set is taken back. Space starts, pauses and goes on.',
    homeScreen: 'On the home screen',
    installed: 'The app is on your home screen. It opens there without a network.',
    whyInstall:
      'From the home screen the app opens like any other, full-size and without a network. It is best put there before the first practice.',
    install: 'Put it on the home screen',
    apple: 'iPhone and iPad',
    appleHow:
      'Open this page in Safari, tap Share (the square with an arrow), then “Add to Home Screen”.',
    appleWhy:
      'Safari clears the data of a page that was not opened for seven days; an app on the home screen is left alone. There it starts with an empty ledger of its own.',
    android: 'Android',
    androidHow:
      'Open the browser’s menu (the three dots), then “Install app” or “Add to Home screen”.',
    keeping: 'Your data',
    promises: [
      'Every count stays on this phone. Nothing is sent to anyone; something leaves only when you share it.',
      'There is no account and no measuring of what you do, and nothing is fetched from anywhere but where the app came from.',
      'Players are nicknames, and they are never ranked.',
    ],
    space: 'When the phone runs short of space',
    kept: {
      yes: 'This browser has promised to keep the ledger, also when space runs short.',
      no: 'This browser has not promised to keep the ledger when space runs short. That is normal: most promise it only to an app that is on the home screen or opened often. Nothing is lost as long as there is room.',
      unknown: 'This browser does not say whether it keeps the ledger when space runs short.',
    },
    askToPersist: 'Ask it to promise',
    demo: 'The demo',
    demoMeans:
      'An invented squad with a season of twelve weeks, to look around in. It is kept apart: your own ledger stays as it is.',
    loadDemo: 'Load the demo',
    backup: 'Backup',
    backupMeans:
      'One file with every entry of this ledger, for another phone or in case this one is lost. It holds the nicknames.',
    makeBackup: 'Make a backup',
    making: 'The backup is being made …',
    made: (entries: number, kilobytes: number) =>
      `Ready: ${count(entries, 'entry', 'entries')}, ${number.format(kilobytes)} kB.`,
    handBackup: 'Share the backup',
    notMade: 'The phone did not let the ledger be read. Try again.',
    withoutHurt: 'What can no longer be read is not in it.',
    takeIn: 'Import a file from this app',
    takeInMeans:
      'A backup, or a practice from another phone. What is here stays: only what is new is added.',
    takingIn: 'The file is being read …',
    refused: (line: number, why: string) =>
      `Nothing was imported. Line ${number.format(line)}: ${why}`,
    refusals: {
      heading: () => 'this is no file from this app.',
      version: () => 'a newer version of the app made this file. Update the app first.',
      long: () => 'the line is far too long.',
      json: () => 'the line cannot be read.',
      reserved: (field: string) => `the field “${field}” has a name that no entry may use.`,
      deep: (field: string) => `too much stands within “${field}”.`,
      entry: (field: string) => `the field “${field}” is missing or wrong.`,
      many: () => 'the file has more entries than any ledger.',
      cut: () => 'the file was cut short here.',
      count: () => 'the file has lost some of its entries.',
      after: () => 'something follows the end of the file.',
      large: () => 'the file is larger than any ledger.',
      packing: () => 'the file does not unpack; it was damaged, or this phone cannot unpack it.',
      letters: () => 'from here on it is no text.',
      slow: () => 'the phone took too long over it.',
      unread: () => 'the phone did not let the file be read.',
    },
    damaged: 'Damaged records',
    damagedMeans:
      'They can no longer be read. Share them with somebody who may mend them, or import a backup; after that they can be removed.',
    handDamaged: 'Share the damaged records',
    removeDamaged: 'Remove them from this phone',
    removeHanded: (records: number) =>
      `Remove ${count(records, 'record that was', 'records that were')} shared`,
    removeSure: 'Remove them now?',
    notHanded: (records: number) =>
      `Nothing was shared: ${count(records, 'record is', 'records are')} gone for good then.`,
    damagedSince: (records: number) =>
      `${count(records, 'record was', 'records were')} found since, or changed: not shared, and not removed.`,
    removed: (records: number) => `${count(records, 'record', 'records')} removed.`,
    stayed: (records: number) =>
      `${count(records, 'record has', 'records have')} changed since and stayed: share again what is damaged.`,
    notRemoved: 'The phone did not let them be removed. Try again.',
    about: 'This app',
    version: (version: string) => `Rally Ledger ${version}`,
  },
  nowhere: {
    title: 'Nothing is here',
    means:
      'This address leads to nothing in this version of the app. Your counts are where they were.',
  },
  squad: {
    title: 'Squad',
    players: (players: number) => count(players, 'player', 'players'),
    nickname: 'Nickname',
    nicknamesOnly: 'Nicknames only: no birth dates, photos or contacts.',
    add: 'Add',
    added: (name: string) => `${name} is in. The next one?`,
    oneMore: 'A pair needs two: add one more.',
    toToday: 'On to today’s practice',
    list: 'Players',
    resting: 'Inactive',
    restingMeans: 'They keep every count, and Today does not ask for them.',
    level: 'Level, 1 to 10',
    levelIs: (level: number) => `level ${one.format(level)}`,
    levelMeans:
      'Level and hand may stay open. The level is your own view, 1 for a beginner; only differences between players are used.',
    hand: 'Hand',
    hands: { right: 'right', left: 'left' },
    handIs: { right: 'right-handed', left: 'left-handed' },
    notGiven: 'not given',
    save: 'Save',
    rest: 'Make inactive',
    restMeans:
      'An inactive player keeps every count and is not asked for. Make active again at any time.',
    bringBack: 'Make active',
    nameFaults: {
      empty: () => 'Type a nickname first.',
      long: () => 'That is too long: a nickname has up to 40 letters.',
      hidden: () => 'That holds a character that cannot be seen. Type it by hand instead.',
      taken: (name: string) =>
        `${name} is in the squad already, perhaps inactive. Add a letter to tell them apart.`,
    },
    fromList: 'A whole list at once',
    listShape: 'One nickname a line. For levels and hands, put a heading on top:',
    listExample: 'name,level,hand\nPip,6,right\nJuno,,left',
    pasted: 'Paste the list here',
    takePasted: 'Take these names',
    chooseFile: 'Or choose a file (CSV or text)',
    addedMany: (players: number) => `${count(players, 'player was', 'players were')} added.`,
    fileTooLarge: 'That file is too large for a list of names. Nothing was taken.',
    fileUnread: 'The phone could not read that file. Nothing was taken.',
    guessed:
      'The file does not say how its letters are written. Read as an older spreadsheet writes them, these are the names:',
    rightLetters: 'Take these names as they are',
    noLetters: 'The letters are wrong',
    wrongLetters: 'Nothing was taken. Save the file as UTF-8, or paste the list above.',
    nothingTaken: 'Nothing was taken. Put these right and try again:',
    row: (row: number) => `Row ${number.format(row)}:`,
    rosterFaults: {
      'no-name': () => 'the name is missing.',
      'long-name': (value: string) => `“${value}…” is longer than 40 letters.`,
      'hidden-character': (value: string) => `“${value}” holds a character that cannot be seen.`,
      taken: (value: string) => `${value} is in the squad already.`,
      twice: (value: string) => `“${value}” stands in the list twice.`,
      level: (value: string) => `“${value}” is no level; give 1 to 10, or leave it empty.`,
      hand: (value: string) => `“${value}” is no hand; give right or left, or leave it empty.`,
      ragged: (value: string) =>
        `“${value}” does not have as many cells as the heading. A name with a comma needs quotes.`,
      quote: () => 'a quotation mark is opened and not closed, or closed too soon.',
      'no-header-name': (value: string) =>
        `no heading says “name”; it says “${value}”. Name one column “name”.`,
      'too-many': (value: string) => `the list goes on to ${value} rows; 200 are the most.`,
      encoding: () => 'these are not letters that the app can read. Save the file as UTF-8.',
      empty: () => 'no name is in it.',
    },
  },
  practice: {
    title: (date: string) => `Practice of ${date}`,
    notHere: 'This practice is not on this phone.',
    toWeek: 'To its week',
    means: 'What you put right here is one more entry: week, players and review follow at once.',
    there: 'Who was there',
    rounds: 'Rounds',
    noRounds: 'No round was played.',
    settled: 'settled',
    toSettle: 'to settle',
    struckRound: 'struck out',
    struck: 'Struck out: no figure counts this practice.',
    strike: 'Strike this practice out',
    restore: 'Count this practice again',
  },
  week: {
    title: (week: number) => `Week ${number.format(week)}`,
    /** The first and the last date of a week. */
    span: (first: string, last: string) => span.formatRange(at(first), at(last)),
    weeks: 'Weeks',
    before: 'The week before',
    after: 'The week after',
    now: 'This week',
    empty: 'No practice was held in this week.',
    emptyNow: 'No practice yet this week. It starts on Today, with who is here.',
    toLast: 'To the week of the last practice',
    dayAtOnce: (there: number, away: string[]) =>
      away.length === 0
        ? 'Everybody was there.'
        : `${number.format(there)} there. Away: ${list.format(away)}.`,
    day: (date: string) => weekday.format(at(date)),
    workAtOnce: 'Balls hit, and the usual week',
    playersAtOnce: 'Days, balls, and own usual week',
    thereOf: (there: number, days: number) =>
      `there on ${number.format(there)} of ${count(days, 'day', 'days')}`,
    ballsBeside: (balls: number, usual: number | undefined) =>
      usual === undefined
        ? count(balls, 'ball', 'balls')
        : `${count(balls, 'ball', 'balls')}, usually ${number.format(usual)}`,
    everything: 'Everything of this week',
    there: 'Who was there',
    thereNames: (players: number, names: string) =>
      `${count(players, 'player', 'players')}: ${names}.`,
    nobody: 'Nobody was marked as here.',
    away: (names: string) => `Not there this week: ${names}.`,
    putRight: 'Put right',
    putRightOf: (date: string, practice: number) => `Put right practice ${practice} of ${date}`,
    byPlayer: 'By player',
    allTouches: 'All touches',
    byPlayerNote:
      "A set counts for everyone who played in it. Touches are those of completed sets; all touches hold the unfinished ones too, as far as the clock tells; minutes are the player's own on the round clock.",
    byDrill: 'By drill',
    unheard: (counts: number) =>
      `${count(counts, 'count was', 'counts were')} not heard: in the minutes, and in no other sum.`,
    byDrillNote: 'Here a set of a pair counts once, and so does the clock of a round.',
    noRounds: 'No round was played.',
    player: 'Player',
    drill: 'Drill',
    days: 'Days',
    rounds: 'Rounds',
    sets: 'Sets',
    touches: 'Touches',
    minutes: 'Min',
    /** Seconds of the round clock as minutes. */
    inMinutes: (seconds: number) => one.format(seconds / 60),
    export: 'Share the week',
    exportNote: 'One row for each player in each round, for any spreadsheet.',
    called: 'Players are called by',
    nicknames: 'Nicknames',
    initials: 'Initials',
    decimalSign,
    decimals: 'Numbers are written',
    decimalComma: 'with a comma, 1,5, and semicolons between the columns',
    decimalPoint: 'with a point, 1.5, and commas between the columns',
    handOver: 'Share the week as a table (CSV)',
    print: 'Print this week',
    shared: 'Shared.',
    saved: (file: string) => `Saved as ${file}.`,
    asText: 'No file there? Show it as text',
    text: 'No file was shared. Copy the table from here:',
    textLabel: 'The week as a table',
    copy: 'Copy',
    copied: 'Copied.',
    marked: "The table is marked: copy it with the phone's own menu.",
  },
  help: {
    title: 'Help',
    steps: 'A practice in seven steps',
    here: 'Tap everyone who is here. Who comes later or leaves earlier is one tap more, at any time.',
    block:
      'Choose the drills, or take the block that is proposed. The planned length is said at once.',
    pairs:
      'Look at the pairs. Two taps swap two players; an odd player makes a trio that takes turns.',
    card: 'Read the card to the players: where each starts, the cue, what completes a set. Then Start.',
    count:
      'Tap a pair’s tile each time it completes a set: one whole unit of the drill, such as ten in a row, and no set of a match. Any finger, any number at once.',
    settle: 'After the horn put counts right, and say how far each unfinished set had come.',
    after:
      'Hand the phone to a player to see own counts, and hold “For the coach” for two seconds to take it back; share the week as a table.',
    tile: 'A tile',
    tileMeans: 'The number is the sets so far. The corner with −1 takes the last one back.',
    waits: 'The mark is shown and not on the disk yet.',
    saved: 'Every mark of this tile is on the disk: it survives a crash or a restart.',
    late: 'Tapped after the horn: it counts only once you say so.',
    doubtful: 'Tapped sooner than a set can be struck: it counts unless you tap “Doesn’t count”.',
    court: 'The card',
    cardMeans:
      'Discs 1 and 2 are where the two roles start, dashed rings where they recover, triangles flat markers, the hatched area the target.',
    keys: 'Keys count as well: 1 to 9, or A to L, for the pairs; Shift takes back; space starts and pauses.',
  },
};
