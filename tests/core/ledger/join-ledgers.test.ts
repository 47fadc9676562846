import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AnyEntry, type Entry, makeEntry, type Saying } from '../../../core/ledger/entry.ts';
import { isPractised } from '../../../core/ledger/join.ts';
import { joinLedgers } from '../../../core/ledger/join-ledgers.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { foldSquad } from '../../../core/ledger/squad.ts';
import { nextStamp } from '../../../core/ledger/stamp.ts';
import { anyPractice } from '../practices.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

/** CASES=100000 is the large run. */
const numRuns = Number(process.env.CASES ?? 300);

const player = fc.constantFrom('p1', 'p2', 'p3');
const name = fc.constantFrom('Pip', 'Juno', 'Odile');
const one = <K extends string>(...kinds: K[]) => fc.constantFrom(...kinds);
const two = fc.shuffledSubarray(['p1', 'p2', 'p3'], { minLength: 2, maxLength: 2 });

/** What is said beyond the marks: names, who is whom, what is struck, put right and erased. */
const anySaying: fc.Arbitrary<Saying> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ kind: one('player-added'), player, name }) },
  { weight: 2, arbitrary: fc.record({ kind: one('player-changed'), player, name }) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(one('players-merged', 'players-parted'), two)
      .map(([kind, [a, b]]) => ({ kind, player: a!, into: b! })),
  },
  two.map(([a, b]) => ({ kind: 'wish-set' as const, a: a!, b: b!, wish: 'apart' as const })),
  fc.record({ kind: one('player-erased'), player }),
  fc.record({ kind: one('practice-erased'), erased: one('practice-2', PRACTICE) }),
  fc.record({ kind: one('practice-opened'), practice: one('practice-2'), date: one('2026-03-04') }),
  {
    weight: 2,
    arbitrary: fc.record({
      kind: one('round-struck', 'round-restored', 'round-settled'),
      practice: one(PRACTICE),
      round: one('r1', 'r2'),
    }),
  },
  fc.record({
    kind: one('count-chosen'),
    practice: one(PRACTICE),
    round: one('r1'),
    pair: one('A', 'B'),
    of: one('phone-one-', 'phone-two-'),
  }),
);

const anyLedger: fc.Arbitrary<AnyEntry[]> = fc
  .tuple(
    anyPractice,
    fc.array(fc.tuple(anySaying, fc.integer({ min: 0, max: 400_000 })), { maxLength: 14 }),
  )
  .map(([practice, more]) => {
    const said: Entry[] = [];
    for (const [saying, at] of more.toSorted(([, a], [, b]) => a - b)) {
      const id = nextStamp(said.at(-1)?.id ?? '', MORNING + at, 'phone-three');
      said.push(makeEntry(saying, id, MORNING + at));
    }
    return [...practice, ...said];
  });

/** One ledger's entries as three phones hold them: each some, some all. */
const anyThree = anyLedger.chain((entries) =>
  fc.tuple(
    fc.constant(entries),
    ...([0, 1, 2].map(() => fc.shuffledSubarray(entries)) as [
      fc.Arbitrary<AnyEntry[]>,
      fc.Arbitrary<AnyEntry[]>,
      fc.Arbitrary<AnyEntry[]>,
    ]),
  ),
);

/** What people see of a ledger. */
const seen = (ledger: readonly AnyEntry[]) => ({
  squad: foldSquad(ledger as Entry[]),
  practice: foldPractice(ledger.filter((entry) => entry.practice === PRACTICE).filter(isPractised)),
});

describe('ledgers that meet, with erasures, merges, struck rounds and corrections,', () => {
  test(`are the same either way round, in any order, any number of times (${numRuns} cases)`, () => {
    fc.assert(
      fc.property(anyThree, ([, a, b, c]) => {
        const joined = joinLedgers(joinLedgers(a, b), c);
        expect(joinLedgers(b, a)).toEqual(joinLedgers(a, b));
        expect(joinLedgers(a, joinLedgers(c, b))).toEqual(joined);
        expect(joinLedgers(joined, a)).toEqual(joined);
        expect(joinLedgers(joined, joined)).toEqual(joined);
        expect(seen(joinLedgers(c, joinLedgers(b, a)))).toEqual(seen(joined));
      }),
      { numRuns },
    );
  });

  test('hold no word of an erased player’s and no entry of an erased practice, whoever comes back', () => {
    fc.assert(
      fc.property(anyThree, ([all, a, b]) => {
        const erasing = all.filter(({ kind }) => kind.endsWith('-erased'));
        const joined = joinLedgers(joinLedgers(a, erasing), b);
        for (const { kind, player, erased } of erasing) {
          const left = joined.filter((entry) =>
            kind === 'player-erased'
              ? entry.player === player && 'name' in entry
              : entry.practice === erased,
          );
          expect(left).toEqual([]);
        }
      }),
      { numRuns },
    );
  });

  test('lose nothing but what was erased', () => {
    fc.assert(
      fc.property(anyThree, ([, a, b]) => {
        const joined = new Set(joinLedgers(a, b).map(({ id }) => id));
        const gone = [...a, ...b].filter(({ id }) => !joined.has(id));
        const erasing = [...a, ...b].filter(({ kind }) => kind.endsWith('-erased'));
        for (const entry of gone) {
          expect(
            erasing.some(
              ({ player, erased }) =>
                (erased !== undefined && erased === entry.practice) ||
                [entry.player, entry.a, entry.b].includes(player),
            ),
          ).toBe(true);
        }
      }),
      { numRuns },
    );
  });
});

describe('an erased player', () => {
  const tell = teller();
  const added = tell({ kind: 'player-added', player: 'p1', name: 'Pip' });
  const partner = tell({ kind: 'player-added', player: 'p2', name: 'Juno' });
  const wish = tell({ kind: 'wish-set', a: 'p2', b: 'p1', wish: 'apart' });
  const came = tell({ kind: 'player-came', practice: PRACTICE, player: 'p1' });
  const erased = tell({ kind: 'player-erased', player: 'p1' });
  const before = [added, partner, wish, came];

  test('is out of the squad, and what was counted with the partner stays', () => {
    const left = joinLedgers(before, [erased]);
    expect(left).toEqual([partner, came, erased]);
    expect([...foldSquad(left as Entry[]).keys()]).toEqual(['p2']);
  });

  test('loses what a practice says of the player alone, and the partner keeps it', () => {
    const of = (player: string) => [
      tell({
        ...{ kind: 'look', practice: PRACTICE, round: 'r1', player, focus: 'f1' },
        second: 20,
        saw: 'yes',
      }),
      tell({ kind: 'effort-told', practice: PRACTICE, player, effort: 7 }),
    ];
    const theirs = of('p2');
    expect(joinLedgers([...of('p1'), ...theirs], [erased])).toEqual(joinLedgers(theirs, [erased]));
  });

  test('does not come back with an older file, nor by a name that is given later', () => {
    const renamed = tell({ kind: 'player-changed', player: 'p1', name: 'Pippa' });
    const again = joinLedgers(joinLedgers(before, [erased]), [...before, renamed]);
    expect(JSON.stringify(again)).not.toMatch(/Pip/);
  });

  test('is erased under every name that was said to be the same child’s', () => {
    const twin = tell({ kind: 'player-added', player: 'p3', name: 'Pip' });
    const merged = tell({ kind: 'players-merged', player: 'p3', into: 'p1' });
    const left = joinLedgers([...before, twin, merged], [erased]) as Entry[];
    expect([...foldSquad(left).values()].map(({ name }) => name)).toEqual(['Juno']);
  });
});
