import { describe, expect, test } from 'vitest';
import { sayShot } from '../../../app/parts/say-shot.ts';
import { english, languages } from '../../../app/words/languages.ts';
import { language } from '../../../app/words/words.ts';
import { courtSizeNames } from '../../../core/court/court.ts';
import { fitDrill } from '../../../core/drill/fit-court.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';

const drillNamed = (id: string) => starterDrills.find((drill) => drill.id === id)!;
const told = (id: string) => {
  const drill = drillNamed(id);
  return drill.shots.map((_, index) => sayShot(drill, index, 'full'));
};

describe('a shot in words', () => {
  test('says who strikes what, from where and to where it bounces', () => {
    expect(told('serve-return-next')).toEqual([
      '1: serve by 1, from the baseline right of the centre to the left service box.',
      '2: return by 2, from the baseline on the far left to the midcourt right of the centre.',
      '3: groundstroke by 1, from the baseline right of the centre to the back of the court on the far right.',
    ]);
    expect(told('wide-serve-four-balls')[0]).toBe(
      '1: serve by 1, from the baseline left of the centre to the right service box, wide.',
    );
    expect(told('serves-to-the-middle')[0]).toBe(
      '1: serve by 1, from the baseline right of the centre to the left service box, by the centre line.',
    );
  });

  test('says of a ball that is taken in the air where the partner stands', () => {
    expect(told('approach-pass-volley')[1]).toBe(
      '2: groundstroke by 2, from the baseline on the far right to the net right of the centre.',
    );
    expect(told('lob-and-overhead')[0]).toBe(
      '1: lob by 1, from behind the baseline in the middle to the front court in the middle.',
    );
  });

  test('has a place for every ball of every starter drill, on every court, in every language', async () => {
    for (const { load } of Object.values(languages)) {
      language.value = await load();
      for (const size of courtSizeNames) {
        for (const drill of starterDrills.map((each) => fitDrill(each, size))) {
          for (const index of drill.shots.keys()) {
            const said = sayShot(drill, index, size);
            expect(said, drill.id).not.toMatch(/undefined| {2}|\$/);
            expect(said.startsWith(`${index + 1}`)).toBe(true);
          }
        }
      }
    }
    language.value = english;
  });
});
