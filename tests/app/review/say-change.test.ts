import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sayChange } from '../../../app/review/say-change.ts';
import { languages, spoken } from '../../../app/words/languages.ts';
import { language } from '../../../app/words/words.ts';
import { squadPace } from '../../../core/figures/change.ts';
import { reviewChange } from '../../../core/figures/review.ts';
import { playerStints } from '../../../core/figures/stints.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../../core/made.ts';

/** Practices of two pairs and a trio over a few drills, with any counts that a round can have. */
const span = (date: string) =>
  fc
    .array(
      fc.record({
        terms: fc.constantFrom(termsWith(), termsWith({ size: 4 }), lobTerms, serveTerms),
        sets: fc.tuple(fc.nat(40), fc.oneof(fc.constant(0), fc.nat(200)), fc.nat(3)),
        seconds: fc.constantFrom(0, 1, 60, 120, 600),
      }),
      { maxLength: 6 },
    )
    .map((rounds) => [
      practiceWith(
        date,
        rounds.map(({ terms, sets: [one, two, three], seconds }, ordinal) => {
          const own = (players: string[], sets: number) =>
            terms.rule === 'on-target' ? { [players[0] ?? '']: sets } : sets;
          return roundWith(
            ordinal,
            terms,
            [
              [['a', 'b'], own(['a', 'b'], one)],
              [['c', 'd'], own(['c', 'd'], two)],
              [['e', 'f', 'g'], own(['e', 'f', 'g'], three)],
            ],
            seconds,
          );
        }),
      ),
    ]);

/** The numbers of a text in any of the languages. */
const numbersIn = (text: string) =>
  (text.match(/[\d.,\s]*\d/g) ?? []).map((number) =>
    Number(
      number
        .replace(/\s/g, '')
        .replace(/,(?=\d{3}\b)/g, '')
        .replace(',', '.'),
    ),
  );

describe.each(spoken)('what is said of a change in %s', (code) => {
  test('over random ledgers has no Infinity, no NaN, and no limits further apart than four times', async () => {
    language.value = await languages[code].load();
    let told = 0;
    let worded = 0;
    fc.assert(
      fc.property(span('2026-03-02'), span('2026-03-30'), (before, after) => {
        const [earlier, later] = [playerStints(before), playerStints(after)];
        const pace = squadPace([...earlier.values(), ...later.values()].flat());
        for (const player of 'abcdefg') {
          const work = reviewChange(earlier.get(player) ?? [], later.get(player) ?? [], pace);
          const changes = work.flatMap(({ change, drills }) => [
            ...(change ? [change] : []),
            ...drills.map((drill) => drill.change),
          ]);
          for (const { word, ratio } of changes.map(sayChange)) {
            const text = `${word} ${ratio ?? ''}`;
            expect(text).not.toMatch(/Infinity|NaN|undefined|∞/);
            if (ratio === undefined) {
              expect(numbersIn(text)).toEqual([]);
              worded += 1;
              continue;
            }
            const [shown = 0, low = 0, high = 0] = numbersIn(ratio);
            // Each is rounded to a hundredth.
            expect(high - 0.005, ratio).toBeLessThanOrEqual(4 * (low + 0.005));
            expect(low, ratio).toBeLessThanOrEqual(shown);
            expect(shown, ratio).toBeLessThanOrEqual(high);
            told += 1;
          }
        }
      }),
      { numRuns: 100 },
    );
    expect(Math.min(told, worded)).toBeGreaterThan(100);
  });
});
