import type { Pair } from '../round/pair.ts';

/** Where a pair plays. */
export interface OnCourt {
  pair: Pair;
  /** From 0. */
  court: number;
  /** From 0; see lanes.ts. */
  lane: number;
}

export interface CourtRound {
  playing: OnCourt[];
  /**
   * Pairs for whom no court is free. They are not in the round: they get no tile and no live clock,
   * so that no figure counts what they did not play.
   */
  waiting: Pair[];
}

/**
 * Who plays where over so many rounds with the same pairs. Pairs are spread over all courts before
 * a court takes a second one. Where not all fit, those who have played least come in first, so that
 * after any round the pairs' rounds differ by one at most; who stays in stays where he is.
 *
 * @param courts left out where not known: then there is room for all
 * @param perCourt pairs that a court takes, see `clearLanes`
 * @param played rounds that each player has had today already; none where left out
 * @throws RangeError for courts, perCourt or rounds that are not whole numbers from 1
 */
export function assignCourts({
  pairs,
  courts,
  perCourt,
  rounds = 1,
  played = new Map(),
}: {
  pairs: readonly Pair[];
  courts?: number | undefined;
  perCourt: number;
  rounds?: number;
  played?: ReadonlyMap<string, number>;
}): CourtRound[] {
  mustBeWhole('perCourt', perCourt);
  mustBeWhole('rounds', rounds);
  const room = courts ?? Math.ceil(pairs.length / perCourt);
  if (courts !== undefined) mustBeWhole('courts', courts);
  const slots = Math.min(pairs.length, room * perCourt);
  const goes = pairs.map(({ players }) => ({
    players,
    had: players.reduce((sum, player) => sum + (played.get(player) ?? 0), 0) / players.length,
  }));

  const result: CourtRound[] = [];
  let before: (number | undefined)[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const inPlay = new Set(
      pairs
        .map((_, at) => at)
        .sort((a, b) => goes[a]!.had - goes[b]!.had || a - b)
        .slice(0, slots),
    );
    before = seats(before, inPlay, slots);
    result.push({
      playing: before.map((at, seat) => ({
        pair: pairs[at!]!,
        court: seat % room,
        lane: Math.floor(seat / room),
      })),
      waiting: pairs.filter((_, at) => !inPlay.has(at)),
    });
    for (const at of inPlay) goes[at]!.had += 1;
  }
  return result;
}

/** Seats of those in play: each where it sat before, the others on what is free. */
function seats(
  before: readonly (number | undefined)[],
  inPlay: ReadonlySet<number>,
  slots: number,
): number[] {
  const stay = before.filter((at) => at !== undefined && inPlay.has(at));
  const come = [...inPlay].filter((at) => !stay.includes(at)).sort((a, b) => a - b);
  return Array.from({ length: slots }, (_, seat) => {
    const at = before[seat];
    return at !== undefined && inPlay.has(at) ? at : come.shift()!;
  });
}

function mustBeWhole(name: string, value: number): void {
  if (!(Number.isInteger(value) && value >= 1)) {
    throw new RangeError(`${name} must be a whole number from 1, not ${value}`);
  }
}
