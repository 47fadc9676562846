import { COURT } from '../court/court.ts';
import type { Place } from '../court/place.ts';
import type { Drill, Marker } from './drill.ts';

/**
 * The drills that come with the program, all of them cooperative and of one live ball: common
 * practice, no source; the distances are ours. Their words stand apart, one file a language.
 *
 * How they are laid out, so that a card can draw them:
 *
 * - The ball of a groundstroke, lob, return or serve is drawn to its bounce, and the next striker
 *   stands beyond that; a ball taken in the air is drawn to the striker.
 * - Where a court takes more than one pair, what stands here is the first lane, on the side of
 *   x > 0. With two pairs the second lane mirrors it (−x). With three, the lanes are a third of the
 *   doubles court each, and what stands here is the middle one.
 * - In an on-target drill the target on the far side is that of role 0. Role 1's is the same one
 *   mirrored in the net (−y) where lanes are straight, turned about the middle of the net (−x, −y)
 *   where one pair has the whole court.
 * - Nobody stands where a ball comes down hard: a serve or an overhead bounces well before the
 *   partner. Whoever looks up at a lob does not see the next lane: where overheads are struck, one
 *   pair has the whole court, down its middle.
 */

const baseline = COURT.length / 2;
const sideline = COURT.singlesWidth / 2;
const serviceLine = COURT.serviceLine;
const third = COURT.doublesWidth / 3;

/** Where players wait between two balls from the baseline: half a metre behind it. */
const waiting = baseline + 0.5;
/** Where a lob is played from: a metre behind the baseline. */
const lobbing = baseline + 1;
/** Where a server stands: clear of the line. */
const serving = baseline + 0.2;
/** From the net to a net player who waits. */
const net = 3.2;

const at = (x: number, y: number): Place => ({ x, y });

const marks = (use: Marker['use'], ...places: Place[]): Marker[] =>
  places.map((place) => ({ at: place, use }));

/** The rectangle between two opposite corners. */
const area = (a: Place, b: Place): NonNullable<Drill['target']> => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
  width: Math.abs(a.x - b.x),
  length: Math.abs(a.y - b.y),
});

const drills = {
  'mini-rally': {
    family: 'groundstrokes',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(0, 4.2) },
      { role: 1, stroke: 'groundstroke', to: at(0, -4.2) },
    ],
    roles: [
      { start: at(0, -6.9), recover: at(0, -6.9) },
      { start: at(0, 6.9), recover: at(0, 6.9) },
    ],
    markers: marks('lane', at(third / 2, -serviceLine), at(third / 2, serviceLine)),
    // Of four a pair would have 2.74 m, too little for eight who swing.
    perCourt: 3,
  },

  'cross-court-deuce': {
    family: 'groundstrokes',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(-2.6, 9.6) },
      { role: 1, stroke: 'groundstroke', to: at(2.6, -9.6) },
    ],
    roles: [
      { start: at(3.4, -12.6), recover: at(0.6, -waiting) },
      { start: at(-3.4, 12.6), recover: at(-0.6, waiting) },
    ],
    markers: marks('recovery', at(0.6, -waiting), at(-0.6, waiting)),
    perCourt: 1,
  },

  'cross-court-ad': {
    family: 'groundstrokes',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2.6, 9.6) },
      { role: 1, stroke: 'groundstroke', to: at(-2.6, -9.6) },
    ],
    roles: [
      { start: at(-3.4, -12.6), recover: at(-0.6, -waiting) },
      { start: at(3.4, 12.6), recover: at(0.6, waiting) },
    ],
    markers: marks('recovery', at(-0.6, -waiting), at(0.6, waiting)),
    perCourt: 1,
  },

  'half-court-rally': {
    family: 'groundstrokes',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2, 9.4) },
      { role: 1, stroke: 'groundstroke', to: at(2, -9.4) },
    ],
    roles: [
      { start: at(2, -12.6), recover: at(2, -waiting) },
      { start: at(2, 12.6), recover: at(2, waiting) },
    ],
    markers: marks('lane', at(0, -9), at(0, 9)),
    perCourt: 2,
  },

  'long-rally': {
    family: 'groundstrokes',
    rule: 'in-a-row',
    // About four sets in a round are wanted: twenty in a row left most juniors with none.
    size: 12,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(0, 9.2) },
      { role: 1, stroke: 'groundstroke', to: at(0, -9.2) },
    ],
    roles: [
      { start: at(0, -12.8), recover: at(0, -waiting) },
      { start: at(0, 12.8), recover: at(0, waiting) },
    ],
    markers: marks('lane', at(-2, -9), at(2, -9), at(-2, 9), at(2, 9)),
    perCourt: 1,
  },

  'crosses-and-lines': {
    family: 'groundstrokes',
    rule: 'in-a-row',
    // Once round the pattern: eight were long for the youngest.
    size: 4,
    shots: [
      { role: 0, stroke: 'groundstroke', from: at(3.2, -12.6), to: at(-2.6, 9.6) },
      { role: 1, stroke: 'groundstroke', from: at(-3.4, 12.6), to: at(-3.2, -9.4) },
      { role: 0, stroke: 'groundstroke', from: at(-3.2, -12.6), to: at(2.6, 9.6) },
      { role: 1, stroke: 'groundstroke', from: at(3.4, 12.6), to: at(3.2, -9.4) },
    ],
    roles: [
      { start: at(0, -waiting), recover: at(0, -waiting) },
      { start: at(0, waiting), recover: at(0, waiting) },
    ],
    markers: marks('recovery', at(0, -waiting), at(0, waiting)),
    perCourt: 1,
  },

  'slice-and-drive': {
    family: 'groundstrokes',
    rule: 'in-total',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2, 8.6) },
      { role: 1, stroke: 'groundstroke', to: at(2, -9.4) },
    ],
    roles: [
      { start: at(2, -waiting), recover: at(2, -waiting) },
      { start: at(2, waiting), recover: at(2, waiting) },
    ],
    markers: marks('recovery', at(2, -waiting), at(2, waiting)),
    perCourt: 2,
  },

  'third-ball-down-the-line': {
    family: 'groundstrokes',
    rule: 'sequence',
    size: 4,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(-2.6, 9.6) },
      { role: 1, stroke: 'groundstroke', to: at(2.6, -9.6) },
      { role: 0, stroke: 'groundstroke', to: at(3.3, 9.8) },
      { role: 1, stroke: 'groundstroke', from: at(3.3, 12.6), to: at(-2.6, -9.6) },
    ],
    roles: [
      { start: at(3.4, -12.6), recover: at(0, -waiting) },
      { start: at(-3.4, 12.6), recover: at(0, waiting) },
    ],
    markers: marks('target', at(sideline - 1.5, 9)),
    target: area(at(sideline - 1.5, 9), at(sideline, baseline)),
    perCourt: 1,
  },

  'deep-past-the-markers': {
    family: 'groundstrokes',
    rule: 'on-target',
    size: 1,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2, 10.4) },
      { role: 1, stroke: 'groundstroke', to: at(2, -10.4) },
    ],
    roles: [
      { start: at(2, -13), recover: at(2, -waiting) },
      { start: at(2, 13), recover: at(2, waiting) },
    ],
    markers: marks('target', at(0, -9.4), at(sideline, -9.4), at(0, 9.4), at(sideline, 9.4)),
    target: area(at(0, 9.4), at(sideline, baseline)),
    perCourt: 2,
  },

  'wide-past-the-markers': {
    family: 'groundstrokes',
    rule: 'on-target',
    size: 1,
    shots: [
      { role: 0, stroke: 'groundstroke', from: at(4.2, -12.4), to: at(-3.05, 9) },
      { role: 1, stroke: 'groundstroke', from: at(-4.2, 12.4), to: at(3.05, -9) },
    ],
    roles: [
      { start: at(0.6, -waiting), recover: at(0.6, -waiting) },
      { start: at(-0.6, waiting), recover: at(-0.6, waiting) },
    ],
    markers: marks(
      'target',
      at(sideline - 1.5, -serviceLine),
      at(sideline - 1.5, -baseline),
      at(1.5 - sideline, serviceLine),
      at(1.5 - sideline, baseline),
    ),
    target: area(at(-sideline, serviceLine), at(1.5 - sideline, baseline)),
    perCourt: 1,
  },

  'inside-out-forehand': {
    family: 'groundstrokes',
    rule: 'in-total',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', from: at(-3, -12.4), to: at(2.23, 9.22) },
      { role: 1, stroke: 'groundstroke', from: at(3, 12.4), to: at(-2.23, -9.22) },
    ],
    roles: [
      { start: at(-0.8, -waiting), recover: at(-0.8, -waiting) },
      { start: at(0.8, waiting), recover: at(0.8, waiting) },
    ],
    markers: marks('recovery', at(-0.8, -waiting), at(0.8, waiting)),
    perCourt: 1,
  },

  'short-ball-then-deep': {
    family: 'groundstrokes',
    rule: 'sequence',
    size: 4,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2, 4.8) },
      { role: 1, stroke: 'groundstroke', from: at(2, 7.6), to: at(2, -10) },
      { role: 0, stroke: 'groundstroke', from: at(2, -13), to: at(2, 9.8) },
      { role: 1, stroke: 'groundstroke', from: at(2, 12.8), to: at(2, -9.6) },
    ],
    roles: [
      { start: at(2, -waiting), recover: at(2, -waiting) },
      { start: at(2, waiting), recover: at(2, waiting) },
    ],
    markers: marks('lane', at(0, -9), at(0, 9)),
    perCourt: 2,
  },

  'drop-shot-and-chase': {
    family: 'groundstrokes',
    rule: 'sequence',
    size: 3,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2, 7) },
      { role: 1, stroke: 'groundstroke', to: at(2, -2.4) },
      { role: 0, stroke: 'groundstroke', from: at(2, -3.8), to: at(2, 9.4) },
    ],
    roles: [
      // Inside the baseline: a drop shot of juniors leaves no time for more than these seven metres.
      { start: at(2, -10.4), recover: at(2, -10.4) },
      { start: at(2, 9.6), recover: at(2, 9.6) },
    ],
    markers: marks('start', at(2, -10.4), at(2, 9.6)),
    perCourt: 2,
  },

  'volley-to-volley': {
    family: 'volleys',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'volley' },
      { role: 1, stroke: 'volley' },
    ],
    roles: [
      { start: at(2, -net), recover: at(2, -net) },
      { start: at(2, net), recover: at(2, net) },
    ],
    markers: marks('recovery', at(2, -net), at(2, net)),
    perCourt: 2,
  },

  'soft-volleys': {
    family: 'volleys',
    rule: 'in-total',
    size: 20,
    shots: [
      { role: 0, stroke: 'volley' },
      { role: 1, stroke: 'volley' },
    ],
    roles: [
      { start: at(0, -2.4), recover: at(0, -2.4) },
      { start: at(0, 2.4), recover: at(0, 2.4) },
    ],
    markers: marks('recovery', at(0, -2.4), at(0, 2.4)),
    perCourt: 3,
  },

  'baseline-to-net': {
    family: 'volleys',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke' },
      { role: 1, stroke: 'volley', to: at(2, -9.2) },
    ],
    roles: [
      { start: at(2, -12.6), recover: at(2, -waiting) },
      { start: at(2, net), recover: at(2, net) },
    ],
    markers: marks('recovery', at(2, net)),
    perCourt: 2,
  },

  'volleys-left-and-right': {
    family: 'volleys',
    rule: 'in-total',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke', from: at(3.3, -12.4), to: at(0.8, net) },
      { role: 1, stroke: 'volley', from: at(0.8, net), to: at(-2.4, -9) },
      { role: 0, stroke: 'groundstroke', from: at(-3.3, -12.4), to: at(-0.8, net) },
      { role: 1, stroke: 'volley', from: at(-0.8, net), to: at(2.4, -9) },
    ],
    roles: [
      { start: at(0, -waiting), recover: at(0, -waiting) },
      { start: at(0, net), recover: at(0, net) },
    ],
    markers: marks('recovery', at(0, -waiting), at(0, net)),
    perCourt: 1,
  },

  'approach-pass-volley': {
    family: 'volleys',
    rule: 'sequence',
    size: 3,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2.8, 9.8) },
      { role: 1, stroke: 'groundstroke', from: at(2.9, 12.6), to: at(1.2, -net) },
      { role: 0, stroke: 'volley', from: at(1.2, -net), to: at(-2.9, 7.5) },
    ],
    roles: [
      { start: at(2, -8.2), recover: at(1.2, -net) },
      { start: at(0, waiting), recover: at(0, waiting) },
    ],
    markers: [...marks('start', at(2, -8.2)), ...marks('recovery', at(1.2, -net))],
    perCourt: 1,
  },

  'closing-in': {
    family: 'volleys',
    rule: 'sequence',
    size: 6,
    shots: [
      { role: 0, stroke: 'volley', to: at(2, serviceLine) },
      { role: 1, stroke: 'volley', to: at(2, -5.2) },
      { role: 0, stroke: 'volley', from: at(2, -5.2), to: at(2, 5.2) },
      { role: 1, stroke: 'volley', from: at(2, 5.2), to: at(2, -4) },
      { role: 0, stroke: 'volley', from: at(2, -4), to: at(2, 4) },
      { role: 1, stroke: 'volley', from: at(2, 4), to: at(2, -4) },
    ],
    roles: [
      { start: at(2, -serviceLine), recover: at(2, -4) },
      { start: at(2, serviceLine), recover: at(2, 4) },
    ],
    markers: [
      ...marks('start', at(2, -serviceLine), at(2, serviceLine)),
      ...marks('recovery', at(2, -4), at(2, 4)),
    ],
    perCourt: 2,
  },

  'baseline-to-net-across': {
    family: 'volleys',
    rule: 'in-a-row',
    size: 10,
    shots: [
      { role: 0, stroke: 'groundstroke' },
      { role: 1, stroke: 'volley', to: at(2.28, -9.4) },
    ],
    roles: [
      { start: at(3.2, -12.4), recover: at(1, -waiting) },
      { start: at(-1.6, net), recover: at(-1.6, net) },
    ],
    markers: marks('recovery', at(-1.6, net)),
    perCourt: 1,
  },

  'half-volley-pick-up': {
    family: 'volleys',
    rule: 'in-total',
    size: 10,
    shots: [
      { role: 0, stroke: 'volley', to: at(2, 5.9) },
      { role: 1, stroke: 'groundstroke' },
    ],
    roles: [
      { start: at(2, -net), recover: at(2, -net) },
      { start: at(2, 6.6), recover: at(2, 6.6) },
    ],
    markers: [...marks('recovery', at(2, -net)), ...marks('start', at(2, 6.6))],
    perCourt: 2,
  },

  'target-volleys': {
    family: 'volleys',
    rule: 'sequence',
    size: 2,
    shots: [
      { role: 0, stroke: 'groundstroke' },
      { role: 1, stroke: 'volley', to: at(2, -9.6) },
    ],
    roles: [
      { start: at(2, -12.6), recover: at(2, -waiting) },
      { start: at(2, net), recover: at(2, net) },
    ],
    markers: [
      ...marks('recovery', at(2, net)),
      ...marks('target', at(0, -8.6), at(sideline, -8.6)),
    ],
    target: area(at(0, -8.6), at(sideline, -baseline)),
    perCourt: 2,
  },

  'lob-and-overhead': {
    family: 'overheads-and-lobs',
    rule: 'sequence',
    size: 2,
    shots: [
      { role: 0, stroke: 'lob', to: at(0, 5.2) },
      { role: 1, stroke: 'overhead', from: at(0, 5.2), to: at(0, -9.6) },
    ],
    roles: [
      { start: at(0, -lobbing), recover: at(0, -lobbing) },
      { start: at(0, net), recover: at(0, net) },
    ],
    markers: [...marks('recovery', at(0, net)), ...marks('start', at(0, -lobbing))],
    perCourt: 1,
  },

  'volley-then-overhead': {
    family: 'overheads-and-lobs',
    rule: 'sequence',
    size: 4,
    shots: [
      { role: 0, stroke: 'groundstroke' },
      { role: 1, stroke: 'volley', to: at(0, -9.2) },
      { role: 0, stroke: 'lob', to: at(0, 5.2) },
      { role: 1, stroke: 'overhead', from: at(0, 5.2), to: at(0, -9.4) },
    ],
    roles: [
      { start: at(0, -waiting), recover: at(0, -waiting) },
      { start: at(0, net), recover: at(0, net) },
    ],
    markers: marks('recovery', at(0, net)),
    perCourt: 1,
  },

  'all-the-way-in': {
    family: 'overheads-and-lobs',
    rule: 'sequence',
    size: 5,
    shots: [
      { role: 0, stroke: 'groundstroke', to: at(2.8, 9.8) },
      { role: 1, stroke: 'groundstroke', from: at(2.9, 12.6), to: at(1.2, -4.2) },
      { role: 0, stroke: 'volley', from: at(1.2, -4.2), to: at(-2.4, 9.2) },
      { role: 1, stroke: 'lob', from: at(-3.2, 12.2), to: at(-0.6, -5.4) },
      { role: 0, stroke: 'overhead', from: at(-0.6, -5.4), to: at(2.6, 8.8) },
    ],
    roles: [
      { start: at(2, -8.2), recover: at(0, -net) },
      { start: at(0, waiting), recover: at(0, waiting) },
    ],
    markers: [...marks('start', at(2, -8.2)), ...marks('recovery', at(0, -net))],
    perCourt: 1,
  },

  'back-to-the-lobber': {
    family: 'overheads-and-lobs',
    rule: 'in-a-row',
    // Two lobs and two overheads: six were long for the youngest.
    size: 4,
    shots: [
      { role: 0, stroke: 'lob', to: at(-1.8, 5.6) },
      { role: 1, stroke: 'overhead', from: at(-1.8, 5.6), to: at(2.4, -9.8) },
    ],
    roles: [
      { start: at(3.2, -lobbing), recover: at(3.2, -lobbing) },
      { start: at(-1.2, net), recover: at(-1.2, net) },
    ],
    markers: [...marks('target', at(sideline - 2.5, -8.6)), ...marks('recovery', at(-1.2, net))],
    target: area(at(sideline - 2.5, -8.6), at(sideline, -baseline)),
    perCourt: 1,
  },

  'let-it-bounce': {
    family: 'overheads-and-lobs',
    rule: 'in-total',
    size: 10,
    shots: [
      { role: 0, stroke: 'lob', to: at(0, 6.8) },
      { role: 1, stroke: 'overhead', from: at(0, 9.6), to: at(0, -9.4) },
    ],
    roles: [
      { start: at(0, -lobbing), recover: at(0, -lobbing) },
      { start: at(0, 8), recover: at(0, 8) },
    ],
    markers: marks('recovery', at(0, 8)),
    perCourt: 1,
  },

  'lob-and-follow': {
    family: 'overheads-and-lobs',
    rule: 'sequence',
    size: 3,
    shots: [
      { role: 0, stroke: 'lob', to: at(-2.4, 9.6) },
      { role: 1, stroke: 'lob', from: at(-3, 12.4), to: at(0.2, -6.2) },
      { role: 0, stroke: 'overhead', from: at(0.2, -6.2), to: at(2.6, 8.8) },
    ],
    roles: [
      { start: at(2.6, -12.6), recover: at(0, -4.2) },
      { start: at(-1, net), recover: at(0, waiting) },
    ],
    markers: [...marks('start', at(-1, net)), ...marks('recovery', at(0, -4.2))],
    perCourt: 1,
  },

  'lobs-past-the-markers': {
    family: 'overheads-and-lobs',
    rule: 'on-target',
    size: 1,
    shots: [
      { role: 0, stroke: 'lob', to: at(2, 9.8) },
      { role: 1, stroke: 'lob', to: at(2, -9.8) },
    ],
    roles: [
      { start: at(2, -13.4), recover: at(2, -lobbing) },
      { start: at(2, 13.4), recover: at(2, lobbing) },
    ],
    markers: marks('target', at(0, -8.6), at(sideline, -8.6), at(0, 8.6), at(sideline, 8.6)),
    target: area(at(0, 8.6), at(sideline, baseline)),
    perCourt: 2,
  },

  'target-overheads': {
    family: 'overheads-and-lobs',
    rule: 'sequence',
    size: 2,
    shots: [
      { role: 0, stroke: 'lob', to: at(0.4, 5.4) },
      { role: 1, stroke: 'overhead', from: at(0.4, 5.4), to: at(-2.6, -9.6) },
    ],
    // The target lies in the corner where nobody stands.
    roles: [
      { start: at(3, -lobbing), recover: at(3, -lobbing) },
      { start: at(0, net), recover: at(0, net) },
    ],
    markers: [...marks('recovery', at(0, net)), ...marks('target', at(2.5 - sideline, -8))],
    target: area(at(-sideline, -8), at(2.5 - sideline, -baseline)),
    perCourt: 1,
  },

  'second-serve-deep-return': {
    family: 'serves-and-returns',
    rule: 'in-a-row',
    size: 6,
    shots: [
      { role: 0, stroke: 'serve', to: at(-2.2, 5) },
      { role: 1, stroke: 'return', to: at(0.4, -9.4) },
    ],
    roles: [
      { start: at(0.8, -serving), recover: at(0, -waiting) },
      { start: at(-3.5, 12.4), recover: at(0, waiting) },
    ],
    markers: marks('target', at(-2, -7.4), at(2, -7.4)),
    target: area(at(-2, -7.4), at(2, -baseline)),
    perCourt: 1,
  },

  'serve-return-next': {
    family: 'serves-and-returns',
    rule: 'sequence',
    size: 3,
    shots: [
      { role: 0, stroke: 'serve', to: at(-2.4, 5.4) },
      { role: 1, stroke: 'return', to: at(1.6, -9) },
      { role: 0, stroke: 'groundstroke', from: at(2.4, -12.2), to: at(2.9, 9.6) },
    ],
    roles: [
      { start: at(0.8, -serving), recover: at(0, -waiting) },
      { start: at(-3.7, 12.6), recover: at(0, waiting) },
    ],
    markers: marks('recovery', at(0, -waiting), at(0, waiting)),
    perCourt: 1,
  },

  'wide-serve-four-balls': {
    family: 'serves-and-returns',
    rule: 'sequence',
    size: 4,
    shots: [
      { role: 0, stroke: 'serve', to: at(3, 5.2) },
      { role: 1, stroke: 'return', from: at(4.8, 12.6), to: at(-2, -9) },
      { role: 0, stroke: 'groundstroke', from: at(-3, -12.2), to: at(-2.9, 9.4) },
      { role: 1, stroke: 'groundstroke', from: at(-2.9, 12.4), to: at(2.4, -9.4) },
    ],
    roles: [
      { start: at(-1.2, -serving), recover: at(0, -waiting) },
      { start: at(3.8, 12.6), recover: at(0, waiting) },
    ],
    markers: marks('target', at(sideline - 1.5, serviceLine)),
    target: area(at(sideline - 1.5, serviceLine - 3), at(sideline, serviceLine)),
    perCourt: 1,
  },

  'serves-to-the-middle': {
    family: 'serves-and-returns',
    rule: 'on-target',
    size: 1,
    shots: [
      { role: 0, stroke: 'serve', to: at(-0.7, 5.4) },
      { role: 1, stroke: 'serve', to: at(0.7, -5.4) },
    ],
    roles: [
      { start: at(0.6, -serving), recover: at(0.6, -serving) },
      { start: at(-0.6, serving), recover: at(-0.6, serving) },
    ],
    // On both sides of the T: it is served from the deuce side and from the ad side.
    markers: marks(
      'target',
      ...[-serviceLine, serviceLine].flatMap((y) => [at(-1.2, y), at(1.2, y)]),
    ),
    target: area(at(-1.2, serviceLine - 2), at(1.2, serviceLine)),
    perCourt: 1,
  },

  'straight-serves': {
    family: 'serves-and-returns',
    rule: 'in-total',
    size: 10,
    shots: [
      { role: 0, stroke: 'serve', to: at(2, 5.2) },
      { role: 1, stroke: 'return', to: at(2, -8.8) },
    ],
    roles: [
      { start: at(2, -serving), recover: at(2, -waiting) },
      { start: at(2, 12.4), recover: at(2, 12.4) },
    ],
    markers: marks('lane', at(0, -9), at(0, 9)),
    perCourt: 2,
  },

  'serve-and-volley': {
    family: 'serves-and-returns',
    rule: 'sequence',
    size: 3,
    shots: [
      { role: 0, stroke: 'serve', to: at(-2.2, 5.2) },
      { role: 1, stroke: 'return', to: at(0.6, -5.6) },
      { role: 0, stroke: 'volley', from: at(0.6, -5.6), to: at(2.6, 8.4) },
    ],
    roles: [
      { start: at(0.8, -serving), recover: at(0.6, -serviceLine) },
      { start: at(-3.5, 12.4), recover: at(0, waiting) },
    ],
    markers: marks('recovery', at(0.6, -serviceLine)),
    perCourt: 1,
  },

  'return-and-come-in': {
    family: 'serves-and-returns',
    rule: 'sequence',
    size: 4,
    shots: [
      { role: 0, stroke: 'serve', to: at(2.2, 5) },
      { role: 1, stroke: 'return', from: at(3.3, 11.2), to: at(3, -9.6) },
      { role: 0, stroke: 'groundstroke', from: at(3, -12.4), to: at(1.4, net) },
      { role: 1, stroke: 'volley', from: at(1.4, net), to: at(-2.6, -7.6) },
    ],
    roles: [
      { start: at(-0.8, -serving), recover: at(0, -waiting) },
      { start: at(3.3, 12), recover: at(1.4, net) },
    ],
    markers: marks('recovery', at(1.4, net)),
    perCourt: 1,
  },

  'wide-serve-deuce-side': {
    family: 'serves-and-returns',
    rule: 'sequence',
    size: 3,
    shots: [
      { role: 0, stroke: 'serve', to: at(-3, 5.2) },
      { role: 1, stroke: 'return', from: at(-4.8, 12.6), to: at(2, -9) },
      { role: 0, stroke: 'groundstroke', from: at(3, -12.2), to: at(2.9, 9.4) },
    ],
    roles: [
      { start: at(1.2, -serving), recover: at(0, -waiting) },
      { start: at(-3.8, 12.6), recover: at(0, waiting) },
    ],
    markers: marks('target', at(1.5 - sideline, serviceLine)),
    target: area(at(-sideline, serviceLine - 3), at(1.5 - sideline, serviceLine)),
    perCourt: 1,
  },
} satisfies Record<string, Omit<Drill, 'id'>>;

export type StarterDrillId = keyof typeof drills;

/** By family, in the order of `families`. */
export const starterDrills: readonly Drill[] = Object.entries<Omit<Drill, 'id'>>(drills).map(
  ([id, drill]) => ({ id, ...drill }),
);
