import { describe, expect, test } from 'vitest';
import { dueRoles } from '../../../core/planning/due-roles.ts';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import { pairUp } from '../../../core/round/pairs.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

const history = [
  practiceWith('2026-03-16', [roundWith(0, lobTerms, [[['a', 'b'], 1]])]),
  practiceWith('2026-03-18', [roundWith(0, lobTerms, [[['d', 'c'], 1]])]),
];
const due = whatIsDue(history, '2026-03-20', []);
const roles = (players: string[], terms = lobTerms) =>
  dueRoles(pairUp(players), terms, due).map((pair) => pair.players.join(''));

describe('roles', () => {
  test('go first to those who have waited longer for them', () => {
    expect(roles(['a', 'b', 'c', 'd'])).toEqual(['ba', 'cd']);
    expect(roles(['b', 'a', 'd', 'c'])).toEqual(['ba', 'cd']);
  });

  test('go to one who never had any of them where that speaks for it', () => {
    // a lobbed four days ago: the newcomer lobs, and a comes to the overhead.
    expect(roles(['a', 'new'])).toEqual(['newa']);
    expect(roles(['b', 'new'])).toEqual(['bnew']);
  });

  test('stay where both have waited as long, and where both roles strike the same', () => {
    expect(roles(['x', 'y'])).toEqual(['xy']);
    expect(roles(['b', 'a'], termsWith())).toEqual(['ba']);
    expect(roles(['a', 'b'], serveTerms)).toEqual(['ab']);
  });

  test('of a trio stay as they are, letters too', () => {
    const trio = pairUp(['a', 'b', 'c']);
    expect(dueRoles(trio, lobTerms, due)).toEqual(trio);
    expect(dueRoles(pairUp(['c', 'd', 'a', 'b']), lobTerms, due).map((p) => p.letter)).toEqual([
      'A',
      'B',
    ]);
  });
});
