import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nextStamp, phoneOf, STAMP, stampTime, writerOf } from '../../../core/ledger/stamp.ts';

const NOW = 1_772_438_400_000;
const WRITER = 'V1StGXR8';

/** The stamps of one writer whose clock read these times. */
function stampsAt(times: readonly number[], writer = WRITER): string[] {
  let last = '';
  return times.map((time) => {
    last = nextStamp(last, time, writer);
    return last;
  });
}

/** Clocks that go on steadily, stutter, or fall back. */
const steps = {
  steady: fc.integer({ min: 1, max: 5000 }),
  stuttering: fc.integer({ min: 0, max: 1 }),
  regressing: fc.integer({ min: -100_000, max: 1000 }),
};

describe('the next stamp', () => {
  test('has the shape of a stamp, and its time', () => {
    const stamp = nextStamp('', NOW, WRITER);
    expect(stamp).toMatch(STAMP);
    expect(stamp).toBe(`${NOW.toString(36).padStart(9, '0')}-000-${WRITER}`);
    expect(stampTime(stamp)).toBe(NOW);
  });

  test('starts its counter again once the clock has gone on', () => {
    const last = stampsAt([NOW, NOW, NOW]).at(-1)!;
    expect(last.slice(10, 13)).toBe('002');
    expect(nextStamp(last, NOW + 1, WRITER).slice(10, 13)).toBe('000');
  });

  test('takes no notice of parts of a millisecond', () => {
    expect(nextStamp('', NOW + 0.9, WRITER)).toBe(nextStamp('', NOW, WRITER));
  });

  test('borrows a millisecond once its counter is used up', () => {
    const full = `${NOW.toString(36).padStart(9, '0')}-zzz-${WRITER}`;
    const next = nextStamp(full, NOW, WRITER);
    expect(stampTime(next)).toBe(NOW + 1);
    expect(next.slice(10, 13)).toBe('000');
    expect(next > full).toBe(true);
  });

  test('still sorts after 50,000 entries in one millisecond', () => {
    let last = '';
    for (let made = 0; made < 50_000; made++) {
      const next = nextStamp(last, NOW, WRITER);
      if (next <= last) expect.fail(`${next} does not sort after ${last}`);
      last = next;
    }
    expect(stampTime(last)).toBe(NOW + 1);
  });

  test.each(Object.entries(steps))('sorts after the last one under a %s clock', (_, step) => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (gaps) => {
        let now = NOW;
        const times = gaps.map((gap) => {
          now += gap;
          return now;
        });
        const stamps = stampsAt(times);
        expect(stamps.toSorted()).toEqual(stamps);
        expect(new Set(stamps).size).toBe(stamps.length);
        for (const stamp of stamps) expect(stamp).toMatch(STAMP);
      }),
    );
  });

  test('is never earlier than the clock, and only a clock that fell back is behind it', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 2 * NOW }), { minLength: 1 }), (times) => {
        let latest = 0;
        stampsAt(times).forEach((stamp, index) => {
          latest = Math.max(latest, times[index]!);
          expect(stampTime(stamp)).toBe(latest);
        });
      }),
    );
  });

  test('sorts after what another writer made and this one has seen', () => {
    const other = nextStamp('', NOW + 60_000, 'other-writer');
    const own = nextStamp(other, NOW, WRITER);
    expect(own > other).toBe(true);
  });

  test('of two writers is never the same, whatever their clocks', () => {
    const times = fc.array(fc.integer({ min: NOW, max: NOW + 3 }), { maxLength: 20 });
    fc.assert(
      fc.property(times, times, (one, other) => {
        const all = [...stampsAt(one, 'writer-one'), ...stampsAt(other, 'writer-two')];
        expect(new Set(all).size).toBe(one.length + other.length);
      }),
    );
  });

  test('sorts by time from 1970 until long after 2100', () => {
    const stamps = stampsAt([0, 1, 1e6, NOW, 4_102_444_800_000, 36 ** 9 - 1]);
    expect(stamps.toSorted()).toEqual(stamps);
    for (const stamp of stamps) expect(stamp).toMatch(STAMP);
  });

  test.each([Number.NaN, Infinity, -1])('at %s is an error', (now) => {
    expect(() => nextStamp('', now, WRITER)).toThrow(RangeError);
  });
});

describe('the phone that wrote', () => {
  test('is told by every stamp of all its windows', () => {
    for (const window of ['abcdef', '-_-_-_']) {
      const stamp = nextStamp('', NOW, writerOf('V1-t_XR8zz', window));
      expect(stamp).toMatch(STAMP);
      expect(phoneOf(stamp)).toBe('V1-t_XR8zz');
    }
  });

  test('is not known of an earlier version, whose writers were windows', () => {
    expect(phoneOf(nextStamp('', NOW, 'V1StGXR8zz'))).toBe('');
  });

  test('and its window have names of one length', () => {
    expect(() => writerOf('short', 'abcdef')).toThrow(RangeError);
    expect(() => writerOf('V1-t_XR8zz', 'abc')).toThrow(RangeError);
  });
});
