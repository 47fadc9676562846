import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../core/calendar.ts';
import { shares, sumTouches } from '../../core/figures/counted.ts';
import { type EntryOf, type Kind, readEntry } from '../../core/ledger/entry.ts';
import { foldPractice, type Practice } from '../../core/ledger/practice.ts';
import { foldSquad } from '../../core/ledger/squad.ts';
import { DEMO_SEED, season, type Truth } from '../../demo-data/season.ts';

const options = { seed: DEMO_SEED, lastDate: '2026-03-04' };
const usual = season(options);
const squad = foldSquad(usual.standing);
const named = (name: string) => [...squad.values()].find((player) => player.name === name)!.id;

const fold = (entries: (typeof usual.practices)[number]['entries']): Practice => {
  const practice = foldPractice(entries);
  if (!practice) throw new Error('no entry opened the practice');
  return practice;
};
const practices = usual.practices.map(({ entries }) => fold(entries));
const tallies = practices.flatMap(({ rounds }) => rounds.flatMap((round) => round.tallies));
const all = usual.practices.flatMap(({ entries }) => entries);
const of = <K extends Kind>(kind: K) =>
  all.filter((entry) => (entry.kind as Kind) === kind) as unknown as EntryOf<K>[];

describe('an invented season', () => {
  test('is the same for the same seed, and another for another', () => {
    expect(season(options)).toEqual(usual);
    expect(season({ ...options, seed: DEMO_SEED + 1 })).not.toEqual(usual);
  });

  test('holds only entries that read back as they are', () => {
    for (const entry of [...usual.standing, ...all]) {
      expect(readEntry(entry)).toEqual({ as: 'entry', entry });
    }
  });

  test('has ids that rise, so that no two entries share one', () => {
    const ids = [...usual.standing, ...all].map((entry) => entry.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(ids.toSorted());
  });

  test('has eleven players with nicknames of their own', () => {
    expect(squad.size).toBe(11);
    expect(new Set([...squad.values()].map(({ name }) => name)).size).toBe(11);
  });

  test('has three practices in each of twelve weeks, the last on the day given', () => {
    expect(practices).toHaveLength(36);
    expect(practices.at(-1)?.date).toBe(options.lastDate);
    const weeksBefore = practices.map(({ date }) =>
      Math.floor(daysBetween(date, options.lastDate) / 7),
    );
    for (let week = 0; week < 12; week += 1) {
      expect(weeksBefore.filter((before) => before === week)).toHaveLength(3);
    }
  });

  test('closes every practice, after five to seven rounds of two minutes', () => {
    for (const { closed, rounds } of practices) {
      expect(closed).toBe(true);
      expect(rounds.length).toBeGreaterThanOrEqual(5);
      expect(rounds.length).toBeLessThanOrEqual(7);
      for (const { clock, seconds } of rounds) {
        expect(clock).toBeDefined();
        expect(seconds).toBe(120);
      }
    }
  });

  test('has 70 to 100% of the squad at a practice, an odd player in a trio', () => {
    for (const { attended, rounds } of practices) {
      expect(attended.length).toBeGreaterThanOrEqual(0.7 * 11);
      for (const round of rounds) {
        const players = round.tallies.flatMap((tally) => tally.pair.players);
        expect(new Set(players).size).toBe(players.length);
        expect(players.every((player) => attended.includes(player))).toBe(true);
      }
    }
    expect(tallies.some((tally) => tally.pair.players.length === 3)).toBe(true);
  });

  test('has those who come late and leave early, and nobody counted while away', () => {
    const first = (practice: string) => of('round-set').find((set) => set.practice === practice)!;
    expect(of('player-came').some((came) => came.id > first(came.practice).id)).toBe(true);
    expect(of('player-left').length).toBeGreaterThan(0);
  });

  test('turns partners: over the season everyone plays with everyone', () => {
    for (const player of squad.keys()) {
      const met = tallies
        .map((tally) => tally.pair.players)
        .filter((players) => players.includes(player))
        .flat();
      expect(new Set(met).size).toBe(11);
    }
  });

  test('leaves overheads out for its last three weeks, and never before', () => {
    for (const [place, { rounds }] of practices.entries()) {
      const overheads = rounds.some((round) => round.terms.family === 'overheads-and-lobs');
      expect(overheads).toBe(place < 36 - 9);
    }
  });

  test('has what hands do: late and doubtful marks, marks taken back, counts put right', () => {
    expect(tallies.some((tally) => tally.late > 0)).toBe(true);
    expect(tallies.some((tally) => tally.doubtful > 0)).toBe(true);
    expect(of('mark-taken-back').length).toBeGreaterThan(0);
    expect(of('tally-corrected').length).toBeGreaterThan(0);
    expect(of('round-skipped').length).toBeGreaterThan(0);
    expect(tallies.some((tally) => tally.showing !== undefined)).toBe(true);
    expect(tallies.some((tally) => tally.best !== undefined && tally.sets === 0)).toBe(true);
    expect(tallies.some((tally) => tally.byPlayer)).toBe(true);
  });

  test('shows who improves: Pip completes more tens in a row in the last third than the first', () => {
    const pip = named('Pip');
    const tensIn = (third: Practice[]) => {
      const own = third
        .flatMap(({ rounds }) => rounds)
        .filter(({ terms }) => terms.rule === 'in-a-row' && terms.size === 10)
        .flatMap((round) => round.tallies)
        .filter((tally) => tally.pair.players.includes(pip));
      return own.reduce((sum, tally) => sum + tally.sets, 0) / own.length;
    };
    expect(tensIn(practices.slice(-12))).toBeGreaterThan(tensIn(practices.slice(0, 12)) + 0.5);
  });
});

describe('the truth behind the marks', () => {
  const truthOf = (practice: string): Truth[] =>
    usual.truth.filter((truth) => truth.practice === practice);
  const struckBy = (truth: readonly Truth[], player: string) =>
    truth.reduce((sum, { struck }) => sum + (struck[player] ?? 0), 0);

  test('is there for every pair of every round', () => {
    expect(usual.truth).toHaveLength(tallies.length);
    for (const { shots, struck } of usual.truth) {
      expect(Object.values(struck).reduce((sum, own) => sum + own, 0)).toBe(shots);
    }
  });

  test('holds at least the touches that finished sets prove, where every mark was right', () => {
    let compared = 0;
    for (const practice of practices) {
      for (const round of practice.rounds.filter(({ settled }) => settled)) {
        for (const tally of round.tallies) {
          const slips = tally.late + tally.doubtful + Math.abs(tally.times.length - tally.sets);
          if (slips > 0) continue;
          const counted = shares(round.terms, tally, round.seconds).map(({ touches }) =>
            sumTouches(touches),
          );
          const truth = usual.truth.find(
            ({ round: id, pair }) => id === round.id && pair === tally.pair.letter,
          );
          expect(truth?.shots).toBeGreaterThanOrEqual(counted.reduce((sum, own) => sum + own, 0));
          compared += 1;
        }
      }
    }
    expect(compared).toBeGreaterThan(tallies.length / 2);
  });

  /*
   * Hundreds of touches in a block are common practice, no source: a hundred at the very least for
   * whoever plays six rounds and more of two minutes in a pair.
   */
  test('has over a hundred touches for everyone who plays a whole usual block in a pair', () => {
    let compared = 0;
    for (const { id, rounds, attended } of practices) {
      if (rounds.length < 6) continue;
      const truth = truthOf(id);
      for (const player of attended) {
        const inPair = rounds.every((round) =>
          round.tallies.some(
            ({ pair }) => pair.players.length === 2 && pair.players.includes(player),
          ),
        );
        if (!inPair) continue;
        expect(struckBy(truth, player)).toBeGreaterThan(100);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(50);
  });

  test('has a hundred touches and more for nearly everyone at nearly every practice', () => {
    const struck = practices.flatMap(({ id, attended }) =>
      attended.map((player) => struckBy(truthOf(id), player)),
    );
    expect(struck.reduce((sum, own) => sum + own, 0) / struck.length).toBeGreaterThan(120);
    expect(struck.filter((own) => own >= 100).length / struck.length).toBeGreaterThan(0.8);
  });
});

describe('other seasons', () => {
  test('can have any squad from two players to twenty-four, any length and any days', () => {
    for (const players of [2, 3, 24]) {
      const small = season({ seed: 1, players, weeks: 2, perWeek: 7, lastDate: '2026-01-04' });
      expect(small.standing).toHaveLength(players);
      const dates = small.practices.map(({ entries }) => fold(entries).date);
      expect(dates).toEqual(Array.from({ length: 14 }, (_, i) => addDays('2026-01-04', i - 13)));
    }
  });

  test('have more marks where sets are smaller', () => {
    const marks = (size: number) =>
      season({ ...options, weeks: 4, size }).practices.flatMap(({ entries }) =>
        entries.filter((entry) => entry.kind === 'mark'),
      ).length;
    expect(marks(2)).toBeGreaterThan(1.2 * marks(10));
  });

  test.each([
    ['seed', { seed: 0.5 }],
    ['players', { players: 1 }],
    ['players', { players: 25 }],
    ['weeks', { weeks: 0 }],
    ['perWeek', { perWeek: 8 }],
    ['size', { size: 51 }],
    ['date', { lastDate: '2026-02-30' }],
  ])('refuse a %s that makes no sense', (name, wrong) => {
    expect(() => season({ ...options, ...wrong })).toThrow(RangeError);
    expect(() => season({ ...options, ...wrong })).toThrow(name);
  });
});
