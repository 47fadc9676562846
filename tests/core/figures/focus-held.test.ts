import { describe, expect, test } from 'vitest';
import { fociHeld, ownFoci, slippingFoci } from '../../../core/figures/focus-held.ts';
import { looksOf } from '../../../core/figures/looks.ts';
import {
  fociLookedAt,
  qualityBesideVolume,
  roundsBesideQuality,
} from '../../../core/figures/quality-beside-volume.ts';
import { shareChange, shareWord } from '../../../core/figures/share-change.ts';
import { watchersOf } from '../../../core/figures/watchers.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import type { Look, Sight } from '../../../core/round/look.ts';
import { check } from '../../reference/values.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const look = (player: string, second: number, saw: Sight, by = 'one', focus = 'stance'): Look => ({
  ...{ player, focus, second, saw, by },
});
/** So many looks at one player, the first of them held. */
const looks = (player: string, held: number, all: number, from = 0): Look[] =>
  Array.from({ length: all }, (_, at) => look(player, from + at, at < held ? 'yes' : 'no'));
const practice = (date: string, seen: Look[], sets = 3): Summary =>
  practiceWith(date, [{ ...roundWith(0, termsWith(), [[['ana', 'bo'], sets]]), looks: seen }]);

describe('a look', () => {
  test('that could not be seen is none', () => {
    expect(looksOf([practice('2026-03-02', [look('ana', 9, 'unseen')])])).toEqual([]);
  });

  test('of two phones at one moment is one, by the phone that answered more of the practice', () => {
    const seen = [
      look('ana', 9, 'no', 'b'),
      look('ana', 9, 'yes', 'a'),
      look('bo', 20, 'no', 'b'),
      look('bo', 30, 'yes', 'a'),
      look('bo', 40, 'yes', 'b'),
    ];
    const told = looksOf([practice('2026-03-02', seen)]);
    expect(told.map(({ player, held }) => [player, held])).toEqual([
      ['ana', false],
      ['bo', false],
      ['bo', true],
      ['bo', true],
    ]);
  });

  test('of one phone stands where the other could not see', () => {
    const seen = [look('ana', 9, 'unseen', 'a'), look('ana', 9, 'yes', 'b')];
    expect(looksOf([practice('2026-03-02', seen)])).toHaveLength(1);
  });
});

describe('how a focus is held', () => {
  test('is shown from eight looks on, with the interval that Wilson gives', () => {
    const [seven] = fociHeld([practice('2026-03-02', looks('ana', 5, 7))]);
    expect(seven!.now).toEqual({ held: 5, looks: 7 });
    const { inputs, expected } = check('B.newcombe.81_263');
    const [many] = fociHeld([practice('2026-03-02', looks('ana', inputs.x, inputs.n))]);
    expect(many!.now.share!.low).toBeCloseTo(expected.lower, 12);
    expect(many!.now.share!.high).toBeCloseTo(expected.upper, 12);
  });

  test('puts four weeks up to the last practice beside the four before, and nothing older', () => {
    const summaries = [
      practice('2025-12-29', looks('ana', 0, 30)),
      practice('2026-01-20', looks('ana', 19, 20)),
      practice('2026-02-26', looks('ana', 8, 20)),
    ];
    const [focus] = fociHeld(summaries);
    expect([focus!.before.held, focus!.before.looks]).toEqual([19, 20]);
    expect([focus!.now.held, focus!.now.looks]).toEqual([8, 20]);
    expect(focus!.change).toBe('falling');
    expect(focus!.players[0]!.change).toBe('falling');
    expect(slippingFoci(summaries)).toEqual(['stance']);
  });

  test('has no change where one of the stretches has too few looks', () => {
    const summaries = [
      practice('2026-01-20', looks('ana', 7, 7)),
      practice('2026-02-26', looks('ana', 0, 20)),
    ];
    expect(fociHeld(summaries)[0]!.change).toBeUndefined();
    expect(slippingFoci(summaries)).toEqual([]);
  });

  test('does not slip where only another player came to be looked at', () => {
    const summaries = [
      practice('2026-01-20', [...looks('ana', 19, 20), ...looks('bo', 2, 4, 100)]),
      practice('2026-02-26', [...looks('ana', 4, 4), ...looks('bo', 10, 20, 100)]),
    ];
    expect(fociHeld(summaries)[0]!.change).toBe('open');
  });

  test('is of the own looks only on a page of one player', () => {
    const summaries = [practice('2026-03-02', [...looks('ana', 8, 10), ...looks('bo', 1, 9, 100)])];
    expect(ownFoci(summaries, 'ana').map(({ now }) => [now.held, now.looks])).toEqual([[8, 10]]);
    expect(ownFoci(summaries, 'cy')).toEqual([]);
  });

  test('is nothing where nobody looked, and is unchanged where all looks came out the same', () => {
    expect(fociHeld([])).toEqual([]);
    expect(fociHeld([practice('2026-03-02', [])])).toEqual([]);
    const same = [
      practice('2026-01-20', looks('ana', 20, 20)),
      practice('2026-02-26', looks('ana', 20, 20)),
    ];
    expect(fociHeld(same)[0]!.change).toBe('open');
    expect(shareChange([])).toBeUndefined();
    expect(shareWord(undefined)).toBe('open');
    expect(() =>
      shareChange([{ before: { held: 2, looks: 1 }, after: { held: 0, looks: 0 } }]),
    ).toThrow(RangeError);
  });
});

describe('two watchers', () => {
  /** Cohen's table as looks of two phones, practice by practice of at most so many. */
  const watched = (yesYes: number, yesNo: number, noYes: number, noNo: number): Summary[] => {
    const pairs = [
      ...Array(yesYes).fill(['yes', 'yes']),
      ...Array(yesNo).fill(['yes', 'no']),
      ...Array(noYes).fill(['no', 'yes']),
      ...Array(noNo).fill(['no', 'no']),
    ] as [Sight, Sight][];
    return [
      practice(
        '2026-03-02',
        pairs.flatMap(([one, other], at) => [
          look('ana', at, one, 'one'),
          look('ana', at, other, 'two'),
        ]),
      ),
    ];
  };

  test('agree as far as Cohen’s kappa says', () => {
    // By hand: of 100, 45 + 35 the same; expected 0.55 × 0.55 + 0.45 × 0.45 = 0.505.
    const [found] = watchersOf(watched(45, 10, 10, 35));
    expect(found!.agreement).toBeCloseTo(0.8, 12);
    expect(found!.kappa).toBeCloseTo((0.8 - 0.505) / 0.495, 12);
    expect(found!.word).toBe('agree');
  });

  test('do not mean the same thing where they agree no better than chance', () => {
    const [found] = watchersOf(watched(25, 25, 25, 25));
    expect(found!.kappa).toBeCloseTo(0, 12);
    expect(found!.word).toBe('differ');
  });

  test('who called everything yes have no kappa, and a word for it', () => {
    const [found] = watchersOf(watched(40, 0, 0, 0));
    expect(found).toEqual({ focus: 'stance', looks: 40, agreement: 1, word: 'one-sided' });
  });

  test('are too few looks below twenty, and nobody where one phone watched alone', () => {
    expect(watchersOf(watched(10, 3, 3, 3))[0]!.word).toBe('too-few');
    expect(watchersOf([practice('2026-03-02', looks('ana', 30, 40))])).toEqual([]);
  });

  test('leave out what one of them could not see', () => {
    const seen = [look('ana', 1, 'unseen', 'one'), look('ana', 1, 'yes', 'two')];
    expect(watchersOf([practice('2026-03-02', seen)])).toEqual([]);
  });
});

describe('quality beside volume', () => {
  const summaries = [
    practice('2026-02-23', looks('ana', 9, 10), 3),
    practice('2026-02-25', looks('ana', 3, 7), 5),
    practice('2026-03-02', looks('ana', 4, 10), 9),
  ];

  test('has a mark for each practice with enough looks: touches across, the share up', () => {
    const marks = qualityBesideVolume(summaries, 'stance');
    // Three and nine sets of ten in a row.
    expect(marks.map(({ date, volume }) => [date, volume])).toEqual([
      ['2026-02-23', 30],
      ['2026-03-02', 90],
    ]);
    expect(marks.map(({ quality }) => quality.share!.share)).toEqual([0.9, 0.4]);
    expect(qualityBesideVolume(summaries, 'depth')).toEqual([]);
    expect(fociLookedAt(summaries)).toEqual(['stance']);
  });

  test('has every round’s sets beside its looks, and no round without a look', () => {
    const rounds = roundsBesideQuality(summaries[1]!);
    expect(rounds.map(({ sets, held, looks }) => [sets, held, looks])).toEqual([[5, 3, 7]]);
    expect(roundsBesideQuality(practice('2026-03-02', []))).toEqual([]);
  });
});
