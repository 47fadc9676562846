import { describe, expect, test } from 'vitest';
import type { Random } from '../../../demo-data/random.ts';
import { type Measures, measure, seedsFrom, shareOf } from './level-measures.ts';

/*
 * Whether the model of level holds what it promises, on squads whose truth is known and that do not
 * keep to its terms (simulated-season.ts). Everything follows from the seeds. The seasons are as many
 * as a test may take, so the bounds leave two to three points for chance; tests/bench/levels.ts plays
 * more of them and prints what it finds.
 */

const drifting = (_: number, random: Random) => ({ all: random.normal(0, 0.4) });

const flat = measure({ practices: 36 }, seedsFrom(1, 20));
const long = measure({ practices: 36, rise: drifting }, seedsFrom(101, 14));
const short = measure({ practices: 12, rise: drifting }, seedsFrom(201, 20));

const percent = (share: number) => `${(100 * share).toFixed(1)}%`;
const within = (share: number, least: number, most: number) => {
  expect(share).toBeGreaterThanOrEqual(least);
  expect(share).toBeLessThanOrEqual(most);
};

describe('in simulated squads of twelve', () => {
  test.each([
    ['twelve', short],
    ['thirty-six', long],
  ] as const)(
    'after %s practices limits of level and difference hold the truth about four times in five',
    (...[, found]) => {
      const [level, difference] = [shareOf(found.level), shareOf(found.difference)];
      console.log(
        `${found.level.length} levels: 80% limits hold ${percent(level)} of them and ${percent(difference)} of the differences from the squad`,
      );
      within(level, 0.75, 0.86);
      within(difference, 0.75, 0.86);
    },
  );

  test('limits of the change over eight weeks hold it at least as often', () => {
    within(shareOf(long.change), 0.8, 0.95);
  });

  const changed = (cases: Measures['words']) =>
    shareOf(cases.map(({ word }) => word === 'rising' || word === 'falling'));

  test('where nothing changes, rising or falling is said of about one in nine over all kinds, and less of one', () => {
    console.log(
      `nothing changes: rising or falling is said of ${percent(changed(flat.overall))} over all kinds, ${percent(changed(flat.words))} of one kind`,
    );
    expect(flat.overall.length).toBe(20 * 12);
    within(changed(flat.overall), 0.02, 0.12);
    within(changed(flat.words), 0.02, 0.09);
  });

  test('who truly changes by more than 0.5 is often told so, and hardly ever the opposite', () => {
    const moved = long.overall.filter(({ rise }) => Math.abs(rise) > 0.5);
    expect(moved.length).toBeGreaterThan(20);
    const said = (word: (rise: number) => string) =>
      shareOf(moved.map((one) => one.word === word(one.rise)));
    console.log(
      `${moved.length} who change by more than 0.5: ${percent(said((rise) => (rise > 0 ? 'rising' : 'falling')))} are told so`,
    );
    expect(said((rise) => (rise > 0 ? 'rising' : 'falling'))).toBeGreaterThan(0.2);
    expect(said((rise) => (rise > 0 ? 'falling' : 'rising'))).toBeLessThan(0.05);
  });

  test.each([
    ['twelve practices six of ten', short, 0.6],
    ['thirty-six practices eight of ten', long, 0.8],
  ])(
    'of players 1.0 logit apart after %s are told apart, the wrong way round next to none',
    (_, found, least) => {
      const pairs = found.pairs.filter(({ apart }) => apart >= 0.9 && apart < 1.1);
      expect(pairs.length).toBeGreaterThan(300);
      const told = shareOf(pairs.map((pair) => pair.told));
      console.log(`${pairs.length} pairs 0.9 to 1.1 apart: ${percent(told)} are told apart`);
      expect(told).toBeGreaterThanOrEqual(least);
      expect(shareOf(pairs.map(({ wrongly }) => wrongly))).toBeLessThanOrEqual(0.02);
    },
  );

  test('of all pairs at most one in fifty is told apart the wrong way round', () => {
    const pairs = [flat, long, short].flatMap((found) => found.pairs);
    expect(shareOf(pairs.map(({ wrongly }) => wrongly))).toBeLessThanOrEqual(0.02);
  });

  test('two who are truly alike are told apart less often than the chance of 0.9 allows', () => {
    const alike = [flat, long, short]
      .flatMap((found) => found.pairs)
      .filter(({ apart }) => apart < 0.1);
    expect(alike.length).toBeGreaterThan(1000);
    within(shareOf(alike.map(({ told, wrongly }) => told || wrongly)), 0.05, 0.2);
  });
});
