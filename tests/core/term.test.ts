import { describe, expect, test } from 'vitest';
import { type Family, families } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import { rolesDiffer } from '../../core/planning/block-cost.ts';
import { randomFrom } from '../../demo-data/random.ts';
import {
  byChance,
  CHANGEOVER,
  pairings,
  playTerm,
  proposing,
  SECONDS,
  type Term,
  type TermOptions,
} from './simulated-term.ts';

const played = new Map<string, Term>();

/** A term by what the program proposes, each played once. */
function term(over: Partial<TermOptions> = {}): Term {
  const options: TermOptions = {
    ...{ seed: 1, players: 12, practices: 36, courts: 2, minutes: [20, 30], attendance: 0.7 },
    ...over,
  };
  const key = JSON.stringify(options);
  const known = played.get(key) ?? playTerm(options, proposing);
  played.set(key, known);
  return known;
}

/** Most practices from one with a family to the next, the first and last of the term included. */
function longestGap({ summaries }: Term, family: Family): number {
  const with_ = summaries.flatMap(({ rounds }, at) =>
    rounds.some(({ terms }) => terms.family === family) ? [at] : [],
  );
  const all = [-1, ...with_, summaries.length];
  return Math.max(...all.slice(1).map((at, before) => at - all[before]!));
}
const longestGaps = (played: Term) => families.map((family) => longestGap(played, family));

const squads: Partial<TermOptions>[] = [
  { players: 12, courts: 3, seed: 1 },
  { players: 11, courts: 2, seed: 2 },
  { players: 8, courts: 2, seed: 3 },
  { players: 16, courts: 2, seed: 4 },
];

describe('a term of 36 practices to which 70 to 100% come', () => {
  test.each(squads)('of $players players on $courts courts goes as it should', (squad) => {
    const played = term(squad);
    const attendance = played.summaries.map(({ attended }) => attended.length / squad.players!);
    expect(Math.min(...attendance)).toBeGreaterThanOrEqual(0.7);
    expect(Math.max(...attendance)).toBe(1);

    // No family is ever left out: there is room for each in twenty minutes.
    expect(longestGaps(played)).toEqual([1, 1, 1, 1]);
    // Blocks fill their time and never go over it.
    expect(Math.max(...played.over)).toBeLessThanOrEqual(0);
    expect(Math.min(...played.over)).toBeGreaterThan(-(SECONDS + CHANGEOVER) / 60);
    // Nobody has more than one round more than another of those who are here.
    expect(played.uneven).toBeLessThanOrEqual(1);

    let before = new Set<string>();
    for (const { rounds } of played.summaries) {
      const times = new Map<string, number>();
      for (const { terms } of rounds) times.set(terms.drill, (times.get(terms.drill) ?? 0) + 1);
      for (const [id, count] of times) {
        const drill = starterDrills.find((one) => one.id === id)!;
        if (rolesDiffer(drill)) expect(count % 2).toBe(0);
        const known = starterDrills.filter(({ family }) => family === drill.family);
        if (known.some((one) => !before.has(one.id))) expect(before.has(id)).toBe(false);
      }
      before = new Set(times.keys());
    }
  });

  test.each([
    [1, 2, 4],
    [2, 5, 2],
    [3, 8, 2],
    [4, 11, 1],
  ])(
    'of %i rounds a practice leaves a family out no longer than it must',
    (rounds, minutes, gap) => {
      for (let seed = 1; seed <= 3; seed += 1) {
        const played = term({ minutes: [minutes, minutes], seed });
        expect(new Set(played.summaries.map((summary) => summary.rounds.length))).toEqual(
          new Set([rounds]),
        );
        expect(gap).toBe(Math.ceil(families.length / rounds));
        expect(Math.max(...longestGaps(played))).toBe(gap);
      }
    },
  );

  test('lets everybody play with everybody, more evenly than chance does', () => {
    const options = { seed: 1, players: 12, practices: 36, courts: 3, attendance: 0.7 };
    const spread = (played: Term) => {
      const times = [...pairings(played).values()].map((dates) => dates.length);
      expect(times).toHaveLength(66);
      return Math.max(...times) / Math.min(...times);
    };
    const own = spread(term(options));
    const chance = { plan: proposing.plan, pair: byChance(randomFrom(1)) };
    expect(own).toBeLessThan(2);
    expect(spread(playTerm({ ...options, minutes: [20, 30] }, chance))).toBeGreaterThan(own);
  });

  test('is the same each time', () => {
    const first = term({ practices: 5 });
    played.clear();
    expect(term({ practices: 5 })).toEqual(first);
  });
});
