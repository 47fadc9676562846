import { describe, expect, test } from 'vitest';
import type { Saying } from '../../../core/ledger/entry.ts';
import { foldSettings, usualSettings } from '../../../core/ledger/squad-settings.ts';
import { teller } from '../told.ts';

const fold = (...sayings: Saying[]) => {
  const tell = teller();
  return foldSettings(sayings.map((saying) => tell(saying)));
};

describe('the settings of a squad', () => {
  test('are a full court in metres, the number of courts not known, until set', () => {
    expect(fold()).toBe(usualSettings);
    expect(usualSettings).toEqual({ size: 'full', units: 'metres' });
  });

  test('are those that were set last, as a whole', () => {
    const first: Saying = { kind: 'squad-set', size: 'small', courts: 3, units: 'metres' };
    const then: Saying = { kind: 'squad-set', size: 'full', units: 'feet' };
    expect(fold(first)).toEqual({ size: 'small', courts: 3, units: 'metres' });
    expect(fold(first, then)).toEqual({ size: 'full', units: 'feet' });
  });
});
