import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assignCourts, type CourtRound } from '../../../core/planning/assign-courts.ts';
import { pairUp } from '../../../core/round/pairs.ts';

const pairsOf = (count: number) =>
  pairUp(Array.from({ length: 2 * count }, (_, at) => `p${at + 1}`));
const letters = ({ playing, waiting }: CourtRound) => [
  playing.map(({ pair }) => pair.letter).join(''),
  waiting.map(({ letter }) => letter).join(''),
];
const seats = ({ playing }: CourtRound) =>
  Object.fromEntries(playing.map(({ pair, court, lane }) => [pair.letter, [court, lane]]));

const anyCase = fc.record({
  count: fc.integer({ min: 1, max: 12 }),
  courts: fc.integer({ min: 1, max: 6 }),
  perCourt: fc.integer({ min: 1, max: 4 }),
  rounds: fc.integer({ min: 1, max: 12 }),
});

describe('where all fit', () => {
  test('pairs are spread over the courts before one takes a second', () => {
    const [round] = assignCourts({ pairs: pairsOf(5), courts: 3, perCourt: 2 });
    expect(seats(round!)).toEqual({ A: [0, 0], B: [1, 0], C: [2, 0], D: [0, 1], E: [1, 1] });
    expect(round!.waiting).toEqual([]);
  });

  test('nobody changes places from round to round', () => {
    const rounds = assignCourts({ pairs: pairsOf(4), courts: 2, perCourt: 2, rounds: 3 });
    expect(rounds).toHaveLength(3);
    for (const round of rounds) expect(round).toEqual(rounds[0]);
  });

  test('courts that are not known are as many as it takes', () => {
    const [round] = assignCourts({ pairs: pairsOf(5), perCourt: 2 });
    expect(round!.waiting).toEqual([]);
    expect(new Set(round!.playing.map(({ court }) => court)).size).toBe(3);
  });

  test('no pairs make rounds with nobody in them', () => {
    expect(assignCourts({ pairs: [], courts: 2, perCourt: 1 })).toEqual([
      { playing: [], waiting: [] },
    ]);
    expect(assignCourts({ pairs: [], perCourt: 1 })).toHaveLength(1);
  });
});

describe('where not all fit', () => {
  test('those who waited turn in, and who stays in stays where he is', () => {
    const rounds = assignCourts({ pairs: pairsOf(3), courts: 2, perCourt: 1, rounds: 3 });
    expect(rounds.map(letters)).toEqual([
      ['AB', 'C'],
      ['AC', 'B'],
      ['BC', 'A'],
    ]);
    expect(seats(rounds[2]!)).toEqual({ B: [0, 0], C: [1, 0] });
  });

  test('those who have played less today start', () => {
    const played = new Map([...'1234'].map((at) => [`p${at}`, 1]));
    const [round] = assignCourts({ pairs: pairsOf(3), courts: 1, perCourt: 1, played });
    expect(letters(round!)).toEqual(['C', 'AB']);
  });

  test('after any round the rounds of the pairs differ by one at most', () => {
    fc.assert(
      fc.property(anyCase, ({ count, ...options }) => {
        const had = new Map(pairsOf(count).map(({ letter }) => [letter, 0]));
        for (const round of assignCourts({ pairs: pairsOf(count), ...options })) {
          for (const { pair } of round.playing) had.set(pair.letter, had.get(pair.letter)! + 1);
          expect(Math.max(...had.values()) - Math.min(...had.values())).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test('so it is too where the drills of a block take different numbers of pairs', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 4 }),
        fc.array(
          fc.record({
            perCourt: fc.integer({ min: 1, max: 4 }),
            rounds: fc.integer({ min: 1, max: 3 }),
          }),
        ),
        (count, courts, steps) => {
          const pairs = pairsOf(count);
          const played = new Map<string, number>(
            pairs.flatMap(({ players }) => players.map((id) => [id, 0])),
          );
          for (const step of steps) {
            for (const { playing } of assignCourts({
              pairs,
              courts,
              played: new Map(played),
              ...step,
            })) {
              for (const id of playing.flatMap(({ pair }) => pair.players)) {
                played.set(id, played.get(id)! + 1);
              }
            }
            expect(Math.max(...played.values()) - Math.min(...played.values())).toBeLessThanOrEqual(
              1,
            );
          }
        },
      ),
    );
  });

  test('everyone plays or waits, no place is taken twice and none is left free', () => {
    fc.assert(
      fc.property(anyCase, ({ count, courts, perCourt, rounds }) => {
        const pairs = pairsOf(count);
        for (const { playing, waiting } of assignCourts({ pairs, courts, perCourt, rounds })) {
          const there = [...playing.map(({ pair }) => pair), ...waiting];
          expect(there.map(({ letter }) => letter).sort()).toEqual(pairs.map((p) => p.letter));
          expect(playing).toHaveLength(Math.min(count, courts * perCourt));
          expect(new Set(playing.map(({ court, lane }) => `${court} ${lane}`)).size).toBe(
            playing.length,
          );
          for (const { court, lane } of playing) {
            expect(court).toBeLessThan(courts);
            expect(lane).toBeLessThan(perCourt);
          }
        }
      }),
    );
  });
});

describe('what makes no sense', () => {
  test.each(['courts', 'perCourt', 'rounds'])('in %s is an error that names it', (name) => {
    for (const value of [0, -1, 1.5, Number.NaN]) {
      const options = { pairs: pairsOf(2), courts: 1, perCourt: 1, [name]: value };
      expect(() => assignCourts(options)).toThrow(new RegExp(`^${name}`));
    }
  });
});
