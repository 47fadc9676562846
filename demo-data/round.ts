import type { Terms } from '../core/drill/drill.ts';
import type { Pair } from '../core/round/pair.ts';
import { playRally, type Rally } from './rally.ts';
import type { Random } from './random.ts';
import type { Say } from './recorder.ts';
import type { Success } from './skill.ts';

/** What really happened in a pair's round: the marks show only a part of it. */
export interface Truth {
  practice: string;
  round: string;
  /** The pair's letter. */
  pair: string;
  /** Shots struck before the horn, in finished sets and out of them. */
  shots: number;
  /** The same by player. */
  struck: Record<string, number>;
}

export interface RoundFacts {
  practice: string;
  round: string;
  ordinal: number;
  terms: Terms;
  seconds: number;
  pairs: Pair[];
}

/** A tap follows the set that it counts by so many seconds: at least, and at most on top of it. */
const TAP_DELAY = [0.15, 0.4] as const;
/** Nobody taps a set that is finished later after the horn than this. */
const LATEST_SECONDS = 2.5;
/** How often in a pair's round a hand slips: a tile hit twice, the wrong tile hit, a set not seen. */
const SLIP = 0.02;
/** How often someone saw how far the unfinished set had come, or the longest run. */
const SEEN = 0.6;
/** How often settle is passed over. */
const SKIPPED = 0.03;

/**
 * Plays a round from its Start, at `start` milliseconds since 1970, through settle, and says it
 * all. Gives back what really happened, and the time at which settle was done.
 */
export function playRound(
  facts: RoundFacts,
  start: number,
  success: Success,
  random: Random,
  say: Say,
): { truth: Truth[]; end: number } {
  const { practice, round, terms, seconds, pairs } = facts;
  const here = { practice, round };
  say({ kind: 'round-set', ...facts }, start - 8_000);
  say({ kind: 'clock-started', ...here }, start);

  const played = pairs.map((pair) => {
    const rally = playRally(terms, pair.players, seconds, success(terms), random);
    return { pair: pair.letter, rally, ...tapsOf(rally, pair, seconds, random) };
  });
  const judged = sayTaps(
    played.flatMap(({ taps }) => taps),
    here,
    start,
    say,
  );

  let end = start + seconds * 1_000 + random.logNormal(12_000, 0.3);
  const settle = (saying: Parameters<Say>[0]) => {
    end += random.logNormal(1_500, 0.4);
    say(saying, end);
  };
  if (random.chance(SKIPPED)) {
    settle({ kind: 'round-skipped', ...here });
  } else {
    for (const { mark, counts } of judged) settle({ kind: 'mark-judged', ...here, mark, counts });
    for (const { pair, rally, unseen } of played) {
      if (unseen) {
        const player = unseen.player !== undefined && { player: unseen.player };
        settle({ kind: 'tally-corrected', ...here, pair, ...player, by: 1 });
      }
      if (terms.rule !== 'on-target' && random.chance(SEEN)) {
        settle({ kind: 'set-showing', ...here, pair, shots: rally.showing });
      }
      const setless = rally.sets.every(({ second }) => second > seconds);
      if (terms.rule === 'in-a-row' && setless && random.chance(SEEN)) {
        settle({ kind: 'best-run', ...here, pair, shots: rally.best });
      }
    }
    settle({ kind: 'round-settled', ...here });
  }
  const truth = played.map(({ pair, rally: { shots, struck } }) => ({
    ...here,
    pair,
    shots,
    struck,
  }));
  return { truth, end };
}

interface Tap {
  /** Of live clock. */
  second: number;
  pair: string;
  player?: string;
  /** When it is taken back, where it is. */
  takenBack?: number;
  /** What settle says of it, where it is late or doubtful. */
  counts?: boolean;
}

/** The assistant's taps for a pair, slips and all, and a set that nobody tapped. */
function tapsOf(
  rally: Rally,
  pair: Pair,
  seconds: number,
  random: Random,
): { taps: Tap[]; unseen?: { player?: string } } {
  const sets = rally.sets.filter(({ second }) => second <= seconds + LATEST_SECONDS);
  const unseen =
    random.chance(SLIP) && sets.length > 0 && sets[0]!.second <= seconds ? sets.shift() : undefined;
  const taps = sets.map((set): Tap => {
    const second = set.second + TAP_DELAY[0] + random.unit() * TAP_DELAY[1];
    const late = second > seconds;
    return {
      second,
      pair: pair.letter,
      ...(set.player !== undefined && { player: set.player }),
      ...(late && { counts: set.second <= seconds }),
    };
  });
  const twice = random.chance(SLIP) ? taps[0] : undefined;
  if (twice) taps.push({ ...twice, second: twice.second + 0.3, counts: false });
  if (random.chance(SLIP)) {
    const second = random.unit() * (seconds - 5);
    const player = taps[0]?.player !== undefined && { player: pair.players[0]! };
    taps.push({ second, pair: pair.letter, ...player, takenBack: second + 2 });
  }
  return { taps, ...(unseen && { unseen }) };
}

/** Says the taps of all tiles in the order of the clock; gives back what settle has to judge. */
function sayTaps(
  taps: readonly Tap[],
  here: { practice: string; round: string },
  start: number,
  say: Say,
): { mark: string; counts: boolean }[] {
  const judged: { mark: string; counts: boolean }[] = [];
  const deeds = taps.flatMap((tap) => {
    let mark = '';
    const { pair, takenBack, counts } = tap;
    const player = tap.player !== undefined && { player: tap.player };
    const second = Math.round(tap.second * 1_000) / 1_000;
    const strike = (at: number) => {
      mark = say({ kind: 'mark', ...here, pair, ...player, second }, at).id;
      if (counts !== undefined) judged.push({ mark, counts });
    };
    const takeBack = (at: number) => say({ kind: 'mark-taken-back', ...here, mark }, at);
    return [
      { second, deed: strike },
      ...(takenBack === undefined ? [] : [{ second: takenBack, deed: takeBack }]),
    ];
  });
  deeds.sort((a, b) => a.second - b.second);
  for (const { second, deed } of deeds) deed(start + second * 1_000);
  return judged;
}
