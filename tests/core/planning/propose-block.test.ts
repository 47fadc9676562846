import { describe, expect, test } from 'vitest';
import { families, termsOf } from '../../../core/drill/drill.ts';
import { clearLanes, courtMarkers } from '../../../core/drill/lanes.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import { markersMoved, rolesDiffer, weights } from '../../../core/planning/block-cost.ts';
import {
  MOST_PROPOSED_ROUNDS,
  type Proposal,
  proposeBlock,
  roundsThatFit,
} from '../../../core/planning/propose-block.ts';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import { Plan, partnersChange, plannedMinutes, plannedRounds } from '../../../core/round/block.ts';
import { randomFrom } from '../../../demo-data/random.ts';
import { anyDrills, anyHistory, squadOf, TODAY } from '../invented.ts';
import { practiceWith, roundWith } from '../made.ts';

type Asked = Parameters<typeof proposeBlock>[0];
const ask = (over: Partial<Asked> = {}) =>
  proposeBlock({
    ...{ minutes: 22, seconds: 120, changeover: 45, here: squadOf(8), courts: 2 },
    ...{ drills: starterDrills, summaries: [], today: TODAY },
    ...over,
  });
const drillNamed = (id: string) => starterDrills.find((drill) => drill.id === id)!;
const drillsOf = ({ plan }: Proposal) => plan.steps.map(({ drill }) => drillNamed(drill));
const setOf = ({ plan }: Proposal) =>
  plan.steps
    .map(({ drill, rounds }) => `${drill}×${rounds}`)
    .sort()
    .join(' ');

/** Everyone of a squad in both roles of each drill, on a day. */
const played = (date: string, drills: readonly string[], players = squadOf(8)): Summary =>
  practiceWith(
    date,
    drills.flatMap((id, at) =>
      [0, 1].map((turn) =>
        roundWith(
          2 * at + turn,
          termsOf(drillNamed(id)),
          Array.from({ length: players.length / 2 }, (_, pair) => {
            const two = players.slice(2 * pair, 2 * pair + 2);
            return [turn === 0 ? two : two.reverse(), 1];
          }),
        ),
      ),
    ),
  );

/** Ledgers and squads, whatever comes. */
const anyCases = Array.from({ length: 30 }, (_, seed) => {
  const random = randomFrom(seed + 1);
  const here = squadOf(2 + random.below(13));
  const summaries = anyHistory(starterDrills, here, random.below(9), random);
  const minutes = 8 + random.below(16);
  return { minutes, here, courts: 1 + random.below(3), summaries };
});

describe('the block that is proposed', () => {
  test('is undefined where no round fits or there is no drill', () => {
    expect(ask({ minutes: 1.9 })).toBeUndefined();
    expect(ask({ drills: [] })).toBeUndefined();
    expect(ask({ minutes: 2 })?.plan.steps).toHaveLength(1);
  });

  test('fills the time, changeovers included, and never goes over it', () => {
    expect(roundsThatFit(22, 120, 45)).toBe(8);
    expect(roundsThatFit(20, 120, 0)).toBe(10);
    for (const at of anyCases) {
      const { plan } = ask(at)!;
      expect(Plan.safeParse(plan).success).toBe(true);
      const minutes = plannedMinutes(plan);
      expect(minutes).toBeLessThanOrEqual(at.minutes);
      if (plannedRounds(plan) < MOST_PROPOSED_ROUNDS) {
        expect(minutes + (120 + 45) / 60).toBeGreaterThan(at.minutes);
      }
    }
  });

  test('has at most twelve rounds, and ten of one drill', () => {
    expect(plannedRounds(ask({ minutes: 90 })!.plan)).toBe(12);
    const one = ask({ minutes: 90, drills: starterDrills.slice(0, 1) })!;
    expect(one.plan.steps.map(({ rounds }) => rounds)).toEqual([10]);
  });

  test('has every family in it whenever four rounds fit', () => {
    for (const at of anyCases) {
      const all = new Set(
        ask({ ...at, minutes: Math.max(at.minutes, 10.25) })!.steps.map((s) => s.family),
      );
      expect(all.size).toBe(families.length);
    }
  });

  test('has every family that any drill belongs to, where some have none', () => {
    const drills = starterDrills.filter(({ family }) => family !== 'volleys');
    const all = ask({ drills })!.steps.map(({ family }) => family);
    expect(new Set(all).size).toBe(3);
  });

  test('gives both players of a pair both roles: an even number of rounds with the same partner', () => {
    for (const at of anyCases) {
      const { plan } = ask({ ...at, minutes: Math.max(at.minutes, 13) })!;
      for (const step of plan.steps) {
        const unlike = rolesDiffer(drillNamed(step.drill));
        expect(step.partners).toBe(unlike ? 'keep' : 'turn');
        if (unlike) expect(step.rounds % 2).toBe(0);
        expect(partnersChange(step, 0)).toBe(true);
      }
    }
  });

  test('never has a drill of the last practice where its family has another', () => {
    for (const at of anyCases) {
      const { lastDrills } = whatIsDue(at.summaries, TODAY, at.here);
      const { plan } = ask(at)!;
      for (const { drill } of plan.steps) {
        const others = starterDrills.filter(
          ({ id, family }) => family === drillNamed(drill).family && !lastDrills.has(id),
        );
        if (others.length > 0) expect(lastDrills.has(drill)).toBe(false);
      }
    }
  });

  test('is in the order in which fewest markers are moved', () => {
    for (const at of anyCases) {
      const proposal = ask({ ...at, minutes: Math.min(at.minutes, 19) })!;
      const onCourt = Math.ceil(Math.floor(at.here.length / 2) / at.courts);
      const markers = drillsOf(proposal).map((drill) =>
        courtMarkers(clearLanes(drill).slice(0, onCourt)),
      );
      const moved = (order: number[]) =>
        order
          .slice(1)
          .reduce((sum, to, i) => sum + markersMoved(markers[order[i]!]!, markers[to]!), 0);
      const own = moved(markers.map((_, i) => i));
      expect(proposal.steps.reduce((sum, step) => sum + step.markersMoved, 0)).toBe(own);
      for (const order of orders(markers.map((_, i) => i))) {
        expect(moved(order)).toBeGreaterThanOrEqual(own);
      }
    }
  });

  test('gives most rounds to a family that is long overdue', () => {
    const others = ['mini-rally', 'soft-volleys', 'straight-serves'];
    const summaries = [
      played('2026-03-02', ['lob-and-overhead']),
      ...['2026-03-16', '2026-03-18', '2026-03-19'].map((date) => played(date, others)),
    ];
    const rounds = new Map(families.map((family) => [family as string, 0]));
    for (const { step, family } of ask({ summaries })!.steps) {
      rounds.set(family, rounds.get(family)! + step.rounds);
    }
    const overheads = rounds.get('overheads-and-lobs')!;
    rounds.delete('overheads-and-lobs');
    for (const count of rounds.values()) expect(count).toBeLessThan(overheads);
  });

  test('brings a role up that nobody has had for weeks', () => {
    const summaries = [
      played('2026-03-19', [
        'lobs-past-the-markers',
        'half-court-rally',
        'volley-to-volley',
        'straight-serves',
      ]),
    ];
    const struck = drillsOf(ask({ summaries })!).flatMap(({ shots }) =>
      shots.map(({ stroke }) => stroke),
    );
    expect(struck).toContain('overhead');
  });

  test('takes one pair a court on the courts of the youngest', () => {
    const waiting = (size: 'full' | 'small') =>
      ask({ size, drills: [drillNamed('mini-rally')] })!.cost;
    expect(waiting('small')).toBe(waiting('full') + (8 * weights.waiting) / 2);
  });

  test('is the same for the same ledger, in whatever order its practices come', () => {
    for (const at of anyCases.slice(0, 10)) {
      expect(ask(at)).toEqual(ask(at));
      expect(ask({ ...at, summaries: at.summaries.toReversed() })).toEqual(ask(at));
    }
  });
});

describe('another block', () => {
  test('is the next best set of drills and rounds each time, and never one that was', () => {
    const all = Array.from({ length: 12 }, (_, skip) => ask({ skip })!);
    expect(new Set(all.map(setOf)).size).toBe(12);
    const costs = all.map(({ cost }) => cost);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
  });

  test('is undefined where there is none', () => {
    const drills = starterDrills.slice(0, 2);
    // Two rounds of two drills: one of each, or both of either.
    const all = [0, 1, 2, 3].map((skip) => ask({ minutes: 5, drills, skip }));
    expect(all.map((one) => one?.plan.steps.length).sort()).toEqual([1, 1, 2, undefined]);
    expect(all[3]).toBeUndefined();
  });

  test('of a small library goes through every block there is', () => {
    const drills = anyDrills(3, randomFrom(3));
    const all = [];
    for (let skip = 0; ; skip += 1) {
      const next = ask({ minutes: 8, drills, skip });
      if (!next) break;
      all.push(setOf(next));
    }
    // Three rounds: three drills once, a pair of drills in two ways, or one drill.
    expect(new Set(all).size).toBe(1 + 3 * 2 + 3);
    expect(all).toHaveLength(10);
  });
});

describe('the reason for a drill', () => {
  const reasons = (over: Partial<Asked>) =>
    Object.fromEntries(ask(over)!.steps.map(({ family, reason }) => [family, reason]));

  test('is balance where nothing is known yet', () => {
    for (const family of families) expect(reasons({})[family]).toEqual({ why: 'balance', family });
  });

  test('is that its family is overdue, with the days since, from the ninth on', () => {
    const all = ['mini-rally', 'soft-volleys', 'straight-serves'];
    const of = (date: string) =>
      reasons({ summaries: [played('2026-03-19', all), played(date, ['lob-and-overhead'])] })[
        'overheads-and-lobs'
      ];
    expect(of('2026-03-04')).toEqual({ why: 'overdue', family: 'overheads-and-lobs', days: 16 });
    expect(of('2026-03-11')).toEqual({ why: 'overdue', family: 'overheads-and-lobs', days: 9 });
    expect(of('2026-03-12')).toEqual({ why: 'balance', family: 'overheads-and-lobs', days: 8 });
  });

  test('is that its family never was, though others were', () => {
    expect(
      reasons({ summaries: [played('2026-03-19', ['mini-rally'])] })['serves-and-returns'],
    ).toEqual({ why: 'never', family: 'serves-and-returns' });
  });

  test('is a role that some who are here have gone without', () => {
    const lobs = roundWith(0, termsOf(drillNamed('lob-and-overhead')), [[['p01', 'p02'], 3]]);
    const others = ['mini-rally', 'soft-volleys', 'straight-serves', 'lobs-past-the-markers'];
    const summaries = [practiceWith('2026-03-10', [lobs]), played('2026-03-19', others)];
    const reason = reasons({ summaries, here: squadOf(2) })['overheads-and-lobs'];
    expect(reason).toEqual({ why: 'role', stroke: 'overhead', players: ['p01', 'p02'], days: 10 });
    const later = [practiceWith('2026-03-12', [lobs]), played('2026-03-19', others)];
    expect(reasons({ summaries: later, here: squadOf(2) })['overheads-and-lobs']).toMatchObject({
      why: 'balance',
    });
  });

  /** Everything a few days ago, one drill looked at for a focus: held so often of twenty looks. */
  const lookedAt = (date: string, drill: string, held: number, sets = 1): Summary => {
    const others = ['soft-volleys', 'straight-serves', 'lob-and-overhead', 'mini-rally'];
    const practice = played(date, others);
    return {
      ...practice,
      rounds: practice.rounds.map((round) =>
        round.terms.drill === drill
          ? {
              ...round,
              focus: 'stance',
              looks: Array.from({ length: 10 }, (_, at) => ({
                ...{ player: 'p01', focus: 'stance', second: at, by: 'phone' },
                saw: at < held / 2 ? ('yes' as const) : ('no' as const),
              })),
              tallies: round.tallies.map((tally) => ({ ...tally, sets })),
            }
          : { ...round, tallies: round.tallies.map((tally) => ({ ...tally, sets: 3 })) },
      ),
    };
  };

  test('is that a focus slips which was looked at in it: such a drill comes before another, and the block has the focus', () => {
    const family = starterDrills.filter((drill) => drill.family === 'groundstrokes');
    const proposed = (now: number) =>
      ask({
        summaries: [
          lookedAt('2026-02-10', 'mini-rally', 20),
          lookedAt('2026-03-13', 'mini-rally', now),
          played('2026-03-17', ['soft-volleys']),
        ],
        drills: [...family, drillNamed('soft-volleys')],
      })!;
    const slipping = proposed(8);
    const step = slipping.steps.find(({ step }) => step.drill === 'mini-rally');
    expect(step?.reason).toEqual({ why: 'slipping', focus: 'stance' });
    expect(slipping.plan.focus).toBe('stance');
    const held = proposed(20);
    expect(held.plan.focus).toBeUndefined();
    const rounds = ({ plan }: Proposal) =>
      plan.steps.find(({ drill }) => drill === 'mini-rally')?.rounds ?? 0;
    expect(rounds(slipping)).toBeGreaterThan(rounds(held));
  });

  test('is that it is too hard, with how many counts had no set', () => {
    const summaries = [lookedAt('2026-03-17', 'mini-rally', 20, 0)];
    const step = ask({ summaries, drills: [drillNamed('mini-rally')] })!.steps[0]!;
    expect(step.reason).toEqual({ why: 'hard', counts: 8, without: 8 });
    const fits = [lookedAt('2026-03-17', 'mini-rally', 20, 2)];
    const other = ask({ summaries: fits, drills: [drillNamed('mini-rally')] })!.steps[0]!;
    expect(other.reason.why).not.toBe('hard');
  });

  test('comes with the days since the drill itself was played', () => {
    const step = (drill: string) =>
      ask({ drills: [drillNamed(drill)], summaries: [played('2026-03-13', ['mini-rally'])] })!
        .steps[0]!;
    expect(step('mini-rally').drillDays).toBe(7);
    expect(step('long-rally')).not.toHaveProperty('drillDays');
  });
});

describe('what makes no sense', () => {
  const wrong: [name: keyof Asked, values: number[]][] = [
    ['minutes', [-1, Number.NaN, Number.POSITIVE_INFINITY]],
    ['seconds', [0, -1, Number.NaN]],
    ['changeover', [-1, Number.NaN]],
    ['courts', [0, 1.5, Number.NaN]],
    ['skip', [-1, 0.5, Number.NaN]],
  ];
  test.each(wrong)('in %s is an error that names it', (name, values) => {
    for (const value of values) {
      expect(() => ask({ [name]: value })).toThrow(new RegExp(`^${name}`));
    }
  });
});

function* orders(items: readonly number[]): Generator<number[]> {
  if (items.length === 0) yield [];
  for (const [at, first] of items.entries()) {
    for (const rest of orders(items.toSpliced(at, 1))) yield [first, ...rest];
  }
}
