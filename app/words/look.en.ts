import { at, formats } from './format.ts';

/** English, for the screens on which a coach looks back on what was practised. */

const { number, one, percent, count, list, isOne, month } = formats('en');

/** A number of sets to one place, as it is shown. */
const setsOf = (sets: number) => {
  const shown = Math.round(10 * sets) / 10;
  return `${one.format(shown)} ${isOne(shown) ? 'set' : 'sets'}`;
};

export const look = {
  evening: {
    nothing: 'Nothing was played yet. After the first practice it says here what to do next.',
    leftOut: (stroke: string, players: number, days: number) =>
      `${stroke}: ${count(players, 'player has', 'players have')} gone without for more than ${count(days, 'day', 'days')}.`,
    size: {
      hard: (drill: string, size: number, sets: number) =>
        `${drill} is too hard at ${number.format(size)}: a pair makes about ${setsOf(sets)} a round.`,
      easy: (drill: string, size: number, sets: number) =>
        `${drill} is too easy at ${number.format(size)}: a pair makes about ${setsOf(sets)} a round.`,
    },
    partners: (a: string, b: string, days: number | undefined) =>
      days === undefined
        ? `${a} and ${b} have never played together.`
        : `${a} and ${b} have not played together for ${count(days, 'day', 'days')}.`,
    need: (player: string, kind: string) =>
      `${kind}: there ${player} lags most behind the player’s own other kinds of work.`,
    change: {
      rising: (now: string, before: string, weeks: number) =>
        `The squad gets better: ${now} of the balls come back, ${before} ${count(weeks, 'week', 'weeks')} ago.`,
      steady: (now: string) => `The squad keeps its level: ${now} of the balls come back.`,
      falling: (now: string, before: string, weeks: number) =>
        `The squad gets less back: ${now} of the balls, ${before} ${count(weeks, 'week', 'weeks')} ago.`,
      unclear: (now: string) =>
        `${now} of the squad’s balls come back; whether that changes is not clear yet.`,
    },
    up: (names: string[]) => `Up: ${list.format(names)}.`,
    down: (names: string[]) => `Down: ${list.format(names)}.`,
    putIn: (drill: string) => `Put into the next block: ${drill}`,
    inNext: (drill: string) => `In the next block: ${drill}`,
    pairThem: 'Pair them next time',
    paired: 'A pair next time',
    setSize: (size: number, from: number) =>
      `Size ${number.format(size)} instead of ${number.format(from)}`,
    sizeIsSet: (size: number) => `From now on ${number.format(size)}`,
    silent: (questions: string[]) => `Nothing stands out in: ${list.format(questions)}.`,
    questions: {
      'left-out': 'what was left out',
      size: 'too hard or too easy',
      pair: 'who with whom',
      need: 'who needs what',
      change: 'getting better',
    },
    more: 'Everything behind it',
    players: 'A player in numbers',
  },
  pictures: {
    leftOut: (without: number, all: number) =>
      `${number.format(without)} of ${number.format(all)} boxes are empty, one for each player who has gone without.`,
    size: (sets: number, least: number, most: number) =>
      `A bar of ${setsOf(sets)} beside a frame from ${number.format(least)} to ${number.format(most)}.`,
    pair: 'Two discs with a broken line between them.',
    need: (kinds: number, lowest: string) =>
      `${number.format(kinds)} marks, one for each kind of work; the lowest is ${lowest}.`,
    line: (from: string, to: string, weeks: number) =>
      `A line from ${from} to ${to} over ${count(weeks, 'week', 'weeks')}, in a band that shows how sure it is.`,
    dots: (practices: number) => `${count(practices, 'dot', 'dots')}, one a practice.`,
  },
  glance: {
    title: 'At a glance',
    player: 'Player',
    all: 'All',
    allLong: 'All kinds of work',
    kinds: {
      groundstrokes: 'Ground',
      volleys: 'Volley',
      'overheads-and-lobs': 'Over',
      'serves-and-returns': 'Serve',
    },
    cell: (player: string, kind: string, level: string, low: string, high: string, word: string) =>
      `${player}, ${kind}: ${level} come back (${low} to ${high}), ${word}`,
    overall: (player: string, word: string) => `${player}, all kinds of work: ${word}`,
    unseen: (player: string, kind: string) => `${player}, ${kind}: not seen in twelve weeks`,
    key: 'Higher: more balls come back with an average partner. The line across is the squad’s mean; the upright stroke holds the level four times in five. The mark:',
    nothing: 'No round of the last twelve weeks says anything yet.',
  },
  line: {
    kinds: 'Kinds of work',
    says: (level: string, low: string, high: string) =>
      `${level} come back now with an average partner, four times in five between ${low} and ${high}.`,
    saysOnTarget: (level: string, low: string, high: string) =>
      `${level} meet the target now, four times in five between ${low} and ${high}.`,
    word: (word: string, practices: number) =>
      `Over ${count(practices, 'practice', 'practices')}: ${word}.`,
    wordOverall: (word: string, practices: number) =>
      `Over all kinds of work, ${count(practices, 'practice', 'practices')}: ${word}.`,
    means:
      'The line is the player’s own part, with an average partner; each dot is a practice with the partners there were. The band holds the line four times in five.',
    unseen: 'No round of the last twelve weeks tells of it.',
  },
  asked: {
    putIn: (drill: string) => `Asked for: put in ${drill}`,
    pairs: (pairs: string[]) => `Asked for as pairs: ${list.format(pairs)}.`,
  },
  neglected: {
    title: 'Left out by whom',
    means: (after: number) =>
      `Days since each player struck it. A frame: more than ${count(after, 'day', 'days')}; ink: for long.`,
    cell: (player: string, stroke: string, days: number | undefined) =>
      days === undefined
        ? `${player}, ${stroke}: never`
        : `${player}, ${stroke}: ${count(days, 'day', 'days')} ago`,
  },
  together: {
    title: 'Who next with whom',
    means:
      'If everybody comes: who has met least lately, near in level, and your wishes before both.',
    never: 'never played together',
    days: (days: number) =>
      days === 0 ? 'played together today' : `last together ${count(days, 'day', 'days')} ago`,
    few: 'A pair needs two players in the squad.',
  },
  sizes: {
    title: 'Too hard, too easy',
    means: (least: number, most: number) =>
      `What a pair of those who played it last is to expect in a round. The frame: ${number.format(least)} to ${number.format(most)} sets.`,
    verdicts: { hard: 'too hard', easy: 'too easy', fits: 'fits' },
    line: (size: number, sets: number) => `At ${number.format(size)} about ${setsOf(sets)}`,
    fitting: (size: number, sets: number) => `${number.format(size)} fits: about ${setsOf(sets)}`,
    nearer: (size: number, sets: number) =>
      `${number.format(size)} comes nearer to four: about ${setsOf(sets)}`,
    others: 'Without a size to choose',
    perRound: (sets: number) => `${one.format(sets)} a round of a pair`,
    none: 'No drill in a row was played in the last four weeks.',
  },
  season: {
    title: 'The season',
    nothing: 'Nothing was played yet. Months fill as rounds are played.',
    term: (weeks: number) => `What ${number.format(weeks)} weeks add up to`,
    termMeans: 'Balls by stroke, at least: those of completed sets up to the last practice.',
    months: (whose: string) => (whose === '' ? 'Month by month' : `Month by month: ${whose}`),
    monthsMean: 'The line and its number: balls hit. At the end of the row: how many came back.',
    month: (date: string) => month.format(at(date)),
    balls: (balls: number) => number.format(Math.round(balls)),
  },
  players: {
    title: 'Players',
    pick: 'Tap your name to see what you did.',
    none: 'No players yet: add the squad first.',
    toSquad: 'To the squad',
    resting: 'Inactive',
    review: 'After practice, for the coach',
  },
  player: {
    today: 'Today',
    notHere: 'This player is not on this phone.',
    nothing: 'Nothing is counted for you yet. Your sets stand here after your first round.',
    touches: 'Balls hit',
    countedNote:
      'At least: what completed sets prove. About: with the balls of unfinished sets, as far as the clock tells; the range holds the true number four times in five. Touch a figure to see how it comes about.',
    sets: (sets: number): string => (isOne(sets) ? 'set' : 'sets'),
    onTarget: 'on target',
    noSet: 'No set completed.',
    noneOnTarget: 'None on target.',
    usual: (sets: number) => `usual ${one.format(sets)}`,
    best: (sets: number) => `best ${one.format(sets)}`,
    newBest: 'New personal best!',
    first: 'First time at this drill, counted this way.',
    besideNote: 'Compared with your own earlier practices, for equal time.',
    hand: (name: string) => `Hand the phone to ${name}`,
    handNote:
      'The phone then shows this page and nothing else. To take it back, hold “For the coach” at the foot of the page for two seconds.',
    well: {
      best: (drill: string, made: string) => `A new personal best at ${drill}: ${made}!`,
      usual: (drill: string, made: string, usual: number) =>
        `At ${drill} you made ${made}; usually it is ${one.format(usual)}.`,
      first: (drill: string, made: string) => `A first time at ${drill}: ${made}.`,
      made: (drill: string, made: string) => `At ${drill} you made ${made}.`,
    },
    played: 'You were on the court and at work.',
    balls: (balls: number) => `You hit about ${count(Math.round(balls), 'ball', 'balls')}.`,
    ballsAtLeast: (balls: number) => `You hit at least ${count(balls, 'ball', 'balls')}.`,
    goal: (drill: string, made: string) => `Next time at ${drill}: ${made}.`,
    madeSets: (sets: number) => count(sets, 'set', 'sets'),
    madeOnTarget: (balls: number) => `${number.format(balls)} on target`,
    beside: (usual: number | undefined, best: number | undefined) =>
      usual === undefined || best === undefined
        ? 'the first time'
        : `usually ${one.format(usual)}, best ${one.format(best)}`,
    usualSign: 'your usual',
    bestSign: 'your best',
    forCoach: 'Every number of the day',
  },
  percent: (share: number) => percent.format(share),
};
