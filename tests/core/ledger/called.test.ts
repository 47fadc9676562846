import { describe, expect, test } from 'vitest';
import { byPlayer } from '../../../core/figures/totals.ts';
import type { Entry, Saying } from '../../../core/ledger/entry.ts';
import { isPractised } from '../../../core/ledger/join.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { isSummary } from '../../../core/ledger/stored-summary.ts';
import { secondsOf, summarise } from '../../../core/ledger/summary.ts';
import { randomNumbers } from '../figures/simulated-round.ts';
import { lobTerms, serveTerms, termsWith } from '../made.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

const ROUND = { practice: PRACTICE, round: 'r1' };
const PAIRS = [
  { letter: 'A', players: ['ana', 'bo'] },
  { letter: 'B', players: ['cy', 'dot'] },
];

/** A round that was started in which these pairs count for themselves, and a way to go on with it. */
function started({ called = ['A', 'B'], terms = termsWith(), turns = false, length = 120 } = {}) {
  const tell = teller();
  const entries: Entry[] = [];
  const say = (saying: Saying, second = 0) => {
    const entry = tell(saying, MORNING + 1000 * second);
    entries.push(entry);
    return entry.id;
  };
  say({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' });
  say({
    ...{ kind: 'round-set', ...ROUND, ordinal: 0, terms, seconds: length },
    ...{ pairs: PAIRS, called, turns },
  });
  say({ kind: 'clock-started', ...ROUND });
  const practice = () => foldPractice(entries.filter(isPractised))!;
  const summary = () => summarise(practice(), MORNING + 3_600_000);
  const tally = (pair = 'A') =>
    practice().rounds[0]!.tallies.find(({ pair: { letter } }) => letter === pair)!;
  const call = (sets: number | undefined, pair = 'A', player?: string) =>
    say({
      ...{ kind: 'count-called', ...ROUND, pair },
      ...(player !== undefined && { player }),
      ...(sets !== undefined && { sets }),
    });
  const mark = (second: number, pair = 'A', player?: string) =>
    say({ kind: 'mark', ...ROUND, pair, second, ...(player && { player }) }, second);
  return { say, call, mark, tally, practice, summary, round: () => practice().rounds[0]! };
}

describe('a count that is called at the horn', () => {
  test('is the count of the pair, and is known for a called one', () => {
    const { call, tally } = started();
    call(6);
    expect(tally()).toMatchObject({ sets: 6, origin: 'called', times: [] });
    expect(tally()).not.toHaveProperty('unheard');
  });

  test('of none is a round without a set; one that was not heard is not known', () => {
    const { call, tally } = started();
    call(0);
    expect(tally('A')).toMatchObject({ sets: 0, origin: 'called' });
    expect(tally('A')).not.toHaveProperty('unheard');
    expect(tally('B')).toMatchObject({ sets: 0, unheard: ['cy', 'dot'] });
  });

  test('can be called again, and taken back to not heard', () => {
    const { call, tally } = started();
    call(6);
    call(7);
    expect(tally().sets).toBe(7);
    call(undefined);
    expect(tally()).toMatchObject({ sets: 0, unheard: ['ana', 'bo'] });
    expect(tally()).not.toHaveProperty('origin');
  });

  test('stands in the place of taps, and is corrected from there', () => {
    const { call, mark, tally, say } = started();
    mark(20);
    expect(tally()).toMatchObject({ sets: 1, times: [20] });
    expect(tally()).not.toHaveProperty('unheard');
    call(4);
    expect(tally().sets).toBe(4);
    say({ kind: 'tally-corrected', ...ROUND, pair: 'A', by: 1 });
    expect(tally()).toMatchObject({ sets: 5, origin: 'corrected' });
  });

  test('on target is each player’s own, and one who was not heard is not known', () => {
    const { call, tally } = started({ terms: serveTerms });
    call(7, 'A', 'ana');
    expect(tally()).toMatchObject({ sets: 7, byPlayer: { ana: 7, bo: 0 }, unheard: ['bo'] });
    call(0, 'A', 'bo');
    expect(tally()).not.toHaveProperty('unheard');
  });

  test('is tapped where nothing else was said: so are all rounds of an earlier version', () => {
    const { mark, tally } = started({ called: [] });
    expect(tally()).not.toHaveProperty('unheard');
    mark(20);
    expect(tally()).not.toHaveProperty('origin');
  });
});

describe('roles that turn', () => {
  const turning = () => started({ terms: lobTerms, turns: true });

  test('turn at half the clock where that was planned', () => {
    expect(turning().tally().turned).toBe(60);
    expect(started({ terms: lobTerms }).tally()).not.toHaveProperty('turned');
  });

  test('turn when it was said, or not at all', () => {
    const { say, tally } = turning();
    say({ kind: 'roles-turned', ...ROUND, second: 66.5 }, 66);
    expect(tally().turned).toBe(66.5);
    say({ kind: 'roles-turned', ...ROUND }, 70);
    expect(tally()).not.toHaveProperty('turned');
  });

  test('did not turn in a round that was stopped before', () => {
    const { say, tally } = turning();
    say({ kind: 'clock-stopped', ...ROUND }, 50);
    expect(tally()).not.toHaveProperty('turned');
  });
});

describe('lob and overhead, played shot by shot with a turn at half-time', () => {
  /** What each child struck of the exchanges that were completed, and the second each took. */
  function played(seed: number, partnerMisses: number) {
    const random = randomNumbers(seed);
    const struck = {
      ana: { lob: 0, overhead: 0 },
      bo: { lob: 0, overhead: 0 },
    };
    const seconds: number[] = [];
    let second = 2 + 4 * random();
    while (second < 120) {
      // At the sign a rally is broken off, the two change, and a ball is fetched.
      const [lobs, smashes] = second < 60 ? (['ana', 'bo'] as const) : (['bo', 'ana'] as const);
      const end = second + 2 + 2 * random();
      const stands = random() > partnerMisses && !(second < 60 && end >= 60) && end < 120;
      if (stands) {
        struck[lobs].lob += 1;
        struck[smashes].overhead += 1;
        seconds.push(end);
      }
      second = (second < 60 && end >= 60 ? 60 : end) + 1 + 5 * random();
    }
    return { struck, seconds };
  }

  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'gives each child the overheads and the lobs that were struck, round %i',
    (seed) => {
      const { struck, seconds } = played(seed, 0.3);
      const { mark, summary } = started({ terms: lobTerms, turns: true, called: [] });
      for (const second of seconds) mark(second);
      const own = byPlayer([summary()]);
      expect({ ana: own.get('ana')?.touches, bo: own.get('bo')?.touches }).toEqual(struck);
    },
  );

  test('of a called count gives each child a share by the clock, and all of them together', () => {
    const { struck, seconds } = played(9, 0.3);
    const { call, summary, say } = started({ terms: lobTerms, turns: true });
    say({ kind: 'roles-turned', ...ROUND, second: 40 }, 40);
    call(seconds.length);
    const own = byPlayer([summary()]);
    const sets = seconds.length;
    expect(own.get('ana')?.touches.lob).toBeCloseTo(sets / 3, 9);
    expect(own.get('ana')?.touches.overhead).toBeCloseTo((2 * sets) / 3, 9);
    expect(own.get('bo')?.touches.lob).toBeCloseTo((2 * sets) / 3, 9);
    expect(own.get('bo')?.touches.overhead).toBeCloseTo(sets / 3, 9);
    expect(struck.ana.overhead + struck.bo.overhead).toBe(sets);
  });
});

describe('a pair that stops in mid-round', () => {
  test('has played until then, and its partner goes on in a trio', () => {
    const { say, mark, round, summary, practice } = started({ called: [] });
    mark(20, 'A');
    say({ kind: 'pair-stopped', ...ROUND, pair: 'A', second: 50 }, 50);
    say({ kind: 'pair-stopped', ...ROUND, pair: 'B', second: 55 }, 55);
    say({ kind: 'pair-added', ...ROUND, pair: 'C', players: ['cy', 'dot', 'bo'], second: 55 }, 55);
    mark(80, 'C');
    expect(round().tallies.map(({ pair, sets, span }) => [pair.letter, sets, span])).toEqual([
      ['A', 1, { from: 0, to: 50 }],
      ['B', 0, { from: 0, to: 55 }],
      ['C', 1, { from: 55, to: 120 }],
    ]);
    const [played] = summary().rounds;
    expect(played!.tallies.map((tally) => secondsOf(played!, tally))).toEqual([50, 55, 65]);
    expect(practice().attended).toEqual(['ana', 'bo', 'cy', 'dot']);
    expect(isSummary(JSON.parse(JSON.stringify(summary())))).toBe(true);
  });

  test('finds late what was tapped after it stopped, and goes on after all if that is said', () => {
    const { say, mark, tally } = started({ called: [] });
    say({ kind: 'pair-stopped', ...ROUND, pair: 'A', second: 50 }, 50);
    mark(60);
    expect(tally()).toMatchObject({ sets: 0, late: 1 });
    say({ kind: 'pair-stopped', ...ROUND, pair: 'A' }, 61);
    expect(tally()).toMatchObject({ sets: 1, late: 0 });
    expect(tally()).not.toHaveProperty('span');
  });

  test('that counts for itself goes on to do so in the pair that comes of it', () => {
    const { say, tally, call } = started({ called: ['A'] });
    say({ kind: 'pair-added', ...ROUND, pair: 'C', players: ['ana', 'bo', 'eve'], second: 50 }, 50);
    say({ kind: 'pair-added', ...ROUND, pair: 'D', players: ['cy', 'fay'], second: 50 }, 50);
    expect(tally('C').unheard).toEqual(['ana', 'bo', 'eve']);
    expect(tally('D')).not.toHaveProperty('unheard');
    call(2, 'C');
    expect(tally('C').sets).toBe(2);
  });

  test('measures the first set of a new pair from its own start', () => {
    const { say, mark, tally } = started({ called: [] });
    say({ kind: 'pair-added', ...ROUND, pair: 'C', players: ['eve', 'fay'], second: 50 }, 50);
    mark(53, 'C');
    expect(tally('C')).toMatchObject({ sets: 1, doubtful: 1 });
  });
});

describe('a stretch that nobody watched', () => {
  const unwatched = (from: number, to: number, watched = false): Saying => ({
    ...{ kind: 'stretch-watched', ...ROUND, from, to, watched },
  });

  test('is left out of the seconds that were counted in', () => {
    const { say, summary } = started({ called: [] });
    say(unwatched(100, 140));
    say(unwatched(10, 30));
    say(unwatched(20, 40));
    const [played] = summary().rounds;
    expect(played!.unwatched).toEqual([
      { from: 10, to: 40 },
      { from: 100, to: 120 },
    ]);
    expect(secondsOf(played!, played!.tallies[0]!)).toBe(70);
  });

  test('of the whole round leaves the count unknown, where nothing was tapped', () => {
    const { say, mark, tally } = started({ called: [] });
    mark(20, 'B');
    say(unwatched(0, 120));
    expect(tally('A').unheard).toEqual(['ana', 'bo']);
    expect(tally('B')).not.toHaveProperty('unheard');
  });

  test('was watched after all, if that is said', () => {
    const { say, summary } = started({ called: [] });
    say(unwatched(10, 30));
    say(unwatched(10, 30, true));
    expect(summary().rounds[0]).not.toHaveProperty('unwatched');
  });
});
