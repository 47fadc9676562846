import { del, get, set } from 'idb-keyval';
import * as z from 'zod/mini';
import { countingRules, families, markerUses, strokes } from '../../core/drill/drill.ts';
import { database } from '../device/database.ts';
import { durableStore } from '../device/durable-store.ts';
import { key } from '../device/records.ts';
import type { Draft } from './draft.ts';

/*
 * Drafts that were left unsaved, by the drill that they change: neither the phone's back gesture nor
 * a reload loses one. They are no part of the ledger and of no backup: nothing was decided yet. Of
 * two windows that write the same draft the last one wins.
 */

const use = durableStore(database);

/**
 * What is not on the disk yet: a draft, or that one is dropped. What a phone refuses to store stays
 * here, and is lost only with the page.
 */
const waiting = new Map<string, Draft | 'dropped'>();
let writing = false;

/** Keeps a draft of a drill, or of a new one, as it is now. */
export function keepDraft(drill: string | undefined, draft: Draft): void {
  waiting.set(key.draft(drill), draft);
  void write();
}

/** A draft that became a drill, or that nobody wants. */
export function dropDraft(drill: string | undefined): void {
  waiting.set(key.draft(drill), 'dropped');
  void write();
}

/** The draft that was left; undefined where there is none, or none that can be read. */
export async function draftLeft(drill: string | undefined): Promise<Draft | undefined> {
  const at = key.draft(drill);
  const stored: unknown = waiting.get(at) ?? (await get(at, use).catch(() => undefined));
  const read = StoredDraft.safeParse(stored);
  return read.success ? read.data : undefined;
}

/** Writes one after the other, of each draft its last state; a later one waits for no earlier one. */
async function write(): Promise<void> {
  if (writing) return;
  writing = true;
  try {
    for (let [next] = waiting; next; [next] = waiting) {
      const [at, draft] = next;
      await (draft === 'dropped' ? del(at, use) : set(at, draft, use));
      if (waiting.get(at) === draft) waiting.delete(at);
    }
  } catch {
    // The phone is full or refuses: it is asked again at the next change.
  }
  writing = false;
}

const Role = z.literal([0, 1]);
const Metres = z.object({ value: z.number(), text: z.exactOptional(z.string()) });
const Spot = z.object({
  side: z.enum(['near', 'far']),
  net: Metres,
  hand: z.enum(['left', 'right']),
  centre: Metres,
});
const Shots = z.array(
  z.object({
    role: Role,
    stroke: z.enum(strokes),
    from: z.exactOptional(Spot),
    to: z.exactOptional(Spot),
  }),
);
const Standing = z.object({ start: Spot, recover: Spot });

/** A draft in the shape in which the form writes one: the record may be damaged, or of another version. */
const StoredDraft = z.object({
  name: z.string(),
  intention: z.string(),
  cue: z.string(),
  roleNames: z.tuple([z.string(), z.string()]),
  tasks: z._default(z.tuple([z.string(), z.string()]), ['', '']),
  feed: z._default(z.string(), ''),
  counts: z._default(z.string(), ''),
  family: z.enum(families),
  rule: z.enum(countingRules),
  size: z.number(),
  perCourt: z.number(),
  rally: Shots,
  sequence: Shots,
  roles: z.tuple([Standing, Standing]),
  markers: z.array(z.object({ at: Spot, use: z.enum(markerUses) })),
  target: z.exactOptional(z.object({ at: Spot, width: Metres, length: Metres })),
});
