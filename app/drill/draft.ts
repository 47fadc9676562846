import { COURT, type Side } from '../../core/court/court.ts';
import {
  type CountingRule,
  type Drill,
  type DrillText,
  type Family,
  type Marker,
  type RoleNumber,
  roleNumbers,
  type Shot,
  type Stroke,
  type Target,
} from '../../core/drill/drill.ts';
import { type Metres, placeOf, type Spot, snap, spotOf } from './spot.ts';

/**
 * A drill while it is being written: everything that was typed, right or wrong. Nothing here
 * changes in place; every change is a new draft.
 */

export interface DraftShot {
  role: RoleNumber;
  stroke: Stroke;
  from?: Spot;
  to?: Spot;
}

export interface DraftTarget {
  at: Spot;
  width: Metres;
  length: Metres;
}

export interface Draft {
  name: string;
  intention: string;
  cue: string;
  roleNames: readonly [string, string];
  /** What may be left empty: see DrillText. */
  tasks: readonly [string, string];
  feed: string;
  counts: string;
  family: Family;
  rule: CountingRule;
  /** Of a set that is counted in a row or in total; kept while another rule is chosen. */
  size: number;
  perCourt: number;
  /** The pattern that every rule but the sequence repeats, and the sequence's own shots. */
  rally: readonly DraftShot[];
  sequence: readonly DraftShot[];
  roles: readonly [Standing, Standing];
  markers: readonly { at: Spot; use: Marker['use'] }[];
  target?: DraftTarget;
}

export interface Standing {
  start: Spot;
  recover: Spot;
}

/** One shot alone is a rally or a ball on target, not a sequence. */
export const FEWEST_SHOTS = 2;
export const MOST_SHOTS = 12;
export const MOST_MARKERS = 12;

/** The side of the net on which a role plays. */
export const sideOf = (role: RoleNumber): Side => (role === 0 ? 'near' : 'far');
export const other = (role: RoleNumber): RoleNumber => (role === 0 ? 1 : 0);
export const across = (side: Side): Side => (side === 'near' ? 'far' : 'near');

/** Half a metre behind the baseline, where most rallies begin. */
const waiting = (role: RoleNumber): Spot => ({
  side: sideOf(role),
  net: { value: snap(COURT.length / 2 + 0.5) },
  hand: 'right',
  centre: { value: 0 },
});

/** The first stroke of each role, in turn. */
const strokesOf = (shots: readonly DraftShot[]): DraftShot[] =>
  roleNumbers.flatMap((role) => {
    const shot = shots.find((each) => each.role === role);
    return shot ? [{ role, stroke: shot.stroke }] : [];
  });

/** What the form starts from: ten in a row from the baselines, and no words yet. */
export const emptyDraft = (): Draft => ({
  name: '',
  intention: '',
  cue: '',
  roleNames: ['', ''],
  tasks: ['', ''],
  feed: '',
  counts: '',
  family: 'groundstrokes',
  rule: 'in-a-row',
  size: 10,
  perCourt: 1,
  rally: roleNumbers.map((role) => ({ role, stroke: 'groundstroke' })),
  sequence: [],
  roles: [
    { start: waiting(0), recover: waiting(0) },
    { start: waiting(1), recover: waiting(1) },
  ],
  markers: [],
});

/** A drill to be changed; `text` is what people read of it now. */
export function draftOf(drill: Drill, text: DrillText): Draft {
  const { name, intention, cue, roles } = text;
  const empty = emptyDraft();
  const isSequence = drill.rule === 'sequence';
  const shots = drill.shots.map(({ role, stroke, from, to }) => ({
    role,
    stroke,
    ...(from && { from: spotOf(from, sideOf(role)) }),
    ...(to && { to: spotOf(to, across(sideOf(role))) }),
  }));
  const first = drill.shots[0]?.stroke ?? 'groundstroke';
  const missing = roleNumbers.filter((role) => !shots.some((shot) => shot.role === role));
  const both = [...shots, ...missing.map((role) => ({ role, stroke: first }))];
  const standing = (role: RoleNumber): Standing => ({
    start: spotOf(drill.roles[role].start, sideOf(role)),
    recover: spotOf(drill.roles[role].recover, sideOf(role)),
  });
  return {
    name,
    intention,
    cue,
    roleNames: roles,
    tasks: text.tasks ?? empty.tasks,
    feed: text.feed ?? '',
    counts: text.counts ?? '',
    family: drill.family,
    rule: drill.rule,
    size: isSequence || drill.rule === 'on-target' ? empty.size : drill.size,
    perCourt: drill.perCourt,
    rally: isSequence ? strokesOf(both) : both,
    sequence: isSequence ? shots : [],
    roles: [standing(0), standing(1)],
    markers: drill.markers.map(({ at, use }) => ({ at: spotOf(at), use })),
    ...(drill.target && {
      target: {
        at: spotOf(drill.target),
        width: { value: drill.target.width },
        length: { value: drill.target.length },
      },
    }),
  };
}

/** The shots of the rule that is chosen. */
export const shotsOf = (draft: Draft): readonly DraftShot[] =>
  draft.rule === 'sequence' ? draft.sequence : draft.rally;

export const withShots = (draft: Draft, shots: readonly DraftShot[]): Draft =>
  draft.rule === 'sequence' ? { ...draft, sequence: shots } : { ...draft, rally: shots };

/** What a role strikes in the pattern that is repeated; on target the first role's is both roles'. */
export const strokeOf = (draft: Draft, role: RoleNumber): Stroke =>
  draft.rally.find((shot) => shot.role === role)?.stroke ?? 'groundstroke';

/** Gives a role its stroke. */
export const withStroke = (draft: Draft, role: RoleNumber, stroke: Stroke): Draft => ({
  ...draft,
  rally: draft.rally.map((shot) => (shot.role === role ? { ...shot, stroke } : shot)),
});

/** One more shot of a sequence, by the one whose turn it is. */
export function withOneMore(draft: Draft): Draft {
  const last = draft.sequence.at(-1);
  const role = last ? other(last.role) : 0;
  return { ...draft, sequence: [...draft.sequence, { role, stroke: strokeOf(draft, role) }] };
}

export const withoutShot = (draft: Draft, index: number): Draft => ({
  ...draft,
  sequence: draft.sequence.toSpliced(index, 1),
});

/** Changes a shot of a sequence. Another striker plays to the other side, so its places are let go. */
export function withShot(
  draft: Draft,
  index: number,
  { role, stroke }: Pick<DraftShot, 'role' | 'stroke'>,
): Draft {
  const shot = draft.sequence[index];
  if (!shot) return draft;
  const changed = shot.role === role ? { ...shot, stroke } : { role, stroke };
  return { ...draft, sequence: draft.sequence.with(index, changed) };
}

/** One more marker, by the T of the near side, to be put where it belongs. */
export const withMarker = (draft: Draft): Draft => ({
  ...draft,
  markers: [
    ...draft.markers,
    { at: spotOf({ x: 0, y: -snap(COURT.serviceLine) }), use: 'recovery' },
  ],
});

export function withUse(draft: Draft, index: number, use: Marker['use']): Draft {
  const marker = draft.markers[index];
  return marker ? { ...draft, markers: draft.markers.with(index, { ...marker, use }) } : draft;
}

/** A target area in the depth of the far side. */
export const withTarget = (draft: Draft): Draft => ({
  ...draft,
  target: {
    at: spotOf({ x: 0, y: 10 }),
    width: { value: 3 },
    length: { value: 3 },
  },
});

/** What a drawing shows of a draft, at the last numbers that were given. */
export const drawnOf = (
  draft: Draft,
): Pick<Drill, 'rule' | 'shots' | 'roles' | 'markers' | 'target' | 'perCourt'> => ({
  rule: draft.rule,
  shots: shotsOf(draft).map(
    ({ role, stroke, from, to }): Shot => ({
      role,
      // Each ball counts the same there, whoever strikes it.
      stroke: draft.rule === 'on-target' ? strokeOf(draft, 0) : stroke,
      ...(from && { from: placeOf(from) }),
      ...(to && { to: placeOf(to) }),
    }),
  ),
  roles: [standingPlaces(draft.roles[0]), standingPlaces(draft.roles[1])],
  markers: draft.markers.map(({ at, use }) => ({ at: placeOf(at), use })),
  ...(draft.target && { target: areaOf(draft.target) }),
  perCourt: draft.perCourt,
});

const standingPlaces = ({ start, recover }: Standing) => ({
  start: placeOf(start),
  recover: placeOf(recover),
});

export const areaOf = ({ at, width, length }: DraftTarget): Target => ({
  ...placeOf(at),
  width: width.value,
  length: length.value,
});

/** How many shots a set of the draft has. */
export function sizeOf({ rule, size, sequence }: Draft): number {
  if (rule === 'sequence') return sequence.length;
  return rule === 'on-target' ? 1 : size;
}
