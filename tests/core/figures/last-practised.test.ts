import { describe, expect, test } from 'vitest';
import { lastPractised, roundsUntil, strokesAt } from '../../../core/figures/last-practised.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

const rally = (ordinal: number, ...players: string[]) =>
  roundWith(ordinal, termsWith(), [[players, 1]]);

describe('what a player strikes', () => {
  const volleys = termsWith({
    family: 'volleys',
    shots: [
      { role: 0, stroke: 'groundstroke' },
      { role: 1, stroke: 'volley' },
      { role: 0, stroke: 'lob' },
    ],
  });

  test("is the role's own in a pair, each stroke once", () => {
    expect(strokesAt(lobTerms, ['a', 'b'], 0)).toEqual(['lob']);
    expect(strokesAt(lobTerms, ['a', 'b'], 1)).toEqual(['overhead']);
    expect(strokesAt(volleys, ['a', 'b'], 0)).toEqual(['groundstroke', 'lob']);
    expect(strokesAt(termsWith(), ['a', 'b'], 1)).toEqual(['groundstroke']);
  });

  test('is everything in a trio, which turns', () => {
    for (const place of [0, 1, 2]) {
      expect(strokesAt(lobTerms, ['a', 'b', 'c'], place)).toEqual(['lob', 'overhead']);
    }
  });

  test('is the same for both where balls on target count', () => {
    expect(strokesAt(serveTerms, ['a', 'b'], 1)).toEqual(['serve']);
  });
});

describe('the last time', () => {
  test('of no history never was', () => {
    expect(lastPractised([], '2026-03-05')).toEqual({
      squad: { families: {}, strokes: {} },
      players: new Map(),
    });
  });

  const history = [
    practiceWith('2026-03-04', [rally(0, 'a', 'c')]),
    practiceWith('2026-03-02', [rally(0, 'a', 'b'), roundWith(1, lobTerms, [[['a', 'b'], 0]])]),
    practiceWith('2026-03-09', [roundWith(0, lobTerms, [[['b', 'a'], 4]])]),
  ];

  test('is told of the squad and of every player, whatever the order of the practices', () => {
    const { squad, players } = lastPractised(history, '2026-03-05');
    expect(squad).toEqual({
      first: '2026-03-02',
      families: { groundstrokes: '2026-03-04', 'overheads-and-lobs': '2026-03-02' },
      strokes: { groundstroke: '2026-03-04', lob: '2026-03-02', overhead: '2026-03-02' },
    });
    expect(players.get('b')).toEqual({
      first: '2026-03-02',
      families: { groundstrokes: '2026-03-02', 'overheads-and-lobs': '2026-03-02' },
      strokes: { groundstroke: '2026-03-02', overhead: '2026-03-02' },
    });
    expect(players.get('c')?.first).toBe('2026-03-04');
    expect(lastPractised(history.toReversed(), '2026-03-05')).toEqual({ squad, players });
  });

  test('counts a role without a single completed set', () => {
    expect(lastPractised(history, '2026-03-05').players.get('a')?.strokes.lob).toBe('2026-03-02');
  });

  test('never lies after the day that is asked for', () => {
    const later = lastPractised(history, '2026-03-09').players.get('a');
    expect(later?.strokes).toMatchObject({ lob: '2026-03-02', overhead: '2026-03-09' });
  });

  test('takes a volley in a serve drill for a volley, not for a practice of volleys', () => {
    const terms = termsWith({
      family: 'serves-and-returns',
      shots: [
        { role: 0, stroke: 'serve' },
        { role: 1, stroke: 'volley' },
      ],
    });
    const { squad } = lastPractised(
      [practiceWith('2026-03-02', [roundWith(0, terms, [[['a', 'b'], 1]])])],
      '2026-03-02',
    );
    expect(squad.families).toEqual({ 'serves-and-returns': '2026-03-02' });
    expect(squad.strokes.volley).toBe('2026-03-02');
  });
});

describe('a false start', () => {
  const short = (sets: number) => [
    practiceWith('2026-03-02', [roundWith(0, lobTerms, [[['a', 'b'], sets]], 29)]),
  ];

  test('is a clock that was stopped within half a minute without a set', () => {
    expect(roundsUntil(short(0), '2026-03-02')).toEqual([]);
    expect(lastPractised(short(0), '2026-03-02').squad.first).toBeUndefined();
  });

  test('is none where a set was made, or the half minute played', () => {
    expect(roundsUntil(short(1), '2026-03-02')).toHaveLength(1);
    const half = practiceWith('2026-03-02', [roundWith(0, lobTerms, [[['a', 'b'], 0]], 30)]);
    expect(roundsUntil([half], '2026-03-02')).toHaveLength(1);
  });
});
