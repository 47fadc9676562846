import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, Saying } from '../../../core/ledger/entry.ts';
import { isPractised, join } from '../../../core/ledger/join.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { writerOf } from '../../../core/ledger/stamp.ts';
import { summarise } from '../../../core/ledger/summary.ts';
import type { Pair } from '../../../core/round/pair.ts';
import { serveTerms, termsWith } from '../made.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

/*
 * Two phones hold one practice, each goes on by itself, and their ledgers are joined: no set may be
 * credited to another child, and none twice.
 */

const ROUND = { practice: PRACTICE, round: 'r1' };
const FIRST: Pair[] = [
  { letter: 'A', players: ['ana', 'bo'] },
  { letter: 'B', players: ['cy', 'dot'] },
];
const SWAPPED: Pair[] = [
  { letter: 'A', players: ['ana', 'cy'] },
  { letter: 'B', players: ['bo', 'dot'] },
];
const setTo = (pairs: Pair[], round = 'r1', terms = termsWith()): Saying => ({
  ...{ kind: 'round-set', practice: PRACTICE, round, ordinal: 0, terms, seconds: 120, pairs },
});

/** A phone with a name of its own; each window of it writes under that name. */
const phone = (name: string) => teller(writerOf(name.padEnd(10, '-'), 'window'));

/** What both phones held before they went on by themselves. */
function shared() {
  const coach = phone('coach');
  return [
    coach({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' }),
    coach(setTo(FIRST)),
  ];
}

const foldAll = (...ledgers: Entry[][]) =>
  foldPractice(ledgers.reduce((all, each) => join(all, each), [] as Entry[]).filter(isPractised))!;

/** Rounds as a person sees them: players, and the sets that are credited to them. */
const credited = (...ledgers: Entry[][]) =>
  summarise(foldAll(...ledgers), MORNING + 3_600_000)
    .rounds.flatMap(({ tallies }) => tallies)
    .map(({ pair, sets }) => `${pair.players.join(' ')}: ${sets}`);

describe('a round that two phones started with pairs of their own', () => {
  const before = shared();
  const [coach, helper] = [phone('coach'), phone('helper')];
  const stood = { ...ROUND, set: before[1]!.id };
  const mine = [
    coach({ kind: 'clock-started', ...stood }, MORNING + 10_000),
    coach({ kind: 'mark', ...stood, pair: 'A', second: 20 }, MORNING + 30_000),
    coach({ kind: 'mark', ...stood, pair: 'A', second: 50 }, MORNING + 60_000),
  ];
  const swapped = helper(setTo(SWAPPED), MORNING + 5_000);
  const changed = { ...ROUND, set: swapped.id };
  const theirs = [
    swapped,
    helper({ kind: 'clock-started', ...changed }, MORNING + 12_000),
    helper({ kind: 'mark', ...changed, pair: 'B', second: 22 }, MORNING + 34_000),
  ];

  test('is two rounds, and each mark stays with the children it was tapped for', () => {
    const { rounds } = foldAll(before, mine, theirs);
    expect(rounds.map(({ id, said }) => [id, said.set])).toEqual([
      ['r1', before[1]!.id],
      ['r1~2', swapped.id],
    ]);
    const marks = rounds.map((round) =>
      [...round.tallies, ...(round.aside ?? [])].map(
        ({ pair, sets }) => `${pair.players.join(' ')}: ${sets}`,
      ),
    );
    expect(marks[0]!.toSorted()).toEqual(['ana bo: 2', 'cy dot: 0']);
    expect(marks[1]!.toSorted()).toEqual(['ana cy: 0', 'bo dot: 1']);
  });

  test('credits every child once: where two counts share one, the larger stands', () => {
    expect(credited(before, mine, theirs)).toEqual(['ana bo: 2', 'cy dot: 0']);
    expect(foldAll(before, mine, theirs).rounds[1]!.aside).toHaveLength(2);
  });

  test('is the same in whatever order the ledgers are joined', () => {
    expect(foldAll(theirs, mine, before)).toEqual(foldAll(before, mine, theirs));
    expect(foldAll(mine, theirs, before, mine)).toEqual(foldAll(before, mine, theirs));
  });

  test('is read by letters alone where an earlier version wrote it', () => {
    const old = teller('writer-one');
    const tap = old({ kind: 'mark', ...ROUND, pair: 'B', second: 30 }, MORNING + 40_000);
    expect(credited(before, [old({ kind: 'clock-started', ...ROUND }), tap])).toEqual([
      'ana bo: 0',
      'cy dot: 1',
    ]);
  });
});

describe('a pair that two phones counted in the same round', () => {
  const before = shared();
  const round = { ...ROUND, set: before[1]!.id };
  const started = phone('coach')({ kind: 'clock-started', ...round }, MORNING + 10_000);
  const taps = (name: string, seconds: number[], pair = 'A') => {
    const tell = phone(name);
    return seconds.map((second) =>
      tell({ kind: 'mark', ...round, pair, second }, MORNING + 10_000 + 1000 * second),
    );
  };

  test('has the larger count, not the sum, and both are told', () => {
    const joined = foldAll(
      [...before, started],
      taps('coach', [20, 50]),
      taps('helper', [21, 51, 80]),
    );
    expect(joined.rounds[0]!.tallies[0]).toMatchObject({
      sets: 3,
      times: [21, 51, 80],
      also: [{ phone: 'coach-----', sets: 2 }],
    });
    expect(joined.rounds[0]!.phones.A).toBe('helper----');
    expect(joined.rounds[0]!.marks.A!.map(({ second }) => second)).toEqual([21, 51, 80]);
  });

  test('has the count that the coach chose, until another is chosen', () => {
    const counts = [[...before, started], taps('coach', [20, 50]), taps('helper', [21, 51, 80])];
    const choose = phone('coach');
    const chosen = (of: string, at: number) =>
      choose({ kind: 'count-chosen', ...round, pair: 'A', of }, MORNING + at);
    const own = chosen('coach-----', 200_000);
    const tally = foldAll(...counts, [own]).rounds[0]!.tallies[0]!;
    expect(tally).toMatchObject({ sets: 2, times: [20, 50], chosen: true });
    expect(tally.also).toEqual([{ phone: 'helper----', sets: 3 }]);
    const theirs = chosen('helper----', 210_000);
    expect(foldAll(...counts, [theirs, own]).rounds[0]!.tallies[0]!.sets).toBe(3);
  });

  test('has the larger count where one was chosen that nobody made', () => {
    const chosen = phone('coach')(
      { kind: 'count-chosen', ...round, pair: 'A', of: 'nobody----' },
      MORNING + 200_000,
    );
    const { tallies } = foldAll([...before, started], taps('coach', [20]), [chosen]).rounds[0]!;
    expect(tallies[0]).toMatchObject({ sets: 1 });
    expect(tallies[0]).not.toHaveProperty('chosen');
  });

  test('says nothing of a phone that counted none', () => {
    const joined = foldAll(
      [...before, started],
      taps('coach', [20, 50]),
      taps('helper', [30], 'B'),
    );
    expect(joined.rounds[0]!.tallies.map(({ sets }) => sets)).toEqual([2, 1]);
    expect(joined.rounds[0]!.tallies.some((tally) => 'also' in tally)).toBe(false);
  });

  test('is not found doubtful because the other phone tapped a moment before', () => {
    const joined = foldAll([...before, started], taps('coach', [20]), taps('helper', [21, 60]));
    expect(joined.rounds[0]!.tallies[0]).toMatchObject({ sets: 2, doubtful: 0, open: 0 });
  });

  test('is corrected in the count that stands, so that a plus is one more', () => {
    const counts = [before, [started], taps('coach', [20]), taps('helper', [21, 60])].flat();
    const { phones } = foldAll(counts).rounds[0]!;
    const plus = phone('coach')(
      { kind: 'tally-corrected', ...round, pair: 'A', by: 1, of: phones.A },
      MORNING + 200_000,
    );
    expect(foldAll(counts, [plus]).rounds[0]!.tallies[0]!.sets).toBe(3);
  });

  test('adds what two windows of one phone counted', () => {
    const windows = ['first-', 'second'].map((window) => {
      const tell = teller(writerOf('coach-----', window));
      return tell({ kind: 'mark', ...round, pair: 'A', second: 30 }, MORNING + 40_000);
    });
    const joined = foldAll(before, [started], windows);
    expect(joined.rounds[0]!.tallies[0]!.sets).toBe(2);
  });

  test('goes on with what an earlier version of the same phone had counted', () => {
    const old = teller('writer-one')(
      { kind: 'mark', ...ROUND, pair: 'A', second: 20 },
      MORNING + 30_000,
    );
    expect(
      foldAll([...before, started, old], taps('coach', [60])).rounds[0]!.tallies[0]!.sets,
    ).toBe(2);
  });

  test('counts for the player who struck by the phone that saw more of them', () => {
    const [opened] = shared();
    const set = phone('coach')(setTo(FIRST, 'r1', serveTerms), MORNING + 1);
    const target = { ...ROUND, set: set.id };
    const hits = (name: string, players: string[]) => {
      const tell = phone(name);
      return players.map((player, at) =>
        tell(
          { kind: 'mark', ...target, pair: 'A', player, second: 10 * (at + 1) },
          MORNING + 10 + at,
        ),
      );
    };
    const start = phone('coach')({ kind: 'clock-started', ...target }, MORNING + 2);
    const { tallies } = foldAll(
      [opened!, set, start],
      hits('coach', ['ana', 'ana', 'bo']),
      hits('helper', ['ana']),
    ).rounds[0]!;
    expect(tallies[0]).toMatchObject({ sets: 3, byPlayer: { ana: 2, bo: 1 } });
    expect(tallies[0]!.also).toEqual([
      { phone: 'helper----', sets: 1, byPlayer: { ana: 1, bo: 0 } },
    ]);
  });
});

describe('the next round of a practice, set on two phones', () => {
  const before = shared();
  const own = (name: string, round: string, pairs: Pair[], taps: [string, number][]) => {
    const tell = phone(name);
    const set = tell(setTo(pairs, round), MORNING + 1000);
    const said = { practice: PRACTICE, round, set: set.id };
    return [
      set,
      tell({ kind: 'clock-started', ...said }, MORNING + 2000),
      ...taps.map(([pair, second]) =>
        tell({ kind: 'mark', ...said, pair, second }, MORNING + 2000 + 1000 * second),
      ),
    ];
  };

  test('with the same pairs counts each pair once, whoever counted it', () => {
    const coach = own('coach', 'c1', FIRST, [
      ['A', 20],
      ['A', 50],
    ]);
    const helper = own('helper', 'h1', FIRST, [
      ['A', 21],
      ['B', 30],
    ]);
    expect(credited(before, coach, helper)).toEqual(['ana bo: 2', 'cy dot: 1']);
  });

  test('alike and by one name is one round, with each court by the phone that counted it', () => {
    const coach = own('coach', 'r2', FIRST, [['A', 20]]);
    const helper = own('helper', 'r2', FIRST, [['B', 30]]);
    const joined = foldAll(before, coach, helper);
    expect(joined.rounds.filter(({ clock }) => clock)).toHaveLength(1);
    expect(credited(helper, coach, before)).toEqual(['ana bo: 1', 'cy dot: 1']);
  });

  test('with pairs of their own has the counts that the coach chose', () => {
    const coach = own('coach', 'r2', FIRST, [
      ['A', 20],
      ['A', 40],
    ]);
    const helper = own('helper', 'r2', SWAPPED, [['A', 30]]);
    const said = { practice: PRACTICE, round: 'r2', set: helper[0]!.id };
    const chosen = phone('coach')(
      { kind: 'count-chosen', ...said, pair: 'A', of: 'helper----' },
      MORNING + 300_000,
    );
    expect(credited(before, coach, helper, [chosen])).toContain('ana cy: 1');
    expect(credited(before, coach, helper, [chosen])).not.toContain('ana bo: 2');
  });

  test('shows no two rounds of one number', () => {
    const joined = foldAll(before, own('coach', 'c1', FIRST, []), own('helper', 'h1', FIRST, []));
    const numbers = joined.rounds.map(({ ordinal }) => ordinal);
    expect(new Set(numbers).size).toBe(numbers.length);
  });
});

test('joined in any order, two phones that did anything credit no child twice at a time', () => {
  const tap = fc.tuple(fc.constantFrom('A', 'B'), fc.integer({ min: 1, max: 119 }));
  const phoneDid = fc.record({ swap: fc.boolean(), taps: fc.array(tap, { maxLength: 8 }) });
  fc.assert(
    fc.property(phoneDid, phoneDid, fc.boolean(), (one, other, sameRound) => {
      const before = shared();
      const play = (name: string, { swap, taps }: typeof one) => {
        const tell = phone(name);
        const round = sameRound ? 'r1' : name;
        const set =
          swap || !sameRound ? tell(setTo(swap ? SWAPPED : FIRST, round), MORNING + 1) : before[1]!;
        const said = { practice: PRACTICE, round, set: set.id };
        const entries = [set, tell({ kind: 'clock-started', ...said }, MORNING + 2)];
        for (const [pair, second] of taps) {
          entries.push(tell({ kind: 'mark', ...said, pair, second }, MORNING + 3));
        }
        return entries;
      };
      const [mine, theirs] = [play('coach', one), play('helper', other)];
      const joined = foldAll(before, mine, theirs);
      expect(foldAll(theirs, before, mine)).toEqual(joined);
      const players = joined.rounds
        .filter(({ clock }) => clock)
        .flatMap(({ tallies }) => tallies.flatMap(({ pair }) => pair.players));
      expect(new Set(players).size).toBe(players.length);
      // Nobody has more than either phone counted for them.
      const most = (player: string) =>
        Math.max(
          ...[mine, theirs].map((own) => {
            const pairs = own.flatMap((entry) => (entry.kind === 'round-set' ? entry.pairs : []));
            const letter = pairs.find((pair) => pair.players.includes(player))?.letter;
            return own.filter((entry) => entry.kind === 'mark' && entry.pair === letter).length;
          }),
        );
      for (const { clock, tallies } of joined.rounds) {
        if (!clock) continue;
        for (const { pair, sets } of tallies) {
          expect(sets).toBeLessThanOrEqual(Math.max(...pair.players.map(most)));
        }
      }
    }),
  );
});
