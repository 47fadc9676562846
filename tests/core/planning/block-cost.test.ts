import { describe, expect, test } from 'vitest';
import type { Drill, Shot } from '../../../core/drill/drill.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import {
  MOST_STEP_ROUNDS,
  markersMoved,
  pricesOf,
  rolesDiffer,
  weights,
} from '../../../core/planning/block-cost.ts';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import { Step } from '../../../core/round/block.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';
import { addedUp } from './added-up.ts';

const TODAY = '2026-03-20';
const at = (x: number, y: number) => ({ x, y });
const drillNamed = (id: string) => starterDrills.find((drill) => drill.id === id)!;

/** A drill for two pairs a court, both of whose roles strike what they are told. */
function drill(id: string, family: Drill['family'], first: Shot['stroke'], second = first): Drill {
  const place = (y: number) => ({ start: at(2, y), recover: at(2, y) });
  return {
    ...{ id, family, rule: 'in-total', size: 10, perCourt: 2, markers: [] },
    shots: [
      { role: 0, stroke: first },
      { role: 1, stroke: second },
    ],
    roles: [place(-4), place(4)],
  };
}
const ground = drill('ground', 'groundstrokes', 'groundstroke');
const volley = drill('volley', 'volleys', 'volley');
const feed = drill('feed', 'volleys', 'groundstroke', 'volley');
const lob = drill('lob', 'overheads-and-lobs', 'lob', 'overhead');

/** Everyone struck everything of these drills on a day. */
const played = (date: string, ...drills: Drill[]) =>
  practiceWith(
    date,
    drills.flatMap(({ id, family, shots }, ordinal) =>
      [
        ['a', 'b'],
        ['b', 'a'],
      ].map((pair) => roundWith(ordinal, termsWith({ drill: id, family, shots }), [[pair, 1]])),
    ),
  );
const prices = (
  drills: Drill[],
  over: {
    rounds?: number;
    pairs?: number;
    courts?: number;
    history?: ReturnType<typeof played>[];
  } = {},
) =>
  pricesOf(
    drills,
    over.rounds ?? 4,
    over.pairs ?? 1,
    over.courts,
    'full',
    whatIsDue(over.history ?? [], TODAY, ['a', 'b']),
  );
/** What a step costs with one round, two and so on. */
const ofRounds = (cost: readonly number[] | undefined) => cost!.slice(1);
const near = (value: number) => expect.closeTo(value, 2);

describe('a family', () => {
  test('costs less with every round of it, by less each time', () => {
    const [cost] = prices([ground]).family;
    const whole = weights.family * (weights.evenly + 1);
    expect(cost).toEqual([
      weights.missing + whole,
      whole / 2,
      near(whole / 3),
      whole / 4,
      whole / 5,
    ]);
  });

  test('weighs by how overdue it is', () => {
    const [cost] = prices([ground], { history: [played('2026-03-13', ground)] }).family;
    expect(cost![1]).toBe((weights.family * (weights.evenly + 7 / 28)) / 2);
  });

  test('that is left out weighs more than all else, where there is room for every one', () => {
    const four = prices([ground, volley, lob], { rounds: 3, history: [played(TODAY, lob)] });
    for (const cost of four.family) expect(cost[0]! - cost[1]!).toBeGreaterThan(weights.missing);
  });

  test('that is left out for want of rounds weighs by how long it has waited', () => {
    const history = [played('2026-03-19', ground, volley), played('2026-03-17', lob)];
    const costs = prices([ground, volley, lob], { rounds: 2, history }).family;
    const missing = costs.map((cost) =>
      Math.round(((cost[0]! - 2 * cost[1]!) / weights.missing) * 100),
    );
    expect(missing).toEqual([50, 50, 100]);
  });

  test('without a drill costs nothing', () => {
    expect(prices([ground, volley]).family).toHaveLength(2);
  });
});

describe('a drill', () => {
  test('that nobody ever played costs nothing itself, with all in play', () => {
    expect(ofRounds(prices([ground]).step[0])).toEqual([0, 0, weights.again, 2 * weights.again]);
  });

  test('costs more the fresher its strokes and the drill itself are', () => {
    const history = [played('2026-03-13', ground)];
    const again = { ...ground, id: 'ground-again' };
    const [own, other] = prices([ground, again], { history }).step;
    expect(ofRounds(other)).toEqual(
      [1, 2, 3, 4].map((n) => n * weights.stroke * 0.75 + Math.max(0, n - 2) * weights.again),
    );
    expect(own![1]).toBe(other![1]! + weights.drill * 0.75 + weights.repeat);
  });

  test('of the last practice is a repeat only where its family has one that was not', () => {
    const history = [played('2026-03-13', ground)];
    const alone = prices([ground, volley], { history }).step[0]!;
    expect(alone[1]).toBe(weights.stroke * 0.75 + weights.drill * 0.75);
    const earlier = [played('2026-03-13', ground), played('2026-03-18', volley)];
    expect(
      prices([ground, { ...ground, id: 'other' }], { history: earlier }).step[0]![1],
    ).toBeLessThan(weights.repeat);
  });

  test('with unlike roles must not have an odd number of rounds', () => {
    const [, cost] = prices([ground, feed], { rounds: 3 }).step;
    expect(ofRounds(cost)).toEqual([weights.roles, 0, weights.roles + weights.again]);
  });

  test('with unlike roles may have one where families have one round each', () => {
    const [, cost] = prices([ground, feed], { rounds: 2 }).step;
    expect(ofRounds(cost)).toEqual([weights.oneRole, 0]);
  });

  test('costs by who waits, and by who comes to one role only', () => {
    const cost = (pairs: number) => prices([ground, lob], { pairs, courts: 1 }).step;
    expect(ofRounds(cost(2)[0])).toEqual([0, 0, weights.again, 2 * weights.again]);
    // One of three waits: after two rounds one pair has played both, two have played one.
    const [, wait, twice] = cost(3)[0]!;
    expect([wait, twice]).toEqual([
      near((weights.waiting + weights.leftOut) / 3),
      near((2 * weights.waiting) / 3),
    ]);
    expect(cost(3)[1]![2]! - twice!).toBeCloseTo((weights.oneRole * 2) / 3, 2);
    // Two of four wait: after two rounds all have had one role, after four both.
    expect(cost(4)[1]![2]! - cost(4)[0]![2]!).toBe(weights.oneRole);
    expect(cost(4)[1]![4]).toBe(cost(4)[0]![4]);
  });

  test('costs by who does not come to it at all for want of courts', () => {
    const [, once, twice] = prices([ground], { pairs: 5, courts: 1 }).step[0]!;
    const waiting = (n: number) => (n * weights.waiting * 3) / 5;
    expect(once).toBeCloseTo(waiting(1) + (weights.leftOut * 3) / 5, 2);
    expect(twice).toBeCloseTo(waiting(2) + weights.leftOut / 5, 2);
  });

  test('costs nothing by who waits where it is not known who is here, or how many courts', () => {
    expect(ofRounds(prices([ground], { pairs: 0, courts: 1 }).step[0]).slice(0, 2)).toEqual([0, 0]);
    expect(ofRounds(prices([ground], { pairs: 0 }).step[0]).slice(0, 2)).toEqual([0, 0]);
    expect(ofRounds(prices([ground], { pairs: 9 }).step[0]).slice(0, 2)).toEqual([0, 0]);
  });

  test('has unlike roles where they strike different strokes', () => {
    expect([ground, volley].map(rolesDiffer)).toEqual([false, false]);
    expect([feed, lob].map(rolesDiffer)).toEqual([true, true]);
    expect(rolesDiffer(drillNamed('serves-to-the-middle'))).toBe(false);
    expect(rolesDiffer(drillNamed('approach-pass-volley'))).toBe(true);
  });
});

describe('the way from drill to drill', () => {
  test('costs each marker that is laid, taken up or moved once', () => {
    expect(markersMoved([], [])).toBe(0);
    expect(markersMoved([], [at(0, 1), at(0, 2)])).toBe(2);
    expect(markersMoved([at(0, 1), at(0, 2)], [at(0, 2)])).toBe(1);
    expect(markersMoved([at(0, 1), at(0, 2)], [at(0, 2), at(3, 3)])).toBe(1);
    expect(markersMoved([at(0, 1)], [at(0.05, 1)])).toBe(0);
    expect(markersMoved([at(0, 1)], [at(0.2, 1)])).toBe(1);
  });

  test('is as long back, and none from a drill to itself', () => {
    const { move } = pricesOf(starterDrills, 8, 6, 2, 'full', whatIsDue([], TODAY, []));
    for (const [a, row] of move.entries()) {
      expect(row[a]).toBe(0);
      for (const [b, cost] of row.entries()) expect(cost).toBe(move[b]![a]);
    }
  });

  test('counts the markers of all lanes in use', () => {
    const drills = [drillNamed('volley-to-volley'), ground];
    expect(prices(drills, { pairs: 1 }).move[0]![1]).toBe(2);
    expect(prices(drills, { pairs: 4, courts: 2 }).move[0]![1]).toBe(4);
    expect(prices(drills, { pairs: 4, courts: 4 }).move[0]![1]).toBe(2);
  });

  test('begins a little dearer with overheads or serves', () => {
    const drills = [
      ground,
      lob,
      drillNamed('straight-serves'),
      drillNamed('lobs-past-the-markers'),
    ];
    expect(prices(drills).open).toEqual([0, weights.cold, weights.cold, 0]);
  });
});

describe('a block', () => {
  test('costs its opening, its drills, the ways between them and its families', () => {
    const drills = [drillNamed('volley-to-volley'), lob, ground];
    const all = prices(drills);
    const block = [
      { drill: 1, rounds: 2 },
      { drill: 0, rounds: 1 },
      { drill: 2, rounds: 1 },
    ];
    const whole = weights.family * (weights.evenly + 1);
    expect(addedUp(block, all)).toBeCloseTo(
      weights.cold + 2 + 2 + whole / 3 + whole / 2 + whole / 2,
      2,
    );
  });

  test('costs the same to the last bit in whatever order it is added up', () => {
    const history = [played('2026-03-13', ground, volley)];
    const { family, step } = prices([ground, volley, lob], { history, pairs: 5, courts: 2 });
    for (const cost of [...family, ...step].flat())
      expect(Number.isInteger(cost * 1024)).toBe(true);
  });

  test('has at most as many rounds of a drill as a step of a plan may', () => {
    const step = (rounds: number) =>
      Step.safeParse({ drill: 'd', rounds, partners: 'keep' }).success;
    expect([MOST_STEP_ROUNDS, MOST_STEP_ROUNDS + 1].map(step)).toEqual([true, false]);
  });

  test('weighs a missing family above roles, these above a repeat, and that above the rest', () => {
    expect(weights.missing).toBeGreaterThan(4 * (weights.roles + weights.repeat));
    expect(weights.roles).toBeGreaterThan(4 * weights.repeat);
    const { missing, roles, repeat, family, evenly, cold, ...rest } = weights;
    for (const weight of Object.values(rest)) expect(weight).toBeLessThan(repeat / 4);
    expect(cold).toBeLessThan(weights.marker);
    expect([missing, roles, family, evenly].every((weight) => weight > 0)).toBe(true);
  });
});
