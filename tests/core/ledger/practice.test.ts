import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Terms } from '../../../core/drill/drill.ts';
import type { Entry, PracticeEntry, Saying } from '../../../core/ledger/entry.ts';
import { isPractised } from '../../../core/ledger/join.ts';
import { foldPractice, type OpenRound, recordedIn } from '../../../core/ledger/practice.ts';
import { emptyPlan } from '../../../core/round/block.ts';
import { liveSeconds } from '../../../core/round/clock.ts';
import type { Pair } from '../../../core/round/pair.ts';
import { counts, leastSeconds } from '../../../core/round/tally.ts';
import { serveTerms, termsWith } from '../made.ts';
import { anyPractice } from '../practices.ts';
import { MORNING, NO_STAMP, PRACTICE, teller, told } from '../told.ts';

const ROUND = { practice: PRACTICE, round: 'r1' };
const AB: Pair[] = [{ letter: 'A', players: ['a', 'b'] }];
const opened: Saying = { kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' };
const set = (
  over: { terms?: Terms; pairs?: Pair[]; ordinal?: number; round?: string } = {},
): Saying => ({
  kind: 'round-set',
  ...ROUND,
  ordinal: 0,
  terms: termsWith(),
  seconds: 120,
  pairs: AB,
  ...over,
});
const started: Saying = { kind: 'clock-started', ...ROUND };
const mark = (second: number, player?: string, pair = 'A'): Saying => ({
  kind: 'mark',
  ...ROUND,
  pair,
  second,
  ...(player && { player }),
});
const corrected = (by: number, player?: string): Saying => ({
  kind: 'tally-corrected',
  ...ROUND,
  pair: 'A',
  by,
  ...(player && { player }),
});

const came = (player: string) => ({ kind: 'player-came', practice: PRACTICE, player }) as const;
const gone = (player: string) => ({ kind: 'player-left', practice: PRACTICE, player }) as const;

const fold = (...sayings: Saying[]) => foldPractice(told(opened, ...sayings))!;

/** The practice of entries in this order, which tests may choose. */
const foldAll = (entries: Entry[]) => foldPractice(entries.filter(isPractised));

type Tap = number | readonly [second: number, player: string];
type Said = Saying | { back: number } | { judged: number; counts: boolean };

/** The only round of a practice with these marks, and what was said of each by its number. */
function played(taps: readonly Tap[], said: readonly Said[] = [], terms = termsWith()): OpenRound {
  const tell = teller();
  const start = [opened, set({ terms }), started].map((saying) => tell(saying));
  const marks = taps.map((tap) => tell(typeof tap === 'number' ? mark(tap) : mark(...tap)));
  const idOf = (number: number) => marks[number]?.id ?? NO_STAMP;
  const sayings = said.map((what): Saying => {
    if ('kind' in what) return what;
    return 'back' in what
      ? { kind: 'mark-taken-back', ...ROUND, mark: idOf(what.back) }
      : { kind: 'mark-judged', ...ROUND, mark: idOf(what.judged), counts: what.counts };
  });
  return foldAll([...start, ...marks, ...sayings.map((saying) => tell(saying))])!.rounds[0]!;
}
const tallyOf = (...from: Parameters<typeof played>) => played(...from).tallies[0]!;

describe('a practice', () => {
  test('that nobody opened is undefined', () => {
    expect(foldPractice([])).toBeUndefined();
    expect(foldPractice(told(set(), started))).toBeUndefined();
  });

  test('once opened is empty', () => {
    expect(fold()).toEqual({
      ...{ id: PRACTICE, date: '2026-03-02', opened: told(opened)[0]!.id },
      ...{ here: [], attended: [], rounds: [], closed: false, struck: false },
    });
  });

  test('opened by two phones keeps the first date', () => {
    expect(fold({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-03' }).date).toBe(
      '2026-03-02',
    );
  });

  test('knows who is here in the order of arrival', () => {
    const practice = fold(came('a'), came('b'), came('b'), gone('a'), came('c'), came('a'));
    expect(practice.here).toEqual(['b', 'c', 'a']);
  });

  test('was attended by nobody while no clock ran: a tap on a name is no attendance', () => {
    expect(fold(came('a'), came('b'), came('c'), gone('c')).attended).toEqual([]);
  });

  test('was attended by whoever was here while a clock ran, and not by a slip before it', () => {
    const practice = fold(came('a'), came('slip'), came('b'), gone('slip'), set(), started);
    expect(practice.attended).toEqual(['a', 'b']);
    // One who waits for a court, and one who comes in mid-round and leaves again.
    const more = fold(came('waits'), set(), started, came('late'), gone('late'), came('too'));
    expect(more.attended).toEqual(['waits', 'late', 'too', 'a', 'b']);
  });

  test('was not attended by one who came after the last horn', () => {
    const tell = teller();
    const start = [opened, came('a'), came('b'), set(), started].map((each) => tell(each));
    const after = tell(came('c'), MORNING + 121_000);
    expect(foldAll([...start, after])!.attended).toEqual(['a', 'b']);
  });

  test('was attended by whoever the coach says it was, whatever was tapped', () => {
    const present = (player: string, is: boolean) =>
      ({ kind: 'presence-corrected', practice: PRACTICE, player, present: is }) as const;
    const round = [came('a'), came('b'), set(), started];
    expect(fold(...round, present('b', false), present('c', true)).attended).toEqual(['a', 'c']);
    expect(fold(...round, present('b', false), present('b', true)).attended).toEqual(['a', 'b']);
  });

  test('has the plan that was made last', () => {
    const planned = (seconds: number) =>
      ({ kind: 'block-planned', practice: PRACTICE, plan: { ...emptyPlan, seconds } }) as const;
    expect(fold(planned(90), planned(60)).plan?.seconds).toBe(60);
  });

  test('knows of each drill the last tempo and the last re-feed that were measured', () => {
    const check = (kind: 'tempo-checked' | 'refeed-checked', drill: string, seconds: number) =>
      ({ kind, practice: PRACTICE, drill, seconds }) as const;
    expect(fold().paces).toBeUndefined();
    expect(
      fold(
        check('tempo-checked', 'rally', 1.4),
        check('refeed-checked', 'rally', 5),
        check('tempo-checked', 'lob', 2),
        check('tempo-checked', 'rally', 1.5),
      ).paces,
    ).toEqual({ rally: { tempo: 1.5, refeed: 5 }, lob: { tempo: 2 } });
  });

  test('is closed, and open again', () => {
    const closed = { kind: 'practice-closed', practice: PRACTICE } as const;
    expect(fold(closed).closed).toBe(true);
    expect(fold(closed, { kind: 'practice-reopened', practice: PRACTICE }).closed).toBe(false);
  });

  test('has its rounds in the order in which they were started, numbered from 0', () => {
    const start = (round: string): Saying => ({ kind: 'clock-started', practice: PRACTICE, round });
    const rounds = fold(
      ...[set({ round: 'next' }), set({ round: 'late' }), set({ round: 'early', ordinal: 1 })],
      ...[start('early'), start('late')],
    ).rounds;
    expect(rounds.map(({ id, ordinal }) => [id, ordinal])).toEqual([
      ['early', 0],
      ['late', 1],
      ['next', 2],
    ]);
  });

  test('takes no notice of entries of a round that was never set, nor of unknown kinds', () => {
    const entries = told(opened, started, mark(20));
    const foreign = { ...entries[2]!, kind: 'spot-look', id: NO_STAMP } as unknown as PracticeEntry;
    expect(foldPractice([...entries, foreign])?.rounds).toEqual([]);
    const [first, ...rest] = told(opened, set(), started, mark(20));
    expect(foldPractice([first!, ...rest, foreign])).toEqual(foldPractice([first!, ...rest]));
  });
});

describe('a round', () => {
  const CD: Pair[] = [{ letter: 'A', players: ['c', 'd'] }];

  test('keeps the pairs that wait, which have no tally in it', () => {
    const waiting: Pair[] = [{ letter: 'B', players: ['c', 'd'] }];
    const [round] = fold({ ...set(), waiting } as Saying, started).rounds;
    expect(round?.waiting).toEqual(waiting);
    expect(round?.tallies.map(({ pair }) => pair)).toEqual(AB);
    expect(fold(set()).rounds[0]).not.toHaveProperty('waiting');
  });

  test('can be set again until its clock starts', () => {
    expect(fold(set(), set({ pairs: CD })).rounds.map(({ tallies }) => tallies[0]?.pair)).toEqual(
      CD,
    );
  });

  test('stays with the pairs, terms and length that it started with', () => {
    const late = set({ pairs: CD, terms: termsWith({ size: 4 }), ordinal: 5 });
    expect(fold(set(), started, late)).toEqual(fold(set(), started));
  });

  test('has one start, the first, where two phones press', () => {
    expect(fold(set(), started, started).rounds[0]?.clock?.start).toBe(MORNING + 2);
  });

  test('takes its clock from its entries', () => {
    const tell = teller();
    const entries = [
      tell(opened),
      tell(set()),
      tell(started, MORNING),
      tell({ kind: 'clock-paused', ...ROUND }, MORNING + 30_000),
      tell({ kind: 'clock-resumed', ...ROUND }, MORNING + 50_000),
      tell({ kind: 'clock-extended', ...ROUND, seconds: 30 }, MORNING + 60_000),
      tell({ kind: 'clock-stopped', ...ROUND }, MORNING + 100_000),
    ];
    expect(foldAll(entries)?.rounds[0]?.clock).toEqual({
      start: MORNING,
      length: 150,
      pauses: [{ from: MORNING + 30_000, to: MORNING + 50_000 }],
      stopped: MORNING + 100_000,
    });
  });

  test('has no clock before its start, whatever is pressed', () => {
    const [round] = fold(set(), { kind: 'clock-paused', ...ROUND }).rounds;
    expect(round).not.toHaveProperty('clock');
  });

  test('keeps that its clock was doubted, settled or passed over', () => {
    const [round] = fold(set(), started, { kind: 'clock-doubted', ...ROUND, seconds: -60 }).rounds;
    expect([round?.jumped, round?.settled, round?.left]).toEqual([-60, false, false]);
    const [skipped] = fold(set(), { kind: 'round-skipped', ...ROUND }).rounds;
    expect([skipped?.settled, skipped?.left]).toEqual([false, true]);
    const [settled] = fold(set(), { kind: 'round-settled', ...ROUND }).rounds;
    expect([settled?.settled, settled?.left]).toEqual([true, true]);
  });

  test("goes on with its live seconds where the phone's own clock was set back an hour", () => {
    const tell = teller();
    const hour = 3_600_000;
    const entries = [
      tell(opened),
      tell(set()),
      tell(started, MORNING),
      tell(mark(30), MORNING + 30_000),
      tell({ kind: 'clock-doubted', ...ROUND, seconds: -3600, live: 40 }, MORNING + 40_000 - hour),
      tell({ kind: 'clock-paused', ...ROUND }, MORNING + 50_000 - hour),
    ];
    const [round] = foldAll(entries)!.rounds;
    expect(round?.jumped).toBe(-3600);
    expect(liveSeconds(round!.clock!, MORNING + 90_000 - hour)).toBe(50);
    expect(round?.tallies[0]?.times).toEqual([30]);
  });

  test("keeps its recorded length once it was left, whatever the phone's clock says since", () => {
    const left = fold(set(), started, { kind: 'round-settled', ...ROUND }).rounds[0]!;
    expect(recordedIn(left, left.clock!, MORNING - 3_600_000)).toBe(120);
    const running = fold(set(), started).rounds[0]!;
    expect(recordedIn(running, running.clock!, running.clock!.start + 50_000)).toBe(50);
  });

  test('has what showed at the horn and the best run, as said last', () => {
    const showing = (shots: number) =>
      ({ kind: 'set-showing', ...ROUND, pair: 'A', shots }) as const;
    const best = (shots: number) => ({ kind: 'best-run', ...ROUND, pair: 'A', shots }) as const;
    expect(tallyOf([], [showing(3), showing(0), best(9), best(8)])).toMatchObject({
      showing: 0,
      best: 8,
    });
    expect(tallyOf([])).not.toHaveProperty('showing');
  });
});

describe('a mark', () => {
  test('is one set for its pair', () => {
    const pairs: Pair[] = [...AB, { letter: 'B', players: ['c', 'd'] }];
    const round = fold(set({ pairs }), started, mark(20), mark(40), mark(30, undefined, 'B'))
      .rounds[0];
    expect(round?.tallies.map(({ sets, times }) => [sets, times])).toEqual([
      [2, [20, 40]],
      [1, [30]],
    ]);
  });

  test('taken back is not counted, and taking it back twice is once', () => {
    expect(tallyOf([20, 40], [{ back: 0 }, { back: 0 }])).toMatchObject({ sets: 1, times: [40] });
  });

  test('that was never made can be taken back or judged without harm', () => {
    expect(
      tallyOf(
        [20],
        [
          { kind: 'mark-taken-back', ...ROUND, mark: NO_STAMP },
          { kind: 'mark-judged', ...ROUND, mark: NO_STAMP, counts: true },
        ],
      ).sets,
    ).toBe(1);
  });

  test('after the horn is late and does not count until it is judged', () => {
    expect(tallyOf([60, 121])).toMatchObject({ sets: 1, late: 1, open: 1, times: [60] });
    expect(tallyOf([60, 121], [{ judged: 1, counts: true }])).toMatchObject({
      ...{ sets: 2, late: 1, open: 0, times: [60, 121] },
    });
    expect(tallyOf([60, 121], [{ judged: 1, counts: false }])).toMatchObject({
      ...{ sets: 1, late: 1, open: 0 },
    });
  });

  test('at the very horn is in time', () => {
    expect(tallyOf([120])).toMatchObject({ sets: 1, late: 0 });
  });

  test('is late by the clock as it ended: stopped early or extended', () => {
    const tell = teller();
    const until = (end: Saying, at: number, second: number) =>
      foldAll([
        tell(opened),
        tell(set()),
        tell(started, MORNING),
        tell(end, MORNING + at * 1000),
        tell(mark(second)),
      ])?.rounds[0]?.tallies[0]?.late;
    expect(until({ kind: 'clock-stopped', ...ROUND }, 50, 51)).toBe(1);
    expect(until({ kind: 'clock-extended', ...ROUND, seconds: 30 }, 50, 149)).toBe(0);
  });

  test('faster than half a second a shot is doubtful and counts until it is judged', () => {
    expect(leastSeconds(termsWith({ size: 10 }))).toBe(5);
    expect(tallyOf([20, 24.9])).toMatchObject({ sets: 2, doubtful: 1, open: 1 });
    expect(tallyOf([20, 25])).toMatchObject({ sets: 2, doubtful: 0, open: 0 });
    expect(tallyOf([20, 24.9], [{ judged: 1, counts: false }])).toMatchObject({
      ...{ sets: 1, doubtful: 1, open: 0 },
    });
    expect(tallyOf([20, 24.9], [{ judged: 1, counts: true }])).toMatchObject({ sets: 2, open: 0 });
  });

  test('that was judged a slip is not the set before the next one', () => {
    expect(tallyOf([20, 24, 26])).toMatchObject({ doubtful: 2 });
    expect(tallyOf([20, 24, 26], [{ judged: 1, counts: false }])).toMatchObject({
      ...{ sets: 2, doubtful: 1, open: 0 },
    });
  });

  test('is doubtful after the start too, where no set can be complete yet', () => {
    expect(tallyOf([4.9]).doubtful).toBe(1);
    expect(tallyOf([5]).doubtful).toBe(0);
  });

  test('is held against the mark before it that stands, not one taken back', () => {
    expect(tallyOf([20, 24, 26], [{ back: 1 }])).toMatchObject({ sets: 2, doubtful: 0 });
  });

  test('is held against the mark before it on the clock, in whatever order they were saved', () => {
    const round = played([40, 20, 24]);
    expect(round.marks.A?.map(({ second, doubtful }) => [second, doubtful])).toEqual([
      [20, false],
      [24, true],
      [40, false],
    ]);
  });

  test('judged twice is as it was judged last', () => {
    const twice = [
      { judged: 0, counts: true },
      { judged: 0, counts: false },
    ];
    expect(tallyOf([20], twice).sets).toBe(0);
    expect(tallyOf([20], twice.toReversed()).sets).toBe(1);
  });

  test('taken back stays so, whatever is judged of it', () => {
    expect(tallyOf([121], [{ judged: 0, counts: true }, { back: 0 }])).toMatchObject({
      ...{ sets: 0, late: 0, open: 0 },
    });
    expect(tallyOf([121], [{ back: 0 }, { judged: 0, counts: true }]).sets).toBe(0);
  });
});

describe('a correction', () => {
  test('puts the count right and leaves the marks', () => {
    expect(tallyOf([20, 40], [corrected(3), corrected(-1)])).toMatchObject({
      ...{ sets: 4, times: [20, 40] },
    });
  });

  test('never makes a count negative', () => {
    expect(tallyOf([20], [corrected(-5)]).sets).toBe(0);
  });
});

describe('on target', () => {
  const onTarget = (...from: Parameters<typeof played>) => tallyOf(from[0], from[1], serveTerms);

  test('a mark is for the player who struck it, and the pair has their sum', () => {
    expect(
      onTarget([
        [10, 'a'],
        [12, 'b'],
        [14, 'a'],
      ]),
    ).toMatchObject({ byPlayer: { a: 2, b: 1 }, sets: 3 });
  });

  test('two players may strike at once, one may not', () => {
    expect(
      onTarget([
        [10, 'a'],
        [10.2, 'b'],
      ]).doubtful,
    ).toBe(0);
    expect(
      onTarget([
        [10, 'a'],
        [10.2, 'a'],
      ]).doubtful,
    ).toBe(1);
  });

  test("one player's correction never takes from the other", () => {
    expect(
      onTarget(
        [
          [10, 'a'],
          [12, 'b'],
        ],
        [corrected(-3, 'a'), corrected(2, 'b')],
      ),
    ).toMatchObject({ byPlayer: { a: 0, b: 3 }, sets: 3 });
  });
});

describe('any practice', () => {
  test('has no count that is negative or broken, and times that rise', () => {
    fc.assert(
      fc.property(anyPractice, (entries) => {
        for (const { tallies, marks } of foldPractice(entries)!.rounds) {
          for (const tally of tallies) {
            const own = Object.values(tally.byPlayer ?? {});
            for (const count of [tally.sets, ...own, tally.late, tally.doubtful, tally.open]) {
              expect(Number.isInteger(count) && count >= 0).toBe(true);
            }
            if (tally.byPlayer) expect(own.reduce((a, b) => a + b, 0)).toBe(tally.sets);
            expect(tally.times.toSorted((a, b) => a - b)).toEqual(tally.times);
            expect(tally.times).toHaveLength(marks[tally.pair.letter]!.filter(counts).length);
            expect(tally.open).toBeLessThanOrEqual(tally.late + tally.doubtful);
          }
        }
      }),
    );
  });

  test('counts what was on the screen before, and one more or less for each thing said', () => {
    const act = fc.oneof(
      fc.record({ second: fc.integer({ min: 1, max: 140 }) }),
      fc.record({ back: fc.nat() }),
      fc.record({ judged: fc.nat(), counts: fc.boolean() }),
      fc.record({ by: fc.integer({ min: -4, max: 4 }) }),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 14, size: 'max' }), (acts) => {
        const tell = teller();
        const entries: Entry[] = [opened, set(), started].map((saying) => tell(saying));
        const marks: { id: string; late: boolean; counts: boolean; back: boolean }[] = [];
        let shown = 0;
        const put = (mark: (typeof marks)[number], counts: boolean) => {
          if (counts !== mark.counts) shown = Math.max(0, shown + (counts ? 1 : -1));
          mark.counts = counts;
        };
        for (const each of acts) {
          if ('second' in each) {
            const entry = tell(mark(each.second));
            entries.push(entry);
            const late = each.second > 120;
            const made = { id: entry.id, late, counts: false, back: false };
            marks.push(made);
            put(made, !late);
          } else if ('by' in each) {
            entries.push(tell(corrected(each.by)));
            shown = Math.max(0, shown + each.by);
          } else {
            const own = marks[('back' in each ? each.back : each.judged) % marks.length];
            if (!own) continue;
            if ('back' in each) own.back = true;
            entries.push(
              tell(
                'back' in each
                  ? { kind: 'mark-taken-back', ...ROUND, mark: own.id }
                  : { kind: 'mark-judged', ...ROUND, mark: own.id, counts: each.counts },
              ),
            );
            put(own, !own.back && ('back' in each ? false : each.counts));
          }
          expect(foldAll(entries)!.rounds[0]!.tallies[0]!.sets).toBe(shown);
        }
      }),
    );
  });
});
