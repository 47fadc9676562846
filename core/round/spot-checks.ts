import { drawnFrom } from './drawn.ts';
import type { CountingWay } from './tally.ts';

/** One look that is asked for: at whom, and in which seconds of live clock it can be answered. */
export interface SpotCheck {
  player: string;
  second: number;
  until: number;
}

/** Most looks in a round: where the pairs call their number, eyes and thumbs are free. */
export const MOST_CHECKS: Readonly<Record<CountingWay, number>> = { tapped: 6, called: 12 };

/** Seconds about the start, half of the clock and the horn in which nobody is asked for a look. */
const QUIET_SECONDS = 5;
/** From one look to the next at the least: time to find the player, look, and touch. */
const LEAST_SECONDS = 5;
/** So long it can be answered at the most: a look is of one moment, not of what came after. */
const OPEN_SECONDS = 8;
/** Between two looks the place is empty, so that no answer to one is taken for the next one's. */
const EMPTY_SECONDS = 1;

/** Parts of looks are no whole numbers: those that differ by less are the same. */
const ROUNDING = 1e-9;

/** A round as far as its looks are concerned. */
export interface CheckedRound {
  /** What it draws by: the same on every phone that plays it. */
  seed: string;
  /** Everyone who plays in it. */
  players: readonly string[];
  /** Its planned length. */
  seconds: number;
  /** How many looks are wanted; fewer where the clock has no room for them. */
  checks: number;
  /** The second at which it ended; left out while it runs. */
  end?: number;
}

/**
 * The looks of each round of a practice, in the order of the rounds: momentary time sampling
 * (Altmann 1974, Behaviour 49: 227–267, as instantaneous sampling), at moments that nobody foresees.
 *
 * Every player who plays in a round is owed the same part of its looks, and each look goes to whoever
 * is owed most; lots decide between equals. So two players of the same rounds never differ by more
 * than one; and as long as nobody leaves, each is within one look of what the rounds played so far
 * owe, whenever the player came. Looks after a round's end were not asked for.
 */
export function spotChecks(rounds: readonly CheckedRound[]): SpotCheck[][] {
  const owed = new Map<string, number>();
  return rounds.map(({ seed, players, seconds, checks, end = seconds }) => {
    const drawn = drawnFrom(seed);
    const playing = [...new Set(players)].sort();
    const moments = playing.length === 0 ? [] : momentsIn(seconds, checks, drawn);
    const asked = moments.filter(({ second }) => second < end).length;
    const lots = new Map(playing.map((player) => [player, drawn()]));
    const due = new Map(playing.map((player) => [player, owed.get(player) ?? 0]));
    // What this round owes is the same for everyone in it, and decides nothing.
    const goesBefore = (one: string, other: string) => {
      const more = due.get(one)! - due.get(other)!;
      return Math.abs(more) > ROUNDING ? more > 0 : lots.get(one)! < lots.get(other)!;
    };
    const named = moments.map(() => {
      const next = playing.reduce((first, each) => (goesBefore(each, first) ? each : first));
      due.set(next, due.get(next)! - 1);
      return next;
    });
    // Who is owed most is named first, so that a round that is cut short is fair as well.
    for (const player of playing) {
      const looks = named.slice(0, asked).filter((each) => each === player).length;
      owed.set(player, (owed.get(player) ?? 0) + asked / playing.length - looks);
    }
    return moments.map((moment, at) => ({ player: named[at]!, ...moment }));
  });
}

/** Moments in both halves of the clock, as many in one as in the other or one more. */
function momentsIn(
  seconds: number,
  checks: number,
  drawn: () => number,
): Pick<SpotCheck, 'second' | 'until'>[] {
  const half = seconds / 2;
  const room = half - 2 * QUIET_SECONDS;
  const most = Math.max(0, Math.floor(room / LEAST_SECONDS));
  const first = Math.floor(checks / 2 + drawn());
  return [first, checks - first].flatMap((wanted, at) => {
    const count = Math.min(wanted, most);
    // Lots in what is left of the room, then each moved by the least that lies between two.
    const spare = room - count * LEAST_SECONDS;
    const lots = Array.from({ length: count }, () => drawn() * spare).sort((a, b) => a - b);
    const begins = lots.map((lot, place) => {
      const second = at * half + QUIET_SECONDS + lot + place * LEAST_SECONDS;
      return Math.floor(second * 10) / 10;
    });
    const end = (at + 1) * half - QUIET_SECONDS;
    return begins.map((second, place) => ({
      second,
      until: Math.min(second + OPEN_SECONDS, (begins[place + 1] ?? Infinity) - EMPTY_SECONDS, end),
    }));
  });
}
