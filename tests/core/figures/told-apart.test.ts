import { describe, expect, it } from 'vitest';
import { comparable, groups, neverParted } from '../../../core/figures/told-apart.ts';

/** Records from words such as 'Ana Bo', each two minutes and three sets. */
const records = (pairs: readonly string[], drill?: string) =>
  pairs.map((pair) => {
    const [a, b] = pair.split(' ') as [string, string];
    return { a, b, exposure: 2, sets: 3, ...(drill === undefined ? {} : { drill }) };
  });

const triangle = ['Ana Bo', 'Bo Cy', 'Cy Ana'];

describe('neverParted', () => {
  it('names nobody where all have had two partners', () => {
    expect(neverParted(records(triangle))).toEqual([]);
  });

  it('names a player with one partner only, and whom', () => {
    expect(neverParted(records([...triangle, 'Ana Di', 'Di Ana']))).toEqual([
      { player: 'Di', partner: 'Ana' },
    ]);
  });

  it('names both of two who only ever played together', () => {
    expect(neverParted(records(['Bo Ana', ...['Cy Di', 'Di Eva', 'Eva Cy']]))).toEqual([
      { player: 'Ana', partner: 'Bo' },
      { player: 'Bo', partner: 'Ana' },
    ]);
  });

  it('does not count a partner of no minutes, or of a drill in which nobody made a set', () => {
    const barely = [
      { a: 'Di', b: 'Bo', exposure: 0, sets: 0 },
      { a: 'Di', b: 'Cy', exposure: 2, sets: 0, drill: 'new' },
    ];
    expect(neverParted([...records([...triangle, 'Ana Di']), ...barely])).toEqual([
      { player: 'Di', partner: 'Ana' },
    ]);
  });
});

describe('groups', () => {
  it('is none without records', () => {
    expect(groups([])).toEqual([]);
  });

  it('is one where everyone hangs together, if through others', () => {
    expect(groups(records(['Cy Di', 'Bo Cy', 'Ana Bo']))).toEqual([['Ana', 'Bo', 'Cy', 'Di']]);
  });

  it('are those who never met, each in the order of names', () => {
    expect(groups(records(['Fay Eva', 'Cy Bo', 'Bo Ana', 'Eva Di']))).toEqual([
      ['Ana', 'Bo', 'Cy'],
      ['Di', 'Eva', 'Fay'],
    ]);
  });
});

describe('comparable', () => {
  it('is one class where a ring is odd', () => {
    expect(comparable(records(triangle))).toEqual([['Ana', 'Bo', 'Cy']]);
    expect(comparable(records(['Ana Bo', 'Bo Cy', 'Cy Di', 'Di Eva', 'Eva Ana']))).toHaveLength(1);
  });

  it('are the two sides of a ring of four', () => {
    const ring = ['Ana Bo', 'Bo Cy', 'Cy Di', 'Di Ana'];
    expect(comparable(records(ring))).toEqual([
      ['Ana', 'Cy'],
      ['Bo', 'Di'],
    ]);
    expect(comparable(records([...ring, 'Ana Cy']))).toHaveLength(1);
  });

  it('are the two sides however many drills they play across', () => {
    const sides = ['Ana Bo', 'Bo Cy', 'Cy Di', 'Di Ana'];
    expect(comparable([...records(sides, 'volleys'), ...records(sides, 'lobs')])).toEqual([
      ['Ana', 'Cy'],
      ['Bo', 'Di'],
    ]);
  });

  it('is one class for groups that never met but share a drill: three pairs tell each alone', () => {
    expect(comparable(records([...triangle, 'Di Eva', 'Eva Fay', 'Fay Di']))).toHaveLength(1);
  });

  it('are the groups where each has a drill of its own', () => {
    expect(
      comparable([
        ...records(triangle, 'lobs'),
        ...records(['Di Eva', 'Eva Fay', 'Fay Di'], 'volleys'),
      ]),
    ).toEqual([
      ['Ana', 'Bo', 'Cy'],
      ['Di', 'Eva', 'Fay'],
    ]);
  });

  it('keeps a drill and a player of one name apart', () => {
    expect(comparable(records(triangle, 'Ana'))).toEqual([['Ana', 'Bo', 'Cy']]);
  });
});

it('all three refuse a record of one player with himself', () => {
  for (const tell of [neverParted, groups, comparable]) {
    expect(() => tell(records(['Ana Ana']))).toThrow(RangeError);
  }
});
