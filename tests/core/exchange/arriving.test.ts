import { describe, expect, test } from 'vitest';
import { arriving } from '../../../core/exchange/arriving.ts';
import { writerOf } from '../../../core/ledger/stamp.ts';
import { PRACTICE, teller } from '../told.ts';

const coach = teller(writerOf('coach-----', 'window'));
const helper = teller(writerOf('helper----', 'window'));
const round = { practice: PRACTICE, round: 'r1' };

describe('what arrives', () => {
  test('is told by phone, with its rounds and marks, the one that wrote most first', () => {
    const fresh = [
      coach({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' }),
      helper({ kind: 'clock-started', ...round }),
      helper({ kind: 'mark', ...round, pair: 'A', second: 4 }),
      helper({ kind: 'mark', ...round, round: 'r2', pair: 'A', second: 4 }),
    ];
    expect(arriving(fresh, new Set(), new Set())).toEqual({
      entries: 4,
      phones: [
        { phone: 'helper----', entries: 3, rounds: 2, marks: 2 },
        { phone: 'coach-----', entries: 1, rounds: 0, marks: 0 },
      ],
      practices: 1,
      rounds: 2,
      marks: 2,
      players: [],
      erases: { players: [], practices: [] },
    });
  });

  test('names the players who are new here, and only what is here of what it erases', () => {
    const fresh = [
      coach({ kind: 'player-added', player: 'p1', name: 'Pip' }),
      coach({ kind: 'player-added', player: 'p2', name: 'Juno' }),
      helper({ kind: 'player-erased', player: 'p2' }),
      helper({ kind: 'player-erased', player: 'p9' }),
      helper({ kind: 'practice-erased', erased: PRACTICE }),
      helper({ kind: 'practice-erased', erased: 'elsewhere' }),
    ];
    const told = arriving(fresh, new Set(['p2']), new Set([PRACTICE]));
    expect(told.players).toEqual(['p1']);
    expect(told.erases).toEqual({ players: ['p2'], practices: [PRACTICE] });
  });

  test('is nothing where nothing is new', () => {
    expect(arriving([], new Set(), new Set())).toMatchObject({ entries: 0, phones: [] });
  });
});
