import { describe, expect, test } from 'vitest';
import { pacesBy } from '../../../core/figures/paces.ts';
import { refeedOf, tempoOf } from '../../../core/round/tempo.ts';

const rising = (...gaps: number[]) => {
  let at = 100;
  return [at, ...gaps.map((gap) => (at += gap))];
};
const even = (gaps: number, seconds: number) => rising(...Array<number>(gaps).fill(seconds));

describe('a tempo check', () => {
  test('of ten hits is the last minus the first over nine', () => {
    const check = tempoOf(rising(1.5, 1.3, 1.6, 1.4, 1.5, 1.2, 1.7, 1.4, 1.9));
    expect(check).toEqual({ seconds: expect.closeTo(13.5 / 9, 12) });
  });

  test('of fewer than ten hits says nothing yet', () => {
    expect(tempoOf([])).toBeUndefined();
    expect(tempoOf([3])).toBeUndefined();
    expect(tempoOf(even(8, 1.5))).toBeUndefined();
  });

  test('with a gap of more than twice the median is asked for again', () => {
    const with9th = (gap: number) => rising(...Array<number>(8).fill(1.5), gap);
    expect(tempoOf(with9th(3.01))).toEqual({ again: 'gap' });
    expect(tempoOf(with9th(2.99))).toEqual({ seconds: expect.closeTo((12 + 2.99) / 9, 12) });
  });

  test('faster than anyone strikes is asked for again', () => {
    expect(tempoOf(even(9, 0.49))).toEqual({ again: 'fast' });
    expect(tempoOf(even(9, 0.51))).toEqual({ seconds: expect.closeTo(0.51, 12) });
  });

  test('of taps that do not rise, or of too many, is a RangeError', () => {
    expect(() => tempoOf([1, 1])).toThrow(new RangeError('taps must rise, not by 0'));
    expect(() => tempoOf([1, Number.NaN])).toThrow(RangeError);
    expect(() => tempoOf(even(10, 1.5))).toThrow(new RangeError('taps must be at most 10, not 11'));
  });
});

describe('a re-feed check', () => {
  // From a hit to the next miss any time may pass: only the gaps after a miss count.
  const taps = rising(5, 9, 4, 30, 6, 2, 5.5, 11, 4.5);

  test('is the mean of the five times from a miss to the next hit', () => {
    expect(refeedOf(taps)).toEqual({ seconds: 5 });
  });

  test('of fewer than five misses says nothing yet', () => {
    expect(refeedOf([])).toBeUndefined();
    expect(refeedOf(taps.slice(0, 9))).toBeUndefined();
  });

  test('faster than a shot is asked for again', () => {
    expect(refeedOf(even(9, 0.3))).toEqual({ again: 'fast' });
  });

  test('of taps that do not rise is a RangeError', () => {
    expect(() => refeedOf([2, 1])).toThrow(/taps must rise/);
  });
});

describe('what had been measured by the end of a practice', () => {
  const paces = pacesBy([
    { practice: 'first' },
    { practice: 'second', paces: { rally: { tempo: 1.4 }, lob: { refeed: 6 } } },
    { practice: 'third', paces: { rally: { refeed: 5 } } },
    { practice: 'fourth', paces: { rally: { tempo: 1.6 } } },
  ]);

  test('is nothing before the first check', () => {
    expect(paces.get('first')).toEqual({});
  });

  test('holds of each drill the newest tempo and the newest re-feed, each from its own practice', () => {
    expect(paces.get('third')).toEqual({ rally: { tempo: 1.4, refeed: 5 }, lob: { refeed: 6 } });
    expect(paces.get('fourth')?.rally).toEqual({ tempo: 1.6, refeed: 5 });
  });

  test('is not changed by a later check', () => {
    expect(paces.get('second')?.rally).toEqual({ tempo: 1.4 });
  });
});
