import { describe, expect, test } from 'vitest';
import { byDrill, byPlayer } from '../../../core/figures/totals.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

const span = [
  practiceWith('2026-03-02', [
    roundWith(0, termsWith({ size: 4 }), [
      [['a', 'b'], 3],
      [['c', 'd', 'e'], 4],
    ]),
    roundWith(1, lobTerms, [[['a', 'b'], 5]], 90),
  ]),
  practiceWith('2026-03-04', [
    roundWith(0, { ...lobTerms, name: 'Renamed' }, [[['b', 'a'], 2]], 60),
    roundWith(1, serveTerms, [[['a', 'b'], { a: 6, b: 1 }]], 30),
  ]),
];

describe('by player', () => {
  test('nothing gives nobody', () => {
    expect(byPlayer([]).size).toBe(0);
  });

  test('a player has own sets, own touches by stroke and own clock', () => {
    expect(byPlayer(span).get('a')).toEqual({
      practices: 2,
      rounds: 4,
      sets: 3 + 5 + 2 + 6,
      touches: { groundstroke: 6, lob: 5, overhead: 2, serve: 6 },
      seconds: 120 + 90 + 60 + 30,
      unheard: 0,
    });
  });

  test('a player of a trio has two thirds of its clock and the sets they were in', () => {
    const { sets, seconds, touches } = byPlayer(span).get('e')!;
    expect([sets, touches]).toEqual([2, { groundstroke: 4 }]);
    expect(seconds).toBeCloseTo(80, 9);
  });

  test('a practice counts once however many rounds it had, and only for who played', () => {
    expect(byPlayer(span).get('c')).toMatchObject({ practices: 1, rounds: 1 });
    expect(byPlayer(span).has('nobody')).toBe(false);
  });
});

describe('by drill', () => {
  test('nothing gives no drill', () => {
    expect(byDrill([]).size).toBe(0);
  });

  test("a pair's set is one set, a round's clock is counted once, touches are everyone's", () => {
    expect(byDrill(span).get('rally')).toEqual({
      practices: 1,
      rounds: 1,
      sets: 7,
      touches: { groundstroke: 28 },
      seconds: 120,
      unheard: 0,
      terms: termsWith({ size: 4 }),
    });
  });

  test('rounds of several practices add up, under the newest name', () => {
    expect(byDrill(span).get('lob')).toMatchObject({
      practices: 2,
      rounds: 2,
      sets: 7,
      touches: { lob: 7, overhead: 7 },
      seconds: 150,
      terms: { name: 'Renamed' },
    });
  });

  test('on target the sets are those of all players', () => {
    expect(byDrill(span).get('serve')).toMatchObject({ sets: 7, touches: { serve: 7 } });
  });

  test('touches of all players are the touches of all drills', () => {
    const sum = (totals: Iterable<{ touches: object }>) =>
      [...totals]
        .flatMap(({ touches }) => Object.values(touches) as number[])
        .reduce((a, b) => a + b);
    expect(sum(byPlayer(span).values())).toBe(sum(byDrill(span).values()));
  });
});
