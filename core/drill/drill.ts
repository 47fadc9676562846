import * as z from 'zod/mini';
import { Place } from '../court/place.ts';
import { Id } from '../id.ts';
import { countsByPlayer, hasOwnSize, ruleMeanings } from './counting-rules.ts';

/** The four kinds of work that a block should never leave out for long. */
export const families = [
  'groundstrokes',
  'volleys',
  'overheads-and-lobs',
  'serves-and-returns',
] as const;
export type Family = (typeof families)[number];

export const strokes = ['groundstroke', 'volley', 'overhead', 'lob', 'serve', 'return'] as const;
export type Stroke = (typeof strokes)[number];

export const familyOf: Readonly<Record<Stroke, Family>> = {
  groundstroke: 'groundstrokes',
  volley: 'volleys',
  overhead: 'overheads-and-lobs',
  lob: 'overheads-and-lobs',
  serve: 'serves-and-returns',
  return: 'serves-and-returns',
};

/**
 * How a set is completed: `in-a-row` (a miss starts again), `in-total` (a miss does not),
 * `sequence` (a fixed series of shots), `on-target` (each ball that meets the target, for the
 * player who struck it).
 */
export const countingRules = ['in-a-row', 'in-total', 'sequence', 'on-target'] as const;
export type CountingRule = (typeof countingRules)[number];

/** Shots in a set: a rally longer than this is never counted as one set. */
export const LARGEST_SIZE = 50;

export const roleNumbers = [0, 1] as const;
export type RoleNumber = (typeof roleNumbers)[number];
const RoleNumber = z.literal(roleNumbers);

/** One shot of a drill's pattern. Without `from` it is struck where the role starts; without `to` it goes to the partner's start. */
export const Shot = z.object({
  role: RoleNumber,
  stroke: z.enum(strokes),
  from: z.optional(Place),
  to: z.optional(Place),
});
export type Shot = z.infer<typeof Shot>;

/**
 * Metres outside the outermost lines in which players still stand and markers lie: common practice,
 * no source.
 */
export const RUN_OFF = 3.3;

/** A flat marker on the court, and what it is there for. */
export const markerUses = ['target', 'recovery', 'start', 'lane'] as const;
export const Marker = z.object({ at: Place, use: z.enum(markerUses) });
export type Marker = z.infer<typeof Marker>;

/** An area on the ground to aim at: its middle, its width along the net and its length, in metres. */
export const Target = z.object({
  x: Place.shape.x,
  y: Place.shape.y,
  width: z.number().check(z.positive(), z.maximum(12)),
  length: z.number().check(z.positive(), z.maximum(12)),
});
export type Target = z.infer<typeof Target>;

const words = (longest: number) => z.string().check(z.trim(), z.maxLength(longest));
const named = (longest: number) => words(longest).check(z.minLength(1));

/**
 * What people read of a drill. A starter drill has none of its own: each language brings it. What
 * may be left out came later, and tells somebody who never saw the drill how it is run.
 */
export const DrillText = z.object({
  name: named(60),
  intention: words(240),
  cue: words(120),
  /** What the roles are called, in a word. */
  roles: z.tuple([words(40), words(40)]),
  /** What each role does; the same twice is said once, of both. */
  tasks: z.optional(z.tuple([words(160), words(160)])),
  /** Who feeds, and how it begins again after a miss. */
  feed: z.optional(words(240)),
  /** Which balls count for a set, and which do not. */
  counts: z.optional(words(240)),
});
export type DrillText = z.infer<typeof DrillText>;

const Size = z.number().check(z.int(), z.minimum(1), z.maximum(LARGEST_SIZE));
const Shots = z.array(Shot).check(z.minLength(1), z.maxLength(12));

/**
 * A drill for a pair. `shots` is its pattern in the order of play: a sequence plays it once a set,
 * every other rule repeats it.
 */
export const Drill = z
  .object({
    id: Id,
    family: z.enum(families),
    rule: z.enum(countingRules),
    size: Size,
    shots: Shots,
    roles: z.tuple([
      z.object({ start: Place, recover: Place }),
      z.object({ start: Place, recover: Place }),
    ]),
    markers: z.array(Marker).check(z.maxLength(12)),
    target: z.optional(Target),
    /** How many pairs one court takes at this drill. */
    perCourt: z.number().check(z.int(), z.minimum(1), z.maximum(4)),
    text: z.optional(DrillText),
  })
  .check(z.refine((drill) => sizeFits(drill.rule, drill.size, drill.shots.length)));
export type Drill = z.infer<typeof Drill>;

/** A sequence is as long as its shots; a ball on target is a set by itself. */
function sizeFits(rule: CountingRule, size: number, shots: number): boolean {
  const sizes = { set: size, pattern: shots, one: 1 };
  return size === sizes[ruleMeanings[rule].size];
}

/**
 * What a round keeps of its drill, so that a drill changed later never changes what was counted.
 */
export const Terms = z.object({
  drill: Id,
  name: z.optional(named(60)),
  family: z.enum(families),
  rule: z.enum(countingRules),
  size: Size,
  shots: z
    .array(z.object({ role: RoleNumber, stroke: z.enum(strokes) }))
    .check(z.minLength(1), z.maxLength(12)),
});
export type Terms = z.infer<typeof Terms>;

/** The terms of a round of this drill; `size` overrides the drill's own where the rule allows it. */
export function termsOf(drill: Drill, size = drill.size): Terms {
  return {
    drill: drill.id,
    ...(drill.text && { name: drill.text.name }),
    family: drill.family,
    rule: drill.rule,
    size: hasOwnSize(drill.rule) ? size : drill.size,
    shots: drill.shots.map(({ role, stroke }) => ({ role, stroke })),
  };
}

/** Whether the two roles of a pattern strike different strokes, so that each player should have both. */
export function rolesDiffer({ shots }: Pick<Terms, 'shots'>): boolean {
  const strokesOf = (role: RoleNumber) =>
    [...new Set(shots.filter((shot) => shot.role === role).map(({ stroke }) => stroke))]
      .toSorted()
      .join();
  return strokesOf(0) !== strokesOf(1);
}

/** Where a shot is struck and where it goes, in metres. */
export function flight(drill: Pick<Drill, 'roles'>, shot: Shot): { from: Place; to: Place } {
  return {
    from: shot.from ?? drill.roles[shot.role].start,
    to: shot.to ?? drill.roles[shot.role === 0 ? 1 : 0].start,
  };
}

/**
 * The area that a role's balls are for, in metres. A drill has one target: it belongs to the role
 * that plays to its side. Where balls on target are counted the partner has the like: the same one
 * mirrored in the net where several pairs play in straight lanes, turned about the middle of the
 * net where one pair has the whole court. By any other rule the partner has none.
 */
export function targetOf(
  { rule, target, perCourt }: Pick<Drill, 'rule' | 'target' | 'perCourt'>,
  role: RoleNumber,
): Target | undefined {
  if (!target) return undefined;
  const owner = target.y > 0 ? 0 : 1;
  if (role === owner) return target;
  if (!countsByPlayer(rule)) return undefined;
  return { ...target, x: perCourt === 1 ? 0 - target.x : target.x, y: -target.y };
}
