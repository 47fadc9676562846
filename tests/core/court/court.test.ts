import fc from 'fast-check';
import { expect, describe as group, test } from 'vitest';
import {
  COURT,
  courtSizeNames,
  courtSizes,
  describe,
  isInside,
  lines,
  toFeet,
} from '../../../core/court/court.ts';

const anySize = fc.constantFrom(...courtSizeNames);
const anyMetres = fc.double({ min: -20, max: 20, noNaN: true });
const anyPlace = fc.record({ x: anyMetres, y: anyMetres });

group('lines', () => {
  test('a full court has a net, two of each line but one centre line, and nothing else', () => {
    const count: Record<string, number> = {};
    for (const { kind } of lines('full')) count[kind] = (count[kind] ?? 0) + 1;
    expect(count).toEqual({
      net: 1,
      'centre-line': 1,
      baseline: 2,
      'service-line': 2,
      'centre-mark': 2,
      'singles-sideline': 2,
      'doubles-sideline': 2,
    });
  });

  test('the smaller courts have no doubles lines', () => {
    expect(lines('small').some(({ kind }) => kind === 'doubles-sideline')).toBe(false);
    expect(lines('middle').some(({ kind }) => kind === 'doubles-sideline')).toBe(false);
  });

  test.each(courtSizeNames)('every painted line of the %s court lies inside it', (size) => {
    for (const { kind, ends } of lines(size)) {
      if (kind === 'net') continue;
      for (const [x, y] of ends) expect(isInside(size, { x, y }), `${kind} ${x} ${y}`).toBe(true);
    }
  });

  test.each(courtSizeNames)('the %s court looks the same from both sides', (size) => {
    const ends = lines(size).map(({ kind, ends }) => JSON.stringify([kind, ...[...ends].sort()]));
    const turned = lines(size).map(({ kind, ends }) =>
      JSON.stringify([kind, ...ends.map(([x, y]) => [0 - x, 0 - y]).sort()]),
    );
    expect(turned.sort()).toEqual(ends.sort());
  });

  test('the service line ends at the singles sidelines, the baseline at the doubles sidelines', () => {
    const width = (kind: string) => {
      const [from, to] = lines('full').find((line) => line.kind === kind)!.ends;
      return to[0] - from[0];
    };
    expect(toFeet(width('service-line'))).toBeCloseTo(27, 12);
    expect(toFeet(width('baseline'))).toBeCloseTo(36, 12);
    // ITF Rule 1: the posts stand 3 ft outside the doubles court.
    expect(toFeet(width('net'))).toBeCloseTo(36 + 2 * 3, 12);
  });

  test('the centre mark points four inches into the court', () => {
    // ITF Rule 1: "a centre mark, 4 inches (10 cm) in length, drawn inside the court".
    for (const { kind, ends } of lines('full')) {
      if (kind !== 'centre-mark') continue;
      const [from, to] = ends;
      expect(Math.abs(from[1])).toBe(COURT.length / 2);
      expect(toFeet(Math.abs(from[1]) - Math.abs(to[1])) * 12).toBeCloseTo(4, 10);
    }
  });
});

group('isInside', () => {
  test('a line belongs to the court, a centimetre beyond does not', () => {
    for (const size of courtSizeNames) {
      const { length, singlesWidth, doublesWidth = singlesWidth } = courtSizes[size];
      expect(isInside(size, { x: doublesWidth / 2, y: -length / 2 })).toBe(true);
      expect(isInside(size, { x: doublesWidth / 2 + 0.01, y: 0 })).toBe(false);
      expect(isInside(size, { x: 0, y: length / 2 + 0.01 })).toBe(false);
    }
  });

  test('the run-off widens it on every side', () => {
    const behind = { x: 0, y: -COURT.length / 2 - 3 };
    const beside = { x: COURT.doublesWidth / 2 + 3, y: 0 };
    for (const point of [behind, beside]) {
      expect(isInside('full', point, 2.9)).toBe(false);
      expect(isInside('full', point, 3.1)).toBe(true);
    }
  });

  test.each([-1, Number.NaN, Infinity])('a run-off of %s is refused', (runoff) => {
    expect(() => isInside('full', { x: 0, y: 0 }, runoff)).toThrow(/runoff/);
  });

  test('a place that is no number is refused', () => {
    expect(() => isInside('full', { x: Number.NaN, y: 0 })).toThrow(/x/);
    expect(() => describe('full', { x: 0, y: Infinity })).toThrow(/y/);
  });
});

group('describe', () => {
  test('half way to the service line is a share of a half', () => {
    const there = describe('full', { x: 0, y: -COURT.serviceLine / 2 });
    expect(there).toMatchObject({ side: 'near', hand: 'centre', fromCentre: 0 });
    expect(there.fromNet).toBeCloseTo(3.2004, 12);
    expect(there.depth).toMatchObject({ past: 'net', next: { line: 'service-line', share: 0.5 } });
  });

  test('on a line is past it by nothing', () => {
    expect(describe('full', { x: 0, y: COURT.serviceLine }).depth).toMatchObject({
      past: 'service-line',
      by: 0,
      next: { line: 'baseline', share: 0 },
    });
  });

  test('behind the baseline and outside the sidelines no line comes next', () => {
    const { depth, breadth } = describe('full', { x: 7, y: 13 });
    expect(depth.past).toBe('baseline');
    expect(depth.by).toBeCloseTo(13 - 11.8872, 12);
    expect(depth).not.toHaveProperty('next');
    expect(breadth.past).toBe('doubles-sideline');
    expect(breadth).not.toHaveProperty('next');
  });

  test('between the sidelines lies the doubles alley, where there is one', () => {
    expect(describe('full', { x: 4.8, y: -1 }).breadth).toMatchObject({
      past: 'singles-sideline',
      next: { line: 'doubles-sideline' },
    });
    expect(describe('small', { x: 2.8, y: -1 }).breadth).not.toHaveProperty('next');
  });

  test('right of the near player is left of the far one', () => {
    expect(describe('full', { x: 1, y: -1 })).toMatchObject({ side: 'near', hand: 'right' });
    expect(describe('full', { x: 1, y: 1 })).toMatchObject({ side: 'far', hand: 'left' });
    expect(describe('full', { x: 1, y: 0 })).toMatchObject({ side: 'net', hand: 'right' });
  });

  test('what it says leads back to the place', () => {
    fc.assert(
      fc.property(anySize, anyPlace, (size, point) => {
        const { side, hand, fromNet, fromCentre, depth, breadth } = describe(size, point);
        expect((side === 'far' ? 1 : -1) * fromNet).toBeCloseTo(point.y, 9);
        const right = (hand === 'left' ? -1 : 1) * fromCentre;
        expect(side === 'far' ? -right : right).toBeCloseTo(point.x, 9);
        for (const { by, next } of [depth, breadth]) {
          expect(by).toBeGreaterThanOrEqual(0);
          if (!next) continue;
          expect(next.in).toBeGreaterThan(0);
          expect(next.share).toBeCloseTo(by / (by + next.in), 9);
        }
      }),
    );
  });
});

test('feet are made from metres, and from nothing else', () => {
  expect(toFeet(0.3048)).toBe(1);
  expect(() => toFeet(Number.NaN)).toThrow(/metres/);
});
