import { at, formats } from './format.ts';

/** English, for what stands beside the count: foci, looks, care and effort. */

const { number, one, percent, shortDay, count } = formats('en');

export const quality = {
  focus: {
    none: 'none',
    ofBlock: 'Focus of the block',
    ofDrill: 'Focus of this drill',
    ofDrillMeans: 'In its rounds it takes the place of the block’s focus.',
    checks: 'Spot checks a round',
    checksMean: (tapped: number, called: number) =>
      `While a round runs the court screen names one player at a time, and whoever watches answers yes, no or not seen. At most ${number.format(tapped)} in a round that is tapped, ${number.format(called)} in one that is called. Leaving one out costs nothing and is not a no.`,
    yes: 'Yes looks like',
    told: 'Say to the player',
    own: 'Foci of your own',
    question: 'A question for yes or no, up to 40 letters',
    yesField: 'What yes looks like, in one line',
    toldField: 'How the player is told',
    keep: 'Keep this focus',
    faulty: 'Write a question of 1 to 40 letters.',
    drop: (question: string) => `Take out ${question}`,
  },
  /** Of each focus that comes with the app: what yes looks like, how it is said, and what is held. */
  means: {
    recovery: {
      yes: 'Back at the recovery place before the ball bounces on the other side.',
      told: 'Hit, then go: be home before it bounces.',
      held: 'back in place in time',
    },
    stance: {
      yes: 'Knees bent, weight on the front of the feet, racket up.',
      told: 'Sit low, stay ready.',
      held: 'low and ready',
    },
    'split-step': {
      yes: 'A small hop that lands as the other player strikes.',
      told: 'Hop as they hit.',
      held: 'with a split step before the shot',
    },
    'set-up': {
      yes: 'Turned and racket back by the time the ball bounces.',
      told: 'Turn first, then run.',
      held: 'set up early',
    },
    height: {
      yes: 'The ball crosses the net well above the tape: a racket’s length, or as agreed.',
      told: 'Lift it: room over the net.',
      held: 'high enough over the net',
    },
    depth: {
      yes: 'The ball bounces behind the service line, or where it was agreed.',
      told: 'Past the service line.',
      held: 'deep enough',
    },
    direction: {
      yes: 'The ball goes where it was called to go.',
      told: 'Choose early, then keep to it.',
      held: 'in the right direction',
    },
    speed: {
      yes: 'The agreed speed: neither pushed nor hit harder than can be kept up.',
      told: 'The same speed, ball after ball.',
      held: 'at the right speed',
    },
    spin: {
      yes: 'The ball dips or stays low as agreed.',
      told: 'Brush the ball.',
      held: 'with enough spin',
    },
  },
  open: 'Quality beside quantity',
  title: 'Quality',
  nothing:
    'Nobody has looked yet. Choose a focus for the block: then the court screen asks for a few looks in each round.',
  weeks: 'The four weeks up to the last practice, beside the four before.',
  looks: {
    times: (held: number, looks: number, what: string) =>
      `${number.format(held)} of ${number.format(looks)} times ${what}`,
    timesOwn: (held: number, looks: number, question: string) =>
      `${number.format(held)} of ${number.format(looks)} times yes: ${question}`,
    few: (looks: number) => `too few looks (${number.format(looks)})`,
    fewOwn: 'Too few looks yet to say more.',
    share: (share: number, low: number, high: number) =>
      `${percent.format(share)} (${percent.format(low)} to ${percent.format(high)})`,
    of: (held: number, looks: number) =>
      `${number.format(held)} of ${count(looks, 'look', 'looks')}`,
    now: 'Now',
    before: 'Before',
    change: {
      falling: '▼ slipping',
      rising: '▲ better',
      open: 'no clear change',
    },
    changeUnknown: 'nothing to compare yet',
    shareMeans:
      'The share of looks in which the focus was held, with limits that hold the true share 19 times in 20 (Wilson). From eight looks on. A look that was not seen or not answered counts for nothing.',
    changeMeans:
      'Slipping: so clear a fall would come by chance alone at most one time in ten. Each player is compared with the own looks only.',
    players: 'Player by player',
    ownTitle: 'What was looked at',
  },
  watchers: {
    title: 'Two watchers',
    means:
      'Two phones in one practice ask for the same looks. Kappa is how far they agree beyond chance: 1 is always, 0 no better than chance.',
    none: 'No look was answered on two phones yet.',
    agreement: (agreement: number, looks: number) =>
      `${percent.format(agreement)} the same, of ${count(looks, 'shared look', 'shared looks')}`,
    kappa: (kappa: number) => `kappa ${one.format(kappa)}`,
    noKappa: 'no kappa: both called everything the same',
    is: {
      'too-few': 'Too few shared looks to say whether you mean the same.',
      agree: 'You mean the same thing by it.',
      differ: 'You do not mean the same thing by it: say again what yes looks like, side by side.',
      'one-sided':
        'You nearly always say the same, but nearly all looks came out alike, which tells little.',
    },
  },
  volume: {
    title: 'Quality beside volume',
    focus: 'Focus',
    means:
      'One mark a practice with eight looks or more: touches in completed sets to the right, share held upwards. The newest is outlined; marks that move right and down are more but worse.',
    none: 'No practice has eight looks at it yet.',
    picture: (practices: number, least: string, most: string) =>
      `${count(practices, 'practice', 'practices')}, from ${least} to ${most} touches across, quality from 0 to 100% upwards`,
    touches: (touches: number) => count(touches, 'touch', 'touches'),
    date: (date: string) => shortDay.format(at(date)),
    percent: (share: number) => percent.format(share),
    rounds: 'Round by round',
    round: (ordinal: number, drill: string) => `${number.format(ordinal)}. ${drill}`,
    sets: (sets: number) => count(sets, 'set', 'sets'),
  },
  care: {
    title: 'Overheads and serves',
    means:
      'Balls struck a week, the missed ones as far as the model knows them; the line is the own usual week.',
    caution:
      'How many are too many nobody knows: published advice on juniors’ serves disagrees, and no figure here predicts an injury. Pain means stop, and a licensed clinician decides; the rules of federation and country come first.',
    strokes: { overhead: 'Overheads', serve: 'Serves' },
    week: (week: number) => `Wk ${number.format(week)}`,
    usual: (usual: number) => `usual week ${one.format(usual)}`,
    noUsual: 'no usual yet: it takes three weeks',
    inWeek: (week: number, struck: number) =>
      `week ${number.format(week)}: ${number.format(struck)}`,
    notInWeek: (week: number) => `week ${number.format(week)}: no round`,
    noRound: '–',
    unheard: (rounds: number) =>
      `${count(rounds, 'round was', 'rounds were')} not heard, so there were more.`,
  },
  effort: {
    open: 'Effort and minutes',
    title: 'Effort and minutes',
    ask: 'How hard was this practice?',
    askMeans: '0 is rest, 3 is moderate, 5 is hard, 10 is the hardest ever. Optional.',
    minutes: 'Minutes',
    column: 'Effort',
    minutesAll: 'Minutes for everyone',
    effortOf: (name: string) => `Effort of ${name}`,
    minutesOf: (name: string) => `Minutes of ${name}`,
    notSaid: '–',
    nobody: 'Nobody was at this practice.',
    none: 'There is no practice yet.',
    kept: 'Each choice is kept at once.',
    load: 'Training load',
    week: (from: string, to: string) =>
      `${shortDay.format(at(from))} to ${shortDay.format(at(to))}`,
    loadIs: (load: number) => `load ${number.format(load)}`,
    untold: (practices: number) =>
      `not known: ${count(practices, 'practice has', 'practices have')} no effort or no minutes`,
    noPractice: 'no practice',
    monotony: (monotony: number, strain: number) =>
      `monotony ${one.format(monotony)}, strain ${number.format(strain)}`,
    noSpread: 'no monotony: all days are equal, or the week is not over',
    loadMeans:
      'Load is effort times minutes, summed over the week. It says how much the player felt this squad’s practices took, and knows nothing of matches, school or other clubs.',
    monotonyMeans:
      'Monotony is the mean of the seven days over their sample standard deviation (divisor 6; Foster 1998 does not say which), rest days as 0; strain is load times monotony. High monotony says that hard and easy days differ little; neither says who will be hurt.',
  },
};
