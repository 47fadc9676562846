import { describe, expect, test } from 'vitest';
import { HALF_LIFE_DAYS, meetingsOf } from '../../../core/planning/meetings.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const on = (date: string, ...rounds: string[][][]) =>
  practiceWith(
    date,
    rounds.map((pairs, at) =>
      roundWith(
        at,
        termsWith(),
        pairs.map((players) => [players, 1]),
      ),
    ),
  );
const TODAY = '2026-03-20';

describe('meetings', () => {
  test('of no history are none', () => {
    expect(meetingsOf([], TODAY).together('a', 'b')).toBe(0);
    expect(meetingsOf([], TODAY).inTrio('a')).toBe(0);
  });

  test('count each round together, whichever of the two is named first', () => {
    const met = meetingsOf([on(TODAY, [['a', 'b']], [['b', 'a']], [['a', 'c']])], TODAY);
    expect(met.together('a', 'b')).toBe(2);
    expect(met.together('b', 'a')).toBe(2);
    expect(met.together('b', 'c')).toBe(0);
  });

  test('fade by half in a fortnight', () => {
    expect(HALF_LIFE_DAYS).toBe(14);
    const met = meetingsOf([on('2026-03-06', [['a', 'b']]), on('2026-02-20', [['a', 'b']])], TODAY);
    expect(met.together('a', 'b')).toBe(0.5 + 0.25);
    expect(meetingsOf([on('2026-03-13', [['a', 'b']])], TODAY).together('a', 'b')).toBe(
      Math.SQRT1_2,
    );
  });

  test('of a trio are a third of a round for each two of it, and a round in a trio for each', () => {
    const met = meetingsOf(
      [
        on('2026-03-06', [
          ['a', 'b', 'c'],
          ['d', 'e'],
        ]),
      ],
      TODAY,
    );
    for (const [one, other] of ['ab', 'bc', 'ca']) {
      expect(met.together(one!, other!)).toBeCloseTo(0.5 / 3, 12);
    }
    expect(['a', 'b', 'c', 'd'].map((player) => met.inTrio(player))).toEqual([0.5, 0.5, 0.5, 0]);
  });

  test('later than the day asked for are not known yet', () => {
    expect(meetingsOf([on('2026-03-21', [['a', 'b']])], TODAY).together('a', 'b')).toBe(0);
  });
});
