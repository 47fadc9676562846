import { countsByPlayer } from '../drill/counting-rules.ts';
import type { Terms } from '../drill/drill.ts';
import { type Consistency, type Estimate, type PlayedRound, secondsOf } from '../ledger/summary.ts';
import { isHeard, isHeardOf, leastSeconds, type Tally } from '../round/tally.ts';
import type { Pace } from '../round/tempo.ts';
import { shares, sumTouches } from './counted.ts';
import { paceKnown } from './pace-known.ts';
import { estimateShots, TOUCHES_MODEL_VERSION, type TouchesRound } from './touches.ts';

/** Whether an estimate says what this version of the model would, with this pace. */
export const isCurrent = (estimate: Estimate | undefined, pace: Pace | undefined): boolean =>
  estimate?.model === TOUCHES_MODEL_VERSION &&
  estimate.pace?.tempo === pace?.tempo &&
  estimate.pace?.refeed === pace?.refeed;

/**
 * All touches of one pair or trio in the part of a round in which it was watched at play, and how
 * consistent it was; undefined where its count was not heard, since a round that nobody counted says
 * nothing.
 */
export function estimateOf(
  round: Pick<PlayedRound, 'terms' | 'seconds' | 'unwatched'>,
  tally: Tally,
  pace: Pace | undefined,
): Estimate | undefined {
  if (!isHeard(tally)) return undefined;
  const from = tally.span?.from ?? 0;
  // A clock with a hole in it does not say how long a set took.
  const times = round.unwatched ? [] : tally.times.map((time) => time - from);
  return estimateTally(round.terms, secondsOf(round, tally), { ...tally, times }, pace);
}

/**
 * All touches of one pair or trio in one round of so many live seconds, and how consistent it was.
 * Without any live clock they are what the marks prove.
 *
 * On target a set is one ball of one player. The pair's touches come from the sum of both counts;
 * the share that meets the target is each player's own, whose next ball comes once everyone in turn
 * has struck one: the time between own hits is that between hits times the players.
 */
export function estimateTally(
  terms: Terms,
  seconds: number,
  tally: Tally,
  pace: Pace | undefined,
): Estimate {
  const made = { model: TOUCHES_MODEL_VERSION, ...(pace && { pace }) };
  if (seconds === 0) {
    const shots = shares(terms, tally, seconds).reduce(
      (sum, share) => sum + sumTouches(share.touches),
      0,
    );
    return { ...made, shots, sd: 0, low: shots, high: shots, ...doubt(tally.sets > 0) };
  }
  const own = countsByPlayer(terms.rule) ? heardPlayers(tally) : [];
  if (own.length > 0 && own.length < tally.pair.players.length) {
    return { ...made, ...partlyHeard(seconds, tally, own, pace) };
  }
  const { shots, sd, low, high, implausible, ...success } = estimateShots(
    roundOf(terms, seconds, tally, pace),
  );
  const touches = { ...made, shots, sd, low, high, ...doubt(implausible) };
  if (implausible) return touches;
  return {
    ...touches,
    success: consistencyOf(success),
    ...(countsByPlayer(terms.rule) && { own: ownShares(seconds, tally, pace) }),
  };
}

const heardPlayers = (tally: Tally): string[] =>
  tally.pair.players.filter((player) => isHeardOf(tally, player));

/** On target, where only some called their number: everyone strikes as many balls as those. */
function partlyHeard(
  seconds: number,
  tally: Tally,
  heard: readonly string[],
  pace: Pace | undefined,
): Omit<Estimate, 'model'> {
  const { players } = tally.pair;
  const known = paceKnown(pace, players.length);
  const each = heard.map((player) =>
    estimateShots({
      ...{ rule: 'on-target', size: 1, sets: tally.byPlayer?.[player] ?? 0, seconds },
      ...known,
    }),
  );
  // They strike in turn, by one clock: what one says of the balls of all, the others say again.
  const all = (value: (own: (typeof each)[number]) => number) =>
    (each.reduce((sum, own) => sum + value(own), 0) / each.length) * players.length;
  return {
    shots: all(({ shots }) => shots),
    sd: all(({ sd }) => sd),
    low: all(({ low }) => low),
    high: all(({ high }) => high),
    own: Object.fromEntries(heard.map((player, at) => [player, consistencyOf(each[at]!)])),
    ...doubt(each.some(({ implausible }) => implausible)),
  };
}

const doubt = (implausible: boolean) => (implausible ? ({ implausible } as const) : {});

const consistencyOf = ({ consistency, consistencySd }: Consistency): Consistency => ({
  consistency,
  consistencySd,
});

function roundOf(
  terms: Terms,
  seconds: number,
  tally: Tally,
  pace: Pace | undefined,
): TouchesRound {
  const { rule } = terms;
  const { sets, showing, best } = tally;
  const known = paceKnown(pace);
  if (countsByPlayer(rule)) return { rule, size: 1, sets, seconds, ...known };
  const { size } = terms;
  const times = tellingTimes(terms, seconds, tally);
  // Another phone's ledger may hold a set that shows more shots than this size has.
  return {
    rule,
    size,
    sets,
    seconds,
    ...known,
    ...(times && { times }),
    ...(showing !== undefined && showing < size && { showing }),
    ...(best !== undefined && best < size && { best }),
  };
}

/**
 * The seconds of the marks, where there is one for each set and each is when its set was completed:
 * not where a count was corrected, a late mark stands for a set before the horn, or two marks came
 * faster after each other than anyone strikes a set.
 */
function tellingTimes(terms: Terms, seconds: number, { sets, times }: Tally) {
  const least = leastSeconds(terms);
  const tell =
    times.length === sets &&
    times.every((time, i) => time <= seconds && time - (times[i - 1] ?? 0) >= least);
  return tell ? times : undefined;
}

function ownShares(seconds: number, tally: Tally, pace: Pace | undefined) {
  const { players } = tally.pair;
  const known = paceKnown(pace, players.length);
  return Object.fromEntries(
    players.map((player) => {
      const sets = tally.byPlayer?.[player] ?? 0;
      const own = estimateShots({ rule: 'on-target', size: 1, sets, seconds, ...known });
      return [player, consistencyOf(own)];
    }),
  );
}
