import * as z from 'zod/mini';
import type { Entry } from './entry.ts';
import { foldErased } from './erased.ts';
import { foldMerges } from './merges.ts';

export const LONGEST_NAME = 40;

/**
 * Characters that hide in pasted text and can turn what stands beside them round, and halves of
 * characters. The joiners U+200C and U+200D are left out: names in many scripts need them.
 */
const HIDDEN = /[\p{Bidi_Control}\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u00ad\u200b\u2060-\u206f\ufeff]/u;

/** Something for the eye: not a joiner or a filler alone. U+2800 is an empty Braille cell. */
export const VISIBLE = /[^\p{Default_Ignorable_Code_Point}\s\u2800]/u;

/** A nickname: 1 to 40 characters, shown as text wherever it is shown. */
export const PlayerName = z.string().check(
  z.trim(),
  z.maxLength(LONGEST_NAME),
  z.refine((name) => VISIBLE.test(name) && !HIDDEN.test(name)),
);

export const hands = ['right', 'left'] as const;
export type Hand = (typeof hands)[number];

/** What is known of a player, and all that is: no birth date, photo or contact has a place. */
export const PlayerFacts = {
  name: PlayerName,
  /** 1 (beginner) to 10, as the coach sees it; only differences are used. */
  level: z.optional(z.number().check(z.minimum(1), z.maximum(10))),
  hand: z.optional(z.enum(hands)),
};

/** What of a player may be open again once it was given. */
export const clearable = ['level', 'hand'] as const;
export type Clearable = (typeof clearable)[number];

/**
 * The facts that are open from now on. A list of its own, since earlier versions take an empty level
 * for a damaged entry: they pass over the list and read the rest. A later version may name more.
 */
export const ClearedFacts = z.optional(
  z.array(z.string().check(z.minLength(1), z.maxLength(40))).check(z.maxLength(10)),
);

export interface Player {
  id: string;
  name: string;
  level?: number;
  hand?: Hand;
  /** A resting player keeps the history and is not asked for in Today. */
  resting: boolean;
}

/** Why a name cannot be taken. */
export type NameFault = 'empty' | 'long' | 'hidden' | 'taken';

/** What is wrong with a name for a player, or undefined; `others` are the names already in use. */
export function nameFault(name: string, others: Iterable<string> = []): NameFault | undefined {
  const trimmed = name.trim();
  if (!VISIBLE.test(trimmed)) return 'empty';
  if (trimmed.length > LONGEST_NAME) return 'long';
  if (HIDDEN.test(trimmed)) return 'hidden';
  for (const other of others) if (isSameName(other, trimmed)) return 'taken';
  return undefined;
}

/** Whether people would take two names for one: whatever their case, and the spaces round them. */
export const isSameName = (one: string, other: string): boolean =>
  foldName(one) === foldName(other);

const foldName = (name: string) => name.trim().normalize('NFKC').toLowerCase();

/**
 * The squad in the order in which its players were added: every child once, whoever typed the name,
 * and nobody who was erased.
 */
export function foldSquad(entries: readonly Entry[]): Map<string, Player> {
  const squad = new Map<string, Player>();
  const change = (id: string, facts: Partial<Player>, cleared: readonly string[] = []) => {
    const player = squad.get(id);
    if (!player) return;
    const before = { ...player };
    for (const fact of clearable) if (cleared.includes(fact)) delete before[fact];
    squad.set(id, { ...before, ...facts });
  };
  for (const entry of entries) {
    switch (entry.kind) {
      case 'player-added':
        if (!squad.has(entry.player)) {
          squad.set(entry.player, {
            id: entry.player,
            resting: false,
            ...factsOf(entry),
            name: entry.name,
          });
        }
        break;
      case 'player-changed':
        change(entry.player, factsOf(entry), entry.cleared);
        break;
      case 'player-rested':
        change(entry.player, { resting: true });
        break;
      case 'player-returned':
        change(entry.player, { resting: false });
        break;
    }
  }
  const erased = foldErased(entries).players;
  for (const id of erased) squad.delete(id);
  for (const [id, into] of foldMerges(entries)) {
    const player = squad.get(id);
    squad.delete(id);
    if (erased.has(id)) squad.delete(into);
    else if (player && !squad.has(into) && !erased.has(into))
      squad.set(into, { ...player, id: into });
  }
  return squad;
}

/** Only what an entry says: a rename without a level leaves the level as it is. */
function factsOf(said: {
  name?: string | undefined;
  level?: number | undefined;
  hand?: Hand | undefined;
}) {
  return {
    ...(said.name !== undefined && { name: said.name }),
    ...(said.level !== undefined && { level: said.level }),
    ...(said.hand !== undefined && { hand: said.hand }),
  };
}
