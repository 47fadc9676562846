import { describe, expect, test } from 'vitest';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { sizeFits } from '../../../core/figures/size-fit.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import { type Finding, findings, questions } from '../../../core/planning/findings.ts';
import { leftOut } from '../../../core/planning/left-out.ts';
import { meetingsOf } from '../../../core/planning/meetings.ts';
import { nextPartners } from '../../../core/planning/next-partners.ts';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import { simulateSeason } from '../figures/simulated-season.ts';

const LAST = '2026-03-04';

function findingsOf(summaries: readonly Summary[], players: readonly string[], today = LAST) {
  const data = levelTallies(summaries, false);
  const fit = data && fitLevels(data);
  return findings({
    players,
    fit,
    left: leftOut(summaries, today, players),
    sizes: fit ? sizeFits(fit, summaries, 120, () => undefined) : [],
    partners: nextPartners(
      { here: players, levels: new Map(), meetings: meetingsOf(summaries, today), wishes: [] },
      summaries,
      today,
    ),
    drills: starterDrills,
    daysSince: whatIsDue(summaries, today, []).drillDays,
  });
}

const of = <About extends Finding['about']>(found: readonly Finding[], about: About) =>
  found.find((finding): finding is Extract<Finding, { about: About }> => finding.about === about);

const season = simulateSeason({
  seed: 71,
  practices: 30,
  rise: (place) => ({ all: place < 3 ? 1.2 : 0.5 }),
});

describe('the findings of an evening', () => {
  const { found, silent } = findingsOf(season.summaries, season.players);

  test('are one a question at most, in the order in which a coach can act on them', () => {
    const asked = found.map(({ about }) => about);
    expect(asked).toEqual(questions.filter((question) => asked.includes(question)));
    expect([...asked, ...silent].sort()).toEqual([...questions].sort());
  });

  test('of a ledger without a practice are none, and every question is silent', () => {
    expect(findingsOf([], [])).toEqual({ found: [], silent: [...questions] });
    expect(findingsOf([], ['a', 'b']).found).toEqual([]);
  });

  test('say of a squad that rises that it rises, with the line and who it is sure of', () => {
    const change = of(found, 'change');
    expect(change?.word).toBe('rising');
    expect(change!.line.at(-1)!.share).toBeGreaterThan(change!.line[0]!.share);
    expect(change!.rising.length).toBeGreaterThan(0);
    expect(change!.falling).toEqual([]);
  });

  test('say of no change and no need after three practices', () => {
    const early = findingsOf(
      season.summaries.slice(0, 2),
      season.players,
      season.summaries[1]!.date,
    );
    expect(early.silent).toContain('change');
    expect(early.silent).toContain('need');
  });

  test('name a stroke that most have gone without, with a drill that has it', () => {
    const later = findingsOf(season.summaries, season.players, '2026-04-04');
    const left = of(later.found, 'left-out');
    expect(left!.left.players.every(({ overdue }) => overdue)).toBe(true);
    expect(left!.drill!.shots.some(({ stroke }) => stroke === left!.stroke)).toBe(true);
  });

  test('offer two as a pair only who have not met for two weeks', () => {
    for (const [many, today] of [
      [30, LAST],
      [6, season.summaries[5]!.date],
    ] as const) {
      const pair = of(
        findingsOf(season.summaries.slice(0, many), season.players, today).found,
        'pair',
      );
      if (pair) expect(pair.partners.days ?? Number.POSITIVE_INFINITY).toBeGreaterThan(14);
    }
  });

  test('call a size too hard only with one that fits better', () => {
    const size = of(found, 'size');
    if (!size) throw new Error('this season has a drill that is off');
    const off = (sets: number) => Math.abs(Math.log(sets / 4));
    expect(off(size.fit.fitting)).toBeLessThan(off(size.fit.expected));
    expect(size.fit.size).not.toBe(size.fit.terms.size);
  });
});
