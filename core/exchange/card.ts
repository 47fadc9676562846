import * as z from 'zod/mini';
import { isDate } from '../calendar.ts';
import { countingRules, LARGEST_SIZE } from '../drill/drill.ts';
import { Id } from '../id.ts';
import { PlayerName } from '../ledger/squad.ts';

/**
 * A player's card: the own figures of one day under a nickname, and nothing of anybody else. It goes
 * out in an address, so it is written as short as it can be: a list in a fixed order.
 */
export interface Card {
  name: string;
  /** YYYY-MM-DD. */
  date: string;
  /** Touches that completed sets prove. */
  counted: number;
  /** All touches with their limits; left out where they are not known. */
  all?: { touches: number; low: number; high: number };
  works: CardWork[];
}

export interface CardWork {
  drill: string;
  /** Left out for a drill that came with the app. */
  name?: string;
  rule: (typeof countingRules)[number];
  size: number;
  sets: number;
  /** The player's own, where there is an earlier practice of it. */
  usual?: number;
  best?: number;
}

/** The version of this form. */
const VERSION = 1;
/** More drills than a day has. */
const MOST_WORKS = 30;

const Count = z.number().check(z.minimum(0), z.maximum(100_000));
const Some = z.nullable(Count);
const Work = z.tuple([
  Id,
  z.nullable(PlayerName),
  z.enum(countingRules),
  z.number().check(z.int(), z.minimum(1), z.maximum(LARGEST_SIZE)),
  Count,
  Some,
  Some,
]);
const Written = z.tuple([
  z.literal(VERSION),
  PlayerName,
  z.string().check(z.refine(isDate)),
  Count,
  z.nullable(z.tuple([Count, Count, Count])),
  z.array(Work).check(z.maxLength(MOST_WORKS)),
]);

export function cardText({ name, date, counted, all, works }: Card): string {
  return JSON.stringify([
    VERSION,
    name,
    date,
    counted,
    all ? [all.touches, all.low, all.high].map(Math.round) : null,
    works
      .slice(0, MOST_WORKS)
      .map(({ drill, name = null, rule, size, sets, usual = null, best = null }) => [
        ...[drill, name, rule, size, sets, tenths(usual), tenths(best)],
      ]),
  ]);
}

const tenths = (value: number | null) => value && Math.round(10 * value) / 10;

/** The card that a text is; `version` where a newer version wrote it, undefined where it is none. */
export function readCard(text: string): Card | 'version' | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!Array.isArray(value)) return undefined;
  if (Number.isInteger(value[0]) && value[0] > VERSION) return 'version';
  const read = Written.safeParse(value);
  if (!read.success) return undefined;
  const [, name, date, counted, all, works] = read.data;
  return {
    name,
    date,
    counted,
    ...(all && { all: { touches: all[0], low: all[1], high: all[2] } }),
    works: works.map(([drill, name, rule, size, sets, usual, best]) => ({
      ...{ drill, rule, size, sets },
      ...(name !== null && { name }),
      ...(usual !== null && { usual }),
      ...(best !== null && { best }),
    })),
  };
}
