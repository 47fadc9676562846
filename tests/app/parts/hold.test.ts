import { expect, test } from 'vitest';
import { HOLD_MS, type Hold, heldPart, press, release } from '../../../app/parts/hold.ts';

const held = press(undefined, 'finger 1', 1_000);

test('a press that lasts is held in full after two seconds and not before', () => {
  expect(HOLD_MS).toBe(2_000);
  expect(heldPart(held, 1_000)).toBe(0);
  expect(heldPart(held, 2_000)).toBe(0.5);
  expect(heldPart(held, 2_999)).toBeLessThan(1);
  expect(heldPart(held, 3_000)).toBe(1);
  expect(heldPart(held, 60_000)).toBe(1);
});

test('a press that is let go too early starts again from nothing', () => {
  const after = release(held, 'finger 1');
  expect(heldPart(after, 60_000)).toBe(0);
  expect(heldPart(press(after, 'finger 1', 2_500), 3_500)).toBe(0.5);
});

test('a key that repeats while it is down does not start again', () => {
  let hold: Hold = press(undefined, 'Enter', 0);
  for (const at of [500, 530, 560, 1_990]) hold = press(hold, 'Enter', at);
  expect(heldPart(hold, 2_000)).toBe(1);
});

test('a second finger neither takes the hold over nor ends it', () => {
  const both = press(held, 'finger 2', 2_500);
  expect(heldPart(release(both, 'finger 2'), 3_000)).toBe(1);
  expect(release(both, 'finger 1')).toBeUndefined();
});

test('letting go where nothing is held is nothing', () => {
  expect(release(undefined, 'finger 1')).toBeUndefined();
  expect(heldPart(undefined, 5_000)).toBe(0);
});

test('a clock that falls back never shows less than nothing', () => {
  expect(heldPart(held, 400)).toBe(0);
});
