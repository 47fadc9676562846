import { describe, expect, it } from 'vitest';
import { mustCount, mustLevel, mustMeasure } from '../../core/arguments.ts';

describe('a count', () => {
  it.each([0, 1, 50_000])('may be %d', (value) => {
    expect(() => mustCount('sets', value)).not.toThrow();
  });

  it.each([-1, 0.5, 2 ** 60, Infinity, Number.NaN])(
    'of %d is a RangeError that names it',
    (value) => {
      expect(() => mustCount('sets', value)).toThrow(RangeError);
      expect(() => mustCount('sets', value)).toThrow(/^sets must/);
    },
  );
});

describe('a measure', () => {
  it.each([0, 0.5, 1e9])('may be %d', (value) => {
    expect(() => mustMeasure('exposure', value)).not.toThrow();
  });

  it.each([-0.1, Infinity, Number.NaN])('of %d is a RangeError that names it', (value) => {
    expect(() => mustMeasure('exposure', value)).toThrow(RangeError);
    expect(() => mustMeasure('exposure', value)).toThrow(/^exposure must/);
  });
});

describe('a level', () => {
  it.each([1e-9, 0.5, 1 - 1e-12])('may be %d', (value) => {
    expect(() => mustLevel(value)).not.toThrow();
  });

  it.each([0, 1, -0.5, 95, Number.NaN])('of %d is a RangeError that names it', (value) => {
    expect(() => mustLevel(value)).toThrow(RangeError);
    expect(() => mustLevel(value)).toThrow(/^level must/);
  });
});
