import { describe, expect, test } from 'vitest';
import { shoulderLoad } from '../../../core/figures/shoulder-load.ts';
import { trainingWeek } from '../../../core/figures/training-load.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import { checks } from '../../reference/values.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

describe('overheads and serves a week', () => {
  const day = (date: string, sets: number) =>
    practiceWith(date, [
      roundWith(0, lobTerms, [[['ana', 'bo'], sets]]),
      roundWith(1, serveTerms, [[['ana', 'bo'], { ana: 4, bo: 6 }]]),
      roundWith(2, termsWith(), [[['ana', 'bo'], 2]]),
    ]);

  test('are those of the own role, in the last six weeks, oldest first', () => {
    const load = shoulderLoad([day('2026-03-02', 5), day('2026-03-20', 7)], '2026-03-20', 'bo');
    // Of a lob and its overhead the second role strikes the overhead.
    expect(load.weeks.map(({ week, struck }) => [week.week, struck])).toEqual([
      [7, undefined],
      [8, undefined],
      [9, undefined],
      [10, { overhead: 5, serve: 6 }],
      [11, undefined],
      [12, { overhead: 7, serve: 6 }],
    ]);
    const other = shoulderLoad([day('2026-03-20', 7)], '2026-03-20', 'ana').weeks.at(-1);
    expect(other!.struck).toEqual({ overhead: 0, serve: 4 });
  });

  test('hold the missed ones as far as the model knows them', () => {
    const round = estimatedRound(roundWith(0, lobTerms, [[['ana', 'bo'], 5]]), estimateWith(30, 2));
    const load = shoulderLoad([practiceWith('2026-03-20', [round])], '2026-03-20', 'bo');
    // Half of thirty touches of the pair are bo's, and all of bo's are overheads.
    expect(load.weeks.at(-1)!.struck).toEqual({ overhead: 15, serve: 0 });
  });

  test('stand beside the own usual week from three weeks on, the present one left out', () => {
    const weeks = ['2026-02-16', '2026-02-23', '2026-03-02'].map((date, at) =>
      day(date, 4 + 2 * at),
    );
    const now = day('2026-03-20', 50);
    expect(shoulderLoad([...weeks, now], '2026-03-20', 'bo').usual).toEqual({
      overhead: 6,
      serve: 6,
    });
    expect(shoulderLoad([...weeks.slice(1), now], '2026-03-20', 'bo').usual).toBeUndefined();
  });

  test('of a week in which nobody was heard are not none', () => {
    const round = roundWith(0, lobTerms, [[['ana', 'bo'], 0]]);
    const unheard = {
      ...round,
      tallies: round.tallies.map((tally) => ({ ...tally, unheard: ['ana', 'bo'] })),
    };
    const load = shoulderLoad([practiceWith('2026-03-20', [unheard])], '2026-03-20', 'bo');
    expect(load.weeks.at(-1)).toEqual({
      week: { year: 2026, week: 12 },
      unheard: 1,
      struck: { overhead: 0, serve: 0 },
    });
  });
});

describe('the training load of a week', () => {
  const DAYS = [2, 3, 4, 5, 6, 7, 8].map((day) => `2026-03-0${day}`);
  const told = (date: string, effort?: number, minutes?: number): Summary => ({
    ...practiceWith(date, []),
    attended: ['ana'],
    ...(effort !== undefined && {
      efforts: { ana: { effort, ...(minutes !== undefined && { minutes }) } },
    }),
  });

  test('is effort times minutes, with monotony and strain as topic G has them', () => {
    for (const { inputs, expected } of checks('G.week.')) {
      const loads: number[] = inputs.daily_loads;
      const summaries = loads.flatMap((load, at) => (load > 0 ? [told(DAYS[at]!, 1, load)] : []));
      const week = trainingWeek(summaries, DAYS, true, 'ana');
      expect(week.days).toEqual(loads);
      expect(week.load).toBeCloseTo(expected.weekly_load, 9);
      expect(week.monotony).toBeCloseTo(expected.monotony_sample, 12);
      expect(week.strain).toBeCloseTo(expected.strain_sample, 8);
    }
    for (const { inputs, expected } of checks('G.srpe.')) {
      const one = told('2026-03-02', inputs.rpe_cr10, inputs.minutes);
      expect(trainingWeek([one], DAYS, true, 'ana').load).toBe(expected.load_au);
    }
  });

  test('is not known while a practice has no effort or no minutes, and where there was none', () => {
    expect(
      trainingWeek([told('2026-03-02', 5, 60), told('2026-03-04')], DAYS, true, 'ana'),
    ).toEqual({
      ...{ practices: 2, untold: 1, days: [300, 0, 0, 0, 0, 0, 0] },
    });
    expect(trainingWeek([told('2026-03-02', 5)], DAYS, true, 'ana').load).toBeUndefined();
    expect(trainingWeek([], DAYS, true, 'ana')).toEqual({
      ...{ practices: 0, untold: 0, days: [0, 0, 0, 0, 0, 0, 0] },
    });
  });

  test('has no monotony where all days are equal, and none before the week is over', () => {
    const even = trainingWeek(
      DAYS.map((date) => told(date, 5, 60)),
      DAYS,
      true,
      'ana',
    );
    expect(even.load).toBe(2100);
    expect(even.monotony).toBeUndefined();
    expect(even.strain).toBeUndefined();
    const early = trainingWeek([told('2026-03-02', 5, 60)], DAYS, false, 'ana');
    expect(early.load).toBe(300);
    expect(early.monotony).toBeUndefined();
  });

  test('is the player’s own: another one’s effort is none', () => {
    const { practices } = trainingWeek([told('2026-03-02', 5, 60)], DAYS, true, 'bo');
    expect(practices).toBe(0);
  });
});
