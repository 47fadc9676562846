import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  afterEvent,
  type Clock,
  type ClockEvent,
  endSecond,
  goOnFrom,
  hornAt,
  isOver,
  isPaused,
  LONGEST_SECONDS,
  liveSeconds,
  recordedSeconds,
  secondsLeft,
  startClock,
} from '../../../core/round/clock.ts';
import { MORNING } from '../told.ts';

type Timed = readonly [event: ClockEvent, second: number];

const at = (second: number) => MORNING + second * 1000;
const after = (length: number, ...events: readonly Timed[]): Clock =>
  events.reduce(
    (clock, [event, second]) => afterEvent(clock, event, at(second)),
    startClock(MORNING, length),
  );

const anyEvent = fc.constantFrom<ClockEvent[]>('pause', 'pause', 'resume', 'resume', 'stop', {
  extend: 30,
});
/** Events whose times go on, stand, or (`back` above 0) fall back. */
const anyEvents = (back: number): fc.Arbitrary<Timed[]> =>
  fc
    .array(fc.tuple(anyEvent, fc.integer({ min: -back, max: 40 })), { maxLength: 12 })
    .map((steps) => {
      let second = 0;
      return steps.map(([event, gap]) => {
        second += gap;
        return [event, second] as const;
      });
    });

describe('a clock that only runs', () => {
  const clock = startClock(MORNING, 120);

  test('has nothing live at its start and all of it at the horn', () => {
    expect(liveSeconds(clock, at(0))).toBe(0);
    expect(secondsLeft(clock, at(0))).toBe(120);
    expect(liveSeconds(clock, at(120))).toBe(120);
    expect(secondsLeft(clock, at(120))).toBe(0);
  });

  test('is over at its horn and not before', () => {
    expect(isOver(clock, at(119.999))).toBe(false);
    expect(isOver(clock, at(120))).toBe(true);
  });

  test('goes on past the horn for late marks, while nothing more is recorded', () => {
    expect(liveSeconds(clock, at(125))).toBe(125);
    expect(recordedSeconds(clock, at(125))).toBe(120);
    expect(recordedSeconds(clock, at(30))).toBe(30);
  });

  test('is never negative on a phone whose clock fell back behind the start', () => {
    expect(liveSeconds(clock, at(-5))).toBe(0);
    expect(secondsLeft(clock, at(-5))).toBe(120);
    expect(recordedSeconds(clock, at(-5))).toBe(0);
  });

  test('knows its horn beforehand, at any moment the same', () => {
    expect(hornAt(clock, at(0))).toBe(at(120));
    expect(hornAt(clock, at(77))).toBe(at(120));
  });
});

describe('a pause', () => {
  test('stands still and moves the horn', () => {
    const paused = after(120, ['pause', 30]);
    expect(isPaused(paused)).toBe(true);
    expect(liveSeconds(paused, at(90))).toBe(30);
    expect(hornAt(paused, at(90))).toBeUndefined();
    const resumed = afterEvent(paused, 'resume', at(100));
    expect(isPaused(resumed)).toBe(false);
    expect(liveSeconds(resumed, at(110))).toBe(40);
    expect(hornAt(resumed, at(110))).toBe(at(190));
  });

  test('never comes to its horn, however long', () => {
    expect(isOver(after(120, ['pause', 119]), at(86_400))).toBe(false);
  });

  test('pressed by two phones at once is one pause', () => {
    expect(after(120, ['pause', 30], ['pause', 31], ['resume', 40], ['resume', 41])).toEqual(
      after(120, ['pause', 30], ['resume', 40]),
    );
  });

  test('is read rightly at a moment before it', () => {
    expect(liveSeconds(after(120, ['pause', 30], ['resume', 50]), at(20))).toBe(20);
    expect(liveSeconds(after(120, ['pause', 30], ['resume', 50]), at(40))).toBe(30);
  });

  test('that a clock fallen back would put inside an earlier one begins where that ended', () => {
    const clock = after(120, ['pause', 30], ['resume', 50], ['pause', 40], ['resume', 60]);
    expect([45, 55, 70].map((second) => liveSeconds(clock, at(second)))).toEqual([30, 30, 40]);
  });

  test('that a clock fallen back would end before it began takes no time', () => {
    expect(liveSeconds(after(120, ['pause', 30], ['resume', 20]), at(60))).toBe(60);
  });
});

describe('an extension', () => {
  test('gives so many seconds more, running or paused', () => {
    expect(endSecond(after(120, [{ extend: 30 }, 10]))).toBe(150);
    expect(endSecond(after(120, ['pause', 10], [{ extend: 30 }, 11]))).toBe(150);
  });

  test('never makes a round longer than any may be', () => {
    const thirty: Timed = [{ extend: 30 }, 5];
    expect(endSecond(after(120, ...Array.from({ length: 40 }, () => thirty)))).toBe(
      LONGEST_SECONDS,
    );
  });
});

describe('a stop', () => {
  test('ends the round where it stood', () => {
    const stopped = after(120, ['pause', 10], ['resume', 20], ['stop', 50]);
    expect(isOver(stopped, at(50))).toBe(true);
    expect(endSecond(stopped)).toBe(40);
    expect(secondsLeft(stopped, at(50))).toBe(0);
    expect(recordedSeconds(stopped, at(500))).toBe(40);
  });

  test('in a pause ends the pause', () => {
    const stopped = after(120, ['pause', 10], ['stop', 50]);
    expect(isPaused(stopped)).toBe(false);
    expect(endSecond(stopped)).toBe(10);
  });

  test('lets late marks know how late they are', () => {
    expect(liveSeconds(after(120, ['stop', 50]), at(53))).toBe(53);
  });

  test('leaves no horn to wait for', () => {
    expect(hornAt(after(120, ['stop', 50]), at(51))).toBeUndefined();
  });
});

describe('any clock', () => {
  test('agrees with one that is counted second by second', () => {
    fc.assert(
      fc.property(anyEvents(0), fc.integer({ min: 30, max: 600 }), (events, planned) => {
        let length = planned;
        let live = 0;
        let running = true;
        let over = false;
        let clock = startClock(MORNING, planned);
        const waiting = [...events];
        const counted: unknown[] = [];
        const read: unknown[] = [];
        for (let second = 0; second <= 700; second++) {
          over ||= live >= length;
          for (; waiting[0] && waiting[0][1] === second; waiting.shift()) {
            const [event] = waiting[0];
            clock = afterEvent(clock, event, at(second));
            if (over) continue;
            if (event === 'pause') running = false;
            else if (event === 'resume') running = true;
            else if (event === 'stop') over = true;
            else length = Math.min(LONGEST_SECONDS, length + event.extend);
          }
          const now = at(second);
          counted.push([over, live, over ? 0 : length - live, over || running]);
          read.push([
            isOver(clock, now),
            recordedSeconds(clock, now),
            secondsLeft(clock, now),
            isOver(clock, now) || !isPaused(clock),
          ]);
          if (running && !over) live += 1;
        }
        expect(read).toEqual(counted);
      }),
      { numRuns: 60 },
    );
  });

  test('never runs backwards or faster than time, even where its events fall back', () => {
    fc.assert(
      fc.property(anyEvents(60), (events) => {
        const clock = after(120, ...events);
        const live = Array.from({ length: 600 }, (_, second) =>
          liveSeconds(clock, at(second - 100)),
        );
        const steps = live.slice(1).map((seconds, index) => seconds - live[index]!);
        expect(live[0]).toBe(0);
        expect(Math.min(...steps)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...steps)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 500 },
    );
  });

  test('is a function of its start, its pauses and now, whatever was read before', () => {
    fc.assert(
      fc.property(
        anyEvents(60),
        fc.array(fc.integer({ min: -10, max: 700 }), { minLength: 1, maxLength: 20 }),
        (events, seconds) => {
          const clock = after(120, ...events);
          const kept: Clock = JSON.parse(JSON.stringify(clock));
          const read = (from: Clock, second: number) => [
            liveSeconds(from, at(second)),
            secondsLeft(from, at(second)),
            isOver(from, at(second)),
            recordedSeconds(from, at(second)),
            hornAt(from, at(second)),
          ];
          const forwards = seconds.map((second) => read(clock, second));
          const backwards = seconds.toReversed().map((second) => read(kept, second));
          expect(backwards.toReversed()).toEqual(forwards);
          expect(clock).toEqual(kept);
        },
      ),
    );
  });

  test('takes no further event once it is over', () => {
    fc.assert(
      fc.property(anyEvents(0), anyEvent, (events, late) => {
        const clock = after(120, ...events);
        const now = at(100_000);
        fc.pre(isOver(clock, now));
        expect(afterEvent(clock, late, now)).toBe(clock);
      }),
    );
  });

  test('reaches its horn exactly when it says so', () => {
    fc.assert(
      fc.property(anyEvents(0), fc.integer({ min: 0, max: 60 }), (events, later) => {
        const clock = after(120, ...events);
        const now = at((events.at(-1)?.[1] ?? 0) + later);
        const horn = hornAt(clock, now);
        fc.pre(horn !== undefined);
        expect(liveSeconds(clock, horn!)).toBeCloseTo(clock.length, 6);
      }),
    );
  });
});

describe("a clock that goes on after the phone's own was set", () => {
  const HOUR = 3_600_000;

  test.each([HOUR, -HOUR])('has the same live seconds and the same time left, %i ms away', (by) => {
    const before = after(120, ['pause', 20], ['resume', 50]);
    const live = liveSeconds(before, at(70));
    const clock = goOnFrom(before, live, at(70) + by);
    expect(liveSeconds(clock, at(70) + by)).toBe(40);
    expect(secondsLeft(clock, at(80) + by)).toBe(70);
    expect(isOver(clock, at(149) + by)).toBe(false);
    expect(isOver(clock, at(150) + by)).toBe(true);
  });

  test('stands still where it stood still', () => {
    const clock = goOnFrom(after(120, ['pause', 20]), 20, at(30) - HOUR);
    expect(isPaused(clock)).toBe(true);
    expect(liveSeconds(clock, at(90) - HOUR)).toBe(20);
    const resumed = afterEvent(clock, 'resume', at(90) - HOUR);
    expect(liveSeconds(resumed, at(100) - HOUR)).toBe(30);
  });

  test('is over where it was over, and stays as it was once stopped', () => {
    expect(isOver(goOnFrom(startClock(MORNING, 120), 130, at(130) - HOUR), at(130) - HOUR)).toBe(
      true,
    );
    const stopped = after(120, ['stop', 50]);
    expect(goOnFrom(stopped, 50, at(60) - HOUR)).toBe(stopped);
  });

  test('set again and again, or told of it twice, is as if it was told once', () => {
    fc.assert(
      fc.property(
        anyEvents(0),
        fc.array(fc.integer({ min: -7_200_000, max: 7_200_000 }), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 100 }),
        (events, steps, more) => {
          const last = events.at(-1)?.[1] ?? 0;
          const before = after(120, ...events);
          const live = liveSeconds(before, at(last));
          let moved = before;
          let by = 0;
          for (const step of steps) {
            by += step;
            moved = goOnFrom(moved, live, at(last) + by);
            moved = goOnFrom(moved, live, at(last) + by);
          }
          expect(endSecond(moved)).toBeCloseTo(endSecond(before), 6);
          expect(isPaused(moved)).toBe(isPaused(before));
          if (before.stopped !== undefined) return;
          expect(liveSeconds(moved, at(last + more) + by)).toBeCloseTo(
            liveSeconds(before, at(last + more)),
            6,
          );
        },
      ),
    );
  });
});
