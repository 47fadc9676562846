import fc from 'fast-check';
import type { Entry, PracticeEntry, Saying } from '../../core/ledger/entry.ts';
import { makeEntry } from '../../core/ledger/entry.ts';
import { isPractised } from '../../core/ledger/join.ts';
import { nextStamp } from '../../core/ledger/stamp.ts';
import { serveTerms, termsWith } from './made.ts';
import { MORNING, NO_STAMP, PRACTICE } from './told.ts';

const practice = fc.constant(PRACTICE);
const round = fc.constantFrom('r1', 'r1', 'r2');
const pair = fc.constantFrom('A', 'B');
const player = fc.constantFrom('p1', 'p2', 'p3', 'p4', 'p5');
const pairs = fc
  .shuffledSubarray(['p1', 'p2', 'p3', 'p4', 'p5'], { minLength: 4 })
  .map((players) => [
    { letter: 'A', players: players.slice(0, 2) },
    { letter: 'B', players: players.slice(2) },
  ]);
const one = <K extends string>(...kinds: K[]) => fc.constantFrom(...kinds);

const roundSet = fc.record({
  kind: one('round-set'),
  practice,
  round,
  ordinal: fc.nat(3),
  terms: fc.constantFrom(termsWith({ size: 4 }), serveTerms),
  seconds: fc.constant(60),
  pairs,
});
const clockPressed = fc.record({
  kind: one('clock-started', 'clock-paused', 'clock-resumed', 'clock-stopped'),
  practice,
  round,
});
const marked = fc.record(
  { kind: one('mark'), practice, round, pair, player, second: fc.integer({ min: 0, max: 80 }) },
  { requiredKeys: ['kind', 'practice', 'round', 'pair', 'second'] },
);
/** `mark` is the number of an earlier mark. */
const takenBack = fc.record({ kind: one('mark-taken-back'), practice, round, mark: fc.nat() });
const judged = fc.record({
  kind: one('mark-judged'),
  practice,
  round,
  mark: fc.nat(),
  counts: fc.boolean(),
});
const corrected = fc.record(
  {
    kind: one('tally-corrected'),
    practice,
    round,
    pair,
    player,
    by: fc.integer({ min: -4, max: 4 }),
  },
  { requiredKeys: ['kind', 'practice', 'round', 'pair', 'by'] },
);

/** What anyone may say in a practice, in no sensible order. */
const anySaying = fc.oneof(
  { weight: 2, arbitrary: roundSet },
  { weight: 4, arbitrary: clockPressed },
  { weight: 12, arbitrary: marked },
  { weight: 4, arbitrary: takenBack },
  { weight: 4, arbitrary: judged },
  { weight: 3, arbitrary: corrected },
  fc.record({ kind: one('clock-extended'), practice, round, seconds: fc.constant(30) }),
  fc.record({ kind: one('set-showing'), practice, round, pair, shots: fc.nat(3) }),
  fc.record({ kind: one('best-run'), practice, round, pair, shots: fc.nat(9) }),
  fc.record({ kind: one('round-settled', 'round-skipped'), practice, round }),
  fc.record({ kind: one('player-came', 'player-left'), practice, player }),
  fc.record({ kind: one('practice-closed', 'practice-reopened'), practice }),
);

/**
 * The entries of a practice as two phones, whose clocks may fall back, have written them; each has
 * seen all that came before.
 */
export const anyPractice: fc.Arbitrary<PracticeEntry[]> = fc
  .tuple(
    roundSet,
    fc.array(
      fc.record({
        saying: anySaying,
        gap: fc.integer({ min: -5000, max: 20_000 }),
        writer: fc.constantFrom('phone-one', 'phone-two'),
      }),
      { minLength: 8, maxLength: 40, size: 'max' },
    ),
  )
  .map(([first, steps]) => {
    let at = MORNING;
    let last = '';
    const entries: Entry[] = [];
    const append = (saying: Saying, writer: string) => {
      last = nextStamp(last, at, writer);
      entries.push(makeEntry(saying, last, at));
    };
    append({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' }, 'phone-one');
    append(first, 'phone-one');
    const marks: string[] = [];
    for (const { saying, gap, writer } of steps) {
      at += gap;
      const mark = 'mark' in saying && (marks[saying.mark % marks.length] ?? NO_STAMP);
      append((mark ? { ...saying, mark } : saying) as Saying, writer);
      if (saying.kind === 'mark') marks.push(last);
    }
    return entries.filter(isPractised);
  });
