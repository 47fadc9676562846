import { describe, expect, test } from 'vitest';
import { checksIn } from '../../../core/ledger/checks-in.ts';
import type { Entry, Saying } from '../../../core/ledger/entry.ts';
import { isPractised, join } from '../../../core/ledger/join.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { writerOf } from '../../../core/ledger/stamp.ts';
import { summarise } from '../../../core/ledger/summary.ts';
import type { Sight } from '../../../core/round/look.ts';
import { termsWith } from '../made.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

const phone = (name: string) => teller(writerOf(name.padEnd(10, '-'), 'window'));
const setRound = (round: string, ordinal: number, over: object = {}): Saying => ({
  ...{ kind: 'round-set', practice: PRACTICE, round, ordinal, terms: termsWith(), seconds: 120 },
  pairs: [
    { letter: 'A', players: ['ana', 'bo'] },
    { letter: 'B', players: ['cy', 'dot'] },
  ],
  ...{ focus: 'stance', checks: 6 },
  ...over,
});
const start = (round: string): Saying => ({ kind: 'clock-started', practice: PRACTICE, round });
const look = (round: string, player: string, second: number, saw: Sight): Saying => ({
  kind: 'look',
  ...{ practice: PRACTICE, round, player, focus: 'stance', second, saw },
});
const OPENED: Saying = { kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' };
const foldAll = (...ledgers: Entry[][]) =>
  foldPractice(ledgers.reduce((all, each) => join(all, each), [] as Entry[]).filter(isPractised))!;
const looksIn = (...ledgers: Entry[][]) =>
  summarise(foldAll(...ledgers), MORNING + 3_600_000).rounds.map(({ looks }) => looks);

describe('the looks of a round', () => {
  test('are kept with the round and its focus, the last word of a phone on each', () => {
    const coach = phone('coach');
    const told = [
      coach(OPENED),
      coach(setRound('r1', 0)),
      coach(start('r1')),
      coach(look('r1', 'ana', 12.5, 'no')),
      coach(look('r1', 'ana', 12.5, 'yes')),
      coach(look('r1', 'bo', 30, 'unseen')),
    ];
    const [round] = summarise(foldAll(told), MORNING + 3_600_000).rounds;
    expect(round?.focus).toBe('stance');
    const by = 'coach-----';
    expect(round?.looks).toEqual([
      { player: 'ana', focus: 'stance', second: 12.5, saw: 'yes', by },
      { player: 'bo', focus: 'stance', second: 30, saw: 'unseen', by },
    ]);
  });

  test('are none where nobody answered, and none of a round that was struck out', () => {
    const coach = phone('coach');
    const told = [coach(OPENED), coach(setRound('r1', 0)), coach(start('r1'))];
    expect(looksIn(told)).toEqual([undefined]);
    const struck: Entry[] = [
      ...told,
      coach(look('r1', 'ana', 12.5, 'no')),
      coach({ kind: 'round-struck', practice: PRACTICE, round: 'r1' }),
    ];
    expect(looksIn(struck)).toEqual([]);
  });

  test('of two phones stand beside each other in the one round that counts for the player', () => {
    const opened = phone('coach')(OPENED);
    const [coach, helper] = [phone('coach'), phone('helper')];
    const mine = [
      opened,
      coach(setRound('mine', 0), MORNING + 1),
      coach(start('mine'), MORNING + 2),
      coach({ kind: 'mark', practice: PRACTICE, round: 'mine', pair: 'A', second: 9 }, MORNING + 3),
      coach(look('mine', 'ana', 20, 'yes'), MORNING + 4),
    ];
    const theirs = [
      opened,
      helper(setRound('theirs', 0), MORNING + 1),
      helper(start('theirs'), MORNING + 2),
      helper(look('theirs', 'ana', 20, 'no'), MORNING + 4),
    ];
    const looks = looksIn(mine, theirs).flatMap((each) => each ?? []);
    expect(looks.map(({ by, saw }) => [by, saw])).toEqual([
      ['coach-----', 'yes'],
      ['helper----', 'no'],
    ]);
  });

  test('change no count of the round', () => {
    const coach = phone('coach');
    const told = [
      coach(OPENED),
      coach(setRound('r1', 0)),
      coach(start('r1')),
      coach({ kind: 'mark', practice: PRACTICE, round: 'r1', pair: 'A', second: 9 }),
    ];
    const without = foldAll(told).rounds[0]!;
    const seen = foldAll([...told, coach(look('r1', 'ana', 20, 'no'))]).rounds[0]!;
    expect(seen.tallies).toEqual(without.tallies);
    expect(seen.marks).toEqual(without.marks);
  });
});

describe('the looks that a round asks for', () => {
  const playedBy = (name: string) => {
    const [opener, tell] = [phone('opener'), phone(name)];
    const told = [opener(OPENED)];
    for (const slot of [0, 1, 2]) {
      told.push(
        tell(setRound(`${name}-${slot}`, slot), MORNING + 1000 * slot),
        tell(start(`${name}-${slot}`), MORNING + 1000 * slot + 1),
      );
    }
    return foldAll(told);
  };

  test('are the same on two phones that play the same practice each by itself', () => {
    const [mine, theirs] = [playedBy('coach'), playedBy('helper')];
    mine.rounds.forEach((round, at) => {
      const looks = checksIn(mine, round);
      expect(looks).toHaveLength(6);
      expect(checksIn(theirs, theirs.rounds[at]!)).toEqual(looks);
    });
  });

  test('stay the same while they are answered and sets are counted', () => {
    const practice = playedBy('coach');
    const round = practice.rounds[2]!;
    const [tally] = round.tallies;
    const later = { ...round, tallies: [{ ...tally!, sets: 5 }, ...round.tallies.slice(1)] };
    const after = { ...practice, rounds: [...practice.rounds.slice(0, 2), later] };
    expect(checksIn(after, later)).toEqual(checksIn(practice, round));
  });

  test('are none without a focus, and none where none are wanted', () => {
    const coach = phone('coach');
    const told = [
      coach(OPENED),
      coach(setRound('r1', 0, { checks: 0 })),
      coach(start('r1')),
      coach(setRound('r2', 1, { focus: undefined })),
    ];
    const practice = foldAll(told);
    for (const round of practice.rounds) expect(checksIn(practice, round)).toEqual([]);
  });
});
