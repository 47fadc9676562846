import { formats } from './format.ts';

/** English, for the screens that plan: these words come with them and not with the app. */

const { number, count } = formats('en');

export const planning = {
  coverage: {
    title: 'Coverage',
    whose: 'Whose',
    squad: 'The whole squad',
    of: (whose: string) => `Touches in completed sets, ${whose}, by week`,
    ofSquad: 'the whole squad',
    line: 'Practised',
    week: (week: number) => `Wk ${number.format(week)}`,
    weekLong: (week: number) => `Week ${number.format(week)}`,
    days: 'Days ago',
    strokes: {
      groundstroke: 'Groundstroke',
      volley: 'Volley',
      overhead: 'Overhead',
      lob: 'Lob',
      serve: 'Serve',
      return: 'Return',
    },
    never: 'never',
    due: { no: '', overdue: 'overdue', 'long-overdue': 'long overdue' },
    noRound: 'no practice',
    cell: (line: string, week: number, touches: number) =>
      `${line}, week ${number.format(week)}: ${count(touches, 'touch', 'touches')}`,
    key: (after: number, long: number) =>
      `▲ not for more than ${number.format(after)} days; ▲▲ on a dark ground, more than ${number.format(long)}. An empty box is a week without practice.`,
    behind: 'The rounds behind it',
    touch: 'Touch a number to see the rounds behind it.',
    none: 'No round of it in this week.',
    nothing: 'Nothing was practised yet. It fills as rounds are played.',
  },
  block: {
    title: 'The block',
    empty: 'Tap drills below to add them to the block.',
    length: 'A round lasts',
    changeover: 'Between rounds',
    seconds: (seconds: number) => (seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`),
    rounds: (drill: string) => `Rounds of ${drill}`,
    earlier: (drill: string) => `Move ${drill} up`,
    remove: (drill: string) => `Remove ${drill}`,
    add: (drill: string) => `Add ${drill}`,
    inBlock: (times: number) => count(times, 'round in', 'rounds in'),
    partners: 'Partners',
    keep: 'same',
    turn: 'rotate',
    partnersOf: (drill: string) => `Partners at ${drill}`,
    keepAs: 'Save this block as',
    keepIt: 'Save',
    useIt: 'Use',
    kept: 'Saved blocks',
    use: (name: string) => `Use ${name}`,
    drop: (name: string) => `Delete ${name}`,
    nameNeeded: 'Give the block a name of up to 40 letters.',
    ownDrills: 'Write a drill of your own',
    planned: 'Planned',
  },
  propose: {
    title: 'Propose a block',
    minutes: 'Minutes',
    why: {
      never: (family: string) => `${family}: never practised yet`,
      overdue: (family: string, days: number) => `${family}: ${count(days, 'day', 'days')} ago`,
      slipping: (question: string) => `the focus slips lately: ${question}`,
      hard: (without: number, counts: number) =>
        `too hard lately: ${number.format(without)} of ${count(counts, 'count', 'counts')} without a set`,
      role: (stroke: string, players: number, days: number | undefined) =>
        `${stroke}: ${count(players, 'player hasn’t', 'players haven’t')} hit one for a long time${days === undefined ? '' : ` (last ${count(days, 'day', 'days')} ago)`}`,
      balance: (family: string, days: number | undefined) =>
        days === undefined
          ? `${family}: for balance`
          : days === 0
            ? `${family}: already today, for balance`
            : `${family}: ${count(days, 'day', 'days')} ago, for balance`,
    },
    sized: (size: number, own: number) =>
      `${number.format(size)} in a row suits those who play better than ${number.format(own)}.`,
    take: 'Take this block',
    another: 'Another',
    first: 'Back to the first',
    number: (n: number) => `Proposal ${number.format(n)}`,
    takeMeans: 'It becomes today’s plan in place of the present one. Change it freely afterwards.',
    nothing: 'No block fits: allow more minutes, or switch more drills on.',
    noMore: 'There is no other block. Allow more minutes, or switch more drills on.',
    drills: 'Drills to choose from',
    drillsMean: 'What is switched off stays in the library and is not proposed.',
    drillsOn: (on: number, all: number) => `${number.format(on)} of ${number.format(all)}`,
  },
  sheet: {
    title: 'The block on paper',
    print: 'Print this sheet',
    empty: 'Choose the drills of the block first.',
    pairs: 'Pairs to begin with',
    rounds: (rounds: number, seconds: string) => `${number.format(rounds)} × ${seconds}`,
    turn: 'partners rotate',
    keep: 'same partners',
    tally: 'To tally on',
    tallyMeans:
      'One stroke a set in the box of the pair; on target each player has a part of it. Call the numbers in afterwards.',
    perCourt: (pairs: number) => `${count(pairs, 'pair', 'pairs')} on a court`,
  },
  wishes: {
    title: 'Who plays with whom',
    means: 'Pairs are proposed by who has met least lately and by level. A wish comes before both.',
    one: 'One player',
    other: 'The other player',
    together: 'Keep together',
    apart: 'Keep apart',
    is: { together: 'together', apart: 'apart' },
    takeBack: (a: string, b: string) => `Take back the wish for ${a} and ${b}`,
    choose: 'choose',
  },
  courts: {
    title: 'The courts',
    count: 'How many',
    countMeans: 'So many courts the squad has. Where not all pairs fit, they take turns.',
    notSet: 'not set',
    size: 'Size',
    sizes: {
      small: 'small (red ball), 10.97 by 5.49 m',
      middle: 'middle (orange ball), 18.29 by 6.40 m',
      full: 'full',
    },
    sizeMeans: 'Drills are drawn and measured for it. A smaller court takes one pair.',
    units: 'Lengths in',
    unitNames: { metres: 'metres', feet: 'feet' },
  },
};
