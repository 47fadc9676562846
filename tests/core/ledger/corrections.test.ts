import { describe, expect, test } from 'vitest';
import type { Entry, Saying } from '../../../core/ledger/entry.ts';
import { isPractised } from '../../../core/ledger/join.ts';
import { foldPractice, stepsPlayed } from '../../../core/ledger/practice.ts';
import { serveTerms, termsWith } from '../made.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

const ROUND = { practice: PRACTICE, round: 'r1' };
const PAIRS = [
  { letter: 'A', players: ['ana', 'bo'] },
  { letter: 'B', players: ['cy', 'dot'] },
];

/** A round of these terms that was started, and a way to go on with it. */
function started(terms = termsWith()) {
  const tell = teller();
  const entries: Entry[] = [];
  const say = (saying: Saying) => {
    const entry = tell(saying, MORNING);
    entries.push(entry);
    return entry.id;
  };
  say({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' });
  say({ kind: 'round-set', ...ROUND, ordinal: 0, terms, seconds: 120, pairs: PAIRS });
  say({ kind: 'clock-started', ...ROUND });
  const practice = () => foldPractice(entries.filter(isPractised))!;
  const round = () => practice().rounds[0]!;
  return { say, practice, round, tally: () => round().tallies[0]! };
}

describe('a correction', () => {
  test('of one more is one more on the screen, also after a minus that a struck mark overtook', () => {
    const { say, tally } = started();
    say({ kind: 'mark', ...ROUND, pair: 'A', second: 20 });
    const doubtful = say({ kind: 'mark', ...ROUND, pair: 'A', second: 21 });
    say({ kind: 'tally-corrected', ...ROUND, pair: 'A', by: -1 });
    say({ kind: 'tally-corrected', ...ROUND, pair: 'A', by: -1 });
    expect(tally().sets).toBe(0);
    say({ kind: 'mark-judged', ...ROUND, mark: doubtful, counts: false });
    expect(tally().sets).toBe(0);
    say({ kind: 'tally-corrected', ...ROUND, pair: 'A', by: 1 });
    expect(tally().sets).toBe(1);
  });
});

describe('shots that were said', () => {
  test('can go back to not seen', () => {
    const { say, tally } = started();
    say({ kind: 'set-showing', ...ROUND, pair: 'A', shots: 7 });
    say({ kind: 'best-run', ...ROUND, pair: 'A', shots: 8 });
    expect(tally()).toMatchObject({ showing: 7, best: 8 });
    say({ kind: 'shots-unseen', ...ROUND, pair: 'A', of: 'showing' });
    expect(tally()).not.toHaveProperty('showing');
    expect(tally().best).toBe(8);
    say({ kind: 'shots-unseen', ...ROUND, pair: 'A', of: 'best' });
    expect(tally()).not.toHaveProperty('best');
  });
});

describe('the names of a pair, put right', () => {
  test('give its sets to those who played, and take them from those who did not', () => {
    const { say, tally, practice } = started();
    say({ kind: 'mark', ...ROUND, pair: 'A', second: 20 });
    say({ kind: 'pair-corrected', ...ROUND, pair: 'A', players: ['ana', 'eve'] });
    expect(tally()).toMatchObject({ sets: 1, pair: { letter: 'A', players: ['ana', 'eve'] } });
    expect(practice().attended).toEqual(['ana', 'eve', 'cy', 'dot']);
  });

  test('take along the balls on target of whoever stood in that place', () => {
    const { say, tally } = started(serveTerms);
    say({ kind: 'mark', ...ROUND, pair: 'A', player: 'bo', second: 20 });
    say({ kind: 'pair-corrected', ...ROUND, pair: 'A', players: ['ana', 'eve'] });
    say({ kind: 'mark', ...ROUND, pair: 'A', player: 'eve', second: 40 });
    expect(tally().byPlayer).toEqual({ ana: 0, eve: 2 });
    say({ kind: 'pair-corrected', ...ROUND, pair: 'A', players: ['ana', 'bo'] });
    expect(tally().byPlayer).toEqual({ ana: 0, bo: 2 });
  });
});

describe('a round that was struck out', () => {
  test('is over, counts nothing, and leaves its drill to be played', () => {
    const { say, practice, round } = started();
    expect(stepsPlayed(practice())).toEqual([{ drill: 'rally' }]);
    say({ kind: 'round-struck', ...ROUND });
    expect(round()).toMatchObject({ struck: true, left: true });
    expect(stepsPlayed(practice())).toEqual([]);
    expect(practice().attended).toEqual([]);
    say({ kind: 'round-restored', ...ROUND });
    expect(stepsPlayed(practice())).toEqual([{ drill: 'rally' }]);
  });
});
