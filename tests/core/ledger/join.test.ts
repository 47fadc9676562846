import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byId, isPractised, isStanding, join } from '../../../core/ledger/join.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { anyPractice } from '../practices.ts';
import { teller } from '../told.ts';

/** A practice's entries dealt out to two phones, some to both, each phone's in any order. */
const anyTwoLedgers = anyPractice.chain((entries) =>
  fc
    .array(fc.constantFrom('one', 'other', 'both'), {
      minLength: entries.length,
      maxLength: entries.length,
    })
    .chain((owners) => {
      const held = (owner: string) =>
        entries.filter((_, at) => owners[at] === owner || owners[at] === 'both');
      const shuffled = (phone: typeof entries) =>
        fc.shuffledSubarray(phone, { minLength: phone.length });
      return fc.record({
        entries: fc.constant(entries),
        one: shuffled(held('one')),
        other: shuffled(held('other')),
      });
    }),
);

describe('two ledgers that are joined', () => {
  test('hold every entry once, in the order in which things happened', () => {
    fc.assert(
      fc.property(anyTwoLedgers, ({ entries, one, other }) => {
        expect(join(one, other)).toEqual(entries);
      }),
    );
  });

  test('are the same either way round, and joining again changes nothing', () => {
    fc.assert(
      fc.property(anyTwoLedgers, ({ one, other }) => {
        const joined = join(one, other);
        expect(join(other, one)).toEqual(joined);
        expect(join(joined, one)).toEqual(joined);
        expect(join(other, joined)).toEqual(joined);
        expect(join(joined, joined)).toEqual(joined);
      }),
    );
  });

  test('are the same in whatever order three phones meet', () => {
    fc.assert(
      fc.property(anyTwoLedgers, anyPractice, ({ one, other }, third) => {
        expect(join(join(one, other), third).map(({ id }) => id)).toEqual(
          join(one, join(third, other)).map(({ id }) => id),
        );
      }),
    );
  });

  test('fold to the practice that a single phone would have, however they met', () => {
    fc.assert(
      fc.property(anyTwoLedgers, ({ entries, one, other }) => {
        expect(foldPractice(join(join(other, one), other))).toEqual(foldPractice(entries));
      }),
    );
  });

  test('leave what was joined as it was', () => {
    const tell = teller();
    const early = tell({ kind: 'player-rested', player: 'p1' });
    const late = tell({ kind: 'player-returned', player: 'p1' });
    const one = [late];
    const other = [early];
    expect(join(one, other)).toEqual([early, late]);
    expect([one, other]).toEqual([[late], [early]]);
  });

  test('may be empty', () => {
    expect(join([], [])).toEqual([]);
  });
});

describe('an entry', () => {
  const tell = teller();
  const standing = tell({ kind: 'player-rested', player: 'p1' });
  const practised = tell({ kind: 'practice-closed', practice: 'practice-1' });

  test('belongs to one practice or stands beyond it', () => {
    expect([standing, practised].map(isPractised)).toEqual([false, true]);
    expect([standing, practised].map(isStanding)).toEqual([true, false]);
  });

  test('of an unknown kind is sorted by its practice too', () => {
    const foreign = { kind: 'spot-look', id: standing.id, at: 0 };
    expect(isPractised({ ...foreign, practice: 'practice-1' })).toBe(true);
    expect(isStanding(foreign)).toBe(true);
  });

  test('comes before another by its id', () => {
    expect(byId(standing, practised)).toBe(-1);
    expect(byId(practised, standing)).toBe(1);
    expect(byId(standing, standing)).toBe(0);
  });
});
