import papaparse from 'papaparse';
import { describe, expect, test } from 'vitest';
import { toCsv } from '../../core/exchange/csv.ts';
import { tallyRows } from '../../core/exchange/tallies.ts';
import { daysThere } from '../../core/figures/attendance.ts';
import { sumTouches } from '../../core/figures/counted.ts';
import { reviewDrills, reviewWork } from '../../core/figures/review.ts';
import { pairStints, playerStints } from '../../core/figures/stints.ts';
import { byDrill, byPlayer } from '../../core/figures/totals.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { type Summary, summarise } from '../../core/ledger/summary.ts';
import { DEMO_SEED, season } from '../../demo-data/season.ts';

/*
 * Everything that screens show of the invented season, held against a recount of its table: the
 * table is written, read back by another library, and added up here in the plainest way.
 */

const AFTERWARDS = Date.parse('2026-04-01');
const summaries = season({ seed: DEMO_SEED, lastDate: '2026-03-04' }).practices.map(
  ({ entries }): Summary => {
    const practice = foldPractice(entries);
    if (!practice) throw new Error('no entry opened the practice');
    const summary = summarise(practice, AFTERWARDS);
    return {
      ...summary,
      rounds: summary.rounds.map((round) => ({
        ...round,
        tallies: round.tallies.map((tally) => {
          // Any estimate does: it is the adding up that is looked at, not the model.
          const shots = 1.25 * tally.sets * round.terms.size + 51;
          return {
            ...tally,
            estimate: { model: 1, shots, sd: 3, low: shots - 4, high: shots + 4 },
          };
        }),
      })),
    };
  },
);
const csv = toCsv(
  tallyRows(summaries, { player: (id) => id, focus: (id) => id, drill: ({ drill }) => drill }),
);
const rows = papaparse.parse<Record<string, string>>(csv, {
  header: true,
  skipEmptyLines: true,
}).data;

type Row = (typeof rows)[number];
const num = (row: Row, column: string) => Number(row[column]);
const sum = (some: readonly Row[], column: string) =>
  some.reduce((all, row) => all + num(row, column), 0);
const distinct = (some: readonly Row[], ...columns: string[]) =>
  new Set(some.map((row) => columns.map((column) => row[column]).join(' '))).size;
/** Every set of a pair is in two rows; on target every set is in one. */
const pairSets = (some: readonly Row[]) =>
  some.reduce(
    (all, row) => all + num(row, 'sets') / (row.counting_rule === 'on-target' ? 1 : 2),
    0,
  );
const where = (of: Record<string, string | number>) =>
  rows.filter((row) =>
    Object.entries(of).every(([column, value]) => row[column] === String(value)),
  );
const players = [...new Set(rows.map((row) => row.player ?? ''))];
const drills = [...new Set(rows.map((row) => row.drill ?? ''))];

describe('a recount of the table of the invented season', () => {
  test('looks at a whole season', () => {
    expect(rows.length).toBeGreaterThan(1_800);
    expect(players).toHaveLength(11);
    expect(drills.length).toBeGreaterThan(10);
  });

  test.each(players)('comes to the same sets, touches, minutes and days of player %s', (player) => {
    const own = where({ player });
    const total = byPlayer(summaries).get(player)!;
    expect(total.sets).toBe(sum(own, 'sets'));
    expect(sumTouches(total.touches)).toBe(sum(own, 'touches_counted'));
    expect(total.seconds).toBeCloseTo(sum(own, 'live_seconds'), 6);
    expect(total.rounds).toBe(own.length);
    expect(total.practices).toBe(distinct(own, 'date', 'practice'));
    expect(daysThere(summaries).get(player)).toBe(distinct(own, 'date'));
  });

  test.each(drills)('comes to the same sets, touches, rounds and minutes of drill %s', (drill) => {
    const of = where({ drill });
    const total = byDrill(summaries).get(drill)!;
    expect(total.sets).toBe(pairSets(of));
    expect(sumTouches(total.touches)).toBe(sum(of, 'touches_counted'));
    expect(total.rounds).toBe(distinct(of, 'date', 'practice', 'round'));
    // Every round lasted as long as it was planned, for everyone who was not in a trio.
    expect(total.seconds).toBe(120 * total.rounds);
  });

  test('comes to the same rates and touches of every player, kind of work and drill', () => {
    let looked = 0;
    for (const [player, stints] of playerStints(summaries)) {
      for (const { family, onTarget, rates } of reviewWork(stints)) {
        const own = where({ player, family }).filter(
          (row) => (row.counting_rule === 'on-target') === onTarget,
        );
        expectRates(rates, own);
        looked += 1;
      }
      for (const { terms, rates, sizes } of reviewDrills(stints)) {
        expectRates(rates, where({ player, drill: terms.drill }));
        for (const { size, rates: some } of sizes) {
          expectRates(some, where({ player, drill: terms.drill, set_size: size }));
          looked += 1;
        }
      }
    }
    expect(looked).toBeGreaterThan(200);
  });

  function expectRates(
    { sets, minutes, perMinute, touches }: ReturnType<typeof reviewDrills>[number]['rates'],
    own: Row[],
  ) {
    expect(sets).toBe(sum(own, 'sets'));
    expect(minutes).toBeCloseTo(sum(own, 'live_seconds') / 60, 6);
    expect(perMinute?.rate).toBeCloseTo(sum(own, 'sets') / (sum(own, 'live_seconds') / 60), 9);
    expect(touches.counted).toBe(sum(own, 'touches_counted'));
    // The table rounds every row to a tenth.
    expect(Math.abs(touches.all!.touches - sum(own, 'touches_estimated'))).toBeLessThanOrEqual(
      0.05 * own.length + 1e-6,
    );
  }

  test('comes to the same sets and touches of all pairs together', () => {
    for (const { family, onTarget, rates } of reviewWork(pairStints(summaries))) {
      const of = where({ family }).filter(
        (row) => (row.counting_rule === 'on-target') === onTarget,
      );
      expect(rates.sets).toBe(pairSets(of));
      expect(rates.touches.counted).toBe(sum(of, 'touches_counted'));
      // Two players, or three for two thirds of it each, share the clock of a pair.
      expect(rates.minutes).toBeCloseTo(sum(of, 'live_seconds') / 120, 6);
      expect(
        Math.abs(rates.touches.all!.touches - sum(of, 'touches_estimated')),
      ).toBeLessThanOrEqual(0.05 * of.length + 1e-6);
    }
  });
});
