import { expect, it } from 'vitest';
import { drillOf, tellingRecords } from '../../../core/figures/pair-record.ts';

const pair = { a: 'Ana', b: 'Bo' };

it('a record without a drill belongs to the one without a name', () => {
  expect(drillOf({ ...pair, exposure: 2, sets: 1 })).toBe('');
  expect(drillOf({ ...pair, exposure: 2, sets: 1, drill: 'lobs' })).toBe('lobs');
});

it('telling records keep their order, and a 0 that somebody else bettered', () => {
  const made = { ...pair, exposure: 2, sets: 3, drill: 'lobs' };
  const none = { ...pair, exposure: 2, sets: 0, drill: 'lobs' };
  const fresh = { ...pair, exposure: 2, sets: 0, drill: 'new' };
  const idle = { ...pair, exposure: 0, sets: 0, drill: 'lobs' };
  expect(tellingRecords([none, fresh, idle, made])).toEqual([none, made]);
  expect(tellingRecords([fresh])).toEqual([]);
  expect(tellingRecords([])).toEqual([]);
});
