import { expect, describe as group, test } from 'vitest';
import { COURT, describe } from '../../../core/court/court.ts';
import { nearerLine } from '../../../core/court/nearer-line.ts';

const across = (y: number) => nearerLine(describe('full', { x: 0, y }).depth);
const along = (x: number) => nearerLine(describe('full', { x, y: -9 }).breadth);

group('the nearer line', () => {
  test('is the one behind which a place lies, if that is less far', () => {
    expect(across(-12.4).line).toBe('baseline');
    expect(across(-12.4).beyond).toBeCloseTo(12.4 - COURT.length / 2, 9);
    expect(across(7).line).toBe('service-line');
    expect(across(7).beyond).toBeCloseTo(7 - COURT.serviceLine, 9);
  });

  test('is the one still to come, if that is less far, and then the metres are negative', () => {
    expect(across(-11).line).toBe('baseline');
    expect(across(-11).beyond).toBeCloseTo(11 - COURT.length / 2, 9);
    expect(along(-4).line).toBe('singles-sideline');
    expect(along(-4).beyond).toBeCloseTo(4 - COURT.singlesWidth / 2, 9);
  });

  test('is the one before it where both are as near', () => {
    expect(across(COURT.serviceLine / 2)).toEqual({ line: 'net', beyond: COURT.serviceLine / 2 });
  });

  test('has nothing beyond it where a place is on it', () => {
    const corner = describe('full', { x: COURT.singlesWidth / 2, y: COURT.length / 2 });
    expect(nearerLine(corner.depth)).toEqual({ line: 'baseline', beyond: 0 });
    expect(nearerLine(corner.breadth)).toEqual({ line: 'singles-sideline', beyond: 0 });
  });
});
