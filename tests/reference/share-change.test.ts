import { describe, expect, test } from 'vitest';
import { shareChange } from '../../core/figures/share-change.ts';

/*
 * R 4.2.2: of one table sqrt(chisq.test(t, correct = FALSE)$statistic * (N - 1) / N), Campbell's
 * "N - 1"; of several sqrt(mantelhaen.test(x, correct = FALSE)$statistic).
 */

const stretches = (after: [number, number], before: [number, number]) => ({
  after: { held: after[0], looks: after[0] + after[1] },
  before: { held: before[0], looks: before[0] + before[1] },
});
const players = [
  stretches([24, 24], [40, 8]),
  stretches([30, 15], [33, 9]),
  stretches([5, 7], [10, 4]),
];

describe('the change of a share', () => {
  test.each([
    [players[0]!, 3.446012188022555],
    [players[1]!, 1.234311985317126],
    [players[2]!, 1.501562437825932],
  ])(
    'of one player is the root of "N - 1" chi-squared as R has it, below 0 where it fell',
    (one, root) => {
      expect(shareChange([one])).toBeCloseTo(-root, 12);
      expect(shareChange([{ before: one.after, after: one.before }])).toBeCloseTo(root, 12);
    },
  );

  test('of several is that of Mantel and Haenszel as R has it', () => {
    expect(shareChange(players)).toBeCloseTo(-3.701711534212768, 12);
  });

  test('of the six departments of Berkeley 1973 (UCBAdmissions) is the one that R has', () => {
    // Admitted and rejected men, then women, by department; the table that comes with R.
    const departments = [
      [512, 313, 89, 19],
      [353, 207, 17, 8],
      [120, 205, 202, 391],
      [138, 279, 131, 244],
      [53, 138, 94, 299],
      [22, 351, 24, 317],
    ].map(([a, b, c, d]) => stretches([a!, b!], [c!, d!]));
    expect(shareChange(departments)! ** 2).toBeCloseTo(1.524606660443436, 12);
  });
});
