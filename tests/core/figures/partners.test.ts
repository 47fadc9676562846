import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PairRecord } from '../../../core/figures/pair-record.ts';
import { fitPartners, type PartnerFit } from '../../../core/figures/partners.ts';

const record = (a: string, b: string, sets: number, exposure = 2): PairRecord => ({
  a,
  b,
  exposure,
  sets,
});

/** Four players, each with each, in counts that differ more than chance makes them. */
const squad = [
  record('Ana', 'Bo', 18),
  record('Ana', 'Cy', 12),
  record('Ana', 'Di', 9),
  record('Bo', 'Cy', 8),
  record('Bo', 'Di', 4),
  record('Cy', 'Di', 2),
];

const playerOf = (fit: PartnerFit | undefined, id: string) =>
  fit!.players.find((player) => player.id === id)!;

describe('fitPartners without data', () => {
  it('is undefined without records', () => {
    expect(fitPartners([])).toBeUndefined();
    expect(fitPartners([], { lambda: 1 })).toBeUndefined();
  });

  it('is undefined where nobody has made a set', () => {
    expect(fitPartners([record('Ana', 'Bo', 0), record('Bo', 'Cy', 0)])).toBeUndefined();
  });

  it('is undefined where nobody has had a minute', () => {
    expect(fitPartners([record('Ana', 'Bo', 0, 0)])).toBeUndefined();
  });
});

describe('fitPartners refuses, by name,', () => {
  it.each([
    ['one player with himself', record('Ana', 'Ana', 3), /a and b/],
    ['negative sets', record('Ana', 'Bo', -1), /sets/],
    ['half a set', record('Ana', 'Bo', 1.5), /sets/],
    ['sets that are not a number', record('Ana', 'Bo', Number.NaN), /sets/],
    ['negative exposure', record('Ana', 'Bo', 1, -2), /exposure/],
    ['endless exposure', record('Ana', 'Bo', 1, Number.POSITIVE_INFINITY), /exposure/],
    ['exposure that is not a number', record('Ana', 'Bo', 1, Number.NaN), /exposure/],
    ['sets at exposure 0', record('Ana', 'Bo', 1, 0), /exposure/],
  ])('%s', (_, wrong, name) => {
    const fit = () => fitPartners([...squad, wrong]);
    expect(fit).toThrow(RangeError);
    expect(fit).toThrow(name);
  });

  it.each([0, -1, Number.NaN])('a λ of %s, even without records', (lambda) => {
    for (const records of [[], squad]) {
      expect(() => fitPartners(records, { lambda })).toThrow(RangeError);
      expect(() => fitPartners(records, { lambda })).toThrow(/lambda/);
    }
  });
});

it('fitPartners refuses, by name, a λ that rounding would hide beside the sets', () => {
  const ring = ['Ana Bo', 'Bo Cy', 'Cy Di', 'Di Ana'].map((pair) => {
    const [a, b] = pair.split(' ') as [string, string];
    return record(a, b, 100);
  });
  expect(() => fitPartners(ring, { lambda: 3e-11 })).toThrow(/lambda/);
  expect(() => fitPartners(ring, { lambda: 3e-11 })).toThrow(RangeError);
  // Just above, what the records leave open is the prior's alone: variance 1/λ along the two sides.
  const fit = fitPartners(ring, { lambda: 5e-11 })!;
  expect(playerOf(fit, 'Ana').se! * Math.sqrt(4 * 5e-11)).toBeCloseTo(1, 2);
});

describe('fitPartners where players look alike', () => {
  const alike = [record('Ana', 'Bo', 6), record('Bo', 'Cy', 6), record('Cy', 'Ana', 6)];

  it('answers σ = 0: no difference can be told yet, and no error is invented', () => {
    expect(fitPartners(alike)).toEqual({
      mu: { '': expect.closeTo(Math.log(3), 14) },
      players: ['Ana', 'Bo', 'Cy'].map((id) => ({
        id,
        effect: 0,
        rateWithAveragePartner: expect.closeTo(3, 14),
      })),
      lambda: Number.POSITIVE_INFINITY,
      sigma: 0,
      deviance: expect.closeTo(0, 12),
      separable: true,
    });
  });

  it('takes an infinite λ for σ = 0', () => {
    expect(fitPartners(alike, { lambda: Number.POSITIVE_INFINITY })).toEqual(fitPartners(alike));
  });

  it('pools each drill, and the rates in the shares of their minutes', () => {
    const drills = [
      { ...record('Ana', 'Bo', 6, 2), drill: 'lobs' },
      { ...record('Bo', 'Ana', 8, 8), drill: 'volleys' },
    ];
    const fit = fitPartners(drills)!;
    expect(fit.sigma).toBe(0);
    expect(fit.mu.lobs).toBeCloseTo(Math.log(3), 14);
    expect(fit.mu.volleys).toBeCloseTo(0, 14);
    expect(playerOf(fit, 'Ana').rateWithAveragePartner).toBeCloseTo(1.4, 14);
  });

  it('is what a very large λ comes to', () => {
    const pooled = fitPartners(squad, { lambda: Number.POSITIVE_INFINITY })!;
    const large = fitPartners(squad, { lambda: 1e12 })!;
    expect(large.mu['']).toBeCloseTo(pooled.mu['']!, 9);
    expect(large.deviance).toBeCloseTo(pooled.deviance, 8);
    large.players.forEach((player, i) => {
      expect(player.effect).toBeCloseTo(0, 9);
      expect(player.rateWithAveragePartner).toBeCloseTo(
        pooled.players[i]!.rateWithAveragePartner,
        9,
      );
    });
  });
});

describe('fitPartners where players differ', () => {
  it('estimates σ, and fits with the λ that belongs to it', () => {
    const fit = fitPartners(squad)!;
    expect(fit.sigma).toBeGreaterThan(0.2);
    expect(fit.lambda).toBeCloseTo(1 / fit.sigma ** 2, 12);
    const given = fitPartners(squad, { lambda: fit.lambda })!;
    expect(given.sigma).toBeCloseTo(fit.sigma, 12);
    expect(given.players).toEqual(fit.players);
  });

  it('gives players in the order of their ids, not of their effects', () => {
    expect(fitPartners([...squad].reverse())!.players.map(({ id }) => id)).toEqual([
      'Ana',
      'Bo',
      'Cy',
      'Di',
    ]);
  });

  it('sees through partners: who had the weaker ones is not taken for weak', () => {
    // Rates are the products of 2, 1, 1 and ½; Ana played mostly with Di, Bo mostly with Cy.
    const fit = fitPartners(
      [
        record('Ana', 'Di', 2000, 2000),
        record('Bo', 'Cy', 2000, 2000),
        record('Ana', 'Bo', 200, 100),
        record('Ana', 'Cy', 200, 100),
        record('Bo', 'Di', 50, 100),
        record('Cy', 'Di', 50, 100),
      ],
      { lambda: 1e-6 },
    )!;
    // Raw rates: Ana 2400 / 2200, Bo 2250 / 2200. The mean of the four logs is 0.
    expect(playerOf(fit, 'Ana').effect).toBeCloseTo(Math.log(2), 6);
    expect(playerOf(fit, 'Bo').effect).toBeCloseTo(0, 6);
    expect(playerOf(fit, 'Di').effect).toBeCloseTo(-Math.log(2), 6);
    expect(playerOf(fit, 'Ana').rateWithAveragePartner).toBeCloseTo(2, 6);
    expect(fit.deviance).toBeCloseTo(0, 6);
  });

  it('has a level for each drill, and rates over the shares of their minutes', () => {
    // The same players at drills of 1 and 3 sets a minute, three quarters of the time at the first.
    const products = [
      ['Ana', 'Bo', 2],
      ['Ana', 'Cy', 1],
      ['Bo', 'Cy', 0.5],
    ] as const;
    const fit = fitPartners(
      products.flatMap(([a, b, product]) => [
        { a, b, exposure: 3000, sets: 3000 * product, drill: 'lobs' },
        { a, b, exposure: 1000, sets: 3000 * product, drill: 'volleys' },
      ]),
      { lambda: 1e-6 },
    )!;
    // Effects are ln 2, 0 and −ln 2, their mean 0.
    expect(fit.mu.lobs).toBeCloseTo(0, 6);
    expect(fit.mu.volleys).toBeCloseTo(Math.log(3), 6);
    expect(playerOf(fit, 'Ana').rateWithAveragePartner).toBeCloseTo(2 * (0.75 + 0.25 * 3), 5);
  });

  it('takes a trio as its pairs, each with its share of the minutes', () => {
    // Three minutes of a trio whose three pairs hit in turn, at products of 3, 2 and 1.
    const trio = [
      record('Ana', 'Bo', 6000, 1000),
      record('Bo', 'Cy', 2000, 1000),
      record('Cy', 'Ana', 3000, 1000),
    ];
    const fit = fitPartners(trio, { lambda: 1e-6 })!;
    const mean = Math.log(6) / 3;
    expect(playerOf(fit, 'Ana').effect).toBeCloseTo(Math.log(3) - mean, 6);
    expect(playerOf(fit, 'Bo').effect).toBeCloseTo(Math.log(2) - mean, 6);
    expect(playerOf(fit, 'Cy').effect).toBeCloseTo(Math.log(1) - mean, 6);
    expect(fit.separable).toBe(true);
  });

  it('leaves out a drill in which nobody made a set: its μ is −Infinity', () => {
    const fit = fitPartners([...squad, { ...record('Ana', 'Eva', 0), drill: 'new' }])!;
    const without = fitPartners(squad)!;
    expect(fit).toEqual({ ...without, mu: { ...without.mu, new: Number.NEGATIVE_INFINITY } });
  });

  it('leaves out a record of no minutes', () => {
    expect(fitPartners([...squad, record('Ana', 'Eva', 0, 0)])).toEqual(fitPartners(squad));
  });

  it('takes any word for a drill or a player', () => {
    const fit = fitPartners(
      squad.map((r) => ({ ...r, a: r.a === 'Ana' ? 'constructor' : r.a, drill: '__proto__' })),
    )!;
    expect(Object.keys(fit.mu)).toEqual(['__proto__']);
    expect(playerOf(fit, 'constructor').effect).toBeCloseTo(
      playerOf(fitPartners(squad), 'Ana').effect,
      12,
    );
  });

  it('still fits where λ is tiny, as long as the records tell players apart', () => {
    const tiny = fitPartners(squad, { lambda: 1e-11 })!;
    const small = fitPartners(squad, { lambda: 1e-8 })!;
    tiny.players.forEach((player, i) => {
      expect(player.effect).toBeCloseTo(small.players[i]!.effect, 6);
      expect(player.se).toBeCloseTo(small.players[i]!.se!, 6);
      expect(player.low).toBeCloseTo(small.players[i]!.low!, 5);
    });
  });

  it('fits one pair: both alike, the rate their own', () => {
    const fit = fitPartners([record('Ana', 'Bo', 10, 4)], { lambda: 2 })!;
    for (const { effect } of fit.players) expect(effect).toBeCloseTo(0, 12);
    expect(playerOf(fit, 'Ana').rateWithAveragePartner).toBeCloseTo(2.5, 10);
    // The difference of the two has the prior's variance 2/λ alone, each from their mean a quarter of it.
    expect(playerOf(fit, 'Ana').se).toBeCloseTo(0.5, 12);
  });
});

describe('separable', () => {
  const separable = (pairs: readonly string[], drill?: (i: number) => string) =>
    fitPartners(
      pairs.map((pair, i) => {
        const [a, b] = pair.split(' ') as [string, string];
        return { ...record(a, b, 3 + i), ...(drill ? { drill: drill(i) } : {}) };
      }),
      { lambda: 1 },
    )!.separable;
  const triangle = ['Ana Bo', 'Bo Cy', 'Cy Ana'];
  const other = ['Di Eva', 'Eva Fay', 'Fay Di'];

  it('is true where everyone hangs together in more ways than one', () => {
    expect(separable(triangle)).toBe(true);
    expect(separable([...triangle, 'Ana Di', 'Di Bo'])).toBe(true);
  });

  it('is false where a player has had one partner only', () => {
    expect(separable([...triangle, 'Ana Di'])).toBe(false);
  });

  it('is false where groups never met', () => {
    expect(separable([...triangle, ...other])).toBe(false);
    expect(separable([...triangle, ...other, 'Ana Di', 'Bo Eva'])).toBe(true);
  });

  it('is false for groups on different drills', () => {
    expect(separable([...triangle, ...other], (i) => (i < 3 ? 'lobs' : 'volleys'))).toBe(false);
  });

  it('is false for a ring of four, where a side can rise as the other falls', () => {
    expect(separable(['Ana Bo', 'Bo Cy', 'Cy Di', 'Di Ana'])).toBe(false);
  });
});

/** Records of up to six players and three drills, some of them without a set. */
const anyRecords = fc.array(
  fc
    .record({
      a: fc.nat(5),
      ahead: fc.integer({ min: 1, max: 5 }),
      sets: fc.nat(15),
      exposure: fc.constantFrom(0.5, 1, 2, 3),
      drill: fc.constantFrom('lobs', 'volleys', 'serves'),
    })
    .map(({ a, ahead, ...rest }) => ({ a: `p${a}`, b: `p${(a + ahead) % 6}`, ...rest })),
  { minLength: 1, maxLength: 25 },
);
const lambdas = fc.double({ min: 0.05, max: 100, noNaN: true });
const estimatedOrGiven = fc.oneof(fc.constant({}), fc.record({ lambda: lambdas }));

/** Expects two fits to say the same, to what two sums of the same numbers in another order differ by. */
function same(fit: PartnerFit | undefined, other: PartnerFit | undefined) {
  const close = (x: number | undefined, y: number | undefined) => {
    if (x === undefined || y === undefined || !Number.isFinite(y)) expect(x).toBe(y);
    else expect(Math.abs(x - y)).toBeLessThanOrEqual(1e-6 * (1 + Math.abs(y)));
  };
  expect(fit === undefined).toBe(other === undefined);
  if (!fit || !other) return;
  close(fit.sigma, other.sigma);
  close(fit.deviance, other.deviance);
  expect(fit.separable).toBe(other.separable);
  expect(Object.keys(fit.mu).sort()).toEqual(Object.keys(other.mu).sort());
  for (const [drill, level] of Object.entries(fit.mu)) close(level, other.mu[drill]);
  expect(fit.players.map(({ id }) => id)).toEqual(other.players.map(({ id }) => id));
  fit.players.forEach((player, i) => {
    const twin = other.players[i]!;
    close(player.effect, twin.effect);
    close(player.se, twin.se);
    close(player.rateWithAveragePartner, twin.rateWithAveragePartner);
    close(player.low, twin.low);
    close(player.high, twin.high);
  });
}

describe('fitPartners, whatever the records,', () => {
  it('does not mind their order, nor who of the two is named first', () => {
    fc.assert(
      fc.property(
        anyRecords,
        fc.infiniteStream(fc.nat()),
        estimatedOrGiven,
        (records, keys, options) => {
          const turned = records
            .map((r) => ({ key: keys.next().value as number, r }))
            .sort((x, y) => x.key - y.key)
            .map(({ key, r }) => (key % 2 ? { ...r, a: r.b, b: r.a } : r));
          same(fitPartners(turned, options), fitPartners(records, options));
        },
      ),
    );
  });

  it('does not mind what players are called', () => {
    fc.assert(
      fc.property(anyRecords, estimatedOrGiven, (records, options) => {
        // p0 … p5 become q5 … q0, which turns their order around.
        const rename = (id: string) => `q${5 - Number(id[1])}`;
        const renamed = fitPartners(
          records.map((r) => ({ ...r, a: rename(r.a), b: rename(r.b) })),
          options,
        );
        const back = renamed && {
          ...renamed,
          players: renamed.players.map((p) => ({ ...p, id: `p${5 - Number(p.id[1])}` })).reverse(),
        };
        same(back, fitPartners(records, options));
      }),
    );
  });

  it('moves μ by −ln k, and nothing else but the rates, where every minute is k minutes', () => {
    fc.assert(
      fc.property(
        anyRecords,
        estimatedOrGiven,
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        (records, options, k) => {
          const scaled = fitPartners(
            records.map((r) => ({ ...r, exposure: k * r.exposure })),
            options,
          );
          const back = scaled && {
            ...scaled,
            mu: Object.fromEntries(
              Object.entries(scaled.mu).map(([drill, level]) => [drill, level + Math.log(k)]),
            ),
            players: scaled.players.map((p) => ({
              ...p,
              rateWithAveragePartner: k * p.rateWithAveragePartner,
              ...(p.low === undefined ? {} : { low: k * p.low, high: k * p.high! }),
            })),
          };
          same(back, fitPartners(records, options));
        },
      ),
    );
  });

  it('adds up repeated records of a pair at a drill', () => {
    fc.assert(
      fc.property(anyRecords, estimatedOrGiven, (records, options) => {
        const sums = new Map<string, PairRecord>();
        for (const r of records) {
          const key = [r.drill, ...[r.a, r.b].sort()].join();
          const sum = sums.get(key);
          sums.set(key, {
            ...r,
            sets: r.sets + (sum?.sets ?? 0),
            exposure: r.exposure + (sum?.exposure ?? 0),
          });
        }
        const fit = fitPartners(records, options);
        const summed = fitPartners([...sums.values()], options);
        // Only the deviance, which looks at single records, sees the difference.
        same(summed && { ...summed, deviance: fit!.deviance }, fit);
      }),
    );
  });

  it('balances: each drill expects the sets it saw, and each player λ effects more than the seen', () => {
    fc.assert(
      fc.property(anyRecords, lambdas, (records, lambda) => {
        const fit = fitPartners(records, { lambda });
        if (!fit) return;
        const surplus = new Map<string, number>();
        for (const { a, b, drill, exposure, sets } of records) {
          if (fit.mu[drill] === Number.NEGATIVE_INFINITY) continue;
          const rate = Math.exp(fit.mu[drill]! + playerOf(fit, a).effect + playerOf(fit, b).effect);
          for (const key of [drill, a, b]) {
            surplus.set(key, (surplus.get(key) ?? 0) + sets - exposure * rate);
          }
        }
        for (const [key, over] of surplus) {
          const pull = key in fit.mu ? 0 : lambda * playerOf(fit, key).effect;
          expect(Math.abs(over - pull)).toBeLessThanOrEqual(1e-8);
        }
      }),
    );
  });

  it('holds rates inside their intervals, effects around 0 and nothing but finite numbers', () => {
    fc.assert(
      fc.property(anyRecords, estimatedOrGiven, (records, options) => {
        const fit = fitPartners(records, options);
        if (!fit) return;
        const sum = fit.players.reduce((total, { effect }) => total + effect, 0);
        expect(Math.abs(sum)).toBeLessThan(1e-9);
        expect(fit.deviance).toBeGreaterThanOrEqual(-1e-9);
        for (const { se, rateWithAveragePartner: rate, low, high } of fit.players) {
          expect(rate).toBeGreaterThan(0);
          expect(rate).toBeLessThan(1e6);
          if (fit.sigma === 0) {
            expect([se, low, high]).toEqual([undefined, undefined, undefined]);
          } else {
            expect(se).toBeGreaterThan(0);
            expect(low).toBeLessThan(rate);
            expect(high).toBeCloseTo(rate ** 2 / low!, 6);
          }
        }
      }),
    );
  });
});
