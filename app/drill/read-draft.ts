import { isInside } from '../../core/court/court.ts';
import { Drill, RUN_OFF, Target } from '../../core/drill/drill.ts';
import { isSameName } from '../../core/ledger/squad.ts';
import {
  areaOf,
  type Draft,
  type DraftTarget,
  drawnOf,
  FEWEST_SHOTS,
  MOST_SHOTS,
  sizeOf,
} from './draft.ts';
import { isUnread, placeOf } from './spot.ts';
import { thingsOf } from './things.ts';

/** Rounding of sums of decimals: a target may reach the outside of a line. */
const HAIR = 1e-6;

/**
 * What is wrong, and with which field: a name of the text (`name`, `intention`, `cue`, `role-0`,
 * `role-1`, `task-0`, `task-1`, `feed`, `counts`), `shots`, the key of a thing, `target-width`, `target-length`, or the whole `drill`.
 */
export interface Fault {
  field: string;
  reason: 'empty' | 'long' | 'number' | 'off' | 'outside' | 'size' | 'shots' | 'taken' | 'unfit';
  /** The most letters that a text may have. */
  most?: number;
}

/**
 * The drill that a draft makes, under this id, or everything that keeps it from being one.
 *
 * @param taken the names of all other drills, as people read them now
 */
export function readDraft(
  draft: Draft,
  id: string,
  taken: readonly string[] = [],
): { drill: Drill } | { faults: Fault[] } {
  const read = Drill.safeParse({
    id,
    family: draft.family,
    size: sizeOf(draft),
    ...drawnOf(draft),
    text: {
      name: draft.name,
      intention: draft.intention,
      cue: draft.cue,
      roles: draft.roleNames,
      ...(draft.tasks.some(isSaid) && { tasks: draft.tasks }),
      ...(isSaid(draft.feed) && { feed: draft.feed }),
      ...(isSaid(draft.counts) && { counts: draft.counts }),
    },
  });
  const issues = read.error?.issues ?? [];
  const isTaken = taken.some((name) => isSameName(name, draft.name));
  const faults: Fault[] = [
    ...issues.flatMap(faultOfText),
    ...(isTaken ? [{ field: 'name', reason: 'taken' } as const] : []),
    ...ownFaults(draft),
  ];
  if (faults.length > 0) return { faults };
  return read.success ? { drill: read.data } : { faults: [{ field: 'drill', reason: 'unfit' }] };
}

const isSaid = (text: string): boolean => text.trim() !== '';

/** What a form can tell and the schema of a drill cannot: what was typed, and the lines. */
function ownFaults(draft: Draft): Fault[] {
  const faults: Fault[] = [];
  const { length } = draft.sequence;
  if (draft.rule === 'sequence' && (length < FEWEST_SHOTS || length > MOST_SHOTS)) {
    faults.push({ field: 'shots', reason: 'shots' });
  }
  for (const { key, what, at } of thingsOf(draft)) {
    if (isUnread(at.net) || isUnread(at.centre)) faults.push({ field: key, reason: 'number' });
    else if (what !== 'target' && !isInside('full', placeOf(at), RUN_OFF)) {
      faults.push({ field: key, reason: 'off' });
    }
  }
  if (draft.target) faults.push(...targetFaults(draft.target));
  return faults;
}

/** Measures first: an area of the wrong ones is not outside by its place. */
function targetFaults(target: DraftTarget): Fault[] {
  const measures = (['width', 'length'] as const).flatMap((side): Fault[] => {
    const field = `target-${side}`;
    if (isUnread(target[side])) return [{ field, reason: 'number' }];
    return Target.shape[side].safeParse(target[side].value).success
      ? []
      : [{ field, reason: 'size' }];
  });
  if (measures.length > 0 || [target.at.net, target.at.centre].some(isUnread)) return measures;
  return isOnOneSide(areaOf(target)) ? [] : [{ field: 'target', reason: 'outside' }];
}

/** Whether an area lies inside the outermost lines and does not reach over the net. */
function isOnOneSide({ x, y, width, length }: Target): boolean {
  const corner = { x: Math.abs(x) + width / 2, y: Math.abs(y) + length / 2 };
  return isInside('full', corner, HAIR) && Math.abs(y) - length / 2 >= -HAIR;
}

type Issue = NonNullable<ReturnType<typeof Drill.safeParse>['error']>['issues'][number];

/** What the schema found of the words; what it finds of places, the form has told by then. */
function faultOfText(issue: Issue): Fault[] {
  const [part, which, role] = issue.path;
  if (part !== 'text') return [];
  const single = { roles: 'role', tasks: 'task' }[String(which)];
  const field = single ? `${single}-${String(role)}` : String(which);
  if (issue.code === 'too_small') return [{ field, reason: 'empty' }];
  if (issue.code === 'too_big') return [{ field, reason: 'long', most: Number(issue.maximum) }];
  return [];
}
