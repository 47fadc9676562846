import { describe, expect, test } from 'vitest';
import { twins } from '../../../core/exchange/twins.ts';
import { bothOf } from '../../../core/ledger/merges.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const player = (id: string, name: string) => ({ id, name, resting: false });
const SQUAD = [player('a1', 'Ana B.'), player('bo', 'Bo'), player('a2', 'ANÁ b')];

describe('two players', () => {
  test('may be one child where people would read their names as the same', () => {
    expect(twins(SQUAD, [], new Map())).toEqual([{ player: 'a2', into: 'a1' }]);
  });

  test('are two where they were at one practice together', () => {
    const together = practiceWith('2026-03-02', [roundWith(0, termsWith(), [[['a1', 'a2'], 3]])]);
    expect(twins(SQUAD, [together], new Map())).toEqual([]);
    const apart = [
      practiceWith('2026-03-02', [roundWith(0, termsWith(), [[['a1', 'bo'], 3]])]),
      practiceWith('2026-03-04', [roundWith(0, termsWith(), [[['a2', 'bo'], 3]])]),
    ];
    expect(twins(SQUAD, apart, new Map())).toHaveLength(1);
  });

  test('are not asked about once the coach said that they are two', () => {
    const said = new Map([[bothOf('a2', 'a1'), { player: 'a1', into: 'a2', one: false }]]);
    expect(twins(SQUAD, [], said)).toEqual([]);
  });
});
