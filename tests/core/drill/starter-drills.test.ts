import { describe, expect, test } from 'vitest';
import type { Place } from '../../../core/court/place.ts';
import { countingRules, Drill, families, familyOf, flight } from '../../../core/drill/drill.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import { check } from '../../reference/values.ts';

// The court's lengths come from the ITF rules, not from core/court.ts, which the drills are built on.
const metres = (element: string): number => check(`I.${element}`).expected.metres_exact;
const baseline = metres('derived.baseline_to_net');
const singles = metres('singles_width') / 2;
const doubles = metres('doubles_width') / 2;
const serviceLine = metres('service_line_from_net');
const boxWidth = metres('derived.service_box_width');

/** How far players stand outside the lines: common practice, no source. */
const RUN_OFF = 3;
/** The ids of the first version: whatever became of the drills, rounds in ledgers name them. */
const NAMED =
  'mini-rally cross-court-deuce cross-court-ad half-court-rally long-rally crosses-and-lines slice-and-drive third-ball-down-the-line deep-past-the-markers wide-past-the-markers volley-to-volley soft-volleys baseline-to-net volleys-left-and-right approach-pass-volley closing-in lob-and-overhead volley-then-overhead all-the-way-in back-to-the-lobber let-it-bounce lob-and-follow lobs-past-the-markers second-serve-deep-return serve-return-next wide-serve-four-balls serves-to-the-middle straight-serves serve-and-volley return-and-come-in'.split(
    ' ',
  );

/** Rounding of sums of decimals. */
const HAIR = 1e-9;

const each = test.each(starterDrills.map((drill) => [drill.id, drill] as const));
const eachWith = (perCourt: (pairs: number) => boolean) =>
  test.each(
    starterDrills
      .filter((drill) => perCourt(drill.perCourt))
      .map((drill) => [drill.id, drill] as const),
  );

const flights = (drill: Drill) => drill.shots.map((shot) => ({ ...shot, ...flight(drill, shot) }));
type Flight = ReturnType<typeof flights>[number];

const distance = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y);
const same = (a: Place, b: Place) => distance(a, b) < HAIR;
const mirrored = ({ x, y }: Place): Place => ({ x: -x, y });
const sideOf = (role: 0 | 1) => (role === 0 ? -1 : 1);

/** The flights from one strike to the next; a rule that repeats the pattern joins its end to its start. */
function joints(drill: Drill): [Flight, Flight][] {
  const all = flights(drill);
  const followers = drill.rule === 'sequence' ? all.slice(1) : [...all.slice(1), all[0]!];
  return followers.map((next, i) => [all[i]!, next]);
}

/** Whether two straight lines on the ground have a point in common. */
function meet(a: Pick<Flight, 'from' | 'to'>, b: Pick<Flight, 'from' | 'to'>): boolean {
  const turn = (p: Place, q: Place, r: Place) =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  const within = (p: Place, q: Place, r: Place) =>
    Math.min(p.x, q.x) <= r.x &&
    r.x <= Math.max(p.x, q.x) &&
    Math.min(p.y, q.y) <= r.y &&
    r.y <= Math.max(p.y, q.y);
  const turns = [
    turn(a.from, a.to, b.from),
    turn(a.from, a.to, b.to),
    turn(b.from, b.to, a.from),
    turn(b.from, b.to, a.to),
  ] as const;
  if (turns[0] !== turns[1] && turns[2] !== turns[3]) return true;
  return (
    (turns[0] === 0 && within(a.from, a.to, b.from)) ||
    (turns[1] === 0 && within(a.from, a.to, b.to)) ||
    (turns[2] === 0 && within(b.from, b.to, a.from)) ||
    (turns[3] === 0 && within(b.from, b.to, a.to))
  );
}

describe('the collection', () => {
  test('holds at least twenty-four drills, at least five in each family', () => {
    expect(starterDrills.length).toBeGreaterThanOrEqual(24);
    for (const family of families) {
      const count = starterDrills.filter((drill) => drill.family === family).length;
      expect(count, family).toBeGreaterThanOrEqual(5);
    }
  });

  test('uses all four counting rules', () => {
    expect(new Set(starterDrills.map((drill) => drill.rule))).toEqual(new Set(countingRules));
  });

  test('goes by family, in the order of the families', () => {
    const order = starterDrills.map((drill) => families.indexOf(drill.family));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test('names no drill twice, and every drill in plain kebab-case', () => {
    const ids = starterDrills.map((drill) => drill.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  test('has the drills that coaches missed', () => {
    const ids = starterDrills.map(({ id }) => id);
    for (const id of [
      ...['baseline-to-net-across', 'inside-out-forehand', 'short-ball-then-deep'],
      ...['half-volley-pick-up', 'target-volleys', 'target-overheads'],
      ...['wide-serve-deuce-side', 'drop-shot-and-chase'],
    ]) {
      expect(ids).toContain(id);
    }
  });

  test('still has every drill that a ledger may name', () => {
    const ids = starterDrills.map(({ id }) => id);
    for (const id of NAMED) expect(ids).toContain(id);
  });

  test('is mostly ten in a row where balls are counted in a row', () => {
    const sizes = starterDrills
      .filter((drill) => drill.rule === 'in-a-row')
      .map((drill) => drill.size);
    expect(sizes.filter((size) => size === 10).length).toBeGreaterThan(sizes.length / 2);
  });
});

describe('a drill', () => {
  each('%s is a drill by the schema, and none of it is lost in reading', (_, drill) => {
    expect(Drill.parse(drill)).toEqual(drill);
  });

  each('%s has no words of its own', (_, drill) => {
    expect(drill).not.toHaveProperty('text');
  });

  each('%s belongs to the family of one of its strokes', (_, drill) => {
    expect(drill.shots.map(({ stroke }) => familyOf[stroke])).toContain(drill.family);
  });

  each('%s gives both roles a shot, in turn', (_, drill) => {
    expect(new Set(drill.shots.map((shot) => shot.role)).size).toBe(2);
    for (const [shot, next] of joints(drill)) expect(next.role).not.toBe(shot.role);
  });

  test('that counts for the one who struck it asks the same stroke of both', () => {
    const counted = starterDrills.filter((drill) => drill.rule === 'on-target');
    for (const { id, shots } of counted) {
      expect(new Set(shots.map((shot) => shot.stroke)).size, id).toBe(1);
    }
  });

  each('%s has a return after each serve that is not caught, and nowhere else', (_, drill) => {
    for (const [shot, next] of joints(drill)) {
      if (next.stroke === 'return') expect(shot.stroke).toBe('serve');
      if (shot.stroke === 'serve' && drill.rule !== 'on-target') expect(next.stroke).toBe('return');
    }
  });
});

describe('a place', () => {
  each(
    'of a player in %s is on the player’s own side, in the usual run-off at most',
    (_, drill) => {
      for (const role of [0, 1] as const) {
        const { start, recover } = drill.roles[role];
        const strikes = flights(drill).filter((shot) => shot.role === role);
        for (const place of [start, recover, ...strikes.map((shot) => shot.from)]) {
          expect(Math.sign(place.y)).toBe(sideOf(role));
          expect(Math.abs(place.y)).toBeLessThanOrEqual(baseline + RUN_OFF);
          expect(Math.abs(place.x)).toBeLessThanOrEqual(doubles);
        }
      }
    },
  );

  each('where a ball goes in %s is inside the singles court across the net', (_, drill) => {
    for (const { role, to } of flights(drill)) {
      expect(Math.sign(to.y)).toBe(-sideOf(role));
      expect(Math.abs(to.y)).toBeLessThan(baseline);
      expect(Math.abs(to.x)).toBeLessThan(singles);
    }
  });

  each('that is marked in %s is where its use says', (_, drill) => {
    for (const { at, use } of drill.markers) {
      expect(Math.abs(at.x)).toBeLessThanOrEqual(singles + HAIR);
      expect(Math.abs(at.y)).toBeLessThanOrEqual(baseline + RUN_OFF);
      const [near, far] = drill.roles;
      if (use === 'start') expect([near.start, far.start].some((p) => same(p, at))).toBe(true);
      if (use === 'recovery') {
        expect([near.recover, far.recover].some((p) => same(p, at))).toBe(true);
      }
      if (use === 'target') expect(drill.target).toBeDefined();
      if (use === 'lane' && drill.perCourt === 2) expect(at.x).toBe(0);
      if (use === 'lane' && drill.perCourt === 3) expect(at.x).toBeCloseTo(doubles / 3, 9);
    }
  });
});

describe('a target', () => {
  const aimed = starterDrills.filter((drill) => drill.target);
  const eachAimed = test.each(aimed.map((drill) => [drill.id, drill, drill.target!] as const));
  const holds = (target: NonNullable<Drill['target']>, { x, y }: Place) =>
    Math.abs(x - target.x) <= target.width / 2 + HAIR &&
    Math.abs(y - target.y) <= target.length / 2 + HAIR;
  /** The target of the partner, as the drills are laid out. */
  const partners = (drill: Drill, { x, y, ...size }: NonNullable<Drill['target']>) => ({
    ...size,
    x: drill.perCourt === 1 ? -x : x,
    y: -y,
  });

  test('is there for every drill that counts balls on target', () => {
    const counted = starterDrills.filter((drill) => drill.rule === 'on-target');
    expect(counted.length).toBeGreaterThanOrEqual(2);
    for (const drill of counted) expect(drill.target, drill.id).toBeDefined();
  });

  eachAimed('of %s is inside the singles court, on one side of the net', (_, _drill, target) => {
    const { x, y, width, length } = target;
    expect(Math.abs(x) + width / 2).toBeLessThanOrEqual(singles + HAIR);
    expect(Math.abs(y) + length / 2).toBeLessThanOrEqual(baseline + HAIR);
    expect(Math.abs(y) - length / 2).toBeGreaterThan(0);
  });

  eachAimed('of %s is met by a ball of its pattern', (_, drill, target) => {
    expect(flights(drill).some(({ to }) => holds(target, to))).toBe(true);
  });

  eachAimed('of %s has its markers on its edge', (_, drill, target) => {
    const markers = drill.markers.filter(({ use }) => use === 'target');
    const targets = drill.rule === 'on-target' ? [target, partners(drill, target)] : [target];
    for (const one of targets) {
      const its = markers.filter(({ at }) => holds(one, at));
      expect(its.length).toBeGreaterThan(0);
      for (const { at } of its) {
        const inner = { ...one, width: one.width - 0.01, length: one.length - 0.01 };
        expect(holds(inner, at)).toBe(false);
      }
    }
    for (const { at } of markers) expect(targets.some((one) => holds(one, at))).toBe(true);
  });

  const eachCounted = test.each(
    aimed
      .filter((drill) => drill.rule === 'on-target')
      .map((drill) => [drill.id, drill, drill.target!] as const),
  );

  eachCounted('of %s is there for both players, and both can meet theirs', (_, drill, target) => {
    for (const { role, to } of flights(drill)) {
      expect(holds(role === 0 ? target : partners(drill, target), to)).toBe(true);
    }
  });
});

describe('the ball', () => {
  each('of %s is next struck where it comes to', (_, drill) => {
    for (const [shot, next] of joints(drill)) {
      if (next.stroke === 'serve') continue; // a new ball
      if (same(shot.to, next.from)) {
        expect(['volley', 'overhead', 'lob']).toContain(next.stroke);
        continue;
      }
      expect(next.stroke, 'a volley is struck before the bounce').not.toBe('volley');
      const [dx, dy] = [shot.to.x - shot.from.x, shot.to.y - shot.from.y];
      const [ex, ey] = [next.from.x - shot.to.x, next.from.y - shot.to.y];
      const cosine =
        (dx * ex + dy * ey) / (distance(shot.from, shot.to) * distance(shot.to, next.from));
      expect(cosine, 'it goes straight on after the bounce').toBeGreaterThan(0.999);
      const travelled = distance(shot.to, next.from);
      // A half-volley is struck within a step of the bounce.
      expect(travelled).toBeGreaterThan(0.5);
      // A serve is met a step behind the baseline, up to 8 m beyond its bounce: common practice.
      expect(travelled).toBeLessThan(shot.stroke === 'serve' ? 8.5 : 4);
    }
  });

  const serves = starterDrills
    .flatMap((drill) => flights(drill).map((shot) => ({ drill, shot })))
    .filter(({ shot }) => shot.stroke === 'serve');

  test('of a serve starts behind the baseline and bounces in a service box', () => {
    expect(serves.length).toBeGreaterThan(5);
    for (const { drill, shot } of serves) {
      expect(Math.abs(shot.from.y), drill.id).toBeGreaterThan(baseline);
      expect(Math.abs(shot.from.x), drill.id).toBeLessThan(singles);
      expect(Math.abs(shot.to.y), drill.id).toBeLessThan(serviceLine);
      expect(Math.abs(shot.to.x), drill.id).toBeLessThan(boxWidth);
    }
  });

  test('of a serve goes to the box diagonally opposite, unless it stays in a lane', () => {
    for (const { drill, shot } of serves) {
      const crosses = shot.from.x * shot.to.x < 0;
      expect(crosses, drill.id).toBe(drill.perCourt === 1);
    }
  });

  const hard = starterDrills.flatMap((drill) =>
    flights(drill).flatMap((shot, i, all) => {
      if (shot.stroke !== 'serve' && shot.stroke !== 'overhead') return [];
      const partner = drill.roles[shot.role === 0 ? 1 : 0];
      const next = all[i + 1];
      const stands = next ? [next.from] : [partner.start, partner.recover];
      if (i === 0) stands.push(partner.start);
      return [{ drill, to: shot.to, stands }];
    }),
  );

  test('of a serve or an overhead never comes down on the partner', () => {
    expect(hard.length).toBeGreaterThan(10);
    for (const { drill, to, stands } of hard) {
      for (const place of stands) expect(distance(to, place), drill.id).toBeGreaterThan(2);
    }
  });
});

describe('an overhead', () => {
  const struck = starterDrills.filter(({ shots }) =>
    shots.some(({ stroke }) => stroke === 'overhead'),
  );

  test('is struck by one pair a court alone: who looks up at a lob does not see the next lane', () => {
    expect(struck.length).toBeGreaterThan(5);
    for (const { id, perCourt } of struck) expect(perCourt, id).toBe(1);
  });

  test('is struck where its striker need not run far back', () => {
    for (const drill of struck) {
      for (const [shot, next] of joints(drill)) {
        if (next.stroke !== 'overhead' || shot.stroke !== 'lob') continue;
        const before = flights(drill).findLast(
          (one, at) => one.role === next.role && at < flights(drill).indexOf(next),
        );
        const stood = before?.from ?? drill.roles[next.role].start;
        // Common practice, no source: three steps.
        expect(Math.abs(next.from.y) - Math.abs(stood.y), drill.id).toBeLessThan(2.8);
      }
    }
  });
});

describe('a serve drill', () => {
  test('has a wide serve from either side, and serves to the middle of both boxes', () => {
    const wide = starterDrills.filter(({ id }) => id.startsWith('wide-serve'));
    const sides = wide.map((drill) => Math.sign(drill.roles[0].start.x));
    expect(new Set(sides)).toEqual(new Set([-1, 1]));
    const middle = starterDrills.find(({ id }) => id === 'serves-to-the-middle')!;
    expect(middle.target!.x).toBeCloseTo(0, 9);
  });
});

describe('a lane', () => {
  const eachShared = eachWith((pairs) => pairs > 1);
  /** Where the next lane has what is here: two mirror each other, three lie a third apart. */
  const beside = (drill: Drill, { x, y }: Place): Place =>
    drill.perCourt === 2 ? { x: -x, y } : { x: x - (2 * doubles) / 3, y };

  eachShared('of %s stays on its own part of the court', (_, drill) => {
    const places = [
      ...flights(drill).flatMap(({ from, to }) => [from, to]),
      ...drill.roles.flatMap(({ start, recover }) => [start, recover]),
    ];
    for (const { x } of places) {
      if (drill.perCourt === 2) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(singles);
      } else {
        expect(drill.perCourt).toBe(3);
        expect(Math.abs(x)).toBeLessThan(doubles / 3);
      }
    }
  });

  eachShared('of %s is never crossed by a ball of the next lane', (_, drill) => {
    for (const mine of flights(drill)) {
      for (const { from, to } of flights(drill)) {
        expect(meet(mine, { from: beside(drill, from), to: beside(drill, to) })).toBe(false);
      }
    }
  });

  eachShared('of %s leaves room for the swing of the next', (_, drill) => {
    for (const { from, stroke } of flights(drill)) {
      // A racket at arm's length reaches about 1.3 m from the shoulder; two of them and a step, from memory.
      const room = stroke === 'serve' ? 3.5 : 3.2;
      expect(distance(from, beside(drill, from))).toBeGreaterThan(room);
    }
  });

  eachWith((pairs) => pairs > 2)('of %s is used at mini size only', (_, drill) => {
    for (const { to, from } of flights(drill)) {
      expect(Math.abs(to.y)).toBeLessThan(serviceLine);
      expect(Math.abs(from.y)).toBeLessThan(serviceLine + 1);
    }
  });

  eachWith((pairs) => pairs === 1)('would be crossed if two pairs played %s', (_, drill) => {
    const all = flights(drill);
    const crossed = all.some((mine) =>
      all.some((other) => meet(mine, { from: mirrored(other.from), to: mirrored(other.to) })),
    );
    expect(crossed).toBe(true);
  });
});
