import type { Terms } from '../core/drill/drill.ts';
import type { Random } from './random.ts';

/** A set as it was completed. */
export interface Completed {
  /** Seconds of live clock; past the end of the round where a rally was played out. */
  second: number;
  /** `on-target` only: who struck it. */
  player?: string;
}

/** What really happened in a pair's round, of which the tile only sees the sets. */
export interface Rally {
  sets: Completed[];
  /** Shots struck before the horn. */
  shots: number;
  /** The same by player. */
  struck: Record<string, number>;
  /** How far the unfinished set had come at the horn. */
  showing: number;
  /** The longest run before the horn. */
  best: number;
}

/** The players' pace: medians in seconds and sds of the logarithm, from round to round. */
const TEMPO = [1.53, 0.127] as const;
const REFEED = [5.66, 0.27] as const;
const PAUSE = [4.24, 0.27] as const;
/** Within a round, from shot to shot and from pause to pause. */
const SHOT_VARIATION = 0.15;
const PAUSE_VARIATION = 0.4;

/**
 * Plays a pair's or trio's round shot by shot. A shot takes its time and succeeds or not; a miss
 * costs a re-feed and a set a pause, but for on-target rounds, where the next ball is struck
 * whatever became of the last. A trio turns after each set.
 *
 * @param seconds live clock
 * @param success the probability that a player's shot is good, off the partner's ball
 */
export function playRally(
  terms: Terms,
  players: readonly string[],
  seconds: number,
  success: (striker: string, partner: string) => number,
  random: Random,
): Rally {
  const tempo = random.logNormal(...TEMPO);
  const refeed = random.logNormal(...REFEED);
  const pause = random.logNormal(...PAUSE);
  const onTarget = terms.rule === 'on-target';
  const rally: Rally = { sets: [], shots: 0, struck: {}, showing: 0, best: 0 };

  let clock = 0;
  let done = 0; // good shots of the set in hand
  let run = 0; // good shots since the last miss or set
  let sets = 0;
  for (let balls = 0; ; balls += 1) {
    clock += random.gamma(tempo, SHOT_VARIATION);
    const inTime = clock <= seconds;
    // A ball that is in the air at the horn is played on; nobody begins another rally.
    if (!inTime && run === 0) break;

    const role = terms.shots[(onTarget ? balls : done) % terms.shots.length]?.role ?? 0;
    const turn = players.length === 3 ? sets : 0;
    const striker = players[(turn + role) % players.length] ?? '';
    const partner = players[(turn + 1 - role) % players.length] ?? '';
    if (inTime) {
      rally.shots += 1;
      rally.struck[striker] = (rally.struck[striker] ?? 0) + 1;
    }

    if (random.chance(success(striker, partner))) {
      done += 1;
      run += 1;
      if (inTime) rally.best = Math.max(rally.best, run);
      if (done === terms.size) {
        rally.sets.push({ second: clock, ...(onTarget && { player: striker }) });
        sets += 1;
        done = 0;
        run = 0;
        if (!onTarget) clock += random.gamma(pause, PAUSE_VARIATION);
      }
    } else {
      if (terms.rule !== 'in-total') done = 0;
      run = 0;
      if (!onTarget) clock += random.gamma(refeed, PAUSE_VARIATION);
    }
    if (inTime) rally.showing = done;
  }
  return rally;
}
