import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import {
  type Entry,
  isKnown,
  type Kind,
  makeEntry,
  readEntry,
  type Saying,
} from '../../../core/ledger/entry.ts';
import { nextStamp } from '../../../core/ledger/stamp.ts';
import { emptyPlan } from '../../../core/round/block.ts';
import { termsWith } from '../made.ts';
import { MORNING, PRACTICE } from '../told.ts';

const ID = nextStamp('', MORNING, 'writer-one');
const round = { practice: PRACTICE, round: 'r1' };
const place = { x: 0, y: 5 };

/** One saying of every kind: a kind without one does not compile. */
const sayings: { [K in Kind]: Extract<Saying, { kind: K }> } = {
  'player-added': { kind: 'player-added', player: 'p1', name: 'Lin', level: 5, hand: 'left' },
  'player-changed': { kind: 'player-changed', player: 'p1', name: 'Lina' },
  'player-rested': { kind: 'player-rested', player: 'p1' },
  'player-returned': { kind: 'player-returned', player: 'p1' },
  'drill-written': {
    kind: 'drill-written',
    drill: {
      ...{ id: 'd1', family: 'volleys', rule: 'in-total', size: 12, perCourt: 1 },
      shots: [{ role: 0, stroke: 'volley' }],
      roles: [
        { start: place, recover: place },
        { start: place, recover: place },
      ],
      markers: [{ at: place, use: 'lane' }],
      text: { name: 'Twelve', intention: '', cue: '', roles: ['', ''] },
    },
  },
  'drill-dropped': { kind: 'drill-dropped', drill: 'd1' },
  'drill-switched': { kind: 'drill-switched', drill: 'd1', on: false },
  'focus-written': {
    kind: 'focus-written',
    focus: { id: 'f1', question: 'Racket up?', yes: 'Tip above the hand', told: '“Up!”' },
  },
  'focus-dropped': { kind: 'focus-dropped', focus: 'f1' },
  'drill-focused': { kind: 'drill-focused', drill: 'd1', focus: 'f1' },
  look: { kind: 'look', ...round, player: 'p1', focus: 'f1', second: 31.4, saw: 'no' },
  'effort-told': { kind: 'effort-told', practice: PRACTICE, player: 'p1', effort: 6, minutes: 75 },
  'block-kept': { kind: 'block-kept', block: 'b1', name: 'Monday', plan: emptyPlan },
  'block-dropped': { kind: 'block-dropped', block: 'b1' },
  'wish-set': { kind: 'wish-set', a: 'p1', b: 'p2', wish: 'together' },
  'squad-set': { kind: 'squad-set', size: 'middle', courts: 2, units: 'feet' },
  'next-asked': { kind: 'next-asked', drill: 'd1', a: 'p1', b: 'p2', on: true },
  'practice-opened': { kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' },
  'player-came': { kind: 'player-came', practice: PRACTICE, player: 'p1' },
  'player-left': { kind: 'player-left', practice: PRACTICE, player: 'p1' },
  'block-planned': { kind: 'block-planned', practice: PRACTICE, plan: emptyPlan },
  'tempo-checked': { kind: 'tempo-checked', practice: PRACTICE, drill: 'd1', seconds: 1.42 },
  'refeed-checked': { kind: 'refeed-checked', practice: PRACTICE, drill: 'd1', seconds: 4.8 },
  'round-set': {
    ...{ kind: 'round-set', ...round, ordinal: 0, terms: termsWith(), seconds: 120 },
    pairs: [{ letter: 'A', players: ['p1', 'p2'] }],
  },
  'clock-started': { kind: 'clock-started', ...round },
  'clock-paused': { kind: 'clock-paused', ...round },
  'clock-resumed': { kind: 'clock-resumed', ...round },
  'clock-extended': { kind: 'clock-extended', ...round, seconds: 30 },
  'clock-stopped': { kind: 'clock-stopped', ...round },
  'clock-doubted': { kind: 'clock-doubted', ...round, seconds: -3600 },
  mark: { kind: 'mark', ...round, pair: 'A', player: 'p1', second: 12.5 },
  'mark-taken-back': { kind: 'mark-taken-back', ...round, mark: ID },
  'mark-judged': { kind: 'mark-judged', ...round, mark: ID, counts: true },
  'tally-corrected': { kind: 'tally-corrected', ...round, pair: 'A', by: -2 },
  'set-showing': { kind: 'set-showing', ...round, pair: 'A', shots: 7 },
  'best-run': { kind: 'best-run', ...round, pair: 'A', shots: 9 },
  'count-called': { kind: 'count-called', ...round, pair: 'A', player: 'p1', sets: 6 },
  'roles-turned': { kind: 'roles-turned', ...round, second: 60 },
  'pair-stopped': { kind: 'pair-stopped', ...round, pair: 'A', second: 50 },
  'pair-added': { kind: 'pair-added', ...round, pair: 'C', players: ['p1', 'p2'], second: 50 },
  'stretch-watched': { kind: 'stretch-watched', ...round, from: 10, to: 40, watched: false },
  'drill-counted': { kind: 'drill-counted', drill: 'd1', way: 'called' },
  'shots-unseen': { kind: 'shots-unseen', ...round, pair: 'A', of: 'showing' },
  'pair-corrected': { kind: 'pair-corrected', ...round, pair: 'A', players: ['p1', 'p3'] },
  'players-merged': { kind: 'players-merged', player: 'p1', into: 'p2' },
  'players-parted': { kind: 'players-parted', player: 'p1', into: 'p2' },
  'player-erased': { kind: 'player-erased', player: 'p1' },
  'practice-erased': { kind: 'practice-erased', erased: PRACTICE },
  'count-chosen': { kind: 'count-chosen', ...round, pair: 'A', of: 'coach-----' },
  'round-struck': { kind: 'round-struck', ...round },
  'round-restored': { kind: 'round-restored', ...round },
  'practice-struck': { kind: 'practice-struck', practice: PRACTICE },
  'practice-restored': { kind: 'practice-restored', practice: PRACTICE },
  'presence-corrected': {
    ...{ kind: 'presence-corrected', practice: PRACTICE, player: 'p1', present: false },
  },
  'round-settled': { kind: 'round-settled', ...round },
  'round-skipped': { kind: 'round-skipped', ...round },
  'practice-closed': { kind: 'practice-closed', practice: PRACTICE },
  'practice-reopened': { kind: 'practice-reopened', practice: PRACTICE },
};
const everySaying = Object.values(sayings) as Saying[];
const made = (saying: Saying) => makeEntry(saying, ID, MORNING);
const wrong = (kind: Kind, fields: object) => ({ ...made(sayings[kind]), ...fields });

describe('an entry of this version', () => {
  test.each(everySaying)('of the kind $kind is read as it was made', (saying) => {
    const entry = made(saying);
    expect(entry).toEqual({ ...saying, id: ID, at: MORNING });
    expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ as: 'entry', entry });
    expect(isKnown(entry)).toBe(true);
  });

  test.each(everySaying)('of the kind $kind never does without a field it needs', (saying) => {
    const entry: Record<string, unknown> = made(saying);
    const optional = new Set([
      ...['level', 'hand', 'player', 'name', 'courts', 'sets', 'second'],
      ...['focus', 'effort', 'minutes', 'drill', 'a', 'b'],
    ]);
    const must = Object.keys(entry).filter(
      (field) =>
        !(optional.has(field) && readEntry({ ...entry, [field]: undefined }).as === 'entry'),
    );
    expect(must.length).toBeGreaterThanOrEqual(4);
    for (const field of must) {
      const { [field]: _, ...rest } = entry;
      expect(readEntry(rest)).toEqual({ as: 'damaged', path: field });
    }
  });

  test('keeps a field that a later version added', () => {
    const entry = wrong('mark', { weather: { wind: 3 } });
    expect(readEntry(entry)).toEqual({ as: 'entry', entry });
    const deep = wrong('block-planned', { plan: { ...emptyPlan, music: ['drum'] } });
    expect(readEntry(deep)).toEqual({ as: 'entry', entry: deep });
  });

  test('that clears a level is read by a version before it, which takes the name and keeps the level', () => {
    // The entry as the version before wrote and read it.
    const earlier = z.looseObject({
      kind: z.literal('player-changed'),
      player: z.string(),
      name: z.optional(z.string()),
      level: z.optional(z.number().check(z.minimum(1), z.maximum(10))),
      hand: z.optional(z.enum(['right', 'left'])),
    });
    const entry = makeEntry({ ...sayings['player-changed'], cleared: ['level'] }, ID, MORNING);
    const read = earlier.parse(entry);
    expect([read.name, read.level]).toEqual(['Lina', undefined]);
    expect(JSON.parse(JSON.stringify(entry))).toEqual(entry);
    expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ as: 'entry', entry });
  });

  test('made wrongly fails loudly, naming its kind and field', () => {
    const make = (saying: object, id = ID, at = MORNING) => makeEntry(saying as Saying, id, at);
    expect(() => make({ ...sayings.mark, second: -1 })).toThrow(
      new TypeError('a mark was made wrongly at second'),
    );
    expect(() =>
      make({ ...sayings['round-set'], pairs: [{ letter: 'A', players: ['p1'] }] }),
    ).toThrow(new TypeError('a round-set was made wrongly at pairs.0.players'));
    expect(() => make(sayings.mark, 'not-a-stamp')).toThrow('at id');
    expect(() => make(sayings.mark, ID, Number.NaN)).toThrow('at at');
    expect(() => make({ kind: 'spot-look' })).toThrow('at kind');
  });
});

describe('an entry of a kind that is not known', () => {
  const foreign = {
    zeal: [1, { deep: null }],
    kind: 'spot-look',
    at: MORNING,
    id: ID,
    practice: PRACTICE,
    held: true,
  };

  test('is kept untouched to the last field, in their order', () => {
    const reading = readEntry(foreign);
    expect(reading).toEqual({ as: 'unknown', entry: foreign });
    expect(reading.as === 'unknown' && JSON.stringify(reading.entry)).toBe(JSON.stringify(foreign));
    expect(reading.as === 'unknown' && isKnown(reading.entry)).toBe(false);
  });

  test('is kept whatever else stands in it', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (fields) => {
        const record = JSON.parse(JSON.stringify({ ...fields, ...foreign }));
        const reading = readEntry(record);
        expect(reading.as).toBe('unknown');
        expect(reading.as === 'unknown' && JSON.stringify(reading.entry)).toBe(
          JSON.stringify(record),
        );
      }),
    );
  });

  test('may be named like something that every object has', () => {
    for (const kind of ['constructor', 'toString', '__proto__', 'hasOwnProperty']) {
      expect(readEntry({ ...foreign, kind }).as).toBe('unknown');
    }
  });

  test('is damaged where even its stamp, time or practice is', () => {
    expect(readEntry({ ...foreign, id: 'x' })).toEqual({ as: 'damaged', path: 'id' });
    expect(readEntry({ ...foreign, at: '5' })).toEqual({ as: 'damaged', path: 'at' });
    expect(readEntry({ ...foreign, practice: 5 })).toEqual({ as: 'damaged', path: 'practice' });
    expect(readEntry({ ...foreign, kind: '' })).toEqual({ as: 'damaged', path: 'kind' });
  });
});

describe('a record that is damaged', () => {
  const damaged: [record: unknown, path: string][] = [
    [undefined, 'record'],
    [null, 'record'],
    ['mark', 'record'],
    [[], 'record'],
    [{}, 'kind'],
    [wrong('mark', { second: '12' }), 'second'],
    [wrong('mark', { second: Infinity }), 'second'],
    [wrong('mark', { pair: 'M' }), 'pair'],
    [wrong('mark', { round: '' }), 'round'],
    [wrong('mark', { practice: 'x'.repeat(41) }), 'practice'],
    [wrong('mark', { id: `${ID}!` }), 'id'],
    [wrong('mark', { at: -1 }), 'at'],
    [wrong('mark', { at: 4_102_444_800_001 }), 'at'],
    [wrong('mark-judged', { counts: 'yes' }), 'counts'],
    [wrong('mark-taken-back', { mark: 'the last' }), 'mark'],
    [wrong('tally-corrected', { by: 0.5 }), 'by'],
    [wrong('player-added', { name: '' }), 'name'],
    [wrong('player-added', { name: 'x'.repeat(10_000) }), 'name'],
    [wrong('player-added', { level: 11 }), 'level'],
    [wrong('player-added', { hand: 'both' }), 'hand'],
    [wrong('drill-switched', { on: 'yes' }), 'on'],
    [wrong('wish-set', { wish: 'apart?' }), 'wish'],
    [wrong('wish-set', { b: 'p1' }), 'b'],
    [wrong('next-asked', { a: '' }), 'a'],
    [wrong('squad-set', { size: 'tiny' }), 'size'],
    [wrong('squad-set', { courts: 0 }), 'courts'],
    [wrong('squad-set', { courts: 13 }), 'courts'],
    [wrong('squad-set', { units: 'yards' }), 'units'],
    [wrong('practice-opened', { date: '2.3.2026' }), 'date'],
    [wrong('practice-opened', { date: '2026-02-30' }), 'date'],
    [wrong('practice-opened', { date: '2026-13-01' }), 'date'],
    [wrong('practice-opened', { date: '0000-01-01' }), 'date'],
    [wrong('round-set', { seconds: 29 }), 'seconds'],
    [wrong('round-set', { pairs: [] }), 'pairs'],
    [wrong('round-set', { waiting: [{ letter: 'B', players: ['p3'] }] }), 'waiting.0.players'],
    [wrong('round-set', { terms: termsWith({ size: 0 }) }), 'terms.size'],
    [wrong('block-planned', { plan: { ...emptyPlan, steps: [{}] } }), 'plan.steps.0.drill'],
    [wrong('tempo-checked', { seconds: 0 }), 'seconds'],
    [wrong('refeed-checked', { seconds: 121 }), 'seconds'],
    [
      wrong('drill-written', { drill: { ...sayings['drill-written'].drill, rule: 'sequence' } }),
      'drill',
    ],
  ];

  test.each(damaged)('%# tells the path of its first wrong field', (record, path) => {
    expect(readEntry(record)).toEqual({ as: 'damaged', path });
  });

  test('stamped beyond the year 2100 is refused, or no later stamp could be made', () => {
    for (const time of [4_102_444_800_001, 36 ** 9 - 1]) {
      const id = nextStamp('', time, 'writer-one');
      expect(readEntry(wrong('mark', { id }))).toEqual({ as: 'damaged', path: 'id' });
    }
  });

  test('is never thrown at, whatever it is', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withNullPrototype: true }), (record) => {
        expect(readEntry(record).as).toBe('damaged');
      }),
    );
  });

  test('with one field of a known kind replaced by anything is read or damaged, never unknown', () => {
    fc.assert(
      fc.property(fc.constantFrom(...everySaying), fc.nat(), fc.anything(), (saying, at, value) => {
        const entry: Entry = made(saying);
        const fields = Object.keys(entry).filter((field) => field !== 'kind');
        const field = fields[at % fields.length]!;
        expect(readEntry({ ...entry, [field]: value }).as).not.toBe('unknown');
      }),
    );
  });
});
