import { endSecond } from '../round/clock.ts';
import { type SpotCheck, spotChecks } from '../round/spot-checks.ts';
import { type OpenRound, type Practice, roundsThatCount } from './practice.ts';

/**
 * The looks that a round of a practice asks for, so that over its rounds everyone has as many as the
 * others. They are drawn by the practice, the round's place in it and who plays, and by nothing that
 * a phone has for itself: two phones that hold the same practice ask for the same looks.
 */
export function checksIn(practice: Practice, round: OpenRound): SpotCheck[] {
  if (round.checks === 0 || round.focus === undefined) return [];
  const before = roundsThatCount(practice).filter(({ slot }) => slot < round.slot);
  const asked = [...before, round].map(({ slot, tallies, seconds, checks, focus, clock }) => ({
    seed: `${practice.id} ${slot}`,
    players: tallies.flatMap(({ pair }) => pair.players),
    seconds,
    checks: focus === undefined ? 0 : checks,
    ...(clock && { end: endSecond(clock) }),
  }));
  return spotChecks(asked).at(-1) ?? [];
}
