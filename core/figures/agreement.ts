import { mustCount } from '../arguments.ts';

/**
 * How far two observers of the same looks agree beyond chance: Cohen's kappa (Cohen 1960, Educ. Psychol.
 * Meas. 20: 37–46).
 *
 * `table[i][j]` is the number of looks that the first observer called i and the second called j.
 * `agreement` is the share of looks called the same; `expected` is what two observers with these habits
 * who do not look at all would reach; `kappa` is how much of the way from there to 1 they come, 0 for
 * no better than chance, 1 for full agreement, negative for worse than chance.
 *
 * `undefined` where there are no looks; `kappa` is left out where `expected` is 1 (both called
 * everything the same one thing, which tells nothing). A table that is not square, and numbers that are
 * not whole or negative, are a RangeError.
 */
export function kappa(
  table: readonly (readonly number[])[],
): { agreement: number; expected: number; kappa?: number } | undefined {
  for (const row of table) {
    if (row.length !== table.length) throw new RangeError('table must be square');
    for (const count of row) mustCount('each of table', count);
  }
  const sum = (counts: readonly number[]) => counts.reduce((all, count) => all + count, 0);
  const looks = sum(table.flat());
  if (looks === 0) return undefined;
  // Whole numbers as long as possible, so that full and chance agreement come out exactly.
  const all = looks * looks;
  const same = looks * sum(table.map((row, i) => row[i]!));
  const chance = sum(table.map((row, i) => sum(row) * sum(table.map((other) => other[i]!))));
  const result = { agreement: same / all, expected: chance / all };
  return chance === all ? result : { ...result, kappa: (same - chance) / (all - chance) };
}
