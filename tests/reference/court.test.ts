import { describe, expect, test } from 'vitest';
import { COURT, courtSizes, type LineKind, lines, toFeet } from '../../core/court/court.ts';
import { agree, check, checks, named } from './values.ts';

type Point = { x: number; y: number };
const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

/** Where a line of the near side, or the net, ends as it is drawn. */
function end(kind: LineKind) {
  const [[x, y]] = lines('full').find((line) => line.kind === kind && line.ends[0][1] <= 0)!.ends;
  return { x, y };
}
const opposite = ({ x, y }: Point) => ({ x: -x, y: -y });
const sideline = end('singles-sideline').x;
const corner = { x: sideline, y: end('baseline').y };
/** The middle of a line across the court. */
const middle = (kind: LineKind): Point => ({ x: 0, y: end(kind).y });
const [net, serviceLine, baseline] = [middle('net'), middle('service-line'), middle('baseline')];

/** What the checks call an element, taken from the court as it is drawn. */
const elements: Record<string, number> = {
  length: COURT.length,
  singles_width: COURT.singlesWidth,
  doubles_width: COURT.doublesWidth,
  service_line_from_net: COURT.serviceLine,
  net_height_centre: COURT.netHeightCentre,
  net_height_posts: COURT.netHeightPosts,
  baseline_to_net: apart(baseline, net),
  service_box_length: apart(serviceLine, net),
  service_box_width: apart(serviceLine, { ...serviceLine, x: sideline }),
  service_boxes_both_sides_length: apart(serviceLine, opposite(serviceLine)),
  corner_to_corner_singles: apart(corner, opposite(corner)),
  // From where the net meets one doubles sideline to the baseline corner of the other.
  net_to_baseline_corner_diagonal_doubles: Math.hypot(COURT.doublesWidth, COURT.length / 2),
};

describe('the full court (ITF Rule 1)', () => {
  const printed = ['length', 'singles_width', 'doubles_width', 'service_line', 'net_height'];
  const rule = printed.flatMap((id) => checks(`I.${id}`));

  test.each(rule.map((c) => [named(c), c] as const))('%s', (_, c) => {
    const metres = elements[c.inputs.element];
    agree(metres, c.expected.metres_exact);
    agree(toFeet(metres!), c.inputs.feet);
    // The rules round to the centimetre, the net's centre to the millimetre: half a centimetre holds both.
    expect(Math.abs(metres! - c.expected.metres_in_rules)).toBeLessThan(0.005);
  });

  const lengths = checks('I.derived.').filter((c) => c.expected.feet !== undefined);
  test.each(lengths.map((c) => [named(c), c.inputs.element, c] as const))(
    '%s: %s',
    (_, element, c) => {
      agree(elements[element], c.expected.metres_exact);
      agree(toFeet(elements[element]!), c.expected.feet);
    },
  );

  test.each([
    ['I.derived.singles_area_sqft', COURT.singlesWidth],
    ['I.derived.doubles_area_sqft', COURT.doublesWidth],
  ])('%s', (id, width) => {
    const { expected } = check(id);
    agree(COURT.length * width, expected.sq_m);
    agree(toFeet(COURT.length) * toFeet(width), expected.sq_ft);
  });

  test('I.tempo.servicebox: players on the two service lines are 12.8 m apart', () => {
    expect(check('I.tempo.servicebox').inputs.setting).toContain('12.8 m apart');
    expect(elements.service_boxes_both_sides_length).toBeCloseTo(12.8, 2);
  });
});

describe('the smaller courts are inside the ranges of the ITF', () => {
  test.each([
    ['I.junior.red', 'small'],
    ['I.junior.orange', 'middle'],
    ['I.junior.green', 'full'],
  ] as const)('%s: %s', (id, size) => {
    const court = courtSizes[size];
    const { length_ft, width_ft, net_centre_m, net_centre_in } = check(id).expected;
    const within = (value: number, [low, high]: [number, number], slack: number) => {
      expect(value).toBeGreaterThanOrEqual(low - slack);
      expect(value).toBeLessThanOrEqual(high + slack);
    };
    within(toFeet(court.length), length_ft, 1e-9);
    within(toFeet(court.singlesWidth), width_ft, 1e-9);
    // Inches and metres of the net are printed rounded to each other: half a millimetre, a hundredth of an inch.
    within(court.netHeightCentre, net_centre_m, 0.0005);
    within(toFeet(court.netHeightCentre) * 12, net_centre_in, 0.01);
    const length = Math.max(...lines(size).flatMap(({ ends }) => ends.map(([, y]) => y)));
    expect(length).toBe(court.length / 2);
  });
});
