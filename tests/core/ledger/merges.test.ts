import { describe, expect, test } from 'vitest';
import { entryAsMerged, summaryAsMerged } from '../../../core/ledger/as-merged.ts';
import { isPractised } from '../../../core/ledger/join.ts';
import { foldMerges } from '../../../core/ledger/merges.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { foldSquad } from '../../../core/ledger/squad.ts';
import { foldWishes } from '../../../core/ledger/wishes.ts';
import { practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

const squadOf = (tell = teller()) => [
  tell({ kind: 'player-added', player: 'ana1', name: 'Ana', level: 4 }),
  tell({ kind: 'player-added', player: 'bo', name: 'Bo' }),
  tell({ kind: 'player-added', player: 'ana2', name: 'ana' }),
];

describe('two players who are one child', () => {
  test('stand once in the squad, under the name that the coach kept', () => {
    const tell = teller();
    const squad = squadOf(tell);
    const merged = tell({ kind: 'players-merged', player: 'ana2', into: 'ana1' });
    expect([...foldSquad([...squad, merged]).values()].map(({ id, name }) => [id, name])).toEqual([
      ['ana1', 'Ana'],
      ['bo', 'Bo'],
    ]);
  });

  test('are two again once the coach says so, with all that was theirs', () => {
    const tell = teller();
    const squad = squadOf(tell);
    const said = [
      tell({ kind: 'players-merged', player: 'ana2', into: 'ana1' }),
      tell({ kind: 'players-parted', player: 'ana1', into: 'ana2' }),
    ];
    expect(foldSquad([...squad, ...said])).toEqual(foldSquad(squad));
    expect(foldMerges(said).size).toBe(0);
  });

  test('are one through a third, and a ring of phones that said so loses nobody', () => {
    const tell = teller();
    const ring = [
      tell({ kind: 'players-merged', player: 'a', into: 'b' }),
      tell({ kind: 'players-merged', player: 'b', into: 'c' }),
      tell({ kind: 'players-merged', player: 'c', into: 'a' }),
    ];
    expect([...foldMerges(ring)]).toEqual([
      ['a', 'c'],
      ['b', 'c'],
    ]);
  });

  test('have one wish for both', () => {
    const tell = teller();
    const wish = tell({ kind: 'wish-set', a: 'ana2', b: 'bo', wish: 'apart' });
    const merged = tell({ kind: 'players-merged', player: 'ana2', into: 'ana1' });
    expect(foldWishes([wish, merged])).toEqual([{ a: 'ana1', b: 'bo', wish: 'apart' }]);
  });

  const merges = new Map([['ana2', 'ana1']]);

  test('have the counts of both in every summary, and their own on target', () => {
    const practice = practiceWith('2026-03-02', [
      roundWith(0, termsWith(), [[['ana2', 'bo'], 3]]),
      roundWith(1, serveTerms, [[['ana2', 'bo'], { ana2: 2, bo: 1 }]]),
    ]);
    const read = summaryAsMerged(practice, merges);
    expect(read.attended).toEqual(['ana1', 'bo']);
    expect(read.rounds.map(({ tallies }) => tallies[0]!.pair.players)).toEqual([
      ['ana1', 'bo'],
      ['ana1', 'bo'],
    ]);
    expect(read.rounds[1]!.tallies[0]!.byPlayer).toEqual({ ana1: 2, bo: 1 });
  });

  test('stay two in a round in which both played', () => {
    const round = roundWith(0, termsWith(), [
      [['ana1', 'bo'], 3],
      [['ana2', 'cy'], 1],
    ]);
    expect(summaryAsMerged(practiceWith('2026-03-02', [round]), merges).rounds).toEqual([round]);
  });

  test('are read as one in a practice that is under way', () => {
    const tell = teller();
    const entries = [
      tell({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' }),
      tell({ kind: 'player-came', practice: PRACTICE, player: 'ana2' }),
      tell({
        ...{ kind: 'round-set', practice: PRACTICE, round: 'r1', ordinal: 0, terms: serveTerms },
        seconds: 60,
        pairs: [{ letter: 'A', players: ['ana2', 'bo'] }],
      }),
      tell({ kind: 'clock-started', practice: PRACTICE, round: 'r1' }, MORNING + 10),
      tell(
        {
          ...{ kind: 'mark', practice: PRACTICE, round: 'r1', pair: 'A' },
          player: 'ana2',
          second: 9,
        },
        MORNING + 9010,
      ),
    ].filter(isPractised);
    const practice = foldPractice(entries.map((entry) => entryAsMerged(entry, merges)))!;
    expect(practice.here).toEqual(['ana1']);
    expect(practice.rounds[0]!.tallies[0]).toMatchObject({
      pair: { players: ['ana1', 'bo'] },
      byPlayer: { ana1: 1, bo: 0 },
    });
  });
});
