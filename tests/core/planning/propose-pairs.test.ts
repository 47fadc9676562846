import { describe, expect, test } from 'vitest';
import { addDays } from '../../../core/calendar.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import type { Wish } from '../../../core/ledger/wishes.ts';
import { meetingsOf } from '../../../core/planning/meetings.ts';
import { type Pairing, pairCosts } from '../../../core/planning/pair-cost.ts';
import { proposeChange, proposePairs } from '../../../core/planning/propose-pairs.ts';
import type { Pair } from '../../../core/round/pair.ts';
import { MOST_PLAYERS, pairUp } from '../../../core/round/pairs.ts';
import { type Random, randomFrom } from '../../../demo-data/random.ts';
import { squadOf } from '../invented.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const TODAY = '2026-03-20';
const asked = (here: readonly string[], over: Partial<Pairing> = {}): Pairing => ({
  here,
  levels: new Map(),
  meetings: meetingsOf([], TODAY),
  wishes: [],
  ...over,
});
const practice = (date: string, ...rounds: Pair[][]): Summary =>
  practiceWith(
    date,
    rounds.map((pairs, at) =>
      roundWith(
        at,
        termsWith(),
        pairs.map(({ players }) => [players, 1]),
      ),
    ),
  );
const key = (players: readonly string[]) => players.toSorted().join(' ');
const keys = (pairs: readonly Pair[] | undefined) =>
  pairs?.map(({ players }) => key(players)).sort();
const anyLevels = (squad: readonly string[], random: Random) =>
  new Map(squad.flatMap((player) => (random.chance(0.8) ? [[player, 1 + random.below(10)]] : [])));

describe('proposed pairs', () => {
  test('are undefined for fewer than two, and an error for more than a screen has tiles', () => {
    expect(proposePairs(asked([]))).toBeUndefined();
    expect(proposePairs(asked(['a']))).toBeUndefined();
    expect(() => proposePairs(asked(squadOf(MOST_PLAYERS + 1)))).toThrow(/^here/);
  });

  test('have everyone in them once, lettered as they came', () => {
    for (let count = 2; count <= MOST_PLAYERS; count += 1) {
      const here = randomFrom(count).shuffled(squadOf(count));
      const { pairs, broken } = proposePairs(asked(here))!;
      expect(pairs.flatMap(({ players }) => players).sort()).toEqual(squadOf(count));
      expect(pairs.map(({ letter }) => letter).join('')).toBe('ABCDEFGHIJKL'.slice(0, count / 2));
      const first = pairs.map(({ players }) => here.indexOf(players[0]!));
      expect(first).toEqual(first.toSorted((a, b) => a - b));
      expect(pairs.filter(({ players }) => players.length === 3)).toHaveLength(count % 2);
      expect(broken).toEqual([]);
    }
  });

  test('are the same for the same ledger', () => {
    const here = squadOf(11);
    const meetings = meetingsOf([practice('2026-03-18', pairUp(here))], TODAY);
    expect(proposePairs(asked(here, { meetings }))).toEqual(
      proposePairs(asked(here, { meetings })),
    );
  });

  test('are of near levels where all else is alike', () => {
    const levels = new Map(Object.entries({ a: 1, b: 9, c: 2, d: 8 }));
    const met = practice(
      '2025-01-01',
      ...['abcd', 'acbd', 'adbc'].map((order) => pairUp([...order])),
    );
    const meetings = meetingsOf([met], TODAY);
    expect(keys(proposePairs(asked([...'abcd'], { levels, meetings }))?.pairs)).toEqual([
      'a c',
      'b d',
    ]);
  });

  test('are those who have not met lately', () => {
    const here = [...'abcd'];
    const history = [
      practice('2026-03-18', pairUp([...'abcd'])),
      practice('2026-03-16', pairUp([...'acbd'])),
    ];
    const pairs = proposePairs(asked(here, { meetings: meetingsOf(history, TODAY) }))?.pairs;
    expect(keys(pairs)).toEqual(['a d', 'b c']);
  });
});

describe('over a term in which everyone comes', () => {
  const evens = [4, 6, 8, 10, 12, 14, 16];

  test.each(evens)('%i players meet everybody before they meet anybody twice', (count) => {
    for (let seed = 1; seed <= 12; seed += 1) {
      const random = randomFrom(100 * count + seed);
      const squad = squadOf(count);
      const levels = anyLevels(squad, random);
      const apart = 1 + random.below(7);
      const history: Summary[] = [];
      const met = new Set<string>();
      let date = '2026-01-05';
      for (let round = 1; round < count; round += 1) {
        const meetings = meetingsOf(history, date);
        const { pairs } = proposePairs(asked(random.shuffled(squad), { levels, meetings }))!;
        for (const two of keys(pairs)!) met.add(two);
        expect(met.size).toBe((round * count) / 2);
        history.push(practice(date, pairs));
        date = addDays(date, apart);
      }
    }
  });

  test.each(evens)('so do %i players who turn partners in every round of a practice', (count) => {
    for (let seed = 1; seed <= 4; seed += 1) {
      const random = randomFrom(seed);
      const squad = squadOf(count);
      const levels = anyLevels(squad, random);
      const history: Summary[] = [];
      const met = new Set<string>();
      let date = '2026-01-05';
      for (let round = 1; round < count; ) {
        const today: Pair[][] = [];
        for (; today.length < 5 && round < count; round += 1) {
          const meetings = meetingsOf([...history, practice(date, ...today)], date);
          const { pairs } = proposePairs(asked(squad, { levels, meetings }))!;
          today.push(pairs);
          for (const two of keys(pairs)!) met.add(two);
          expect(met.size).toBe((round * count) / 2);
        }
        history.push(practice(date, ...today));
        date = addDays(date, 2);
      }
    }
  });

  test.each([5, 7, 9, 11, 13])(
    '%i players have each been in the trio as often, but for one',
    (count) => {
      const squad = squadOf(count);
      const times = new Map(squad.map((player) => [player, 0]));
      const history: Summary[] = [];
      for (let at = 0; at < 24; at += 1) {
        const date = addDays('2026-01-05', Math.floor((at * 7) / 3));
        const { pairs } = proposePairs(asked(squad, { meetings: meetingsOf(history, date) }))!;
        const trio = pairs.find(({ players }) => players.length === 3)!;
        for (const player of trio.players) times.set(player, times.get(player)! + 1);
        history.push(practice(date, pairs));
        expect(Math.max(...times.values()) - Math.min(...times.values())).toBeLessThanOrEqual(2);
      }
      expect(Math.max(...times.values()) - Math.min(...times.values())).toBeLessThanOrEqual(1);
    },
  );
});

describe('a wish', () => {
  const wish = (a: string, b: string, wish: Wish['wish']): Wish => ({ a, b, wish });
  const propose = (here: string, ...wishes: Wish[]) => proposePairs(asked([...here], { wishes }))!;

  test('to keep two together is kept, however often they have met', () => {
    const history = Array.from({ length: 30 }, (_, at) =>
      practice(addDays(TODAY, -at), pairUp([...'abcd']), pairUp([...'abcd'])),
    );
    const pairing = asked([...'abcd'], {
      meetings: meetingsOf(history, TODAY),
      wishes: [wish('b', 'a', 'together')],
    });
    expect(proposePairs(pairing)).toMatchObject({ pairs: pairUp([...'abcd']), broken: [] });
  });

  test('to keep two apart is kept wherever that can be', () => {
    const apart = [wish('a', 'b', 'apart'), wish('c', 'd', 'apart'), wish('a', 'c', 'apart')];
    expect(propose('abcd', ...apart)).toMatchObject({ broken: [] });
    expect(keys(propose('abcd', ...apart).pairs)).toEqual(['a d', 'b c']);
    for (let seed = 1; seed <= 20; seed += 1) {
      const random = randomFrom(seed);
      const [a, b, c, d] = random.shuffled(squadOf(7));
      const { broken } = proposePairs(
        asked(squadOf(7), { wishes: [wish(a!, b!, 'apart'), wish(c!, d!, 'apart')] }),
      )!;
      expect(broken).toEqual([]);
    }
  });

  test('that cannot be kept is told, and as few of them are broken as can be', () => {
    const all = [wish('a', 'b', 'apart'), wish('a', 'c', 'apart'), wish('a', 'd', 'apart')];
    expect(propose('abcd', ...all).broken).toHaveLength(1);
    expect(propose('abc', all[0]!).broken).toEqual([all[0]]);
    const both = [wish('a', 'b', 'together'), wish('a', 'c', 'together')];
    expect(propose('abcd', ...both).broken).toHaveLength(1);
    expect(propose('abc', ...both).broken).toEqual([]);
  });

  test('to keep apart comes before one to keep together', () => {
    const wishes = [wish('a', 'b', 'together'), wish('c', 'd', 'apart')];
    const { broken, pairs } = propose('abcd', ...wishes);
    expect(broken).toEqual([wishes[0]]);
    expect(keys(pairs)).not.toContain('c d');
  });

  test('for one who is not here is no matter', () => {
    expect(propose('ab', wish('a', 'z', 'together'), wish('y', 'z', 'apart')).broken).toEqual([]);
  });
});

describe('where not everyone has a place all the time', () => {
  test('those with as many rounds go together, so that rounds stay even', () => {
    const here = squadOf(12);
    const played = new Map(here.map((player) => [player, 0]));
    const today: Pair[][] = [];
    for (let round = 0; round < 9; round += 1) {
      const meetings = meetingsOf([practice(TODAY, ...today)], TODAY);
      const { pairs } = proposePairs(asked(here, { played, meetings }))!;
      const had = ({ players }: Pair) => players.reduce((sum, id) => sum + played.get(id)!, 0);
      const playing = pairs.toSorted((a, b) => had(a) - had(b)).slice(0, 4);
      for (const id of playing.flatMap(({ players }) => players))
        played.set(id, played.get(id)! + 1);
      today.push(playing);
      expect(Math.max(...played.values()) - Math.min(...played.values())).toBeLessThanOrEqual(1);
    }
  });
});

describe('pairs after some came and some left', () => {
  const shown = (here: string, before: string, over: Partial<Pairing> = {}) =>
    proposeChange(asked([...here], over), pairUp([...before]))?.pairs.map(
      ({ letter, players }) => `${letter}:${players.join('')}`,
    );

  test('are as they were where nobody did', () => {
    expect(shown('abcdef', 'abcdef')).toEqual(['A:ab', 'B:cd', 'C:ef']);
    expect(shown('abcde', 'abcde')).toEqual(['A:ab', 'B:cde']);
  });

  test('are undefined for fewer than two, and an error for more than a screen has tiles', () => {
    expect(shown('a', 'ab')).toBeUndefined();
    expect(() => proposeChange(asked(squadOf(MOST_PLAYERS + 1)), [])).toThrow(/^here/);
  });

  test('put one who is left over into the pair where it costs least', () => {
    const levels = new Map(Object.entries({ a: 1, b: 1, c: 9, d: 9, e: 2, f: 2 }));
    const meetings = meetingsOf([practice('2020-01-01', ...everyMeeting('abcdef'))], TODAY);
    expect(shown('abcde', 'abcdef', { levels, meetings })).toEqual(['A:abe', 'B:cd']);
    expect(shown('abcdf', 'abcdef', { levels: new Map([...levels, ['f', 9]]), meetings })).toEqual([
      'A:ab',
      'B:cdf',
    ]);
  });

  test('free that player of the trio with whom the newcomer goes best', () => {
    const levels = new Map(Object.entries({ a: 5, b: 5, c: 1, d: 9, e: 2, x: 9 }));
    const meetings = meetingsOf([practice('2020-01-01', ...everyMeeting('abcdex'))], TODAY);
    expect(shown('abcdex', 'abcde', { levels, meetings })).toEqual(['A:ab', 'B:ce', 'C:dx']);
  });

  test('part nobody from a partner who is here, but for the third of a trio, and cost least', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const random = randomFrom(seed);
      const squad = squadOf(13);
      const before = pairUp(random.shuffled(squad).slice(0, 2 + random.below(8)));
      const here = random.shuffled(squad).slice(0, 2 + random.below(8));
      const history = [practice('2026-03-18', pairUp(random.shuffled(squad)))];
      const pairing = asked(here, {
        levels: anyLevels(squad, random),
        meetings: meetingsOf(history, TODAY),
      });
      const { pairs } = proposeChange(pairing, before)!;
      expect(pairs.flatMap(({ players }) => players).sort()).toEqual(here.toSorted());
      const stays = stayers(before, here);
      expect(stays.every((two) => isTogether(pairs, two))).toBe(true);
      expect(costOf(pairs, pairing)).toBe(leastChange(before, pairing));
    }
  });

  test('tell a wish that is broken', () => {
    const wishes: Wish[] = [{ a: 'a', b: 'c', wish: 'apart' }];
    expect(proposeChange(asked(['a', 'c'], { wishes }), pairUp([...'abcd']))?.broken).toEqual(
      wishes,
    );
  });
});

/** Rounds in which everybody meets everybody. */
function everyMeeting(letters: string): Pair[][] {
  return [...letters].flatMap((a, at) =>
    [...letters.slice(at + 1)].map((b) => [{ letter: 'A', players: [a, b] }]),
  );
}

/** Pairs who are both here and must stay; of a trio that is here nobody in particular. */
const stayers = (before: readonly Pair[], here: readonly string[]) =>
  before
    .map(({ players }) => players.filter((player) => here.includes(player)))
    .filter((players) => players.length === 2);
const isTogether = (pairs: readonly Pair[], two: readonly string[]) =>
  pairs.some(({ players }) => two.every((player) => players.includes(player)));

function costOf(pairs: readonly Pair[], pairing: Pairing): number {
  const costs = pairCosts(pairing);
  return pairs.reduce((sum, { players }) => {
    const [a, b, c] = players.map((player) => pairing.here.indexOf(player));
    return sum + (c === undefined ? costs.pair[a!]![b!]! : costs.trio(a!, b!, c));
  }, 0);
}

/**
 * The least cost of all ways to pair those who are here in which partners stay, a trio that is here
 * gives up one at most, and no more groups than must be are touched.
 */
function leastChange(before: readonly Pair[], pairing: Pairing): number {
  const { here } = pairing;
  const two = stayers(before, here);
  const trio = before.find(
    ({ players }) => players.length === 3 && players.every((player) => here.includes(player)),
  )?.players;
  let least = Number.POSITIVE_INFINITY;
  let fewest = Number.POSITIVE_INFINITY;
  for (const way of everyWay(here)) {
    const pairs = way.map((players): Pair => ({ letter: 'A', players }));
    if (!two.every((players) => isTogether(pairs, players))) continue;
    if (
      trio &&
      !trio.some((out) =>
        isTogether(
          pairs,
          trio.filter((player) => player !== out),
        ),
      )
    ) {
      continue;
    }
    const stood = [...two, ...(trio ? [trio] : [])];
    const touched = stood.filter((group) => !way.some((other) => key(other) === key(group))).length;
    if (touched > fewest) continue;
    const cost = costOf(pairs, pairing);
    least = touched < fewest ? cost : Math.min(least, cost);
    fewest = touched;
  }
  return least;
}

/** Every way to put players into pairs and, of an odd number, one trio. */
function* everyWay(players: readonly string[]): Generator<string[][]> {
  const [first, ...others] = players;
  if (first === undefined) yield [];
  for (const [at, other] of others.entries()) {
    const rest = others.toSpliced(at, 1);
    for (const way of everyWay(rest)) yield [[first!, other], ...way];
    if (players.length % 2 === 0) continue;
    for (const third of rest.slice(at)) {
      for (const way of everyWay(rest.filter((player) => player !== third))) {
        yield [[first!, other, third], ...way];
      }
    }
  }
}
