import { describe, expect, test } from 'vitest';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { makeEntry, type Saying } from '../../../core/ledger/entry.ts';
import { nextStamp } from '../../../core/ledger/stamp.ts';
import { drillFor, leftOut, mostLeftOut } from '../../../core/planning/left-out.ts';
import { meetingsOf } from '../../../core/planning/meetings.ts';
import { nextAsks, withAsked } from '../../../core/planning/next-asks.ts';
import { nextPartners } from '../../../core/planning/next-partners.ts';
import { pairLevels } from '../../../core/planning/pair-levels.ts';
import { simulateSeason } from '../figures/simulated-season.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

/** Entries a second apart, with their stamps. */
function entriesOf(...sayings: Saying[]) {
  let last = '';
  return sayings.map((saying, at) => {
    last = nextStamp(last, 1_772_000_000_000 + 1_000 * at, 'test-pen');
    return makeEntry(saying, last, 1_772_000_000_000 + 1_000 * at);
  });
}
const drillAsked = (drill: string, on = true): Saying => ({ kind: 'next-asked', drill, on });
const pairAsked = (a: string, b: string, on = true): Saying => ({
  ...{ kind: 'next-asked', a, b, on },
});

describe('what is asked for at the next practice', () => {
  test('stands until it is taken back, in whatever order two are named', () => {
    const all = entriesOf(
      drillAsked('one'),
      drillAsked('two'),
      pairAsked('a', 'b'),
      pairAsked('c', 'd'),
      drillAsked('one', false),
      pairAsked('b', 'a', false),
    );
    expect(nextAsks(all, '')).toEqual({ drills: ['two'], pairs: [['c', 'd']] });
  });

  test('is gone once a practice was over that was opened after it', () => {
    const all = entriesOf(drillAsked('one'), drillAsked('two'));
    expect(nextAsks(all, all[0]!.id).drills).toEqual(['two']);
    expect(nextAsks(all, all[1]!.id).drills).toEqual([]);
  });

  test('is the one drill of its family that a block is proposed of', () => {
    const [volley] = starterDrills.filter(({ family }) => family === 'volleys');
    const left = withAsked(starterDrills, [volley!.id]);
    expect(left.filter(({ family }) => family === 'volleys')).toEqual([volley]);
    expect(left.filter(({ family }) => family !== 'volleys')).toEqual(
      starterDrills.filter(({ family }) => family !== 'volleys'),
    );
    expect(withAsked(starterDrills, ['gone'])).toEqual(starterDrills);
  });
});

describe('what was left out by whom', () => {
  const summaries = [
    practiceWith('2026-03-01', [roundWith(0, lobTerms, [[['lob', 'smash'], 2]])]),
    practiceWith('2026-03-12', [roundWith(0, termsWith(), [[['lob', 'smash'], 2]])]),
  ];
  const lines = leftOut(summaries, '2026-03-12', ['smash', 'lob', 'new']);

  test('is days since each struck it: who lobs does not strike the overhead', () => {
    const overhead = lines.find(({ stroke }) => stroke === 'overhead');
    expect(overhead).toEqual({
      stroke: 'overhead',
      days: 11,
      players: [
        { player: 'smash', days: 11, overdue: true },
        { player: 'lob', overdue: true },
      ],
    });
    const ground = lines.find(({ stroke }) => stroke === 'groundstroke');
    expect(ground?.players.every(({ overdue }) => !overdue)).toBe(true);
  });

  test('is most what most have gone without, and longest', () => {
    expect(mostLeftOut(lines)?.stroke).toBe('volley');
    expect(mostLeftOut(leftOut(summaries, '2026-03-05', ['smash', 'lob']))).toBeUndefined();
    expect(mostLeftOut(leftOut([], '2026-03-05', ['smash']))).toBeUndefined();
  });

  test('is mended by the drill of that stroke which was not played for longest', () => {
    const days = new Map(starterDrills.map(({ id }, at) => [id, at]));
    const drill = drillFor('overhead', starterDrills, (id) => days.get(id));
    const all = starterDrills.filter(({ shots }) => shots.some((s) => s.stroke === 'overhead'));
    expect(drill).toBe(all.at(-1));
    expect(drillFor('overhead', [], () => undefined)).toBeUndefined();
  });
});

describe('who should play together next', () => {
  const pairing = (
    here: string[],
    summaries: ReturnType<typeof practiceWith>[],
    today: string,
  ) => ({
    ...{ here, levels: new Map(), wishes: [] },
    meetings: meetingsOf(summaries, today),
  });

  test('are those who met longest ago, without anybody marked as here', () => {
    const round = (...pairs: string[][]) =>
      roundWith(
        0,
        serveTerms,
        pairs.map((players) => [players, 1] as const),
      );
    const summaries = [
      practiceWith('2026-03-01', [round(['a', 'b'], ['c', 'd'])]),
      practiceWith('2026-03-20', [round(['a', 'c'], ['b', 'd'])]),
    ];
    const today = '2026-03-21';
    const four = nextPartners(pairing(['a', 'b', 'c', 'd'], summaries, today), summaries, today);
    expect(four).toEqual([{ players: ['a', 'd'] }, { players: ['b', 'c'] }]);
  });

  test('are nobody in a squad of one, and one trio in a squad of three', () => {
    expect(nextPartners(pairing(['a'], [], '2026-03-21'), [], '2026-03-21')).toEqual([]);
    expect(nextPartners(pairing(['a', 'b', 'c'], [], '2026-03-21'), [], '2026-03-21')).toEqual([
      { players: ['a', 'b', 'c'] },
    ]);
  });
});

describe('the levels that pairs are put together by', () => {
  const { summaries, players } = simulateSeason({ seed: 81, practices: 12 });
  const fit = fitLevels(levelTallies(summaries, false)!)!;

  test('are the coach’s own view where it was given', () => {
    const given = new Map(players.map((player, at) => [player, 1 + (at % 10)]));
    expect(pairLevels(players, given, fit)).toEqual(given);
  });

  test('of a player without one are that of whoever is nearest in the model', () => {
    const [one = '', other = '', last = ''] = players;
    const levels = pairLevels(
      [one, other, last],
      new Map([
        [one, 3],
        [other, 8],
      ]),
      fit,
    );
    expect([3, 8]).toContain(levels.get(last));
    expect(pairLevels([last], new Map(), undefined).has(last)).toBe(false);
    expect(pairLevels(['nobody'], new Map([[one, 3]]), fit).has('nobody')).toBe(false);
  });

  test('are the model’s where the coach gave none: truly better players stand higher', () => {
    const strong = simulateSeason({ seed: 82, practices: 24 });
    const own = fitLevels(levelTallies(strong.summaries, false)!)!;
    const levels = pairLevels(strong.players, new Map(), own);
    const truth = (player: string) =>
      [...own.kinds.keys()].reduce((sum, kind) => sum + strong.truth(player, kind, 0), 0);
    const byTruth = strong.players.toSorted((a, b) => truth(a) - truth(b));
    expect(levels.get(byTruth.at(-1)!)!).toBeGreaterThan(levels.get(byTruth[0]!)!);
  });
});
