import * as z from 'zod/mini';
import { isDate } from '../calendar.ts';
import { Drill, LARGEST_SIZE, Terms } from '../drill/drill.ts';
import { Focus } from '../drill/focus.ts';
import { Id } from '../id.ts';
import { Checks, Plan } from '../round/block.ts';
import { LONGEST_SECONDS, SHORTEST_SECONDS } from '../round/clock.ts';
import { sights } from '../round/look.ts';
import { Letter, MOST_PAIRS, Pair } from '../round/pair.ts';
import { countingWays } from '../round/tally.ts';
import { ClearedFacts, PlayerFacts, PlayerName } from './squad.ts';
import { SquadFacts } from './squad-settings.ts';
import { STAMP, stampTime } from './stamp.ts';
import { wishes } from './wishes.ts';

/**
 * Every kind of entry that the ledger can hold: the vocabulary of the whole program.
 *
 * The ledger only grows. Taking a mark back, correcting a count or renaming a player is one more
 * entry. Entries of a practice name it; those that stand beyond one practice do not.
 */

/** 1 January 2100: a phone's clock beyond it is wrong, and so is a file's. */
const LATEST = 4_102_444_800_000;
/** One stamp at the end of its digits would leave no room for any that is made after it. */
const Stamp = z.string().check(
  z.regex(STAMP),
  z.refine((stamp) => stampTime(stamp) <= LATEST),
);
/** Milliseconds since 1970, as the phone's clock stood. */
const Time = z.number().check(z.minimum(0), z.maximum(LATEST));
const Day = z.string().check(z.refine(isDate));
/** Seconds of live clock into a round. */
const Second = z.number().check(z.minimum(0), z.maximum(86_400));
/** Seconds of one gap on the court; nobody waits longer for a ball. */
const Gap = z.number().check(z.positive(), z.maximum(120));
/** No pair completes more sets in a round. */
const MOST_CALLED = 1000;
/** The top of the scale of effort (category ratio 10). */
export const HARDEST = 10;
/** Nobody practises for longer in a day. */
export const LONGEST_MINUTES = 600;
/** Shots of one rally, as far as anyone counts at the side of a court. */
const RunLength = z.number().check(z.int(), z.minimum(0), z.maximum(1000));

const entry = <Kind extends string, Body extends z.core.$ZodLooseShape>(kind: Kind, body: Body) =>
  z.looseObject({ kind: z.literal(kind), id: Stamp, at: Time, ...body });

const standing = {
  'player-added': entry('player-added', { player: Id, ...PlayerFacts }),
  'player-changed': entry('player-changed', {
    player: Id,
    name: z.optional(PlayerName),
    level: PlayerFacts.level,
    hand: PlayerFacts.hand,
    cleared: ClearedFacts,
  }),
  'player-rested': entry('player-rested', { player: Id }),
  'player-returned': entry('player-returned', { player: Id }),
  'drill-written': entry('drill-written', { drill: Drill }),
  'drill-dropped': entry('drill-dropped', { drill: Id }),
  /** Whether a drill may be proposed: the coach can leave any out without losing it. */
  'drill-switched': entry('drill-switched', { drill: Id, on: z.boolean() }),
  'block-kept': entry('block-kept', { block: Id, name: PlayerName, plan: Plan }),
  'block-dropped': entry('block-dropped', { block: Id }),
  /** How the sets of a drill are counted from now on, until it is chosen otherwise on its card. */
  'drill-counted': entry('drill-counted', { drill: Id, way: z.enum(countingWays) }),
  'focus-written': entry('focus-written', { focus: Focus }),
  /** It is no longer there to be chosen; what was looked at stays. */
  'focus-dropped': entry('focus-dropped', { focus: Id }),
  /** What is looked at in the rounds of a drill from now on; nothing of its own where left out. */
  'drill-focused': entry('drill-focused', { drill: Id, focus: z.optional(Id) }),
  /** What the coach wishes of two players, in either order; `none` takes an earlier wish back. */
  'wish-set': entry('wish-set', {
    a: Id,
    b: Id,
    wish: z.enum([...wishes, 'none']),
  }).check(z.refine(({ a, b }) => a !== b, { path: ['b'] })),
  'squad-set': entry('squad-set', SquadFacts),
  /** Two players are one child, typed on two phones; the one is called as `into` is. */
  'players-merged': entry('players-merged', { player: Id, into: Id }).check(
    z.refine(({ player, into }) => player !== into, { path: ['into'] }),
  ),
  /** They are two children after all, or in the first place. */
  'players-parted': entry('players-parted', { player: Id, into: Id }),
  /** All that was said of a player goes, and does not come back (see erased.ts). */
  'player-erased': entry('player-erased', { player: Id }),
  /** A practice goes with all its entries; it is named so that the entry is none of them. */
  'practice-erased': entry('practice-erased', { erased: Id }),
  /** What the coach asks for at the next practice: a drill in its block, or two as a pair; or no longer. */
  'next-asked': entry('next-asked', {
    drill: z.optional(Id),
    a: z.optional(Id),
    b: z.optional(Id),
    on: z.boolean(),
  }),
};

const practice = { practice: Id };
/**
 * `set` is the stamp of the `round-set` that the writer saw: two phones can start one round with
 * pairs of their own, and what is said of it must not pass from the pairs of one to those of the
 * other. Entries of earlier versions do without, and belong to what was started first.
 */
const round = { practice: Id, round: Id, set: z.optional(Stamp) };
const side = { ...round, pair: Letter, player: z.optional(Id) };

const practised = {
  'practice-opened': entry('practice-opened', { ...practice, date: Day }),
  'player-came': entry('player-came', { ...practice, player: Id }),
  'player-left': entry('player-left', { ...practice, player: Id }),
  'block-planned': entry('block-planned', { ...practice, plan: Plan }),
  /** Seconds from hit to hit at a drill, tapped along with a rally. */
  'tempo-checked': entry('tempo-checked', { ...practice, drill: Id, seconds: Gap }),
  /** Seconds from a miss to the next hit at a drill. */
  'refeed-checked': entry('refeed-checked', { ...practice, drill: Id, seconds: Gap }),
  /** A round as it is about to be played; set again until its clock starts. */
  'round-set': entry('round-set', {
    practice: Id,
    round: Id,
    /** The step of the block that it plays; left out by earlier versions. */
    step: z.optional(Id),
    /** Which round of the practice, from 0, as this phone counts them. */
    ordinal: z.number().check(z.int(), z.minimum(0), z.maximum(300)),
    terms: Terms,
    seconds: z.number().check(z.int(), z.minimum(SHORTEST_SECONDS), z.maximum(LONGEST_SECONDS)),
    pairs: z.array(Pair).check(z.minLength(1), z.maxLength(MOST_PAIRS)),
    /**
     * Pairs for whom no court is free in this round: they have no tile and no share in its figures,
     * and are kept so that they come in as they were put together.
     */
    waiting: z.optional(z.array(Pair).check(z.maxLength(MOST_PAIRS))),
    /** Pairs that count for themselves and call their number at the horn. */
    called: z.optional(z.array(Letter).check(z.maxLength(MOST_PAIRS))),
    /** Whether the roles turn at half the clock. */
    turns: z.optional(z.boolean()),
    /** What is looked at, and how many spot checks ask for it. */
    focus: z.optional(Id),
    checks: z.optional(Checks),
  }),
  'clock-started': entry('clock-started', round),
  'clock-paused': entry('clock-paused', round),
  'clock-resumed': entry('clock-resumed', round),
  'clock-extended': entry('clock-extended', {
    ...round,
    seconds: z.number().check(z.int(), z.minimum(1), z.maximum(LONGEST_SECONDS)),
  }),
  'clock-stopped': entry('clock-stopped', round),
  /**
   * The phone's clock moved against its steady one in mid-round, by so many seconds. Where the
   * steady one is right, the round goes on with `live` seconds on its clock.
   */
  'clock-doubted': entry('clock-doubted', {
    ...round,
    seconds: z.number().check(z.minimum(-1e9), z.maximum(1e9)),
    live: z.optional(Second),
  }),
  /** One touch of a tile, `second` seconds of live clock into the round. */
  mark: entry('mark', {
    ...side,
    second: Second,
  }),
  'mark-taken-back': entry('mark-taken-back', { ...round, mark: Stamp }),
  /** What settle decided of a late or doubtful mark. */
  'mark-judged': entry('mark-judged', { ...round, mark: Stamp, counts: z.boolean() }),
  'tally-corrected': entry('tally-corrected', {
    ...side,
    by: z.number().check(z.int(), z.minimum(-1000), z.maximum(1000)),
    /** The phone whose count is put right, '' for one of an earlier version; the writer's own where left out. */
    of: z.optional(z.string().check(z.maxLength(40))),
  }),
  /** What a pair, or a player of it, called at the horn; without a number it was not heard. */
  'count-called': entry('count-called', {
    ...side,
    sets: z.optional(z.number().check(z.int(), z.minimum(0), z.maximum(MOST_CALLED))),
  }),
  /** Which phone's count of a pair holds, where two phones counted it. */
  'count-chosen': entry('count-chosen', {
    ...round,
    pair: Letter,
    of: z.string().check(z.maxLength(40)),
  }),
  /** The second at which the roles turned; without one they did not, whatever was planned. */
  'roles-turned': entry('roles-turned', { ...round, second: z.optional(Second) }),
  /** A pair stops in mid-round: one of it is hurt, or leaves. Without a second it goes on after all. */
  'pair-stopped': entry('pair-stopped', { ...round, pair: Letter, second: z.optional(Second) }),
  /** A pair or trio that comes together in mid-round. */
  'pair-added': entry('pair-added', {
    ...round,
    pair: Letter,
    players: Pair.shape.players,
    second: Second,
  }),
  /** Seconds of the round in which nobody watched, so that nothing could be counted; or they did after all. */
  'stretch-watched': entry('stretch-watched', {
    ...round,
    from: Second,
    to: Second,
    watched: z.boolean(),
  }),
  /** Who was in a pair of a round that was started, where the wrong names stood. */
  'pair-corrected': entry('pair-corrected', {
    ...round,
    pair: Letter,
    players: Pair.shape.players,
  }),
  /** How far an unfinished set had come at the horn. */
  'set-showing': entry('set-showing', {
    ...round,
    pair: Letter,
    shots: z.number().check(z.int(), z.minimum(0), z.maximum(LARGEST_SIZE)),
  }),
  /** The longest run seen in a round without a completed set. */
  'best-run': entry('best-run', { ...round, pair: Letter, shots: RunLength }),
  /** Shots that were said of a round were not seen after all. */
  'shots-unseen': entry('shots-unseen', {
    ...round,
    pair: Letter,
    of: z.enum(['showing', 'best']),
  }),
  /**
   * What one look at one player showed, asked for at that second; said again where the thumb slipped.
   * A look that nobody answered is no entry.
   */
  look: entry('look', {
    ...round,
    player: Id,
    focus: Id,
    second: Second,
    saw: z.enum(sights),
  }),
  'round-settled': entry('round-settled', round),
  /** Settle was passed over for now; the round can be settled later the same day. */
  'round-skipped': entry('round-skipped', round),
  /** A trial, or a slip: no figure knows of it until it is restored. */
  'round-struck': entry('round-struck', round),
  'round-restored': entry('round-restored', round),
  'practice-struck': entry('practice-struck', practice),
  'practice-restored': entry('practice-restored', practice),
  /** Whether a player was there, whatever was tapped on the day. */
  'presence-corrected': entry('presence-corrected', {
    ...practice,
    player: Id,
    present: z.boolean(),
  }),
  /** How hard the practice was for a player, 0 to 10, and how long it was; each stays open where left out. */
  'effort-told': entry('effort-told', {
    ...practice,
    player: Id,
    effort: z.optional(z.number().check(z.minimum(0), z.maximum(HARDEST))),
    minutes: z.optional(z.number().check(z.minimum(0), z.maximum(LONGEST_MINUTES))),
  }),
  'practice-closed': entry('practice-closed', practice),
  'practice-reopened': entry('practice-reopened', practice),
};

const kinds = { ...standing, ...practised };

export type Kind = keyof typeof kinds;
export type EntryOf<K extends Kind> = z.infer<(typeof kinds)[K]>;
export type Entry = { [K in Kind]: EntryOf<K> }[Kind];
export type StandingEntry = { [K in keyof typeof standing]: EntryOf<K> }[keyof typeof standing];
export type PracticeEntry = { [K in keyof typeof practised]: EntryOf<K> }[keyof typeof practised];

/** The fields that an entry is known by: not those that a later version may have added. */
type KnownFields<E> = keyof { [Field in keyof E as string extends Field ? never : Field]: true };

/** What a writer says of an entry; its id and time are added as it is appended. */
export type Saying = {
  [K in Kind]: Pick<EntryOf<K>, Exclude<KnownFields<EntryOf<K>>, 'id' | 'at'>>;
}[Kind];

/** An entry of a kind that this version does not know: kept and handed on untouched. */
export type Unknown = { kind: string; id: string; at: number; practice?: string } & Record<
  string,
  unknown
>;

/** An entry as the ledger holds it: of a kind that this version knows, or handed on untouched. */
export type AnyEntry = Entry | Unknown;

const Foreign = z.looseObject({
  kind: z.string().check(z.minLength(1), z.maxLength(40)),
  id: Stamp,
  at: Time,
  practice: z.optional(Id),
});

export const isKnown = (entry: AnyEntry): entry is Entry => Object.hasOwn(kinds, entry.kind);

/** What a stored or received record turned out to be. */
export type Reading =
  | { as: 'entry'; entry: Entry }
  | { as: 'unknown'; entry: Unknown }
  | { as: 'damaged'; path: string };

/**
 * Reads a record of the ledger: a known entry, one of an unknown kind, or one that is damaged, with
 * the path of the first field that is wrong. What is read is the record itself, with every field
 * that a later version may have added at any depth, so that it is handed on as it came.
 */
export function readEntry(record: unknown): Reading {
  const foreign = Foreign.safeParse(record);
  if (!foreign.success) return { as: 'damaged', path: firstPath(foreign.error) };
  const kind = foreign.data.kind;
  if (!Object.hasOwn(kinds, kind)) return { as: 'unknown', entry: record as Unknown };
  const known = kinds[kind as Kind].safeParse(record);
  if (!known.success) return { as: 'damaged', path: firstPath(known.error) };
  return { as: 'entry', entry: record as Entry };
}

/**
 * An entry of this version's own making.
 *
 * @throws TypeError naming the field, where this version made it wrongly
 */
export function makeEntry(saying: Saying, id: string, at: number): Entry {
  const schema = Object.hasOwn(kinds, saying.kind) ? kinds[saying.kind] : undefined;
  const made = schema?.safeParse({ ...saying, id, at });
  if (made?.success) return made.data as Entry;
  const where = made ? firstPath(made.error) : 'kind';
  throw new TypeError(`a ${saying.kind} was made wrongly at ${where}`);
}

const firstPath = (error: z.core.$ZodError): string => error.issues[0]?.path.join('.') || 'record';
