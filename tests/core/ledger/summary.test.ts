import { describe, expect, test } from 'vitest';
import type { Saying } from '../../../core/ledger/entry.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { summarise } from '../../../core/ledger/summary.ts';
import { termsWith } from '../made.ts';
import { MORNING, PRACTICE, told } from '../told.ts';

const set = (round: string, ordinal: number): Saying => ({
  kind: 'round-set',
  practice: PRACTICE,
  round,
  ordinal,
  terms: termsWith(),
  seconds: 120,
  pairs: [{ letter: 'A', players: ['a', 'b'] }],
});
const started = (round: string): Saying => ({ kind: 'clock-started', practice: PRACTICE, round });
const fold = (...sayings: Saying[]) =>
  foldPractice(
    told({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' }, ...sayings),
  )!;

describe('a summary', () => {
  test('of an empty practice has its day and no round', () => {
    expect(summarise(fold(), MORNING)).toEqual({
      practice: PRACTICE,
      date: '2026-03-02',
      attended: [],
      rounds: [],
    });
  });

  test('has everyone who was here, gone ones too', () => {
    const who = (kind: 'player-came' | 'player-left'): Saying => ({
      kind,
      practice: PRACTICE,
      player: 'a',
    });
    expect(summarise(fold(who('player-came'), who('player-left')), MORNING).attended).toEqual([
      'a',
    ]);
  });

  test('has what was measured of a drill', () => {
    const checked: Saying = {
      kind: 'tempo-checked',
      practice: PRACTICE,
      drill: 'rally',
      seconds: 1.4,
    };
    expect(summarise(fold(checked), MORNING).paces).toEqual({ rally: { tempo: 1.4 } });
  });

  test('leaves out a round whose clock never started', () => {
    const practice = fold(set('r1', 0), set('r2', 1), started('r2'));
    expect(summarise(practice, MORNING + 3_600_000).rounds.map(({ id }) => id)).toEqual(['r2']);
  });

  test('has of a round all that figures read, and none of its marks', () => {
    const practice = fold(
      set('r1', 0),
      started('r1'),
      { kind: 'mark', practice: PRACTICE, round: 'r1', pair: 'A', second: 20 },
      { kind: 'clock-doubted', practice: PRACTICE, round: 'r1', seconds: 5 },
      { kind: 'round-settled', practice: PRACTICE, round: 'r1' },
    );
    expect(summarise(practice, MORNING + 3_600_000).rounds).toEqual([
      {
        id: 'r1',
        ordinal: 0,
        terms: termsWith(),
        seconds: 120,
        settled: true,
        doubted: 5,
        tallies: practice.rounds[0]!.tallies,
      },
    ]);
  });

  test('of a round that is still running has the live clock until now', () => {
    const practice = fold(set('r1', 0), started('r1'));
    const start = practice.rounds[0]!.clock!.start;
    expect(summarise(practice, start + 50_000).rounds[0]?.seconds).toBe(50);
    expect(summarise(practice, start + 500_000).rounds[0]?.seconds).toBe(120);
  });
});
