import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CheckedRound, MOST_CHECKS, spotChecks } from '../../../core/round/spot-checks.ts';

const squad = (count: number) => Array.from({ length: count }, (_, at) => `p${at}`);
const round = (slot: number, over: Partial<CheckedRound> = {}): CheckedRound => ({
  seed: `practice ${slot}`,
  players: squad(12),
  seconds: 120,
  checks: 6,
  ...over,
});

const seed = fc.string({ minLength: 1, maxLength: 12 });
const checks = fc.integer({ min: 0, max: MOST_CHECKS.called });
const seconds = fc.integer({ min: 30, max: 600 });
const anyRound = fc.record({
  seed,
  checks,
  seconds,
  players: fc.integer({ min: 2, max: 24 }).map(squad),
});

/** How often each player was asked for before the round's end, and what the rounds played so far owe. */
function counted(rounds: readonly CheckedRound[]) {
  const named = new Map<string, number>();
  const owed = new Map<string, number>();
  spotChecks(rounds).forEach((looks, at) => {
    const { players, end = Infinity } = rounds[at]!;
    const asked = looks.filter(({ second }) => second < end);
    for (const { player } of asked) named.set(player, (named.get(player) ?? 0) + 1);
    for (const player of players) {
      owed.set(player, (owed.get(player) ?? 0) + asked.length / players.length);
    }
  });
  return { named: (player: string) => named.get(player) ?? 0, owed };
}

describe('the schedule of spot checks', () => {
  test('asks for as many looks as are wanted, where the clock has room for them', () => {
    for (const wanted of [0, 1, 5, 6, 11, 12]) {
      expect(spotChecks([round(0, { checks: wanted })])[0]).toHaveLength(wanted);
    }
    expect(spotChecks([round(0, { seconds: 30 })])[0]).toHaveLength(2);
  });

  test('asks for nothing within 5 s of start, half of the clock and horn', () => {
    fc.assert(
      fc.property(anyRound, (any) => {
        for (const { second, until } of spotChecks([any])[0]!) {
          for (const quiet of [0, any.seconds / 2, any.seconds]) {
            expect(until <= quiet - 5 || second >= quiet + 5).toBe(true);
          }
        }
      }),
    );
  });

  test('leaves time for every look, and the place empty before the next', () => {
    fc.assert(
      fc.property(anyRound, (any) => {
        const looks = spotChecks([any])[0]!;
        looks.forEach(({ second, until }, at) => {
          expect(until - second).toBeGreaterThan(3.8);
          const next = looks[at + 1];
          if (next) expect(next.second - until).toBeGreaterThan(0.99);
        });
      }),
    );
  });

  test('asks for the players of the round and for nobody else', () => {
    fc.assert(
      fc.property(fc.array(anyRound, { minLength: 1, maxLength: 12 }), (rounds) => {
        spotChecks(rounds).forEach((looks, at) => {
          for (const { player } of looks) expect(rounds[at]!.players).toContain(player);
        });
      }),
    );
  });

  test('is the same on every phone, whatever the order of its pairs, and another in another round', () => {
    fc.assert(
      fc.property(fc.array(anyRound, { minLength: 1, maxLength: 5 }), (rounds) => {
        const turned = rounds.map((each) => ({ ...each, players: each.players.toReversed() }));
        expect(spotChecks(turned)).toEqual(spotChecks(rounds));
      }),
    );
    expect(spotChecks([round(0)])).not.toEqual(spotChecks([round(1)]));
  });

  test('does not tell beforehand when a look comes', () => {
    const first = Array.from(
      { length: 300 },
      (_, slot) => spotChecks([round(slot)])[0]![0]!.second,
    );
    // Three looks of 5 s in 50 s leave 35 s to draw from: the first comes 5 s to 40 s after the start.
    expect(Math.min(...first)).toBeLessThan(6);
    expect(Math.max(...first)).toBeGreaterThan(25);
    expect(new Set(first).size).toBeGreaterThan(100);
  });

  test('over any practice of the same players never differs by more than one look', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 24 }),
        fc.array(
          fc.record({
            seed,
            checks,
            seconds,
            end: fc.option(fc.integer({ min: 0, max: 600 }), { nil: undefined }),
          }),
          { minLength: 1, maxLength: 12 },
        ),
        (count, made) => {
          const players = squad(count);
          const rounds = made.map(({ end, ...each }) => ({
            ...each,
            players,
            ...(end !== undefined && { end }),
          }));
          const { named } = counted(rounds);
          const looks = players.map(named);
          expect(Math.max(...looks) - Math.min(...looks)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('owes a late arrival the part of the rounds that were still to come, to within one look', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 10 }),
        fc.array(fc.record({ seed, checks, seconds, come: fc.integer({ min: 0, max: 3 }) }), {
          minLength: 1,
          maxLength: 12,
        }),
        (first, made) => {
          let here = first;
          const rounds = made.map(({ come, ...each }) => {
            here = Math.min(24, here + come);
            return { ...each, players: squad(here) };
          });
          const { named, owed } = counted(rounds);
          for (const [player, share] of owed)
            expect(Math.abs(named(player) - share)).toBeLessThan(1);
        },
      ),
    );
  });

  test('also where players come, leave and wait, differs by at most one between two of the same rounds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ seed, checks, seconds, out: fc.array(fc.nat(9), { maxLength: 6 }) }), {
          minLength: 1,
          maxLength: 12,
        }),
        (made) => {
          const others = squad(12).slice(2);
          const rounds = made.map(({ out, ...each }) => ({
            ...each,
            players: ['p0', 'p1', ...others.filter((_, at) => !out.includes(at))],
          }));
          const { named } = counted(rounds);
          expect(Math.abs(named('p0') - named('p1'))).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('is fair to those who take turns for want of courts', () => {
    // Twelve players on two courts: four pairs play, two wait, in turn (24 rounds of one evening each).
    for (let evening = 0; evening < 50; evening++) {
      const pairs = Array.from({ length: 6 }, (_, at) => [`a${at}`, `b${at}`]);
      const rounds = Array.from({ length: 9 }, (_, slot) =>
        round(slot, {
          seed: `${evening} ${slot}`,
          players: pairs.filter((_, at) => Math.floor(at / 2) !== slot % 3).flat(),
        }),
      );
      const { named, owed } = counted(rounds);
      const looks = [...owed.keys()].map(named);
      expect(Math.max(...looks) - Math.min(...looks)).toBeLessThanOrEqual(1);
    }
  });
});
