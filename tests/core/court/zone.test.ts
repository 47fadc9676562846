import { describe, expect, test } from 'vitest';
import { courtSizeNames } from '../../../core/court/court.ts';
import { bounceZone, standZone } from '../../../core/court/zone.ts';
import { check } from '../../reference/values.ts';

// The court's lengths come from the ITF rules, not from core/court.ts.
const metres = (element: string): number => check(`I.${element}`).expected.metres_exact;
const baseline = metres('derived.baseline_to_net');
const serviceLine = metres('service_line_from_net');
const sideline = metres('singles_width') / 2;

describe('the zone in which a player stands', () => {
  const depth = (y: number) => standZone('full', { x: 0, y }).depth;

  test('is named for the nearest of net and lines, on both sides of the net alike', () => {
    for (const side of [-1, 1]) {
      expect(depth(side * 3.2)).toBe('net');
      expect(depth(side * 5.2)).toBe('front');
      expect(depth(side * serviceLine)).toBe('service-line');
      expect(depth(side * 9)).toBe('midcourt');
      expect(depth(side * baseline)).toBe('baseline');
      expect(depth(side * (baseline + 0.5))).toBe('baseline');
      expect(depth(side * (baseline + 1))).toBe('behind');
    }
  });

  test('has its left and right as in a drawing, for both sides of the net', () => {
    for (const y of [-baseline, baseline]) {
      const at = (x: number) => standZone('full', { x, y });
      expect(at(-1.5)).toMatchObject({ hand: 'left', isWide: false });
      expect(at(0.1)).toMatchObject({ hand: 'centre' });
      expect(at(1.5)).toMatchObject({ hand: 'right', isWide: false });
      expect(at(sideline)).toMatchObject({ hand: 'right', isWide: true });
    }
  });
});

describe('the zone in which a ball bounces', () => {
  test('is a service box up to its line, then the midcourt, then deep', () => {
    const depth = (y: number) => bounceZone('full', { x: 2, y }).depth;
    expect([1, serviceLine, serviceLine + 0.1, 8.9, 9.4, baseline].map(depth)).toEqual([
      ...['box', 'box', 'midcourt', 'midcourt', 'deep', 'deep'],
    ]);
  });

  test('tells the outside of a service box from the part beside the centre line', () => {
    const at = (x: number) => bounceZone('full', { x, y: 5 });
    expect(at(-3)).toMatchObject({ hand: 'left', isWide: true, isNarrow: false });
    expect(at(-2)).toMatchObject({ hand: 'left', isWide: false, isNarrow: false });
    expect(at(-0.7)).toMatchObject({ hand: 'left', isWide: false, isNarrow: true });
  });

  test('is the same share of a smaller court', () => {
    for (const size of courtSizeNames) {
      expect(standZone(size, { x: 0, y: -30 }).depth).toBe('behind');
      expect(bounceZone(size, { x: 0, y: 1 })).toMatchObject({ depth: 'box', hand: 'centre' });
    }
    expect(standZone('small', { x: 0, y: 4 }).depth).toBe('service-line');
    expect(standZone('small', { x: 0, y: -5.4864 }).depth).toBe('baseline');
  });
});
