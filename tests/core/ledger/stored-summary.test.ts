import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { isSummary, saysAll } from '../../../core/ledger/stored-summary.ts';
import { type Summary, summarise } from '../../../core/ledger/summary.ts';
import { estimatedRound, estimateWith } from '../figures/estimated.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { anyPractice } from '../practices.ts';
import { MORNING } from '../told.ts';

const estimate = estimateWith(60, 4, {
  pace: { tempo: 1.4, refeed: 5 },
  own: { a: { consistency: 0.3, consistencySd: 0.1 } },
  implausible: true,
});
const summary: Summary = {
  ...practiceWith('2026-03-02', [
    estimatedRound(
      roundWith(0, termsWith(), [
        [['a', 'b'], 3],
        [['c', 'd', 'e'], 0],
      ]),
      estimate,
    ),
    roundWith(1, serveTerms, [[['a', 'b'], { a: 2, b: 1 }]]),
    {
      ...roundWith(2, lobTerms, [[['a', 'b'], 4]]),
      focus: 'stance',
      looks: [{ player: 'a', focus: 'stance', second: 12.3, saw: 'yes', by: 'phone' }],
    },
  ]),
  efforts: { a: { effort: 6, minutes: 75 }, b: { minutes: 75 } },
  paces: { rally: { tempo: 1.4 }, lob: { refeed: 6 } },
};

/** Every place in a record, as the path to it. */
function places(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, each]) => places(each, [...path, key]))];
}

/** The record with something else in one place. */
function withAt(record: unknown, [key, ...rest]: string[], other: unknown): unknown {
  if (key === undefined) return other;
  const copy: Record<string, unknown> = Array.isArray(record)
    ? ([...record] as never)
    : { ...(record as object) };
  copy[key] = withAt(copy[key], rest, other);
  return copy;
}

describe('a stored summary', () => {
  test('is one where figures can read it, with whatever else stands in it', () => {
    expect(isSummary(summary)).toBe(true);
    expect(isSummary({ ...summary, weather: 'wind' })).toBe(true);
  });

  test('is none where any part has another shape', () => {
    const broken = places(summary).map((place) => withAt(summary, place, Symbol('other')));
    expect(broken.length).toBeGreaterThan(100);
    expect(broken.filter(isSummary)).toEqual([]);
  });

  test('is none where it was cut short or is something else altogether', () => {
    const { rounds: _, ...cut } = summary;
    expect([undefined, null, 7, '', [], {}, cut, [summary]].filter(isSummary)).toEqual([]);
  });

  test('of any practice that can be told is one, and says all of itself', () => {
    fc.assert(
      fc.property(anyPractice, (entries) => {
        const made = summarise(foldPractice(entries)!, MORNING + 3_600_000);
        expect(isSummary(structuredClone(made))).toBe(true);
        expect(saysAll(structuredClone(made), made)).toBe(true);
      }),
    );
  });
});

describe('a record that is held against the summary of its practice', () => {
  test('may say more', () => {
    const more = structuredClone(summary) as Summary & { weather?: string };
    more.weather = 'wind';
    Object.assign(more.rounds[0]?.tallies[1] ?? {}, { estimate });
    expect(saysAll(more, summary)).toBe(true);
  });

  test('says less wherever any part of it differs or is gone', () => {
    const changed = places(summary)
      .filter((place) => place.length > 0)
      .map((place) => withAt(summary, place, 'other'));
    expect(changed.filter((record) => saysAll(record, summary))).toEqual([]);
    expect(saysAll({ ...summary, rounds: summary.rounds.slice(1) }, summary)).toBe(false);
    expect(saysAll({ ...summary, attended: [...summary.attended, 'z'] }, summary)).toBe(false);
    expect(saysAll(undefined, summary)).toBe(false);
  });
});
