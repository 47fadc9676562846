import type { Pair } from '../core/round/pair.ts';
import { lettered } from '../core/round/pairs.ts';

/* How the invented coach has partners and roles turn: without looking at what was before today. */

/** The same pairs with their roles turned: who lobbed now strikes the overhead. */
export const turnRoles = (pairs: readonly Pair[]): Pair[] =>
  pairs.map((pair) => ({
    ...pair,
    players: [...pair.players.slice(1), ...pair.players.slice(0, 1)],
  }));

/**
 * New partners for everyone by the circle method: the first player stays, all others move on one
 * place, so that over a block nobody meets a partner twice before everyone was met. With an odd
 * number everyone moves, and the trio is a new one each time.
 */
export function turnPartners(pairs: readonly Pair[]): Pair[] {
  const circle = toCircle(pairs.map((pair) => pair.players));
  const odd = circle.length % 2 === 1;
  const fixed = odd ? [] : circle.slice(0, 1);
  const moving = circle.slice(fixed.length);
  const moved = [...fixed, ...moving.slice(-1), ...moving.slice(0, -1)];
  return lettered(fromCircle(moved));
}

/** Players round a table: opposite ones are partners; the last of an odd number joins the last pair. */
function toCircle(groups: readonly (readonly string[])[]): string[] {
  const near = groups.map((group) => group[0] ?? '');
  const far = groups.map((group) => group[1] ?? '').reverse();
  const third = groups.flatMap((group) => group.slice(2));
  return [...near, ...far, ...third];
}

function fromCircle(circle: readonly string[]): string[][] {
  const half = Math.floor(circle.length / 2);
  const groups = circle
    .slice(0, half)
    .map((player, place) => [player, circle[2 * half - 1 - place] ?? '']);
  if (circle.length % 2 === 1) groups.at(-1)?.push(circle.at(-1) ?? '');
  return groups;
}
