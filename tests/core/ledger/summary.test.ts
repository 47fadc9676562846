import { describe, expect, test } from 'vitest';
import type { Saying } from '../../../core/ledger/entry.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { isSummary } from '../../../core/ledger/stored-summary.ts';
import {
  inOrderHeld,
  SUMMARY_VERSION,
  summarise,
  withEstimatesOf,
} from '../../../core/ledger/summary.ts';
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
      version: SUMMARY_VERSION,
      practice: PRACTICE,
      date: '2026-03-02',
      opened: fold().opened,
      attended: [],
      rounds: [],
    });
  });

  test('has everyone who was present, gone ones too', () => {
    const who = (kind: 'player-came' | 'player-left'): Saying => ({
      ...{ kind, practice: PRACTICE, player: 'gone' },
    });
    const practice = fold(who('player-came'), set('r1', 0), started('r1'), who('player-left'));
    expect(summarise(practice, MORNING).attended).toContain('gone');
  });

  test('leaves out a round that was struck out, and has it again once it is restored', () => {
    const round = (kind: 'round-struck' | 'round-restored'): Saying => ({
      ...{ kind, practice: PRACTICE, round: 'r1' },
    });
    const played = [set('r1', 0), started('r1'), set('r2', 1), started('r2')];
    const ids = (...more: Saying[]) =>
      summarise(fold(...played, ...more), MORNING).rounds.map(({ id }) => id);
    expect(ids(round('round-struck'))).toEqual(['r2']);
    expect(ids(round('round-struck'), round('round-restored'))).toEqual(['r1', 'r2']);
  });

  test('of a round that was struck out makes nobody present', () => {
    const struck: Saying = { kind: 'round-struck', practice: PRACTICE, round: 'r1' };
    const summary = summarise(fold(set('r1', 0), started('r1'), struck), MORNING);
    expect(summary).toMatchObject({ attended: [], rounds: [] });
  });

  test('of a practice that was struck out is empty, and whole again once it is restored', () => {
    const practice = (kind: 'practice-struck' | 'practice-restored'): Saying => ({
      ...{ kind, practice: PRACTICE },
    });
    const played = [set('r1', 0), started('r1')];
    const struck = summarise(fold(...played, practice('practice-struck')), MORNING);
    expect(struck).toMatchObject({ struck: true, attended: [], rounds: [] });
    expect(isSummary(JSON.parse(JSON.stringify(struck)))).toBe(true);
    expect(
      summarise(fold(...played, practice('practice-struck'), practice('practice-restored')), 0),
    ).toEqual(summarise(fold(...played), 0));
  });

  test('takes from an earlier one what was worked out of the same tallies, and of no others', () => {
    const estimate = { model: 1, shots: 30, sd: 3, low: 26, high: 34 };
    const played = [set('r1', 0), started('r1'), set('r2', 1), started('r2')];
    const before = summarise(fold(...played), MORNING + 3_600_000);
    for (const { tallies } of before.rounds) for (const tally of tallies) tally.estimate = estimate;
    const more: Saying = {
      ...{ kind: 'tally-corrected', practice: PRACTICE, round: 'r2', pair: 'A', by: 2 },
    };
    const after = withEstimatesOf(summarise(fold(...played, more), MORNING + 3_600_000), before);
    expect(after.rounds[0]!.tallies.every((tally) => tally.estimate === estimate)).toBe(true);
    expect(after.rounds[1]!.tallies.find(({ pair }) => pair.letter === 'A')).not.toHaveProperty(
      'estimate',
    );
    expect(withEstimatesOf(after, undefined)).toBe(after);
  });

  test('does not keep what was worked out of a round before it was said that nobody watched a part of it', () => {
    const played = [
      ...[set('r1', 0), started('r1')],
      { kind: 'mark', practice: PRACTICE, round: 'r1', pair: 'A', second: 20 } as const,
      { kind: 'round-settled', practice: PRACTICE, round: 'r1' } as const,
    ];
    const before = summarise(fold(...played), MORNING + 3_600_000);
    const estimate = { model: 1, shots: 50, sd: 5, low: 44, high: 56 };
    before.rounds[0]!.tallies[0]!.estimate = estimate;
    const same = withEstimatesOf(summarise(fold(...played), MORNING + 3_600_000), before);
    expect(same.rounds[0]!.tallies[0]!.estimate).toBe(estimate);
    const unwatched: Saying = {
      ...{ kind: 'stretch-watched', practice: PRACTICE, round: 'r1', from: 60, to: 80 },
      watched: false,
    };
    const after = summarise(fold(...played, unwatched), MORNING + 3_600_000);
    expect(withEstimatesOf(after, before).rounds[0]!.tallies[0]).not.toHaveProperty('estimate');
  });

  test('stands by its date, and on one date by its opening', () => {
    const [evening, morning] = ['b', 'a'].map((opened) => ({ date: '2026-03-02', opened }));
    const before = { date: '2026-03-01', opened: 'c' };
    expect([evening!, morning!, before].sort(inOrderHeld)).toEqual([before, morning, evening]);
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
        jumped: 5,
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
