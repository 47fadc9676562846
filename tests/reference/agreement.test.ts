import { describe, expect, it } from 'vitest';
import { kappa } from '../../core/figures/agreement.ts';
import { agree, check, checks, named } from './values.ts';

describe('the agreement of two observers agrees with', () => {
  it.each(checks('J.kappa.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const found = kappa(c.inputs.table)!;
    agree(found.agreement, c.expected.percent_agreement);
    agree(found.expected, c.expected.pe);
    agree(found.kappa, c.expected.kappa);
  });

  it('the fraction and the digits printed for the first example of all', () => {
    const { inputs, expected } = check('J.kappa.cohen1960');
    const found = kappa(inputs.table)!;
    const [above, below] = expected.kappa_exact.split('/').map(Number);
    agree(found.kappa, above / below, 1e-15);
    expect(found.kappa).toBeCloseTo(expected.published_kappa, 3);
  });
});
