import { countsByPlayer } from '../drill/counting-rules.ts';
import type { CountingRule, Terms } from '../drill/drill.ts';
import type {
  Consistency,
  Estimate,
  PlayedRound,
  PlayedTally,
  Summary,
} from '../ledger/summary.ts';
import { secondsOf } from '../ledger/summary.ts';
import { isHeard, isHeardOf } from '../round/tally.ts';
import { restingIn, shares, sumTouches, turnedAfter } from './counted.ts';

/** What one player, or one whole pair, did in one round: what every figure over a span is made of. */
export interface Stint {
  practice: string;
  /** YYYY-MM-DD. */
  date: string;
  terms: Terms;
  /** What can be counted together: the same for the same drill, rule and size. */
  countedAs: string;
  /** What shares a clock, so that estimates err together: see all-touches.ts. */
  clock: string;
  /** The pair or trio, whoever the stint is of. */
  players: readonly string[];
  /** Sets that were taken part in; on target struck. */
  sets: number;
  /** Touches in completed sets. */
  counted: number;
  /** Live clock that was taken part in: two thirds of the round's for one of a trio. */
  seconds: number;
  /** All touches of the stint are `offset` and this part of the pair's: a half, a third, the whole. */
  part: number;
  /** What the player has in completed sets beyond that part of them. */
  offset: number;
  /** The pair's; undefined where the model was not asked yet. */
  estimate: Estimate | undefined;
  /**
   * The pair's share of shots that come back; on target the player's own that meet it. Undefined
   * where there is no estimate, or one that the clock contradicts.
   */
  success: Consistency | undefined;
}

/** A round of which a tally is looked at, and the practice it was played in. */
export type Setting = Pick<Summary, 'practice' | 'date'> &
  Pick<PlayedRound, 'terms' | 'seconds' | 'unwatched'>;

/** What each player of a tally did, in their places in the pair. */
export function tallyStints(
  { practice, date, terms, ...clocked }: Setting,
  tally: PlayedTally,
): Stint[] {
  const { estimate, pair } = tally;
  const { seconds } = clocked;
  const watched = secondsOf(clocked, tally);
  const alike = countedAs(terms);
  const clock = clockOf(practice, terms, tally);
  const own = shares(terms, tally, seconds);
  const inSets = own.reduce((sum, { touches }) => sum + sumTouches(touches), 0);
  return own.map(({ player, sets, touches, time }, place) => {
    const counted = sumTouches(touches);
    const part = partOf(terms, seconds, tally, place);
    return {
      practice,
      date,
      terms,
      countedAs: alike,
      clock,
      players: pair.players,
      sets,
      counted,
      seconds: watched * time,
      part,
      // On target everyone strikes as many balls as the others, whoever meets it.
      offset: countsByPlayer(terms.rule) ? 0 : counted - part * inSets,
      estimate,
      success: estimate?.own?.[player] ?? estimate?.success,
    };
  });
}

/**
 * The stints of every player, in the order of the summaries, as far as they were heard; one who never
 * played is not in it.
 */
export function playerStints(summaries: readonly Summary[]): Map<string, Stint[]> {
  const stints = new Map<string, Stint[]>();
  for (const { setting, tally } of played(summaries)) {
    tallyStints(setting, tally).forEach((stint, place) => {
      const player = tally.pair.players[place] ?? '';
      if (!isHeardOf(tally, player)) return;
      const own = stints.get(player) ?? [];
      stints.set(player, own);
      own.push(stint);
    });
  }
  return stints;
}

/** The stints of whole pairs, one a tally that was heard, in the order of the summaries. */
export const pairStints = (summaries: readonly Summary[]): Stint[] =>
  played(summaries).map(({ setting: { practice, date, terms, ...clocked }, tally }) => ({
    practice,
    date,
    terms,
    countedAs: countedAs(terms),
    clock: clockOf(practice, terms, tally),
    players: tally.pair.players,
    sets: tally.sets,
    counted: shares(terms, tally, clocked.seconds).reduce(
      (sum, { touches }) => sum + sumTouches(touches),
      0,
    ),
    seconds: secondsOf(clocked, tally),
    part: 1,
    offset: 0,
    estimate: tally.estimate,
    success: tally.estimate?.success,
  }));

const played = (summaries: readonly Summary[]): { setting: Setting; tally: PlayedTally }[] =>
  summaries.flatMap(({ practice, date, rounds }) =>
    rounds.flatMap(({ terms, seconds, unwatched, tallies }) => {
      const setting = { practice, date, terms, seconds, ...(unwatched && { unwatched }) };
      return tallies.filter(isHeard).map((tally) => ({ setting, tally }));
    }),
  );

/** The same for rounds that are counted in the same way. No rule and no size has a space in it. */
export const countedAs = ({ drill, rule, size }: Terms): string => `${drill} ${rule} ${size}`;

/**
 * Rounds of one drill share a clock where the same players played them in one practice, and where
 * they lean on the same tempo check.
 */
function clockOf(practice: string, { drill }: Terms, { pair, estimate }: PlayedTally): string {
  const tempo = estimate?.pace?.tempo;
  return tempo === undefined
    ? `${practice} ${pair.players.toSorted().join(' ')} ${drill}`
    : `${tempo} ${drill}`;
}

/**
 * Which part of the touches outside completed sets the player at a place strikes. In a pair as much
 * of the drill's pattern as the role has: half of a rally struck in turn, whoever feeds. On target
 * the same part of all. Of a trio one rests until the others have made their set, so it is half of
 * the part of the clock in which the player hit.
 */
function partOf(
  { rule, shots }: Terms,
  seconds: number,
  tally: PlayedTally,
  place: number,
): number {
  const { players } = tally.pair;
  if (countsByPlayer(rule)) return 1 / players.length;
  if (players.length === 2) {
    const own = shots.filter(({ role }) => role === place).length / shots.length;
    if (tally.turned === undefined) return own;
    const before = turnedAfter(tally, seconds);
    return before * own + (1 - before) * (1 - own);
  }
  const { from, to } = tally.span ?? { from: 0, to: seconds };
  const ends = setEnds(to - from, from, tally);
  const rested = ends.reduce(
    (sum, end, set) =>
      restingIn(players, set) === players[place] ? sum + end - (ends[set - 1] ?? 0) : sum,
    0,
  );
  return to > from ? (1 - rested / (to - from)) / 2 : 1 / 3;
}

/**
 * When each set of the round ended, by its marks, and at the last the round itself, whose set was
 * not finished; where the marks do not tell, all sets are taken as equally long.
 */
function setEnds(seconds: number, from: number, { sets, times }: PlayedTally): number[] {
  const own = times.map((time) => time - from);
  const tell = own.length === sets && own.every((time) => time <= seconds);
  return tell
    ? [...own, seconds]
    : Array.from({ length: sets + 1 }, (_, set) => (seconds * (set + 1)) / (sets + 1));
}

/** Whether balls that meet a target are counted: a share of another kind than balls that come back. */
export const isOnTarget = ({ terms }: { terms: { rule: CountingRule } }): boolean =>
  countsByPlayer(terms.rule);
