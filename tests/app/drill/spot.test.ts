import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isUnread, placeOf, spotOf, stepped, typed } from '../../../app/drill/spot.ts';

describe('a place in the words of the player who stands there', () => {
  test('is left and right as that player faces the net', () => {
    expect(spotOf({ x: 2, y: -5 })).toMatchObject({ side: 'near', hand: 'right' });
    expect(spotOf({ x: 2, y: 5 })).toMatchObject({ side: 'far', hand: 'left' });
    expect(placeOf({ side: 'far', net: { value: 5 }, hand: 'left', centre: { value: 2 } })).toEqual(
      {
        x: 2,
        y: 5,
      },
    );
  });

  test('is of the side that is asked for where it is on the net line', () => {
    expect(spotOf({ x: 1, y: 0 }, 'far')).toMatchObject({ side: 'far', hand: 'left' });
    expect(spotOf({ x: 1, y: 0 }).side).toBe('near');
  });

  test('leads back to the same place, to the last digit', () => {
    const metres = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(metres, metres, (x, y) => {
        expect(placeOf(spotOf({ x, y }))).toEqual({ x: x + 0, y: y + 0 });
      }),
    );
  });
});

describe('metres as they are typed', () => {
  test.each([
    ['12.4', 12.4],
    ['12,4', 12.4],
    [' 3 ', 3],
    ['.5', 0.5],
    ['7.', 7],
  ])('read "%s"', (text, value) => {
    expect(typed({ value: 1 }, text)).toEqual({ value, text });
    expect(isUnread(typed({ value: 1 }, text))).toBe(false);
  });

  test.each(['', '-3', 'three', '1.2.3', '.', '1e3'])(
    'keep the number before "%s", and what was typed',
    (text) => {
      const metres = typed({ value: 1 }, text);
      expect(metres).toEqual({ value: 1, text });
      expect(isUnread(metres)).toBe(true);
    },
  );

  test('go in tenths, from wherever they stand, and not below 0', () => {
    expect(stepped({ value: 12.0872 }, 1)).toEqual({ value: 12.2 });
    expect(stepped({ value: 0.3, text: 'x' }, -1)).toEqual({ value: 0.2 });
    expect(stepped({ value: 0 }, -1)).toEqual({ value: 0 });
  });
});
