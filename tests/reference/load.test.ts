import { describe, expect, it } from 'vitest';
import { weekLoad } from '../../core/figures/load.ts';
import { agree, check, checks, named } from './values.ts';

describe('the load of a week agrees with', () => {
  it.each(checks('G.week.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { expected } = c;
    const week = weekLoad(c.inputs.daily_loads);
    agree(week.load, expected.weekly_load);
    agree(week.mean, expected.mean_daily);
    agree(week.sdSample, expected.sd_sample);
    agree(week.sdPopulation, expected.sd_population);
    agree(week.monotony, expected.monotony_sample);
    agree(week.strain, expected.strain_sample);
    agree(week.mean / week.sdPopulation, expected.monotony_population);
    agree((week.load * week.mean) / week.sdPopulation, expected.strain_population);
  });

  it.each(checks('G.identity.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { days_with_equal_load: trained, days_rest: rested } = c.inputs;
    const week = weekLoad([...Array(trained).fill(240), ...Array(rested).fill(0)]);
    agree(week.monotony, c.expected.monotony_sample);
    agree(week.mean / week.sdPopulation, c.expected.monotony_population);
  });

  it(named(check('G.constant')), () => {
    const { inputs, expected } = check('G.constant');
    const week = weekLoad(inputs.daily_loads);
    expect(week.load).toBe(expected.weekly_load);
    expect(week.monotony).toBeUndefined();
    expect(week.strain).toBeUndefined();
  });
});
