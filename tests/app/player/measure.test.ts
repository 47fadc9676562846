import { expect, test } from 'vitest';
import { measure } from '../../../app/player/measure.ts';
import type { OwnWork } from '../../../core/figures/usual.ts';
import { termsWith } from '../../core/made.ts';

const work = (over: Partial<OwnWork>): OwnWork => ({
  drill: 'rally',
  terms: termsWith(),
  sets: 0,
  touches: 0,
  seconds: 120,
  ...over,
});

test('the line reaches to the best where today is less', () => {
  expect(measure(work({ sets: 3, usual: 4, best: 8 }))).toEqual({
    sets: 3 / 8,
    usual: 0.5,
    best: 1,
  });
});

test('the line reaches to today where today is the most', () => {
  expect(measure(work({ sets: 10, usual: 4, best: 5 }))).toEqual({
    sets: 1,
    usual: 0.4,
    best: 0.5,
  });
});

test('without an earlier practice there is no line', () => {
  expect(measure(work({ sets: 3 }))).toBeUndefined();
});

test('where nothing was ever completed there is no line', () => {
  expect(measure(work({ sets: 0, usual: 0, best: 0 }))).toBeUndefined();
});
