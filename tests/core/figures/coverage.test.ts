import { describe, expect, test } from 'vitest';
import { type Family, families, type Stroke } from '../../../core/drill/drill.ts';
import { type Coverage, coverage, dueAfter, OVERDUE } from '../../../core/figures/coverage.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

// Mondays: 2 and 9 March 2026 (ISO weeks 10 and 11).
const history = [
  practiceWith('2026-03-10', [
    roundWith(0, termsWith({ size: 4 }), [
      [['a', 'b'], 2],
      [['c', 'd'], 1],
    ]),
  ]),
  practiceWith('2026-03-02', [
    roundWith(0, lobTerms, [
      [['a', 'b'], 5],
      [['c', 'd'], 0],
    ]),
    roundWith(1, { ...serveTerms, name: 'To the T' }, [[['a', 'c'], { a: 3, c: 1 }]]),
  ]),
];
const TODAY = '2026-03-11';

const family = (of: Coverage, name: Family) => of.families.find((line) => line.family === name)!;
const stroke = (of: Coverage, name: Stroke) =>
  of.families.flatMap(({ strokes }) => strokes).find((line) => line.stroke === name)!;
const touches = (line: { weeks: { touches?: number }[] }) => line.weeks.map((cell) => cell.touches);

describe('coverage', () => {
  test('of no history has every line and cell, and knows nothing in any', () => {
    const nothing = coverage([], TODAY);
    expect(nothing.weeks).toHaveLength(4);
    expect(nothing.families.map((line) => line.family)).toEqual(families);
    expect(nothing.families.flatMap((line) => line.strokes)).toHaveLength(6);
    for (const line of nothing.families.flatMap((each) => [each, ...each.strokes])) {
      expect(line.weeks).toEqual([{ rounds: [] }, { rounds: [] }, { rounds: [] }, { rounds: [] }]);
      for (const unknown of ['touches', 'days', 'due']) expect(line).not.toHaveProperty(unknown);
    }
  });

  test('has ISO weeks from the oldest to that of today, over the turn of a year too', () => {
    expect(coverage(history, TODAY).weeks).toEqual([
      { year: 2026, week: 8 },
      { year: 2026, week: 9 },
      { year: 2026, week: 10 },
      { year: 2026, week: 11 },
    ]);
    expect(coverage([], '2026-01-05', { weeks: 3 }).weeks).toEqual([
      { year: 2025, week: 52 },
      { year: 2026, week: 1 },
      { year: 2026, week: 2 },
    ]);
  });

  test("counts everyone's touches of the squad by family and by stroke", () => {
    const squad = coverage(history, TODAY);
    expect(touches(family(squad, 'groundstrokes'))).toEqual([undefined, undefined, 0, 12]);
    expect(touches(family(squad, 'overheads-and-lobs'))).toEqual([undefined, undefined, 10, 0]);
    expect(touches(stroke(squad, 'lob'))).toEqual([undefined, undefined, 5, 0]);
    expect(touches(stroke(squad, 'serve'))).toEqual([undefined, undefined, 4, 0]);
    expect(touches(stroke(squad, 'return'))).toEqual([undefined, undefined, 0, 0]);
    expect(family(squad, 'groundstrokes').touches).toBe(12);
  });

  test('counts what one player struck, not the partner', () => {
    const own = coverage(history, TODAY, { player: 'a' });
    expect(touches(stroke(own, 'lob'))).toEqual([undefined, undefined, 5, 0]);
    expect(touches(stroke(own, 'overhead'))).toEqual([undefined, undefined, 0, 0]);
    expect(touches(family(own, 'overheads-and-lobs'))).toEqual([undefined, undefined, 5, 0]);
    expect(touches(family(own, 'groundstrokes'))).toEqual([undefined, undefined, 0, 4]);
    expect(touches(stroke(own, 'serve'))).toEqual([undefined, undefined, 3, 0]);
  });

  test('says nothing of a week in which a player was in no round, and 0 of a squad at work', () => {
    const third = practiceWith('2026-03-03', [roundWith(0, termsWith(), [[['x', 'y'], 1]])]);
    const own = coverage([...history, third], TODAY, { player: 'x' });
    expect(touches(family(own, 'groundstrokes'))).toEqual([undefined, undefined, 5, undefined]);
    expect(touches(family(own, 'volleys'))).toEqual([undefined, undefined, 0, undefined]);
    expect(family(own, 'volleys').touches).toBe(0);
  });

  test('knows the days since, from before the weeks that are shown too', () => {
    const one = coverage(history, TODAY, { weeks: 1 });
    expect(family(one, 'groundstrokes').days).toBe(1);
    expect(family(one, 'overheads-and-lobs').days).toBe(9);
    expect(stroke(one, 'return').days).toBeUndefined();
    expect(touches(stroke(one, 'lob'))).toEqual([0]);
  });

  test('knows the days since a player had a role', () => {
    const own = coverage(history, TODAY, { player: 'c' });
    expect(stroke(own, 'lob').days).toBe(9);
    expect(stroke(own, 'overhead').days).toBeUndefined();
    expect(family(own, 'overheads-and-lobs').days).toBe(9);
  });

  test('shows the rounds behind a cell, in the order of play, with what each added', () => {
    const { weeks } = family(coverage(history, TODAY), 'serves-and-returns');
    expect(weeks[2]!.rounds).toEqual([
      {
        practice: '2026-03-02',
        date: '2026-03-02',
        round: 'round-1',
        ordinal: 1,
        drill: 'serve',
        name: 'To the T',
        touches: 4,
      },
    ]);
    const more = practiceWith('2026-03-01', [roundWith(3, lobTerms, [[['b', 'c'], 1]])]);
    const lobs = family(coverage([...history, more], '2026-03-02'), 'overheads-and-lobs');
    expect(lobs.weeks.flatMap(({ rounds }) => rounds.map((at) => [at.date, at.ordinal]))).toEqual([
      ['2026-03-01', 3],
      ['2026-03-02', 0],
    ]);
  });

  test('shows a round without a completed set behind its cell', () => {
    const own = coverage(history, TODAY, { player: 'd' });
    expect(stroke(own, 'overhead').weeks[2]).toMatchObject({
      touches: 0,
      rounds: [{ touches: 0 }],
    });
    expect(stroke(own, 'lob').weeks[2]).toMatchObject({ touches: 0, rounds: [] });
  });

  test('takes each touch for its own stroke, whichever drill it was struck in', () => {
    const terms = termsWith({
      ...{ drill: 'mixed', family: 'serves-and-returns', rule: 'sequence', size: 3 },
      shots: [
        { role: 0, stroke: 'serve' },
        { role: 1, stroke: 'return' },
        { role: 0, stroke: 'volley' },
      ],
    });
    const mixed = practiceWith('2026-03-10', [roundWith(0, terms, [[['a', 'b'], 3]])]);
    const squad = coverage([mixed], TODAY, { weeks: 1 });
    expect(touches(family(squad, 'volleys'))).toEqual([3]);
    expect(family(squad, 'volleys').days).toBeUndefined();
    expect(touches(family(squad, 'serves-and-returns'))).toEqual([6]);
    expect(family(squad, 'serves-and-returns').days).toBe(1);
  });

  test('adds up over strokes to its family', () => {
    for (const line of coverage(history, TODAY).families) {
      expect(line.touches).toBe(line.strokes.reduce((sum, each) => sum + each.touches!, 0));
    }
  });

  test('is the same for practices in any order, and passes over what is later', () => {
    expect(coverage(history.toReversed(), TODAY)).toEqual(coverage(history, TODAY));
    expect(coverage(history, '2026-03-09')).toEqual(coverage(history.slice(1), '2026-03-09'));
  });

  test.each([0, 2.5, 54, Number.NaN])('over %d weeks is an error that names them', (weeks) => {
    expect(() => coverage([], TODAY, { weeks })).toThrow(/^weeks/);
  });

  test('as of no date is an error', () => {
    expect(() => coverage([], 'today')).toThrow(RangeError);
  });
});

describe('what is due', () => {
  test('is overdue from the ninth day on, and overdue for long from the fifteenth', () => {
    expect(OVERDUE).toEqual({ after: 8, longAfter: 14 });
    expect([0, 8, 9, 14, 15, 400].map(dueAfter)).toEqual([
      ...['no', 'no', 'overdue', 'overdue', 'long-overdue', 'long-overdue'],
    ]);
  });

  test('is told in every line', () => {
    const squad = coverage(history, TODAY);
    expect(family(squad, 'groundstrokes').due).toBe('no');
    expect(family(squad, 'overheads-and-lobs').due).toBe('overdue');
    expect(stroke(squad, 'overhead').due).toBe('overdue');
  });

  test('counts from the first round for what was never practised', () => {
    expect(family(coverage(history, TODAY), 'volleys')).toMatchObject({ due: 'overdue' });
    expect(family(coverage(history, '2026-03-10'), 'volleys').due).toBe('no');
    expect(family(coverage(history, '2026-03-17'), 'volleys').due).toBe('long-overdue');
  });

  test('counts from a player’s own first round', () => {
    const joined = practiceWith('2026-03-10', [roundWith(0, lobTerms, [[['e', 'a'], 1]])]);
    const own = coverage([...history, joined], TODAY, { player: 'e' });
    expect(family(own, 'volleys').due).toBe('no');
    expect(family(coverage(history, TODAY, { player: 'e' }), 'volleys').due).toBeUndefined();
  });
});
