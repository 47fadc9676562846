import { at, formats } from './format.ts';

/** English, for the screens of figures only: these words come with them and not with the app. */

const { isOne, one, number, tenths, hundredths, percent, shortDay, count } = formats('en');

/** A number to one place with what it counts. */
const count1 = (n: number, single: string, many: string) =>
  `${one.format(n)} ${isOne(n) ? single : many}`;
const rate = (n: number) => (n < 10 ? hundredths : tenths).format(n);

/** What a figure means, what it is made from and how it is computed: a sentence each. */
export interface Explanation {
  title: string;
  means: string;
  from: string;
  how: string;
}

export const figures = {
  number: (n: number) => number.format(n),
  rounded: (n: number) => number.format(Math.round(n)),
  /** Sets or touches a minute, or sets expected. */
  rate,
  seconds: (n: number) => `${hundredths.format(n)} s`,
  percent: (share: number) => percent.format(share),
  shortDate: (date: string) => shortDay.format(at(date)),
  /** The limits of a figure, after it. */
  span: (low: string, high: string) => `(${low} to ${high})`,
  close: 'Close',
  forStatisticians: 'For statisticians',

  atLeast: 'at least',
  about: 'about',
  beingWorkedOut: (rounds: number) =>
    `All touches of ${count(rounds, 'pair’s round is', 'pairs’ rounds are')} still being worked out. They come by themselves.`,
  afterSettle: 'Your total appears once the coach has checked the round.',
  doubted: (rounds: number) =>
    `${count(rounds, 'round has', 'rounds have')} more sets than the clock allows: check the count.`,

  comesBack: 'Comes back',
  meetsTarget: 'Meets the target',
  onTarget: 'on target',
  trendWords: {
    rising: 'rising',
    steady: 'steady',
    falling: 'falling',
    unclear: 'not clear yet',
    'too-few': 'too few yet',
  },
  practices: (n: number) => count(n, 'practice', 'practices'),
  noPoint: 'No practice with an estimate yet.',
  plot: (practices: number, low: string, high: string) =>
    `${count(practices, 'practice', 'practices')}, from ${low} to ${high}`,
  sized: {
    'in-a-row': (size: number) => `${number.format(size)} in a row`,
    'in-total': (size: number) => `${number.format(size)} in total`,
    sequence: (size: number) => `sequence of ${number.format(size)}`,
    'on-target': () => 'on target',
  },

  trends: 'Over the practices',
  player: {
    trendsNote:
      'Every dot is one practice of the last twelve weeks: how many of the balls came back, or met the target.',
  },

  review: {
    title: 'The squad in numbers',
    openPlayer: (name: string) => `Review of ${name}`,
    toSquad: 'To the squad',
    nothing: 'No round has been played yet. Figures stand here after the first one.',
    notHere: 'This player is not on this phone.',
    nothingOf: (name: string) => `${name} has not played a round yet.`,
    noneInSpan: 'No round was played in these weeks.',
    span: 'Weeks that are looked at',
    weeks: (weeks: number) => count(weeks, 'week', 'weeks'),
    spanIs: (first: string, last: string) => `${first} to ${last}`,
    players: 'Players',
    playersNote: 'In the order of the squad. Nobody is ranked.',
    byKind: 'By kind of work',
    byDrill: 'By drill',
    byKindNote: 'Of a pair: what two players do together in a minute on the round clock.',
    byKindNoteOwn: 'What this player took part in, with all partners together.',
    setsPerMinute: 'Sets a minute',
    /** After a number of sets, where they are too few to say how many a minute. */
    inMinutes: (minutes: number) => `in ${count1(minutes, 'minute', 'minutes')}`,
    touchesPerMinute: 'Touches a minute',
    touches: 'Touches',
    change: 'Compared with the weeks before',
    changeNote: (weeks: number) =>
      `The last ${count(weeks, 'week', 'weeks')} beside the ${number.format(weeks)} before, at the same drills and sizes.`,
    changeIs: (ratio: number, low: number, high: number) =>
      `${hundredths.format(ratio)} times the sets (${hundredths.format(low)} to ${hundredths.format(high)})`,
    changeWords: {
      more: 'more than before',
      fewer: 'fewer than before',
      open: 'no clear change',
      'too-little': 'too few sets to compare',
    },
    noChange: 'Nothing to compare: one of the two spans has no round, or no set, of the same work.',
    trendsNote:
      'The practices of the last twelve weeks, each a dot. The word says what the dots allow to say.',
    levels: 'Level, with an average partner',
    levelsNote:
      'A count belongs to two. This is what each makes of a ball now, with an average partner at an average drill. Look at the whole range first. It is for choosing pairs and work, and no judgement of anyone.',
    noLevel: 'No round of the last twelve weeks tells of it.',
    above: (names: string) => `surely more than ${names}`,
    below: (names: string) => `surely less than ${names}`,
    alone: (player: string) => `Only ${player} was seen at it: there is nobody to compare with.`,
    neverPartedBoth: (one: string, other: string) =>
      `${one} and ${other} have never been parted: nobody can tell whose the sets are.`,
    groups: (groups: string[]) =>
      `These have never met, so they cannot be compared: ${groups.join(' / ')}.`,
    classes: (classes: string[]) =>
      `These can be compared among themselves only: ${classes.join(' / ')}.`,
    overall: 'Over all kinds of work',
    roseWith: (chance: number) =>
      `better than eight weeks ago with a chance of ${percent.format(chance)}`,
    squadNote: 'For the coach. Do not show it to players.',
  },

  block: {
    title: 'The block in figures',
    touches: 'touches of everyone',
    sets: (sets: number) => count(sets, 'set', 'sets'),
  },

  size: {
    fit: 'Sizes that suit these pairs',
    line: (names: string, size: number, expected: number, larger: number, smaller: number) =>
      `${names}: ${size} in a row would give about ${one.format(expected)} ${isOne(expected) ? 'set' : 'sets'} (${size + 1}: ${one.format(larger)}, ${size - 1}: ${one.format(smaller)})`,
    apart: 'from their rounds with others',
    unknown: (names: string) => `${names}: not known yet, they have not played this drill.`,
    set: (size: number) => `Make it ${size}`,
    own: (size: number) => `Back to ${size}, the drill’s own`,
    now: (size: number) => `Now ${size} in a row.`,
    none: 'No set in this round.',
    many: (sets: number) => `${count(sets, 'set', 'sets')} in this round.`,
    instead: (size: number, expected: number) =>
      `${size} in a row would give about ${one.format(expected)}.`,
    next: (size: number) => `Take ${size} from the next round on`,
    taken: (size: number) => `From the next round on it is ${size}.`,
  },

  tempo: {
    title: 'Tempo check',
    of: (drill: string) => `Tempo at ${drill}`,
    noPractice: 'A check belongs to a practice. Say who is here first, on Today.',
    tempo: 'From hit to hit',
    tempoFor: 'Ten taps sharpen the number of all touches: a wrong tempo is what hurts it most.',
    tempoHow: 'Tap along with ten hits of any rally of this drill.',
    tempoTap: 'Tap at every hit',
    refeed: 'From a miss to the next hit',
    refeedFor:
      'It sharpens the number of all touches: after the tempo, the time for a new ball hurts it most.',
    refeedHow: 'Tap at a miss, and again at the next hit. Five times.',
    missTap: 'Tap at the miss',
    hitTap: 'Now tap at the next hit',
    tapped: (taps: number, of: number) => `${number.format(taps)} of ${number.format(of)}`,
    known: (seconds: string) => `Known: ${seconds}. A new check takes its place.`,
    usual: 'Not measured yet: the usual time of juniors is taken.',
    keep: 'Keep it',
    kept: 'Kept. It counts for all rounds of this drill from this practice on.',
    again: 'Again',
    why: {
      gap: 'One gap was more than twice as long as the others: a hit was not tapped, or the rally broke off. Once more, please.',
      fast: 'That is faster than anyone strikes. Once more, please.',
    },
  },

  explanations: {
    counted: {
      title: 'Touches, at least',
      means: 'The balls that were struck for certain, if taps and roles are right.',
      from: 'It is made from the marks: every completed set, and nothing of a set that was not finished.',
      how: 'Sets times the shots that the player strikes in one set of the drill.',
    },
    touches: {
      title: 'All touches',
      means:
        'How many balls were really struck, with a range that holds the true number four times in five; the stroke that ends in an error counts, a ball not reached does not.',
      from: 'It is made from the sets and their times, the size of a set, how far the last one had come, the round clock, and the tempo where it was measured.',
      how: 'All ways in which these marks could have come about are weighed by how well they fit the clock; each player of a pair gets half (whoever always feeds has about two more), ranges of several rounds are added by their squares, and a wrong tempo or a wrong time for a new ball hurts most.',
    },
    touchRate: {
      title: 'Touches a minute',
      means: 'How many balls were really struck in a minute on the round clock.',
      from: 'It is made from all touches and the round clock.',
      how: 'One divided by the other; the range is that of all touches, which hold the true number four times in five.',
    },
    sets: {
      title: 'Sets',
      means: 'How many units of a drill were completed.',
      from: 'It is made from the marks, with what settle put right.',
      how: 'Marks that count, plus and minus corrections; a set counts for everyone who played in it.',
    },
    rate: {
      title: 'Sets a minute',
      means:
        'How many sets were made in a minute on the round clock, with a range that holds the long-run rate 19 times in 20.',
      from: 'It is made from the sets and the round clock of the rounds that were taken part in.',
      how: 'Sets divided by minutes, with the exact Poisson interval (Garwood); sets of different sizes take different time, so compare only the same size.',
    },
    minutes: {
      title: 'Minutes',
      means: 'How long the round clock ran, the fetching of balls included.',
      from: 'It is made from the clock of every round, without its pauses.',
      how: 'The rounds’ clocks are added up; a player of a trio has two thirds of a round.',
    },
    rounds: {
      title: 'Rounds',
      means: 'How many rounds of the drill were played.',
      from: 'It is made from the rounds whose clock was started.',
      how: 'They are counted, once each, however many pairs played.',
    },
    days: {
      title: 'Days',
      means: 'On how many days of the week the player was there.',
      from: 'It is made from who was marked as here.',
      how: 'Dates are counted, once each, however many practices they had.',
    },
    usual: {
      title: 'Usual',
      means: 'How many sets this player makes in as much time on a usual day.',
      from: 'It is made from the player’s own earlier practices at the same drill and size.',
      how: 'The middle one of their sets a minute, times the minutes of today.',
    },
    best: {
      title: 'Best',
      means:
        'How many sets this player would make in as much time at the pace of the best day so far.',
      from: 'It is made from the player’s own earlier practices at the same drill and size.',
      how: 'The largest of their sets a minute, times the minutes of today.',
    },
    consistency: {
      title: 'Comes back',
      means:
        'Of a hundred balls, how many come back as the drill asks, with a range that holds it four times in five; it can be compared over set sizes and lengths of rounds, which the number of sets cannot.',
      from: 'It is made from the same marks and clock as all touches, and belongs to the pair: to both players together, also where it stands on one player’s page.',
      how: 'The model of all touches gives it for each round, taking every ball of the round as equally likely to come back; over several rounds the evidence is added up, starting from what four balls of five would say.',
    },
    target: {
      title: 'Meets the target',
      means:
        'Of a hundred balls, how many meet the target, with a range that holds it four times in five.',
      from: 'It is made from the player’s own balls on target and the round clock.',
      how: 'Balls on target divided by the balls struck in that time at this tempo, which is not counted but estimated.',
    },
    trend: {
      title: 'The word for a trend',
      means:
        'Whether it gets better over the practices, and whether that is more than luck: rising, steady, falling, not clear yet, or too few yet.',
      from: 'It is made from how many balls came back in each practice of the last twelve weeks; every practice is one dot, whatever its drills were, so a harder drill looks like a fall.',
      how: 'The middle of all slopes between two dots (Theil and Sen) and the Mann-Kendall test: rising or falling needs six practices, and without real change luck alone gives such a word up to once in ten; steady a range of less than five in a hundred over four weeks.',
    },
    change: {
      title: 'Compared with before',
      means:
        'How many times the sets of the weeks before were made in the same time, with a range that holds it 19 times in 20; 1 is no change, and no number is given where the range would reach to more than four times its start.',
      from: 'It is made from the player’s sets and round clock in both spans.',
      how: 'The ratio of the two rates with its exact interval (Clopper and Pearson), a minute counting by what the whole squad makes of it at the same drill and size, so that an easier block is no progress.',
    },
    level: {
      title: 'Level',
      means:
        'Of a hundred balls, how many come back with this player and an average partner of the squad at an average drill, on the day of the last practice, with a range that holds it four times in five; on target the player’s own.',
      from: 'It is made from every round of the last twelve weeks, of everybody and all kinds of work at once.',
      how: 'One regression takes each round as what the kind, the drill and the players bring along, each player on a straight line through the weeks (penalised logistic regression); few rounds are drawn towards the squad’s mean, and a wrong usual clock moves all levels alike.',
    },
    overall: {
      title: 'The word over all kinds',
      means:
        'Whether the player got better over eight weeks at all kinds of work together: rising and falling are said where the chance is nine in ten.',
      from: 'It is made from every round of the last twelve weeks, with whom and at what drill taken into account.',
      how: 'The same regression as the level gives the slope of the player’s line and how sure it is; where nothing changes, it still says rising or falling of about one player in nine.',
    },
    size: {
      title: 'Set size',
      means: 'How long a set would have to be for about four sets in a round.',
      from: 'It is made from how many balls of this pair come back at this drill, and from the tempo.',
      how: 'For every size from 2 to 30 the sets to be expected are worked out, over all that is possible for this pair, and the nearest to four is taken.',
    },
    practices: {
      title: 'Practices',
      means: 'How many practices the word rests on.',
      from: 'It is made from the practices of the last twelve weeks in which this kind of work was played.',
      how: 'They are counted, once each.',
    },
  } satisfies Record<string, Explanation>,
};
