import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Entry, Saying } from '../../core/ledger/entry.ts';
import { byId, join } from '../../core/ledger/join.ts';
import { foldLibrary } from '../../core/ledger/library.ts';
import { foldPractice, type Practice } from '../../core/ledger/practice.ts';
import { foldSquad } from '../../core/ledger/squad.ts';
import { emptyPlan } from '../../core/round/block.ts';
import { anyPractice } from './practices.ts';
import { MORNING, teller } from './told.ts';

const player = fc.constantFrom('p1', 'p2', 'p3');
const name = fc.constantFrom('Pip', 'Juno', 'Odile');
const one = <K extends string>(...kinds: K[]) => fc.constantFrom(...kinds);
const drill = starterDrills[0]!;

/** What may be said of the squad and the library, in no sensible order. */
const anyStandingSaying: fc.Arbitrary<Saying> = fc.oneof(
  fc.record({ kind: one('player-added'), player, name }),
  fc.record(
    { kind: one('player-changed'), player, name, level: fc.integer({ min: 1, max: 10 }) },
    { requiredKeys: ['kind', 'player'] },
  ),
  fc.record({ kind: one('player-rested', 'player-returned'), player }),
  fc.record({ kind: one('block-kept'), block: player, name, plan: fc.constant(emptyPlan) }),
  fc.record({ kind: one('block-dropped'), block: player }),
  fc.record({
    kind: one('drill-written'),
    drill: fc.constantFrom(drill, { ...drill, perCourt: 2 }),
  }),
  fc.record({ kind: one('drill-dropped'), drill: fc.constant(drill.id) }),
);

const anyStanding: fc.Arbitrary<Entry[]> = fc
  .array(fc.tuple(anyStandingSaying, fc.constantFrom('phone-one', 'phone-two')), { maxLength: 30 })
  .map((told) => {
    const tellers = { 'phone-one': teller('phone-one'), 'phone-two': teller('phone-two') };
    return told
      .map(([saying, writer], at) => tellers[writer as keyof typeof tellers](saying, MORNING + at))
      .sort(byId);
  });

/** A ledger with the place where one part of it ends and the rest begins. */
const inTwo = <E>(entries: E[]) =>
  fc.tuple(fc.constant(entries), fc.nat(entries.length)) as fc.Arbitrary<[E[], number]>;

const countsOf = (practice: Practice | undefined) =>
  practice?.rounds.flatMap(({ tallies }) =>
    tallies.flatMap((tally) => [tally.sets, ...Object.values(tally.byPlayer ?? {})]),
  ) ?? [];

describe('what was read first and what came later', () => {
  test('fold to the practice that the whole folds to', () => {
    fc.assert(
      fc.property(anyPractice.chain(inTwo), ([entries, at]) => {
        const [first, rest] = [entries.slice(0, at), entries.slice(at)];
        const before = structuredClone(first);
        foldPractice(first);
        expect(first).toEqual(before);
        expect(foldPractice(join(first, rest))).toEqual(foldPractice(entries));
        expect(foldPractice(join(rest, first))).toEqual(foldPractice(entries));
      }),
    );
  });

  test('fold to the squad and the library that the whole folds to', () => {
    fc.assert(
      fc.property(anyStanding.chain(inTwo), ([entries, at]) => {
        const [first, rest] = [entries.slice(0, at), entries.slice(at)];
        expect(foldSquad(join(rest, first))).toEqual(foldSquad(entries));
        expect(foldLibrary(join(rest, first))).toEqual(foldLibrary(entries));
      }),
    );
  });
});

describe('a count', () => {
  test('is never negative, whatever was marked, taken back, corrected and renamed, in any order', () => {
    fc.assert(
      fc.property(
        fc.tuple(anyPractice, anyStanding).chain(([entries, standing]) =>
          fc.record({
            entries: fc.shuffledSubarray(entries),
            standing: fc.shuffledSubarray(standing),
          }),
        ),
        ({ entries, standing }) => {
          // As they came, and as a ledger has them.
          for (const told of [entries, join(entries, [])]) {
            expect(countsOf(foldPractice(told)).filter((count) => !(count >= 0))).toEqual([]);
          }
          const named = [...foldSquad(join(standing, [])).values()];
          expect(named.filter((each) => each.name === '')).toEqual([]);
        },
      ),
    );
  });
});

describe('a squad', () => {
  test('has the name that was said last, in whatever order two phones met', () => {
    fc.assert(
      fc.property(
        anyStanding.chain((entries) =>
          fc.tuple(
            fc.constant(entries),
            fc.shuffledSubarray(entries, { minLength: entries.length }),
          ),
        ),
        ([entries, shuffled]) => {
          const squad = foldSquad(join(shuffled, shuffled));
          for (const { id, name } of squad.values()) {
            const begins = entries.findIndex(
              (entry) => entry.kind === 'player-added' && entry.player === id,
            );
            const said = entries
              .slice(begins)
              .filter(
                (entry) =>
                  (entry.kind === 'player-changed' && entry.player === id && entry.name) ||
                  entry === entries[begins],
              )
              .at(-1);
            expect(name).toBe(said && 'name' in said ? said.name : undefined);
          }
        },
      ),
    );
  });
});
